"""Which triangle of a mesh a place lies in, and the weights of its corners."""

from __future__ import annotations

import numpy as np

from .time_steps import BLOCK

EDGE = 1e-9  # share of a triangle by which a place may lie outside it: no gap opens between neighbours
CELLS_PER_TRIANGLE = 2.0
ENTRIES_PER_TRIANGLE = 30  # the buckets are made wider until they hold no more than this


class TriangleFinder:
    """Triangles in buckets of an even grid. ``x_m``, ``y_m`` (n_nodes,); ``triangles`` (n, 3) numbers of nodes.

    Triangles without area are never found.
    """

    def __init__(self, x_m: np.ndarray, y_m: np.ndarray, triangles: np.ndarray) -> None:
        x, y = x_m[triangles], y_m[triangles]
        self._affine, sound = _affine(x, y)
        low = np.column_stack([x.min(axis=1), y.min(axis=1)])
        high = np.column_stack([x.max(axis=1), y.max(axis=1)])
        # Places a hair outside a triangle count as inside it, so its box is a hair wider too.
        hair = EDGE * (high - low)
        self._fill(low - hair, high + hair, np.flatnonzero(sound))

    def locate(self, x_m: np.ndarray, y_m: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """The triangle of each place, -1 outside all of them, and the weights of its second and third corner.

        The arguments broadcast; the three arrays have their shape.
        """
        x, y = np.broadcast_arrays(np.asarray(x_m, dtype=float), np.asarray(y_m, dtype=float))
        triangle = np.full(x.size, -1, dtype=np.int32)
        second, third = np.zeros(x.size), np.zeros(x.size)
        for start in range(0, x.size, BLOCK):
            part = slice(start, min(start + BLOCK, x.size))
            triangle[part], second[part], third[part] = self._locate(x.flat[part], y.flat[part])
        return triangle.reshape(x.shape), second.reshape(x.shape), third.reshape(x.shape)

    def _fill(self, low: np.ndarray, high: np.ndarray, sound: np.ndarray) -> None:
        """Put the sound triangles, by their boxes (n, 2), into every bucket that their box touches."""
        low, high = low[sound], high[sound]
        self._low = low.min(axis=0) if len(sound) else np.zeros(2)
        size = np.maximum(high.max(axis=0) - self._low, 1e-6) if len(sound) else np.ones(2)
        self._cell = float(np.sqrt(size[0] * size[1] / max(CELLS_PER_TRIANGLE * len(sound), 1.0)))
        self._cell = max(self._cell, float(size.max()) / 20_000.0)
        while True:
            first = ((low - self._low) / self._cell).astype(np.int64)
            wide, tall = (((high - self._low) / self._cell).astype(np.int64) - first + 1).T
            if np.sum(wide * tall) <= ENTRIES_PER_TRIANGLE * max(len(sound), 1):
                break
            self._cell *= 1.5
        self._columns, self._rows = ((size / self._cell).astype(np.int64) + 2).tolist()
        count = wide * tall
        owner = np.repeat(np.arange(len(sound)), count)
        inner = np.arange(len(owner)) - np.repeat(np.cumsum(count) - count, count)
        column = first[owner, 0] + inner % wide[owner]
        row = first[owner, 1] + inner // wide[owner]
        bucket = row * self._columns + column
        self._members = sound[owner[np.argsort(bucket, kind="stable")]].astype(np.int32)
        held = np.bincount(bucket, minlength=self._columns * self._rows)
        self._first = np.concatenate([[0], np.cumsum(held)])

    def _locate(self, x: np.ndarray, y: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        triangle = np.full(len(x), -1, dtype=np.int32)
        second, third = np.zeros(len(x)), np.zeros(len(x))
        column, row = (x - self._low[0]) / self._cell, (y - self._low[1]) / self._cell
        waiting = np.flatnonzero((column >= 0.0) & (column < self._columns) & (row >= 0.0) & (row < self._rows))
        bucket = row[waiting].astype(np.int64) * self._columns + column[waiting].astype(np.int64)
        member, end = self._first[bucket], self._first[bucket + 1]
        while len(waiting):
            left = member < end
            waiting, member, end = waiting[left], member[left], end[left]
            tried = self._members[member]
            one, two, hit = self._weights(tried, x[waiting], y[waiting])
            found = waiting[hit]
            triangle[found], second[found], third[found] = tried[hit], one[hit], two[hit]
            waiting, member, end = waiting[~hit], member[~hit] + 1, end[~hit]
        return triangle, second, third

    def _weights(self, tried: np.ndarray, x: np.ndarray, y: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Weights of the second and third corner, and whether the place lies in the triangle tried."""
        affine = self._affine[tried]
        dx, dy = x - affine[:, 0], y - affine[:, 1]
        second = dx * affine[:, 2] + dy * affine[:, 3]
        third = dx * affine[:, 4] + dy * affine[:, 5]
        return second, third, (second >= -EDGE) & (third >= -EDGE) & (second + third <= 1.0 + EDGE)


def _affine(x: np.ndarray, y: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """First corner and the four factors that make weights of an offset from it (n, 6); and which have an area."""
    x1, y1, x2, y2 = x[:, 1] - x[:, 0], y[:, 1] - y[:, 0], x[:, 2] - x[:, 0], y[:, 2] - y[:, 0]
    double_area = x1 * y2 - x2 * y1
    longest = np.maximum(x1**2 + y1**2, x2**2 + y2**2)
    sound = np.isfinite(double_area) & (np.abs(double_area) > 1e-12 * longest)
    safe = np.where(sound, double_area, 1.0)
    return np.column_stack([x[:, 0], y[:, 0], y2 / safe, -x2 / safe, -y1 / safe, x1 / safe]), sound
