"""How a rate between springs and neaps is found for a day: by the range of its tide."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike


def rates_by_range(
    spring: ArrayLike,
    neap: ArrayLike,
    range_m: ArrayLike,
    spring_range_m: float,
    neap_range_m: float,
) -> tuple[np.ndarray, np.ndarray]:
    """Rates, in the unit given, on days of the given ranges, and whether they are extrapolated; arguments broadcast.

    R = Rn + (Rs - Rn) (r - rn) / (rs - rn), beyond neaps never below half of Rn r / rn, so that the formula cannot make
    the stream stop (common practice, no source); with spring rates alone R = Rs r / rs (Bown, factor method); with no
    range known the spring rate stands, as the careful choice, marked extrapolated.
    """
    spring, neap, range_m = np.broadcast_arrays(*(np.asarray(value, dtype=float) for value in (spring, neap, range_m)))
    linear = neap + (spring - neap) * (range_m - neap_range_m) / (spring_range_m - neap_range_m)
    factor = spring * range_m / spring_range_m
    in_proportion = range_m / neap_range_m if neap_range_m > 0.0 else np.zeros(range_m.shape)
    least = 0.5 * np.minimum(neap, spring) * np.maximum(in_proportion, 0.0)
    rate = np.where(np.isfinite(linear), np.maximum(linear, least), factor)
    known = np.isfinite(rate)
    outside = (range_m > spring_range_m) | (range_m < neap_range_m)
    return np.where(known, rate, spring), ~known | outside
