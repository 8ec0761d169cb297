"""The order of marks, in the dock: the algorithm's own orders, drawn on the map and added as a route."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest
from desk import Desk, cells, click_cell, desk_with_dock, group_names, layer_of, leave, opened, settle, wait_for
from qgis.core import NULL, QgsApplication, QgsFeature, QgsProject
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtTest import QTest
from swims import DAY, add_route, add_sine_stream, add_swimmer, moved, new_plan, point, run, utc
from tideleg.core.results.best_order import orders_dict
from tideleg.core.results.card import clock_up, position_text
from tideleg.dock.dock import TidelegDock
from tideleg.dock.order_rows import duration_text
from tideleg.dock.order_section import unused_name
from tideleg.plan_package.store import append_rows
from tideleg.processing.bestorder import BestOrder
from tideleg.version import tideleg_version

MARKS = {"Gannet": (600.0, 500.0), "Long Sill": (-500.0, 700.0), "Cinder": (100.0, 1000.0)}
SLIP = (0.0, 0.0)


@pytest.fixture()
def plan(qgis_app: object, tmp_path: Path) -> Path:
    """Three marks and a slip in a stream that turns at half past eleven; a route over two of them."""
    made = new_plan(tmp_path / "plan.gpkg", ZONE="Europe/Lisbon")
    marks = [("Slip", "entry", 0.0, SLIP), *((name, "mark", 10.0, place) for name, place in MARKS.items())]
    rows = [(point(moved(*place)), {"name": name, "kind": kind, "stay_min": stay}) for name, kind, stay, place in marks]
    append_rows(made, "marks", rows)
    add_swimmer(made, 0.7)
    add_sine_stream(made, utc("11:30"), 0.4, 60.0)
    add_route(made, "Out", moved(*SLIP), moved(*MARKS["Gannet"]), moved(*MARKS["Cinder"]), moved(*SLIP))
    return made


@pytest.fixture()
def at_desk(qgis_app: object, plan: Path) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as (desk, dock):
        opened(dock, plan, depart=f"{DAY} 11:00")
        yield desk, dock
        for layer in QgsProject.instance().mapLayers().values():
            if layer.isEditable():
                layer.rollBack()


@pytest.fixture()
def dock(at_desk: tuple[Desk, TidelegDock]) -> TidelegDock:
    return at_desk[1]


def leave_between(dock: TidelegDock, first: str = f"{DAY} 09:00", last: str = f"{DAY} 13:00") -> None:
    for editor, text in ((dock.order.first, first), (dock.order.last, last)):
        editor.setDateTime(editor.dateTimeFromText(text.replace(" ", "  ")))


def tick(dock: TidelegDock, *names: str) -> None:
    """Tick these marks with the space bar and no others."""
    marks = dock.order.marks
    for row in range(marks.count()):
        item = marks.item(row)
        wanted = item.text().partition(" (")[0] in names
        if (item.checkState() == Qt.CheckState.Checked) != wanted:
            marks.setCurrentItem(item)
            QTest.keyClick(marks, Qt.Key.Key_Space)


def ticked(dock: TidelegDock) -> set[str]:
    marks = dock.order.marks
    items = [marks.item(row) for row in range(marks.count())]
    return {item.text() for item in items if item.checkState() == Qt.CheckState.Checked}


def find(dock: TidelegDock) -> None:
    """Press the button and wait for the answer."""
    dock.order.ask.click()
    wait_for(lambda: not dock.order._work.is_busy, "the orders")
    assert dock.order.found is not None, dock.order.status.text()


def reported(plan: Path, **parameters: object) -> dict:
    """What the algorithm reports."""
    report = plan.with_name("orders.json")
    span = {"FROM": f"{DAY}T09:00", "TO": f"{DAY}T13:00", "STEP": 30}
    ran = run(BestOrder().create(), {"PLAN": str(plan), "REPORT": str(report), **span, **parameters})
    assert ran.ok, ran.said
    return json.loads(report.read_text(encoding="utf-8"))


def stored_routes(plan: Path) -> list[str]:
    """What the file holds, asked of SQLite and not of QGIS."""
    with closing(sqlite3.connect(f"{plan.as_uri()}?mode=ro", uri=True)) as file:
        return [name for (name,) in file.execute("SELECT name FROM routes")]


def drawn(dock: TidelegDock, parameter: str) -> list[QgsFeature]:
    layer = dock.order.layers.layer(parameter)
    return [] if layer is None else list(layer.getFeatures())


def test_the_orders_are_those_of_the_algorithm_and_so_are_the_rows(dock, plan: Path) -> None:
    tick(dock, *MARKS)
    leave_between(dock)
    find(dock)
    report = reported(plan, MARKS_NAMES=";".join(MARKS))
    assert orders_dict(dock.order.found, version=tideleg_version()) == report and len(report["orders"]) == 5
    rows = cells(dock.order.table)
    for row, order, found in zip(rows, report["orders"], dock.order.found.plans):
        assert row[0].split("\n")[0] == f"{order['rank']}. {' - '.join(order['order'])}"
        assert row[1:] == [
            f"{order['depart'][:10]}\n{order['depart'][11:16]}",
            clock_up(found.arrive),
            duration_text(order["minutes"]),
        ]
    assert "3 marks, 9 departures from 2027-06-05 09:00 to 13:00" == dock.order.headline.text()


def test_marks_of_the_route_are_ticked_until_the_user_ticks_others(dock, plan: Path) -> None:
    assert ticked(dock) == {"Gannet", "Cinder"} and dock.order.count.text() == "2 of up to 9 ticked"
    routes = layer_of(dock, "routes")
    assert routes.startEditing()
    assert routes.moveVertex(*moved(*MARKS["Long Sill"]), next(routes.getFeatures()).id(), 1)
    settle(dock.session)
    assert ticked(dock) == {"Long Sill", "Cinder"}
    tick(dock, "Gannet")
    routes.undoStack().undo()
    settle(dock.session)
    assert ticked(dock) == {"Gannet"}


def test_a_mark_that_is_moved_or_added_leaves_the_ticks_as_they_are(dock) -> None:
    tick(dock)
    tick(dock, "Cinder", "Gannet")
    marks = layer_of(dock, "marks")
    cinder = next(row for row in marks.getFeatures() if row["name"] == "Cinder")
    assert marks.startEditing()
    assert marks.changeGeometry(cinder.id(), point(moved(150.0, 900.0)))
    fresh = QgsFeature(marks.fields())
    fresh["name"], fresh["kind"] = "New", "mark"
    fresh.setGeometry(point(moved(300.0, 300.0)))
    assert marks.addFeature(fresh)
    settle(dock.session)
    assert dock.order.marks.count() == 4 and ticked(dock) == {"Cinder", "Gannet"}


def test_ten_marks_or_none_cannot_be_asked_and_it_says_why(dock, plan: Path) -> None:
    tick(dock)
    assert not dock.order.ask.isEnabled() and dock.order.count.text() == "Tick the marks to visit."
    more = [(point(moved(40.0 * number, 200.0)), {"name": f"M{number}", "kind": "mark"}) for number in range(7)]
    append_rows(plan, "marks", more)
    dock.session.plan_again()
    settle(dock.session)
    tick(dock, *MARKS, *(f"M{number}" for number in range(7)))
    assert not dock.order.ask.isEnabled()
    assert dock.order.count.text() == "10 are ticked: up to 9 can be put in order."
    tick(dock, *MARKS, *(f"M{number}" for number in range(6)))
    assert dock.order.ask.isEnabled()


def test_two_marks_of_one_name_are_told_apart_and_both_visited(dock, plan: Path) -> None:
    other = moved(-300.0, 300.0)
    append_rows(plan, "marks", [(point(other), {"name": "Cinder", "kind": "mark", "stay_min": 5.0})])
    dock.session.plan_again()
    settle(dock.session)
    labels = [f"Cinder ({position_text(*place)})" for place in (moved(*MARKS["Cinder"]), other)]
    shown = [dock.order.marks.item(row).text() for row in range(dock.order.marks.count())]
    assert shown == ["Gannet", "Long Sill", *labels]
    tick(dock, "Cinder")
    leave_between(dock)
    find(dock)
    best = dock.order.found.plans[0]
    places = {(round(stop.lon, 7), round(stop.lat, 7)) for stop in best.stops[1:-1]}
    assert places == {tuple(round(one, 7) for one in place) for place in (moved(*MARKS["Cinder"]), other)}
    assert all(label in cells(dock.order.table)[0][0] for label in labels)


def test_the_entry_and_an_exit_chosen_are_kept_to(dock, plan: Path) -> None:
    append_rows(plan, "marks", [(point(moved(-900.0, 100.0)), {"name": "West Beach", "kind": "exit"})])
    dock.session.plan_again()
    settle(dock.session)
    order = dock.order
    assert [order.exit.itemText(row) for row in range(3)] == ["The entry, or the best exit", "West Beach", "Slip"]
    leave_between(dock)
    order.exit.setCurrentIndex(1)
    find(dock)
    assert {plan.names[-1] for plan in order.found.plans} == {"West Beach"}
    assert {plan.names[0] for plan in order.found.plans} == {"Slip"}


def test_the_best_order_is_drawn_at_once_and_a_click_draws_another(at_desk) -> None:
    _, dock = at_desk
    tick(dock, *MARKS)
    leave_between(dock)
    find(dock)
    (line,) = drawn(dock, "ORDERS")
    assert line["rank"] == 1 and "Order of marks (result)" in group_names(dock.session.layers.group())
    click_cell(dock.order.table, 2)
    (line,) = drawn(dock, "ORDERS")
    third = dock.order.found.plans[2]
    assert line["rank"] == 3 and line["order_text"] == " - ".join(third.names)
    places = [(vertex.x(), vertex.y()) for vertex in line.geometry().vertices()]
    assert places == pytest.approx([tuple(one) for one in third.lonlat.tolist()])
    stops = drawn(dock, "ORDER_STOPS")
    assert [row["number"] for row in stops] == list(range(5)) and stops[-1]["arrive_clock"] == clock_up(third.arrive)
    assert dock.order.layers.layer("ORDERS").customProperty("tideleg/result")


def test_an_order_added_is_one_unsaved_edit_and_is_swum_as_the_order_was(dock, plan: Path) -> None:
    tick(dock, *MARKS)
    leave_between(dock)
    find(dock)
    best = dock.order.found.plans[0]
    assert not any(stop.longer_min for stop in best.stops)  # else the route could not hold the stay
    routes = layer_of(dock, "routes")
    dock.order.add.click()
    settle(dock.session)
    assert dock.session.route == "Best order 2027-06-05" and dock.session.depart == best.depart
    assert dock.swim.route.currentText() == dock.session.route
    assert dock.session.swim.total_min == pytest.approx(best.minutes, abs=1.0 / 60.0)
    assert routes.isEditable() and routes.undoStack().count() == 1
    (row,) = [row for row in routes.getFeatures() if row["name"] == dock.session.route]
    assert row["note"].startswith("Leave 2027-06-05") and row["fid"] != NULL
    assert stored_routes(plan) == ["Out"]
    assert dock.order.answer.isEnabled() and "not saved yet" in dock.order.added.text()
    routes.undoStack().undo()
    settle(dock.session)
    assert dock.session.routes == ["Out"] and routes.isEditable()


def test_a_second_order_added_has_a_name_of_its_own_beside_edits_of_the_users(dock, plan: Path) -> None:
    routes = layer_of(dock, "routes")
    assert routes.startEditing()
    index = routes.fields().indexOf("note")
    assert routes.changeAttributeValue(next(routes.getFeatures()).id(), index, "mine")
    settle(dock.session)
    leave_between(dock)
    find(dock)
    for _ in range(2):
        dock.order.add.click()
    settle(dock.session)
    assert dock.session.routes == ["Out", "Best order 2027-06-05", "Best order 2027-06-05 2"]
    click_cell(dock.order.table, 1)
    dock.order.add.click()
    settle(dock.session)
    assert dock.session.route == "Order 2 of 2027-06-05"
    assert routes.undoStack().count() == 4 and stored_routes(plan) == ["Out"]
    assert routes.commitChanges(), routes.commitErrors()
    assert len(stored_routes(plan)) == 4


def test_a_name_that_is_taken_gets_a_number() -> None:
    assert unused_name("A", frozenset()) == "A"
    assert unused_name("A", frozenset({"A", "A 2"})) == "A 3"


def test_without_the_layer_of_routes_nothing_is_added_and_it_says_so(dock) -> None:
    tick(dock)
    tick(dock, "Gannet")
    leave_between(dock)
    QgsProject.instance().removeMapLayer(layer_of(dock, "routes").id())
    settle(dock.session)
    find(dock)
    dock.order.add.click()
    assert "not in the project" in dock.order.added.text()


def test_where_no_order_can_be_swum_it_says_what_stops_it_and_adds_no_route(dock) -> None:
    dock.swim.pace.setValue(0.12)
    settle(dock.session)
    leave_between(dock)
    find(dock)
    row, *notes = cells(dock.order.table)
    assert row[1].startswith("Not feasible: ") and len(row[1]) > len("Not feasible: ")
    assert any("No order can be swum" in " ".join(note) for note in notes)
    assert not dock.order.add.isEnabled()


def test_departures_follow_the_swim_until_they_are_typed(dock) -> None:
    order = dock.order
    shown = lambda: [one.dateTime().toString("yyyy-MM-dd HH:mm") for one in (order.first, order.last)]  # noqa: E731
    assert shown() == [f"{DAY} 08:00", f"{DAY} 14:00"]
    leave(dock, f"{DAY} 12:20")
    settle(dock.session)
    assert shown() == [f"{DAY} 09:00", f"{DAY} 15:00"]
    leave_between(dock)
    leave(dock, f"{DAY} 11:00")
    settle(dock.session)
    assert shown() == [f"{DAY} 09:00", f"{DAY} 13:00"]


def test_times_the_wrong_way_round_are_refused_with_the_remedy(dock) -> None:
    leave_between(dock, f"{DAY} 13:00", f"{DAY} 09:00")
    dock.order.ask.click()
    wait_for(lambda: not dock.order._work.is_busy, "the refusal")
    assert "later end" in dock.order.status.text() and dock.order.found is None


def test_a_stop_answers_at_once_and_leaves_nothing(dock) -> None:
    tick(dock, *MARKS)
    leave_between(dock, f"{DAY} 06:00", f"{DAY} 15:00")
    dock.order.every.setValue(5)
    told = []
    dock.order.ask.click()

    def is_under_way() -> bool:
        told.append(dock.order.status.text())
        return "%" in told[-1]

    wait_for(is_under_way, "words on how far it is")
    dock.order.stop.click()
    assert dock.order.status.text() == "Stopped." and not dock.order._work.is_busy
    wait_for(lambda: QgsApplication.taskManager().countActiveTasks() == 0, "the worker's end")
    assert dock.order.found is None and drawn(dock, "ORDERS") == []


@pytest.mark.parametrize("change", ["mark moved", "tick", "pace", "every"])
def test_what_the_orders_hang_on_makes_them_old(dock, change: str) -> None:
    leave_between(dock)
    find(dock)
    if change == "mark moved":
        marks = layer_of(dock, "marks")
        assert marks.startEditing()
        marks.changeGeometry(next(marks.getFeatures()).id(), point(moved(10.0, 10.0)))
    elif change == "tick":
        tick(dock, "Gannet")
    elif change == "pace":
        dock.swim.pace.setValue(1.1)
    else:
        dock.order.every.setValue(10)
    assert not dock.order.answer.isEnabled() and "ask again" in dock.order.status.text()
    assert dock.order.layers.layer("ORDERS").name().endswith("before the last change")


def test_another_departure_or_route_leaves_the_orders_as_they_are(dock) -> None:
    leave_between(dock)
    find(dock)
    leave(dock, f"{DAY} 11:30")
    settle(dock.session)
    assert dock.order.answer.isEnabled() and dock.order.status.text() == ""


def test_closing_the_dock_takes_the_order_off_the_map(dock) -> None:
    leave_between(dock)
    find(dock)
    dock.close()
    assert drawn(dock, "ORDERS") == [] and "Order of marks (result)" not in group_names()
