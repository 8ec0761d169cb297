"""Exact constants and unit conversions."""

from __future__ import annotations

from typing import Any

from numpy.typing import ArrayLike

METRES_PER_NAUTICAL_MILE = 1852.0  # by definition, First International Extraordinary Hydrographic Conference 1929
SECONDS_PER_MINUTE = 60.0
SECONDS_PER_HOUR = 3600.0
M_S_PER_KNOT = METRES_PER_NAUTICAL_MILE / SECONDS_PER_HOUR


def m_s_from_knots(rate_kn: ArrayLike) -> Any:
    """Rate in metres a second from a rate in knots (scalar or array)."""
    return rate_kn * M_S_PER_KNOT


def knots_from_m_s(rate_m_s: ArrayLike) -> Any:
    """Rate in knots from a rate in metres a second (scalar or array)."""
    return rate_m_s / M_S_PER_KNOT
