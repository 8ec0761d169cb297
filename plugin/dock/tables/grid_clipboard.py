"""Between the grid and the clipboard: copies cells with their headings, pastes tables, asks where that is not plain."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from qgis.PyQt.QtCore import QObject, Qt, pyqtSignal
from qgis.PyQt.QtWidgets import QApplication, QWidget

from ...core.errors import SwimPlanError
from ...words import tr
from .clipboard_table import ClipboardTable, table_in, table_text
from .grid_model import GridModel
from .grid_view import GridView
from .paste_plan import PastePlan, PasteTarget, plan_paste
from .paste_preview import PastePreview


class GridClipboard(QObject):
    """``told``: words on what was copied or pasted, or why it was not."""

    told = pyqtSignal(str)

    def __init__(self, view: GridView, model: GridModel, window: QWidget) -> None:
        super().__init__(window)
        self._view, self._grid, self._window = view, model, window

    def copy(self) -> None:
        """The rows and columns in which anything is selected, as a block with headings; all where nothing is. One cell
        goes alone, to be pasted into others."""
        chosen = self._view.selectedIndexes()
        rows = sorted({one.row() for one in chosen}) or range(len(self._grid.fids))
        places = sorted({one.column() for one in chosen}) or range(len(self._grid.columns))
        columns = [self._grid.columns[place] for place in places]
        fids = [self._grid.fids[row] for row in rows]
        cells = [[self._grid.text(fid, column, in_words=False) for column in columns] for fid in fids]
        headings = [] if len(chosen) == 1 else [[column.title for column in columns]]
        QApplication.clipboard().setText(table_text([*headings, *cells]))
        self.told.emit(tr("Copied with headings. Rows: {}.").format(len(cells)))

    def paste(self) -> None:
        """Paste what is on the clipboard; where anything of it is refused or may be meant otherwise, ask first."""
        try:
            table = table_in(QApplication.clipboard().text())
        except SwimPlanError as error:
            self.told.emit(str(error))
            return
        if len(table.rows) == len(table.rows[0]) == 1 and len(self._view.selectedIndexes()) > 1:
            self._fill(table.rows[0][0])
            return
        plan = self._plan_to_paste(table)
        if plan is None:
            self.told.emit(tr("Nothing was pasted."))
        else:
            self._put(plan)

    def _target(self) -> PasteTarget:
        chosen = self._view.selectedIndexes()  # the current cell alone may be one that nobody chose
        row = min((one.row() for one in chosen), default=-1)
        return PasteTarget(
            columns=self._grid.columns,
            fids=tuple(self._grid.fids),
            values=self._grid.values,
            can_grow=not self._grid.rows.spec.has_geometry,
            row=row,
            column=min((one.column() for one in chosen), default=0),
        )

    def _plan_to_paste(self, table: ClipboardTable) -> PastePlan | None:
        """The plan at once where the paste is plain; else the one that the user takes, None for none."""
        target = self._target()
        with _waiting():
            plan = plan_paste(table, target)
        if not (plan.bad or plan.refused or plan.notes or (plan.has_headings and target.fids)):
            return plan
        shown_row = target.row + 1 if target.row >= 0 else None
        dialog = PastePreview(lambda over: plan_paste(table, target, over=over), shown_row, self._window)
        accepted = dialog.exec()
        dialog.deleteLater()
        return dialog.plan if accepted else None

    def _put(self, plan: PastePlan) -> None:
        """Write the good rows as one step."""
        rows = plan.good
        changes = {row.fid: dict(row.values) for row in rows if row.fid is not None}
        added = [row.values for row in rows if row.fid is None]
        with _waiting():
            made = self._grid.write(tr("Paste rows ({})").format(len(rows)), changes, added)
        if made:
            words = tr("Rows pasted: {}, new among them: {}. Undo takes them back in one step.")
            self.told.emit(f"{words.format(len(rows), len(added))} {plan.belongs}".strip())

    def _fill(self, text: str) -> None:
        """One cell pasted into several goes into each."""
        names = [column.field.name for column in self._grid.columns]
        texts = {(self._grid.fids[one.row()], names[one.column()]): text for one in self._view.selectedIndexes()}
        self._grid.set_texts(tr("Paste into cells ({})").format(len(texts)), texts)


@contextmanager
def _waiting() -> Iterator[None]:
    """The cursor says that something is on its way."""
    QApplication.setOverrideCursor(Qt.CursorShape.WaitCursor)
    try:
        yield
    finally:
        QApplication.restoreOverrideCursor()
