"""Puts Tideleg into QGIS and takes it out again."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from qgis.core import QgsApplication, QgsProject
from qgis.PyQt.QtCore import Qt, QTranslator
from qgis.PyQt.QtGui import QIcon
from qgis.PyQt.QtWidgets import QAction, QMenu

from .dock.help_pages import docs_folder
from .dock.saved_project import SavedProject, remove_results
from .processing.provider import ICON, TidelegProvider
from .translation import install_translator, remove_translator
from .words import tr

if TYPE_CHECKING:
    from qgis.gui import QgisInterface

    from .dock.dock import TidelegDock
    from .dock.help_window import HelpWindow

MENU = "Tideleg"
GUIDE = "user-guide.md"


def submenus() -> list[tuple[str, tuple[str, ...]]]:
    """The sub-menus in the order of the job, each with the algorithms in it by their modules."""
    return [
        (tr("Plan"), ("newplan",)),
        (tr("Read Data"), ("readchart", "readtides", "readstreams", "confidence")),
        (
            tr("Swim"),
            ("planswim", "departurewindows", "turnback", "reach", "fastestpath", "bestorder", "transits", "streamat"),
        ),
        (tr("Take Along"), ("swimcard", "seasoncards", "swimfiles")),
    ]


class TidelegPlugin:
    """The plugin as QGIS sees it. `iface` is None when only Processing runs (qgis_process)."""

    def __init__(self, iface: QgisInterface | None) -> None:
        self.iface = iface
        self.translator: QTranslator | None = None
        self.provider: TidelegProvider | None = None
        self.menu_actions: list[QAction] = []
        self.menus: list[QMenu] = []
        self.help_action: QAction | None = None
        self.dock_action: QAction | None = None
        self.dock: TidelegDock | None = None
        self.help_window: HelpWindow | None = None
        self.saved_project: SavedProject | None = None

    def initProcessing(self) -> None:
        self.translator = install_translator()  # before anything has a name
        self.provider = TidelegProvider()
        QgsApplication.processingRegistry().addProvider(self.provider)

    def initGui(self) -> None:
        self.initProcessing()
        remove_results(QgsProject.instance())  # of a project read before
        self.saved_project = SavedProject(QgsProject.instance())
        icon = QIcon(str(ICON))
        parent = self.iface.mainWindow()
        self.add_dock_action(QAction(icon, tr("Tideleg dock"), parent))
        self.add_walk(QAction(icon, tr("Walk through the sample"), parent))
        self.add_algorithms()
        if docs_folder() is not None:
            self.help_action = QAction(icon, tr("Tideleg user guide"), parent)
            self.help_action.triggered.connect(lambda: self.show_help(GUIDE))
            self.iface.addPluginToMenu(MENU, self.help_action)
            self.iface.pluginHelpMenu().addAction(self.help_action)

    def add_algorithms(self) -> None:
        """Put the algorithms under Plugins > Tideleg, by what they are for; one that no sub-menu names goes last."""
        algorithms = {one.name(): one for one in self.provider.algorithms()}
        listed = submenus()
        others = tuple(sorted(algorithms.keys() - {name for _, names in listed for name in names}))
        for title, names in [*listed, *([(tr("More"), others)] if others else [])]:
            menu = QMenu(title, self.iface.mainWindow())
            for name in names:
                if name in algorithms:  # one that cannot be loaded is missing
                    action = menu.addAction(f"{algorithms[name].displayName()}…")
                    action.triggered.connect(partial(open_algorithm, algorithms[name].id()))
            if not menu.isEmpty():
                self.iface.addPluginToMenu(MENU, menu.menuAction())
            self.menus.append(menu)

    def add_dock_action(self, action: QAction) -> None:
        """Put the entry that shows and hides the dock into the menu and the toolbar."""
        action.setCheckable(True)
        action.setToolTip(tr("Plan a swim beside the map"))
        action.triggered.connect(self.show_dock)
        self.iface.addPluginToMenu(MENU, action)
        self.iface.addToolBarIcon(action)
        self.dock_action = action

    def add_walk(self, action: QAction) -> None:
        """Put the entry that shows the sample step by step into the menu."""
        action.triggered.connect(self.walk)
        self.iface.addPluginToMenu(MENU, action)
        self.menu_actions.append(action)

    def walk(self) -> None:
        """Walk through the sample in the dock, from the first step."""
        self.show_dock()
        self.dock.walk.begin()

    def show_dock(self, wanted: bool = True) -> None:
        """Show the dock, made when it is first wanted, or hide it."""
        if self.dock is None and wanted:
            from .dock.dock import TidelegDock  # what it needs is slow to import, so only when asked

            self.dock = TidelegDock(self.iface.mapCanvas(), self.show_help, self.iface.mainWindow())
            self.dock.take.card.designer_asked.connect(self.iface.openLayoutDesigner)
            self.iface.addDockWidget(Qt.DockWidgetArea.RightDockWidgetArea, self.dock)
            self.dock.visibilityChanged.connect(self.show_whether_open)
        if wanted:
            self.dock.setUserVisible(True)
        elif self.dock is not None:
            self.dock.close()

    def show_whether_open(self, _visible: bool) -> None:
        """Tick the entry while the dock is open, in front of another one or behind it."""
        self.dock_action.setChecked(not self.dock.isHidden())

    def show_help(self, page: str) -> None:
        """Show a page of the documents that came with the plugin, such as dock.md#legs, in a window of its own."""
        if self.help_window is None and docs_folder() is not None:
            from .dock.help_window import HelpWindow

            self.help_window = HelpWindow(docs_folder(), self.iface.mainWindow())
        if self.help_window is not None:
            self.help_window.show_page(page) or self.help_window.show_page(GUIDE)
            self.help_window.show()
            self.help_window.raise_()
            self.help_window.activateWindow()

    def remove_help(self) -> None:
        if self.help_window is not None:
            self.help_window.close()
            self.help_window.deleteLater()
            self.help_window = None

    def remove_dock(self) -> None:
        if self.dock is not None:
            self.dock.visibilityChanged.disconnect(self.show_whether_open)
            self.dock.release()
            self.iface.removeDockWidget(self.dock)
            self.dock.deleteLater()
            self.dock = None
        if self.dock_action is not None:
            self.iface.removeToolBarIcon(self.dock_action)
            self.menu_actions.append(self.dock_action)
            self.dock_action = None

    def unload(self) -> None:
        self.remove_help()
        self.remove_dock()
        if self.saved_project is not None:
            self.saved_project.release()
            self.saved_project = None
        if self.help_action is not None:
            self.iface.pluginHelpMenu().removeAction(self.help_action)
            self.menu_actions.append(self.help_action)
            self.help_action = None
        for action in self.menu_actions:
            self.iface.removePluginMenu(MENU, action)
            action.deleteLater()
        self.menu_actions.clear()
        for menu in self.menus:
            self.iface.removePluginMenu(MENU, menu.menuAction())
            menu.deleteLater()
        self.menus.clear()
        if self.provider is not None:
            QgsApplication.processingRegistry().removeProvider(self.provider)
            self.provider = None
        remove_translator(self.translator)
        self.translator = None


def open_algorithm(algorithm_id: str, _checked: bool = False) -> None:
    """Open the Processing dialog of one algorithm."""
    from qgis import processing  # slow to import, so only when asked

    processing.execAlgorithmDialog(algorithm_id)
