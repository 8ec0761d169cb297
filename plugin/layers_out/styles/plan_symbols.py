"""How the layers of a plan look: renderers by layer name.

Kinds differ in shape, dash or hatching and never in colour alone, so a print without colour and an eye that mixes
colours up both tell them apart. Sizes are millimetres on paper.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsFeatureRenderer,
    QgsFillSymbol,
    QgsLinePatternFillSymbolLayer,
    QgsLineSymbol,
    QgsMapUnitScale,
    QgsMarkerLineSymbolLayer,
    QgsMarkerSymbol,
    QgsPointPatternFillSymbolLayer,
    QgsProperty,
    QgsRendererCategory,
    QgsRuleBasedRenderer,
    QgsSimpleLineSymbolLayer,
    QgsSingleSymbolRenderer,
    QgsSymbol,
    QgsSymbolLayer,
    QgsUnitTypes,
)
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtGui import QColor

from ...plan_package import value_lists
from ...plan_package.words import schema_words
from ...words import tr

INK = "#1a1a1a"
PAPER = "#ffffff"
ROUTE_GREY = "#5a5a5a"
LAND_GREY = "#cfcfc4"
CONTOUR_GREY = "#6b7f8c"
RULE_BROWN = "#7a3b10"
CHANNEL_SLATE = "#34495e"
STREAM_GREEN = "#1f5f4a"

MARK_SHAPES = {
    "entry": {"name": "triangle", "size": "4.2", "color": INK},
    "mark": {"name": "circle", "size": "3.6", "color": PAPER},
    "exit": {"name": "square", "size": "3.4", "color": INK},
    "waypoint": {"name": "cross", "size": "3.0", "color": INK},
}
CHANNEL_DASHES = {"fairway": "6;2", "ferry": "4;1.5;0.8;1.5", "lane": "8;1.5;0.8;1.5;0.8;1.5", "small_craft": "2;1.5"}
# Angle of the hatching in degrees, several for crossed hatching; none for the dots of a caution.
RULE_HATCHES = {
    "no_entry": (45.0, 135.0),
    "no_spearing": (45.0,),
    "no_anchoring": (135.0,),
    "loaded_gun_ban": (0.0,),
    "caution": (),
}
HATCH_DISTANCE_MM = 2.4
WIDEST_BAND_MM = 2000.0  # 23 622 pixels at 300 dots an inch


def plan_renderer(layer_name: str) -> QgsFeatureRenderer | None:
    """A new renderer for a layer of the plan; None for a table."""
    make = _RENDERERS.get(layer_name)
    return make() if make else None


def _marks() -> QgsFeatureRenderer:
    symbols = {
        kind: QgsMarkerSymbol.createSimple({"outline_color": INK, "outline_width": "0.5", **shape})
        for kind, shape in MARK_SHAPES.items()
    }
    other = QgsMarkerSymbol.createSimple({"name": "circle", "size": "2", "color": PAPER, "outline_color": INK})
    return _by_value("kind", value_lists.MARK_KIND, symbols, other)


def _routes() -> QgsFeatureRenderer:
    """Thin, so that the track really swum stands out over the lines that are only ruled."""
    symbol = QgsLineSymbol.createSimple({"line_color": ROUTE_GREY, "line_width": "0.35", "joinstyle": "round"})
    arrow = QgsMarkerSymbol.createSimple(
        {"name": "filled_arrowhead", "size": "2.0", "color": ROUTE_GREY, "outline_color": ROUTE_GREY}
    )
    arrows = QgsMarkerLineSymbolLayer(True, 22.0)
    arrows.setSubSymbol(arrow)
    symbol.appendSymbolLayer(arrows)
    return QgsSingleSymbolRenderer(symbol)


def _channels() -> QgsFeatureRenderer:
    """Rules for lines and for areas stand side by side, as the layer holds both."""
    root = QgsRuleBasedRenderer.Rule(None)
    for kind, label in value_lists.CHANNEL_KIND.items():
        _add_channel_rules(root, f"\"kind\" = '{kind}'", schema_words(label), CHANNEL_DASHES[kind])
    kinds = ", ".join(f"'{kind}'" for kind in value_lists.CHANNEL_KIND)
    _add_channel_rules(root, f'("kind" IS NULL OR "kind" NOT IN ({kinds}))', tr("other"), "1;1")
    return QgsRuleBasedRenderer(root)


def _add_channel_rules(root: QgsRuleBasedRenderer.Rule, condition: str, label: str, dash: str) -> None:
    dashed = {"use_custom_dash": "1", "customdash": dash, "customdash_unit": "MM", "capstyle": "flat"}
    line = QgsLineSymbol.createSimple({"line_color": CHANNEL_SLATE, "line_width": "0.8", **dashed})
    border = QgsLineSymbol.createSimple({"line_color": CHANNEL_SLATE, "line_width": "0.5", **dashed})
    line.insertSymbolLayer(0, _band_of_width())
    for symbol, shape in ((line, "Line"), (_filled("52,73,94,28", border), "Polygon")):
        rule = QgsRuleBasedRenderer.Rule(symbol)
        rule.setFilterExpression(f"{condition} AND geometry_type($geometry) = '{shape}'")
        rule.setLabel(label)
        root.appendChild(rule)


def _band_of_width() -> QgsSimpleLineSymbolLayer:
    """The water that a channel drawn as a line takes: a pale band of its width on the ground, none without a width.

    None on a map without a CRS either: there QGIS takes metres for the map's units, and a channel would be as wide as
    a continent. Qt draws no pen of 32768 pixels or more, so the band stays below that however near one looks.
    """
    band = QgsSimpleLineSymbolLayer(QColor(52, 73, 94, 45), 0.0)
    band.setWidthUnit(QgsUnitTypes.RenderUnit.RenderMetersInMapUnits)
    band.setWidthMapUnitScale(_at_most(WIDEST_BAND_MM))
    band.setPenCapStyle(Qt.PenCapStyle.FlatCap)
    band.setPenJoinStyle(Qt.PenJoinStyle.RoundJoin)
    # Where a map tells of itself at all, and so has a scale, it tells of its CRS as well.
    has_crs = "(@map_scale IS NULL OR coalesce(@map_crs_definition, '') <> '')"
    given = QgsProperty.fromExpression(f'"width_m" > 0 AND {has_crs}')
    band.setDataDefinedProperty(QgsSymbolLayer.Property.PropertyLayerEnabled, given)
    band.setDataDefinedProperty(QgsSymbolLayer.Property.PropertyStrokeWidth, QgsProperty.fromField("width_m"))
    return band


def _at_most(size_mm: float) -> QgsMapUnitScale:
    scale = QgsMapUnitScale()
    scale.maxSizeMMEnabled, scale.maxSizeMM = True, size_mm
    return scale


def _closed_areas() -> QgsFeatureRenderer:
    symbols = {rule: _hatched(angles) for rule, angles in RULE_HATCHES.items()}
    return _by_value("rule", value_lists.AREA_RULE, symbols, _outlined(RULE_BROWN, "0.5"))


def _land() -> QgsFeatureRenderer:
    return QgsSingleSymbolRenderer(
        QgsFillSymbol.createSimple({"color": LAND_GREY, "outline_color": INK, "outline_width": "0.35"})
    )


def _depth_contours() -> QgsFeatureRenderer:
    return QgsSingleSymbolRenderer(
        QgsLineSymbol.createSimple({"line_color": CONTOUR_GREY, "line_width": "0.25", "joinstyle": "round"})
    )


def _soundings() -> QgsFeatureRenderer:
    return QgsSingleSymbolRenderer(
        QgsMarkerSymbol.createSimple({"name": "circle", "size": "0.7", "color": CONTOUR_GREY, "outline_style": "no"})
    )


def _landmarks() -> QgsFeatureRenderer:
    """A shape that no mark of the swim has: it stands ashore."""
    return QgsSingleSymbolRenderer(
        QgsMarkerSymbol.createSimple(
            {"name": "star", "size": "4.0", "color": PAPER, "outline_color": INK, "outline_width": "0.5"}
        )
    )


def _transits() -> QgsFeatureRenderer:
    """Long thin dashes: a line of sight, along which nobody swims."""
    return QgsSingleSymbolRenderer(
        QgsLineSymbol.createSimple(
            {
                "line_color": INK,
                "line_width": "0.25",
                "capstyle": "flat",
                "use_custom_dash": "1",
                "customdash": "6;1.5",
                "customdash_unit": "MM",
            }
        )
    )


def _stream_stations() -> QgsFeatureRenderer:
    return QgsSingleSymbolRenderer(
        QgsMarkerSymbol.createSimple(
            {"name": "diamond", "size": "4", "color": PAPER, "outline_color": STREAM_GREEN, "outline_width": "0.7"}
        )
    )


def _stream_areas() -> QgsFeatureRenderer:
    border = QgsLineSymbol.createSimple(
        {
            "line_color": STREAM_GREEN,
            "line_width": "0.6",
            "capstyle": "round",
            "use_custom_dash": "1",
            "customdash": "0.1;1.6",
            "customdash_unit": "MM",
        }
    )
    return QgsSingleSymbolRenderer(_filled("31,95,74,20", border))


def _sessions() -> QgsFeatureRenderer:
    return QgsSingleSymbolRenderer(
        QgsMarkerSymbol.createSimple({"name": "pentagon", "size": "2.8", "color": PAPER, "outline_color": INK})
    )


def _by_value(
    field: str, labels: Mapping[str, str], symbols: Mapping[str, QgsSymbol], other: QgsSymbol
) -> QgsCategorizedSymbolRenderer:
    """One symbol per value of the list, and one for a value that is missing or foreign, so that nothing vanishes."""
    categories = [QgsRendererCategory(value, symbols[value], schema_words(label)) for value, label in labels.items()]
    categories.append(QgsRendererCategory(None, other, tr("other")))
    return QgsCategorizedSymbolRenderer(field, categories)


def _outlined(color: str, width: str) -> QgsFillSymbol:
    return QgsFillSymbol.createSimple({"style": "no", "outline_color": color, "outline_width": width})


def _hatched(angles_deg: tuple[float, ...]) -> QgsFillSymbol:
    symbol = _outlined(RULE_BROWN, "0.5")
    for angle_deg in angles_deg:
        hatch = QgsLinePatternFillSymbolLayer()
        hatch.setLineAngle(angle_deg)
        hatch.setDistance(HATCH_DISTANCE_MM)
        hatch.setSubSymbol(QgsLineSymbol.createSimple({"line_color": RULE_BROWN, "line_width": "0.2"}))
        symbol.appendSymbolLayer(hatch)
    if not angles_deg:
        dots = QgsPointPatternFillSymbolLayer()
        dots.setDistanceX(HATCH_DISTANCE_MM)
        dots.setDistanceY(HATCH_DISTANCE_MM)
        dots.setSubSymbol(
            QgsMarkerSymbol.createSimple({"name": "circle", "size": "0.6", "color": RULE_BROWN, "outline_style": "no"})
        )
        symbol.appendSymbolLayer(dots)
    return symbol


def _filled(color: str, border: QgsLineSymbol) -> QgsFillSymbol:
    """A pale fill with a line symbol's own dashes as its border."""
    symbol = QgsFillSymbol.createSimple({"color": color, "outline_style": "no"})
    for index in range(border.symbolLayerCount()):
        symbol.appendSymbolLayer(border.symbolLayer(index).clone())
    return symbol


_RENDERERS: dict[str, Callable[[], QgsFeatureRenderer]] = {
    "marks": _marks,
    "routes": _routes,
    "channels": _channels,
    "closed_areas": _closed_areas,
    "land": _land,
    "depth_contours": _depth_contours,
    "soundings": _soundings,
    "landmarks": _landmarks,
    "transits": _transits,
    "stream_stations": _stream_stations,
    "stream_areas": _stream_areas,
    "sessions": _sessions,
}
