"""A reach, or a fastest path, asked of a plan: its marks, water and chart as one request to the core."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

import numpy as np
from qgis.core import QgsFeatureSource

from ..core.chart.marks import TAKES_NAME_WITHIN_M, Mark, Route
from ..core.clock import PlanClock, later, moment_from_text, zone_named
from ..core.errors import SwimPlanError
from ..core.geodesy import LocalFrame, check_position, geodesic_leg
from ..core.planar import bounds_of
from ..core.solve.reach.request import MOST_HOURS, ReachRequest
from ..plan_package.store import read_settings
from ..words import tr
from .swim_in import SwimAsked, request_from
from .swim_people import settings_read
from .table import Table

FASTEST_M_S = 4.0  # over the ground: a fast swimmer in a strong stream
NEAR_M = 30_000.0
# What somebody went and measured or marked; a coast reaches far beyond that.
DATA = ("marks", "depth_contours", "soundings", "stream_stations")
AROUND_DATA_M = 1000.0
PATH_HOURS = 12.0
AROUND_PATH_M = 1500.0


@dataclass(frozen=True, kw_only=True)
class ReachAsked:
    """What the user asked for, times as typed; ``cell_m`` 0 has it chosen, ``pace_m_s`` None is the swimmer's own."""

    lon: float
    lat: float
    depart: str
    back_by: str
    stay_min: float = 0.0
    cell_m: float = 0.0
    channels: int = 0
    swimmer: str = ""
    pace_m_s: float | None = None


@dataclass(frozen=True, kw_only=True)
class PathAsked:
    """A fastest path from one place (lon, lat) to another; the rest as in ``ReachAsked``."""

    start: tuple[float, float]
    end: tuple[float, float]
    depart: str
    cell_m: float = 0.0
    channels: int = 0
    swimmer: str = ""
    pace_m_s: float | None = None


def reach_from(
    plan: str | Path, asked: ReachAsked, sources: Mapping[str, QgsFeatureSource] | None = None
) -> ReachRequest:
    """The request for a reach; ``sources`` as for ``request_from``.

    SwimPlanError where a time cannot be read or the two are not in order.
    """
    zone = zone_named(settings_read(plan, sources or {})["zone"])
    depart = _moment("DEPART", asked.depart, zone)
    back_by = _moment("BACK_BY", asked.back_by, zone)
    seconds = PlanClock(start=depart, zone_name="UTC").seconds(back_by)
    if not 0.0 < seconds <= MOST_HOURS * 3600.0:
        raise SwimPlanError(
            asked=tr("DEPART is {depart} and BACK_BY {back_by}").format(depart=asked.depart, back_by=asked.back_by),
            allowed=tr("Being back comes after leaving, by {most_hours:g} hours at the most").format(
                most_hours=MOST_HOURS
            ),
            remedy=tr("Correct DEPART or BACK_BY"),
        )
    places = _Places([(asked.lon, asked.lat)], FASTEST_M_S * seconds)
    swim_asked = SwimAsked(
        depart=depart.isoformat(), until=back_by.isoformat(), swimmer=asked.swimmer, pace_m_s=asked.pace_m_s
    )
    swim = request_from(plan, sources or {}, swim_asked, places.laid, places.around_data)
    return ReachRequest(
        swim=swim,
        back_by=back_by,
        stay_min=asked.stay_min,
        area=places.area,
        marks=tuple(places.marks),
        cell_m=asked.cell_m,
        channels=asked.channels,
    )


def path_from(plan: str | Path, asked: PathAsked) -> ReachRequest:
    """The request for a fastest path: its end is the one mark, the time to be back twelve hours later."""
    zone = zone_named(read_settings(plan)["zone"])
    depart = _moment("DEPART", asked.depart, zone)
    until = later(depart, timedelta(hours=PATH_HOURS))
    metres, _ = geodesic_leg(*asked.start, *asked.end)
    if not 1.0 <= metres <= NEAR_M:
        raise SwimPlanError(
            asked=tr("Asked for a path between places {metres:.0f} m apart").format(metres=metres),
            allowed=tr("They lie from 1 m to {near_km:g} km apart").format(near_km=NEAR_M / 1000.0),
            remedy=tr("Choose START and END anew"),
        )
    places = _Places([asked.start, asked.end], 0.0)
    swim_asked = SwimAsked(
        depart=depart.isoformat(), until=until.isoformat(), swimmer=asked.swimmer, pace_m_s=asked.pace_m_s
    )
    swim = request_from(plan, {}, swim_asked, places.laid, places.around_path)
    return ReachRequest(
        swim=swim,
        back_by=until,
        stay_min=0.0,
        area=places.area,
        marks=(places.ends[-1],),
        cell_m=asked.cell_m,
        channels=asked.channels,
    )


def _moment(name: str, text: str, zone: object) -> datetime:
    """A time as typed; SwimPlanError naming the parameter."""
    try:
        return moment_from_text(text, zone)
    except SwimPlanError as error:
        raise SwimPlanError(asked=f"{name}: {error.asked}", allowed=error.allowed, remedy=error.remedy) from error


class _Places:
    """The places asked for as marks, the plan's marks near them, and the area (4,) of the frame that is looked at."""

    def __init__(self, lonlat: list[tuple[float, float]], within_m: float) -> None:
        self.lonlat = lonlat
        self.within_m = within_m
        self.ends: list[Mark] = []
        self.marks: list[Mark] = []
        self.area = np.zeros(4)
        for (lon, lat), name in zip(lonlat, (tr("The start"), tr("The end"))):
            check_position(lon, lat, name)

    def laid(self, marks: list[Mark]) -> tuple[Route, list[Mark]]:
        """The places asked for and the marks near them as the stops of a route."""
        names = ("Entry", "End")
        self.ends = [_mark_at(place, name, marks) for place, name in zip(self.lonlat, names)]
        near = [mark for mark in marks if 0.0 < self._away_m(mark) <= min(self.within_m, NEAR_M)]
        self.marks = [mark for mark in near if self._away_m(mark) > TAKES_NAME_WITHIN_M]
        stops = [*self.ends, *self.marks]
        if len(stops) < 2:
            # A route has two ends; this one is never swum.
            stops.append(Mark(name="", kind="waypoint", lon=self.lonlat[0][0], lat=self.lonlat[0][1] + 1e-3))
        fresh = [stops[0]]
        for stop in stops[1:]:
            if (stop.lon, stop.lat) != (fresh[-1].lon, fresh[-1].lat):
                fresh.append(stop)
        lonlat = np.array([[stop.lon, stop.lat] for stop in fresh])
        return Route(name="reach", lonlat=lonlat), fresh

    def around_data(self, tables: Mapping[str, Table], frame: LocalFrame) -> np.ndarray:
        """Corners (2, 2) of what the plan's data cover as far as can be reached."""
        entry = frame.to_xy(np.array(self.lonlat))[0]
        covered = [entry[None]]
        for name in DATA:
            rings = [row.rings[0] for row in (tables[name].rows() if name in tables else ())]
            if rings:
                places = np.concatenate(rings)
                dlon = (places[:, 0] - frame.lon + 180.0) % 360.0 - 180.0
                near = (np.abs(places[:, 1] - frame.lat) < 1.0) & (np.abs(dlon) < 90.0)
                xy_m = frame.to_xy(places[near])
                covered.append(xy_m[np.hypot(*(xy_m - entry).T) <= min(self.within_m, NEAR_M)])
        box = bounds_of(np.concatenate(covered))
        self.area = np.concatenate(
            [
                np.maximum(box[:2] - AROUND_DATA_M, entry - self.within_m),
                np.minimum(box[2:] + AROUND_DATA_M, entry + self.within_m),
            ]
        )
        return self.area.reshape(2, 2)

    def around_path(self, tables: Mapping[str, Table], frame: LocalFrame) -> np.ndarray:
        """Corners (2, 2) round both places, as far again to every side as they lie apart."""
        box = bounds_of(frame.to_xy(np.array(self.lonlat)))
        margin = max(AROUND_PATH_M, float(np.hypot(*(box[2:] - box[:2]))))
        self.area = box + margin * np.array([-1.0, -1.0, 1.0, 1.0])
        return self.area.reshape(2, 2)

    def _away_m(self, mark: Mark) -> float:
        """Distance from the first place; a cheap one for what is far."""
        lon, lat = self.lonlat[0]
        if abs(mark.lat - lat) > 1.0:
            return float("inf")
        return geodesic_leg(lon, lat, mark.lon, mark.lat)[0]


def _mark_at(place: tuple[float, float], name: str, marks: list[Mark]) -> Mark:
    """The place as a mark, by the name of the plan's mark within 15 m of it."""
    lon, lat = place
    near = [(geodesic_leg(lon, lat, mark.lon, mark.lat)[0], mark) for mark in marks if abs(mark.lat - lat) < 0.01]
    metres, mark = min(near, key=lambda pair: pair[0], default=(float("inf"), None))
    if mark is not None and metres <= TAKES_NAME_WITHIN_M:
        name = mark.name or name
    return Mark(name=name, kind="entry", lon=lon, lat=lat)
