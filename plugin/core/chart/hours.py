"""When a rule or a sailing is in force: hours of the day, dates of the year, or whole moments."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta, timezone, tzinfo

from ..clock import aware, moment_from_text
from ..errors import SwimPlanError
from ..words import tr

_HOUR = re.compile(r"^(\d{1,2}):(\d{2})(?::(\d{2}))?$")
_DAY_OF_YEAR = re.compile(r"^--(\d{2})-?(\d{2})$")
_DATE = re.compile(r"^(\d{4})-?(\d{2})-?(\d{2})$")
_OGR_MOMENT = re.compile(
    r"^(\d{4})[/-](\d{2})[/-](\d{2})[ T](\d{1,2}:\d{2}(?::\d{2})?(?:\.\d+)?)(Z|[+-]\d{2}(?::?\d{2})?)?$"
)


@dataclass(frozen=True, kw_only=True)
class InForce:
    """The time in which something is in force; both ends None means always.

    Both ends are of one kind: clock times (every day, over midnight where the end is the smaller), (month, day) pairs
    (every year, over New Year likewise, last day included), dates (last day included) or aware moments.
    """

    start: time | tuple[int, int] | date | datetime | None = None
    end: time | tuple[int, int] | date | datetime | None = None

    def overlaps(self, first: datetime, last: datetime, zone: tzinfo) -> bool:
        """Whether any part of the span of aware moments falls into it; clock times are those of ``zone``."""
        first, last = aware(first).astimezone(zone), aware(last).astimezone(zone)
        if self.start is None and self.end is None:
            return True
        if isinstance(self.start or self.end, time):
            return self._overlaps_clock(first, last, zone)
        days = [first.date() + timedelta(days=n) for n in range((last.date() - first.date()).days + 1)]
        if isinstance(self.start or self.end, tuple):
            return any(self._holds_day_of_year((day.month, day.day)) for day in days)
        if isinstance(self.start or self.end, datetime):
            starts = self.start is None or _utc(last) >= _utc(self.start)
            return starts and (self.end is None or _utc(first) <= _utc(self.end))
        return any((self.start is None or day >= self.start) and (self.end is None or day <= self.end) for day in days)

    def _overlaps_clock(self, first: datetime, last: datetime, zone: tzinfo) -> bool:
        start, end = self.start or time(0), self.end or time(0)
        for shift in range(-1, (last.date() - first.date()).days + 1):
            day = first.date() + timedelta(days=shift)
            opens = datetime.combine(day, start, tzinfo=zone)
            # An hour that comes twice is closed both times: the rule ends with the second one.
            closes = datetime.combine(day + timedelta(days=1 if end <= start else 0), end, tzinfo=zone).replace(fold=1)
            if _utc(first) <= _utc(closes) and _utc(last) >= _utc(opens):
                return True
        return False

    def _holds_day_of_year(self, day: tuple[int, int]) -> bool:
        start, end = self.start or (1, 1), self.end or (12, 31)
        return start <= day <= end if start <= end else day >= start or day <= end

    def words(self) -> str:
        """The time in words for a message, empty for always."""
        if self.start is None and self.end is None:
            return ""
        return tr("{first} to {last}").format(
            first=_word(self.start) or tr("the beginning"), last=_word(self.end) or tr("further notice")
        )


def in_force_from_text(start: str, end: str, zone: tzinfo) -> InForce:
    """``InForce`` from the texts of a table: HH:MM, --MMDD, YYYY-MM-DD or a date-time; empty or None is open.

    SwimPlanError where a text cannot be read or the two ends are of different kinds.
    """
    ends = [_parsed(text, zone) for text in (start, end)]
    kinds = {type(value) for value in ends if value is not None}
    if kinds == {date, datetime}:
        ends, kinds = [_day_begins(ends[0], zone), _day_begins(ends[1], zone, days=1)], {datetime}
    if len(kinds) > 1:
        raise SwimPlanError(
            asked=tr("Got the times {start!r} and {end!r}").format(start=start, end=end),
            allowed=tr("Both ends are clock times, both dates, or both days of the year"),
            remedy=tr("Write both the same way; use two rows for a season with daily hours"),
        )
    return InForce(start=ends[0], end=ends[1])


def sailing_from_text(text: str, zone: tzinfo) -> time | datetime:
    """A sailing's time: a clock time (every day, in the plan's zone) or an aware moment."""
    value = _parsed(text, zone)
    if isinstance(value, time) or isinstance(value, datetime):
        return value
    raise SwimPlanError(
        asked=tr("Got {text!r} for the time of a sailing").format(text=text),
        allowed=tr("It is a clock time such as 10:05 (every day) or a date and time"),
        remedy=tr("Correct the ferries table"),
    )


def sailings_between(sailing: time | datetime, first: datetime, last: datetime, zone: tzinfo) -> list[datetime]:
    """The moments of a sailing within a span of aware moments."""
    if isinstance(sailing, datetime):
        return [sailing] if _utc(first) <= _utc(sailing) <= _utc(last) else []
    day, end = first.astimezone(zone).date(), last.astimezone(zone).date()
    found = {}
    while day <= end:
        # A clock time that comes twice is a sailing twice: nobody knows which the timetable means.
        for fold in (0, 1):
            moment = datetime.combine(day, sailing, tzinfo=zone).replace(fold=fold)
            found[_utc(moment)] = moment
        day += timedelta(days=1)
    return [moment for utc, moment in sorted(found.items()) if _utc(first) <= utc <= _utc(last)]


def _utc(moment: datetime) -> datetime:
    """Moments of one zone compare by their clocks, an hour wrong over a change of them; in UTC they do not."""
    return moment.astimezone(timezone.utc)


def _parsed(text: str | None, zone: tzinfo) -> time | tuple[int, int] | date | datetime | None:
    text = (text or "").strip()
    if not text:
        return None
    try:
        if match := _HOUR.match(text):
            # 24:00 closes a day.
            return time(0) if text.startswith("24:00") else time(*(int(part or 0) for part in match.groups()))
        if match := _DAY_OF_YEAR.match(text):
            month, day = int(match[1]), int(match[2])
            date(2028, month, day)
            return month, day
        if match := _DATE.match(text):
            return date(*(int(part) for part in match.groups()))
    except ValueError as error:
        raise _unreadable(text) from error
    if match := _OGR_MOMENT.match(text):
        year, month, day, clock, offset = match.groups()
        hours, _, rest = clock.partition(":")
        return moment_from_text(f"{year}-{month}-{day}T{int(hours):02d}:{rest}{_full(offset)}", zone)
    raise _unreadable(text)


def _full(offset: str | None) -> str:
    if offset in (None, "Z"):
        return "+00:00" if offset else ""
    digits = offset[1:].replace(":", "").ljust(4, "0")
    return f"{offset[0]}{digits[:2]}:{digits[2:]}"


def _day_begins(value: date | datetime | None, zone: tzinfo, days: int = 0) -> datetime | None:
    """A date as the moment at which it, or the day so many days later, begins; a moment as it is."""
    if value is None or isinstance(value, datetime):
        return value
    return datetime.combine(value + timedelta(days=days), time(0), tzinfo=zone)


def _unreadable(text: str) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("Got {text!r} for a time").format(text=text),
        allowed=tr("It is HH:MM, YYYY-MM-DD, a date and time, or --MMDD"),
        remedy=tr("Correct it, or leave it empty for always"),
    )


def _word(value: time | tuple[int, int] | date | datetime | None) -> str:
    if value is None:
        return ""
    if isinstance(value, tuple):
        return f"{date(2028, *value):%d %b}"
    if isinstance(value, time):
        return f"{value:%H:%M}"
    return f"{value:%Y-%m-%d %H:%M}" if isinstance(value, datetime) else f"{value:%Y-%m-%d}"
