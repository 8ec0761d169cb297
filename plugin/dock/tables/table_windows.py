"""The windows of the plan's tables: one each, opened when asked for, gone with the plan."""

from __future__ import annotations

from collections.abc import Callable

from qgis.core import QgsVectorLayer
from qgis.PyQt.QtCore import QObject, pyqtSignal
from qgis.PyQt.QtWidgets import QWidget

from ...core.errors import SwimPlanError
from ...plan_package.schema import LAYER_BY_NAME
from ...plan_package.store import open_layer
from ...plan_package.words import schema_words
from ...words import tr
from ..session import Session
from .problems import NAMED_ELSEWHERE
from .table_window import TableWindow

# The algorithm that reads printed tables into a table of the plan.
READERS = {
    **dict.fromkeys(("tides", "tide_ports", "tide_series", "tide_constants"), "tideleg:readtides"),
    **dict.fromkeys(
        ("stream_rates", "stream_events", "stream_series", "stream_constants", "drifts", "winds", "tide_coefficients"),
        "tideleg:readstreams",
    ),
}


class TableWindows(QObject):
    """``told``: words on edits that a closed window left in QGIS, or why a table cannot be opened."""

    told = pyqtSignal(str)

    def __init__(self, session: Session, show_help: Callable[[str], None] | None, parent: QWidget) -> None:
        super().__init__(parent)
        self.open_ones: dict[str, TableWindow] = {}
        self._session, self._show_help, self._parent = session, show_help, parent
        self._path = session.path
        session.plan_changed.connect(self._plan_changed)
        session.choices_changed.connect(self._show_zone)

    def open(self, name: str) -> TableWindow | None:
        """The window of a table, in front; None, with words, where the plan does not give the table."""
        if name not in self.open_ones:
            try:
                window = self._made(name)
            except SwimPlanError as error:
                self.told.emit(str(error))
                return None
            self.open_ones[name] = window
            window.closed.connect(lambda words: self._closed(name, words))
        window = self.open_ones[name]
        window.show()
        window.raise_()
        window.activateWindow()
        return window

    def close_all(self) -> None:
        """Close all windows without asking; edits stay in their layers."""
        for window in list(self.open_ones.values()):
            window.release()

    def unsaved(self) -> list[str]:
        """Titles of the plan's tables whose edits are not saved."""
        layers = self._session.layers
        found = ((name, layers.layer(name)) for name in LAYER_BY_NAME) if layers is not None else ()
        return [
            schema_words(LAYER_BY_NAME[name].title) for name, layer in found if layer is not None and layer.isModified()
        ]

    def _made(self, name: str) -> TableWindow:
        layer = self._session.layers.layer(name) or self._added(name)
        reader = READERS.get(name)
        window = TableWindow(
            layer,
            LAYER_BY_NAME[name],
            self._session.zone_name,
            names=lambda: self._names(name),
            read_text=(lambda: self._read(reader)) if reader else None,
            show_help=self._show_help,
            parent=self._parent,
        )
        if window.rows.missing_fields:
            window.say(
                tr("The plan is of an older version and lacks: {}").format(", ".join(window.rows.missing_fields))
            )
        return window

    def _added(self, name: str) -> QgsVectorLayer:
        """A table that the user took out of the project comes back into the plan's group, from the file."""
        layer = open_layer(self._session.path, name)
        layer.setName(schema_words(LAYER_BY_NAME[name].title))
        group = self._session.layers.group()
        self._session.project.addMapLayer(layer, False)
        group.addLayer(layer).setExpanded(False)
        return layer

    def _names(self, table: str) -> dict[str, list[str]]:
        """What the fields of a table may refer to, as the plan's layers have it now."""
        wanted = {field: where for (of, field), where in NAMED_ELSEWHERE.items() if of == table}
        try:
            copies = self._session.layers.copies() if wanted and self._session.layers is not None else {}
        except SwimPlanError:  # the section above says what is wrong with the plan; here names are only not offered
            copies = {}
        there = {field: where for field, where in wanted.items() if where[0] in copies}
        return {field: list(dict.fromkeys(copies[name].texts(column))) for field, (name, column) in there.items()}

    def _read(self, algorithm: str) -> None:
        from qgis import processing  # slow to import, so only when asked

        processing.execAlgorithmDialog(algorithm, {"PLAN": str(self._session.path)})

    def _closed(self, name: str, words: str) -> None:
        self.open_ones.pop(name, None)
        self.told.emit(words)

    def _plan_changed(self) -> None:
        if self._session.path != self._path:
            self._path = self._session.path
            self.close_all()
            self.told.emit("")

    def _show_zone(self) -> None:
        for window in self.open_ones.values():
            window.show_zone(self._session.zone_name)
