"""The stream as a front meets it: in seconds since the front set out, forward in time or backward."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ...water.stream import UNKNOWN, Stream, StreamSample


@dataclass(frozen=True, kw_only=True)
class FrontStream:
    """A stream of the grid's own vectors, asked in seconds since ``origin_s`` of the plan.

    A front that runs back in time meets the stream reversed: whoever swims from here to there against it backward in
    time swims from there to here with it forward.
    """

    stream: Stream
    origin_s: float
    backward: bool = False

    def plan_s(self, front_s: ArrayLike) -> np.ndarray:
        """Seconds of the plan at seconds of the front."""
        sense = -1.0 if self.backward else 1.0
        return self.origin_s + sense * np.asarray(front_s, dtype=float)

    def at(self, xy_m: np.ndarray, front_s: ArrayLike) -> tuple[np.ndarray, np.ndarray]:
        """Vectors (n, 2), NaN where not known, and statuses (n,) at places (n, 2) and seconds of the front."""
        sample: StreamSample = self.stream.at(xy_m[:, 0], xy_m[:, 1], self.plan_s(front_s))
        vectors = np.stack([sample.east_m_s, sample.north_m_s], axis=1)
        vectors[sample.status == UNKNOWN] = np.nan
        return (-vectors if self.backward else vectors), sample.status
