"""The dock's section on when to go: the windows of a span of days, the best days first."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from qgis.PyQt.QtCore import QDate, QSignalBlocker
from qgis.PyQt.QtWidgets import QComboBox, QDateEdit, QPushButton

from ..core.clock import zone_named
from ..core.errors import SwimPlanError
from ..core.results.season import days_without_words
from ..core.results.windows import WindowsFound
from ..words import tr
from .asking import form_of, minutes_box, name_widgets
from .departure import tide_moments
from .progress_words import by_percent
from .row_table import RowTable
from .section import label
from .session import Session
from .window_rows import (
    WindowRow,
    default_span,
    range_words,
    window_headers,
    window_rows,
    windows_headline,
)
from .work_section import IsCancelled, Tell, WorkSection

STEP_MIN, STEP_RANGE_MIN = 10, (1, 360)
MOST_ROWS = 8  # until all are asked for
MOST_DAYS_TOLD = 10  # of those without a window


class WindowsSection(WorkSection):
    """Asks for days and a step; route, swimmers, pace and headings are the swim's. A row chooses its best departure."""

    page = "dock.md#when-to-go"
    minds = ("route", "ticked", "pace_m_s", "way")
    tells = True

    def __init__(self, session: Session) -> None:
        self.first, self.last, self.step = QDateEdit(), QDateEdit(), minutes_box(*STEP_RANGE_MIN, STEP_MIN)
        self.headline, self.range, self.notes = label(strong=True), label(), label()
        self.order, self.more = QComboBox(), QPushButton()
        self.table = RowTable(window_headers())
        self.found: WindowsFound | None = None
        self._is_typed = False  # the days are the user's own
        self._shows_all = False
        self._days_of: tuple[object, date] | None = None  # the plan and the departure's day that the days are for
        super().__init__("When", tr("When to Go"), session, tr("Find Windows"))
        self._set_up()
        self._lay_out()
        for editor in (self.first, self.last):
            editor.dateChanged.connect(self._type_days)
        self.step.valueChanged.connect(lambda _minutes: self.grow_old(""))
        self.order.activated.connect(lambda _number: self._show_rows())
        self.more.clicked.connect(self._show_all)
        self.table.row_chosen.connect(lambda row: session.choose_moment(row.best))
        session.plan_changed.connect(self._take_days)
        session.asked_changed.connect(self._tides_changed)
        session.choices_changed.connect(self._show_days)
        self._show_days()

    def _set_up(self) -> None:
        for editor in (self.first, self.last):
            editor.setDisplayFormat("yyyy-MM-dd")
            editor.setCalendarPopup(True)
        self.order.addItems([tr("Best days first"), tr("In order of time")])
        self.more.setAutoDefault(False)
        name_widgets(
            {
                self.first: (tr("From"), tr("The first day to look at, by the plan's clock")),
                self.last: (tr("To"), tr("The last day to look at, by the plan's clock")),
                self.step: (tr("A departure every"), tr("Minutes between the departures that are looked at")),
                self.ask: (tr("Find windows"), tr("Swim the route at every departure of these days")),
                self.order: (
                    tr("Order of the windows"),
                    tr("Days rank by their longest window, then by the quickest swim"),
                ),
                self.more: (tr("Show all windows"), tr("Show the other windows as well")),
                self.table: (tr("Windows"), tr("A click, or Enter, chooses the best departure of the window")),
            }
        )

    def _lay_out(self) -> None:
        rows = ((tr("&From"), self.first), (tr("T&o"), self.last), (tr("&Every"), self.step))
        self.questions.addLayout(form_of(rows))
        caution = label(tr("A window is a prediction and keeps no reserve: the times to turn back do."))
        column = self.answer_column()
        for widget in (self.headline, self.order, self.table, self.more, self.range, self.notes, caution):
            column.addWidget(widget)

    def days(self) -> tuple[date, date]:
        """The first and the last day to look at."""
        return tuple(date(one.year(), one.month(), one.day()) for one in (self.first.date(), self.last.date()))

    def gather(self) -> Callable[[IsCancelled, Tell], WindowsFound]:
        """The same search as ``tideleg:departurewindows``."""
        session, step_min = self._session, float(self.step.value())
        if not session.routes or session.depart is None:
            raise SwimPlanError(asked=tr("The plan has no route with a name"), remedy=tr("Draw one and name it"))
        first, last = self.days()
        asked = {**session.asked(), "depart": first.isoformat(), "until": last.isoformat()}
        path, copies = session.path, session.layers.copies()

        def work(is_cancelled: IsCancelled, tell: Tell) -> WindowsFound:
            from ..core.solve.windows.find_windows import find_windows
            from ..layers_in.swim_in import SwimAsked, request_from

            tell(tr("Reading the plan…"))
            request = request_from(path, copies, SwimAsked(**asked))
            progress = by_percent(tell, lambda _share: tr("Swimming at every departure"))
            span = (request.clock.start, request.clock.end)
            return find_windows(request, *span, step_min, progress=progress, is_cancelled=is_cancelled)[0]

        return work

    def show_answer(self, answer: WindowsFound) -> None:
        """The windows, and the tide that the route needs."""
        self.found, self._shows_all = answer, False
        self.headline.setText(windows_headline(answer))
        self.range.setText(range_words(answer))
        known = self._session.swim.warnings if self._session.swim is not None else ()
        fresh = [words for words in answer.warnings if words not in known]
        without = days_without_words(answer, MOST_DAYS_TOLD) if answer.windows else ""
        notes = [without, *fresh] if without else fresh
        self.notes.setText("\n".join(notes))
        self.notes.setVisible(bool(notes))
        for widget in (self.order, self.table):
            widget.setVisible(bool(answer.windows))
        self._show_rows()

    def clear_answer(self) -> None:
        """No windows."""
        self.found = None
        self.table.show_rows([])

    def _show_rows(self) -> None:
        rows: list[WindowRow] = window_rows(self.found, by_rank=self.order.currentIndex() == 0) if self.found else []
        shown = rows if self._shows_all else rows[:MOST_ROWS]
        self.table.setCurrentCell(-1, -1)  # the row that was chosen is another one now
        self.table.show_rows(shown)
        self.more.setText(tr("Show All {} Windows").format(len(rows)))
        self.more.setVisible(len(shown) < len(rows))

    def _show_all(self) -> None:
        self._shows_all = True
        self._show_rows()
        self.table.setFocus()

    def _type_days(self) -> None:
        self._is_typed = True
        self.grow_old("")

    def _take_days(self) -> None:
        """Another plan: the days that were typed were for the one before."""
        self._is_typed, self._days_of = False, None
        self._show_days()

    def _tides_changed(self, changed: str) -> None:
        """The plan's rows may reach further now."""
        if not changed:
            self._days_of = None

    def _show_days(self) -> None:
        """The days from the departure's on, as long as nobody typed others and no answer stands below them."""
        session = self._session
        wanted = (session.path, session.depart and session.depart.date())
        stands = self._is_typed or self._work.is_busy or self.found is not None
        if session.depart is None or stands or wanted == self._days_of:
            return
        self._days_of = wanted
        blockers = [QSignalBlocker(editor) for editor in (self.first, self.last)]
        for editor, day in zip((self.first, self.last), default_span(session.depart.date(), self._last_tide())):
            editor.setDate(QDate(day.year, day.month, day.day))
        del blockers

    def _last_tide(self) -> date | None:
        """The day of the plan's last high or low water, None without any."""
        try:
            moments = tide_moments(self._session.layers.copies().get("tides"))
        except SwimPlanError:
            return None  # planning says what is wrong with the layer
        zone = zone_named(self._session.zone_name)
        return max(moments).astimezone(zone).date() if moments else None
