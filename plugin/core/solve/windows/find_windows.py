"""Departures merged into windows, and days ranked by them."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, datetime

import numpy as np

from ...errors import SwimPlanError
from ...results.windows import DayRanked, DepartureWindow, WindowEnd, WindowsFound
from ...water.tide import HW
from ...words import tr
from ..request import SwimRequest
from .departures import DeparturesSwum, swim_departures
from .limits import LIMITS
from .own_limits import depths_not_checked, route_length_m
from .tides_swum import range_needed, tides_swum, weak_needed
from .words import limit_words

MOST_DEPARTURES = 300_000
OFF_THE_ENDS_S = 900.0  # whoever leaves a little early or late is still in the window; common practice, no source


def departures_between(request: SwimRequest, start: datetime, end: datetime, step_min: float) -> np.ndarray:
    """Departures (n,) from start to end, both included, in seconds from the plan's start.

    SwimPlanError where there are none, or more than can be looked at.
    """
    first, last = request.clock.seconds(start), request.clock.seconds(end)
    count = int(np.floor((last - first) / (60.0 * step_min) + 1e-9)) + 1
    if not last > first:
        raise SwimPlanError(
            asked=tr("Asked for departures from {start} to {end}").format(start=start.isoformat(), end=end.isoformat()),
            allowed=tr("The first is before the last"),
            remedy=tr("Give a later end"),
        )
    if count > MOST_DEPARTURES:
        raise SwimPlanError(
            asked=tr("Asked for {count} departures").format(count=count),
            allowed=tr("At most {most_departures} are looked at").format(most_departures=MOST_DEPARTURES),
            remedy=tr("Take a longer step or fewer days"),
        )
    return first + 60.0 * step_min * np.arange(count)


def find_windows(
    request: SwimRequest,
    start: datetime,
    end: datetime,
    step_min: float,
    *,
    weak_kn: float | None = None,
    weak_for_min: float | None = None,
    progress: Callable[[float], None] | None = None,
    is_cancelled: Callable[[], bool] = bool,
) -> tuple[WindowsFound, DeparturesSwum]:
    """Swim the route at every departure of a span and say when it can be swum, on which days best, and at what tides.

    ``weak_kn`` and ``weak_for_min`` ask besides for the tides at which the stream at the stop farthest out stays at or
    below a rate for so long. StoppedError when stopped.
    """
    departures = departures_between(request, start, end, step_min)
    swum = swim_departures(request, departures, progress=progress, is_cancelled=is_cancelled)
    windows = merged_windows(request, swum, step_min)
    tides = tides_swum(request, swum, step_min, weak_kn)
    counts = np.bincount(swum.limit, minlength=len(LIMITS))
    found = WindowsFound(
        route=request.route.name,
        swimmer=request.swimmer.name,
        zone=request.clock.zone_name,
        start=request.clock.moment(departures[0]),
        end=request.clock.moment(departures[-1]),
        step_min=step_min,
        departures=len(departures),
        feasible=int(swum.feasible.sum()),
        windows=windows,
        days=days_ranked(windows),
        tides=tides,
        range_needed=range_needed(tides),
        weak_needed=None if weak_kn is None or weak_for_min is None else weak_needed(tides, weak_for_min),
        weak_kn=weak_kn,
        weak_for_min=weak_for_min,
        limits={LIMITS[code]: int(counts[code]) for code in range(1, len(LIMITS)) if counts[code]},
        warnings=request.warnings + depths_not_checked(request),
    )
    return found, swum


def merged_windows(request: SwimRequest, swum: DeparturesSwum, step_min: float) -> tuple[DepartureWindow, ...]:
    """Runs of feasible departures, with what stops the departures beside them."""
    edges = np.diff(np.concatenate([[False], swum.feasible, [False]]).astype(int))
    runs = zip(np.flatnonzero(edges == 1), np.flatnonzero(edges == -1) - 1)
    return tuple(_window(request, swum, int(first), int(last)) for first, last in runs)


def _window(request: SwimRequest, swum: DeparturesSwum, first: int, last: int) -> DepartureWindow:
    clock, swimmer = request.clock, request.swimmer
    total = swum.total_s[first : last + 1]
    best = first + _best(swum.depart_s[first : last + 1], total)
    dusk = (swum.dusk_s[best] - swum.arrive_s[best, -1]) / 60.0
    return DepartureWindow(
        first=clock.moment(swum.depart_s[first]),
        last=clock.moment(swum.depart_s[last]),
        best=clock.moment(swum.depart_s[best]),
        ends=clock.moment(swum.arrive_s[best, -1]),
        best_min=float(swum.total_s[best]) / 60.0,
        worst_min=float(total.max()) / 60.0,
        swim_min=float(swum.swim_s[best]) / 60.0,
        water_m=float(swum.swim_s[best]) * swimmer.pace_m_s,
        departures=last - first + 1,
        opens=_end(request, swum, first - 1),
        closes=_end(request, swum, last + 1),
        spare_dusk_min=float(dusk) if np.isfinite(dusk) else None,
        spare_range_m=swimmer.range_m - route_length_m(request),
        spare_hours_min=60.0 * swimmer.max_hours - float(swum.total_s[best]) / 60.0,
        spare_ahead_m_s=float(swum.least_ahead_m_s[best]),
        spare_across_m_s=float(swum.spare_across_m_s[best]),
        extrapolated=bool(swum.extrapolated[first : last + 1].any()),
        **_tide_of(request, float(swum.depart_s[best])),
    )


def _best(depart_s: np.ndarray, total_s: np.ndarray) -> int:
    """The row of the quickest departure that is not at the window's edge, where the next one is stopped: a quarter of
    an hour off both ends, in a short window a third of it."""
    off_s = min(OFF_THE_ENDS_S, (depart_s[-1] - depart_s[0]) / 3.0)
    within = (depart_s >= depart_s[0] + off_s) & (depart_s <= depart_s[-1] - off_s)
    if not within.any():  # its departures are farther apart than that
        within = np.abs(depart_s - depart_s.mean()) <= np.abs(depart_s - depart_s.mean()).min() + 1e-6
    return int(np.argmin(np.where(within, np.round(total_s), np.inf)))


def _end(request: SwimRequest, swum: DeparturesSwum, beside: int) -> WindowEnd:
    """What stops the departure beside a window."""
    if not 0 <= beside < len(swum.depart_s):
        return WindowEnd(limit="span", words=tr("the time looked at ends"))
    return WindowEnd(limit=LIMITS[int(swum.limit[beside])], words=limit_words(request, swum, beside))


def _tide_of(request: SwimRequest, t_s: float) -> dict[str, float | None]:
    """Range of the nearest high water and hours from it."""
    known = {"tide_range_m": None, "hours_from_hw": None}
    waters = np.empty(0) if request.tide is None else request.tide.reference_times_s(HW)
    if len(waters):
        nearest = int(np.argmin(np.abs(waters - t_s)))
        range_m, hours = float(request.tide.ranges_m(HW)[nearest]), float(request.tide.hours_from(HW, t_s))
        # A tide that is a day away says nothing of this one.
        if abs(hours) <= 13.0:
            known = {"tide_range_m": range_m if np.isfinite(range_m) else None, "hours_from_hw": hours}
    return known


def days_ranked(windows: tuple[DepartureWindow, ...]) -> tuple[DayRanked, ...]:
    """The days with windows, the longest window first, then the quickest swim, then the earlier day.

    A window counts for the day, by the plan's clock, on which it opens.
    """
    by_day: dict[date, list[DepartureWindow]] = {}
    for window in windows:
        by_day.setdefault(window.first.date(), []).append(window)
    longest = {day: max(found, key=lambda one: (one.open_min, -one.best_min)) for day, found in by_day.items()}
    order = sorted(longest, key=lambda day: (-longest[day].open_min, longest[day].best_min, day))
    return tuple(
        DayRanked(
            rank=rank,
            day=day,
            longest_min=longest[day].open_min,
            open_min=sum(one.open_min for one in by_day[day]),
            windows=len(by_day[day]),
            best=longest[day].best,
            best_min=longest[day].best_min,
            tide_range_m=longest[day].tide_range_m,
        )
        for rank, day in enumerate(order, start=1)
    )
