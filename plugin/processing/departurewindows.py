"""`tideleg:departurewindows`: at which hours of which days a route can be swum, and what stops it at the others."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
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
    from ..core.results.windows import WindowsFound
    from ..core.solve.request import SwimRequest
    from ..core.solve.windows.departures import DeparturesSwum

TABLE = QgsProcessing.SourceType.TypeVector


class DepartureWindows(QgsProcessingAlgorithm):
    """Swims a route at every departure of a span; the request is built on the main thread, where layers may be read."""

    def __init__(self) -> None:
        super().__init__()
        self._refusal = ""
        self._request: SwimRequest | None = None
        self._found: WindowsFound | None = None
        self._swum: DeparturesSwum | None = None

    def name(self) -> str:
        return "departurewindows"

    def displayName(self) -> str:
        return self._tr("Departure windows")

    def tags(self) -> list[str]:
        return self._tr("window,when,departure,slack,stream,tide,season,day,range").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Swims a route, stays included, leaving every so many minutes from one moment to another, over days or a "
            "season, and says when it can be swum: the windows of departures with their first, last and best one, what "
            "stops the departures just before and after, the spare time before dusk, and the days by rank.\n\n"
            "From, to: dates such as 2027-06-26, whole days by the plan's clock, or dates with times.\n"
            "A departure is out where a leg cannot be swum or its stream is not known, where Plan swim would say stop "
            "(darkness, land, closed water, a sailing, range, hours), and where a mark is too deep or too shoal.\n"
            "Weak stream: besides, the tides at which the stream at the stop farthest out stays at or below a rate for "
            "so long, and the range they have.\n\n"
            "A window is a prediction and no more: feasible is not safe; never dive alone. Windows keep no "
            "reserve: the turn-back times do."
        )

    def createInstance(self) -> DepartureWindows:
        return DepartureWindows()

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.addParameter(QgsProcessingParameterFile("PLAN", self._tr("Plan"), extension="gpkg"))
        self.addParameter(QgsProcessingParameterString("ROUTE", self._tr("Name of the route"), optional=True))
        self.addParameter(QgsProcessingParameterString("FROM", self._tr("From (date, or date and time)")))
        self.addParameter(QgsProcessingParameterString("TO", self._tr("To (date, or date and time)")))
        double = QgsProcessingParameterNumber.Type.Double
        self.addParameter(
            QgsProcessingParameterNumber(
                "STEP", self._tr("A departure every (min)"), double, 10, minValue=1, maxValue=360
            )
        )
        self.addParameter(QgsProcessingParameterString("SWIMMER", self._tr("Name of the swimmer"), optional=True))
        self.addParameter(
            QgsProcessingParameterNumber(
                "PACE", self._tr("Pace through the water (m/s)"), double, None, True, minValue=0.1, maxValue=2.5
            )
        )
        for name, label, most in (
            ("WEAK_KN", self._tr("Weak stream: at most (kn)"), 20),
            ("WEAK_FOR", self._tr("Weak stream: for (min)"), 720),
        ):
            number = QgsProcessingParameterNumber(name, label, double, None, True, minValue=0, maxValue=most)
            number.setFlags(number.flags() | QgsProcessingParameterDefinition.Flag.FlagAdvanced)
            self.addParameter(number)
        self.addParameter(QgsProcessingParameterFeatureSink("WINDOWS", self._tr("Windows"), TABLE, optional=True))
        self.addParameter(
            QgsProcessingParameterFeatureSink(
                "DEPARTURES", self._tr("All departures"), TABLE, optional=True, createByDefault=False
            )
        )
        self.addParameter(
            QgsProcessingParameterFileDestination("REPORT", self._tr("Report"), "JSON (*.json)", optional=True)
        )
        self.addParameter(
            QgsProcessingParameterFileDestination(
                "PICTURE",
                self._tr("Picture of the days"),
                "PDF (*.pdf);;PNG (*.png);;SVG (*.svg)",
                optional=True,
                createByDefault=False,
            )
        )
        self.addOutput(QgsProcessingOutputNumber("COUNT", self._tr("Number of windows")))

    def checkParameterValues(self, parameters: dict[str, Any], context: QgsProcessingContext) -> tuple[bool, str]:
        if (parameters.get("WEAK_KN") is None) != (parameters.get("WEAK_FOR") is None):
            return False, self._tr("A weak stream needs both its rate and for how many minutes.")
        return super().checkParameterValues(parameters, context)

    def prepareAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> bool:
        from ..layers_in.swim_in import SwimAsked, request_from

        given = parameters.get("PACE") is not None
        try:
            asked = SwimAsked(
                route=self.parameterAsString(parameters, "ROUTE", context).strip(),
                depart=self.parameterAsString(parameters, "FROM", context),
                until=self.parameterAsString(parameters, "TO", context),
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
        from ..core.solve.windows.find_windows import find_windows
        from ..layers_out.window_layers import window_sentences

        if self._refusal:
            raise QgsProcessingException(self._refusal)
        weak = {name: self._number(parameters, name, context) for name in ("WEAK_KN", "WEAK_FOR")}
        with refusals():
            self._found, self._swum = find_windows(
                self._request,
                self._request.clock.start,
                self._request.clock.end,
                self.parameterAsDouble(parameters, "STEP", context),
                weak_kn=weak["WEAK_KN"],
                weak_for_min=weak["WEAK_FOR"],
                progress=lambda share: feedback.setProgress(95.0 * share),
                is_cancelled=feedback.isCanceled,
            )
        for warning in self._found.warnings:
            feedback.pushWarning(warning)
        for sentence in window_sentences(self._found):
            feedback.pushInfo(sentence)
        with refusals():
            return {"COUNT": len(self._found.windows), **self._write(parameters, context)}

    def _number(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> float | None:
        return None if parameters.get(name) is None else self.parameterAsDouble(parameters, name, context)

    def _write(self, parameters: dict[str, Any], context: QgsProcessingContext) -> dict[str, Any]:
        from ..cards.whole_files import write_whole
        from ..layers_out.window_layers import DEPARTURES, WINDOWS, Departures
        from .sinks import write_sinks

        sinks = [(WINDOWS, self._found), (DEPARTURES, Departures(request=self._request, swum=self._swum))]
        files = {name: self.parameterAsFileOutput(parameters, name, context) for name in ("REPORT", "PICTURE")}
        written = [*files.values(), *(file_of_sink(parameters.get(layer.parameter)) for layer, _ in sinks)]
        outputs = WholeOutputs(written, read=[self.parameterAsFile(parameters, "PLAN", context)])
        try:
            layers = write_sinks(self, sinks, parameters, context)
            write_whole({path: self._writer(name) for name, path in files.items() if path})
        except BaseException:
            outputs.undo()
            raise
        return {**{name: path for name, path in files.items() if path}, **layers}

    def _writer(self, name: str) -> Callable[[Path], None]:
        """What writes one of the files."""
        if name == "REPORT":
            from ..cards.whole_files import json_writer
            from ..core.results.windows import windows_dict

            return json_writer(windows_dict(self._found, version=tideleg_version()))
        from ..cards.day_export import picture_writer
        from ..core.solve.windows.day_strips import day_strips

        return picture_writer(lambda: day_strips(self._request, self._found, self._swum))

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)
