"""Asks before a paste that is not plain: what would be refused and why, and where the rows go."""

from __future__ import annotations

from collections.abc import Callable

from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QLabel,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ...words import tr
from ..section import label
from .paste_plan import PastePlan

SIZE = (760, 420)
MOST_SHOWN = 200
MOST_NOTES = 6


class PastePreview(QDialog):
    """``make_plan`` plans the paste, over the rows there (True) or as new ones (False); None leaves it to the paste.
    ``plan`` is the one to carry out once the dialog is accepted."""

    def __init__(
        self, make_plan: Callable[[bool | None], PastePlan], row_shown: int | None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Paste"))
        self.setObjectName("TidelegPastePreview")
        self.resize(*SIZE)
        self.plan = make_plan(None)
        self._make_plan = make_plan
        self.summary, self.notes = label(strong=True), label()
        self.where = QComboBox()
        self.where.setAccessibleName(tr("Where the rows go"))
        self.where.addItem(tr("Add them as new rows at the end"), False)
        if row_shown is not None:
            self.where.addItem(tr("Write them over what is there, from row {} on").format(row_shown), True)
        self.refused = QTableWidget(0, 2)
        self.refused.setHorizontalHeaderLabels([tr("Row of the paste"), tr("Why it is refused")])
        self.refused.setAccessibleName(tr("Rows that are refused"))
        self.refused.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.refused.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.refused.setTabKeyNavigation(False)
        self.refused.verticalHeader().hide()
        self.refused.horizontalHeader().setStretchLastSection(True)
        self.all, self.some = QPushButton(tr("Paste All")), QPushButton()
        self._lay_out()
        self.show_plan()
        self.where.activated.connect(self._plan_again)
        self.all.clicked.connect(self.accept)
        self.some.clicked.connect(self.accept)

    def _lay_out(self) -> None:
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
        buttons.addButton(self.all, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.addButton(self.some, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        for widget in (self.summary, self.notes, self.where, self.refused, buttons):
            column.addWidget(widget, 1 if widget is self.refused else 0)
        self._end = QLabel()
        column.insertWidget(4, self._end)

    def _plan_again(self, _row: int) -> None:
        self.plan = self._make_plan(self.where.currentData())
        self.show_plan()

    def show_plan(self) -> None:
        """Show what would happen, and offer what can."""
        plan = self.plan
        good, bad = plan.good, plan.bad
        self.where.setCurrentIndex(self.where.findData(any(row.fid is not None for row in plan.rows)))
        self.summary.setText(plan.refused[0] if plan.refused else _counted(len(good), len(bad)))
        notes = [*plan.refused[1:], _taken_for(plan), *plan.notes, *filter(None, [plan.belongs])]
        more = tr("And {} more.").format(len(notes) - MOST_NOTES) if len(notes) > MOST_NOTES else ""
        self.notes.setText("\n".join([*notes[:MOST_NOTES], *filter(None, [more])]))
        self.refused.setRowCount(min(len(bad), MOST_SHOWN))
        for place, row in enumerate(bad[:MOST_SHOWN]):
            for column, text in enumerate((str(row.line), " ".join(row.refusals))):
                item = QTableWidgetItem(text)
                item.setToolTip(text)
                item.setTextAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
                self.refused.setItem(place, column, item)
        self.refused.resizeColumnToContents(0)
        self.refused.setVisible(bool(bad))
        self.refused.resizeRowsToContents()
        self._end.setText(tr("Refused and not shown: {}.").format(len(bad) - MOST_SHOWN))
        self._end.setVisible(len(bad) > MOST_SHOWN)
        self.all.setEnabled(bool(good) and not bad)
        self.some.setText(tr("Paste Good Rows ({})").format(len(good)))
        self.some.setVisible(bool(good) and bool(bad))
        (self.some if bad and good else self.all).setDefault(True)


def _counted(good: int, bad: int) -> str:
    fine = tr("Rows that can be pasted: {}.").format(good)
    return f"{fine} {tr('Refused: {}.').format(bad)}" if bad else fine


def _taken_for(plan: PastePlan) -> str:
    """Which columns the pasted ones go to."""
    titles = ", ".join(column.title if column is not None else tr("(not used)") for column in plan.columns)
    how = tr("By their headings: {}") if plan.has_headings else tr("By their place: {}")
    return how.format(titles)
