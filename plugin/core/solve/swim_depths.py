"""The charted depth under a swimmer on the way, where the chart has one that can be used."""

from __future__ import annotations

import numpy as np

from ..planar import distance_to_segments
from .request import SwimRequest

# Between a beach and the first contour the chart gives that contour's depth or more, which is too deep there. A depth
# counts where land is at least so many times as far as the nearest charted depth; common practice, no source.
LAND_FARTHER = 2.0


def depths_under_way(request: SwimRequest, xy_m: np.ndarray) -> np.ndarray:
    """Charted depths (n,) in metres at places (n, 2) of the frame, positive down; NaN where none can be used."""
    found = np.full(len(xy_m), np.nan)
    land = [piece.area for piece in request.chart.land]
    if not len(xy_m):
        return found
    land_m = np.min([area.distance_m(xy_m) for area in land], axis=0) if land else np.full(len(xy_m), np.inf)
    for row, place in enumerate(xy_m):
        if land_m[row] >= LAND_FARTHER * _nearest_m(request, place):
            found[row] = request.depths.depth_at(*place).depth_m
    return found


def _nearest_m(request: SwimRequest, place: np.ndarray) -> float:
    """Distance to the nearest sounding or contour; endless without any."""
    soundings = np.hypot(*(request.depths.soundings[:, :2] - place).T)
    contours = distance_to_segments(place[None], request.depths.contours[:, :4])[0][0]
    return float(np.min(np.concatenate([soundings, contours]), initial=np.inf))
