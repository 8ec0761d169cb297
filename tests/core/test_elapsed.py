"""Time that passes over nights on which clocks change is not the difference of the digits."""

from datetime import datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import pytest
from tideleg.core.clock import elapsed, later
from tideleg.core.errors import SwimPlanError

NOON = datetime(2027, 6, 5, 12, 0, tzinfo=timezone.utc)
PARIS, LORD_HOWE = ZoneInfo("Europe/Paris"), ZoneInfo("Australia/Lord_Howe")


@pytest.mark.parametrize(
    ("utc", "zone", "minutes"),
    [
        (datetime(2027, 10, 31, 0, 30, tzinfo=timezone.utc), PARIS, 40),  # 02:30 comes twice (IANA zone data)
        (datetime(2027, 3, 28, 0, 40, tzinfo=timezone.utc), PARIS, 40),  # from 01:59 to 03:00
        (datetime(2027, 10, 2, 15, 20, tzinfo=timezone.utc), LORD_HOWE, 20),  # half an hour is skipped
        (datetime(2027, 6, 5, 12, 0, tzinfo=timezone.utc), PARIS, -75),
    ],
)
def test_elapsed_time_is_that_of_the_sun(utc: datetime, zone: ZoneInfo, minutes: int) -> None:
    since = utc.astimezone(zone)
    until = (utc + timedelta(minutes=minutes)).astimezone(zone)
    assert elapsed(since, until) == timedelta(minutes=minutes)
    assert later(since, elapsed(since, until)) == until


def test_a_naive_time_has_no_distance_to_others() -> None:
    with pytest.raises(SwimPlanError):
        elapsed(NOON.replace(tzinfo=None), NOON)
