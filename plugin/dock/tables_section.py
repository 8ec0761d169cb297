"""The dock's section on the plan's tables: a button a kind, each opens a window to edit them in."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from qgis.PyQt.QtCore import QTimer
from qgis.PyQt.QtWidgets import QGridLayout, QMenu, QPushButton, QWidget

from ..plan_package.schema import LAYER_BY_NAME
from ..plan_package.words import schema_words
from ..words import tr
from .section import Section, label
from .session import Session
from .station_rates import Rateless, first_rows
from .tables.table_windows import TableWindows

TIDES = ("tides", "tide_ports", "tide_series", "tide_constants", "tide_coefficients")
STREAMS = ("stream_stations", "stream_rates", "stream_events", "stream_series", "stream_constants", "stream_models")
MORE = ("marks", "landmarks", "transits", "winds", "drifts", "catches", "settings")
COLUMNS = 3


class TablesSection(Section):
    """A button with one table opens it; one with several shows their names first."""

    page = "tables.md#tables"

    def __init__(self, session: Session, show_help: Callable[[str], None], parent: QWidget | None = None) -> None:
        super().__init__("Tables", tr("Tables"), parent)
        self._session = session
        self.windows = TableWindows(session, show_help, self)
        self.buttons: dict[str, QPushButton] = {}
        self.unsaved, self.words = label(), label()
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.timeout.connect(self._show_unsaved)
        grid = QGridLayout()
        kinds = (
            ("tides", tr("Tides"), TIDES, tr("High and low waters, ports, heights, constants, coefficients")),
            ("streams", tr("Streams"), STREAMS, tr("Stations and their rates, events, series, constants, models")),
            ("swimmers", tr("Swimmers…"), ("swimmers",), tr("Who swims: pace, limits, gear")),
            ("ferries", tr("Ferries…"), ("ferries",), tr("When ferries pass in the channels")),
            ("more", tr("More"), MORE, tr("Marks, landmarks, transits, winds, timed drifts, catches, settings")),
        )
        for number, (name, title, tables, tip) in enumerate(kinds):
            self.buttons[name] = self._button(title, tables, tip)
            grid.addWidget(self.buttons[name], *divmod(number, COLUMNS))
        self.inside.addLayout(grid)
        self.inside.addWidget(self.unsaved)
        self.inside.addWidget(self.words)
        self.windows.told.connect(self._say)
        session.plan_changed.connect(self.refresh)
        session.asked_changed.connect(lambda _name: self._soon.start(0))
        session.swim_changed.connect(lambda: self._soon.start(0))
        self._say("")
        self.refresh()

    def _button(self, title: str, tables: tuple[str, ...], tip: str) -> QPushButton:
        button = QPushButton(title)
        button.setToolTip(tip)
        button.setAccessibleDescription(tip)
        button.setAutoDefault(False)
        if len(tables) == 1:
            button.clicked.connect(lambda: self.windows.open(tables[0]))
            return button
        menu = QMenu(button)
        for table in tables:
            action = menu.addAction(tr("{}…").format(schema_words(LAYER_BY_NAME[table].title)))
            action.setToolTip(schema_words(LAYER_BY_NAME[table].help))
            action.setObjectName(table)
            action.triggered.connect(partial(self._open, table))
        menu.setToolTipsVisible(True)
        button.setMenu(menu)
        return button

    def _open(self, table: str, _checked: bool = False) -> None:
        self.windows.open(table)

    def fill_in(self, one: Rateless) -> None:
        """Open the table that a station's rates belong to, at its rows."""
        window = self.windows.open(one.table)
        if window is not None:
            window.begin_rows("station", one.station, first_rows(one))

    def refresh(self) -> None:
        """Show what can be opened, or what to do first."""
        there = self._session.path is not None
        self.setEnabled(there)
        self.show_hint("" if there else tr("Open a plan first."))
        self._show_unsaved()

    def _show_unsaved(self) -> None:
        names = self.windows.unsaved()
        self.unsaved.setText(tr("Not saved yet: {}.").format(", ".join(names)))
        self.unsaved.setVisible(bool(names))

    def _say(self, words: str) -> None:
        self.words.setText(words)
        self.words.setVisible(bool(words))
