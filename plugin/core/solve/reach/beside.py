"""Between a place and the cells round it: how a front sets out from a beach, and when it comes to a mark."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from ...planar import PlanarArea, stretches_of_many
from ..flags.closed import BEACH_M
from .front import Front
from .front_stream import FrontStream
from .open_water import OpenWater, ReachGrid
from .stencil import piece_s

START_CELLS = 6.0  # so far a straight line is as good as a front; its few directions are worst near its start
READ_CELLS = 3.0


@dataclass(frozen=True, kw_only=True)
class Shores:
    """Land and closed areas of the plan's frame, against which straight lines of a few cells are checked."""

    land: Sequence[PlanarArea] = ()
    closed: Sequence[PlanarArea] = ()

    def clear(self, place_m: np.ndarray, ends_m: np.ndarray) -> np.ndarray:
        """Whether the lines from a place (2,) to ends (n, 2) meet none, shape (n,); up to 50 m of land at the place
        itself are a beach."""
        lines = np.stack([np.broadcast_to(place_m, ends_m.shape), ends_m], axis=1)
        length = np.hypot(*(ends_m - place_m).T)
        clear = np.ones(len(ends_m), dtype=bool)
        for area in self.closed:
            clear[stretches_of_many(area, lines)[0]] = False
        for area in self.land:
            row, start, end = stretches_of_many(area, lines)
            beach = (start == 0.0) & ((end - start) * length[row] <= BEACH_M)
            clear[row[~beach]] = False
        return clear


def cells_beside(
    water: OpenWater, shores: Shores, place_m: np.ndarray, reach_cells: float, from_s: float
) -> np.ndarray:
    """Flat numbers of the open cells within some cells and a beach of a place, the way to them clear.

    ``from_s`` is when, in seconds of the plan, the cells are to be open.
    """
    grid: ReachGrid = water.grid
    radius = max(reach_cells * grid.cell_m, BEACH_M + 1.5 * grid.cell_m)
    cells = grid.cells_within(place_m, radius)
    cells = cells[~water.closed_at(from_s)[cells]]
    return cells[shores.clear(place_m, grid.xy_of(cells))] if len(cells) else cells


def set_out(
    water: OpenWater, stream: FrontStream, shores: Shores, place_m: np.ndarray, pace_m_s: float
) -> tuple[np.ndarray, np.ndarray]:
    """Cells (n,) round a place (2,) and the seconds (n,) after which a front from there is at them.

    None where the stream at the place is not known, or no open water lies beside it.
    """
    place = np.asarray(place_m, dtype=float)
    cells = cells_beside(water, shores, place, START_CELLS, float(stream.plan_s(0.0)))
    way = water.grid.xy_of(cells) - place
    here, _ = stream.at(place[None], 0.0)
    there, _ = stream.at(place + way, np.hypot(*way.T) / pace_m_s)
    seconds = piece_s(way, (here + there) / 2.0, pace_m_s)
    good = np.isfinite(seconds)
    return cells[good], seconds[good]


def comes_to(front: Front, shores: Shores, place_m: np.ndarray) -> tuple[float, int]:
    """Seconds after which a front is at a place (2,), by the straight lines from the cells round it, and the cell it
    comes from; NaN and -1 if never."""
    place = np.asarray(place_m, dtype=float)
    grid = front.water.grid
    cells = grid.cells_within(place, max(READ_CELLS * grid.cell_m, BEACH_M + 1.5 * grid.cell_m))
    cells = cells[np.isfinite(front.after_s[cells])]
    cells = cells[shores.clear(place, grid.xy_of(cells))] if len(cells) else cells
    if not len(cells):
        return float("nan"), -1
    way, after = place - grid.xy_of(cells), front.after_s[cells]
    there, _ = front.stream.at(grid.xy_of(cells), after)
    here, _ = front.stream.at(np.broadcast_to(place, way.shape), after + np.hypot(*way.T) / front.pace_m_s)
    seconds = after + piece_s(way, (here + there) / 2.0, front.pace_m_s)
    best = int(np.argmin(seconds))
    return (float(seconds[best]), int(cells[best])) if np.isfinite(seconds[best]) else (float("nan"), -1)
