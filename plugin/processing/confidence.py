"""`tideleg:confidence`: how sure a plan is, where dead reckoning ends, and where a float drifts."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessing,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterDefinition,
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
    from ..core.results.confidence import Confidence
    from ..core.solve.request import SwimRequest

SEED = 20270605  # as in core.solve.doubts, which is not imported at start-up; a test holds them together
DOUBLE, INTEGER = QgsProcessingParameterNumber.Type.Double, QgsProcessingParameterNumber.Type.Integer


class Confidence(QgsProcessingAlgorithm):
    """Swims a plan with many members; the request is built on the main thread, where layers may be read."""

    def __init__(self) -> None:
        super().__init__()
        self._refusal = ""
        self._request: SwimRequest | None = None
        self._found: Confidence | None = None

    def name(self) -> str:
        return "confidence"

    def displayName(self) -> str:
        return self._tr("How sure is a plan")

    def tags(self) -> list[str]:
        return self._tr("sure,spread,chance,probability,ellipse,dead reckoning,drift,leeway,search,group").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Swims a plan many times, each time at another pace, on a longer or shorter path and in water that is "
            "stronger or weaker and earlier or later than its tables by what each source is uncertain by: when each "
            "stop is reached, how often one is home by the alarm, by dusk and within one's hours, and which leg "
            "fails.\n\n"
            "Ellipses: where 95 of 100 swimmers are who hold the planned headings for the planned minutes from the "
            "last stop and do not correct.\n"
            "Drift: where the float with its person is 30, 60 and 120 minutes after the swimmer stopped, at every "
            "quarter of an hour of the swim and at every stop; and so long after the planned return, wherever it "
            "happened. For the shore contact.\n"
            "Wind: steady; pushes the float 1.93 % of its speed downwind and up to 0.51 % to either side. With none "
            "given the push is left out, which is not to say that there is none.\n"
            "Swimmer: several names with a semicolon between them swim together, the slowest sets the pace.\n\n"
            "The spread is that of the doubts put in, most of them common practice without a source: a wrong table or "
            "a gale is not among them. A prediction, not an observation; feasible is not safe; never dive alone. Not "
            "for the navigation of vessels."
        )

    def createInstance(self) -> Confidence:
        return Confidence()

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.addParameter(QgsProcessingParameterFile("PLAN", self._tr("Plan"), extension="gpkg"))
        self.addParameter(QgsProcessingParameterString("ROUTE", self._tr("Name of the route"), optional=True))
        self.addParameter(QgsProcessingParameterString("DEPART", self._tr("Departure (date and time)")))
        self.addParameter(
            QgsProcessingParameterString("SWIMMER", self._tr("Name of the swimmer, or names with ;"), optional=True)
        )
        self._add_number("PACE", self._tr("Pace through the water (m/s)"), DOUBLE, None, 0.1, 2.5)
        self._add_number("WIND_FROM", self._tr("Wind from (degrees true)"), DOUBLE, None, 0, 360)
        self._add_number("WIND_KN", self._tr("Wind speed (kn)"), DOUBLE, None, 0, 100)
        self._add_number("MEMBERS", self._tr("Members"), INTEGER, 500, 10, 20_000, advanced=True)
        self._add_number("SEED", self._tr("Seed"), INTEGER, SEED, 0, 2**31 - 1, advanced=True)
        point, polygon = QgsProcessing.SourceType.TypeVectorPoint, QgsProcessing.SourceType.TypeVectorPolygon
        for name, label, kind in (
            ("ARRIVALS", self._tr("Arrivals at the stops"), point),
            ("ELLIPSES", self._tr("Ellipses of dead reckoning"), polygon),
            ("DRIFT", self._tr("Areas of drift"), polygon),
        ):
            self.addParameter(QgsProcessingParameterFeatureSink(name, label, kind, optional=True))
        self.addParameter(
            QgsProcessingParameterFileDestination("REPORT", self._tr("Report"), "JSON (*.json)", optional=True)
        )
        self.addOutput(QgsProcessingOutputNumber("COMPLETED", self._tr("Share of members who complete the swim")))

    def _add_number(
        self, name: str, label: str, kind: Any, default: Any, least: float, most: float, *, advanced: bool = False
    ) -> None:
        number = QgsProcessingParameterNumber(
            name, label, kind, default, default is None, minValue=least, maxValue=most
        )
        if advanced:
            number.setFlags(number.flags() | QgsProcessingParameterDefinition.Flag.FlagAdvanced)
        self.addParameter(number)

    def checkParameterValues(self, parameters: dict[str, Any], context: QgsProcessingContext) -> tuple[bool, str]:
        speed, direction = (parameters.get(name) for name in ("WIND_KN", "WIND_FROM"))
        if (speed is None) != (direction is None):
            return False, self._tr("A wind needs both its speed and where it comes from; leave both empty for none.")
        return super().checkParameterValues(parameters, context)

    def prepareAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> bool:
        from ..layers_in.swim_in import SwimAsked, request_from

        try:
            asked = SwimAsked(
                route=self.parameterAsString(parameters, "ROUTE", context).strip(),
                depart=self.parameterAsString(parameters, "DEPART", context),
                swimmer=self.parameterAsString(parameters, "SWIMMER", context).strip(),
                pace_m_s=self._number(parameters, "PACE", context),
            )
            self._request = request_from(self.parameterAsFile(parameters, "PLAN", context), {}, asked)
        except SwimPlanError as error:
            # What is raised here never reaches the caller of processing.run; what processAlgorithm raises does.
            self._refusal = str(error)
        return True

    def processAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..core.solve.confidence import Asked, how_sure
        from ..core.solve.drift import Wind
        from ..layers_out.confidence_layers import confidence_sentences

        if self._refusal:
            raise QgsProcessingException(self._refusal)
        from_deg, speed_kn = (self._number(parameters, name, context) for name in ("WIND_FROM", "WIND_KN"))
        with refusals():
            self._found = how_sure(
                self._request,
                Asked(
                    members=self.parameterAsInt(parameters, "MEMBERS", context),
                    seed=self.parameterAsInt(parameters, "SEED", context),
                    wind=None if speed_kn is None else Wind(from_deg=from_deg, speed_kn=speed_kn),
                ),
                progress=lambda share: feedback.setProgress(95.0 * share),
                is_cancelled=feedback.isCanceled,
            )
        for warning in self._found.warnings:
            feedback.pushWarning(warning)
        for sentence in confidence_sentences(self._found):
            feedback.pushInfo(sentence)
        with refusals():
            return {"COMPLETED": self._found.completed_share, **self._write(parameters, context)}

    def _number(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> float | None:
        return None if parameters.get(name) is None else self.parameterAsDouble(parameters, name, context)

    def _write(self, parameters: dict[str, Any], context: QgsProcessingContext) -> dict[str, Any]:
        from ..cards.whole_files import json_writer, write_whole
        from ..core.results.confidence import confidence_dict
        from ..layers_out.confidence_layers import ARRIVALS, DRIFT, ELLIPSES
        from .sinks import write_sinks

        sinks = [(layer, self._found) for layer in (ARRIVALS, ELLIPSES, DRIFT)]
        report = self.parameterAsFileOutput(parameters, "REPORT", context)
        written = [report, *(file_of_sink(parameters.get(layer.parameter)) for layer, _ in sinks)]
        outputs = WholeOutputs(written, read=[self.parameterAsFile(parameters, "PLAN", context)])
        try:
            layers = write_sinks(self, sinks, parameters, context, styled=True)
            if report:
                write_whole({report: json_writer(confidence_dict(self._found, version=tideleg_version()))})
        except BaseException:
            outputs.undo()
            raise
        return {**({"REPORT": report} if report else {}), **layers}

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)
