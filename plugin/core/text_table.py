"""Tables as people paste them: lines of text parted by some separator, or a list of records in JSON."""

from __future__ import annotations

import csv
import json
import re
from dataclasses import dataclass
from typing import Any

from .errors import BadInputError
from .words import marked, spoken, tr

MOST_CHARACTERS = 60_000_000
SEPARATORS = {"tab": "\t", "semicolon": ";", "bar": "|", "comma": ",", "wide space": None, "space": None}
_SEPARATOR_WORDS = {
    "tab": marked("tab"),
    "semicolon": marked("semicolon"),
    "bar": marked("bar"),
    "comma": marked("comma"),
    "wide space": marked("wide space"),
    "space": marked("space"),
}
MISSING_CELLS = {"", "-", "--", "---", "*", "n/a", "na", "nan", "null", "none"}
_MONTHS = "jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec"
_MONTH_WORD = rf"({_MONTHS})[a-z]*\.?"
_LETTER = re.compile(r"[A-Za-z]")
# What belongs together is joined before a line is parted at its spaces.
_JOINED = (
    (re.compile(r"(?<=\d)\s*([ap])\.?\s?m\b\.?", re.I), r"\1m"),
    (re.compile(r"(?<=\d)\s+(m|ft|feet|foot|metres?|meters?)\b", re.I), r"\1"),
    (re.compile(rf"\b(\d{{1,2}})(?:st|nd|rd|th)?[\s-]+{_MONTH_WORD},?[\s-]+(\d{{2,4}})\b", re.I), r"\1-\2-\3"),
    (re.compile(rf"\b{_MONTH_WORD}\s+(\d{{1,2}})(?:st|nd|rd|th)?,?\s+(\d{{4}})\b", re.I), r"\2-\1-\3"),
    (
        re.compile(
            r"\b(?:mon|tue|tues|wed|thu|thur|thurs|fri|sat|sun)(?:day|sday|nesday|rsday|urday)?\b[.,]?\s+", re.I
        ),
        "",
    ),
    (re.compile(r"\b(high|low)\s+(?:water|tide)\b", re.I), r"\1"),
)


@dataclass(frozen=True, kw_only=True)
class TextRow:
    """One line: its number as the user sees it, counted from 1, and its trimmed cells."""

    number: int
    cells: tuple[str, ...]

    def cell(self, column: int) -> str:
        """The cell in a column, "" where the line ends before it."""
        return self.cells[column] if column < len(self.cells) else ""


@dataclass(frozen=True, kw_only=True)
class TextTable:
    """Rows that were parted by one separator; ``separator`` names it. ``notes`` are what JSON says beside its rows."""

    separator: str
    rows: tuple[TextRow, ...]
    notes: tuple[str, ...] = ()


def separator_words(separator: str) -> str:
    """A table's separator in the user's language; that of JSON, and none, as they are."""
    return spoken(_SEPARATOR_WORDS[separator]) if separator in _SEPARATOR_WORDS else separator


def is_missing(cell: str) -> bool:
    """Whether a cell says that there is nothing in it."""
    return cell.strip().lower() in MISSING_CELLS


def tables_of(text: str, name: str) -> list[TextTable]:
    """The text as a table, once for each separator that parts its lines; the first is the likeliest for equal sense.

    BadInputError where there is nothing to read, or JSON that is no list of records.
    """
    text = text.lstrip("\ufeff")
    if len(text) > MOST_CHARACTERS:
        raise BadInputError(
            layer=name,
            value=tr("{count} characters").format(count=len(text)),
            allowed=tr("Up to {most} are read at once").format(most=MOST_CHARACTERS),
            remedy=tr("Read it in parts"),
        )
    if text.lstrip()[:1] in ("{", "["):
        return [_json_table(text, name)]
    lines = [(number, line) for number, line in enumerate(text.splitlines(), start=1) if line.strip()]
    if not lines:
        raise BadInputError(
            layer=name, allowed=tr("There is nothing in it"), remedy=tr("Paste the table or choose another file")
        )
    figures = [line for _number, line in lines[:400] if re.search(r"\d", line)] or [line for _number, line in lines[:9]]
    return [_parted(lines, kind) for kind in SEPARATORS if _parts(figures, kind)]


def _parts(lines: list[str], kind: str) -> bool:
    """Whether a separator parts at least half of the lines that have figures."""
    return sum(len(_cells(_tidied(line), kind)) > 1 for line in lines) * 2 >= len(lines)


def _parted(lines: list[tuple[int, str]], kind: str) -> TextTable:
    rows = (TextRow(number=number, cells=_cells(_tidied(line), kind)) for number, line in lines)
    return TextTable(separator=kind, rows=tuple(rows))


def _tidied(line: str) -> str:
    """A line with what belongs together joined; a heading, which has no figures, is left as it is."""
    if not _LETTER.search(line) or not re.search(r"\d", line):
        return line
    for pattern, replacement in _JOINED:
        line = pattern.sub(replacement, line)
    return line


def _cells(line: str, kind: str) -> tuple[str, ...]:
    if kind == "space":
        return tuple(line.split())
    if kind == "wide space":
        return tuple(cell.strip() for cell in re.split(r"\s{2,}|\t", line.strip()))
    try:
        cells = next(csv.reader([line], delimiter=SEPARATORS[kind]))
    except (csv.Error, StopIteration):  # a stray quote or control character: the cells as they stand
        cells = line.split(SEPARATORS[kind])
    cells = [cell.strip() for cell in cells]
    if kind == "bar":  # tables drawn with bars have them at their edges too
        cells = cells[(not cells[0]) :]
        cells = cells[:-1] if cells and not cells[-1] else cells
    return tuple(cells)


def _json_table(text: str, name: str) -> TextTable:
    """Records as rows; the first row holds their keys. Records are numbered from 1."""
    try:
        content = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise BadInputError(
            layer=name,
            value=text[:40],
            allowed=tr("It starts like JSON and is not: {error}").format(error=error),
            remedy=tr("Correct the file"),
        ) from error
    records = _records(content)
    if not records:
        raise BadInputError(
            layer=name,
            value=text[:40],
            allowed=tr("JSON holds a list of records, alone or under one key, each with the same plain values"),
            remedy=tr("Convert it to such a list or to CSV"),
        )
    keys = list(dict.fromkeys(key for record in records for key in record))
    rows = [TextRow(number=0, cells=tuple(keys))]
    for number, record in enumerate(records, start=1):
        cells = (_tidied(_plain(record.get(key), number, str(key), name)) for key in keys)
        rows.append(TextRow(number=number, cells=tuple(cells)))
    return TextTable(separator="JSON", rows=tuple(rows), notes=_beside_records(content))


def _beside_records(content: Any) -> tuple[str, ...]:
    """Plain texts that stand beside the list of records, in one level of groups too, each as `name: text`."""
    if not isinstance(content, dict):
        return ()
    groups = [content, *(value for value in content.values() if isinstance(value, dict))]
    return tuple(f"{key}: {value}" for group in groups for key, value in group.items() if isinstance(value, str))


def _records(content: Any) -> list[dict[str, Any]]:
    """The one list of records in the content, [] where there is none or more than one."""
    if isinstance(content, list):
        return content if all(isinstance(one, dict) for one in content) else []
    lists = [value for value in content.values() if isinstance(value, list)] if isinstance(content, dict) else []
    return _records(lists[0]) if len(lists) == 1 else []


def _plain(value: Any, number: int, key: str, name: str) -> str:
    if value is None:
        return ""
    if isinstance(value, (dict, list, bool)):
        raise BadInputError(
            layer=name,
            row=number,
            field=key,
            value=str(value)[:40],
            allowed=tr("A record holds plain texts and numbers"),
            remedy=tr("Convert it to such records or to CSV"),
        )
    return str(value).strip()
