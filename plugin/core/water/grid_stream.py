"""Stream from a model on a raster: u and v in cells, step by step in time, in whatever projection the raster has."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..words import tr
from .stream import StreamSample
from .time_steps import around, as_vectors, between, checked_steps, sampled

NO_WEIGHT = 1e-9
UNKNOWN_VECTOR = complex(np.nan, np.nan)


@dataclass(frozen=True, kw_only=True)
class PlaneMap:
    """Where the places of a box lie in a raster: column and row as cubics of x and y, exact where the map is affine.

    ``factors`` (10, 2); ``centre_m`` and ``half_m`` (2,) are those of the box. Columns and rows count cell centres.
    """

    centre_m: np.ndarray
    half_m: np.ndarray
    factors: np.ndarray

    @classmethod
    def through(cls, xy_m: np.ndarray, columns_rows: np.ndarray) -> PlaneMap:
        """The map that best fits places (n, 2) and their columns and rows (n, 2), n 10 or more spread over the box."""
        low, high = xy_m.min(axis=0), xy_m.max(axis=0)
        centre, half = (low + high) / 2.0, np.maximum((high - low) / 2.0, 1e-6)
        terms = _cubic_terms(*((xy_m - centre) / half).T)
        factors = np.linalg.lstsq(np.stack(terms, axis=1), columns_rows, rcond=None)[0]
        return cls(centre_m=centre, half_m=half, factors=factors)

    def at(self, x_m: np.ndarray, y_m: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Column and row of places, fractional; NaN outside the box, where the map does not hold."""
        x, y = np.broadcast_arrays((x_m - self.centre_m[0]) / self.half_m[0], (y_m - self.centre_m[1]) / self.half_m[1])
        x = np.where((np.abs(x) <= 1.0 + NO_WEIGHT) & (np.abs(y) <= 1.0 + NO_WEIGHT), x, np.nan)
        terms = _cubic_terms(x, y)
        column, row = (sum(factor * term for factor, term in zip(line, terms)) for line in self.factors.T)
        return column, row


@dataclass(frozen=True, kw_only=True)
class RasterStream:
    """Stream in the cells of a raster. ``times_s`` (n_times,) rise; components (n_times, n_rows, n_columns).

    ``east_m_s`` and ``north_m_s`` are TOWARDS true, NaN masked, rows as in the file; ``place`` says where a place of
    the plan's frame lies among the cells' centres. Among four known cells the components are bilinear, between two
    steps linear. Beside land, where a cell that would have weight is masked, nothing is drawn across: a place in a
    known cell takes that cell's own vector, flagged as extrapolated, and a place in a masked cell is unknown. So is
    everything outside the raster, outside the map's box, and before the first or after the last step.
    """

    place: PlaneMap
    times_s: np.ndarray
    east_m_s: np.ndarray
    north_m_s: np.ndarray
    name: str = "raster"
    _vectors: np.ndarray = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        times = checked_steps(self.times_s, self.name)
        east, north = np.shape(self.east_m_s), np.shape(self.north_m_s)
        if east != north or len(east) != 3 or east[0] != len(times) or 0 in east:
            raise SwimPlanError(
                asked=tr("The model '{name}' has {times} times and components of shape {east} and {north}").format(
                    name=self.name, times=len(times), east=east, north=north
                ),
                allowed=tr("Both components have the shape (times, rows, columns)"),
                remedy=tr("Check how the raster was read"),
            )
        # A masked rim all round: beyond the outermost centres a place has only its own cell.
        rim = ((0, 0), (1, 1), (1, 1))
        vectors = np.pad(as_vectors(self.east_m_s, self.north_m_s), rim, constant_values=UNKNOWN_VECTOR)
        vectors.setflags(write=False)
        inner = vectors[:, 1:-1, 1:-1]
        made = {"times_s": times, "east_m_s": inner.real, "north_m_s": inner.imag, "_vectors": vectors}
        for key, value in made.items():
            object.__setattr__(self, key, value)

    def at(self, x_m: ArrayLike, y_m: ArrayLike, t_s: ArrayLike) -> StreamSample:
        """Stream at places (metres) and times (seconds from the plan's start); arguments broadcast."""
        x, y, t = (np.asarray(value, dtype=float) for value in (x_m, y_m, t_s))
        return sampled(self._block, np.broadcast_shapes(x.shape, y.shape, t.shape), x, y, t)

    def _block(self, x: np.ndarray, y: np.ndarray, t: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Vectors (m,), NaN where unknown, and where they are a cell's own beside masked ones."""
        vectors, doubt = np.full(len(t), UNKNOWN_VECTOR), np.zeros(len(t), dtype=bool)
        before, share, within = around(self.times_s, t)
        column, row = self.place.at(x, y)
        rows, columns = self._vectors.shape[1:]
        # Half a cell beyond the outermost centres the raster ends. In the array with its rim, centres count from 1.
        column, row = column + 1.0, row + 1.0
        inside = (column >= 0.5) & (column <= columns - 1.5) & (row >= 0.5) & (row <= rows - 1.5)
        here = np.flatnonzero(within & inside)
        if len(here):
            part = _Cells(self._vectors, before[here], share[here], row[here], column[here])
            vectors[here], doubt[here] = part.shared()
        return vectors, doubt


class _Cells:
    """The four cells round each place, at the moments asked."""

    def __init__(
        self, vectors: np.ndarray, before: np.ndarray, share: np.ndarray, row: np.ndarray, column: np.ndarray
    ) -> None:
        self._values, (_, self._rows, self._columns) = vectors.reshape(-1), vectors.shape
        self._before, self._share = before, share
        self._row, self._column = row, column

    def shared(self) -> tuple[np.ndarray, np.ndarray]:
        """Bilinear where every cell with weight is known, else the own cell's vector; and where it is the latter."""
        r, c = self._row.astype(np.int64), self._column.astype(np.int64)
        down, right = self._row - r, self._column - c
        total = np.zeros(len(r), dtype=complex)
        for dr, dc in ((0, 0), (0, 1), (1, 0), (1, 1)):
            weight = (down if dr else 1.0 - down) * (right if dc else 1.0 - right)
            total += np.where(weight > NO_WEIGHT, weight * self._at(r + dr, c + dc), 0.0)
        lost = np.isnan(total)
        own = self._at(np.rint(self._row).astype(np.int64), np.rint(self._column).astype(np.int64))
        return np.where(lost, own, total), lost

    def _at(self, row: np.ndarray, column: np.ndarray) -> np.ndarray:
        size = self._rows * self._columns
        # A place on the last centre itself has no weight beyond the rim.
        first = self._before * size + np.minimum(row, self._rows - 1) * self._columns
        first = first + np.minimum(column, self._columns - 1)
        return between(self._values[first], self._values[first + size], self._share)


def _cubic_terms(x: np.ndarray, y: np.ndarray) -> list[np.ndarray]:
    return [np.ones_like(x), x, y, x * x, x * y, y * y, x * x * x, x * x * y, x * y * y, y * y * y]
