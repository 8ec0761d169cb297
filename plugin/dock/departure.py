"""The departure as a clock of the plan's zone shows it: which to begin with, and what typed digits mean."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime, time, timedelta, tzinfo

from qgis.PyQt.QtCore import QDate, QDateTime, Qt, QTime

from ..core.clock import UTC, local_moment
from ..core.results.card import offset_text
from ..layers_in.copied_source import CopiedSource
from ..layers_in.moments import utc_moment

MORNING = time(10, 0)
STEP_MIN = 10


def tide_moments(tides: CopiedSource | None) -> list[datetime]:
    """When the plan's high and low waters are; empty without any. BadInputError for a time that cannot be read."""
    rows = tides.getFeatures() if tides is not None else ()
    return [utc_moment(row.attribute("time"), layer=tides.sourceName(), row=row.id(), field="time") for row in rows]


def first_departure(tides: Iterable[datetime], now: datetime, zone: tzinfo) -> datetime:
    """What to show first: the next ten minutes where the tides hold today, else ten in the morning half-way through
    them; without tides tomorrow at ten."""
    moments = sorted(tides)
    if moments and moments[0] <= now <= moments[-1]:
        rest = timedelta(minutes=now.minute % STEP_MIN, seconds=now.second, microseconds=now.microsecond)
        return (now - rest + timedelta(minutes=STEP_MIN)).astimezone(zone)
    middle = moments[0] + (moments[-1] - moments[0]) / 2 if moments else now + timedelta(days=1)
    # Through UTC: where clocks jump over ten o'clock that night, the hour after it is meant.
    return datetime.combine(middle.astimezone(zone).date(), MORNING, tzinfo=zone).astimezone(UTC).astimezone(zone)


def digits_of(moment: datetime) -> QDateTime:
    """The clock's digits for an editor of dates.

    They are called UTC there, so that an hour which this machine's own zone skips can be shown and typed.
    """
    return QDateTime(QDate(moment.year, moment.month, moment.day), QTime(moment.hour, moment.minute), Qt.TimeSpec.UTC)


def moment_of(digits: QDateTime, zone: tzinfo) -> datetime:
    """What the digits mean in the plan's zone. SwimPlanError for an hour that is skipped or comes twice."""
    return local_moment(datetime.fromisoformat(digits.toString("yyyy-MM-ddTHH:mm")), zone)


def days_later(moment: datetime, days: int) -> datetime:
    """The same digits of the clock so many days later; where clocks jump over them that night, the hour after them."""
    shown = datetime.combine(moment.date() + timedelta(days=days), moment.time(), tzinfo=moment.tzinfo)
    return shown.astimezone(UTC).astimezone(moment.tzinfo)


def zone_words(moment: datetime, zone_name: str) -> str:
    """``Atlantic/Azores, UTC-1``: the plan's zone and its offset at that moment."""
    offset = offset_text(moment)
    return zone_name if zone_name == offset else f"{zone_name}, {offset}"
