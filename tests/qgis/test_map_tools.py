"""Marks, routes, channels and areas drawn on the real canvas: through edit buffers, with undo, never saved by us."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest
from desk import Desk, cells, desk_with_dock, layer_of, opened
from map_hand import LEFT, RIGHT, Hand
from pyproj import Geod
from qgis.core import QgsProject, QgsVectorLayer
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtTest import QTest
from swims import DAY, LEDGE, SLIP, invented_bay, moved
from tideleg.dock.dock import TidelegDock
from tideleg.plan_package.store import create_plan

AWAY = moved(700.0, -300.0)


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


@pytest.fixture()
def hand(at_desk: tuple[Desk, TidelegDock], tmp_path: Path) -> Iterator[Hand]:
    """A hand over the invented bay, swum at ten; whatever is being edited is thrown away at the end."""
    opened(at_desk[1], invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    yield shown(*at_desk)


def shown(desk: Desk, dock: TidelegDock) -> Hand:
    made = Hand(desk, dock)
    made.show()
    return made


def rows(hand: Hand, name: str) -> dict[str, list[tuple[float, float]]]:
    """The vertices of a layer's rows by their names, as the map has them."""
    return {
        row["name"]: [(vertex.x(), vertex.y()) for vertex in row.geometry().vertices()]
        for row in layer_of(hand.dock, name).getFeatures()
    }


def stored(hand: Hand, name: str) -> int:
    """How many rows the file holds, asked of SQLite and not of QGIS."""
    with closing(sqlite3.connect(f"{hand.dock.session.path.as_uri()}?mode=ro", uri=True)) as file:
        return file.execute(f'SELECT count(*) FROM "{name}"').fetchone()[0]


def apart_m(one: tuple[float, float], other: tuple[float, float]) -> float:
    return Geod(ellps="WGS84").inv(*one, *other)[2]


def commands(layer: QgsVectorLayer) -> list[str]:
    return [layer.undoStack().text(number) for number in range(layer.undoStack().count())]


# ---------------------------------------------------------------- marks


def test_while_a_mark_is_placed_depth_distance_and_both_bearings_stand_beside_the_cursor(hand: Hand) -> None:
    hand.take("place_mark")
    said = hand.move(LEDGE)
    assert any(line.startswith("Charted depth 9.2 m") for line in said)  # the bay's sounding, 10 m off
    leg = hand.dock.session.swim.legs[0]
    bearings = f"{leg.bearing_true_deg:03.0f}° true, {leg.bearing_mag_deg:03.0f}° magnetic"
    distance = next(line for line in said if line.startswith("From Kettle Slip: "))
    assert said[said.index(distance) + 1] == bearings
    assert float(distance.split(": ")[1].split(" m")[0]) == pytest.approx(leg.distance_m, abs=4.0)  # a pixel is 4 m


def test_where_no_depth_is_charted_that_is_said_and_on_land_too(hand: Hand) -> None:
    hand.take("place_mark")
    said = hand.move(moved(300, -900))
    assert said[said.index("Charted depth not known:") + 1] == "no sounding or contour within 500 m"
    assert "On land" in hand.move(moved(-200, 0))
    assert not any(" 0.0 m" in line for line in hand.tip())


def test_a_click_asks_for_name_kind_and_stay_and_places_the_mark_in_one_step_of_undo(hand: Hand) -> None:
    marks = layer_of(hand.dock, "marks")
    hand.take("place_mark")
    hand.click(AWAY)
    begun = {name: wrapper.value() for name, wrapper in hand.form().wrappers.items()}
    assert list(begun) == ["name", "kind", "stay_min", "charted_depth_m"]
    assert [begun[name] for name in ("name", "kind", "stay_min")] == ["Mark 1", "mark", 0.0]
    assert "Mark 1" not in rows(hand, "marks")  # not before the form is filled in
    hand.fill(name="Far Stack", stay_min=15.0)
    row = next(row for row in marks.getFeatures() if row["name"] == "Far Stack")
    assert (row["kind"], row["stay_min"]) == ("mark", 15.0)
    assert apart_m(rows(hand, "marks")["Far Stack"][0], AWAY) < 4.0
    assert commands(marks) == ["Place mark"] and stored(hand, "marks") == 2
    marks.undoStack().undo()
    assert "Far Stack" not in rows(hand, "marks")
    marks.undoStack().redo()
    assert "Far Stack" in rows(hand, "marks")
    marks.rollBack()


def test_names_proposed_are_free_and_the_first_mark_of_a_plan_is_its_entry(at_desk, tmp_path: Path) -> None:
    opened(at_desk[1], create_plan(tmp_path / "empty.gpkg"))
    hand = shown(*at_desk)
    hand.take("place_mark")
    names = []
    for east in (0.0, 300.0, 600.0):
        hand.click(moved(east, 0.0))
        names.append(tuple(hand.form().wrappers[field].value() for field in ("name", "kind")))
        hand.fill()
    assert names == [("Entry 1", "entry"), ("Mark 1", "mark"), ("Mark 2", "mark")]
    assert any(line.startswith("From Entry 1: ") for line in hand.move(moved(600.0, 400.0)))
    layer_of(hand.dock, "marks").rollBack()


def test_a_form_that_is_cancelled_places_nothing(hand: Hand) -> None:
    hand.take("place_mark")
    hand.click(AWAY)
    form = hand.form()
    QTest.mouseClick(form.buttons.button(form.buttons.StandardButton.Cancel), LEFT)
    assert len(rows(hand, "marks")) == 2 and commands(layer_of(hand.dock, "marks")) == []


def test_a_value_that_the_plan_does_not_allow_is_said_in_the_form_which_stays(hand: Hand) -> None:
    hand.take("place_mark")
    hand.click(AWAY)
    form = hand.form()
    hand.fill(name="   ")
    assert form.isVisible() and "'Name'" in form.problem.text() and "Fill it in" in form.problem.text()
    hand.fill(name="Far Stack")
    assert "Far Stack" in rows(hand, "marks")
    layer_of(hand.dock, "marks").rollBack()


def test_a_typed_position_places_the_mark_exactly_there(hand: Hand) -> None:
    section = hand.section
    QTest.keyClicks(section.position, "43 59.900 N 017 33.250 W")
    QTest.keyClick(section.position, Qt.Key.Key_Return)
    hand.fill(name="Typed")
    (place,) = rows(hand, "marks")["Typed"]
    assert place == pytest.approx((-(17.0 + 33.25 / 60.0), 43.0 + 59.9 / 60.0), abs=1e-9)
    layer_of(hand.dock, "marks").rollBack()


def test_a_typed_position_outside_the_map_moves_the_map_there(hand: Hand) -> None:
    hand.section.position.setText("43 40.000 N 017 00.000 W")
    QTest.mouseClick(hand.section.there, LEFT)
    assert hand.canvas.extent().contains(-17.0, 43.0 + 40.0 / 60.0)
    hand.key(Qt.Key.Key_Escape)


def test_a_typed_position_that_is_none_is_refused_in_words(hand: Hand) -> None:
    hand.section.position.setText("43 60.000 N 017 33.250 W")
    QTest.mouseClick(hand.section.there, LEFT)
    assert "below 60" in hand.section.problem.text() and not hand.section.problem.isHidden()
    assert hand.section.tools.used is None
    hand.take("place_mark")
    assert hand.section.problem.isHidden()


@pytest.mark.parametrize("by_clicks", [False, True])
def test_a_mark_is_moved_by_dragging_or_by_two_clicks_and_the_move_can_be_undone(hand: Hand, by_clicks: bool) -> None:
    marks = layer_of(hand.dock, "marks")
    hand.take("move_mark")
    assert hand.move(LEDGE) == ["Gannet Ledge"]
    if by_clicks:
        hand.click(LEDGE)
        hand.click(AWAY)
    else:
        hand.drag(LEDGE, AWAY)
    assert apart_m(rows(hand, "marks")["Gannet Ledge"][0], AWAY) < 4.0
    assert commands(marks) == ["Move mark"]
    assert "Stops of routes that stay at its old place: 1." in hand.section.done.text()
    QTest.mouseClick(hand.section.undo, LEFT)
    assert rows(hand, "marks")["Gannet Ledge"] == [LEDGE]
    QTest.mouseClick(hand.section.redo, LEFT)
    assert apart_m(rows(hand, "marks")["Gannet Ledge"][0], AWAY) < 4.0
    marks.rollBack()


def test_esc_leaves_a_mark_in_hand_where_it_was(hand: Hand) -> None:
    hand.take("move_mark")
    hand.click(LEDGE)
    assert any(line.startswith("From Kettle Slip") for line in hand.move(AWAY))
    hand.key(Qt.Key.Key_Escape)
    assert rows(hand, "marks")["Gannet Ledge"] == [LEDGE] and hand.section.tools.used is not None
    assert not layer_of(hand.dock, "marks").isEditable()
    hand.key(Qt.Key.Key_Escape)
    assert hand.section.tools.used is None


def test_a_mark_in_hand_goes_where_a_position_is_typed(hand: Hand) -> None:
    hand.take("move_mark")
    assert not hand.section.there.isEnabled()
    hand.click(LEDGE)
    assert hand.section.there.text() == "Move Mark There"
    hand.section.position.setText("44 00.100 N 017 33.000 W")
    QTest.mouseClick(hand.section.there, LEFT)
    assert rows(hand, "marks")["Gannet Ledge"][0] == pytest.approx((-17.55, 44.0 + 0.1 / 60.0), abs=1e-9)
    layer_of(hand.dock, "marks").rollBack()


def test_stops_come_along_with_a_mark_where_the_project_edits_topologically(hand: Hand) -> None:
    QgsProject.instance().setTopologicalEditing(True)
    hand.take("move_mark")
    hand.drag(LEDGE, AWAY)
    (mark,) = rows(hand, "marks")["Gannet Ledge"]
    assert rows(hand, "routes")["Ledge"] == [SLIP, mark, SLIP]
    hand.settled()
    assert [row[0] for row in cells(hand.dock.legs.table)] == ["Gannet Ledge", "Kettle Slip"]
    for name in ("marks", "routes"):
        layer_of(hand.dock, name).rollBack()
    QgsProject.instance().setTopologicalEditing(False)


# ---------------------------------------------------------------- routes


def test_a_route_is_drawn_from_mark_to_mark_and_planned_at_once(hand: Hand) -> None:
    routes = layer_of(hand.dock, "routes")
    hand.take("draw_route")
    for place in (moved(6.0, -5.0), moved(700.0, 300.0), moved(1108.0, 246.0), SLIP):  # near the marks, not at them
        hand.click(place)
    hand.click(AWAY, RIGHT)
    assert hand.form().wrappers["name"].value() == "Route 1"
    hand.fill()
    drawn = rows(hand, "routes")["Route 1"]
    assert drawn[0] == SLIP and drawn[2] == LEDGE and drawn[3] == SLIP  # to the last digit
    assert commands(routes) == ["Draw route"] and stored(hand, "routes") == 1
    hand.settled()
    assert hand.dock.session.route == "Route 1"
    assert [row[0] for row in cells(hand.dock.legs.table)] == ["Waypoint 1", "Gannet Ledge", "Kettle Slip"]
    QTest.mouseClick(hand.section.undo, LEFT)
    assert list(rows(hand, "routes")) == ["Ledge"] and routes.isEditable()
    hand.settled()
    assert hand.dock.session.route == "Ledge"
    routes.rollBack()


def test_a_vertex_snaps_within_fifteen_metres_however_far_the_map_is_zoomed_in(hand: Hand) -> None:
    hand.show(around_m=60.0, middle=LEDGE)
    hand.take("draw_route")
    hand.click(moved(1100.0, 250.0 - 14.0))  # more than a hundred pixels off
    hand.click(moved(1100.0, 250.0 - 17.0))
    vertices = [place.lonlat for place in hand.section.tools.used.vertices]
    assert vertices[0] == LEDGE and apart_m(vertices[1], LEDGE) == pytest.approx(17.0, abs=0.5)


def test_backspace_takes_the_last_vertex_back_enter_finishes_and_a_route_needs_two(hand: Hand) -> None:
    hand.take("draw_route")
    for place in (SLIP, AWAY, LEDGE):
        hand.click(place)
    hand.key(Qt.Key.Key_Backspace)
    hand.click(moved(900.0, 0.0))
    hand.key(Qt.Key.Key_Backspace)
    hand.key(Qt.Key.Key_Backspace)
    hand.key(Qt.Key.Key_Return)
    assert "1 of 2 vertices" in hand.section.problem.text()
    hand.click(LEDGE)
    hand.key(Qt.Key.Key_Enter)
    hand.fill(name="Straight")
    assert rows(hand, "routes")["Straight"] == [SLIP, LEDGE]
    layer_of(hand.dock, "routes").rollBack()


def test_esc_drops_what_is_drawn_then_leaves_the_tool_and_nothing_is_edited(hand: Hand) -> None:
    hand.take("draw_route")
    hand.click(SLIP)
    hand.click(LEDGE)
    hand.key(Qt.Key.Key_Escape)
    assert hand.section.tools.used is not None and hand.section.tools.used.vertices == []
    hand.key(Qt.Key.Key_Escape)
    assert hand.section.tools.used is None
    assert not layer_of(hand.dock, "routes").isEditable() and list(rows(hand, "routes")) == ["Ledge"]


def test_a_form_cancelled_lets_one_draw_on(hand: Hand) -> None:
    hand.take("draw_route")
    hand.click(SLIP)
    hand.click(AWAY)
    hand.key(Qt.Key.Key_Return)
    hand.form().reject()
    hand.click(LEDGE)
    hand.key(Qt.Key.Key_Return)
    hand.fill(name="Longer")
    assert len(rows(hand, "routes")["Longer"]) == 3
    layer_of(hand.dock, "routes").rollBack()


def test_two_routes_of_one_name_are_refused(hand: Hand) -> None:
    hand.take("draw_route")
    hand.click(SLIP)
    hand.click(LEDGE)
    hand.key(Qt.Key.Key_Return)
    form = hand.form()
    hand.fill(name="Ledge")
    assert "'Ledge' is there already" in form.problem.text() and len(rows(hand, "routes")) == 1
    form.reject()


def test_a_route_is_drawn_by_keys_alone(hand: Hand) -> None:
    section = hand.section
    section.tool_actions["draw_route"].trigger()
    for text in ("44 00.000 N 017 33.600 W", "43 59.900 N 017 33.250 W"):
        section.position.setText(text)
        QTest.keyClick(section.position, Qt.Key.Key_Return)
    QTest.keyClick(section.finish, Qt.Key.Key_Space)
    hand.fill(name="By keys")
    assert rows(hand, "routes")["By keys"][0] == pytest.approx((-17.56, 44.0), abs=1e-9)
    layer_of(hand.dock, "routes").rollBack()


def test_a_stop_is_dragged_onto_a_mark_put_into_a_leg_and_taken_out_again_each_undone_alone(hand: Hand) -> None:
    routes = layer_of(hand.dock, "routes")
    hand.take("place_mark")
    hand.click(AWAY)
    hand.fill(name="Far Stack")
    (stack,) = rows(hand, "marks")["Far Stack"]
    hand.take("edit_route")
    hand.drag(LEDGE, moved(705.0, -296.0))
    assert rows(hand, "routes")["Ledge"] == [SLIP, stack, SLIP]
    assert hand.move(moved(350.0, -150.0)) == ["Ledge", "New stop here"]
    hand.drag(moved(350.0, -150.0), moved(1095.0, 252.0))
    assert rows(hand, "routes")["Ledge"] == [SLIP, LEDGE, stack, SLIP]
    assert hand.move(AWAY) == ["Ledge", "Stop 3"]
    hand.key(Qt.Key.Key_Delete)
    assert rows(hand, "routes")["Ledge"] == [SLIP, LEDGE, SLIP]
    assert commands(routes) == ["Move stop", "Put stop into route", "Take stop out of route"]
    for expected in ([SLIP, LEDGE, stack, SLIP], [SLIP, stack, SLIP], [SLIP, LEDGE, SLIP]):
        QTest.mouseClick(hand.section.undo, LEFT)
        assert rows(hand, "routes")["Ledge"] == expected
    assert not hand.section.undo.isEnabled() and hand.section.redo.isEnabled()
    for name in ("routes", "marks"):
        layer_of(hand.dock, name).rollBack()


def test_a_stop_that_is_let_go_of_where_it_was_changes_nothing(hand: Hand) -> None:
    hand.take("edit_route")
    hand.click(LEDGE)
    hand.move(AWAY)
    hand.key(Qt.Key.Key_Escape)
    assert rows(hand, "routes")["Ledge"] == [SLIP, LEDGE, SLIP] and not layer_of(hand.dock, "routes").isEditable()


def test_the_chosen_route_is_taken_hold_of_before_another_that_lies_on_it(hand: Hand) -> None:
    hand.take("draw_route")
    hand.click(SLIP)
    hand.click(LEDGE)
    hand.key(Qt.Key.Key_Return)
    hand.fill(name="Out only")
    assert hand.dock.session.route == "Out only"
    hand.take("edit_route")
    hand.move(AWAY)
    assert hand.move(LEDGE) == ["Out only", "Stop 2"]
    hand.dock.session.choose_route("Ledge")
    assert hand.move(moved(1101.0, 249.0))[0] == "Ledge"
    layer_of(hand.dock, "routes").rollBack()


def test_a_route_of_two_stops_loses_none(hand: Hand) -> None:
    hand.take("draw_route")
    hand.click(AWAY)
    hand.click(moved(900.0, -600.0))
    hand.key(Qt.Key.Key_Return)
    hand.fill(name="Short")
    before = commands(layer_of(hand.dock, "routes"))
    hand.take("edit_route")
    hand.move(AWAY)
    hand.key(Qt.Key.Key_Backspace)
    assert len(rows(hand, "routes")["Short"]) == 2
    assert "two stops" in hand.section.problem.text() and commands(layer_of(hand.dock, "routes")) == before
    layer_of(hand.dock, "routes").rollBack()


# ---------------------------------------------------------------- channels and areas


def test_a_channel_drawn_as_a_line_asks_for_its_width_and_is_minded_at_once(hand: Hand) -> None:
    hand.take("channel_line")
    hand.click(moved(300.0, -700.0))
    hand.click(moved(300.0, 900.0))
    hand.key(Qt.Key.Key_Return)
    form = hand.form()
    hand.fill()
    assert "'Width of a line (m)' is empty" in form.problem.text()
    hand.fill(width_m=80.0)
    hand.settled()
    flags = {flag.name: flag for flag in hand.dock.session.swim.flags if flag.kind == "channel"}
    assert set(flags) == {"Cut", "Channel 1"}
    lines = [one for one in QgsProject.instance().mapLayers().values() if "layername=channels" in one.source()]
    for layer in lines:
        layer.rollBack()


@pytest.mark.parametrize(("tool", "layer"), [("channel_area", "channels"), ("closed_area", "closed_areas")])
def test_an_area_needs_three_corners_and_closes_itself(hand: Hand, tool: str, layer: str) -> None:
    hand.take(tool)
    corners = [moved(250.0, -400.0), moved(350.0, -400.0), moved(350.0, 400.0), moved(250.0, 400.0)]
    for place in corners[:2]:
        hand.click(place)
    hand.key(Qt.Key.Key_Return)
    assert "2 of 3 vertices" in hand.section.problem.text()
    for place in (corners[3], corners[2]):
        hand.click(place)
    hand.key(Qt.Key.Key_Return)
    assert "cross each other" in hand.section.problem.text()
    for _ in range(2):
        hand.key(Qt.Key.Key_Backspace)
    for place in corners[2:]:
        hand.click(place)
    hand.click(AWAY, RIGHT)
    if tool == "closed_area":
        form = hand.form()
        hand.fill()
        assert "'Rule'" in form.problem.text()  # nobody guesses a rule
        hand.fill(rule="no_entry")
    else:
        hand.fill()
    drawn = hand.section.plan.layer(*hand.section.tools.used.needs)
    (area,) = [row.geometry() for row in drawn.getFeatures() if row["name"].endswith(" 1")]
    ring = area.asPolygon()[0]
    assert len(ring) == 5 and ring[0] == ring[-1] and area.isGeosValid()
    hand.settled()
    assert any(flag.name.endswith(" 1") for flag in hand.dock.session.swim.flags)
    assert stored(hand, layer) == 1
    drawn.rollBack()
