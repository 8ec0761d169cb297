"""How the reach looks beside the dock: bands from light to dark, lines that carry their minutes, hatching for the stay.

One hue alone, so that grey print and colour-blind eyes see the same steps; the minutes stand on the lines besides.
"""

from __future__ import annotations

from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsFillSymbol,
    QgsLineSymbol,
    QgsPalLayerSettings,
    QgsRendererCategory,
    QgsSingleSymbolRenderer,
    QgsVectorLayer,
)

from ..words import tr
from .reach_bands import MOST_BANDS, ReachDrawn, band_words
from .reach_layers import stay_words
from .styling import SWUM, put_label, stay_symbol

# Of a paper seen through blue glass, near and far; what lies under the bands shows through.
NEAR, FAR = (225, 238, 246), (58, 110, 158)
OPACITY = 0.75


def style_bands(layer: QgsVectorLayer, made: ReachDrawn) -> None:
    """The sooner the lighter; the legend says the minutes."""
    count = max((values["number"] for _, values in made.bands), default=1)
    categories = []
    for number in range(1, count + 1):
        symbol = QgsFillSymbol.createSimple({"color": band_color(number), "outline_style": "no"})
        words = band_words(made.every_min * (number - 1), made.every_min * number)
        categories.append(QgsRendererCategory(number, symbol, words))
    layer.setRenderer(QgsCategorizedSymbolRenderer("number", categories))
    layer.setOpacity(OPACITY)
    layer.setMapTipTemplate("[% label %]")


def band_color(number: int) -> str:
    """``r,g,b`` of a band, 1 the nearest: even steps, the same for every reach."""
    share = (number - 1) / (MOST_BANDS - 1)
    return ",".join(f"{near + share * (far - near):.0f}" for near, far in zip(NEAR, FAR))


def style_lines(layer: QgsVectorLayer, _made: ReachDrawn) -> None:
    """Dashes with the minutes on them."""
    dashes = {"line_color": SWUM, "line_width": "0.35", "customdash": "3;1.5", "use_custom_dash": "1"}
    layer.setRenderer(QgsSingleSymbolRenderer(QgsLineSymbol.createSimple(dashes)))
    put_label(layer, '"label"', QgsPalLayerSettings.Placement.Line)


def style_stay(layer: QgsVectorLayer, made: ReachDrawn) -> None:
    """Slanting lines and a dark edge, named in the legend."""
    words = stay_words(made.reach)
    kind = QgsRendererCategory(made.reach.stay_min, stay_symbol(), words[:1].upper() + words[1:])
    layer.setRenderer(QgsCategorizedSymbolRenderer("minutes", [kind]))


def band_titles() -> dict[str, str]:
    """What the layers are called, by their parameters."""
    return {
        "REACH_STAY": tr("Time to stay"),
        "REACH_LINES": tr("Minutes out (lines)"),
        "REACH_BANDS": tr("There and home in time, by minutes out"),
    }


BAND_STYLES = {"REACH_STAY": style_stay, "REACH_LINES": style_lines, "REACH_BANDS": style_bands}
