"""Dates, clock times and zones as printed tables write them."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta, timezone, tzinfo

from .clock import UTC, zone_named
from .errors import BadInputError, SwimPlanError
from .words import tr

ORDERS = ("ymd", "dmy", "mdy")
EARLIEST_YEAR, LATEST_YEAR = 1800, 2200
_MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
_YEAR_FIRST = re.compile(r"^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$")
_COMPACT = re.compile(r"^((?:18|19|20|21)\d\d)(\d\d)(\d\d)$")
_FIGURES = re.compile(r"^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})$")
_WORDS = re.compile(r"^(\d{1,2})[-/. ]([A-Za-z]{3})[a-z]*[-/. ](\d{4}|\d{2})$")
_CLOCK = re.compile(r"^(\d{1,2})[:hH](\d{2})(?::(\d{2})(?:\.0+)?)?\s*([ap]m?)?$", re.I)
_HOUR = re.compile(r"^(\d{1,2})\s*([ap]m)$", re.I)
_PLAIN_CLOCK = re.compile(r"^(\d{1,2})(?:\.)?(\d{2})$")
_MOMENT = re.compile(r"^(\S+?)(?:\s*,\s*|\s+|[Tt](?=\d))(\S.*?)\s*([Zz]|UTC|GMT|[+-]\d\d(?::?\d\d)?)?$")
_OFFSET = re.compile(r"^(?:UTC|GMT)?\s*([+-])\s*(\d{1,2})(?::?(\d{2}))?$", re.I)


@dataclass(frozen=True, kw_only=True)
class PrintedMoment:
    """A date and clock reading, with the offset where the text says it."""

    naive: datetime
    zone: tzinfo | None = None


def dates_in(text: str) -> dict[str, date]:
    """The date a text may be, by order of day, month and year; {} for what is no date.

    A date with its year first or its month in letters is the same in every order. Two digits of a year leave all open.
    """
    found = _YEAR_FIRST.match(text) or _COMPACT.match(text)
    if found:
        groups = found.groups()
        return _same(_date(groups[0], groups[-2], groups[-1]))
    found = _WORDS.match(text)
    if found:
        day, word, year = found.groups()
        month = _MONTHS.index(word.lower()) + 1 if word.lower() in _MONTHS else 0
        if len(year) == 4:
            return _same(_date(year, month, day))
        return _valid({"dmy": _date(f"20{year}", month, day), "ymd": _date(f"20{int(day):02}", month, year)})
    found = _FIGURES.match(text)
    if not found:
        return {}
    first, _mark, second, third = found.groups()
    if len(third) == 4:
        return _valid({"dmy": _date(third, second, first), "mdy": _date(third, first, second)})
    return _valid(
        {
            "dmy": _date(f"20{third}", second, first),
            "mdy": _date(f"20{third}", first, second),
            "ymd": _date(f"20{int(first):02}", second, third),
        }
    )


def is_clock(text: str) -> bool:
    """Whether the text can only be a time of day."""
    return clock_in(text, plain=False) is not None


def is_plain_clock(text: str) -> bool:
    """Whether the text is four digits that may be a time of day, such as 0940."""
    return len(text) == 4 and text.isdigit() and clock_in(text) is not None


def clock_in(text: str, *, plain: bool = True) -> timedelta | None:
    """Time of day as time since midnight, up to 24:00; None for what is none.

    ``plain`` takes 0940 and 9.40 too, which could be numbers.
    """
    found = _CLOCK.match(text)
    if found:
        hour, minute, second, half = found.groups()
    elif _HOUR.match(text):
        (hour, half), minute, second = _HOUR.match(text).groups(), "0", None
    elif plain and _PLAIN_CLOCK.match(text):
        (hour, minute), second, half = _PLAIN_CLOCK.match(text).groups(), None, None
    else:
        return None
    hours, minutes, seconds = int(hour), int(minute), int(second or 0)
    if half:
        if not 1 <= hours <= 12:
            return None
        hours = hours % 12 + (12 if half[0].lower() == "p" else 0)
    if minutes > 59 or seconds > 59 or hours > 24 or (hours == 24 and (minutes or seconds)):
        return None
    return timedelta(hours=hours, minutes=minutes, seconds=seconds)


def moment_parts(text: str) -> tuple[str, timedelta, tzinfo | None] | None:
    """Date as text, time of day and zone (None unless written) of a date and time in one cell; None for no such."""
    found = _MOMENT.match(text)
    if not found:
        return None
    day, clock, offset = found.groups()
    since_midnight = clock_in(clock.strip(), plain=False)
    if since_midnight is None or not dates_in(day):
        return None
    return day, since_midnight, None if offset is None else offset_zone(offset)


def offset_zone(text: str) -> tzinfo | None:
    """Zone of a fixed offset: Z, UTC, GMT, UTC+1, -08:00; None for any other text."""
    plain = text.strip()
    if plain.upper() in ("Z", "UTC", "GMT"):
        return UTC
    found = _OFFSET.match(plain)
    if not found:
        return None
    sign, hours, minutes = found.groups()
    offset = timedelta(hours=int(hours), minutes=int(minutes or 0))
    if int(minutes or 0) > 59 or offset > timedelta(hours=15):
        return None
    return timezone(-offset if sign == "-" else offset)


def zone_in(text: str) -> tzinfo:
    """Zone of a fixed offset or an IANA name; SwimPlanError for anything else."""
    fixed = offset_zone(text)
    if fixed is not None:
        return fixed
    try:
        return zone_named(text.strip())
    except SwimPlanError as error:
        raise SwimPlanError(
            asked=tr("Asked for the time zone {zone!r}").format(zone=text.strip()),
            allowed=tr("A table's zone is an IANA name or a fixed offset"),
            remedy=tr("Write one such as Europe/Lisbon, UTC or UTC-8"),
        ) from error


def order_of(cells: Sequence[tuple[int, str]], asked: str, name: str) -> str:
    """In which order a table writes day, month and year; "ymd" where its dates leave no choice.

    ``cells`` are row numbers and dates as text. BadInputError where both readings make sense and ``asked`` does not
    choose, and where no one order reads every row.
    """
    open_orders = list(ORDERS)
    different: tuple[int, str, dict[str, date]] | None = None
    for row, text in cells:
        readings = dates_in(text)
        left = [order for order in open_orders if order in readings]
        if not left:
            raise BadInputError(
                layer=name,
                row=row,
                field="date",
                value=text,
                allowed=tr("The rows before it read as {orders}").format(orders=", ".join(open_orders))
                if readings
                else tr("That is no date"),
                remedy=tr("Write dates as 2027-06-05"),
            )
        open_orders = left
        if len(set(readings.values())) > 1 and (different is None or len(readings) < len(different[2])):
            different = (row, text, readings)
    if asked:
        if asked not in open_orders:
            row, text, readings = different or (*cells[0], {})
            raise BadInputError(
                layer=name,
                row=row,
                field="date",
                value=text,
                allowed=tr("It was to be read as {asked}, and only {orders} reads every row").format(
                    asked=asked, orders=", ".join(open_orders)
                ),
                remedy=tr("Correct DATE_ORDER or the rows"),
            )
        return asked
    if different is not None and len({different[2][order] for order in open_orders}) > 1:
        row, text, readings = different
        both = tr(" or ").join(f"{readings[order].isoformat()} ({order})" for order in open_orders)
        raise BadInputError(
            layer=name,
            row=row,
            field="date",
            value=text,
            allowed=tr("It may be {both}, and no other row tells which").format(both=both),
            remedy=tr("Give DATE_ORDER: dmy, mdy or ymd"),
        )
    return open_orders[0]


def printed_moment(day: date, since_midnight: timedelta, zone: tzinfo | None = None) -> PrintedMoment:
    """A day and a time since its midnight as one reading; 24:00 is midnight of the next day."""
    return PrintedMoment(naive=datetime.combine(day, time()) + since_midnight, zone=zone)


def _date(year: object, month: object, day: object) -> date | None:
    try:
        found = date(int(year), int(month), int(day))
    except (ValueError, OverflowError):
        return None
    return found if EARLIEST_YEAR <= found.year <= LATEST_YEAR else None


def _same(day: date | None) -> dict[str, date]:
    return {} if day is None else dict.fromkeys(ORDERS, day)


def _valid(days: dict[str, date | None]) -> dict[str, date]:
    return {order: day for order, day in days.items() if day is not None}
