"""`tideleg:swimfiles`: the swim for a GPS and for other programs, each file read again before it is kept."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputBoolean,
    QgsProcessingParameterFileDestination,
)

from .file_options import add_gps_options, add_private, gps_options
from .plan_algorithm import PlanAlgorithm

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.solve.request import SwimRequest

FILES = {
    "GPX": "GPX (*.gpx)",
    "KML": "KML (*.kml)",
    "GEOJSON": "GeoJSON (*.geojson)",
    "CSV": "CSV (*.csv)",
    "TEXT": "Text (*.txt)",
}


class SwimFiles(PlanAlgorithm):
    """Plans the swim as planswim does and writes it for receivers and programs, all files asked for or none."""

    def __init__(self) -> None:
        super().__init__()
        self._request: SwimRequest | None = None
        self._options: Any = None

    def name(self) -> str:
        return "swimfiles"

    def displayName(self) -> str:
        return self._tr("Files for a GPS")

    def tags(self) -> list[str]:
        return self._tr("gpx,gps,kml,geojson,csv,waypoint,route,track,export,share").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Plans a swim and writes it for a GPS and for other programs. Each file is read again and held against the "
            "plan before it is kept.\n\n"
            "GPX: places as waypoints, the legs as a route, the predicted track with its times. KML, GeoJSON: places, "
            "legs, track and flags. CSV: the legs as a table, safe for spreadsheets. Text: the wet card.\n\n"
            "Length of names: what a small receiver shows, 6 to 10 letters; names stay different. Points on the way: "
            "waypoints on the track really swum, every so many metres of each leg. What is left empty comes from the "
            "plan's settings.\n"
            "Leave the marks out: for files to share. Entries and exits stay; marks have no positions, and there is "
            "nothing to find them by.\n\n"
            "Everything is predicted. Not for navigation. Marks are private: the other files say where they are."
        )

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.add_plan()
        self.add_text("ROUTE", self._tr("Name of the route"), optional=True)
        self.add_text("DEPART", self._tr("Departure (date and time)"))
        self.add_swimmer()
        self.add_way()
        add_gps_options(self)
        add_private(self, self._tr("Leave the marks out, to share the files"))
        names = {
            "GPX": self._tr("Marks, route and track for a GPS"),
            "KML": self._tr("KML"),
            "GEOJSON": self._tr("GeoJSON"),
            "CSV": self._tr("Legs as a table"),
            "TEXT": self._tr("Wet card as plain text"),
        }
        for name, ending in FILES.items():
            default = name == "GPX"
            self.addParameter(
                QgsProcessingParameterFileDestination(name, names[name], ending, optional=True, createByDefault=default)
            )
        self.addOutput(QgsProcessingOutputBoolean("FEASIBLE", self._tr("Can be swum")))

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.swim_in import request_from
        from ..plan_package.settings import read_settings

        asked = replace(self.swim_asked(parameters, context), way=self.way(parameters, context))
        plan = self.plan(parameters, context)
        self._request = request_from(plan, {}, asked)
        self._options = gps_options(self, parameters, context, read_settings(plan))

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..cards.read_back import DRIVERS, unread_words
        from ..cards.swim_files import WRITERS

        wanted = [name for name in FILES if self.file_of(parameters, name, context)]
        if not wanted:
            raise QgsProcessingException(self._tr("No file was asked for: name at least one."))
        swim = self.swum(self._request, feedback)
        sentences = (f"[{one.severity}] {one.message}" for one in swim.flags)
        self.tell(feedback, (*swim.warnings, *unread_words(DRIVERS.keys() & set(wanted))), sentences)
        writers = {name: lambda name=name: WRITERS[name](swim, self._options) for name in FILES}
        return {"FEASIBLE": swim.feasible, **self.write(parameters, context, [], writers)}
