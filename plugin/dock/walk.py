"""The walk through the sample: a bar above the sections that says what to do next, and when it is done."""

from __future__ import annotations

from collections.abc import Iterable

from qgis.core import QgsSettings
from qgis.gui import QgsScrollArea
from qgis.PyQt.QtCore import Qt, pyqtSignal
from qgis.PyQt.QtGui import QKeySequence
from qgis.PyQt.QtWidgets import QApplication, QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from ..words import tr
from .outline import Outline
from .sample_plan import has_sample, is_sample
from .section import SectionFrame, label
from .session import Session
from .walk_steps import WalkStep, walk_steps

try:  # Qt 6
    from qgis.PyQt.QtGui import QShortcut
except ImportError:
    from qgis.PyQt.QtWidgets import QShortcut

KEY = "tideleg/walk_offered"
RETURN = (Qt.Key.Key_Return, Qt.Key.Key_Enter)


class Walk(QFrame):
    """Hidden, offering itself once where no plan is open, or at one of its steps. Nothing of the dock is blocked.

    A step stays until Next is pressed: what it asks for may be done before its words have been read. Once it is done
    a sign says so, and Return goes on, from the bar and from the section that the step points at.

    ``whole_asked``: the map is to show the whole swim.
    """

    whole_asked = pyqtSignal()

    def __init__(
        self, session: Session, frames: Iterable[SectionFrame], area: QgsScrollArea, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setObjectName("TidelegWalk")
        self.setAccessibleName(tr("Walk through the sample"))
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self._session = session
        self._frames = {frame.section.objectName().removeprefix("Tideleg"): frame for frame in frames}
        self._area = area
        self._outline: Outline | None = None
        self._awaited = None
        self._did: set[int] = set()  # numbers of the steps whose asking is done
        self._keys: list[QShortcut] = []
        self.steps: list[WalkStep] = []
        self.number = -1  # of the step, from 0; -1 while it is not walked
        self.heading, self.words, self.sign = label(strong=True), label(), label()
        self.start, self.no = QPushButton(tr("Start")), QPushButton(tr("No, Thanks"))
        self.back, self.next, self.end = QPushButton(tr("Back")), QPushButton(tr("Next")), QPushButton(tr("Close"))
        self._lay_out()
        self.start.clicked.connect(self.begin)
        self.no.clicked.connect(self.finish)
        self.end.clicked.connect(self.finish)
        self.back.clicked.connect(lambda: self.go_to(self.number - 1))
        self.next.clicked.connect(self.go_on)
        session.plan_changed.connect(self.offer)
        # What stands above it comes and grows while a swim is planned.
        area.verticalScrollBar().rangeChanged.connect(self.show_place)
        self.offer()

    def _lay_out(self) -> None:
        self.start.setToolTip(tr("Less than two minutes; it can be closed at any step"))
        self.no.setToolTip(tr("Not asked again; the menu Plugins > Tideleg has the walk too"))
        buttons = QHBoxLayout()
        buttons.addWidget(self.sign, 1)
        for button in (self.start, self.no, self.back, self.next, self.end):
            button.setAutoDefault(True)  # Return presses the one that has the focus
            buttons.addWidget(button)
        whole = QVBoxLayout(self)
        whole.addWidget(self.heading)
        whole.addWidget(self.words)
        whole.addLayout(buttons)

    def offer(self) -> None:
        """Ask whether to walk, until that is answered once, while no plan is open."""
        if self.number >= 0:
            return
        asks = has_sample() and self._session.path is None and not QgsSettings().value(KEY, False, type=bool)
        self.heading.setText(tr("New here?"))
        self.words.setText(tr("A walk through an invented bay shows in two minutes how a swim is planned."))
        self.sign.setText("")
        self._show_buttons(self.start, self.no)
        self.setVisible(asks)

    def begin(self) -> None:
        """Walk from the first step."""
        QgsSettings().setValue(KEY, True)
        self._did.clear()
        self.steps = [step for step in walk_steps() if step.section in self._frames]
        self.show()
        self.go_to(0)
        self.next.setFocus()

    def finish(self) -> None:
        """Walk no more, and do not offer it again."""
        QgsSettings().setValue(KEY, True)
        self._leave_step()
        self.number = -1
        self.hide()

    def go_on(self) -> None:
        """The next step; from the first, the walk opens the sample where it is not open yet, as the rest needs it."""
        if self.number == 0 and not is_sample(self._session.path):
            self._frames["Plan"].section.open_sample()
            if not is_sample(self._session.path):
                return  # the section says why
        if self.number + 1 < len(self.steps):
            self.go_to(self.number + 1)
        else:
            self.finish()

    def go_to(self, number: int) -> None:
        """Point at the section of a step, say what to do there, and wait for it."""
        self._leave_step()
        self.number = number
        step, frame = self.steps[number], self._frames[self.steps[number].section]
        self.heading.setText(tr("Step {} of {}: {}").format(number + 1, len(self.steps), frame.section.title()))
        self.words.setText(step.words)
        self.back.setEnabled(number > 0)
        self.next.setText(tr("Next") if number + 1 < len(self.steps) else tr("Done"))
        self._show_buttons(self.back, self.next, *([self.end] if number + 1 < len(self.steps) else []))
        frame.section.setCollapsed(False)
        if step.whole:
            self.whole_asked.emit()
        self._outline = Outline()
        frame.place.addWidget(self._outline, 0, 0)
        self._outline.show()
        self.show_place()
        self._show_done(number in self._did or step.holds(self._session))
        if step.done is not None:
            self._awaited = step.done(frame.section, self._session)
            self._awaited.connect(self._look)
        self._keys = [self._return_key(key, on) for on in (self, frame) for key in RETURN]
        self._let_return(step.done is None or number in self._did)

    def show_place(self, *_: int) -> None:
        """Scroll as little as shows the section pointed at, from its top where it is longer than the window."""
        if self._outline is None:
            return
        frame, bar, room = self._outline.parentWidget(), self._area.verticalScrollBar(), self._area.viewport().height()
        top = frame.y()
        bottom = top + min(frame.height(), room)
        bar.setValue(max(min(bar.value(), top), bottom - room))

    def _look(self, *what: object) -> None:
        """Something was done: say so where it is what the step asks for."""
        if self.number in self._did or not self.steps[self.number].counts(self._session, *what):
            return
        self._show_done(True)
        self._let_return(True)
        # A hand on the keys of the section stays there: Return goes on from there as well.
        focus = QApplication.focusWidget()
        if focus is None or not self._outline.parentWidget().isAncestorOf(focus):
            self.next.setFocus()

    def _show_done(self, is_done: bool) -> None:
        if is_done:
            self._did.add(self.number)
        self.sign.setText(f"\N{HEAVY CHECK MARK} {tr('Done: Return goes on')}" if is_done else "")

    def _return_key(self, key: Qt.Key, on: QWidget) -> QShortcut:
        made = QShortcut(QKeySequence(key), on)
        made.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        made.activated.connect(self.go_on)
        return made

    def _let_return(self, goes_on: bool) -> None:
        """Before a step is done the key belongs to the section: there it chooses a row or ends what is typed."""
        for key in self._keys:
            key.setEnabled(goes_on)

    def _leave_step(self) -> None:
        if self._awaited is not None:
            self._awaited.disconnect(self._look)
            self._awaited = None
        for key in self._keys:
            key.setEnabled(False)
            key.deleteLater()
        self._keys.clear()
        if self._outline is not None:
            self._outline.hide()
            self._outline.deleteLater()
            self._outline = None

    def _show_buttons(self, *shown: QPushButton) -> None:
        for button in (self.start, self.no, self.back, self.next, self.end):
            button.setVisible(button in shown)
