"""The place whose water is shown while a plan has no route: a stream station, else a mark, else where the chart is."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from qgis.core import QgsFeatureSource

from ..core.chart.marks import Mark, Route
from ..core.geodesy import geodesic_leg
from ..core.solve.request import SwimRequest
from ..plan_package.database import row_count, table_names
from ..words import tr
from .marks_in import marks_from
from .plan_tables import tables_of
from .swim_in import SwimAsked, request_from
from .table import Table

# Tables that say something of tide or stream; the rows of stations stand in others.
WATER = ("tides", "tide_ports", "tide_series", "tide_constants", "stream_stations", "stream_models")
DRAWN = ("soundings", "depth_contours", "land", "channels", "closed_areas")
STATION, MARK, CHART, NOWHERE = "station", "mark", "chart", "nowhere"
STEP_DEG = 0.001


@dataclass(frozen=True, kw_only=True)
class WaterPlace:
    """``kind`` says what stands there, ``near`` the mark that a station is the nearest to, empty without one."""

    kind: str
    name: str = ""
    lon: float = 0.0
    lat: float = 0.0
    near: str = ""


def has_water(plan: str | Path, sources: Mapping[str, QgsFeatureSource]) -> bool:
    """Whether the plan says anything of tide or stream; ``sources`` as for ``request_from``."""
    if any(sources[name].featureCount() > 0 for name in WATER if name in sources):
        return True
    others = table_names(Path(plan)).intersection(WATER).difference(sources)
    return any(row_count(Path(plan), name) > 0 for name in others)


def place_request_from(
    plan: str | Path, sources: Mapping[str, QgsFeatureSource], asked: SwimAsked
) -> tuple[SwimRequest, WaterPlace]:
    """A request whose first stop is the place; ``sources`` and errors as for ``request_from``."""
    tables = tables_of(plan, sources, [])
    place = place_of(tables, marks_from(tables.get("marks")))

    def laid(_marks: list[Mark]) -> tuple[Route, list[Mark]]:
        """A route has two ends; this one is never swum."""
        beyond = place.lat - STEP_DEG if place.lat > 0.0 else place.lat + STEP_DEG
        ends = [(place.lon, place.lat), (place.lon, beyond)]
        stops = [Mark(name=place.name, kind="waypoint", lon=lon, lat=lat) for lon, lat in ends]
        return Route(name=place.name, lonlat=np.array(ends)), stops

    return request_from(plan, sources, asked, laid), place


def place_of(tables: Mapping[str, Table], marks: list[Mark]) -> WaterPlace:
    """The station nearest to the entry, without an entry to the first mark, without marks the first; without stations
    that mark; without marks the first place that is drawn."""
    entry = next((mark for mark in marks if mark.kind == "entry"), next(iter(marks), None))
    stations = [(row.values["station"], *_first(row.rings)) for row in _rows(tables, "stream_stations")]
    if stations and entry is None:
        name, lon, lat = stations[0]
        return WaterPlace(kind=STATION, name=name, lon=lon, lat=lat)
    if stations:
        name, lon, lat = min(stations, key=lambda one: geodesic_leg(entry.lon, entry.lat, *one[1:])[0])
        return WaterPlace(kind=STATION, name=name, lon=lon, lat=lat, near=entry.name or tr("the entry"))
    if entry is not None:
        return WaterPlace(kind=MARK, name=entry.name or tr("the entry"), lon=entry.lon, lat=entry.lat)
    drawn = next((_first(row.rings) for name in DRAWN for row in _rows(tables, name)), None)
    if drawn is None:
        return WaterPlace(kind=NOWHERE, name=tr("a place not drawn yet"))
    return WaterPlace(kind=CHART, name=tr("the chart"), lon=drawn[0], lat=drawn[1])


def _rows(tables: Mapping[str, Table], name: str) -> Iterable:
    return tables[name].rows() if name in tables else ()


def _first(rings: tuple[np.ndarray, ...]) -> tuple[float, float]:
    """The first place of a shape, from 180 W to 180 E."""
    lon, lat = rings[0][0]
    return (float(lon) + 180.0) % 360.0 - 180.0, float(lat)
