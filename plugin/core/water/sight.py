"""Which stations see which places over water."""

from __future__ import annotations

import numpy as np

from ..grid import EvenGrid
from ..planar import PlanarArea, filled_grid

GRID_SIDE = 128
AROUND_M = 500.0


class Sight:
    """The view from spots (k, 2) over water, on a grid of 128 points a side over the spots and places (n, 2)."""

    def __init__(self, land: tuple[PlanarArea, ...], spots: np.ndarray, places_m: np.ndarray) -> None:
        corners = np.vstack([places_m, spots])
        self._low, high = corners.min(axis=0) - AROUND_M, corners.max(axis=0) + AROUND_M
        self._cell = float(np.max(high - self._low)) / (GRID_SIDE - 1)
        x, y = EvenGrid.places(self._low, high, self._cell)
        dry = filled_grid(list(land), x, y)
        seen = np.stack([self._seen_from(spot, dry, x, y) for spot in spots]).astype(float)
        self._grid = EvenGrid(low_m=self._low, cell_m=self._cell, values=seen)

    def of(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """Share 0-1 (k, ...) to which each spot sees each place."""
        return self._grid.at(x, y)

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
