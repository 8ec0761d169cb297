"""The best order of marks and the best departure together."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import islice

import numpy as np

from ...errors import SwimPlanError
from ...results.best_order import OrdersFound
from ...words import tr
from ..windows.departures import swim_departures
from ..windows.limits import LIMITS
from ..windows.own_limits import OwnLimits
from .best_first import EarliestEnds, OrderFound, best_orders
from .leg_times import LegTable, LegTimer
from .request import OrderRequest, Ways, stopper, ways_between
from .swum_again import OrderSwum, swim_again, told

TABLE_STEP_S = 150.0
MOST_ROWS = 1500
MOST_ROWS_BY_DEPARTURES = 4000  # where departures lie closer than the table would need
LONGEST_SPAN_S = 31 * 86400.0
AT_ONCE = 16  # orders swum again before one looks whether that is enough
TABLE_ERROR_S = 5.0  # beside a time at which a leg is not available; elsewhere a tenth of that


def find_orders(
    order: OrderRequest,
    *,
    alternatives: int = 5,
    progress: Callable[[float], None] | None = None,
    is_cancelled: Callable[[], bool] = bool,
) -> OrdersFound:
    """The best orders, each at its best departure, by the time from the entry to the exit.

    Each order is swum as planswim does before it is told, in the order in which the table of legs hopes for the least
    time, until no hope is left for a better one. Error: a time in which a leg can be begun that is shorter than the
    step of the table may be missed, and longer stays end at its rows. Raises StoppedError when stopped, SwimPlanError
    where the span is too long.
    """

    def part(low: float, high: float) -> Callable[[float], None]:
        return stopper(is_cancelled, progress, low, high)

    times_s = table_times_s(order)
    ways = ways_between(order, float(times_s[-1]), part(0.0, 0.2), is_cancelled=is_cancelled)
    table = LegTimer(order, ways, times_s, is_cancelled=is_cancelled).table(part(0.2, 0.75))
    ends = EarliestEnds(order, table, part(0.75, 0.9))
    warnings = [*order.swim.warnings, *_doubts(order, ways)]
    found = best_orders(order, ends, latest_homes_s(order), part(0.9, 0.95), warnings)
    swum = _best_swum(order, ways, found, alternatives, is_cancelled)
    stopped_by: dict[str, int] = {}
    if not any(one.feasible for one in swum):
        shortest, stopped_by = _why_none(order, ways, table, ends, is_cancelled)
        swum = shortest or swum
    step_s = order.depart_s[1] - order.depart_s[0] if len(order.depart_s) > 1 else 0.0
    clock = order.swim.clock
    return OrdersFound(
        plans=tuple(told(order, one, rank) for rank, one in enumerate(swum[:alternatives], start=1)),
        marks=len(order.marks),
        departures=len(order.depart_s),
        start=clock.moment(float(order.depart_s[0])),
        end=clock.moment(float(order.depart_s[-1])),
        step_min=float(step_s) / 60.0,
        table_step_min=float(times_s[1] - times_s[0]) / 60.0,
        swimmer=order.swim.swimmer.name,
        zone=clock.zone_name,
        stopped_by=stopped_by,
        warnings=tuple(warnings),
    )


def table_times_s(order: OrderRequest) -> np.ndarray:
    """Times from the first departure to the last moment at which a swim may be under way; departures are among them."""
    departs = order.depart_s
    span = float(departs[-1] - departs[0])
    if span > LONGEST_SPAN_S:
        raise SwimPlanError(
            asked=tr("Asked for departures over {days:.0f} days").format(days=span / 86400.0),
            allowed=tr("At most {days:.0f} days are looked at").format(days=LONGEST_SPAN_S / 86400.0),
            remedy=tr("Give an earlier end"),
        )
    whole = span + 3600.0 * order.swim.swimmer.max_hours
    step = max(TABLE_STEP_S, whole / MOST_ROWS)
    if len(departs) > 1:
        between = float(departs[1] - departs[0])
        step = between / np.ceil(between / step - 1e-9) if step < between else between
    rows = int(np.ceil(whole / step)) + 2
    if rows > MOST_ROWS_BY_DEPARTURES:
        raise SwimPlanError(
            asked=tr("Asked for {count} departures over {days:.1f} days").format(
                count=len(departs), days=span / 86400.0
            ),
            allowed=tr("At most {count} times are looked at").format(count=MOST_ROWS_BY_DEPARTURES),
            remedy=tr("Take a longer step or fewer days"),
        )
    return departs[0] + step * np.arange(rows)


def latest_homes_s(order: OrderRequest) -> np.ndarray:
    """When each departure (n,) must be home: by dusk and within the swimmer's hours; -infinite before dawn."""
    dawn_s, dusk_s = OwnLimits(order.swim).light(order.depart_s)
    latest = np.minimum(dusk_s, order.depart_s + 3600.0 * order.swim.swimmer.max_hours)
    return np.where(order.depart_s < dawn_s, -np.inf, latest)


def _best_swum(
    order: OrderRequest,
    ways: Ways,
    found: Iterator[OrderFound],
    alternatives: int,
    is_cancelled: Callable[[], bool],
) -> list[OrderSwum]:
    """Orders as swum, each at its best departure: feasible ones first, the quickest first, the earliest of equals.

    What the table hopes of an order is no more than it takes, so one may stop when the next hope is beyond the last of
    those asked for.
    """
    best: dict[tuple[int, ...], OrderSwum] = {}
    while batch := list(islice(found, AT_ONCE)):
        fresh = [one for one in batch if one.total_s < _feasible_s(best.get(one.numbers)) + TABLE_ERROR_S]
        for one in swim_again(order, ways, fresh, is_cancelled):
            if one.numbers not in best or _rank(one) < _rank(best[one.numbers]):
                best[one.numbers] = one
        totals = sorted(_feasible_s(one) for one in best.values())
        if len(totals) >= alternatives and batch[-1].total_s > totals[alternatives - 1] + TABLE_ERROR_S:
            break
    return sorted(best.values(), key=_rank)


def _feasible_s(one: OrderSwum | None) -> float:
    """Seconds that an order takes, infinite where it is not feasible or not swum yet."""
    return one.total_s if one is not None and one.feasible else np.inf


def _rank(one: OrderSwum) -> tuple:
    total_s = one.total_s if np.isfinite(one.total_s) else np.inf
    return not one.feasible, 0 if one.feasible else -one.legs_swum, round(total_s, 1), one.depart_s


def _why_none(
    order: OrderRequest, ways: Ways, table: LegTable, ends: EarliestEnds, is_cancelled: Callable[[], bool]
) -> tuple[list[OrderSwum], dict[str, int]]:
    """The shortest order at the departure that gets farthest, and what stops it at how many departures."""
    numbers, left = [0], ends.everything
    if not np.isfinite(ends.length(left, 0)):
        return [], {"land": len(order.depart_s)}
    while numbers[-1] < order.first_exit:
        here = numbers[-1]
        place, left = min(
            ends.next_places(left), key=lambda step: table.shortest_m[here, step[0]] + ends.length(step[1], step[0])
        )
        numbers.append(place)
    legs = tuple(ways[pair][0] for pair in zip(numbers, numbers[1:]))
    swim = order.swim_over(tuple(numbers), legs, (0.0,) * len(legs))
    swum = swim_departures(swim, order.depart_s, is_cancelled=is_cancelled)
    rows = [
        OrderSwum(numbers=tuple(numbers), waits_s=(0.0,) * len(legs), swim=swim, swum=swum, row=row)
        for row in range(len(swum.depart_s))
    ]
    counts = np.bincount(swum.limit, minlength=len(LIMITS))
    return [min(rows, key=_rank)], {LIMITS[code]: int(counts[code]) for code in np.flatnonzero(counts) if code}


def _doubts(order: OrderRequest, ways: Ways) -> list[str]:
    """Places that no way leads to, and depths that are not known."""
    cut_off = [mark.name for number, mark in enumerate(order.marks, start=1) if not ways[0, number]]
    cut_off += [
        order.places[number].name
        for number in range(order.first_exit, len(order.places))
        if not any(ways[mark, number] for mark in range(1, order.first_exit))
    ]
    doubts = [
        tr("No way over water leads to {name}: land or closed water bars it.").format(name=name) for name in cut_off
    ]
    own = OwnLimits(order.swim)
    deep = [mark.name for number, mark in enumerate(order.marks, start=1) if np.isfinite(own.depths_m[number])]
    if deep and order.swim.tide is None:
        doubts.append(
            tr("The height of tide is not known: the depth at {names} is not checked.").format(names=", ".join(deep))
        )
    unknown = [mark.name for number, mark in enumerate(order.marks, start=1) if not np.isfinite(own.depths_m[number])]
    if unknown:
        doubts.append(tr("The depth at {names} is not known, and not checked.").format(names=", ".join(unknown)))
    return doubts
