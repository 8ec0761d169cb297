"""The dock's section on tables: what it opens, what the swim makes of an edit, and what is left when all is gone."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
import tideleg
from desk import Desk, desk_with_dock, flush_deletions, layer_of, opened, settle, wait_for
from grids import retype, shown_rows
from qgis.core import QgsGeometry, QgsProject
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication, QPushButton
from swims import DAY, invented_bay
from tideleg.dock.dock import TidelegDock
from tideleg.dock.tables.table_window import TableWindow
from tideleg.plan_package.schema import LAYER_BY_NAME
from tideleg.plan_package.store import append_rows


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


@pytest.fixture()
def bay(tmp_path: Path) -> Path:
    return invented_bay(tmp_path / "bay.gpkg")


def click(button: QPushButton) -> None:
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def from_menu(dock: TidelegDock, button: str, table: str) -> TableWindow:
    action = next(one for one in dock.tables.buttons[button].menu().actions() if one.objectName() == table)
    action.trigger()
    return dock.tables.windows.open_ones[table]


def test_without_a_plan_the_section_says_what_to_do(at_desk) -> None:
    _, dock = at_desk
    assert not dock.tables.isEnabled() and "Open a plan" in dock.tables.hint.text()


def test_every_table_that_is_offered_opens_once_with_the_schemas_columns(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay)
    names = [
        one.objectName() for button in dock.tables.buttons.values() if button.menu() for one in button.menu().actions()
    ]
    assert {"tides", "stream_stations", "stream_rates", "stream_events", "stream_series", "stream_constants"} <= set(
        names
    )
    for name in [*names, "swimmers", "ferries"]:
        window = dock.tables.windows.open(name)
        assert window is dock.tables.windows.open(name) and window.isVisible()
        assert window.model.columnCount() == len(LAYER_BY_NAME[name].fields)
        assert window.model.rowCount() == layer_of(dock, name).featureCount()
        assert [one for one in window.model.problems() if one.severity == "stop"] == []
        window.release()
    assert dock.tables.windows.open_ones == {}


def test_the_swim_is_planned_again_by_a_pace_typed_into_the_table_and_nothing_is_saved(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    before = dock.session.swim.legs[0].minutes
    click(dock.tables.buttons["swimmers"])
    window = dock.tables.windows.open_ones["swimmers"]
    row = [one[0] for one in shown_rows(window)].index(dock.session.ticked[0])
    retype(window, row, "pace_m_s", "1.2")
    settle(dock.session)
    assert dock.session.swim.legs[0].minutes < before
    wait_for(lambda: "Swimmers" in dock.tables.unsaved.text(), "the words on what is not saved")
    window.close()
    flush_deletions()
    assert "Swimmers: edits are not saved yet" in dock.tables.words.text() and layer_of(dock, "swimmers").isModified()
    layer_of(dock, "swimmers").rollBack()


def test_a_table_taken_out_of_the_project_comes_back_into_the_plans_group(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay)
    group = dock.session.layers.group()
    QgsProject.instance().removeMapLayer(layer_of(dock, "ferries").id())
    click(dock.tables.buttons["ferries"])
    layer = layer_of(dock, "ferries")
    assert group.findLayer(layer.id()) is not None and dock.tables.windows.open_ones["ferries"].isVisible()


def test_a_name_that_the_plan_does_not_know_is_marked_and_its_own_names_are_offered(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay)
    append_rows(bay, "ferries", [(None, {"channel": "Nowhere Cut", "time": "10:00"})])
    window = dock.tables.windows.open("ferries")
    assert any("nothing of this name" in one.words for one in window.model.problems())
    assert window.model.names["channel"] == layer_names(dock, "channels")


def test_a_transits_landmarks_and_mark_are_those_of_the_plan(at_desk, bay: Path) -> None:
    line, place = QgsGeometry.fromWkt("LineString (10 50, 10 50.01)"), QgsGeometry.fromWkt("Point (10 50.01)")
    append_rows(bay, "landmarks", [(place, {"name": "Mill"})])
    append_rows(bay, "transits", [(line, {"mark": "Nowhere", "front": "Mill", "rear": "Mast"})])
    _, dock = at_desk
    opened(dock, bay)
    window = dock.tables.windows.open("transits")
    doubts = {one.field for one in window.model.problems() if "nothing of this name" in one.words}
    assert doubts == {"mark", "rear"}
    assert window.model.names["front"] == window.model.names["rear"] == ["Mill"]
    assert window.model.names["mark"] == layer_names(dock, "marks")
    window.release()


def layer_names(dock: TidelegDock, table: str) -> list[str]:
    return list(dict.fromkeys(dock.session.layers.copies()[table].texts("name")))


def test_times_follow_the_plans_zone(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay)
    window = dock.tables.windows.open("tides")
    before = shown_rows(window)[0][1]
    dock.session.zone_name = "UTC"
    dock.session.choices_changed.emit()
    assert shown_rows(window)[0][1] != before and window.model.columns[1].title == "Time (UTC)"


def test_the_windows_go_with_the_plan_and_edits_stay(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay)
    window = from_menu(dock, "tides", "tides")
    retype(window, 0, "height_m", "3.33")
    layer = layer_of(dock, "tides")
    dock.session.close_plan()
    flush_deletions()
    assert dock.tables.windows.open_ones == {} and layer.isModified()
    layer.rollBack()


def test_the_reader_of_printed_tables_is_offered_where_there_is_one(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay)
    assert not dock.tables.windows.open("tides").read.isHidden()
    assert not dock.tables.windows.open("stream_rates").read.isHidden()
    assert dock.tables.windows.open("swimmers").read.isHidden()


def test_a_plugin_unloaded_with_open_tables_leaves_no_window_and_no_listener_and_keeps_the_edits(
    qgis_app, bay: Path
) -> None:
    def listeners() -> dict[str, int]:
        layer, project = layer_of(plugin.dock, "tides"), QgsProject.instance()
        signals = (layer.layerModified, layer.featureAdded, layer.attributeValueChanged, layer.subsetStringChanged)
        heard = {one.signal: layer.receivers(one) for one in signals}
        return {**heard, "removed": project.receivers(project.layersWillBeRemoved)}

    QgsProject.instance().clear()
    desk = Desk()
    desk.window.show()
    plugin = tideleg.classFactory(desk)
    plugin.initGui()
    plugin.dock_action.trigger()
    opened(plugin.dock, bay)
    before = listeners()
    for _ in range(3):
        window = plugin.dock.tables.windows.open("tides")
        window.release()
        flush_deletions()
    assert listeners() == before
    window = plugin.dock.tables.windows.open("tides")
    retype(window, 0, "height_m", "3.33")
    retype(window, 1, "height_m", "not a height")
    layer = layer_of(plugin.dock, "tides")
    plugin.unload()
    flush_deletions()
    assert layer.isModified() and [one for one in QApplication.topLevelWidgets() if isinstance(one, TableWindow)] == []
    layer.rollBack()
    desk.canvas.stopRendering()
    desk.canvas.waitWhileRendering()
    QgsProject.instance().clear()
    desk.window.deleteLater()
    flush_deletions()
