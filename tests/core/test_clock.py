"""The plan's clock: what is refused, and seconds that daylight saving does not bend."""
# ruff: noqa: DTZ001 - readings of a clock have no zone of their own

from datetime import datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from tideleg.core.clock import PlanClock, aware, local_moment, moment_from_text, zone_named
from tideleg.core.errors import NaiveTimeError, SwimPlanError

UTC = timezone.utc
LISBON = ZoneInfo("Europe/Lisbon")


def test_clock_reading_in_the_gap_is_refused_with_both_readings():
    """Lisbon, 2027-03-28: 01:00 becomes 02:00."""
    with pytest.raises(SwimPlanError) as caught:
        local_moment(datetime(2027, 3, 28, 1, 30), LISBON)
    message = str(caught.value)
    assert "does not exist" in message and "2027-03-28 01:30" in message
    assert "2027-03-28T01:30:00+00:00" in message and "2027-03-28T01:30:00+01:00" in message


def test_clock_reading_that_comes_twice_is_refused_with_both_readings():
    """Lisbon, 2027-10-31: 02:00 becomes 01:00."""
    with pytest.raises(SwimPlanError) as caught:
        local_moment(datetime(2027, 10, 31, 1, 30), LISBON)
    message = str(caught.value)
    assert "comes twice" in message
    assert "2027-10-31T01:30:00+01:00" in message and "2027-10-31T01:30:00+00:00" in message


@pytest.mark.parametrize("text", ["2027-10-31T01:30+01:00", "2027-10-31T01:30+00:00"])
def test_reading_with_its_offset_is_taken_in_the_repeated_hour(text):
    assert moment_from_text(text, LISBON) == datetime.fromisoformat(text)


@pytest.mark.parametrize(("minutes", "refused"), [(-1, False), (0, True), (59, True), (60, False)])
def test_gap_ends_where_the_clocks_land(minutes, refused):
    reading = datetime(2027, 3, 28, 1, 0) + timedelta(minutes=minutes)
    if refused:
        with pytest.raises(SwimPlanError):
            local_moment(reading, LISBON)
    else:
        assert local_moment(reading, LISBON).replace(tzinfo=None) == reading


def test_text_without_an_offset_is_read_in_the_plans_zone():
    assert moment_from_text("2027-06-05T10:00", LISBON) == datetime(2027, 6, 5, 9, tzinfo=UTC)
    assert moment_from_text("2027-06-05T10:00Z", LISBON) == datetime(2027, 6, 5, 10, tzinfo=UTC)
    assert moment_from_text(" 2027-06-05T10:00-09:30 ", LISBON) == datetime(2027, 6, 5, 19, 30, tzinfo=UTC)


@pytest.mark.parametrize("text", ["", "tomorrow", "05/06/2027 10:00", "2027-13-05T10:00", "10:00", "2027-06-05T25:00"])
def test_text_that_is_no_date_and_time_is_refused_by_what_it_said(text):
    with pytest.raises(SwimPlanError) as caught:
        moment_from_text(text, LISBON)
    assert repr(text) in str(caught.value) and "2027-06-05T10:00" in str(caught.value)


def test_naive_times_are_refused_everywhere():
    naive = datetime(2027, 6, 5, 10)
    clock = PlanClock(start=datetime(2027, 6, 5, tzinfo=UTC), zone_name="UTC")
    for use in (
        lambda: aware(naive, "the tides"),
        lambda: PlanClock(start=naive, zone_name="UTC"),
        lambda: clock.seconds(naive),
        lambda: clock.seconds_of([naive]),
    ):
        with pytest.raises(NaiveTimeError, match="2027-06-05T10:00:00"):
            use()


@pytest.mark.parametrize("name", ["Atlantis/Capital", "", "../../etc/passwd", "Lisbon"])
def test_zone_there_is_not_is_refused_by_name(name):
    with pytest.raises(SwimPlanError) as caught:
        zone_named(name)
    assert repr(name) in str(caught.value)


@pytest.mark.parametrize(
    "zone", ["UTC", "Europe/Lisbon", "Pacific/Kiritimati", "Australia/Lord_Howe", "America/St_Johns"]
)
def test_seconds_and_moments_are_each_others_inverse(zone):
    clock = PlanClock(start=datetime(2027, 3, 27, 20, tzinfo=ZoneInfo(zone)), zone_name=zone)
    for seconds in np.linspace(-2e7, 2e7, 201):
        moment = clock.moment(float(seconds))
        assert clock.seconds(moment) == pytest.approx(seconds, abs=1e-5)
        assert moment.tzinfo is zone_named(zone)


def test_missing_time_is_none():
    clock = PlanClock(start=datetime(2027, 6, 5, tzinfo=UTC), zone_name="UTC")
    assert clock.moment(float("nan")) is None and clock.moment(float("inf")) is None


@pytest.mark.parametrize("start_zone", [UTC, LISBON, timezone(timedelta(hours=5))])
def test_a_day_on_which_clocks_jump_has_its_own_length(start_zone):
    """From noon to noon over the change to summer time 23 hours pass, over the change back 25."""
    for day, hours in (((2027, 3, 27), 23.0), ((2027, 10, 30), 25.0)):
        noon = datetime(*day, 12, tzinfo=LISBON)
        clock = PlanClock(start=noon.astimezone(start_zone), zone_name="Europe/Lisbon")
        next_noon = (noon + timedelta(days=1)).replace(tzinfo=LISBON)
        assert clock.seconds(next_noon) == hours * 3600.0
        assert clock.moment(hours * 3600.0).hour == 12
