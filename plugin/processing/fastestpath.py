"""`tideleg:fastestpath`: the quickest way between two places, as a route of a few legs to edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessing,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterPoint,
)

from ..version import tideleg_version
from .place_asked import add_swimmer_and_grid, lonlat_of
from .plan_algorithm import PlanAlgorithm

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.solve.reach.request import ReachRequest


class FastestPathBetween(PlanAlgorithm):
    """Finds a fastest path."""

    def __init__(self) -> None:
        super().__init__()
        self._request: ReachRequest | None = None

    def name(self) -> str:
        return "fastestpath"

    def displayName(self) -> str:
        return self._tr("Fastest path")

    def tags(self) -> list[str]:
        return self._tr("fastest,path,route,shortest,stream,tide,channel,land,headland,round").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "The quickest way from one place to another, leaving at one moment, in the stream as it changes: round "
            "land and round what nobody may enter, past channels or square across them. It comes as a route of a few "
            "legs, each on one compass heading, with the minutes of the straight line and of a swimmer who steers "
            "anew all the time beside it.\n\n"
            "Departure: ISO 8601, such as 2027-06-05T10:00; without an offset in the plan's zone.\n"
            "Channels: no notice; keep out; or cross square, each crossing a leg of its own whose heading is square "
            "to the traffic.\n"
            "Cells: empty has the size chosen. Passages narrower than a few cells count as closed.\n"
            "Route: the line with the fields of the plan's routes: paste it there, move its vertices, plan the "
            "swim. Its legs are checked on the track really swum, which bows; the way keeps 20 m off land where it "
            "can.\n"
            "Report: that of Plan swim for this route, and the comparison.\n\n"
            "No reserve is in these times. A prediction, not an observation; feasible is not safe; never dive alone. "
            "Not for the navigation of vessels."
        )

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.add_plan()
        for name, label in (("START", self._tr("Start")), ("END", self._tr("End"))):
            self.addParameter(QgsProcessingParameterPoint(name, label))
        self.add_text("DEPART", self._tr("Departure (date and time)"))
        add_swimmer_and_grid(self)
        self.add_sink("ROUTE", self._tr("Fastest path as a route"), QgsProcessing.SourceType.TypeVectorLine)
        self.add_report()
        self.addOutput(QgsProcessingOutputNumber("MINUTES", self._tr("Minutes of the route")))

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.reach_in import PathAsked, path_from

        asked = PathAsked(
            start=lonlat_of(self, parameters, "START", context),
            end=lonlat_of(self, parameters, "END", context),
            depart=self.text(parameters, "DEPART", context),
            cell_m=self.number(parameters, "CELL", context) or 0.0,
            channels=self.parameterAsEnum(parameters, "CHANNELS", context),
            swimmer=self.text(parameters, "SWIMMER", context),
            pace_m_s=self.number(parameters, "PACE", context),
        )
        self._request = path_from(self.plan(parameters, context), asked)

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..cards.whole_files import json_writer
        from ..core.results.fastest_path import path_dict
        from ..core.solve.reach.find_path import find_path
        from ..layers_out.path_layer import PATH, path_sentences

        path = find_path(
            self._request,
            progress=lambda share: feedback.setProgress(100.0 * share),
            is_cancelled=feedback.isCanceled,
        )
        self.tell(feedback, path.plan.warnings, path_sentences(path))
        report = {"REPORT": lambda: json_writer(path_dict(path, version=tideleg_version()))}
        return {"MINUTES": path.plan.total_min, **self.write(parameters, context, [(PATH, path)], report)}
