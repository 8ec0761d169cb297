"""Hundreds of random smooth streams: a heading that is given leads over the mark; else none is given."""

import numpy as np
import pytest
from independent_swim import WaterStream, bearing_vector, swim_on_headings
from invented_waters import HOUR_S, RandomWater
from tideleg.core.solve.one_heading import hold_one_heading
from tideleg.core.solve.swum import ARRIVED, NO_SINGLE_HEADING

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
