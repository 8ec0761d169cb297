"""Tides of one port of a plan as CSV that `read_tides` reads back the same."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from ..core.errors import SwimPlanError
from ..core.water.tide import HW
from ..core.water.tide_csv import csv_of
from ..core.water.tide_ports_text import HEIGHTS, MINUTES
from ..core.water.tide_reading import CONSTANTS, EVENTS, SECONDARY, SERIES, ConstantRow, HeightRow, TideReading
from ..words import tr
from .plan_tables import tables_of
from .table import Table
from .whole_text import write_whole_text

FORM_OF = {"events": EVENTS, "series": SERIES, "harmonic": CONSTANTS, "secondary": SECONDARY}
LAYER_OF = {EVENTS: "tides", SERIES: "tide_series", CONSTANTS: "tide_constants", SECONDARY: "tide_ports"}


def export_tides(plan: Path, path: Path, port: str, form: str) -> int:
    """Write the tides of a port as CSV, whole or not at all; returns the rows written.

    ``port`` "" stands for the only one; ``form`` "" for the one the plan gives it in. SwimPlanError where the plan has
    no such tides or several ports and none is named, and where the file cannot be written.
    """
    reading = reading_of_plan(plan, port, form)
    write_whole_text(path, csv_of(reading), what=tr("file"), parameter="EXPORT")
    return reading.count


def reading_of_plan(plan: Path, port: str, form: str) -> TideReading:
    """The tides of a port as they would be read from a table."""
    tables = tables_of(plan, {}, [])
    rows = {name: _values(tables.get(name)) for name in LAYER_OF.values()}
    ports = {one["port"]: one for one in rows["tide_ports"]}
    named = sorted({one["port"] or "" for values in rows.values() for one in values})
    chosen = port or (named[0] if len(named) == 1 else None)
    if chosen is None or chosen not in named:
        raise SwimPlanError(
            asked=tr("Asked for the tides of port '{port}'").format(port=port) if port else tr("No port was named"),
            allowed=tr("The plan has tides of {ports}").format(ports=", ".join(named))
            if named
            else tr("The plan has tides of no port"),
            remedy=tr("Name one of them in PORT"),
        )
    filled = [one for one in (EVENTS, SERIES, CONSTANTS) if _of_port(rows[LAYER_OF[one]], chosen)]
    form = form or (FORM_OF[ports[chosen]["form"]] if chosen in ports else filled[0])
    mine = _of_port(rows[LAYER_OF[form]], chosen)
    if not mine:
        raise SwimPlanError(
            asked=tr("Asked for the {form} of port '{chosen}'").format(form=form, chosen=chosen),
            allowed=tr("The plan has none in {layer}").format(layer=LAYER_OF[form]),
            remedy=tr("Choose another FORM"),
        )
    return _reading(form, mine, ports.get(chosen, {}))


def _values(table: Table | None) -> list[dict[str, Any]]:
    return [row.values for row in table.rows()] if table else []


def _of_port(values: list[dict[str, Any]], port: str) -> list[dict[str, Any]]:
    return [one for one in values if (one["port"] or "") == port]


def _reading(form: str, mine: list[dict[str, Any]], port: dict[str, Any]) -> TideReading:
    if form == CONSTANTS:
        constants = tuple(
            ConstantRow(
                row=n, constituent=one["constituent"], amplitude_m=one["amplitude_m"], phase_deg=one["phase_deg"]
            )
            for n, one in enumerate(mine, start=1)
        )
        return TideReading(form=form, constants=constants, mean_level_m=port.get("datum_offset_m"))
    if form == SECONDARY:
        names = ("port", "reference_port", *MINUTES, *HEIGHTS)
        return TideReading(form=form, secondary=tuple({n: one[n] for n in names if one[n] is not None} for one in mine))
    heights = tuple(
        HeightRow(
            row=number,
            time=one["time"],
            height_m=one["height_m"],
            is_high=one["kind"] == HW if form == EVENTS else None,
        )
        for number, one in enumerate(sorted(mine, key=lambda one: one["time"]), start=1)
    )
    return TideReading(form=form, heights=heights)
