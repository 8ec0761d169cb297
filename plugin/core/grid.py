"""Values on an even grid of the plan's frame, shared between its points."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True, kw_only=True)
class EvenGrid:
    """Values (k, n_y, n_x) at places ``low_m`` + ``cell_m`` (column, row), row 0 south."""

    low_m: np.ndarray
    cell_m: float
    values: np.ndarray

    @staticmethod
    def places(low_m: np.ndarray, high_m: np.ndarray, cell_m: float) -> tuple[np.ndarray, np.ndarray]:
        """The x (n_x,) and y (n_y,) of a grid that covers a box, two of each at the least."""
        count = np.maximum(np.ceil((high_m - low_m) / cell_m).astype(int), 1) + 1
        return low_m[0] + cell_m * np.arange(count[0]), low_m[1] + cell_m * np.arange(count[1])

    def at(self, x_m: np.ndarray, y_m: np.ndarray) -> np.ndarray:
        """Bilinear values (k, ...) at places; beyond the grid those of its rim, NaN at a place that is not known."""
        rows, columns = self.values.shape[1:]
        known = np.isfinite(x_m) & np.isfinite(y_m)
        x_m, y_m = np.where(known, x_m, self.low_m[0]), np.where(known, y_m, self.low_m[1])
        # The rim's own point has no neighbour behind it: stay a hair inside.
        column = np.clip((x_m - self.low_m[0]) / self.cell_m, 0.0, columns - 1.000001)
        row = np.clip((y_m - self.low_m[1]) / self.cell_m, 0.0, rows - 1.000001)
        c, r = column.astype(int), row.astype(int)
        dc, dr = column - c, row - r
        west = self.values[:, r, c] * (1.0 - dr) + self.values[:, r + 1, c] * dr
        east = self.values[:, r, c + 1] * (1.0 - dr) + self.values[:, r + 1, c + 1] * dr
        return np.where(known, west * (1.0 - dc) + east * dc, np.nan)
