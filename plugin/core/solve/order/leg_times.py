"""Every leg there may be as a function of the time it is begun: when the stay at its end is over, and by which way.

Leaving later may get one there earlier where the stream turns, so staying longer at a mark is allowed, as long as the
mark is neither too deep, too shoal nor closed. A leg's function is tabulated at even times; between two of them it is
straight.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from ...planar import length_m
from ...water.stream import StoppableStream
from ..quick_legs import QuickLegs, quick_legs
from ..swim import GridStream
from ..swum import STREAM_UNKNOWN
from ..windows.chart_limits import ChartLimits
from ..windows.limits import Told
from ..windows.own_limits import OwnLimits
from .request import OrderRequest, Ways

ROWS_AT_ONCE = 512  # a twentieth of a second
MOST_SLOPE = 2.0  # of arrivals over departures where a leg becomes available
WITHIN_S = 0.3  # of a leg in the table; what it ranks best is swum again


@dataclass(frozen=True, kw_only=True)
class LegTimes:
    """One leg over the times of a table (n,), for stays that end in one fit span of the place at its end.

    ``end_s`` (n,) is when the stay is over leaving at once, ``waited_s`` (n,) the same leaving at the best row from
    then on, both infinite where there is none; ``hoped_s`` (n,) the least it can be leaving at any time from then on.
    ``leave_row`` (n,) is the row of ``waited_s``, ``way`` (n,) the number of the way taken; ``length_m`` (n_ways,) are
    the ways' lengths.
    """

    end_s: np.ndarray
    waited_s: np.ndarray
    hoped_s: np.ndarray
    leave_row: np.ndarray
    way: np.ndarray
    length_m: np.ndarray


@dataclass(frozen=True, kw_only=True)
class LegTable:
    """The legs (start, end) of places at times (n,), a ``LegTimes`` for each fit span of the end that can be met.

    ``shortest_m`` is the length of each leg's shortest way, infinite where none leads over water.
    """

    times_s: np.ndarray
    legs: dict[tuple[int, int], tuple[LegTimes, ...]]
    shortest_m: dict[tuple[int, int], float]

    @property
    def step_s(self) -> float:
        """Seconds from row to row."""
        return float(self.times_s[1] - self.times_s[0])

    def row_of(self, t_s: float) -> tuple[int, float]:
        """The row at or before a time, and the share of the step beyond it."""
        place = (t_s - self.times_s[0]) / self.step_s
        row = int(np.floor(place + 1e-9))
        share = place - row
        return row, share if share > 1e-6 else 0.0


class LegTimer:
    """Tabulates legs for an order that is looked for; raises StoppedError when stopped."""

    def __init__(
        self, order: OrderRequest, ways: Ways, times_s: np.ndarray, *, is_cancelled: Callable[[], bool] = bool
    ) -> None:
        self.order, self.ways, self.times_s = order, ways, times_s
        water = StoppableStream(stream=order.swim.stream, is_cancelled=is_cancelled)
        self.grid = GridStream(stream=water, frame=order.swim.frame)
        self.chart, self.own = ChartLimits(order.swim, times_s), OwnLimits(order.swim)
        dawn_s, dusk_s = self.own.light(times_s)
        # Nobody swims in the dark: those rows are left blank.
        self.leave_s = np.where((times_s < dawn_s) | (times_s > dusk_s), np.nan, times_s)
        self.fit = [self._fit_spans(number) for number in range(len(order.places))]

    def table(self, check: Callable[[float], None]) -> LegTable:
        """All the legs; ``check`` is called with the share done, often."""
        pairs, legs = self.order.pairs(), {}
        for number, pair in enumerate(pairs):
            legs[pair] = self._leg(pair, lambda share, done=number: check((done + share) / len(pairs)))
        shortest = {pair: min(map(length_m, self.ways[pair]), default=np.inf) for pair in pairs}
        return LegTable(times_s=self.times_s, legs=legs, shortest_m=shortest)

    def _leg(self, pair: tuple[int, int], check: Callable[[float], None]) -> tuple[LegTimes, ...]:
        start, end = pair
        ways = self.ways[pair]
        ends = np.full((max(len(ways), 1), len(self.times_s)), np.inf)
        for number, way in enumerate(ways):
            for row in range(0, len(self.times_s), ROWS_AT_ONCE):
                check((number + row / len(self.times_s)) / len(ways))
                rows = slice(row, row + ROWS_AT_ONCE)
                ends[number, rows] = self._stay_ends(pair, way, self.leave_s[rows])
        best = ends.argmin(axis=0)
        end_s = ends[best, np.arange(len(best))]
        spans = self._span_at(end, end_s)
        lengths = np.array([length_m(way) for way in ways])
        found = []
        for span in np.unique(spans[np.isfinite(end_s)]):
            here = np.where(spans == span, end_s, np.inf)
            fit = self.fit[start] if start else None
            waited, leave = _after_waiting(here, fit)
            hoped, _ = _after_waiting(_hoped(here, self.times_s[1] - self.times_s[0]), fit)
            found.append(
                LegTimes(end_s=here, waited_s=waited, hoped_s=hoped, leave_row=leave, way=best, length_m=lengths)
            )
        return tuple(found)

    def _stay_ends(self, pair: tuple[int, int], way: np.ndarray, leave_s: np.ndarray) -> np.ndarray:
        """When the stay at the end is over, infinite where the leg or the stay cannot be."""
        order, (start, end) = self.order, pair
        is_mark = end < order.first_exit
        stay_s = 60.0 * order.places[end].stay_min if is_mark else 0.0
        told, now, last = Told(len(leave_s)), np.array(leave_s), len(way) - 2
        for piece in range(last + 1):
            leg, can = self._piece(way[piece], way[piece + 1], now)
            told.tell(np.isfinite(now) & ~can & (leg.ending == STREAM_UNKNOWN), "unknown", 1)
            now = np.where(can, leg.arrive_s, np.nan)
            beaches = (start == 0 and piece == 0, not is_mark and piece == last)
            self.chart.check(told, 1, leg, can, now + (stay_s if piece == last else 0.0), beaches)
        if is_mark and order.swim.tide is not None and np.isfinite(self.own.depths_m[end]):
            told.tell(self.own.unfit(end, now, now + stay_s), "depth", 1)
        return np.where((told.limit == 0) & np.isfinite(now), now + stay_s, np.inf)

    def _piece(self, start_m: np.ndarray, end_m: np.ndarray, now_s: np.ndarray) -> tuple[QuickLegs, np.ndarray]:
        swim, pace = self.order.swim, self.order.swim.swimmer.made_good_m_s
        least = swim.swimmer.min_ground_speed_m_s
        leg = quick_legs(
            self.grid, start_m, end_m, now_s, pace, step_s=swim.way.step_s, slowest_m_s=least, within_s=WITHIN_S
        )
        return leg, leg.swimmable(float(np.hypot(*(end_m - start_m))), pace, least)

    def _fit_spans(self, number: int) -> np.ndarray:
        """At each time the number of the span in which one may stay at a place without a break, -1 in none (n,)."""
        order, times_s = self.order, self.times_s
        fit = np.ones(len(times_s), dtype=bool)
        if 0 < number < order.first_exit:
            if order.swim.tide is not None and np.isfinite(self.own.depths_m[number]):
                fit &= ~self.own.unfit(number, times_s, times_s)
            fit &= ~self.chart.barred_at(order.places_m[number], times_s)
        begins = fit & ~np.concatenate([[False], fit[:-1]])
        return np.where(fit, np.cumsum(begins) - 1, -1)

    def _span_at(self, number: int, t_s: np.ndarray) -> np.ndarray:
        """The fit span of a place that each time (n,), infinite for none, falls into; -1 for none."""
        step = self.times_s[1] - self.times_s[0]
        place = np.where(np.isfinite(t_s), (t_s - self.times_s[0]) / step, -1.0)
        row = np.clip(np.floor(place).astype(int), 0, len(self.times_s) - 2)
        span = np.where(self.fit[number][row] >= 0, self.fit[number][row], self.fit[number][row + 1])
        return np.where(place < 0.0, -1, span)


def _hoped(end_s: np.ndarray, step_s: float) -> np.ndarray:
    """The ends, and at a row before one that is available what can be hoped for: that it becomes so right after it."""
    hopes = end_s.copy()
    opens = np.flatnonzero(np.isinf(end_s[:-1]) & np.isfinite(end_s[1:]))
    hopes[opens] = end_s[opens + 1] - MOST_SLOPE * step_s
    return hopes


def _after_waiting(end_s: np.ndarray, spans: np.ndarray | None) -> tuple[np.ndarray, np.ndarray]:
    """The earliest end from each time on while the place is fit, and the row it leaves at; None: nobody waits there."""
    rows = np.arange(len(end_s))
    if spans is None:
        return end_s, rows
    waited, leave = end_s.copy(), rows.copy()
    for row in range(len(end_s) - 2, -1, -1):
        later = row + 1
        if spans[row] >= 0 and spans[row] == spans[later] and waited[later] < waited[row]:
            waited[row], leave[row] = waited[later], leave[later]
    return waited, leave
