"""Timed drifts of a plan, and the day's correction of a station that they give."""

from __future__ import annotations

from collections import defaultdict

from ..core.errors import SwimPlanError
from ..core.quantities import SECONDS_PER_HOUR, SECONDS_PER_MINUTE
from ..core.water.corrected import CorrectedStream
from ..core.water.stream import StationStream
from ..core.water.timed_drift import DayCorrection, TimedDrift, day_correction
from ..words import tr
from .station_tables import StationTables
from .table import Table, TableRow

OF_THE_DAY_S = 18.0 * SECONDS_PER_HOUR  # a correction holds for the day; common practice, no source


def drift_corrections(tables: StationTables, streams: dict[str, StationStream]) -> dict[str, StationStream]:
    """The streams, by station, that drifts of the plan's day correct; each is said in the warnings.

    Drifts within 18 hours of the plan's start count. A station whose drifts cannot be fitted keeps its stream, with a
    warning that says why. BadInputError for a drift that cannot be or whose station is not there.
    """
    table, found = tables.tables.get("drifts"), {}
    for name, drifts in _by_station(table, tables, streams).items():
        try:
            correction = day_correction(tuple(drifts), streams[name])
        except SwimPlanError as error:
            tables.warnings.append(
                tr("The timed drifts at '{name}' do not correct its stream: {error}").format(name=name, error=error)
            )
            continue
        tables.warnings.append(
            tr("Station '{name}' is corrected for the day by {words}.").format(
                name=name, words=correction_words(correction, drifts)
            )
        )
        found[name] = CorrectedStream(
            stream=streams[name], rate_factor=correction.rate_factor, shift_s=correction.shift_s
        )
    return found


def correction_words(correction: DayCorrection, drifts: list[TimedDrift]) -> str:
    """The correction in words: how many drifts, the factor, and the shift where it is known."""
    count = tr("1 timed drift") if len(drifts) == 1 else tr("{count} timed drifts").format(count=len(drifts))
    minutes = round(correction.shift_s / SECONDS_PER_MINUTE)
    if correction.shift_known:
        shift = (tr("{minutes} min later") if minutes >= 0 else tr("{minutes} min earlier")).format(
            minutes=abs(minutes)
        )
    else:
        shift = tr("its clock kept, as they do not tell a shift")
    return tr("{count}: rates x {rate_factor:.2f}, {shift}").format(
        count=count, rate_factor=correction.rate_factor, shift=shift
    )


def _by_station(
    table: Table | None, tables: StationTables, streams: dict[str, StationStream]
) -> dict[str, list[TimedDrift]]:
    found = defaultdict(list)
    for row in table.rows() if table else ():
        drift = _drift(table, row, tables)
        name = row.values["station"]
        if name and name not in streams:
            raise table.refused(
                row.number,
                "station",
                name,
                tr("Its station must be in stream_stations, which has {names}").format(
                    names=", ".join(streams) or tr("no rows")
                ),
                tr("Correct the name, add the station, or leave it empty"),
            )
        if name and abs(drift.start_s) <= OF_THE_DAY_S:
            found[name].append(drift)
    return found


def _drift(table: Table, row: TableRow, tables: StationTables) -> TimedDrift:
    values = row.values
    try:
        return TimedDrift(
            start_s=tables.clock.seconds(values["time"]),
            end_s=tables.clock.seconds(values["end_time"]),
            **{name: values[name] for name in ("lon", "lat", "end_lon", "end_lat")},
        )
    except SwimPlanError as error:
        raise table.refused(
            row.number, "end_time", values["end_time"].isoformat(), error.asked, error.remedy
        ) from error
