"""A sample of the stream as readings that can be drawn: set true, rate in knots, None for what is not known."""

from __future__ import annotations

import numpy as np

from ..quantities import knots_from_m_s
from ..results.swim_in_time import StreamHere
from ..water.stream import StreamSample
from .request import SwimRequest
from .stop_results import or_none
from .stream_day import STATUS_WORDS


def stream_readings(
    request: SwimRequest, xy_m: np.ndarray, sample: StreamSample, times_s: tuple[np.ndarray, np.ndarray, np.ndarray]
) -> list[StreamHere]:
    """A reading for each place (n, 2) of the frame and its sample (n,); ``times_s`` are moment, begin and end (n,).

    Times are seconds from the plan's start, NaN where not known.
    """
    lonlat = request.frame.to_lonlat(xy_m) if len(xy_m) else xy_m
    towards = (sample.set_deg + request.frame.convergence_at(xy_m[:, 0])) % 360.0
    rate_kn = knots_from_m_s(sample.rate_m_s)
    clock = {float(one): request.clock.moment(float(one)) for one in np.unique(np.stack(times_s))}
    moments = [[clock.get(float(one)) for one in times] for times in times_s]
    return [
        StreamHere(
            lon=float(lonlat[row, 0]),
            lat=float(lonlat[row, 1]),
            moment=moments[0][row],
            begin=moments[1][row],
            end=moments[2][row],
            set_deg=or_none(towards[row]),
            rate_kn=or_none(rate_kn[row]),
            known=STATUS_WORDS[int(sample.status[row])],
        )
        for row in range(len(xy_m))
    ]
