"""Says which stream stations have no rates yet, and leads to the table where those are typed."""

from __future__ import annotations

from qgis.PyQt.QtCore import pyqtSignal
from qgis.PyQt.QtWidgets import QHBoxLayout, QPushButton, QWidget

from ..core.errors import SwimPlanError
from ..plan_package.schema import LAYER_BY_NAME
from ..plan_package.words import schema_words
from ..words import tr
from .section import label
from .session import Session
from .station_rates import TABLE_OF_FORM, Rateless, rateless_stations

TABLES = ("stream_stations", *dict.fromkeys(TABLE_OF_FORM.values()))


class RatesHint(QWidget):
    """Hidden while every station has rates. ``asked``: the rates of this station are to be typed."""

    asked = pyqtSignal(object)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._seen: list[object] = []  # the copies that were looked at: the same ones hold the same rows
        self.found: list[Rateless] = []
        self.words, self.fill = label(strong=True), QPushButton(tr("Fill In Rates…"))
        self.fill.setAutoDefault(False)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.words, 1)
        row.addWidget(self.fill)
        self.fill.clicked.connect(self._ask)
        self.refresh()

    def refresh(self) -> None:
        """Look at the stations again, where they or their tables have changed."""
        layers = self._session.layers
        try:
            copies = layers.copies() if layers is not None else {}
        except SwimPlanError:
            return  # planning says what is wrong with the file
        seen = [copies.get(name) for name in TABLES]
        if any(one is not other for one, other in zip(seen, self._seen)) or len(seen) != len(self._seen):
            self._seen = seen
            self.found = rateless_stations(copies)
            self._show()

    def _show(self) -> None:
        self.setVisible(bool(self.found))
        if not self.found:
            return
        first, others = self.found[0], len(self.found) - 1
        words = tr("'{}' has no rates yet: its stream is not known, and not known is not slack.").format(first.station)
        more = f" {tr('Stations like that: {}.').format(others + 1)}" if others else ""
        self.words.setText(words + more)
        table = schema_words(LAYER_BY_NAME[first.table].title)
        tip = tr("Open the table '{}' at the rows of '{}'").format(table, first.station)
        self.fill.setToolTip(tip)
        self.fill.setAccessibleDescription(tip)

    def _ask(self) -> None:
        if self.found:
            self.asked.emit(self.found[0])
