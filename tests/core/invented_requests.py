"""Swims to plan in invented water, laid out in metres about a place that can be anywhere and turned to any side."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone

import numpy as np
from pyproj import Geod
from tideleg.core.chart.areas import Chart
from tideleg.core.chart.depths import DepthSurvey
from tideleg.core.chart.marks import Mark, Route
from tideleg.core.clock import PlanClock
from tideleg.core.geodesy import LocalFrame
from tideleg.core.planar import PlanarArea
from tideleg.core.solve.request import PlanSettings, SwimRequest
from tideleg.core.solve.swim import SwimWay
from tideleg.core.swimmer import Swimmer
from tideleg.core.water.field import Station, StreamField
from tideleg.core.water.stream import ConstantStream

UTC = timezone.utc
WGS84 = Geod(ellps="WGS84")
SWIMMER = Swimmer(name="steady", pace_m_s=0.7, path_factor=1.0)
NOON = datetime(2027, 6, 5, 13, 0, tzinfo=UTC)  # near local noon at the place below


class Site:
    """A place and a turn: metres (to the right, ahead) of the drawing become degrees, and bearings are turned."""

    def __init__(self, lon: float = -28.5, lat: float = 42.4, turn_deg: float = 0.0) -> None:
        self.lon, self.lat, self.turn_deg = lon, lat, turn_deg
        self.frame = LocalFrame(lon=lon, lat=lat)

    def lonlat(self, drawn_m) -> np.ndarray:
        """Degrees (n, 2) of drawn places (n, 2): the geodesic of that length and turned bearing from the site."""
        right, ahead = np.asarray(drawn_m, dtype=float).reshape(-1, 2).T
        n = len(right)
        bearing = np.degrees(np.arctan2(right, ahead)) + self.turn_deg
        lon, lat, _ = WGS84.fwd(np.full(n, self.lon), np.full(n, self.lat), bearing, np.hypot(right, ahead))
        return np.column_stack([lon, lat])

    def xy(self, drawn_m) -> np.ndarray:
        """The drawn places in the plan's frame."""
        return self.frame.to_xy(self.lonlat(drawn_m))

    def area(self, *rings) -> PlanarArea:
        """An area of drawn rings."""
        return PlanarArea(rings=tuple(self.xy(ring) for ring in rings))

    def box(self, right_low, ahead_low, right_high, ahead_high) -> PlanarArea:
        """A drawn rectangle."""
        corners = [(right_low, ahead_low), (right_high, ahead_low), (right_high, ahead_high), (right_low, ahead_high)]
        return self.area(corners)

    def towards(self, drawn_deg: float) -> float:
        """True direction of a drawn one."""
        return (drawn_deg + self.turn_deg) % 360.0

    def station(self, name="all round", drawn_m=(0.0, 0.0), *, towards=0.0, rate_m_s=0.0, stream=None, tide=None):
        """A station with a constant stream, or with the stream given."""
        x_m, y_m = self.xy([drawn_m])[0]
        stream = stream or ConstantStream.from_set(self.towards(towards), rate_m_s)
        return Station(name=name, x_m=float(x_m), y_m=float(y_m), stream=stream, tide=tide)

    def steady(self, towards: float, rate_m_s: float) -> StreamField:
        """The same stream everywhere."""
        return StreamField(stations=(self.station(towards=towards, rate_m_s=rate_m_s),))

    def request(
        self,
        drawn_stops_m,
        *,
        stream=None,
        depart: datetime = NOON,
        zone: str = "UTC",
        mode: int = 0,
        stays_min=(),
        depths_m=(),
        swimmer: Swimmer = SWIMMER,
        channels=(),
        closed_areas=(),
        land=(),
        tide=None,
        survey=None,
        step_s: float = 30.0,
        **settings,
    ) -> SwimRequest:
        """A swim from the first drawn stop over the others; slack water where no stream is given."""
        lonlat = self.lonlat(drawn_stops_m)
        last = len(lonlat) - 1
        stops = tuple(
            Mark(
                name={0: "Slip", last: "Beach"}.get(number, f"Rock {number}"),
                kind={0: "entry", last: "exit"}.get(number, "mark"),
                lon=float(lon),
                lat=float(lat),
                stay_min=dict(enumerate(stays_min, start=1)).get(number, 0.0),
                charted_depth_m=dict(enumerate(depths_m, start=1)).get(number),
            )
            for number, (lon, lat) in enumerate(lonlat)
        )
        return SwimRequest(
            route=Route(name="drawn", lonlat=lonlat),
            stops=stops,
            depart=depart,
            swimmer=swimmer,
            way=SwimWay(mode=mode, step_s=step_s),
            frame=self.frame,
            clock=PlanClock(start=depart, zone_name=zone),
            stream=stream if stream is not None else self.steady(0.0, 0.0),
            tide=tide,
            chart=Chart(channels=tuple(channels), closed_areas=tuple(closed_areas), land=tuple(land)),
            depths=survey or DepthSurvey(),
            settings=PlanSettings(zone=zone, **settings),
        )


def of_kind(plan, kind):
    """The flags of a kind."""
    return [flag for flag in plan.flags if flag.kind == kind]


def minutes_between(first: datetime, last: datetime) -> float:
    """Minutes between two moments, whatever their zones."""
    return (last - first) / timedelta(minutes=1)
