"""The table of transits: rows to click, and to tick for the card."""

from __future__ import annotations

from collections.abc import Sequence

from qgis.PyQt.QtCore import QEvent, Qt, pyqtSignal
from qgis.PyQt.QtWidgets import QTableWidgetItem, QWidget

from .row_table import RowTable
from .rows import Row
from .transit_rows import TransitRow, transit_headers


class TransitTable(RowTable):
    """``ticked``: the row, and whether it is ticked now. A click on the box only ticks; the space bar does as well."""

    ticked = pyqtSignal(object, bool)

    def __init__(self, parent: QWidget | None = None) -> None:
        self._is_filling = self._is_ticking = False
        super().__init__(transit_headers(), parent)
        self.itemChanged.connect(self._changed)

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show these in place of what is shown, the boxes as the rows have them and not as they were clicked."""
        self._show_anew(rows)

    def _show_anew(self, rows: Sequence[Row]) -> None:
        """Filling in ticks nothing, also where another theme has the rows filled in again."""
        self._is_filling = True
        super()._show_anew(rows)
        self._is_filling = False

    def box(self, number: int) -> QTableWidgetItem | None:
        """What is ticked in a row; None for the head of a pair."""
        row = self.rows[number] if 0 <= number < len(self.rows) else None
        return self.item(number, 0) if isinstance(row, TransitRow) and row.transit is not None else None

    def _fill(self, number: int, row: TransitRow) -> None:
        super()._fill(number, row)
        box = self.box(number)
        if box is not None:
            box.setFlags(box.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            box.setCheckState(Qt.CheckState.Checked if row.is_picked else Qt.CheckState.Unchecked)
        for column in range(len(row.cells)) if row.about else ():
            self.item(number, column).setToolTip(row.about)

    def _changed(self, item: QTableWidgetItem) -> None:
        if not self._is_filling and item is self.box(item.row()):
            self._is_ticking = True
            self.ticked.emit(self.rows[item.row()], item.checkState() == Qt.CheckState.Checked)

    def click_row(self, number: int) -> None:
        """A click that ticked does not move the map as well."""
        if not self._is_ticking:
            super().click_row(number)

    def mousePressEvent(self, event: QEvent) -> None:
        """Another click."""
        self._is_ticking = False
        super().mousePressEvent(event)

    def keyPressEvent(self, event: QEvent) -> None:
        """The space bar ticks, Enter shows the row on the map."""
        box = self.box(self.currentRow())
        if event.key() == Qt.Key.Key_Space and box is not None:
            is_on = box.checkState() == Qt.CheckState.Checked
            box.setCheckState(Qt.CheckState.Unchecked if is_on else Qt.CheckState.Checked)
            return
        super().keyPressEvent(event)
