"""The stream stations of a plan: each with its stream in whatever form it is given, corrected for the day."""

from __future__ import annotations

from dataclasses import replace

from ..core.geodesy import LocalFrame
from ..core.quantities import SECONDS_PER_MINUTE
from ..core.water.corrected import CorrectedStream
from ..core.water.field import RANKS, Station
from ..core.water.stream import ConstantStream, StationStream
from .drifts_in import drift_corrections
from .station_forms import NEEDS_TIDE, SUBORDINATE, stream_of, subordinate_of
from .station_tables import NOTHING, StationTables
from .table import TableRow

NO_STREAM = ConstantStream(east_m_s=NOTHING, north_m_s=NOTHING)


def stations_from(tables: StationTables, frame: LocalFrame) -> tuple[Station, ...]:
    """The stations in the order of their table.

    A subordinate place is worked out from its reference station's own table, without that station's correction.
    BadInputError for a form whose fields or rows are not what it needs.
    """
    plain = {row.values["station"]: _plain(tables, row) for row in tables.rows if row.values["form"] != SUBORDINATE}
    for row in tables.rows:
        if row.values["form"] == SUBORDINATE:
            plain[row.values["station"]] = subordinate_of(tables, row, plain)
    stations = [_station(tables, row, plain[row.values["station"]], frame) for row in tables.rows]
    by_drifts = drift_corrections(tables, {station.name: station.stream for station in stations})
    return tuple(
        replace(station, stream=by_drifts[station.name]) if station.name in by_drifts else station
        for station in stations
    )


def _plain(tables: StationTables, row: TableRow) -> StationStream:
    """The station's stream as its table has it."""
    tide = tables.tide_of(row, needed=row.values["form"] in NEEDS_TIDE)
    if tide is None and row.values["form"] in NEEDS_TIDE:
        stream_of(tables, row, None)  # what is wrong with its rows is said all the same
        return NO_STREAM
    return stream_of(tables, row, tide)


def _station(tables: StationTables, row: TableRow, stream: StationStream, frame: LocalFrame) -> Station:
    values = row.values
    x_m, y_m = frame.to_xy(row.rings[0])[0]
    factor, shift_min = values["rate_factor"], values["shift_min"]
    if factor != 1.0 or shift_min != 0.0:
        stream = CorrectedStream(stream=stream, rate_factor=factor, shift_s=shift_min * SECONDS_PER_MINUTE)
    return Station(
        name=values["station"],
        x_m=float(x_m),
        y_m=float(y_m),
        stream=stream,
        source=values["source"] or "",
        rank=RANKS.get(values["confidence"] or "", RANKS["table"]),
        reach_m=values["reach_m"],
        rate_uncertainty=values["rate_uncertainty"],
        phase_uncertainty_s=values["phase_uncertainty_min"] * SECONDS_PER_MINUTE,
        tide=tables.tide_of(row, needed=False),
    )
