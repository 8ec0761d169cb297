"""Orders swum again by the solver that plans swims, and told."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable
from dataclasses import dataclass

import numpy as np

from ...results.best_order import OrderPlan, OrderStop
from ...words import tr
from ..request import SwimRequest
from ..windows.departures import DeparturesSwum, swim_departures
from ..windows.own_limits import route_length_m
from ..windows.words import limit_words
from .best_first import OrderFound
from .request import OrderRequest, Ways

TOLD_FROM_MIN = 0.5


@dataclass(frozen=True, kw_only=True)
class OrderSwum:
    """An order as swum at one departure: a row of the departures swum together with the same waits."""

    numbers: tuple[int, ...]
    waits_s: tuple[float, ...]
    swim: SwimRequest
    swum: DeparturesSwum
    row: int

    @property
    def feasible(self) -> bool:
        """Whether nothing stops it."""
        return bool(self.swum.feasible[self.row])

    @property
    def depart_s(self) -> float:
        """The departure."""
        return float(self.swum.depart_s[self.row])

    @property
    def total_s(self) -> float:
        """From the departure to the end, NaN where it does not get there."""
        return float(self.swum.total_s[self.row])

    @property
    def legs_swum(self) -> int:
        """How many legs it gets through."""
        return int(np.isfinite(self.swum.arrive_s[self.row]).sum())


def swim_again(
    order: OrderRequest, ways: Ways, found: Iterable[OrderFound], is_cancelled: Callable[[], bool]
) -> list[OrderSwum]:
    """Swim each order at its departure, those with the same ways and waits together."""
    together = defaultdict(list)
    for one in found:
        together[one.numbers, one.ways, tuple(np.round(one.waits_s, 3).tolist())].append(one.depart_s)
    again = []
    for (numbers, taken, waits_s), departs in together.items():
        pairs = zip(numbers, numbers[1:])
        legs = tuple(ways[pair][way] for pair, way in zip(pairs, taken))
        swim = order.swim_over(numbers, legs, waits_s)
        swum = swim_departures(swim, np.array(sorted(departs)), is_cancelled=is_cancelled)
        rows = range(len(swum.depart_s))
        again += [OrderSwum(numbers=numbers, waits_s=waits_s, swim=swim, swum=swum, row=row) for row in rows]
    return again


def told(order: OrderRequest, one: OrderSwum, rank: int) -> OrderPlan:
    """An order as a result."""
    clock, swum, row = one.swim.clock, one.swum, one.row
    longer = iter([*(wait_s / 60.0 for wait_s in one.waits_s), 0.0])
    stops = tuple(
        OrderStop(
            name=stop.name,
            lon=stop.lon,
            lat=stop.lat,
            arrive=clock.moment(swum.arrive_s[row, number]),
            leave=clock.moment(swum.leave_s[row, number]),
            stay_min=stop.stay_min,
            turn=stop.kind == "waypoint",
            longer_min=0.0 if stop.kind == "waypoint" else next(longer),
        )
        for number, stop in enumerate(one.swim.stops)
    )
    return OrderPlan(
        rank=rank,
        stops=stops,
        depart=clock.moment(one.depart_s),
        arrive=clock.moment(swum.arrive_s[row, -1]),
        minutes=one.total_s / 60.0 if np.isfinite(one.total_s) else None,
        swim_min=float(swum.swim_s[row]) / 60.0 if np.isfinite(swum.swim_s[row]) else None,
        length_m=route_length_m(one.swim),
        feasible=one.feasible,
        reason=limit_words(one.swim, swum, row),
        notes=tuple(_notes(one, stops)),
    )


def _notes(one: OrderSwum, stops: tuple[OrderStop, ...]) -> list[str]:
    notes = [
        tr("Stay {minutes:.0f} min longer at {name}: leaving later you are sooner at the next place.").format(
            minutes=stop.longer_min, name=stop.name
        )
        for stop in stops
        if stop.longer_min >= TOLD_FROM_MIN
    ]
    after = [stops[row - 1].name for row in range(1, len(stops)) if stops[row].turn and not stops[row - 1].turn]
    if after:
        notes.append(tr("Goes round land or closed water after {names}.").format(names=", ".join(after)))
    if one.swum.extrapolated[one.row]:
        notes.append(tr("The stream is extrapolated on part of it: allow for more stream."))
    return notes
