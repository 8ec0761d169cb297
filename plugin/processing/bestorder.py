"""`tideleg:bestorder`: in which order to visit marks, and when to leave."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessing,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputBoolean,
    QgsProcessingOutputNumber,
)

from ..version import tideleg_version
from .plan_algorithm import INTEGER, PlanAlgorithm

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.results.best_order import OrdersFound
    from ..core.solve.order.request import OrderRequest

LINE = QgsProcessing.SourceType.TypeVectorLine


class BestOrder(PlanAlgorithm):
    """Finds the order of marks at all departures of a span."""

    def __init__(self) -> None:
        super().__init__()
        self._order: OrderRequest | None = None

    def name(self) -> str:
        return "bestorder"

    def displayName(self) -> str:
        return self._tr("Order of marks")

    def tags(self) -> list[str]:
        return self._tr("order,marks,best,departure,route,stream,tide").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "In which order to visit up to nine marks, staying at each, and when to leave, so that the time from the "
            "entry to the exit is the least: every order and every departure is weighed in the stream as it changes. "
            "The best orders are listed, each at its best departure; the best one comes as a route to edit.\n\n"
            "Marks: their names with ; between them; empty for all of kind mark.\n"
            "Entry, exit: names; an empty exit is the entry or whichever exit is best.\n"
            "From, to: dates such as 2027-06-26, whole days by the plan's clock, or dates with times. The departures "
            "tried lie so many minutes apart.\n"
            "Legs go round land and closed water. Where it pays to wait for the stream, a longer stay is told. Left "
            "out is what Plan swim would stop: darkness, land, closed water, a sailing, range, hours, a stream that is "
            "not known; and marks too deep or too shoal while you are there.\n\n"
            "A prediction, not an observation; no reserve is kept: look at the turn-back times of the route before you "
            "go. Feasible is not safe; never dive alone. Not for the navigation of vessels."
        )

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.add_plan()
        self.add_text("MARKS_NAMES", self._tr("Marks to visit (names with ; between them)"), optional=True)
        self.add_text("ENTRY", self._tr("Entry"), optional=True)
        self.add_text("EXIT", self._tr("Exit"), optional=True)
        self.add_text("FROM", self._tr("From (date, or date and time)"))
        self.add_text("TO", self._tr("To (date, or date and time)"))
        self.add_number("STEP", self._tr("A departure every (min)"), 30, 1, 360)
        self.add_swimmer()
        self.add_number("ALTERNATIVES", self._tr("Orders to list"), 5, 1, 50, kind=INTEGER)
        self.add_sink("ORDERS", self._tr("Orders"), LINE)
        self.add_sink("ROUTE", self._tr("Best order as a route"), LINE)
        self.add_report()
        self.addOutput(QgsProcessingOutputBoolean("FEASIBLE", self._tr("Feasible")))
        self.addOutput(QgsProcessingOutputNumber("MINUTES", self._tr("Minutes of the best order")))

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.order_in import OrderAsked, order_from

        asked = OrderAsked(
            marks=self.text(parameters, "MARKS_NAMES", context),
            entry=self.text(parameters, "ENTRY", context),
            exit=self.text(parameters, "EXIT", context),
            step_min=self.parameterAsDouble(parameters, "STEP", context),
            swim=self.swim_asked(parameters, context, depart="FROM", until="TO"),
        )
        self._order = order_from(self.plan(parameters, context), asked)

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..core.solve.order.find_order import find_orders
        from ..layers_out.order_layer import order_sentences

        found = find_orders(
            self._order,
            alternatives=self.parameterAsInt(parameters, "ALTERNATIVES", context),
            progress=lambda share: feedback.setProgress(100.0 * share),
            is_cancelled=feedback.isCanceled,
        )
        self.tell(feedback, found.warnings, order_sentences(found))
        best = found.plans[0] if found.plans and found.plans[0].feasible else None
        outcome = {"FEASIBLE": best is not None, "MINUTES": None if best is None else best.minutes}
        return {**outcome, **self._write_orders(parameters, context, found)}

    def _write_orders(
        self, parameters: dict[str, Any], context: QgsProcessingContext, found: OrdersFound
    ) -> dict[str, Any]:
        from ..cards.whole_files import json_writer
        from ..core.results.best_order import orders_dict
        from ..layers_out.order_layer import ORDERS, ROUTE

        report = {"REPORT": lambda: json_writer(orders_dict(found, version=tideleg_version()))}
        return self.write(parameters, context, [(ORDERS, found), (ROUTE, found)], report)
