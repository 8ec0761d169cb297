"""The dock's section on drawing: the map tools as buttons, what to do next, a typed position."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from qgis.core import QgsApplication, QgsVectorLayer
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
    QUndoStack,
    QWidget,
)

from ..core.errors import SwimPlanError
from ..core.typed_position import EXAMPLE
from ..map_tools.lost_stops import lost_stops
from ..map_tools.tool_box import ToolBox
from ..words import tr
from .plan_at_hand import PlanAtHand
from .section import Section, label
from .session import Session


def tool_words() -> dict[str, tuple[str, str, str, str]]:
    """Of each tool: its words, its tooltip, its icon of QGIS's, and its keys unless the user chose others."""
    return {
        "place_mark": (
            tr("Place Mark"),
            tr("Place a mark; depth and distance in metres and bearing in degrees show beside the cursor"),
            "mActionCapturePoint",
            "Alt+1",
        ),
        "move_mark": (
            tr("Move Mark"),
            tr("Drag a mark, or type where it goes; routes stay as they are drawn"),
            "mActionMoveFeaturePoint",
            "Alt+2",
        ),
        "draw_route": (
            tr("Draw Route"),
            tr("Click the stops in swimming order; a stop at a mark takes the mark's exact place"),
            "mActionAddPolyline",
            "Alt+3",
        ),
        "edit_route": (
            tr("Edit Route"),
            tr("Move, put in and take out the stops of a route"),
            "mActionVertexTool",
            "Alt+4",
        ),
        "channel_line": (
            tr("Channel Line"),
            tr("Draw a boat channel along its middle; its width in metres is asked for"),
            "mActionCaptureLine",
            "Alt+5",
        ),
        "channel_area": (
            tr("Channel Area"),
            tr("Draw a boat channel by its corners"),
            "mActionCapturePolygon",
            "Alt+6",
        ),
        "closed_area": (
            tr("Closed Area"),
            tr("Draw an area with a rule, such as no entry or no anchoring"),
            "mActionAddPolygon",
            "Alt+7",
        ),
        "measure_leg": (
            tr("Measure Leg"),
            tr("Distance in metres, bearings and heading to hold in degrees, minutes, speed over the ground in m/s"),
            "mActionMeasure",
            "Alt+8",
        ),
    }


class DrawSection(Section):
    """``tools`` does the work on the map; here they are chosen, and what they say stands where it can be read."""

    page = "map-tools.md"

    def __init__(self, session: Session, canvas: QgsMapCanvas, parent: QWidget | None = None) -> None:
        super().__init__("Draw", tr("Draw"), parent)
        self._session = session
        self._path = session.path
        self._last: str = ""  # the layer that was drawn into last, by its id
        self._drawn_into: list[str] = []
        self.plan = PlanAtHand(session, self)
        self.tools = ToolBox(canvas, self.plan, self)
        self.tool_actions: dict[str, QAction] = {}
        self.buttons: dict[str, QToolButton] = {}
        self.next = label()
        self.finish, self.back = QPushButton(), QPushButton()
        self.undo, self.redo = QPushButton(tr("Undo")), QPushButton(tr("Redo"))
        self.save = QPushButton(tr("Save Drawing"))
        self.position, self.there = QLineEdit(), QPushButton()
        self.done, self.lost, self.problem = label(), label(strong=True), label(strong=True)
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
        self.inside.addWidget(self.lost)
        self.inside.addWidget(self.problem)

    def _connect(self) -> None:
        for name, action in self.tool_actions.items():
            action.triggered.connect(partial(self._triggered, name))
        self.finish.clicked.connect(self._finish)
        self.back.clicked.connect(self._take_back)
        self.undo.clicked.connect(lambda: self._step(QUndoStack.undo))
        self.redo.clicked.connect(lambda: self._step(QUndoStack.redo))
        self.save.clicked.connect(self._save)
        self.tools.stepped.connect(lambda again: self._step(QUndoStack.redo if again else QUndoStack.undo))
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
            self._path, self._last, self._drawn_into = self._session.path, "", []
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
        self._last = layer.id() if layer is not None else ""
        self._drawn_into = list(dict.fromkeys([*self._drawn_into, *filter(None, [self._last])]))
        self._refused("")
        words = tr("'{}' is drawn and not saved yet.")
        aside = self.tools.used.aside if self.tools.used is not None else ""
        self._say(f"{words.format(row or tr('(without a name)'))} {aside}".strip())
        if name == "routes" and row in self._session.routes:
            self._session.choose_route(row)
        self._show_steps()

    def _layer(self) -> QgsVectorLayer | None:
        layer = self._session.project.mapLayer(self._last) if self._last else None
        return layer if layer is not None and layer.isEditable() else None

    def _unsaved(self) -> list[QgsVectorLayer]:
        """The layers drawn into whose edits are not saved."""
        layers = map(self._session.project.mapLayer, self._drawn_into)
        return [layer for layer in layers if layer is not None and layer.isModified()]

    def _save(self) -> None:
        """Save the edits of the layers that were drawn into, as QGIS does; one goes on drawing."""
        saved, refused = [], []
        for layer in self._unsaved():
            if layer.commitChanges(False):
                saved.append(layer.name())
            else:
                refused.append(tr("'{}' was not saved: {}").format(layer.name(), " ".join(layer.commitErrors())))
        self._say(tr("Saved: {}.").format(", ".join(saved)) if saved else "")
        self._refused(" ".join(refused))
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
        """What can be undone, redone and saved of what was drawn, and what it took away."""
        self._show_lost()
        unsaved = [layer.name() for layer in self._unsaved()]
        self.save.setVisible(bool(unsaved))
        self.save.setToolTip(tr("Save the edits of: {}").format(", ".join(unsaved)) if unsaved else "")
        layer = self._layer()
        stack = layer.undoStack() if layer is not None else None
        for button, can, words, tip in (
            (self.undo, stack is not None and stack.canUndo(), stack and stack.undoText(), tr("Undo in '{}': {}")),
            (self.redo, stack is not None and stack.canRedo(), stack and stack.redoText(), tr("Redo in '{}': {}")),
        ):
            button.setVisible(stack is not None)
            button.setEnabled(can)
            button.setToolTip(tip.format(layer.name(), words) if can else "")

    def _step(self, step: Callable[[QUndoStack], None]) -> None:
        layer = self._layer()
        if layer is not None:
            step(layer.undoStack())
            layer.triggerRepaint()
            self._say("")
        self._show_steps()

    def _say(self, words: str) -> None:
        self.done.setText(words)
        self.done.setVisible(bool(words))

    def _refused(self, words: str) -> None:
        self.problem.setText(words)
        self.problem.setVisible(bool(words))
