"""The smallest convex area round places."""

from __future__ import annotations

import numpy as np

RIM_M = 5.0  # civil GPS knows a place to about 5 m (common practice, no source): so wide is the area of a single one
_RIM = RIM_M * np.array([(np.sin(a), np.cos(a)) for a in np.linspace(0.0, 2.0 * np.pi, 12, endpoint=False)])


def hull_round(xy_m: np.ndarray) -> np.ndarray:
    """Ring (k, 2), closed and counter-clockwise, 5 m outside of the places (n, 2), n > 0."""
    inner = convex_hull(xy_m)
    ring = convex_hull((inner[:, None] + _RIM).reshape(-1, 2))
    return np.vstack([ring, ring[:1]])


def convex_hull(xy_m: np.ndarray) -> np.ndarray:
    """Corners (k, 2), counter-clockwise, of the convex hull of places (n, 2).

    Source: A. M. Andrew, Information Processing Letters 9 (1979) 216, the monotone chain; cited from memory.
    """
    places = np.unique(np.asarray(xy_m, dtype=float), axis=0).tolist()
    if len(places) < 3:
        return np.array(places)
    lower, upper = _chain(places), _chain(places[::-1])
    return np.array(lower[:-1] + upper[:-1])


def _chain(places: list[list[float]]) -> list[list[float]]:
    """The places, in order, at which the way round turns to the left."""
    chain: list[list[float]] = []
    for x, y in places:
        while len(chain) > 1:
            (x1, y1), (x2, y2) = chain[-2:]
            if (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1) > 0.0:
                break
            chain.pop()
        chain.append([x, y])
    return chain
