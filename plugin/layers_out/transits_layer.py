"""Transits as lines from the mark over the front to the rear, and in sentences."""

from __future__ import annotations

from collections.abc import Iterator

from qgis.core import QgsVectorLayer, QgsWkbTypes

from ..core.results.transits import MarkTransits, Transit, TransitsFound, bearing_text
from ..words import tr
from .plan_layers import OutputLayer, Row, line_over
from .styles.map_tips import plain, tip
from .styles.plan_symbols import plan_renderer

TRANSIT_COLUMNS = (
    ("mark", "text"),
    ("rank", "whole"),
    ("pair", "whole"),
    ("front", "text"),
    ("rear", "text"),
    ("bearing_true_deg", "number"),
    ("bearing_mag_deg", "number"),
    ("crossing_deg", "number"),
    ("offset_m", "number"),
    ("sensitivity_m", "number"),
    ("error_m", "number"),
    ("front_m", "number"),
    ("rear_m", "number"),
    ("words", "text"),
)
COPIED = [name for name, _ in TRANSIT_COLUMNS if name not in ("rank", "pair", "error_m", "words")]


def _transit_rows(found: TransitsFound) -> Iterator[Row]:
    """The pairs of each mark by rank, two lines a pair with the number of the pair; single transits have neither."""
    pair = 0
    for one in found.marks:
        for rank, fix in enumerate(one.fixes, start=1):
            pair += 1
            for transit in (fix.first, fix.second):
                yield _row(transit, {"rank": rank, "pair": pair, "error_m": fix.error_m})
        for transit in one.singles:
            yield _row(transit, {"rank": None, "pair": None, "error_m": None})


def _row(transit: Transit, values: dict[str, object]) -> Row:
    copied = {name: getattr(transit, name) for name in COPIED}
    return line_over(list(transit.lonlat)), {**copied, **values, "words": transit_sentence(transit)}


TRANSITS = OutputLayer(
    parameter="TRANSITS", wkb_type=QgsWkbTypes.Type.LineString, columns=TRANSIT_COLUMNS, rows=_transit_rows
)


def style_transits(layer: QgsVectorLayer) -> None:
    """The dashes of the plan's own transits."""
    layer.setRenderer(plan_renderer("transits"))
    layer.setMapTipTemplate(tip('"mark"') + "<br>" + plain('"words"'))


def transit_sentence(transit: Transit) -> str:
    """One transit in words: what is in line, its bearing, how far off it passes, and how far one strays unawares."""
    off_m = f"{abs(transit.offset_m):.0f}"
    if off_m == "0":
        passes = tr("passes over the mark")
    elif transit.offset_m > 0.0:
        passes = tr("passes {} m to the right of the mark").format(off_m)
    else:
        passes = tr("passes {} m to the left of the mark").format(off_m)
    words = tr("{} in line with {}, {} magnetic; {}; opens visibly {} m off the line")
    bearing = bearing_text(transit).removesuffix("M")
    return words.format(transit.front, transit.rear, bearing, passes, f"{transit.sensitivity_m:.0f}")


def transit_sentences(found: TransitsFound) -> list[str]:
    """The pairs of each mark with their crossing and error, or its single transits and why there is no pair."""
    return [sentence for one in found.marks for sentence in _of_mark(one)]


def _of_mark(one: MarkTransits) -> Iterator[str]:
    pair = tr("{}, pair {}: crosses at {} degrees, fixes to about {} m")
    for rank, fix in enumerate(one.fixes, start=1):
        yield pair.format(one.mark, rank, f"{fix.crossing_deg:.0f}", f"{fix.error_m:.0f}")
        yield from ("  " + transit_sentence(transit) for transit in (fix.first, fix.second))
    for transit in one.singles:
        yield f"{one.mark}: {transit_sentence(transit)}"
