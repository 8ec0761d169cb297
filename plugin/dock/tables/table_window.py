"""One table of the plan in a window of its own: the grid, what can be done with it, and what is wrong with it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from qgis.core import QgsApplication, QgsProject, QgsVectorLayer
from qgis.PyQt.QtCore import QEvent, Qt, pyqtSignal
from qgis.PyQt.QtWidgets import QAbstractItemView, QDialog, QHBoxLayout, QMessageBox, QPushButton, QVBoxLayout, QWidget

from ...plan_package.field_spec import LayerSpec
from ...plan_package.words import schema_words
from ...words import tr
from ..flag_shapes import severity_word
from ..row_table import RowTable
from ..rows import Row
from ..section import label
from .cell_editors import CellEditors
from .cell_text import columns_of
from .grid_clipboard import GridClipboard
from .grid_model import GridModel
from .grid_view import GridView
from .layer_rows import LayerRows, Values
from .paste_plan import KEYS

SIZE = (900, 520)
MOST_PROBLEMS = 3


@dataclass(frozen=True, kw_only=True)
class ProblemRow(Row):
    """A line on a problem that knows the cell it speaks of; without one it counts the rest."""

    fid: int | None = None
    field: str = ""


class TableWindow(QDialog):
    """``closed`` comes when the window is gone, with what is to be said of edits that are not saved.

    ``names`` gives what a field may refer to elsewhere in the plan; ``read_text`` opens the dialog that reads printed
    tables, where there is one for this table; ``show_help`` opens a page of the documentation.
    """

    closed = pyqtSignal(str)

    def __init__(
        self,
        layer: QgsVectorLayer,
        spec: LayerSpec,
        zone_name: str,
        *,
        names: Callable[[], dict[str, list[str]]],
        read_text: Callable[[], None] | None = None,
        show_help: Callable[[str], None] | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setObjectName(f"TidelegTable_{spec.name}")
        self.spec = spec
        self.rows = LayerRows(layer, spec, QgsProject.instance(), self)
        self.model = GridModel(self.rows, columns_of(spec, zone_name), self)
        self.view = GridView(self.model, self)
        self.editors = CellEditors(self.model, self)
        self.clipboard = GridClipboard(self.view, self.model, self)
        self._names, self._read_text, self._show_help = names, read_text, show_help
        self._is_released = False
        self._stamp = self.rows.stamp()
        self._make_widgets()
        self._lay_out()
        self._connect()
        self.refresh_names()
        self.show_state()
        self.show_problems()
        self.resize(*SIZE)

    def _make_widgets(self) -> None:
        def button(text: str, tip: str, icon: str = "") -> QPushButton:
            made = QPushButton(text)
            made.setToolTip(tip)
            made.setAccessibleDescription(tip)
            made.setAutoDefault(False)
            if icon:
                made.setIcon(QgsApplication.getThemeIcon(icon))
            return made

        self.add = button(tr("Add Row"), tr("Add a row at the end (Insert)"), "/mActionNewTableRow.svg")
        self.delete = button(
            tr("Delete Rows"), tr("Delete the selected rows (Ctrl+Minus)"), "/mActionDeleteSelectedFeatures.svg"
        )
        self.copy = button(
            tr("Copy"), tr("Copy the selected rows with their headings, or all (Ctrl+C)"), "/mActionEditCopy.svg"
        )
        self.paste = button(tr("Paste"), tr("Paste cells from a spreadsheet, or CSV (Ctrl+V)"), "/mActionEditPaste.svg")
        self.undo = button(tr("Undo"), tr("Undo (Ctrl+Z)"), "/mActionUndo.svg")
        self.redo = button(tr("Redo"), tr("Redo (Ctrl+Y)"), "/mActionRedo.svg")
        self.read = button(tr("Read Printed Table…"), tr("Read a whole table as it was printed, from a file or pasted"))
        self.save = button(
            tr("Save"),
            tr("Save the edits of this table into the plan; other layers are left alone"),
            "/mActionSaveEdits.svg",
        )
        self.help = button(tr("Help"), tr("Open the page on these tables"))
        self.close_button = button(tr("Close"), tr("Close this window; edits stay in QGIS until they are saved"))
        self.status, self.state = label(), label()
        self.problems = RowTable([("", "")])
        self.problems.setAccessibleName(tr("What is wrong in this table"))

    def _lay_out(self) -> None:
        top, bottom = QHBoxLayout(), QHBoxLayout()
        for one in (self.add, self.delete, self.copy, self.paste, self.undo, self.redo, self.read):
            top.addWidget(one)
        top.addStretch()
        bottom.addWidget(self.state, 1)
        for one in (self.help, self.save, self.close_button):
            bottom.addWidget(one)
        column = QVBoxLayout(self)
        column.addLayout(top)
        column.addWidget(self.view, 1)
        for one in (self.problems, self.status):
            column.addWidget(one)
        column.addLayout(bottom)
        self.read.setVisible(self._read_text is not None)
        self.help.setVisible(self._show_help is not None)
        self.view.setAccessibleName(schema_words(self.spec.title))
        self.view.setItemDelegate(self.editors)
        self.add.setEnabled(not self.spec.has_geometry)
        if self.spec.has_geometry:
            self.add.setToolTip(
                tr("Each row is a place: draw it on the map, in the layer '{}'").format(schema_words(self.spec.title))
            )

    def _connect(self) -> None:
        pairs = (
            (self.add, self.add_row),
            (self.delete, self.delete_rows),
            (self.copy, self.clipboard.copy),
            (self.paste, self.clipboard.paste),
            (self.undo, self.model.undo),
            (self.redo, self.model.redo),
            (self.save, self.save_edits),
            (self.read, self._open_reader),
            (self.help, lambda: self._show_help("tables.md#tables")),
            (self.close_button, self.close),
        )
        for button, do in pairs:
            button.clicked.connect(lambda _checked=False, do=do: do())
        self.view.copy_asked.connect(self.clipboard.copy)
        self.view.paste_asked.connect(self.clipboard.paste)
        self.view.add_asked.connect(self.add_row)
        self.view.delete_rows_asked.connect(self.delete_rows)
        self.editors.checked.connect(self.say)
        self.model.told.connect(self.say)
        self.clipboard.told.connect(self.say)
        self.model.problems_changed.connect(self.show_problems)
        for signal in (self.model.rowsInserted, self.model.rowsRemoved):
            signal.connect(lambda *_: self.show_state())
        self.problems.row_chosen.connect(self._go_to)
        self.rows.state_changed.connect(self.show_state)
        self.rows.gone.connect(self.release)

    # What is shown

    def say(self, words: str) -> None:
        """What was just done, or why it was refused; nothing takes it away."""
        self.status.setText(words)
        self.status.setVisible(bool(words))

    def show_state(self) -> None:
        """The title, and what can be undone and saved."""
        layer = self.rows.layer
        if layer is None or self._is_released:
            return
        stack, unsaved = layer.undoStack(), layer.isModified()
        self.setWindowTitle(f"{schema_words(self.spec.title)}[*]")
        self.setWindowModified(unsaved)
        self.undo.setEnabled(stack.canUndo() or bool(self.model.drafts))
        self.redo.setEnabled(stack.canRedo())
        self.save.setEnabled(unsaved)
        filtered = tr("The layer is filtered: hidden rows are not shown here.") if layer.subsetString() else ""
        saved = tr("Not saved yet.") if unsaved else tr("All saved.")
        count = tr("Rows: {}.").format(len(self.model.fids))
        self.state.setText(" ".join(filter(None, [count, saved, filtered])))

    def show_problems(self) -> None:
        """The first few, each with its row; a click goes to the cell."""
        found = self.model.problems()
        places = {fid: place for place, fid in enumerate(self.model.fids)}
        titles = {column.field.name: column.title for column in self.model.columns}
        lines = [
            ProblemRow(
                cells=(
                    f"{severity_word(one.severity)}. "
                    + tr("Row {}, {}: {}").format(places[one.fid] + 1, titles[one.field], one.words),
                ),
                severity=one.severity,
                fid=one.fid,
                field=one.field,
            )
            for one in found[:MOST_PROBLEMS]
            if one.fid in places
        ]
        if len(found) > MOST_PROBLEMS:
            after = found[MOST_PROBLEMS]
            words = tr("And {} more.").format(len(found) - MOST_PROBLEMS)
            lines.append(ProblemRow(cells=(words,), severity="note", fid=after.fid, field=after.field))
        self.problems.show_rows(lines)
        self.problems.setVisible(bool(lines))
        self.show_state()

    def show_zone(self, zone_name: str) -> None:
        """Show times in the plan's zone, which has changed."""
        if zone_name and zone_name != self.model.columns[0].zone_name:
            self.model.show_in(columns_of(self.spec, zone_name))

    def refresh_names(self) -> None:
        """Look again at what the cells may refer to."""
        names = self._names()
        if names != self.model.names:
            self.model.names = names
            self.model.check_between()

    def _go_to(self, row: ProblemRow) -> None:
        if row.fid is not None:
            self.view.go_to(row.fid, row.field)

    # What is done

    def add_row(self) -> None:
        """A row with the schema's first values, and of the same port or station as the current one; the rest is empty
        and marked until it is filled in."""
        if self.spec.has_geometry:
            self.say(self.add.toolTip())
            return
        values: Values = {one.name: one.default for one in self.spec.fields if one.default is not None}
        key = next((one.name for one in self.spec.fields if one.name in KEYS), None)
        if key is not None and self.model.fids:
            row = self.view.currentIndex().row()
            values[key] = self.model.values[self.model.fids[row]][key]
        made = self.model.write(tr("Add row"), {}, [values])
        if made:
            first = next(
                (one.name for one in self.spec.fields if values.get(one.name) is None), self.spec.fields[0].name
            )
            self.view.go_to(made[0], first)
            self.say(tr("Row {} is new. Type its values; Tab goes on.").format(len(self.model.fids)))

    def begin_rows(self, key: str, name: str, rows: list[Values]) -> None:
        """Go to the first row whose field ``key`` has this name; where there is none, put these rows there first."""
        mine = [fid for fid in self.model.fids if self.model.values[fid][key] == name]
        fresh = {one.name: one.default for one in self.spec.fields if one.default is not None}
        made = (
            []
            if mine
            else self.model.write(tr("Add rows of '{}'").format(name), {}, [{**fresh, **one} for one in rows])
        )
        if made:
            self.say(tr("The rows of '{}' are new. Empty means not known, and is never taken as 0.").format(name))
        if mine or made:
            given = rows[0] if rows else {}
            first = next((one.name for one in self.spec.fields if one.name not in given), key)
            self.view.go_to((mine or made)[0], first)
            self.view.scrollTo(self.view.currentIndex(), QAbstractItemView.ScrollHint.PositionAtTop)

    def delete_rows(self) -> None:
        """Delete the rows in which anything is selected; undo brings them back."""
        fids = self.view.chosen_rows()
        if not fids:
            self.say(tr("Select the rows to delete first."))
            return
        self.model.delete_rows(fids)
        self.say(tr("Rows deleted: {}. Undo brings them back.").format(len(fids)))

    def save_edits(self) -> None:
        """Save this layer's edits; where that fails they stay, and why is said."""
        errors = self.rows.save()
        self.model.catch_up()
        self._stamp = self.rows.stamp()
        if errors:
            self.say(tr("Not saved; your edits are kept. {}").format(" ".join(errors)))
        elif self.model.drafts:
            words = tr("Saved, without what the plan cannot hold. Cells so marked: {}.")
            self.say(words.format(len(self.model.drafts)))
        else:
            self.say(tr("Saved."))
        self.show_state()

    def _open_reader(self) -> None:
        self._read_text()
        self._look_at_file()

    def _look_at_file(self) -> None:
        """Read anew what was written to the file beside this window, as the algorithms do."""
        if not self._is_released and self.rows.layer is not None and self.rows.stamp() != self._stamp:
            self._stamp = self.rows.stamp()
            self.model.reload()

    # How it ends

    def event(self, event: QEvent) -> bool:
        """Back in the window: the plan may have changed meanwhile."""
        if event.type() == QEvent.Type.WindowActivate:
            self._look_at_file()
            if not self._is_released:
                self.refresh_names()
        return super().event(event)

    def reject(self) -> None:
        """Esc ends the editing of a cell and closes no window."""

    def closeEvent(self, event: QEvent) -> None:
        """Edits stay in the layer's buffer. What was typed and refused would be lost, so that is asked."""
        if not self._is_released and self.model.drafts and not self._may_lose_drafts():
            event.ignore()
            return
        event.accept()
        self.release()

    def _may_lose_drafts(self) -> bool:
        words = tr(
            "What the plan cannot hold is lost when the window is closed; the plan keeps what it had. Such cells: {}."
        )
        box = QMessageBox(self)
        box.setIcon(QMessageBox.Icon.Question)
        box.setText(words.format(len(self.model.drafts)))
        lose = box.addButton(tr("Close Anyway"), QMessageBox.ButtonRole.DestructiveRole)
        box.setDefaultButton(box.addButton(tr("Keep Open"), QMessageBox.ButtonRole.RejectRole))
        box.exec()
        box.deleteLater()
        return box.clickedButton() is lose

    def release(self) -> None:
        """Let go of the layer and go, without asking; edits stay in the layer's buffer."""
        if self._is_released:
            return
        self._is_released = True
        layer = self.rows.layer
        unsaved = layer is not None and layer.isModified()
        words = tr("{}: edits are not saved yet. They stay in QGIS until you save them or throw them away.")
        self.rows.release()
        self.closed.emit(words.format(schema_words(self.spec.title)) if unsaved else "")
        self.close()
