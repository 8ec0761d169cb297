"""Looks at a planned swim minute by minute: where the swimmer is, and what stream, tide and depth are there."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import timedelta

import numpy as np

from ..clock import later
from ..quantities import SECONDS_PER_MINUTE
from ..results.swim_in_time import StreamHere, SwimInTime, SwimMoment
from ..results.swim_plan import Leg, SwimPlan
from ..water.stream import StoppableStream, StreamSample, unknown_sample
from .flags.depths import charted_depth
from .request import SwimRequest
from .stop_results import or_none
from .stream_around import stream_around
from .stream_readings import stream_readings
from .swim_depths import depths_under_way

# Minutes between the arrows along the track: the first that gives no more than this many; common practice, no source.
ARROW_STEPS_MIN = (5, 10, 15, 20, 30, 60)
MOST_ARROWS = 40
MOST_ON_A_LEG = 8  # marks along a leg that is not swum


@dataclass(frozen=True, kw_only=True)
class _Timeline:
    """The swim as arrays over its minutes (n,): seconds from the plan's start, place in the frame, leg, staying."""

    t_s: np.ndarray
    xy_m: np.ndarray
    leg: np.ndarray
    is_stay: np.ndarray


def swim_in_time(request: SwimRequest, swim: SwimPlan, *, is_cancelled: Callable[[], bool] = bool) -> SwimInTime:
    """The swim that was planned from this request, every minute from its start. StoppedError when cancelled."""
    line = _timeline(request, swim)
    stream = StoppableStream(stream=request.stream, is_cancelled=is_cancelled)
    ends_s = np.append(line.t_s[1:], line.t_s[-1] + SECONDS_PER_MINUTE)
    here = _streams_here(request, line, ends_s, stream.at(*line.xy_m.T, line.t_s))
    step = next((one for one in ARROW_STEPS_MIN if len(line.t_s) / one <= MOST_ARROWS), ARROW_STEPS_MIN[-1])
    return SwimInTime(
        zone=request.clock.zone_name,
        datum=request.settings.datum,
        heading_step_deg=swim.heading_step_deg,
        minutes=_minutes(request, swim, line, here),
        along=_along(here, step) + _unswum(request, swim, stream, step),
        around=stream_around(request, stream, line.xy_m, line.t_s),
    )


def _timeline(request: SwimRequest, swim: SwimPlan) -> _Timeline:
    """The minutes from the departure to the end of the swim, which is the last of them; straight between nodes."""
    swum = [leg for leg in swim.legs if leg.track]
    nodes = [(point.lon, point.lat, point.moment) for leg in swum for point in leg.track]
    entry = swim.stops[0]
    nodes = nodes or [(entry.lon, entry.lat, swim.depart)]
    xy_m = request.frame.to_xy(np.array([node[:2] for node in nodes]))
    nodes_s = request.clock.seconds_of(node[2] for node in nodes)
    last = swim.stops[len(swum)]  # a swim that gets no further still stays out its time at the last stop reached
    end_s = max(nodes_s[-1], request.clock.seconds(last.leave or swim.depart))
    t_s = np.append(np.arange(nodes_s[0], end_s - 1.0, SECONDS_PER_MINUTE), end_s)
    departs_s = np.array([request.clock.seconds(leg.depart) for leg in swum])
    arrives_s = np.array([request.clock.seconds(leg.arrive) for leg in swum])
    leg = np.searchsorted(departs_s, t_s, side="right")
    is_stay = t_s >= arrives_s[leg - 1] if swum else np.ones(len(t_s), dtype=bool)
    place = np.column_stack([np.interp(t_s, nodes_s, xy_m[:, axis]) for axis in (0, 1)])
    return _Timeline(t_s=t_s, xy_m=place, leg=leg, is_stay=is_stay)


def _streams_here(request: SwimRequest, line: _Timeline, ends_s: np.ndarray, sample: StreamSample) -> list[StreamHere]:
    """The readings of a timeline, each with its leg and whether it is a stay."""
    readings = stream_readings(request, line.xy_m, sample, (line.t_s, line.t_s, ends_s))
    return [
        replace(one, leg=int(leg) or None, is_stay=bool(is_stay))
        for one, leg, is_stay in zip(readings, line.leg, line.is_stay)
    ]


def _minutes(request: SwimRequest, swim: SwimPlan, line: _Timeline, here: list[StreamHere]) -> tuple[SwimMoment, ...]:
    height_m = np.full(len(here), np.nan) if request.tide is None else request.tide.height_m(line.t_s)
    rises = np.full(len(here), np.nan) if request.tide is None else request.tide.rising(line.t_s)
    at_stops = [charted_depth(request, number).depth_m for number in range(len(swim.stops))]
    charted_m = np.where(line.is_stay, np.take(at_stops, line.leg), np.nan)
    charted_m[~line.is_stay] = depths_under_way(request, line.xy_m[~line.is_stay])
    return tuple(
        SwimMoment(
            moment=one.begin,
            end=one.end,
            lon=one.lon,
            lat=one.lat,
            leg=int(line.leg[row]),
            place=swim.stops[line.leg[row]].name,
            is_stay=one.is_stay,
            can_be_swum=one.is_stay or swim.legs[line.leg[row] - 1].feasible,
            heading_mag_deg=None if one.is_stay else _heading(swim.legs[line.leg[row] - 1], one),
            stream=one,
            tide_m=or_none(height_m[row]),
            tide_rises=None if np.isnan(rises[row]) else bool(rises[row]),
            depth_m=or_none(charted_m[row] + height_m[row]),
        )
        for row, one in enumerate(here)
    )


def _heading(leg: Leg, here: StreamHere) -> float | None:
    """The heading to hold at a moment: the last that was changed to; None on a leg that cannot be swum."""
    if not leg.feasible:
        return None
    held = [one.heading_mag_deg for one in leg.headings if one.moment.timestamp() <= here.begin.timestamp()]
    return held[-1] if held else leg.heading_mag_deg


def _along(here: list[StreamHere], step_min: int) -> tuple[StreamHere, ...]:
    """One reading every ``step_min`` by the plan's clock, which stands until the next."""
    clock = [one.begin.minute for one in here]
    new = [row for row, minute in enumerate(clock) if row == 0 or minute != clock[row - 1]]
    rows = [row for row in new if clock[row] % step_min == 0]
    ends = [here[row].begin for row in rows[1:]] + [here[-1].end]
    return tuple(replace(here[row], end=end) for row, end in zip(rows, ends))


def _unswum(request: SwimRequest, swim: SwimPlan, stream: StoppableStream, step_min: int) -> tuple[StreamHere, ...]:
    """Readings along the legs that are not swum, at the minute they would be begun; without one none is known."""
    found: list[StreamHere] = []
    for leg in swim.legs:
        if not leg.track:
            found += _on_unswum_leg(request, leg, stream, step_min)
    return tuple(found)


def _on_unswum_leg(request: SwimRequest, leg: Leg, stream: StoppableStream, step_min: int) -> list[StreamHere]:
    stretch_m = request.swimmer.made_good_m_s * SECONDS_PER_MINUTE * step_min
    count = int(np.clip(round(leg.distance_m / stretch_m), 1, MOST_ON_A_LEG))
    share = (np.arange(count) + 0.5)[:, None] / count
    start, end = request.stops_m[leg.number - 1], request.stops_m[leg.number]
    xy_m = start + share * (end - start)
    t_s = np.nan if leg.depart is None else request.clock.seconds(leg.depart)
    line = _Timeline(
        t_s=np.full(count, t_s),
        xy_m=xy_m,
        leg=np.full(count, leg.number),
        is_stay=np.zeros(count, dtype=bool),
    )
    sample = unknown_sample((count,)) if leg.depart is None else stream.at(*xy_m.T, line.t_s)
    here = _streams_here(request, line, line.t_s, sample)
    until = None if leg.depart is None else later(leg.depart, timedelta(minutes=step_min))
    return [replace(one, end=until) for one in here]
