"""Legs of many departures with few nodes, against the full solver departure by departure."""

from __future__ import annotations

import numpy as np
import pytest
from independent_swim import WaterStream
from invented_waters import RandomWater, eddy, growing, rotary, sheared, steady, tide_and_eddy
from tideleg.core.solve.quick_legs import quick_legs
from tideleg.core.solve.smooth_rule import EVEN, smooth_rule
from tideleg.core.solve.swim import SwimWay, swim_leg, swimmable
from tideleg.core.solve.swum import ARRIVED, NOT_REACHED, STREAM_UNKNOWN, Line
from tideleg.core.swimmer import Swimmer

PACE = 0.6
SWIMMER = Swimmer(pace_m_s=PACE, path_factor=1.0)
HOUR_S = 3600.0


def turning(place, t_s):
    """Comes and goes along one line, twice as fast as the swimmer at its most."""
    return 1.2 * np.sin(2.0 * np.pi * t_s / (12.4 * HOUR_S)) * (1.0 + 0.3j) + 0.0 * place


def kinked(place, t_s):
    """Straight between the hours, as tables are."""
    hours = np.arange(-1.0, 26.0)
    return np.interp(t_s / HOUR_S, hours, 0.45 * np.sin(hours * 0.9)) * (0.6 + 0.8j) + 0.0 * place


WATERS = {
    "steady": steady(200.0, 0.3),
    "growing": growing(40.0, 0.1, 0.05),
    "rotary": rotary(0.5, 12.4),
    "turning": turning,
    "kinked": kinked,
    "sheared": sheared(90.0, 0.2, 0.3),
    "tide and eddy": tide_and_eddy,
    "eddy": eddy(500.0 + 300.0j, 250.0, 0.5),
}
_random = RandomWater(np.random.default_rng(5), np.array([400.0, 700.0]), np.array([1.5, 2.5]), np.array([0.4, 0.55]))
WATERS |= {"random 1": _random.one(0), "random 2": _random.one(1)}


@pytest.mark.parametrize("name", WATERS)
def test_quick_legs_are_those_of_the_full_solver(name: str) -> None:
    rng = np.random.default_rng(sum(map(ord, name)))
    stream, compared = WaterStream(WATERS[name]), 0
    for _ in range(3):
        line = Line(start=rng.uniform(-800.0, 800.0, 2), end=rng.uniform(-800.0, 800.0, 2))
        departs = np.arange(0.0, 13 * HOUR_S, 900.0)
        quick = quick_legs(stream, line.start, line.end, departs, PACE, step_s=30.0)
        full = swim_leg(stream, line, departs, PACE, SwimWay())
        can = swimmable(full, line, SWIMMER)
        assert np.array_equal(quick.swimmable(line.length_m, PACE, SWIMMER.min_ground_speed_m_s), can)
        assert np.all(np.abs(quick.arrive_s - full.arrive_s)[can] < 0.7)
        turn = quick.heading_rad - full.nodes.heading_rad[:, 0]
        assert np.all(np.abs(np.sin(turn / 2.0))[can] < np.radians(0.3))
        compared += int(can.sum())
    assert compared > 20


def test_track_begins_at_the_start_and_ends_on_the_mark() -> None:
    start, end = np.array([-300.0, 100.0]), np.array([500.0, -200.0])
    legs = quick_legs(WaterStream(tide_and_eddy), start, end, np.arange(0.0, 6 * HOUR_S, 600.0), PACE, step_s=30.0)
    assert np.allclose(legs.xy_m[:, 0], start)
    assert np.all(np.hypot(*(legs.xy_m[:, -1] - end).T) < 0.1)
    assert np.allclose(legs.t_s[:, 0], legs.depart_s)
    assert np.allclose(legs.t_s[:, -1], legs.arrive_s)


def test_every_row_may_start_somewhere_else() -> None:
    rng = np.random.default_rng(2)
    starts, end = rng.uniform(-700.0, 700.0, (12, 2)), np.array([900.0, 0.0])
    departs, stream = rng.uniform(0.0, 6 * HOUR_S, 12), WaterStream(rotary(0.4, 12.4))
    together = quick_legs(stream, starts, end, departs, PACE, step_s=30.0)
    alone = [quick_legs(stream, a, end, t[None], PACE, step_s=30.0) for a, t in zip(starts, departs)]
    assert np.allclose(together.arrive_s, [one.arrive_s[0] for one in alone], atol=0.1)


def test_unknown_stream_is_no_slack() -> None:
    def half_known(place, t_s):
        return np.where(t_s > 2.0 * HOUR_S, np.nan, 0.1) + 0.0 * place

    departs = np.array([0.0, 1.9 * HOUR_S, 3.0 * HOUR_S, np.nan])
    legs = quick_legs(WaterStream(half_known), np.zeros(2), np.array([600.0, 0.0]), departs, PACE, step_s=30.0)
    assert legs.ending.tolist() == [ARRIVED, STREAM_UNKNOWN, STREAM_UNKNOWN, NOT_REACHED]
    assert np.isnan(legs.arrive_s[1:]).all()


def test_rule_integrates_and_interpolates_polynomials_exactly() -> None:
    for intervals in (6, 12, 24):
        rule = smooth_rule(intervals)
        s = rule.points
        values = 3.0 * s**5 - s**2 + 0.25
        whole = s**6 / 2.0 - s**3 / 3.0 + 0.25 * s
        assert np.allclose(rule.running @ values, whole, atol=1e-12)
        integrals, between = rule.at_even(25)
        assert np.allclose(values @ between, 3.0 * EVEN**5 - EVEN**2 + 0.25, atol=1e-12)
        assert np.allclose(values @ integrals, EVEN**6 / 2.0 - EVEN**3 / 3.0 + 0.25 * EVEN, atol=1e-12)
        assert np.allclose(rule.even_running @ values, EVEN**6 / 2.0 - EVEN**3 / 3.0 + 0.25 * EVEN, atol=1e-12)
        assert np.isclose(rule.every_second @ (s**2)[::2], 1.0 / 3.0)


BAND_M = 40.0


def band(rate: complex, at_m: float, width_m: float):
    """Still water but for a band across the way to the north, its edges fading over 40 m as those of areas do."""

    def water(place, t_s):
        away = np.maximum(np.abs(place.imag - at_m) - width_m / 2.0, 0.0)
        share = np.clip(1.0 - away / BAND_M, 0.0, 1.0)
        return np.where(share > 0.0, rate * share, 0.02 + 0.0j) + 0.0 * t_s

    return water


@pytest.mark.parametrize("rate", [complex(np.nan, np.nan), 0.9 + 0.0j, -0.9j, 0.45 + 0.0j])
@pytest.mark.parametrize(("length_m", "width_m"), [(800.0, 10.0), (1500.0, 80.0), (3000.0, 160.0)])
def test_a_band_between_the_points_is_seen(rate: complex, length_m: float, width_m: float) -> None:
    """Water not known, or stronger than the swimmer, may lie anywhere on the leg: the full solver decides."""
    departs = np.zeros(1)
    for share in np.linspace(0.06, 0.93, 9):
        stream = WaterStream(band(rate, share * length_m, width_m))
        line = Line(start=np.zeros(2), end=np.array([0.0, length_m]))
        quick = quick_legs(stream, line.start, line.end, departs, PACE, step_s=30.0)
        full = swim_leg(stream, line, departs, PACE, SwimWay())
        can = swimmable(full, line, SWIMMER)
        assert quick.swimmable(length_m, PACE, SWIMMER.min_ground_speed_m_s)[0] == can[0], share
        if can[0]:
            assert abs(quick.arrive_s[0] - full.arrive_s[0]) < 1.5, share


def test_a_gap_in_time_between_the_points_is_seen() -> None:
    def water(place, t_s):
        return np.where(np.abs(t_s - 1500.0) < 150.0, np.nan, 0.1) + 0.0 * place

    stream, end = WaterStream(water), np.array([0.0, 1600.0])
    departs = np.arange(-2000.0, 2000.0, 97.0)
    quick = quick_legs(stream, np.zeros(2), end, departs, PACE, step_s=30.0)
    full = swim_leg(stream, Line(start=np.zeros(2), end=end), departs, PACE, SwimWay())
    assert np.array_equal(quick.ending == ARRIVED, full.ending == ARRIVED)
    assert 3 < (quick.ending == ARRIVED).sum() < len(departs) - 3
