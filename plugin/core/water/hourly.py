"""Hourly tidal stream tables: thirteen sets with spring and neap rates, from six hours before HW or LW to six after."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..quantities import SECONDS_PER_HOUR
from ..words import tr
from .coefficients import DayCoefficients, rates_by_coefficient
from .day_rates import rates_by_range
from .stream import StreamSample
from .tide import TideTable
from .vector_knots import VectorKnots, vectors_towards

HOURS = np.arange(-6, 7)
LONGEST_SPACE_H = 1.5  # between +6 h of one high water and -6 h of the next: bridged, because the table joins itself


@dataclass(frozen=True, kw_only=True)
class HourlyTable:
    """One station's table. Arrays (13,) for hours -6..+6: ``set_deg`` TOWARDS true, rates in m/s, NaN where blank.

    ``spring_range_m`` and ``neap_range_m`` are the port's mean ranges, NaN where unknown. In a table by tide
    coefficient the spring rates are those at 95 and the neap rates those at 45.
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
                    asked=tr("The hourly table of {station} has {size} values of {name}").format(
                        station=self.station, size=array.size, name=name
                    ),
                    allowed=tr("It has 13, for the hours -6 to +6"),
                    remedy=tr("Give one row for each hour; leave an unknown rate empty"),
                )
            array.setflags(write=False)
            object.__setattr__(self, name, array)
        if self.neap_range_m >= self.spring_range_m:
            raise SwimPlanError(
                asked=tr("Station {station} has neap range {neap_range_m} m, spring range {spring_range_m} m").format(
                    station=self.station, neap_range_m=self.neap_range_m, spring_range_m=self.spring_range_m
                ),
                allowed=tr("The spring range is the larger"),
                remedy=tr("Correct the stream_stations row"),
            )

    def rates_for_range(self, range_m: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Rates in m/s, shape (m, 13), on days of the given ranges (m,), and whether they are extrapolated (m, 13)."""
        return rates_by_range(self.spring_m_s, self.neap_m_s, range_m[:, None], self.spring_range_m, self.neap_range_m)


class HourlyStream:
    """A table bound to its port's tide: stream at any time, linear in time on the vector between the hours.

    The rates are those of the day's range, or of the day's tide coefficient where ``coefficients`` are given. Outside
    the hours that the tide table's waters reach, and beside a blank row, the stream is unknown.
    """

    def __init__(self, table: HourlyTable, tide: TideTable, coefficients: DayCoefficients | None = None) -> None:
        self.table = table
        waters = tide.reference_times_s(table.reference)
        if coefficients is None:
            rate, extrapolated = table.rates_for_range(tide.ranges_m(table.reference))
        else:
            day = coefficients.of_waters(waters)[:, None]
            rate, extrapolated = rates_by_coefficient(table.spring_m_s, table.neap_m_s, day)
        east, north = vectors_towards(table.set_deg, rate)
        cycles = [
            _clipped_cycle(water, middles, np.column_stack([east[row], north[row], extrapolated[row]]))
            for row, (water, middles) in enumerate(zip(waters, _middles(waters)))
        ]
        knots = np.concatenate(cycles) if cycles else np.empty((0, 4))
        self._knots = VectorKnots(
            times_s=knots[:, 0],
            east_m_s=knots[:, 1],
            north_m_s=knots[:, 2],
            doubtful=knots[:, 3] > 0.0,
            longest_gap_s=LONGEST_SPACE_H * SECONDS_PER_HOUR,
        )

    def at(self, t_s: ArrayLike) -> StreamSample:
        """Stream at times in seconds from the plan's start (any shape)."""
        return self._knots.at(t_s)


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
