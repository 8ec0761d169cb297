"""Orders of marks as lines: one a plan, the best one as a route to edit, and both in sentences."""

from __future__ import annotations

from collections.abc import Iterator

from qgis.core import QgsWkbTypes
from qgis.PyQt.QtCore import QCoreApplication

from ..core.results.best_order import OrderPlan, OrdersFound
from .plan_layers import OutputLayer, Row, both_times, line_over

ORDER_COLUMNS = (
    ("rank", "whole"),
    ("order_text", "text"),
    ("depart", "time"),
    ("arrive", "time"),
    ("depart_local", "text"),
    ("arrive_local", "text"),
    ("minutes", "number"),
    ("swim_min", "number"),
    ("length_m", "number"),
    ("feasible", "whole"),
    ("reason", "text"),
    ("notes", "text"),
)


def _order_rows(found: OrdersFound) -> Iterator[Row]:
    """The orders by rank."""
    for plan in found.plans:
        values = {name: getattr(plan, name) for name in ("rank", "minutes", "swim_min", "length_m", "reason")}
        yield (
            _line(plan),
            {
                **values,
                "order_text": " - ".join(plan.names),
                "feasible": int(plan.feasible),
                "notes": " ".join(plan.notes),
                **both_times(depart=plan.depart, arrive=plan.arrive),
            },
        )


def _line(plan: OrderPlan) -> object:
    return line_over([tuple(place) for place in plan.lonlat.tolist()])


def _route_rows(found: OrdersFound) -> Iterator[Row]:
    """The best order, if one is feasible, with the fields of a plan's routes."""
    for plan in found.plans[:1]:
        if plan.feasible:
            yield route_row(plan)


def route_row(plan: OrderPlan) -> Row:
    """An order as a row of a plan's routes; the name says its rank and day, the note when to leave."""
    tr = QCoreApplication.translate
    leave = tr("Tideleg", "Leave {}.").format(f"{plan.depart:%Y-%m-%d %H:%M}")
    day = f"{plan.depart:%Y-%m-%d}"
    name = tr("Tideleg", "Best order {}").format(day)
    if plan.rank > 1:
        name = tr("Tideleg", "Order {} of {}").format(plan.rank, day)
    return _line(plan), {"name": name, "note": " ".join([leave, *plan.notes])}


LINE = QgsWkbTypes.Type.LineString
ORDERS = OutputLayer(parameter="ORDERS", wkb_type=LINE, columns=ORDER_COLUMNS, rows=_order_rows)
ROUTE = OutputLayer(parameter="ROUTE", wkb_type=LINE, columns=(("name", "text"), ("note", "text")), rows=_route_rows)


def order_sentences(found: OrdersFound) -> list[str]:
    """Each order with its departure and minutes, or why there is none."""
    tr = QCoreApplication.translate
    good = tr("Tideleg", "{}. {}: leave {}, home {}, {} min")
    bad = tr("Tideleg", "Not feasible: {}. {}")
    told = []
    for plan in found.plans:
        names = " - ".join(plan.names)
        if plan.feasible:
            leave, home = f"{plan.depart:%Y-%m-%d %H:%M}", f"{plan.arrive:%H:%M}"
            told.append(" ".join([good.format(plan.rank, names, leave, home, f"{plan.minutes:.0f}"), *plan.notes]))
        else:
            told.append(bad.format(names, plan.reason))
    if found.stopped_by:
        words = ", ".join(f"{limit} {count}" for limit, count in found.stopped_by.items())
        told.append(tr("Tideleg", "No order can be swum. The shortest one is stopped by: {}").format(words))
    return told
