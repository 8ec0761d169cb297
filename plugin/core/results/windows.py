"""When to go: windows of departures, days ranked, and the tide that a route needs."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from ..clock import elapsed
from .plain_values import iso_time, rounded


@dataclass(frozen=True, kw_only=True)
class WindowEnd:
    """What ends a window: ``limit`` (stream, unknown, dark, hours, range, land, closed, ferry, depth, or span where the
    time looked at ends) and the same in words."""

    limit: str
    words: str


@dataclass(frozen=True, kw_only=True)
class DepartureWindow:
    """Neighbouring departures that can all be swum.

    ``best`` takes the fewest minutes, ``best_min``, the earliest of equals. Of the best one: ``ends`` when it is home,
    ``swim_min`` without the stays, ``water_m`` the way through the water (the effort), ``spare_dusk_min`` and
    ``spare_hours_min`` before civil dusk and the swimmer's hours, None where there is no dusk, ``spare_range_m`` of the
    swimmer's range; ``spare_ahead_m_s`` the
    least speed toward a mark, ``spare_across_m_s`` what is left of the way made when the stream across is taken off.
    ``tide_range_m`` and ``hours_from_hw`` are those of the tide at the best departure, None where not known.
    """

    first: datetime
    last: datetime
    best: datetime
    ends: datetime
    best_min: float
    worst_min: float
    swim_min: float
    water_m: float
    departures: int
    opens: WindowEnd
    closes: WindowEnd
    spare_dusk_min: float | None
    spare_hours_min: float
    spare_range_m: float
    spare_ahead_m_s: float
    spare_across_m_s: float
    tide_range_m: float | None
    hours_from_hw: float | None
    extrapolated: bool

    @property
    def open_min(self) -> float:
        """Minutes from the first departure to the last."""
        return elapsed(self.first, self.last).total_seconds() / 60.0


@dataclass(frozen=True, kw_only=True)
class DayRanked:
    """A day of the plan's zone that has windows: ``rank`` 1 has the longest one. ``best`` is in that one."""

    rank: int
    day: date
    longest_min: float
    open_min: float
    windows: int
    best: datetime
    best_min: float
    tide_range_m: float | None


@dataclass(frozen=True, kw_only=True)
class TideSwum:
    """One tide, around a high water: its range, for how many minutes of departures the stream lets the route be swum,
    and, where a weak stream was asked for, the longest time at or below it at the stop farthest out."""

    high_water: datetime
    range_m: float | None
    open_min: float
    weak_min: float | None = None


@dataclass(frozen=True, kw_only=True)
class RangeNeeded:
    """The tide that something needs: every tide looked at up to ``up_to_m`` gives it, the one of ``not_at_m`` does not.

    None where no tide gives it, or every one does; ``between_m`` is the range at which it is just given, interpolated
    between tides, None where it was not looked for. ``days`` are those whose every or some tide gives it.
    """

    up_to_m: float | None
    not_at_m: float | None
    between_m: float | None
    days: tuple[date, ...]


@dataclass(frozen=True, kw_only=True)
class WindowsFound:
    """The windows of a route between two aware moments, every ``step_min``."""

    route: str
    swimmer: str
    zone: str
    start: datetime
    end: datetime
    step_min: float
    departures: int
    feasible: int
    windows: tuple[DepartureWindow, ...]
    days: tuple[DayRanked, ...]
    tides: tuple[TideSwum, ...]
    range_needed: RangeNeeded
    weak_needed: RangeNeeded | None
    weak_kn: float | None
    weak_for_min: float | None
    limits: dict[str, int]
    warnings: tuple[str, ...] = ()


def windows_dict(found: WindowsFound, *, version: str) -> dict[str, object]:
    """The windows as JSON's own kinds of value; None where something is not known."""
    return {
        "tideleg": version,
        "route": found.route,
        "swimmer": found.swimmer,
        "zone": found.zone,
        "from": iso_time(found.start, where="from"),
        "to": iso_time(found.end, where="to"),
        "step_min": found.step_min,
        "departures": found.departures,
        "feasible_departures": found.feasible,
        "stopped_by": dict(found.limits),
        "windows": [_window(window) for window in found.windows],
        "days": [_day(day) for day in found.days],
        "tides": [_tide(tide) for tide in found.tides],
        "range_needed": _needed(found.range_needed),
        "weak_stream": None
        if found.weak_needed is None
        else {"at_most_kn": found.weak_kn, "for_min": found.weak_for_min, **_needed(found.weak_needed)},
        "warnings": list(found.warnings),
    }


def _window(window: DepartureWindow) -> dict[str, object]:
    return {
        "first": iso_time(window.first, where="first"),
        "last": iso_time(window.last, where="last"),
        "best": iso_time(window.best, where="best"),
        "ends": iso_time(window.ends, where="ends"),
        "open_min": rounded(window.open_min),
        "departures": window.departures,
        "best_min": rounded(window.best_min),
        "worst_min": rounded(window.worst_min),
        "swim_min": rounded(window.swim_min),
        "water_m": rounded(window.water_m),
        "opens": {"limit": window.opens.limit, "words": window.opens.words},
        "closes": {"limit": window.closes.limit, "words": window.closes.words},
        "spare_dusk_min": rounded(window.spare_dusk_min),
        "spare_hours_min": rounded(window.spare_hours_min),
        "spare_range_m": rounded(window.spare_range_m),
        "spare_ahead_m_s": rounded(window.spare_ahead_m_s),
        "spare_across_m_s": rounded(window.spare_across_m_s),
        "tide_range_m": rounded(window.tide_range_m),
        "hours_from_hw": rounded(window.hours_from_hw),
        "stream_extrapolated": window.extrapolated,
    }


def _day(day: DayRanked) -> dict[str, object]:
    return {
        "rank": day.rank,
        "day": day.day.isoformat(),
        "longest_window_min": rounded(day.longest_min),
        "open_min": rounded(day.open_min),
        "windows": day.windows,
        "best": iso_time(day.best, where="best"),
        "best_min": rounded(day.best_min),
        "tide_range_m": rounded(day.tide_range_m),
    }


def _tide(tide: TideSwum) -> dict[str, object]:
    return {
        "high_water": iso_time(tide.high_water, where="high_water"),
        "range_m": rounded(tide.range_m),
        "open_min": rounded(tide.open_min),
        "weak_min": rounded(tide.weak_min),
    }


def _needed(needed: RangeNeeded) -> dict[str, object]:
    return {
        "range_up_to_m": rounded(needed.up_to_m),
        "range_not_at_m": rounded(needed.not_at_m),
        "range_between_m": rounded(needed.between_m),
        "days": [day.isoformat() for day in needed.days],
    }
