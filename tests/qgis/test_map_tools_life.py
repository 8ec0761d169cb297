"""What may happen around the tools: other systems, layers that go, files that are held, a plan and a plugin that go."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest
import tideleg
from desk import Desk, desk_with_dock, flush_deletions, layer_of, opened, settle
from map_hand import LEFT, Hand
from pyproj import Geod
from qgis.core import QgsFeature, QgsProject
from qgis.gui import QgsGui, QgsMapToolPan
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QAction
from swims import DAY, LEDGE, SLIP, invented_bay, moved, point
from tideleg.dock.dock import TidelegDock
from tideleg.map_tools.row_form import RowForm

AWAY = moved(700.0, -300.0)
EVERY = (
    "place_mark",
    "move_mark",
    "draw_route",
    "edit_route",
    "channel_line",
    "channel_area",
    "closed_area",
    "stream_station",
    "eddy_area",
    "landmark",
)


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


@pytest.fixture()
def hand(at_desk: tuple[Desk, TidelegDock], tmp_path: Path) -> Hand:
    """A hand over the invented bay, swum at ten."""
    opened(at_desk[1], invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    made = Hand(*at_desk)
    made.show()
    return made


def begun(hand: Hand, name: str) -> None:
    """Take a tool and begin with it: something is in hand or drawn."""
    hand.take(name)
    if name in ("move_mark", "edit_route"):
        hand.click(LEDGE)
    else:
        hand.click(SLIP)
    hand.move(AWAY)


def on_canvas(hand: Hand) -> int:
    """How many things lie over the map that are there to be seen."""
    return len([item for item in hand.canvas.scene().items() if item.isVisible()])


# ---------------------------------------------------------------- reference systems


@pytest.mark.parametrize("crs", ["EPSG:3857", "EPSG:32628", "EPSG:3395"])
def test_in_any_system_of_the_map_what_is_drawn_lies_where_the_cursor_was(hand: Hand, crs: str) -> None:
    hand.show(crs)
    hand.take("place_mark")
    hand.click(AWAY)
    hand.fill(name="Far Stack")
    row = next(row for row in layer_of(hand.dock, "marks").getFeatures() if row["name"] == "Far Stack")
    at = row.geometry().asPoint()
    assert Geod(ellps="WGS84").inv(at.x(), at.y(), *AWAY)[2] < 4.0
    hand.take("draw_route")
    hand.click(moved(5.0, 5.0))
    hand.click(moved(1096.0, 247.0))
    hand.key(Qt.Key.Key_Return)
    hand.fill(name="Snapped")
    row = next(row for row in layer_of(hand.dock, "routes").getFeatures() if row["name"] == "Snapped")
    assert [(vertex.x(), vertex.y()) for vertex in row.geometry().vertices()] == [SLIP, LEDGE]
    for name in ("marks", "routes"):
        layer_of(hand.dock, name).rollBack()


def test_the_system_may_change_while_a_route_is_drawn(hand: Hand) -> None:
    hand.take("draw_route")
    hand.click(SLIP)
    hand.show("EPSG:3857")
    hand.click(LEDGE)
    hand.key(Qt.Key.Key_Return)
    hand.fill(name="Both")
    row = next(row for row in layer_of(hand.dock, "routes").getFeatures() if row["name"] == "Both")
    assert [(vertex.x(), vertex.y()) for vertex in row.geometry().vertices()] == [SLIP, LEDGE]
    layer_of(hand.dock, "routes").rollBack()


# ---------------------------------------------------------------- the user's own edits


def test_the_users_own_edits_stay_as_they_are(hand: Hand) -> None:
    marks = layer_of(hand.dock, "marks")
    assert marks.startEditing()
    own = QgsFeature(marks.fields())
    own["name"], own["kind"] = "Own", "mark"
    own.setGeometry(point(moved(900.0, -500.0)))
    assert marks.addFeature(own)
    hand.take("place_mark")
    hand.click(AWAY)
    hand.fill(name="Ours")
    QTest.mouseClick(hand.section.undo, LEFT)
    hand.key(Qt.Key.Key_Escape)
    assert marks.isEditable() and marks.isModified()
    assert [row["name"] for row in marks.editBuffer().addedFeatures().values()] == ["Own"]
    with closing(sqlite3.connect(f"{hand.dock.session.path.as_uri()}?mode=ro", uri=True)) as file:
        assert file.execute("SELECT count(*) FROM marks").fetchone() == (2,)
    marks.rollBack()


def test_leaving_a_tool_and_unloading_neither_save_nor_throw_away(qgis_app, tmp_path: Path) -> None:
    with desk_with_dock() as (desk, dock):
        opened(dock, invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
        hand = Hand(desk, dock)
        hand.show()
        hand.take("place_mark")
        hand.click(AWAY)
        hand.fill(name="Ours")
        marks = layer_of(dock, "marks")
        dock.drawing.put_away()
        assert marks.isModified()
        dock.close()
        assert marks.isModified() and [row["name"] for row in marks.editBuffer().addedFeatures().values()] == ["Ours"]
        marks.rollBack()


def test_what_the_user_deletes_while_it_is_in_hand_is_said_to_be_gone(hand: Hand) -> None:
    marks = layer_of(hand.dock, "marks")
    hand.take("move_mark")
    hand.click(LEDGE)
    assert marks.startEditing()
    ledge = next(row.id() for row in marks.getFeatures() if row["name"] == "Gannet Ledge")
    assert marks.deleteFeature(ledge)
    count = marks.undoStack().count()
    hand.click(AWAY)
    assert "did not take the change" in hand.section.problem.text()
    assert marks.undoStack().count() == count and len(list(marks.getFeatures())) == 1
    marks.rollBack()


# ---------------------------------------------------------------- layers and files that refuse


@pytest.mark.parametrize("name", EVERY)
def test_a_layer_that_takes_no_edits_is_told_before_anything_is_drawn(hand: Hand, name: str) -> None:
    tool = hand.section.tools.tools[name]
    layer = hand.section.plan.layer(*tool.needs)
    layer.setReadOnly(True)
    hand.take(name)
    hand.click(LEDGE)
    assert f"'{layer.name()}' cannot be edited" in hand.section.problem.text()
    assert any("cannot be edited" in words for words in hand.tip())  # beside the cursor too
    assert any("cannot be edited" in words for words in hand.move(moved(1120.0, 260.0)))  # while it rests near by
    hand.click(AWAY)
    hand.key(Qt.Key.Key_Return)
    assert not layer.isEditable() and not tool.can_finish and not getattr(tool, "is_carrying", False)
    layer.setReadOnly(False)


@pytest.mark.parametrize("name", EVERY)
def test_a_layer_that_was_taken_out_of_the_project_is_told_with_what_to_do(hand: Hand, name: str) -> None:
    tool = hand.section.tools.tools[name]
    begun(hand, name)
    layer = hand.section.plan.layer(*tool.needs)
    title = layer.name().split(" (")[0]
    QgsProject.instance().removeMapLayer(layer.id())
    assert hand.section.tools.used is None  # its drawing had nowhere to go
    assert f"'{title}' of the plan is not in the project" in hand.section.problem.text()
    hand.take(name)
    if name != "move_mark":  # there is no mark to take hold of
        hand.click(AWAY)
        assert "Browser" in hand.section.problem.text()
    settle(hand.dock.session)


def test_while_another_program_holds_the_file_nothing_drawn_is_lost(hand: Hand) -> None:
    """What is drawn stands in QGIS's buffer, or is refused in words with the drawing kept: never gone."""
    path = hand.dock.session.path
    hand.take("draw_route")
    hand.click(SLIP)
    hand.click(LEDGE)
    with closing(sqlite3.connect(path, isolation_level=None, timeout=0.1)) as other:
        other.execute("BEGIN IMMEDIATE")
        hand.key(Qt.Key.Key_Return)
        hand.fill(name="Held")
        routes = layer_of(hand.dock, "routes")
        names = [row["name"] for row in routes.getFeatures()]
        kept = [place.lonlat for place in hand.section.tools.used.vertices]
        assert "Held" in names or (kept == [SLIP, LEDGE] and hand.section.problem.text())
        other.execute("ROLLBACK")
    if "Held" not in names:
        hand.key(Qt.Key.Key_Return)
        hand.fill(name="Held")
    assert routes.commitChanges(), routes.commitErrors()
    with closing(sqlite3.connect(f"{path.as_uri()}?mode=ro", uri=True)) as file:
        assert ("Held",) in file.execute("SELECT name FROM routes").fetchall()


# ---------------------------------------------------------------- tools that come and go


def test_the_tool_used_before_comes_back(hand: Hand) -> None:
    pan = QgsMapToolPan(hand.canvas)
    hand.canvas.setMapTool(pan)
    hand.take("place_mark")
    hand.take("draw_route")
    assert hand.section.tool_actions["draw_route"].isChecked()
    assert not hand.section.tool_actions["place_mark"].isChecked()
    hand.key(Qt.Key.Key_Escape)
    assert hand.canvas.mapTool() is pan and not hand.section.tool_actions["draw_route"].isChecked()
    hand.take("measure_leg")
    hand.take("measure_leg")  # a second click puts it away
    assert hand.canvas.mapTool() is pan
    hand.canvas.unsetMapTool(pan)


def test_another_tool_chosen_in_qgis_puts_ours_away(hand: Hand) -> None:
    seen = on_canvas(hand)
    begun(hand, "draw_route")
    assert on_canvas(hand) > seen
    pan = QgsMapToolPan(hand.canvas)
    hand.canvas.setMapTool(pan)
    assert hand.section.tools.used is None and on_canvas(hand) == seen
    assert not any(action.isChecked() for action in hand.section.tool_actions.values())
    hand.canvas.unsetMapTool(pan)


@pytest.mark.parametrize("name", [*EVERY, "measure_leg"])
def test_nothing_stays_on_the_map_when_the_plan_is_closed(hand: Hand, name: str) -> None:
    seen = on_canvas(hand)
    begun(hand, name)
    hand.dock.session.close_plan()
    assert hand.section.tools.used is None and on_canvas(hand) == seen
    assert not hand.section.isEnabled() and hand.section.body.isHidden()
    assert not any(tool.tip.isVisible() for tool in hand.section.tools.tools.values())
    assert not [form for form in hand.canvas.window().findChildren(RowForm) if form.isVisible()]


def test_another_plan_puts_the_tool_away(hand: Hand, tmp_path: Path) -> None:
    begun(hand, "draw_route")
    opened(hand.dock, invented_bay(tmp_path / "second.gpkg"), depart=f"{DAY} 10:00")
    assert hand.section.tools.used is None
    hand.take("draw_route")
    assert hand.section.tools.used.vertices == []


def test_a_dock_that_is_closed_puts_the_tool_away(hand: Hand) -> None:
    begun(hand, "draw_route")
    hand.dock.close()
    assert hand.section.tools.used is None


def test_a_life_with_each_tool_in_use_leaves_nothing_behind(qgis_app, tmp_path: Path) -> None:
    plan, desk, seen = invented_bay(tmp_path / "bay.gpkg"), Desk(), []
    QgsProject.instance().clear()
    desk.window.show()
    for life in range(len(EVERY) + 1):
        plugin = tideleg.classFactory(desk)
        plugin.initGui()
        plugin.dock_action.trigger()
        if life == 0:
            opened(plugin.dock, plan, depart=f"{DAY} 10:00")
        else:
            settle(plugin.dock.session)
        hand = Hand(desk, plugin.dock)
        hand.show()
        begun(hand, [*EVERY, "measure_leg"][life])
        plugin.unload()
        hand = None
        flush_deletions()
        assert desk.canvas.mapTool() is None
        seen.append(
            (
                len(desk.canvas.scene().items()),
                len(desk.canvas.viewport().children()),
                len(desk.canvas.children()),
                desk.canvas.receivers(desk.canvas.mapToolSet),
                len(QgsGui.shortcutsManager().listActions()),
                len(desk.window.findChildren(QAction)),
            )
        )
    assert all(one == seen[0] for one in seen[1:])
    QgsProject.instance().clear()
    desk.canvas.stopRendering()
    desk.window.deleteLater()
    flush_deletions()


# ---------------------------------------------------------------- the section


def test_without_a_plan_the_section_says_what_to_do(at_desk) -> None:
    _, dock = at_desk
    assert not dock.drawing.isEnabled() and dock.drawing.hint.text() and dock.drawing.body.isHidden()


def test_every_control_has_a_name_a_tooltip_and_is_reached_by_keys(hand: Hand) -> None:
    section = hand.section
    for button in section.buttons.values():
        assert button.accessibleName() and button.accessibleDescription() and button.toolTip()
        assert button.focusPolicy() & Qt.FocusPolicy.TabFocus and not button.icon().isNull()
    keys = [action.shortcut().toString() for action in section.tool_actions.values()]
    assert all(keys) and len(set(keys)) == len(keys)
    tips = [button.toolTip() for button in section.buttons.values()]
    assert all(f"({key})" in tip for key, tip in zip(keys, tips))
    assert "metres" in tips[0] and "degrees" in tips[-1]  # QGIS takes what stands in brackets out of such tips
    assert section.position.accessibleName() and section.position.toolTip()


def test_each_tool_says_what_to_do_next(hand: Hand) -> None:
    said = set()
    for name in hand.section.buttons:
        hand.take(name)
        said.add(hand.section.next.text())
    assert len(said) == len(hand.section.buttons)


def test_what_stands_beside_the_cursor_goes_when_the_map_moves_below_it(hand: Hand) -> None:
    hand.take("place_mark")
    assert hand.move(AWAY)
    hand.show(around_m=1000.0)
    assert hand.tip() == []
    assert hand.move(LEDGE)


def test_the_keys_of_a_tool_take_it(hand: Hand) -> None:
    hand.canvas.window().activateWindow()
    QTest.qWaitForWindowActive(hand.canvas.window())
    QTest.keyClick(hand.canvas.window(), Qt.Key.Key_3, Qt.KeyboardModifier.AltModifier)
    assert hand.section.tools.used is hand.section.tools.tools["draw_route"]
