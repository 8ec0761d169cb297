"""Invented days of an invented route, to draw: a sine tide, a sine stream, and departures that their limits stop."""

from __future__ import annotations

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
from tideleg.core.clock import PlanClock, later
from tideleg.core.results.day_strip import FEASIBLE, DayStrip, TideMoment
from tideleg.core.results.windows import DepartureWindow, WindowEnd
from tideleg.core.sun_days import night_spans, sun_days

LON, LAT = -28.5, 42.4  # open ocean
HALF_TIDE_S = 22_350.0  # 6 h 12.5 min
SWIM_MIN = 88.0
STEP_S = 300.0


def make_window(first, last, best, *, opens="stream", closes="dark", minutes=SWIM_MIN, extrapolated=False):
    return DepartureWindow(
        first=first,
        last=last,
        best=best,
        ends=later(best, timedelta(minutes=minutes)),
        best_min=minutes,
        worst_min=minutes + 20.0,
        swim_min=minutes - 30.0,
        water_m=2400.0,
        departures=3,
        opens=WindowEnd(limit=opens, words="leg 1 to Far Rock: the stream pushes you back, 0.12 m/s at the worst"),
        closes=WindowEnd(limit=closes, words="leg 2 to Old Slip would end after civil dusk at 21:32"),
        spare_dusk_min=120.0,
        spare_hours_min=90.0,
        spare_range_m=1200.0,
        spare_ahead_m_s=0.3,
        spare_across_m_s=0.2,
        tide_range_m=3.4,
        hours_from_hw=1.0,
        extrapolated=extrapolated,
    )


def make_strip(
    day="2027-06-05",
    *,
    zone="Europe/Lisbon",
    route="Old Slip to Far Rock and back",
    lon=LON,
    lat=LAT,
    high_water_h=3.2,
    greatest_kn=1.7,
    pace_kn=1.1,
    gap_h=None,
    **changes,
):
    """A day; ``gap_h`` (from, to) makes tide and stream unknown between those hours from its start."""
    start = datetime.fromisoformat(day).replace(tzinfo=ZoneInfo(zone))
    end = (datetime.fromisoformat(day) + timedelta(days=1)).replace(tzinfo=ZoneInfo(zone))
    clock = PlanClock(start=start, zone_name=zone, end=end)
    length_s = clock.seconds(end)
    high_s = 3600.0 * high_water_h
    times = np.arange(0.0, length_s + 1.0, 600.0)
    heights = 2.6 + 1.9 * np.cos(np.pi * (times - high_s) / HALF_TIDE_S)
    most = greatest_kn * np.abs(np.sin(np.pi * (times - high_s - 4500.0) / HALF_TIDE_S)) + 0.08
    least = 0.55 * most
    if gap_h is not None:
        unknown = (times > 3600.0 * gap_h[0]) & (times < 3600.0 * gap_h[1])
        heights, most, least = (np.where(unknown, np.nan, values) for values in (heights, most, least))
    light = sun_days(lon, lat, start, end, clock)
    departures = np.arange(0.0, length_s, STEP_S)
    states = departure_states(departures, times, most, pace_kn or 1.1, night_spans(light, clock))
    given = {
        "route": route,
        "zone_name": zone,
        "start": start,
        "end": end,
        "datum": "chart datum",
        "tide_times_s": times,
        "tide_heights_m": heights,
        "tides": tide_moments(clock, high_s, length_s),
        "stream_times_s": times,
        "stream_least_kn": least,
        "stream_most_kn": most,
        "pace_kn": pace_kn,
        "departures_s": departures,
        "states": states,
        "daylight": light,
    }
    given["windows"] = windows_of(clock, departures, states) if "states" not in changes else ()
    return DayStrip(**{**given, **changes})


def departure_states(departures, times, most, pace_kn, nights):
    """The limit of each departure: dark, the stream faster than three quarters of the pace, or not known."""
    met = np.interp(departures, times, most)
    arrive = departures + 60.0 * SWIM_MIN
    dark = np.zeros(len(departures), dtype=bool)
    for low, high in nights:
        dark |= (departures < high) & (arrive > low)
    states = np.where(met > 0.75 * pace_kn, "stream", FEASIBLE)
    states = np.where(dark, "dark", states)
    return tuple(str(one) for one in np.where(np.isnan(met), "unknown", states))


def windows_of(clock, departures, states):
    runs, found = np.array([state == FEASIBLE for state in states]), []
    edges = np.flatnonzero(np.diff(np.concatenate([[False], runs, [False]]).astype(int)))
    for first, end in zip(edges[::2], edges[1::2]):
        low, high = departures[first], departures[end - 1]
        best = departures[(first + end - 1) // 2]
        found.append(make_window(*(clock.moment(t) for t in (low, high, best))))
    return tuple(found)


def tide_moments(clock, high_s, length_s):
    numbers = range(-4, 6)
    return tuple(
        TideMoment(
            kind="LW" if number % 2 else "HW",
            moment=clock.moment(high_s + number * HALF_TIDE_S),
            height_m=0.7 if number % 2 else 4.5,
        )
        for number in numbers
        if 0.0 <= high_s + number * HALF_TIDE_S <= length_s
    )
