"""Height of tide against printed examples."""

from datetime import datetime, timedelta, timezone

import numpy as np
import pytest
from tideleg.core.water.tide import TideTable, first_time_height_reaches

DAY = datetime(2027, 6, 5, tzinfo=timezone.utc)


def clock_s(text):
    hours, minutes = text.split(":")
    return 3600.0 * int(hours) + 60.0 * int(minutes)


# Canadian Tide and Current Tables, example of heights between high and low water (read in a forum thread):
# LW 03:27 2.2 ft, HW 11:41 11.4 ft, at 07:00 5.8 ft.
def test_cosine_height_example():
    foot = 0.3048
    table = TideTable(
        port="example",
        times_s=np.array([clock_s("03:27"), clock_s("11:41")]),
        heights_m=np.array([2.2, 11.4]) * foot,
        is_high=np.array([False, True]),
    )
    assert float(table.height_m(clock_s("07:00"))) / foot == pytest.approx(5.8, abs=0.05)


def test_rule_of_twelfths_is_within_0_0163_of_range_of_the_cosine():
    """Common practice, no source: 1-2-3-3-2-1 twelfths an hour over six hours. At one hour the cosine has risen
    (1 - cos 30) / 2 = 0.0670 of the range and the rule 1 / 12 = 0.0833; at five hours the gap is the same."""
    hours = np.arange(7)
    table = TideTable(
        port="six hours",
        times_s=np.array([0.0, 6 * 3600.0]),
        heights_m=np.array([0.0, 1.0]),
        is_high=np.array([False, True]),
    )
    twelfths = np.array([0, 1, 3, 6, 9, 11, 12]) / 12.0
    gaps = np.abs(table.height_m(3600.0 * hours) - twelfths)
    assert gaps.max() == pytest.approx(0.0163, abs=0.00005)
    assert np.argsort(gaps)[-2:].tolist() in ([1, 5], [5, 1])


def test_pinnacle_comes_within_reach_on_the_falling_tide():
    """8.0 m charted, working depth 12 m, HW 12:00 5.2 m, LW 18:10 0.8 m: reachable from 14:09 (own arithmetic:
    370 min / pi * acos(1 - 2 * 1.2 / 4.4) = 129.4 min)."""
    table = TideTable(
        port="pinnacle",
        times_s=np.array([clock_s("12:00"), clock_s("18:10")]),
        heights_m=np.array([5.2, 0.8]),
        is_high=np.array([True, False]),
    )
    reached = first_time_height_reaches(table, 12.0 - 8.0, clock_s("12:00"), clock_s("18:10"))
    assert f"{DAY + timedelta(seconds=reached):%H:%M}" == "14:09"
    assert reached == pytest.approx(clock_s("12:00") + 60.0 * 370.0 / np.pi * np.arccos(1.0 - 2.0 * 1.2 / 4.4), abs=1.0)
