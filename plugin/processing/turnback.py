"""`tideleg:turnback`: when to leave each stop, which exit to take if late, and the points of no return."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessing,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
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
    from ..core.results.turn_back import TurnBack
    from ..core.solve.request import SwimRequest

POINT = QgsProcessing.SourceType.TypeVectorPoint


class TurnBackTimes(QgsProcessingAlgorithm):
    """Plans the swim and its turn back; the request is built on the main thread, where layers may be read."""

    def __init__(self) -> None:
        super().__init__()
        self._refusal = ""
        self._request: SwimRequest | None = None
        self._found: TurnBack | None = None
        self._alone: dict[str, TurnBack] = {}

    def name(self) -> str:
        return "turnback"

    def displayName(self) -> str:
        return self._tr("Turn back")

    def tags(self) -> list[str]:
        return self._tr("turn back,latest,leave,exit,late,reserve,dusk,no return,group").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Plans a swim and says when each stop must be left: the bands of leaving times from which the best of all "
            "exits is reached before dusk, the swimmer's hours, the plan's `back_by` and the alarm, with the reserve "
            "of the plan's settings kept (reserve_factor times the way home, and reserve_min on top), on the day "
            "expected and on a bad day: a tenth slower, every stream stronger by its doubt and turning early, on time "
            "or late.\n"
            "The alarm is kept without the reserve, as it goes out a fixed time after the planned return.\n\n"
            "Ways home: by the quickest exit at and after the planned leaving, and to the planned exit by the quarter "
            "of an hour, with headings and minutes. Points of no return: the last place on each leg from which turning "
            "back is in time; a leg without one lets you turn anywhere.\n\n"
            "Exits: the route's end, its start, and every mark of the kind exit. Several swimmers, with semicolons "
            "between their names, are a group: their times together, and each one's alone in the report.\n\n"
            "A prediction: minutes late can cost hours where the stream turns. Feasible is not safe; never dive alone."
        )

    def createInstance(self) -> TurnBackTimes:
        return TurnBackTimes()

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        double = QgsProcessingParameterNumber.Type.Double
        self.addParameter(QgsProcessingParameterFile("PLAN", self._tr("Plan"), extension="gpkg"))
        self.addParameter(QgsProcessingParameterString("ROUTE", self._tr("Name of the route"), optional=True))
        self.addParameter(QgsProcessingParameterString("DEPART", self._tr("Departure (date and time)")))
        self.addParameter(QgsProcessingParameterString("SWIMMER", self._tr("Name of the swimmer"), optional=True))
        self.addParameter(
            QgsProcessingParameterNumber(
                "PACE", self._tr("Pace through the water (m/s)"), double, None, True, minValue=0.1, maxValue=2.5
            )
        )
        for name, label in (
            ("WAYS", self._tr("Ways home")),
            ("BANDS", self._tr("Bands of leaving times")),
            ("NO_RETURN", self._tr("Points of no return")),
        ):
            self.addParameter(QgsProcessingParameterFeatureSink(name, label, POINT, optional=True))
        self.addParameter(
            QgsProcessingParameterFileDestination("REPORT", self._tr("Report"), "JSON (*.json)", optional=True)
        )

    def prepareAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> bool:
        from ..layers_in.swim_in import SwimAsked, request_from

        given = parameters.get("PACE") is not None
        try:
            asked = SwimAsked(
                route=self.parameterAsString(parameters, "ROUTE", context).strip(),
                depart=self.parameterAsString(parameters, "DEPART", context),
                swimmer=self.parameterAsString(parameters, "SWIMMER", context).strip(),
                pace_m_s=self.parameterAsDouble(parameters, "PACE", context) if given else None,
            )
            self._request = request_from(self.parameterAsFile(parameters, "PLAN", context), {}, asked)
        except SwimPlanError as error:
            # What is raised here never reaches the caller of processing.run; what processAlgorithm raises does.
            self._refusal = str(error)
        return True

    def processAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..core.solve.plan_swim import plan_swim
        from ..core.solve.turn_back.turn_back import turn_back, turn_back_alone
        from ..layers_out.turn_back_layers import turn_back_sentences

        if self._refusal:
            raise QgsProcessingException(self._refusal)
        request = self._request
        with refusals():
            plan = plan_swim(request, is_cancelled=feedback.isCanceled)
            self._found = turn_back(request, plan, is_cancelled=feedback.isCanceled)
            feedback.setProgress(50)
            self._alone = turn_back_alone(request, plan, is_cancelled=feedback.isCanceled)
            feedback.setProgress(90)
        for warning in (*plan.warnings, *self._found.warnings):
            feedback.pushWarning(warning)
        for sentence in turn_back_sentences(self._found, request.settings.heading_step_deg):
            feedback.pushInfo(sentence)
        with refusals():
            return self._write(parameters, context)

    def _write(self, parameters: dict[str, Any], context: QgsProcessingContext) -> dict[str, Any]:
        from ..cards.whole_files import json_writer, write_whole
        from ..core.results.turn_back import turn_back_dict
        from ..layers_out.turn_back_layers import BANDS, NO_RETURN, WAYS, TurnBackOf
        from .sinks import write_sinks

        made = TurnBackOf(found=self._found, heading_step_deg=self._request.settings.heading_step_deg)
        sinks = [(layer, made) for layer in (WAYS, BANDS, NO_RETURN)]
        path = self.parameterAsFileOutput(parameters, "REPORT", context)
        written = [path, *(file_of_sink(parameters.get(layer.parameter)) for layer, _ in sinks)]
        outputs = WholeOutputs(written, read=[self.parameterAsFile(parameters, "PLAN", context)])
        told = turn_back_dict(self._found, version=tideleg_version(), alone=self._alone)
        try:
            layers = write_sinks(self, sinks, parameters, context)
            write_whole({path: json_writer(told)} if path else {})
        except BaseException:
            outputs.undo()
            raise
        return {**({"REPORT": path} if path else {}), **layers}

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)
