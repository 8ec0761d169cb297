"""One leg measured in the water of a request is the leg that the whole swim has."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from invented_requests import Site
from tideleg.core.chart.marks import Mark
from tideleg.core.errors import SwimPlanError
from tideleg.core.solve.measured_leg import measured_leg
from tideleg.core.solve.plan_swim import plan_swim

STOPS = [(0.0, 0.0), (300.0, 900.0), (-200.0, 1500.0), (0.0, 0.0)]


@pytest.mark.parametrize("turn_deg", [0.0, 77.0, 203.0])
def test_each_leg_of_a_swim_measured_at_its_own_departure_is_that_leg(turn_deg: float) -> None:
    site = Site(turn_deg=turn_deg)
    request = site.request(STOPS, stream=site.steady(towards=60.0, rate_m_s=0.3))
    for leg, (start, end) in zip(plan_swim(request).legs, zip(request.stops, request.stops[1:])):
        measured = measured_leg(replace(request, depart=leg.depart), start, end)
        assert measured.heading_mag_deg == pytest.approx(leg.heading_mag_deg, abs=0.01)
        assert measured.minutes == pytest.approx(leg.minutes, abs=1e-3)
        assert measured.card_heading == leg.card_heading
        assert measured.distance_m == leg.distance_m and measured.bearing_true_deg == leg.bearing_true_deg


def test_a_leg_across_a_steady_stream_is_held_up_stream_by_the_current_triangle() -> None:
    """sin of the correction = stream across over pace: the closed form of the trade's current triangle."""
    site = Site()
    request = site.request(STOPS, stream=site.steady(towards=90.0, rate_m_s=0.35))
    (start_lon, start_lat), (end_lon, end_lat) = site.lonlat([(0.0, -500.0), (0.0, 500.0)]).tolist()
    start = Mark(name="a", kind="waypoint", lon=start_lon, lat=start_lat)
    leg = measured_leg(request, start, Mark(name="b", kind="waypoint", lon=end_lon, lat=end_lat))
    pace = request.swimmer.made_good_m_s
    off = (leg.heading_true_deg - leg.bearing_true_deg + 180.0) % 360.0 - 180.0
    assert off == pytest.approx(-np.degrees(np.arcsin(0.35 / pace)), abs=0.05)
    assert leg.ground_speed_m_s == pytest.approx(np.sqrt(pace**2 - 0.35**2), abs=1e-3)


def test_a_stream_stronger_than_the_pace_is_refused_in_words() -> None:
    site = Site()
    request = site.request(STOPS, stream=site.steady(towards=90.0, rate_m_s=0.9))
    leg = measured_leg(request, request.stops[1], request.stops[2])
    assert not leg.feasible and "against this stream" in leg.reason and leg.minutes is None


def test_no_leg_leads_from_a_place_to_itself() -> None:
    request = Site().request(STOPS)
    with pytest.raises(SwimPlanError, match="two or more different"):
        measured_leg(request, request.stops[0], request.stops[0])
