"""Puts Tideleg into QGIS and takes it out again."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QCoreApplication, QUrl
from qgis.PyQt.QtGui import QDesktopServices, QIcon
from qgis.PyQt.QtWidgets import QAction

from .processing.provider import ICON, TidelegProvider

if TYPE_CHECKING:
    from qgis.gui import QgisInterface

MENU = "Tideleg"
HERE = Path(__file__).resolve().parent


def tr(text: str) -> str:
    """Return `text` in the user's language."""
    return QCoreApplication.translate("Tideleg", text)


def guide_url() -> QUrl:
    """Return the user guide that came with the plugin, or the one in the checkout around it."""
    for folder in (HERE / "docs", HERE.parent / "docs"):
        if (folder / "user-guide.md").exists():
            return QUrl.fromLocalFile(str(folder / "user-guide.md"))
    return QUrl()


class TidelegPlugin:
    """The plugin as QGIS sees it. `iface` is None when only Processing runs (qgis_process)."""

    def __init__(self, iface: QgisInterface | None) -> None:
        self.iface = iface
        self.provider: TidelegProvider | None = None
        self.menu_actions: list[QAction] = []
        self.help_action: QAction | None = None

    def initProcessing(self) -> None:
        self.provider = TidelegProvider()
        QgsApplication.processingRegistry().addProvider(self.provider)

    def initGui(self) -> None:
        self.initProcessing()
        icon = QIcon(str(ICON))
        parent = self.iface.mainWindow()
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

    def unload(self) -> None:
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


def open_guide() -> None:
    """Open the user guide in the program that the user's desktop has for it."""
    QDesktopServices.openUrl(guide_url())


def open_algorithm(algorithm_id: str) -> None:
    """Open the Processing dialog of one algorithm."""
    from qgis import processing  # slow to import, so only when asked

    processing.execAlgorithmDialog(algorithm_id)
