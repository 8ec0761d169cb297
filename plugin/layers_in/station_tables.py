"""The tables that stream stations draw on, gathered by station and by port."""

from __future__ import annotations

from collections import defaultdict

import numpy as np

from ..core.clock import PlanClock
from ..core.errors import SwimPlanError
from ..core.quantities import m_s_from_knots
from ..core.water.coefficients import DayCoefficients
from ..core.water.tide import TideTable
from ..core.water.wind_drift import WindTable
from ..words import tr
from .table import Table, TableRow
from .tides_in import check_times

NOTHING = float("nan")
# Tables of which each row belongs to a station, and whether a station says one thing at one time in it.
BY_STATION = {"stream_rates": False, "stream_events": True, "stream_series": True, "stream_constants": False}


class StationTables:
    """Rows of the stream tables by station, tides by port, winds, and the clock they are reckoned by.

    BadInputError for a row whose station is not there, for a station given twice, and for two rows at one time.
    """

    def __init__(
        self, tables: dict[str, Table], tides: dict[str, TideTable], clock: PlanClock, warnings: list[str]
    ) -> None:
        self.tables, self.tides, self.clock, self.warnings = tables, tides, clock, warnings
        self.stations = tables.get("stream_stations")
        self.rows = list(self.stations.rows()) if self.stations else []
        self._groups = {name: _grouped(tables.get(name), "station") for name in BY_STATION}
        self._check_names()
        for name, timed in BY_STATION.items():
            if timed:
                check_times(tables.get(name), self._groups[name])

    def of(self, table: str, station: str) -> list[TableRow]:
        """The rows of a table that belong to the station."""
        return self._groups[table].get(station, [])

    def coefficients(self, port: str) -> DayCoefficients:
        """The tide coefficients of the port; rows without a port count for every port without its own.

        A station without a port takes those of the only port there is.
        """
        table = self.tables.get("tide_coefficients")
        groups = _grouped(table, "port")
        check_times(table, groups)
        rows = groups.get(port) or groups.get("", [])
        if not rows and not port and len(groups) == 1:
            rows = next(iter(groups.values()))
        return DayCoefficients(
            port=port,
            times_s=self.clock.seconds_of([row.values["time"] for row in rows]),
            coefficients=np.array([row.values["coefficient"] for row in rows], dtype=float),
        )

    def winds(self) -> WindTable:
        """The winds of the plan."""
        table = self.tables.get("winds")
        rows = list(table.rows()) if table else []
        check_times(table, {tr("the winds"): rows})
        return WindTable(
            times_s=self.clock.seconds_of([row.values["time"] for row in rows]),
            from_deg=np.array([or_nan(row.values["from_deg"]) for row in rows], dtype=float),
            speed_m_s=m_s_from_knots(np.array([or_nan(row.values["speed_kn"]) for row in rows], dtype=float)),
        )

    def tide_of(self, row: TableRow, *, needed: bool) -> TideTable | None:
        """The tide of the station's port, or of the only port; a warning where it is ``needed`` and lacking."""
        port = row.values["port"] or ""
        if port in self.tides:
            return self.tides[port]
        if not port and len(self.tides) == 1:
            return next(iter(self.tides.values()))
        if needed:
            self.warnings.append(
                tr(
                    "Stream station '{station}' counts its hours from the tides of {port}, and the tides table "
                    "does not have them: its stream is unknown."
                ).format(station=row.values["station"], port=port or tr("a port that is not named"))
            )
        return None

    def refused(self, row: TableRow, field: str, allowed: str, remedy: str) -> SwimPlanError:
        """The error for a value of a row of stream_stations."""
        return self.stations.refused(row.number, field, row.values[field], allowed, remedy)

    def need(self, row: TableRow, *fields: str) -> list[float]:
        """The numbers of the fields, each of which the station's form needs; BadInputError for an empty one."""
        for field in fields:
            if row.values[field] is None:
                raise self.refused(
                    row,
                    field,
                    tr("A station of the form '{form}' needs it").format(form=row.values["form"]),
                    tr("Fill it in: empty is not 0"),
                )
        return [float(row.values[field]) for field in fields]

    def _check_names(self) -> None:
        """A row without its station, or a station given twice, is a slip that must not pass for missing stream."""
        names = [row.values["station"] for row in self.rows]
        for key, found in self._groups.items():
            for name in sorted(set(found) - set(names)):
                raise self.tables[key].refused(
                    found[name][0].number,
                    "station",
                    name,
                    tr("Its station must be in stream_stations, which has {names}").format(
                        names=", ".join(names) or tr("no rows")
                    ),
                    tr("Correct the name or add the station"),
                )
        for name in names:
            if names.count(name) > 1:
                raise self.stations.refused(
                    None, "station", name, tr("A station's name stands once"), tr("Rename or delete one of them")
                )


def or_nan(value: float | None) -> float:
    """The number, NaN for an empty field."""
    return NOTHING if value is None else float(value)


def _grouped(table: Table | None, key: str) -> dict[str, list[TableRow]]:
    found = defaultdict(list)
    for row in table.rows() if table else ():
        found[row.values[key] or ""].append(row)
    return found
