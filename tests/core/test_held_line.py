"""Holding the ruler line, and a new heading every so often, against the independent integrator."""

import numpy as np
import pytest
from independent_swim import WaterStream, bearing_vector, hold_line, swim_on_headings
from invented_waters import HOUR_S, RandomWater, eddy, growing, rotary, sheared, steady, tide_and_eddy
from tideleg.core.solve.current_triangle import heading_to_make_good
from tideleg.core.solve.held_line import hold_the_line, renew_heading
from tideleg.core.solve.swum import ARRIVED, NEVER_ARRIVES, TOO_STRONG_ACROSS, Line

PACE, EVERY_S = 0.6, 600.0

WATERS = {
    "uniform": steady(200.0, 0.25),
    "linear in time": growing(130.0, -0.1, 0.4),
    "linear shear in space": sheared(40.0, 0.1, 0.15),
    "rotary": rotary(0.3, 6.0, first_deg=50.0),
    "an eddy": eddy(700.0 + 500.0j, 700.0, 0.3),
    "tide and eddy": tide_and_eddy,
}


def line_to(mark):
    return Line(start=np.zeros(2), end=np.array([mark.real, mark.imag]))


def held(water, mark, depart_s=0.0, **about):
    return hold_the_line(WaterStream(water), line_to(mark), np.array([float(depart_s)]), PACE, **about)


def swim_headings(water, mark, swum, depart_s):
    """Where the independent integrator is at each renewal and at the arrival, with the headings that were given."""
    kept = np.isfinite(swum.nodes.t_s[0])
    times, headings = swum.nodes.t_s[0][kept], np.degrees(swum.nodes.heading_rad[0][kept])
    arrive = float(swum.arrive_s[0])
    cuts = np.append(np.arange(depart_s, arrive - 1e-6, EVERY_S), arrive)
    places = [0j]
    for start, end in zip(cuts, cuts[1:]):
        heading = headings[np.searchsorted(times, end - 1e-6, side="right") - 1]
        own = PACE * bearing_vector(heading)
        places.append(complex(swim_on_headings(water, places[-1], own, start, end - start, steps=200)[-1]))
    return places


@pytest.mark.parametrize("water", WATERS.values(), ids=WATERS.keys())
def test_time_on_the_held_line_is_that_of_the_independent_integrator(water):
    for mark in (1400.0 * bearing_vector(60.0), 900.0 * bearing_vector(235.0)):
        swum = held(water, mark, 1800.0)
        expected = hold_line(water, 0j, mark, 1800.0, PACE, 12 * HOUR_S)
        assert swum.ending[0] == ARRIVED
        assert swum.arrive_s[0] - 1800.0 == pytest.approx(expected, abs=0.2)


def test_held_line_stays_on_the_line_on_the_triangles_headings():
    mark = 1500.0 * bearing_vector(310.0)
    nodes = held(tide_and_eddy, mark, 1000.0).nodes
    kept = np.isfinite(nodes.t_s[0])
    place = (nodes.x_m[0] + 1j * nodes.y_m[0])[kept]
    assert np.max(np.abs((place * mark.conjugate()).imag)) / abs(mark) < 1e-6
    stream = tide_and_eddy(place, nodes.t_s[0][kept])[:-1]
    towards = (90.0 - np.degrees(np.angle(stream))) % 360.0
    expected = heading_to_make_good(310.0, PACE, towards, np.abs(stream)).heading_true_deg
    assert (np.degrees(nodes.heading_rad[0][kept])[:-1] - expected) % 360.0 == pytest.approx(
        0.0, abs=1e-3
    ) or np.allclose((np.degrees(nodes.heading_rad[0][kept])[:-1] - expected + 180.0) % 360.0, 180.0, atol=1e-3)


def test_held_line_in_a_stream_growing_along_it_meets_its_closed_form():
    """ds/dt = v + a + b t: L = (v + a) T + b T^2 / 2."""
    b, length = 0.35 / HOUR_S, 2100.0
    expected = (-(PACE - 0.2) + np.sqrt((PACE - 0.2) ** 2 + 2.0 * b * length)) / b
    swum = held(growing(20.0, -0.2, 0.35), length * bearing_vector(20.0))
    assert swum.arrive_s[0] == pytest.approx(expected, abs=1e-3)


def test_held_line_across_a_growing_stream_meets_its_closed_form():
    """ds/dt = sqrt(v^2 - b^2 t^2): with u = b T / v, L = v^2 / (2 b) (asin u + u sqrt(1 - u^2)), by bisection."""
    b, length = 0.5 / HOUR_S, 1300.0
    low, high = 0.0, 1.0
    for _ in range(60):
        u = (low + high) / 2.0
        way = PACE**2 / (2.0 * b) * (np.arcsin(u) + u * np.sqrt(1.0 - u * u))
        low, high = (u, high) if way < length else (low, u)
    swum = held(growing(90.0, 0.0, 0.5), length * 1.0j, step_s=10.0)
    assert swum.arrive_s[0] == pytest.approx(low * PACE / b, abs=0.02)


def test_halving_the_step_quarters_the_error_on_the_held_line():
    departs = np.linspace(0.0, 6.0 * HOUR_S, 8)
    line = line_to(2600.0 * bearing_vector(48.0))

    def arrivals(step_s):
        return hold_the_line(WaterStream(tide_and_eddy), line, departs, PACE, step_s=step_s).arrive_s

    best = arrivals(3.0)
    errors = np.array([np.sqrt(np.mean((arrivals(step) - best) ** 2)) for step in (480.0, 240.0, 120.0)])
    slopes = np.log2(errors[:-1] / errors[1:])
    assert errors[0] > 0.5, "the coarse step must be seen to err"
    assert np.all((slopes > 1.7) & (slopes < 2.5)), f"orders {slopes}, errors {errors} s"


def test_stream_across_as_fast_as_the_swimmer_is_not_held():
    assert held(steady(90.0, PACE), 800.0j).ending[0] == TOO_STRONG_ACROSS
    late = held(growing(90.0, 0.2, 1.2), 1500.0j)
    assert late.ending[0] == TOO_STRONG_ACROSS and np.isnan(late.arrive_s[0])
    assert held(growing(90.0, 0.2, 1.2), 400.0j).ending[0] == ARRIVED, "it is there before the stream has grown"


def test_head_stream_of_the_pace_is_never_overcome():
    swum = held(steady(180.0, PACE), 800.0j)
    assert swum.ending[0] == NEVER_ARRIVES and np.isnan(swum.arrive_s[0])


def test_held_lines_together_are_held_lines_alone():
    departs = np.linspace(0.0, 12.0 * HOUR_S, 25)
    mark = 1800.0 * bearing_vector(250.0)
    together = hold_the_line(WaterStream(tide_and_eddy), line_to(mark), departs, PACE)
    alone = [float(held(tide_and_eddy, mark, depart).arrive_s[0]) for depart in departs]
    assert together.arrive_s == pytest.approx(alone, abs=0.05)


def renewed(water, mark, departs=(0.0,), *, step_s=30.0):
    return renew_heading(
        WaterStream(water), line_to(mark), np.array(departs, dtype=float), PACE, EVERY_S, step_s=step_s
    )


@pytest.mark.parametrize("water", WATERS.values(), ids=WATERS.keys())
def test_each_new_heading_brings_one_back_onto_the_line_and_the_last_onto_the_mark(water):
    for mark in (1400.0 * bearing_vector(60.0), 900.0 * bearing_vector(235.0)):
        swum = renewed(water, mark, (1800.0,))
        assert swum.ending[0] == ARRIVED
        places = swim_headings(water, mark, swum, 1800.0)
        off = np.abs([(place * mark.conjugate()).imag / abs(mark) for place in places[1:-1]])
        assert len(off) >= 1 and np.max(off) < 0.3
        assert abs(places[-1] - mark) < 0.3


def test_new_headings_in_random_smooth_water_lead_to_the_mark():
    rng = np.random.default_rng(11)
    waters = RandomWater(rng, np.full(40, 500.0), rng.uniform(1.0, 6.0, 40), np.full(40, 0.7 * PACE))
    for row in range(40):
        mark = rng.uniform(600.0, 2500.0) * bearing_vector(rng.uniform(0.0, 360.0))
        swum = renewed(waters.one(row), mark, (3600.0,))
        assert swum.ending[0] == ARRIVED
        assert abs(swim_headings(waters.one(row), mark, swum, 3600.0)[-1] - mark) < 1.0


def test_new_headings_lie_between_one_heading_and_the_held_line():
    """Renewed often, the time goes to that of the held line, since the line is then held but for centimetres."""
    mark = 1700.0 * bearing_vector(60.0)
    line_s = held(tide_and_eddy, mark).arrive_s[0]
    often = renew_heading(WaterStream(tide_and_eddy), line_to(mark), np.zeros(1), PACE, 60.0, step_s=15.0)
    seldom = renewed(tide_and_eddy, mark)
    assert often.arrive_s[0] == pytest.approx(line_s, abs=0.5)
    assert abs(often.arrive_s[0] - line_s) < abs(seldom.arrive_s[0] - line_s)


def test_new_headings_together_are_new_headings_alone():
    departs = np.linspace(0.0, 12.0 * HOUR_S, 13)
    mark = 1800.0 * bearing_vector(250.0)
    together = renewed(tide_and_eddy, mark, departs)
    alone = [float(renewed(tide_and_eddy, mark, (depart,)).arrive_s[0]) for depart in departs]
    assert together.arrive_s == pytest.approx(alone, abs=0.1)
