"""Hourly tidal stream tables: thirteen sets with spring and neap rates, from six hours before HW or LW to six after."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..quantities import SECONDS_PER_HOUR
from .stream import EXTRAPOLATED, KNOWN, UNKNOWN, StreamSample
from .tide import TideTable

HOURS = np.arange(-6, 7)
LONGEST_SPACE_H = 1.5  # between +6 h of one high water and -6 h of the next: bridged, because the table joins itself


@dataclass(frozen=True, kw_only=True)
class HourlyTable:
    """One station's table. Arrays (13,) for hours -6..+6: ``set_deg`` TOWARDS true, rates in m/s, NaN where blank.

    ``spring_range_m`` and ``neap_range_m`` are the port's mean ranges, NaN where unknown.
    """

    station: str
    reference: str
    set_deg: np.ndarray
    spring_m_s: np.ndarray
    neap_m_s: np.ndarray
    spring_range_m: float = float("nan")
    neap_range_m: float = float("nan")

    def __post_init__(self) -> None:
        for name in ("set_deg", "spring_m_s", "neap_m_s"):
            array = np.array(getattr(self, name), dtype=float)
            if array.shape != HOURS.shape:
                raise SwimPlanError(
                    asked=f"The hourly table of {self.station} has {array.size} values of {name}",
                    allowed="It has 13, for the hours -6 to +6",
                    remedy="Give one row for each hour; leave an unknown rate empty",
                )
            array.setflags(write=False)
            object.__setattr__(self, name, array)
        if self.neap_range_m >= self.spring_range_m:
            raise SwimPlanError(
                asked=f"Station {self.station} has neap range {self.neap_range_m} m, spring range "
                f"{self.spring_range_m} m",
                allowed="The spring range is the larger",
                remedy="Correct the stream_stations row",
            )

    def rates_for_range(self, range_m: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Rates in m/s, shape (m, 13), on days of the given ranges (m,), and whether they are extrapolated (m, 13).

        R = Rn + (Rs - Rn) (r - rn) / (rs - rn), never below nothing; with spring rates alone R = Rs r / rs (Bown,
        factor method); with no range known the spring rate stands, as the careful choice, marked extrapolated.
        """
        share_range = range_m[:, None]
        linear = self.neap_m_s + (self.spring_m_s - self.neap_m_s) * (share_range - self.neap_range_m) / (
            self.spring_range_m - self.neap_range_m
        )
        factor = self.spring_m_s * share_range / self.spring_range_m
        rate = np.where(np.isfinite(linear), np.maximum(linear, 0.0), factor)
        known = np.isfinite(rate)
        outside = (share_range > self.spring_range_m) | (share_range < self.neap_range_m)
        rate = np.where(known, rate, self.spring_m_s)
        return rate, ~known | np.broadcast_to(outside, rate.shape)


class HourlyStream:
    """A table bound to its port's tide: stream at any time, linear in time on the vector between the hours.

    Outside the hours that the tide table's waters reach, and beside a blank row, the stream is unknown.
    """

    def __init__(self, table: HourlyTable, tide: TideTable) -> None:
        self.table = table
        waters = tide.reference_times_s(table.reference)
        rate, extrapolated = table.rates_for_range(tide.ranges_m(table.reference))
        towards = np.radians(table.set_deg)
        # A rate of nothing has no set: a blank set beside it is no gap.
        still = rate == 0.0
        east = np.where(still, 0.0, rate * np.sin(towards))
        north = np.where(still, 0.0, rate * np.cos(towards))
        cycles = [
            _clipped_cycle(water, middles, np.column_stack([east[row], north[row], extrapolated[row]]))
            for row, (water, middles) in enumerate(zip(waters, _middles(waters)))
        ]
        knots = np.concatenate(cycles) if cycles else np.empty((0, 4))
        self._times_s, self._east_m_s, self._north_m_s = knots[:, 0], knots[:, 1], knots[:, 2]
        self._extrapolated = knots[:, 3] > 0.0

    def at(self, t_s: ArrayLike) -> StreamSample:
        """Stream at times in seconds from the plan's start (any shape)."""
        t_s = np.asarray(t_s, dtype=float)
        knots = self._times_s
        if len(knots) < 2:
            nothing = np.full(t_s.shape, np.nan)
            return StreamSample(east_m_s=nothing, north_m_s=nothing, status=np.zeros(t_s.shape, dtype=np.int8))
        row = np.minimum(np.maximum(np.searchsorted(knots, t_s, side="right") - 1, 0), len(knots) - 2)
        span = knots[row + 1] - knots[row]
        share = (t_s - knots[row]) / span
        share = np.where((share >= 0.0) & (share <= 1.0) & (span <= LONGEST_SPACE_H * SECONDS_PER_HOUR), share, np.nan)
        east = _between(self._east_m_s, row, share)
        north = _between(self._north_m_s, row, share)
        known = np.isfinite(east) & np.isfinite(north)
        beyond = self._extrapolated[row] | self._extrapolated[row + 1]
        status = np.where(known, np.where(beyond, EXTRAPOLATED, KNOWN), UNKNOWN).astype(np.int8)
        return StreamSample(
            east_m_s=np.where(known, east, np.nan), north_m_s=np.where(known, north, np.nan), status=status
        )


def _between(values: np.ndarray, row: np.ndarray, share: np.ndarray) -> np.ndarray:
    """Linear between knots; at a knot itself a blank neighbour does no harm."""
    first, second = values[row], values[row + 1]
    mixed = first + (second - first) * share
    return np.where(share == 0.0, first, np.where(share == 1.0, second, mixed))


def _middles(waters: np.ndarray) -> np.ndarray:
    """Times (m, 2) half way to the water before and to the one after, infinite at the ends."""
    middle = (waters[1:] + waters[:-1]) / 2.0
    return np.column_stack([np.concatenate([[-np.inf], middle]), np.concatenate([middle, [np.inf]])])


def _clipped_cycle(water: float, middles: np.ndarray, values: np.ndarray) -> np.ndarray:
    """Knots (k, 4) of one water's table, cut half way to its neighbours where the cycles overlap: time, then values."""
    times = water + HOURS * SECONDS_PER_HOUR
    start, end = np.maximum(middles[0], times[0]), np.minimum(middles[1], times[-1])
    inner = times[(times > start) & (times < end)]
    knots = np.concatenate([[start], inner, [end]])
    columns = [np.interp(knots, times, column) for column in values.T]
    # np.interp leaves a blank beside a blank; at the hours themselves the table's own value stands.
    at_hour = np.isin(times, knots)
    for column, source in zip(columns, values.T):
        column[np.isin(knots, times)] = source[at_hour]
    return np.column_stack([knots, *columns])
