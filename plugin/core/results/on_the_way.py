"""Points every so many metres on the track really swum, to check one's way by."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta, timezone

import numpy as np

from ..clock import later
from ..geodesy import geodesic_steps
from .file_contents import swum_legs
from .report import unwrapped, wrapped_lon
from .swim_plan import Leg, SwimPlan


@dataclass(frozen=True, kw_only=True)
class WayPoint:
    """A place on the track: its leg, its number on it from 1, degrees, and when one should be there."""

    leg: int
    number: int
    lon: float
    lat: float
    moment: datetime


def points_on_the_way(plan: SwimPlan, every_m: float) -> list[WayPoint]:
    """Points on the tracks of the legs swum, every so many metres over the ground from the leg's start.

    The last one of a leg is left out where the leg's end is nearer than half that distance. Between the track's own
    points, which lie a minute or less apart, place and time go evenly.
    """
    return [point for leg in swum_legs(plan) for point in _on_leg(leg, every_m)]


def _on_leg(leg: Leg, every_m: float) -> list[WayPoint]:
    lonlat = np.array(unwrapped((point.lon, point.lat) for point in leg.track))
    way_m = np.concatenate([[0.0], np.cumsum(geodesic_steps(lonlat))])
    start = leg.track[0].moment
    utc = start.astimezone(timezone.utc)
    seconds = [(point.moment.astimezone(timezone.utc) - utc).total_seconds() for point in leg.track]
    wanted_m = np.arange(every_m, way_m[-1] - every_m / 2.0, every_m)
    columns = (np.interp(wanted_m, way_m, values) for values in (*lonlat.T, seconds))
    return [
        WayPoint(
            leg=leg.number,
            number=number,
            lon=wrapped_lon(float(lon)),
            lat=float(lat),
            moment=later(start, timedelta(seconds=float(after_s))),
        )
        for number, (lon, lat, after_s) in enumerate(zip(*columns), start=1)
    ]
