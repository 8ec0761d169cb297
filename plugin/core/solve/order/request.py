"""Marks to visit in an order that is still to be found, and the ways between them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np

from ...chart.hours import InForce
from ...chart.marks import Mark, Route
from ...errors import StoppedError, SwimPlanError
from ...planar import bounds_of
from ...words import tr
from ..request import SwimRequest
from ..ways import KEEP_OFF_M, Obstacles, way_round

MOST_MARKS = 9
AROUND_M = 2000.0
WIDE_M = 80.0  # about as far as a leg of half an hour bows where the stream turns; common practice, no source
Ways = dict[tuple[int, int], tuple[np.ndarray, ...]]


@dataclass(frozen=True, kw_only=True)
class OrderRequest:
    """An order to find: ``swim`` goes from the entry over the marks, in any order, to the first of the ``exits``.

    ``depart_s`` (n,) are the departures to try, rising and evenly spaced, in seconds from the plan's start. Places are
    numbered: 0 the entry, then the marks from 1, then the exits. The heading mode is one heading a leg.
    """

    swim: SwimRequest
    exits: tuple[Mark, ...]
    depart_s: np.ndarray

    def __post_init__(self) -> None:
        if not 1 <= len(self.marks) <= MOST_MARKS:
            raise SwimPlanError(
                asked=tr("Asked for the order of {count} marks").format(count=len(self.marks)),
                allowed=tr("From 1 to {most_marks} marks are put in order").format(most_marks=MOST_MARKS),
                remedy=tr("Name the marks to visit"),
            )

    @property
    def marks(self) -> tuple[Mark, ...]:
        """The marks to visit."""
        return self.swim.stops[1:-1]

    @property
    def places(self) -> tuple[Mark, ...]:
        """The entry, the marks and the exits."""
        return (*self.swim.stops[:-1], *self.exits)

    @property
    def first_exit(self) -> int:
        """The number of the first exit among the places."""
        return len(self.swim.stops) - 1

    @property
    def places_m(self) -> np.ndarray:
        """The places (n, 2) in the plan's frame."""
        return self.swim.frame.to_xy(np.array([[place.lon, place.lat] for place in self.places]))

    def pairs(self) -> list[tuple[int, int]]:
        """The legs there may be: from the entry to marks, between marks, and from marks to exits."""
        marks = range(1, self.first_exit)
        exits = range(self.first_exit, len(self.places))
        between = [(one, other) for one in marks for other in (*marks, *exits) if one != other]
        return [(0, mark) for mark in marks] + between

    def swim_over(
        self, numbers: tuple[int, ...], ways: tuple[np.ndarray, ...], waits_s: tuple[float, ...]
    ) -> SwimRequest:
        """The swim over places in an order, one way (k, 2) a leg, staying so much longer at each before leaving it."""
        stops: list[Mark] = []
        for number, way, wait_s in zip(numbers, ways, waits_s):
            place = self.places[number]
            stay_min = place.stay_min + wait_s / 60.0 if number else 0.0
            stops.append(replace(place, stay_min=stay_min))
            turns = self.swim.frame.to_lonlat(way[1:-1]) if len(way) > 2 else np.empty((0, 2))
            stops += [
                Mark(name=tr("Turn {turn}").format(turn=turn), kind="waypoint", lon=float(lon), lat=float(lat))
                for turn, (lon, lat) in enumerate(turns, start=1)
            ]
        last = self.places[numbers[-1]]
        # The entry may be the exit too: one cannot stay at it.
        stops.append(replace(last, kind="exit", stay_min=0.0))
        names = " - ".join(self.places[number].name for number in numbers)
        lonlat = np.array([[stop.lon, stop.lat] for stop in stops])
        return replace(self.swim, route=Route(name=names, lonlat=lonlat), stops=tuple(stops))


def ways_between(
    order: OrderRequest, last_s: float, check: Callable[[float], None], *, is_cancelled: Callable[[], bool] = bool
) -> Ways:
    """The ways to try for each leg, none where no way leads over water; the first is the shortest.

    Where an area is closed for part of the time one leads through it and one round it; and one that turns at a coast
    has a wider one beside it, for hours at which the stream bows the track of the first onto the land.
    """
    swim, places_m = order.swim, order.places_m
    box = bounds_of(places_m) + AROUND_M * np.array([-1.0, -1.0, 1.0, 1.0])
    clock = swim.clock
    first, last = clock.moment(float(order.depart_s[0])), clock.moment(last_s)
    always = [area.area for area in swim.chart.closed_areas if area.rule == "no_entry" and area.in_force == InForce()]
    barred = Obstacles.of(swim.chart, box, first, last, clock.zone, is_cancelled=is_cancelled)
    now_and_then = tuple(area for area in barred.closed if not any(area is one for one in always))
    at_least = barred if not now_and_then else _without(barred, now_and_then)
    found: Ways = {}
    pairs = order.pairs()
    for number, (start, end) in enumerate(pairs):
        check(number / len(pairs))
        back = found.get((end, start))
        found[start, end] = (
            tuple(way[::-1] for way in back)
            if back is not None
            else _ways(places_m[start], places_m[end], (at_least,) if at_least is barred else (at_least, barred))
        )
    return found


def _without(obstacles: Obstacles, left_out: tuple) -> Obstacles:
    kept = tuple(area for area in obstacles.closed if not any(area is one for one in left_out))
    return replace(obstacles, closed=kept)


def _ways(start_m: np.ndarray, end_m: np.ndarray, obstacles: tuple[Obstacles, ...]) -> tuple[np.ndarray, ...]:
    ways: list[np.ndarray] = []
    for one in obstacles:
        for keep_off_m in (KEEP_OFF_M, WIDE_M):
            way = way_round(start_m, end_m, one, keep_off_m=keep_off_m)
            if way is not None and not any(np.array_equal(way, known) for known in ways):
                ways.append(way)
            if way is None or len(way) == 2:
                break
    return tuple(ways)


def stopper(
    is_cancelled: Callable[[], bool], progress: Callable[[float], None] | None, low: float, high: float
) -> Callable[[float], None]:
    """A function of the share done of a part of the work that goes from ``low`` to ``high`` of all of it: it tells the
    progress, and raises StoppedError when the user has stopped."""

    def check(share: float) -> None:
        if is_cancelled():
            raise StoppedError()
        if progress is not None:
            progress(low + share * (high - low))

    return check
