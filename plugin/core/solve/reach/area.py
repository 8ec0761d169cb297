"""How far the grid goes, and how fine it is."""

from __future__ import annotations

import numpy as np

from ...errors import SwimPlanError
from ...water.stream import UNKNOWN, Stream
from ...words import tr
from .open_water import ReachGrid
from .request import ReachRequest

USUAL_CELLS, MOST_CELLS, FEWEST_ACROSS = 160_000, 640_000, 20
FINEST_CHOSEN_M = 5.0  # what a GPS tells apart; common practice, no source
ROUND_SIZES_M = (5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 75.0, 100.0, 150.0, 200.0, 250.0, 300.0, 400.0, 500.0)
LATTICE, MOMENTS = 16, 13
SPARE_M = 200.0


def reach_box(request: ReachRequest, stream: Stream) -> np.ndarray:
    """The box (4,) of what can be reached from the entry by the time to be back, cut to what the plan's data cover.

    The radius is the way made in that time at the pace and the fastest stream together that a lattice of places and
    moments shows.
    """
    pace = request.swim.swimmer.made_good_m_s
    radius = (pace + _fastest_m_s(request, stream)) * request.horizon_s + SPARE_M
    low = np.maximum(request.entry_m - radius, request.area[:2])
    high = np.minimum(request.entry_m + radius, request.area[2:])
    return np.concatenate([low, high])


def _fastest_m_s(request: ReachRequest, stream: Stream) -> float:
    x, y = (np.linspace(request.area[axis], request.area[axis + 2], LATTICE) for axis in (0, 1))
    moments = request.depart_s + np.linspace(0.0, request.horizon_s, MOMENTS)
    sample = stream.at(*np.meshgrid(x, y, moments))
    rate = np.where(sample.status == UNKNOWN, 0.0, sample.rate_m_s)
    return float(np.max(np.nan_to_num(rate)))


def reach_grid(request: ReachRequest, box: np.ndarray) -> ReachGrid:
    """The grid over a box: cells of the size asked for, or so that there are some 160 000 of them.

    SwimPlanError for a size that would make it useless or too much to hold.
    """
    sides = box[2:] - box[:2]
    if request.cell_m == 0.0:
        wanted = float(np.sqrt(np.prod(sides) / USUAL_CELLS))
        coarsest = float(sides.min()) / FEWEST_ACROSS
        sizes = [size for size in ROUND_SIZES_M if size >= max(wanted, FINEST_CHOSEN_M)]
        cell = min(sizes[0] if sizes else wanted, max(coarsest, FINEST_CHOSEN_M))
        return ReachGrid.over(box, cell)
    least = float(np.sqrt(np.prod(sides) / MOST_CELLS))
    most = float(sides.min()) / FEWEST_ACROSS
    if not least <= request.cell_m <= most:
        raise SwimPlanError(
            asked=tr("Asked for cells of {cell_m:g} m over {wide_km:.1f} km by {high_km:.1f} km").format(
                cell_m=request.cell_m, wide_km=sides[0] / 1000, high_km=sides[1] / 1000
            ),
            allowed=tr("Cells measure from {least:g} to {most:g} m there").format(
                least=np.ceil(least), most=np.floor(most)
            ),
            remedy=tr("Change CELL, or leave it empty to have it chosen"),
        )
    return ReachGrid.over(box, request.cell_m)
