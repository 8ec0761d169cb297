"""`tideleg:departurewindows`: at which hours of which days a route can be swum, and what stops it at the others."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessing,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterFileDestination,
)

from ..version import tideleg_version
from .plan_algorithm import PlanAlgorithm

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.results.windows import WindowsFound
    from ..core.solve.request import SwimRequest
    from ..core.solve.windows.departures import DeparturesSwum

TABLE = QgsProcessing.SourceType.TypeVector


class DepartureWindows(PlanAlgorithm):
    """Swims a route at every departure of a span."""

    def __init__(self) -> None:
        super().__init__()
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

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.add_plan()
        self.add_text("ROUTE", self._tr("Name of the route"), optional=True)
        self.add_text("FROM", self._tr("From (date, or date and time)"))
        self.add_text("TO", self._tr("To (date, or date and time)"))
        self.add_number("STEP", self._tr("A departure every (min)"), 10, 1, 360)
        self.add_swimmer()
        self.add_number("WEAK_KN", self._tr("Weak stream: at most (kn)"), None, 0, 20, advanced=True)
        self.add_number("WEAK_FOR", self._tr("Weak stream: for (min)"), None, 0, 720, advanced=True)
        self.add_sink("WINDOWS", self._tr("Windows"), TABLE)
        self.add_sink("DEPARTURES", self._tr("All departures"), TABLE, by_default=False)
        self.add_report()
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

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.swim_in import request_from

        asked = self.swim_asked(parameters, context, depart="FROM", until="TO")
        self._request = request_from(self.plan(parameters, context), {}, asked)

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..core.solve.windows.find_windows import find_windows
        from ..layers_out.window_layers import DEPARTURES, WINDOWS, Departures, window_sentences

        clock = self._request.clock
        self._found, self._swum = find_windows(
            self._request,
            clock.start,
            clock.end,
            self.parameterAsDouble(parameters, "STEP", context),
            weak_kn=self.number(parameters, "WEAK_KN", context),
            weak_for_min=self.number(parameters, "WEAK_FOR", context),
            progress=lambda share: feedback.setProgress(95.0 * share),
            is_cancelled=feedback.isCanceled,
        )
        self.tell(feedback, self._found.warnings, window_sentences(self._found))
        sinks = [(WINDOWS, self._found), (DEPARTURES, Departures(request=self._request, swum=self._swum))]
        files = {"REPORT": self._report_writer, "PICTURE": self._picture_writer}
        return {"COUNT": len(self._found.windows), **self.write(parameters, context, sinks, files)}

    def _report_writer(self) -> Callable[[Path], None]:
        from ..cards.whole_files import json_writer
        from ..core.results.windows import windows_dict

        return json_writer(windows_dict(self._found, version=tideleg_version()))

    def _picture_writer(self) -> Callable[[Path], None]:
        from ..cards.day_export import picture_writer
        from ..core.solve.windows.day_strips import day_strips

        return picture_writer(lambda: day_strips(self._request, self._found, self._swum))
