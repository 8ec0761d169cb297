"""`tideleg:reach`: how soon every place is reached from an entry, and how late it may be left."""

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
    QgsProcessingParameterPoint,
    QgsProcessingParameterRasterDestination,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.errors import SwimPlanError
from ..version import tideleg_version
from .place_asked import add_swimmer_and_grid, lonlat_of, number_or_none
from .refusals import refusals
from .whole_outputs import WholeOutputs, file_of_sink

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.results.reach import Reach
    from ..core.solve.reach.request import ReachRequest

RASTERS = ("OUT_TIME", "HOME_BY")


class ReachOfEntry(QgsProcessingAlgorithm):
    """Finds a reach; the request is built on the main thread, where layers may be read."""

    def __init__(self) -> None:
        super().__init__()
        self._refusal = ""
        self._request: ReachRequest | None = None

    def name(self) -> str:
        return "reach"

    def displayName(self) -> str:
        return self._tr("Reach from an entry")

    def tags(self) -> list[str]:
        return self._tr("reach,isochrone,out,home,stay,stream,tide,range,exit,latest").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Leaving an entry at one moment: the earliest arrival everywhere in the stream as it changes, round land "
            "and round what nobody may enter; from the exits (every mark of the kind exit, and the entry) the latest "
            "leaving that is still back in time; and between the two where one can stay so long and be home.\n\n"
            "Departure, Back by: ISO 8601, such as 2027-06-05T10:00; without an offset in the plan's zone.\n"
            "Rasters: minutes after the departure, -9999 where there is no answer, in the plan's own frame.\n"
            "Areas: reached in so many minutes (kind out), and with time to stay (kind stay).\n"
            "Cells: empty has the size chosen; the report says how much the minutes change on cells twice as large. "
            "Passages narrower than two cells count as closed.\n"
            "Channels: no notice; keep out; or cross square, time inside counted several times over.\n\n"
            "The times are those of a swimmer who steers anew all the time for the fastest track: on one compass "
            "heading a leg it takes longer. The marks' numbers are given both ways. Nobody waits at a closed area "
            "until it opens. Water whose stream is not known is not passed, and said so. No reserve is in these "
            "times. A prediction, not an observation; feasible is not safe; never dive alone."
        )

    def createInstance(self) -> ReachOfEntry:
        return ReachOfEntry()

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        double = QgsProcessingParameterNumber.Type.Double
        self.addParameter(QgsProcessingParameterFile("PLAN", self._tr("Plan"), extension="gpkg"))
        self.addParameter(QgsProcessingParameterPoint("ENTRY", self._tr("Entry")))
        self.addParameter(QgsProcessingParameterString("DEPART", self._tr("Departure (date and time)")))
        self.addParameter(QgsProcessingParameterString("BACK_BY", self._tr("Back by (date and time)")))
        self.addParameter(
            QgsProcessingParameterNumber("STAY", self._tr("Stay (min)"), double, 30, minValue=0, maxValue=720)
        )
        add_swimmer_and_grid(self)
        for name, label in (("OUT_TIME", self._tr("Out in (min)")), ("HOME_BY", self._tr("Leave by (min)"))):
            self.addParameter(QgsProcessingParameterRasterDestination(name, label, optional=True))
        polygon, point = QgsProcessing.SourceType.TypeVectorPolygon, QgsProcessing.SourceType.TypeVectorPoint
        self.addParameter(QgsProcessingParameterFeatureSink("REACH", self._tr("Reach"), polygon, optional=True))
        marks = QgsProcessingParameterFeatureSink(
            "MARKS_REACH", self._tr("Marks' numbers"), point, optional=True, createByDefault=False
        )
        self.addParameter(marks)
        self.addParameter(
            QgsProcessingParameterFileDestination("REPORT", self._tr("Report"), "JSON (*.json)", optional=True)
        )

    def prepareAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> bool:
        from ..layers_in.reach_in import ReachAsked, reach_from

        try:
            lon, lat = lonlat_of(self, parameters, "ENTRY", context)
            asked = ReachAsked(
                lon=lon,
                lat=lat,
                depart=self.parameterAsString(parameters, "DEPART", context),
                back_by=self.parameterAsString(parameters, "BACK_BY", context),
                stay_min=self.parameterAsDouble(parameters, "STAY", context),
                cell_m=number_or_none(self, parameters, "CELL", context) or 0.0,
                channels=self.parameterAsEnum(parameters, "CHANNELS", context),
                swimmer=self.parameterAsString(parameters, "SWIMMER", context).strip(),
                pace_m_s=number_or_none(self, parameters, "PACE", context),
            )
            self._request = reach_from(self.parameterAsFile(parameters, "PLAN", context), asked)
        except SwimPlanError as error:
            # What is raised here never reaches the caller of processing.run; what processAlgorithm raises does.
            self._refusal = str(error)
        return True

    def processAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..core.solve.reach.find_reach import find_reach
        from ..layers_out.reach_layers import reach_sentences

        if self._refusal:
            raise QgsProcessingException(self._refusal)
        with refusals():
            reach = find_reach(
                self._request,
                progress=lambda share: feedback.setProgress(90.0 * share),
                is_cancelled=feedback.isCanceled,
            )
        for warning in reach.warnings:
            feedback.pushWarning(warning)
        for sentence in reach_sentences(reach):
            feedback.pushInfo(sentence)
        with refusals():
            return self._write(reach, parameters, context, feedback)

    def _write(
        self, reach: Reach, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..cards.whole_files import json_writer, write_whole
        from ..core.results.reach import reach_dict
        from ..layers_out.reach_layers import MARKS_REACH, REACH, drawn
        from ..layers_out.reach_rasters import raster_writer
        from .sinks import write_sinks

        made = drawn(reach, feedback.isCanceled)
        sinks = [(layer, made) for layer in (REACH, MARKS_REACH)]
        report = self.parameterAsFileOutput(parameters, "REPORT", context)
        rasters = {name: self._raster_path(parameters, name, context) for name in RASTERS}
        layers_files = [file_of_sink(parameters.get(layer.parameter)) for layer, _ in sinks]
        plan = self.parameterAsFile(parameters, "PLAN", context)
        outputs = WholeOutputs([report, *rasters.values(), *layers_files], read=[plan])
        minutes = {"OUT_TIME": reach.out_min, "HOME_BY": reach.home_by_min}
        words = {
            "OUT_TIME": self._tr("earliest arrival, minutes after the departure"),
            "HOME_BY": self._tr("latest leaving, minutes after the departure"),
        }
        files = {path: raster_writer(reach, minutes[name], words[name]) for name, path in rasters.items() if path}
        if report:
            files[report] = json_writer(reach_dict(reach, version=tideleg_version()))
        try:
            layers = write_sinks(self, sinks, parameters, context, styled=True)
            write_whole(files)
        except BaseException:
            outputs.undo()
            raise
        paths = {"REPORT": report, **rasters}
        return {**{name: path for name, path in paths.items() if path}, **layers}

    def _raster_path(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> str:
        """Where a raster goes, empty for nowhere; SwimPlanError for another kind of file."""
        if parameters.get(name) in (None, ""):
            return ""
        path = self.parameterAsOutputLayer(parameters, name, context)
        if path and not path.lower().endswith((".tif", ".tiff")):
            raise SwimPlanError(
                asked=f"Asked to write {name} to {path}", allowed="Rasters are GeoTIFF", remedy="End its name in .tif"
            )
        return path

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)
