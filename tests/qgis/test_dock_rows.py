"""What the dock's tables say of a swim: rounded the safe way, in words where something is not known."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import pytest
from plans import make_plan, with_legs, with_turn_backs
from tideleg.core.clock import later
from tideleg.core.errors import SwimPlanError
from tideleg.core.results.flag import Flag
from tideleg.core.results.swim_plan import SwimPlan
from tideleg.core.results.turn_back import LeavingBand
from tideleg.dock.departure import digits_of, first_departure, moment_of, zone_words
from tideleg.dock.rows import Row, headline, leg_rows, mind_rows, turn_rows

LISBON = ZoneInfo("Europe/Lisbon")


def flag(severity: str, message: str, leg: int | None = None, brief: str = "") -> Flag:
    return Flag(kind="channel", severity=severity, message=message, points=((0.0, 0.0),), leg=leg, brief=brief)


def test_a_leg_reads_as_on_the_card() -> None:
    """The minutes are those between the two clock times, so that they add up."""
    plan = with_legs(make_plan(legs=2), card_heading="105M", ground_speed_m_s=0.704)
    row = leg_rows(plan)[0]
    leave, arrive = (datetime.strptime(clock, "%H:%M") for clock in row.cells[3].split("\n"))  # noqa: DTZ007
    assert row.cells[1:3] == ("105M", str((arrive - leave).seconds // 60)) and row.cells[5] == "1.4 kn\n0.70 m/s"
    assert row.cells[3].startswith("09:40\n") and row.cells[4] == "200T\n0.5 kn"


def test_an_unknown_stream_is_not_known_and_a_still_one_is_nought() -> None:
    plan = make_plan(legs=2)
    unknown = leg_rows(with_legs(plan, stream_kn=None, stream_set_deg=None))[0]
    still = leg_rows(with_legs(plan, stream_kn=0.0, stream_set_deg=None))[0]
    assert unknown.cells[4] == "not known" and still.cells[4] == "0.0 kn"


def test_legs_that_cannot_be_swum_and_those_after_them_differ_in_words() -> None:
    rows = leg_rows(make_plan(legs=4, unswimmable=(2,)))
    assert rows[1].cells[1].startswith("Cannot be swum: ") and rows[2].cells[1].startswith("Not reached: ")
    assert [row.severity for row in rows] == ["", "stop", "stop", "stop"]


def test_a_swim_that_cannot_be_swum_is_given_no_time_home() -> None:
    words = headline(make_plan(legs=4, unswimmable=(2,)))
    assert words == "Cannot be swum: leg 2"


def test_a_swim_with_a_stop_is_not_called_swimmable() -> None:
    plan = replace(make_plan(legs=2), feasible=False, flags=(flag("stop", "Ferry at 10:05."), flag("note", "Deep.")))
    assert headline(plan).startswith("Not like this (1 x Stop below): home ")
    assert headline(replace(plan, feasible=True, flags=())).startswith("Can be swum: home ")


def test_flags_of_one_channel_on_two_legs_stay_two_rows_and_a_leg_is_named_once() -> None:
    flags = (
        flag("note", "You are in the Cut from 10:00.", 1, "the Cut"),
        flag("note", "You are in the Cut from 11:00.", 3, "the Cut"),
        flag("stop", "Leg 2 passes through the reserve.", 2),
    )
    rows = mind_rows(replace(make_plan(legs=3), flags=flags, warnings=("The port is far away.",)), ["A filter hides."])
    assert [row.cells[0] for row in rows] == [
        "Stop. Leg 2 passes through the reserve.",
        "Note. Leg 1: the Cut\nYou are in the Cut from 10:00.",
        "Note. Leg 3: the Cut\nYou are in the Cut from 11:00.",
        "Note. A filter hides.",
        "Note. The port is far away.",
    ]
    assert rows[3].points == ()


def test_the_few_words_of_a_flag_stand_before_the_whole_of_it() -> None:
    told = replace(flag("stop", "You are in the Cut from 10:00.", 1, "the Cut"), brief="Crossing 10:00")
    (row,) = mind_rows(replace(make_plan(legs=3), flags=(told,), warnings=()), [])
    assert row.cells[0] == "Stop. Leg 1: Crossing 10:00\nYou are in the Cut from 10:00."


def test_leaving_times_are_rounded_down_and_none_is_said_in_words() -> None:
    plan = make_plan(legs=2)
    late = plan.stops[1].leave.replace(minute=20, second=59, microsecond=0)
    rows = turn_rows(with_turn_backs(plan, latest_leave=late, latest_leave_pessimistic=None))
    assert rows[0].cells[1:] == (f"{late:%H}:20", "not safe", "Boat Steps")
    assert "Not safe" in turn_rows(with_turn_backs(plan, latest_leave=None, exit=None))[0].cells[1]
    assert turn_rows(plan) == []


def test_a_stop_that_is_safe_only_later_says_from_when() -> None:
    plan = make_plan(legs=2)
    arrive = plan.stops[1].arrive.replace(second=0, microsecond=0)
    first, last = arrive + timedelta(minutes=10), arrive + timedelta(minutes=30)
    later_on = LeavingBand(first=first, last=last, exit="Boat Steps", ends_by="dusk")
    assert turned(plan, later_on).cells[1] == f"from {first:%H:%M}\nto {last:%H:%M}"
    at_once = replace(later_on, first=arrive + timedelta(minutes=1))
    assert turned(plan, at_once).cells[1] == f"{last:%H:%M}"


def turned(plan: SwimPlan, band: LeavingBand) -> Row:
    """The row of a first stop that is safe in this band alone."""
    found = with_turn_backs(plan, latest_leave=band.last).turn_back
    only = replace(found.stops[0], bands=(band,))
    return turn_rows(replace(plan, turn_back=replace(found, stops=(only,))))[0]


def test_the_first_departure_lies_within_the_tides() -> None:
    now = datetime(2027, 6, 5, 8, 3, tzinfo=timezone.utc)
    around = [now - timedelta(days=1), now + timedelta(days=1)]
    later_on = [now + timedelta(days=10), now + timedelta(days=12)]
    assert first_departure(around, now, LISBON).isoformat() == "2027-06-05T09:10:00+01:00"
    assert first_departure(later_on, now, LISBON).isoformat() == "2027-06-16T10:00:00+01:00"
    assert first_departure([], now, LISBON).isoformat() == "2027-06-06T10:00:00+01:00"


def test_digits_go_to_the_editor_and_back_in_every_hour_of_a_day_of_changing_clocks() -> None:
    start = datetime(2027, 3, 27, 23, 0, tzinfo=timezone.utc)
    for hour in range(12):
        moment = (start + timedelta(hours=hour)).astimezone(LISBON)
        assert moment_of(digits_of(moment), LISBON) == moment


def test_an_hour_that_comes_twice_is_refused() -> None:
    twice = datetime(2027, 10, 31, 1, 30, tzinfo=LISBON)
    with pytest.raises(SwimPlanError, match="comes twice"):
        moment_of(digits_of(twice), LISBON)


def test_the_zone_is_shown_with_its_offset_that_day() -> None:
    assert zone_words(datetime(2027, 6, 5, 10, tzinfo=LISBON), "Europe/Lisbon") == "Europe/Lisbon, UTC+1"
    assert zone_words(datetime(2027, 1, 5, 10, tzinfo=ZoneInfo("UTC")), "UTC") == "UTC"


def test_a_band_that_begins_on_arrival_is_told_so_also_when_clocks_change(qgis_app) -> None:
    """Paris, 28 March 2027: after 01:59 comes 03:00 (IANA zone data)."""
    arrive = datetime(2027, 3, 28, 0, 59, 30, tzinfo=timezone.utc).astimezone(ZoneInfo("Europe/Paris"))
    first, last = (later(arrive, timedelta(seconds=seconds)) for seconds in (30, 1830))
    plan = with_turn_backs(make_plan(legs=2))
    (stop,) = plan.turn_back.stops
    band = replace(stop.bands[0], first=first, last=last)
    stop = replace(stop, arrive=arrive, bands=(band,), latest_leave=last)
    told = turn_rows(replace(plan, turn_back=replace(plan.turn_back, stops=(stop,))))[0].cells[1]
    assert told == "03:30"
