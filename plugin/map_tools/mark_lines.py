"""The lines beside the cursor while a mark is placed or moved."""

from __future__ import annotations

from ..words import tr
from .at_hand import PlanAtHand
from .places import Place
from .readings import depth_lines, from_lines, position_line, variation_for


def mark_lines(plan: PlanAtHand, place: Place) -> list[str]:
    """Position, charted depth, distance and bearings from the entry; what is not known in words."""
    lines = [position_line(place), *depth_lines(place, plan.chart_around(*place.lonlat))]
    entry = plan.entry()
    if entry is None:
        return [*lines, tr("Place an entry to see distance and bearing from it")]
    variation = variation_for(place.lonlat, entry, plan.depart())
    return [*lines, *from_lines((entry.lon, entry.lat), entry.name, place, variation)]
