"""A table of ten thousand rows in its window: opening it, one cell, a paste of a thousand rows, undo, copying all."""

from __future__ import annotations

import tempfile
import time
from collections.abc import Callable
from datetime import timedelta
from pathlib import Path

import grids
from qgis.core import QgsProject
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import QApplication
from tideleg.dock.tables.cell_text import shown

ROWS, PASTED = 10_000, 1000


def report() -> None:
    """Print the row of the speed table; seconds, as this machine is loaded now."""
    with tempfile.TemporaryDirectory() as name:
        plan = grids.tide_plan(Path(name) / "plan.gpkg", ROWS)
        begun = time.perf_counter()
        with grids.window_on(plan) as window:
            QApplication.processEvents()
            told = [f"open {time.perf_counter() - begun:.2f}"]

            def timed(what: str, do: Callable[[], object]) -> None:
                begun = time.perf_counter()
                do()
                grids.checked(window)
                QApplication.processEvents()
                told.append(f"{what} {time.perf_counter() - begun:.2f}")

            timed("type one cell", lambda: grids.retype(window, ROWS // 2, "height_m", "3.6"))
            timed("sort", lambda: window.view.sort_by(2))
            window.view.setCurrentIndex(window.model.index(-1, -1))
            text = "\n".join(_line(window.model.columns, number) for number in range(ROWS, ROWS + PASTED))
            timed(f"paste {PASTED} rows", lambda: grids.paste(window, text))
            timed("undo that", lambda: grids.press(window, Qt.Key.Key_Z, grids.CONTROL))
            timed("copy all", lambda: grids.press(window, Qt.Key.Key_C, grids.CONTROL))
            window.rows.layer.rollBack()
        QgsProject.instance().clear()
    print(f"tables, {ROWS} rows: s, checks of rows beside each other included: {', '.join(told)}")


def _line(columns: tuple, number: int) -> str:
    values = {**grids.water(number, "Port Auk")}
    values["time"] += timedelta(minutes=1)
    return "\t".join(shown(column, values[column.field.name], in_words=False) for column in columns)
