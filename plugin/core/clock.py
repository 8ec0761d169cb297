"""The plan's clock: aware moments in the plan's zone, and seconds from the plan's start for the solvers."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta, timezone, tzinfo
from functools import lru_cache
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

import numpy as np

from .errors import NaiveTimeError, SwimPlanError
from .vendored import add_vendor_folder

UTC = timezone.utc
_DATE_AND_TIME = re.compile(r"^\d{4}-?\d{2}-?\d{2}[T ]\d{2}")  # a date alone would be a swim at midnight


@lru_cache(maxsize=64)
def zone_named(name: str) -> tzinfo:
    """Time zone of an IANA name; SwimPlanError where there is none of that name."""
    try:
        return _zone(name)
    except (KeyError, ValueError, OSError) as error:
        raise SwimPlanError(
            asked=f"Asked for the time zone {name!r}",
            allowed="Zones are named as in the IANA list",
            remedy="Write one such as Europe/Lisbon or UTC into the plan's settings",
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


def local_moment(naive: datetime, zone: tzinfo) -> datetime:
    """A clock reading in a zone as an aware moment.

    A reading that daylight saving skips, or that comes twice that night, is refused: it could be an hour wrong.
    """
    readings = [naive.replace(tzinfo=zone, fold=fold) for fold in (0, 1)]
    if readings[0].utcoffset() == readings[1].utcoffset():
        return readings[0]
    skipped = readings[0].astimezone(UTC).astimezone(zone).replace(tzinfo=None) != naive
    raise SwimPlanError(
        asked=f"Got the clock time {naive:%Y-%m-%d %H:%M} in {zone}",
        allowed="That time does not exist: clocks jump over it" if skipped else "That time comes twice that night",
        remedy=f"Write the offset, for example {readings[0].isoformat()} or {readings[1].isoformat()}",
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


def _unreadable(text: str) -> SwimPlanError:
    return SwimPlanError(
        asked=f"Got {text!r} for a date and time",
        allowed="Times are ISO 8601, date and time of day",
        remedy="Write it like 2027-06-05T10:00 or 2027-06-05T10:00+01:00",
    )


@dataclass(frozen=True, kw_only=True)
class PlanClock:
    """Seconds from the plan's start to and from aware moments.

    ``start`` is any aware moment, ``zone_name`` the IANA zone that times are shown in.
    """

    start: datetime
    zone_name: str

    def __post_init__(self) -> None:
        aware(self.start, "the plan's start")
        zone_named(self.zone_name)

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
