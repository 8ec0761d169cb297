"""Tides of one port as CSV that says its zone, units and columns in its headings, and reads back the same."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence
from datetime import datetime

from ..clock import UTC
from .tide import HW, LW
from .tide_ports_text import HEIGHTS, MINUTES
from .tide_reading import CONSTANTS, EVENTS, SECONDARY, TideReading


def csv_of(reading: TideReading) -> str:
    """The rows of a reading as CSV: times in UTC, heights in metres, phases of Greenwich, differences as kept."""
    rows = {CONSTANTS: _constants, SECONDARY: _secondary, EVENTS: _events}.get(reading.form, _series)(reading)
    text = io.StringIO()
    csv.writer(text, lineterminator="\n").writerows(rows)
    return text.getvalue()


def _events(reading: TideReading) -> Iterable[Sequence[object]]:
    yield "Time (UTC)", "Height (m)", "High/low"
    for row in reading.heights:
        yield _time(row.time), _number(row.height_m), HW if row.is_high else LW


def _series(reading: TideReading) -> Iterable[Sequence[object]]:
    yield "Time (UTC)", "Height (m)"
    for row in reading.heights:
        yield _time(row.time), _number(row.height_m)


def _constants(reading: TideReading) -> Iterable[Sequence[object]]:
    yield "Constituent", "Amplitude (m)", "Phase (deg, Greenwich)"
    if reading.mean_level_m is not None:
        yield "Z0", _number(reading.mean_level_m), ""
    for row in reading.constants:
        yield row.constituent, _number(row.amplitude_m), _number(row.phase_deg)


def _secondary(reading: TideReading) -> Iterable[Sequence[object]]:
    names = ("port", "reference_port", *MINUTES, *HEIGHTS)
    yield names
    for record in reading.secondary:
        values = (record.get(name) for name in names)
        yield ["" if value is None else value if isinstance(value, str) else _number(value) for value in values]


def _time(moment: datetime) -> str:
    return f"{moment.astimezone(UTC):%Y-%m-%dT%H:%M:%SZ}"


def _number(value: float) -> str:
    """All digits, and never an exponent, which no reader of tables expects."""
    return f"{value:.10f}".rstrip("0").rstrip(".")
