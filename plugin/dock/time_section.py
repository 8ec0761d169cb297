"""The dock's section that plays the planned swim: swimmer, stream and tide on the map at the time of a slider."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable
from datetime import datetime, timedelta
from functools import partial

from qgis.gui import QgsMapCanvas
from qgis.PyQt.QtCore import QSignalBlocker, Qt, QTimer, pyqtSignal
from qgis.PyQt.QtWidgets import QHBoxLayout, QPushButton, QSlider, QWidget

from ..core.clock import later
from ..core.results.swim_in_time import SwimInTime
from ..core.results.swim_plan import SwimPlan
from ..words import tr
from .latest_work import LatestWork
from .section import Section, label
from .session import PLANNING, Session
from .time_on_canvas import TimeOnCanvas
from .time_words import time_headline, time_lines

TICK_MS = 150  # a minute of the swim each time, when the map has been drawn
CALM_MS = 250  # while a vertex is dragged swims follow each other quickly: only the one that stays is looked at
PAGE_MIN = 10
MINUTE = timedelta(minutes=1)


class TimeSection(Section):
    """``looked_at`` comes with the swim in time as soon as it has been worked out, and with None when it goes.

    Moving the slider computes nothing: the rows of all minutes are there and QGIS picks those of the time shown.
    """

    page = "dock.md#play-the-swim"
    looked_at = pyqtSignal(object)

    def __init__(self, session: Session, canvas: QgsMapCanvas, parent: QWidget | None = None) -> None:
        super().__init__("Time", tr("Play the Swim"), parent)
        self._session = session
        self.canvas_time = TimeOnCanvas(canvas, self)
        self._work = LatestWork(self)
        self._asked: SwimPlan | None = None
        self._is_in_time = False
        self.swim: SwimInTime | None = None
        self._calm = QTimer(self)
        self._calm.setSingleShot(True)
        self._calm.setInterval(CALM_MS)
        self._tick = QTimer(self)
        self._tick.setInterval(TICK_MS)
        self.play, self.whole = QPushButton(), QPushButton(tr("All Times"))
        self.slider = QSlider(Qt.Orientation.Horizontal)
        self.clock, self.lines = label(strong=True), label()
        self._set_up()
        self._calm.timeout.connect(self._look)
        self._tick.timeout.connect(self._go_on)
        self.play.clicked.connect(self._play_or_pause)
        self.whole.clicked.connect(self.show_all_times)
        self.slider.valueChanged.connect(self._slid)
        self.canvas_time.moved.connect(self._follow)
        session.swim_changed.connect(self.refresh)
        session.plan_changed.connect(self.refresh)
        self.refresh()

    def _set_up(self) -> None:
        self.slider.setPageStep(PAGE_MIN)
        self.slider.setTickInterval(60)
        self.slider.setTickPosition(QSlider.TickPosition.TicksBelow)
        about = {
            self.slider: (tr("Minute of the swim"), tr("Minutes after leaving; arrow keys go on by one, Page by ten")),
            self.play: (tr("Play or pause"), tr("Play the swim on the map: swimmer, stream and tide move together")),
            self.whole: (tr("All times"), tr("Show the whole swim again and leave the map's time as it was")),
        }
        for widget, (name, tip) in about.items():
            widget.setAccessibleName(name)
            widget.setToolTip(tip)
        for button in (self.play, self.whole):
            button.setAutoDefault(False)
        words = max((tr("Play"), tr("Pause")), key=self.fontMetrics().horizontalAdvance)
        self.play.setText(words)
        self.play.setMinimumWidth(self.play.sizeHint().width())  # it keeps its width when its word changes
        controls = QHBoxLayout()
        controls.addWidget(self.play)
        controls.addWidget(self.slider, 1)
        controls.addWidget(self.whole)
        self.inside.addLayout(controls)
        self.inside.addWidget(self.clock)
        self.inside.addWidget(self.lines)

    @property
    def is_playing(self) -> bool:
        """Whether the swim goes on by itself."""
        return self._tick.isActive()

    def refresh(self) -> None:
        """Look at the session's swim, if it is another one, as soon as it stays."""
        session = self._session
        self.setEnabled(session.path is not None)
        self.body.setEnabled(session.stage != PLANNING)
        if session.stage == PLANNING and session.swim is not None:
            self._halt()
        elif session.swim is None or session.request is None:
            self._halt()
            words = tr("Open a plan first.") if session.path is None else tr("There is no planned swim yet.")
            self._show(None, words)
        elif self._asked is None or session.swim.legs is not self._asked.legs:
            self._asked = session.swim
            self._calm.start()

    def _halt(self) -> None:
        """What is on its way is of a swim that goes."""
        if self._calm.isActive() or self._work.is_busy:
            self._asked = None
        self._calm.stop()
        self._work.cancel()

    def _look(self) -> None:
        request, swim = self._session.request, self._asked

        def work(is_cancelled: Callable[[], bool], _tell: object) -> SwimInTime:
            from ..core.solve.swim_in_time import swim_in_time

            return swim_in_time(request, swim, is_cancelled=is_cancelled)

        stopped = partial(self._show, None, tr("Stopped."))
        self._work.start(tr("Tideleg: the swim in time"), work, bool, self._show, partial(self._show, None), stopped)

    def _show(self, swim: SwimInTime | None, words: str = "") -> None:
        """Another swim, or words on why there is none; a time that the map shows stays, where it lies in the swim."""
        at = self.swim.minutes[self.slider.value()].moment if self._is_in_time else None
        self.swim = swim
        self.looked_at.emit(swim)
        self.show_hint(words)
        if swim is not None:
            last = len(swim.minutes) - 1
            with QSignalBlocker(self.slider):
                self.slider.setRange(0, last)
                self.slider.setValue(0 if at is None else self._number_at(at))
            self.play.setEnabled(last > 0)
            self.slider.setEnabled(last > 0)
        if swim is None or at is None:
            self.show_all_times()
        else:
            self._slid(self.slider.value())

    def _number_at(self, moment: datetime) -> int:
        """The minute that a moment lies in, the first or the last where it lies outside."""
        moments = [minute.moment.timestamp() for minute in self.swim.minutes]
        return max(0, bisect_right(moments, moment.timestamp()) - 1)

    def _is_within(self, moment: datetime) -> bool:
        """Whether the swim is under way then."""
        minutes = self.swim.minutes
        return minutes[0].moment.timestamp() <= moment.timestamp() < minutes[-1].end.timestamp()

    def _slid(self, number: int) -> None:
        """Show this minute here and on the map."""
        minute = self.swim.minutes[number]
        self.canvas_time.show(minute.moment, later(minute.moment, MINUTE))
        self._say(number)

    def _say(self, number: int) -> None:
        minute = self.swim.minutes[number]
        self._is_in_time = True
        self.whole.setEnabled(True)
        self.clock.setText(time_headline(self.swim, minute))
        self.lines.setText("\n".join(time_lines(self.swim, minute)))

    def show_all_times(self) -> None:
        """The map shows what it showed before, without a time where it had none."""
        self._pause()
        self._is_in_time = False
        self.canvas_time.put_back()
        self.whole.setEnabled(False)
        self.clock.setText(tr("The map shows all times"))
        self.lines.setText(tr("Move the slider, or play, to see swimmer, stream and tide at a time."))

    def _follow(self, moment: datetime | None) -> None:
        """QGIS's temporal controller moved the map's time: go along where it lies in the swim."""
        self._pause()
        minutes = self.swim.minutes if self.swim is not None else ()
        if moment is None or not minutes or not self._is_within(moment):
            self.show_all_times()
            return
        with QSignalBlocker(self.slider):
            self.slider.setValue(self._number_at(moment))
        self._say(self.slider.value())

    def _play_or_pause(self) -> None:
        if self.is_playing:
            self._pause()
            return
        at_end = self.slider.value() == self.slider.maximum()
        with QSignalBlocker(self.slider):
            self.slider.setValue(0 if at_end else self.slider.value())
        self._slid(self.slider.value())
        self._tick.start()
        self.play.setText(tr("Pause"))

    def _pause(self) -> None:
        self._tick.stop()
        self.play.setText(tr("Play"))

    def _go_on(self) -> None:
        """The next minute, when the map has drawn the one before."""
        if self.canvas_time.is_drawing:
            return
        if self.slider.value() >= self.slider.maximum():
            self._pause()
            return
        self.slider.setValue(self.slider.value() + 1)

    def rest(self) -> None:
        """Nobody looks: nothing plays, and the map's time is as it was."""
        self._halt()
        self._asked = None
        self._show(None, tr("There is no planned swim yet."))

    def release(self) -> None:
        """Before the dock goes: let go of the canvas."""
        self.rest()
        self.canvas_time.release()
