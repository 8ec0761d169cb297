"""`tideleg:bestorder`: in which order to visit marks, and when to leave."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessing,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputBoolean,
    QgsProcessingOutputNumber,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFile,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterNumber,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.errors import SwimPlanError
from ..version import tideleg_version
from .refusals import refusals
from .whole_outputs import WholeOutputs, file_of_sink

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.results.best_order import OrdersFound
    from ..core.solve.order.request import OrderRequest

LINE = QgsProcessing.SourceType.TypeVectorLine


class BestOrder(QgsProcessingAlgorithm):
    """Finds the order of marks; the request is built on the main thread, where layers may be read."""

    def __init__(self) -> None:
        super().__init__()
        self._refusal = ""
        self._order: OrderRequest | None = None
        self._found: OrdersFound | None = None

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

    def createInstance(self) -> BestOrder:
        return BestOrder()

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.addParameter(QgsProcessingParameterFile("PLAN", self._tr("Plan"), extension="gpkg"))
        for name, label, optional in (
            ("MARKS_NAMES", self._tr("Marks to visit (names with ; between them)"), True),
            ("ENTRY", self._tr("Entry"), True),
            ("EXIT", self._tr("Exit"), True),
            ("FROM", self._tr("From (date, or date and time)"), False),
            ("TO", self._tr("To (date, or date and time)"), False),
        ):
            self.addParameter(QgsProcessingParameterString(name, label, optional=optional))
        double, integer = QgsProcessingParameterNumber.Type.Double, QgsProcessingParameterNumber.Type.Integer
        self.addParameter(
            QgsProcessingParameterNumber(
                "STEP", self._tr("A departure every (min)"), double, 30, minValue=1, maxValue=360
            )
        )
        self.addParameter(QgsProcessingParameterString("SWIMMER", self._tr("Name of the swimmer"), optional=True))
        self.addParameter(
            QgsProcessingParameterNumber(
                "PACE", self._tr("Pace through the water (m/s)"), double, None, True, minValue=0.1, maxValue=2.5
            )
        )
        self.addParameter(
            QgsProcessingParameterNumber(
                "ALTERNATIVES", self._tr("Orders to list"), integer, 5, minValue=1, maxValue=50
            )
        )
        self.addParameter(QgsProcessingParameterFeatureSink("ORDERS", self._tr("Orders"), LINE, optional=True))
        self.addParameter(
            QgsProcessingParameterFeatureSink("ROUTE", self._tr("Best order as a route"), LINE, optional=True)
        )
        self.addParameter(
            QgsProcessingParameterFileDestination("REPORT", self._tr("Report"), "JSON (*.json)", optional=True)
        )
        self.addOutput(QgsProcessingOutputBoolean("FEASIBLE", self._tr("Feasible")))
        self.addOutput(QgsProcessingOutputNumber("MINUTES", self._tr("Minutes of the best order")))

    def prepareAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> bool:
        from ..layers_in.order_in import OrderAsked, order_from

        def text(name: str) -> str:
            return self.parameterAsString(parameters, name, context).strip()

        given = parameters.get("PACE") is not None
        try:
            asked = OrderAsked(
                marks=text("MARKS_NAMES"),
                entry=text("ENTRY"),
                exit=text("EXIT"),
                first=text("FROM"),
                last=text("TO"),
                step_min=self.parameterAsDouble(parameters, "STEP", context),
                swimmer=text("SWIMMER"),
                pace_m_s=self.parameterAsDouble(parameters, "PACE", context) if given else None,
            )
            self._order = order_from(self.parameterAsFile(parameters, "PLAN", context), asked)
        except SwimPlanError as error:
            # What is raised here never reaches the caller of processing.run; what processAlgorithm raises does.
            self._refusal = str(error)
        return True

    def processAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..core.solve.order.find_order import find_orders
        from ..layers_out.order_layer import order_sentences

        if self._refusal:
            raise QgsProcessingException(self._refusal)
        with refusals():
            self._found = find_orders(
                self._order,
                alternatives=self.parameterAsInt(parameters, "ALTERNATIVES", context),
                progress=lambda share: feedback.setProgress(100.0 * share),
                is_cancelled=feedback.isCanceled,
            )
        for warning in self._found.warnings:
            feedback.pushWarning(warning)
        for sentence in order_sentences(self._found):
            feedback.pushInfo(sentence)
        best = next(iter(self._found.plans), None)
        outcome = {
            "FEASIBLE": best is not None and best.feasible,
            "MINUTES": best.minutes if best is not None and best.feasible else None,
        }
        with refusals():
            return {**outcome, **self._write(parameters, context)}

    def _write(self, parameters: dict[str, Any], context: QgsProcessingContext) -> dict[str, Any]:
        from ..cards.whole_files import json_writer, write_whole
        from ..core.results.best_order import orders_dict
        from ..layers_out.order_layer import ORDERS, ROUTE
        from .sinks import write_sinks

        report = self.parameterAsFileOutput(parameters, "REPORT", context)
        written = [report, *(file_of_sink(parameters.get(layer.parameter)) for layer in (ORDERS, ROUTE))]
        outputs = WholeOutputs(written, read=[self.parameterAsFile(parameters, "PLAN", context)])
        try:
            layers = write_sinks(self, [(ORDERS, self._found), (ROUTE, self._found)], parameters, context)
            if report:
                write_whole({report: json_writer(orders_dict(self._found, version=tideleg_version()))})
        except BaseException:
            outputs.undo()
            raise
        return {**({"REPORT": report} if report else {}), **layers}

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)
