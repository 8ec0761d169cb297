"""Reads stream tables given as text into a plan, all or nothing, and reports what became of every row."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from qgis.core import QgsPointXY

from ..core.errors import BadInputError, SwimPlanError
from ..core.text_table import separator_words
from ..core.water.stream_asked import StreamAsked, StreamReading
from ..core.water.stream_rows import TextPlanRow
from ..core.water.stream_text import read_streams
from ..plan_package.settings import require_readable
from ..version import tideleg_version
from ..words import tr
from .chart_reading import Told
from .drift_findings import drift_findings
from .plan_append import Added, append_to_plan
from .plan_rows import PlanRow
from .plan_tables import tables_of
from .read_report import write_report
from .second_reading import check_second_reading
from .station_doubts import station_doubts
from .station_rows import StationRows

# What tells one row of a table from another; a second row with the same key and other figures is a contradiction.
KEYS = {
    "stream_rates": ("station", "hour"),
    "stream_events": ("station", "time"),
    "stream_series": ("station", "time"),
    "stream_constants": ("station", "constituent"),
    "winds": ("time",),
    "tide_coefficients": ("port", "time"),
}
SHOWN_ROWS = 5


@dataclass(frozen=True, kw_only=True)
class StreamsAsked:
    """What to read into which plan: ``place`` is that of a new station in degrees, ``preview`` writes nothing."""

    plan: Path
    text: str
    asked: StreamAsked
    place: QgsPointXY | None = None
    preview: bool = False
    report: Path | None = None
    warnings: tuple[str, ...] = ()


def read_streams_into_plan(asked: StreamsAsked, told: Told) -> Added:
    """Read the text, check it against the plan, and add its rows; nothing but the report where it is a preview.

    SwimPlanError and StoppedError leave the plan as it was.
    """
    require_readable(asked.plan)
    readings = read_streams(asked.text, asked.asked)
    if asked.place is not None and sum(bool(reading.station) for reading in readings) > 1:
        raise SwimPlanError(
            asked=tr("The text has several stations, and one place was given"),
            allowed=tr("Each station has its own place"),
            remedy=tr("Write lines '# lon: ...' and '# lat: ...' under each '# station: ...'"),
        )
    tables = tables_of(asked.plan, {}, [])
    stations = StationRows(tables.get("stream_stations"), asked.asked.name)
    rows = [row for reading in readings for row in stations.rows_of(reading, asked.place)]
    given = [row for reading in readings for row in reading.rows]
    stations.check_named(given)
    _check_keys(tables, given, asked.asked.name)
    rows += [PlanRow(layer=row.layer, values=row.values) for row in given]
    drifts = drift_findings(asked.plan, [row.values for row in given if row.layer == "drifts"])
    warnings = [*asked.warnings, *(note for reading in readings for note in reading.notes)]
    warnings += station_doubts(asked.plan, list(tables), stations.spoken, given)
    filled = {fill.name: dict(fill.values) for fill in stations.fills}
    content = {
        "tideleg": tideleg_version(),
        "plan": str(asked.plan),
        "source": asked.asked.name,
        "preview": asked.preview,
        "zone": None if asked.asked.zone is None else str(asked.asked.zone),
        "tables": [_table_words(reading, filled) for reading in readings],
        "drifts": drifts,
        "warnings": warnings,
    }
    _tell(told, readings, drifts, warnings)
    for station, values in filled.items():
        fields = ", ".join(f"{name} {value}" for name, value in values.items())
        told.say(
            tr("Station '{station}' had these fields empty, the text fills them: {fields}").format(
                station=station, fields=fields
            )
        )

    def report(added: Added) -> None:
        if asked.report is not None:
            write_report(asked.report, {**content, "layers": _counts(added)})

    if asked.preview:
        nothing = Added(written=Counter(), already_there=Counter())
        report(nothing)
        told.progress(100.0)  # which ends the line of figures on a console
        told.say(tr("Preview: {count} rows understood, nothing written").format(count=len(rows)))
        return nothing
    added = append_to_plan(
        asked.plan,
        rows,
        fills=stations.fills,
        is_cancelled=told.is_cancelled,
        progress=told.between(0.0, 100.0),
        before_commit=report,
    )
    told.progress(100.0)
    if filled:
        names = ", ".join(filled)
        told.say(
            tr("1 station filled in: {names}").format(names=names)
            if len(filled) == 1
            else tr("{count} stations filled in: {names}").format(count=len(filled), names=names)
        )
    told.say(
        tr("{written} rows written, {there} were there already").format(
            written=sum(added.written.values()), there=sum(added.already_there.values())
        )
    )
    return added


def text_of_file(path: Path) -> tuple[str, tuple[str, ...]]:
    """The text of a file, and a warning where its letters are not those of UTF-8; SwimPlanError where it is none."""
    try:
        data = path.read_bytes()
    except OSError as error:
        raise SwimPlanError(
            asked=tr("The file {path} cannot be read ({why})").format(path=path, why=error.strerror),
            remedy=tr("Choose another file"),
        ) from error
    encoding = "utf-16" if data[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8-sig"
    try:
        return data.decode(encoding), ()
    except UnicodeDecodeError:
        pass
    if b"\x00" in data:
        raise SwimPlanError(
            asked=tr("The file {path} is no text").format(path=path),
            allowed=tr("Text and CSV files are read"),
            remedy=tr("Save the table as CSV"),
        )
    return data.decode("latin-1"), (
        tr("{name} is not UTF-8: its letters were read as Latin 1.").format(name=path.name),
    )


def _check_keys(tables: dict[str, Any], rows: list[TextPlanRow], name: str) -> None:
    """A row that contradicts one of the plan or of the text is refused, so that no time says two things."""
    for layer, fields in KEYS.items():
        mine = [row for row in rows if row.layer == layer]
        if not mine:
            continue
        held = {tuple(row.values[field] for field in fields): row.values for row in tables[layer].rows()}
        seen: dict[tuple, int] = {}
        for row in mine:
            key = tuple(row.values[field] for field in fields)
            words = ", ".join(str(part) for part in key)
            if key in seen:
                raise BadInputError(
                    layer=name,
                    row=row.line,
                    value=words,
                    allowed=tr("Row {number} says something for it already").format(number=seen[key]),
                    remedy=tr("Delete one of them"),
                )
            seen[key] = row.line
            if key in held and any(held[key][field] != value for field, value in row.values.items()):
                raise BadInputError(
                    layer=name,
                    row=row.line,
                    value=words,
                    allowed=tr("The plan's {layer} has other figures for it").format(layer=layer),
                    remedy=tr("Delete them there, or name the station otherwise"),
                )
        check_second_reading(layer, held.values(), [(row.line, row.values) for row in mine], name)


def _table_words(reading: StreamReading, filled: dict[str, dict[str, Any]]) -> dict[str, Any]:
    """What one table gave, for the report; ``filled`` are the fields it filled of stations that the plan had."""
    reasons: dict[str, list[int]] = {}
    for number, reason in reading.skipped:
        reasons.setdefault(reason, []).append(number)
    return {
        "form": reading.form,
        "station": reading.station.get("station"),
        "separator": reading.separator,
        "clock": reading.clock or None,
        "columns": list(reading.columns),
        "rows": len(reading.rows),
        "first_rows": [_plain(row) for row in reading.rows[:SHOWN_ROWS]],
        "skipped": [{"reason": reason, "rows": rows} for reason, rows in reasons.items()],
        "filled": filled.get(reading.station.get("station", ""), {}),
        "notes": list(reading.notes),
    }


def _plain(row: TextPlanRow) -> dict[str, Any]:
    values = {key: value.isoformat() if hasattr(value, "isoformat") else value for key, value in row.values.items()}
    return {"row": row.line, "layer": row.layer, **values}


def _counts(added: Added) -> dict[str, dict[str, int]]:
    layers = sorted({*added.written, *added.already_there})
    return {name: {"written": added.written[name], "already_there": added.already_there[name]} for name in layers}


def _table_line(reading: StreamReading) -> str:
    station, parted = reading.station.get("station"), separator_words(reading.separator) or "-"
    if station:
        return tr("Table of station {station}: form {form}, {count} rows, parted by {parted}").format(
            station=station, form=reading.form, count=len(reading.rows), parted=parted
        )
    return tr("Table: form {form}, {count} rows, parted by {parted}").format(
        form=reading.form, count=len(reading.rows), parted=parted
    )


def _tell(told: Told, readings: list[StreamReading], drifts: list[dict[str, Any]], warnings: list[str]) -> None:
    for reading in readings:
        told.say(_table_line(reading))
        if reading.clock:
            told.say("  " + tr("clock of the times: {clock}").format(clock=reading.clock))
        for column in reading.columns:
            told.say("  " + tr("{column}: taken for {role}").format(column=column["column"], role=column["taken_for"]))
        for row in reading.rows[:SHOWN_ROWS]:
            told.say("  " + ", ".join(f"{key} {value}" for key, value in _plain(row).items()))
        for number, reason in reading.skipped:
            told.say("  " + tr("row {number} skipped: {reason}").format(number=number, reason=reason))
    for drift in drifts:
        told.say(drift["words"])
    for warning in warnings:
        told.warn(warning)
