"""`tideleg:streamat`: the stream at a place through a day, on a plan of invented water."""

from __future__ import annotations

import json
from datetime import datetime, timedelta
from pathlib import Path

import numpy as np
import pytest
from qgis.core import NULL, QgsVectorLayer
from swims import KNOT_M_S, LAT, LON, add_constant_stream, add_sine_stream, new_plan, run, utc
from tideleg.processing.streamat import StreamAt

PLACE = f"{LON},{LAT} [EPSG:4326]"


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    made = new_plan(tmp_path / "plan.gpkg", ZONE="Europe/Lisbon")
    add_sine_stream(made, utc("13:00"), 0.9, 60.0)
    return made


def asked(plan: Path, **parameters: object):
    report = plan.with_name("stream.json")
    ran = run(StreamAt().create(), {"PLAN": str(plan), "POINT": PLACE, "REPORT": str(report), **parameters})
    if ran.ok:
        return ran, json.loads(report.read_text(encoding="utf-8"))
    return ran, None


def test_the_slack_stands_in_the_plans_zone_and_turns_from_flood_to_ebb(plan: Path) -> None:
    _, told = asked(plan, DAY="2027-06-05")
    # 13:00 UTC is 14:00 in Lisbon's summer.
    (slack,) = [event for event in told["events"] if event["kind"] == "slack"]
    assert slack["time"] == "2027-06-05T14:00:00+01:00"
    assert (slack["set_before_deg"], slack["set_after_deg"]) == (pytest.approx(60.0), pytest.approx(240.0))
    maxima = [event["time"][11:16] for event in told["events"] if event["kind"] == "greatest"]
    assert maxima == ["10:54", "17:06"]


def test_hours_outside_the_events_are_unknown_and_empty_in_the_table(plan: Path) -> None:
    ran, told = asked(plan, DAY="2027-06-05", TABLE=str(plan.with_name("table.gpkg")))
    # The events reach from 06:48 to 19:12 UTC.
    known = {row["time"][11:16]: row["rate_kn"] for row in told["rows"]}
    assert known["07:00"] is None and known["21:00"] is None
    assert known["12:00"] == pytest.approx(0.9 / KNOT_M_S * np.sin(np.pi * 120.0 / 372.0), abs=1e-3)
    layer = QgsVectorLayer(ran.results["TABLE"], "table", "ogr")
    rows = {feature["time_local"][11:16]: feature for feature in layer.getFeatures()}
    assert rows["07:00"].attribute("rate_kn") in (None, NULL)
    assert rows["07:00"]["known"] == "unknown"
    assert rows["14:00"]["event"] in ("slack", "")


def test_the_window_below_a_limit_is_found_to_the_minute(plan: Path) -> None:
    _, told = asked(plan, DAY="2027-06-05", BELOW=0.3 / KNOT_M_S)
    window = next(one for one in told["windows"] if one["from"] < "2027-06-05T14:00" < one["to"])
    assert window["minutes"] == pytest.approx(2.0 * 372.0 / np.pi * np.arcsin(1.0 / 3.0), abs=0.05)


def test_a_day_on_which_clocks_change_has_its_own_number_of_hours(plan: Path) -> None:
    add_constant_stream(plan, 0.2, 90.0, station="C")
    for day, hours in (("2027-03-28", 23), ("2027-06-05", 24), ("2027-10-31", 25)):
        _, told = asked(plan, DAY=day)
        span = datetime.fromisoformat(told["to"]) - datetime.fromisoformat(told["from"])
        assert span == timedelta(hours=hours)
        assert len(told["rows"]) == hours + 1


def test_a_bad_day_and_a_place_off_the_globe_are_refused_with_a_remedy(plan: Path) -> None:
    ran, _ = asked(plan, DAY="26.06.2027")
    assert not ran.ok and "2027-06-26" in ran.said
    ran, _ = asked(plan, DAY="2027-06-05", POINT="10,95 [EPSG:4326]")
    assert not ran.ok and "latitude" in ran.said


def test_a_plan_without_streams_says_unknown_all_day(tmp_path: Path) -> None:
    bare = new_plan(tmp_path / "bare.gpkg")
    _, told = asked(bare, DAY="2027-06-05")
    assert {row["known"] for row in told["rows"]} == {"unknown"}
    assert told["events"] == [] and told["windows"] == []
