"""A table of rows that is as tall as its rows, wraps its words and can be walked by keys."""

from __future__ import annotations

from collections.abc import Sequence

from qgis.PyQt.QtCore import QEvent, QModelIndex, QSize, Qt, pyqtSignal
from qgis.PyQt.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QSizePolicy,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from .flag_shapes import severity_icon
from .rows import Row

MARGIN_PX = 8


class IconOnTop(QStyledItemDelegate):
    """The shape stands beside the first line of its words, not half-way down them."""

    def initStyleOption(self, option: QStyleOptionViewItem, index: QModelIndex) -> None:
        """Align the shape with the top of the words."""
        super().initStyleOption(option, index)
        option.decorationAlignment = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop


class RowTable(QTableWidget):
    """Rows without a scroll bar of their own: the dock scrolls. ``row_chosen`` comes with a click and with Enter.

    ``headers`` are pairs of title and tooltip; where all titles are empty none are shown. The first column takes the
    room that is left over and wraps.
    """

    row_chosen = pyqtSignal(object)

    def __init__(self, headers: Sequence[tuple[str, str]], parent: QWidget | None = None) -> None:
        super().__init__(0, len(headers), parent)
        self.rows: list[Row] = []
        self._is_fitting = False
        self._set_headers(headers)
        self.setItemDelegate(IconOnTop(self))
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)  # Tab goes on to the next widget
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setWordWrap(True)
        self.setShowGrid(False)
        self.setAlternatingRowColors(True)
        self.cellClicked.connect(lambda row, _column: self.click_row(row))
        self.fit()

    def _set_headers(self, headers: Sequence[tuple[str, str]]) -> None:
        for column, (title, tip) in enumerate(headers):
            item = QTableWidgetItem(title)
            item.setToolTip(tip)
            item.setTextAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom)
            self.setHorizontalHeaderItem(column, item)
        self.verticalHeader().hide()
        bar = self.horizontalHeader()
        bar.setMinimumSectionSize(2 * self.fontMetrics().averageCharWidth())
        bar.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        bar.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        bar.setHighlightSections(False)
        bar.setVisible(any(title for title, _ in headers))
        # Queued: while the signal is sent the columns still have the widths from before.
        bar.sectionResized.connect(self.fit, Qt.ConnectionType.QueuedConnection)

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show these in place of what is shown; the number of the row that was chosen stays."""
        if self.rows and list(rows) == self.rows:
            return
        self._show_anew(rows)

    def _show_anew(self, rows: Sequence[Row]) -> None:
        """The same for rows that are shown already, where their cells have changed since."""
        current = self.currentRow()
        self.clearSpans()
        self.rows = list(rows)
        self.setRowCount(len(self.rows))
        for number, row in enumerate(self.rows):
            self._fill(number, row)
        if 0 <= current < len(self.rows):
            self.setCurrentCell(current, 0)
        self.fit()

    def _fill(self, number: int, row: Row) -> None:
        for column in range(self.columnCount()):
            text = row.cells[column] if column < len(row.cells) else ""
            item = QTableWidgetItem(text)
            item.setToolTip(text.replace("\n", ", "))
            item.setTextAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
            self.setItem(number, column, item)
        if row.severity:
            icon = severity_icon(row.severity, self.palette().color(self.foregroundRole()))
            self.item(number, len(row.cells) - 1).setIcon(icon)
        if self._takes_the_rest(row):
            self.setSpan(number, len(row.cells) - 1, 1, self.columnCount() - len(row.cells) + 1)

    def _takes_the_rest(self, row: Row) -> bool:
        return len(row.cells) < self.columnCount()

    def click_row(self, number: int) -> None:
        """A row was clicked."""
        self.row_chosen.emit(self.rows[number])

    def fit(self, *_: int) -> None:
        """As tall as the rows are at this width."""
        if self._is_fitting:
            return
        self._is_fitting = True
        for number, row in enumerate(self.rows):
            if self._takes_the_rest(row):
                # Qt would size the cell's first column by all of its words, and wrap them to that column alone.
                item = self.item(number, len(row.cells) - 1)
                item.setSizeHint(QSize(1, self._wrapped_height(number, len(row.cells) - 1)))
        self.resizeRowsToContents()
        bar = self.horizontalHeader()
        header = 0 if bar.isHidden() else bar.sizeHint().height()
        rows = sum(self.rowHeight(number) for number in range(self.rowCount()))
        self.setFixedHeight(rows + header + 2 * self.frameWidth())
        self._is_fitting = False

    def _wrapped_height(self, number: int, column: int) -> int:
        """The height of a cell that takes its row from this column on."""
        icon = self.iconSize().width() if self.rows[number].severity else 0
        width = sum(self.columnWidth(one) for one in range(column, self.columnCount())) - icon - 2 * MARGIN_PX
        wrap = Qt.TextFlag.TextWordWrap
        words, wrap = self.item(number, column).text(), getattr(wrap, "value", wrap)  # a whole number in Qt 5 and Qt 6
        box = self.fontMetrics().boundingRect(0, 0, max(width, 5 * MARGIN_PX), 10_000, wrap, words)
        return box.height() + MARGIN_PX

    def resizeEvent(self, event: QEvent) -> None:
        """Wrap anew."""
        super().resizeEvent(event)
        self.fit()

    def changeEvent(self, event: QEvent) -> None:
        """Another theme: the shapes take its ink."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange) and getattr(self, "rows", None):
            self._show_anew(self.rows)

    def keyPressEvent(self, event: QEvent) -> None:
        """Enter and the space bar choose the row, as a click does."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            if 0 <= self.currentRow() < len(self.rows):
                self.row_chosen.emit(self.rows[self.currentRow()])
            return
        super().keyPressEvent(event)
