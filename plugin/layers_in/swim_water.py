"""Tidal streams of a plan as the core's field in the plan's frame and clock."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from ..core.clock import PlanClock
from ..core.geodesy import LocalFrame
from ..core.planar import PlanarArea
from ..core.water.field import RuledArea, StreamField
from ..core.water.model_stream import ModelStream
from ..core.water.tide import TideTable
from ..words import tr
from .flat_rings import flat_rings
from .station_tables import StationTables
from .stations_in import stations_from
from .table import Table

FAR_STATION_KM = 100.0


def stream_from(
    tables: dict[str, Table],
    tides: dict[str, TideTable],
    frame: LocalFrame,
    clock: PlanClock,
    land: tuple[PlanarArea, ...],
    places_m: np.ndarray,
    warnings: list[str],
    *,
    models: tuple[ModelStream, ...] = (),
) -> StreamField:
    """The stream over the plan; ``places_m`` (n, 2) is where it will be asked for, for the view from each station."""
    stations = stations_from(StationTables(tables, tides, clock, warnings), frame)
    names = {station.name for station in stations}
    for station in stations:
        away_km = float(np.hypot(station.x_m, station.y_m)) / 1000.0
        if not away_km < FAR_STATION_KM:
            warnings.append(
                tr(
                    "Stream station '{name}' lies {away_km:.0f} km from the route: is its place right, longitude "
                    "before latitude?"
                ).format(name=station.name, away_km=away_km)
            )
    ruled = tuple(_ruled_areas(tables.get("stream_areas"), frame, names))
    tideless = {station.name for station in stations if station.tide is None}
    for name in sorted({area.station for area in ruled if area.phase != "always"} & tideless):
        warnings.append(
            tr(
                "The stream area of '{name}' rules by the tide, and that station's port has no tides: the "
                "stream inside is unknown."
            ).format(name=name)
        )
    return StreamField(stations=stations, models=models, ruled_areas=ruled, land=land, places_m=places_m)


def _ruled_areas(table: Table | None, frame: LocalFrame, names: set[str]) -> Iterator[RuledArea]:
    for row in table.rows() if table else ():
        if row.values["station"] not in names:
            raise table.refused(
                row.number,
                "station",
                row.values["station"],
                tr("The ruling station must be in stream_stations, which has {names}").format(
                    names=", ".join(sorted(names)) or tr("no rows")
                ),
                tr("Correct the name or add the station"),
            )
        # One that lies far away still keeps its station from having a share here.
        rings = flat_rings(row.rings, frame) or tuple(frame.to_xy(ring) for ring in row.rings)
        yield RuledArea(area=PlanarArea(rings=rings), station=row.values["station"], phase=row.values["phase"])
