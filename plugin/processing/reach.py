"""`tideleg:reach`: how soon every place is reached from an entry, and how late it may be left."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessing,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterPoint,
    QgsProcessingParameterRasterDestination,
)

from ..core.errors import SwimPlanError
from ..version import tideleg_version
from .place_asked import add_swimmer_and_grid, lonlat_of
from .plan_algorithm import PlanAlgorithm

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.solve.reach.request import ReachRequest

RASTERS = ("OUT_TIME", "HOME_BY")


class ReachOfEntry(PlanAlgorithm):
    """Finds a reach."""

    def __init__(self) -> None:
        super().__init__()
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
            "heading a leg it takes longer. The marks' numbers are given both ways. Who comes to a closed area before "
            "it opens waits beside it. Water whose stream is not known is not passed, and said so. No reserve is in "
            "these times. A prediction, not an observation; feasible is not safe; never dive alone. Not for the "
            "navigation of vessels."
        )

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.add_plan()
        self.addParameter(QgsProcessingParameterPoint("ENTRY", self._tr("Entry")))
        self.add_text("DEPART", self._tr("Departure (date and time)"))
        self.add_text("BACK_BY", self._tr("Back by (date and time)"))
        self.add_number("STAY", self._tr("Stay (min)"), 30.0, 0.0, 720.0)
        add_swimmer_and_grid(self)
        for name, label in (("OUT_TIME", self._tr("Out in (min)")), ("HOME_BY", self._tr("Leave by (min)"))):
            self.addParameter(QgsProcessingParameterRasterDestination(name, label, optional=True))
        self.add_sink("REACH", self._tr("Reach"), QgsProcessing.SourceType.TypeVectorPolygon)
        points = QgsProcessing.SourceType.TypeVectorPoint
        self.add_sink("MARKS_REACH", self._tr("Marks' numbers"), points, by_default=False)
        self.add_report()

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.reach_in import ReachAsked, reach_from

        lon, lat = lonlat_of(self, parameters, "ENTRY", context)
        asked = ReachAsked(
            lon=lon,
            lat=lat,
            depart=self.text(parameters, "DEPART", context),
            back_by=self.text(parameters, "BACK_BY", context),
            stay_min=self.parameterAsDouble(parameters, "STAY", context),
            cell_m=self.number(parameters, "CELL", context) or 0.0,
            channels=self.parameterAsEnum(parameters, "CHANNELS", context),
            swimmer=self.text(parameters, "SWIMMER", context),
            pace_m_s=self.number(parameters, "PACE", context),
        )
        self._request = reach_from(self.plan(parameters, context), asked)

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..cards.whole_files import json_writer
        from ..core.results.reach import reach_dict
        from ..core.solve.reach.find_reach import find_reach
        from ..layers_out.reach_layers import MARKS_REACH, REACH, drawn, reach_sentences
        from ..layers_out.reach_rasters import raster_writer

        reach = find_reach(
            self._request,
            progress=lambda share: feedback.setProgress(90.0 * share),
            is_cancelled=feedback.isCanceled,
        )
        self.tell(feedback, reach.warnings, reach_sentences(reach))
        made = drawn(reach, feedback.isCanceled)
        out, home = self._tr("earliest arrival, min after departure"), self._tr("latest leaving, min after departure")
        files = {
            "OUT_TIME": lambda: raster_writer(reach, reach.out_min, out),
            "HOME_BY": lambda: raster_writer(reach, reach.home_by_min, home),
            "REPORT": lambda: json_writer(reach_dict(reach, version=tideleg_version())),
        }
        return self.write(parameters, context, [(REACH, made), (MARKS_REACH, made)], files, styled=True)

    def file_of(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> str:
        """As for any output; SwimPlanError for a raster that would be of another kind."""
        if name not in RASTERS:
            return super().file_of(parameters, name, context)
        if parameters.get(name) in (None, ""):
            return ""
        path = self.parameterAsOutputLayer(parameters, name, context)
        if path and not path.lower().endswith((".tif", ".tiff")):
            raise SwimPlanError(
                asked=self._tr("Asked to write {} to {}").format(name, path),
                allowed=self._tr("Rasters are GeoTIFF"),
                remedy=self._tr("End its name in .tif"),
            )
        return path
