"""What the swimmer, the daylight and the depth at the marks stop, for very many departures."""

from __future__ import annotations

import numpy as np

from ...clock import UTC
from ...daylight import daylight_on
from ...geodesy import geodesic_leg
from ...words import tr
from ..flags.depths import charted_depth
from ..request import SwimRequest
from .limits import Told

DAY_S = 86400.0
LOOKS = 25  # at the depth during a stay, as often as planswim looks


class OwnLimits:
    """The limits that need the whole swim."""

    def __init__(self, request: SwimRequest) -> None:
        self.request = request
        self.depths_m = [charted_depth(request, number).depth_m for number in range(len(request.stops))]
        self._days: dict[int, tuple[float, float]] = {}

    @property
    def names(self) -> tuple[str, ...]:
        """The stops' names."""
        return tuple(stop.name for stop in self.request.stops)

    def check(self, told: Told, arrive_s: np.ndarray, leave_s: np.ndarray, first_item: int) -> np.ndarray:
        """Tell what stops departures with arrivals and leavings (n, n_stops); their civil dusk (n,) comes back."""
        request, swimmer = self.request, self.request.swimmer
        n, last = len(arrive_s), arrive_s.shape[1] - 1
        if route_length_m(request) > swimmer.range_m:
            told.tell(np.ones(n, dtype=bool), "range", 0)
        dawn_s, dusk_s = self.light(arrive_s[:, 0])
        with np.errstate(invalid="ignore"):
            told.tell(arrive_s[:, 0] < dawn_s, "dark", 1)
            for number in range(last, 0, -1):
                told.tell(arrive_s[:, number] > dusk_s, "dark", number)
            told.tell(arrive_s[:, -1] - arrive_s[:, 0] > 3600.0 * swimmer.max_hours, "hours", 0)
        for number, stop in enumerate(request.stops):
            if stop.kind == "mark" and np.isfinite(self.depths_m[number]) and request.tide is not None:
                rows = self.unfit(number, arrive_s[:, number], leave_s[:, number])
                told.tell(rows, "depth", max(number, 1), first_item + number)
        return dusk_s

    def unfit(self, number: int, arrive_s: np.ndarray, leave_s: np.ndarray) -> np.ndarray:
        """Whether the mark is too deep or too shoal at any time of the stay (n,); an unknown height is not."""
        share = np.linspace(0.0, 1.0, LOOKS)
        times = arrive_s[:, None] + np.fmax(leave_s - arrive_s, 0.0)[:, None] * share
        depth = self.depths_m[number] + self.request.tide.height_m(times)
        known = np.isfinite(depth).all(axis=1)
        with np.errstate(invalid="ignore"):
            deep = depth.max(axis=1) > self.request.swimmer.depth_limit_m
            return known & (deep | (depth.min(axis=1) < self.request.settings.shallow_depth_m))

    def light(self, depart_s: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Civil dawn and dusk (n,) of the day, by the sun at the entry, of each departure."""
        entry = self.request.stops[0]
        noon = 12.0 * 3600.0 - self._utc_of_day_s() - 240.0 * entry.lon
        day = np.floor((depart_s - noon) / DAY_S + 0.5).astype(int)
        for number in np.unique(day):
            if int(number) not in self._days:
                self._days[int(number)] = self._edges(noon + DAY_S * int(number))
        edges = np.array([self._days[int(number)] for number in day]).reshape(-1, 2)
        return edges[:, 0], edges[:, 1]

    def _utc_of_day_s(self) -> float:
        """Seconds of the plan's start after midnight UTC."""
        start = self.request.clock.start.astimezone(UTC)
        return start.hour * 3600.0 + start.minute * 60.0 + start.second + start.microsecond / 1e6

    def _edges(self, midday_s: float) -> tuple[float, float]:
        """Civil dawn and dusk around a midday in seconds; the whole day where it stays light, none where it is dark."""
        request, entry = self.request, self.request.stops[0]
        light = daylight_on(entry.lon, entry.lat, request.clock.moment(midday_s), request.clock)
        if light.always_light:
            return -np.inf, np.inf
        if light.civil_dawn is None or light.civil_dusk is None:
            return -np.inf, -np.inf
        return request.clock.seconds(light.civil_dawn), request.clock.seconds(light.civil_dusk)


def route_length_m(request: SwimRequest) -> float:
    """Geodesic length of the route, metres."""
    stops = request.stops
    return sum(geodesic_leg(a.lon, a.lat, b.lon, b.lat)[0] for a, b in zip(stops, stops[1:]))


def depths_not_checked(request: SwimRequest) -> tuple[str, ...]:
    """What is not known of the depth at the marks, in sentences: it stops no departure."""
    marks = [(number, stop) for number, stop in enumerate(request.stops) if stop.kind == "mark"]
    bare = [stop.name for number, stop in marks if np.isnan(charted_depth(request, number).depth_m)]
    words = [tr("No charted depth at {bare}: not checked.").format(bare=", ".join(dict.fromkeys(bare)))] if bare else []
    if len(bare) < len(marks) and request.tide is None:
        words.append(tr("The height of tide is not known: the depth at the marks is not checked."))
    return tuple(words)
