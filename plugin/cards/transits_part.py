"""The transits of the card: which two things ashore stand in line at a mark, as the user picked them."""

from __future__ import annotations

from ..core.results.card import isolated
from ..core.results.swim_plan import Stop, SwimPlan
from ..core.results.transits import Transit, bearing_text
from ..words import tr
from .block import Block, stacked, wrapped

ON_THE_LINE_M = 5.0  # nearer than a receiver can tell; common practice, no source


def transits(plan: SwimPlan, width_mm: float) -> list[Block]:
    """A block a mark: its name, then a line for each transit."""
    blocks = []
    for stop in transit_stops(plan):
        lines = [wrapped(transit_line(one), width_mm, 3) for one in stop.transits]
        blocks.append(stacked([wrapped(transit_head(stop), width_mm, 2, bold=True), *lines]))
    return blocks


def transit_stops(plan: SwimPlan) -> list[Stop]:
    """The stops with transits, each place once."""
    found: dict[tuple[str, float, float], Stop] = {}
    for stop in plan.stops:
        if stop.transits:
            found.setdefault((stop.name, stop.lon, stop.lat), stop)
    return list(found.values())


def transit_head(stop: Stop) -> str:
    """What stands above the transits of a mark."""
    return tr("IN LINE at {place}, front / rear:").format(place=isolated(stop.name))


def transit_line(one: Transit) -> str:
    """``Mill / Tower 045M``; how far the mark lies beside the line where that can be told on the water."""
    words = f"{isolated(one.front)} / {isolated(one.rear)} {bearing_text(one)}"
    if abs(one.offset_m) < ON_THE_LINE_M:
        return words
    # The offset is that of the line from the mark: where the line passes to the right, the mark lies left of it.
    beside = tr("mark {metres} m left of the line") if one.offset_m > 0 else tr("mark {metres} m right of the line")
    return f"{words}, {beside.format(metres=f'{abs(one.offset_m):.0f}')}"
