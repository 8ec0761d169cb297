"""The dock follows edits, hours and removals; what goes away meanwhile is said so and breaks nothing."""

from __future__ import annotations

import sqlite3
import threading
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from desk import Desk, cells, desk_with_dock, group_names, layer_of, leave, opened, settle, wait_for
from qgis.core import QgsApplication, QgsFeature, QgsProject
from swims import DAY, LEDGE, SLIP, TIDE_ROWS, box, invented_bay, line, moved, point, swum
from tideleg.core.errors import StoppedError, SwimPlanError
from tideleg.dock.dock import TidelegDock
from tideleg.dock.latest_work import LatestWork
from tideleg.dock.result_layers import SHOWN
from tideleg.dock.session import PLANNING, SETTLED
from tideleg.layers_in.copied_source import CopiedSource
from tideleg.layers_in.swim_in import SwimAsked
from tideleg.plan_package.database import row_count
from tideleg.plan_package.settings import read_settings


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


@pytest.fixture()
def dock(at_desk: tuple[Desk, TidelegDock], tmp_path: Path) -> TidelegDock:
    """The dock with a plan swum at ten."""
    opened(at_desk[1], invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    return at_desk[1]


def drawn(dock: TidelegDock, parameter: str) -> list[QgsFeature]:
    layer = dock.results.layer(parameter)
    return [] if layer is None else list(layer.getFeatures())


def stored_routes(plan: Path) -> list[bytes]:
    """What the file holds, asked of SQLite and not of QGIS."""
    with closing(sqlite3.connect(f"{plan.as_uri()}?mode=ro", uri=True)) as file:
        return file.execute("SELECT geom, name FROM routes").fetchall()


def test_a_vertex_moved_and_the_move_undone_are_both_planned_and_neither_saved(dock) -> None:
    routes, before, stored = layer_of(dock, "routes"), dock.session.swim, stored_routes(dock.session.path)
    route = next(routes.getFeatures())
    assert routes.startEditing()
    assert routes.moveVertex(*moved(1500.0, 250.0), route.id(), 1)
    assert dock.session.stage == PLANNING
    settle(dock.session)
    assert dock.session.swim.legs[0].distance_m > before.legs[0].distance_m + 300.0
    assert drawn(dock, "LEGS")[0]["distance_m"] == dock.session.swim.legs[0].distance_m
    routes.undoStack().undo()
    settle(dock.session)
    assert dock.session.swim.legs[0].distance_m == before.legs[0].distance_m
    assert routes.isEditable() and routes.undoStack().canRedo()
    assert stored_routes(dock.session.path) == stored
    routes.rollBack()


def test_an_edit_thrown_away_by_the_user_is_planned_without_it(dock) -> None:
    routes, before = layer_of(dock, "routes"), dock.session.swim
    assert routes.startEditing()
    routes.moveVertex(*moved(1500.0, 250.0), next(routes.getFeatures()).id(), 1)
    settle(dock.session)
    assert routes.rollBack()
    settle(dock.session)
    assert dock.session.swim.legs[0].minutes == before.legs[0].minutes


def test_closed_water_drawn_and_not_saved_is_minded(dock) -> None:
    areas = layer_of(dock, "closed_areas")
    assert areas.startEditing()
    row = QgsFeature(areas.fields())
    row["name"], row["rule"] = "New reserve", "no_entry"
    row.setGeometry(box(250.0, -400.0, 350.0, 400.0))
    assert areas.addFeature(row)
    settle(dock.session)
    assert any("New reserve" in words[0] for words in cells(dock.mind.table))
    assert any(flag["name"] == "New reserve" for flag in drawn(dock, "FLAGS"))
    areas.rollBack()


def test_a_channel_drawn_as_an_area_counts_beside_those_drawn_as_lines(dock) -> None:
    channels = [one for one in QgsProject.instance().mapLayers().values() if "layername=channels" in one.source()]
    areas = next(one for one in channels if one.source().endswith("Polygon"))
    assert areas.startEditing()
    row = QgsFeature(areas.fields())
    row["name"], row["kind"] = "Drawn lane", "small_craft"
    row.setGeometry(box(250.0, -400.0, 350.0, 400.0))
    assert areas.addFeature(row)
    settle(dock.session)
    names = {flag.name for flag in dock.session.swim.flags if flag.kind == "channel"}
    assert names == {"Cut", "Drawn lane"}
    areas.rollBack()


def test_a_route_drawn_and_named_can_be_chosen_before_it_is_saved(dock) -> None:
    routes = layer_of(dock, "routes")
    assert routes.startEditing()
    row = QgsFeature(routes.fields())
    row["name"] = "Short"
    row.setGeometry(line(SLIP, moved(400.0, 0.0), SLIP))
    assert routes.addFeature(row)
    assert dock.session.routes == ["Ledge", "Short"]
    dock.swim.route.setCurrentIndex(1)
    dock.swim.route.activated.emit(1)
    settle(dock.session)
    assert dock.session.swim.route == "Short"
    routes.rollBack()
    settle(dock.session)
    assert dock.session.swim.route == "Ledge" and dock.swim.route.count() == 1


def test_an_edit_that_cannot_be_meant_is_refused_by_layer_row_and_value_until_it_is_mended(dock) -> None:
    soundings = layer_of(dock, "soundings")
    row = next(soundings.getFeatures())
    assert soundings.startEditing()
    assert soundings.changeAttributeValue(row.id(), soundings.fields().indexOf("depth_m"), -4000.0)
    settle(dock.session)
    words = dock.swim.status.text()
    assert soundings.name() in words and f"row {row.id()}" in words and "-4000" in words
    assert dock.session.swim is None and drawn(dock, "LEGS") == [] and cells(dock.legs.table) == []
    soundings.undoStack().undo()
    settle(dock.session)
    assert dock.session.swim is not None and len(drawn(dock, "LEGS")) == 2
    soundings.rollBack()


def test_the_swim_is_drawn_with_its_headings_and_flags_and_marked_as_a_result(dock) -> None:
    swim = dock.session.swim
    assert [row["card_heading"] for row in drawn(dock, "LEGS")] == [leg.card_heading for leg in swim.legs]
    assert len(drawn(dock, "TRACK")) == len(swim.legs)
    assert sorted(row["message"] for row in drawn(dock, "FLAGS")) == sorted(flag.message for flag in swim.flags)
    assert "Planned swim (result)" in group_names(dock.session.layers.group())
    for parameter in ("LEGS", "TRACK", "FLAGS"):
        layer = dock.results.layer(parameter)
        assert layer.customProperty("tideleg/result") and not layer.startEditing()


def test_a_result_layer_taken_out_by_the_user_stays_out_and_the_rest_goes_on(dock) -> None:
    QgsProject.instance().removeMapLayer(dock.results.layer("FLAGS").id())
    leave(dock, f"{DAY} 10:30")
    settle(dock.session)
    assert dock.results.layer("FLAGS") is None
    assert drawn(dock, "LEGS")[0]["depart_local"].startswith(f"{DAY}T10:30")


def test_a_layer_taken_out_of_the_project_is_read_from_the_file(dock) -> None:
    before = dock.session.swim
    QgsProject.instance().removeMapLayer(layer_of(dock, "marks").id())
    assert dock.session.stage == PLANNING
    settle(dock.session)
    assert dock.session.swim.stops[1].name == before.stops[1].name == "Gannet Ledge"


def test_one_half_of_the_channels_taken_out_is_read_from_the_file(dock) -> None:
    channels = [one for one in QgsProject.instance().mapLayers().values() if "layername=channels" in one.source()]
    lines = next(one for one in channels if one.source().endswith("LineString"))
    QgsProject.instance().removeMapLayer(lines.id())
    settle(dock.session)
    assert any(flag.kind == "channel" and flag.name == "Cut" for flag in dock.session.swim.flags)


def test_a_filter_that_hides_rows_is_told(dock) -> None:
    areas = layer_of(dock, "closed_areas")
    assert not any("is filtered" in words[0] for words in cells(dock.mind.table))
    assert areas.setSubsetString("\"name\" = 'none such'")
    settle(dock.session)
    assert any(f"'{areas.name()}' is filtered" in words[0] for words in cells(dock.mind.table))


def test_the_last_layer_gone_leaves_no_plan_and_nothing_drawn(dock) -> None:
    QgsProject.instance().removeMapLayers(
        [one for one, layer in QgsProject.instance().mapLayers().items() if not layer.customProperty("tideleg/result")]
    )
    assert dock.session.path is None and not dock.swim.isEnabled()
    assert QgsProject.instance().mapLayers() == {}


def test_a_project_closed_while_the_swim_is_planned_leaves_no_plan(dock) -> None:
    dock.session.plan_again()
    QgsProject.instance().clear()
    assert dock.session.path is None and dock.session.stage == SETTLED
    wait_for(lambda: QgsApplication.taskManager().countActiveTasks() == 0, "the tasks' end")
    assert dock.session.swim is None


def test_a_project_saved_with_a_plan_is_worked_on_again_with_one_set_of_results(dock, tmp_path: Path) -> None:
    path = str(tmp_path / "saved.qgz")
    assert QgsProject.instance().write(path)
    QgsProject.instance().clear()
    assert QgsProject.instance().read(path)
    settle(dock.session)
    assert dock.session.swim is not None
    assert group_names().count("Planned swim (result)") == 1
    results = [one for one in QgsProject.instance().mapLayers().values() if one.customProperty("tideleg/result")]
    wait_for(lambda: dock.time.swim is not None, "the swim in time")
    assert len(results) == len(SHOWN) and all(layer.featureCount() for layer in results)


def test_a_plan_file_that_goes_away_meanwhile_is_said_so(dock) -> None:
    dock.session.path.rename(dock.session.path.with_name("elsewhere.gpkg"))
    dock.session.step_departure(1)
    settle(dock.session)
    assert dock.session.swim is None
    assert "bay.gpkg" in dock.swim.status.text() and not dock.swim.again.isHidden()


def test_stop_ends_the_planning_and_plan_again_takes_it_up(dock) -> None:
    dock.session.step_departure(1)
    dock.swim.stop.click()
    assert dock.session.stage == SETTLED and dock.swim.status.text() == "Stopped."
    assert dock.session.swim is None and cells(dock.legs.table) == []
    dock.swim.again.click()
    settle(dock.session)
    assert f"{dock.session.swim.depart:%H:%M}" == "10:10" and dock.swim.status.isHidden()


def test_of_many_hours_in_a_row_only_the_last_is_shown(dock) -> None:
    shown = []
    dock.session.swim_changed.connect(
        lambda: dock.session.stage != PLANNING and dock.session.swim and shown.append(dock.session.swim.depart)
    )
    for _ in range(6):
        dock.swim.later.click()
    settle(dock.session)
    assert {f"{one:%H:%M}" for one in shown} == {"11:00"}


def test_newer_work_wins_though_the_older_ends_later(qgis_app) -> None:
    """The older is held until the newer has answered; it is cancelled, and nobody hears of it."""
    work, heard, started, held = LatestWork(), [], threading.Event(), threading.Event()

    def old(is_cancelled, tell):
        started.set()
        assert held.wait(60.0)
        tell("part of the old")
        return f"old, cancelled: {is_cancelled()}"

    ways = {"done": heard.append, "refused": heard.append, "stopped": lambda: heard.append("stopped")}
    work.start("old", old, heard.append, **ways)
    wait_for(started.is_set, "the older work to start")
    work.start("new", lambda _, tell: tell("part of the new") or "new", heard.append, **ways)
    wait_for(lambda: not work.is_busy, "the newer work")
    held.set()
    wait_for(lambda: not work._running, "the older work's end")
    assert heard == ["part of the new", "new"]


def test_a_task_cancelled_in_qgis_itself_is_heard_as_stopped(qgis_app) -> None:
    work, heard, started = LatestWork(), [], threading.Event()

    def endless(is_cancelled, _tell):
        started.set()
        while not is_cancelled():
            threading.Event().wait(0.01)
        raise StoppedError

    work.start("endless", endless, heard.append, heard.append, heard.append, lambda: heard.append("stopped"))
    wait_for(started.is_set, "the work to start")
    QgsApplication.taskManager().cancelAll()
    wait_for(lambda: not work.is_busy, "its end")
    assert heard == ["stopped"]


def test_a_defect_in_the_work_is_told_and_logged(qgis_app) -> None:
    work, heard, logged = LatestWork(), [], []
    receive = lambda text, tag, _level: logged.append((tag, text))  # noqa: E731  disconnected by the same object
    QgsApplication.messageLog().messageReceived.connect(receive)
    work.start("broken", lambda *_: 1 // 0, heard.append, heard.append, heard.append, lambda: heard.append("stopped"))
    wait_for(lambda: bool(heard), "the refusal")
    QgsApplication.messageLog().messageReceived.disconnect(receive)
    assert "defect" in heard[0]
    assert any(tag == "Tideleg" and "ZeroDivisionError" in text for tag, text in logged)


def test_the_window_lives_while_a_swim_is_planned(dock) -> None:
    """A timer of the main thread goes on ticking between the request and the answer."""
    from qgis.PyQt.QtCore import QTimer

    ticks, timer = [], QTimer()
    timer.timeout.connect(lambda: dock.session._planner.is_busy and ticks.append(1))
    timer.start(0)
    dock.session.step_departure(1)
    settle(dock.session)
    timer.stop()
    assert len(ticks) > 3


def test_marks_moved_to_the_ledge_name_the_stop(dock) -> None:
    marks = layer_of(dock, "marks")
    ledge = next(row for row in marks.getFeatures() if row["name"] == "Gannet Ledge")
    assert marks.startEditing()
    assert marks.changeGeometry(ledge.id(), point(moved(5000.0, 0.0)))
    settle(dock.session)
    assert "Gannet Ledge" not in [row[0] for row in cells(dock.legs.table)]
    assert marks.changeGeometry(ledge.id(), point(LEDGE))
    settle(dock.session)
    assert cells(dock.legs.table)[0][0] == "Gannet Ledge"
    marks.rollBack()


def test_what_an_algorithm_writes_into_the_plan_counts_at_the_next_planning(dock) -> None:
    from tideleg.plan_package.store import append_rows

    pair = (SLIP, LEDGE)
    append_rows(dock.session.path, "routes", [(line(*pair), {"name": "Added beside"})])
    dock.session.plan_again()
    settle(dock.session)
    assert len(dock.session.layers.copies()["routes"].texts("name")) == 2
    assert dock.session.layers.copies()["tides"].featureCount() == len(TIDE_ROWS)


def test_a_layer_that_does_not_give_all_its_rows_is_refused_and_not_taken_as_empty(dock) -> None:
    assert row_count(dock.session.path, "closed_areas") == 1 and row_count(dock.session.path, "tides") == len(TIDE_ROWS)
    with pytest.raises(SwimPlanError, match="'Closed areas' gave 1 of its rows"):
        CopiedSource([layer_of(dock, "closed_areas")], least=2)


def test_every_row_is_copied_while_several_layers_are_edited(dock) -> None:
    """QGIS puts the file into another mode of journal when the first layer is edited."""
    areas, routes = layer_of(dock, "closed_areas"), layer_of(dock, "routes")
    assert areas.startEditing() and routes.startEditing()
    assert areas.deleteFeature(next(areas.getFeatures()).id())
    dock.session.layers._copies.clear()
    counts = {name: copy.featureCount() for name, copy in dock.session.layers.copies().items()}
    assert counts["closed_areas"] == 0 and counts["routes"] == 1 and counts["tides"] == len(TIDE_ROWS)
    assert counts["depth_contours"] == 2 and counts["channels"] == 1 and counts["stream_rates"] == 13
    areas.rollBack()
    routes.rollBack()


def test_under_the_mouse_chart_and_water_are_kept_and_the_last_word_is_the_plans(dock) -> None:
    routes, told = layer_of(dock, "routes"), []
    dock.session.swim_changed.connect(
        lambda: told.append((dock.session.request, dock.session.swim, dock.session.stage))
    )
    route = next(routes.getFeatures())
    assert routes.startEditing()
    assert routes.moveVertex(*moved(620.0, 40.0), route.id(), 1)
    settle(dock.session)
    swims = {id(swim): (request, swim) for request, swim, stage in told if swim is not None and stage != PLANNING}
    (quick_request, quick), (_, exact), *_ = swims.values()
    assert quick_request.clock.start < quick_request.depart  # kept from before: wider than this swim
    assert dock.session.request.clock.start == dock.session.request.depart
    assert [leg.minutes for leg in quick.legs] == pytest.approx([leg.minutes for leg in exact.legs], rel=0.01)
    assert exact.legs == dock.session.swim.legs
    ran = swim_of_algorithm(dock, routes)
    assert [leg["minutes"] for leg in ran["legs"]] == pytest.approx([leg.minutes for leg in exact.legs], abs=1e-3)
    routes.rollBack()


def swim_of_algorithm(dock: TidelegDock, routes) -> dict:
    """The report of planswim for the routes as they are drawn now."""
    folder = dock.session.path.parent
    return swum(
        dock.session.path, folder, DEPART=dock.session.depart.isoformat(), ROUTE=dock.session.route, ROUTES=routes
    )


def test_what_is_kept_does_not_outlive_a_change_of_the_chart_or_reach_too_far(dock) -> None:
    kept = dock.session._planner._kept
    asked, copies = SwimAsked(**dock.session.asked()), dock.session.layers.copies()
    assert kept.of(dock.session.path, copies, asked) is not None
    later = replace(asked, depart=f"{DAY}T14:59+00:00")
    assert kept.of(dock.session.path, copies, later) is not None
    assert kept.of(dock.session.path, copies, replace(asked, depart=f"{DAY}T15:01+00:00")) is None
    assert kept.of(dock.session.path.with_name("other.gpkg"), copies, asked) is None
    areas, routes = layer_of(dock, "closed_areas"), layer_of(dock, "routes")
    assert areas.startEditing() and routes.startEditing()
    row = QgsFeature(areas.fields())
    row["name"], row["rule"] = "New reserve", "no_entry"
    row.setGeometry(box(250.0, -400.0, 350.0, 400.0))
    assert areas.addFeature(row)
    assert kept.of(dock.session.path, dock.session.layers.copies(), asked) is None
    settle(dock.session)
    kept = dock.session._planner._kept
    assert kept.of(dock.session.path, dock.session.layers.copies(), asked) is not None
    routes.moveVertex(*moved(9000.0, 250.0), next(routes.getFeatures()).id(), 1)
    assert kept.of(dock.session.path, dock.session.layers.copies(), asked) is None
    areas.rollBack()
    routes.rollBack()


def test_settings_count_before_they_are_saved(dock) -> None:
    before, table = dock.session.swim, layer_of(dock, "settings")
    rows = {row["key"]: row.id() for row in table.getFeatures()}
    value = table.fields().indexOf("value")
    assert table.startEditing()
    assert table.changeAttributeValue(rows["zone"], value, "Asia/Kathmandu")
    assert table.changeAttributeValue(rows["heading_step_deg"], value, "1")
    settle(dock.session)
    assert dock.session.swim.zone == "Asia/Kathmandu" and dock.session.swim.heading_step_deg == 1.0
    assert dock.session.swim.depart == before.depart  # the same moment on another clock
    assert dock.session.swim.depart.utcoffset() == timedelta(hours=5, minutes=45)
    assert read_settings(dock.session.path)["zone"] == before.zone
    assert table.changeAttributeValue(rows["zone"], value, "Nowhere/Land")
    settle(dock.session)
    assert "Nowhere/Land" in dock.session.problem
    table.rollBack()
    settle(dock.session)
    assert dock.session.swim.zone == before.zone


def test_a_plan_that_went_bad_gives_no_swim_from_the_water_kept_of_it(qgis_app, tmp_path: Path) -> None:
    plan = invented_bay(tmp_path / "bay.gpkg")
    with desk_with_dock() as (_, dock):
        opened(dock, plan, depart=f"{DAY} 10:00")
        rates = [layer for layer in QgsProject.instance().mapLayers().values() if "stream_rates" in layer.source()]
        QgsProject.instance().removeMapLayers([layer.id() for layer in rates])
        settle(dock.session)
        routes = layer_of(dock, "routes")
        routes.startEditing()
        feature = next(routes.getFeatures())
        for number in range(3):
            if number == 1:  # another program writes into the file
                with closing(sqlite3.connect(plan)) as connection, connection:
                    connection.execute("UPDATE stream_rates SET hour = 17 WHERE hour = 3")
            routes.moveVertex(*moved(1100.0 - 10.0 * number, 250.0), feature.id(), 1)
            settle(dock.session)
            assert (dock.session.swim is not None) == (number == 0)
        assert "hour" in dock.session.problem and "17" in dock.session.problem
        assert dock.legs.table.rowCount() == 0
        routes.rollBack()
