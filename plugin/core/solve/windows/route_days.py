"""The day of a route: its strip, and behind it why each departure is stopped and where the stream sets."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from ...quantities import knots_from_m_s
from ...results.route_day import RouteDay, WeakestStream
from ..request import SwimRequest
from .day_strips import day_strips, route_places_m, tides_between
from .find_windows import find_windows
from .words import limit_words

AFTER_S = 14 * 3600.0  # past midnight, until a high and a low water have come; common practice, no source
WEAKEST_LOOK_S = 60.0
# Streams whose sets lie farther apart than this from their mean have none that could be told as one.
ONE_SET_DEG = 45.0
SLACK_KN = 0.1  # the set of so little counts for nothing


def route_day(request: SwimRequest, step_min: float, *, is_cancelled: Callable[[], bool] = bool) -> RouteDay:
    """The day of a request whose clock runs from one midnight to the next, with a departure every ``step_min``.

    The same windows as ``find_windows`` of that day. Raises SwimPlanError, and StoppedError when stopped.
    """
    clock = request.clock
    found, swum = find_windows(request, clock.start, clock.end, step_min, is_cancelled=is_cancelled)
    strip = day_strips(request, found, swum)[0]
    first_s, last_s = clock.seconds(strip.start), clock.seconds(strip.end)
    rows = np.flatnonzero((swum.depart_s >= first_s) & (swum.depart_s < last_s))
    places = route_places_m(request)
    east, north, differ = mean_stream(request, strip.stream_times_s + first_s, places)
    return RouteDay(
        strip=strip,
        east_kn=east,
        north_kn=north,
        sets_differ=differ,
        reasons=tuple(limit_words(request, swum, int(row)) for row in rows),
        homes_s=swum.arrive_s[rows, -1] - first_s,
        tides=tides_between(request, first_s, last_s + AFTER_S),
        weakest=weakest(request, first_s, last_s, places),
    )


def mean_stream(
    request: SwimRequest, times: np.ndarray, places: np.ndarray
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Mean east and north rate (n,) in knots at places (k, 2) in metres, and whether their sets differ (n,)."""
    sample = request.stream.at(places[:, :1], places[:, 1:], times)
    east, north = (knots_from_m_s(part) for part in (sample.east_m_s, sample.north_m_s))
    mean_east, mean_north = east.mean(axis=0), north.mean(axis=0)
    with np.errstate(invalid="ignore"):
        along = east * mean_east + north * mean_north
        least = np.cos(np.radians(ONE_SET_DEG)) * np.hypot(east, north) * np.hypot(mean_east, mean_north)
        differ = ((along < least) & (np.hypot(east, north) > SLACK_KN)).any(axis=0)
    return mean_east, mean_north, differ


def weakest(request: SwimRequest, first_s: float, last_s: float, places: np.ndarray) -> tuple[WeakestStream, ...]:
    """The moments of the day, to the minute, at which the strongest stream at places (k, 2) in metres is least.

    Where another of the places takes over as the strongest it dips as well: only what is below the mean counts.
    """
    times = np.arange(first_s - WEAKEST_LOOK_S, last_s + 1.0, WEAKEST_LOOK_S)
    most = knots_from_m_s(request.stream.at(places[:, :1], places[:, 1:], times).rate_m_s).max(axis=0)
    with np.errstate(invalid="ignore"):
        inner, known = most[1:-1], most[np.isfinite(most)]
        low = inner < (known.mean() if len(known) else np.nan)
        rows = np.flatnonzero((inner < most[:-2]) & (inner <= most[2:]) & low) + 1
    return tuple(
        WeakestStream(moment=request.clock.moment(float(times[row])), most_kn=float(most[row])) for row in rows
    )
