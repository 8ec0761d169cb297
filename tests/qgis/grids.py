"""A plan's table in its window, driven by clicks and keys as its user does."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime, timedelta, timezone
from pathlib import Path

from desk import flush_deletions, wait_for
from qgis.core import QgsProject
from qgis.PyQt.QtCore import Qt, QTimer
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication, QDialog, QLineEdit, QMessageBox
from tideleg.dock.tables.table_window import TableWindow
from tideleg.plan_package.schema import LAYER_BY_NAME
from tideleg.plan_package.store import append_rows, create_plan, open_layer

UTC = timezone.utc
ZONE = "Europe/Lisbon"
FIRST_HW = datetime(2027, 6, 5, 9, 40, tzinfo=UTC)
waiting: list[QTimer] = []
CONTROL = Qt.KeyboardModifier.ControlModifier


def tide_plan(path: Path, waters: int = 4, port: str = "Port Tern") -> Path:
    """A plan with so many invented waters, high and low in turn, six hours and twelve minutes apart."""
    plan = create_plan(path, zone=ZONE, title="Invented tables")
    append_rows(plan, "tides", [(None, water(number, port)) for number in range(waters)])
    return plan


def water(number: int, port: str = "Port Tern") -> dict[str, object]:
    high = number % 2 == 0
    moment = FIRST_HW + number * timedelta(hours=6, minutes=12)
    return {"port": port, "time": moment, "height_m": 3.5 if high else 0.5, "kind": "HW" if high else "LW"}


@contextmanager
def window_on(
    plan: Path, table: str = "tides", *, zone: str = ZONE, names: Callable[[], dict] = dict
) -> Iterator[TableWindow]:
    """The window of one table; afterwards it is gone and the project empty."""
    QgsProject.instance().clear()
    layer = open_layer(plan, table)
    QgsProject.instance().addMapLayer(layer)
    window = TableWindow(layer, LAYER_BY_NAME[table], zone, names=names)
    window.show()
    window.activateWindow()
    try:
        yield window
    finally:
        for timer in waiting:  # one that met no dialog must not answer the next test's
            timer.stop()
        waiting.clear()
        window.release()
        QgsProject.instance().clear()
        flush_deletions()


def shown_rows(window: TableWindow) -> list[list[str]]:
    model = window.model
    return [
        [model.index(row, column).data() for column in range(model.columnCount())] for row in range(model.rowCount())
    ]


def stand_on(window: TableWindow, row: int, field: str) -> None:
    """Click the cell."""
    column = [one.field.name for one in window.model.columns].index(field)
    index = window.model.index(row, column)
    window.view.scrollTo(index)
    place = window.view.visualRect(index).center()
    QTest.mouseClick(window.view.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, place)
    assert window.view.currentIndex() == index


def editor_of(window: TableWindow) -> QLineEdit:
    found = [one for one in window.view.viewport().findChildren(QLineEdit) if one.isVisible()]
    assert len(found) == 1, "no cell is being edited"
    return found[0]


def retype(window: TableWindow, row: int, field: str, text: str, end: Qt.Key = Qt.Key.Key_Return) -> None:
    """Open the cell with F2, type over what is there, and end with a key."""
    stand_on(window, row, field)
    press(window, Qt.Key.Key_F2)
    line = editor_of(window)
    line.selectAll()
    QTest.keyClicks(line, text) if text else QTest.keyClick(line, Qt.Key.Key_Delete)
    QTest.keyClick(line, end)
    QApplication.processEvents()


def press(window: TableWindow, key: Qt.Key, modifier: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    QTest.keyClick(window.view, key, modifier)


def paste(window: TableWindow, text: str) -> None:
    QApplication.clipboard().setText(text)
    press(window, Qt.Key.Key_V, CONTROL)


def answering(answer: Callable[[QDialog], None]) -> list[QDialog]:
    """Answer the next dialog that opens; the list tells afterwards which it was."""
    seen: list[QDialog] = []

    def look() -> None:
        dialog = QApplication.activeModalWidget()
        if isinstance(dialog, (QDialog, QMessageBox)):
            timer.stop()
            seen.append(dialog)
            answer(dialog)

    timer = QTimer()
    timer.timeout.connect(look)
    timer.start(20)
    waiting.append(timer)
    return seen


def checked(window: TableWindow) -> None:
    """Wait until the rows were looked at beside each other."""
    window.model.catch_up()
    wait_for(lambda: not window.model._check.isActive(), "the check of the rows")


def values_of(window: TableWindow, field: str) -> list[object]:
    """What the layer itself holds, in stored order."""
    return [values[field] for values in window.rows.read().values()]
