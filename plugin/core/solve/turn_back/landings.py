"""Places to land, and the way to each of them from anywhere on the swim."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np

from ...chart.hours import InForce
from ...planar import bounds_of
from ...words import tr
from ..request import SwimRequest
from ..ways import Obstacles, way_round

SAME_PLACE_M = 15.0
MOST = 8
AROUND_M = 3000.0


@dataclass(frozen=True, kw_only=True)
class Landing:
    """A place to land in the plan's frame (2,); ``planned`` is the route's own end."""

    name: str
    place_m: np.ndarray
    planned: bool = False


def landings_of(request: SwimRequest, warnings: list[str]) -> tuple[Landing, ...]:
    """The route's end, its start, and the plan's other exits, the nearest eight of them, each place once."""
    stops_m = request.stops_m
    found = [Landing(name=request.stops[-1].name, place_m=stops_m[-1], planned=True)]
    exits_m = request.frame.to_xy(np.array([[one.lon, one.lat] for one in request.exits]).reshape(-1, 2))
    others = [(one.name, place) for one, place in zip(request.exits, exits_m)]
    middle = stops_m.mean(axis=0)
    others.sort(key=lambda pair: float(np.hypot(*(pair[1] - middle))))
    for name, place in [(request.stops[0].name, stops_m[0]), *others]:
        if all(np.hypot(*(place - known.place_m)) > SAME_PLACE_M for known in found):
            found.append(Landing(name=_own_name(name, found), place_m=place))
    if len(found) > MOST:
        left = ", ".join(landing.name for landing in found[MOST:])
        warnings.append(
            tr("Only the {most} nearest exits are looked at for turning back; left out: {left}.").format(
                most=MOST, left=left
            )
        )
    return tuple(found[:MOST])


def _own_name(name: str, found: list[Landing]) -> str:
    """The name, with a number behind it where another place has it already: ``Slip (2)``."""
    taken, own, number = {landing.name for landing in found}, name, 1
    while own in taken:
        number += 1
        own = f"{name} ({number})"
    return own


class WaysHome:
    """Ways (k, 2) over water to each landing, round land and round what nobody may enter.

    An area that is closed at some hours only has two ways past it: round it, and through it for the other hours.
    """

    def __init__(
        self,
        request: SwimRequest,
        landings: tuple[Landing, ...],
        first_s: float,
        last_s: float,
        is_cancelled: Callable[[], bool] = bool,
    ) -> None:
        places = np.vstack([request.stops_m, *[landing.place_m for landing in landings]])
        box = bounds_of(places) + AROUND_M * np.array([-1.0, -1.0, 1.0, 1.0])
        clock, chart = request.clock, request.chart
        always = tuple(area for area in chart.closed_areas if area.in_force == InForce())
        charts = [chart] if len(always) == len(chart.closed_areas) else [chart, replace(chart, closed_areas=always)]
        span = (clock.moment(first_s), clock.moment(last_s), clock.zone)
        self.landings = landings
        self.obstacles = [Obstacles.of(one, box, *span, is_cancelled=is_cancelled) for one in charts]

    def to_landing(self, start_m: np.ndarray, landing: int) -> list[np.ndarray]:
        """The ways to one landing, none where there is none."""
        found: list[np.ndarray] = []
        for obstacles in self.obstacles:
            way = way_round(start_m, self.landings[landing].place_m, obstacles)
            if way is not None and not any(np.array_equal(way, known) for known in found):
                found.append(way)
        return found
