"""Which stream stations of the plan have no rates yet, and the rows that their tables begin with."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from ..layers_in.copied_source import CopiedSource

# Where the rates of a station are typed, by its form; the rows of the other forms hold them whole.
TABLE_OF_FORM = {
    "hourly": "stream_rates",
    "coefficients": "stream_rates",
    "constant": "stream_rates",
    "events": "stream_events",
    "series": "stream_series",
    "harmonic": "stream_constants",
}
# What of a row of such a table says how strong the stream is.
RATES = {
    "stream_rates": ("spring_kn", "neap_kn"),
    "stream_events": ("rate_kn",),
    "stream_series": ("rate_kn",),
    "stream_constants": ("u_amplitude_m_s", "v_amplitude_m_s"),
}
HOURS = tuple(range(-6, 7))


@dataclass(frozen=True, kw_only=True)
class Rateless:
    """A station whose stream is not known, since its ``table`` has no rate of it."""

    station: str
    form: str
    table: str


def rateless_stations(copies: Mapping[str, CopiedSource]) -> list[Rateless]:
    """The stations without a rate, the one drawn last first."""
    stations = copies.get("stream_stations")
    if stations is None:
        return []
    rows = [(row["station"], row["form"]) for row in stations.getFeatures()]
    wanted = [
        Rateless(station=name, form=form, table=TABLE_OF_FORM[form])
        for name, form in reversed(rows)
        if isinstance(name, str) and name and form in TABLE_OF_FORM
    ]
    with_rates = {table: _with_rates(table, copies.get(table)) for table in {one.table for one in wanted}}
    return [one for one in wanted if one.station not in with_rates[one.table]]


def _with_rates(table: str, rows: CopiedSource | None) -> set[str]:
    """The stations of which a table has a rate."""
    columns = [name for name in RATES[table] if rows is not None and rows.fields().indexOf(name) >= 0]
    features = rows.getFeatures() if columns else ()
    return {row["station"] for row in features if any(isinstance(row[name], (int, float)) for name in columns)}


def first_rows(one: Rateless) -> list[dict[str, Any]]:
    """The rows to begin a station's table with; every rate is empty, which means that it is not known."""
    if one.table != "stream_rates":
        return [{"station": one.station}]
    hours = (0,) if one.form == "constant" else HOURS
    return [{"station": one.station, "hour": hour} for hour in hours]
