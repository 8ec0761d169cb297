"""Tides of a plan as tables of heights, by port, whatever form each port's tide is given in."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping
from datetime import datetime

import numpy as np

from ..core.clock import PlanClock
from ..core.errors import SwimPlanError
from ..core.water.harmonics import TidalSum, table_of_constants
from ..core.water.secondary_port import Differences, MeanLevels, SecondaryPort
from ..core.water.tide import HW, TideTable
from ..core.water.tide_series import table_of_series
from ..words import tr
from .table import Table, TableRow

NOTHING = float("nan")
PREDICTED_DAYS = 16.0  # before and after the plan's start: springs and neaps are both in it, and a fortnight of windows
SECONDS_PER_DAY = 86400.0


def tides_from(tables: Mapping[str, Table], clock: PlanClock, warnings: list[str]) -> dict[str, TideTable]:
    """The tide table of each port, by the port's name; rows without a port belong to the port ''.

    Tables used: tides, tide_ports, tide_series, tide_constants. A port without a row in tide_ports takes the form that
    it has rows for, high and low waters first. A port whose form has no rows is left out, with a warning.
    """
    return _PortTides(tables, clock, warnings).by_port()


class _PortTides:
    """Rows of the tide tables by port, and the tables made of them."""

    def __init__(self, tables: Mapping[str, Table], clock: PlanClock, warnings: list[str]) -> None:
        self._tables, self._clock, self._warnings = tables, clock, warnings
        self._waters, self._series, self._constants = (
            _by_port(tables.get(name)) for name in ("tides", "tide_series", "tide_constants")
        )
        for name, rows in (("tides", self._waters), ("tide_series", self._series)):
            check_times(tables.get(name), rows)
        self._ports = self._port_rows()

    def by_port(self) -> dict[str, TideTable]:
        makers: dict[str, Callable[[str], TideTable | None]] = {
            "events": self._of_waters,
            "series": self._of_series,
            "harmonic": self._of_constants,
        }
        names = dict.fromkeys([*self._waters, *self._series, *self._constants, *self._ports])
        self._warn_of_unused(names)
        made: dict[str, TideTable] = {}
        for port in names:
            if self._form(port) != "secondary":
                self._put(made, port, makers[self._form(port)](port))
        references = dict(made)
        for port in names:
            if self._form(port) == "secondary":
                self._put(made, port, self._of_reference(port, references))
        return made

    def _put(self, made: dict[str, TideTable], port: str, table: TideTable | None) -> None:
        if table is not None:
            made[port] = table
            return
        self._warnings.append(
            tr(
                "The tide of port '{port}' is given as {form}, and the plan has no rows for it: its tide is unknown."
            ).format(port=port, form=self._form(port))
        )

    def _warn_of_unused(self, names: Iterable[str]) -> None:
        for port in names:
            if port in self._waters and self._form(port) in ("harmonic", "secondary"):
                self._warnings.append(
                    tr("Port '{port}' is given as {form} in tide_ports: its rows in tides are not used.").format(
                        port=port, form=self._form(port)
                    )
                )

    def _form(self, port: str) -> str:
        if port in self._ports:
            return self._ports[port].values["form"]
        if port in self._waters:
            return "events"
        return "series" if port in self._series else "harmonic"

    def _port_rows(self) -> dict[str, TableRow]:
        table = self._tables.get("tide_ports")
        found: dict[str, TableRow] = {}
        for row in table.rows() if table else ():
            port = row.values["port"]
            if port in found:
                raise table.refused(
                    row.number,
                    "port",
                    port,
                    tr("Row {number} gives that port").format(number=found[port].number),
                    tr("Delete one of them"),
                )
            found[port] = row
        return found

    def _of_waters(self, port: str) -> TideTable | None:
        rows = self._waters.get(port, [])
        if not rows:
            return None
        return _named(
            self._tables["tides"],
            lambda: TideTable(
                port=port or tr("the plan"),
                times_s=self._times_s(rows),
                heights_m=_heights_m(rows),
                is_high=np.array([row.values["kind"] == HW for row in rows]),
            ),
        )

    def _of_series(self, port: str) -> TideTable | None:
        """The series as the curve; its turns are the waters unless the plan has those of the port too."""
        rows = sorted(self._series.get(port, []), key=lambda row: row.values["time"])
        if not rows:
            return None
        table = _named(
            self._tables["tide_series"],
            lambda: table_of_series(port or tr("the plan"), self._times_s(rows), _heights_m(rows)),
        )
        waters = self._of_waters(port)
        if waters is None:
            return table
        return TideTable(
            port=waters.port,
            times_s=waters.times_s,
            heights_m=waters.heights_m,
            is_high=waters.is_high,
            curve=table.curve,
        )

    def _of_constants(self, port: str) -> TideTable | None:
        rows = self._constants.get(port, [])
        if not rows:
            return None
        values = self._ports[port].values if port in self._ports else {}
        if values.get("datum_offset_m") is None:
            self._warnings.append(
                tr(
                    "The constants of port '{port}' have no mean level above the plan's datum: heights are "
                    "counted from 0."
                ).format(port=port)
            )
        span_s = PREDICTED_DAYS * SECONDS_PER_DAY
        return _named(
            self._tables["tide_constants"],
            lambda: table_of_constants(
                port or tr("the plan"),
                TidalSum(
                    names=tuple(row.values["constituent"] for row in rows),
                    amplitudes=np.array([_or_nan(row.values["amplitude_m"]) for row in rows]),
                    phases_deg=np.array([_or_nan(row.values["phase_deg"]) for row in rows]),
                    start=self._clock.start,
                    mean=values.get("datum_offset_m") or 0.0,
                    latitude_deg=values.get("latitude_deg"),
                ),
                -span_s,
                span_s + self._clock.end_s,
            ),
        )

    def _of_reference(self, port: str, made: Mapping[str, TideTable]) -> TideTable | None:
        row = self._ports[port]
        reference = row.values["reference_port"] or ""
        if reference not in made:
            raise self._tables["tide_ports"].refused(
                row.number,
                "reference_port",
                reference,
                tr("A secondary port refers to one with a tide of its own: {names}").format(
                    names=", ".join(sorted(made)) or tr("there is none")
                ),
                tr("Correct the name or add that port's tides"),
            )
        levels = self._ports[reference].values if reference in self._ports else {}
        return _named(
            self._tables["tide_ports"],
            lambda: SecondaryPort(
                port=port,
                high=_differences(row, "hw"),
                low=_differences(row, "lw"),
                levels=MeanLevels(
                    **{
                        name: _or_nan(levels.get(name))
                        for name in ("high_springs_m", "high_neaps_m", "low_neaps_m", "low_springs_m")
                    }
                ),
            ).table(made[reference]),
        )

    def _times_s(self, rows: list[TableRow]) -> np.ndarray:
        return self._clock.seconds_of([row.values["time"] for row in rows])


def _named(table: Table, make: Callable[[], TideTable]) -> TideTable:
    """What ``make`` makes; its error with the layer's name."""
    try:
        return make()
    except SwimPlanError as error:
        raise SwimPlanError(
            asked=tr("Layer '{layer}'").format(layer=table.name) + f": {error.asked}",
            allowed=error.allowed,
            remedy=error.remedy,
        ) from error


def _differences(row: TableRow, water: str) -> Differences:
    values = row.values
    return Differences(
        springs_min=_or_nan(values[f"{water}_minutes_springs"]),
        neaps_min=_or_nan(values[f"{water}_minutes_neaps"]),
        springs_m=_or_nan(values[f"{water}_height_springs_m"]),
        neaps_m=_or_nan(values[f"{water}_height_neaps_m"]),
    )


def _by_port(table: Table | None) -> dict[str, list[TableRow]]:
    ports = defaultdict(list)
    for row in table.rows() if table else ():
        ports[row.values["port"] or ""].append(row)
    return dict(ports)


def _heights_m(rows: list[TableRow]) -> np.ndarray:
    return np.array([_or_nan(row.values["height_m"]) for row in rows])


def _or_nan(value: float | None) -> float:
    return NOTHING if value is None else float(value)


def tide_for_heights(tides: dict[str, TideTable], asked_port: str, warnings: list[str]) -> TideTable | None:
    """The table whose heights hold for the marks: the port that the settings name, or the only one."""
    if asked_port and asked_port not in tides:
        raise SwimPlanError(
            asked=tr("The settings name the port '{asked_port}' for the height of tide").format(asked_port=asked_port),
            allowed=tr("The plan has tides of {names}").format(names=", ".join(sorted(tides)) or tr("no port")),
            remedy=tr("Correct the setting 'port' or add that port's tides"),
        )
    if asked_port or len(tides) == 1:
        return tides[asked_port or next(iter(tides))]
    if tides:
        warnings.append(
            tr("The tides table has several ports ({names}): name one in the setting 'port' to get depths.").format(
                names=", ".join(sorted(tides))
            )
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
                    tr("Row {number} of '{name}' has the same time").format(number=other.number, name=name),
                    tr("Delete one of them"),
                )
