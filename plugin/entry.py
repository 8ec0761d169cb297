"""Puts Tideleg into QGIS and takes it out again."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QCoreApplication, Qt, QUrl
from qgis.PyQt.QtGui import QDesktopServices, QIcon
from qgis.PyQt.QtWidgets import QAction

from .processing.provider import ICON, TidelegProvider

if TYPE_CHECKING:
    from qgis.gui import QgisInterface

    from .dock.dock import TidelegDock

MENU = "Tideleg"
HERE = Path(__file__).resolve().parent


def tr(text: str) -> str:
    """Return `text` in the user's language."""
    return QCoreApplication.translate("Tideleg", text)


def page_url(page: str) -> QUrl:
    """Return a page of the documents that came with the plugin, or of those in the checkout around it."""
    for folder in (HERE / "docs", HERE.parent / "docs"):
        if (folder / page).exists():
            return QUrl.fromLocalFile(str(folder / page))
    return QUrl()


def guide_url() -> QUrl:
    """Return the user guide."""
    return page_url("user-guide.md")


class TidelegPlugin:
    """The plugin as QGIS sees it. `iface` is None when only Processing runs (qgis_process)."""

    def __init__(self, iface: QgisInterface | None) -> None:
        self.iface = iface
        self.provider: TidelegProvider | None = None
        self.menu_actions: list[QAction] = []
        self.help_action: QAction | None = None
        self.dock_action: QAction | None = None
        self.dock: TidelegDock | None = None

    def initProcessing(self) -> None:
        self.provider = TidelegProvider()
        QgsApplication.processingRegistry().addProvider(self.provider)

    def initGui(self) -> None:
        self.initProcessing()
        icon = QIcon(str(ICON))
        parent = self.iface.mainWindow()
        self.add_dock_action(QAction(icon, tr("Tideleg dock"), parent))
        for algorithm in self.provider.algorithms():
            self.add_to_menu(QAction(icon, f"{algorithm.displayName()}…", parent), algorithm.id())
        if not guide_url().isEmpty():
            self.help_action = QAction(icon, tr("Tideleg user guide"), parent)
            self.help_action.triggered.connect(open_guide)
            self.iface.addPluginToMenu(MENU, self.help_action)
            self.iface.pluginHelpMenu().addAction(self.help_action)

    def add_to_menu(self, action: QAction, algorithm_id: str) -> None:
        """Put an entry under Plugins > Tideleg that opens the algorithm's dialog."""
        action.triggered.connect(lambda: open_algorithm(algorithm_id))
        self.iface.addPluginToMenu(MENU, action)
        self.menu_actions.append(action)

    def add_dock_action(self, action: QAction) -> None:
        """Put the entry that shows and hides the dock into the menu and the toolbar."""
        action.setCheckable(True)
        action.setToolTip(tr("Plan a swim beside the map"))
        action.triggered.connect(self.show_dock)
        self.iface.addPluginToMenu(MENU, action)
        self.iface.addToolBarIcon(action)
        self.dock_action = action

    def show_dock(self, wanted: bool = True) -> None:
        """Show the dock, made when it is first wanted, or hide it."""
        if self.dock is None and wanted:
            from .dock.dock import TidelegDock  # what it needs is slow to import, so only when asked

            self.dock = TidelegDock(self.iface.mapCanvas(), open_dock_page, self.iface.mainWindow())
            self.iface.addDockWidget(Qt.DockWidgetArea.RightDockWidgetArea, self.dock)
            self.dock.visibilityChanged.connect(self.show_whether_open)
        if wanted:
            self.dock.setUserVisible(True)
        elif self.dock is not None:
            self.dock.close()

    def show_whether_open(self, _visible: bool) -> None:
        """Tick the entry while the dock is open, in front of another one or behind it."""
        self.dock_action.setChecked(not self.dock.isHidden())

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
        self.remove_dock()
        if self.help_action is not None:
            self.iface.pluginHelpMenu().removeAction(self.help_action)
            self.menu_actions.append(self.help_action)
            self.help_action = None
        for action in self.menu_actions:
            self.iface.removePluginMenu(MENU, action)
            action.deleteLater()
        self.menu_actions.clear()
        if self.provider is not None:
            QgsApplication.processingRegistry().removeProvider(self.provider)
            self.provider = None


def open_dock_page() -> None:
    """Open the page on the dock."""
    QDesktopServices.openUrl(page_url("dock.md"))


def open_guide() -> None:
    """Open the user guide in the program that the user's desktop has for it."""
    QDesktopServices.openUrl(guide_url())


def open_algorithm(algorithm_id: str) -> None:
    """Open the Processing dialog of one algorithm."""
    from qgis import processing  # slow to import, so only when asked

    processing.execAlgorithmDialog(algorithm_id)
