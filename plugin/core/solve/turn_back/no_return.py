"""The points of no return: from where on the way out turning back does not keep the hard stops any more."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from ...errors import StoppedError
from ...planar import along
from ...results.swim_plan import SwimPlan
from ...results.turn_back import HardStop, NoReturn
from ..request import SwimRequest
from ..windows.chart_limits import ChartLimits
from .hard_stops import spare_s
from .homeward import Water, swim_home
from .landings import Landing, WaysHome

PLACES_A_LEG = 13


class PointsOfNoReturn:
    """Looks for the last place on each leg from which some exit is reached in time."""

    def __init__(
        self,
        request: SwimRequest,
        plan: SwimPlan,
        stops: tuple[HardStop, ...],
        landings: tuple[Landing, ...],
        ways: WaysHome,
        chart: ChartLimits,
    ) -> None:
        self.request, self.plan, self.stops = request, plan, stops
        self.landings, self.ways, self.chart = landings, ways, chart
        self._groups: dict[int, dict[tuple, list[int]]] = {}

    def of_leg(
        self, number: int, waters: tuple[Water, ...], bad: tuple[Water, ...], is_cancelled: Callable[[], bool]
    ) -> tuple[NoReturn, ...]:
        """The points of leg ``number`` (from 0) in the water expected and on the bad days, the worst of these deciding;
        none where the leg is not swum.

        Looked for at thirteen even times of the track really swum: the point told is the last good one of them.
        """
        leg = self.plan.legs[number]
        if len(leg.track) < 2:
            return ()
        times = self.request.clock.seconds_of([point.moment for point in leg.track])
        places = self.request.frame.to_xy(np.array([[point.lon, point.lat] for point in leg.track]))
        share = np.linspace(0.0, len(times) - 1.0, PLACES_A_LEG)
        turn_s, starts = along(times, share), along(places, share)
        self._groups = {}
        safe = [self._safe(some, starts, turn_s, is_cancelled) for some in (waters, bad)]
        return tuple(self._point(number, bool(one), safe[one], turn_s, starts) for one in (0, 1))

    def _safe(
        self, waters: tuple[Water, ...], starts: np.ndarray, turn_s: np.ndarray, is_cancelled: Callable[[], bool]
    ) -> np.ndarray:
        """From which places (n, 2) some landing is reached in time in all of the waters, shape (n,)."""
        safe = np.zeros(len(starts), dtype=bool)
        for landing in range(len(self.landings)):
            if is_cancelled():
                raise StoppedError()
            arrive = np.max([self._home(water, landing, starts, turn_s) for water in waters], axis=0)
            with np.errstate(invalid="ignore"):
                safe |= np.all(spare_s(self.request, self.stops, turn_s, arrive) >= 0.0, axis=0)
        return safe

    def _home(self, water: Water, landing: int, starts: np.ndarray, turn_s: np.ndarray) -> np.ndarray:
        """Arrivals (n,) at a landing from places (n, 2), NaN where no way leads there."""
        arrive = np.full(len(starts), np.nan)
        for rest, rows in self._grouped(landing, starts).items():
            way = np.vstack([starts[rows[0]], np.array(rest)])
            homes = swim_home(self.request, self.chart, water, way, turn_s[rows], starts[rows])
            arrive[rows] = homes.arrive_s
        return arrive

    def _grouped(self, landing: int, starts: np.ndarray) -> dict[tuple, list[int]]:
        """Rows whose ways to a landing turn at the same corners, by these and the landing: they are swum together."""
        if landing not in self._groups:
            groups: dict[tuple, list[int]] = {}
            for row, start in enumerate(starts):
                way = self.ways.to_landing(start, landing)
                if way is not None:
                    groups.setdefault(tuple(map(tuple, way[1:])), []).append(row)
            self._groups[landing] = groups
        return self._groups[landing]

    def _point(self, number: int, bad: bool, safe: np.ndarray, turn_s: np.ndarray, places: np.ndarray) -> NoReturn:
        leg = self.plan.legs[number]
        way = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(places, axis=0).T))])
        whole = bool(safe.all())
        last = len(safe) - 1 if whole else max(int(np.argmin(safe)) - 1, 0)
        lon, lat = self.request.frame.to_lonlat(places[last])[0]
        about = {"moment": None, "lon": None, "lat": None}
        if not whole:
            about = {"moment": self.request.clock.moment(turn_s[last]), "lon": float(lon), "lat": float(lat)}
        return NoReturn(
            leg=leg.number, name=leg.end_name, pessimistic=bad, whole_leg=whole, way_m=float(way[last]), **about
        )
