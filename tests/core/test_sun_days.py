"""Nights of a span of time: those of every day by the sun that touches it, wherever the zone's midnight lies."""

from __future__ import annotations

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from tideleg.core.clock import PlanClock
from tideleg.core.daylight import Daylight, daylight_on
from tideleg.core.sun_days import night_spans, sun_days, sun_down_spans

UTC = ZoneInfo("UTC")


def clock_of(day: str, zone: str = "UTC") -> PlanClock:
    start = datetime.fromisoformat(day).replace(tzinfo=ZoneInfo(zone))
    end = (datetime.fromisoformat(day) + timedelta(days=1)).replace(tzinfo=ZoneInfo(zone))
    return PlanClock(start=start, zone_name=zone, end=end)


def inside(spans, seconds: float) -> bool:
    return any(low < seconds < high for low, high in spans)


@pytest.mark.parametrize(
    ("lon", "lat", "day", "zone"),
    [
        (-28.5, 42.4, "2027-06-05", "Europe/Lisbon"),
        (-28.5, 42.4, "2027-10-31", "Europe/Lisbon"),
        (170.0, -42.0, "2027-06-05", "UTC"),  # noon by the sun near midnight by the clock
        (-150.0, 20.0, "2027-01-15", "Asia/Tokyo"),
        (-9.0, 72.0, "2027-12-21", "UTC"),
        (-9.0, 80.0, "2027-12-21", "UTC"),
        (-9.0, 70.0, "2027-06-21", "UTC"),
        (178.0, -47.0, "2027-03-20", "Pacific/Auckland"),
    ],
)
def test_every_minute_is_as_dark_as_the_day_by_the_sun_that_holds_it(lon, lat, day, zone) -> None:
    clock = clock_of(day, zone)
    nights = night_spans(sun_days(lon, lat, clock.start, clock.end, clock), clock)
    for seconds in np.arange(30.0, clock.end_s, 1800.0):
        moment = clock.moment(seconds)
        assert inside(nights, seconds) == daylight_on(lon, lat, moment, clock).is_dark(moment), moment


def test_a_day_of_a_zone_far_from_the_sun_touches_two_days_by_the_sun() -> None:
    clock = clock_of("2027-06-05")
    days = sun_days(170.0, -42.0, clock.start, clock.end, clock)
    assert len(days) == 2
    [(low, high)] = [span for span in night_spans(days, clock) if span[0] > 0.0 and span[1] < clock.end_s]
    assert (low, high) == (clock.seconds(days[0].civil_dusk), clock.seconds(days[1].civil_dawn))


def test_night_lies_within_the_time_the_sun_is_down() -> None:
    clock = clock_of("2027-06-05", "Europe/Lisbon")
    days = sun_days(-28.5, 42.4, clock.start, clock.end, clock)
    nights, down = night_spans(days, clock), sun_down_spans(days, clock)
    assert len(nights) == len(down) == 3  # the one before the day, its evening's, and none is missed between
    for (low, high), (sun_low, sun_high) in zip(nights, down):
        # Civil twilight lasts about half an hour at this latitude.
        assert low == sun_low or 1200.0 < low - sun_low < 3000.0
        assert high == sun_high or 1200.0 < sun_high - high < 3000.0


def test_polar_day_has_no_night_and_polar_night_no_end() -> None:
    clock = clock_of("2027-06-21")
    light = Daylight(civil_dawn=None, sunrise=None, sunset=None, civil_dusk=None, always_light=True)
    dark = Daylight(civil_dawn=None, sunrise=None, sunset=None, civil_dusk=None)
    for spans in (night_spans, sun_down_spans):
        assert spans((light,), clock) == ()
        assert spans((dark,), clock) == ((-np.inf, np.inf),)
        assert spans((dark, dark), clock) == ((-np.inf, np.inf),)
        assert spans((), clock) == ()


def test_a_light_day_beside_one_with_a_dusk_begins_half_a_day_after_its_noon() -> None:
    clock = clock_of("2027-06-21")
    hours = [datetime(2027, 6, 21, hour, tzinfo=UTC) for hour in (2, 4, 20, 22)]
    dusky = Daylight(civil_dawn=hours[0], sunrise=hours[1], sunset=hours[2], civil_dusk=hours[3])
    light = Daylight(civil_dawn=None, sunrise=None, sunset=None, civil_dusk=None, always_light=True)
    assert night_spans((dusky, light), clock) == ((-np.inf, 7200.0), (79200.0, 86400.0))
    assert night_spans((light, dusky), clock) == ((0.0, 7200.0), (79200.0, np.inf))
