"""Sums of a smooth quantity over a leg from a few well placed points: Chebyshev points and their exact integrals.

Source: C. W. Clenshaw and A. R. Curtis, A method for numerical integration on an automatic computer, Numerische
Mathematik 2 (1960) 197 (cited from memory).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, lru_cache

import numpy as np
from numpy.polynomial import chebyshev

EVEN = np.linspace(0.0, 1.0, 25)


@dataclass(frozen=True, kw_only=True)
class SmoothRule:
    """Points 0..1 (k,), closer towards the ends, and what turns values at them into integrals.

    ``running`` (k, k) integrates from 0 to each point, ``every_second`` ((k + 1) / 2,) from 0 to 1 by every second
    value alone. ``even_running`` (25, k) gives integrals up to 25 even points.
    """

    points: np.ndarray
    running: np.ndarray
    every_second: np.ndarray
    even_running: np.ndarray
    factors: np.ndarray

    def integrals_at(self, points: np.ndarray) -> np.ndarray:
        """What turns values at the rule's points into integrals from 0 to other points (m,): (m, k)."""
        return _integrals(self.factors, 2.0 * points - 1.0)

    def at_even(self, count: int) -> tuple[np.ndarray, np.ndarray]:
        """What turns values (..., k) at the rule's points into integrals and values at even points: (k, count) each."""
        return _at_even(len(self.points) - 1, count)


@cache
def smooth_rule(intervals: int) -> SmoothRule:
    """The rule of an even number of intervals; exact for polynomials of that degree."""
    x = -np.cos(np.pi * np.arange(intervals + 1) / intervals)
    factors = np.linalg.inv(chebyshev.chebvander(x, intervals))
    half = x[::2]
    half_factors = np.linalg.inv(chebyshev.chebvander(half, intervals // 2))
    even = 2.0 * EVEN - 1.0
    return SmoothRule(
        points=(x + 1.0) / 2.0,
        running=_integrals(factors, x),
        every_second=_integrals(half_factors, np.array([1.0]))[0],
        even_running=_integrals(factors, even),
        factors=factors,
    )


def _integrals(factors: np.ndarray, x: np.ndarray) -> np.ndarray:
    """Integrals from -1 to each x, over a span of 1 in place of 2."""
    whole = chebyshev.chebint(factors, lbnd=-1.0, axis=0)
    return chebyshev.chebvander(x, len(whole) - 1) @ whole / 2.0


@lru_cache(maxsize=256)
def _at_even(intervals: int, count: int) -> tuple[np.ndarray, np.ndarray]:
    rule, even = smooth_rule(intervals), np.linspace(0.0, 1.0, count)
    values = chebyshev.chebvander(2.0 * even - 1.0, intervals) @ rule.factors
    return np.ascontiguousarray(rule.integrals_at(even).T), np.ascontiguousarray(values.T)
