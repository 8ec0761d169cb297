"""What opens in a cell to be edited: a list where the schema has one, else a line that says at once what is wrong."""

from __future__ import annotations

from qgis.PyQt.QtCore import QEvent, QModelIndex, QObject, Qt, pyqtSignal
from qgis.PyQt.QtWidgets import QAction, QComboBox, QCompleter, QLineEdit, QStyledItemDelegate, QWidget

from ...core.errors import SwimPlanError
from ...plan_package.words import schema_words
from ...words import tr
from ..flag_shapes import severity_icon
from .cell_text import Column, value_of
from .grid_model import GridModel

MOST_NAMES = 200  # offered while a name is typed


class CellLine(QLineEdit):
    """A line that checks itself at every letter. ``checked`` gives why the text is not what the column may hold."""

    checked = pyqtSignal(str)

    def __init__(self, column: Column, names: list[str], parent: QWidget) -> None:
        super().__init__(parent)
        self._column = column
        self.setFrame(False)
        self.setAccessibleName(column.title)
        self.wrong = QAction(severity_icon("stop", self.palette().color(self.foregroundRole())), "", self)
        if names:
            found = QCompleter(names, self)
            found.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
            self.setCompleter(found)
        self.textEdited.connect(self.check)

    def keyPressEvent(self, event: QEvent) -> None:
        """Enter ends the editing and is not passed on to the grid, which would go down once more."""
        super().keyPressEvent(event)
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            event.accept()

    def check(self, text: str) -> None:
        """Show whether the text may stand here: by a shape in the line, and in words."""
        words = ""
        try:
            value_of(self._column, text)
        except SwimPlanError as error:
            words = str(error)
        if words and self.wrong not in self.actions():
            self.addAction(self.wrong, QLineEdit.ActionPosition.TrailingPosition)
        elif not words:
            self.removeAction(self.wrong)
        self.setToolTip(words or self._column.tip)
        self.setAccessibleDescription(words)
        self.checked.emit(words)


class CellEditors(QStyledItemDelegate):
    """``checked`` gives, while one types, why the text is refused; "" where it is not."""

    checked = pyqtSignal(str)

    def __init__(self, model: GridModel, parent: QObject) -> None:
        super().__init__(parent)
        self._grid = model
        self.closeEditor.connect(self._left)

    def createEditor(self, parent: QWidget, _option: object, index: QModelIndex) -> QWidget:
        """A list of what is allowed, with nothing where nothing is allowed too; else a line."""
        column = self._grid.columns[index.column()]
        if column.field.choices:
            return self._choices(column, parent)
        line = CellLine(column, self._names(column), parent)
        line.checked.connect(self.checked)
        return line

    def _left(self, _editor: QWidget, hint: QStyledItemDelegate.EndEditHint) -> None:
        """Nothing was taken, so there is nothing to say of it."""
        if hint == QStyledItemDelegate.EndEditHint.RevertModelCache:
            self.checked.emit("")

    def _choices(self, column: Column, parent: QWidget) -> QComboBox:
        box = QComboBox(parent)
        box.setAccessibleName(column.title)
        box.setEditable(column.field.open_list)
        if not column.field.required:
            box.addItem(tr("(not given)"), "")
        for code, words in column.field.choices.items():
            box.addItem(schema_words(words), code)
        box.activated.connect(lambda _row: self._take(box))
        return box

    def _take(self, box: QComboBox) -> None:
        if not box.isEditable():
            self.commitData.emit(box)

    def _names(self, column: Column) -> list[str]:
        """What the cell may refer to, and what stands in the column already."""
        name = column.field.name
        if column.field.kind != "text" or column.field.long_text:
            return []
        there = (values[name] for values in self._grid.values.values())
        known = dict.fromkeys([*self._grid.names.get(name, []), *(one for one in there if isinstance(one, str))])
        return list(known)[:MOST_NAMES]

    def setEditorData(self, editor: QWidget, index: QModelIndex) -> None:
        """What the cell shows."""
        text = index.data(Qt.ItemDataRole.EditRole)
        if isinstance(editor, QComboBox):
            place = editor.findText(text)
            if place >= 0:
                editor.setCurrentIndex(place)
            elif editor.isEditable():
                editor.setCurrentText(text)
            else:
                editor.setCurrentIndex(-1 if text or editor.itemData(0) else 0)
        elif editor.text() != text:
            editor.setText(text)

    def setModelData(self, editor: QWidget, model: GridModel, index: QModelIndex) -> None:
        """What was chosen or typed."""
        self.checked.emit("")
        if not isinstance(editor, QComboBox):
            model.setData(index, editor.text())
        elif editor.currentIndex() >= 0 and editor.currentText() == editor.itemText(editor.currentIndex()):
            if editor.currentText() != index.data(Qt.ItemDataRole.EditRole):
                model.setData(index, editor.currentData())
        elif editor.isEditable():
            model.setData(index, editor.currentText())
