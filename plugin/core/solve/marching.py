"""Places of many swimmers or floats marched step by step through the water, whatever comes of it."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from ..errors import StoppedError
from ..water.stream import UNKNOWN, Stream


def march(
    stream: Stream,
    start_m: np.ndarray,
    times_s: np.ndarray,
    own_m_s: np.ndarray | None = None,
    *,
    progress: Callable[[float], None] | None = None,
    is_cancelled: Callable[[], bool] = bool,
) -> np.ndarray:
    """Places (n, k, 2) at times (n, k), rising, from places (n, 2); NaN from where the stream is not known on.

    ``own_m_s`` (n, k, 2) is each one's own way through the water at those times, None for who only drifts. ``stream``
    gives vectors of the grid. Heun's method: second order in the steps. Raises StoppedError when stopped.
    """
    n, k = times_s.shape
    places = np.full((n, k, 2), np.nan)
    places[:, 0] = start_m

    def speed(place: np.ndarray, node: int) -> np.ndarray:
        sample = stream.at(place[:, 0], place[:, 1], times_s[:, node])
        flow = np.stack([sample.east_m_s, sample.north_m_s], axis=1)
        flow = np.where((sample.status == UNKNOWN)[:, None], np.nan, flow)
        return flow if own_m_s is None else flow + own_m_s[:, node]

    for node in range(k - 1):
        if is_cancelled():
            raise StoppedError()
        step = (times_s[:, node + 1] - times_s[:, node])[:, None]
        first = speed(places[:, node], node)
        second = speed(places[:, node] + step * first, node + 1)
        places[:, node + 1] = places[:, node] + step * (first + second) / 2.0
        if progress is not None:
            progress((node + 1) / (k - 1))
    return places


def places_at(times_s: np.ndarray, places_m: np.ndarray, asked_s: np.ndarray) -> np.ndarray:
    """Places (n, 2) at one moment (n,) of each track (n, k, 2), linear between its times (n, k)."""
    rows, last = np.arange(len(times_s)), times_s.shape[1] - 1
    after = np.clip(np.sum(times_s < asked_s[:, None], axis=1), 1, last)
    step = times_s[rows, after] - times_s[rows, after - 1]
    share = np.clip((asked_s - times_s[rows, after - 1]) / np.where(step > 0.0, step, 1.0), 0.0, 1.0)[:, None]
    before, here = places_m[rows, after - 1], places_m[rows, after]
    # At a node itself the other end of the step has no say, known or not.
    return np.where(share >= 1.0, here, np.where(share <= 0.0, before, before + share * (here - before)))
