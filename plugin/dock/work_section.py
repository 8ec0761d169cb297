"""A section of the dock whose answer takes a while: asked for with a button, computed in the background."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from qgis.PyQt.QtWidgets import QHBoxLayout, QProgressBar, QPushButton, QVBoxLayout, QWidget

from ..core.errors import SwimPlanError
from ..words import tr
from .latest_work import LatestWork
from .progress_words import HowFar
from .section import Section, label
from .session import Session

IsCancelled = Callable[[], bool]
Tell = Callable[[str], None]


class WorkSection(Section):
    """``questions`` holds what may be chosen, ``answer`` what came of it, greyed once the plan has changed.

    ``minds`` are the choices that make an answer old; what is edited in the plan always does. A kind of it says in
    ``gather`` what to compute and in ``show_answer`` what to show; where it ``tells``, what it computes is given a
    second function that shows words on how far it is, and a bar where they say a percent (``HowFar``).
    """

    minds: tuple[str, ...] = ("route", "ticked", "pace_m_s", "depart", "way")
    tells = False

    def __init__(self, name: str, title: str, session: Session, ask: str, parent: QWidget | None = None) -> None:
        super().__init__(name, title, parent)
        self._session = session
        self._work = LatestWork(self)
        self._task = tr("Tideleg: {}").format(title)
        self.questions, self.answer = QVBoxLayout(), QWidget()
        self.ask, self.stop, self.status = QPushButton(ask), QPushButton(tr("Stop")), label()
        for button in (self.ask, self.stop):
            button.setAutoDefault(False)
        buttons = QHBoxLayout()
        buttons.addWidget(self.status, 1)
        buttons.addWidget(self.ask)
        buttons.addWidget(self.stop)
        self.bar = QProgressBar()
        self.bar.setTextVisible(False)  # the words beside the button say it
        self.bar.setFixedHeight(self.fontMetrics().height() // 2)
        self.bar.setAccessibleName(tr("How far: {}").format(title))
        self.inside.addLayout(self.questions)
        self.inside.addLayout(buttons)
        self.inside.addWidget(self.bar)
        self.inside.addWidget(self.answer)
        self.ask.clicked.connect(self.start)
        self.stop.clicked.connect(self.halt)
        session.plan_changed.connect(self.forget)
        session.asked_changed.connect(self.grow_old)
        self.forget()

    def answer_column(self) -> QVBoxLayout:
        """Where the answer's widgets go, from top to bottom."""
        column = QVBoxLayout(self.answer)
        column.setContentsMargins(0, 0, 0, 0)
        return column

    def gather(self) -> Callable[..., Any]:
        """On the main thread: read the widgets and the session, and give what is to be computed in the worker.

        The worker may touch no widget, no project and no layer. SwimPlanError for what cannot be asked.
        """
        raise NotImplementedError

    def show_answer(self, answer: Any) -> None:
        """On the main thread: show it."""
        raise NotImplementedError

    def clear_answer(self) -> None:
        """Show that there is none."""
        raise NotImplementedError

    def start(self) -> None:
        """Compute anew; what is on its way is dropped."""
        self.clear_answer()
        self.answer.hide()
        try:
            work = self.gather()
        except SwimPlanError as error:
            self._refused(str(error))
            return
        self._say(tr("Working…"), busy=True)
        ran = work if self.tells else lambda is_cancelled, _tell: work(is_cancelled)
        self._work.start(self._task, ran, self._told, self._done, self._refused, self.halt)

    def halt(self) -> None:
        """Stop; nothing is shown of it."""
        self._work.cancel()
        self._say(tr("Stopped."))

    def put_away(self) -> None:
        """Out of sight: what nobody waits for is not worked out."""
        if self._work.is_busy:
            self.halt()

    def forget(self) -> None:
        """Another plan, or none."""
        self._work.cancel()
        self.clear_answer()
        self.answer.hide()
        self._say("")
        self.setEnabled(self._session.path is not None)
        self.show_hint("" if self._session.path is not None else tr("Open a plan first."))

    def grow_old(self, changed: str) -> None:
        """A choice of this name, or the plan's rows (no name), changed: an answer is of before, or would be."""
        if changed and changed not in self.minds:
            return
        if self._work.is_busy:
            self._work.cancel()
            self._say(tr("The plan has changed meanwhile: ask again."))
        elif not self.answer.isHidden():
            self.answer.setEnabled(False)
            self._say(tr("The plan has changed since: ask again."))

    def _told(self, words: str) -> None:
        """How far the work is."""
        self.status.setText(words)
        is_counted = isinstance(words, HowFar)
        self.bar.setRange(0, 100 if is_counted else 0)  # nothing to count by: the bar only moves
        self.bar.setValue(words.percent if is_counted else -1)

    def _done(self, answer: Any) -> None:
        self._say("")
        self.answer.setEnabled(True)
        self.show_answer(answer)
        self.answer.show()

    def _refused(self, words: str) -> None:
        self._say(words)

    def _say(self, words: str, *, busy: bool = False) -> None:
        self._told(words)
        self.bar.setVisible(busy)
        self.stop.setVisible(busy)
        self.ask.setVisible(not busy)
