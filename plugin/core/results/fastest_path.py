"""The fastest path between two places as a route to swim, beside the straight line and the best there is."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ..words import marked, spoken
from .plain_values import rounded
from .report import report_dict
from .swim_plan import SwimPlan

METHOD = marked(
    "The optimum is that of a swimmer who steers anew all the time over a grid; the route holds one compass heading a "
    "leg, which is what its minutes are for."
)


@dataclass(frozen=True, kw_only=True)
class Straight:
    """The ruler line on one heading: minutes, None where it cannot be swum, and what is in its way, empty for
    nothing."""

    minutes: float | None
    reason: str
    length_m: float


@dataclass(frozen=True, kw_only=True, eq=False)
class FastestPath:
    """The route as planned, one heading a leg, with its vertices ``lonlat`` (k, 2); ``optimum_min`` is what steering
    all the time takes over the grid, ``square_legs`` the legs (from 1) that cross channels square."""

    plan: SwimPlan
    lonlat: np.ndarray
    optimum_min: float
    straight: Straight
    cell_m: float
    square_legs: tuple[int, ...]


def path_dict(path: FastestPath, *, version: str) -> dict[str, object]:
    """The report of planswim for the route, and with it the comparison; JSON's own kinds of value."""
    return {
        **report_dict(path.plan, version=version),
        "compared": {
            "straight_min": rounded(path.straight.minutes),
            "straight_reason": path.straight.reason or None,
            "straight_m": rounded(path.straight.length_m),
            "optimum_min": rounded(path.optimum_min),
            "route_min": rounded(path.plan.total_min),
        },
        "grid": {"cell_m": rounded(path.cell_m)},
        "square_legs": list(path.square_legs),
        "method": spoken(METHOD),
    }
