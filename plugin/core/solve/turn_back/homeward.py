"""Swims home at many leaving times, in the water expected and on the bad days."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from ...water.members import MemberWater
from ...water.stream import StoppableStream
from ..quick_legs import quick_legs
from ..request import SwimRequest
from ..swim import GridStream
from ..swum import STREAM_UNKNOWN
from ..windows.chart_limits import ChartLimits
from ..windows.limits import Told

PESSIMISTIC_PACE = 0.9  # common practice, no source
THERE_M = 1.0
BEHIND_S = 3600.0
WITHIN_S = 5.0  # the minutes are whole ones


@dataclass(frozen=True, kw_only=True)
class Days:
    """The day expected and four bad ones, swum at once: every source of stream by its doubts, and the pace.

    On the bad days every source is stronger by its doubt and turns early, on time or late, or weaker by its doubt, as
    a stream that would help may fail; and the pace is a tenth down. Common practice, no source. ``until_s`` is the
    first hard stop: who would be home more than an hour behind it is not looked for.
    """

    request: SwimRequest
    until_s: float
    is_cancelled: Callable[[], bool] = bool
    rate_doubts: tuple[float, ...] = (0.0, 1.0, 1.0, 1.0, -1.0)
    phase_doubts: tuple[float, ...] = (0.0, -1.0, 0.0, 1.0, 0.0)
    pace_factors: tuple[float, ...] = (1.0,) + 4 * (PESSIMISTIC_PACE,)

    @property
    def count(self) -> int:
        """How many days."""
        return len(self.rate_doubts)

    def stream(self, rows: int) -> GridStream:
        """The streams of the grid for so many rows of every day, day after day."""
        days = np.repeat(np.arange(self.count), rows)
        water = MemberWater(
            field=self.request.stream,
            rate_doubts=np.array(self.rate_doubts)[days],
            phase_doubts=np.array(self.phase_doubts)[days],
        )
        stoppable = StoppableStream(stream=water, is_cancelled=self.is_cancelled)
        return GridStream(stream=stoppable, frame=self.request.frame)

    def pace_m_s(self, rows: int) -> np.ndarray:
        """The way made through the water, for so many rows of every day."""
        return np.repeat(np.array(self.pace_factors), rows) * self.request.swimmer.made_good_m_s


@dataclass(frozen=True, kw_only=True)
class Homeward:
    """Swims home over one way on d days for n leaving times: arrival (d, n), NaN where it cannot be swum; ``limit``
    (d, n) says why by its number in ``LIMITS``; ``heading_rad`` (d, n, pieces) of the grid. The first day is the one
    expected."""

    arrive_s: np.ndarray
    limit: np.ndarray
    heading_rad: np.ndarray

    @property
    def worst_s(self) -> np.ndarray:
        """The latest arrivals (n,) of all days, NaN where one of them does not get there."""
        return np.max(self.arrive_s, axis=0)

    def or_by(self, other: Homeward) -> Homeward:
        """The earlier of two ways at every day and leaving time."""
        sooner = np.isnan(self.arrive_s) | (other.arrive_s < self.arrive_s)
        pieces = max(self.heading_rad.shape[2], other.heading_rad.shape[2])
        first, second = (_as_many(home.heading_rad, pieces) for home in (self, other))
        return Homeward(
            arrive_s=np.where(sooner, other.arrive_s, self.arrive_s),
            limit=np.where(sooner, other.limit, self.limit),
            heading_rad=np.where(sooner[..., None], second, first),
        )


def swim_home(
    days: Days, chart: ChartLimits, way_m: np.ndarray | None, leave_s: np.ndarray, starts_m: np.ndarray | None = None
) -> Homeward:
    """Swim a way (k, 2) leaving at (n,) seconds, one heading a piece; ``starts_m`` (n, 2) stand in for its start.

    No way is nowhere; the place itself is home.
    """
    shape = (days.count, len(leave_s))
    every = np.tile(np.asarray(leave_s, dtype=float), days.count)
    told, now, headings = Told(len(every)), every, [np.full(len(every), np.nan)]
    if way_m is None:
        told.tell(np.ones(len(every), dtype=bool), "land", 1)
    else:
        now, headings = _pieces(days, chart, way_m, every, starts_m, told)
    return Homeward(
        arrive_s=np.where(told.limit == 0, now, np.nan).reshape(shape),
        limit=told.limit.reshape(shape),
        heading_rad=np.stack(headings, axis=1).reshape((*shape, -1)),
    )


def _pieces(
    days: Days, chart: ChartLimits, way_m: np.ndarray, begin_s: np.ndarray, starts_m: np.ndarray | None, told: Told
) -> tuple[np.ndarray, list[np.ndarray]]:
    """Arrivals (d * n,) over the pieces of a way, and the headings (d * n,) of each; what stops them is told."""
    rows = len(begin_s) // days.count
    stream, pace, now, headings = days.stream(rows), days.pace_m_s(rows), begin_s, []
    request = days.request
    least = request.swimmer.min_ground_speed_m_s
    for number in range(len(way_m) - 1):
        first = starts_m is not None and number == 0
        start = np.tile(starts_m, (days.count, 1)) if first else way_m[number]
        end = way_m[number + 1]
        length_m = np.broadcast_to(np.hypot(*(end - start).T), now.shape)
        there = length_m < THERE_M
        leave_s = np.where(there, np.nan, now)
        slowest = max(least, length_m.max() / _longest_s(days, leave_s))
        legs = quick_legs(
            stream, start, end, leave_s, pace, step_s=request.way.step_s, slowest_m_s=slowest, within_s=WITHIN_S
        )
        can = legs.swimmable(length_m, pace, least)
        stopped = np.isfinite(leave_s) & ~can
        told.tell(stopped & (legs.ending == STREAM_UNKNOWN), "unknown", number + 1)
        told.tell(stopped & (legs.ending != STREAM_UNKNOWN), "stream", number + 1)
        now = np.where(there, now, np.where(can, legs.arrive_s, np.nan))
        chart.check(told, number + 1, legs, can, now, (False, number == len(way_m) - 2))
        headings.append(np.where(can, legs.heading_rad, np.nan))
    return now, headings


def _as_many(heading_rad: np.ndarray, pieces: int) -> np.ndarray:
    """Headings (d, n, k) of fewer pieces as those of so many, the rest blank."""
    return np.pad(heading_rad, ((0, 0), (0, 0), (0, pieces - heading_rad.shape[2])), constant_values=np.nan)


def _longest_s(days: Days, leave_s: np.ndarray) -> float:
    """How long a piece may take at the most and still matter."""
    leaving = leave_s[np.isfinite(leave_s)]
    return max(days.until_s + BEHIND_S - float(leaving.min()), BEHIND_S) if len(leaving) else BEHIND_S
