"""The track really swum, leg by leg, as the flags read it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from ...geodesy import LocalFrame
from ...planar import along, part_of
from ...results.flag import Flag
from ...words import tr
from ..request import SwimRequest
from ..swim import RouteSwum


@dataclass(frozen=True, kw_only=True)
class LegTrack:
    """One leg's track: arrays over its nodes (k,). For a leg that is not dated ``t_s`` is NaN and the line is straight.

    ``stay_until_s`` is when the stop at its end is left, NaN where not known.
    """

    number: int
    start_name: str
    end_name: str
    frame: LocalFrame
    t_s: np.ndarray
    xy_m: np.ndarray
    heading_rad: np.ndarray
    stream_m_s: np.ndarray
    status: np.ndarray
    stay_until_s: float

    @property
    def dated(self) -> bool:
        """Whether the leg is swum and its times are known."""
        return bool(np.isfinite(self.t_s[0]))

    def time_at(self, position: float) -> float:
        """Time at a fractional node number, seconds from the plan's start."""
        return float(along(self.t_s, position))

    def points(self, start: float, end: float) -> tuple[tuple[float, float], ...]:
        """The part between two fractional node numbers as (lon, lat) pairs."""
        lonlat = self.frame.to_lonlat(part_of(self.xy_m, start, end))
        return tuple((float(lon), float(lat)) for lon, lat in lonlat)

    @property
    def whole(self) -> tuple[tuple[float, float], ...]:
        """The whole track as (lon, lat) pairs."""
        return self.points(0.0, len(self.xy_m) - 1.0)


def leg_tracks(request: SwimRequest, swum: RouteSwum) -> tuple[LegTrack, ...]:
    """The tracks of the first departure of a route as swum."""
    stops_m = request.stops_m
    return tuple(_leg_track(request, swum, stops_m, number) for number in range(len(swum.legs)))


def _leg_track(request: SwimRequest, swum: RouteSwum, stops_m: np.ndarray, number: int) -> LegTrack:
    nodes = swum.legs[number].nodes
    kept = np.isfinite(nodes.t_s[0])
    dated = bool(np.isfinite(swum.legs[number].arrive_s[0])) and kept.sum() >= 2
    if dated:
        columns = {name: getattr(nodes, name)[0][kept] for name in nodes.names()}
        xy_m = np.column_stack([columns["x_m"], columns["y_m"]])
        stream = np.column_stack([columns["east_m_s"], columns["north_m_s"]])
    else:
        xy_m, stream = stops_m[number : number + 2], np.full((2, 2), np.nan)
        columns = {name: np.full(2, np.nan) for name in ("t_s", "heading_rad")} | {"status": np.zeros(2)}
    return LegTrack(
        number=number + 1,
        start_name=request.stops[number].name,
        end_name=request.stops[number + 1].name,
        frame=request.frame,
        t_s=columns["t_s"],
        xy_m=xy_m,
        heading_rad=columns["heading_rad"],
        stream_m_s=stream,
        status=columns["status"],
        stay_until_s=float(swum.leave_s[0, number + 1]),
    )


def stretch_flag(request: SwimRequest, leg: LegTrack, start: float, end: float, **about: Any) -> Flag:
    """A flag on a stretch of a leg, with its place and times filled in."""
    times = (request.clock.moment(leg.time_at(start)), request.clock.moment(leg.time_at(end)))
    return Flag(leg=leg.number, points=leg.points(start, end), start=times[0], end=times[1], **about)


def clock_words(request: SwimRequest, seconds: float) -> str:
    """A time as the swimmer's watch shows it, or words where it is not known."""
    moment = request.clock.moment(seconds)
    return tr("an unknown time") if moment is None else f"{moment:%H:%M}"
