"""The days of a span made from the windows: by the plan's clock, with what is not known left unknown."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

import numpy as np
import pytest
from invented_requests import SWIMMER, Site
from tideleg.core.clock import span_from_texts, zone_named
from tideleg.core.quantities import knots_from_m_s
from tideleg.core.results.day_strip import FEASIBLE
from tideleg.core.solve.windows.day_strips import day_strips
from tideleg.core.solve.windows.find_windows import find_windows
from tideleg.core.water.field import StreamField
from tideleg.core.water.stream import KNOWN, UNKNOWN, StreamSample
from tideleg.core.water.tide import TideTable

HALF_S = 372.0 * 60.0


class Turning:
    """A sine to the east; not known after ``until``."""

    def __init__(self, rate_m_s: float, until: float = np.inf) -> None:
        self.rate, self.until = rate_m_s, until

    def at(self, t_s) -> StreamSample:
        t = np.asarray(t_s, dtype=float)
        rate = np.where(t <= self.until, self.rate * np.sin(np.pi * t / HALF_S), np.nan)
        status = np.where(np.isnan(rate), UNKNOWN, KNOWN).astype(np.int8)
        return StreamSample(east_m_s=rate, north_m_s=0.0 * rate, status=status)


def made(first: str, last: str, *, zone: str = "Atlantic/Azores", until: float = np.inf, rate: float = 0.6):
    site = Site()
    start, end = span_from_texts(first, last, zone_named(zone))
    station = site.station(stream=Turning(rate, until))
    high = np.arange(30) % 2 == 0
    tide = TideTable(port="P", times_s=HALF_S * (np.arange(30) - 3.0), heights_m=np.where(high, 4.0, 0.5), is_high=high)
    request = site.request(
        [(0.0, 0.0), (0.0, 500.0), (0.0, 0.0)],
        stream=StreamField(stations=(station,)),
        depart=start,
        zone=zone,
        tide=tide,
        swimmer=replace(SWIMMER, max_hours=6.0),
    )
    found, swum = find_windows(request, start, end, 30.0)
    return request, found, swum, day_strips(request, found, swum)


def test_every_day_of_the_span_has_a_strip_and_the_last_midnight_has_none() -> None:
    request, _, swum, strips = made("2027-06-05", "2027-06-07")
    assert [strip.start.date().isoformat() for strip in strips] == ["2027-06-05", "2027-06-06", "2027-06-07"]
    assert sum(len(strip.departures_s) for strip in strips) == len(swum.depart_s) - 1
    for before, after in zip(strips, strips[1:]):
        assert before.end == after.start


def test_states_and_windows_are_those_of_the_departures() -> None:
    _, found, swum, strips = made("2027-06-05", "2027-06-06", rate=1.1)
    states = [state for strip in strips for state in strip.states]
    assert [state == FEASIBLE for state in states] == swum.feasible[:-1].tolist()
    assert {"stream", "dark", FEASIBLE} <= set(states)
    shown = {window.first for strip in strips for window in strip.windows}
    assert shown == {window.first for window in found.windows}


def test_rates_lie_between_weakest_and_strongest_and_tides_are_the_tables() -> None:
    request, _, _, (strip,) = made("2027-06-05", "2027-06-05")
    rate = np.abs(0.6 * np.sin(np.pi * strip.stream_times_s / HALF_S))
    assert strip.stream_most_kn == pytest.approx(knots_from_m_s(rate), abs=1e-6)
    assert strip.stream_least_kn == pytest.approx(strip.stream_most_kn, abs=1e-6)
    assert strip.pace_kn == pytest.approx(knots_from_m_s(0.7))
    moments = [(one.kind, request.clock.seconds(one.moment)) for one in strip.tides]
    assert moments == [("LW", 0.0), ("HW", HALF_S), ("LW", 2 * HALF_S), ("HW", 3 * HALF_S)]


def test_what_is_not_known_stays_unknown() -> None:
    *_, (strip,) = made("2027-06-05", "2027-06-05", until=6 * 3600.0)
    later = strip.stream_times_s > 6 * 3600.0
    assert np.isnan(strip.stream_most_kn[later]).all() and np.isnan(strip.stream_least_kn[later]).all()
    assert np.isfinite(strip.stream_most_kn[~later]).all()
    assert "unknown" in strip.states
    bare = replace(made("2027-06-05", "2027-06-05")[0], tide=None)
    found, swum = find_windows(bare, bare.clock.start, bare.clock.start + timedelta(hours=5), 60.0)
    assert np.isnan(day_strips(bare, found, swum)[0].tide_heights_m).all()


@pytest.mark.parametrize(("day", "hours"), [("2027-03-28", 23), ("2027-10-31", 25)])
def test_days_on_which_clocks_change_have_their_length(day: str, hours: int) -> None:
    *_, (strip,) = made(day, day)
    assert strip.length_s == 3600.0 * hours
    assert len(strip.departures_s) == 2 * hours
    assert strip.daylight


def test_a_span_within_a_day_is_that_day() -> None:
    *_, strips = made("2027-06-05T09:00", "2027-06-05T12:00")
    (strip,) = strips
    assert strip.start == datetime(2027, 6, 5, tzinfo=strip.start.tzinfo)
    assert strip.departures_s[0] == 9 * 3600.0
