"""Streams known by their slacks and maxima."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..quantities import SECONDS_PER_HOUR
from ..words import tr
from .stream import KNOWN, UNKNOWN, StreamSample, unknown_sample

LONGEST_GAP_S = 8 * SECONDS_PER_HOUR  # slack to maximum is some 3 h, some 6 h where the tide is diurnal


@dataclass(frozen=True, kw_only=True)
class EventStream:
    """Slacks and maxima of one station: ``times_s`` (n,) rising, seconds from the plan's start; ``rates_m_s`` (n,)
    signed, flood positive, nothing at slack; the sets of flood and ebb, TOWARDS, true, one for all or one an event.

    Between slack and maximum the rate is cmax sin(pi / 2 * share of the time from the slack). Source: the sine that
    underlies Table 3 of the NOAA Tidal Current Tables. Two maxima in a row pass into each other by a half cosine, as
    where there is no slack. Outside the events, and across a gap of more than eight hours, the stream is unknown.
    """

    station: str
    times_s: np.ndarray
    rates_m_s: np.ndarray
    flood_set_deg: float | np.ndarray
    ebb_set_deg: float | np.ndarray

    def __post_init__(self) -> None:
        order = np.argsort(self.times_s, kind="stable")
        for name in ("times_s", "rates_m_s", "flood_set_deg", "ebb_set_deg"):
            array = np.broadcast_to(np.asarray(getattr(self, name), dtype=float), order.shape)[order].copy()
            array.setflags(write=False)
            object.__setattr__(self, name, array)
        if np.any(np.diff(self.times_s) <= 0.0):
            raise SwimPlanError(
                asked=tr("The stream events of {station} have two rows at one time").format(station=self.station),
                remedy=tr("Delete one of them"),
            )

    def at(self, t_s: ArrayLike) -> StreamSample:
        """Stream at times in seconds from the plan's start (any shape)."""
        rate = self.signed_rate_m_s(t_s)
        if not len(self.times_s):
            return unknown_sample(rate.shape)
        event = self._stronger_event(np.asarray(t_s, dtype=float))
        towards = np.radians(np.where(rate >= 0.0, self.flood_set_deg[event], self.ebb_set_deg[event]))
        # At slack there is no set, and a set that is not given does no harm.
        east = np.where(rate == 0.0, 0.0, np.abs(rate) * np.sin(towards))
        north = np.where(rate == 0.0, 0.0, np.abs(rate) * np.cos(towards))
        status = np.where(np.isfinite(east), KNOWN, UNKNOWN).astype(np.int8)
        return StreamSample(east_m_s=east, north_m_s=north, status=status)

    def _stronger_event(self, t_s: np.ndarray) -> np.ndarray:
        """The stronger one of the events beside each time: a slack leaves the set to its maximum."""
        after = np.clip(np.searchsorted(self.times_s, t_s, side="right"), 0, len(self.times_s) - 1)
        before = np.maximum(after - 1, 0)
        return np.where(np.abs(self.rates_m_s[after]) > np.abs(self.rates_m_s[before]), after, before)

    def signed_rate_m_s(self, t_s: ArrayLike) -> np.ndarray:
        """Rate, flood positive, NaN where unknown."""
        t_s = np.asarray(t_s, dtype=float)
        if len(self.times_s) < 2:
            return np.full(t_s.shape, np.nan)
        row = np.clip(np.searchsorted(self.times_s, t_s, side="right") - 1, 0, len(self.times_s) - 2)
        span = self.times_s[row + 1] - self.times_s[row]
        share = (t_s - self.times_s[row]) / span
        first, second = self.rates_m_s[row], self.rates_m_s[row + 1]
        rising = second * np.sin(np.pi / 2.0 * share)
        falling = first * np.cos(np.pi / 2.0 * share)
        passing = first + (second - first) * (1.0 - np.cos(np.pi * share)) / 2.0
        rate = np.where(first == 0.0, rising, np.where(second == 0.0, falling, passing))
        between_slacks = (first == 0.0) & (second == 0.0)
        known = (share >= 0.0) & (share <= 1.0) & (span <= LONGEST_GAP_S) & ~between_slacks
        return np.where(known, rate, np.nan)
