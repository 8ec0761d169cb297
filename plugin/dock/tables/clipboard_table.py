"""Text from the clipboard or a file as cells: tabs as a spreadsheet copies them, or CSV with commas or semicolons.

It may be anything: what is too large is refused before it is read, and cells are only ever compared, never worked out.
"""

from __future__ import annotations

import csv
import re
from dataclasses import dataclass
from io import StringIO

from ...core.errors import SwimPlanError
from ...words import tr

MOST_CHARACTERS = 10_000_000
MOST_ROWS = 20_000
MOST_IN_A_LINE = 20_000
MOST_CELLS = 2_000_000  # rows times the widest of them: short rows are filled up to it
_ONE_DECIMAL = re.compile(r"^\s*[+-]?\d+,\d+\s*$")


@dataclass(frozen=True, kw_only=True)
class ClipboardTable:
    """Rows of cells as text, trimmed; each with its line, counted from 1. ``note`` says what was a matter of choice.

    An empty line between others is a row of empty cells: what stands below it keeps its place.
    """

    rows: tuple[tuple[str, ...], ...]
    lines: tuple[int, ...]
    note: str = ""


def table_in(text: str) -> ClipboardTable:
    """The cells of a text. SwimPlanError where there is nothing in it, or too much."""
    text = text.lstrip("\ufeff").replace("\r\n", "\n").replace("\r", "\n")
    _refuse_too_much(text)
    lines = [line for line in text.split("\n") if line.strip()]
    if not lines:
        raise SwimPlanError(
            asked=tr("There is no text on the clipboard"),
            allowed=tr("Rows of cells can be pasted, as a spreadsheet copies them"),
            remedy=tr("Select the cells there and copy them"),
        )
    separator, note = _separator(lines)
    rows = _parted(text, separator)
    if len(rows) * max(map(len, rows)) > MOST_CELLS:
        raise _too_much(text)
    while not any(rows[-1]):
        rows.pop()
    return ClipboardTable(rows=tuple(rows), lines=tuple(range(1, len(rows) + 1)), note=note)


def table_text(rows: list[list[str]]) -> str:
    """Cells as a spreadsheet pastes them: parted by tabs, those with line ends in quotes."""
    return "\n".join("\t".join(_quoted(cell) for cell in row) for row in rows) + "\n"


def _quoted(cell: str) -> str:
    return '"' + cell.replace('"', '""') + '"' if any(one in cell for one in '\t\n\r"') else cell


def _refuse_too_much(text: str) -> None:
    rows = text.count("\n")
    if len(text) <= MOST_CHARACTERS and rows <= MOST_ROWS and not _has_long_line(text):
        return
    raise _too_much(text)


def _too_much(text: str) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("The text on the clipboard has {} characters in {} lines").format(len(text), text.count("\n") + 1),
        allowed=tr("Up to {} lines of {} characters are pasted at once").format(MOST_ROWS, MOST_IN_A_LINE),
        remedy=tr("Paste it in parts, or save it as a file and read that into the plan"),
    )


def _has_long_line(text: str) -> bool:
    start = 0
    while start + MOST_IN_A_LINE < len(text):
        end = text.rfind("\n", start, start + MOST_IN_A_LINE + 1)
        if end < start:
            return True
        start = end + 1
    return False


def _separator(lines: list[str]) -> tuple[str, str]:
    """Tab where there is any, else semicolon where most lines have one, else comma, unless it parts decimals."""
    if any("\t" in line for line in lines):
        return "\t", ""
    if 2 * sum(";" in line for line in lines) >= len(lines):
        return ";", ""
    if all(_ONE_DECIMAL.match(line) or "," not in line for line in lines) and any("," in line for line in lines):
        return "\t", tr("Each line is taken for one number with a decimal comma.")
    return ",", ""


def _parted(text: str, separator: str) -> list[tuple[str, ...]]:
    """Quoted cells may hold line ends; where quotes do not pair up they are letters like others."""
    rows: list[list[str]] = []
    if '"' in text and text.count('"') % 2 == 0 and "\0" not in text:
        try:
            rows = list(csv.reader(StringIO(text, newline="\n"), delimiter=separator))
        except csv.Error:
            rows = []
    rows = rows or [line.split(separator) for line in text.split("\n")]
    return [tuple(cell.strip() for cell in row) for row in rows]
