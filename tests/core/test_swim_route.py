"""A route's legs one after the other: stays, departures without a time, what is read off, what is not swimmable."""

import numpy as np
import pytest
from independent_swim import WaterStream
from invented_waters import growing, steady, tide_and_eddy
from tideleg.core.errors import StoppedError, SwimPlanError
from tideleg.core.geodesy import LocalFrame
from tideleg.core.solve.swim import SwimWay, swim_leg, swim_route, swimmable, why_not
from tideleg.core.solve.swum import ARRIVED, NEVER_ARRIVES, NOT_REACHED, Line
from tideleg.core.swimmer import Swimmer

FRAME = LocalFrame(lon=-28.5, lat=42.4)
SWIMMER = Swimmer(pace_m_s=0.66, path_factor=1.1)  # 0.6 m/s made good
STOPS = np.array([[0.0, 0.0], [600.0, 300.0], [300.0, 900.0], [0.0, 0.0]])
STAYS = np.array([0.0, 1200.0, 600.0, 0.0])


def route(water, departs, *, mode=0, **about):
    way = SwimWay(mode=mode)
    return swim_route(WaterStream(water), FRAME, STOPS, STAYS, np.array(departs), SWIMMER, way, **about)


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_legs_join_with_their_stays(mode):
    swum = route(tide_and_eddy, [0.0, 5000.0, 20000.0], mode=mode)
    assert np.array_equal(swum.arrive_s[:, 0], [0.0, 5000.0, 20000.0])
    assert np.allclose(swum.leave_s - swum.arrive_s, STAYS)
    for number, leg in enumerate(swum.legs):
        assert np.array_equal(leg.depart_s, swum.leave_s[:, number])
        assert np.array_equal(leg.arrive_s, swum.arrive_s[:, number + 1])
        assert (leg.ending == ARRIVED).all()


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_path_factor_slows_the_way_made_good(mode):
    swum = route(steady(0.0, 0.0), [0.0], mode=mode)
    lengths = np.hypot(*np.diff(STOPS, axis=0).T)
    assert [leg.arrive_s[0] - leg.depart_s[0] for leg in swum.legs] == pytest.approx(lengths / 0.6, abs=1e-6)


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_departures_together_are_departures_alone(mode):
    departs = np.linspace(0.0, 40_000.0, 30)
    together = route(tide_and_eddy, departs, mode=mode)
    alone = np.vstack([route(tide_and_eddy, [depart], mode=mode).arrive_s for depart in departs])
    assert together.arrive_s == pytest.approx(alone, abs=0.2)


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_departure_without_a_time_stays_without_and_harms_no_other(mode):
    some = route(tide_and_eddy, [0.0, np.nan, 9000.0], mode=mode)
    without = route(tide_and_eddy, [0.0, 9000.0], mode=mode)
    assert np.isnan(some.arrive_s[1]).all() and all(leg.ending[1] == NOT_REACHED for leg in some.legs)
    assert some.arrive_s[[0, 2]] == pytest.approx(without.arrive_s, abs=0.05)


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_leg_not_completed_leaves_the_later_ones_not_reached(mode):
    """A stream to the north that has grown to twice the pace: one is carried out, and no one comes home against it."""
    swum = route(growing(0.0, 0.1, 1.5), [0.0], mode=mode)
    endings = [int(leg.ending[0]) for leg in swum.legs]
    stuck = next(number for number, ending in enumerate(endings) if ending != ARRIVED)
    assert stuck >= 1 and all(ending == NOT_REACHED for ending in endings[stuck + 1 :])
    assert np.isfinite(swum.arrive_s[0, : stuck + 1]).all() and np.isnan(swum.arrive_s[0, stuck + 1 :]).all()
    line = Line(start=STOPS[stuck], end=STOPS[stuck + 1])
    assert why_not(swum.legs[stuck], 0, line, SWIMMER) != ""


def one_leg(water, *, mode=0, length=900.0, swimmer=SWIMMER):
    line = Line(start=np.zeros(2), end=np.array([0.0, length]))
    leg = swim_leg(WaterStream(water), line, np.zeros(1), swimmer.made_good_m_s, SwimWay(mode=mode))
    return leg, line


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_leg_below_the_least_ground_speed_is_not_swimmable(mode):
    for rate, well in ((0.44, True), (0.46, False)):
        leg, line = one_leg(steady(180.0, rate), mode=mode)
        assert leg.ending[0] == ARRIVED
        assert bool(swimmable(leg, line, SWIMMER)[0]) == well
        assert ("below your minimum of 0.15" in why_not(leg, 0, line, SWIMMER)) == (not well)


def test_leg_that_is_carried_back_before_it_arrives_is_not_swimmable():
    leg, line = one_leg(growing(180.0, 0.8, -0.8))
    assert leg.ending[0] == ARRIVED and leg.least_ahead_m_s[0] == pytest.approx(-0.2, abs=1e-6)
    assert not swimmable(leg, line, SWIMMER)[0]
    assert "pushes you back" in why_not(leg, 0, line, SWIMMER)


def test_stream_across_that_outgrows_the_pace_is_not_swimmable_on_one_heading_either():
    """The mark may still be hit by aiming far up-stream early; the swimmer could not hold the line at its end."""
    leg, line = one_leg(growing(90.0, 0.0, 1.2), length=1000.0)
    assert leg.ending[0] == ARRIVED and leg.most_across_m_s[0] > 0.6
    assert not swimmable(leg, line, SWIMMER)[0]
    assert "stream across the leg reaches" in why_not(leg, 0, line, SWIMMER)


def test_never_arriving_says_so():
    leg, line = one_leg(steady(180.0, 0.7))
    assert leg.ending[0] == NEVER_ARRIVES and np.isnan(leg.arrive_s[0])
    assert "not arrive within 12 hours" in why_not(leg, 0, line, SWIMMER)
    assert not swimmable(leg, line, SWIMMER)[0]


def test_ground_of_true_north_and_grid_differ_by_the_convergence():
    """At 70 N a stream to the true north, 20 km east of the centre, sets west of the grid's north."""
    frame = LocalFrame(lon=10.0, lat=70.0)
    stops = np.array([[20_000.0, 0.0], [20_000.0, 800.0]])
    swum = swim_route(WaterStream(steady(0.0, 0.3)), frame, stops, np.zeros(2), np.zeros(1), SWIMMER, SwimWay())
    east = float(swum.legs[0].mean_east_m_s[0])
    # Along the meridian by the projection itself: two places 100 m apart.
    lon, lat = frame.to_lonlat(stops[:1])[0]
    dx, dy = (frame.to_xy([[lon, lat + 0.001]]) - stops[:1])[0]
    assert east == pytest.approx(0.3 * dx / np.hypot(dx, dy), abs=0.3 * 1e-4)
    assert east < -0.002


@pytest.mark.parametrize(("mode", "every_s"), [(3, 600.0), (-1, 600.0), (1, 10.0), (1, float("nan"))])
def test_heading_modes_there_are_not_are_refused(mode, every_s):
    with pytest.raises(SwimPlanError, match="Modes are 0, 1 and 2"):
        SwimWay(mode=mode, heading_every_s=every_s)


def test_cancelling_stops_between_legs():
    asked = []
    with pytest.raises(StoppedError):
        route(tide_and_eddy, [0.0], is_cancelled=lambda: asked.append(1) or len(asked) > 1)
    assert len(asked) == 2
