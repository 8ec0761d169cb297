"""The model of one table: its rows as the edit buffer holds them, what is wrong with them, and what was typed wrongly.

What a cell cannot hold never goes into the layer. It stays here as it was typed, marked and with the reason, until it
is corrected, cleared or undone; the plan meanwhile has the value before it.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from textwrap import fill
from typing import Any

from qgis.PyQt.QtCore import QAbstractTableModel, QModelIndex, QObject, Qt, QTimer, pyqtSignal
from qgis.PyQt.QtGui import QColor, QIcon

from ...core.errors import SwimPlanError
from ...words import tr
from ..flag_shapes import severity_icon, severity_word
from .cell_text import Column, problem_of, shown, value_of
from .layer_rows import LayerRows, Values, stored_order
from .problems import STOP, Problem, problems_between

CHECK_MS = 40  # after the last change; ten thousand rows take about as long
TITLE_CHARACTERS = 14  # a line of a title
LONG_CHARACTERS = 25  # a text that a narrow column may not show whole
MOST_RANGES = 40  # of rows that go: where there are more the view is drawn anew
_TINTS = {"stop": QColor(204, 51, 17, 70), "warn": QColor(238, 170, 0, 55)}  # seen through, on a light or dark ground


@dataclass(frozen=True, kw_only=True)
class Draft:
    """A text that its cell cannot hold: why, and how many steps the layer's undo stack had then."""

    text: str
    words: str
    undo_index: int


class GridModel(QAbstractTableModel):
    """``problems_changed``: what ``problems`` gives has changed; ``told``: words on what was just done or refused."""

    problems_changed = pyqtSignal()
    told = pyqtSignal(str)

    def __init__(self, rows: LayerRows, columns: Sequence[Column], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.rows = rows
        self.columns = tuple(columns)
        self.names: dict[str, list[str]] = {}  # what a field may refer to, by its name
        self.fids: list[int] = []
        self.values: dict[int, Values] = {}
        self.drafts: dict[tuple[int, str], Draft] = {}
        self.sorted_by: tuple[int, Qt.SortOrder] | None = None
        self.ink = QColor(Qt.GlobalColor.black)
        self._wrong: dict[int, dict[str, Problem]] = {}
        self._between: dict[tuple[int, str], Problem] = {}
        self._pending: set[int] | None = set()
        self._icons: dict[str, QIcon] = {}
        self._apply = QTimer(self)
        self._apply.setSingleShot(True)
        self._apply.timeout.connect(self.catch_up)
        self._check = QTimer(self)
        self._check.setSingleShot(True)
        self._check.setInterval(CHECK_MS)
        self._check.timeout.connect(self.check_between)
        rows.changed.connect(self._note)
        self.reload()

    # What the view asks

    def rowCount(self, parent: QModelIndex | None = None) -> int:
        """As many as the layer has."""
        return 0 if parent is not None and parent.isValid() else len(self.fids)

    def columnCount(self, parent: QModelIndex | None = None) -> int:
        """As many as the schema has."""
        return 0 if parent is not None and parent.isValid() else len(self.columns)

    def flags(self, index: QModelIndex) -> Qt.ItemFlag:
        """Every cell can be edited."""
        return super().flags(index) | Qt.ItemFlag.ItemIsEditable

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """What a cell shows: its text, the shape of what is wrong with it, and the words behind the shape."""
        if not index.isValid() or not index.row() < len(self.fids):
            return None
        fid, column = self.fids[index.row()], self.columns[index.column()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole):
            return self.text(fid, column, in_words=True)
        if role == Qt.ItemDataRole.TextAlignmentRole and column.field.is_number:
            right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            return int(getattr(right, "value", right))  # a whole number in Qt 5 and Qt 6
        if role == Qt.ItemDataRole.ToolTipRole:
            problem = self.problem(fid, column.field.name)
            if problem is not None:
                return problem.words
            text = self.text(fid, column, in_words=True)
            return column.tip if len(text) < LONG_CHARACTERS else f"{text}\n\n{column.tip}"
        if role in (
            Qt.ItemDataRole.DecorationRole,
            Qt.ItemDataRole.BackgroundRole,
            Qt.ItemDataRole.AccessibleDescriptionRole,
        ):
            problem = self.problem(fid, column.field.name)
            return None if problem is None else self._mark(problem, role)
        return None

    def _mark(self, problem: Problem, role: int) -> Any:
        if role == Qt.ItemDataRole.DecorationRole:
            return self._icons.setdefault(problem.severity, severity_icon(problem.severity, self.ink))
        if role == Qt.ItemDataRole.BackgroundRole:
            return _TINTS[problem.severity]
        return f"{severity_word(problem.severity)}: {problem.words}"

    def headerData(self, section: int, way: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Titles with their units; rows counted from 1, with a star where they are not saved yet."""
        if way == Qt.Orientation.Horizontal:
            column = self.columns[section]
            if role == Qt.ItemDataRole.DisplayRole:
                return fill(column.title, TITLE_CHARACTERS, break_long_words=False)
            return column.tip if role == Qt.ItemDataRole.ToolTipRole else None
        if section >= len(self.fids):
            return None
        fid = self.fids[section]
        if role == Qt.ItemDataRole.DisplayRole:
            return f"{section + 1}" if fid >= 0 else f"{section + 1} *"
        if role == Qt.ItemDataRole.ToolTipRole:
            return tr("Row {} of the file").format(fid) if fid >= 0 else tr("New, not saved yet (row {})").format(fid)
        return None

    def text(self, fid: int, column: Column, *, in_words: bool) -> str:
        """What a cell shows: what was typed where it was refused, else the value."""
        draft = self.drafts.get((fid, column.field.name))
        if draft is not None:
            return draft.text
        return shown(column, self.values[fid][column.field.name], in_words=in_words)

    # What is wrong

    def problem(self, fid: int, field: str) -> Problem | None:
        """What is wrong with a cell: what was typed there, else what the layer holds, alone or beside other rows."""
        draft = self.drafts.get((fid, field))
        if draft is not None:
            return Problem(fid=fid, field=field, words=draft.words, severity=STOP)
        alone = self._wrong.get(fid, {}).get(field)
        return alone if alone is not None else self._between.get((fid, field))

    def problems(self) -> list[Problem]:
        """All of them: what is wrong before what is doubtful, from the top."""
        keys = {*self.drafts, *((fid, field) for fid, mine in self._wrong.items() for field in mine), *self._between}
        found = [self.problem(*key) for key in keys]
        places = {fid: place for place, fid in enumerate(self.fids)}
        order = [column.field.name for column in self.columns]
        return sorted(found, key=lambda one: (one.severity != STOP, places.get(one.fid, 0), order.index(one.field)))

    def check_between(self) -> None:
        """Look at the rows beside each other."""
        self._check.stop()
        found = problems_between(self.rows.spec.name, self.values, self.names)
        between = {(one.fid, one.field): one for one in reversed(found)}
        if between != self._between:
            self._between = between
            self._redraw()
        self.problems_changed.emit()

    def _check_alone(self, fid: int) -> None:
        values = self.values[fid]
        found = ((column.field.name, problem_of(column, values[column.field.name])) for column in self.columns)
        wrong = {name: Problem(fid=fid, field=name, words=words, severity=STOP) for name, words in found if words}
        self._wrong.pop(fid, None)
        if wrong:
            self._wrong[fid] = wrong

    def show_in(self, columns: Sequence[Column]) -> None:
        """Show times in another zone: the plan's has changed."""
        self.columns = tuple(columns)
        self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, len(self.columns) - 1)
        self._redraw()

    def draw_with(self, ink: QColor) -> None:
        """Draw the shapes in this ink."""
        self.ink = ink
        self._icons.clear()
        self._redraw()

    def _redraw(self) -> None:
        if self.fids:
            self.dataChanged.emit(self.index(0, 0), self.index(len(self.fids) - 1, len(self.columns) - 1))

    # What the layer tells

    def reload(self) -> None:
        """Read all rows anew."""
        self.beginResetModel()
        self._pending = set()
        self.values = self.rows.read()
        self.fids = list(self.values)
        self.drafts = {key: draft for key, draft in self.drafts.items() if key[0] in self.values}
        self._wrong.clear()
        for fid in self.fids:
            self._check_alone(fid)
        if self.sorted_by is not None:
            self._sort_fids()
        self.endResetModel()
        self.check_between()

    def _note(self, fids: Iterable[int] | None) -> None:
        """What was changed is read once the events of one step are over: it may be thousands of rows."""
        if fids is None:
            self._pending = None
        elif self._pending is not None:
            self._pending.update(fids)
        if not self._apply.isActive():
            self._apply.start(0)

    def catch_up(self) -> None:
        """Show what the layer has told of."""
        self._apply.stop()
        if self.rows.layer is None or self._pending == set():
            return
        if self._pending is None:
            self.reload()
            return
        noted, self._pending = self._pending, set()
        now = self.rows.read(noted)
        came = [fid for fid in now if fid not in self.values]
        back = self.sorted_by is None and self.fids and came and stored_order(came[0]) < stored_order(self.fids[-1])
        if back or not self._take_away([fid for fid in noted if fid in self.values and fid not in now]):
            self.reload()  # rows that come back stand where they stood
            return
        for fid in now.keys() - set(came):
            self.values[fid] = now[fid]
            self._check_alone(fid)
            if len(now) < len(self.fids):
                row = self.fids.index(fid)
                self.dataChanged.emit(self.index(row, 0), self.index(row, len(self.columns) - 1))
        if came:
            self.beginInsertRows(QModelIndex(), len(self.fids), len(self.fids) + len(came) - 1)
            self.values.update((fid, now[fid]) for fid in came)
            self.fids.extend(came)
            for fid in came:
                self._check_alone(fid)
            self.endInsertRows()
        self._check.start()

    def _take_away(self, gone: list[int]) -> bool:
        """Rows that are no longer there leave the view, in one go a range; False where that were too many."""
        lost = set(gone)
        places = [place for place, fid in enumerate(self.fids) if fid in lost]
        ranges: list[list[int]] = []
        for place in places:
            if ranges and ranges[-1][1] == place - 1:
                ranges[-1][1] = place
            else:
                ranges.append([place, place])
        if len(ranges) > MOST_RANGES:
            return False
        for first, last in reversed(ranges):
            self.beginRemoveRows(QModelIndex(), first, last)
            for fid in self.fids[first : last + 1]:
                del self.values[fid]
                self._wrong.pop(fid, None)
            del self.fids[first : last + 1]
            self.endRemoveRows()
        self.drafts = {key: draft for key, draft in self.drafts.items() if key[0] not in lost}
        return True

    # What the user does

    def setData(self, index: QModelIndex, text: object, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """Take what was typed; what cannot be held stays as a draft. False where nothing changes."""
        if role != Qt.ItemDataRole.EditRole or not index.isValid():
            return False
        fid, column = self.fids[index.row()], self.columns[index.column()]
        if str(text) == self.text(fid, column, in_words=True):
            return False
        self.set_texts(tr("Edit {}").format(column.title), {(fid, column.field.name): str(text)})
        return True

    def set_texts(self, words: str, texts: Mapping[tuple[int, str], str]) -> None:
        """Put texts into cells, by id and field, as one step to undo; those that are refused become drafts."""
        by_name = {column.field.name: column for column in self.columns}
        changes: dict[int, Values] = {}
        refused: dict[tuple[int, str], tuple[str, str]] = {}
        for (fid, name), text in texts.items():
            self.drafts.pop((fid, name), None)
            try:
                value = value_of(by_name[name], text)
            except SwimPlanError as error:
                if text or self.values[fid][name] is not None:
                    refused[(fid, name)] = (text, str(error))
                continue
            if value != self.values[fid][name]:
                changes.setdefault(fid, {})[name] = value
        if changes and not self.write(words, changes):
            return
        for (fid, name), (text, why) in refused.items():
            before = shown(by_name[name], self.values[fid][name]) or tr("nothing")
            why = f"{why} {tr('Not taken: the plan still has {} here.').format(before)}"
            self.drafts[(fid, name)] = Draft(text=text, words=why, undo_index=self._undo_index())
        self._redraw()
        self.problems_changed.emit()

    def write(self, words: str, changes: Mapping[int, Values], added: Iterable[Values] = ()) -> list[int] | bool:
        """Change and add rows as one step; the ids of what was added, or True; False, with words, where refused."""
        try:
            made = self.rows.write(words, changes, added)
        except SwimPlanError as error:
            self.catch_up()
            self.told.emit(str(error))
            return False
        for fid, values in changes.items():
            for name in values:
                self.drafts.pop((fid, name), None)
        self.catch_up()
        return made or True

    def delete_rows(self, fids: Sequence[int]) -> None:
        """Delete rows as one step to undo."""
        try:
            self.rows.delete(tr("Delete rows ({})").format(len(fids)), fids)
        except SwimPlanError as error:
            self.told.emit(str(error))
        self.catch_up()

    def undo(self) -> None:
        """Take back the last step: what was typed and refused since, else the layer's."""
        last = next(reversed(self.drafts), None)
        if last is not None and self.drafts[last].undo_index == self._undo_index():
            del self.drafts[last]
            self._redraw()
            self.problems_changed.emit()
            return
        self.rows.layer.undoStack().undo()
        self.catch_up()

    def redo(self) -> None:
        """Do the layer's last step again."""
        self.rows.layer.undoStack().redo()
        self.catch_up()

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        """Show the rows by a column, empty cells last; -1 in stored order. The file's order is left alone."""
        self.layoutAboutToBeChanged.emit()
        before = [(one, self.fids[one.row()]) for one in self.persistentIndexList()]
        self.sorted_by = None if column < 0 else (column, order)
        self._sort_fids()
        places = {fid: place for place, fid in enumerate(self.fids)}
        for index, fid in before:
            self.changePersistentIndex(index, self.index(places[fid], index.column()))
        self.layoutChanged.emit()
        self.problems_changed.emit()

    def _sort_fids(self) -> None:
        self.fids.sort(key=stored_order)
        if self.sorted_by is None:
            return
        column, order = self.sorted_by
        name = self.columns[column].field.name
        filled = [fid for fid in self.fids if self.values[fid][name] is not None]
        empty = [fid for fid in self.fids if self.values[fid][name] is None]
        filled.sort(key=lambda fid: _sortable(self.values[fid][name]), reverse=order == Qt.SortOrder.DescendingOrder)
        self.fids = filled + empty

    def _undo_index(self) -> int:
        return self.rows.layer.undoStack().index()


def _sortable(value: object) -> tuple[bool, object]:
    """Texts after what they cannot be compared with, whatever their case."""
    return (True, value.casefold()) if isinstance(value, str) else (False, value)
