"""Swims home at many leaving times, in the water expected and on the bad days."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ...water.uncertain import worse_water
from ..quick_legs import quick_legs
from ..request import SwimRequest
from ..swim import GridStream
from ..swum import STREAM_UNKNOWN
from ..windows.chart_limits import ChartLimits
from ..windows.limits import LIMITS, Told

PESSIMISTIC_PACE = 0.9  # common practice, no source
THERE_M = 1.0
WITHIN_S = 5.0  # the minutes are whole ones


@dataclass(frozen=True, kw_only=True)
class Water:
    """Water to swim home in, its vectors those of the grid, and the way made through it."""

    stream: GridStream
    pace_m_s: float


def waters_of(request: SwimRequest) -> tuple[Water, tuple[Water, ...]]:
    """The water expected, and the bad days: every source stronger by its doubt, turning early, on time and late, and a
    pace a tenth down. Common practice, no source."""
    pace = request.swimmer.made_good_m_s
    grids = [request.stream, *(worse_water(request.stream, later=later) for later in (-1.0, 0.0, 1.0))]
    streams = [GridStream(stream=stream, frame=request.frame) for stream in grids]
    bad = tuple(Water(stream=stream, pace_m_s=PESSIMISTIC_PACE * pace) for stream in streams[1:])
    return Water(stream=streams[0], pace_m_s=pace), bad


@dataclass(frozen=True, kw_only=True)
class Homeward:
    """Swims home over one way for n leaving times: arrival (n,), NaN where it cannot be swum; ``limit`` (n,) says why
    by its number in ``LIMITS``; ``heading_rad`` (n, pieces) of the grid."""

    arrive_s: np.ndarray
    limit: np.ndarray
    heading_rad: np.ndarray

    @classmethod
    def nowhere(cls, n: int) -> Homeward:
        """No way leads there."""
        return cls(
            arrive_s=np.full(n, np.nan),
            limit=np.full(n, LIMITS.index("land"), dtype=np.int8),
            heading_rad=np.full((n, 1), np.nan),
        )

    @classmethod
    def there(cls, leave_s: np.ndarray) -> Homeward:
        """The place is the landing itself."""
        n = len(leave_s)
        return cls(arrive_s=leave_s, limit=np.zeros(n, dtype=np.int8), heading_rad=np.full((n, 1), np.nan))


def swim_home(
    request: SwimRequest,
    chart: ChartLimits,
    water: Water,
    way_m: np.ndarray | None,
    leave_s: np.ndarray,
    starts_m: np.ndarray | None = None,
) -> Homeward:
    """Swim a way (k, 2) leaving at (n,) seconds, one heading a piece; ``starts_m`` (n, 2) stand in for its start."""
    if way_m is None:
        return Homeward.nowhere(len(leave_s))
    if len(way_m) == 2 and starts_m is None and np.hypot(*(way_m[-1] - way_m[0])) < THERE_M:
        return Homeward.there(leave_s)
    told, now, headings = Told(len(leave_s)), np.asarray(leave_s, dtype=float), []
    least = request.swimmer.min_ground_speed_m_s
    for number in range(len(way_m) - 1):
        start = starts_m if starts_m is not None and number == 0 else way_m[number]
        end, pace = way_m[number + 1], water.pace_m_s
        step_s = request.way.step_s
        legs = quick_legs(water.stream, start, end, now, pace, step_s=step_s, slowest_m_s=least, within_s=WITHIN_S)
        can = legs.swimmable(np.hypot(*(end - start).T), pace, least)
        stopped = np.isfinite(now) & ~can
        told.tell(stopped & (legs.ending == STREAM_UNKNOWN), "unknown", number + 1)
        told.tell(stopped & (legs.ending != STREAM_UNKNOWN), "stream", number + 1)
        now = np.where(can, legs.arrive_s, np.nan)
        chart.check(told, number + 1, legs, can, now, (False, number == len(way_m) - 2))
        headings.append(np.where(can, legs.heading_rad, np.nan))
    arrive = np.where(told.limit == 0, now, np.nan)
    return Homeward(arrive_s=arrive, limit=told.limit, heading_rad=np.stack(headings, axis=1))
