"""A mark's numbers on one compass heading a leg, beside those of the solver."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from ...chart.marks import Mark
from ...results.reach import Numbers
from ...words import spoken, tr
from ..turn_back.homeward import Days, Homeward, swim_home
from ..turn_back.leaving import ENDS_BY
from ..ways import Obstacles, way_round
from ..windows.chart_limits import ChartLimits
from ..windows.limits import LIMITS
from .request import ReachRequest

EVERY_S, EDGE_S = 300.0, 15.0
MOST_EXITS = 6


class OneHeading:
    """Swims from the entry to marks and home again, each leg on the one heading that ends on its end.

    The ways lead round land and what nobody may enter; every track is checked against the chart, as a turn back's is.
    """

    def __init__(
        self, request: ReachRequest, landings: list[Mark], box: np.ndarray, is_cancelled: Callable[[], bool]
    ) -> None:
        swim, clock = request.swim, request.swim.clock
        self.request, self.landings = request, landings
        self.end_s = request.depart_s + request.horizon_s
        expected = {"rate_doubts": (0.0,), "phase_doubts": (0.0,), "pace_factors": (1.0,)}
        self.days = Days(request=swim, until_s=self.end_s, is_cancelled=is_cancelled, **expected)
        self.chart = ChartLimits(swim, np.array([request.depart_s]))
        moments = clock.moment(request.depart_s), clock.moment(self.end_s)
        self.obstacles = Obstacles.of(swim.chart, box, *moments, clock.zone, is_cancelled=is_cancelled)

    def numbers(self, mark: Mark) -> Numbers:
        """The minutes to the mark, and the latest leaving for the exit that allows the latest one."""
        place = self.request.place_m(mark)
        out = self._swum(self.request.entry_m, place, np.array([self.request.depart_s]))
        out_min = (float(out.arrive_s[0, 0]) - self.request.depart_s) / 60.0
        latest_s, landing = self._latest(place)
        found = np.isfinite(latest_s)
        return Numbers(
            out_min=out_min if np.isfinite(out_min) else None,
            latest_min=(latest_s - self.request.depart_s) / 60.0 if found else None,
            exit=landing if found else "",
            reason=self._why_not(out, found),
        )

    @staticmethod
    def _why_not(out: Homeward, home: bool) -> str:
        code = int(out.limit[0, 0])
        if code:
            return tr("the way out is stopped by {what}").format(what=spoken(ENDS_BY[LIMITS[code]]))
        return "" if home else tr("no exit is reached from it in time")

    def _latest(self, place_m: np.ndarray) -> tuple[float, str]:
        """The last second at which the place is left for an exit reached in time, and that exit."""
        best, name = float("nan"), ""
        exits = [(one, self.request.place_m(one)) for one in self.landings]
        exits.sort(key=lambda pair: float(np.hypot(*(pair[1] - place_m))))
        for mark, end in exits[:MOST_EXITS]:
            latest = self._latest_to(place_m, end)
            if np.isfinite(latest) and not latest <= best:
                best, name = latest, mark.name
        return best, name

    def _latest_to(self, place_m: np.ndarray, end_m: np.ndarray) -> float:
        leave = np.arange(self.request.depart_s, self.end_s + 1.0, EVERY_S)
        good = np.flatnonzero(self._in_time(place_m, end_m, leave))
        if not len(good):
            return float("nan")
        inside, outside = leave[good[-1]], min(leave[good[-1]] + EVERY_S, self.end_s)
        while outside - inside > EDGE_S:
            # Four at once: a call costs more than a row.
            between = np.linspace(inside, outside, 6)[1:-1]
            count = int(np.argmin(np.append(self._in_time(place_m, end_m, between), False)))
            steps = np.concatenate([[inside], between, [outside]])
            inside, outside = float(steps[count]), float(steps[count + 1])
        return float(inside)

    def _in_time(self, place_m: np.ndarray, end_m: np.ndarray, leave_s: np.ndarray) -> np.ndarray:
        with np.errstate(invalid="ignore"):
            return self._swum(place_m, end_m, leave_s).arrive_s[0] <= self.end_s

    def _swum(self, start_m: np.ndarray, end_m: np.ndarray, leave_s: np.ndarray) -> Homeward:
        return swim_home(self.days, self.chart, way_round(start_m, end_m, self.obstacles), leave_s)
