"""The stream round a swim on a coarse grid, from its start to its end."""

from __future__ import annotations

import numpy as np

from ..planar import bounds_of, filled_grid
from ..quantities import SECONDS_PER_MINUTE
from ..results.swim_in_time import StreamHere
from ..water.stream import Stream
from .request import SwimRequest
from .stream_readings import stream_readings

# What can be read on a map; common practice, no source.
CELLS_ACROSS = 9
LEAST_CELL_M = 100.0
AROUND_SHARE, LEAST_AROUND_M = 0.25, 300.0
STEP_S = 15 * SECONDS_PER_MINUTE
MOST_TIMES = 49  # twelve hours of quarters; a longer swim is looked at less often


def stream_around(
    request: SwimRequest, stream: Stream, track_xy_m: np.ndarray, t_s: np.ndarray
) -> tuple[StreamHere, ...]:
    """Readings on a square grid round the track (n, 2) and the route, at steps over the times of the swim (n,).

    Each stands from half a step before its moment to half a step after. Places on land are left out.
    """
    xy_m = _water(request, np.concatenate([track_xy_m, request.stops_m]))
    step_s = STEP_S * max(1, int(np.ceil((t_s[-1] - t_s[0]) / STEP_S / (MOST_TIMES - 1))))
    times = t_s[0] + step_s * np.arange(int(np.ceil((t_s[-1] - t_s[0]) / step_s)) + 1)
    if not len(xy_m):
        return ()
    found: list[StreamHere] = []
    for time in times:  # one time after the other, so that one may stop in between
        spans = tuple(np.full(len(xy_m), time + part * step_s) for part in (0.0, -0.5, 0.5))
        found += stream_readings(request, xy_m, stream.at(*xy_m.T, time), spans)
    return tuple(found)


def _water(request: SwimRequest, route_xy_m: np.ndarray) -> np.ndarray:
    """The grid's places (m, 2) that are not on land: its middle is the route's."""
    box = bounds_of(route_xy_m)
    size_m = float(np.max(box[2:] - box[:2]))
    around_m = max(LEAST_AROUND_M, AROUND_SHARE * size_m)
    cell_m = max(LEAST_CELL_M, (size_m + 2.0 * around_m) / CELLS_ACROSS)
    x_m, y_m = (_centred(box[axis] - around_m, box[axis + 2] + around_m, cell_m) for axis in (0, 1))
    land = filled_grid([piece.area for piece in request.chart.land], x_m, y_m)
    rows, columns = np.nonzero(~land)
    return np.column_stack([x_m[columns], y_m[rows]])


def _centred(low: float, high: float, step: float) -> np.ndarray:
    count = max(1, int((high - low) // step) + 1)
    return (low + high) / 2.0 + step * (np.arange(count) - (count - 1) / 2.0)
