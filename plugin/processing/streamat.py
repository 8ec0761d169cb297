"""`tideleg:streamat`: the stream at one place through one day."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsFeatureSink,
    QgsProcessing,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterNumber,
    QgsProcessingParameterPoint,
)

from ..version import tideleg_version
from .plan_algorithm import DOUBLE, PlanAlgorithm

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.results.stream_day import StreamDay


class StreamAt(PlanAlgorithm):
    """Lists the stream at a place; the water is gathered on the main thread, where layers may be touched."""

    def __init__(self) -> None:
        super().__init__()
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

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.add_plan()
        self.addParameter(QgsProcessingParameterPoint("POINT", self._tr("Place")))
        self.add_text("DAY", self._tr("Day (year-month-day)"))
        self.addParameter(
            QgsProcessingParameterNumber("STEP", self._tr("Every (min)"), DOUBLE, 60, minValue=1, maxValue=360)
        )
        self.addParameter(
            QgsProcessingParameterNumber("BELOW", self._tr("Limit of the windows (kn)"), DOUBLE, 0.5, minValue=0)
        )
        self.add_sink("TABLE", self._tr("Stream through the day"), QgsProcessing.SourceType.TypeVectorPoint)
        self.add_report()

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.day_asked import stream_day_asked

        place = self.parameterAsPoint(parameters, "POINT", context, QgsCoordinateReferenceSystem("EPSG:4326"))
        self._day = stream_day_asked(
            self.plan(parameters, context),
            lon=place.x(),
            lat=place.y(),
            day=self.parameterAsString(parameters, "DAY", context),
            step_min=self.parameterAsDouble(parameters, "STEP", context),
            below_kn=self.parameterAsDouble(parameters, "BELOW", context),
        )

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..layers_out.stream_layer import stream_features, stream_fields, stream_sentences

        self.tell(feedback, self._day.warnings, stream_sentences(self._day))
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

        path = self.file_of(parameters, "REPORT", context)
        if not path:
            return {}
        told = stream_day_dict(self._day, version=tideleg_version())
        write_whole({path: json_writer(told)})
        return {"REPORT": path}
