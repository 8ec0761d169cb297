"""A stream at moments, linear between them on the vector: what tables by the hour, meters and winds come down to."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import ArrayLike

from .stream import EXTRAPOLATED, KNOWN, UNKNOWN, StreamSample, unknown_sample

BLOCK = 32768  # times at once: their arrays stay in the processor's cache


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
        shape, flat = np.shape(t_s), np.asarray(t_s, dtype=float).ravel()
        if len(self.times_s) < 2:
            return unknown_sample(shape)
        east, north = np.empty(flat.shape), np.empty(flat.shape)
        status = np.empty(flat.shape, dtype=np.int8)
        for first in range(0, len(flat), BLOCK):
            block = slice(first, first + BLOCK)
            east[block], north[block], status[block] = self._block(flat[block])
        return StreamSample(east_m_s=east.reshape(shape), north_m_s=north.reshape(shape), status=status.reshape(shape))

    @cached_property
    def _spans(self) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """For the span after each knot but the last: the change of east and north by the second, NaN where nothing may
        be drawn across it, and the status within it."""
        span = np.diff(self.times_s)
        drawn = np.where((span > 0.0) & (span <= self.longest_gap_s), span, np.nan)
        status = np.where(self.doubtful[:-1] | self.doubtful[1:], EXTRAPOLATED, KNOWN).astype(np.int8)
        return np.diff(self.east_m_s) / drawn, np.diff(self.north_m_s) / drawn, status

    def _block(self, t_s: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        knots, (east_per_s, north_per_s, within) = self.times_s, self._spans
        row = np.minimum(np.maximum(np.searchsorted(knots, t_s, side="right") - 1, 0), len(knots) - 2)
        after_s = t_s - knots[row]
        with np.errstate(invalid="ignore"):  # an infinite time is none
            east = self.east_m_s[row] + east_per_s[row] * after_s
            north = self.north_m_s[row] + north_per_s[row] * after_s
        status = within[row]
        lost = ~np.isfinite(east + north) | (t_s < knots[0]) | (t_s > knots[-1])
        if lost.any():
            for knot in (row, row + 1):  # at a knot itself a blank or far neighbour does no harm
                there = np.flatnonzero(lost & (t_s == knots[knot]))
                east[there], north[there] = self.east_m_s[knot[there]], self.north_m_s[knot[there]]
                lost[there] = ~np.isfinite(east[there] + north[there])
            east[lost], north[lost], status[lost] = np.nan, np.nan, UNKNOWN
        return east, north, status


def vectors_towards(towards_deg: ArrayLike, rate_m_s: ArrayLike) -> tuple[np.ndarray, np.ndarray]:
    """East and north components; a rate of nothing needs no direction, a blank rate or direction gives NaN."""
    angle, rate = np.radians(np.asarray(towards_deg, dtype=float)), np.asarray(rate_m_s, dtype=float)
    still = rate == 0.0
    return np.where(still, 0.0, rate * np.sin(angle)), np.where(still, 0.0, rate * np.cos(angle))
