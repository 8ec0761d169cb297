"""Where the stream is not known there is no number: properties over random gaps in time and in space."""

import numpy as np
import pytest
from independent_swim import WaterStream, bearing_vector, swim_on_headings
from invented_waters import HOUR_S, tide_and_eddy
from tideleg.core.solve.swim import SwimWay, swim_leg, swimmable
from tideleg.core.solve.swum import ARRIVED, NO_SINGLE_HEADING, STREAM_UNKNOWN, Line
from tideleg.core.swimmer import Swimmer

PACE = 0.6


def gap_in_time(first_s, last_s):
    def water(place, t_s):
        stream = tide_and_eddy(place, t_s)
        return np.where((t_s >= first_s) & (t_s <= last_s), np.nan, stream)

    return water


def gap_in_space(centre, radius_m):
    def water(place, t_s):
        return np.where(np.abs(place - centre) < radius_m, np.nan, tide_and_eddy(place, t_s))

    return water


def leg_in(water, mark, depart_s, mode):
    line = Line(start=np.zeros(2), end=np.array([mark.real, mark.imag]))
    return swim_leg(WaterStream(water), line, np.array([depart_s]), PACE, SwimWay(mode=mode)), line


def track_of(leg):
    kept = np.isfinite(leg.nodes.t_s[0])
    return (leg.nodes.x_m[0] + 1j * leg.nodes.y_m[0])[kept], leg.nodes.t_s[0][kept]


def fine(place, t_s, per_step=20):
    """The track's straight pieces cut small."""
    at = np.linspace(0.0, len(t_s) - 1.0, (len(t_s) - 1) * per_step + 1)
    rows = np.arange(len(t_s))
    return np.interp(at, rows, place.real) + 1j * np.interp(at, rows, place.imag), np.interp(at, rows, t_s)


@pytest.mark.parametrize("mode", [0, 1, 2])
@pytest.mark.parametrize("gap", ["time", "space"])
def test_a_track_through_unknown_water_has_no_numbers(mode, gap):
    rng = np.random.default_rng(100 + mode)
    seen = {ARRIVED: 0, STREAM_UNKNOWN: 0, NO_SINGLE_HEADING: 0}
    for _ in range(60):
        mark = rng.uniform(500.0, 2000.0) * bearing_vector(rng.uniform(0.0, 360.0))
        depart = rng.uniform(0.0, 6.0 * HOUR_S)
        if gap == "time":
            first = depart + rng.uniform(-1.5, 2.0) * HOUR_S
            water = deep = gap_in_time(first, first + rng.uniform(0.05, 1.5) * HOUR_S)
        else:
            centre = mark * rng.uniform(-0.3, 1.3) + 1j * mark / abs(mark) * rng.uniform(-300.0, 300.0)
            radius_m = rng.uniform(60.0, 300.0)
            # A corner cut between two nodes, some 25 m apart, goes 25^2 / (8 x 60) = 1.3 m deep.
            water, deep = gap_in_space(centre, radius_m), gap_in_space(centre, radius_m - 1.5)
        leg, line = leg_in(water, mark, depart, mode)
        ending = int(leg.ending[0])
        seen[ending] += 1
        if ending == ARRIVED:
            assert np.isfinite(deep(*fine(*track_of(leg)))).all(), "a number out of unknown water"
            if mode == 0:
                heading = float(np.degrees(leg.nodes.heading_rad[0, 0]))
                seconds = leg.arrive_s[0] - depart
                end = swim_on_headings(deep, 0j, PACE * bearing_vector(heading), depart, seconds, steps=600)[-1]
                assert abs(end - mark) < 1.0
        else:
            assert np.isnan(leg.arrive_s[0])
            assert not swimmable(leg, line, Swimmer(pace_m_s=PACE, path_factor=1.0))[0]
    assert min(seen[ARRIVED], seen[STREAM_UNKNOWN]) >= 5, f"both must be met with: {seen}"
    # At a gap's rim the search may swing between in and out: no heading then, and no number either.
    assert seen[NO_SINGLE_HEADING] <= 6


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_gap_after_the_arrival_does_no_harm(mode):
    mark = 900.0 * bearing_vector(120.0)
    whole, _ = leg_in(tide_and_eddy, mark, 0.0, mode)
    arrive = float(whole.arrive_s[0])
    after, _ = leg_in(gap_in_time(arrive + 90.0, arrive + 1e6), mark, 0.0, mode)
    assert after.ending[0] == ARRIVED and after.arrive_s[0] == pytest.approx(arrive, abs=0.05)
    before, _ = leg_in(gap_in_time(arrive - 60.0, arrive + 1e6), mark, 0.0, mode)
    assert before.ending[0] == STREAM_UNKNOWN and np.isnan(before.arrive_s[0])


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_water_unknown_everywhere_gives_nothing(mode):
    leg, _ = leg_in(lambda place, t_s: place * np.nan, 800.0j, 0.0, mode)
    assert leg.ending[0] == STREAM_UNKNOWN and np.isnan(leg.arrive_s[0])


def test_missing_is_never_slack():
    """The gap bridged with nothing would give an arrival, and a wrong one; and slack itself does give one."""
    mark = 800.0j
    assert leg_in(lambda place, t_s: place * 0.0, mark, 0.0, 0)[0].arrive_s[0] == pytest.approx(800.0 / PACE)
    for mode in (0, 1, 2):
        assert leg_in(gap_in_time(-1e9, 1e9), mark, 0.0, mode)[0].ending[0] == STREAM_UNKNOWN


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_gap_across_the_line_is_met_wherever_the_nodes_fall(mode):
    """At the rim a node may lie in the gap in one round of the search and out of it in the next: still no number."""
    for first_m in np.concatenate([np.linspace(500.0, 520.0, 21), np.linspace(979.5, 999.5, 21)]):

        def water(place, t_s, first=first_m):
            return np.where(np.abs(place.imag - first - 60.0) < 60.0, np.nan, 0.1 + 0.0j)

        leg, _ = leg_in(water, 1000.0j, 0.0, mode)
        assert leg.ending[0] in (STREAM_UNKNOWN, NO_SINGLE_HEADING) and np.isnan(leg.arrive_s[0])
        if mode:
            assert leg.ending[0] == STREAM_UNKNOWN
