"""tideleg:departurewindows on real plan files: against planswim at its own doors, and what it writes and refuses."""

from __future__ import annotations

import json
import shutil
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from qgis.core import QgsVectorLayer
from swims import (
    DAY,
    KNOT_M_S,
    LAT,
    LON,
    Heard,
    add_constant_stream,
    add_route,
    add_sine_stream,
    add_swimmer,
    digest,
    edited,
    invented_bay,
    left_in,
    new_plan,
    offset,
    point,
    run,
    swum,
    utc,
)
from tideleg.plan_package.store import append_rows
from tideleg.processing.departurewindows import DepartureWindows

HOME = (LON, LAT)


@pytest.fixture(scope="module")
def bay(tmp_path_factory: pytest.TempPathFactory, qgis_app) -> Path:
    return invented_bay(tmp_path_factory.mktemp("windows") / "bay.gpkg")


@pytest.fixture
def plan(qgis_app: object, tmp_path: Path) -> Path:
    return new_plan(tmp_path / "windows.gpkg")


def opened(plan: Path, folder: Path, **parameters: object):
    asked = {"PLAN": str(plan), "REPORT": str(folder / "windows.json"), **parameters}
    return run(DepartureWindows().create(), asked)


def table(path: str) -> list:
    return list(QgsVectorLayer(path, "rows", "ogr").getFeatures())


def test_every_departure_is_what_planswim_says_of_it(bay: Path, tmp_path: Path) -> None:
    sinks = {"WINDOWS": str(tmp_path / "w.gpkg"), "DEPARTURES": str(tmp_path / "d.gpkg")}
    ran = opened(bay, tmp_path, FROM=f"{DAY}T06:00", TO=f"{DAY}T18:00", STEP=40, **sinks)
    assert ran.ok, ran.said
    rows = table(sinks["DEPARTURES"])
    assert len(rows) == ran.report["departures"] == 19
    for row in rows:
        alone = swum(bay, tmp_path, DEPART=row["depart_local"])
        depth = any(flag["kind"] in ("deep", "shallow") for flag in alone["flags"])
        assert bool(row["feasible"]) == (alone["feasible"] and not depth), row["depart_local"]
        if row["feasible"]:
            assert abs(row["total_min"] - alone["total_min"]) < 1.0 / 60.0
        else:
            assert row["why"]
    assert 0 < sum(row["feasible"] for row in rows) < 19
    windows = table(sinks["WINDOWS"])
    assert sum(row["departures"] for row in windows) == sum(row["feasible"] for row in rows)
    assert len(windows) == ran.results["COUNT"] == len(ran.report["windows"])


def test_a_date_means_the_whole_day_by_the_plans_clock(bay: Path, tmp_path: Path) -> None:
    ran = opened(bay, tmp_path, FROM=DAY, TO=DAY, STEP=60)
    assert ran.ok, ran.said
    assert ran.report["from"] == f"{DAY}T00:00:00+01:00"
    assert ran.report["to"] == "2027-06-06T00:00:00+01:00"
    assert ran.report["departures"] == 25


@pytest.mark.parametrize(("day", "hours"), [("2027-03-28", 23), ("2027-10-31", 25)])
def test_a_day_on_which_clocks_change_has_its_own_length(bay: Path, tmp_path: Path, day: str, hours: int) -> None:
    ran = opened(bay, tmp_path, FROM=day, TO=day, STEP=60)
    assert ran.ok, ran.said
    assert ran.report["departures"] == hours + 1


def add_calm(plan: Path, metres: float = 600.0) -> None:
    add_route(plan, "Out", HOME, offset(90.0, metres), HOME)
    add_swimmer(plan, 0.7)


def test_daylight_alone_bounds_the_window_in_still_water(plan: Path, tmp_path: Path) -> None:
    add_calm(plan)
    add_constant_stream(plan, 0.0, None)
    ran = opened(plan, tmp_path, FROM=DAY, TO=DAY, STEP=5)
    (window,) = ran.report["windows"]
    assert (window["opens"]["limit"], window["closes"]["limit"]) == ("dark", "dark")
    assert "civil dawn" in window["opens"]["words"] and "after civil dusk at" in window["closes"]["words"]
    alone = swum(plan, tmp_path, DEPART=window["last"])
    assert alone["feasible"]
    late = datetime.fromisoformat(window["last"]) + timedelta(minutes=5)
    assert not swum(plan, tmp_path, DEPART=late.isoformat())["feasible"]
    assert ran.report["days"][0]["rank"] == 1
    assert ran.report["tides"] == []


def test_story_6_by_tables_of_spring_and_neap_rates(plan: Path, tmp_path: Path) -> None:
    """Story 6, common practice, no source: 160 min with |c| <= 0.4, spring 1.4 at 5.0 m, neap 0.55 at 2.0 m: <= 2.3 m.

    The hourly table of a sine is straight between its hours, so that its stream is a little weaker: some cm more.
    """
    import math

    add_calm(plan, 60.0)
    count = 58
    start = utc("00:00")
    ranges = [2.0 + 3.0 * n / count for n in range(count)]
    rows = [
        {"time": start + timedelta(minutes=372 * n), "height_m": 0.0 if n % 2 else one, "kind": "LW" if n % 2 else "HW"}
        for n, one in enumerate(ranges)
    ]
    append_rows(plan, "tides", [(None, {"port": "P", **row}) for row in rows])
    station = {"station": "A", "form": "hourly", "reference": "HW", "port": "P"}
    levels = {"spring_range_m": 5.0, "neap_range_m": 2.0}
    append_rows(plan, "stream_stations", [(point(HOME), {**station, **levels})])
    hours = []
    for hour in range(-6, 7):
        share = math.sin(math.pi * hour / 6.2)
        hours.append(
            {
                "station": "A",
                "hour": hour,
                "set_deg": 0.0 if share >= 0.0 else 180.0,
                "spring_kn": 1.4 * abs(share),
                "neap_kn": 0.55 * abs(share),
            }
        )
    append_rows(plan, "stream_rates", [(None, row) for row in hours])
    first, last = start + timedelta(hours=7), start + timedelta(minutes=372 * (count - 2))
    span = {"FROM": first.isoformat(), "TO": last.isoformat(), "STEP": 60}
    ran = opened(plan, tmp_path, **span, WEAK_KN=0.4, WEAK_FOR=160)
    assert ran.ok, ran.said
    weak = ran.report["weak_stream"]
    assert weak["range_up_to_m"] <= weak["range_between_m"] <= weak["range_not_at_m"]
    assert abs(weak["range_between_m"] - 2.3) < 0.12
    good = {tide["high_water"][:10] for tide in ran.report["tides"] if tide["weak_min"] >= 160.0}
    assert set(weak["days"]) == good


def test_unknown_stream_opens_no_window(plan: Path, tmp_path: Path) -> None:
    add_calm(plan)
    ran = opened(plan, tmp_path, FROM=DAY, TO=DAY, STEP=60)
    assert ran.ok, ran.said
    assert ran.report["windows"] == []
    assert ran.report["stopped_by"]["unknown"] == 25


def test_windows_of_a_turning_stream_name_leg_and_limit(plan: Path, tmp_path: Path) -> None:
    add_route(plan, "Out", HOME, offset(90.0, 900.0))
    add_swimmer(plan, 0.65)
    add_sine_stream(plan, utc("13:00"), 1.1, flood_set_deg=270.0)
    ran = opened(plan, tmp_path, FROM=f"{DAY}T10:30", TO=f"{DAY}T15:30", STEP=5)
    first = ran.report["windows"][0]
    assert first["opens"]["limit"] == "stream"
    assert first["opens"]["words"].startswith("leg 1 to Exit: the stream pushes you back")
    assert first["closes"]["limit"] == "span"


def test_weak_stream_needs_both_its_numbers(bay: Path, tmp_path: Path) -> None:
    ran = opened(bay, tmp_path, FROM=DAY, TO=DAY, STEP=60, WEAK_KN=0.4)
    assert not ran.ok and "both" in ran.said


@pytest.mark.parametrize(
    ("parameters", "words"),
    [
        ({"FROM": "soon"}, "'soon'"),
        ({"TO": "2027-06-01"}, "The beginning is before the end"),
        ({"FROM": "2026-01-01", "TO": "2027-12-31", "STEP": 1}, "300000"),
        ({"SWIMMER": "Nobody"}, "'Nobody'"),
    ],
)
def test_what_cannot_be_meant_is_refused(bay: Path, tmp_path: Path, parameters, words: str) -> None:
    ran = opened(bay, tmp_path, **{"FROM": DAY, "TO": DAY, "STEP": 60, **parameters})
    assert not ran.ok
    assert words in ran.said


def test_stopping_half_way_is_quick_and_leaves_nothing(bay: Path, tmp_path: Path) -> None:
    """A season is stopped when it has come to a twentieth: the rest is not swum any more."""
    folder, before = tmp_path / "out", digest(bay)
    folder.mkdir()

    class Impatient(Heard):
        def __init__(self) -> None:
            super().__init__()
            self.told: list[float] = []
            self.progressChanged.connect(self._seen)

        def _seen(self, percent: float) -> None:
            self.told.append(percent)
            if percent > 5.0:
                self.cancel()

    heard = Impatient()
    asked = {"PLAN": str(bay), "FROM": "2027-06-01", "TO": "2027-08-31", "STEP": 10, "REPORT": str(folder / "w.json")}
    ran = run(DepartureWindows().create(), {**asked, "WINDOWS": str(folder / "w.gpkg")}, heard)
    assert not ran.ok and "Stopped" in ran.said
    assert max(heard.told) < 50.0
    assert left_in(folder) == []
    assert digest(bay) == before


def test_harmonic_tides_are_predicted_to_the_end_of_a_season(plan: Path, tmp_path: Path) -> None:
    add_calm(plan)
    append_rows(plan, "tide_ports", [(None, {"port": "P", "form": "harmonic", "datum_offset_m": 2.0})])
    for name, size in (("M2", 1.4), ("S2", 0.5)):
        append_rows(
            plan, "tide_constants", [(None, {"port": "P", "constituent": name, "amplitude_m": size, "phase_deg": 30.0})]
        )
    station = {
        "station": "A",
        "form": "hourly",
        "reference": "HW",
        "port": "P",
        "spring_range_m": 3.8,
        "neap_range_m": 1.8,
    }
    append_rows(plan, "stream_stations", [(point(HOME), station)])
    rows = [
        {"station": "A", "hour": hour, "set_deg": 0.0, "spring_kn": 0.1 / KNOT_M_S, "neap_kn": 0.05 / KNOT_M_S}
        for hour in range(-6, 7)
    ]
    append_rows(plan, "stream_rates", [(None, row) for row in rows])
    ran = opened(plan, tmp_path, FROM="2027-06-01", TO="2027-08-20", STEP=120)
    assert ran.ok, ran.said
    assert "unknown" not in ran.report["stopped_by"]
    assert len(ran.report["days"]) == 81


def test_report_is_json_without_holes(bay: Path, tmp_path: Path) -> None:
    ran = opened(bay, tmp_path, FROM="2027-06-05", TO="2027-06-06", STEP=10)
    assert ran.ok and ran.report["windows"]
    told = json.dumps(ran.report)
    assert "NaN" not in told and "Infinity" not in told
    for window in ran.report["windows"]:
        assert datetime.fromisoformat(window["first"]).utcoffset() is not None


def test_a_group_has_the_windows_of_its_slowest(bay: Path, tmp_path: Path) -> None:
    plan = Path(shutil.copy(bay, tmp_path / "group.gpkg"))
    edited(plan, "swimmers", {"name": "Quick", "pace_m_s": 0.9})
    add_swimmer(plan, 0.5, "Slow", path_factor=1.1)
    span = {"FROM": DAY, "TO": DAY, "STEP": 30}
    found = {who: opened(plan, tmp_path, **span, SWIMMER=who).report for who in ("Slow", "Quick", "Quick; Slow")}
    open_of = {who: report["feasible_departures"] for who, report in found.items()}
    assert open_of["Quick; Slow"] == open_of["Slow"] < open_of["Quick"]


@pytest.mark.parametrize("ending", ["pdf", "png", "svg"])
def test_days_come_as_a_picture(bay: Path, tmp_path: Path, ending: str) -> None:
    picture = tmp_path / f"days.{ending}"
    ran = opened(bay, tmp_path, FROM=DAY, TO=DAY, STEP=30, PICTURE=str(picture))
    assert ran.ok, ran.said
    assert ran.results["PICTURE"] == str(picture)
    assert picture.stat().st_size > 5000


def test_a_picture_of_an_unknown_kind_is_refused_and_leaves_nothing(bay: Path, tmp_path: Path) -> None:
    folder = tmp_path / "out"
    folder.mkdir()
    ran = opened(bay, folder, FROM=DAY, TO=DAY, STEP=30, PICTURE=str(folder / "days.bmp"))
    assert not ran.ok and ".bmp" in ran.said
    assert left_in(folder) == []
