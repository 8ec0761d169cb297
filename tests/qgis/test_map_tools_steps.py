"""Beside the tools: what an edit takes from a route, saving, undo and Esc by keys, forms that say what they want."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from desk import desk_with_dock, layer_of, opened
from map_hand import LEFT, NONE, Hand
from qgis.core import QgsCoordinateReferenceSystem, QgsCoordinateTransform, QgsProject, QgsRectangle
from qgis.PyQt.QtCore import QPoint, Qt
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QLineEdit
from swims import DAY, LEDGE, SLIP, invented_bay, moved
from tideleg.map_tools.row_form import RowForm
from tideleg.plan_package.store import create_plan

AWAY = moved(700.0, -300.0)
GONE = "Stop 2 of 'Ledge' no longer lies at Gannet Ledge: its stay of 20 min is gone."
CONTROL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture()
def hand(qgis_app: object, tmp_path: Path) -> Iterator[Hand]:
    with desk_with_dock() as (desk, dock):
        opened(dock, invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
        made = Hand(desk, dock)
        made.show()
        yield made
        for name in ("routes", "marks", "closed_areas"):
            layer_of(dock, name).rollBack()


def stops(hand: Hand) -> list[tuple[float, float]]:
    row = next(layer_of(hand.dock, "routes").getFeatures())
    return [(vertex.x(), vertex.y()) for vertex in row.geometry().vertices()]


def test_a_stop_dragged_off_its_mark_is_said_at_the_cursor_and_in_draw_until_undone(hand: Hand) -> None:
    hand.take("edit_route")
    hand.drag(LEDGE, AWAY)
    assert hand.tip() == [GONE] and hand.section.lost.text() == GONE and not hand.section.lost.isHidden()
    hand.settled()
    assert hand.section.lost.text() == GONE
    QTest.mouseClick(hand.section.undo, LEFT)
    assert hand.section.lost.isHidden()


def test_a_stop_taken_out_is_said_too_and_one_put_back_is_not_lost(hand: Hand) -> None:
    hand.take("edit_route")
    hand.move(LEDGE)
    hand.key(Qt.Key.Key_Backspace)
    assert hand.section.lost.text() == "'Ledge' no longer stops at Gannet Ledge: its stay of 20 min is gone."
    QTest.mouseClick(hand.section.undo, LEFT)
    hand.drag(LEDGE, AWAY)
    hand.drag(AWAY, LEDGE)
    assert hand.section.lost.isHidden()


def test_save_drawing_saves_on_the_click_and_not_before_and_one_draws_on(hand: Hand) -> None:
    routes = layer_of(hand.dock, "routes")
    hand.take("edit_route")
    assert hand.section.save.isHidden()
    hand.drag(LEDGE, AWAY)
    assert not hand.section.save.isHidden() and routes.isModified()
    assert routes.name() in hand.section.save.toolTip()
    QTest.mouseClick(hand.section.save, LEFT)
    assert not routes.isModified() and routes.isEditable() and stops(hand)[1] != LEDGE
    assert hand.section.save.isHidden() and hand.section.lost.isHidden() and "Saved" in hand.section.done.text()
    hand.settled()
    assert hand.section.lost.isHidden()


def test_the_keys_of_undo_over_the_map_are_of_the_layer_drawn_into(hand: Hand) -> None:
    hand.take("edit_route")
    hand.drag(LEDGE, AWAY)
    QTest.keyClick(hand.canvas, Qt.Key.Key_Z, CONTROL)
    assert stops(hand) == [SLIP, LEDGE, SLIP]
    QTest.keyClick(hand.canvas, Qt.Key.Key_Z, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    assert stops(hand)[1] != LEDGE
    hand.section.tools.leave()
    QTest.keyClick(hand.canvas, Qt.Key.Key_Z, CONTROL)  # without a tool of ours the keys are QGIS's
    assert stops(hand)[1] != LEDGE


def test_esc_puts_the_tool_away_after_its_form_and_from_the_dock(hand: Hand) -> None:
    hand.take("place_mark")
    hand.click(AWAY)
    hand.fill(name="Far Stack")
    assert hand.canvas.window().focusWidget() is hand.canvas
    hand.key(Qt.Key.Key_Escape)
    assert hand.section.tools.used is None
    hand.take("edit_route")
    QTest.keyClick(hand.section.buttons["edit_route"], Qt.Key.Key_Escape)
    assert hand.section.tools.used is None


def test_a_new_mark_has_its_charted_depth(hand: Hand) -> None:
    hand.take("place_mark")
    hand.click(AWAY)
    hand.fill(name="Far Stack", charted_depth_m=7.5)
    row = next(row for row in layer_of(hand.dock, "marks").getFeatures() if row["name"] == "Far Stack")
    assert row["charted_depth_m"] == 7.5


def test_the_form_of_an_area_shows_how_times_are_written_and_names_rules_in_words(hand: Hand) -> None:
    hand.take("closed_area")
    for place in (AWAY, moved(800.0, -300.0), moved(800.0, -400.0)):
        hand.click(place)
    hand.key(Qt.Key.Key_Return)
    form = hand.form()
    lines = {name: form.wrappers[name].widget() for name in ("from_time", "to_time", "checked_on")}
    assert all(isinstance(line, QLineEdit) and line.text() == "" for line in lines.values())
    assert "HH:MM" in lines["from_time"].placeholderText() and "YYYY-MM-DD" in lines["checked_on"].placeholderText()
    hand.fill(name="Nursery Two")
    assert "No entry" in form.problem.text() and "no_entry" not in form.problem.text()
    hand.fill(rule="no_entry")
    (row,) = [row for row in layer_of(hand.dock, "closed_areas").getFeatures() if row["name"] == "Nursery Two"]
    assert not isinstance(row["from_time"], str)


def test_on_a_map_that_shows_nothing_a_click_is_refused_and_a_typed_position_brings_it_there(
    qgis_app, tmp_path: Path
) -> None:
    with desk_with_dock() as (desk, dock):
        opened(dock, create_plan(tmp_path / "new.gpkg"))
        hand = Hand(desk, dock)
        hand.canvas.setDestinationCrs(QgsCoordinateReferenceSystem("EPSG:3857"))
        hand.canvas.setExtent(QgsRectangle())
        assert hand.canvas.extent().isEmpty()
        hand.take("place_mark")
        QTest.mouseClick(hand.canvas.viewport(), LEFT, NONE, QPoint(300, 300))
        assert "The map shows no place yet" in dock.drawing.problem.text()
        assert not [one for one in desk.window.findChildren(RowForm) if one.isVisible()]
        dock.drawing.position.setText("43 12.300 N 008 30.500 W")
        QTest.keyClick(dock.drawing.position, Qt.Key.Key_Return)
        hand.fill()
        mark = next(layer_of(dock, "marks").getFeatures()).geometry().asPoint()
        assert (mark.x(), mark.y()) == pytest.approx((-8.0 - 30.5 / 60.0, 43.0 + 12.3 / 60.0), abs=1e-9)
        seen = QgsCoordinateTransform(
            QgsCoordinateReferenceSystem("EPSG:3857"), QgsCoordinateReferenceSystem("EPSG:4326"), QgsProject.instance()
        ).transformBoundingBox(hand.canvas.extent())
        assert seen.contains(mark) and 0.02 < seen.height() < 0.5
        layer_of(dock, "marks").rollBack()
