"""The dock from an empty window to a planned swim, by clicks and keys on the real widgets."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from desk import Desk, cells, click_cell, desk_with_dock, leave, opened, settle, wait_for
from qgis.core import QgsCoordinateReferenceSystem, QgsCoordinateTransform, QgsGeometry, QgsPointXY, QgsProject
from qgis.PyQt.QtCore import QPoint, QPointF, Qt
from qgis.PyQt.QtGui import QWheelEvent
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QAbstractSpinBox, QApplication, QComboBox, QSlider, QWidget
from swims import DAY, LEDGE, TITLE, add_swimmer, invented_bay, new_plan, swum
from tideleg.dock.dock import TidelegDock
from tideleg.dock.help_window import HelpWindow
from tideleg.dock.plan_in_project import plans_in
from tideleg.dock.recent_plans import recent_plans
from tideleg.dock.result_layers import SHOWN
from tideleg.dock.session import PLANNING, SETTLED


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


@pytest.fixture()
def bay(tmp_path: Path) -> Path:
    return invented_bay(tmp_path / "bay.gpkg")


def click(widget: QWidget) -> None:
    QTest.mouseClick(widget, Qt.MouseButton.LeftButton)


def words(dock: TidelegDock) -> str:
    return dock.swim.headline.text()


def test_without_a_plan_only_the_plan_section_can_be_used_and_says_what_to_do(at_desk) -> None:
    _, dock = at_desk
    assert dock.plan.isEnabled() and dock.plan.new.isEnabled() and dock.plan.open.isEnabled()
    assert not dock.plan.hint.isHidden() and "Open a plan" in dock.plan.hint.text()
    for section in (dock.swim, dock.legs, dock.mind, dock.turn_back):
        assert not section.isEnabled()
        assert section.hint.text() and section.body.isHidden()


def test_a_plan_opened_is_planned_at_once_with_the_numbers_of_the_algorithm(at_desk, bay: Path, tmp_path: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    report = swum(bay, tmp_path, DEPART=f"{DAY}T10:00", SWIMMER=dock.session.ticked[0])
    assert dock.plan.name.text() == TITLE
    assert [row[0] for row in cells(dock.legs.table)] == [leg["to"] for leg in report["legs"]]
    assert [row[1] for row in cells(dock.legs.table)] == [leg["card_heading"] for leg in report["legs"]]
    grounds = [leg["ground_speed_m_s"] for leg in report["legs"]]
    assert [row[5] for row in cells(dock.legs.table)] == [
        f"{one * 3600 / 1852:.1f} kn\n{one:.2f} m/s" for one in grounds
    ]
    assert dock.session.swim.arrive.isoformat(timespec="seconds") == report["arrive"]
    turned = [stop for stop in report["stops"] if stop["latest_leave"]]
    assert [row[1] for row in cells(dock.turn_back.table)] == [stop["latest_leave"][11:16] for stop in turned]
    assert turned


def test_the_later_button_plans_ten_minutes_later(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    first = dock.session.swim
    click(dock.swim.later)
    assert dock.session.stage == PLANNING and dock.swim.headline.isHidden()  # what is old is not shown as new
    assert not dock.legs.body.isEnabled()
    settle(dock.session)
    assert (dock.session.swim.depart - first.depart).total_seconds() == 600.0
    assert cells(dock.legs.table)[0][3].startswith("10:10\n")
    click(dock.swim.earlier)
    settle(dock.session)
    assert dock.session.swim.legs[0].minutes == first.legs[0].minutes


def test_keys_typed_into_the_departure_change_the_hour(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    dock.swim.depart.setFocus()
    dock.swim.depart.setSelectedSection(dock.swim.depart.Section.HourSection)
    QTest.keyClick(dock.swim.depart, Qt.Key.Key_Up)
    settle(dock.session)
    assert f"{dock.session.swim.depart:%H:%M}" == "11:00"
    assert dock.swim.zone.text() == "Europe/Lisbon, UTC+1"


def test_an_hour_that_clocks_skip_is_refused_in_words_and_nothing_is_shown_for_it(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    leave(dock, "2027-03-28 01:30")  # Lisbon's clocks jump from 01:00 to 02:00 that night (IANA zone data)
    assert dock.session.stage == SETTLED and dock.session.swim is None
    assert "does not exist" in dock.swim.status.text()
    assert cells(dock.legs.table) == []
    leave(dock, f"{DAY} 10:00")
    settle(dock.session)
    assert dock.session.swim is not None and dock.swim.status.isHidden()


@pytest.mark.parametrize("typed", ["", "0", "0.00"])
def test_a_pace_that_is_emptied_or_0_is_the_swimmers_own_which_is_shown(at_desk, bay: Path, typed: str) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    pace = dock.swim.pace
    assert pace.text() == "own, 0.60 m/s"
    pace.selectAll()
    QTest.keyClicks(pace, "0.8")
    QTest.keyClick(pace, Qt.Key.Key_Return)
    assert dock.session.pace_m_s == 0.8 and pace.text() == "0.80 m/s"
    pace.selectAll()
    QTest.keyClick(pace, Qt.Key.Key_Delete)
    QTest.keyClicks(pace, typed)
    QTest.keyClick(pace, Qt.Key.Key_Return)
    assert dock.session.pace_m_s is None and pace.text() == "own, 0.60 m/s"


def test_what_stands_below_the_swim_does_not_jump_while_it_is_planned(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    QApplication.processEvents()
    heights = []
    needed = lambda: dock.swim.layout().heightForWidth(dock.swim.width())  # noqa: E731
    dock.session.swim_changed.connect(lambda: heights.append(needed()))
    dock.swim.later.click()
    settle(dock.session)
    assert len(set(heights)) == 1 and len(heights) > 3


def test_minutes_of_a_leg_lie_between_the_clock_times_beside_them(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    for row in cells(dock.legs.table):
        leave, arrive = (60 * int(clock[:2]) + int(clock[3:]) for clock in row[3].split("\n"))
        assert arrive - leave == int(row[2])


def test_a_pace_given_overrides_the_swimmer_and_the_lowest_step_gives_it_back(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    own = dock.session.swim.legs[0].minutes
    dock.swim.pace.setValue(1.2)
    settle(dock.session)
    assert dock.session.swim.legs[0].minutes < own
    dock.swim.pace.setValue(dock.swim.pace.minimum())
    settle(dock.session)
    assert dock.session.pace_m_s is None and dock.session.swim.legs[0].minutes == own


def test_two_swimmers_ticked_swim_together(at_desk, bay: Path) -> None:
    add_swimmer(bay, 0.45, name="Odd")
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    alone, names = dock.session.swim, list(dock.session.swimmers)
    item = dock.swim.swimmers.item(names.index("Odd"))
    dock.swim.swimmers.setCurrentItem(item)
    QTest.keyClick(dock.swim.swimmers, Qt.Key.Key_Space)
    settle(dock.session)
    assert dock.session.ticked == tuple(names)
    assert dock.session.swim.swimmer == " and ".join(names)
    assert dock.session.swim.legs[0].minutes > alone.legs[0].minutes


def test_flags_are_listed_gravest_first_by_word_and_shape_and_a_click_goes_there(at_desk, bay: Path) -> None:
    desk, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    rows = dock.mind.table.rows
    grave = [("stop", "warn", "note").index(row.severity) for row in rows]
    assert grave == sorted(grave)
    word = {"stop": "Stop. ", "warn": "Warning. ", "note": "Note. "}
    assert all(row[0].startswith(word[rows[n].severity]) for n, row in enumerate(cells(dock.mind.table)))
    assert all(not dock.mind.table.item(row, 0).icon().isNull() for row in range(len(rows)))
    number = next(number for number, row in enumerate(rows) if row.points)
    desk.canvas.setExtent(desk.canvas.extent().buffered(5.0))
    click_cell(dock.mind.table, number)
    extent = desk.canvas.extent()
    to_map = QgsCoordinateTransform(
        QgsCoordinateReferenceSystem("EPSG:4326"), desk.canvas.mapSettings().destinationCrs(), QgsProject.instance()
    )
    assert all(extent.contains(to_map.transform(QgsPointXY(*place))) for place in rows[number].points)
    assert extent.width() < 0.5  # degrees: the empty project took the plan's system


def test_enter_on_a_leg_goes_there(at_desk, bay: Path) -> None:
    desk, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    desk.canvas.setExtent(desk.canvas.extent().buffered(5.0))
    dock.legs.table.setCurrentCell(0, 0)
    QTest.keyClick(dock.legs.table, Qt.Key.Key_Return)
    assert desk.canvas.extent().width() < 0.5
    assert desk.canvas.extent().contains(QgsPointXY(*LEDGE))


def test_a_leg_that_cannot_be_swum_says_so_in_words(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    dock.swim.pace.setValue(0.1)
    settle(dock.session)
    row = next(row for row in cells(dock.legs.table) if row[1].startswith("Cannot be swum: "))
    assert row[1] != "Cannot be swum: " and row[2:] == [""] * 4
    assert words(dock).startswith("Cannot be swum")


def test_water_without_a_stream_is_unknown_and_never_nought(at_desk, tmp_path: Path) -> None:
    from swims import SLIP, line
    from tideleg.plan_package.store import append_rows, create_plan

    plan = create_plan(tmp_path / "dry.gpkg", zone="UTC")
    append_rows(plan, "routes", [(line(SLIP, LEDGE, SLIP), {"name": "Out"})])
    _, dock = at_desk
    opened(dock, plan, depart=f"{DAY} 10:00")
    assert words(dock).startswith("Cannot be swum")
    shown = " ".join(" ".join(row) for row in cells(dock.legs.table))
    assert "stream" in shown and "not known" in shown
    assert "0.0 kn" not in shown
    assert any(row[0].startswith("Stop. ") and "stream" in row[0] for row in cells(dock.mind.table))


def test_a_plan_without_a_route_says_what_to_do(at_desk, tmp_path: Path) -> None:
    from tideleg.plan_package.store import create_plan

    _, dock = at_desk
    opened(dock, create_plan(tmp_path / "empty.gpkg"))
    assert "Draw one" in dock.swim.status.text()
    assert dock.legs.hint.text() and cells(dock.legs.table) == []


def shown(dock: TidelegDock) -> set[str]:
    return {section.objectName() for section, frame in dock.frames.items() if frame.isVisibleTo(dock)}


def test_sections_come_as_they_can_be_used(at_desk, bay: Path, tmp_path: Path) -> None:
    _, dock = at_desk
    assert shown(dock) == {"TidelegPlan"}
    opened(dock, new_plan(tmp_path / "empty.gpkg", ZONE="UTC"))
    without_route = shown(dock)
    assert {"TidelegPlan", "TidelegDraw", "TidelegTables", "TidelegSwim"} < without_route
    assert without_route.isdisjoint({"TidelegLegs", "TidelegMind", "TidelegTurnBack", "TidelegTake"})
    opened(dock, bay)
    assert shown(dock) == {section.objectName() for section in dock.frames}
    dock.session.close_plan()
    assert shown(dock) == {"TidelegPlan"}


def test_a_file_that_is_no_plan_is_refused_in_words_and_the_plan_before_it_stays(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    layers = set(QgsProject.instance().mapLayers())
    wrong = bay.with_name("wrong.gpkg")
    wrong.write_bytes(b"not a database")
    assert not dock.session.open_plan(wrong)
    assert not dock.plan.problem.isHidden() and str(wrong) in dock.plan.problem.text()
    assert dock.session.path == bay and dock.session.swim is not None
    assert set(QgsProject.instance().mapLayers()) == layers


def test_a_recent_plan_that_is_gone_is_said_so_and_leaves_the_list(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay)
    dock.session.close_plan()
    QgsProject.instance().clear()
    bay.unlink()
    dock.plan.menu.aboutToShow.emit()
    action = dock.plan.menu.actions()[0]
    assert action.text() == "bay (not found)"
    action.trigger()
    assert str(bay) in dock.plan.problem.text() and dock.session.path is None
    assert bay not in recent_plans()


def test_opening_a_plan_twice_brings_its_layers_once(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay)
    count = len(QgsProject.instance().mapLayers())
    opened(dock, bay)
    assert len(QgsProject.instance().mapLayers()) == count
    assert plans_in(QgsProject.instance()) == [bay]


def test_another_plan_takes_the_place_of_the_first_whose_layers_stay(at_desk, bay: Path, tmp_path: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    dock.swim.pace.setValue(1.0)
    second = invented_bay(tmp_path / "second.gpkg")
    opened(dock, second, depart=f"{DAY} 11:00")
    assert dock.session.path == second and dock.session.pace_m_s is None
    assert sorted(plans_in(QgsProject.instance())) == sorted([bay, second])
    results = [layer for layer in QgsProject.instance().mapLayers().values() if layer.customProperty("tideleg/result")]
    assert len(results) == len(SHOWN)


def test_help_on_the_dock_opens_its_page(at_desk) -> None:
    desk, dock = at_desk
    click(dock.help)
    assert desk.window.findChild(HelpWindow).page == "dock.md"


def test_every_control_has_a_name_for_those_who_cannot_see_it_and_is_reached_by_keys(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    swim = dock.swim
    controls = [swim.route, swim.swimmers, swim.depart, swim.earlier, swim.later, swim.pace]
    controls += [dock.legs.table, dock.mind.table, dock.turn_back.table]
    assert all(control.accessibleName() for control in controls)
    buttons = [dock.plan.new, dock.plan.open, dock.plan.recent, dock.help]
    assert all(button.text() and button.toolTip() for button in buttons)
    assert all(control.focusPolicy() & Qt.FocusPolicy.TabFocus for control in [*controls, *buttons])
    tables = (dock.legs.table, dock.turn_back.table)
    assert all(t.horizontalHeaderItem(column).toolTip() for t in tables for column in range(t.columnCount()))


def test_the_wheel_scrolls_the_dock_and_changes_nothing_it_passes_over(at_desk, bay: Path) -> None:
    _, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    editors = [
        widget
        for widget in dock.area.widget().findChildren(QWidget)
        if isinstance(widget, (QAbstractSpinBox, QComboBox, QSlider)) and widget.isVisibleTo(dock.area)
    ]
    assert {dock.swim.pace, dock.swim.depart, dock.swim.way} <= set(editors)

    def told(widget: QWidget) -> object:
        if isinstance(widget, QComboBox):
            return widget.currentIndex()
        return widget.text() if hasattr(widget, "text") else widget.value()

    for editor in editors:
        editor.setFocus()  # as after typing
        before, place = told(editor), QPointF(editor.rect().center())
        for turn in (120, -120):
            event = QWheelEvent(
                place,
                QPointF(editor.mapToGlobal(place.toPoint())),
                QPoint(),
                QPoint(0, turn),
                Qt.MouseButton.NoButton,
                Qt.KeyboardModifier.NoModifier,
                Qt.ScrollPhase.NoScrollPhase,
                False,
            )
            QApplication.sendEvent(editor, event)
            assert told(editor) == before, editor.accessibleName()
            assert not event.isAccepted(), editor.accessibleName()  # so it goes on to what scrolls


def test_tables_are_as_tall_as_their_rows_at_any_width(at_desk, bay: Path) -> None:
    desk, dock = at_desk
    opened(dock, bay, depart=f"{DAY} 10:00")
    dock.swim.way.setCurrentIndex(1)  # which asks for one thing more
    dock.swim.way.activated.emit(1)
    settle(dock.session)
    least = dock.minimumSizeHint().width()
    for width in (least, least + 100, least + 300):
        desk.window.resizeDocks([dock], [width], Qt.Orientation.Horizontal)
        wait_for(lambda width=width: abs(dock.width() - width) < 30, f"a dock of {width} pixels")
        for table in (dock.legs.table, dock.mind.table, dock.turn_back.table):
            last = table.rowCount() - 1
            assert table.rowViewportPosition(last) + table.rowHeight(last) <= table.viewport().height()
        assert dock.area.horizontalScrollBar().maximum() == 0, "something is cut off at the side"


def test_the_map_may_be_in_another_reference_system(at_desk, bay: Path) -> None:
    desk, dock = at_desk
    QgsProject.instance().setCrs(QgsCoordinateReferenceSystem("EPSG:3857"))
    desk.canvas.setDestinationCrs(QgsCoordinateReferenceSystem("EPSG:3857"))
    opened(dock, bay, depart=f"{DAY} 10:00")
    assert all(leg.minutes for leg in dock.session.swim.legs)
    click_cell(dock.legs.table, 0)
    to_map = QgsCoordinateTransform(
        QgsCoordinateReferenceSystem("EPSG:4326"), QgsCoordinateReferenceSystem("EPSG:3857"), QgsProject.instance()
    )
    place = QgsGeometry.fromPointXY(QgsPointXY(*LEDGE))
    place.transform(to_map)
    assert desk.canvas.extent().contains(place.asPoint())
    assert 500.0 < desk.canvas.extent().width() < 20_000.0
