"""The worked stories of the trade, end to end: a new plan, its rows, planswim, the report. Common practice, no source.

Invented places; the figures are printed to the whole degree, metre or minute, and must come out to that digit.
"""

from __future__ import annotations

import math
from pathlib import Path

import pytest
from qgis.core import QgsFeature, QgsVectorLayer
from swims import (
    DAY,
    KNOT_M_S,
    LAT,
    LON,
    add_constant_stream,
    add_route,
    add_sine_stream,
    add_swimmer,
    clock,
    edited,
    flags_of,
    line,
    moved,
    new_plan,
    offset,
    point,
    swum,
    utc,
)
from tideleg.layers_in.swim_in import SwimAsked, request_from
from tideleg.plan_package.store import append_rows

HOME = (LON, LAT)


@pytest.fixture
def plan(qgis_app: object, tmp_path: Path) -> Path:
    return new_plan(tmp_path / "story.gpkg")


def whole_minutes(leg: dict) -> int:
    """Minutes as the card prints them, rounded up."""
    return math.ceil(leg["minutes"])


def test_story_1_out_and_home_by_headings_that_are_not_reciprocal(plan: Path, tmp_path: Path) -> None:
    mark = offset(120.0, 1200.0)
    add_route(plan, "Out", HOME, mark)
    add_route(plan, "Home", mark, HOME)
    add_swimmer(plan, 0.70)
    add_constant_stream(plan, 0.25, 200.0)
    out = swum(plan, tmp_path, ROUTE="Out", DEPART=f"{DAY}T10:00")
    leg = out["legs"][0]
    assert round(out["variation_deg"], 1) == -4.0
    assert round(leg["distance_m"]) == 1200
    assert round(leg["bearing_true_deg"]) == 120
    assert (round(leg["heading_true_deg"]), round(leg["heading_mag_deg"])) == (99, 103)
    assert leg["card_heading"] == "105M"
    assert round(leg["ground_speed_m_s"], 2) == 0.70
    assert whole_minutes(leg) == 29
    assert (round(leg["stream_set_deg"]), round(leg["stream_kn"] * KNOT_M_S, 2)) == (200, 0.25)

    edited(plan, "stream_rates", {"spring_kn": 0.10 / KNOT_M_S})
    leg = swum(plan, tmp_path, ROUTE="Home", DEPART=f"{DAY}T12:00")["legs"][0]
    assert (round(leg["heading_true_deg"]), round(leg["heading_mag_deg"])) == (308, 312)
    assert leg["card_heading"] == "310M" != "285M"
    assert whole_minutes(leg) == 30


@pytest.mark.parametrize(("depart", "minutes"), [("12:00", 47), ("12:22", 33), ("12:40", 26)])
def test_story_2_head_stream_eases_towards_slack(plan: Path, tmp_path: Path, depart: str, minutes: int) -> None:
    add_route(plan, "Out", HOME, offset(90.0, 900.0))
    add_swimmer(plan, 0.65)
    add_sine_stream(plan, utc("13:00"), 1.1, flood_set_deg=270.0)
    report = swum(plan, tmp_path, DEPART=f"{DAY}T{depart}")
    assert report["legs"][0]["feasible"]
    assert round(report["legs"][0]["minutes"]) == minutes


def test_story_2_too_early_is_impossible_and_says_why(plan: Path, tmp_path: Path) -> None:
    add_route(plan, "Out", HOME, offset(90.0, 900.0))
    add_swimmer(plan, 0.65)
    add_sine_stream(plan, utc("13:00"), 1.1, flood_set_deg=270.0)
    report = swum(plan, tmp_path, DEPART=f"{DAY}T11:30")
    assert not report["feasible"]
    assert not report["legs"][0]["feasible"]
    assert "pushes you back" in report["legs"][0]["reason"]
    assert [flag["severity"] for flag in flags_of(report, "not_swimmable")] == ["stop"]


def add_story_3(plan: Path) -> None:
    """HW 09:40, slack two hours after it, 1.4 km against the stream."""
    add_route(plan, "Out", HOME, offset(0.0, 1400.0))
    add_swimmer(plan, 0.70)
    append_rows(plan, "tides", [(None, {"port": "P", "time": utc("09:40"), "height_m": 4.8, "kind": "HW"})])
    append_rows(plan, "tides", [(None, {"port": "P", "time": utc("15:52"), "height_m": 0.6, "kind": "LW"})])
    add_sine_stream(plan, utc("11:40"), 0.9, flood_set_deg=180.0)


@pytest.mark.parametrize(("depart", "arrive"), [("10:00", "11:23"), ("10:35", "11:30")])
def test_story_3_later_start_arrives_almost_as_early(plan: Path, tmp_path: Path, depart: str, arrive: str) -> None:
    add_story_3(plan)
    report = swum(plan, tmp_path, DEPART=f"{DAY}T{depart}")
    assert clock(report["arrive"]) == clock(report["legs"][0]["arrive"]) == arrive
    assert report["legs"][0]["feasible"]


def test_story_3_stream_is_at_the_limit_at_both_ends_of_the_window(plan: Path) -> None:
    add_story_3(plan)
    request = request_from(plan, {}, SwimAsked(depart=f"{DAY}T10:00"))
    times = request.clock.seconds_of([utc("11:00"), utc("11:40"), utc("12:20"), utc("11:00:30"), utc("10:59:30")])
    sample = request.stream.at(0.0, 0.0, times)
    assert [round(float(rate), 1) for rate in sample.rate_m_s[:3]] == [0.3, 0.0, 0.3]
    assert round(float(sample.set_deg[0])) == 180
    assert round(float(sample.set_deg[2])) % 360 == 0
    # 0.3 is passed within the minute that is printed.
    first = request.clock.seconds(utc("11:40")) - 372.0 * 60.0 / math.pi * math.asin(0.3 / 0.9)
    assert clock(request.clock.moment(first).isoformat()) == "11:00"
    assert abs(float(request.stream.at(0.0, 0.0, first).rate_m_s) - 0.3) < 1e-6


@pytest.fixture
def ferry_cut(plan: Path) -> Path:
    """A cut 240 m wide with traffic north and south, crossed by a swim to the east; the stream sets south along it."""
    add_route(plan, "Across", HOME, moved(640.0, 0.0))
    add_swimmer(plan, 0.70)
    add_constant_stream(plan, 0.3, 180.0)
    values = {"name": "Cut", "kind": "ferry", "width_m": 240.0, "flow_deg": 0.0, "boat_kn": 12.0}
    append_rows(plan, "channels", [(line(moved(320.0, -1500.0), moved(320.0, 1500.0)), values)])
    times = {"channel": "Cut", "clear_before_min": 10.0, "clear_after_min": 10.0}
    append_rows(plan, "ferries", [(None, {"time": clock_time, **times}) for clock_time in ("10:05", "10:35")])
    return plan


@pytest.mark.parametrize(("depart", "severity"), [("10:02", "stop"), ("10:12", "warn"), ("10:20", "stop")])
def test_story_5_enter_the_cut_between_two_ferries(ferry_cut: Path, tmp_path: Path, depart: str, severity: str) -> None:
    report = swum(ferry_cut, tmp_path, DEPART=f"{DAY}T{depart}")
    (flag,) = flags_of(report, "channel")
    assert "Enter between 10:15 and 10:19" in flag["message"]
    assert "103 m towards 180" in flag["message"]
    assert "5.7 min" in flag["message"]
    assert ("is too near" in flag["message"]) == (severity == "stop")
    # The heading that holds the line is 25 degrees up-stream, more than the plan's 20, so it is at least a warning.
    assert flag["severity"] == severity
    assert round(flag["crossing_angle_deg"]) == round(90.0 - math.degrees(math.asin(0.3 / 0.7)))
    assert round(flag["length_m"]) == 240


def test_story_10_depth_now_is_charted_depth_and_tide(plan: Path, tmp_path: Path) -> None:
    mark = offset(90.0, 600.0)
    add_route(plan, "Out", HOME, mark, HOME)
    add_swimmer(plan, 0.5, line_m=30.0)
    add_constant_stream(plan, 0.0, None)
    append_rows(plan, "marks", [(point(mark), {"name": "Nine", "kind": "mark", "charted_depth_m": 9.0})])
    rows = [("05:00", 0.3, "LW"), ("10:20", 3.1, "HW"), ("16:00", 0.4, "LW")]
    for when, height, kind in rows:
        append_rows(plan, "tides", [(None, {"time": utc(when), "height_m": height, "kind": kind})])
    stops = str(tmp_path / "stops.gpkg")
    stop = swum(plan, tmp_path, DEPART=f"{DAY}T10:00", STOPS=stops)["stops"][1]
    assert (stop["name"], clock(stop["arrive"])) == ("Nine", "10:20")
    assert round(stop["depth_now_m"], 1) == 12.1
    (row,) = [row for row in QgsVectorLayer(stops, "stops", "ogr").getFeatures() if row["name"] == "Nine"]
    assert math.floor(row["swing_m"]) == 27


def test_story_12_deep_mark_says_when_it_comes_within_reach(plan: Path, tmp_path: Path) -> None:
    mark = offset(90.0, 600.0)
    add_route(plan, "Out", HOME, mark, HOME)
    add_swimmer(plan, 0.5, depth_limit_m=12.0)
    add_constant_stream(plan, 0.0, None)
    # Drawn and typed in QGIS, as somebody without any of this code would.
    drawn(plan, "marks", point(mark), name="Pinnacle", kind="mark", charted_depth_m=8.0, stay_min=30.0)
    for when, height, kind in (("12:00:00", 5.2, "HW"), ("18:10:00", 0.8, "LW")):
        drawn(plan, "tides", None, time=f"{DAY}T{when}Z", height_m=height, kind=kind)
    (flag,) = flags_of(swum(plan, tmp_path, DEPART=f"{DAY}T12:40"), "deep")
    assert flag["name"] == "Pinnacle"
    assert "within your limit from 14:09" in flag["message"]
    later = swum(plan, tmp_path, DEPART=f"{DAY}T13:50")
    assert clock(later["stops"][1]["arrive"]) == "14:10"
    assert flags_of(later, "deep") == []


def drawn(plan: Path, layer_name: str, geometry, **values: object) -> None:
    """One row added in an edit session of QGIS."""
    layer = QgsVectorLayer(f"{plan}|layername={layer_name}", layer_name, "ogr")
    row = QgsFeature(layer.fields())
    if geometry is not None:
        row.setGeometry(geometry)
    for name, value in values.items():
        row.setAttribute(name, value)
    assert layer.startEditing()
    assert layer.addFeature(row)
    assert layer.commitChanges(), layer.commitErrors()
