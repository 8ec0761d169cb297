"""Tides and tidal streams of a plan as the core's objects in the plan's frame and clock."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator

import numpy as np

from ..core.clock import PlanClock
from ..core.errors import SwimPlanError
from ..core.geodesy import LocalFrame
from ..core.planar import PlanarArea
from ..core.quantities import m_s_from_knots
from ..core.water.events import EventStream
from ..core.water.field import RuledArea, Station, StreamField
from ..core.water.hourly import HOURS, HourlyStream, HourlyTable
from ..core.water.stream import ConstantStream, StationStream
from ..core.water.tide import HW, TideTable
from .flat_rings import flat_rings
from .table import Table, TableRow
from .tides_in import check_times

NOTHING = float("nan")


def stream_from(
    tables: dict[str, Table],
    tides: dict[str, TideTable],
    frame: LocalFrame,
    clock: PlanClock,
    land: tuple[PlanarArea, ...],
    places_m: np.ndarray,
    warnings: list[str],
) -> StreamField:
    """The stream over the plan; ``places_m`` (n, 2) is where it will be asked for, for the view from each station."""
    rates, events = _by_station(tables.get("stream_rates")), _by_station(tables.get("stream_events"))
    table = tables.get("stream_stations")
    rows = list(table.rows()) if table else []
    names = [row.values["station"] for row in rows]
    _check_names(tables, names, rates, events)
    check_times(tables.get("stream_events"), events)
    stations = tuple(_station(table, row, rates, events, tides, frame, clock, warnings) for row in rows)
    ruled = tuple(_ruled_areas(tables.get("stream_areas"), frame, set(names)))
    tideless = {station.name for station in stations if station.tide is None}
    for name in sorted({area.station for area in ruled if area.phase != "always"} & tideless):
        warnings.append(
            f"The stream area of '{name}' rules by the tide, and that station's port has no tides: the stream "
            "inside is unknown."
        )
    return StreamField(stations=stations, ruled_areas=ruled, land=land, places_m=places_m)


def _by_station(table: Table | None) -> dict[str, list[TableRow]]:
    found = defaultdict(list)
    for row in table.rows() if table else ():
        found[row.values["station"]].append(row)
    return found


def _check_names(
    tables: dict[str, Table],
    names: list[str],
    rates: dict[str, list[TableRow]],
    events: dict[str, list[TableRow]],
) -> None:
    """A rate without its station, or a station given twice, is a slip that must not pass for missing stream."""
    for key, found in (("stream_rates", rates), ("stream_events", events)):
        for name in set(found) - set(names):
            raise tables[key].refused(
                found[name][0].number,
                "station",
                name,
                f"Its station must be in stream_stations, which has {', '.join(names) or 'no rows'}",
                "Correct the name or add the station",
            )
    for name in names:
        if names.count(name) > 1:
            raise tables["stream_stations"].refused(
                None, "station", name, "A station's name stands once", "Rename or delete one of them"
            )


def _station(
    table: Table,
    row: TableRow,
    rates: dict[str, list[TableRow]],
    events: dict[str, list[TableRow]],
    tides: dict[str, TideTable],
    frame: LocalFrame,
    clock: PlanClock,
    warnings: list[str],
) -> Station:
    name = row.values["station"]
    tide = _port_tide(table, row, tides, warnings)
    x_m, y_m = frame.to_xy(row.rings[0])[0]
    make = {"hourly": _hourly, "constant": _constant, "events": _events}[row.values["form"]]
    stream = make(table, row, rates[name] if name in rates else [], events.get(name, []), tide, clock)
    return Station(
        name=name, x_m=float(x_m), y_m=float(y_m), stream=stream, source=row.values["source"] or "", tide=tide
    )


def _port_tide(table: Table, row: TableRow, tides: dict[str, TideTable], warnings: list[str]) -> TideTable | None:
    port = row.values["port"] or ""
    if port in tides:
        return tides[port]
    if not port and len(tides) == 1:
        return next(iter(tides.values()))
    if row.values["form"] == "hourly":
        warnings.append(
            f"Stream station '{row.values['station']}' counts its hours from the tides of "
            f"{port or 'a port that is not named'}, and the tides table does not have them: its stream is unknown."
        )
    return None


def _constant(
    table: Table,
    row: TableRow,
    rates: list[TableRow],
    _events: list[TableRow],
    _tide: TideTable | None,
    _clock: PlanClock,
) -> StationStream:
    if len(rates) != 1 or rates[0].values["hour"] != 0:
        raise table.refused(
            row.number,
            "form",
            "constant",
            "A constant station has one row in stream_rates, hour 0",
            f"It has {len(rates)}; correct stream_rates",
        )
    rate, towards = rates[0].values["spring_kn"], rates[0].values["set_deg"]
    if rate is None or (towards is None and rate > 0.0):
        return ConstantStream(east_m_s=NOTHING, north_m_s=NOTHING)
    return ConstantStream.from_set(towards or 0.0, m_s_from_knots(rate))


def _hourly(
    table: Table,
    row: TableRow,
    rates: list[TableRow],
    _events: list[TableRow],
    tide: TideTable | None,
    _clock: PlanClock,
) -> StationStream:
    values = {name: np.full(len(HOURS), NOTHING) for name in ("set_deg", "spring_kn", "neap_kn")}
    taken = set()
    for rate in rates:
        hour = rate.values["hour"]
        if hour in taken:
            raise table.refused(
                row.number, "station", row.values["station"], f"It has hour {hour} once", "Delete the row given twice"
            )
        taken.add(hour)
        for name, array in values.items():
            array[hour + 6] = _or_nan(rate.values[name])
    if tide is None:
        return ConstantStream(east_m_s=NOTHING, north_m_s=NOTHING)
    try:
        hourly = HourlyTable(
            station=row.values["station"],
            reference=row.values["reference"] or HW,
            set_deg=values["set_deg"],
            spring_m_s=m_s_from_knots(values["spring_kn"]),
            neap_m_s=m_s_from_knots(values["neap_kn"]),
            spring_range_m=_or_nan(row.values["spring_range_m"]),
            neap_range_m=_or_nan(row.values["neap_range_m"]),
        )
    except SwimPlanError as error:
        neap = row.values["neap_range_m"]
        raise table.refused(row.number, "neap_range_m", neap, error.allowed, error.remedy) from error
    return HourlyStream(hourly, tide)


def _events(
    table: Table,
    row: TableRow,
    _rates: list[TableRow],
    events: list[TableRow],
    _tide: TideTable | None,
    clock: PlanClock,
) -> StationStream:
    rates = [0.0 if event.values["kind"] == "slack" else _or_nan(event.values["rate_kn"]) for event in events]
    sets = {
        field: next((event.values[field] for event in events if event.values[field] is not None), NOTHING)
        for field in ("flood_set_deg", "ebb_set_deg")
    }
    return EventStream(
        station=row.values["station"],
        times_s=clock.seconds_of([event.values["time"] for event in events]),
        rates_m_s=m_s_from_knots(np.array(rates, dtype=float)),
        **sets,
    )


def _ruled_areas(table: Table | None, frame: LocalFrame, names: set[str]) -> Iterator[RuledArea]:
    for row in table.rows() if table else ():
        if row.values["station"] not in names:
            raise table.refused(
                row.number,
                "station",
                row.values["station"],
                f"The ruling station must be in stream_stations, which has {', '.join(sorted(names)) or 'no rows'}",
                "Correct the name or add the station",
            )
        # One that lies far away still keeps its station from having a share here.
        rings = flat_rings(row.rings, frame) or tuple(frame.to_xy(ring) for ring in row.rings)
        yield RuledArea(area=PlanarArea(rings=rings), station=row.values["station"], phase=row.values["phase"])


def _or_nan(value: float | None) -> float:
    return NOTHING if value is None else float(value)
