"""`tideleg:seasoncards`: the wet card of every good window of a season, in one PDF with its contents."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from pathlib import Path
from shutil import copyfile
from tempfile import TemporaryDirectory
from time import monotonic
from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsLayoutSize,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFileDestination,
)

from ..core.errors import StoppedError
from .card_look import add_card_look, card_look, layout_file
from .file_options import add_private, is_private
from .main_thread import in_main_thread
from .plan_algorithm import INTEGER, PlanAlgorithm
from .whole_outputs import WholeOutputs

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from datetime import datetime

    from ..cards.wet_card import Card
    from ..core.results.season import SeasonSwim
    from ..core.results.swim_plan import SwimPlan
    from ..core.results.windows import DepartureWindow, WindowsFound
    from ..core.solve.request import SwimRequest
    from ..layers_in.copied_source import CopiedSource

LEAST_MIN = 30  # so long a window must be to be a good one; common practice, no source
CLOSE_S = 5.0  # a QGIS that ends waits for this run, and closes no file meanwhile
FOUND_SHARE, PLANNED_SHARE = 10.0, 70.0  # percent of the work that is done with the windows, and with the swims


class SeasonCards(PlanAlgorithm):
    """Finds the windows of a route, and lays out the card of a good departure in each of those of the best days."""

    def __init__(self) -> None:
        super().__init__()
        self._request: SwimRequest | None = None
        self._rows: dict[str, CopiedSource] = {}
        self._found: WindowsFound | None = None
        self._season: list[SeasonSwim] = []
        self._pages: list[tuple[int, QgsLayoutSize]] = []
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
            "Swims a route at every departure of a span as Departure windows does, takes the windows of the best days, "
            "and writes a wet card for each, turn back and ways home included, one after the other into one PDF. Its "
            "first page says which window is on which page, and which days have none. On the morning take the pages of "
            "the window.\n\n"
            "Best days: those with the longest window. In a window the quickest departure that leaves every stop in "
            "time; where none of those tried does, the quickest, and the contents say so. Cards stand in the order of "
            "time.\n\n"
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
        each = [self._tr("Every window"), self._tr("The longest window")]
        self.addParameter(QgsProcessingParameterEnum("EACH", self._tr("Of each day"), each, defaultValue=0))
        self.add_number("LEAST", self._tr("Leave out windows shorter than (min)"), LEAST_MIN, 0, 1440)
        add_card_look(self)
        add_private(self, self._tr("Leave the marks out, to share the cards: no positions, headings or distances"))
        words = self._tr("Wet cards")
        self.addParameter(QgsProcessingParameterFileDestination("CARDS", words, "PDF (*.pdf)"))
        self.addOutput(QgsProcessingOutputNumber("COUNT", self._tr("Number of cards")))

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.plan_tables import rows_of_plan
        from ..layers_in.swim_in import request_from

        asked = self.swim_asked(parameters, context, depart="FROM", until="TO")
        plan = self.plan(parameters, context)
        self._rows = rows_of_plan(plan)
        self._request = request_from(plan, self._rows, asked)

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..core.results.shared import without_marks
        from ..core.solve.windows.departures_to_try import departures_to_try
        from ..core.solve.windows.find_windows import find_windows

        self._path = self.file_of(parameters, "CARDS", context)
        self._look = card_look(self, parameters, context)
        WholeOutputs([self._path], read=[self.plan(parameters, context), layout_file(self, parameters, context)])
        self._found, swum = find_windows(
            self._request,
            self._request.clock.start,
            self._request.clock.end,
            self.parameterAsDouble(parameters, "STEP", context),
            progress=lambda share: feedback.setProgress(FOUND_SHARE * share),
            is_cancelled=feedback.isCanceled,
        )
        windows, private = self._good(parameters, context), is_private(self, parameters, context)
        for number, window in enumerate(windows):
            tries = departures_to_try(self._request.clock, swum, window)
            best = self._best(parameters, context, window, tries, feedback)
            self._season.append(replace(best, swim=without_marks(best.swim)) if private else best)
            self._pages.append(in_main_thread(partial(self._measure, self._season[-1]), feedback.isCanceled))
            feedback.setProgress(FOUND_SHARE + (PLANNED_SHARE - FOUND_SHARE) * (number + 1) / len(windows))
            feedback.pushInfo(f"{self._season[-1].swim.depart:%Y-%m-%d %H:%M}")
        self.tell(feedback, self._found.warnings, ())
        self._write(feedback)
        return {"CARDS": self._path, "COUNT": len(self._season)}

    def _good(self, parameters: dict[str, Any], context: QgsProcessingContext) -> tuple[DepartureWindow, ...]:
        """The windows to make cards for; an error says what stopped the departures where there are none."""
        from ..core.results.season import good_windows

        windows = good_windows(
            self._found,
            most_days=self.parameterAsInt(parameters, "MOST", context),
            each=self.parameterAsEnum(parameters, "EACH", context) == 0,
            least_min=self.parameterAsDouble(parameters, "LEAST", context),
        )
        if windows:
            return windows
        if self._found.windows:
            longest = max(one.open_min for one in self._found.windows)
            raise QgsProcessingException(
                self._tr(
                    "Every window of this span is shorter: the longest has {:.0f} min. Nothing was written."
                ).format(longest)
            )
        limits = ", ".join(f"{name} {count}" for name, count in self._found.limits.items())
        raise QgsProcessingException(
            self._tr("No departure of this span can be swum: {}. Nothing was written.").format(limits)
        )

    def _best(
        self,
        parameters: dict[str, Any],
        context: QgsProcessingContext,
        window: DepartureWindow,
        tries: tuple[datetime, ...],
        feedback: QgsProcessingFeedback,
    ) -> SeasonSwim:
        """The first of these departures that leaves every stop in time, else the first."""
        from ..core.results.season import SeasonSwim

        swims = (SeasonSwim(window=window, swim=self._swum(parameters, context, depart, feedback)) for depart in tries)
        first = next(swims)
        return first if first.is_safe else next((one for one in swims if one.is_safe), first)

    def _swum(
        self,
        parameters: dict[str, Any],
        context: QgsProcessingContext,
        depart: datetime,
        feedback: QgsProcessingFeedback,
    ) -> SwimPlan:
        """One departure's swim."""
        from ..layers_in.swim_in import request_from

        asked = replace(
            self.swim_asked(parameters, context, depart="FROM"),
            depart=depart.isoformat(),
            way=self.way(parameters, context),
        )
        return self.swum(request_from(self.plan(parameters, context), self._rows, asked), feedback)

    def _card(self, one: SeasonSwim) -> Card:
        """For the main thread; it is not kept, since each takes tens of megabytes."""
        from ..cards.wet_card import card_layout

        return card_layout(one.swim, self._look)

    def _measure(self, one: SeasonSwim) -> tuple[int, QgsLayoutSize]:
        """How many pages a card takes, and their size."""
        card = self._card(one)
        return card.sides, card.layout.pageCollection().page(0).pageSize()

    def _write(self, feedback: QgsProcessingFeedback) -> None:
        """Card by card, so that the window answers in between; the file takes its place once it is whole."""
        from ..cards.card_book import CardBook
        from ..cards.season_contents import contents_layout
        from ..cards.whole_files import write_whole

        sides, sizes = zip(*self._pages)
        with TemporaryDirectory() as folder:
            made = Path(folder) / "cards.pdf"
            book = in_main_thread(lambda: CardBook(made, self._season[0].swim.route), feedback.isCanceled)
            try:
                contents = partial(contents_layout, self._found, self._season, sides, sizes[0])
                in_main_thread(lambda: book.add(contents()), feedback.isCanceled)
                for number, one in enumerate(self._season):
                    if feedback.isCanceled():
                        raise StoppedError
                    in_main_thread(lambda one=one: book.add(self._card(one).layout), feedback.isCanceled)
                    feedback.setProgress(PLANNED_SHARE + (100.0 - PLANNED_SHARE) * (number + 1) / len(self._season))
            finally:
                until = monotonic() + CLOSE_S
                in_main_thread(book.close, lambda: feedback.isCanceled() and monotonic() > until)
            write_whole({self._path: partial(copyfile, made)})
