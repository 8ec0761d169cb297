"""The streams of a plan as a text that can be read again: a part for each station, then the tables that have none."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime
from pathlib import Path
from typing import Any

from ..core.errors import SwimPlanError
from ..plan_package.schema import LAYER_BY_NAME
from ..words import tr
from .plan_tables import tables_of
from .table import Table, TableRow

# By form: the table that holds a station's rows, and for each of its columns the heading and the field.
_RATES = (("hour", "hour"), ("set_deg", "set_deg"), ("spring_kn", "spring_kn"), ("neap_kn", "neap_kn"))
_STATION_TABLES: dict[str, tuple[str, tuple[tuple[str, str], ...]]] = {
    "hourly": ("stream_rates", _RATES),
    "constant": ("stream_rates", _RATES),
    "coefficients": ("stream_rates", (*_RATES[:2], ("rate_at_95_kn", "spring_kn"), ("rate_at_45_kn", "neap_kn"))),
    "events": (
        "stream_events",
        tuple((name, name) for name in ("time", "kind", "rate_kn", "flood_set_deg", "ebb_set_deg")),
    ),
    "series": ("stream_series", tuple((name, name) for name in ("time", "set_deg", "rate_kn"))),
    "harmonic": (
        "stream_constants",
        tuple(
            (name, name) for name in ("constituent", "u_amplitude_m_s", "u_phase_deg", "v_amplitude_m_s", "v_phase_deg")
        ),
    ),
}
_DRIFT = ("time", "lon", "lat", "end_time", "end_lon", "end_lat", "note")


def streams_text(plan: Path, station: str = "") -> str:
    """The text; of one station alone where it is named. SwimPlanError for a station that the plan has not."""
    tables = tables_of(plan, {}, [])
    rows = {name: _rows(tables.get(name)) for name in _names()}
    stations = [row for row in rows["stream_stations"] if station in ("", row.values["station"])]
    if station and not stations:
        names = ", ".join(row.values["station"] for row in rows["stream_stations"])
        raise SwimPlanError(
            asked=tr("The plan has no stream station '{station}'").format(station=station),
            allowed=tr("It has {names}").format(names=names) if names else tr("It has no stream stations"),
            remedy=tr("Correct the name, or leave it out to write all"),
        )
    parts = [_station_part(row, rows) for row in stations]
    parts += _drift_parts([row for row in rows["drifts"] if station in ("", row.values["station"])])
    if not station:
        parts += _port_parts(rows["tide_coefficients"])
        winds = (("time", "time"), ("wind_from_deg", "from_deg"), ("wind_speed_kn", "speed_kn"))
        parts += [_part([("table", "winds")], winds, rows["winds"])] if rows["winds"] else []
    return "\n".join(parts)


def _names() -> tuple[str, ...]:
    own = {table for table, _ in _STATION_TABLES.values()}
    return ("stream_stations", *sorted(own), "drifts", "winds", "tide_coefficients")


def _rows(table: Table | None) -> list[TableRow]:
    return list(table.rows()) if table else []


def _station_part(row: TableRow, rows: dict[str, list[TableRow]]) -> str:
    lon, lat = row.rings[0][0]
    notes = [("station", row.values["station"]), ("lon", repr(float(lon))), ("lat", repr(float(lat)))]
    for field in LAYER_BY_NAME["stream_stations"].fields[1:]:
        value = row.values[field.name]
        if value is not None and value != "":
            notes.append((field.name, _shown(value)))
    table, columns = _STATION_TABLES.get(row.values["form"], ("", ()))
    own = [one for one in rows.get(table, []) if one.values["station"] == row.values["station"]]
    if table == "stream_events":
        own = [_way_said(one) for one in own]
    return _part(notes, columns if own else (), own)


def _way_said(row: TableRow) -> TableRow:
    """An event whose kind says flood or ebb: a stream that runs one way only reads like one with unsigned rates."""
    rate = row.values["rate_kn"]
    if row.values["kind"] != "max" or not rate:
        return row
    return replace(row, values={**row.values, "kind": "max flood" if rate > 0.0 else "max ebb"})


def _drift_parts(rows: list[TableRow]) -> list[str]:
    names = dict.fromkeys(row.values["station"] or "" for row in rows)
    parts = []
    for name in names:
        notes = [("table", "drift")] + ([("station", name)] if name else [])
        own = [row for row in rows if (row.values["station"] or "") == name]
        parts.append(_part(notes, tuple((field, field) for field in _DRIFT), own))
    return parts


def _port_parts(rows: list[TableRow]) -> list[str]:
    parts = []
    for port in dict.fromkeys(row.values["port"] or "" for row in rows):
        notes = [("table", "tide_coefficients")] + ([("port", port)] if port else [])
        own = [row for row in rows if (row.values["port"] or "") == port]
        parts.append(_part(notes, (("time", "time"), ("coefficient", "coefficient")), own))
    return parts


def _part(notes: list[tuple[str, str]], columns: Iterable[tuple[str, str]], rows: list[TableRow]) -> str:
    out = io.StringIO()
    out.writelines(f"# {key}: {value}\n" for key, value in notes)
    writer = csv.writer(out, lineterminator="\n")
    if columns:
        writer.writerow([heading for heading, _ in columns])
        writer.writerows([_shown(row.values[field]) for _, field in columns] for row in rows)
    return out.getvalue()


def _shown(value: Any) -> str:
    """A value as the reader takes it: UTC with Z, the shortest digits that give the same number, one line of text."""
    if value is None:
        return ""
    if isinstance(value, datetime):
        return value.strftime("%Y-%m-%dT%H:%M:%SZ")
    if isinstance(value, float):
        return f"{value:.0f}" if value.is_integer() else f"{value:.10f}".rstrip("0")
    return " ".join(str(value).split())
