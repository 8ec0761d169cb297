"""The moments of a stream table's rows: one order of day and month, one zone, hours that come twice told or named."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, tzinfo

from ..clock import UTC
from ..clock_labels import LabelledPlace
from ..clock_rows import moments_of_series
from ..errors import BadInputError
from ..table_clock import clock_of_table
from ..text_moments import clock_in, dates_in, moment_parts, offset_zone, order_of, printed_moment
from ..words import marked, spoken, tr

ALLOWED = marked("It is a date and a clock time, such as 2027-06-05 09:40 or 5 Jun 2027 9:40 am")


@dataclass(frozen=True, kw_only=True)
class TimeCell:
    """The text of one row's moment: date and clock in one cell or in two, with the row's number in the table."""

    row: int
    text: str
    clock: str = ""


@dataclass(frozen=True, kw_only=True)
class TimesRead:
    """Moments in UTC by row number, and the rows whose clock time comes twice that night but stands here once.

    ``clock`` says which clock they were read from, and why.
    """

    moments: dict[int, datetime]
    unsure: tuple[int, ...]
    clock: str


def times_in(
    cells: list[TimeCell],
    zone: tzinfo | None,
    order: str,
    name: str,
    field: str,
    clocks: Sequence[LabelledPlace] = (),
) -> TimesRead:
    """The moments of the rows.

    ``zone`` is that of the table, None where only offsets in the cells, or ``clocks``, will do: what headings and
    comments say of the clock. ``order`` is dmy, mdy, ymd or "" to let the rows tell. The hour that clocks show twice is
    told by standing in the table twice, the earlier first.
    BadInputError names the row of a time that cannot be read, does not exist, or lacks a zone.
    """

    def refused(cell: TimeCell, allowed: str, remedy: str) -> BadInputError:
        text = f"{cell.text} {cell.clock}".strip()
        return BadInputError(layer=name, row=cell.row, field=field, value=text, allowed=allowed, remedy=remedy)

    parts = []
    for cell in cells:
        found = _parts(cell)
        if found is None:
            raise refused(cell, spoken(ALLOWED), tr("Correct the date and time"))
        parts.append(found)
    order = order_of([(cell.row, day) for cell, (day, _, _) in zip(cells, parts)], order, name) if cells else order
    readings = [printed_moment(dates_in(day)[order], clock, offset) for day, clock, offset in parts]
    rows = [(cell.row, reading) for cell, reading in zip(cells, readings)]
    zone, words = clock_of_table(zone, clocks, rows, name)
    for cell, reading in zip(cells, readings):
        if reading.zone is None and zone is None:
            raise refused(
                cell,
                tr("The times carry no zone"),
                tr("Name the table's zone, an IANA name such as Europe/Lisbon, or UTC"),
            )
    found = moments_of_series(rows, zone or UTC, name).moments
    return TimesRead(
        moments={cell.row: moment for cell, moment in zip(cells, found) if moment is not None},
        unsure=tuple(cell.row for cell, moment in zip(cells, found) if moment is None),
        clock=words,
    )


def _parts(cell: TimeCell):  # noqa: ANN202  (date text, timedelta, zone or None; None where it is no moment)
    if cell.clock:
        found = re.match(r"^(.*?)\s*([Zz]|UTC|GMT|[+-]\d\d(?::?\d\d)?)?$", cell.clock.strip())
        clock = clock_in(found.group(1).strip())
        offset = offset_zone(found.group(2)) if found.group(2) else None
        if clock is None or not dates_in(cell.text.strip()) or (found.group(2) and offset is None):
            return None
        return cell.text.strip(), clock, offset
    return moment_parts(cell.text.strip())
