"""Which stations see which places over water."""

from __future__ import annotations

import numpy as np

from ..grid import EvenGrid
from ..planar import PlanarArea, filled_grid

GRID_SIDE = 128
AROUND_M = 500.0
FAR_M = 5000.0  # so that one far station does not make the grid coarse


class Sight:
    """The view from spots (k, 2) over water, on a grid of 128 points a side over the places (n, 2) and the spots near.

    Land thinner than the grid's step, such as a breakwater, blocks the view by its edges. A spot far off is looked for
    in its direction only: the land between it and the grid is left out.
    """

    def __init__(self, land: tuple[PlanarArea, ...], spots: np.ndarray, places_m: np.ndarray) -> None:
        middle = (places_m.min(axis=0) + places_m.max(axis=0)) / 2.0
        away = np.hypot(*(spots - middle).T)
        spots = middle + (spots - middle) * np.minimum(1.0, FAR_M / np.maximum(away, 1.0))[:, None]
        corners = np.vstack([places_m, spots])
        self._low, high = corners.min(axis=0) - AROUND_M, corners.max(axis=0) + AROUND_M
        self._cell = float(np.max(high - self._low)) / (GRID_SIDE - 1)
        x, y = EvenGrid.places(self._low, high, self._cell)
        dry = filled_grid(list(land), x, y)
        for area in land:
            self._mark_edges(dry, area.edges)
        seen = np.stack([self._seen_from(spot, dry, x, y) for spot in spots]).astype(float)
        self._grid = EvenGrid(low_m=self._low, cell_m=self._cell, values=seen)

    def of(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """Share 0-1 (k, ...) to which each spot sees each place."""
        return self._grid.at(x, y)

    def _mark_edges(self, dry: np.ndarray, edges: np.ndarray) -> None:
        """Make the grid points along edges (m, 4) dry, so close that no line of sight slips through."""
        counts = np.ceil(np.hypot(*(edges[:, 2:] - edges[:, :2]).T) / (self._cell / 4.0)).astype(int) + 1
        row = np.repeat(np.arange(len(edges)), counts)
        step = np.arange(len(row)) - np.repeat(np.cumsum(counts) - counts, counts)
        share = step / np.maximum(counts[row] - 1, 1)
        places = (edges[row, :2] + (edges[row, 2:] - edges[row, :2]) * share[:, None] - self._low) / self._cell
        for shift in ((-0.25, -0.25), (-0.25, 0.25), (0.25, -0.25), (0.25, 0.25)):
            column, line = np.rint(places + shift).astype(int).T
            inside = (column >= 0) & (line >= 0) & (column < dry.shape[1]) & (line < dry.shape[0])
            dry[line[inside], column[inside]] = True

    def _seen_from(self, spot: np.ndarray, dry: np.ndarray, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """Grid points whose straight line to the station crosses no dry grid point."""
        columns, rows = np.meshgrid(np.arange(len(x)), np.arange(len(y)))
        own = (spot - self._low) / self._cell
        seen = np.ones(dry.shape, dtype=bool)
        steps = int(max(dry.shape)) * 2
        # The station's own cell and the place's own cell do not count: stations and beaches stand at the coast.
        for share in np.arange(1, steps) / steps:
            c, r = columns + (own[0] - columns) * share, rows + (own[1] - rows) * share
            apart = np.maximum(np.abs(c - columns), np.abs(r - rows)) > 1.0
            apart &= np.maximum(np.abs(c - own[0]), np.abs(r - own[1])) > 1.0
            seen &= ~(apart & dry[np.rint(r).astype(int), np.rint(c).astype(int)])
        return seen
