"""The best orders of all, out of the tabulated legs: dynamic programming over times, then the best first.

Worked backward, the earliest end of the swim is known for every set of marks still to visit, every place and every time
of the table (M. Held and R. M. Karp, A dynamic programming approach to sequencing problems, J. SIAM 10 (1962) 196,
cited from memory, with times in the place of costs). It is then the rest of every order begun, so the orders of all
departures together come out best first, each as soon as it is complete, and what is over the swimmer's range, hours or
the daylight is left out on the way. Between a row of the table at which a leg is available and one at which it is not,
the best is hoped for: no order that can be swum comes out later than it takes, and whoever asks swims it to be sure.
"""

from __future__ import annotations

import heapq
from collections.abc import Callable, Iterator
from dataclasses import dataclass

import numpy as np

from ...words import marked, spoken
from .between_rows import least_between, leaving, way_at
from .leg_times import LegTable, LegTimes
from .request import OrderRequest

MOST_LOOKED_AT = 60_000
TOO_MANY = marked(
    "Not every order was looked at, so there may be a better one: take fewer marks, departures or alternatives."
)
NEARLY_S = 30.0  # over the time to be home: beside a row at which a leg is not available the table is as rough as that


@dataclass(frozen=True, kw_only=True)
class OrderFound:
    """A complete order at a departure: ``numbers`` of the places, entry and exit among them.

    For each leg ``ways`` has the number of its way and ``waits_s`` how much longer one stays before it; ``end_s`` is
    the end by the table.
    """

    depart_s: float
    numbers: tuple[int, ...]
    ways: tuple[int, ...]
    waits_s: tuple[float, ...]
    end_s: float

    @property
    def total_s(self) -> float:
        """From the departure to the end, seconds."""
        return self.end_s - self.depart_s


class EarliestEnds:
    """The earliest end (n,) from each place at each time of the table, by the set of marks left (a bit each)."""

    def __init__(self, order: OrderRequest, table: LegTable, check: Callable[[float], None]) -> None:
        self.order, self.table = order, table
        count = order.first_exit - 1
        self.everything = (1 << count) - 1
        self.ends: dict[tuple[int, int], np.ndarray] = {}
        self.lengths: dict[tuple[int, int], float] = {}
        self._onward = {pair: [_Onward(table, leg) for leg in legs] for pair, legs in table.legs.items()}
        sets = sorted(range(self.everything + 1), key=lambda left: bin(left).count("1"))
        for number, left in enumerate(sets):
            check(number / len(sets))
            for place in [0] if left == self.everything else range(1, count + 1):
                if place == 0 or not left >> (place - 1) & 1:
                    self._work_out(left, place)

    def next_places(self, left: int) -> list[tuple[int, int]]:
        """The places that may come next and the marks left after each."""
        if not left:
            return [(place, 0) for place in range(self.order.first_exit, len(self.order.places))]
        marks = [mark for mark in range(1, self.order.first_exit) if left >> (mark - 1) & 1]
        return [(mark, left & ~(1 << (mark - 1))) for mark in marks]

    def _work_out(self, left: int, place: int) -> None:
        best, length = np.full(len(self.table.times_s), np.inf), np.inf
        for following, rest in self.next_places(left):
            length = min(length, self.table.shortest_m[place, following] + self.length(rest, following))
            for onward in self._onward[place, following]:
                after = self.ends.get((rest, following)) if left else None
                np.minimum(best, onward.ends(after), out=best)
        self.ends[left, place], self.lengths[left, place] = best, length

    def length(self, left: int, place: int) -> float:
        """The least way still to swim from a place, metres; none from an exit."""
        return 0.0 if place >= self.order.first_exit else self.lengths[left, place]

    def end_at(self, left: int, place: int, t_s: float) -> float:
        """The earliest end from a place at a time, the time itself at an exit."""
        if place >= self.order.first_exit:
            return t_s
        ends, (row, share) = self.ends[left, place], self.table.row_of(t_s)
        if not 0 <= row < len(ends) - (share > 0.0):
            return np.inf
        return float(least_between(ends[row], ends[min(row + 1, len(ends) - 1)], share, self.table.step_s))


class _Onward:
    """A leg's ends as places in the table, so that what follows can be read off for all times at once."""

    def __init__(self, table: LegTable, leg: LegTimes) -> None:
        self.leg = leg
        n = len(table.times_s)
        self.step_s = table.step_s
        place = np.where(np.isfinite(leg.hoped_s), (leg.hoped_s - table.times_s[0]) / self.step_s, -1.0)
        self.row = np.floor(place).astype(int)
        self.share = place - self.row
        self.inside = (place >= 0.0) & (self.row < n - 1)
        self.row[~self.inside] = 0

    def ends(self, after: np.ndarray | None) -> np.ndarray:
        """The end of the swim (n,) leaving at each time; ``after`` are the ends from the place reached."""
        if after is None:
            return self.leg.hoped_s
        ends = least_between(after[self.row], after[self.row + 1], self.share, self.step_s)
        return np.where(self.inside, ends, np.inf)


@dataclass(frozen=True, kw_only=True)
class _Begun:
    """An order begun: what is left of the marks, and the time at which the stay at its last place is over."""

    departure: int
    numbers: tuple[int, ...]
    left: int
    now_s: float
    length_m: float = 0.0
    ways: tuple[int, ...] = ()
    waits_s: tuple[float, ...] = ()


def best_orders(
    order: OrderRequest,
    ends: EarliestEnds,
    latest_s: np.ndarray,
    check: Callable[[float], None],
    warnings: list[str],
) -> Iterator[OrderFound]:
    """Complete orders of all departures, the quickest first and the earliest of equals; ``latest_s`` (n,) is when each
    departure must be home at the latest, -infinite where it may not start.

    ``warnings`` is told where there are too many to look at all.
    """
    queue: list[tuple] = []
    for number, depart_s in enumerate(order.depart_s.tolist()):
        end_s = ends.end_at(ends.everything, 0, depart_s)
        if end_s <= latest_s[number] + NEARLY_S:
            begun = _Begun(departure=number, numbers=(0,), left=ends.everything, now_s=depart_s)
            heapq.heappush(queue, _keyed(begun, end_s - depart_s, depart_s))
    looked_at = 0
    while queue:
        if looked_at == MOST_LOOKED_AT:
            warnings.append(spoken(TOO_MANY))
            return
        begun = heapq.heappop(queue)[-1]
        depart_s = float(order.depart_s[begun.departure])
        if begun.numbers[-1] >= order.first_exit:
            yield _complete(begun, depart_s)
            continue
        looked_at += 1
        if looked_at % 20 == 0:
            check(looked_at / MOST_LOOKED_AT)
        for onward, end_s in _steps(order, ends, begun):
            if end_s <= latest_s[begun.departure] + NEARLY_S:
                heapq.heappush(queue, _keyed(onward, end_s - depart_s, depart_s))


def _keyed(begun: _Begun, total_s: float, depart_s: float) -> tuple:
    # To a tenth of a second, so that of equals the one that is nearer to its end comes first.
    return round(total_s, 1), depart_s, -len(begun.numbers), begun.numbers, begun.now_s, id(begun), begun


def _complete(begun: _Begun, depart_s: float) -> OrderFound:
    return OrderFound(
        depart_s=depart_s,
        numbers=begun.numbers,
        ways=begun.ways,
        waits_s=begun.waits_s,
        end_s=begun.now_s,
    )


def _steps(order: OrderRequest, ends: EarliestEnds, begun: _Begun) -> Iterator[tuple[_Begun, float]]:
    """An order begun with each place that may come next, within the swimmer's range, and the end it can then have."""
    here = begun.numbers[-1]
    for place, left in ends.next_places(begun.left):
        options = (
            (leg, *times)
            for leg in ends.table.legs[here, place]
            for times in leaving(ends.table, leg, begun.now_s, here != 0)
        )
        for leg, leave_s, now_s in options:
            way = way_at(ends.table, leg, leave_s)
            length_m = begun.length_m + float(leg.length_m[way])
            if length_m + ends.length(left, place) > order.swim.swimmer.range_m:
                continue
            onward = _Begun(
                departure=begun.departure,
                numbers=(*begun.numbers, place),
                left=left,
                now_s=now_s,
                length_m=length_m,
                ways=(*begun.ways, way),
                waits_s=(*begun.waits_s, leave_s - begun.now_s),
            )
            yield onward, ends.end_at(left, place, now_s)
