"""A day read at the cursor: the water itself, the windows' own reasons, and None for what is not known."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

import numpy as np
import pytest
from test_day_strips import HALF_S, made
from tideleg.core.errors import StoppedError, SwimPlanError
from tideleg.core.quantities import knots_from_m_s
from tideleg.core.results.day_strip import FEASIBLE
from tideleg.core.results.route_day import DARK, LIGHT, TWILIGHT, RouteDay
from tideleg.core.solve.request import SwimRequest
from tideleg.core.solve.windows.route_days import route_day
from tideleg.core.solve.windows.words import limit_words
from tideleg.core.water.field import StreamField
from tideleg.core.water.stream import KNOWN, StreamSample

DAY = "2027-06-05"


def day(**water: object) -> tuple[SwimRequest, RouteDay]:
    request, _, _, strips = made(DAY, DAY, **water)
    request = replace(request, clock=replace(request.clock, end=strips[0].end))
    return request, route_day(request, 30.0)


def at(found: RouteDay, hours: float) -> datetime:
    return found.strip.moment(3600.0 * hours)


def test_the_windows_of_a_day_are_those_of_the_search_itself() -> None:
    _, found, _, strips = made(DAY, DAY)
    _, seen = day()
    assert seen.strip.windows == found.windows == strips[0].windows and seen.strip.states == strips[0].states


def test_tide_and_stream_read_are_those_of_the_water() -> None:
    request, seen = day()
    for hours in (0.0, 3.21, 11.5, 23.9):
        reading, t_s = seen.read(at(seen, hours)), 3600.0 * hours
        east = float(knots_from_m_s(0.6 * np.sin(np.pi * t_s / HALF_S)))
        # Straight between looks of ten minutes: 600^2 / 8 of the sine's curvature is 0.0007 of its height.
        assert reading.tide_m == pytest.approx(float(request.tide.height_m(t_s)), abs=0.005)
        assert reading.most_kn == pytest.approx(abs(east), abs=0.06)
        assert reading.rises is bool(request.tide.rising(t_s) > 0.5)
        if abs(east) > 0.2:
            assert reading.set_deg == pytest.approx(90.0 if east > 0.0 else 270.0) and not reading.sets_differ


def test_the_stream_is_weakest_where_the_sine_turns() -> None:
    _, seen = day()
    turns = [seen.strip.seconds(one.moment) for one in seen.weakest]
    assert turns == pytest.approx([HALF_S * number for number in range(4)], abs=60.0)
    assert max(one.most_kn for one in seen.weakest) < 0.02


def test_a_departure_that_is_stopped_gives_the_reason_of_the_windows() -> None:
    request, _, swum, _ = made(DAY, DAY)
    _, seen = day()
    for row in range(len(seen.strip.departures_s)):
        reading = seen.read(seen.strip.moment(float(seen.strip.departures_s[row]) + 60.0))
        assert reading.why == limit_words(request, swum, row) and (reading.state == FEASIBLE) is (reading.why == "")
    assert any(seen.reasons) and not all(seen.reasons)


def test_the_home_of_a_departure_is_told_only_where_it_was_looked_at() -> None:
    _, _, swum, _ = made(DAY, DAY)
    _, seen = day()
    first = seen.feasible()[0]
    row = int(np.flatnonzero(swum.feasible)[0])
    assert seen.strip.seconds(seen.home_of(first)) == pytest.approx(swum.arrive_s[row, -1], abs=0.001)
    assert seen.home_of(first + timedelta(minutes=7)) is None


def test_what_is_not_known_is_none_and_never_nothing() -> None:
    _, seen = day(until=6.0 * 3600.0)
    reading = seen.read(at(seen, 12.0))
    assert (reading.least_kn, reading.most_kn, reading.set_deg) == (None, None, None) and not reading.sets_differ
    assert reading.state == "unknown" and "not known" in reading.why
    bare = replace(seen.strip, tide_heights_m=np.full(len(seen.strip.tide_times_s), np.nan), daylight=())
    reading = replace(seen, strip=bare).read(at(seen, 3.0))
    assert (reading.tide_m, reading.rises, reading.light) == (None, None, None)


def test_light_goes_from_dark_over_twilight_to_day_and_back() -> None:
    _, seen = day()
    order = [seen.read(at(seen, hours)).light for hours in np.arange(0.0, 24.0, 0.1)]
    runs = [one for one, before in zip(order, [None, *order]) if one != before]
    assert runs == [DARK, TWILIGHT, LIGHT, TWILIGHT, DARK]


def test_the_tide_goes_on_past_the_days_end() -> None:
    _, seen = day()
    late = [tide for tide in seen.tides if tide.moment > seen.strip.end]
    assert {tide.kind for tide in late} == {"HW", "LW"}


class Parting:
    """East at the start of the route, west at its far end."""

    def at(self, x_m, y_m, t_s) -> StreamSample:
        shape = np.broadcast_shapes(np.shape(x_m), np.shape(y_m), np.shape(t_s))
        east = np.broadcast_to(np.where(np.asarray(y_m) < 250.0, 0.4, -0.4), shape)
        return StreamSample(east_m_s=east, north_m_s=0.0 * east, status=np.full(shape, KNOWN, dtype=np.int8))


def test_sets_that_differ_along_the_route_are_not_told_as_one() -> None:
    request, seen = day()
    assert isinstance(request.stream, StreamField)
    reading = route_day(replace(request, stream=Parting()), 30.0).read(at(seen, 12.0))
    assert reading.sets_differ and reading.set_deg is None and reading.most_kn > 0.7


def test_it_stops_when_stopped_and_refuses_arrays_that_do_not_fit() -> None:
    request, seen = day()
    with pytest.raises(StoppedError):
        route_day(request, 30.0, is_cancelled=lambda: True)
    with pytest.raises(SwimPlanError, match="reasons"):
        replace(seen, reasons=())
