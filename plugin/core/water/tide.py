"""Height of tide between high and low waters, hours from high water, and the range of the day."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..quantities import SECONDS_PER_HOUR
from ..words import tr
from .height_curve import HeightCurve

HW, LW = "HW", "LW"
# Two waters of one kind farther apart than this have lost the one between them: a hole, not a slip of the pen.
MISSING_ROW_S = 9 * SECONDS_PER_HOUR
LONGEST_GAP_S = 16 * SECONDS_PER_HOUR  # a diurnal tide turns every 12.4 h; a longer gap means that a row is missing


@dataclass(frozen=True, kw_only=True)
class TideTable:
    """High and low waters of one port.

    ``times_s`` (n,) seconds from the plan's start, rising; ``heights_m`` (n,) above datum, NaN where the table has
    none; ``is_high`` (n,) bool. Highs and lows alternate; SwimPlanError where they don't. ``curve`` gives the heights
    between them where it knows them; elsewhere, and without one, it is the cosine. With a curve the waters were found
    on it: two of a kind in a row then have a gap of the curve between them, in which nothing is known.
    """

    port: str
    times_s: np.ndarray
    heights_m: np.ndarray
    is_high: np.ndarray
    curve: HeightCurve | None = None

    def __post_init__(self) -> None:
        order = np.argsort(np.asarray(self.times_s, dtype=float), kind="stable")
        for name, kind in (("times_s", float), ("heights_m", float), ("is_high", bool)):
            array = np.array(getattr(self, name), dtype=kind)[order]
            array.setflags(write=False)
            object.__setattr__(self, name, array)
        if len(self.times_s) and not np.all(np.isfinite(self.times_s)):
            raise SwimPlanError(
                asked=tr("The tide table of {port} has a row without a time").format(port=self.port),
                remedy=tr("Fill in or delete the row"),
            )
        if np.any(np.diff(self.times_s) <= 0.0):
            raise SwimPlanError(
                asked=tr("The tide table of {port} has two rows at one time").format(port=self.port),
                remedy=tr("Delete one of them"),
            )
        self._check_order()

    def _check_order(self) -> None:
        if self.is_high.all() or not self.is_high.any():
            return  # a list of high (or low) waters alone: hours can be counted, heights between them are not known
        gaps = np.diff(self.times_s) <= LONGEST_GAP_S
        close = np.diff(self.times_s) <= MISSING_ROW_S
        same = close & (self.is_high[1:] == self.is_high[:-1]) & (self.curve is None)
        rise = np.where(self.is_high[1:], 1.0, -1.0) * np.diff(self.heights_m)
        wrong_way = gaps & (self.is_high[1:] != self.is_high[:-1]) & (rise < 0.0)
        for bad, what in (
            (same, tr("two of the same kind in a row")),
            (wrong_way, tr("a low water above a high water")),
        ):
            if np.any(bad):
                row = int(np.flatnonzero(bad)[0]) + 2
                raise SwimPlanError(
                    asked=tr("The tide table of {port}, in order of time, has {what} at row {row}").format(
                        port=self.port, what=what, row=row
                    ),
                    allowed=tr("High and low waters alternate, the high ones higher"),
                    remedy=tr(
                        "Check the kind, height and time of that row and the one before, or add one between them"
                    ),
                )

    def height_m(self, t_s: ArrayLike) -> np.ndarray:
        """Height of tide in metres at times (any shape), NaN outside the table or across a missing row.

        Of the curve where it knows, else of the cosine between the waters:
        h = h1 + (h2 - h1) (1 - cos(pi f)) / 2 with f the elapsed fraction between the events.
        Source: the cosine curve of the Canadian Tide and Current Tables; real curves differ by a few percent of range.
        """
        t_s = np.asarray(t_s, dtype=float)
        cosine_m = self._cosine_m(t_s)
        if self.curve is None:
            return cosine_m
        curve_m = self.curve.height_m(t_s)
        return np.where(np.isfinite(curve_m), curve_m, cosine_m)

    def _cosine_m(self, t_s: np.ndarray) -> np.ndarray:
        if len(self.times_s) < 2:
            return np.full(t_s.shape, np.nan)
        row, fraction = self._between(t_s)
        first, second = self.heights_m[row], self.heights_m[row + 1]
        return first + (second - first) * (1.0 - np.cos(np.pi * fraction)) / 2.0

    def rising(self, t_s: ArrayLike) -> np.ndarray:
        """1.0 where the tide rises, 0.0 where it falls, NaN where the table does not say."""
        t_s = np.asarray(t_s, dtype=float)
        if len(self.times_s) < 2:
            return np.full(t_s.shape, np.nan)
        row, fraction = self._between(t_s)
        return np.where(np.isnan(fraction), np.nan, self.is_high[row + 1].astype(float))

    def reference_times_s(self, reference: str) -> np.ndarray:
        """Times of the high (HW) or low (LW) waters, seconds from the plan's start, shape (m,)."""
        return self.times_s[self.is_high == (reference == HW)]

    def ranges_m(self, reference: str) -> np.ndarray:
        """Range of the day at each reference water, shape (m,): the mean of the rise and the fall beside it.

        Where one side is missing the other stands alone; NaN where both are. Which of the two ranges a table means is
        left open by the tables; the mean is common practice, no source.
        """
        here = np.flatnonzero(self.is_high == (reference == HW))
        change = np.abs(np.diff(self.heights_m))
        change[~self._joined()] = np.nan
        padded = np.concatenate([[np.nan], change, [np.nan]])
        sides = np.stack([padded[here], padded[here + 1]])
        count = np.sum(np.isfinite(sides), axis=0)
        return np.where(count > 0, np.nansum(sides, axis=0) / np.maximum(count, 1), np.nan)

    def hours_from(self, reference: str, t_s: ArrayLike) -> np.ndarray:
        """Hours from the nearest reference water (negative before it), NaN where the table has none."""
        t_s, waters = np.asarray(t_s, dtype=float), self.reference_times_s(reference)
        if not len(waters):
            return np.full(t_s.shape, np.nan)
        after = np.clip(np.searchsorted(waters, t_s), 1, max(len(waters) - 1, 1)) if len(waters) > 1 else None
        if after is None:
            return (t_s - waters[0]) / SECONDS_PER_HOUR
        nearer = np.where(t_s - waters[after - 1] <= waters[after] - t_s, waters[after - 1], waters[after])
        return (t_s - nearer) / SECONDS_PER_HOUR

    def _between(self, t_s: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Row before each time and the elapsed fraction to the next one, NaN outside or across a missing row."""
        row = np.clip(np.searchsorted(self.times_s, t_s, side="right") - 1, 0, len(self.times_s) - 2)
        span = self.times_s[row + 1] - self.times_s[row]
        fraction = (t_s - self.times_s[row]) / span
        known = (fraction >= 0.0) & (fraction <= 1.0) & self._joined()[row]
        return row, np.where(known, fraction, np.nan)

    def _joined(self) -> np.ndarray:
        """Whether nothing is missing between each water and the next, shape (n - 1,)."""
        near = np.diff(self.times_s) <= LONGEST_GAP_S
        if self.curve is not None:
            # Where a mixed tide turns once a day its long fall may outlast the limit: the curve then says it is whole.
            middle_s = (self.times_s[1:] + self.times_s[:-1]) / 2.0
            near |= np.isfinite(self.curve.height_m(middle_s)) & (np.diff(self.times_s) <= 2.0 * LONGEST_GAP_S)
        return near & (self.is_high[1:] != self.is_high[:-1])


def first_time_height_reaches(table: TideTable, level_m: float, start_s: float, end_s: float) -> float:
    """First time in the span at which the height crosses the level, to the second; NaN where it never does."""
    times = np.arange(start_s, end_s + 60.0, 60.0)
    above = table.height_m(times) - level_m
    crossing = np.flatnonzero(np.sign(above[1:]) != np.sign(above[:-1]))
    crossing = crossing[np.isfinite(above[crossing]) & np.isfinite(above[crossing + 1])]
    if not len(crossing):
        return float("nan")
    low = int(crossing[0])
    share = above[low] / (above[low] - above[low + 1])
    return float(times[low] + 60.0 * share)
