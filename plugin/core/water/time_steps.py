"""The time steps of a model: between which two a moment lies, and the stream between them, block by block."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from ..errors import SwimPlanError
from ..words import tr
from .stream import EXTRAPOLATED, KNOWN, UNKNOWN, StreamSample

BLOCK = 65_536  # places taken together: keeps what is in work within some tens of megabytes, and mostly in the cache


def checked_steps(times_s: np.ndarray, name: str) -> np.ndarray:
    """The times (n,) as a read-only array; SwimPlanError unless there are two that rise."""
    times = np.array(times_s, dtype=float)
    if times.ndim != 1 or len(times) < 2 or not np.all(np.isfinite(times)) or not np.all(np.diff(times) > 0.0):
        raise SwimPlanError(
            asked=tr("The model '{name}' has {size} time steps").format(name=name, size=times.size),
            allowed=tr("A model has two steps or more, each later than the one before"),
            remedy=tr("Give a model that goes on in time"),
        )
    times.setflags(write=False)
    return times


def as_vectors(east_m_s: np.ndarray, north_m_s: np.ndarray) -> np.ndarray:
    """East and north as one complex array, east + i north, NaN where either is not known; read-only."""
    east, north = np.asarray(east_m_s), np.asarray(north_m_s)
    single = east.dtype == np.float32 and north.dtype == np.float32
    vectors = np.empty(east.shape, dtype=np.complex64 if single else np.complex128)
    vectors.real, vectors.imag = east, north
    vectors[~(np.isfinite(east) & np.isfinite(north))] = complex(np.nan, np.nan)
    vectors.setflags(write=False)
    return vectors


def around(times_s: np.ndarray, t_s: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The step before each moment (m,), the share 0-1 of the way to the next, and whether the steps reach so far."""
    within = (t_s >= times_s[0]) & (t_s <= times_s[-1])
    before = np.clip(np.searchsorted(times_s, t_s, side="right") - 1, 0, len(times_s) - 2)
    share = (t_s - times_s[before]) / (times_s[before + 1] - times_s[before])
    return before, np.where(within, share, 0.0), within


def between(before: np.ndarray, after: np.ndarray, share: np.ndarray) -> np.ndarray:
    """The vectors between two steps, linear on their components; a step that has no share need not be known."""
    mixed = before + (after - before) * share
    start, end = np.flatnonzero(share <= 0.0), np.flatnonzero(share >= 1.0)
    mixed[start], mixed[end] = before[start], after[end]
    return mixed


Work = Callable[..., "tuple[np.ndarray, np.ndarray]"]


def sampled(work: Work, shape: tuple[int, ...], *arrays: np.ndarray) -> StreamSample:
    """The sample of that shape: ``work`` gives vectors and whether they are extrapolated for each block of arrays."""
    wide = [np.broadcast_to(array, shape) for array in arrays]
    size = int(np.prod(shape, dtype=np.int64))
    east, north, status = np.empty(size), np.empty(size), np.empty(size, dtype=np.int8)
    for start in range(0, size, BLOCK):
        part = slice(start, min(start + BLOCK, size))
        vectors, doubt = work(*(array.flat[part] for array in wide))
        east[part], north[part] = vectors.real, vectors.imag
        status[part] = np.where(np.isnan(vectors.real), UNKNOWN, np.where(doubt, EXTRAPOLATED, KNOWN))
    return StreamSample(east_m_s=east.reshape(shape), north_m_s=north.reshape(shape), status=status.reshape(shape))
