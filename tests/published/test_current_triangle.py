"""Current triangles of handbooks: the answers there are drawn, so they carry the tolerance of a drawing."""

import numpy as np
import pytest
from tideleg.core.quantities import knots_from_m_s, m_s_from_knots
from tideleg.core.solve.current_triangle import course_made_good, heading_to_make_good, set_and_drift


def apart(first_deg, second_deg):
    return abs((first_deg - second_deg + 180.0) % 360.0 - 180.0)


# The American Practical Navigator (Bowditch), NGA Pub. 9, chapter on dead reckoning; graphical, +-1 deg, +-0.1 kn.
def test_bowditch_course_to_steer_for_a_speed_over_the_ground():
    """To make good 265 at 15 kn with set 185, drift 3: steer 276 at 14.8 kn. What is made good less the stream."""
    steer, speed_m_s = course_made_good(265.0, m_s_from_knots(15.0), 185.0 + 180.0, m_s_from_knots(3.0))
    assert apart(float(steer), 276.0) <= 1.0
    assert float(knots_from_m_s(speed_m_s)) == pytest.approx(14.8, abs=0.1)


# The same book, two examples from memory; the page could not be read again. +-1 deg, +-0.1 kn.
def test_bowditch_course_made_good_from_memory():
    """Course 080 at 10 kn, set 140, drift 2: made good 089 at 11.2 kn."""
    track, speed_m_s = course_made_good(80.0, m_s_from_knots(10.0), 140.0, m_s_from_knots(2.0))
    assert apart(float(track), 89.0) <= 1.0
    assert float(knots_from_m_s(speed_m_s)) == pytest.approx(11.2, abs=0.1)


def test_bowditch_course_to_steer_at_a_speed_through_the_water_from_memory():
    """To make good 095 at 12 kn through the water, set 170, drift 2.5: steer 083.5, 12.4 kn over the ground."""
    triangle = heading_to_make_good(95.0, m_s_from_knots(12.0), 170.0, m_s_from_knots(2.5))
    assert apart(float(triangle.heading_true_deg), 83.5) <= 1.0
    assert float(knots_from_m_s(triangle.ground_speed_m_s)) == pytest.approx(12.4, abs=0.1)


# A chartwork answer sheet, author unknown; plotted answers, +-2.5 deg, +-0.1 kn.
# Track to make good, speed through the water, set, drift: course to steer, speed made good.
ANSWER_SHEET = [
    (90.0, 5.0, 210.0, 2.0, 70.0, 3.7),
    (45.0, 6.55, 135.0, 2.0, 25.0, 6.2),
    (235.0, 6.2, 315.0, 3.5, 200.0, 5.8),
    (265.0, 5.2, 70.0, 2.3, 260.0, 3.0),
    (150.0, 5.3, 50.0, 3.5, 190.0, 3.4),
]
MISPRINT = (20.0, 5.9, 90.0, 1.9, 0.0)


@pytest.mark.parametrize(("track", "speed_kn", "towards", "drift_kn", "steer", "made_good_kn"), ANSWER_SHEET)
def test_chartwork_answer_sheet(track, speed_kn, towards, drift_kn, steer, made_good_kn):
    triangle = heading_to_make_good(track, m_s_from_knots(speed_kn), towards, m_s_from_knots(drift_kn))
    assert apart(float(triangle.heading_true_deg), steer) <= 2.5
    # The sheet prints the speed to a tenth and plots it to a tenth: 0.1 and half the printed digit.
    assert float(knots_from_m_s(triangle.ground_speed_m_s)) == pytest.approx(made_good_kn, abs=0.1 + 1e-9)


def test_answer_sheet_misprint_stays_an_exception():
    """The sheet prints 000 where trigonometry gives 002.4: 020 - asin(1.9 sin 70 / 5.9) = 002.38."""
    track, speed_kn, towards, drift_kn, printed = MISPRINT
    heading = float(heading_to_make_good(track, speed_kn, towards, drift_kn).heading_true_deg)
    assert heading == pytest.approx(2.4, abs=0.05)
    assert 2.3 < apart(heading, printed) < 2.5, "the sheet's tolerance would just hide it"


# Bown, sea kayak navigation (bookdown), section 2.12: 3 kn across a 1.5 kn stream, one mile.
def test_bown_pointing_straight_is_set_half_a_mile_in_twenty_minutes():
    track, speed_kn = course_made_good(0.0, 3.0, 90.0, 1.5)
    minutes = 60.0 * 1.0 / (speed_kn * np.cos(np.radians(track)))
    set_miles = np.tan(np.radians(track))
    assert float(minutes) == pytest.approx(20.0, abs=0.5)
    assert float(set_miles) == pytest.approx(0.5, abs=0.05)


def test_bown_compensated_in_closed_form():
    triangle = heading_to_make_good(0.0, 3.0, 90.0, 1.5)
    assert float(triangle.heading_true_deg) == pytest.approx(330.0, abs=1e-9)
    assert float(triangle.ground_speed_m_s) == pytest.approx(2.598, abs=0.0005)
    assert 60.0 / float(triangle.ground_speed_m_s) == pytest.approx(23.09, abs=0.005)


def test_no_heading_holds_a_line_across_a_stream_as_fast_as_the_swimmer():
    triangle = heading_to_make_good(0.0, 0.7, np.array([90.0, 90.0, 270.0]), np.array([0.69, 0.7, 0.9]))
    assert np.isfinite(triangle.heading_true_deg).tolist() == [True, False, False]
    assert np.isfinite(triangle.ground_speed_m_s).tolist() == [True, False, False]


def test_missing_stream_gives_no_heading():
    triangle = heading_to_make_good(10.0, 0.7, np.array([np.nan, 90.0]), np.array([0.2, np.nan]))
    assert np.isnan(triangle.heading_true_deg).all() and np.isnan(triangle.ground_speed_m_s).all()


def test_triangle_there_and_back_gives_the_stream():
    rng = np.random.default_rng(4)
    track, pace = rng.uniform(0.0, 360.0, 200), rng.uniform(0.4, 1.0, 200)
    towards, drift = rng.uniform(0.0, 360.0, 200), rng.uniform(0.05, 0.35, 200)
    triangle = heading_to_make_good(track, pace, towards, drift)
    made_track, made_speed = course_made_good(triangle.heading_true_deg, pace, towards, drift)
    assert np.allclose(apart(made_track, track), 0.0, atol=1e-9)
    assert np.allclose(made_speed, triangle.ground_speed_m_s, atol=1e-12)
    back_set, back_drift = set_and_drift(made_track, made_speed, triangle.heading_true_deg, pace)
    assert np.allclose(apart(back_set, towards), 0.0, atol=1e-7) and np.allclose(back_drift, drift, atol=1e-12)
