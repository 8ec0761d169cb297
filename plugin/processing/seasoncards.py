"""`tideleg:seasoncards`: the wet card of every good day of a season, in one PDF."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterFileDestination,
)

from .card_look import add_card_look, card_look, layout_file
from .file_options import add_private, is_private
from .main_thread import in_main_thread
from .plan_algorithm import INTEGER, PlanAlgorithm
from .whole_outputs import WholeOutputs

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from datetime import datetime

    from ..core.results.swim_plan import SwimPlan
    from ..core.solve.request import SwimRequest

FOUND_SHARE = 30.0  # percent of the work that finding the windows is


class SeasonCards(PlanAlgorithm):
    """Finds the windows of a route, and lays out the card of the best departure of each of the best days."""

    def __init__(self) -> None:
        super().__init__()
        self._request: SwimRequest | None = None
        self._plans: list[SwimPlan] = []
        self._look: Any = None
        self._path = ""

    def name(self) -> str:
        return "seasoncards"

    def displayName(self) -> str:
        return self._tr("Wet cards of a season")

    def tags(self) -> list[str]:
        return self._tr("card,print,season,windows,atlas,batch,days").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Swims a route at every departure of a span as Departure windows does, takes the best days, and writes "
            "the wet card of each one's best departure, turn back and ways home included, one after the other into "
            "one PDF. On the morning take the pages of the day.\n\n"
            "Best days: those with the longest window; of each the departure that takes the fewest minutes. Cards "
            "stand in the order of the days.\n\n"
            "Tides and streams must reach to the end of the span: days without them are not counted as good. A "
            "prediction; feasible is not safe; never dive alone."
        )

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.add_plan()
        self.add_text("ROUTE", self._tr("Name of the route"), optional=True)
        self.add_text("FROM", self._tr("From (date, or date and time)"))
        self.add_text("TO", self._tr("To (date, or date and time)"))
        self.add_number("STEP", self._tr("A departure every (min)"), 10, 1, 360)
        self.add_swimmer()
        self.add_way()
        self.add_number("MOST", self._tr("Days, at most"), 10, 1, 100, kind=INTEGER)
        add_card_look(self)
        add_private(self, self._tr("Leave the marks out, to share the cards: no positions, headings or distances"))
        words = self._tr("Wet cards")
        self.addParameter(QgsProcessingParameterFileDestination("CARDS", words, "PDF (*.pdf)"))
        self.addOutput(QgsProcessingOutputNumber("COUNT", self._tr("Number of cards")))

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.swim_in import request_from

        asked = self.swim_asked(parameters, context, depart="FROM", until="TO")
        self._request = request_from(self.plan(parameters, context), {}, asked)

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..core.results.shared import without_marks
        from ..core.solve.windows.find_windows import find_windows

        self._path = self.file_of(parameters, "CARDS", context)
        self._look = card_look(self, parameters, context)
        WholeOutputs([self._path], read=[self.plan(parameters, context), layout_file(self, parameters, context)])
        found, _ = find_windows(
            self._request,
            self._request.clock.start,
            self._request.clock.end,
            self.parameterAsDouble(parameters, "STEP", context),
            progress=lambda share: feedback.setProgress(FOUND_SHARE * share),
            is_cancelled=feedback.isCanceled,
        )
        best = sorted(day.best for day in found.days[: self.parameterAsInt(parameters, "MOST", context)])
        if not best:
            limits = ", ".join(f"{name} {count}" for name, count in found.limits.items())
            raise QgsProcessingException(
                self._tr("No departure of this span can be swum: {}. Nothing was written.").format(limits)
            )
        for number, depart in enumerate(best):
            self._plans.append(self._swum(parameters, context, depart, feedback))
            feedback.setProgress(FOUND_SHARE + (100.0 - FOUND_SHARE) * (number + 1) / len(best))
            feedback.pushInfo(f"{depart:%Y-%m-%d %H:%M}")
        if is_private(self, parameters, context):
            self._plans = [without_marks(plan) for plan in self._plans]
        self.tell(feedback, found.warnings, ())
        in_main_thread(self._write, feedback.isCanceled)  # print layouts belong there
        return {"CARDS": self._path, "COUNT": len(self._plans)}

    def _swum(
        self,
        parameters: dict[str, Any],
        context: QgsProcessingContext,
        depart: datetime,
        feedback: QgsProcessingFeedback,
    ) -> SwimPlan:
        """One day's swim."""
        from ..layers_in.swim_in import request_from

        asked = replace(
            self.swim_asked(parameters, context, depart="FROM"),
            depart=depart.isoformat(),
            way=self.way(parameters, context),
        )
        return self.swum(request_from(self.plan(parameters, context), {}, asked), feedback)

    def _write(self) -> None:
        from ..cards.card_book import book_writer
        from ..cards.wet_card import card_layout
        from ..cards.whole_files import write_whole

        cards = [card_layout(plan, self._look) for plan in self._plans]
        write_whole({self._path: book_writer(cards, self._plans[0].route)})
