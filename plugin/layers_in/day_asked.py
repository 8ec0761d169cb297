"""A place and a day asked of a plan's water."""

from __future__ import annotations

from datetime import date, datetime
from pathlib import Path

from ..core.clock import PlanClock, span_from_texts, zone_named
from ..core.errors import SwimPlanError
from ..core.geodesy import check_position
from ..core.results.stream_day import StreamDay
from ..core.solve.stream_day import stream_day
from ..plan_package.store import read_settings
from ..words import tr
from .water_in import water_at


def stream_day_asked(
    plan: str | Path, *, lon: float, lat: float, day: str, step_min: float, below_kn: float
) -> StreamDay:
    """The stream at a place in degrees on a day of the plan's zone, from midnight to midnight."""
    check_position(lon, lat, tr("The place"))
    zone_name = read_settings(plan)["zone"]
    start, end = midnights(day, zone_name)
    clock = PlanClock(start=start, zone_name=zone_name)
    warnings: list[str] = []
    field, frame = water_at(plan, lon, lat, clock, warnings)
    return stream_day(
        field,
        frame,
        clock,
        lon=lon,
        lat=lat,
        start=start,
        end=end,
        step_min=step_min,
        below_kn=below_kn,
        warnings=tuple(warnings),
    )


def midnights(day: str, zone_name: str) -> tuple[datetime, datetime]:
    """The midnights that bound a day."""
    zone = zone_named(zone_name)
    try:
        first = date.fromisoformat(day.strip())
    except ValueError as error:
        raise SwimPlanError(
            asked=tr("Got {day!r} for a day").format(day=day),
            allowed=tr("A day is year-month-day"),
            remedy=tr("Write it like 2027-06-26"),
        ) from error
    return span_from_texts(first.isoformat(), first.isoformat(), zone)
