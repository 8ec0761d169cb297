"""The latest departure home: the worked story of the slower partner, and bands where the way home is a cliff."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from independent_swim import WaterStream
from invented_waters import RandomWater
from tideleg.core.solve.latest_departure import (
    LatestLeave,
    latest_leave,
    latest_of_each,
    leaving_bands,
    seconds_home,
)
from tideleg.core.solve.one_heading import hold_one_heading
from tideleg.core.swimmer import Swimmer, group_of
from tideleg.core.water.field import StreamField

MINUTE, HALF_PERIOD_S = 60.0, 372.0 * 60.0
START, HOME = np.array([0.0, 1000.0]), np.array([0.0, 0.0])
QUICK, SLOW = (Swimmer(name=name, pace_m_s=pace, path_factor=1.0) for name, pace in (("Runa", 0.75), ("Odd", 0.55)))


def clock(hours: int, minutes: int) -> float:
    return 3600.0 * hours + MINUTE * minutes


def turns(at_s: float, peak_m_s: float):
    """A sine stream that sets north, against the way home, after its turn and with it before."""
    return WaterStream(lambda place, t_s: 1j * peak_m_s * np.sin(np.pi * (t_s - at_s) / HALF_PERIOD_S) + 0.0 * place)


ADVERSE = turns(clock(12, 0), 0.5)
WHEN = {"earliest_s": clock(9, 0), "by_s": clock(13, 15)}
SCAN = np.arange(clock(9, 0), clock(14, 0), MINUTE)


def minutes_home_by_formula(leave_s: float, pace: float, turn_s: float, peak: float) -> float:
    """Minutes home against the sine: metres made good by t are v t less the sine's integral, found by bisection."""
    rate = np.pi / HALF_PERIOD_S

    def made_good(seconds: float) -> float:
        pushed = peak / rate * (np.cos(rate * (leave_s - turn_s)) - np.cos(rate * (leave_s - turn_s + seconds)))
        return pace * seconds - pushed

    low, high = 0.0, 6 * 3600.0
    for _ in range(60):
        middle = (low + high) / 2.0
        low, high = (low, middle) if made_good(middle) >= 1000.0 else (middle, high)
    return high / MINUTE


def test_the_worked_story_of_the_slower_partner_comes_out_to_the_printed_minute() -> None:
    # Story 9 of the trade's notes: home by 13:15, latest 12:42 alone, 12:26 together; path factor 1.
    together = group_of([QUICK, SLOW])
    found = latest_of_each(ADVERSE, START, HOME, together, **WHEN)
    assert [one.who for one in found] == ["Runa", "Odd", "Runa and Odd"]
    assert [int(one.latest_s // MINUTE) for one in found] == [12 * 60 + 42, 12 * 60 + 26, 12 * 60 + 26]


def test_one_swimmer_has_one_latest_departure() -> None:
    found = latest_of_each(ADVERSE, START, HOME, QUICK, **WHEN)
    assert found == (LatestLeave(who="Runa", latest_s=found[0].latest_s),)
    assert latest_leave(ADVERSE, START, HOME, 0.75, **WHEN) == found[0].latest_s
    assert np.isnan(latest_leave(ADVERSE, START, HOME, 0.75, earliest_s=clock(13, 0), by_s=clock(13, 15)))


@pytest.mark.parametrize(("pace", "factor", "fixed_min"), [(0.75, 1.0, 0.0), (0.55, 1.0, 0.0), (0.75, 1.3, 20.0)])
def test_minutes_home_and_the_edge_meet_the_integral_of_the_sine(pace: float, factor: float, fixed_min: float) -> None:
    about = {"by_s": clock(13, 15), "factor": factor, "fixed_s": MINUTE * fixed_min}
    found = leaving_bands(ADVERSE, START, HOME, SCAN, pace, **about)
    for row in range(0, len(SCAN), 23):
        if np.isfinite(found.home_min[row]):
            expected = minutes_home_by_formula(SCAN[row], pace, clock(12, 0), 0.5)
            assert found.home_min[row] == pytest.approx(expected, abs=0.01)

    def late_s(leave_s: float) -> float:
        home_min = minutes_home_by_formula(leave_s, pace, clock(12, 0), 0.5)
        return leave_s + MINUTE * (factor * home_min + fixed_min) - clock(13, 15)

    assert late_s(found.latest_s) <= 0.5  # the solver's own error
    assert late_s(found.latest_s + 2.0) > 0.0


def test_a_stream_too_strong_around_noon_leaves_two_bands_with_both_edges_to_a_second() -> None:
    # Faster than the swimmer around noon: before and after it the way can be swum, and in between it cannot.
    strong = turns(clock(9, 0), 0.9)
    leave_s = np.arange(clock(6, 0), clock(18, 0), MINUTE)
    found = leaving_bands(strong, START, HOME, leave_s, 0.6, by_s=clock(24, 0), factor=1.0, fixed_s=0.0)
    assert len(found.bands) == 2
    assert found.latest_s == leave_s[-1], "a band that is not over is cut off at the last departure asked for"
    for edge, inward in ((found.bands[0][1], -1.0), (found.bands[1][0], 1.0)):
        there = seconds_home(strong, START, HOME, np.array([edge, edge - 1.5 * inward]), 0.6)
        assert np.isfinite(there[0]) and np.isnan(there[1])
    assert np.isnan(found.home_min[~found.safe]).all()


def test_no_departure_is_safe_where_the_way_is_too_long_or_the_stream_unknown() -> None:
    unknown = WaterStream(lambda place, t_s: np.nan + 0.0 * place)
    for stream, by_s in ((ADVERSE, clock(9, 10)), (unknown, clock(18, 0))):
        found = leaving_bands(stream, START, HOME, SCAN, 0.75, by_s=by_s, factor=1.3, fixed_s=0.0)
        assert found.bands == () and np.isnan(found.latest_s) and not found.safe.any()
    assert np.isnan(found.home_min).all()
    nowhere = StreamField(stations=())
    assert np.isnan(seconds_home(nowhere, START, HOME, SCAN[:3], 0.75)).all()


def test_a_way_with_a_corner_takes_its_legs_one_after_the_other() -> None:
    corner = np.array([400.0, 600.0])
    both = seconds_home(ADVERSE, START, np.array([corner, HOME]), SCAN[:5], 0.75)
    first = hold_one_heading(ADVERSE, np.tile(START, (5, 1)), corner, SCAN[:5], 0.75).arrive_s
    second = hold_one_heading(ADVERSE, np.tile(corner, (5, 1)), HOME, first, 0.75).arrive_s
    np.testing.assert_allclose(both, second - SCAN[:5], atol=0.3)


def test_below_the_least_ground_speed_is_not_swum() -> None:
    about = {"by_s": clock(20, 0), "factor": 1.0, "fixed_s": 0.0}
    free = leaving_bands(ADVERSE, START, HOME, SCAN, 0.55, **about)
    bound = leaving_bands(ADVERSE, START, HOME, SCAN, 0.55, min_ground_speed_m_s=0.3, **about)
    slow = free.home_min > 1000.0 / 0.3 / 60.0
    assert slow.any() and np.array_equal(np.isnan(bound.home_min), np.isnan(free.home_min) | slow)


def test_every_departure_of_a_band_is_safe_and_every_other_is_not_in_random_waters() -> None:
    rng = np.random.default_rng(20)
    waters = RandomWater(rng, rng.uniform(600.0, 2000.0, 12), rng.uniform(0.8, 2.0, 12), rng.uniform(0.1, 0.7, 12))
    leave_s = np.arange(0.0, 5 * 3600.0, 5 * MINUTE)
    for row in range(12):
        stream = WaterStream(waters.one(row))
        about = {"by_s": 4 * 3600.0, "factor": 1.3, "fixed_s": 900.0}
        found = leaving_bands(stream, START, HOME, leave_s, 0.6, **about)
        inside = np.any([(leave_s >= first) & (leave_s <= last) for first, last in found.bands], axis=0)
        assert np.array_equal(inside, found.safe) if found.bands else not found.safe.any()
        held = hold_one_heading(stream, np.tile(START, (len(leave_s), 1)), HOME, leave_s, 0.6)
        alone = leave_s + 1.3 * (held.arrive_s - leave_s) + 900.0 <= about["by_s"]
        assert not np.any(found.safe & ~alone)


def test_a_pace_given_to_the_group_holds_for_the_group_alone() -> None:
    together = replace(group_of([QUICK, SLOW]), pace_m_s=0.65)
    found = latest_of_each(ADVERSE, START, HOME, together, **WHEN)
    runa, odd, both = (one.latest_s for one in found)
    assert odd < both < runa
