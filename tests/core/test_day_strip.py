"""A day ready to be drawn: what it refuses, its own clock, and its runs of departures."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from invented_days import make_strip, make_window
from tideleg.core.errors import NaiveTimeError, SwimPlanError
from tideleg.core.results.day_strip import FEASIBLE, DayStrip, TideMoment

LISBON = ZoneInfo("Europe/Lisbon")


@pytest.mark.parametrize(("day", "hours"), [("2027-06-05", 24), ("2027-03-28", 23), ("2027-10-31", 25)])
def test_a_day_is_as_long_as_its_clocks_make_it(day: str, hours: int) -> None:
    strip = make_strip(day)
    assert strip.length_s == 3600.0 * hours
    assert strip.moment(0.0).hour == 0
    assert strip.seconds(strip.moment(12345.0)) == pytest.approx(12345.0)


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"states": ("stream",)}, "1 states for"),
        ({"tide_heights_m": np.zeros(3)}, "tide_heights_m"),
        ({"tide_times_s": np.zeros(145)}, "do not rise"),
        ({"stream_least_kn": np.full(145, np.nan)}, "Both are NaN"),
        ({"stream_least_kn": np.full(145, 9.0)}, "above the strongest"),
        ({"stream_most_kn": np.full(145, np.inf)}, "infinite"),
        ({"pace_kn": 0.0}, "pace"),
        ({"zone_name": "Moon/Base"}, "Moon/Base"),
        ({"end": datetime(2027, 6, 9, tzinfo=LISBON)}, "48 h"),
        ({"planned_home": datetime(2027, 6, 5, 12, tzinfo=LISBON)}, "planned"),
    ],
)
def test_what_does_not_fit_is_refused_in_words(changes, words: str) -> None:
    with pytest.raises(SwimPlanError, match=words):
        make_strip(**changes)


def test_a_naive_time_is_refused() -> None:
    with pytest.raises(NaiveTimeError):
        make_strip(now=datetime(2027, 6, 5, 12))  # noqa: DTZ001
    with pytest.raises(NaiveTimeError):
        TideMoment(kind="HW", moment=datetime(2027, 6, 5, 12))  # noqa: DTZ001


def test_arrays_are_copies_that_nobody_can_change() -> None:
    heights = np.zeros(2)
    start, end = datetime(2027, 6, 5, tzinfo=LISBON), datetime(2027, 6, 6, tzinfo=LISBON)
    strip = DayStrip(
        route="r", zone_name="Europe/Lisbon", start=start, end=end, tide_times_s=[0.0, 60.0], tide_heights_m=heights
    )
    heights[0] = 7.0
    assert strip.tide_heights_m[0] == 0.0
    with pytest.raises(ValueError, match="read-only"):
        strip.tide_heights_m[0] = 1.0


def test_runs_cover_the_departures_in_order_and_feasible_ones_keep_their_own_ends() -> None:
    states = ("dark", "dark", FEASIBLE, FEASIBLE, "stream", "ferry")
    strip = make_strip(departures_s=600.0 * np.arange(6), states=states)
    assert strip.state_runs() == (
        ("dark", 0.0, 1200.0),
        (FEASIBLE, 1200.0, 1800.0),
        ("stream", 1800.0, 2700.0),
        ("ferry", 2700.0, 3300.0),
    )


def test_nothing_is_said_of_times_without_departures() -> None:
    strip = make_strip(departures_s=[0.0, 600.0, 36000.0, 36600.0], states=("stream",) * 4)
    assert [(round(a), round(b)) for _, a, b in strip.state_runs()] == [(0, 900), (35700, 36900)]
    assert make_strip(departures_s=(), states=()).state_runs() == ()


def test_a_window_whose_best_departure_lies_outside_it_is_refused() -> None:
    first, last, best = (datetime(2027, 6, 5, hour, tzinfo=LISBON) for hour in (9, 11, 12))
    with pytest.raises(SwimPlanError, match="outside it"):
        make_strip(windows=(make_window(first, last, best),))
