"""The water of the day in the dock: the departure is dragged, stepped and read on the picture itself."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from day_hands import LEFT, LISBON, NONE, click, dock_on, drag, hover, local, mouse, place, shown
from desk import desk_with_dock, layer_of, leave, settle, wait_for
from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QEvent, QPointF, Qt
from qgis.PyQt.QtTest import QTest
from swims import DAY, invented_bay, moved, swum
from tideleg.core.clock import later
from tideleg.core.results.day_strip import FEASIBLE
from tideleg.core.solve.windows.find_windows import find_windows
from tideleg.dock.dock import TidelegDock
from tideleg.layers_in.swim_in import SwimAsked, request_from


@pytest.fixture(scope="module")
def bay(qgis_app: object, tmp_path_factory) -> Path:
    return invented_bay(tmp_path_factory.mktemp("bay") / "bay.gpkg")


@pytest.fixture()
def dock(bay: Path) -> Iterator[TidelegDock]:
    with dock_on(bay) as open_dock:
        yield open_dock


def count_of_days(dock: TidelegDock) -> list[object]:
    """Grows by one with every day that is computed from now on."""
    found: list[object] = []
    dock.water.work.changed.connect(
        lambda: found.append(dock.water.work.day) if dock.water.work.day not in (None, *found) else None
    )
    return found


def test_the_handle_dragged_chooses_the_departure_and_the_swim_follows(dock) -> None:
    drag(dock, local("11:37"))
    assert dock.session.depart.isoformat() == f"{DAY}T11:35:00+01:00"  # the nearest five minutes
    assert dock.swim.depart.dateTime().toString("HH:mm") == "11:35"
    settle(dock.session)
    assert dock.session.swim.depart == local("11:35")


def test_after_a_drag_what_is_read_is_of_the_place_where_the_pointer_is(qgis_app, tmp_path: Path) -> None:
    with dock_on(invented_bay(tmp_path / "bay.gpkg")) as dock:
        hover(dock, local("10:00"))
        drag(dock, local("13:10"))
        shown(dock)
        assert dock.water.view.cursor_at > local("13:00")
        assert "13:" in dock.water.readout.when.text()


def test_handle_and_readout_follow_while_the_button_is_still_down(dock) -> None:
    drag(dock, local("12:00"), release=False)
    view, readout = dock.water.view, dock.water.readout
    assert view.is_dragging and view.departure == dock.session.depart == local("12:00")
    assert "12:00" in readout.when.text() and dock.session.stage == "planning"
    assert readout.values[3].text().startswith("can be swum")
    at = place(dock, local("12:00"), "departures")
    # Under the top of the handle, where its line is paper's ground without it.
    pixel = (QPointF(at.x(), at.y() - 4.0) * view.devicePixelRatioF()).toPoint()
    held = view.grab().toImage().pixelColor(pixel)
    mouse(dock, QEvent.Type.MouseButtonRelease, at, LEFT, Qt.MouseButton.NoButton)
    drag(dock, local("15:00"))
    assert view.grab().toImage().pixelColor(pixel) != held


def test_escape_gives_back_the_departure_that_was_taken_hold_of(dock) -> None:
    drag(dock, local("12:00"), release=False)
    QTest.keyClick(dock.water.view, Qt.Key.Key_Escape)
    assert dock.session.depart == local("10:00") and not dock.water.view.is_dragging


def test_a_press_among_the_times_brings_the_handle_there_and_one_on_the_title_does_not(dock) -> None:
    click(dock, local("13:10"), "tide")
    chosen = dock.session.depart
    assert abs(chosen - local("13:10")) <= timedelta(minutes=5) and chosen.minute % 5 == 0
    QTest.mouseClick(dock.water.view, LEFT, NONE, place(dock, local("16:00"), "title").toPoint())
    assert dock.session.depart == chosen


def test_a_press_on_the_handle_does_not_move_a_departure_off_the_steps(dock) -> None:
    leave(dock, f"{DAY} 10:03")
    click(dock, local("10:03"))
    assert dock.session.depart == local("10:03")


def test_a_drag_beyond_the_edge_stays_on_the_day(dock) -> None:
    drag(dock, later(dock.water.work.day.strip.end, timedelta(minutes=5)))
    assert dock.session.depart == local("23:55")
    drag(dock, later(dock.water.work.day.strip.start, timedelta(minutes=-5)))
    assert dock.session.depart == local("00:00")


def test_another_minute_needs_no_other_day_and_another_pace_does(dock) -> None:
    before, found = dock.water.work.day, count_of_days(dock)
    drag(dock, local("12:00"))
    leave(dock, f"{DAY} 14:20")
    shown(dock)
    assert dock.water.work.day is before and found == [before]
    dock.session.choose_pace(0.9)
    assert dock.water.work.is_old and not dock.water.export.isEnabled()
    shown(dock)
    assert dock.water.work.day is not before
    assert dock.water.work.day.strip.pace_kn > before.strip.pace_kn


def test_keys_step_by_ten_minutes_and_by_days(dock) -> None:
    view = dock.water.view
    view.setFocus()
    for key, expected in (
        (Qt.Key.Key_Right, local("10:10")),
        (Qt.Key.Key_Left, local("10:00")),
        (Qt.Key.Key_PageDown, local("10:00", "2027-06-06")),
        (Qt.Key.Key_PageUp, local("10:00")),
    ):
        QTest.keyClick(view, key)
        assert dock.session.depart == expected
    dock.water.after.click()
    assert dock.session.depart == local("10:00", "2027-06-06")


def test_home_and_end_are_the_first_and_the_last_departure_that_can_be_swum(dock) -> None:
    strip = dock.water.work.day.strip
    can = [strip.moment(at) for at, state in zip(strip.departures_s, strip.states) if state == FEASIBLE]
    QTest.keyClick(dock.water.view, Qt.Key.Key_End)
    assert dock.session.depart == can[-1]
    QTest.keyClick(dock.water.view, Qt.Key.Key_Home)
    assert dock.session.depart == can[0]


def test_a_day_seen_before_comes_back_at_once(dock) -> None:
    first = dock.water.work.day
    dock.water.after.click()
    assert dock.water.work.is_old and dock.water.work.day is first
    shown(dock)
    assert dock.water.work.day.strip.start == first.strip.end
    dock.water.before.click()
    assert dock.water.work.day is first and not dock.water.work.is_old


def test_the_day_is_that_of_the_windows_algorithm(dock, bay: Path) -> None:
    request = request_from(bay, {}, SwimAsked(depart=DAY, until=DAY))
    found, _ = find_windows(request, request.clock.start, request.clock.end, 5.0)
    assert dock.water.work.day.strip.windows == found.windows and found.windows


def test_hovering_reads_tide_stream_light_and_what_leaving_then_gives(dock, bay: Path, tmp_path: Path) -> None:
    tide, stream, light, leaving = hover(dock, local("13:30"))
    assert "At the cursor" in dock.water.readout.when.text()
    # HW 08:00 UTC 3.9 m, LW 14:15 UTC 0.9 m: 12:30 UTC is 0.72 of the way, 0.9 + 3.0 (1 + cos(0.72 pi)) / 2 = 1.44.
    assert tide == "1.4 m, falling" and light == "daylight"
    assert "kn" in stream and "towards" in stream and "true" in stream
    report = swum(bay, tmp_path, DEPART=f"{DAY}T13:30")
    home = datetime.fromisoformat(report["arrive"])
    written = leaving.rpartition(" ")[2]
    assert leaving.startswith("can be swum: ")
    assert abs(local(written) - home.astimezone(LISBON)) <= timedelta(minutes=1)
    assert dock.session.depart == local("10:00")  # reading chooses nothing


def test_hovering_a_departure_that_cannot_be_swum_reads_why(dock) -> None:
    _, _, light, leaving = hover(dock, local("23:30"))
    assert light == "dark" and leaving.startswith("cannot be swum: ") and "dusk" in leaving
    QgsApplication.sendEvent(dock.water.view, QEvent(QEvent.Type.Leave))
    assert dock.water.readout.when.text().startswith("Departure") and dock.water.view.cursor_at is None


def test_what_is_not_known_is_read_in_words(dock) -> None:
    dock.session.choose_moment(local("10:00", "2027-06-09"))  # the tables hold one day
    shown(dock)
    tide, stream, _, leaving = hover(dock, local("12:00", "2027-06-09"))
    assert tide == "not known" and "not known" in stream and "not known" in leaving
    words = dock.water.words.text()
    assert "High and low water are not known." in words and "stream is not known" in words
    assert " 0.0" not in f"{tide} {stream} {words}"


def test_the_words_tell_waters_streams_departures_and_light_and_the_picture_carries_them(dock) -> None:
    words = dock.water.words.text()
    # After 10:00 local: LW 14:15 UTC 0.9 m and HW 20:30 UTC 3.7 m, an hour later by the plan's clock.
    assert "low water 15:15, 0.9 m; then high water 21:30, 3.7 m" in words
    # The stream turns an hour after high water; the tables' hours are an hour apart.
    assert "weakest at" in words and "civil dusk" in words and "can be swum" in words
    description = dock.water.view.accessibleDescription()
    assert words in description and "10:00" in description


def test_an_edit_of_the_route_makes_the_day_anew_and_the_latest_wins(dock) -> None:
    before, routes = dock.water.work.day, layer_of(dock, "routes")
    route = next(routes.getFeatures())
    assert routes.startEditing()
    for east in (1200.0, 1300.0, 1400.0):
        routes.moveVertex(*moved(east, 250.0), route.id(), 1)
    shown(dock)
    longer = dock.water.work.day
    at = local("12:00")
    assert longer is not before and longer.home_of(at) > before.home_of(at)
    assert abs(longer.home_of(at) - dock_swim_home(dock, at)) < timedelta(seconds=2)
    routes.rollBack()


def dock_swim_home(dock: TidelegDock, at: datetime) -> datetime:
    """When the dock's own planned swim of a departure is home."""
    dock.session.choose_moment(at)
    settle(dock.session)
    return dock.session.swim.arrive


def test_a_refused_plan_says_why_there_is_no_day(dock) -> None:
    soundings = layer_of(dock, "soundings")
    assert soundings.startEditing()
    row = next(soundings.getFeatures())
    assert soundings.changeAttributeValue(row.id(), soundings.fields().indexOf("depth_m"), -4000.0)
    settle(dock.session)
    wait_for(lambda: bool(dock.water.work.problem), "the refusal")
    assert "-4000" in dock.water.status.text() and dock.water.view.isHidden()
    soundings.rollBack()
    shown(dock)
    assert not dock.water.view.isHidden()


def test_no_day_is_computed_while_the_section_is_folded(dock) -> None:
    dock.water.setCollapsed(True)
    before = dock.water.work.day
    dock.session.choose_pace(0.8)
    settle(dock.session)
    assert dock.water.work.is_old and not dock.water.work.is_busy and dock.water.work.day is before
    dock.water.setCollapsed(False)
    assert dock.water.work.is_busy
    shown(dock)
    assert dock.water.work.day is not before


def test_no_day_is_computed_while_the_dock_is_closed(dock) -> None:
    before = dock.water.work.day
    dock.close()
    wait_for(lambda: dock.session.rests, "the rest")
    dock.session.choose_pace(0.8)
    dock.session.choose_moment(local("10:00", "2027-06-06"))
    assert not dock.water.work.is_busy and dock.water.work.day is before
    dock.show()
    shown(dock)
    assert dock.water.work.day.strip.start.date().isoformat() == "2027-06-06"


def test_nothing_moves_while_another_day_is_looked_at(dock) -> None:
    QgsApplication.processEvents()  # what was just shown finds its place
    widgets = (dock.water.view, dock.water.readout, dock.water.words)
    heights = [widget.height() for widget in widgets]
    values, words = [value.text() for value in dock.water.readout.values], dock.water.words.text()
    dock.water.after.click()
    assert dock.water.work.is_old and "Looking" in dock.water.busy.text()
    assert not dock.water.readout.isEnabled() and not dock.water.words.isEnabled()
    assert [value.text() for value in dock.water.readout.values] == values and dock.water.words.text() == words
    QgsApplication.processEvents()
    assert [widget.height() for widget in widgets] == heights and not any(widget.isHidden() for widget in widgets)
    shown(dock)
    assert dock.water.readout.isEnabled() and dock.water.words.isEnabled() and dock.water.busy.text() == ""


def test_without_a_plan_the_section_says_what_to_do_first(qgis_app) -> None:
    with desk_with_dock() as (_, open_dock):
        assert not open_dock.water.isEnabled() and not open_dock.water.hint.isHidden()
        assert "Open a plan" in open_dock.water.hint.text()
        open_dock.water.step_day(1)
        assert open_dock.session.depart is None
