"""Hundreds of random smooth streams: a heading that is given leads over the mark; else none is given."""

import numpy as np
import pytest
from independent_swim import WaterStream, bearing_vector, swim_on_headings
from invented_waters import HOUR_S, RandomWater
from tideleg.core.planar import PlanarArea
from tideleg.core.solve.one_heading import hold_one_heading
from tideleg.core.solve.swum import ARRIVED, NO_SINGLE_HEADING
from tideleg.core.water.field import RuledArea, Station, StreamField
from tideleg.core.water.stream import ConstantStream

PACE = 0.6


def sweep(*, seed, gradient_m, share_of_pace, metres, n=150):
    """Endings (n,) and, for the arrived, how far the independent track ends from the mark at the arrival time."""
    rng = np.random.default_rng(seed)
    gradients = np.exp(rng.uniform(*np.log(gradient_m), n))
    waters = RandomWater(rng, gradients, rng.uniform(1.0, 6.0, n), PACE * rng.uniform(*share_of_pace, n))
    marks = rng.uniform(*metres, n) * bearing_vector(rng.uniform(0.0, 360.0, n))
    departs = rng.uniform(0.0, 6.0 * HOUR_S, n)
    held = [
        hold_one_heading(
            WaterStream(waters.one(row)),
            np.zeros((1, 2)),
            np.array([marks[row].real, marks[row].imag]),
            departs[row : row + 1],
            PACE,
        )
        for row in range(n)
    ]
    ending = np.array([int(one.ending[0]) for one in held])
    seconds = np.array([one.arrive_s[0] for one in held]) - departs
    heading = np.degrees([one.nodes.heading_rad[0, 0] for one in held])
    arrived = ending == ARRIVED
    ends = swim_on_headings(
        waters, 0j, PACE * bearing_vector(heading), departs, np.where(arrived, seconds, 1.0), steps=1500
    )[-1]
    assert np.isnan(seconds[~arrived]).all(), "no time where there is no heading"
    return ending, np.abs(ends - marks)[arrived]


@pytest.mark.parametrize(
    ("seed", "gradient_m", "metres"),
    [
        (1, (1000.0, 2000.0), (300.0, 4000.0)),
        (2, (500.0, 1000.0), (300.0, 4000.0)),
        (3, (300.0, 500.0), (300.0, 2500.0)),
    ],
)
def test_headings_in_smooth_water_pass_within_a_metre_of_the_mark(seed, gradient_m, metres):
    ending, miss_m = sweep(seed=seed, gradient_m=gradient_m, share_of_pace=(0.1, 0.8), metres=metres)
    assert miss_m.max() < 1.0
    assert np.mean(ending == ARRIVED) >= 0.98
    assert set(ending) <= {ARRIVED, NO_SINGLE_HEADING}


def test_water_that_always_runs_at_its_strongest_is_found_a_heading_too():
    ending, miss_m = sweep(seed=4, gradient_m=(500.0, 2000.0), share_of_pace=(0.8, 0.8), metres=(300.0, 4000.0))
    assert miss_m.max() < 1.0
    assert np.mean(ending == ARRIVED) >= 0.98


def test_water_as_rough_as_the_swim_is_refused_and_not_guessed():
    """Streams that change within 50-100 m: some have no heading worth a number, and then none is given."""
    ending, miss_m = sweep(seed=5, gradient_m=(50.0, 100.0), share_of_pace=(0.8, 0.8), metres=(600.0, 2500.0))
    assert NO_SINGLE_HEADING in ending and np.mean(ending == ARRIVED) > 0.5
    assert np.median(miss_m) < 1.0 and miss_m.max() < 30.0, "a step of 30 s is 20 m of swimming"


def random_eddy(rng, mark, share_of_pace):
    """A main stream, and across the line an eddy area of 150-600 m that runs about the other way."""
    reach = rng.uniform(150.0, 600.0)
    centre = mark * rng.uniform(0.2, 0.8) + 1j * mark / abs(mark) * rng.uniform(-1.0, 1.0) * reach
    ring = centre + reach * np.exp(1j * np.linspace(0.0, 2.0 * np.pi, 24)[:-1])
    towards, rate = rng.uniform(0.0, 360.0), share_of_pace * PACE
    back = ConstantStream.from_set(towards + 180.0 + rng.uniform(-40.0, 40.0), rate * rng.uniform(0.5, 1.0))
    stations = (
        Station(name="main", x_m=5000.0, y_m=0.0, stream=ConstantStream.from_set(towards, rate)),
        Station(name="eddy", x_m=0.0, y_m=0.0, stream=back),
    )
    area = PlanarArea(rings=(np.column_stack([ring.real, ring.imag]),))
    return StreamField(stations=stations, ruled_areas=(RuledArea(area=area, station="eddy"),))


def test_headings_through_an_eddy_area_pass_the_mark_too():
    """The edge of the area is 40 m wide and a step 20 m of swimming: within ten metres, and few are refused."""
    rng = np.random.default_rng(6)
    missed = []
    for _ in range(24):
        mark = rng.uniform(800.0, 2500.0) * bearing_vector(rng.uniform(0.0, 360.0))
        field = random_eddy(rng, mark, 0.4)
        held = hold_one_heading(field, np.zeros((1, 2)), np.array([mark.real, mark.imag]), np.zeros(1), PACE)
        if held.ending[0] == ARRIVED:

            def water(place, t_s, field=field):
                sample = field.at(place.real, place.imag, t_s)
                return sample.east_m_s + 1j * sample.north_m_s

            own = PACE * bearing_vector(np.degrees(held.nodes.heading_rad[0, :1]))
            end = swim_on_headings(water, 0j, own, 0.0, held.arrive_s, steps=400)[-1, 0]
            missed.append(abs(end - mark))
    assert len(missed) >= 22
    assert max(missed) < 10.0 and np.median(missed) < 1.0
