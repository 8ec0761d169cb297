"""The walk through the sample: offered once, follows what the user does, blocks nothing, and leaves nothing."""

from __future__ import annotations

import os
from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest
from day_hands import drag
from desk import Desk, click_cell, desk_with_dock, flush_deletions, opened, settle, wait_for
from qgis.core import QgsCoordinateReferenceSystem, QgsCoordinateTransform, QgsPointXY, QgsProject, QgsSettings
from qgis.PyQt.QtCore import QRect, Qt
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication, QPushButton, QWidget
from swims import DAY, invented_bay
from tideleg.core.clock import later
from tideleg.core.errors import SwimPlanError
from tideleg.dock import sample_plan as samples
from tideleg.dock.dock import TidelegDock
from tideleg.dock.outline import Outline
from tideleg.dock.plan_in_project import plans_in
from tideleg.dock.walk import KEY
from tideleg.dock.walk_steps import walk_steps
from tideleg.plan_package.settings import read_settings

MAKE_BAY = Path(__file__).resolve().parents[2] / "sample_layers" / "make_bay.py"


@pytest.fixture(scope="module")
def bay(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The sample, made anew, so that no test writes into the checkout's."""
    import sys

    sys.path.insert(0, str(MAKE_BAY.parent))
    import make_bay

    return make_bay.make(tmp_path_factory.mktemp("sample") / samples.NAME)


@pytest.fixture()
def sample(bay: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The sample as the zip has it, and a profile of its own to copy it into."""
    copy = tmp_path / "profile" / samples.NAME
    monkeypatch.setattr(samples, "SHIPPED", bay)
    monkeypatch.setattr(samples, "own_copy", lambda: copy)
    return copy


@pytest.fixture()
def new_user(qgis_app: object) -> Iterator[None]:
    QgsSettings().remove(KEY)
    yield
    QgsSettings().remove(KEY)


@pytest.fixture()
def at_desk(new_user: None, sample: Path) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


def click(widget: QWidget) -> None:
    QTest.mouseClick(widget, Qt.MouseButton.LeftButton)


def outlined(dock: TidelegDock) -> list[str]:
    """The sections that a frame lies over."""
    flush_deletions()
    return [one.parentWidget().section.objectName() for one in dock.findChildren(Outline) if not one.isHidden()]


def shown(dock: TidelegDock) -> list[QPushButton]:
    walk = dock.walk
    return [one for one in (walk.start, walk.no, walk.back, walk.next, walk.end) if one.isVisible()]


def test_a_new_user_is_asked_once_and_no_is_for_good(new_user, sample: Path) -> None:
    with desk_with_dock() as (_, dock):
        assert shown(dock) == [dock.walk.start, dock.walk.no]
        assert dock.plan.new.isEnabled()  # nothing is blocked by the question
    with desk_with_dock() as (_, dock):
        assert dock.walk.isVisible()  # not answered yet
        click(dock.walk.no)
        assert dock.walk.isHidden()
    with desk_with_dock() as (_, dock):
        assert dock.walk.isHidden()


def test_a_plan_that_is_open_is_not_disturbed_by_the_question(at_desk, tmp_path: Path) -> None:
    _, dock = at_desk
    opened(dock, invented_bay(tmp_path / "own.gpkg"), depart=f"{DAY} 10:00")
    assert dock.walk.isHidden()
    dock.session.close_plan()
    assert dock.walk.start.isVisible()  # not answered yet


def test_without_a_sample_nothing_is_offered(new_user, monkeypatch, tmp_path: Path) -> None:
    monkeypatch.setattr(samples, "SHIPPED", tmp_path / "none.gpkg")
    monkeypatch.setattr(samples, "OF_CHECKOUT", tmp_path / "none.gpkg")
    with desk_with_dock() as (_, dock):
        assert dock.walk.isHidden() and dock.plan.sample.isHidden()


def box_holds(desk: Desk, place: tuple[float, float]) -> bool:
    """Whether the map shows a place."""
    degrees, crs = QgsCoordinateReferenceSystem("EPSG:4326"), desk.canvas.mapSettings().destinationCrs()
    to_map = QgsCoordinateTransform(degrees, crs, QgsProject.instance())
    return desk.canvas.extent().contains(to_map.transform(QgsPointXY(*place)))


def test_the_map_shows_the_whole_swim_again_on_a_button(at_desk) -> None:
    desk, dock = at_desk
    click(dock.plan.sample)
    settle(dock.session)
    ends = [(leg.end_lon, leg.end_lat) for leg in dock.session.swim.legs]
    click_cell(dock.legs.table, 0)
    desk.canvas.zoomByFactor(0.1)
    assert not all(box_holds(desk, place) for place in ends)
    click(dock.swim.whole)
    assert all(box_holds(desk, place) for place in ends)


def is_done(dock: TidelegDock) -> bool:
    """Whether the sign says so."""
    return "Done" in dock.walk.sign.text()


def go_on(dock: TidelegDock) -> None:
    """What the step asks for is done: the step is still there, and Next leads on."""
    number = dock.walk.number
    assert is_done(dock), dock.walk.words.text()
    click(dock.walk.next)
    assert dock.walk.number == number + 1


def choose_walk_route(dock: TidelegDock) -> None:
    settle(dock.session)
    dock.swim.route.setCurrentText(samples.WALK_ROUTE)
    dock.swim.route.activated.emit(dock.swim.route.currentIndex())


def test_each_step_says_when_it_is_done_and_stays_until_next(at_desk, sample: Path) -> None:
    desk, dock = at_desk
    walk = dock.walk
    click(walk.start)
    assert outlined(dock) == ["TidelegPlan"] and walk.heading.text().startswith("Step 1 of 9")
    assert not is_done(dock)
    click(dock.plan.sample)
    assert dock.session.path == sample and outlined(dock) == ["TidelegPlan"]
    go_on(dock)
    assert outlined(dock) == ["TidelegSwim"] and not is_done(dock)
    choose_walk_route(dock)
    assert outlined(dock) == ["TidelegSwim"]
    go_on(dock)
    assert outlined(dock) == ["TidelegWater"]
    shown_day(dock)
    drag(dock, later(dock.session.depart, timedelta(hours=2)))
    go_on(dock)
    assert outlined(dock) == ["TidelegLegs"]
    settle(dock.session)
    click_cell(dock.legs.table, 0)
    go_on(dock)
    assert outlined(dock) == ["TidelegTime"]  # which shows the whole swim again, however near the leg was
    ends = [(leg.end_lon, leg.end_lat) for leg in dock.session.swim.legs]
    assert all(box_holds(desk, place) for place in ends)
    wait_for(lambda: dock.time.play.isVisible(), "the swim in time")
    click(dock.time.play)
    assert outlined(dock) == ["TidelegTime"] and dock.time.is_playing  # it stays while the swim plays
    go_on(dock)
    assert outlined(dock) == ["TidelegMind"] and dock.mind.table.rowCount() > 0
    click_cell(dock.mind.table, 0)
    go_on(dock)
    assert outlined(dock) == ["TidelegTurnBack"] and dock.turn_back.table.rowCount() > 0
    click_cell(dock.turn_back.table, 0)
    go_on(dock)
    while walk.number + 1 < len(walk.steps):
        assert walk.sign.text() == ""  # there is only something to read
        click(walk.next)
    assert shown(dock) == [walk.back, walk.next] and walk.next.text() == "Done"
    click(walk.next)
    assert walk.isHidden() and outlined(dock) == []


def test_what_a_step_does_not_ask_for_leaves_it_as_it_is(at_desk) -> None:
    _, dock = at_desk
    click(dock.walk.start)
    click(dock.plan.sample)
    go_on(dock)
    settle(dock.session)
    other = next(name for name in dock.session.routes if name not in (samples.WALK_ROUTE, dock.session.route))
    dock.session.choose_route(other)
    click(dock.swim.later)
    dock.session.plan_again()
    settle(dock.session)
    assert dock.walk.number == 1 and not is_done(dock)  # asks for one route


def test_back_shows_what_was_done_and_a_new_start_what_is_so_already(at_desk) -> None:
    _, dock = at_desk
    click(dock.walk.start)
    click(dock.plan.sample)
    go_on(dock)
    click(dock.walk.next)
    assert dock.walk.number == 2
    click(dock.walk.back)
    assert dock.walk.number == 1 and outlined(dock) == ["TidelegSwim"] and not is_done(dock)
    click(dock.walk.back)
    assert is_done(dock)
    dock.walk.begin()
    assert is_done(dock)  # the sample is open


def test_return_goes_on_from_the_bar_and_from_the_section_once_the_step_is_done(at_desk) -> None:
    desk, dock = at_desk
    click(dock.walk.start)
    desk.window.activateWindow()
    assert QTest.qWaitForWindowActive(desk.window)
    click(dock.plan.sample)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    assert dock.walk.number == 1
    settle(dock.session)
    dock.session.choose_route(samples.WALK_ROUTE)
    assert dock.walk.next.hasFocus()  # no hand is on the keys of the section
    QTest.keyClick(dock.walk.next, Qt.Key.Key_Enter)
    assert dock.walk.number == 2
    dock.walk.go_to(3)
    settle(dock.session)
    table = dock.legs.table
    table.setFocus()
    table.setCurrentCell(1, 0)
    chosen = []
    table.row_chosen.connect(chosen.append)
    QTest.keyClick(table, Qt.Key.Key_Return)
    assert chosen == [table.rows[1]] and dock.walk.number == 3 and is_done(dock) and table.hasFocus()
    QTest.keyClick(table, Qt.Key.Key_Return)
    assert dock.walk.number == 4 and len(chosen) == 1
    QTest.keyClick(dock.plan.recent, Qt.Key.Key_Return)
    assert dock.walk.number == 4  # elsewhere the key is not the walk's
    click(dock.walk.end)
    table.setFocus()
    QTest.keyClick(table, Qt.Key.Key_Return)
    assert dock.walk.number == -1 and len(chosen) == 2


def shown_day(dock: TidelegDock) -> None:
    settle(dock.session)
    wait_for(lambda: dock.water.work.day is not None and not dock.water.work.is_old, "the day")


def test_next_alone_leads_through_the_whole_walk(at_desk) -> None:
    _, dock = at_desk
    click(dock.walk.start)
    seen = []
    for _ in range(len(dock.walk.steps)):
        seen += outlined(dock)
        click(dock.walk.next)
        settle(dock.session)
    assert dock.walk.isHidden()
    assert seen[0] == seen[-1] == "TidelegPlan" and len(set(seen)) >= 5
    assert dock.session.path is not None  # it opened the sample by itself


def test_a_walk_from_a_plan_of_ones_own_goes_on_in_the_sample_and_leaves_that_plans_layers(
    at_desk, sample: Path, tmp_path: Path
) -> None:
    _, dock = at_desk
    own = invented_bay(tmp_path / "own.gpkg")
    opened(dock, own, depart=f"{DAY} 10:00")
    dock.walk.begin()
    click(dock.walk.next)
    assert dock.session.path == sample and outlined(dock) == ["TidelegSwim"]
    settle(dock.session)
    assert plans_in(QgsProject.instance()).count(own.resolve()) == 1


def test_each_step_can_be_seen_without_scrolling(at_desk) -> None:
    desk, dock = at_desk
    click(dock.walk.start)
    for _ in range(len(dock.walk.steps)):
        QApplication.processEvents()
        frame = dock.findChild(Outline).parentWidget()
        place = QRect(frame.mapTo(dock.area.viewport(), frame.rect().topLeft()), frame.size())
        part = place & dock.area.viewport().rect()
        assert part.height() >= min(place.height(), dock.area.viewport().height()) - 1
        click(dock.walk.next)
        settle(dock.session)


def test_the_frame_lets_clicks_through_and_is_drawn_as_a_shape(at_desk) -> None:
    _, dock = at_desk
    click(dock.walk.start)
    outline = dock.findChild(Outline)
    assert outline.testAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
    QApplication.processEvents()
    assert outline.size() == outline.parentWidget().size()
    picture = outline.grab().toImage()
    inks = {picture.pixel(x, 1) for x in range(10, picture.width() - 10)}
    middle = picture.pixel(picture.width() // 2, picture.height() // 2)
    assert len(inks) == 1 and middle not in inks


def test_the_menu_starts_the_walk_at_any_time_and_opens_the_dock_for_it(new_user, sample: Path) -> None:
    QgsSettings().setValue(KEY, True)
    with desk_with_dock() as (desk, dock):
        assert dock.walk.isHidden()
        dock.close()
        next(one for one in desk.menu.actions() if one.text() == "Walk through the sample").trigger()
        assert dock.isVisible() and dock.walk.isVisible() and dock.walk.number == 0
        click(dock.walk.end)
        assert dock.walk.isHidden() and outlined(dock) == []


def test_starting_anew_in_the_middle_leaves_one_frame(at_desk) -> None:
    _, dock = at_desk
    click(dock.walk.start)
    click(dock.walk.next)
    settle(dock.session)
    dock.walk.begin()
    assert outlined(dock) == ["TidelegPlan"] and len(dock.findChildren(Outline)) == 1


def test_the_walk_speaks_of_a_route_that_the_sample_has(at_desk) -> None:
    _, dock = at_desk
    click(dock.plan.sample)
    settle(dock.session)
    assert samples.WALK_ROUTE in dock.session.routes and dock.session.route != samples.WALK_ROUTE
    assert any(samples.WALK_ROUTE in step.words for step in walk_steps())


def test_a_step_says_it_in_two_sentences_and_all_are_read_and_done_in_less_than_two_minutes() -> None:
    steps = walk_steps()
    assert all(len([part for part in step.words.split(". ") if part]) <= 2 for step in steps)
    words = sum(len(f"Step 1 of 9: Turn Back {step.words}".split()) for step in steps)
    asked = sum(step.done is not None for step in steps)
    # Common practice, no source: 200 words a minute, five seconds to find and do what is asked, one to press Next.
    assert words / 200.0 * 60.0 + 5.0 * asked + 1.0 * len(steps) < 120.0


def test_the_sample_of_the_zip_is_copied_once_and_what_is_drawn_in_it_stays(sample: Path) -> None:
    assert samples.sample_plan() == sample
    assert "INVENTED" in read_settings(sample)["title"]
    os.utime(sample, (1, 1))
    assert samples.sample_plan() == sample and sample.stat().st_mtime == 1
    assert [path.name for path in sample.parent.iterdir() if path.suffix == ".unfinished"] == []


def test_a_sample_that_cannot_be_copied_is_said_and_leaves_nothing(sample: Path) -> None:
    sample.parent.parent.mkdir(exist_ok=True)
    sample.parent.write_text("a file where the folder would be")
    with pytest.raises(SwimPlanError, match="could not be copied"):
        samples.sample_plan()
    with desk_with_dock() as (_, dock):
        click(dock.plan.sample)
        assert "could not be copied" in dock.plan.problem.text() and dock.plan.problem.isVisible()


def test_in_a_checkout_the_sample_is_opened_where_it_is(monkeypatch, tmp_path: Path) -> None:
    monkeypatch.setattr(samples, "SHIPPED", tmp_path / "none.gpkg")
    assert samples.sample_plan() == samples.OF_CHECKOUT
