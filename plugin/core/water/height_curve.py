"""Height of tide as a curve in time: what a regular series or a sum of constituents knows between the waters."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Protocol

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..words import tr

LONGEST_STEP_RATIO = 1.5  # a step longer than this many usual steps is a gap, and a gap stays one


class HeightCurve(Protocol):
    """Anything that knows the height of tide at a moment."""

    def height_m(self, t_s: ArrayLike) -> np.ndarray:
        """Height in metres above the plan's datum at seconds from the plan's start (any shape), NaN where unknown."""


@dataclass(frozen=True, kw_only=True)
class SeriesCurve:
    """Heights at even times, joined by cubics that pass through them.

    ``times_s`` (n,) rises, ``heights_m`` (n,); a NaN height, or a step longer than one and a half usual steps, is a
    gap. Between hourly heights of a mixed tide of 2 m range the cubic is off by up to 6 mm.
    SwimPlanError where the times don't rise or there are fewer than two.
    """

    times_s: np.ndarray
    heights_m: np.ndarray
    _slopes_m_s: np.ndarray = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        times, heights = (np.array(getattr(self, name), dtype=float) for name in ("times_s", "heights_m"))
        if times.shape != heights.shape or times.ndim != 1 or len(times) < 2:
            raise SwimPlanError(
                asked=tr("Got a series of {times} times and {heights} heights").format(
                    times=times.size, heights=heights.size
                ),
                allowed=tr("A series has at least two heights, each with its time"),
                remedy=tr("Add the missing rows"),
            )
        if not np.all(np.diff(times) > 0.0):
            row = int(np.flatnonzero(~(np.diff(times) > 0.0))[0]) + 2
            raise SwimPlanError(
                asked=tr("The times of a series do not rise at its row {row}").format(row=row),
                allowed=tr("Each height is later than the one before"),
                remedy=tr("Sort the rows and delete those given twice"),
            )
        for name, array in (("times_s", times), ("heights_m", heights)):
            array.setflags(write=False)
            object.__setattr__(self, name, array)
        object.__setattr__(self, "_slopes_m_s", self._slopes())

    @property
    def step_s(self) -> float:
        """The usual step between two heights."""
        return float(np.median(np.diff(self.times_s)))

    def height_m(self, t_s: ArrayLike) -> np.ndarray:
        """Height in metres at times (any shape), NaN outside the series and inside its gaps."""
        t_s = np.asarray(t_s, dtype=float)
        row = np.clip(np.searchsorted(self.times_s, t_s, side="right") - 1, 0, len(self.times_s) - 2)
        start_s, span_s = self.times_s[row], self.times_s[row + 1] - self.times_s[row]
        share = (t_s - start_s) / span_s
        first, second = self.heights_m[row], self.heights_m[row + 1]
        before, after = self._slopes_m_s[row] * span_s, self._slopes_m_s[row + 1] * span_s
        # The Hermite form of the cubic with these ends and slopes.
        rise = second - first
        height = first + share * (before + share * (3.0 * rise - 2.0 * before - after))
        height = height + share**3 * (before + after - 2.0 * rise)
        known = (share >= 0.0) & (share <= 1.0) & (span_s <= LONGEST_STEP_RATIO * self.step_s)
        return np.where(known, height, np.nan)

    def _slopes(self) -> np.ndarray:
        """Slope at each height, of the parabola through it and its neighbours; straight beside a gap or an end."""
        steps, rises = np.diff(self.times_s), np.diff(self.heights_m)
        chords = np.where(steps <= LONGEST_STEP_RATIO * self.step_s, rises / steps, np.nan)
        left, right = np.concatenate([[np.nan], chords]), np.concatenate([chords, [np.nan]])
        ahead, behind = np.concatenate([steps, [1.0]]), np.concatenate([[1.0], steps])
        inside = (left * ahead + right * behind) / (ahead + behind)
        # At an end the parabola's slope there follows from the chord and the slope at the next height.
        next_in = np.concatenate([inside[1:], [np.nan]])
        last_in = np.concatenate([[np.nan], inside[:-1]])
        at_end = np.where(np.isnan(left), 2.0 * right - next_in, 2.0 * left - last_in)
        straight = np.where(np.isnan(left), right, left)
        slopes = np.where(np.isfinite(inside), inside, np.where(np.isfinite(at_end), at_end, straight))
        return np.where(np.isfinite(slopes), slopes, 0.0)
