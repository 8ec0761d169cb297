"""Reads the moments of columns that hold UTC, whatever shape QGIS gives them in.

What QGIS gives back for a DateTime column of a GeoPackage that holds `2026-06-21T10:05:00Z` (tried, see
tests/qgis/test_moments.py):

- 3.22: local time spec with the UTC digits: its clock says 10:05 in any zone, so its own conversion to UTC would shift
  the instant by the machine's offset. In the hour a zone skips in spring it is even called invalid, digits intact.
- 3.40: UTC time spec. A stored value without `Z` comes as local time spec with the stored digits.

In a column that is UTC by contract the digits of a local time spec are therefore UTC digits, in both.
"""

from __future__ import annotations

import re
from datetime import datetime, timedelta, timezone

from qgis.PyQt.QtCore import QDateTime, Qt

from ..core.errors import BadInputError
from ..words import tr

_EPOCH = datetime(1970, 1, 1, tzinfo=timezone.utc)
_TEXT = re.compile(
    r"^(?P<year>\d{4})[-/](?P<month>\d\d)[-/](?P<day>\d\d)[T ](?P<hour>\d\d):(?P<minute>\d\d)"
    r"(:(?P<second>\d\d)(\.(?P<fraction>\d{1,6})\d*)?)?"
    r" ?(?P<offset>[Zz]|(?P<sign>[+-])(?P<off_hours>\d\d)(:?(?P<off_minutes>\d\d))?)?$"
)


def utc_moment(value: object, *, layer: str, row: object, field: str) -> datetime:
    """The instant an attribute of a UTC column means, as an aware datetime in UTC.

    Takes a QDateTime of any time spec, ISO 8601 text with or without offset, the forms `2026/06/21 10:05:00+00` and
    `2026-06-21 10:05:00`, and aware datetimes. Clock digits without a zone are UTC. A datetime object without a zone
    comes from code, not from a column, and is refused. Raises BadInputError for it and for what cannot be read.
    """
    try:
        moment = _read(value)
    except (ValueError, OverflowError):
        moment = None
    if moment is None:
        raise BadInputError(
            layer=layer,
            row=row,
            field=field,
            value=_shown(value),
            allowed=tr("Allowed is a date and time in UTC"),
            remedy=tr("Write it like 2027-06-05T09:40:00Z"),
        )
    return moment


def is_without_zone(value: object) -> bool:
    """Whether it is text with clock digits and no zone, which ``utc_moment`` takes for UTC."""
    match = _TEXT.match(value.strip()) if isinstance(value, str) else None
    return match is not None and match["offset"] is None


def _read(value: object) -> datetime | None:
    if isinstance(value, QDateTime):
        return _from_qt(value)
    if isinstance(value, datetime):
        return value.astimezone(timezone.utc) if value.tzinfo is not None else None
    if isinstance(value, str):
        return _from_text(value.strip())
    return None


def _from_qt(value: QDateTime) -> datetime | None:
    """`isValid()` is not asked of local digits: an hour the machine's zone skips is a fine hour in UTC."""
    if value.isNull() or not value.date().isValid() or not value.time().isValid():
        return None
    if value.timeSpec() != Qt.TimeSpec.LocalTime:
        return _EPOCH + timedelta(milliseconds=value.toMSecsSinceEpoch())
    date, time = value.date(), value.time()
    return datetime(
        date.year(),
        date.month(),
        date.day(),
        time.hour(),
        time.minute(),
        time.second(),
        time.msec() * 1000,
        tzinfo=timezone.utc,
    )


def _from_text(text: str) -> datetime | None:
    match = _TEXT.match(text)
    if match is None:
        return None
    part = match.groupdict()
    digits = [int(part[name]) for name in ("year", "month", "day", "hour", "minute")]
    microsecond = int((part["fraction"] or "0").ljust(6, "0"))
    moment = datetime(*digits, int(part["second"] or 0), microsecond, tzinfo=timezone.utc)
    if part["sign"] is None:
        return moment
    offset = timezone(timedelta(hours=int(part["off_hours"]), minutes=int(part["off_minutes"] or 0)))
    if part["sign"] == "-":
        offset = timezone(-offset.utcoffset(None))
    return moment.replace(tzinfo=offset).astimezone(timezone.utc)


def _shown(value: object) -> object:
    if isinstance(value, QDateTime):
        return value.toString("yyyy-MM-dd HH:mm:ss") or tr("no time")
    return tr("no time") if value is None else str(value)
