"""Empty cells in what is pasted over rows: nothing below them moves to another row."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from grids import CONTROL, answering, paste, press, stand_on, tide_plan, values_of, window_on
from qgis.PyQt.QtCore import Qt
from tideleg.dock.tables.table_window import TableWindow
from tideleg.plan_package.store import append_rows, create_plan

HOURS = range(-6, 7)
BEFORE = [9.0] * len(HOURS)


@pytest.fixture
def rates(qgis_app, tmp_path: Path) -> Iterator[TableWindow]:
    plan = create_plan(tmp_path / "plan.gpkg", zone="UTC")
    row = {"station": "Sill", "set_deg": 70.0, "spring_kn": 9.0, "neap_kn": 9.0}
    append_rows(plan, "stream_rates", [(None, {**row, "hour": hour}) for hour in HOURS])
    with window_on(plan, "stream_rates", zone="UTC") as window:
        yield window
        window.rows.layer.rollBack()


def test_a_column_with_an_empty_cell_leaves_each_rate_at_its_hour_and_is_undone(rates: TableWindow) -> None:
    stand_on(rates, 0, "spring_kn")
    column = ["0.1", "0.2", "0.3", "", "0.5", "0.6", "0.7", "0.8", "0.9", "1.0", "1.1", "1.2", "1.3"]
    paste(rates, "\n".join(column) + "\n")
    rates.model.catch_up()
    assert values_of(rates, "spring_kn") == [float(text) if text else None for text in column]
    assert values_of(rates, "hour") == list(HOURS) and values_of(rates, "neap_kn") == BEFORE
    press(rates, Qt.Key.Key_Z, CONTROL)
    assert values_of(rates, "spring_kn") == BEFORE


@pytest.mark.parametrize("blank", ["", "\t", "  \t "])
def test_a_blank_row_within_a_block_empties_its_cells_and_moves_none(rates: TableWindow, blank: str) -> None:
    stand_on(rates, 1, "spring_kn")
    paste(rates, f"0.1\t0.2\r\n{blank}\r\n0.3\t0.4\r\n")
    rates.model.catch_up()
    assert values_of(rates, "spring_kn")[:5] == [9.0, 0.1, None, 0.3, 9.0]
    assert values_of(rates, "neap_kn")[:5] == [9.0, 0.2, None, 0.4, 9.0]


def test_an_empty_first_cell_counts_and_empty_last_ones_do_not(rates: TableWindow) -> None:
    stand_on(rates, 0, "spring_kn")
    paste(rates, "\n0.2\n\n\n")
    rates.model.catch_up()
    assert values_of(rates, "spring_kn")[:4] == [None, 0.2, 9.0, 9.0]


def test_a_blank_row_over_cells_that_must_be_filled_is_asked_about_first(qgis_app, tmp_path: Path) -> None:
    with window_on(tide_plan(tmp_path / "plan.gpkg")) as window:
        stand_on(window, 0, "height_m")
        seen = answering(lambda dialog: dialog.some.click())
        paste(window, "1.1\n\n1.3\n")
        window.model.catch_up()
        assert len(seen) == 1 and "2" in seen[0].some.text()
        assert values_of(window, "height_m") == [1.1, 0.5, 1.3, 0.5]
        window.rows.layer.rollBack()


def test_blank_lines_around_new_rows_and_headings_make_no_rows(qgis_app, tmp_path: Path) -> None:
    with window_on(tide_plan(tmp_path / "plan.gpkg")) as window:
        answering(lambda dialog: dialog.all.click())
        rows = "Port Tern\t2027-06-08 09:40\t3.5\tHW\n\nPort Tern\t2027-06-08 15:52\t0.5\tLW\n"
        paste(window, f"\n\nPort\tTime\tHeight\tKind\n\n{rows}\n")
        window.model.catch_up()
        assert values_of(window, "height_m") == [3.5, 0.5, 3.5, 0.5, 3.5, 0.5]
        window.rows.layer.rollBack()
