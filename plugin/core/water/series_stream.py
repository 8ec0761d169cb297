"""Streams at set times: a current meter's record, or the time series of a chart."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..quantities import SECONDS_PER_HOUR
from ..words import tr
from .stream import StreamSample
from .vector_knots import VectorKnots, vectors_towards

LONGEST_GAP_S = 2.0 * SECONDS_PER_HOUR  # a stream can go from its maximum to slack in three; common practice, no source


@dataclass(frozen=True, kw_only=True)
class SeriesStream:
    """Sets and rates of one station: ``times_s`` (n,), ``set_deg`` (n,) TOWARDS true, ``rate_m_s`` (n,), NaN unknown.

    Linear in time on the vector; unknown outside the times and across gaps of more than two hours.
    """

    station: str
    times_s: np.ndarray
    set_deg: np.ndarray
    rate_m_s: np.ndarray

    def __post_init__(self) -> None:
        times_s = np.asarray(self.times_s, dtype=float)
        order = np.argsort(times_s, kind="stable")
        if np.any(np.diff(times_s[order]) <= 0.0):
            raise SwimPlanError(
                asked=tr("The stream series of {station} has two rows at one time").format(station=self.station),
                remedy=tr("Delete one of them"),
            )
        east, north = vectors_towards(self.set_deg, self.rate_m_s)
        knots = VectorKnots(
            times_s=times_s[order], east_m_s=east[order], north_m_s=north[order], longest_gap_s=LONGEST_GAP_S
        )
        object.__setattr__(self, "_knots", knots)

    def at(self, t_s: ArrayLike) -> StreamSample:
        """Stream at times in seconds from the plan's start (any shape)."""
        return self._knots.at(t_s)
