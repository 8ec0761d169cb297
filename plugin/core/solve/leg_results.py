"""The legs of a swim as they are reported: headings, minutes, stream, track."""

from __future__ import annotations

import numpy as np

from ..geodesy import geodesic_leg
from ..magnetism import Variation
from ..quantities import knots_from_m_s
from ..results.swim_plan import HeadingChange, Leg, TrackPoint
from .flags.track import LegTrack
from .request import SwimRequest
from .swim import HOLD_LINE, RouteSwum, swimmable, why_not
from .swum import LegSwum, Line

TURNED_DEG = 0.5  # a heading that has turned less is the same heading; half of what a wrist compass shows


def leg_result(
    request: SwimRequest, swum: RouteSwum, tracks: tuple[LegTrack, ...], number: int, variation: Variation
) -> Leg:
    """Leg ``number`` (from 0) of the first departure of a route as swum."""
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


def _swum_numbers(request: SwimRequest, leg: LegSwum, track: LegTrack, distance_m: float, variation: Variation) -> dict:
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
    return f"{round(round(heading_mag_deg / step_deg) * step_deg) % 360:03d}M"


def _true_headings(request: SwimRequest, track: LegTrack) -> np.ndarray:
    """True headings (k,) of the nodes; one meridian convergence for the leg, so that one heading stays one."""
    turn = request.frame.convergence_at(track.xy_m[:, 0].mean())
    return (np.degrees(track.heading_rad) + turn) % 360.0


def _heading_changes(
    request: SwimRequest, track: LegTrack, true: np.ndarray, variation: Variation
) -> tuple[HeadingChange, ...]:
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


def _track_points(
    request: SwimRequest, track: LegTrack, true: np.ndarray, variation: Variation
) -> tuple[TrackPoint, ...]:
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
            moment=request.clock.moment(float(track.t_s[node])),
            heading_mag_deg=variation.magnetic(float(true[node])),
            ground_speed_m_s=float(speed[node]),
            stream_set_deg=float(towards[node]),
            stream_kn=float(rate[node]),
        )
        for node in range(len(lonlat))
    )
