"""Rows of a table of tides as readings: date, time, height and kind of each, or the row that cannot be read."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta, tzinfo

from ..errors import BadInputError
from ..text_moments import PrintedMoment, clock_in, dates_in, is_clock, moment_parts, order_of, printed_moment
from ..text_table import TextRow, is_missing
from ..words import marked, tr
from .tide_columns import BY_HEADING, Column, Layout, number_in, stated_unit, water_in
from .tide_reading import METRES_PER, Skipped, TidesAsked

LOWEST_M, HIGHEST_M = -10.0, 25.0  # what a plan takes for a height of tide
NO_FIGURES, NO_HEIGHT = marked("no date, time or height in it"), marked("no height")
NOTHING_IN_IT = marked("neither time nor height")
BEFORE, AFTER = marked("above the table"), marked("below the table")
_HIGH, _LOW = re.compile(r"\bhigh|\bhw\b", re.I), re.compile(r"\blow|\blw\b", re.I)


@dataclass(frozen=True, kw_only=True)
class Reading:
    """One height as printed: row, date as text, time since midnight, zone written beside it, metres, kind."""

    row: int
    day: str
    since_midnight: timedelta
    zone: tzinfo | None
    height_m: float
    is_high: bool | None


@dataclass(frozen=True, kw_only=True)
class Trio:
    """Columns (from 0) of one time with its height and kind (None for none); ``is_high`` where a heading says it."""

    time: int
    height: int
    kind: int | None = None
    is_high: bool | None = None


def trios_of(layout: Layout, asked: TidesAsked) -> tuple[int | None, list[Trio]]:
    """The column of the date (None where times hold it) and the columns that belong together, from the left.

    BadInputError where the columns do not pair off.
    """
    moments, dates, times = (layout.places(role) for role in ("moment", "date", "time"))
    clocks = moments or times
    heights = _heights(layout, len(clocks), asked)
    kinds = layout.places("kind")
    mixed = moments and (dates or times)
    if mixed or not clocks or (times and len(dates) != 1) or len(heights) != len(clocks):
        raise _unpaired(layout, asked)
    if len(kinds) not in (0, len(clocks)):
        raise _unpaired(layout, asked)
    trios = [
        Trio(time=clock, height=height, kind=kind, is_high=_heading_says(layout.columns[clock]))
        for clock, height, kind in zip(clocks, heights, kinds or [None] * len(clocks))
    ]
    return (dates[0] if times else None), trios


def _heights(layout: Layout, count: int, asked: TidesAsked) -> list[int]:
    """The columns of the heights: of several with headings those in the unit asked for (metres), or so headed."""
    columns = [column for column in layout.columns if column.role == "height"]
    if len(columns) > count:
        in_unit = [column for column in columns if column.unit == (asked.units or "m")]
        headed = [column for column in columns if column.why == BY_HEADING]
        columns = next((some for some in (in_unit, headed) if len(some) == count), columns)
    return [column.number - 1 for column in columns]


def _heading_says(column: Column) -> bool | None:
    high, low = bool(_HIGH.search(column.heading)), bool(_LOW.search(column.heading))
    return high if high != low else None


def _unpaired(layout: Layout, asked: TidesAsked) -> BadInputError:
    found = ", ".join(f"{column.number} {column.heading!r}: {column.role}" for column in layout.columns)
    return BadInputError(
        layer=asked.name,
        row=layout.data[0].number,
        field="columns",
        value=found,
        allowed=tr("Each time needs one height beside it, and one date in its row or in the same cell"),
        remedy=tr("Name the columns from the left in COLUMNS, such as date, time, height, kind, skip"),
    )


def readings_of(layout: Layout, asked: TidesAsked) -> tuple[list[Reading], list[Skipped], str]:
    """Every height of the table, the rows without one, and how many dates were carried down, in words ("" for none).

    BadInputError naming the row for a cell that is not what its column is.
    """
    date_column, trios = trios_of(layout, asked)
    readings: list[Reading] = []
    skipped = [Skipped(row=row.number, reason=BEFORE) for row in layout.before if row.number]
    last = next((place for place in reversed(range(len(layout.data))) if _is_timed(layout.data[place], trios)), -1)
    day, carried = "", 0
    for place, row in enumerate(layout.data):
        reason = "" if _is_timed(row, trios) else _why_not(row, place > last)
        if reason:
            skipped.append(Skipped(row=row.number, reason=reason))
            continue
        if date_column is not None:
            cell = row.cell(date_column)
            carried += is_missing(cell)
            day = day if is_missing(cell) else cell
        found = [_reading(row, trio, day if date_column is not None else None, layout, asked) for trio in trios]
        _refuse_more_cells(row, layout, asked)
        skipped += [Skipped(row=row.number, reason=one) for one in found if isinstance(one, str) and one]
        readings += [one for one in found if isinstance(one, Reading)]
        if not any(found):
            skipped.append(Skipped(row=row.number, reason=NOTHING_IN_IT))
    return (
        readings,
        skipped,
        tr("{carried} rows without a date took that of the row above").format(carried=carried) if carried else "",
    )


def _is_timed(row: TextRow, trios: Sequence[Trio]) -> bool:
    return any(_time_of(row.cell(trio.time)) is not None for trio in trios)


def _time_of(cell: str) -> tuple[str, timedelta, tzinfo | None] | None:
    """Date ("" where it stands apart), time of day and zone of a cell."""
    clock = clock_in(cell)
    return ("", clock, None) if clock is not None else moment_parts(cell)


def _why_not(row: TextRow, below: bool) -> str:
    """Why a row is passed over: "" for one that has to be read."""
    timed = any(is_clock(cell) or dates_in(cell) or moment_parts(cell) is not None for cell in row.cells)
    if timed:
        return ""
    if below:
        return AFTER
    return "" if any(re.search(r"\d", cell) for cell in row.cells) else NO_FIGURES


def _refuse_more_cells(row: TextRow, layout: Layout, asked: TidesAsked) -> None:
    more = [cell for cell in row.cells[len(layout.columns) :] if not is_missing(cell)]
    if more:
        raise _refused(
            row,
            "columns",
            more[0],
            asked,
            tr("The table has {count} columns").format(count=len(layout.columns)),
            tr("Part it alike"),
        )


def _reading(row: TextRow, trio: Trio, day: str | None, layout: Layout, asked: TidesAsked) -> Reading | str:
    """One height, "" for empty cells, or the reason why a time has none."""
    time_cell, height_cell = row.cell(trio.time), row.cell(trio.height)
    if is_missing(time_cell) and is_missing(height_cell):
        return ""
    parts = _time_of(time_cell) if day is not None else moment_parts(time_cell)
    if parts is None or (day is not None and parts[0]):
        raise _refused(
            row, "time", time_cell, asked, tr("That is no time of day"), tr("Write it like 09:40 or 9:40 pm")
        )
    if day == "":
        raise _refused(
            row, "date", "", asked, tr("The first row of a day has its date"), tr("Write it like 2027-06-05")
        )
    if is_missing(height_cell):
        return NO_HEIGHT
    return Reading(
        row=row.number,
        day=parts[0] if day is None else day,
        since_midnight=parts[1],
        zone=parts[2],
        height_m=_height_m(row, height_cell, layout.columns[trio.height], asked),
        is_high=_kind(row, trio, asked),
    )


def _kind(row: TextRow, trio: Trio, asked: TidesAsked) -> bool | None:
    if trio.kind is None or is_missing(row.cell(trio.kind)):
        return trio.is_high
    kind = water_in(row.cell(trio.kind))
    if kind is None:
        raise _refused(
            row, "kind", row.cell(trio.kind), asked, tr("That is neither high nor low water"), tr("Write H or L")
        )
    return kind


def _height_m(row: TextRow, cell: str, column: Column, asked: TidesAsked) -> float:
    number = number_in(cell)
    if number is None:
        raise _refused(row, "height", cell, asked, tr("That is no height"), tr("Write it like 3.9, or - for none"))
    try:
        unit = stated_unit(number[1], column.heading, asked.units)
    except ValueError as error:
        raise _refused(row, "height", cell, asked, str(error), tr("Correct UNITS, the heading or the row")) from error
    if not unit:
        raise _refused(
            row,
            "height",
            cell,
            asked,
            tr("Neither the row nor the heading says metres or feet"),
            tr("Give UNITS: m or ft"),
        )
    height_m = number[0] * METRES_PER[unit]
    if not LOWEST_M <= height_m <= HIGHEST_M:
        raise _refused(
            row,
            "height",
            cell,
            asked,
            tr("Heights of tide are from {lowest} to {highest} m").format(lowest=LOWEST_M, highest=HIGHEST_M),
            tr("Correct it or UNITS"),
        )
    return height_m


def printed_rows(readings: Sequence[Reading], asked: TidesAsked) -> tuple[list[tuple[int, PrintedMoment]], str]:
    """Row and clock reading of each height, and the order of day, month and year that the dates were read in."""
    days: dict[str, int] = {}
    for reading in readings:
        days.setdefault(reading.day, reading.row)
    order = order_of([(row, day) for day, row in days.items()], asked.date_order, asked.name)
    known = {day: dates_in(day)[order] for day in days}
    return [(one.row, printed_moment(known[one.day], one.since_midnight, one.zone)) for one in readings], order


def _refused(row: TextRow, field: str, value: object, asked: TidesAsked, allowed: str, remedy: str) -> BadInputError:
    return BadInputError(layer=asked.name, row=row.number, field=field, value=value, allowed=allowed, remedy=remedy)
