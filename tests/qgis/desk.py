"""A desk to work the dock at: QGIS's window with a canvas tied to the project, and the doors of iface it needs.

Everything behind the doors is real; only QGIS's own main window is not there.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import tideleg
from qgis.core import QgsLayerTreeGroup, QgsPrintLayout, QgsProject, QgsVectorLayer
from qgis.gui import QgsLayerTreeMapCanvasBridge, QgsMapCanvas
from qgis.PyQt.QtCore import QCoreApplication, QEvent, QEventLoop, QRect, Qt, QTimer
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QAction, QDockWidget, QMainWindow, QMenu, QToolBar
from tideleg.dock.dock import TidelegDock
from tideleg.dock.row_table import RowTable
from tideleg.dock.session import SETTLED, Session

PATIENCE_MS = 60_000


class Desk:
    """Stands in for iface."""

    def __init__(self) -> None:
        self.window = QMainWindow()
        self.window.resize(1280, 800)
        self.canvas = QgsMapCanvas(self.window)
        self.window.setCentralWidget(self.canvas)
        self.bridge = QgsLayerTreeMapCanvasBridge(QgsProject.instance().layerTreeRoot(), self.canvas, self.canvas)
        self.toolbar = QToolBar("Plugins", self.window)
        self.window.addToolBar(self.toolbar)
        self.menu, self.help_menu = QMenu(self.window), QMenu(self.window)
        self.designed: list[QgsPrintLayout] = []

    def mainWindow(self) -> QMainWindow:
        return self.window

    def mapCanvas(self) -> QgsMapCanvas:
        return self.canvas

    def addToolBarIcon(self, action: QAction) -> None:
        self.toolbar.addAction(action)

    def removeToolBarIcon(self, action: QAction) -> None:
        self.toolbar.removeAction(action)

    def addPluginToMenu(self, _menu: str, action: QAction) -> None:
        self.menu.addAction(action)

    def removePluginMenu(self, _menu: str, action: QAction) -> None:
        self.menu.removeAction(action)

    def pluginHelpMenu(self) -> QMenu:
        return self.help_menu

    def addDockWidget(self, area: Qt.DockWidgetArea, dock: QDockWidget) -> None:
        self.window.addDockWidget(area, dock)

    def removeDockWidget(self, dock: QDockWidget) -> None:
        self.window.removeDockWidget(dock)

    def openLayoutDesigner(self, layout: QgsPrintLayout) -> None:
        self.designed.append(layout)


@contextmanager
def desk_with_dock() -> Iterator[tuple[Desk, TidelegDock]]:
    """The plugin at a desk with its dock open; afterwards the plugin is unloaded and the project empty."""
    QgsProject.instance().clear()
    desk = Desk()
    desk.window.show()
    plugin = tideleg.classFactory(desk)
    plugin.initGui()
    try:
        plugin.dock_action.trigger()
        yield desk, plugin.dock
    finally:
        # As QGIS does before it closes a project: a canvas that still draws would read layers that are going.
        desk.canvas.freeze(True)
        desk.canvas.stopRendering()
        desk.canvas.waitWhileRendering()
        plugin.unload()
        QgsProject.instance().clear()
        desk.window.deleteLater()
        flush_deletions()


def flush_deletions() -> None:
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def wait_for(fact: Callable[[], bool], what: str) -> None:
    """Let events run until something is so; the events themselves wake the loop, a timer only looks again."""
    loop, look, end = QEventLoop(), QTimer(), QTimer()
    look.timeout.connect(lambda: fact() and loop.quit())
    end.setSingleShot(True)
    end.timeout.connect(loop.quit)
    look.start(10)
    end.start(PATIENCE_MS)
    if not fact():
        loop.exec()
    look.stop()
    end.stop()
    assert fact(), f"waited in vain for {what}"


def settle(session: Session) -> None:
    """Let the session plan until nothing is on its way."""
    wait_for(lambda: session.stage == SETTLED, "the swim and its turn back")


def opened(dock: TidelegDock, plan: Path, *, route: str = "", depart: str = "") -> None:
    """Open a plan in the dock, choose, and let it plan."""
    assert dock.session.open_plan(plan), dock.session.plan_problem
    if route:
        dock.session.choose_route(route)
    if depart:
        leave(dock, depart)
    settle(dock.session)


def leave(dock: TidelegDock, text: str) -> None:
    """Type a departure, such as 2027-06-05 10:00, into the dock's editor."""
    editor = dock.swim.depart
    editor.setDateTime(editor.dateTimeFromText(text.replace(" ", "  ")))


def layer_of(dock: TidelegDock, name: str) -> QgsVectorLayer:
    layer = dock.session.layers.layer(name)
    assert layer is not None, f"{name} is not in the project"
    return layer


def cells(table: RowTable) -> list[list[str]]:
    """What a table shows, row by row."""
    return [
        [table.item(row, column).text() for column in range(table.columnCount())] for row in range(table.rowCount())
    ]


def click_cell(table: RowTable, row: int, column: int = 0) -> None:
    """Click a cell as a mouse does."""
    place: QRect = table.visualItemRect(table.item(row, column))
    QTest.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, place.center())


def group_names(group: QgsLayerTreeGroup | None = None) -> list[str]:
    return [one.name() for one in (group or QgsProject.instance().layerTreeRoot()).findGroups(True)]
