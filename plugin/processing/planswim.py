"""`tideleg:planswim`: swims a route at one departure and writes headings, flags, layers, card and files."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessing,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputBoolean,
    QgsProcessingOutputNumber,
    QgsProcessingParameterDefinition,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFile,
    QgsProcessingParameterFileDestination,
)

from ..version import tideleg_version
from .file_options import add_private, is_private
from .main_thread import in_main_thread
from .plan_algorithm import PlanAlgorithm
from .whole_outputs import WholeOutputs, file_of_sink

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.results.swim_plan import SwimPlan
    from ..core.solve.request import SwimRequest

VECTOR = QgsProcessing.SourceType.TypeVector
POINT, LINE = QgsProcessing.SourceType.TypeVectorPoint, QgsProcessing.SourceType.TypeVectorLine
POLYGON = QgsProcessing.SourceType.TypeVectorPolygon
SOURCES = {
    "ROUTES": LINE,
    "MARKS": POINT,
    "CHANNELS": VECTOR,
    "CLOSED_AREAS": POLYGON,
    "LAND": POLYGON,
    "DEPTH_CONTOURS": LINE,
    "SOUNDINGS": POINT,
    "TIDES": VECTOR,
    "STREAM_STATIONS": POINT,
    "STREAM_RATES": VECTOR,
}
SINKS = {"LEGS": LINE, "TRACK": LINE, "FLAGS": POINT, "STOPS": POINT}
FILES = {"REPORT": "JSON (*.json)", "GPX": "GPX (*.gpx)", "CARD": "PDF (*.pdf)", "CSV": "CSV (*.csv)"}


class PlanSwim(PlanAlgorithm):
    """Plans one swim; the request is built on the main thread, so that no layer is touched by the worker."""

    def __init__(self) -> None:
        super().__init__()
        self._request: SwimRequest | None = None
        self._plan: SwimPlan | None = None
        self._options: Any = None

    def name(self) -> str:
        return "planswim"

    def displayName(self) -> str:
        return self._tr("Plan swim")

    def tags(self) -> list[str]:
        return self._tr("plan,swim,route,heading,stream,tide,legs,card,gpx").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Swims a route leaving at one moment, leg by leg, in the stream as it changes: the heading to hold on each "
            "leg, minutes, the track really swum and what it meets (channels, closed areas, land, darkness, depth, "
            "the swimmer's limits).\n\n"
            "Plan: a plan's GeoPackage. A layer given under the advanced parameters stands in for the plan's own.\n"
            "Departure: ISO 8601, such as 2027-06-05T10:00; without an offset it is read in the plan's zone.\n"
            "Turn back: each stop's latest leaving time, so that the best of all exits is reached before dusk, the "
            "swimmer's hours and the plan's other limits with the reserve kept, and the same for a bad day.\n"
            "Swimmer: several names with a semicolon between them swim together, the slowest sets the pace.\n"
            "Pace: through the water, m/s; overrides the swimmer's.\n"
            "Headings: one for the whole leg, solved so that the track ends on the mark; a new one every so many "
            "minutes, each ending on the line; or held on the line all the time.\n\n"
            "Stream that is not known is never taken as none: the leg is refused and said so. A prediction, not an "
            "observation; feasible is not safe; never dive alone. Not for the navigation of vessels."
        )

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.addParameter(QgsProcessingParameterFile("PLAN", self._tr("Plan"), extension="gpkg", optional=True))
        self.add_text("ROUTE", self._tr("Name of the route"), optional=True)
        self.add_text("DEPART", self._tr("Departure (date and time)"))
        self.add_text("SWIMMER", self._tr("Name of the swimmer"), optional=True)
        self.add_number("PACE", self._tr("Pace through the water (m/s)"), None, 0.1, 2.5)
        self.add_way()
        words = self._words()
        for name, kind in SOURCES.items():
            layer = QgsProcessingParameterFeatureSource(name, words[name], [kind], optional=True)
            # A plan has them all: only who has none, or wants another layer for once, looks further down.
            layer.setFlags(layer.flags() | QgsProcessingParameterDefinition.Flag.FlagAdvanced)
            self.addParameter(layer)
        for name, kind in SINKS.items():
            self.add_sink(name, words[name], kind)
        for name, ending in FILES.items():
            default = name == "REPORT"
            self.addParameter(
                QgsProcessingParameterFileDestination(name, words[name], ending, optional=True, createByDefault=default)
            )
        # A report is all numbers, and layers are the plan's own: only what is handed round is written so.
        add_private(self, self._tr("Leave the marks out of GPX, wet card and table, to share them"))
        self.addOutput(QgsProcessingOutputBoolean("FEASIBLE", self._tr("Can be swum")))
        self.addOutput(QgsProcessingOutputNumber("MINUTES", self._tr("Minutes in all")))

    def _words(self) -> dict[str, str]:
        """What each layer and file is called in the dialog."""
        return {
            "ROUTES": self._tr("Routes"),
            "MARKS": self._tr("Marks"),
            "CHANNELS": self._tr("Channels"),
            "CLOSED_AREAS": self._tr("Closed areas"),
            "LAND": self._tr("Land"),
            "DEPTH_CONTOURS": self._tr("Depth contours"),
            "SOUNDINGS": self._tr("Soundings"),
            "TIDES": self._tr("Tides"),
            "STREAM_STATIONS": self._tr("Stream stations"),
            "STREAM_RATES": self._tr("Stream rates by the hour"),
            "LEGS": self._tr("Legs"),
            "TRACK": self._tr("Track swum"),
            "FLAGS": self._tr("What to mind"),
            "STOPS": self._tr("Stops"),
            "REPORT": self._tr("Report"),
            "GPX": self._tr("Marks and route for a GPS"),
            "CARD": self._tr("Wet card"),
            "CSV": self._tr("Legs as a table"),
        }

    def checkParameterValues(self, parameters: dict[str, Any], context: QgsProcessingContext) -> tuple[bool, str]:
        if not self.plan(parameters, context) and not parameters.get("ROUTES"):
            return False, self._tr("Give a plan, or at least a layer of routes.")
        return super().checkParameterValues(parameters, context)

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..cards.gps_options import options_of
        from ..layers_in.swim_in import request_from
        from ..plan_package.settings import read_settings

        sources = self._sources(parameters, context)
        asked = replace(self.swim_asked(parameters, context), way=self.way(parameters, context))
        plan = self.plan(parameters, context)
        self._request = request_from(plan or None, sources, asked)
        settings = read_settings(plan) if plan else {}
        self._options = options_of(settings, private=is_private(self, parameters, context))

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..cards.read_back import unread_words
        from ..core.solve.plan_swim import plan_swim
        from ..core.solve.turn_back.turn_back import turn_back, with_turn_back

        plan = plan_swim(self._request, is_cancelled=feedback.isCanceled)
        feedback.setProgress(40)
        found = turn_back(
            self._request,
            plan,
            progress=lambda share: feedback.setProgress(40.0 + 40.0 * share),
            is_cancelled=feedback.isCanceled,
        )
        self._plan = with_turn_back(plan, found)
        unread = unread_words(["GPX"]) if self.file_of(parameters, "GPX", context) else []
        self.tell(
            feedback,
            (*self._plan.warnings, *unread),
            (f"[{flag.severity}] {flag.message}" for flag in self._plan.flags),
        )
        if feedback.isCanceled():
            return {}
        return self._write(parameters, context, feedback)

    def _sources(self, parameters: dict[str, Any], context: QgsProcessingContext) -> dict[str, Any]:
        """The layers given, by the plan's names; one that cannot be opened is refused, not replaced by the plan's."""
        sources = {}
        for name in SOURCES:
            source = self.parameterAsSource(parameters, name, context)
            if source is not None:
                sources[name.lower()] = source
            elif parameters.get(name) not in (None, ""):
                raise QgsProcessingException(self.invalidSourceError(parameters, name))
        return sources

    def _write(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        """Layers first, then the files, in one go; all of them or none."""
        from ..layers_out.plan_layers import OUTPUT_LAYERS
        from .sinks import write_sinks

        paths = {name: self.file_of(parameters, name, context) for name in FILES}
        written = [*paths.values(), *(file_of_sink(parameters.get(name)) for name in SINKS)]
        outputs = WholeOutputs(written, read=[self.plan(parameters, context), *self._read_from])
        try:
            layers = write_sinks(
                self, [(layer, self._plan) for layer in OUTPUT_LAYERS], parameters, context, styled=True
            )
            if paths["CARD"]:  # a print layout, which only the main thread may make
                in_main_thread(lambda: self._write_files(paths), feedback.isCanceled)
            else:
                self._write_files(paths)
        except BaseException:
            outputs.undo()
            raise
        outcome = {"FEASIBLE": self._plan.feasible, "MINUTES": self._plan.total_min}
        return {**outcome, **{name: path for name, path in paths.items() if path}, **layers}

    def _write_files(self, paths: dict[str, str]) -> None:
        from ..cards.swim_files import csv_writer, gpx_writer
        from ..cards.wet_card import card_writers
        from ..cards.whole_files import text_writer, write_whole
        from ..core.results.report import report_text
        from ..core.results.shared import without_marks

        writers = {
            "REPORT": lambda: text_writer(report_text(self._plan, tideleg_version())),
            "GPX": lambda: gpx_writer(self._plan, self._options),
            "CSV": lambda: csv_writer(self._plan, self._options),
        }
        found = {paths[name]: writer() for name, writer in writers.items() if paths[name]}
        shown = without_marks(self._plan) if self._options.private else self._plan
        card = card_writers(shown, paths["CARD"]) if paths["CARD"] else {}
        write_whole({**found, **card})
