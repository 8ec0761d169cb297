"""One swim planned from start to end: legs, stops, flags and what the card's foot says."""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta

import numpy as np

from ..clock import PlanClock
from ..daylight import Daylight, daylight_on
from ..geodesy import geodesic_leg
from ..magnetism import Variation, variation_at
from ..quantities import knots_from_m_s
from ..results.swim_plan import HeadingChange, Leg, Stop, SwimPlan, TrackPoint
from .flags.channels import channel_flags
from .flags.closed import closed_area_flags, land_flags
from .flags.depths import charted_depth, depth_flags
from .flags.limits import dark_flags, leg_flags, swimmer_flags
from .flags.track import LegTrack, leg_tracks
from .foot import stream_turns, tide_moments
from .request import SwimRequest
from .swim import HOLD_LINE, RouteSwum, swim_route, swimmable, why_not
from .swum import LegSwum, Line

TURNED_DEG = 0.5  # a heading that has turned less is the same heading; half of what a wrist compass shows


def plan_swim(request: SwimRequest, *, is_cancelled: Callable[[], bool] = bool) -> SwimPlan:
    """Swim the route once and report all of it. SwimPlanError where a model does not cover the place or date."""
    entry = request.stops[0]
    variation = variation_at(entry.lon, entry.lat, request.depart)
    depart_s = request.clock.seconds(request.depart)
    swum = swim_route(
        request.stream,
        request.frame,
        request.stops_m,
        request.stays_s,
        np.array([depart_s]),
        request.swimmer,
        request.way,
        is_cancelled=is_cancelled,
    )
    tracks = leg_tracks(request, swum)
    legs = tuple(_leg(request, swum, tracks, number, variation) for number in range(len(swum.legs)))
    daylight = daylight_on(entry.lon, entry.lat, request.depart, request.clock)
    flags = _flags(request, swum, tracks, legs, daylight)
    warnings = list(request.warnings)
    stops = _stops(request, swum, warnings)
    return _whole(request, swum, variation, legs, stops, flags, daylight, warnings)


def _flags(request, swum: RouteSwum, tracks: tuple[LegTrack, ...], legs: tuple[Leg, ...], daylight: Daylight) -> list:
    total_m = sum(leg.distance_m for leg in legs)
    total_min = float(swum.arrive_s[0, -1] - swum.arrive_s[0, 0]) / 60.0
    endings = [int(leg.ending[0]) for leg in swum.legs]
    flags = leg_flags(request, tracks, endings, [leg.reason for leg in legs])
    flags += channel_flags(request, tracks) + closed_area_flags(request, tracks) + land_flags(request, tracks)
    flags += depth_flags(request, swum.arrive_s[0], swum.leave_s[0])
    flags += dark_flags(request, tracks, daylight) + swimmer_flags(request, total_m, total_min)
    gravity = {"stop": 0, "warn": 1, "note": 2}
    return sorted(flags, key=lambda flag: (gravity[flag.severity], flag.leg or 0))


def _whole(request, swum, variation, legs, stops, flags, daylight: Daylight, warnings) -> SwimPlan:
    arrive_s = float(swum.arrive_s[0, -1])
    arrive = request.clock.moment(arrive_s)
    swim_s = sum(float(leg.arrive_s[0] - leg.depart_s[0]) for leg in swum.legs)
    depart_s = float(swum.arrive_s[0, 0])
    end_s = arrive_s if np.isfinite(arrive_s) else depart_s + 6 * 3600.0
    settings = request.settings
    return SwimPlan(
        route=request.route.name,
        swimmer=request.swimmer.name,
        zone=request.clock.zone_name,
        datum=settings.datum,
        title=settings.title,
        depart=request.clock.moment(depart_s),
        arrive=arrive,
        total_m=sum(leg.distance_m for leg in legs),
        total_min=_or_none((arrive_s - depart_s) / 60.0),
        swim_min=_or_none(swim_s / 60.0),
        feasible=all(leg.feasible for leg in legs) and not any(flag.severity == "stop" for flag in flags),
        variation_deg=variation.east_deg,
        variation_model=variation.model,
        variation_date=request.depart,
        heading_mode=request.way.mode,
        heading_step_deg=settings.heading_step_deg,
        line_m=request.swimmer.line_m,
        legs=legs,
        stops=stops,
        flags=tuple(flags),
        warnings=tuple(warnings),
        tides=tide_moments(request, depart_s, end_s),
        stream_turns=stream_turns(request, depart_s, end_s),
        sunset=daylight.sunset,
        civil_dusk=daylight.civil_dusk,
        alarm=None if arrive is None else arrive + timedelta(minutes=settings.alarm_after_min),
        land_rings=_rings_near(request),
    )


def _leg(request, swum: RouteSwum, tracks: tuple[LegTrack, ...], number: int, variation: Variation) -> Leg:
    leg, track = swum.legs[number], tracks[number]
    start, end = request.stops[number], request.stops[number + 1]
    distance_m, bearing = geodesic_leg(start.lon, start.lat, end.lon, end.lat)
    line = Line(start=request.stops_m[number], end=request.stops_m[number + 1])
    reason = why_not(leg, 0, line, request.swimmer)
    about = {
        "number": number + 1,
        "start_name": start.name,
        "end_name": end.name,
        "start_lon": start.lon,
        "start_lat": start.lat,
        "end_lon": end.lon,
        "end_lat": end.lat,
        "distance_m": distance_m,
        "bearing_true_deg": bearing,
        "bearing_mag_deg": variation.magnetic(bearing),
        "depart": request.clock.moment(float(leg.depart_s[0])),
        "feasible": bool(swimmable(leg, line, request.swimmer)[0]),
        "reason": reason,
    }
    return Leg(**about, **_swum_numbers(request, leg, track, distance_m, variation))


UNSWUM = dict.fromkeys(
    ("heading_true_deg", "heading_mag_deg", "card_heading", "ground_speed_m_s", "minutes", "arrive")
    + ("stream_set_deg", "stream_kn", "off_line_m")
)


def _swum_numbers(request, leg: LegSwum, track: LegTrack, distance_m: float, variation: Variation) -> dict:
    """What only a completed leg has."""
    if not track.dated:
        return UNSWUM
    seconds = float(leg.arrive_s[0] - leg.depart_s[0])
    true = _true_headings(request, track)
    mean_east, mean_north = float(leg.mean_east_m_s[0]), float(leg.mean_north_m_s[0])
    turn = request.frame.convergence_at(track.xy_m[:, 0].mean())
    return {
        "heading_true_deg": float(true[0]),
        "heading_mag_deg": variation.magnetic(float(true[0])),
        "card_heading": card_heading(variation.magnetic(float(true[0])), request.settings.heading_step_deg),
        "ground_speed_m_s": distance_m / seconds,
        "minutes": seconds / 60.0,
        "arrive": request.clock.moment(float(leg.arrive_s[0])),
        "stream_set_deg": float((np.degrees(np.arctan2(mean_east, mean_north)) + turn) % 360.0),
        "stream_kn": knots_from_m_s(float(np.hypot(mean_east, mean_north))),
        "off_line_m": float(leg.off_line_m[0]),
        "headings": _heading_changes(request, track, true, variation),
        "track": _track_points(request, track, true, variation),
    }


def card_heading(heading_mag_deg: float, step_deg: float) -> str:
    """Heading for the card: magnetic, to the nearest step, three digits: 103 with a step of 5 is ``105M``."""
    return f"{round(heading_mag_deg / step_deg) * step_deg % 360.0:03.0f}M"


def _true_headings(request: SwimRequest, track: LegTrack) -> np.ndarray:
    """True headings (k,) of the nodes; one meridian convergence for the leg, so that one heading stays one."""
    turn = request.frame.convergence_at(track.xy_m[:, 0].mean())
    return (np.degrees(track.heading_rad) + turn) % 360.0


def _heading_changes(request, track: LegTrack, true: np.ndarray, variation: Variation) -> tuple[HeadingChange, ...]:
    """The headings to hold from a moment on: each change of a heading mode, or each step of the card when crabbing."""
    least = request.settings.heading_step_deg / 2.0 if request.way.mode == HOLD_LINE else TURNED_DEG
    changes = [0]
    for node in range(1, len(true) - 1):
        if abs((true[node] - true[changes[-1]] + 180.0) % 360.0 - 180.0) > least:
            changes.append(node)
    return tuple(
        HeadingChange(
            moment=request.clock.moment(float(track.t_s[node])),
            heading_true_deg=float(true[node]),
            heading_mag_deg=variation.magnetic(float(true[node])),
        )
        for node in changes
    )


def _track_points(request, track: LegTrack, true: np.ndarray, variation: Variation) -> tuple[TrackPoint, ...]:
    lonlat = request.frame.to_lonlat(track.xy_m)
    stream = track.stream_m_s
    pace = request.swimmer.made_good_m_s
    own = pace * np.column_stack([np.sin(track.heading_rad), np.cos(track.heading_rad)])
    speed = np.hypot(*(own + stream).T)
    turn = request.frame.convergence_at(track.xy_m[:, 0])
    towards = (np.degrees(np.arctan2(stream[:, 0], stream[:, 1])) + turn) % 360.0
    rate = knots_from_m_s(np.hypot(*stream.T))
    return tuple(
        TrackPoint(
            lon=float(lonlat[node, 0]),
            lat=float(lonlat[node, 1]),
            moment=_moment(request.clock, track.t_s[node]),
            heading_mag_deg=variation.magnetic(float(true[node])),
            ground_speed_m_s=float(speed[node]),
            stream_set_deg=float(towards[node]),
            stream_kn=float(rate[node]),
        )
        for node in range(len(lonlat))
    )


def _moment(clock: PlanClock, seconds: float):
    return clock.moment(float(seconds))


def _stops(request: SwimRequest, swum: RouteSwum, warnings: list[str]) -> tuple[Stop, ...]:
    stops = tuple(_stop(request, swum, number, warnings) for number in range(len(request.stops)))
    warnings.append("Turn-back times and exits are not computed by planswim: latest_leave and exit are empty.")
    return stops


def _stop(request: SwimRequest, swum: RouteSwum, number: int, warnings: list[str]) -> Stop:
    mark, last = request.stops[number], len(request.stops) - 1
    arrive_s, leave_s = float(swum.arrive_s[0, number]), float(swum.leave_s[0, number])
    charted = charted_depth(request, number)
    if mark.kind == "mark" and np.isnan(charted.depth_m):
        warnings.append(f"No charted depth at {mark.name}: {charted.basis}.")
    height = float("nan") if request.tide is None else float(request.tide.height_m(arrive_s))
    return Stop(
        name=mark.name,
        kind=mark.kind,
        lon=mark.lon,
        lat=mark.lat,
        arrive=request.clock.moment(arrive_s),
        leave=request.clock.moment(leave_s),
        charted_depth_m=_or_none(charted.depth_m),
        depth_now_m=_or_none(charted.depth_m + height),
        depth_by_hour=_depth_by_hour(request, charted.depth_m, arrive_s, leave_s) if 0 < number < last else (),
        note=mark.note,
    )


def _depth_by_hour(request: SwimRequest, charted_m: float, arrive_s: float, leave_s: float) -> tuple:
    """Depth on the full hours around the stay, for the card."""
    if request.tide is None or not np.isfinite(charted_m) or not np.isfinite(arrive_s):
        return ()
    start = request.clock.moment(arrive_s).replace(minute=0, second=0, microsecond=0)
    hours = [start + timedelta(hours=n) for n in range(int((leave_s - arrive_s) // 3600.0) + 3)]
    depths = charted_m + request.tide.height_m(request.clock.seconds_of(hours))
    return tuple((hour, float(depth)) for hour, depth in zip(hours, depths) if np.isfinite(depth))


def _rings_near(request: SwimRequest) -> tuple[np.ndarray, ...]:
    """Land within a kilometre of the route as rings of degrees, for the sketch."""
    stops = request.stops_m
    box = np.concatenate([stops.min(axis=0) - 1000.0, stops.max(axis=0) + 1000.0])
    return tuple(request.frame.to_lonlat(ring) for land in request.chart.near("land", box) for ring in land.area.rings)


def _or_none(value: float) -> float | None:
    return float(value) if np.isfinite(value) else None
