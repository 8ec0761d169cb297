"""When to go, in the dock: the algorithm's own windows, a click on one chooses its best departure."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime, timedelta, timezone
from pathlib import Path

import pytest
from desk import cells, click_cell, desk_with_dock, layer_of, leave, opened, settle, wait_for
from qgis.PyQt.QtCore import QDate, Qt
from qgis.PyQt.QtTest import QTest
from swims import DAY, ZONE, invented_bay, run
from tideleg.core.clock import zone_named
from tideleg.core.results.windows import RangeNeeded, windows_dict
from tideleg.dock.dock import TidelegDock
from tideleg.dock.window_rows import default_span, range_words
from tideleg.dock.windows_section import MOST_ROWS, WindowsSection
from tideleg.plan_package.store import append_rows
from tideleg.processing.departurewindows import DepartureWindows
from tideleg.version import tideleg_version

LISBON = zone_named(ZONE)
LAST = date(2027, 6, 8)


@pytest.fixture(scope="module")
def bay(qgis_app: object, tmp_path_factory) -> Path:
    """A bay whose tides go on for three days more, springs growing."""
    plan = invented_bay(tmp_path_factory.mktemp("when") / "bay.gpkg")
    first = datetime(2027, 6, 6, 2, 45, tzinfo=timezone.utc)
    waters = [(first + timedelta(hours=6.2 * number), number % 2, 0.1 * number) for number in range(11)]
    rows = [
        {"port": "P", "time": at, "height_m": (3.8 + more / 2) if high else (0.9 - more / 2), "kind": "LH"[high] + "W"}
        for at, high, more in waters
    ]
    append_rows(plan, "tides", [(None, row) for row in rows])
    return plan


@pytest.fixture()
def dock(qgis_app: object, bay: Path) -> Iterator[TidelegDock]:
    with desk_with_dock() as (_, open_dock):
        opened(open_dock, bay, depart=f"{DAY} 10:00")
        yield open_dock


def find(dock: TidelegDock) -> WindowsSection:
    """Press the button and wait for the answer."""
    dock.when.ask.click()
    wait_for(lambda: not dock.when.stop.isVisible() and dock.when.status.text() == "", "the windows")
    assert dock.when.found is not None
    return dock.when


def reported(bay: Path, folder: Path, first: date, last: date, step: int) -> dict:
    """What the algorithm reports of these days."""
    asked = {"PLAN": str(bay), "FROM": first.isoformat(), "TO": last.isoformat(), "STEP": step}
    ran = run(DepartureWindows().create(), {**asked, "REPORT": str(folder / "windows.json")})
    assert ran.ok, ran.said
    return json.loads((folder / "windows.json").read_text(encoding="utf-8"))


def test_the_windows_are_those_of_the_algorithm(dock, bay: Path, tmp_path: Path) -> None:
    when = find(dock)
    report = reported(bay, tmp_path, *when.days(), when.step.value())
    assert windows_dict(when.found, version=tideleg_version()) == report and report["windows"]


def test_the_table_shows_each_window_with_its_day_rank_times_and_why_it_ends(dock, bay: Path, tmp_path: Path) -> None:
    when = find(dock)
    when.order.setCurrentIndex(1)
    when.order.activated.emit(1)
    if when.more.isVisible():
        when.more.click()
    report = reported(bay, tmp_path, *when.days(), when.step.value())
    ranks = {day["day"]: day["rank"] for day in report["days"]}
    shown = cells(when.table)
    assert len(shown) == len(report["windows"])
    for (day, span, best, minutes), window in zip(shown, report["windows"]):
        first, last, top = (window[name] for name in ("first", "last", "best"))
        assert first[:10] in day and f"rank {ranks[first[:10]]}" in day
        assert window["closes"]["words"].lower() in day.lower()
        assert span.startswith(first[11:16]) and last[11:16] in span and best.startswith(top[11:16])
        assert abs(int(minutes) - window["best_min"]) <= 1.0


def test_best_days_come_first_unless_asked_in_order_of_time(dock) -> None:
    when = find(dock)
    best = when.found.days[0].day.isoformat()
    assert best in cells(when.table)[0][0] and "rank 1" in cells(when.table)[0][0]
    when.order.setCurrentIndex(1)
    when.order.activated.emit(1)
    firsts = [row.best for row in when.table.rows]
    assert firsts == sorted(firsts) and [window.best for window in when.found.windows][: len(firsts)] == firsts


def test_a_click_on_a_window_chooses_its_best_departure_and_the_day_shows_it(dock) -> None:
    when = find(dock)
    row = next(number for number, one in enumerate(when.table.rows) if one.best.date() != dock.session.depart.date())
    best = when.table.rows[row].best
    click_cell(when.table, row)
    assert dock.session.depart == best
    settle(dock.session)
    assert dock.session.swim.depart == best and dock.session.swim.feasible
    wait_for(lambda: not dock.water.work.is_old and not dock.water.work.is_busy, "the day")
    assert dock.water.work.day.strip.start.date() == best.date()
    assert dock.water.view.strip().planned == best
    # Another departure makes no windows old, and moves no days under them.
    assert when.answer.isEnabled() and when.days()[0].isoformat() == DAY


def test_enter_chooses_the_window_of_the_row(dock) -> None:
    when = find(dock)
    when.table.setCurrentCell(1, 0)
    QTest.keyClick(when.table, Qt.Key.Key_Return)
    assert dock.session.depart == when.table.rows[1].best


def test_the_days_go_from_the_departures_to_the_end_of_the_tides(dock) -> None:
    assert dock.when.days() == (date.fromisoformat(DAY), LAST)
    leave(dock, "2027-06-07 10:00")
    assert dock.when.days() == (date(2027, 6, 7), LAST)


def test_days_that_were_typed_stay_until_another_plan(dock, bay: Path) -> None:
    dock.when.last.setDate(QDate(2027, 6, 6))
    leave(dock, "2027-06-07 10:00")
    assert dock.when.days() == (date.fromisoformat(DAY), date(2027, 6, 6))
    dock.session.close_plan()
    opened(dock, bay, depart=f"{DAY} 10:00")
    assert dock.when.days() == (date.fromisoformat(DAY), LAST)


def test_two_weeks_are_the_most_by_default_and_a_day_the_least() -> None:
    day = date(2027, 6, 5)
    assert default_span(day, date(2027, 12, 31)) == (day, date(2027, 6, 18))
    assert default_span(day, None) == (day, date(2027, 6, 18))
    assert default_span(day, date(2027, 6, 7)) == (day, date(2027, 6, 7))
    assert default_span(day, date(2027, 1, 1)) == (day, day)


def test_days_the_wrong_way_round_are_refused_with_the_remedy(dock) -> None:
    dock.when.last.setDate(QDate(2027, 6, 1))
    dock.when.ask.click()
    wait_for(lambda: "later end" in dock.when.status.text(), "the refusal")
    assert dock.when.answer.isHidden() and not dock.when.ask.isHidden()


def test_progress_is_told_and_a_stop_leaves_nothing(dock) -> None:
    heard: list[str] = []
    dock.when.step.setValue(1)
    dock.when.ask.click()

    def is_under_way() -> bool:
        heard.append(dock.when.status.text())
        return "%" in heard[-1]

    wait_for(is_under_way, "a percentage")
    dock.when.stop.click()
    assert dock.when.status.text() == "Stopped." and dock.when.found is None and not dock.when.ask.isHidden()
    wait_for(lambda: not dock.when._work._running, "the worker")
    assert dock.when.found is None and dock.when.answer.isHidden()


def test_another_pace_makes_the_windows_old(dock) -> None:
    when = find(dock)
    dock.session.choose_pace(0.9)
    assert not when.answer.isEnabled() and "ask again" in when.status.text()
    before = when.found
    assert find(dock).found != before and when.answer.isEnabled()


def test_an_edit_that_is_not_saved_counts(dock) -> None:
    before = find(dock).found
    swimmers = layer_of(dock, "swimmers")
    assert swimmers.startEditing()
    row = next(swimmers.getFeatures())
    assert swimmers.changeAttributeValue(row.id(), swimmers.fields().indexOf("pace_m_s"), 0.9)
    settle(dock.session)
    assert find(dock).found.windows[0].best_min < before.windows[0].best_min
    swimmers.rollBack()


def test_where_nothing_can_be_swum_it_says_what_stops_it(dock) -> None:
    dock.when.first.setDate(QDate(2027, 6, 20))  # beyond the tides, so that no stream is known
    dock.when.last.setDate(QDate(2027, 6, 20))
    when = find(dock)
    assert "None of 145 departures can be swum" in when.headline.text() and "not known" in when.headline.text()
    assert when.table.isHidden() and "not known" in when.range.text()


def test_many_windows_are_shown_once_they_are_asked_for(dock) -> None:
    when = find(dock)
    count = len(when.found.windows)
    assert when.table.rowCount() == min(count, MOST_ROWS) and when.more.isHidden() is (count <= MOST_ROWS)


def test_the_tide_that_the_route_needs_is_told_in_words(dock) -> None:
    when = find(dock)
    needed = when.found.range_needed
    assert needed.up_to_m is not None and f"{needed.up_to_m:.1f} m" in when.range.text()


@pytest.mark.parametrize(
    ("up_to", "not_at", "words"),
    [
        (2.31, 2.52, "up to a range of 2.3 m, and not at one of 2.5 m"),
        (2.31, None, "at every tide of this time, up to a range of 2.3 m"),
        (None, 2.52, "not even at the smallest tide of this time, 2.5 m"),
        (None, None, "not known"),
    ],
)
def test_each_answer_on_the_tide_has_its_sentence(dock, up_to, not_at, words: str) -> None:
    found = find(dock).found
    needed = RangeNeeded(up_to_m=up_to, not_at_m=not_at, between_m=None, days=())
    assert words in range_words(replace(found, range_needed=needed))


def test_without_a_plan_there_is_nothing_to_ask(qgis_app) -> None:
    with desk_with_dock() as (_, open_dock):
        assert not open_dock.when.isEnabled() and "Open a plan" in open_dock.when.hint.text()
