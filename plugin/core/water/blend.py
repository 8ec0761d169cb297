"""How the streams of several sources become one: shared between equals, or one laid over another."""

from __future__ import annotations

import numpy as np

from .stream import EXTRAPOLATED, KNOWN, UNKNOWN, StreamSample

MATTERS = 0.1  # a source with a smaller share may be missing; common practice, no source


def shared(samples: list[StreamSample], share: np.ndarray, doubt: np.ndarray, sources: np.ndarray) -> StreamSample:
    """Vectors by their shares (k, ...) that add up to one; unknown where a source that matters does not know.

    ``doubt`` marks places at which the whole is an extrapolation; ``sources`` (k,) are the samples' numbers.
    """
    status = np.stack([sample.status for sample in samples])
    counted = np.where(status != UNKNOWN, share, 0.0)
    left = counted.sum(axis=0)
    lost = np.any((status == UNKNOWN) & ~(share <= MATTERS), axis=0) | ~(left > 0.0)
    counted = counted / np.where(lost, np.nan, left)
    east = sum(np.where(weight > 0.0, weight * sample.east_m_s, 0.0) for weight, sample in zip(counted, samples))
    north = sum(np.where(weight > 0.0, weight * sample.north_m_s, 0.0) for weight, sample in zip(counted, samples))
    beyond = np.any((status == EXTRAPOLATED) & (counted > 0.0), axis=0) | doubt
    return StreamSample(
        east_m_s=np.where(lost, np.nan, east),
        north_m_s=np.where(lost, np.nan, north),
        status=np.where(lost, UNKNOWN, np.where(beyond, EXTRAPOLATED, KNOWN)).astype(np.int8),
        source=np.where(lost, -1, sources[np.argmax(share, axis=0)]).astype(np.int16),
    )


def laid_over(lower: StreamSample, share: np.ndarray, upper: StreamSample) -> StreamSample:
    """One stream laid over another with a share 0-1 at each place.

    Where the upper one is unknown the lower stands; where the lower one is unknown the upper stands, if it has a share.
    """
    share = np.where(upper.status == UNKNOWN, 0.0, share)
    share = np.where((lower.status == UNKNOWN) & (share > 0.0), 1.0, share)
    east, north = (
        np.where(share > 0.0, share * getattr(upper, name), 0.0)
        + np.where(share < 1.0, (1.0 - share) * getattr(lower, name), 0.0)
        for name in ("east_m_s", "north_m_s")
    )
    rules = share >= 0.5
    both_known = np.where(share > 0.0, np.minimum(lower.status, upper.status), lower.status)
    status = np.where(share >= 1.0, upper.status, both_known)
    return StreamSample(
        east_m_s=east,
        north_m_s=north,
        status=status.astype(np.int8),
        source=np.where(rules, upper.source, lower.source).astype(np.int16),
    )
