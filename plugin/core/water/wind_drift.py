"""Streams that the wind drives, from a table of winds."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..quantities import SECONDS_PER_HOUR
from ..words import tr
from .stream import StreamSample
from .vector_knots import VectorKnots, vectors_towards

LONGEST_GAP_S = 6.0 * SECONDS_PER_HOUR  # forecasts come by the hour, by three or by six; common practice, no source


@dataclass(frozen=True, kw_only=True)
class WindTable:
    """Winds at moments: ``times_s`` (n,), seconds from the plan's start, ``from_deg`` (n,) true, ``speed_m_s`` (n,).

    NaN is unknown. A calm needs no direction.
    """

    times_s: np.ndarray
    from_deg: np.ndarray
    speed_m_s: np.ndarray

    def __post_init__(self) -> None:
        order = np.argsort(np.asarray(self.times_s, dtype=float), kind="stable")
        for name in ("times_s", "from_deg", "speed_m_s"):
            array = np.array(getattr(self, name), dtype=float)[order]
            array.setflags(write=False)
            object.__setattr__(self, name, array)
        if np.any(np.diff(self.times_s) <= 0.0):
            raise SwimPlanError(asked=tr("The winds have two rows at one time"), remedy=tr("Delete one of them"))


class WindDrivenStream:
    """A stream of ``percent`` of the wind's speed, TOWARDS where the wind comes from + 180 + ``turn_deg``.

    The wind is linear in time on its components, unknown outside its table and across gaps of more than six hours.
    The share and the turn are the user's; the leeway of a float or a swimmer is another thing and is not in it.
    """

    def __init__(self, winds: WindTable, *, percent: float, turn_deg: float = 0.0) -> None:
        rate = winds.speed_m_s * percent / 100.0
        # A calm, and a share of nothing, are still water whichever way the wind may be.
        east, north = vectors_towards(winds.from_deg + 180.0 + turn_deg, rate)
        self._knots = VectorKnots(times_s=winds.times_s, east_m_s=east, north_m_s=north, longest_gap_s=LONGEST_GAP_S)

    def at(self, t_s: ArrayLike) -> StreamSample:
        """Stream at times in seconds from the plan's start (any shape)."""
        return self._knots.at(t_s)
