"""The dock's section on drawing: the map tools as buttons, what to do next, a typed position."""

from __future__ import annotations

from functools import partial

from qgis.core import QgsApplication
from qgis.gui import QgsGui, QgsMapCanvas
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtGui import QKeyEvent
from qgis.PyQt.QtWidgets import (
    QAction,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSizePolicy,
    QToolButton,
    QWidget,
)

from ..core.errors import SwimPlanError
from ..core.typed_position import EXAMPLE
from ..map_tools.lost_stops import lost_stops
from ..map_tools.tool_box import ToolBox
from ..words import tr
from .edit_steps import EditSteps
from .plan_at_hand import PlanAtHand
from .rates_hint import RatesHint
from .section import Section, label
from .session import Session
from .tool_words import tool_words


class DrawSection(Section):
    """``tools`` does the work on the map; here they are chosen, and what they say stands where it can be read."""

    page = "map-tools.md"

    def __init__(self, session: Session, canvas: QgsMapCanvas, parent: QWidget | None = None) -> None:
        super().__init__("Draw", tr("Draw"), parent)
        self._session = session
        self._path = session.path
        self.plan = PlanAtHand(session, self)
        self.tools = ToolBox(canvas, self.plan, self)
        self.tool_actions: dict[str, QAction] = {}
        self.buttons: dict[str, QToolButton] = {}
        self.next = label()
        self.finish, self.back = QPushButton(), QPushButton()
        self.steps = EditSteps(session.project, tr("Save Drawing"), self)
        self.undo, self.redo, self.save = self.steps.undo, self.steps.redo, self.steps.save
        self.position, self.there = QLineEdit(), QPushButton()
        self.done, self.lost, self.problem = label(), label(strong=True), label(strong=True)
        self.rates = RatesHint(session)
        self._make_actions()
        self._lay_out()
        self._connect()
        self.refresh()
        self._plan_changed()

    def _make_actions(self) -> None:
        for name, (words, tip, icon, keys) in tool_words().items():
            action = QAction(QgsApplication.getThemeIcon(f"/{icon}.svg"), words, self)
            action.setObjectName(f"mActionTideleg_{name}")
            action.setCheckable(True)
            action.setToolTip(tip)  # QGIS adds the keys, and would take anything else in brackets out
            QgsGui.shortcutsManager().registerAction(action, keys)
            self.addAction(action)
            self.tool_actions[name] = action
            button = self.buttons[name] = QToolButton()
            button.setDefaultAction(action)
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
            button.setAccessibleName(words)
            button.setAccessibleDescription(tip)

    def _lay_out(self) -> None:
        grid = QGridLayout()
        for number, button in enumerate(self.buttons.values()):
            grid.addWidget(button, *divmod(number, 2))
        steps = QGridLayout()
        for number, button in enumerate((self.finish, self.back, self.undo, self.redo, self.save)):
            button.setAutoDefault(False)
            steps.addWidget(button, *divmod(number, 2))
        typed = QHBoxLayout()
        name = QLabel(tr("P&osition"))
        name.setBuddy(self.position)
        for one in (name, self.position, self.there):
            typed.addWidget(one)
        self.position.setPlaceholderText(EXAMPLE)
        self.position.setAccessibleName(tr("Position"))
        self.position.setToolTip(
            tr("Degrees and decimal minutes with N or S, E or W; or with signs, latitude first. Enter takes it.")
        )
        self.there.setAutoDefault(False)
        self.finish.setText(tr("Finish Drawing"))
        self.finish.setToolTip(tr("Finish what is being drawn, as Enter and a right click on the map do"))
        self.back.setToolTip(tr("As Backspace on the map does"))
        self.inside.addLayout(grid)
        self.inside.addWidget(self.next)
        self.inside.addLayout(typed)
        self.inside.addLayout(steps)
        self.inside.addWidget(self.done)
        self.inside.addWidget(self.rates)
        self.inside.addWidget(self.lost)
        self.inside.addWidget(self.problem)

    def _connect(self) -> None:
        for name, action in self.tool_actions.items():
            action.triggered.connect(partial(self._triggered, name))
        self.finish.clicked.connect(self._finish)
        self.back.clicked.connect(self._take_back)
        self.steps.said.connect(self._say)
        self.steps.refused.connect(self._refused)
        self.steps.stepped.connect(self._show_steps)
        self.tools.stepped.connect(self.steps.step)
        self.position.returnPressed.connect(self.take_position)
        self.there.clicked.connect(self.take_position)
        self.tools.changed.connect(self.refresh)
        self.tools.refused.connect(self._refused)
        self.tools.drawn.connect(self._drawn)
        self._session.plan_changed.connect(self._plan_changed)
        self._session.asked_changed.connect(self._show_steps)
        self._session.swim_changed.connect(self._look_again)
        self.plan.read.connect(self._look_again)
        self._session.project.layersRemoved.connect(self._layers_removed)

    def refresh(self) -> None:
        """Show which tool is used, what it waits for and what can be done with it."""
        used = self.tools.used
        for name, action in self.tool_actions.items():
            action.setChecked(used is not None and self.tools.tools[name] is used)
        self.next.setText(used.hint if used is not None else tr("Choose what to draw, or type where a mark goes."))
        words = used.position_words if used is not None else self.tools.tools["place_mark"].position_words
        self.there.setText(words or tr("Take Position"))
        self.there.setEnabled(bool(words))
        self.finish.setVisible(used is not None and used.can_finish)
        self.back.setVisible(used is not None and used.can_take_back)
        if used is not None:
            self.back.setText(used.back_words)
        if used is not None and used.report:
            self._say("\n".join(used.report))
        self._show_steps()

    def take_position(self) -> None:
        """The position that was typed goes to the tool in use."""
        self._refused("")
        try:
            self.tools.type_position(self.position.text())
        except SwimPlanError as error:
            self._refused(str(error))

    def take(self, name: str) -> None:
        """Use a tool, as its button does."""
        self._triggered(name, True)

    def put_away(self) -> None:
        """Use no tool of ours."""
        self.tools.leave()

    def release(self) -> None:
        """Before the dock goes: nothing of the tools stays in QGIS."""
        self._session.project.layersRemoved.disconnect(self._layers_removed)
        self.tools.changed.disconnect(self.refresh)
        self.tools.release()
        for action in self.tool_actions.values():
            QgsGui.shortcutsManager().unregisterAction(action)

    def _triggered(self, name: str, checked: bool) -> None:
        self._refused("")
        self._say("")
        if checked:
            self.tools.use(name)
        else:
            self.tools.leave()

    def _finish(self) -> None:
        if self.tools.used is not None:
            self.tools.used.finish_now()

    def _take_back(self) -> None:
        if self.tools.used is not None:
            self.tools.used.take_back_now()

    def _look_again(self) -> None:
        """What stands beside the cursor follows the swim."""
        if self.tools.used is not None:
            self.tools.used.look_again()

    def _plan_changed(self) -> None:
        """Another plan, or none: what was being drawn belongs to the one before it."""
        if self._session.path != self._path:
            self._path = self._session.path
            self.steps.forget()
            self.tools.leave()
            self._refused("")
            self._say("")
        self.setEnabled(self._path is not None)
        self.show_hint("" if self._path is not None else tr("Open a plan first."))
        self._show_steps()

    def _layers_removed(self, _ids: list[str]) -> None:
        """A tool whose layer was taken out of the project has nothing to draw into."""
        used = self.tools.used
        if used is None or used.needs is None or self._session.path is None:
            return
        try:
            self.plan.layer(*used.needs)
        except SwimPlanError as error:
            self.tools.leave()
            self._refused(str(error))

    def _drawn(self, name: str, row: str) -> None:
        """Something was drawn: it stands in the layer's edits. A route that was drawn is the one to plan."""
        layer = self.plan.layer(*self.tools.used.needs) if self.tools.used is not None else None
        self.steps.drawn(layer)
        self._refused("")
        words = tr("'{}' is drawn and not saved yet.")
        aside = self.tools.used.aside if self.tools.used is not None else ""
        self._say(f"{words.format(row or tr('(without a name)'))} {aside}".strip())
        if name == "routes" and row in self._session.routes:
            self._session.choose_route(row)
        self._show_steps()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc in this section puts the tool away, as it does over the map."""
        if event.key() == Qt.Key.Key_Escape and self.tools.used is not None:
            self.tools.leave()
            return
        super().keyPressEvent(event)

    def _show_lost(self) -> None:
        """Stops that edits took off their mark, as long as those are not saved."""
        layers = self._session.layers
        lost = lost_stops(layers.layer("routes"), layers.layer("marks")) if layers is not None else []
        self.lost.setText("\n".join(lost))
        self.lost.setVisible(bool(lost))

    def _show_steps(self, *_: object) -> None:
        """What can be undone, redone and saved of what was drawn, what it took away and what it lacks yet."""
        self._show_lost()
        self.rates.refresh()
        self.steps.show()

    def _say(self, words: str) -> None:
        self.done.setText(words)
        self.done.setVisible(bool(words))

    def _refused(self, words: str) -> None:
        self.problem.setText(words)
        self.problem.setVisible(bool(words))
