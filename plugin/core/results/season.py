"""A season's good windows, each with the swim that is planned in it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from ..words import tr
from .flag import Flag
from .swim_plan import SwimPlan
from .windows import DepartureWindow, WindowsFound


@dataclass(frozen=True, kw_only=True)
class SeasonSwim:
    """A window and the swim planned in it, its turn back included.

    ``is_safe`` is whether every stop is left in time, and nothing stops the swim: where no departure tried in the
    window is so, this is the quickest of them.
    """

    window: DepartureWindow
    swim: SwimPlan

    @property
    def is_safe(self) -> bool:
        """Whether the plan leaves every stop in time."""
        return not grave_flags(self.swim)


def grave_flags(swim: SwimPlan) -> tuple[Flag, ...]:
    """What keeps a planned swim from being a good one: stops, and stops left after their turn back."""
    return tuple(flag for flag in swim.flags if flag.severity == "stop" or flag.kind == "over_time")


def good_windows(found: WindowsFound, *, most_days: int, each: bool, least_min: float) -> tuple[DepartureWindow, ...]:
    """The windows of the best days, in the order of time: of each day every one or, without ``each``, its longest.

    Windows shorter than ``least_min`` are none; a window counts for the day on which it opens.
    """
    kept: list[DepartureWindow] = []
    for day in found.days[:most_days]:
        windows = [one for one in found.windows if one.first.date() == day.day and one.open_min >= least_min]
        longest = max(windows, key=lambda one: (one.open_min, -one.best_min), default=None)
        kept += windows if each or longest is None else [longest]
    return tuple(sorted(kept, key=lambda one: one.first.timestamp()))


def days_of(found: WindowsFound) -> tuple[date, date]:
    """The first and the last day looked at; a span that ends at midnight ends with the day before."""
    return found.start.date(), max(found.start, found.end - timedelta(seconds=1)).date()


def days_without(found: WindowsFound) -> tuple[date, ...]:
    """The days looked at, by the plan's clock, of which no window has a departure."""
    first, last = days_of(found)
    days = (first + timedelta(days=number) for number in range((last - first).days + 1))
    spans = [(window.first.date(), window.last.date()) for window in found.windows]
    return tuple(day for day in days if not any(opens <= day <= closes for opens, closes in spans))


def days_without_words(found: WindowsFound, most: int | None = None) -> str:
    """``Days without a window: 06-11, 06-12``: so many of them, then how many more; empty where every day has one."""
    days = days_without(found)
    if not days:
        return ""
    told = days[:most]
    more = f" (+{len(days) - len(told)})" if len(told) < len(days) else ""
    return tr("Days without a window: {days}").format(days=", ".join(f"{day:%m-%d}" for day in told) + more)
