"""Times and numbers as JSON's own kinds of value."""

from __future__ import annotations

from datetime import datetime, timedelta

from ..clock import later
from ..errors import NaiveTimeError


def iso_time(moment: datetime | None, *, where: str) -> str | None:
    """ISO 8601 with offset, to the nearest second; None stays None; a naive time is refused."""
    if moment is None:
        return None
    if moment.utcoffset() is None:
        raise NaiveTimeError(value=moment, where=where)
    return nearest_second(moment).isoformat(timespec="seconds")


def nearest_second(moment: datetime) -> datetime:
    """The moment without its fraction of a second, rounded half up."""
    return later(moment, timedelta(microseconds=500_000)).replace(microsecond=0)


def rounded(value: float | None) -> float | None:
    """To a thousandth, None as it is."""
    return None if value is None else round(float(value), 3) + 0.0
