"""The plan's file while the dock works on it: written to, replaced or held by another program, rows of odd kinds."""

from __future__ import annotations

import os
import shutil
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from desk import desk_with_dock, layer_of, leave, opened, settle
from osgeo import ogr
from swims import DEPART, LAT, LON, edited, invented_bay, moved, swim
from tideleg.plan_package import database
from tideleg.plan_package.settings import write_settings

CLOCK = "2027-06-05 10:00"
HOLD = """import sqlite3, sys, time
held = sqlite3.connect(sys.argv[1]); held.execute('BEGIN EXCLUSIVE'); print('held', flush=True); time.sleep(60)"""


@pytest.fixture
def bay(qgis_app, tmp_path: Path) -> Path:
    return invented_bay(tmp_path / "bay.gpkg")


@contextmanager
def held(plan: Path) -> Iterator[None]:
    """Another program is in the middle of writing."""
    other = subprocess.Popen([sys.executable, "-c", HOLD, str(plan)], stdout=subprocess.PIPE, text=True)
    try:
        assert other.stdout.readline().strip() == "held"
        yield
    finally:
        other.kill()
        other.wait()
        other.stdout.close()


def lose_journal(plan: Path) -> None:
    """The journal goes from under those who read the file by it, as when the last reader of a file before closes it."""
    for one in plan.parent.glob(f"{plan.name}-*"):
        one.unlink()


def put(plan: Path, layer: str, wkt: str, **values: object) -> None:
    """Store a row as another program may: its kind is not looked at."""
    source = ogr.Open(str(plan), 1)
    rows = source.GetLayerByName(layer)
    row = ogr.Feature(rows.GetLayerDefn())
    row.SetGeometry(ogr.CreateGeometryFromWkt(wkt))
    for name, value in values.items():
        row[name] = value
    assert rows.CreateFeature(row) == 0
    del rows, source


EAST, WEST, NORTH, SOUTH = *(moved(east, 0.0)[0] for east in (700.0, 600.0)), LAT + 0.01, LAT - 0.01
RING = f"({WEST} {SOUTH},{EAST} {SOUTH},{EAST} {NORTH},{WEST} {NORTH},{WEST} {SOUTH})"
KINDS = {
    "point": f"POINT ({WEST} {LAT})",
    "triangle": f"TRIANGLE (({WEST} {SOUTH},{EAST} {SOUTH},{EAST} {NORTH},{WEST} {SOUTH}))",
    "collection": f"GEOMETRYCOLLECTION (POLYGON ({RING}))",
    "mixed": f"GEOMETRYCOLLECTION (POLYGON ({RING}),POINT ({LON} {LAT}))",
    "curve": f"CIRCULARSTRING ({WEST} {SOUTH},{EAST} {LAT},{WEST} {NORTH})",
    "curved area": f"CURVEPOLYGON ({RING})",
}


def told(flags: object, warnings: object, refusal: str) -> tuple[bool, int, bool]:
    """Whether the odd row is flagged, how many rows are said to be skipped, and whether the plan is refused."""
    return ("Odd" in str(flags), sum("skipped" in one for one in warnings), bool(refusal))


@pytest.mark.parametrize("layer", ["channels", "closed_areas", "land"])
@pytest.mark.parametrize("kind", KINDS)
def test_a_row_of_another_kind_gives_the_same_answer_in_the_dock_and_in_planswim(
    bay: Path, tmp_path: Path, layer: str, kind: str
) -> None:
    about = {"channels": {"kind": "fairway", "width_m": 50.0}, "closed_areas": {"rule": "no_entry"}, "land": {}}
    put(bay, layer, KINDS[kind], name="Odd", **about[layer])
    ran = swim(bay, tmp_path, DEPART=DEPART, ROUTE="Ledge")
    flags = [flag["message"] for flag in ran.report["flags"]] if ran.ok else ()
    with desk_with_dock() as (_, dock):
        opened(dock, bay, route="Ledge", depart=CLOCK)
        session = dock.session
        shown = [flag.message for flag in session.swim.flags] if session.swim else ()
        skipped = session.swim.warnings if session.swim else ()
        assert told(shown, skipped, session.problem) == told(flags, ran.warnings, ran.said)
        assert "row 2" in session.problem or session.swim is not None


def test_a_fairway_stored_as_a_triangle_is_not_lost_in_the_dock(bay: Path) -> None:
    put(bay, "channels", KINDS["triangle"], name="Odd", kind="fairway")
    with desk_with_dock() as (_, dock):
        opened(dock, bay, route="Ledge", depart=CLOCK)
        said = str(dock.session.swim and dock.session.swim.flags) + dock.session.problem
        assert "Odd" in said or "row 2" in said
        layer = layer_of(dock, "channels")  # the lines: a filter there hides its own rows and makes none a stray
        assert layer.setSubsetString("name = 'nobody'")
        settle(dock.session)
        said = str(dock.session.swim and dock.session.swim.flags) + dock.session.problem
        assert "Cut" not in said and ("Odd" in said or "row 2" in said)


def test_a_clock_changed_in_the_file_is_the_only_one_in_the_window(bay: Path) -> None:
    with desk_with_dock() as (_, dock):
        opened(dock, bay, route="Ledge", depart=CLOCK)
        moment = dock.session.depart
        write_settings(bay, {"zone": "Pacific/Auckland", "title": "Another title"})
        dock.session.choose_pace(0.7)
        settle(dock.session)
        session = dock.session
        assert session.zone_name == "Pacific/Auckland" and session.depart == moment
        assert session.swim.legs[0].depart.strftime("%H:%M") == session.depart.strftime("%H:%M") == "21:00"
        assert dock.swim.depart.dateTime().toString("HH:mm") == "21:00"
        assert dock.plan.name.text() == "Another title"
        for words in (dock.plan.problem.text(), " ".join(session.notes)):
            assert "Europe/Lisbon before, Pacific/Auckland now" in words
        assert not dock.plan.problem.isHidden()


def test_a_file_that_takes_the_plans_name_is_read_whole_and_said(bay: Path, tmp_path: Path) -> None:
    other = Path(shutil.copy(bay, tmp_path / "other.gpkg"))
    edited(other, "swimmers", {"pace_m_s": 0.9})
    edited(other, "marks", {"name": "Ledge Two"}, "kind = 'mark'")
    with sqlite3.connect(other) as connection:
        connection.execute("PRAGMA journal_mode = DELETE")
    connection.close()
    with desk_with_dock() as (_, dock):
        opened(dock, bay, route="Ledge", depart=CLOCK)
        before = dock.session.swim.legs[0].minutes
        os.replace(other, bay)
        leave(dock, "2027-06-05 10:30")
        settle(dock.session)
        ran = swim(bay, tmp_path, DEPART="2027-06-05T10:30", ROUTE="Ledge")
        legs = dock.session.swim.legs
        assert [leg.minutes for leg in legs] == pytest.approx([leg["minutes"] for leg in ran.report["legs"]], abs=0.01)
        assert legs[0].minutes < before and dock.session.request.stops[1].name == "Ledge Two"
        assert [row["pace_m_s"] for row in layer_of(dock, "swimmers").getFeatures()] == [0.9]
        assert "Another file has taken the plan's place" in dock.plan.problem.text()


@pytest.mark.parametrize("journal", ["stays", "goes with the file", "goes later"])
def test_edits_of_the_file_before_are_kept_and_nothing_is_planned_from_two_files(
    bay: Path, tmp_path: Path, journal: str
) -> None:
    other = Path(shutil.copy(bay, tmp_path / "other.gpkg"))
    with desk_with_dock() as (_, dock):
        opened(dock, bay, route="Ledge", depart=CLOCK)
        layer = layer_of(dock, "swimmers")
        assert layer.startEditing()
        row = next(layer.getFeatures())
        assert layer.changeAttributeValue(row.id(), layer.fields().indexOf("pace_m_s"), 0.7)
        settle(dock.session)
        os.replace(other, bay)
        if journal == "goes with the file":
            lose_journal(bay)
        leave(dock, "2027-06-05 10:30")
        settle(dock.session)
        assert dock.session.swim is None and "edits are not saved: Swimmers" in dock.session.problem
        assert layer.isModified() and next(layer.getFeatures())["pace_m_s"] == 0.7
        if journal == "goes later":
            lose_journal(bay)
        assert layer.rollBack()
        settle(dock.session)
        assert dock.session.swim is not None and not dock.session.problem


def test_a_plan_that_another_program_writes_to_is_refused_soon_with_the_remedy(
    bay: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    waits_s, connect = [], sqlite3.connect

    def watched(*address: object, timeout: float = 5.0, **more: object) -> sqlite3.Connection:
        waits_s.append(timeout)
        return connect(*address, timeout=timeout, **more)

    with desk_with_dock() as (_, dock), held(bay):
        monkeypatch.setattr(database.sqlite3, "connect", watched)
        assert not dock.session.open_plan(bay)
        assert waits_s and max(waits_s) < 1.0  # while it waits the window stands still
        assert "Another program is writing to it. Close it there, then try again." in dock.plan.problem.text()


def test_a_plan_that_is_held_while_open_is_swum_again_once_it_is_free(bay: Path) -> None:
    with desk_with_dock() as (_, dock):
        opened(dock, bay, route="Ledge", depart=CLOCK)
        with sqlite3.connect(bay) as connection:
            connection.execute("UPDATE swimmers SET pace_m_s = 0.61")
        connection.close()
        with held(bay):
            leave(dock, "2027-06-05 10:30")
            settle(dock.session)
            assert dock.session.swim is None and "Another program is writing to it" in dock.session.problem
        leave(dock, "2027-06-05 10:40")
        settle(dock.session)
        assert dock.session.swim is not None
