"""`tideleg:streamat`: the stream at one place through one day."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsFeatureSink,
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
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.errors import SwimPlanError
from ..version import tideleg_version
from .refusals import refusals

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.results.stream_day import StreamDay


class StreamAt(QgsProcessingAlgorithm):
    """Lists the stream at a place; the water is gathered on the main thread, where layers may be touched."""

    def __init__(self) -> None:
        super().__init__()
        self._refusal = ""
        self._day: StreamDay | None = None

    def name(self) -> str:
        return "streamat"

    def displayName(self) -> str:
        return self._tr("Stream at a place")

    def tags(self) -> list[str]:
        return self._tr("stream,tide,slack,set,rate,drift,current,table,day").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "The tidal stream at one place through one day: set and rate every so many minutes, where each value "
            "comes from and whether it is known, the slacks and the greatest rates to the minute, and the windows in "
            "which the rate stays at or below a limit.\n\n"
            "Day: a date such as 2027-06-26, from midnight to midnight by the clocks of the plan's zone; a day on "
            "which clocks change has 23 or 25 hours.\n\n"
            "Set is where the water goes to, true. What is not known is left empty; it is never none. A prediction, "
            "not an observation."
        )

    def createInstance(self) -> StreamAt:
        return StreamAt()

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        double = QgsProcessingParameterNumber.Type.Double
        self.addParameter(QgsProcessingParameterFile("PLAN", self._tr("Plan"), extension="gpkg"))
        self.addParameter(QgsProcessingParameterPoint("POINT", self._tr("Place")))
        self.addParameter(QgsProcessingParameterString("DAY", self._tr("Day (year-month-day)")))
        self.addParameter(
            QgsProcessingParameterNumber("STEP", self._tr("Every (min)"), double, 60, minValue=1, maxValue=360)
        )
        self.addParameter(
            QgsProcessingParameterNumber("BELOW", self._tr("Limit of the windows (kn)"), double, 0.5, minValue=0)
        )
        self.addParameter(
            QgsProcessingParameterFeatureSink(
                "TABLE", self._tr("Stream through the day"), QgsProcessing.SourceType.TypeVectorPoint, optional=True
            )
        )
        self.addParameter(
            QgsProcessingParameterFileDestination("REPORT", self._tr("Report"), "JSON (*.json)", optional=True)
        )

    def prepareAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> bool:
        from ..layers_in.day_asked import stream_day_asked

        place = self.parameterAsPoint(parameters, "POINT", context, QgsCoordinateReferenceSystem("EPSG:4326"))
        try:
            self._day = stream_day_asked(
                self.parameterAsFile(parameters, "PLAN", context),
                lon=place.x(),
                lat=place.y(),
                day=self.parameterAsString(parameters, "DAY", context),
                step_min=self.parameterAsDouble(parameters, "STEP", context),
                below_kn=self.parameterAsDouble(parameters, "BELOW", context),
            )
        except SwimPlanError as error:
            # What is raised here never reaches the caller of processing.run; what processAlgorithm raises does.
            self._refusal = str(error)
        return True

    def processAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        if self._refusal:
            raise QgsProcessingException(self._refusal)
        from ..layers_out.stream_layer import stream_features, stream_fields, stream_sentences

        for warning in self._day.warnings:
            feedback.pushWarning(warning)
        for sentence in stream_sentences(self._day):
            feedback.pushInfo(sentence)
        results = self._write_report(parameters, context)
        wkb, crs, fields = stream_fields()
        sink, layer = self.parameterAsSink(parameters, "TABLE", context, fields, wkb, crs)
        if sink is not None:
            if not sink.addFeatures(stream_features(self._day), QgsFeatureSink.Flag.FastInsert):
                raise QgsProcessingException(self.writeFeatureError(sink, parameters, "TABLE"))
            results["TABLE"] = layer
        return results

    def _write_report(self, parameters: dict[str, Any], context: QgsProcessingContext) -> dict[str, Any]:
        from ..cards.whole_files import json_writer, write_whole
        from ..core.results.stream_day import stream_day_dict

        path = self.parameterAsFileOutput(parameters, "REPORT", context)
        if not path:
            return {}
        told = stream_day_dict(self._day, version=tideleg_version())
        with refusals():
            write_whole({path: json_writer(told)})
        return {"REPORT": path}

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)
