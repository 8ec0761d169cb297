"""A table of long texts, each folded to one line; the chosen one is open and shows the whole of it."""

from __future__ import annotations

from collections.abc import Sequence

from qgis.PyQt.QtCore import QEvent, QModelIndex, Qt
from qgis.PyQt.QtWidgets import QStyleOptionViewItem, QWidget

from .row_table import IconOnTop, RowTable
from .rows import Row

FOLDED, OPEN = "\N{BLACK RIGHT-POINTING SMALL TRIANGLE}", "\N{BLACK DOWN-POINTING SMALL TRIANGLE}"
EDGES_PX = 12  # what a style may leave free beside a cell's words


class _OneLine(IconOnTop):
    """Of a folded row the first line is drawn, shortened where it is too long; a sign says that there is more.

    The cell itself keeps all of its words, for its tip and for those who have them read.
    """

    def initStyleOption(self, option: QStyleOptionViewItem, index: QModelIndex) -> None:
        """The words to draw: all of them, or the first line."""
        super().initStyleOption(option, index)
        if index.row() == self.parent().open_row:
            option.text = f"{OPEN} {option.text}"
            return
        # QStyledItemDelegate has put line separators in the place of line breaks.
        line = index.data().split("\n")[0]
        icon = option.decorationSize.width()
        too_long = option.fontMetrics.horizontalAdvance(line) > option.rect.width() - icon - EDGES_PX
        has_more = line != index.data() or too_long
        option.text = f"{FOLDED} {line}" if has_more else line
        option.features = option.features & ~QStyleOptionViewItem.ViewItemFeature.WrapText


class FoldingTable(RowTable):
    """One column; the words of a row after its first line are seen only while it is open.

    A click opens a row and chooses it. The arrow keys open one after the other; Left folds, Right opens again.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        self.open_row = -1
        self._waits = False  # for the button of the mouse: a row that moved under it would lose the click
        super().__init__([("", "")], parent)
        self.setItemDelegate(_OneLine(self))
        self.cellClicked.connect(lambda row, _column: self.open(row))
        self.currentCellChanged.connect(lambda row, *_: None if self._waits else self.open(row))

    def open(self, row: int) -> None:
        """Open this row alone; -1 folds all."""
        if row != self.open_row:
            self.open_row = row
            self.fit()
            self.viewport().update()

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show these; what is open stays open where its words are still among them."""
        words = self.rows[self.open_row].cells if 0 <= self.open_row < len(self.rows) else None
        self.open_row = next((number for number, row in enumerate(rows) if row.cells == words), -1)
        self._waits = True
        super().show_rows(rows)
        self._waits = False

    def focusInEvent(self, event: QEvent) -> None:
        """Qt makes the first row the current one: by a key it is opened, under the mouse it is not the one meant."""
        self._waits = event.reason() == Qt.FocusReason.MouseFocusReason
        super().focusInEvent(event)
        self._waits = False

    def mousePressEvent(self, event: QEvent) -> None:
        """Nothing moves until the button is let go."""
        self._waits = True
        super().mousePressEvent(event)

    def mouseReleaseEvent(self, event: QEvent) -> None:
        """Now the row clicked may open."""
        super().mouseReleaseEvent(event)
        self._waits = False

    def keyPressEvent(self, event: QEvent) -> None:
        """Left folds what is open, Right opens the current row; the rest as in any table."""
        if event.key() in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            self.open(-1 if event.key() == Qt.Key.Key_Left else self.currentRow())
            return
        super().keyPressEvent(event)
