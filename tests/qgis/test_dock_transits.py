"""Transits in the dock: pairs suggested for a mark, ticked into the plan's layer with undo, shown on the map."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from desk import Desk, click_cell, desk_with_dock, layer_of, opened, settle, wait_for
from qgis.core import QgsGeometry, QgsVectorLayer
from qgis.gui import QgsMapCanvas
from qgis.PyQt.QtCore import QEvent, QPoint, QRect, Qt
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication, QPushButton, QStyle, QStyleOptionViewItem
from swims import DAY, LEDGE, SLIP, add_route, invented_bay, moved, offset, point, run
from tideleg.cards.transits_part import transit_stops
from tideleg.dock.dock import TidelegDock
from tideleg.dock.transits_section import TransitsSection
from tideleg.plan_package.store import append_rows
from tideleg.processing.transits import TransitsOfMarks

# Two lines that cross at a right angle over Gannet Ledge, and a landmark in line with nothing.
ASHORE = {
    "Post": offset(0.0, 600.0, *LEDGE),
    "Mill": offset(0.0, 1600.0, *LEDGE),
    "Kiln": offset(270.0, 1300.0, *LEDGE),
    "Tower": offset(270.0, 3000.0, *LEDGE),
    "Shed": offset(200.0, 900.0, *LEDGE),
}


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


def bay(tmp_path: Path, ashore: dict[str, tuple[float, float]]) -> Path:
    plan = invented_bay(tmp_path / "bay.gpkg")
    append_rows(plan, "landmarks", [(point(place), {"name": name}) for name, place in ashore.items()])
    return plan


def looked(dock: TidelegDock) -> TransitsSection:
    """Wait until swim and transits are those of the plan as it stands."""
    settle(dock.session)
    section = dock.transits
    wait_for(lambda: not section._soon.isActive() and not section._work.is_busy, "the transits")
    return section


@pytest.fixture()
def dock(at_desk: tuple[Desk, TidelegDock], tmp_path: Path) -> Iterator[TidelegDock]:
    _, open_dock = at_desk
    opened(open_dock, bay(tmp_path, ASHORE), depart=f"{DAY} 10:00")
    looked(open_dock)
    yield open_dock
    if open_dock.session.layers is not None:
        for name in ("transits", "landmarks", "marks"):
            layer = open_dock.session.layers.layer(name)
            if layer is not None:
                layer.rollBack()
    settle(open_dock.session)


def lines(section: TransitsSection) -> dict[str, tuple[str, str, bool]]:
    """Of each line in the table: bearing, crossing, and whether it is ticked."""
    found = {}
    for number in range(section.table.rowCount()):
        box = section.table.box(number)
        if box is not None:
            cells = [section.table.item(number, column).text() for column in (1, 2)]
            found[box.text()] = (*cells, box.checkState() == Qt.CheckState.Checked)
    return found


def row_of(section: TransitsSection, name: str) -> int:
    boxes = {box.text(): row for row in range(section.table.rowCount()) if (box := section.table.box(row)) is not None}
    return boxes[name]


def tick(section: TransitsSection, name: str) -> None:
    """Click the box of a line as a mouse does."""
    table = section.table
    item = table.box(row_of(section, name))
    option = QStyleOptionViewItem()
    option.initFrom(table)
    option.rect = table.visualItemRect(item)
    option.features = QStyleOptionViewItem.ViewItemFeature.HasCheckIndicator
    box: QRect = table.style().subElementRect(QStyle.SubElement.SE_ItemViewItemCheckIndicator, option, table)
    QTest.mouseClick(
        table.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, box.center() + QPoint(0, 0)
    )


def picks(dock: TidelegDock) -> list[tuple[str, str, str]]:
    return [(row["mark"], row["front"], row["rear"]) for row in layer_of(dock, "transits").getFeatures()]


def commands(layer: QgsVectorLayer) -> list[str]:
    return [layer.undoStack().text(number) for number in range(layer.undoStack().count())]


def click(button: QPushButton) -> None:
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


# ---------------------------------------------------------------- what is listed


def test_the_best_pair_of_the_routes_mark_is_listed_with_magnetic_bearings_and_its_crossing(dock) -> None:
    section = dock.transits
    assert section.mark.currentText() == "Gannet Ledge"  # the route's first mark, not its entry
    # 000 and 270 true, with a variation of 4 W on that day.
    assert lines(section) == {"Post / Mill": ("004M", "90°", False), "Kiln / Tower": ("274M", "90°", False)}
    head = next(row for row in section.table.rows if row.transit is None)
    assert head.cells[0].startswith("Pair 1: crosses at 90°")
    assert section.place.isHidden() and section.read.isHidden() and not section.caution.isHidden()


def test_the_pairs_are_those_of_the_algorithm(dock, tmp_path: Path) -> None:
    ran = run(
        TransitsOfMarks().create(),
        {
            "PLAN": str(dock.session.path),
            "MARK": "Gannet Ledge",
            "DATE": DAY,
            "TRANSITS": str(tmp_path / "found.gpkg"),
            "REPORT": str(tmp_path / "report.json"),
        },
    )
    assert ran.ok, ran.said
    (mark,) = ran.report["marks"]
    expected = {f"{one['front']} / {one['rear']}" for fix in mark["fixes"] for one in fix["transits"]}
    assert set(lines(dock.transits)) == expected
    assert dock.transits.seen.found.fixes[0].error_m == pytest.approx(mark["fixes"][0]["error_m"], abs=0.1)


def test_another_mark_is_looked_at_when_it_is_chosen(dock) -> None:
    section = dock.transits
    names = [section.mark.itemText(row) for row in range(section.mark.count())]
    assert names == ["Kettle Slip", "Gannet Ledge"]  # the stops in their order
    section.mark.setCurrentIndex(0)
    section.mark.activated.emit(0)
    looked(dock)
    assert section.seen.found.mark == "Kettle Slip"


# ---------------------------------------------------------------- ticks


def test_a_tick_puts_the_line_into_the_layers_edits_and_onto_the_swim_and_undo_takes_it_back(dock) -> None:
    section, layer = dock.transits, layer_of(dock, "transits")
    tick(section, "Post / Mill")
    assert picks(dock) == [("Gannet Ledge", "Post", "Mill")] and commands(layer) == ["Pick transit"]
    looked(dock)
    assert "One line alone does not fix Gannet Ledge" in section.picked.text()
    tick(section, "Kiln / Tower")
    looked(dock)
    (stop,) = transit_stops(dock.session.swim)
    assert [(one.front, one.rear) for one in stop.transits] == [("Post", "Mill"), ("Kiln", "Tower")]
    assert section.picked.text() == "Picked for Gannet Ledge: 2 lines, crossing at 90°."
    assert layer.isModified()  # never saved by us
    click(section.steps.undo)
    looked(dock)
    assert picks(dock) == [("Gannet Ledge", "Post", "Mill")]
    assert lines(section)["Kiln / Tower"][2] is False and lines(section)["Post / Mill"][2] is True
    click(section.steps.redo)
    looked(dock)
    assert lines(section)["Kiln / Tower"][2] is True


def test_the_line_drawn_goes_from_the_mark_over_the_front_to_the_rear(dock) -> None:
    tick(dock.transits, "Post / Mill")
    (row,) = layer_of(dock, "transits").getFeatures()
    ends = [(vertex.x(), vertex.y()) for vertex in row.geometry().vertices()]
    for place, expected in zip(ends, (LEDGE, ASHORE["Post"], ASHORE["Mill"])):
        assert place == pytest.approx(expected, abs=1e-7)
    assert len(ends) == 3


def test_taking_a_tick_away_drops_the_row_and_leaves_those_of_other_marks(at_desk, tmp_path: Path) -> None:
    _, dock = at_desk
    plan = bay(tmp_path, ASHORE)
    drawn = QgsGeometry.fromWkt("LineString (-17.5 44, -17.5 44.01)")
    rows = [{"mark": mark, "front": "Post", "rear": "Mill"} for mark in ("Gannet Ledge", "Kettle Slip")]
    append_rows(plan, "transits", [(drawn, row) for row in rows])
    opened(dock, plan, depart=f"{DAY} 10:00")
    section = looked(dock)
    assert lines(section)["Post / Mill"][2] is True
    tick(section, "Post / Mill")
    assert picks(dock) == [("Kettle Slip", "Post", "Mill")]
    assert commands(layer_of(dock, "transits")) == ["Drop transit"]
    layer_of(dock, "transits").rollBack()
    looked(dock)


def test_the_space_bar_ticks_and_enter_shows_the_line(dock) -> None:
    section, chosen = dock.transits, []
    section.table.row_chosen.connect(chosen.append)
    section.table.setCurrentCell(row_of(section, "Post / Mill"), 0)
    QTest.keyClick(section.table, Qt.Key.Key_Space)
    assert picks(dock) == [("Gannet Ledge", "Post", "Mill")] and chosen == []
    QTest.keyClick(section.table, Qt.Key.Key_Return)
    assert [row.transit.front for row in chosen] == ["Post"]


def test_what_is_picked_besides_the_suggestions_is_listed_and_can_be_taken_off(at_desk, tmp_path: Path) -> None:
    _, dock = at_desk
    plan = bay(tmp_path, {**ASHORE, "Barn": offset(180.0, 1900.0, *LEDGE), "Chapel": offset(20.0, 2500.0, *LEDGE)})
    drawn = QgsGeometry.fromWkt("LineString (-17.5 44, -17.5 44.01)")
    append_rows(plan, "transits", [(drawn, {"mark": "Gannet Ledge", "front": "Post", "rear": "Barn"})])
    append_rows(plan, "transits", [(drawn, {"mark": "Gannet Ledge", "front": "Post", "rear": "Chapel"})])
    opened(dock, plan, depart=f"{DAY} 10:00")
    section = looked(dock)
    assert "Picked besides" in [row.cells[0] for row in section.table.rows if row.transit is None]
    assert lines(section)["Post / Chapel"][2] is True
    assert any("left out" in words for words in section.seen.warnings)  # Post / Barn has the mark between the two
    assert "left out" in section.why.text()
    tick(section, "Post / Chapel")
    looked(dock)
    assert "Post / Chapel" not in lines(section)
    layer_of(dock, "transits").rollBack()
    looked(dock)


def test_a_name_that_stands_twice_is_refused_with_the_box_as_it_was(at_desk, tmp_path: Path) -> None:
    _, dock = at_desk
    plan = bay(tmp_path, ASHORE)
    append_rows(plan, "landmarks", [(point(offset(45.0, 4000.0, *LEDGE)), {"name": "Post"})])
    opened(dock, plan, depart=f"{DAY} 10:00")
    section = looked(dock)
    tick(section, "Post / Mill")
    assert "'Post' is that of 2 landmarks" in section.problem.text() and "name of its own" in section.problem.text()
    assert lines(section)["Post / Mill"][2] is False and picks(dock) == []


def test_a_layer_that_takes_no_edits_is_told_with_the_box_as_it_was(dock) -> None:
    layer = layer_of(dock, "transits")
    layer.setReadOnly(True)
    tick(dock.transits, "Post / Mill")
    assert "cannot be edited" in dock.transits.problem.text()
    assert lines(dock.transits)["Post / Mill"][2] is False and not layer.isModified()
    layer.setReadOnly(False)


def test_save_writes_the_picks_and_says_so_no_more(dock) -> None:
    section = dock.transits
    assert section.steps.save.isHidden()
    tick(section, "Post / Mill")
    assert not section.steps.save.isHidden()
    click(section.steps.save)
    looked(dock)
    assert section.steps.save.isHidden() and not layer_of(dock, "transits").isModified()
    fresh = QgsVectorLayer(f"{dock.session.path}|layername=transits", "t", "ogr")
    assert [row["front"] for row in fresh.getFeatures()] == ["Post"]
    assert lines(section)["Post / Mill"][2] is True


# ---------------------------------------------------------------- on the map


def test_a_click_on_a_line_shows_and_flashes_its_two_landmarks_and_a_tick_moves_nothing(at_desk, dock, monkeypatch):
    desk, section, flashed = at_desk[0], dock.transits, []
    monkeypatch.setattr(
        QgsMapCanvas, "flashGeometries", lambda _canvas, shapes, *_: flashed.append([one.asWkt(6) for one in shapes])
    )
    before = desk.canvas.extent().toString()
    tick(section, "Post / Mill")
    assert desk.canvas.extent().toString() == before and flashed == []
    looked(dock)
    click_cell(section.table, row_of(section, "Kiln / Tower"), 1)
    (shapes,) = flashed
    wanted = {point(ASHORE[name]).asWkt(6) for name in ("Kiln", "Tower")}
    assert wanted <= set(shapes) and any(one.startswith("LineString") for one in shapes)
    extent = desk.canvas.mapSettings().visibleExtent()
    to_map = dock.drawing.tools.tools["place_mark"].places.to_map
    assert all(extent.contains(to_map(place)) for place in (LEDGE, ASHORE["Kiln"], ASHORE["Tower"]))


# ---------------------------------------------------------------- nothing to show


def test_without_landmarks_it_says_what_to_do_and_leads_to_the_tool(at_desk, tmp_path: Path) -> None:
    _, dock = at_desk
    opened(dock, bay(tmp_path, {}), depart=f"{DAY} 10:00")
    section = looked(dock)
    assert "there are no landmarks" in section.why.text()
    assert section.table.isHidden() and not section.place.isHidden() and not section.read.isHidden()
    click(section.place)
    assert dock.drawing.tools.used is dock.drawing.tools.tools["landmark"]
    dock.drawing.put_away()


def test_landmarks_that_are_drawn_are_looked_at_at_once(at_desk, tmp_path: Path) -> None:
    _, dock = at_desk
    opened(dock, bay(tmp_path, {name: ASHORE[name] for name in ("Post", "Mill")}), depart=f"{DAY} 10:00")
    section = looked(dock)
    assert [row.cells[0] for row in section.table.rows if row.transit is None] == ["Single lines"]
    assert "no two that cross" in section.why.text()
    dock.drawing.take("landmark")
    tool = dock.drawing.tools.used
    for name in ("Kiln", "Tower"):
        tool.type_position(ASHORE[name])
        form = tool.adding.form
        form.wrappers["name"].setValues(name, [])
        click(form.buttons.button(form.buttons.StandardButton.Ok))
    looked(dock)
    assert set(lines(section)) == {"Post / Mill", "Kiln / Tower"}
    layer_of(dock, "landmarks").rollBack()
    looked(dock)


def test_a_folded_section_looks_for_nothing_until_it_is_unfolded(at_desk, tmp_path: Path) -> None:
    _, dock = at_desk
    dock.transits.setCollapsed(True)
    opened(dock, bay(tmp_path, ASHORE), depart=f"{DAY} 10:00")
    section = looked(dock)
    assert section.seen is None
    section.setCollapsed(False)
    looked(dock)
    assert section.seen is not None


def test_a_mark_off_the_route_says_that_the_card_leaves_it_out(at_desk, tmp_path: Path) -> None:
    _, dock = at_desk
    plan = bay(tmp_path, ASHORE)
    add_route(plan, "Elsewhere", SLIP, moved(300.0, 0.0), SLIP)
    opened(dock, plan, depart=f"{DAY} 10:00", route="Elsewhere")
    section = looked(dock)
    section.mark.setCurrentIndex(section.mark.findText("Gannet Ledge"))
    section.mark.activated.emit(section.mark.currentIndex())
    looked(dock)
    tick(section, "Post / Mill")
    looked(dock)
    assert "no stop of this route" in section.picked.text()
    layer_of(dock, "transits").rollBack()
    looked(dock)


def test_another_plan_shows_its_own(dock, tmp_path: Path) -> None:
    tick(dock.transits, "Post / Mill")
    layer_of(dock, "transits").rollBack()
    opened(dock, invented_bay(tmp_path / "second.gpkg"), depart=f"{DAY} 10:00")
    section = looked(dock)
    assert section.seen.landmarks == 0 and section.table.rows == []
    assert section.steps.undo.isHidden() and section.steps.save.isHidden()


def test_every_control_has_a_name_and_a_tooltip(dock) -> None:
    section = dock.transits
    for widget in (section.mark, section.table, section.place, section.read):
        assert widget.accessibleName() and widget.toolTip()
    assert all(section.table.horizontalHeaderItem(column).toolTip() for column in range(3))
    item = section.table.box(row_of(section, "Post / Mill"))
    assert "in line with" in item.toolTip() and "opens visibly" in item.toolTip()


def test_another_theme_ticks_nothing(dock) -> None:
    tick(dock.transits, "Post / Mill")
    layer = layer_of(dock, "transits")
    before, steps = picks(dock), layer.undoStack().count()
    for kind in (QEvent.Type.PaletteChange, QEvent.Type.FontChange):
        QApplication.sendEvent(dock.transits.table, QEvent(kind))
    QApplication.processEvents()
    assert picks(dock) == before and before and layer.undoStack().count() == steps
    layer.rollBack()
