"""A list of marks with check boxes: which of them to visit."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from qgis.PyQt.QtCore import QSignalBlocker, Qt
from qgis.PyQt.QtWidgets import QListWidget, QListWidgetItem, QSizePolicy, QWidget

from ..core.chart.marks import Mark
from .plan_marks import Place, place_of

MOST_SHOWN = 6
PLACE, NAME = Qt.ItemDataRole.UserRole, Qt.ItemDataRole.UserRole + 1


class MarkTicks(QListWidget):
    """Marks in the order of their layer, each by a label of its own; ticks are kept while the layer changes."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.show_marks([], {})

    def show_marks(
        self, marks: Sequence[Mark], labels: Mapping[Place, str], ticked: Sequence[Mark] | None = None
    ) -> None:
        """Show these, and tick those given; without any, what was ticked stays so, also a mark that was moved, as long
        as no other has its name."""
        places, names = set(self.ticked()), {item.data(NAME) for item in self._items() if _is_ticked(item)}
        if ticked is not None:
            places, names = {place_of(mark) for mark in ticked}, set()
        known = {item.data(PLACE) for item in self._items()}
        counts = [mark.name for mark in marks]
        blocker = QSignalBlocker(self)
        self.clear()
        for mark in marks:
            place = place_of(mark)
            moved = place not in known and mark.name in names and counts.count(mark.name) == 1
            item = QListWidgetItem(labels[place], self)
            item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(Qt.CheckState.Checked if place in places or moved else Qt.CheckState.Unchecked)
            item.setData(PLACE, place)
            item.setData(NAME, mark.name)
        del blocker
        shown = max(1, min(MOST_SHOWN, self.count()))
        height = max(self.sizeHintForRow(0), self.fontMetrics().height())
        self.setFixedHeight(shown * height + 2 * self.frameWidth() + 2)

    def ticked(self) -> tuple[Place, ...]:
        """Where the marks are that are ticked."""
        return tuple(item.data(PLACE) for item in self._items() if _is_ticked(item))

    def _items(self) -> list[QListWidgetItem]:
        return [self.item(row) for row in range(self.count())]


def _is_ticked(item: QListWidgetItem) -> bool:
    return item.checkState() == Qt.CheckState.Checked
