"""Where a swimmer is who holds the planned headings for the planned minutes and does not correct."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from ..water.stream import Stream
from .marching import march
from .swum import Line, Nodes

CHI_SQUARE_95 = 5.991  # two degrees of freedom; the table of chi-square, 0.95
SIDES = 72
MOST_UNKNOWN = 0.1  # a larger share of members in unknown water leaves nothing to say; common practice, no source


def reckoned_places(
    water: Stream, line: Line, nodes: Nodes, pace_m_s: np.ndarray, *, is_cancelled: Callable[[], bool] = bool
) -> np.ndarray:
    """Places (n, 2) at the planned end of a leg, for n members in their own water and at their own pace.

    Each starts from the leg's first place at its planned time; ``nodes`` are those of the planned track, a
    single row, with the heading held at each. NaN where the water is not known. ``water`` gives vectors of the grid.
    """
    kept = np.isfinite(nodes.t_s[0])
    times, heading = nodes.t_s[0, kept], nodes.heading_rad[0, kept]
    unit = np.stack([np.sin(heading), np.cos(heading)], axis=1)
    n = len(pace_m_s)
    own = pace_m_s[:, None, None] * unit
    every = np.broadcast_to(times, (n, len(times)))
    return march(water, np.tile(line.start, (n, 1)), every, own, is_cancelled=is_cancelled)[:, -1]


@dataclass(frozen=True, kw_only=True)
class Spread:
    """Mean place (2,), covariance (2, 2) in m2, and the share of places that are not known."""

    mean_m: np.ndarray
    covariance_m2: np.ndarray
    unknown_share: float

    @classmethod
    def of(cls, places_m: np.ndarray) -> Spread | None:
        """Of places (n, 2); None where too many are not known."""
        known = places_m[np.isfinite(places_m).all(axis=1)]
        unknown = 1.0 - len(known) / len(places_m)
        if unknown > MOST_UNKNOWN or len(known) < 2:
            return None
        return cls(mean_m=known.mean(axis=0), covariance_m2=np.cov(known.T), unknown_share=unknown)

    @property
    def axes(self) -> tuple[np.ndarray, np.ndarray]:
        """Semi-axes (2,) of the 95 % ellipse, the longer first, and their unit vectors as rows (2, 2)."""
        values, vectors = np.linalg.eigh(self.covariance_m2)
        return np.sqrt(CHI_SQUARE_95 * np.maximum(values[::-1], 0.0)), vectors.T[::-1]

    @property
    def major_grid_deg(self) -> float:
        """Direction of the longer axis from the grid's north, 0-180."""
        _, (major, _) = self.axes
        return float(np.degrees(np.arctan2(major[0], major[1])) % 180.0)

    def ring(self) -> np.ndarray:
        """The 95 % ellipse as a closed ring (73, 2)."""
        turn = np.linspace(0.0, 2.0 * np.pi, SIDES + 1)
        (long, short), (major, minor) = self.axes
        return self.mean_m + long * np.cos(turn)[:, None] * major + short * np.sin(turn)[:, None] * minor
