"""The water a swimmer may pass, laid on a grid: land and closed areas as cells, and what lies between two cells."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np

from ...planar import PlanarArea, boxes_touch, filled_grid
from .stencil import REACH_CELLS, directions, passed

RIM = REACH_CELLS  # cells round the grid that nobody enters, so that no step leaves the arrays
EDGE_SHARE = 0.25  # of a cell between the points at which a coast is laid on the grid


@dataclass(frozen=True, kw_only=True)
class ReachGrid:
    """Square cells of the plan's frame: ``low_m`` is the middle of the south-west cell, ``shape`` rows and columns.

    Arrays of the grid have row 0 south. The solver's own arrays are flat and carry a rim round the grid.
    """

    low_m: np.ndarray
    cell_m: float
    shape: tuple[int, int]

    @classmethod
    def over(cls, box: np.ndarray, cell_m: float) -> ReachGrid:
        """The grid whose cells cover a box (4,) of the frame."""
        box = np.asarray(box, dtype=float)
        counts = np.maximum(np.ceil((box[2:] - box[:2]) / cell_m - 1e-9).astype(int), 1)
        spare = (counts * cell_m - (box[2:] - box[:2])) / 2.0
        return cls(low_m=box[:2] - spare + cell_m / 2.0, cell_m=float(cell_m), shape=(int(counts[1]), int(counts[0])))

    @property
    def count(self) -> int:
        """How many cells."""
        return self.shape[0] * self.shape[1]

    @property
    def x_m(self) -> np.ndarray:
        """Middles of the columns, west to east."""
        return self.low_m[0] + self.cell_m * np.arange(self.shape[1])

    @property
    def y_m(self) -> np.ndarray:
        """Middles of the rows, south to north."""
        return self.low_m[1] + self.cell_m * np.arange(self.shape[0])

    @property
    def box(self) -> np.ndarray:
        """The outer edges (4,) of the cells."""
        half = self.cell_m / 2.0
        high = self.low_m + self.cell_m * np.array([self.shape[1] - 1, self.shape[0] - 1])
        return np.concatenate([self.low_m - half, high + half])

    @property
    def width(self) -> int:
        """Columns with the rim."""
        return self.shape[1] + 2 * RIM

    def rimmed(self, values: np.ndarray, rim: object) -> np.ndarray:
        """Values of the grid as the flat array with the rim, which holds one value."""
        return np.pad(values, RIM, constant_values=rim).ravel()

    def without_rim(self, flat: np.ndarray) -> np.ndarray:
        """The grid's values (rows, columns) of a flat array."""
        return flat.reshape(-1, self.width)[RIM:-RIM, RIM:-RIM]

    def xy_of(self, cells: np.ndarray) -> np.ndarray:
        """Middles (n, 2) of cells by their flat numbers."""
        row, column = np.divmod(cells, self.width)
        return self.low_m + self.cell_m * np.stack([column - RIM, row - RIM], axis=-1)

    def cells_within(self, place_m: np.ndarray, radius_m: float) -> np.ndarray:
        """Flat numbers of the cells whose middles lie within a radius of a place (2,)."""
        at = (np.asarray(place_m, dtype=float) - self.low_m) / self.cell_m
        reach = radius_m / self.cell_m
        low = np.maximum(np.ceil(at - reach).astype(int), 0)
        high = np.minimum(np.floor(at + reach).astype(int), [self.shape[1] - 1, self.shape[0] - 1])
        columns, rows = np.meshgrid(np.arange(low[0], high[0] + 1), np.arange(low[1], high[1] + 1))
        near = (columns - at[0]) ** 2 + (rows - at[1]) ** 2 <= reach**2
        return (rows[near] + RIM) * self.width + columns[near] + RIM


def covered(grid: ReachGrid, areas: Sequence[PlanarArea]) -> np.ndarray:
    """Mask (rows, columns) of the cells whose middle lies in any of the areas or which their edges pass.

    The edges' cells close up to a wall that no step between neighbouring cells slips through, however thin the area.
    """
    boxes = np.array([area.bounds for area in areas]).reshape(-1, 4)
    near = [areas[row] for row in np.flatnonzero(boxes_touch(boxes, grid.box))]
    mask = filled_grid(near, grid.x_m, grid.y_m)
    for area in near:
        _mark_edges(mask, grid, area.edges)
    return mask


def _mark_edges(mask: np.ndarray, grid: ReachGrid, edges: np.ndarray) -> None:
    boxes = np.hstack([np.minimum(edges[:, :2], edges[:, 2:]), np.maximum(edges[:, :2], edges[:, 2:])])
    start, end = np.split((edges[boxes_touch(boxes, grid.box)].reshape(-1, 2, 2) - grid.low_m) / grid.cell_m, 2, axis=1)
    start, end = start[:, 0], end[:, 0]
    counts = np.ceil(np.hypot(*(end - start).T) / EDGE_SHARE).astype(int) + 1
    # Blocks keep a coast of very many or very long edges within some tens of megabytes.
    block = np.cumsum(counts) // 1_000_000
    for number in np.unique(block):
        rows = np.flatnonzero(block == number)
        edge = np.repeat(rows, counts[rows])
        step = np.arange(len(edge)) - np.repeat(np.cumsum(counts[rows]) - counts[rows], counts[rows])
        points = start[edge] + (end[edge] - start[edge]) * (step / np.maximum(counts[edge] - 1, 1))[:, None]
        # A corner cut off by less than the points are apart is found from beside them.
        for shift in ((-1, -1), (-1, 1), (1, -1), (1, 1)):
            column, row = np.rint(points + np.array(shift) * (EDGE_SHARE * 0.6)).astype(int).T
            inside = (column >= 0) & (row >= 0) & (column < mask.shape[1]) & (row < mask.shape[0])
            mask[row[inside], column[inside]] = True


@dataclass(frozen=True, kw_only=True)
class TimedArea:
    """Cells (rows, columns) that are closed at some times: ``closed`` (n_steps,) tells the steps of time."""

    mask: np.ndarray
    closed: np.ndarray


@dataclass(frozen=True, kw_only=True)
class Passage:
    """The steps that are open for a while: ``free`` (cells with the rim, directions), ``near`` the cells where one is
    not."""

    free: np.ndarray
    near: np.ndarray


@dataclass(frozen=True, kw_only=True, eq=False)
class OpenWater:
    """What stands in the way on a grid.

    ``dry`` (rows, columns) is never entered. ``timed`` areas are closed in some steps of ``step_s`` seconds after
    ``first_s``. ``weight`` (rows, columns) is how many times over a second counts in a cell, None for once everywhere.
    """

    grid: ReachGrid
    dry: np.ndarray
    timed: tuple[TimedArea, ...] = ()
    first_s: float = 0.0
    step_s: float = 300.0
    weight: np.ndarray | None = None
    _kept: dict[bytes, Passage] = field(default_factory=dict, init=False, repr=False)

    def passage(self, from_s: float, to_s: float) -> Passage:
        """The cells open all the time between two times, a step before and after included."""
        pattern = self._closed_between(from_s, to_s)
        key = pattern.tobytes()
        if key not in self._kept:
            self._kept.clear()  # two of them at once are too much memory on a large grid
            dry = self.dry.copy()
            for row in np.flatnonzero(pattern):
                dry |= self.timed[row].mask
            self._kept[key] = _passage(self.grid, dry)
        return self._kept[key]

    def closed_at(self, t_s: float) -> np.ndarray:
        """Flat mask with the rim: cells that are dry or closed about a time."""
        dry = self.dry.copy()
        for row in np.flatnonzero(self._closed_between(t_s, t_s)):
            dry |= self.timed[row].mask
        return self.grid.rimmed(dry, True)

    def closed_at_any_time(self) -> np.ndarray:
        """Flat mask with the rim: cells that are dry or closed at some time."""
        dry = self.dry.copy()
        for area in self.timed:
            dry |= area.mask
        return self.grid.rimmed(dry, True)

    def next_closing_s(self, since_s: np.ndarray) -> np.ndarray:
        """When each cell (rows, columns) is next closed at or after its time; infinite where it is not."""
        closing = np.full(self.grid.shape, np.inf)
        for area in self.timed:
            steps = np.arange(len(area.closed))
            first = np.minimum.accumulate(np.where(area.closed, steps, len(steps) + 1)[::-1])[::-1]
            rows, columns = np.nonzero(area.mask & np.isfinite(since_s))
            step = np.clip(self._step(since_s[rows, columns]), 0, len(steps) - 1)
            at = np.where(first[step] < len(steps), self.first_s + first[step] * self.step_s, np.inf)
            closing[rows, columns] = np.minimum(closing[rows, columns], at)
        return closing

    def _step(self, t_s: np.ndarray | float) -> np.ndarray:
        return np.floor((np.asarray(t_s) - self.first_s) / self.step_s).astype(int)

    def _closed_between(self, from_s: float, to_s: float) -> np.ndarray:
        """Which timed areas are closed at any time of a span, shape (n_areas,)."""
        if not self.timed:
            return np.zeros(0, dtype=bool)
        low, high = max(int(self._step(from_s)) - 1, 0), int(self._step(to_s)) + 2
        return np.array([area.closed[low:high].any() for area in self.timed])


def _passage(grid: ReachGrid, dry: np.ndarray) -> Passage:
    """For every cell and direction whether no dry cell lies on the step, its end included."""
    wet = ~grid.rimmed(dry, True)
    steps = directions()
    free = np.empty((len(wet), len(steps)), dtype=bool)
    for number, (column, row) in enumerate(steps.tolist()):
        on_step = [np.roll(wet, -(y * grid.width + x)) for x, y in [*passed(column, row), (column, row)]]
        free[:, number] = np.logical_and.reduce(on_step)
    return Passage(free=free, near=~free.all(axis=1))


def mean_weight(grid: ReachGrid, weight: np.ndarray) -> np.ndarray:
    """How many times over a second counts on each step (cells with the rim, directions), the mean along the step."""
    flat = grid.rimmed(weight, 1.0).astype(np.float32)
    steps = directions()
    mean = np.empty((len(flat), len(steps)), dtype=np.float32)
    for number, (column, row) in enumerate(steps.tolist()):
        shares = np.linspace(0.0, 1.0, 4 * max(abs(column), abs(row)) + 1)
        total = sum(np.roll(flat, -int(np.rint(row * s) * grid.width + np.rint(column * s))) for s in shares)
        mean[:, number] = total / len(shares)
    return mean


def spare_cells(grid: ReachGrid, flat_dry: np.ndarray, most: int) -> np.ndarray:
    """How many cells off each cell the square round it stays clear of dry ones, up to ``most`` (flat, with the rim)."""
    dry = flat_dry.reshape(-1, grid.width)
    spare = np.zeros(dry.shape, dtype=np.int16)
    for _ in range(most):
        spare += ~dry
        wide = dry.copy()
        wide[1:] |= dry[:-1]
        wide[:-1] |= dry[1:]
        dry = wide.copy()
        dry[:, 1:] |= wide[:, :-1]
        dry[:, :-1] |= wide[:, 1:]
    return np.maximum(spare - 1, 0).ravel()
