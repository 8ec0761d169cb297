"""The day at one place: the water itself where it is, no departures, and nothing known without a place."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from test_day_strips import HALF_S, made
from tideleg.core.quantities import knots_from_m_s
from tideleg.core.results.route_day import RouteDay
from tideleg.core.solve.request import SwimRequest
from tideleg.core.solve.windows.place_days import place_day
from tideleg.core.solve.windows.route_days import route_day

DAY = "2027-06-05"


def day(*, has_place: bool = True) -> tuple[SwimRequest, RouteDay]:
    request, _, _, strips = made(DAY, DAY)
    request = replace(request, clock=replace(request.clock, end=strips[0].end))
    named = replace(request, stops=(replace(request.stops[0], name="Gut"), *request.stops[1:]))
    return named, place_day(named, has_place=has_place)


def test_one_place_has_one_rate_which_is_that_of_the_water() -> None:
    _, found = day()
    least, most = found.strip.stream_least_kn, found.strip.stream_most_kn
    sine = 0.6 * np.abs(np.sin(np.pi * found.strip.stream_times_s / HALF_S))
    assert np.array_equal(least, most) and most == pytest.approx(knots_from_m_s(sine), abs=1e-6)
    assert found.strip.place == "Gut" and found.strip.route.startswith("Gut")


def test_tide_light_and_slack_are_those_of_a_route_that_begins_there_and_no_departure_is_looked_at() -> None:
    request, found = day()
    route = route_day(request, 60.0)
    assert found.tides == route.tides and found.strip.daylight == route.strip.daylight and found.strip.daylight
    assert np.array_equal(found.strip.tide_heights_m, route.strip.tide_heights_m)
    turns = [found.strip.seconds(one.moment) for one in found.weakest]
    assert turns == pytest.approx([HALF_S * number for number in range(4)], abs=60.0)
    assert not found.strip.states and found.read(found.strip.moment(3600.0)).state is None


def test_without_a_place_the_tide_stays_and_stream_and_light_are_not_known() -> None:
    _, found = day(has_place=False)
    reading = found.read(found.strip.moment(3600.0))
    assert reading.tide_m is not None and reading.rises is not None
    assert reading.most_kn is None and reading.set_deg is None and reading.light is None and not found.weakest
