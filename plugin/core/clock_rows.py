"""Clock readings of a table's rows as moments: right, or refused with the row named, where daylight saving changes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo

from .clock import UTC, local_moment
from .errors import BadInputError, SwimPlanError
from .text_moments import PrintedMoment
from .words import tr


@dataclass(frozen=True, kw_only=True)
class RowMoments:
    """Moments in UTC, one for each row, None for a row that is left out; ``doubtful`` are stretches of such rows.

    A stretch is a pair of places in the sequence of rows, the last included.
    """

    moments: tuple[datetime | None, ...]
    doubtful: tuple[tuple[int, int], ...] = ()


def moments_of_rows(rows: Sequence[tuple[int, PrintedMoment]], zone: tzinfo, name: str) -> RowMoments:
    """Moments of single rows, whatever their order; ``rows`` are row numbers and readings.

    BadInputError for a reading that daylight saving skips or gives twice.
    """
    return RowMoments(moments=tuple(_moment(row, printed, zone, name) for row, printed in rows))


def moments_of_series(rows: Sequence[tuple[int, PrintedMoment]], zone: tzinfo, name: str) -> RowMoments:
    """Moments of the rows of an even series, in which the night when clocks go back can be told by the order of rows.

    Where the hour that comes twice stands there twice, the first is the earlier. Where it stands there once, nothing
    says which of the two it is: its rows are left out. BadInputError for a reading that daylight saving skips, and for
    an hour that comes twice in disorder.
    """
    twice = [_comes_twice(printed, zone) for _row, printed in rows]
    moments: list[datetime | None] = []
    doubtful: list[tuple[int, int]] = []
    place = 0
    while place < len(rows):
        if not twice[place]:
            moments.append(_moment(*rows[place], zone, name))
            place += 1
            continue
        end = place
        while end + 1 < len(rows) and twice[end + 1] and _one_night(rows[place][1], rows[end + 1][1]):
            end += 1
        found = _hour_given_twice(rows[place : end + 1], zone, name)
        if found is None:
            doubtful.append((place, end))
        moments += found or [None] * (end + 1 - place)
        place = end + 1
    return RowMoments(moments=tuple(moments), doubtful=tuple(doubtful))


def _moment(row: int, printed: PrintedMoment, zone: tzinfo, name: str) -> datetime:
    try:
        return local_moment(printed.naive, printed.zone or zone).astimezone(UTC)
    except SwimPlanError as error:
        remedy = tr("{remedy}, or give ZONE as a fixed offset if the table does not change its clock").format(
            remedy=error.remedy
        )
        raise BadInputError(
            layer=name,
            row=row,
            field="time",
            value=f"{printed.naive:%Y-%m-%d %H:%M}",
            allowed=tr("{wrong} in {zone}").format(wrong=error.allowed, zone=zone),
            remedy=remedy,
        ) from error


def _comes_twice(printed: PrintedMoment, zone: tzinfo) -> bool:
    """Whether clocks show the reading twice that night, and the text does not say which."""
    if printed.zone is not None:
        return False
    first, second = (printed.naive.replace(tzinfo=zone, fold=fold) for fold in (0, 1))
    return first.utcoffset() > second.utcoffset()


def _one_night(first: PrintedMoment, other: PrintedMoment) -> bool:
    return abs(other.naive - first.naive) < timedelta(hours=12)


def _hour_given_twice(rows: Sequence[tuple[int, PrintedMoment]], zone: tzinfo, name: str) -> list[datetime] | None:
    """Moments of the hour that comes twice, None where it stands there once."""
    readings = [printed.naive for _row, printed in rows]
    backs = [place for place in range(1, len(readings)) if readings[place] <= readings[place - 1]]
    if not backs:
        return None
    if len(backs) > 1:
        raise BadInputError(
            layer=name,
            row=rows[backs[1]][0],
            field="time",
            value=f"{readings[backs[1]]:%Y-%m-%d %H:%M}",
            allowed=tr("That hour comes twice that night in {zone}, and stands there more often").format(zone=zone),
            remedy=tr("Sort the rows, delete those given twice, or write the offset"),
        )
    folds = [0 if place < backs[0] else 1 for place in range(len(readings))]
    return [reading.replace(tzinfo=zone, fold=fold).astimezone(UTC) for reading, fold in zip(readings, folds)]
