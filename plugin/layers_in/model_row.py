"""One row of the table of stream models: which file, which part of it, and when it begins where it does not say so."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from ..core.errors import BadInputError
from ..words import tr
from .table import Table, TableRow

MOST_NAMED = 12


@dataclass(frozen=True, kw_only=True)
class ModelRow:
    """A row as its reader needs it. ``path`` and ``v_path`` are absolute; texts are empty where nothing is given."""

    table: Table
    number: int
    name: str
    kind: str
    path: Path
    group: str
    v_path: Path | None
    v_group: str
    crs: str
    start: datetime | None
    step_s: float | None

    @classmethod
    def of(cls, table: Table, row: TableRow, folder: Path | None) -> ModelRow:
        """The row with its paths made absolute from the plan's folder; BadInputError where a file is not there."""
        values = row.values
        v_path = values["v_path"]
        return cls(
            table=table,
            number=row.number,
            name=values["model"],
            kind=values["kind"],
            path=_file(table, row, "path", folder),
            group=values["group"] or "",
            v_path=_file(table, row, "v_path", folder) if v_path else None,
            v_group=values["v_group"] or "",
            crs=values["crs"] or "",
            start=values["start"],
            step_s=None if values["step_min"] is None else 60.0 * values["step_min"],
        )

    def refused(self, field: str, value: object, allowed: str, remedy: str) -> BadInputError:
        """The error for what this row names."""
        return self.table.refused(self.number, field, value, allowed, remedy)


def listed(names: list[str]) -> str:
    """Names for a sentence, not too many of them."""
    shown = [f"'{name}'" for name in names[:MOST_NAMED]]
    if len(names) > MOST_NAMED:
        shown.append(tr("{count} more").format(count=len(names) - MOST_NAMED))
    return ", ".join(shown) or tr("none")


def _file(table: Table, row: TableRow, field: str, folder: Path | None) -> Path:
    path = Path(row.values[field]).expanduser()
    if not path.is_absolute() and folder is not None:
        path = folder / path
    if not path.is_file():
        raise table.refused(
            row.number,
            field,
            row.values[field],
            tr("There is no such file; looked for {path}").format(path=path),
            tr("Correct the path: it is absolute, or counted from the plan's own folder"),
        )
    return path
