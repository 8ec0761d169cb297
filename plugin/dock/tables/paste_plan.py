"""What a pasted table would do, before it does anything: the rows it makes and changes, and those that are refused."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from ...core.errors import SwimPlanError
from ...core.text_moments import ORDERS, dates_in, is_clock, moment_parts
from ...words import tr
from .cell_text import Column, value_of
from .cell_words import short
from .clipboard_table import ClipboardTable
from .headings import Matched, by_headings, by_place

# The field by which the rows of a table belong together: where it is not pasted, the rows there say it.
KEYS = ("port", "station", "channel", "session")
MOSTLY = 0.8


@dataclass(frozen=True, kw_only=True)
class PastedRow:
    """One row: its line in the text, the row it changes (None: it makes one), its values, and why it is refused."""

    line: int
    fid: int | None
    values: Mapping[str, Any]
    refusals: tuple[str, ...] = ()


@dataclass(frozen=True, kw_only=True)
class PastePlan:
    """All rows of a paste; ``refused`` says why none of it can be taken, ``notes`` what might be meant otherwise,
    ``belongs`` which port or station new rows are of where the paste does not say it."""

    rows: tuple[PastedRow, ...]
    columns: tuple[Column | None, ...]
    has_headings: bool = False
    refused: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    belongs: str = ""

    @property
    def good(self) -> list[PastedRow]:
        """The rows that can be taken."""
        return [] if self.refused else [row for row in self.rows if not row.refusals]

    @property
    def bad(self) -> list[PastedRow]:
        """The rows that cannot."""
        return [row for row in self.rows if row.refusals]


@dataclass(frozen=True, kw_only=True)
class PasteTarget:
    """The table that is pasted into: its columns, the ids of its rows as they are shown, their values, whether it can
    grow, and the cell that is current (row -1: none)."""

    columns: tuple[Column, ...]
    fids: tuple[int, ...]
    values: Mapping[int, Mapping[str, Any]]
    can_grow: bool = True
    row: int = -1
    column: int = 0


def plan_paste(table: ClipboardTable, target: PasteTarget, *, over: bool | None = None) -> PastePlan:
    """What the paste does. ``over`` writes over the rows from the current cell on, otherwise rows are added at the end;
    None: over them for cells without headings, added for a table with headings.

    An empty row empties the cells that it goes over and makes no new row."""
    rows, lines, note = _from_headings(table, target.columns)
    matched = by_headings(target.columns, rows[0])
    has_headings = matched is not None
    if has_headings:
        rows, lines = rows[1:], lines[1:]
    else:
        matched = by_place(target.columns, target.column, len(rows[0]))
    over = target.row >= 0 and (not has_headings if over is None else over)
    fids = target.fids[target.row :] if over else ()
    orders = [_order(column, [row[place] for row in rows]) for place, column in enumerate(matched.columns)]
    fill, belongs = _missing_keys(target, matched.columns)
    made = []
    for place, (line, cells) in enumerate(zip(lines, rows)):
        fid = fids[place] if place < len(fids) else None
        if fid is None and not any(cells):
            continue
        made.append(_row(line, fid, cells, matched, orders, {} if fid is not None else fill, target))
    notes = [table.note, note, *matched.notes]
    return PastePlan(
        rows=tuple(made),
        columns=matched.columns,
        has_headings=has_headings,
        refused=matched.refused,
        notes=tuple(filter(None, notes)),
        belongs=belongs if any(row.fid is None for row in made) else "",
    )


def _from_headings(table: ClipboardTable, columns: Sequence[Column]) -> tuple[list[list[str]], tuple[int, ...], str]:
    """Rows of one width and their lines, without the empty ones above a row of headings; and a note."""
    width = max(len(row) for row in table.rows)
    filled = [_filled(row, width) for row in table.rows]
    first = next(place for place, row in enumerate(filled) if any(row))
    rows, note = _joined_moments(filled[first:])
    if by_headings(columns, rows[0]) is not None:
        return rows, table.lines[first:], note
    empty = [[""] * len(rows[0]) for _ in range(first)]
    return [*empty, *rows], table.lines, note


def _filled(row: Sequence[str], width: int) -> list[str]:
    return [*row, *[""] * (width - len(row))]


def _row(
    line: int,
    fid: int | None,
    cells: Sequence[str],
    matched: Matched,
    orders: Sequence[str],
    fill: Mapping[str, Any],
    target: PasteTarget,
) -> PastedRow:
    new = {one.field.name: one.field.default for one in target.columns if one.field.default is not None}
    values = {**new, **fill} if fid is None else {}
    refusals = []
    if fid is None and not target.can_grow:
        refusals.append(tr("There is no such row, and rows of this table are drawn on the map."))
    for column, zone, order, text in zip(matched.columns, matched.zones, orders, cells):
        if column is None or (not text and fid is None and column.field.default is not None):
            continue
        try:
            values[column.field.name] = value_of(column, text, zone=zone, order=order)
        except SwimPlanError as error:
            refusals.append(f"{column.title}: {error}")
    return PastedRow(line=line, fid=fid, values=values, refusals=tuple(refusals))


def _order(column: Column | None, texts: Sequence[str]) -> str:
    """How the dates of a pasted column are written, where all of them can be read in one way only; else ""."""
    if column is None or column.field.kind != "datetime":
        return ""
    left = set(ORDERS)
    for parts in filter(None, map(moment_parts, texts)):
        left &= dates_in(parts[0]).keys()
    return left.pop() if len(left) == 1 else ""


def _joined_moments(rows: Sequence[Sequence[str]]) -> tuple[list[list[str]], str]:
    """Dates and times of day that stand in two columns beside each other become one, heading and all; and a note."""
    data = rows[1:] or rows
    for place in range(len(rows[0]) - 1):
        if _mostly(data, place, dates_in) and _mostly(data, place + 1, is_clock):
            joined = [[*row[:place], f"{row[place]} {row[place + 1]}".strip(), *row[place + 2 :]] for row in rows]
            return joined, tr("Dates and times of day stand in two columns and are taken together.")
    return [list(row) for row in rows], ""


def _mostly(rows: Sequence[Sequence[str]], place: int, is_one) -> bool:  # noqa: ANN001  (a test of a text)
    filled = [row[place] for row in rows if row[place]]
    return bool(filled) and sum(bool(is_one(text)) for text in filled) >= MOSTLY * len(filled)


def _missing_keys(target: PasteTarget, columns: Sequence[Column | None]) -> tuple[dict[str, Any], str]:
    """What new rows belong to where that is not pasted: as in the current row, else as in all rows there are."""
    pasted = {column.field.name for column in columns if column is not None}
    column = next((one for one in target.columns if one.field.name in KEYS and one.field.name not in pasted), None)
    if column is None or not target.fids:
        return {}, ""
    name = column.field.name
    if target.row >= 0:
        known = {target.values[target.fids[target.row]][name]}
    else:
        known = {values[name] for values in target.values.values()}
    if len(known) != 1 or None in known:
        return {}, ""
    (value,) = known
    return {name: value}, tr("{}: '{}', as in the rows there.").format(column.title, short(str(value)))
