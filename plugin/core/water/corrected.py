"""A day's correction of a stream: stronger or weaker than its table by a factor, and earlier or later by a shift."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from .stream import StationStream, StreamSample


def corrected(sample: StreamSample, rate_factor: float) -> StreamSample:
    """The sample with its rates multiplied; the set stays."""
    if rate_factor == 1.0:
        return sample
    return StreamSample(
        east_m_s=sample.east_m_s * rate_factor,
        north_m_s=sample.north_m_s * rate_factor,
        status=sample.status,
        source=sample.source,
    )


@dataclass(frozen=True, kw_only=True)
class CorrectedStream:
    """A station's stream with rates times ``rate_factor``, everything ``shift_s`` seconds later than its table says."""

    stream: StationStream
    rate_factor: float = 1.0
    shift_s: float = 0.0

    def at(self, t_s: ArrayLike) -> StreamSample:
        """Stream at times in seconds from the plan's start (any shape)."""
        return corrected(self.stream.at(np.asarray(t_s, dtype=float) - self.shift_s), self.rate_factor)
