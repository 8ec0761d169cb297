"""Ways of a few legs, each on one heading, swum for very many places of their corners at once."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np

from ...chart.areas import Chart, ClosedArea
from ...water.stream import StoppableStream
from ..flags.closed import BEACH_M
from ..quick_legs import QuickLegs, quick_legs
from ..request import SwimRequest
from ..swim import GridStream
from ..swum import STREAM_UNKNOWN
from ..windows.chart_limits import ChartLimits
from ..windows.limits import Told
from .open_water import ReachGrid
from .square import SquareCrossing

THERE_M = 1.0
BETWEEN = np.arange(0.0, 24.01, 0.2)  # points of a track at which it is looked at how near the shore it comes


@dataclass(frozen=True, kw_only=True, eq=False)
class Corners:
    """The corners of a way: their cells ``at`` on the path of the grid, and for each the crossing that ends there."""

    at: tuple[int, ...]
    crossing: tuple[SquareCrossing | None, ...]

    def with_one(self, leg: int, at: int) -> Corners:
        """One more corner in a leg (from 0)."""
        crossing = (*self.crossing[: leg + 1], None, *self.crossing[leg + 1 :])
        return Corners(at=(*self.at[: leg + 1], at, *self.at[leg + 1 :]), crossing=crossing)

    def without(self, corner: int) -> Corners:
        """One corner less."""
        drop = slice(corner, corner + 1)
        at, crossing = list(self.at), list(self.crossing)
        del at[drop], crossing[drop]
        return Corners(at=tuple(at), crossing=tuple(crossing))

    @property
    def free(self) -> list[int]:
        """The corners that may be moved: not the ends, nor where a crossing lands."""
        return [number for number in range(1, len(self.at) - 1) if self.crossing[number] is None]

    @property
    def single(self) -> list[int]:
        """The free corners at which no crossing begins: those the way could do without."""
        return [number for number in self.free if self.crossing[number + 1] is None]


@dataclass(frozen=True, kw_only=True)
class Swims:
    """Ways swum, n at once: corners (n, k, 2), arrivals (n,) in seconds of the plan, what stops each (its number in
    ``LIMITS``, 0 for nothing) and on which leg (from 1). Arrivals are NaN where a leg cannot be swum."""

    corners_m: np.ndarray
    arrive_s: np.ndarray
    limit: np.ndarray
    leg: np.ndarray

    @property
    def good_s(self) -> np.ndarray:
        """Arrivals of what nothing stops, infinite for the others."""
        return np.where((self.limit == 0) & np.isfinite(self.arrive_s), self.arrive_s, np.inf)


class WaySwims:
    """Swims ways through a swim's water; ``tight`` (rows, columns) are cells too near a shore for a track."""

    def __init__(
        self,
        swim: SwimRequest,
        kept_out: Sequence[ClosedArea],
        grid: ReachGrid,
        tight: np.ndarray | None,
        is_cancelled: Callable[[], bool],
    ) -> None:
        stoppable = StoppableStream(stream=swim.stream, is_cancelled=is_cancelled)
        self.swim, self.grid, self.tight = swim, grid, tight
        self.stream = GridStream(stream=stoppable, frame=swim.frame)
        self.pace = swim.swimmer.made_good_m_s
        self.depart_s = swim.clock.seconds(swim.depart)
        bare = Chart(land=swim.chart.land, closed_areas=swim.chart.closed_areas)
        beside = Chart(land=bare.land, closed_areas=(*bare.closed_areas, *kept_out))
        departs = np.array([self.depart_s])
        self.in_crossing = ChartLimits(replace(swim, chart=bare), departs)
        self.elsewhere = ChartLimits(replace(swim, chart=beside), departs)

    def swim_all(self, corners: Corners, places_m: np.ndarray) -> Swims:
        """Swim the ways over places (n, k, 2) from one end to the other; where crossings land is found on the way."""
        places = np.array(places_m, dtype=float)
        count, last = len(places), places.shape[1] - 2
        told, now = Told(count), np.full(count, self.depart_s)
        for leg in range(last + 1):
            start, crossing = places[:, leg], corners.crossing[leg + 1]
            if crossing is not None:
                places[:, leg + 1] = crossing.far_side(self.stream, start, now, self.pace)
            now = self._leg(told, leg, places[:, leg : leg + 2], now, crossing is not None, (leg == 0, leg == last))
        return Swims(corners_m=places, arrive_s=now, limit=told.limit, leg=told.leg)

    def _leg(
        self, told: Told, leg: int, ends_m: np.ndarray, now: np.ndarray, crossing: bool, beaches: tuple[bool, bool]
    ) -> np.ndarray:
        """Arrivals (n,) of one leg; what stops it is told."""
        start, end = ends_m[:, 0], ends_m[:, 1]
        length_m = np.hypot(*(end - start).T)
        there = length_m < THERE_M
        lost = np.isnan(length_m)
        told.tell(lost, "stream", leg + 1)
        leave_s = np.where(there | lost, np.nan, now)
        least = self.swim.swimmer.min_ground_speed_m_s
        end = np.where(np.isnan(end), start, end)
        legs = quick_legs(self.stream, start, end, leave_s, self.pace, step_s=self.swim.way.step_s, slowest_m_s=least)
        can = legs.swimmable(length_m, self.pace, least)
        stopped = np.isfinite(leave_s) & ~can
        told.tell(stopped & (legs.ending == STREAM_UNKNOWN), "unknown", leg + 1)
        told.tell(stopped & (legs.ending != STREAM_UNKNOWN), "stream", leg + 1)
        now = np.where(there, now, np.where(can, legs.arrive_s, np.nan))
        (self.in_crossing if crossing else self.elsewhere).check(told, leg + 1, legs, can, now, beaches)
        told.tell(can & self._too_near(legs, beaches), "land", leg + 1)
        return now

    def _too_near(self, legs: QuickLegs, beaches: tuple[bool, bool]) -> np.ndarray:
        """Which tracks (n,) come too near a shore, but for the beaches at their ends."""
        if self.tight is None:
            return np.zeros(len(legs.t_s), dtype=bool)
        whole = BETWEEN.astype(int).clip(0, legs.xy_m.shape[1] - 2)
        share = (BETWEEN - whole)[None, :, None]
        tracks = legs.xy_m[:, whole] * (1.0 - share) + legs.xy_m[:, whole + 1] * share
        with np.errstate(invalid="ignore"):
            at = np.rint(np.nan_to_num((tracks - self.grid.low_m) / self.grid.cell_m)).astype(int)
        column = at[..., 0].clip(0, self.grid.shape[1] - 1)
        near = self.tight[at[..., 1].clip(0, self.grid.shape[0] - 1), column] & np.isfinite(tracks[..., 0])
        spare_m = BEACH_M + 4.0 * self.grid.cell_m
        for beach, end in zip(beaches, (legs.xy_m[:, :1], legs.xy_m[:, -1:])):
            if beach:
                near &= np.hypot(*np.moveaxis(tracks - end, 2, 0)) > spare_m
        return near.any(axis=1)
