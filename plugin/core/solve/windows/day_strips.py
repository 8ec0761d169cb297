"""The days of a span of departures, ready to be drawn: tide, stream on the route, departures and daylight."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime, time, timedelta

import numpy as np

from ...quantities import knots_from_m_s
from ...results.day_strip import ENDS_DARK, FEASIBLE, DayStrip, TideMoment
from ...results.windows import DepartureWindow, WindowsFound
from ...sun_days import Spans, night_spans, sun_days
from ...water.tide import HW, LW
from ..request import SwimRequest
from .departures import DeparturesSwum
from .limits import LIMITS

LOOK_S = 600.0
PLACES_A_LEG = 3  # the start, a third and two thirds of each leg


def day_strips(request: SwimRequest, found: WindowsFound, swum: DeparturesSwum) -> tuple[DayStrip, ...]:
    """A strip for every day, by the plan's clock, that has departures; the last midnight alone is no day.

    The stream is the weakest and the strongest on the route at a moment, at its stops and two places between each two;
    where any of these is not known neither is.
    """
    return tuple(_strip(request, found, swum, day) for day in _days(request, swum))


def _days(request: SwimRequest, swum: DeparturesSwum) -> list[date]:
    moments = [request.clock.moment(t_s) for t_s in swum.depart_s]
    days = list(dict.fromkeys(moment.date() for moment in moments))
    alone = len(days) > 1 and moments[-1].date() != moments[-2].date() and moments[-1].time() == time(0)
    return days[:-1] if alone else days


def _strip(request: SwimRequest, found: WindowsFound, swum: DeparturesSwum, day: date) -> DayStrip:
    clock, entry = request.clock, request.stops[0]
    start, end = (datetime.combine(day + timedelta(days=n), time(0), tzinfo=clock.zone) for n in (0, 1))
    first_s, last_s = clock.seconds(start), clock.seconds(end)
    times = looked_at_s(first_s, last_s)
    here = (swum.depart_s >= first_s) & (swum.depart_s < last_s)
    least, most = rates_kn(request, times, route_places_m(request))
    daylight = sun_days(entry.lon, entry.lat, start, end, clock)
    limits, nights = [LIMITS[code] for code in swum.limit[here]], night_spans(daylight, clock)
    return replace(
        water_strip(request, request.route.name, (start, end), (least, most)),
        pace_kn=float(knots_from_m_s(request.swimmer.made_good_m_s)),
        departures_s=swum.depart_s[here] - first_s,
        states=states_of(limits, swum.depart_s[here], nights),
        windows=tuple(window for window in found.windows if _touches(request, window, first_s, last_s)),
        daylight=daylight,
    )


def water_strip(
    request: SwimRequest, name: str, span: tuple[datetime, datetime], rates: tuple[np.ndarray, np.ndarray]
) -> DayStrip:
    """Tide and stream from one moment to another, under a name and the plan's title; no departures, no daylight.

    ``rates`` are the weakest and the strongest (n,) at the times of ``looked_at_s``.
    """
    start, end = span
    first_s, last_s = request.clock.seconds(start), request.clock.seconds(end)
    times = looked_at_s(first_s, last_s)
    return DayStrip(
        route=" - ".join(part for part in (name, request.settings.title) if part),
        zone_name=request.clock.zone_name,
        start=start,
        end=end,
        datum=request.settings.datum,
        tide_times_s=times - first_s,
        tide_heights_m=np.full(len(times), np.nan) if request.tide is None else request.tide.height_m(times),
        tides=tides_between(request, first_s, last_s),
        stream_times_s=times - first_s,
        stream_least_kn=rates[0],
        stream_most_kn=rates[1],
    )


def states_of(limits: Sequence[str], departures_s: np.ndarray, nights: Spans) -> tuple[str, ...]:
    """What the picture says of departures (n,), in seconds of the same clock as the nights: feasible, or the limit; a
    departure by day that would be home in the dark is told from one in the night."""
    by_night = np.zeros(len(departures_s), dtype=bool)
    for low, high in nights:
        by_night |= (departures_s >= low) & (departures_s <= high)
    return tuple(
        ENDS_DARK if limit == "dark" and not night else limit or FEASIBLE for limit, night in zip(limits, by_night)
    )


def looked_at_s(first_s: float, last_s: float) -> np.ndarray:
    """The times (n,) at which a day's curves are looked at, its end among them."""
    return np.append(np.arange(first_s, last_s, LOOK_S), last_s)


def _touches(request: SwimRequest, window: DepartureWindow, first_s: float, last_s: float) -> bool:
    return request.clock.seconds(window.first) < last_s and request.clock.seconds(window.last) >= first_s


def route_places_m(request: SwimRequest) -> np.ndarray:
    """Where the stream on the route is looked at (n, 2), in metres of the frame: its stops and between them."""
    stops = request.stops_m
    shares = np.arange(PLACES_A_LEG) / PLACES_A_LEG
    between = stops[:-1, None] + (stops[1:] - stops[:-1])[:, None] * shares[:, None]
    return np.vstack([between.reshape(-1, 2), stops[-1:]])


def rates_kn(request: SwimRequest, times: np.ndarray, places: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Weakest and strongest rate (n,) at places (k, 2) in metres, NaN where not known at all of them."""
    sample = request.stream.at(places[:, :1], places[:, 1:], times)
    rates = knots_from_m_s(sample.rate_m_s)
    return rates.min(axis=0), rates.max(axis=0)


def tides_between(request: SwimRequest, first_s: float, last_s: float) -> tuple[TideMoment, ...]:
    """The high and low waters between two times, in seconds from the plan's start."""
    if request.tide is None:
        return ()
    tide = request.tide
    rows = np.flatnonzero((tide.times_s >= first_s) & (tide.times_s <= last_s))
    return tuple(
        TideMoment(
            kind=HW if tide.is_high[row] else LW,
            moment=request.clock.moment(float(tide.times_s[row])),
            height_m=float(tide.heights_m[row]) if np.isfinite(tide.heights_m[row]) else None,
        )
        for row in rows
    )
