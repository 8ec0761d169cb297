"""Grids and fronts for the tests of reach: open water of a formula, with walls as masks or as areas of the chart."""

from __future__ import annotations

import numpy as np
from core.independent_swim import WaterStream
from tideleg.core.solve.reach.beside import Shores, comes_to, set_out
from tideleg.core.solve.reach.front import Front, run_front
from tideleg.core.solve.reach.front_stream import FrontStream
from tideleg.core.solve.reach.open_water import OpenWater, ReachGrid, covered

NO_SHORES = Shores()


def open_water(box, cell_m: float, land=(), **about) -> OpenWater:
    """A grid over a box (4,) with land as areas of the frame."""
    grid = ReachGrid.over(np.array(box, dtype=float), cell_m)
    return OpenWater(grid=grid, dry=covered(grid, list(land)), **about)


def front_from(
    water: OpenWater, flow, place: complex, pace: float, horizon_s: float, *, start_s=0.0, backward=False, land=()
) -> Front:
    """A front in a stream ``flow(place, t_s)`` from a place; backward in time it is one of all ways to it."""
    stream = FrontStream(stream=WaterStream(flow), origin_s=start_s, backward=backward)
    spot = np.array([place.real, place.imag])
    cells, seconds = set_out(water, stream, Shores(land=list(land)), spot, pace)
    return run_front(water, stream, pace, cells, seconds, horizon_s)


def seconds_at(front: Front, place: complex, land=()) -> float:
    return comes_to(front, Shores(land=list(land)), np.array([place.real, place.imag]))[0]
