"""One swim planned from start to end: legs, stops, flags and what the card's foot says."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from ..daylight import Daylight, daylight_on
from ..magnetism import Variation, variation_at
from ..planar import PlanarArea
from ..results.flag import Flag
from ..results.swim_plan import ChartShape, Leg, Stop, SwimPlan
from .flags.channels import channel_flags
from .flags.closed import closed_area_flags, land_flags
from .flags.depths import depth_flags
from .flags.limits import dark_flags, leg_flags, swimmer_flags
from .flags.track import LegTrack, leg_tracks
from .foot import stream_turns, tide_moments
from .leg_results import leg_result
from .picked_transits import picked_at_stops
from .request import SwimRequest
from .stop_results import or_none, stop_results
from .swim import RouteSwum, swim_route


def plan_swim(request: SwimRequest, *, is_cancelled: Callable[[], bool] = bool) -> SwimPlan:
    """Swim the route once and report all of it. SwimPlanError where a model does not cover the place or date."""
    entry = request.stops[0]
    variation = variation_at(entry.lon, entry.lat, request.depart)
    swum = swum_at_departure(request, is_cancelled=is_cancelled)
    tracks = leg_tracks(request, swum)
    legs = tuple(leg_result(request, swum, tracks, number, variation) for number in range(len(swum.legs)))
    daylight = daylight_on(entry.lon, entry.lat, request.depart, request.clock)
    flags = _flags(request, swum, tracks, legs, daylight)
    warnings = list(request.warnings)
    transits = picked_at_stops(request.transits, request.stops, variation, warnings)
    stops = stop_results(request, swum, transits, warnings)
    return _whole(request, swum, variation, legs, stops, flags, daylight, warnings)


def swum_at_departure(request: SwimRequest, *, is_cancelled: Callable[[], bool] = bool) -> RouteSwum:
    """The request's route as swum at its departure."""
    return swim_route(
        request.stream,
        request.frame,
        request.stops_m,
        request.stays_s,
        np.array([request.clock.seconds(request.depart)]),
        request.swimmer,
        request.way,
        is_cancelled=is_cancelled,
    )


def _flags(
    request: SwimRequest, swum: RouteSwum, tracks: tuple[LegTrack, ...], legs: tuple[Leg, ...], daylight: Daylight
) -> list[Flag]:
    total_m = sum(leg.distance_m for leg in legs)
    total_min = float(swum.arrive_s[0, -1] - swum.arrive_s[0, 0]) / 60.0
    endings = [int(leg.ending[0]) for leg in swum.legs]
    flags = leg_flags(request, tracks, endings, [leg.reason for leg in legs])
    flags += channel_flags(request, tracks) + closed_area_flags(request, tracks) + land_flags(request, tracks)
    flags += depth_flags(request, swum.arrive_s[0], swum.leave_s[0])
    flags += dark_flags(request, tracks, daylight) + swimmer_flags(request, total_m, total_min)
    gravity = {"stop": 0, "warn": 1, "note": 2}
    earliest = request.depart
    return sorted(
        flags, key=lambda flag: (gravity[flag.severity], flag.leg is None, flag.start or earliest, flag.leg or 0)
    )


def _whole(
    request: SwimRequest,
    swum: RouteSwum,
    variation: Variation,
    legs: tuple[Leg, ...],
    stops: tuple[Stop, ...],
    flags: list[Flag],
    daylight: Daylight,
    warnings: list[str],
) -> SwimPlan:
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
        total_min=or_none((arrive_s - depart_s) / 60.0),
        swim_min=or_none(swim_s / 60.0),
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
        alarm=request.clock.moment(arrive_s + 60.0 * settings.alarm_after_min),
        land_rings=_rings_near(request),
        chart_shapes=_shapes_near(request),
    )


def _rings_near(request: SwimRequest) -> tuple[np.ndarray, ...]:
    """Land near the route as rings of degrees, for the sketch."""
    return tuple(ring for land in request.chart.near("land", _near(request)) for ring in _rings(request, land.area))


def _shapes_near(request: SwimRequest) -> tuple[ChartShape, ...]:
    """Channels and areas with rules near the route, for the sketch."""
    box = _near(request)
    kinds = [("ferry" if one.kind == "ferry" else "channel", one) for one in request.chart.near("channels", box)]
    kinds += [("rules", one) for one in request.chart.near("closed_areas", box)]
    return tuple(ChartShape(kind=kind, name=one.name, rings=_rings(request, one.area)) for kind, one in kinds)


def _near(request: SwimRequest) -> np.ndarray:
    """The box (4,) of the route and a kilometre round it, in the plan's frame."""
    stops = request.stops_m
    return np.concatenate([stops.min(axis=0) - 1000.0, stops.max(axis=0) + 1000.0])


def _rings(request: SwimRequest, area: PlanarArea) -> tuple[np.ndarray, ...]:
    return tuple(request.frame.to_lonlat(ring) for ring in area.rings)
