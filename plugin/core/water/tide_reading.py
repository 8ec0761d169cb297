"""What a reading of a table of tides gave: its rows, and how everything in it was taken."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime, tzinfo
from typing import Any

from ..clock import UTC
from ..words import spoken, tr
from .tide import HW, LW

# The international foot, by definition since 1959.
METRES_PER = {"m": 1.0, "dm": 0.1, "cm": 0.01, "mm": 0.001, "ft": 0.3048}
FIRST_ROWS = 8
EVENTS, SERIES, CONSTANTS, SECONDARY = "events", "series", "constants", "secondary"


@dataclass(frozen=True, kw_only=True)
class TidesAsked:
    """How a table is to be read; what is "" is told from the table, and refused where that leaves a choice.

    ``form`` one of events, series, constants, secondary; ``zone`` an IANA name or fixed offset; ``units`` m or ft;
    ``date_order`` dmy, mdy or ymd; ``columns`` roles from the left, parted by commas; ``name`` for messages.
    """

    form: str = ""
    zone: str = ""
    units: str = ""
    date_order: str = ""
    columns: str = ""
    name: str = field(default_factory=lambda: tr("the pasted text"))


@dataclass(frozen=True, kw_only=True)
class HeightRow:
    """A height read from a row: moment in UTC, metres, and whether it is a high water (None in a series)."""

    row: int
    time: datetime
    height_m: float
    is_high: bool | None = None


@dataclass(frozen=True, kw_only=True)
class ConstantRow:
    """One constituent of a row: its standard name, amplitude in metres and Greenwich phase lag in UTC."""

    row: int
    constituent: str
    amplitude_m: float
    phase_deg: float


@dataclass(frozen=True, kw_only=True)
class Skipped:
    """A row that was left out, and why, as a marked text."""

    row: int
    reason: str


@dataclass(frozen=True, kw_only=True)
class TideReading:
    """Everything read from one table; which of the lists is filled depends on ``form``.

    ``mean_level_m`` is Z0 where constants give it. ``secondary`` holds one record of the plan's tide_ports for each
    port. ``taken`` says of each column, or of the whole table, what it was taken for. ``zone`` shows the first rows.
    """

    form: str
    heights: tuple[HeightRow, ...] = ()
    constants: tuple[ConstantRow, ...] = ()
    mean_level_m: float | None = None
    secondary: tuple[dict[str, Any], ...] = ()
    taken: dict[str, Any] = field(default_factory=dict)
    skipped: tuple[Skipped, ...] = ()
    warnings: tuple[str, ...] = ()
    zone: tzinfo = UTC

    @property
    def count(self) -> int:
        """Rows that can be written."""
        return len(self.heights) + len(self.constants) + len(self.secondary)

    def preview(self) -> dict[str, Any]:
        """How the table was taken, its first rows as read, what was skipped with row numbers, and warnings."""
        return {
            "form": self.form,
            "taken": self.taken,
            "rows": self.count,
            "first_rows": self._first_rows(),
            "skipped": skipped_by_reason(self.skipped),
            "warnings": list(self.warnings),
        }

    def _first_rows(self) -> list[dict[str, Any]]:
        if self.heights:
            return [self._shown(row) for row in self.heights[:FIRST_ROWS]]
        if self.constants:
            return [
                {
                    "row": one.row,
                    "constituent": one.constituent,
                    "amplitude_m": round(one.amplitude_m, 4),
                    "phase_deg": round(one.phase_deg, 2),
                }
                for one in self.constants[:FIRST_ROWS]
            ]
        return [dict(one) for one in self.secondary[:FIRST_ROWS]]

    def _shown(self, row: HeightRow) -> dict[str, Any]:
        shown = {
            "row": row.row,
            "local_time": row.time.astimezone(self.zone).isoformat(),
            "time": f"{row.time:%Y-%m-%dT%H:%M:%SZ}",
            "height_m": round(row.height_m, 4),
        }
        return shown if row.is_high is None else {**shown, "kind": HW if row.is_high else LW}


def skipped_by_reason(skipped: Sequence[Skipped]) -> list[dict[str, Any]]:
    """Each reason with its count and the numbers of its rows, runs of them as first-last."""
    counts = Counter(one.reason for one in skipped)
    return [
        {
            "reason": spoken(reason),
            "count": count,
            "rows": row_runs([one.row for one in skipped if one.reason == reason]),
        }
        for reason, count in counts.items()
    ]


def row_runs(rows: Sequence[int]) -> str:
    """Row numbers in few characters: 3, 7-12."""
    runs: list[list[int]] = []
    for row in sorted(set(rows)):
        if runs and row == runs[-1][1] + 1:
            runs[-1][1] = row
        else:
            runs.append([row, row])
    return ", ".join(str(first) if first == last else f"{first}-{last}" for first, last in runs)
