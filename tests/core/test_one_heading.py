"""One heading for a leg against closed forms and against a fine-step integrator written apart from it."""

import numpy as np
import pytest
from independent_swim import WaterStream, bearing_vector, shoot, swim_on_headings
from invented_waters import HOUR_S, eddy, growing, rotary, sheared, steady, tide_and_eddy
from tideleg.core.solve.one_heading import hold_one_heading
from tideleg.core.solve.swim import SwimWay, swim_leg
from tideleg.core.solve.swum import ARRIVED, NEVER_ARRIVES, Line

PACE = 0.6


def solved(water, mark, depart_s=0.0, *, pace=PACE, step_s=30.0):
    """Heading in degrees, seconds and ending of one departure from (0, 0)."""
    depart = np.array([float(depart_s)])
    end = np.array([mark.real, mark.imag])
    held = hold_one_heading(WaterStream(water), np.zeros((1, 2)), end, depart, pace, step_s=step_s)
    heading = float(np.degrees(held.nodes.heading_rad[0, 0])) % 360.0
    return heading, float(held.arrive_s[0] - depart_s), int(held.ending[0])


WATERS = {
    "uniform": steady(200.0, 0.25),
    "linear in time": growing(130.0, -0.1, 0.4),
    "linear shear in space": sheared(40.0, 0.1, 0.15),
    "rotary": rotary(0.3, 6.0, first_deg=50.0),
    "an eddy": eddy(700.0 + 500.0j, 700.0, 0.3),
    "an eddy that drifts past": eddy(1500.0 - 400.0j, 600.0, 0.35, drift=-0.2 + 0.2j),
    "tide and eddy": tide_and_eddy,
}


@pytest.mark.parametrize("water", WATERS.values(), ids=WATERS.keys())
@pytest.mark.parametrize(("bearing", "metres"), [(60.0, 1400.0), (235.0, 900.0)])
def test_heading_and_time_are_those_of_the_independent_integrator(water, bearing, metres):
    mark = metres * bearing_vector(bearing)
    heading, seconds, ending = solved(water, mark, 1800.0)
    other_heading, other_seconds = shoot(water, 0j, mark, 1800.0, PACE, 3.0 * metres / PACE)
    assert ending == ARRIVED
    assert abs((heading - other_heading + 180.0) % 360.0 - 180.0) * metres * np.pi / 180.0 < 0.3, (
        "in metres at the mark"
    )
    assert seconds == pytest.approx(other_seconds, abs=0.3)


def test_slack_water_leaves_heading_unchanged():
    heading, seconds, ending = solved(steady(77.0, 0.0), 1000.0 * bearing_vector(123.0))
    assert (heading, seconds, ending) == (pytest.approx(123.0, abs=1e-9), pytest.approx(1000.0 / PACE), ARRIVED)


def test_steady_stream_gives_the_current_triangle():
    """1 km north across 0.3 m/s to the east at 0.6 m/s: 30 degrees up-stream, sqrt(0.36 - 0.09) over the ground."""
    heading, seconds, _ = solved(steady(90.0, 0.3), 1000.0j)
    assert heading == pytest.approx(330.0, abs=1e-6)
    assert seconds == pytest.approx(1000.0 / np.sqrt(0.27), abs=1e-6)


@pytest.mark.parametrize("depart_s", [0.0, 1234.0])
def test_stream_growing_along_the_leg_meets_its_closed_form(depart_s):
    """c = a + b t along the line: L = (v + a) T + b T^2 / 2, so T = (-(v + a) + sqrt((v + a)^2 + 2 b L)) / b."""
    b, length = -0.3 / HOUR_S, 1200.0
    a = 0.1 + b * depart_s
    expected = (-(PACE + a) + np.sqrt((PACE + a) ** 2 + 2.0 * b * length)) / b
    heading, seconds, _ = solved(growing(20.0, 0.1, -0.3), length * bearing_vector(20.0), depart_s)
    assert heading == pytest.approx(20.0, abs=1e-6)
    assert seconds == pytest.approx(expected, abs=1e-4)


def test_stream_growing_across_the_leg_meets_its_closed_form():
    """c = b t square to the line, from nothing at the start.

    The stream's displacement at T is b T^2 / 2 across, so the swimmer's own way v T has the legs L and b T^2 / 2:
    v^2 T^2 = L^2 + b^2 T^4 / 4, hence T^2 = 2 (v^2 - sqrt(v^4 - b^2 L^2)) / b^2, the lesser root being the first time.
    The heading lies asin(b T / 2 v) up-stream. At a time t the track is b t (t - T) / 2 across, most at T/2: b T^2 / 8.
    """
    b, length = 0.5 / HOUR_S, 1300.0
    seconds = np.sqrt(2.0 * (PACE**2 - np.sqrt(PACE**4 - b**2 * length**2))) / b
    stream = WaterStream(growing(90.0, 0.0, 0.5))
    line = Line(start=np.zeros(2), end=np.array([0.0, length]))
    leg = swim_leg(stream, line, np.array([0.0]), PACE, SwimWay())
    assert leg.arrive_s[0] == pytest.approx(seconds, abs=1e-4)
    assert np.degrees(leg.nodes.heading_rad[0, 0]) == pytest.approx(
        -np.degrees(np.arcsin(b * seconds / 2 / PACE)), abs=1e-5
    )
    assert leg.off_line_m[0] == pytest.approx(b * seconds**2 / 8.0, abs=b * 15.0**2)
    assert leg.mean_east_m_s[0] == pytest.approx(b * seconds / 2.0, abs=1e-7)
    assert leg.most_across_m_s[0] == pytest.approx(b * seconds, abs=1e-7)


def test_one_heading_is_not_that_of_the_streams_mean_along_the_line():
    """Where the stream that sets across also holds one back, one stays in it longer than its share of the line."""

    def water(place, t_s):
        return (0.3 - 0.35j) * (1.0 + np.tanh((place.imag - 1000.0) / 200.0)) / 2.0

    mark = 1500.0j
    heading, seconds, _ = solved(water, mark)
    mean = np.mean(water(1j * np.linspace(0.0, 1500.0, 501), 0.0))
    course_of_mean = -np.degrees(np.arcsin(mean.real / PACE))
    ends = swim_on_headings(
        water, 0j, PACE * bearing_vector(np.array([heading, course_of_mean])), 0.0, seconds, steps=2000
    )[-1]
    assert abs(ends[0] - mark) < 0.3
    assert abs(ends[1] - mark) > 100.0


def test_halving_the_step_quarters_the_error():
    """Measured on the arrival times of eight departures in water that varies in space and time."""
    mark, departs = 2600.0 * bearing_vector(48.0), np.linspace(0.0, 6.0 * HOUR_S, 8)
    end, start = np.array([mark.real, mark.imag]), np.zeros((8, 2))

    def arrivals(step_s):
        return hold_one_heading(WaterStream(tide_and_eddy), start, end, departs, PACE, step_s=step_s).arrive_s

    best = arrivals(3.0)
    steps = np.array([480.0, 240.0, 120.0])
    errors = np.array([np.sqrt(np.mean((arrivals(step) - best) ** 2)) for step in steps])
    slopes = np.log2(errors[:-1] / errors[1:])
    assert errors[0] > 1.0, "the coarse step must be seen to err"
    assert np.all((slopes > 1.7) & (slopes < 2.5)), f"orders {slopes}, errors {errors} s"
    assert np.max(np.abs(arrivals(30.0) - best)) < 0.1


@pytest.mark.parametrize("water", [WATERS["an eddy that drifts past"], tide_and_eddy, WATERS["rotary"]])
def test_swimming_back_in_time_retraces_the_track(water):
    """Time run backwards turns the stream round: from the mark, on the reciprocal, one comes back to the start."""
    mark = 1500.0 * bearing_vector(70.0)
    heading, seconds, _ = solved(water, mark, 900.0, step_s=15.0)

    def backwards(place, t_s):
        return -water(place + mark, 900.0 + seconds - t_s)

    back, back_seconds, ending = solved(backwards, -mark, 0.0, step_s=15.0)
    assert ending == ARRIVED
    assert back_seconds == pytest.approx(seconds, abs=0.05)
    assert (back - heading) % 360.0 == pytest.approx(180.0, abs=0.02)


def test_departures_together_are_departures_alone():
    departs = np.linspace(0.0, 12.0 * HOUR_S, 49)
    mark = 1800.0 * bearing_vector(250.0)
    together = hold_one_heading(
        WaterStream(tide_and_eddy), np.zeros((49, 2)), np.array([mark.real, mark.imag]), departs, PACE
    )
    alone = [solved(tide_and_eddy, mark, depart) for depart in departs]
    assert together.arrive_s - departs == pytest.approx([seconds for _, seconds, _ in alone], abs=0.05)
    headings = np.degrees(together.nodes.heading_rad[:, 0]) % 360.0
    assert headings == pytest.approx([heading for heading, _, _ in alone], abs=0.01)


def test_head_stream_of_the_pace_never_arrives():
    for rate in (PACE, PACE + 0.1):
        assert solved(steady(180.0, rate), 800.0j)[2] == NEVER_ARRIVES
    heading, seconds, ending = solved(steady(180.0, PACE - 0.03), 800.0j)
    assert (heading % 360.0, seconds, ending) == (
        pytest.approx(0.0, abs=1e-6),
        pytest.approx(800.0 / 0.03, abs=0.1),
        ARRIVED,
    )


def test_stream_that_turns_in_time_brings_one_home_late():
    """Against 0.8 m/s that eases by 0.4 m/s an hour: back first, then on; L = (v - a) T + b T^2 / 2."""
    b = 0.4 / HOUR_S
    expected = (0.2 + np.sqrt(0.04 + 2.0 * b * 800.0)) / b
    _, seconds, ending = solved(growing(180.0, 0.8, -0.4), 800.0j)
    assert ending == ARRIVED
    assert seconds == pytest.approx(expected, abs=1e-3)


def test_nodes_begin_at_the_start_and_end_on_the_mark():
    mark = 1234.0 * bearing_vector(333.0)
    held = hold_one_heading(
        WaterStream(tide_and_eddy), np.zeros((1, 2)), np.array([mark.real, mark.imag]), np.array([600.0]), PACE
    )
    kept = np.isfinite(held.nodes.t_s[0])
    place = held.nodes.x_m[0][kept] + 1j * held.nodes.y_m[0][kept]
    times = held.nodes.t_s[0][kept]
    assert abs(place[0]) < 1e-9 and abs(place[-1] - mark) < 0.02
    assert (times[0], times[-1]) == (600.0, held.arrive_s[0]) and np.all(np.diff(times) > 0.0)
    assert np.ptp(held.nodes.heading_rad[0][kept]) == 0.0


@pytest.mark.parametrize("towards", [0.0, 90.0, 180.0])
def test_minutes_never_shrink_when_pace_shrinks_in_a_steady_stream(towards):
    paces = np.linspace(1.2, 0.33, 45)
    minutes = np.array([solved(steady(towards, 0.3), 900.0j, pace=pace)[1] for pace in paces])
    assert np.isfinite(minutes).all()
    assert np.all(np.diff(minutes) >= 0.0)


def test_water_that_swings_behind_the_mark_does_not_spoil_the_heading():
    """Behind the mark the stream always sets back onto the line: no round of the search agrees with the one before."""

    def water(place, t_s):
        return np.where(place.imag > 1030.0, -0.8 * np.sign(place.real), -0.35) + 0.0 * place

    heading, seconds, ending = solved(water, 1000.0j)
    plain_heading, plain_seconds, _ = solved(steady(270.0, 0.35), 1000.0j)
    assert ending == ARRIVED
    assert (heading, seconds) == (pytest.approx(plain_heading, abs=0.01), pytest.approx(plain_seconds, abs=0.1))
