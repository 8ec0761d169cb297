"""The transits that the user picked, as they are seen from the stops of a swim."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ..chart.marks import Mark
from ..magnetism import Variation
from ..results.transits import Transit, transit_words
from ..words import tr
from .transit_lines import TransitLimits
from .transits import Landmarks, measured_transit, with_crossings


@dataclass(frozen=True, kw_only=True)
class PickedTransit:
    """Two landmarks, front and rear, that the user holds in line to find the mark of that name."""

    mark: str
    pair: Landmarks


def picked_at_stops(
    picked: Sequence[PickedTransit], stops: Sequence[Mark], variation: Variation, warnings: list[str]
) -> dict[str, tuple[Transit, ...]]:
    """The transits of each stop by its name; adds to ``warnings`` those that do not lead there.

    One whose rear is no farther than its front, as seen from the stop, or that has the stop between the two, is left
    out; one that passes farther off than is common comes with a warning.
    """
    found: dict[str, tuple[Transit, ...]] = {}
    for stop in {stop.name: stop for stop in stops}.values():
        mine = [one.pair for one in picked if one.mark == stop.name]
        seen = [measured_transit(stop.name, stop.lon, stop.lat, pair, variation) for pair in mine]
        for pair, transit in zip(mine, seen):
            warnings.extend(_doubts(stop.name, pair, transit))
        if any(seen):
            found[stop.name] = with_crossings(tuple(transit for transit in seen if transit is not None))
    return found


def _doubts(mark: str, pair: Landmarks, transit: Transit | None) -> list[str]:
    if transit is None:
        front, rear = pair.names
        return [
            tr(
                "The transit {front} / {rear} of {mark} is left out: from there {rear} is no farther than "
                "{front}, or on the other side. Swap the two, or pick others."
            ).format(front=front, rear=rear, mark=mark)
        ]
    off_m = abs(transit.offset_m)
    if off_m <= TransitLimits().offset_m:
        return []
    passes = (
        tr("The transit {transit} passes {off_m:.0f} m to the right of {mark}.")
        if transit.offset_m > 0.0
        else tr("The transit {transit} passes {off_m:.0f} m to the left of {mark}.")
    )
    return [passes.format(transit=transit_words(transit), off_m=off_m, mark=mark)]
