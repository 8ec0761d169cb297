"""Lines through two landmarks that pass close to a mark.

All is reckoned in a metric frame of the mark's own, in which lines of sight are straight: over the 10 km looked at they
bend by less than a centimetre.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from ..errors import SwimPlanError
from ..words import tr

# Two edges 5 minutes of arc apart are seen as two by any eye, from a float in a chop too; a good eye does better than 1
# minute. From memory and common practice, no source.
OPENING_RAD = np.radians(5.0 / 60.0)
BLOCK = 200_000  # candidate pairs looked at together: about 20 MB
SECTORS, KEPT_IN_SECTOR = 36, 12  # of 10 degrees each, so that a crowd of landmarks on one side leaves room for others


@dataclass(frozen=True, kw_only=True)
class TransitLimits:
    """What counts as a transit. Common practice, no source.

    The line passes within ``offset_m`` of the mark; the front is from ``nearest_m`` away, the rear up to
    ``farthest_m``; behind the front the rear is at least ``least_gap_m`` and ``gap_share`` of the front's distance
    farther, or the two would open too slowly. Two lines that cross at less than ``least_crossing_deg`` are no pair.
    """

    offset_m: float = 20.0
    nearest_m: float = 100.0
    farthest_m: float = 10_000.0
    least_gap_m: float = 50.0
    gap_share: float = 0.1
    least_crossing_deg: float = 60.0

    def __post_init__(self) -> None:
        if not 0.0 < self.offset_m <= self.nearest_m < self.farthest_m:
            raise SwimPlanError(
                asked=tr("Asked for transits that pass within {offset_m:g} m of the mark").format(
                    offset_m=self.offset_m
                ),
                allowed=tr("The limit is above 0 and at most {nearest_m:g} m").format(nearest_m=self.nearest_m),
                remedy=tr("Give another limit; 20 m is common practice"),
            )


@dataclass(frozen=True, kw_only=True)
class Lines:
    """Lines through pairs of landmarks, arrays (n,): indices of the two, and what they are seen from the mark."""

    front: np.ndarray
    rear: np.ndarray
    front_m: np.ndarray
    rear_m: np.ndarray
    bearing_deg: np.ndarray
    offset_m: np.ndarray
    sensitivity_m: np.ndarray

    def __len__(self) -> int:
        return len(self.front)

    def at(self, chosen: np.ndarray) -> Lines:
        """Some of them, by index or mask."""
        return Lines(**{name: values[chosen] for name, values in vars(self).items()})

    @property
    def error_m(self) -> np.ndarray:
        """How far off the mark a line can be expected to hold a swimmer: its offset, and what the eye misses."""
        return np.hypot(self.offset_m, self.sensitivity_m)


def lines_kept(xy_m: np.ndarray, limits: TransitLimits) -> tuple[Lines, int, int]:
    """The sharpest lines of each sector, how many there are in all, and how many landmarks are in range.

    ``xy_m`` (n, 2) are the landmarks in metres from the mark. Cost: n log n, plus the pairs that are in line.
    """
    distance_m = np.hypot(*xy_m.T)
    within = np.isfinite(distance_m) & (distance_m >= limits.nearest_m) & (distance_m <= limits.farthest_m)
    near = np.flatnonzero(within)
    kept, in_line = measured(xy_m, near[:0], near[:0]), 0
    for front, rear in _near_in_bearing(xy_m, near, limits.offset_m):
        lines = measured(xy_m, front, rear)
        lines = lines.at(_is_transit(lines, limits))
        in_line += len(lines)
        kept = _sharpest(_joined(kept, lines))
    return kept, in_line, len(near)


def _near_in_bearing(xy_m: np.ndarray, near: np.ndarray, offset_m: float) -> Iterator[tuple[np.ndarray, np.ndarray]]:
    """Pairs that may be in line, in blocks: of two whose line passes within h of the mark, the sines of their bearings'
    difference is at most h over the distance of the nearer one (law of sines)."""
    if len(near) < 2:
        return
    bearing = np.arctan2(xy_m[near, 0], xy_m[near, 1])
    order = np.argsort(bearing, kind="stable")
    near, bearing = near[order], bearing[order]
    round_about = np.concatenate([bearing - 2.0 * np.pi, bearing, bearing + 2.0 * np.pi])
    half = np.arcsin(np.minimum(offset_m / np.hypot(*xy_m[near].T), 1.0)) + 1e-9
    start = np.searchsorted(round_about, bearing - half, side="left")
    count = np.searchsorted(round_about, bearing + half, side="right") - start
    block = np.cumsum(count) // BLOCK
    for number in np.unique(block):
        chosen = np.flatnonzero(block == number)
        front = np.repeat(chosen, count[chosen])
        within = np.arange(len(front)) - np.repeat(np.cumsum(count[chosen]) - count[chosen], count[chosen])
        rear = (np.repeat(start[chosen], count[chosen]) + within) % len(near)
        yield near[front], near[rear]


def measured(xy_m: np.ndarray, front: np.ndarray, rear: np.ndarray) -> Lines:
    """Lines through landmarks in metres from the mark; what has no length gives NaN."""
    along_m = xy_m[rear] - xy_m[front]
    with np.errstate(invalid="ignore", divide="ignore"):
        east, north = (along_m / np.hypot(*along_m.T)[:, None]).T
        front_m, rear_m = np.hypot(*xy_m[front].T), np.hypot(*xy_m[rear].T)
        return Lines(
            front=front,
            rear=rear,
            front_m=front_m,
            rear_m=rear_m,
            bearing_deg=np.degrees(np.arctan2(east, north)) % 360.0,
            offset_m=xy_m[front, 0] * north - xy_m[front, 1] * east,
            # A step x off the line opens two things on it by x / d_front - x / d_rear.
            sensitivity_m=OPENING_RAD * front_m * rear_m / (rear_m - front_m),
        )


def _is_transit(lines: Lines, limits: TransitLimits) -> np.ndarray:
    gap_m = lines.rear_m - lines.front_m
    far_enough = gap_m >= np.maximum(limits.least_gap_m, limits.gap_share * lines.front_m)
    return far_enough & (np.abs(lines.offset_m) <= limits.offset_m)


def _sharpest(lines: Lines) -> Lines:
    """The lines of least error in each sector of bearings."""
    sector = np.minimum(lines.bearing_deg // (360.0 / SECTORS), SECTORS - 1)
    order = np.lexsort((lines.error_m, sector))
    ranked = sector[order]
    first = np.searchsorted(ranked, ranked, side="left")
    return lines.at(order[np.arange(len(order)) - first < KEPT_IN_SECTOR])


def _joined(some: Lines, others: Lines) -> Lines:
    return Lines(**{name: np.concatenate([values, getattr(others, name)]) for name, values in vars(some).items()})
