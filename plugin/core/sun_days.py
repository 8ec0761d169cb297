"""The days by the sun that touch a span of time, and when within it the sun is down and it is night."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

import numpy as np

from .clock import PlanClock, later
from .daylight import Daylight, daylight_on
from .quantities import SECONDS_PER_HOUR

DAY_S = 24.0 * SECONDS_PER_HOUR

Spans = tuple[tuple[float, float], ...]


def sun_days(lon: float, lat: float, start: datetime, end: datetime, clock: PlanClock) -> tuple[Daylight, ...]:
    """The days by the sun at a place that touch the span of two aware moments, in order.

    A zone's midnight is not the sun's: far from the zone's meridian two of them share one day of the clock.
    """
    found: dict[Daylight, None] = {}
    moment = start
    while moment < end:
        found[daylight_on(lon, lat, moment, clock)] = None
        moment = later(moment, timedelta(hours=6))
    found[daylight_on(lon, lat, end, clock)] = None
    return tuple(found)


def night_spans(days: Sequence[Daylight], clock: PlanClock) -> Spans:
    """(from, to) in seconds of the clock between which it is night: before civil dawn and after civil dusk.

    The first day reaches back to -inf, the last on to inf. No days give no spans: nothing is known then.
    """
    return _outside(days, clock, "civil_dawn", "civil_dusk")


def sun_down_spans(days: Sequence[Daylight], clock: PlanClock) -> Spans:
    """(from, to) in seconds of the clock between which the sun is down, in twilight or at night.

    Of a day on which the sun is not seen to both rise and set it is taken to be up where it stays light, else down.
    """
    return _outside(days, clock, "sunrise", "sunset")


def _outside(days: Sequence[Daylight], clock: PlanClock, opens: str, closes: str) -> Spans:
    """What of the days lies before the one edge and after the other; what meets at midnight is one span."""
    spans: list[tuple[float, float]] = []
    for day, (low, high) in zip(days, _extents(days, clock)):
        first, last = getattr(day, opens), getattr(day, closes)
        if first is not None and last is not None:
            spans += [(low, clock.seconds(first)), (clock.seconds(last), high)]
        elif not day.always_light:
            spans.append((low, high))
    joined: list[tuple[float, float]] = []
    for low, high in spans:
        if joined and low <= joined[-1][1]:
            low, high = joined.pop()[0], high
        joined.append((low, high))
    return tuple(joined)


def _extents(days: Sequence[Daylight], clock: PlanClock) -> list[tuple[float, float]]:
    """Where each day begins and ends: half way between the noons, open before the first and after the last."""
    noons = np.array([_noon_s(day, clock) for day in days])
    numbers = np.arange(len(days))
    known = np.flatnonzero(np.isfinite(noons))
    if len(known):
        # A day without an edge has its noon a day from its neighbour's, to within a minute.
        nearest = known[np.abs(numbers[:, None] - known).argmin(axis=1)]
        noons = noons[nearest] + DAY_S * (numbers - nearest)
    between = (noons[1:] + noons[:-1]) / 2.0
    if np.isnan(between).any():  # then all days are alike, all light or all dark
        between = np.zeros(len(between))
    edges = [-np.inf, *(float(edge) for edge in between), np.inf]
    return list(zip(edges, edges[1:]))


def _noon_s(day: Daylight, clock: PlanClock) -> float:
    """Half way between a day's edges; NaN where it has none."""
    for first, last in ((day.civil_dawn, day.civil_dusk), (day.sunrise, day.sunset)):
        if first is not None and last is not None:
            return (clock.seconds(first) + clock.seconds(last)) / 2.0
    return float("nan")
