"""What to mind, folded: a line a flag, the whole of the chosen one, by mouse and by keys."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from desk import click_cell, desk_with_dock, opened
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication, QLineEdit, QStyleOptionViewItem, QVBoxLayout, QWidget
from swims import DAY, invented_bay
from tideleg.dock.folding_table import FOLDED, OPEN, FoldingTable
from tideleg.dock.rows import Row

LONG = "You are in the Cut from 10:00 until 10:12, and boats pass it at 15 knots from both sides. " * 3
ROWS = [
    Row(cells=(f"Stop. Leg 1: Crossing 10:00\n{LONG}",), points=((1.0, 2.0),), severity="stop"),
    Row(cells=(f"Warning. Leg 2: Bow\n{LONG}",), severity="warn"),
    Row(cells=(f"Note. {LONG}",), severity="note"),
    Row(cells=("Note. Short.",), severity="note"),
]


@pytest.fixture()
def table(qgis_app: object) -> Iterator[FoldingTable]:
    window, made, before = QWidget(), FoldingTable(), QLineEdit()
    column = QVBoxLayout(window)
    column.addWidget(before)
    column.addWidget(made)
    window.resize(420, 600)
    made.show_rows(ROWS)
    window.show()
    window.activateWindow()
    assert QTest.qWaitForWindowActive(window)
    before.setFocus()
    yield made
    window.deleteLater()


def seen(table: FoldingTable, row: int) -> str:
    """What is drawn in a row."""
    option = QStyleOptionViewItem()
    option.initFrom(table)
    option.rect = table.visualItemRect(table.item(row, 0))
    table.itemDelegate().initStyleOption(option, table.model().index(row, 0))
    return option.text


def heights(table: FoldingTable) -> list[int]:
    QApplication.processEvents()
    return [table.rowHeight(row) for row in range(table.rowCount())]


def test_every_row_is_one_line_with_a_sign_where_there_is_more(table: FoldingTable) -> None:
    line = table.fontMetrics().lineSpacing()
    assert all(line <= height < 2 * line for height in heights(table))
    assert table.height() < len(ROWS) * 2 * line
    assert seen(table, 0) == f"{FOLDED} Stop. Leg 1: Crossing 10:00"
    assert seen(table, 2).startswith(f"{FOLDED} Note. You are") and seen(table, 3) == "Note. Short."
    assert all(not table.item(row, 0).icon().isNull() for row in range(4))


def test_the_whole_text_is_in_the_tip_and_in_the_cell(table: FoldingTable) -> None:
    assert LONG in table.item(0, 0).toolTip() and LONG in table.item(0, 0).text()


def test_a_click_chooses_the_row_and_opens_it_alone(table: FoldingTable) -> None:
    chosen: list[Row] = []
    table.row_chosen.connect(chosen.append)
    folded = heights(table)
    click_cell(table, 0)
    opened_now = heights(table)
    assert opened_now[0] > 3 * folded[0] and opened_now[1:] == folded[1:]
    assert seen(table, 0).startswith(f"{OPEN} Stop.") and "boats pass" in seen(table, 0)
    click_cell(table, 1)
    assert chosen == ROWS[:2] and table.open_row == 1
    assert heights(table)[0] == folded[0] and heights(table)[1] > folded[1]


def test_nothing_moves_while_the_button_is_down(table: FoldingTable) -> None:
    click_cell(table, 0)
    before = heights(table)
    place = table.visualItemRect(table.item(3, 0)).center()
    QTest.mousePress(table.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, place)
    assert heights(table) == before
    chosen: list[Row] = []
    table.row_chosen.connect(chosen.append)
    QTest.mouseRelease(table.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, place)
    assert chosen == [ROWS[3]] and table.open_row == 3


def test_arrow_keys_open_one_after_the_other_and_choose_nothing_until_enter(table: FoldingTable) -> None:
    chosen: list[Row] = []
    table.row_chosen.connect(chosen.append)
    table.setFocus(Qt.FocusReason.TabFocusReason)
    table.setCurrentCell(0, 0)
    assert table.open_row == 0
    QTest.keyClick(table, Qt.Key.Key_Down)
    assert table.open_row == 1 and not chosen
    QTest.keyClick(table, Qt.Key.Key_Left)
    assert table.open_row == -1 and table.currentRow() == 1
    QTest.keyClick(table, Qt.Key.Key_Right)
    assert table.open_row == 1
    QTest.keyClick(table, Qt.Key.Key_Return)
    assert chosen == [ROWS[1]]


def test_the_mouse_taking_the_focus_opens_no_row_that_was_not_clicked(table: FoldingTable) -> None:
    table.setFocus(Qt.FocusReason.MouseFocusReason)
    assert table.open_row == -1


def test_what_is_open_stays_open_only_where_it_is_still_said(table: FoldingTable) -> None:
    click_cell(table, 1)
    table.show_rows([ROWS[1], ROWS[0]])
    assert table.open_row == 0
    table.show_rows([ROWS[0], ROWS[2]])
    assert table.open_row == -1 and heights(table)[0] == heights(table)[1]


def test_a_line_that_has_room_for_all_has_no_sign(table: FoldingTable) -> None:
    table.window().resize(1600, 600)
    QApplication.processEvents()
    assert seen(table, 1) == f"{FOLDED} Warning. Leg 2: Bow"
    short = Row(cells=("Note. " + "word " * 25,), severity="note")
    table.show_rows([short])
    assert not seen(table, 0).startswith(FOLDED)
    table.window().resize(300, 600)
    QApplication.processEvents()
    assert seen(table, 0).startswith(FOLDED)


def test_the_dock_shows_a_line_a_flag_with_its_leg(qgis_app, tmp_path: Path) -> None:
    with desk_with_dock() as (_, dock):
        opened(dock, invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
        mind = dock.mind.table
        assert mind.rowCount() >= 3
        assert all(height < 2 * mind.fontMetrics().lineSpacing() for height in heights(mind))
        legs = {flag.leg for flag in dock.session.swim.flags if flag.leg is not None}
        assert legs and all(any(f"Leg {leg}" in row.cells[0].split("\n")[0] for row in mind.rows) for leg in legs)
