"""A model of the stream in space and time, with its day's correction and how far to trust it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from .corrected import corrected
from .stream import Stream, StreamSample


@dataclass(frozen=True, kw_only=True)
class ModelStream:
    """A mesh or raster of currents. Rates are multiplied by ``rate_factor``, times moved ``shift_s`` later.

    ``rate_uncertainty`` is a share of the rate, ``phase_uncertainty_s`` seconds; common practice, no source.
    """

    name: str
    stream: Stream
    source: str = ""
    rate_uncertainty: float = 0.30
    phase_uncertainty_s: float = 1800.0
    rate_factor: float = 1.0
    shift_s: float = 0.0

    def at(self, x_m: ArrayLike, y_m: ArrayLike, t_s: ArrayLike) -> StreamSample:
        """Stream at places of the plan's frame and times in seconds from its start; arguments broadcast."""
        return corrected(self.stream.at(x_m, y_m, np.asarray(t_s, dtype=float) - self.shift_s), self.rate_factor)
