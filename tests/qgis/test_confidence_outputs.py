"""`tideleg:confidence` on plan files: layers, report, wind, group, refusals and stopping."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

import pytest
from qgis.core import QgsExpression, QgsExpressionContext, QgsRenderContext, QgsVectorLayer
from swims import (
    DEPART,
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
    moved,
    new_plan,
    offset,
    run,
    swum,
    utc,
)
from tideleg.core.solve.doubts import SEED
from tideleg.plan_package.store import append_rows
from tideleg.processing import confidence as module
from tideleg.processing.confidence import Confidence

OUTPUTS = {"ARRIVALS": "arrivals.gpkg", "ELLIPSES": "ellipses.gpkg", "DRIFT": "drift.gpkg", "REPORT": "sure.json"}


def sure(plan: Path, folder: Path, feedback: Heard | None = None, **parameters: object):
    """Run the algorithm with every output in the folder."""
    outputs = {name: str(folder / file) for name, file in OUTPUTS.items()}
    asked = {"PLAN": str(plan), "DEPART": DEPART, "MEMBERS": 60, **outputs, **parameters}
    return run(Confidence().create(), {key: value for key, value in asked.items() if value is not ...}, feedback)


def layer(ran, name: str) -> QgsVectorLayer:
    found = QgsVectorLayer(ran.results[name], name, "ogr")
    assert found.isValid() and found.crs().authid() == "EPSG:4326"
    return found


@pytest.fixture
def bay(tmp_path: Path) -> Path:
    return invented_bay(tmp_path / "bay.gpkg")


def test_a_plan_of_every_layer_gives_arrivals_ellipses_and_drift(bay: Path, tmp_path: Path) -> None:
    before = digest(bay)
    ran = sure(bay, tmp_path, WIND_FROM=240.0, WIND_KN=10.0)
    assert ran.ok, ran.said
    assert digest(bay) == before
    report, planned = ran.report, swum(bay, tmp_path, DEPART=DEPART)
    stops = list(layer(ran, "ARRIVALS").getFeatures())
    assert [stop["name"] for stop in stops] == [stop["name"] for stop in planned["stops"]]
    for row, stop, told in zip(stops, planned["stops"], report["stops"]):
        if stop["arrive"]:
            assert told["planned"] == stop["arrive"] == row["planned_local"]
        assert told["p10"] <= told["p50"] <= told["p90"] == row["p90_local"]
        assert row["planned"].toUTC().toString("yyyy-MM-ddTHH:mm:ss") == (
            datetime.fromisoformat(told["planned"]).astimezone(utc("00:00").tzinfo).strftime("%Y-%m-%dT%H:%M:%S")
        )
    ellipses = list(layer(ran, "ELLIPSES").getFeatures())
    assert len(ellipses) == len(stops) - 1
    for one in ellipses:
        assert one.geometry().isGeosValid() and one["semi_major_m"] > one["semi_minor_m"] > 1.0
    drift = list(layer(ran, "DRIFT").getFeatures())
    assert len(drift) == len(report["drift"]) and len(drift) % 3 == 0
    assert all(one.geometry().isGeosValid() for one in drift)
    assert {one["counted_from"] for one in drift} == {"the planned return", "the stop"}
    assert report["wind"].startswith("Wind from 240 true, 10 kn")
    assert {one["name"] for one in report["home_by"]} == {"alarm", "civil dusk", "hours"}
    assert ran.results["COMPLETED"] == pytest.approx(report["completed_share"], abs=1e-3)
    assert any("stream of A +-30 % and +-30 min" in words for words in report["doubts"])


def test_the_same_plan_prints_the_same_twice(bay: Path, tmp_path: Path) -> None:
    first = sure(bay, tmp_path).report
    assert sure(bay, tmp_path).report == first
    assert sure(bay, tmp_path, SEED=7).report["stops"] != first["stops"]
    assert first["seed"] == SEED == module.SEED


def test_each_stations_own_uncertainty_counts(tmp_path: Path) -> None:
    spreads = []
    for share in (0.05, 0.60):
        plan = new_plan(tmp_path / f"plan{share:g}.gpkg")
        add_route(plan, "Out", (LON, LAT), offset(0.0, 1500.0))
        add_swimmer(plan, 0.7)
        add_constant_stream(plan, 0.3, 180.0)
        edited(plan, "stream_stations", {"rate_uncertainty": share})
        ran = sure(plan, tmp_path, MEMBERS=400)
        assert any(f"+-{100.0 * share:.0f} %" in words for words in ran.report["doubts"])
        spreads.append(ran.report["stops"][1]["sd_min"])
    assert spreads[1] > 2.0 * spreads[0]


def test_without_a_wind_it_is_said_and_with_one_the_areas_move_downwind(tmp_path: Path) -> None:
    plan = new_plan(tmp_path / "plan.gpkg")
    add_route(plan, "Out", (LON, LAT), offset(0.0, 900.0))
    add_swimmer(plan, 0.7)
    add_constant_stream(plan, 0.2, 0.0)
    without = sure(plan, tmp_path)
    assert any("No wind was given" in words for words in without.warnings)
    assert "not counted" in without.report["wind"]
    with_wind = sure(plan, tmp_path, WIND_FROM=270.0, WIND_KN=20.0)
    assert not any("No wind" in words for words in with_wind.warnings)

    def easting(report) -> float:
        east = [lon for lon, _ in report["drift"][2]["ring"]]
        return (min(east) + max(east)) / 2.0

    pushed_m = 0.0193 * 20.0 * 1852.0 / 3600.0 * 7200.0
    east = moved(pushed_m, 0.0)[0] - LON
    assert easting(with_wind.report) - easting(without.report) == pytest.approx(east, rel=0.005)


def test_half_a_wind_is_refused(bay: Path, tmp_path: Path) -> None:
    for parameters in ({"WIND_KN": 10.0}, {"WIND_FROM": 200.0}):
        ran = sure(bay, tmp_path, **parameters)
        assert not ran.ok and "both" in ran.said


def test_a_stream_that_is_not_known_leaves_ellipses_and_drift_unknown_and_says_so(tmp_path: Path) -> None:
    plan = new_plan(tmp_path / "plan.gpkg")
    add_route(plan, "Out", (LON, LAT), offset(0.0, 900.0))
    add_swimmer(plan, 0.7)
    ran = sure(plan, tmp_path)
    assert ran.ok and ran.report["completed_share"] == 0.0 and ran.report["arrive"] is None
    assert ran.report["legs"][0]["reasons"] == {"the stream is not known": 60}
    assert layer(ran, "ELLIPSES").featureCount() == 0
    assert all(one.geometry().isEmpty() and one["unknown_share"] == 1.0 for one in layer(ran, "DRIFT").getFeatures())
    assert any("drift is not known" in words for words in ran.warnings)


def test_a_drift_into_land_ends_there(tmp_path: Path) -> None:
    from swims import box

    plan = new_plan(tmp_path / "plan.gpkg")
    add_route(plan, "Out", (LON, LAT), offset(0.0, 600.0))
    add_swimmer(plan, 0.7)
    add_constant_stream(plan, 0.4, 90.0)
    append_rows(plan, "land", [(box(300.0, -3000.0, 6000.0, 3000.0), {"name": "Kettle Head"})])
    ran = sure(plan, tmp_path)
    last = ran.report["drift"][2]
    assert last["ashore_share"] == 1.0
    assert max(lon for lon, _ in last["ring"]) < moved(320.0, 0.0)[0]


def test_the_partners_story_comes_out_to_the_printed_minute(tmp_path: Path) -> None:
    # Story 9 of the trade's notes: partner 0.55 against 0.75, 1 km home, adverse from 12:00 with a peak of 0.5 m/s,
    # home by 13:15: latest 12:42 alone, 12:26 together; path factor 1, no reserve.
    plan = new_plan(tmp_path / "plan.gpkg")
    for key, value in (("reserve_factor", "1"), ("reserve_min", "0"), ("back_by", "13:15")):
        edited(plan, "settings", {"value": value}, f"\"key\" = '{key}'")
    add_route(plan, "Out", (LON, LAT), offset(0.0, 1000.0), (LON, LAT))
    add_swimmer(plan, 0.75, name="Runa")
    add_swimmer(plan, 0.55, name="Odd")
    add_sine_stream(plan, utc("12:00"), 0.5, 180.0)
    ran = sure(plan, tmp_path, DEPART="2027-06-05T10:00", SWIMMER="Runa;Odd")
    assert ran.ok, ran.said
    latest = {one["name"]: one["latest"][11:16] for one in ran.report["latest_home"]["who"]}
    assert latest == {"Runa": "12:42", "Odd": "12:26", "Runa and Odd": "12:26"}
    assert ran.report["swimmer"] == "Runa and Odd"


def test_stopping_leaves_nothing_behind(bay: Path, tmp_path: Path) -> None:
    class Stopped(Heard):
        def isCanceled(self) -> bool:
            return True

    before = left_in(tmp_path)
    heard = Stopped()
    ran = sure(bay, tmp_path, heard)
    assert not ran.ok and left_in(tmp_path) == before
    assert "everything is as it was" in ran.said


def test_an_output_over_the_plan_is_refused_and_the_plan_stays(bay: Path, tmp_path: Path) -> None:
    before = digest(bay)
    ran = sure(bay, tmp_path, REPORT=str(bay))
    assert not ran.ok and "reads from" in ran.said and digest(bay) == before


def test_a_route_over_the_date_line_is_not_drawn_round_the_world(tmp_path: Path) -> None:
    plan = new_plan(tmp_path / "plan.gpkg")
    start = (179.998, -17.0)
    add_route(plan, "Over", start, (180.006, -17.0))
    add_swimmer(plan, 0.7)
    add_constant_stream(plan, 0.2, 0.0, at=start)
    ran = sure(plan, tmp_path)
    assert ran.ok, ran.said
    for name in ("ELLIPSES", "DRIFT"):
        for one in layer(ran, name).getFeatures():
            assert one.geometry().boundingBox().width() < 0.2


def test_outlines_are_told_apart_without_colour_and_hide_nothing(bay: Path, tmp_path: Path) -> None:
    from tideleg.layers_out.styling import STYLES

    ran = sure(bay, tmp_path)
    styles = {}
    for name in ("ARRIVALS", "ELLIPSES", "DRIFT"):
        one = layer(ran, name)
        STYLES[name](one)
        if name == "ARRIVALS":
            last = list(one.getFeatures())[-1]
            context = QgsExpressionContext()
            context.setFields(one.fields())
            context.setFeature(last)
            words = QgsExpression(one.labeling().settings().fieldName).evaluate(context)
            times = [last[f"{key}_local"][11:16] for key in ("p10", "p50", "p90")]
            assert words == f"{last['name']}  {' / '.join(times)}"
        symbols = one.renderer().symbols(QgsRenderContext())
        styles[name] = [symbol.symbolLayer(0).properties() for symbol in symbols]
    filled = [properties for name in ("ELLIPSES", "DRIFT") for properties in styles[name]]
    assert [properties["style"] for properties in filled] == ["no"] * 4
    assert len({properties["outline_style"] for properties in styles["DRIFT"]}) == 3
    assert [category.value() for category in one.renderer().categories()] == [30, 60, 120]
