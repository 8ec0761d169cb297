"""Stream stations and eddies drawn on the real canvas: through edit buffers, with undo, never saved by us."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest
from desk import desk_with_dock, layer_of, opened
from map_hand import RIGHT, Hand
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtTest import QTest
from swims import DAY, LEDGE, SLIP, invented_bay, moved
from tideleg.plan_package.store import create_plan

CORNERS = (moved(300.0, 300.0), moved(700.0, 300.0), moved(500.0, 600.0))


@pytest.fixture()
def hand(qgis_app: object, tmp_path: Path) -> Iterator[Hand]:
    with desk_with_dock() as (desk, dock):
        opened(dock, invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
        made = Hand(desk, dock)
        made.show()
        yield made


def names(hand: Hand, layer: str) -> list[str]:
    return [row["station"] for row in layer_of(hand.dock, layer).getFeatures()]


def stored(hand: Hand, layer: str) -> int:
    """How many rows the file holds, asked of SQLite and not of QGIS."""
    with closing(sqlite3.connect(f"{hand.dock.session.path.as_uri()}?mode=ro", uri=True)) as file:
        return file.execute(f'SELECT count(*) FROM "{layer}"').fetchone()[0]


def test_a_station_is_placed_in_one_step_of_undo_and_is_said_to_have_no_stream_yet(hand: Hand) -> None:
    before, saved = names(hand, "stream_stations"), stored(hand, "stream_stations")
    hand.take("place_station")
    assert any(line.startswith("From Kettle Slip: ") for line in hand.move(LEDGE))
    hand.click(LEDGE)
    hand.fill(station="Off the ledge", form="hourly", reference="HW", source="watched")
    assert sorted(names(hand, "stream_stations")) == sorted([*before, "Off the ledge"])
    assert "no stream yet, and that is not slack water" in hand.section.done.text()
    layer = layer_of(hand.dock, "stream_stations")
    assert layer.undoStack().count() == 1 and stored(hand, "stream_stations") == saved
    layer.undoStack().undo()
    assert names(hand, "stream_stations") == before
    layer.rollBack()


def test_a_station_without_its_table_is_never_taken_for_slack_water(hand: Hand) -> None:
    hand.take("place_station")
    hand.click(LEDGE)
    hand.fill(station="Off the ledge", form="constant")
    hand.settled()
    assert hand.dock.session.swim is None
    assert "'Stream stations'" in hand.dock.session.problem and "stream_rates" in hand.dock.session.problem
    layer_of(hand.dock, "stream_stations").rollBack()


def test_a_station_of_a_name_that_is_there_is_refused_in_the_form(hand: Hand) -> None:
    taken = names(hand, "stream_stations")[0]
    hand.take("place_station")
    hand.click(LEDGE)
    hand.fill(station=taken)
    assert "is there already" in hand.form().problem.text()
    hand.form().reject()
    assert len(names(hand, "stream_stations")) == len(set(names(hand, "stream_stations")))


def test_a_station_goes_where_its_position_is_typed(hand: Hand) -> None:
    hand.take("place_station")
    hand.section.position.setText("44 00.000 N 017 33.600 W")
    QTest.keyClick(hand.section.position, Qt.Key.Key_Return)
    hand.fill(station="Typed")
    row = next(row for row in layer_of(hand.dock, "stream_stations").getFeatures() if row["station"] == "Typed")
    assert (row.geometry().asPoint().x(), row.geometry().asPoint().y()) == pytest.approx(SLIP, abs=1e-9)
    layer_of(hand.dock, "stream_stations").rollBack()


def test_an_eddy_is_drawn_for_a_station_that_is_there(hand: Hand) -> None:
    known = names(hand, "stream_stations")
    hand.take("eddy_area")
    for corner in CORNERS:
        hand.click(corner)
    hand.click(CORNERS[-1], RIGHT)
    assert hand.form().wrappers["station"].value() == sorted(known)[0]
    hand.fill(station="nobody knows it")
    assert known[0] in hand.form().problem.text()
    hand.fill(station=known[0], phase="ebb")
    row = next(iter(layer_of(hand.dock, "stream_areas").getFeatures()))
    assert (row["station"], row["phase"]) == (known[0], "ebb")
    assert stored(hand, "stream_areas") == 0
    layer_of(hand.dock, "stream_areas").rollBack()


def test_an_eddy_without_any_station_says_what_to_do_first(qgis_app: object, tmp_path: Path) -> None:
    with desk_with_dock() as (desk, dock):
        opened(dock, create_plan(tmp_path / "empty.gpkg"))
        hand = Hand(desk, dock)
        hand.show()
        hand.take("eddy_area")
        for corner in CORNERS:
            hand.click(corner)
        hand.click(CORNERS[-1], RIGHT)
        assert "no stream station" in hand.section.problem.text() and "Place one first" in hand.section.problem.text()
