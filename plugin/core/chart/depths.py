"""Charted depth at a place, from soundings and depth contours near it."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from ..planar import boxes_touch, distance_to_segments
from ..words import tr

SOUNDING_STANDS_WITHIN_M = 25.0
SURVEYED_WITHIN_M = 500.0


@dataclass(frozen=True, kw_only=True)
class ChartedDepth:
    """A charted depth in metres, positive down, and what it rests on; NaN and the reason where there is none."""

    depth_m: float
    basis: str


@dataclass(frozen=True, kw_only=True)
class DepthSurvey:
    """Soundings (n, 3) of x, y, depth and contour pieces (m, 5) of x1, y1, x2, y2, depth; metres, positive down."""

    soundings: np.ndarray = field(default_factory=lambda: np.empty((0, 3)))
    contours: np.ndarray = field(default_factory=lambda: np.empty((0, 5)))
    _boxes: np.ndarray = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        first, last = self.contours[:, :2], self.contours[:, 2:4]
        object.__setattr__(self, "_boxes", np.hstack([np.minimum(first, last), np.maximum(first, last)]))

    def depth_at(self, x_m: float, y_m: float) -> ChartedDepth:
        """Charted depth at a place.

        A sounding within 25 m stands, the shoalest where there are several. Else the nearest contour or sounding and
        the nearest one of another depth share by distance; beyond 500 m the bottom is unsurveyed. Common practice, no
        source.
        """
        place = np.array([[x_m, y_m]])
        near = np.hypot(self.soundings[:, 0] - x_m, self.soundings[:, 1] - y_m)
        close = near <= SOUNDING_STANDS_WITHIN_M
        if np.any(close):
            return ChartedDepth(depth_m=float(self.soundings[close, 2].min()), basis="a sounding")
        # What is farther off has no say: a big chart is only looked at near the place.
        spot = np.array([x_m, y_m, x_m, y_m])
        pieces = self.contours[boxes_touch(self._boxes, spot, SURVEYED_WITHIN_M)]
        sounded = near <= SURVEYED_WITHIN_M
        distances = np.concatenate([near[sounded], distance_to_segments(place, pieces[:, :4])[0][0]])
        depths = np.concatenate([self.soundings[sounded, 2], pieces[:, 4]])
        order = np.argsort(distances)[:4000]
        distances, depths = distances[order], depths[order]
        if not len(distances) or distances[0] > SURVEYED_WITHIN_M:
            return ChartedDepth(
                depth_m=float("nan"),
                basis=tr("no sounding or contour within {surveyed_within_m:g} m").format(
                    surveyed_within_m=SURVEYED_WITHIN_M
                ),
            )
        return _shared(distances, depths)


def _shared(distances: np.ndarray, depths: np.ndarray) -> ChartedDepth:
    """Share by distance between the nearest depth and the nearest other one."""
    other = np.flatnonzero((depths != depths[0]) & (distances <= SURVEYED_WITHIN_M))
    if not len(other):
        return ChartedDepth(depth_m=float(depths[0]), basis=tr("the nearest contour"))
    first, second = distances[0], distances[other[0]]
    total = first + second
    share = first / total if total > 0.0 else 0.0
    depth = depths[0] + (depths[other[0]] - depths[0]) * share
    return ChartedDepth(depth_m=float(depth), basis=tr("between contours and soundings"))
