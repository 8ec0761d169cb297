"""The points of no return: from where on the way out turning back does not keep the hard stops any more."""

from __future__ import annotations

import numpy as np

from ...planar import along
from ...results.swim_plan import SwimPlan
from ...results.turn_back import HardStop, NoReturn
from ..windows.chart_limits import ChartLimits
from .hard_stops import spare_s
from .homeward import Days, swim_home
from .landings import WaysHome

PLACES_A_LEG = 13


class PointsOfNoReturn:
    """Looks for the last place on each leg from which some exit is reached in time."""

    def __init__(
        self, days: Days, plan: SwimPlan, stops: tuple[HardStop, ...], ways: WaysHome, chart: ChartLimits
    ) -> None:
        self.days, self.request, self.plan = days, days.request, plan
        self.stops, self.ways, self.chart = stops, ways, chart

    def of_leg(self, number: int) -> tuple[NoReturn, ...]:
        """The points of leg ``number`` (from 0) on the day expected and on the bad days, the worst of these deciding;
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
        safe = np.zeros((2, PLACES_A_LEG), dtype=bool)
        for landing in range(len(self.ways.landings)):
            with np.errstate(invalid="ignore"):
                spare = spare_s(self.request, self.stops, turn_s, self._home(landing, starts, turn_s))
                safe |= np.all(spare >= 0.0, axis=0)
        return tuple(self._point(number, bad, safe[int(bad)], turn_s, starts) for bad in (False, True))

    def _home(self, landing: int, starts: np.ndarray, turn_s: np.ndarray) -> np.ndarray:
        """Arrivals (2, n) at a landing from places (n, 2), expected and on the worst day; NaN where no way leads."""
        arrive = np.full((2, len(starts)), np.nan)
        for rest, rows in self._grouped(landing, starts).items():
            way = np.vstack([starts[rows[0]], np.array(rest)])
            home = swim_home(self.days, self.chart, way, turn_s[rows], starts[rows])
            arrive[:, rows] = np.fmin(arrive[:, rows], np.stack([home.arrive_s[0], home.worst_s]))
        return arrive

    def _grouped(self, landing: int, starts: np.ndarray) -> dict[tuple, list[int]]:
        """Rows whose ways to a landing turn at the same corners, by these and the landing: they are swum together."""
        groups: dict[tuple, list[int]] = {}
        for row, start in enumerate(starts):
            for way in self.ways.to_landing(start, landing):
                groups.setdefault(tuple(map(tuple, way[1:])), []).append(row)
        return groups

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
