"""The dock's section on the water of the day: its picture, what is read on it, and the same in words."""

from __future__ import annotations

from datetime import datetime

from qgis.PyQt.QtCore import QEvent, Qt
from qgis.PyQt.QtWidgets import QGridLayout, QHBoxLayout, QToolButton, QWidget

from ..cards.day_words import clock_text
from ..core.clock import UTC
from ..core.results.day_strip import DayStrip
from ..layers_in.place_in import CHART, MARK, NOWHERE, STATION, WaterPlace
from ..words import tr
from .day_export_menu import DayExportButton
from .day_reading import captions, day_sentences, readings, tips
from .day_strip_view import DayStripView
from .day_work import DayWork
from .departure import days_later
from .section import Section, label
from .session import PLANNING, Session


class DayReadout(QWidget):
    """What is read at one moment, line by line; as high as it ever was at this width, so that nothing jumps."""

    _most = 0

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.when = label(strong=True)
        self.captions, self.values = ([label() for _ in captions()] for _ in range(2))
        rows = QGridLayout(self)
        rows.setContentsMargins(0, 0, 0, 0)
        rows.setColumnStretch(1, 1)
        rows.addWidget(self.when, 0, 0, 1, 2)
        for row, (name, caption, value) in enumerate(zip(captions(), self.captions, self.values), start=1):
            caption.setText(name)
            caption.setWordWrap(False)
            value.setAccessibleName(name)
            for column, words in enumerate((caption, value)):
                words.setAlignment(Qt.AlignmentFlag.AlignTop)  # both alike: a theme may give labels edges of their own
                rows.addWidget(words, row, column)

    def show_words(self, when: str, values: tuple[str, ...] | None) -> None:
        """Show them; () leaves the lines empty, None as they are."""
        self.when.setText(when)
        if values is not None:
            for value, words in zip(self.values, values or ("",) * len(self.values)):
                value.setText(words)
        self._keep_height()

    def show_leaving(self, shown: bool) -> None:
        """Whether what comes of leaving is read: only of a route."""
        self.captions[-1].setVisible(shown)
        self.values[-1].setVisible(shown)

    def show_tips(self, tips: tuple[str, ...]) -> None:
        """What the values are."""
        for caption, value, tip in zip(self.captions, self.values, tips):
            caption.setToolTip(tip)
            value.setToolTip(tip)

    def resizeEvent(self, event: QEvent) -> None:
        """Another width wraps otherwise."""
        super().resizeEvent(event)
        self._most = 0
        self._keep_height()

    def _keep_height(self) -> None:
        """The last value is the one that wraps: why a departure cannot be swum."""
        last = self.values[-1]
        needed = max(last.heightForWidth(last.width()), 2 * self.fontMetrics().lineSpacing())
        self._most = max(self._most, needed)
        last.setMinimumHeight(self._most)


class WaterSection(Section):
    """The picture follows the session's day, its handle the session's departure, and the other way round."""

    page = "dock.md#water-of-the-day"

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__("Water", tr("Water of the Day"), parent)
        self._session = session
        self.work = DayWork(session, self)
        self.view = DayStripView()
        self.readout = DayReadout()
        self.words = label()
        self.where = label()
        self.status, self.busy = label(), label()
        self.before, self.after = QToolButton(), QToolButton()
        self.export = DayExportButton(self.strip, lambda: (session.path, self._named()))
        self._set_up()
        self.view.moved.connect(session.choose_moment)
        self.view.stepped.connect(session.step_departure)
        self.view.day_stepped.connect(self.step_day)
        self.view.read.connect(lambda _moment: self.show_reading())
        self.before.clicked.connect(lambda: self.step_day(-1))
        self.after.clicked.connect(lambda: self.step_day(1))
        self.export.told.connect(self.tell)
        self.work.changed.connect(self.show_day)
        session.choices_changed.connect(self.show_departure)
        session.swim_changed.connect(self.show_departure)
        self.collapsedStateChanged.connect(self.work.rest)
        self.show_day()

    def _set_up(self) -> None:
        for button, words, tip in (
            (self.before, "\N{MINUS SIGN}" + tr("1 day"), tr("Leave at this hour the day before")),
            (self.after, "+" + tr("1 day"), tr("Leave at this hour the day after")),
        ):
            button.setText(words)
            button.setToolTip(tip)
            button.setAccessibleName(tip)
        self.export.setAutoDefault(False)
        buttons = QHBoxLayout()
        buttons.addWidget(self.before)
        buttons.addWidget(self.after)
        buttons.addWidget(self.busy, 1)
        buttons.addWidget(self.export)
        self.inside.addLayout(buttons)
        for widget in (self.where, self.view, self.readout, self.status, self.words):
            self.inside.addWidget(widget)

    def strip(self) -> DayStrip | None:
        """The day as it is drawn; None while there is none that holds."""
        return self.view.strip() if self.view.day is not None and not self.work.is_old else None

    def step_day(self, days: int) -> None:
        """Leave at the same clock time so many days later."""
        if self._session.depart is not None:
            self._session.choose_moment(days_later(self._session.depart, days))

    def show_day(self) -> None:
        """Show the day that there is, pale while it is old, or why there is none."""
        work = self.work
        self.setEnabled(self._session.path is not None)
        self.show_hint(self._missing())
        self.view.show_day(work.day, is_old=work.is_old)
        self.view.setVisible(work.day is not None)
        if work.day is not None:
            self.readout.show_tips(tips(work.day))
            self.readout.show_leaving(not work.day.strip.place)
        self.where.setText(place_words(work.place) if work.place is not None else "")
        self.where.setVisible(work.place is not None)
        self.export.setEnabled(work.day is not None and not work.is_old)
        # Beside the buttons, where it moves nothing: it comes and goes with every change.
        self.busy.setText(tr("Looking…") if work.is_old or work.is_busy else "")
        self.tell(work.problem)
        self.show_departure()

    def tell(self, words: str) -> None:
        """Say why there is no day, or where its picture went."""
        self.status.setText(words)
        self.status.setVisible(bool(words))

    def _missing(self) -> str:
        """What to do where there can be no day."""
        if self._session.path is None:
            return tr("Open a plan first.")
        if self.work.lacks_water:
            return tr(
                "The plan has no tide and no stream yet. Open Tides and Streams under Tables and type, paste or read a "
                "table in: the day is shown at once. Then draw a route under Draw to see when to leave."
            )
        return ""

    def _named(self) -> str:
        """What a picture is of: the route or, without one, the place."""
        return self.work.place.name if self.work.place is not None else self._session.route

    def show_departure(self) -> None:
        """The handle stands at the session's departure, with the home of its swim where that is known."""
        session, day = self._session, self.work.day
        self.view.show_departure(session.depart, self._home())
        holds = self._holds(session.depart)
        if holds or day is None:
            self.words.setText(day_sentences(day, session.depart) if holds else "")
        self.words.setEnabled(holds)
        self.view.setAccessibleDescription(f"{self._departure_words()} {self.words.text() if holds else ''}".strip())
        self.show_reading()

    def _holds(self, moment: datetime | None) -> bool:
        """Whether the day that is shown says something of a moment."""
        return self.work.day is not None and not self.work.is_old and _is_of(self.work.day.strip, moment)

    def _home(self) -> datetime | None:
        """When the planned swim is home, where it is that of the departure."""
        session = self._session
        if session.swim is None or session.depart is None or session.stage == PLANNING:
            return None
        same = session.swim.depart.astimezone(UTC) == session.depart.astimezone(UTC)
        return session.swim.arrive if same else None

    def show_reading(self) -> None:
        """What is read at the cursor; without one at the departure. What is old stays, greyed."""
        day, cursor = self.work.day, self.view.cursor_at
        at_cursor = cursor is not None and not self.view.is_dragging
        moment = cursor if at_cursor else self._session.depart
        holds = self._holds(moment)
        self.readout.setEnabled(holds)
        if not holds:
            self.readout.show_words(self._departure_words(), () if day is None else None)
        elif at_cursor:
            words = tr("At the cursor, {}").format(clock_text(day.strip, moment))
            self.readout.show_words(words, readings(day, moment))
        else:
            self.readout.show_words(self._departure_words(), readings(day, moment))

    def _departure_words(self) -> str:
        depart, day = self._session.depart, self.work.day
        if depart is None:
            return ""
        at = clock_text(day.strip, depart) if day is not None else f"{depart:%H:%M}"
        return tr("Departure {date} {at}").format(date=f"{depart:%Y-%m-%d}", at=at)


def place_words(place: WaterPlace) -> str:
    """Where the stream is that is shown for want of a route, and how to come by one."""
    words = {
        STATION: tr("No route yet: the stream is that at station {name}, the first of the plan."),
        MARK: tr("No route yet: the stream is that at {name}; the plan has no station."),
        CHART: tr("No route, mark or station yet: tide and daylight where the chart is."),
        NOWHERE: tr("Nothing is drawn yet: the tide alone is shown; daylight and stream need a place."),
    }[place.kind]
    if place.near:
        words = tr("No route yet: the stream is that at station {name}, the nearest to {near}.")
    return f"{words.format(name=place.name, near=place.near)} {tr('Draw a route under Draw to see when to leave.')}"


def _is_of(strip: DayStrip, moment: datetime | None) -> bool:
    return moment is not None and strip.start.astimezone(UTC) <= moment.astimezone(UTC) <= strip.end.astimezone(UTC)
