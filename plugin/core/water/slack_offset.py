"""Stream of a place of which only the time of slack, one rate and the two sets are known."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..words import tr
from .day_rates import rates_by_range
from .stream import EXTRAPOLATED, KNOWN, UNKNOWN, StreamSample
from .tide import LONGEST_GAP_S, TideTable


class SlackOffsetStream:
    """Slack ``offset_s`` after each high and low water, later positive, and a sine between slacks.

    From the slack that belongs to a low water the flood runs, from that of a high water the ebb. The sine's peak is the
    rate of the day's own rise or fall between ``neap_m_s`` and ``spring_m_s`` by its range. Source of the sine: the
    50/90 rule's 0/50/90/100/90/50/0 (Matthews 2007, p. 90) lies within 0.04 of it. NaN sets leave the stream unknown.
    """

    def __init__(
        self,
        tide: TideTable,
        *,
        station: str,
        offset_s: float,
        spring_m_s: float,
        neap_m_s: float = float("nan"),
        spring_range_m: float = float("nan"),
        neap_range_m: float = float("nan"),
        flood_set_deg: float,
        ebb_set_deg: float,
    ) -> None:
        if neap_range_m >= spring_range_m:
            raise SwimPlanError(
                asked=tr("Station {station} has neap range {neap_range_m} m, spring range {spring_range_m} m").format(
                    station=station, neap_range_m=neap_range_m, spring_range_m=spring_range_m
                ),
                allowed=tr("The spring range is the larger"),
                remedy=tr("Correct the stream_stations row"),
            )
        self.station = station
        self._slacks_s = tide.times_s + offset_s
        self._sets_deg = np.where(tide.is_high, ebb_set_deg, flood_set_deg)
        self._peaks_m_s, doubtful = rates_by_range(
            spring_m_s, neap_m_s, np.abs(np.diff(tide.heights_m)), spring_range_m, neap_range_m
        )
        self._status = np.where(doubtful, EXTRAPOLATED, KNOWN)
        # Two waters of one kind have lost the one between them: what runs there is not known.
        self._whole = (np.diff(tide.times_s) <= LONGEST_GAP_S) & (tide.is_high[1:] != tide.is_high[:-1])

    def at(self, t_s: ArrayLike) -> StreamSample:
        """Stream at times in seconds from the plan's start (any shape), unknown outside the waters of the table."""
        t_s, slacks = np.asarray(t_s, dtype=float), self._slacks_s
        if len(slacks) < 2:
            nothing = np.full(t_s.shape, np.nan)
            return StreamSample(east_m_s=nothing, north_m_s=nothing, status=np.zeros(t_s.shape, dtype=np.int8))
        row = np.clip(np.searchsorted(slacks, t_s, side="right") - 1, 0, len(slacks) - 2)
        share = (t_s - slacks[row]) / (slacks[row + 1] - slacks[row])
        inside = (share >= 0.0) & (share <= 1.0) & self._whole[row]
        # At the slack itself exactly nothing, which needs no set.
        turning = (share == 0.0) | (share == 1.0)
        rate = np.where(turning, 0.0, self._peaks_m_s[row] * np.sin(np.pi * share))
        towards = np.radians(self._sets_deg[row])
        east = np.where(inside, np.where(turning, 0.0, rate * np.sin(towards)), np.nan)
        north = np.where(inside, np.where(turning, 0.0, rate * np.cos(towards)), np.nan)
        status = np.where(np.isfinite(east), self._status[row], UNKNOWN).astype(np.int8)
        return StreamSample(east_m_s=east, north_m_s=north, status=status)
