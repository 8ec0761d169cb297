"""What the sections that write files ask the user and his desktop."""

from __future__ import annotations

from pathlib import Path

from qgis.PyQt.QtCore import QUrl
from qgis.PyQt.QtGui import QDesktopServices
from qgis.PyQt.QtWidgets import QMessageBox

from ..words import tr
from .section import Section


def may_replace(section: Section, path: Path) -> bool:
    """Ask whether a file that is there may go."""
    words = tr("{} is there already. Replace it?").format(path)
    return QMessageBox.question(section, section.title(), words) == QMessageBox.StandardButton.Yes


def open_on_desktop(path: Path) -> str:
    """Open a file or folder with the program that the desktop has for it; words where it has none."""
    opened = QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))
    return "" if opened else tr("Your desktop has no program to open {}").format(path)
