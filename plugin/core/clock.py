"""The plan's clock: aware moments in the plan's zone, and seconds from the plan's start for the solvers."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta, timezone, tzinfo
from functools import lru_cache
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

import numpy as np

from .errors import NaiveTimeError, SwimPlanError
from .vendored import add_vendor_folder
from .words import tr

UTC = timezone.utc
_DATE_AND_TIME = re.compile(r"^\d{4}-?\d{2}-?\d{2}[T ]\d{2}")  # a date alone would be a swim at midnight


@lru_cache(maxsize=64)
def zone_named(name: str) -> tzinfo:
    """Time zone of an IANA name; SwimPlanError where there is none of that name."""
    try:
        return _zone(name)
    except (KeyError, ValueError, OSError) as error:
        raise SwimPlanError(
            asked=tr("Asked for the time zone {name!r}").format(name=name),
            allowed=tr("Zones are named as in the IANA list"),
            remedy=tr("Write one such as Europe/Lisbon or UTC into the plan's settings"),
        ) from error


def _zone(name: str) -> ZoneInfo:
    try:
        return ZoneInfo(name)
    except ZoneInfoNotFoundError:
        # Windows has no zone data of its own: the plugin carries them.
        add_vendor_folder()
        return ZoneInfo(name)


def aware(moment: datetime, where: str = "") -> datetime:
    """The moment itself; NaiveTimeError when it has no offset."""
    if moment.tzinfo is None or moment.utcoffset() is None:
        raise NaiveTimeError(value=moment.isoformat(), where=where)
    return moment


def later(moment: datetime, by: timedelta) -> datetime:
    """The moment so much later in its own zone: elapsed time, also through a night on which clocks change."""
    return (aware(moment).astimezone(UTC) + by).astimezone(moment.tzinfo)


def elapsed(since: datetime, until: datetime) -> timedelta:
    """Time that passes between two moments, negative backwards.

    Python takes two moments of one zone apart by their digits, an hour wrong where clocks change between them.
    """
    return aware(until).astimezone(UTC) - aware(since).astimezone(UTC)


def local_moment(naive: datetime, zone: tzinfo) -> datetime:
    """A clock reading in a zone as an aware moment.

    A reading that daylight saving skips, or that comes twice that night, is refused: it could be an hour wrong.
    """
    readings = [naive.replace(tzinfo=zone, fold=fold) for fold in (0, 1)]
    if readings[0].utcoffset() == readings[1].utcoffset():
        return readings[0]
    skipped = readings[0].astimezone(UTC).astimezone(zone).replace(tzinfo=None) != naive
    raise SwimPlanError(
        asked=tr("Got the clock time {naive:%Y-%m-%d %H:%M} in {zone}").format(naive=naive, zone=zone),
        allowed=tr("That time does not exist: clocks jump over it")
        if skipped
        else tr("That time comes twice that night"),
        remedy=tr("Write the offset, for example {earlier} or {later}").format(
            earlier=readings[0].isoformat(), later=readings[1].isoformat()
        ),
    )


def moment_from_text(text: str, zone: tzinfo) -> datetime:
    """An aware moment from ISO 8601; without an offset the reading is taken in ``zone``."""
    trimmed = text.strip()
    if not _DATE_AND_TIME.match(trimmed):
        raise _unreadable(text)
    normal = trimmed[:-1] + "+00:00" if trimmed.endswith(("Z", "z")) else trimmed
    try:
        moment = datetime.fromisoformat(normal)
    except ValueError as error:
        raise _unreadable(text) from error
    return local_moment(moment, zone) if moment.tzinfo is None else moment


def span_from_texts(first: str, last: str, zone: tzinfo) -> tuple[datetime, datetime]:
    """Aware moments of a span: each text a date and time as in ``moment_from_text``, or a date alone.

    A first date means its midnight in ``zone``, a last one the midnight that ends it: a span of one date is that day.
    """
    ends = [_day_edge(text, zone, shift) for text, shift in ((first, 0), (last, 1))]
    if not ends[0].astimezone(UTC) < ends[1].astimezone(UTC):
        raise SwimPlanError(
            asked=tr("Asked for the time from {first!r} to {last!r}").format(first=first, last=last),
            allowed=tr("The beginning is before the end"),
            remedy=tr("Give a later end"),
        )
    return ends[0], ends[1]


def _day_edge(text: str, zone: tzinfo, days: int) -> datetime:
    try:
        day = date.fromisoformat(text.strip())
    except ValueError:
        return moment_from_text(text, zone)
    # Where clocks skip midnight the day starts at the first moment after it.
    return datetime.combine(day + timedelta(days=days), time(0), tzinfo=zone)


def _unreadable(text: str) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("Got {text!r} for a date and time").format(text=text),
        allowed=tr("Times are ISO 8601, date and time of day"),
        remedy=tr("Write it like 2027-06-05T10:00 or 2027-06-05T10:00+01:00"),
    )


@dataclass(frozen=True, kw_only=True)
class PlanClock:
    """Seconds from the plan's start to and from aware moments.

    ``start`` is any aware moment, ``zone_name`` the IANA zone that times are shown in. ``end`` is the last moment asked
    for, where that is known: water that is predicted is predicted until then.
    """

    start: datetime
    zone_name: str
    end: datetime | None = None

    def __post_init__(self) -> None:
        aware(self.start, tr("the plan's start"))
        zone_named(self.zone_name)

    @property
    def end_s(self) -> float:
        """Seconds from the start to the end, 0 where none is known."""
        return 0.0 if self.end is None else self.seconds(self.end)

    @property
    def zone(self) -> tzinfo:
        """The zone that times are shown in."""
        return zone_named(self.zone_name)

    def seconds(self, moment: datetime) -> float:
        """Seconds from the start to an aware moment, negative before it."""
        # In UTC: the difference of two moments of one zone is that of its clocks, an hour off over a change of them.
        return (aware(moment).astimezone(UTC) - self.start.astimezone(UTC)).total_seconds()

    def seconds_of(self, moments: Iterable[datetime]) -> np.ndarray:
        """Seconds from the start for a sequence of aware moments, shape (n,)."""
        return np.array([self.seconds(moment) for moment in moments], dtype=float)

    def moment(self, seconds: float) -> datetime | None:
        """The moment so many seconds after the start, in the plan's zone; None for a missing time."""
        if not np.isfinite(seconds):
            return None
        utc = self.start.astimezone(UTC) + timedelta(seconds=float(seconds))
        return utc.astimezone(self.zone)
