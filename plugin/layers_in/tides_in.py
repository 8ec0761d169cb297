"""Tides of a plan as tables of heights, by port."""

from __future__ import annotations

from collections import defaultdict
from datetime import datetime

import numpy as np

from ..core.clock import PlanClock
from ..core.errors import SwimPlanError
from ..core.water.tide import HW, TideTable
from .table import Table, TableRow

NOTHING = float("nan")


def tides_from(table: Table | None, clock: PlanClock) -> dict[str, TideTable]:
    """The tide table of each port, by the port's name; rows without a port belong to the port ''."""
    ports = defaultdict(list)
    for row in table.rows() if table else ():
        ports[row.values["port"] or ""].append(row)
    check_times(table, ports)
    return {port: _tide(table, port, rows, clock) for port, rows in ports.items()}


def _tide(table: Table, port: str, rows: list[TableRow], clock: PlanClock) -> TideTable:
    try:
        return TideTable(
            port=port or "the plan",
            times_s=clock.seconds_of([row.values["time"] for row in rows]),
            heights_m=np.array([NOTHING if row.values["height_m"] is None else row.values["height_m"] for row in rows]),
            is_high=np.array([row.values["kind"] == HW for row in rows]),
        )
    except SwimPlanError as error:
        raise SwimPlanError(
            asked=f"Layer '{table.name}': {error.asked}", allowed=error.allowed, remedy=error.remedy
        ) from error


def tide_for_heights(tides: dict[str, TideTable], asked_port: str, warnings: list[str]) -> TideTable | None:
    """The table whose heights hold for the marks: the port that the settings name, or the only one."""
    if asked_port and asked_port not in tides:
        raise SwimPlanError(
            asked=f"The settings name the port '{asked_port}' for the height of tide",
            allowed=f"The tides table has {', '.join(sorted(tides)) or 'no rows'}",
            remedy="Correct the setting 'port' or add that port's tides",
        )
    if asked_port or len(tides) == 1:
        return tides[asked_port or next(iter(tides))]
    if tides:
        warnings.append(
            f"The tides table has several ports ({', '.join(sorted(tides))}): name one in the setting 'port' to get "
            "depths."
        )
    return None


def check_times(table: Table | None, groups: dict[str, list[TableRow]]) -> None:
    """One port or station says one thing at one time."""
    for name, rows in groups.items():
        first: dict[datetime, TableRow] = {}
        for row in rows:
            other = first.setdefault(row.values["time"], row)
            if other is not row:
                raise table.refused(
                    row.number,
                    "time",
                    f"{row.values['time']:%Y-%m-%d %H:%M:%S} UTC",
                    f"Row {other.number} of '{name}' has the same time",
                    "Delete one of them",
                )
