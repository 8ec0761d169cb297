"""A stream at moments, linear between them on the vector: what tables by the hour, meters and winds come down to."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from .stream import EXTRAPOLATED, KNOWN, UNKNOWN, StreamSample, unknown_sample


@dataclass(frozen=True, kw_only=True)
class VectorKnots:
    """Vectors at moments: ``times_s`` (n,) not falling, ``east_m_s`` and ``north_m_s`` (n,) TOWARDS, NaN where unknown.

    ``doubtful`` (n,) marks knots that are extrapolated themselves. Between two knots farther apart than
    ``longest_gap_s``, beside an unknown one, and outside the knots the stream is unknown. At a
    knot itself its own value stands.
    """

    times_s: np.ndarray
    east_m_s: np.ndarray
    north_m_s: np.ndarray
    longest_gap_s: float
    doubtful: np.ndarray | None = None

    def __post_init__(self) -> None:
        doubtful = np.zeros(len(self.times_s), dtype=bool) if self.doubtful is None else self.doubtful
        for name, values in (
            ("times_s", self.times_s),
            ("east_m_s", self.east_m_s),
            ("north_m_s", self.north_m_s),
            ("doubtful", doubtful),
        ):
            array = np.array(values, dtype=bool if name == "doubtful" else float)
            array.setflags(write=False)
            object.__setattr__(self, name, array)

    def at(self, t_s: ArrayLike) -> StreamSample:
        """Stream at times in seconds from the plan's start (any shape)."""
        t_s, knots = np.asarray(t_s, dtype=float), self.times_s
        if len(knots) < 2:
            return unknown_sample(t_s.shape)
        row = np.minimum(np.maximum(np.searchsorted(knots, t_s, side="right") - 1, 0), len(knots) - 2)
        span = knots[row + 1] - knots[row]
        share = (t_s - knots[row]) / np.where(span > 0.0, span, 1.0)
        near = (span <= self.longest_gap_s) | (share == 0.0) | (share == 1.0)
        share = np.where((share >= 0.0) & (share <= 1.0) & near, share, np.nan)
        east = _between(self.east_m_s, row, share)
        north = _between(self.north_m_s, row, share)
        known = np.isfinite(east) & np.isfinite(north)
        beyond = self.doubtful[row] | self.doubtful[row + 1]
        status = np.where(known, np.where(beyond, EXTRAPOLATED, KNOWN), UNKNOWN).astype(np.int8)
        return StreamSample(
            east_m_s=np.where(known, east, np.nan), north_m_s=np.where(known, north, np.nan), status=status
        )


def vectors_towards(towards_deg: ArrayLike, rate_m_s: ArrayLike) -> tuple[np.ndarray, np.ndarray]:
    """East and north components; a rate of nothing needs no direction, a blank rate or direction gives NaN."""
    angle, rate = np.radians(np.asarray(towards_deg, dtype=float)), np.asarray(rate_m_s, dtype=float)
    still = rate == 0.0
    return np.where(still, 0.0, rate * np.sin(angle)), np.where(still, 0.0, rate * np.cos(angle))


def _between(values: np.ndarray, row: np.ndarray, share: np.ndarray) -> np.ndarray:
    """Linear between knots; at a knot itself a blank neighbour does no harm."""
    first, second = values[row], values[row + 1]
    mixed = first + (second - first) * share
    return np.where(share == 0.0, first, np.where(share == 1.0, second, mixed))
