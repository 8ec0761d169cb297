"""`tideleg:bestorder` on real plan files: what it writes, what it refuses, and planswim on the route it gives."""

from __future__ import annotations

import json
from datetime import datetime
from pathlib import Path

import pytest
from qgis.core import QgsVectorLayer
from swims import (
    Heard,
    add_constant_stream,
    add_route,
    add_sine_stream,
    add_swimmer,
    box,
    digest,
    left_in,
    moved,
    new_plan,
    point,
    run,
    swum,
    utc,
)
from tideleg.plan_package.store import append_rows
from tideleg.processing.bestorder import BestOrder

MARKS = {"Gannet": (600.0, 500.0), "Long Sill": (-500.0, 700.0), "Cinder": (100.0, 1000.0)}
SPAN = {"FROM": "2027-06-05T09:00", "TO": "2027-06-05T13:00", "STEP": 30}


def add_marks(plan: Path, places: dict[str, tuple[float, float]], kind: str = "mark", stay_min: float = 10.0) -> None:
    rows = [
        (point(moved(*place)), {"name": name, "kind": kind, "stay_min": stay_min}) for name, place in places.items()
    ]
    append_rows(plan, "marks", rows)


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    made = new_plan(tmp_path / "plan.gpkg", ZONE="Europe/Lisbon")
    add_marks(made, {"Slip": (0.0, 0.0)}, "entry", 0.0)
    add_marks(made, MARKS)
    add_swimmer(made, 0.7)
    add_sine_stream(made, utc("11:30"), 0.4, 60.0)
    return made


def ordered(plan: Path, feedback: Heard | None = None, **parameters: object):
    report = plan.with_name("orders.json")
    asked = {"PLAN": str(plan), "REPORT": str(report), **SPAN, **parameters}
    ran = run(BestOrder().create(), asked, feedback)
    return ran, json.loads(report.read_text(encoding="utf-8")) if ran.ok else None


def test_orders_and_route_are_written_and_planswim_agrees(plan: Path) -> None:
    layers = {name: str(plan.with_name(f"{name.lower()}.gpkg")) for name in ("ORDERS", "ROUTE")}
    before = digest(plan)
    ran, told = ordered(plan, **layers)
    assert ran.ok, ran.said
    assert digest(plan) == before
    assert ran.results["FEASIBLE"] is True
    assert len(told["orders"]) == 5
    minutes = [order["minutes"] for order in told["orders"]]
    assert minutes == sorted(minutes)
    best = told["orders"][0]
    assert ran.results["MINUTES"] == pytest.approx(best["minutes"], abs=1e-3)
    assert sorted(best["order"]) == sorted(["Slip", "Slip", *MARKS])
    assert best["depart"].endswith("+01:00")
    rows = list(QgsVectorLayer(layers["ORDERS"], "orders", "ogr").getFeatures())
    assert [row["rank"] for row in rows] == [1, 2, 3, 4, 5]
    assert rows[0]["order_text"] == " - ".join(best["order"])
    assert rows[0]["depart_local"] == best["depart"]
    route = QgsVectorLayer(layers["ROUTE"], "route", "ogr")
    (drawn,) = route.getFeatures()
    assert [field.name() for field in route.fields()] == ["fid", "name", "note"]
    places = [(vertex.x(), vertex.y()) for vertex in drawn.geometry().vertices()]
    add_route(plan, "tried", *places)
    # The stays are those of the marks, so the same swim comes out.
    again = swum(plan, plan.parent, ROUTE="tried", DEPART=best["depart"])
    assert again["feasible"]
    assert again["total_min"] == pytest.approx(best["minutes"], abs=1.0 / 60.0)
    assert [stop["name"] for stop in again["stops"]] == best["order"]


def test_every_order_by_planswim_is_no_quicker(plan: Path) -> None:
    from itertools import permutations

    _, told = ordered(plan, ALTERNATIVES=6)
    best_s = 60.0 * told["orders"][0]["minutes"]
    ranked = {tuple(order["order"]): 60.0 * order["minutes"] for order in told["orders"]}
    assert len(ranked) == 6
    for middle in permutations(MARKS):
        name = "-".join(middle)
        add_route(plan, name, *(moved(*place) for place in ((0.0, 0.0), *(MARKS[one] for one in middle), (0.0, 0.0))))
        quickest = min(
            60.0 * swim["total_min"]
            for hour in range(9, 13)
            for minute in ("00", "30")
            if (swim := swum(plan, plan.parent, ROUTE=name, DEPART=f"2027-06-05T{hour:02d}:{minute}"))["feasible"]
        )
        assert best_s <= quickest + 1.0
        assert ranked[("Slip", *middle, "Slip")] <= quickest + 1.0


def test_named_marks_entry_and_exit_are_kept_to(plan: Path) -> None:
    add_marks(plan, {"East Beach": (900.0, 100.0), "West Beach": (-900.0, 100.0)}, "exit", 0.0)
    _, told = ordered(plan, MARKS_NAMES=" Gannet ; Cinder", ENTRY="Slip", EXIT="West Beach")
    assert all(order["order"][0] == "Slip" and order["order"][-1] == "West Beach" for order in told["orders"])
    assert all(sorted(order["order"][1:-1]) == ["Cinder", "Gannet"] for order in told["orders"])
    # Without a name whichever exit is best is taken.
    ran, told = ordered(plan, MARKS_NAMES="Gannet")
    assert told["orders"][0]["order"] == ["Slip", "Gannet", "East Beach"]
    assert {order["order"][-1] for order in told["orders"]} == {"Slip", "East Beach", "West Beach"}
    assert not any("No marks were named" in warning for warning in ran.warnings)


@pytest.mark.parametrize(
    ("parameters", "words"),
    [
        ({"MARKS_NAMES": "Gannet;Nowhere"}, ("'Nowhere'", "Long Sill", "stands there once")),
        ({"ENTRY": "Pier"}, ("entry 'Pier'",)),
        ({"EXIT": "Pier"}, ("exit 'Pier'",)),
        ({"MARKS_NAMES": "Slip"}, ("0 marks", "1 to 9")),
        ({"FROM": "2027-06-05T13:00", "TO": "2027-06-05T09:00"}, ("before the end",)),
        ({"FROM": "2027-06-01", "TO": "2027-07-20"}, ("31 days",)),
        ({"FROM": "2027-06-01", "TO": "2027-06-20", "STEP": 1}, ("longer step",)),
        ({"SWIMMER": "Nobody"}, ("'Nobody'",)),
    ],
)
def test_what_cannot_be_is_refused_with_what_is_allowed(plan: Path, parameters, words) -> None:
    before = left_in(plan.parent)
    ran, _ = ordered(plan, ORDERS=str(plan.with_name("orders.gpkg")), **parameters)
    assert not ran.ok
    assert all(word in ran.said for word in words), ran.said
    assert left_in(plan.parent) == before


def test_ten_marks_are_refused_and_nine_are_not(plan: Path) -> None:
    add_marks(plan, {f"Rock {number}": (50.0 * number, 300.0) for number in range(6)}, stay_min=1.0)
    ran, told = ordered(plan, STEP=120)
    assert ran.ok, ran.said
    assert told["marks"] == 9
    assert any("all of kind mark are visited, 9" in warning for warning in ran.warnings)
    add_marks(plan, {"One More": (0.0, 500.0)})
    ran, _ = ordered(plan)
    assert not ran.ok
    assert "10 marks" in ran.said and "1 to 9" in ran.said and "One More" in ran.said


def test_two_marks_at_one_place_and_two_entries_are_refused(plan: Path) -> None:
    add_marks(plan, {"Gannet Again": MARKS["Gannet"]})
    ran, _ = ordered(plan)
    assert not ran.ok and "'Gannet Again'" in ran.said and "same place" in ran.said
    add_marks(plan, {"Steps": (300.0, 0.0)}, "entry")
    ran, _ = ordered(plan, MARKS_NAMES="Gannet")
    assert not ran.ok and "Slip, Steps" in ran.said


def test_a_plan_without_streams_says_unknown_and_gives_no_route(tmp_path: Path) -> None:
    bare = new_plan(tmp_path / "bare.gpkg")
    add_marks(bare, {"Slip": (0.0, 0.0)}, "entry", 0.0)
    add_marks(bare, MARKS)
    add_swimmer(bare, 0.7)
    ran, told = ordered(bare, ROUTE=str(tmp_path / "route.gpkg"))
    assert ran.ok, ran.said
    assert ran.results["FEASIBLE"] is False
    assert told["stopped_by"] == {"unknown": 9}
    assert not told["orders"][0]["feasible"]
    assert "not known" in told["orders"][0]["reason"]
    assert QgsVectorLayer(str(tmp_path / "route.gpkg"), "route", "ogr").featureCount() == 0


def test_land_between_the_marks_is_swum_round(plan: Path) -> None:
    append_rows(plan, "land", [(box(0.0, 600.0, 80.0, 900.0), {"name": "Skerry"})])
    ran, told = ordered(plan, MARKS_NAMES="Gannet;Long Sill")
    assert ran.ok, ran.said
    best = told["orders"][0]
    assert best["feasible"]
    assert any(stop["turn"] for stop in best["stops"])
    assert any("Goes round" in note for note in best["notes"])


def test_it_stops_when_told_and_leaves_nothing(plan: Path) -> None:
    class Stopping(Heard):
        def setProgress(self, share: float) -> None:
            if share > 30.0:
                self.cancel()

    before = left_in(plan.parent)
    ran, _ = ordered(plan, Stopping(), ORDERS=str(plan.with_name("orders.gpkg")))
    assert not ran.ok
    assert left_in(plan.parent) == before


def test_an_order_over_the_date_line_is_drawn_on(tmp_path: Path) -> None:
    at = (179.999, -41.0)
    made = new_plan(tmp_path / "line.gpkg", ZONE="Pacific/Auckland")
    for name, kind, place in (
        ("Slip", "entry", (0.0, 0.0)),
        ("A", "mark", (400.0, 200.0)),
        ("B", "mark", (-300.0, 400.0)),
    ):
        append_rows(made, "marks", [(point(moved(*place, *at)), {"name": name, "kind": kind, "stay_min": 5.0})])
    add_swimmer(made, 0.7)
    add_constant_stream(made, 0.2, 90.0, at=at)
    ran, told = ordered(made, ORDERS=str(tmp_path / "orders.gpkg"))
    assert ran.ok, ran.said
    assert told["orders"][0]["feasible"]
    (row, *_) = QgsVectorLayer(str(tmp_path / "orders.gpkg"), "orders", "ogr").getFeatures()
    extent = row.geometry().boundingBox()
    assert extent.width() < 0.02 and extent.xMaximum() > 180.0
    depart = datetime.fromisoformat(told["orders"][0]["depart"])
    assert depart.utcoffset().total_seconds() == 12 * 3600.0
