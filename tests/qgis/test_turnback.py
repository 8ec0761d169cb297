"""tideleg:turnback and what it puts into planswim's report and card: on real plan files, through QGIS's own doors."""

from __future__ import annotations

import json
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from qgis.core import QgsVectorLayer
from swims import (
    DAY,
    LAT,
    LON,
    Heard,
    add_constant_stream,
    add_route,
    add_sine_stream,
    add_swimmer,
    clock,
    digest,
    left_in,
    moved,
    new_plan,
    offset,
    point,
    run,
    swum,
    utc,
)
from tideleg.plan_package.settings import write_settings
from tideleg.plan_package.store import append_rows
from tideleg.processing.turnback import TurnBackTimes

HOME = (LON, LAT)
NO_RESERVE = {"reserve_factor": 1, "reserve_min": 0, "alarm_after_min": 720, "ashore_before_sunset_min": -60}


@pytest.fixture
def plan(qgis_app: object, tmp_path: Path) -> Path:
    return new_plan(tmp_path / "turn.gpkg")


def turned(plan: Path, folder: Path, **parameters: object):
    asked = {"PLAN": str(plan), "REPORT": str(folder / "turn.json"), **parameters}
    return run(TurnBackTimes().create(), asked)


def add_story_9(plan: Path) -> None:
    """1 km home, adverse from 12:00, peak 0.5 m/s, home by 13:15; swum out before."""
    mark = offset(0.0, 1000.0)
    add_route(plan, "Out and home", HOME, mark, HOME)
    append_rows(plan, "marks", [(point(HOME), {"name": "Slip", "kind": "entry"})])
    append_rows(plan, "marks", [(point(mark), {"name": "Ledge", "kind": "mark", "stay_min": 10.0})])
    for name, pace in (("Runa", 0.75), ("Bo", 0.55)):
        add_swimmer(plan, pace, name, max_hours=12.0, min_ground_speed_m_s=0.01)
    # Flood before noon sets south, ebb after it north: against the way home.
    add_sine_stream(plan, utc("12:00"), 0.5, flood_set_deg=180.0)
    write_settings(plan, {**NO_RESERVE, "back_by": "13:15"})


def test_story_9_alone_and_together(plan: Path, tmp_path: Path) -> None:
    """Story 9, common practice, no source: latest 12:42 alone, 12:26 together."""
    add_story_9(plan)
    ran = turned(plan, tmp_path, DEPART=f"{DAY}T11:00", SWIMMER="Runa; Bo")
    assert ran.ok, ran.said
    (stop,) = ran.report["stops"]
    assert (stop["name"], clock(stop["latest_leave"])) == ("Ledge", "12:26")
    alone = {name: clock(stops[0]["latest_leave"]) for name, stops in ran.report["alone"].items()}
    assert alone == {"Runa": "12:42", "Bo": "12:26"}
    assert stop["bands"][0]["ends_by"] == "back by 13:15"


def test_report_and_stops_of_planswim_carry_the_turn_back(plan: Path, tmp_path: Path) -> None:
    add_story_9(plan)
    report = swum(plan, tmp_path, DEPART=f"{DAY}T11:00", SWIMMER="Runa", STOPS=str(tmp_path / "stops.gpkg"))
    entry, mark, end = report["stops"]
    assert clock(mark["latest_leave"]) == "12:42"
    assert mark["latest_leave_pessimistic"] < mark["latest_leave"]
    assert mark["exit"] == "Slip"
    for stop in (entry, end):
        assert stop["latest_leave"] is stop["latest_leave_pessimistic"] is stop["exit"] is None
    rows = {row["number"]: row for row in QgsVectorLayer(str(tmp_path / "stops.gpkg"), "stops", "ogr").getFeatures()}
    assert rows[1]["exit"] == "Slip"
    assert rows[1]["latest_leave_local"] == mark["latest_leave"]


def test_story_7_other_exit_is_chosen_by_time(plan: Path, tmp_path: Path) -> None:
    """Story 7, common practice, no source: A up-stream 900 m, B down-stream 2.1 km, v 0.65, c 0.35: A 50 min, B 35."""
    mark, other = moved(900.0, 0.0), moved(3000.0, 0.0)
    add_route(plan, "Out", HOME, mark, HOME)
    append_rows(plan, "marks", [(point(HOME), {"name": "A", "kind": "exit"})])
    append_rows(plan, "marks", [(point(other), {"name": "B", "kind": "exit"})])
    add_swimmer(plan, 0.65, max_hours=12.0)
    add_constant_stream(plan, 0.35, 90.0)
    write_settings(plan, NO_RESERVE)
    files = {name: str(tmp_path / f"{name}.gpkg") for name in ("WAYS", "BANDS", "NO_RETURN")}
    ran = turned(plan, tmp_path, DEPART=f"{DAY}T10:00", **files)
    assert ran.ok, ran.said
    (stop,) = ran.report["stops"]
    assert (stop["exit"], stop["planned_exit"], stop["else_exit"]) == ("B", "A", "B")
    ways = list(QgsVectorLayer(files["WAYS"], "ways", "ogr").getFeatures())
    late = [row for row in ways if row["table"] == "if late"]
    planned = [row for row in ways if row["table"] == "by departure"]
    assert {row["exit"] for row in late} == {"B"} and {row["exit"] for row in planned} == {"A"}
    assert round(late[0]["minutes"]) == 35 and round(planned[0]["minutes"]) == 50
    # East and west, variation 4 W: 90 T is 094 M, 95 to the nearest 5.
    assert (late[0]["headings"], planned[0]["headings"]) == ("095M", "275M")
    bands = list(QgsVectorLayer(files["BANDS"], "bands", "ogr").getFeatures())
    assert {row["day"] for row in bands} == {"expected", "bad day"}
    assert not ran.report["alone"]


def test_point_of_no_return_is_a_point_on_the_leg(plan: Path, tmp_path: Path) -> None:
    add_route(plan, "Out", HOME, offset(0.0, 3000.0), HOME)
    add_swimmer(plan, 0.7, max_hours=1.5, range_m=9000.0)
    add_constant_stream(plan, 0.3, 0.0)
    write_settings(plan, {"reserve_factor": 1.2, "reserve_min": 10, "alarm_after_min": 720})
    sink = str(tmp_path / "points.gpkg")
    ran = turned(plan, tmp_path, DEPART=f"{DAY}T10:00", NO_RETURN=sink)
    assert ran.ok, ran.said
    rows = {row["day"]: row for row in QgsVectorLayer(sink, "points", "ogr").getFeatures()}
    assert rows["bad day"]["way_m"] < rows["expected"]["way_m"] < 3000.0
    place = rows["expected"].geometry().asPoint()
    assert LAT < place.y() < LAT + 3000.0 / 111_000.0
    assert ran.report["stops"][0]["latest_leave"] is None
    assert any("no exit is reached" in words for words in ran.warnings)


def test_unknown_stream_leaves_everything_empty_and_says_so(plan: Path, tmp_path: Path) -> None:
    add_route(plan, "Out", HOME, offset(0.0, 800.0), HOME)
    add_swimmer(plan, 0.7)
    ran = turned(plan, tmp_path, DEPART=f"{DAY}T10:00")
    assert ran.ok, ran.said
    assert ran.report["stops"] == [] and ran.report["no_return"] == []
    assert [stop["name"] for stop in ran.report["hard_stops"]] == ["dusk", "hours"]


@pytest.mark.parametrize(
    ("parameters", "words"),
    [
        ({"DEPART": "tomorrow"}, "'tomorrow'"),
        ({"SWIMMER": "Runa; Nobody"}, "'Nobody'"),
        ({"ROUTE": "Nowhere"}, "'Nowhere'"),
    ],
)
def test_what_cannot_be_meant_is_refused_by_name(plan: Path, tmp_path: Path, parameters, words: str) -> None:
    add_story_9(plan)
    ran = turned(plan, tmp_path, **{"DEPART": f"{DAY}T11:00", **parameters})
    assert not ran.ok
    assert words in ran.said


def test_stopping_leaves_nothing_and_the_plan_as_it_was(plan: Path, tmp_path: Path) -> None:
    add_story_9(plan)
    before, folder = digest(plan), tmp_path / "out"
    folder.mkdir()
    heard = Heard()
    heard.cancel()
    asked = {"PLAN": str(plan), "DEPART": f"{DAY}T11:00", "REPORT": str(folder / "turn.json")}
    ran = run(TurnBackTimes().create(), {**asked, "WAYS": str(folder / "ways.gpkg")}, heard)
    assert not ran.ok
    assert left_in(folder) == []
    assert digest(plan) == before


def test_output_over_the_plan_is_refused(plan: Path, tmp_path: Path) -> None:
    add_story_9(plan)
    before = digest(plan)
    ran = turned(plan, tmp_path, DEPART=f"{DAY}T11:00", REPORT=str(plan))
    assert not ran.ok and "this run reads from" in ran.said
    assert digest(plan) == before


def test_times_of_the_report_carry_offsets_and_rise(plan: Path, tmp_path: Path) -> None:
    add_story_9(plan)
    ran = turned(plan, tmp_path, DEPART=f"{DAY}T11:00", SWIMMER="Runa")
    told = json.dumps(ran.report)
    assert "NaN" not in told
    (stop,) = ran.report["stops"]
    leaves = [datetime.fromisoformat(way["leave"]) for way in stop["by_departure"]]
    assert all(one.utcoffset() is not None and one.minute % 15 == 0 for one in leaves)
    assert leaves == sorted(leaves)
    late = [datetime.fromisoformat(way["leave"]) for way in stop["if_late"]]
    assert late == sorted(late) and max(b - a for a, b in zip(late, late[1:])) <= timedelta(minutes=10)
    assert datetime.fromisoformat(stop["latest_leave"]) in late


def test_two_outputs_in_one_file_are_refused(plan: Path, tmp_path: Path) -> None:
    add_story_9(plan)
    folder = tmp_path / "out"
    folder.mkdir()
    same = str(folder / "same.json")
    ran = turned(plan, tmp_path, DEPART=f"{DAY}T11:00", REPORT=same, WAYS=same)
    assert not ran.ok and "two outputs" in ran.said
    assert left_in(folder) == []


def test_a_pace_given_to_a_group_is_everybodys(plan: Path, tmp_path: Path) -> None:
    add_story_9(plan)
    ran = turned(plan, tmp_path, DEPART=f"{DAY}T11:00", SWIMMER="Runa; Bo", PACE=0.75)
    alone = {name: clock(stops[0]["latest_leave"]) for name, stops in ran.report["alone"].items()}
    assert alone == {"Runa": "12:42", "Bo": "12:42"}
