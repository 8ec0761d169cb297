"""The day at one place, for a plan that has no route yet: tide, stream and daylight, and no departures."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from ...results.route_day import RouteDay
from ...sun_days import sun_days
from ..request import SwimRequest
from .day_strips import looked_at_s, rates_kn, tides_between, water_strip
from .route_days import AFTER_S, mean_stream, weakest


def place_day(request: SwimRequest, *, has_place: bool = True) -> RouteDay:
    """The day at the first stop of a request whose clock runs from one midnight to the next.

    The stop's name is that of the place. Without a place stream and daylight are not known; the tide is the plan's.
    """
    clock, place = request.clock, request.stops[0]
    first_s, last_s = clock.seconds(clock.start), clock.seconds(clock.end)
    times = looked_at_s(first_s, last_s)
    unknown, at = np.full(len(times), np.nan), request.stops_m[:1]
    least, most = rates_kn(request, times, at) if has_place else (unknown, unknown)
    east, north, differ = mean_stream(request, times, at) if has_place else (unknown, unknown, unknown > 0.0)
    strip = replace(
        water_strip(request, place.name, (clock.start, clock.end), (least, most)),
        daylight=sun_days(place.lon, place.lat, clock.start, clock.end, clock) if has_place else (),
        place=place.name,
    )
    return RouteDay(
        strip=strip,
        east_kn=east,
        north_kn=north,
        sets_differ=differ,
        reasons=(),
        homes_s=(),
        tides=tides_between(request, first_s, last_s + AFTER_S),
        weakest=weakest(request, first_s, last_s, at) if has_place else (),
    )
