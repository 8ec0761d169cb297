"""Daylight where the sun hardly sets or hardly rises, on every day of the year and on both sides of the date line."""

from datetime import datetime, timedelta, timezone

import pytest
from astral import Observer
from astral.sun import elevation
from invented_requests import Site, of_kind
from tideleg.core.clock import PlanClock
from tideleg.core.daylight import daylight_on
from tideleg.core.solve.plan_swim import plan_swim

UTC = timezone.utc
CLOCK = PlanClock(start=datetime(2027, 1, 1, tzinfo=UTC), zone_name="UTC")


@pytest.mark.parametrize(
    ("lon", "lat"),
    [
        (15.0, 60.0),
        (15.0, 63.0),
        (-150.0, 66.0),
        (179.9, 66.6),
        (179.9, 70.0),
        (-150.0, 74.0),
        (15.0, 78.0),
        (179.9, -67.0),
    ],
)
def test_dark_is_where_the_sun_is_six_degrees_down_on_every_day(lon, lat):
    """Each day at an hour that wanders through the day. Within 0.3 degree of the limit either answer will do."""
    observer = Observer(latitude=lat, longitude=lon)
    wrong = []
    for day in range(365):
        for hour in (day * 5 % 24, (day * 5 + 11) % 24):
            moment = datetime(2027, 1, 1, tzinfo=UTC) + timedelta(days=day, hours=hour)
            height = elevation(observer, moment)
            dark = daylight_on(lon, lat, moment, CLOCK).is_dark(moment)
            if abs(height + 6.0) > 0.3 and dark != (height < -6.0):
                wrong.append((moment, height, dark))
    assert wrong == []


@pytest.mark.parametrize(
    ("lon", "lat", "day"),
    [
        (15.0, 63.0, (2027, 5, 21)),
        (15.0, 70.0, (2027, 8, 15)),
        (-150.0, 70.0, (2027, 4, 27)),
        (15.0, -67.0, (2027, 2, 2)),
    ],
)
def test_last_days_of_a_twilight_are_not_dark_at_noon(lon, lat, day):
    """The sun crosses the height once on these days, since its other crossing falls beyond midnight."""
    noon = datetime(*day, 12, tzinfo=UTC) - timedelta(hours=lon / 15.0)
    daylight = daylight_on(lon, lat, noon, CLOCK)
    assert daylight.always_light or daylight.civil_dawn < noon < daylight.civil_dusk
    plan = plan_swim(Site(lon=lon, lat=lat).request([(0.0, 0.0), (0.0, 1000.0)], depart=noon))
    assert not of_kind(plan, "after_dark") and plan.feasible


def test_midnight_sun_has_no_set_and_polar_night_no_rise():
    summer = daylight_on(20.0, 70.0, datetime(2027, 6, 21, 11, tzinfo=UTC), CLOCK)
    winter = daylight_on(20.0, 78.0, datetime(2027, 12, 21, 11, tzinfo=UTC), CLOCK)
    for daylight in (summer, winter):
        assert {daylight.civil_dawn, daylight.sunrise, daylight.sunset, daylight.civil_dusk} == {None}
    assert (summer.always_light, winter.always_light) == (True, False)
