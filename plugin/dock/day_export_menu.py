"""Saves the picture of a day: a button with a kind of file each."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from qgis.PyQt.QtCore import pyqtSignal
from qgis.PyQt.QtWidgets import QFileDialog, QMenu, QPushButton, QWidget

from ..cards.day_export import write_day_pictures
from ..core.errors import SwimPlanError
from ..core.results.day_strip import DayStrip
from ..words import tr
from .file_names import plain_name

KINDS = ("pdf", "png", "svg")


class DayExportButton(QPushButton):
    """``strip`` gives the day to save, None while there is none, ``beside`` the plan's file and the route, which name
    the file; ``told`` says where it went, or why it did not."""

    told = pyqtSignal(str)

    def __init__(
        self,
        strip: Callable[[], DayStrip | None],
        beside: Callable[[], tuple[Path | None, str]],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._strip, self._beside = strip, beside
        self.setText(tr("Save Picture"))
        self.setToolTip(tr("Save the picture of this day as a PDF, PNG or SVG file"))
        self.setAccessibleName(tr("Save the picture of this day"))
        menu = QMenu(self)
        for kind in KINDS:
            menu.addAction(f"{kind.upper()}…", lambda kind=kind: self._ask(kind))
        self.setMenu(menu)

    def save(self, path: str | Path) -> bool:
        """Write the picture, black on white as for paper; False where it is refused."""
        strip = self._strip()
        try:
            if strip is None:
                raise SwimPlanError(
                    asked=tr("There is no picture of this day yet"), remedy=tr("Wait until it is there")
                )
            write_day_pictures((strip,), path)
        except SwimPlanError as error:
            self.told.emit(str(error))
            return False
        self.told.emit(tr("Saved to {}").format(path))
        return True

    def proposed_name(self) -> str:
        """The file without its ending: route and date, beside the plan."""
        strip, (plan, route) = self._strip(), self._beside()
        day = f"{strip.start:%Y-%m-%d}" if strip is not None else tr("day")
        name = f"{plain_name(route) or tr('route')} {day}"
        return str(plan.parent / name) if plan is not None else name

    def _ask(self, kind: str) -> None:
        name = f"{self.proposed_name()}.{kind}"
        kinds = {"pdf": tr("PDF (*.pdf)"), "png": tr("PNG (*.png)"), "svg": tr("SVG (*.svg)")}
        path, _ = QFileDialog.getSaveFileName(self, tr("Save Picture of the Day"), name, kinds[kind])
        if path:
            self.save(path if path.lower().endswith(f".{kind}") else f"{path}.{kind}")
