"""What the dock says of orders of marks: each with its departure, its way home and its time, or what stops it."""

from __future__ import annotations

from collections.abc import Mapping

from ..core.results.best_order import OrderPlan, OrdersFound
from ..core.results.card import clock_up, whole_minutes
from ..words import tr
from .flag_shapes import severity_word
from .plan_marks import Place
from .rows import Row


def order_headers() -> list[tuple[str, str]]:
    """Title and tooltip of the columns."""
    return [
        (tr("Order"), tr("The places in swimming order, the best order first")),
        (tr("Leave"), tr("The best departure for this order, in the plan's zone")),
        (tr("Home"), tr("Clock time of landing, rounded up")),
        (tr("Time"), tr("From leaving the entry to landing, stays and all, rounded up")),
    ]


def order_rows(found: OrdersFound, labels: Mapping[Place, str]) -> list[Row]:
    """A row an order, then what they do not say."""
    rows = [_order_row(plan, labels) for plan in found.plans]
    said = list(dict.fromkeys([*stopped_words(found), *found.warnings]))
    return rows + [Row(cells=(f"{severity_word('note')}. {words}",), severity="note") for words in said]


def _order_row(plan: OrderPlan, labels: Mapping[Place, str]) -> Row:
    points = tuple((stop.lon, stop.lat) for stop in plan.stops)
    names = order_words(plan, labels)
    if not plan.feasible:
        return Row(cells=(names, tr("Not feasible: {}").format(plan.reason)), points=points, severity="stop")
    leave = f"{plan.depart:%Y-%m-%d}\n{clock_up(plan.depart)}"
    words = "\n".join([f"{plan.rank}. {names}", *plan.notes])
    return Row(cells=(words, leave, clock_up(plan.arrive), duration_text(plan.minutes)), points=points)


def order_words(plan: OrderPlan, labels: Mapping[Place, str]) -> str:
    """``Slip - Gannet - Cinder - Slip``: turns left out, marks of one name told apart."""
    stops = [stop for stop in plan.stops if not stop.turn]
    return " - ".join(labels.get((stop.lon, stop.lat), stop.name) for stop in stops)


def duration_text(minutes: float) -> str:
    """``2 h 05 min``: whole minutes, rounded up."""
    return tr("{} h {:02d} min").format(*divmod(int(whole_minutes(minutes)), 60))


def stopped_words(found: OrdersFound) -> list[str]:
    """Where no order can be swum, what stops the shortest one, and at how many departures."""
    if not found.stopped_by:
        return []
    limits = ", ".join(f"{limit} ({count})" for limit, count in found.stopped_by.items())
    return [tr("No order can be swum. What stops the shortest one, at how many departures: {}").format(limits)]


def orders_headline(found: OrdersFound) -> str:
    """What was weighed: marks, departures, span."""
    words = tr("{} marks, {} departures from {} to {}")
    start, end = f"{found.start:%Y-%m-%d %H:%M}", f"{found.end:%H:%M}"
    if found.start.date() != found.end.date():
        end = f"{found.end:%Y-%m-%d %H:%M}"
    return words.format(found.marks, found.departures, start, end)
