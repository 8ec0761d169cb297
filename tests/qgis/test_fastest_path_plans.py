"""`tideleg:fastestpath` on real plan files: the route it writes, planswim on that route, and what it refuses."""

from __future__ import annotations

from pathlib import Path

import pytest
from qgis.core import QgsGeometry, QgsVectorLayer
from swims import (
    Heard,
    add_route,
    add_sine_stream,
    add_swimmer,
    box,
    digest,
    flags_of,
    left_in,
    moved,
    new_plan,
    point,
    run,
    swum,
    utc,
)
from tideleg.plan_package.store import append_rows
from tideleg.processing.fastestpath import FastestPathBetween

START, END = (-800.0, 0.0), (900.0, 100.0)
DEPART = "2027-06-05T10:00"
CROSS_SQUARE = 2


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    made = new_plan(tmp_path / "plan.gpkg", ZONE="Europe/Lisbon")
    append_rows(made, "marks", [(point(moved(*START)), {"name": "Slip", "kind": "entry"})])
    append_rows(made, "marks", [(point(moved(*END)), {"name": "Gannet", "kind": "mark", "stay_min": 20.0})])
    append_rows(made, "land", [(box(-60.0, -1500.0, 60.0, 600.0), {"name": "Kettle Head"})])
    add_swimmer(made, 0.7)
    add_sine_stream(made, utc("11:30"), 0.4, 60.0)
    return made


def place(east_m: float, north_m: float) -> str:
    lon, lat = moved(east_m, north_m)
    return f"{lon:.9f},{lat:.9f} [EPSG:4326]"


def found(plan: Path, feedback: Heard | None = None, **parameters: object):
    asked = {
        "PLAN": str(plan),
        "START": place(*START),
        "END": place(*END),
        "DEPART": DEPART,
        "REPORT": str(plan.with_name("path.json")),
        **parameters,
    }
    return run(FastestPathBetween().create(), asked, feedback)


def test_the_route_goes_round_the_head_and_planswim_agrees(plan: Path) -> None:
    before, line = digest(plan), str(plan.with_name("route.gpkg"))
    ran = found(plan, ROUTE=line)
    assert ran.ok, ran.said
    assert digest(plan) == before
    layer = QgsVectorLayer(line, "route", "ogr")
    (drawn,) = layer.getFeatures()
    assert layer.crs().authid() == "EPSG:4326"
    assert [field.name() for field in layer.fields()][1:3] == ["name", "note"]
    assert drawn["name"] == "Slip - Gannet"
    assert "2027-06-05 10:00" in drawn["note"]
    compared = ran.report["compared"]
    assert compared["straight_reason"] == "land lies in the way"
    assert ran.results["MINUTES"] == pytest.approx(drawn["minutes"])
    assert drawn["minutes"] == pytest.approx(compared["route_min"], abs=1e-3)
    assert drawn["minutes"] <= 1.02 * compared["optimum_min"]
    vertices = [(vertex.x(), vertex.y()) for vertex in drawn.geometry().vertices()]
    assert len(vertices) == len(ran.report["legs"]) + 1
    land = QgsGeometry(box(-60.0, -1500.0, 60.0, 600.0))
    assert not drawn.geometry().intersects(land)
    # Drawn into the plan, the same swim comes out.
    add_route(plan, "round", *vertices)
    again = swum(plan, plan.parent, ROUTE="round", DEPART=DEPART)
    assert again["feasible"] and not flags_of(again, "land")
    assert again["total_min"] == pytest.approx(ran.report["total_min"], abs=1.0 / 60.0)
    assert [stop["name"] for stop in again["stops"]][:: len(vertices) - 1] == ["Slip", "Gannet"]


def test_a_channel_is_crossed_square_within_the_plans_setting(plan: Path) -> None:
    lane = {"name": "Cut", "kind": "fairway", "boat_kn": 15.0, "flow_deg": 60.0}
    ring = [moved(*corner) for corner in ((-2000, -300), (2000, 2009), (2000, 2259), (-2000, -50))]
    append_rows(plan, "channels", [(QgsGeometry.fromWkt(f"POLYGON(({','.join(f'{x} {y}' for x, y in ring)}))"), lane)])
    away = place(-200.0, 1900.0)
    (plain,) = flags_of(found(plan, END=away).report, "channel")
    ran = found(plan, END=away, CHANNELS=CROSS_SQUARE)
    (square,) = flags_of(ran.report, "channel")
    assert plain["crossing_angle_deg"] < 80.0
    assert square["crossing_angle_deg"] == pytest.approx(90.0, abs=1.0)
    assert square["leg"] in ran.report["square_legs"]


def test_stopping_leaves_nothing(plan: Path) -> None:
    before = left_in(plan.parent)

    class Stops(Heard):
        looks = 0

        def isCanceled(self) -> bool:
            self.looks += 1
            return self.looks > 30

    ran = found(plan, Stops(), ROUTE=str(plan.with_name("route.gpkg")))
    assert not ran.ok
    assert left_in(plan.parent) == before


@pytest.mark.parametrize(
    ("parameters", "words"),
    [
        ({"END": place(0.0, -700.0)}, "The end 'End' lies 60 m inside Kettle Head"),
        ({"START": place(0.0, -700.0)}, "The entry 'Entry' lies 60 m inside Kettle Head"),
        ({"END": place(*START)}, "places 0 m apart"),
        ({"END": place(90_000.0, 0.0)}, "km apart"),
        ({"DEPART": "tomorrow"}, "DEPART"),
        ({"SWIMMER": "Nobody"}, "Nobody"),
        ({"CELL": 900.0}, "cells of 900 m"),
        ({"DEPART": "2029-06-05T10:00"}, "stream"),
    ],
)
def test_refusals_name_what_is_wrong(plan: Path, parameters: dict[str, object], words: str) -> None:
    before = left_in(plan.parent)
    ran = found(plan, **parameters)
    assert not ran.ok
    assert words in ran.said
    assert left_in(plan.parent) == before


def test_a_plan_is_not_written_over(plan: Path) -> None:
    before = digest(plan)
    ran = found(plan, REPORT=str(plan))
    assert not ran.ok
    assert digest(plan) == before
