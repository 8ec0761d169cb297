"""The grid itself: walked and edited by keys as a spreadsheet is."""

from __future__ import annotations

from qgis.PyQt.QtCore import QEvent, QItemSelectionModel, Qt, pyqtSignal
from qgis.PyQt.QtGui import QKeySequence
from qgis.PyQt.QtWidgets import QAbstractItemDelegate, QAbstractItemView, QHeaderView, QTableView, QWidget

from ...words import tr
from .grid_model import GridModel

LEAST_ROWS = 6  # heights of rows, the titles included
ROWS_LOOKED_AT = 60  # when columns are fitted to what they hold
LEAST_CHARACTERS, MOST_CHARACTERS = 8, 34


class GridView(QTableView):
    """``copy_asked``, ``paste_asked``, ``add_asked`` and ``delete_rows_asked`` come with their keys."""

    copy_asked = pyqtSignal()
    paste_asked = pyqtSignal()
    add_asked = pyqtSignal()
    delete_rows_asked = pyqtSignal()

    def __init__(self, model: GridModel, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setModel(model)
        self._grid = model
        self._kept: tuple[int, int] | None = None
        self.setTabKeyNavigation(False)  # see focusNextPrevChild
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setAlternatingRowColors(True)
        self.setWordWrap(False)
        self.setEditTriggers(
            QAbstractItemView.EditTrigger.DoubleClicked
            | QAbstractItemView.EditTrigger.EditKeyPressed
            | QAbstractItemView.EditTrigger.AnyKeyPressed
        )
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        bar = self.verticalHeader()
        bar.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        bar.setDefaultSectionSize(self.fontMetrics().height() + 8)
        self.setMinimumHeight(LEAST_ROWS * bar.defaultSectionSize())
        self.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.horizontalHeader().sectionClicked.connect(self.sort_by)
        model.modelAboutToBeReset.connect(self._keep_place)
        model.modelReset.connect(self._restore_place)
        self.fit_columns()
        model.draw_with(self.palette().color(self.foregroundRole()))

    def fit_columns(self) -> None:
        """As wide as titles and cells need, and no wider than a long note should be."""
        self.horizontalHeader().setResizeContentsPrecision(ROWS_LOOKED_AT)
        self.resizeColumnsToContents()
        letter = self.fontMetrics().averageCharWidth()
        for column in range(self.model().columnCount()):
            width = self.columnWidth(column) + 2 * letter  # room for the shape of a problem
            self.setColumnWidth(column, max(LEAST_CHARACTERS * letter, min(width, MOST_CHARACTERS * letter)))

    def sort_by(self, column: int) -> None:
        """By a column; again the other way round; a third time in stored order."""
        before = self._grid.sorted_by
        up, down = Qt.SortOrder.AscendingOrder, Qt.SortOrder.DescendingOrder
        order = up if before is None or before[0] != column else down if before[1] == up else None
        self._grid.sort(-1 if order is None else column, up if order is None else order)
        bar = self.horizontalHeader()
        bar.setSortIndicatorShown(order is not None)
        if order is not None:
            bar.setSortIndicator(column, order)

    def go_to(self, fid: int, field: str) -> None:
        """Make a cell the current one and show it."""
        names = [column.field.name for column in self._grid.columns]
        if fid in self._grid.values:
            index = self._grid.index(self._grid.fids.index(fid), names.index(field))
            self.setCurrentIndex(index)
            self.scrollTo(index)
            self.setFocus()

    def chosen_rows(self) -> list[int]:
        """The ids of the rows in which anything is selected, from the top."""
        rows = sorted({index.row() for index in self.selectionModel().selectedIndexes()})
        return [self._grid.fids[row] for row in rows]

    def focusNextPrevChild(self, forward: bool) -> bool:
        """Tab walks from cell to cell, and at the last cell on to the next widget: nobody is caught in the grid."""
        return self._step(1 if forward else -1) or super().focusNextPrevChild(forward)

    def _step(self, by: int) -> bool:
        index, wide = self.currentIndex(), self.model().columnCount()
        if not index.isValid():
            return False
        row, column = divmod(index.row() * wide + index.column() + by, wide)
        if not 0 <= row < self.model().rowCount():
            return False
        self.setCurrentIndex(self.model().index(row, column))
        return True

    def _down(self) -> None:
        below = self.model().index(self.currentIndex().row() + 1, self.currentIndex().column())
        if below.isValid():
            self.setCurrentIndex(below)

    def closeEditor(self, editor: QWidget, hint: QAbstractItemDelegate.EndEditHint) -> None:
        """After Enter the cell below is next, after Tab the one beside; none is opened unasked."""
        super().closeEditor(editor, QAbstractItemDelegate.EndEditHint.NoHint)
        if hint == QAbstractItemDelegate.EndEditHint.SubmitModelCache:
            self._down()
        elif hint == QAbstractItemDelegate.EndEditHint.EditNextItem:
            self._step(1)
        elif hint == QAbstractItemDelegate.EndEditHint.EditPreviousItem:
            self._step(-1)

    def keyPressEvent(self, event: QEvent) -> None:
        """The keys of a spreadsheet."""
        keys = (
            (QKeySequence.StandardKey.Copy, self.copy_asked.emit),
            (QKeySequence.StandardKey.Paste, self.paste_asked.emit),
            (QKeySequence.StandardKey.Undo, self._grid.undo),
            (QKeySequence.StandardKey.Redo, self._grid.redo),
        )
        done = next((do for key, do in keys if event.matches(key)), None) or self._plain_key(event)
        if done is None:
            super().keyPressEvent(event)
        else:
            done()

    def _plain_key(self, event: QEvent) -> object:
        control = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
        key = event.key()
        if control and key == Qt.Key.Key_Y:  # Redo everywhere, whatever the desktop calls its own key
            return self._grid.redo
        if control and key in (Qt.Key.Key_Minus, Qt.Key.Key_Delete):
            return self.delete_rows_asked.emit
        if key == Qt.Key.Key_Insert:
            return self.add_asked.emit
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not control:
            return self._down
        if key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            return self.clear_chosen
        return None

    def clear_chosen(self) -> None:
        """Empty the selected cells: no value, not 0."""
        chosen = self.selectionModel().selectedIndexes()
        names = [column.field.name for column in self._grid.columns]
        texts = {(self._grid.fids[one.row()], names[one.column()]): "" for one in chosen}
        if texts:
            self._grid.set_texts(tr("Clear cells ({})").format(len(texts)), texts)

    def resizeEvent(self, event: QEvent) -> None:
        """Where what stands below takes room, the cell one works on stays in sight."""
        super().resizeEvent(event)
        if self.currentIndex().isValid():
            self.scrollTo(self.currentIndex())

    def _keep_place(self) -> None:
        index = self.currentIndex()
        self._kept = (self._grid.fids[index.row()], index.column()) if index.isValid() else None

    def _restore_place(self) -> None:
        if self._kept is not None and self._kept[0] in self._grid.values:
            index = self._grid.index(self._grid.fids.index(self._kept[0]), self._kept[1])
            self.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.ClearAndSelect)

    def changeEvent(self, event: QEvent) -> None:
        """Another theme: the shapes take its ink."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange and getattr(self, "_grid", None) is not None:
            self._grid.draw_with(self.palette().color(self.foregroundRole()))
