"""Tide coefficients: one number a tide for how large it is, and stream rates given at two of them."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..quantities import SECONDS_PER_HOUR
from ..words import tr

NEAP_COEFFICIENT, SPRING_COEFFICIENT = 45.0, 95.0  # mean neaps and mean springs, by which French tables are drawn up
NEAREST_WATER_S = 7.0 * SECONDS_PER_HOUR  # a coefficient belongs to the high water it stands beside, and to its tide


@dataclass(frozen=True, kw_only=True)
class DayCoefficients:
    """Coefficients of one port: ``times_s`` (n,) of the high waters, seconds from the plan's start, and numbers."""

    port: str
    times_s: np.ndarray
    coefficients: np.ndarray

    def __post_init__(self) -> None:
        order = np.argsort(np.asarray(self.times_s, dtype=float), kind="stable")
        for name in ("times_s", "coefficients"):
            array = np.array(getattr(self, name), dtype=float)[order]
            array.setflags(write=False)
            object.__setattr__(self, name, array)
        if np.any(np.diff(self.times_s) <= 0.0):
            raise SwimPlanError(
                asked=tr("The tide coefficients of {port} have two rows at one time").format(port=self.port),
                remedy=tr("Delete one of them"),
            )

    def of_waters(self, waters_s: np.ndarray) -> np.ndarray:
        """The coefficient (m,) of the tide at each water (m,): the nearest in time within seven hours, else NaN."""
        if not len(self.times_s):
            return np.full(len(waters_s), np.nan)
        away = np.abs(np.asarray(waters_s, dtype=float)[:, None] - self.times_s)
        nearest = np.argmin(away, axis=1)
        near = away[np.arange(len(away)), nearest] <= NEAREST_WATER_S
        return np.where(near, self.coefficients[nearest], np.nan)


def rates_by_coefficient(at_95: ArrayLike, at_45: ArrayLike, coefficient: ArrayLike) -> tuple[np.ndarray, np.ndarray]:
    """Rates on tides of the given coefficients, and whether they are extrapolated; arguments broadcast.

    V = V45 + (V95 - V45) (C - 45) / 50, below 45 never below half of V45 C / 45, so that the formula cannot make the
    stream stop (common practice, no source). Source: the practice printed in the French stream tables (from memory).
    With V95 alone V = V95 C / 95, as the coefficient goes with the range, marked extrapolated; with no
    coefficient known V95 stands, as the careful choice, marked extrapolated. So is any tide beyond 45 to 95.
    """
    at_95, at_45, coefficient = np.broadcast_arrays(
        *(np.asarray(value, dtype=float) for value in (at_95, at_45, coefficient))
    )
    step = SPRING_COEFFICIENT - NEAP_COEFFICIENT
    least = 0.5 * np.minimum(at_45, at_95) * coefficient / NEAP_COEFFICIENT
    linear = np.maximum(at_45 + (at_95 - at_45) * (coefficient - NEAP_COEFFICIENT) / step, least)
    factor = at_95 * coefficient / SPRING_COEFFICIENT
    rate = np.where(np.isfinite(linear), linear, np.where(np.isfinite(factor), factor, at_95))
    within = (coefficient >= NEAP_COEFFICIENT) & (coefficient <= SPRING_COEFFICIENT)
    return rate, ~(within & np.isfinite(linear))
