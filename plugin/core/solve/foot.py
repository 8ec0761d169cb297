"""What the foot of the card says of the water: high and low waters, and when the stream turns and to where."""

from __future__ import annotations

import numpy as np

from ..quantities import knots_from_m_s
from ..results.swim_plan import StreamTurn, TideMoment
from ..water.stream import StreamSample
from ..water.tide import HW, LW
from .request import SwimRequest

AROUND_S = 4 * 3600.0


def tide_moments(request: SwimRequest, start_s: float, end_s: float) -> tuple[TideMoment, ...]:
    """High and low waters from four hours before the swim to four hours after it."""
    if request.tide is None:
        return ()
    tide = request.tide
    rows = np.flatnonzero((tide.times_s >= start_s - AROUND_S) & (tide.times_s <= end_s + AROUND_S))
    return tuple(
        TideMoment(
            moment=request.clock.moment(float(tide.times_s[row])),
            kind=HW if tide.is_high[row] else LW,
            height_m=float(tide.heights_m[row]) if np.isfinite(tide.heights_m[row]) else None,
        )
        for row in rows
    )


def stream_turns(request: SwimRequest, start_s: float, end_s: float) -> tuple[StreamTurn, ...]:
    """Least rates at the stop farthest out, to the minute, from four hours before the swim to four hours after it.

    A rotary stream has no slack: the least rate is given with its rate.
    """
    stops = request.stops_m
    far = stops[np.argmax(np.hypot(*(stops - stops[0]).T))]
    times = np.arange(start_s - AROUND_S, end_s + AROUND_S, 60.0)
    sample = request.stream.at(far[0], far[1], times)
    rate = sample.rate_m_s
    inner = np.flatnonzero((rate[1:-1] < rate[:-2]) & (rate[1:-1] <= rate[2:])) + 1
    return tuple(_turn(request, times, sample, int(row)) for row in inner)


def _turn(request: SwimRequest, times: np.ndarray, sample: StreamSample, row: int) -> StreamTurn:
    # Half an hour on the new stream has made up its mind.
    after = min(row + 30, len(times) - 1)
    set_after = float(sample.set_deg[after])
    return StreamTurn(
        moment=request.clock.moment(float(times[row])),
        rate_kn=float(knots_from_m_s(sample.rate_m_s[row])),
        set_after_deg=set_after if np.isfinite(set_after) else None,
    )
