"""Which column of a table of tides holds what: guessed from headings and cells, or as given, and shown either way."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import islice

from ..clock_labels import LabelledPlace, labels_in_heading, labels_in_line
from ..errors import BadInputError
from ..text_moments import clock_in, dates_in, is_clock, is_plain_clock, moment_parts
from ..text_table import TextRow, TextTable, is_missing
from ..words import marked, tr

ROLES = ("moment", "date", "time", "height", "kind", "skip")
SAMPLE = 400
MOST_CLOCKS = 4  # names of clocks in one column
AS_GIVEN, BY_HEADING, BY_CELLS = marked("as given"), marked("by its heading"), marked("by its cells")
FOUR_DIGITS, NO_SENSE = marked("four digits beside a date"), marked("neither time, height nor kind")
MOSTLY = 0.8  # share of a column's cells that make it what it is; the others are then named as wrong
_NUMBER = re.compile(r"^([+-]?\d+(?:[.,]\d*)?|[+-]?[.,]\d+)\s*(m|ft|feet|foot|'|metres?|meters?)?$", re.I)
_WATERS = {"h": True, "hw": True, "high": True, "hi": True, "l": False, "lw": False, "low": False, "lo": False}
_HEADINGS = (
    ("moment", re.compile(r"date.?time|time.?stamp|^t$", re.I)),
    ("date", re.compile(r"\bdate\b|^day$", re.I)),
    ("time", re.compile(r"\btime\b|\bclock\b|\bhour\b", re.I)),
    ("height", re.compile(r"\bheights?\b|\bhgt\b|\bht\b|\blevel\b|\bpred|\bwater level\b|^v$|^value$|_m$|_ft$", re.I)),
    ("kind", re.compile(r"\btype\b|\bkind\b|high ?/ ?low|\bh ?/ ?l\b|^hi/lo$", re.I)),
)
_UNITS = {
    "ft": re.compile(r"(?:\b|_)(?:ft|feet|foot)\b", re.I),
    "m": re.compile(r"(?:\b|_)(?:m|met(?:re|er)s?)\b", re.I),
    "dm": re.compile(r"(?:\b|_)(?:dm|decimet(?:re|er)s?)\b", re.I),
    "cm": re.compile(r"(?:\b|_)(?:cm|centimet(?:re|er)s?)\b", re.I),
    "mm": re.compile(r"(?:\b|_)(?:mm|millimet(?:re|er)s?)\b", re.I),
}
_STRANGE = re.compile(
    r"\b(?:inch(?:es)?|fathoms?|fm|yards?|yds?|km|tenths?|hundredths?)\b|(?<=[(\[])in(?=[)\]])"
    r"|[\d.,/]+\s*(?:m|ft|feet|met(?:re|er)s?)\b|\bx\s*\d+|/\s*10+\b|%",
    re.I,
)
_OF_HEIGHTS = re.compile(r"\b(?:heights?|levels?|units?|predictions?|tides?|all|values?)\b", re.I)
_MINUS = re.compile(r"^[\u2212\u2013](?=[\d.,])")


@dataclass(frozen=True, kw_only=True)
class Column:
    """One column: its number counted from 1, its heading, what it was taken for, the unit it names and why (marked)."""

    number: int
    heading: str
    role: str
    unit: str = ""
    why: str = ""


@dataclass(frozen=True, kw_only=True)
class Layout:
    """A table with its columns told apart.

    ``data`` are the rows from the first one that holds figures on; ``before`` those above it, headings among them.
    ``clocks`` are the headings and lines that name the clock of the times, headings first.
    """

    table: TextTable
    columns: tuple[Column, ...]
    before: tuple[TextRow, ...]
    data: tuple[TextRow, ...]
    clocks: tuple[LabelledPlace, ...] = ()

    def places(self, role: str) -> list[int]:
        """Columns of a role, counted from 0."""
        return [column.number - 1 for column in self.columns if column.role == role]


def number_in(cell: str) -> tuple[float, str] | None:
    """A number with its unit ("m", "ft", "" for none), decimals after a point or comma; None for anything else."""
    found = _NUMBER.match(_MINUS.sub("-", cell))
    if not found:
        return None
    unit = (found.group(2) or "").lower()
    return float(found.group(1).replace(",", ".")), "ft" if unit[:1] in ("f", "'") else "m" if unit else ""


def water_in(cell: str) -> bool | None:
    """True for a high water, False for a low water, None for anything else."""
    return _WATERS.get(cell.lower().strip(". "))


def layout_of(tables: Sequence[TextTable], asked_columns: str, name: str) -> Layout:
    """The table whose separator makes most sense of the cells, with its columns.

    BadInputError where no row has a date or time, or where columns stay ambiguous.
    """
    best = max(tables, key=_sense, default=None)
    if best is None or _sense(best) == 0.0:
        raise BadInputError(
            layer=name,
            allowed=tr("No row of it has a date or time and a height in columns"),
            remedy=tr("Part the columns by commas, semicolons, tabs or spaces, and write dates as 2027-06-05"),
        )
    first = next(place for place, row in enumerate(best.rows) if _is_data(row))
    before, data = best.rows[:first], best.rows[first:]
    sample = list(islice(filter(_is_data, data), SAMPLE))
    width = Counter(len(row.cells) for row in sample).most_common(1)[0][0]
    headings = _headings([row for row in before if not _is_timed_whole(row)], width)
    if asked_columns.strip():
        columns = _as_asked(asked_columns, headings, width, name)
    else:
        columns = _guessed(sample, headings, width)
    # A row with its date and time where the others have them is no heading, whatever its height looks like.
    first = next((place for place, row in enumerate(before) if _is_dated(row, columns)), first)
    before, data = best.rows[:first], best.rows[first:]
    return Layout(
        table=best, columns=columns, before=before, data=data, clocks=_clocks(best, before, data, columns, headings)
    )


def _clocks(
    table: TextTable, before: Sequence[TextRow], data: Sequence[TextRow], columns: Sequence[Column], headings: list[str]
) -> tuple[LabelledPlace, ...]:
    """What headings of dates and times, titles, notes and whole columns such as EST, EDT say of the clock."""
    timed = ("moment", "date", "time")
    found = [labels_in_heading(one.heading) for one in columns if one.role in timed]
    found += [labels_in_line(None, note) for note in table.notes]
    # Headings parted by spaces need not stand above their columns: they are read as a line as well.
    headed = [] if table.separator == "space" else headings
    found += [labels_in_line(None, one.heading) for one in columns if headed and one.role not in (*timed, "skip")]
    lines = [row for row in (*before, *data) if row.number and list(row.cells) != headed and not _is_timed(row)]
    joint = " " if table.separator in ("space", "wide space") else ", "
    found += [labels_in_line(row.number, joint.join(filter(None, row.cells))) for row in lines]
    for column in (one for one in columns if one.role == "skip"):
        cells = dict.fromkeys(row.cell(column.number - 1) for row in data if _is_timed(row))
        if 0 < len(cells) <= MOST_CLOCKS and all(labels_in_line(None, cell) for cell in cells):
            labels = (label for cell in cells for label in labels_in_line(None, cell).labels)
            found.append(
                LabelledPlace(
                    words=tr("column {number} '{heading}'").format(number=column.number, heading=column.heading),
                    labels=tuple(labels),
                )
            )
    return tuple(dict.fromkeys(place for place in found if place is not None))


def _is_timed_whole(row: TextRow) -> bool:
    senses = set().union(*(_senses(cell) for cell in row.cells))
    return "moment" in senses or {"date", "time"} <= senses


def _is_dated(row: TextRow, columns: Sequence[Column]) -> bool:
    """Whether the row has a date and a time of day in the columns of them."""
    cells = {role: [row.cell(one.number - 1) for one in columns if one.role == role] for role in ROLES}
    if any(moment_parts(cell) is not None for cell in cells["moment"]):
        return True
    return any(map(dates_in, cells["date"])) and any(clock_in(cell) is not None for cell in cells["time"])


def _is_timed(row: TextRow) -> bool:
    return any(_senses(cell) & {"moment", "date", "time"} for cell in row.cells)


def _senses(cell: str) -> set[str]:
    """What a cell may be."""
    if moment_parts(cell) is not None:
        return {"moment"}
    found = {"date"} if dates_in(cell) else set()
    if is_clock(cell):
        found.add("time")
    if is_plain_clock(cell):
        found.add("plain time")
    if number_in(cell) is not None:
        found.add("height")
    if water_in(cell) is not None:
        found.add("kind")
    return found


def _is_data(row: TextRow) -> bool:
    """Whether a row has a time of some form and a number."""
    senses = [_senses(cell) for cell in row.cells]
    timed = any(sense & {"moment", "date", "time"} for sense in senses)
    return timed and any("height" in sense for sense in senses)


def _sense(table: TextTable) -> float:
    """Share of the cells that mean something, in the rows that are data, times the share of such rows."""
    rows = list(islice((row for row in table.rows if any(re.search(r"\d", cell) for cell in row.cells)), SAMPLE))
    data = [row for row in rows if _is_data(row)]
    cells = [cell for row in data for cell in row.cells if not is_missing(cell)]
    if not cells:
        return 0.0
    return len(data) / len(rows) * sum(bool(_senses(cell)) for cell in cells) / len(cells)


def _headings(before: Sequence[TextRow], width: int) -> list[str]:
    """The cells of the last row above the data that has as many."""
    row = next((row for row in reversed(before) if len(row.cells) == width), None)
    return list(row.cells) if row else [""] * width


def _as_asked(asked: str, headings: list[str], width: int, name: str) -> tuple[Column, ...]:
    roles = [role.strip().lower() for role in asked.split(",")]
    wrong = [role for role in roles if role not in ROLES]
    if wrong or len(roles) > width:
        raise BadInputError(
            layer=name,
            field="COLUMNS",
            value=asked,
            allowed=tr("It names up to {width} columns from the left, each one of {roles}").format(
                width=width, roles=", ".join(ROLES)
            ),
            remedy=tr("Correct COLUMNS or leave it empty"),
        )
    roles += ["skip"] * (width - len(roles))
    return tuple(
        Column(number=place + 1, heading=heading, role=role, unit=unit_of(heading), why=AS_GIVEN)
        for place, (heading, role) in enumerate(zip(headings, roles))
    )


def _guessed(rows: Sequence[TextRow], headings: list[str], width: int) -> tuple[Column, ...]:
    columns, plain = [], []
    for place in range(width):
        cells = [row.cell(place) for row in rows if not is_missing(row.cell(place))]
        counts = Counter(sense for cell in cells for sense in _senses(cell))
        likely = {sense for sense, count in counts.items() if count >= MOSTLY * len(cells)}
        columns.append(_column(place, headings[place], likely))
        plain.append("plain time" in likely and columns[-1].why != BY_HEADING)
    if not any(column.role in ("moment", "time") for column in columns):
        columns = [replace(one, role="time", why=FOUR_DIGITS) if four else one for one, four in zip(columns, plain)]
    return tuple(columns)


def _column(place: int, heading: str, likely: set[str]) -> Column:
    """What a column is: a sense of its cells that its heading agrees with, or the plainest sense."""
    wanted = next((role for role, pattern in _HEADINGS if pattern.search(heading)), "")
    allowed = {"time" if sense == "plain time" else sense for sense in likely}
    if wanted == "date" and "moment" in likely or wanted == "time" and "moment" in likely or wanted == "moment":
        wanted = "moment" if "moment" in likely else "date" if "date" in likely else wanted
    if wanted in allowed:
        return Column(number=place + 1, heading=heading, role=wanted, unit=unit_of(heading), why=BY_HEADING)
    for sense in ("moment", "date", "time", "height", "kind"):
        if sense in likely:
            return Column(number=place + 1, heading=heading, role=sense, unit=unit_of(heading), why=BY_CELLS)
    return Column(number=place + 1, heading=heading, role="skip", why=NO_SENSE)


def unit_of(heading: str) -> str:
    """The unit that a heading names, "" for none or several."""
    found = [unit for unit, pattern in _UNITS.items() if pattern.search(heading)]
    return found[0] if len(found) == 1 else ""


def units_of_titles(layout: Layout) -> list[tuple[TextRow, str]]:
    """Lines above the table, but its headings, that speak of heights or units and name one unit."""
    headings = tuple(column.heading for column in layout.columns)
    lines = [(row, " ".join(row.cells)) for row in layout.before if row.number and row.cells != headings]
    return [(row, unit_of(line)) for row, line in lines if _OF_HEIGHTS.search(line) and unit_of(line)]


def stated_unit(of_cell: str, heading: str, units: str) -> str:
    """The one unit of a height: as its cell, its heading and ``units`` ("" for not asked) say; "" where none does.

    ValueError where two of them say different ones, or the heading names one that is not read.
    """
    strange = _STRANGE.search(heading)
    if strange:
        raise ValueError(
            tr("The heading '{heading}' says {strange}, and heights are read in {units}").format(
                heading=heading, strange=strange.group(0).strip(), units=", ".join(_UNITS)
            )
        )
    of_heading = unit_of(heading)
    said = [unit for unit in (of_heading, of_cell, units) if unit]
    if len(set(said)) > 1:
        words = ", ".join(_who_says(heading, of_heading, of_cell, units))
        raise ValueError(words[0].upper() + words[1:])
    return said[0] if said else ""


def _who_says(heading: str, of_heading: str, of_cell: str, units: str) -> Iterator[str]:
    """Which unit the heading, the cell and UNITS say, of those that say one."""
    if of_heading:
        yield tr("the heading '{heading}' says {of_heading}").format(heading=heading, of_heading=of_heading)
    if of_cell:
        yield tr("the cell says {of_cell}").format(of_cell=of_cell)
    if units:
        yield tr("UNITS says {units}").format(units=units)
