"""Straight pieces between the cells of a grid: their directions, the cells they pass, and the time they take.

In a stream w that does not change on the way, a swimmer who makes V through the water and steers so that the track is
the straight line along the unit vector u makes good g = w.u + sqrt(V^2 - (w x u)^2) over the ground. The time d / g is
the T = (-d.w + sqrt((d.w)^2 + (V^2 - w^2) d^2)) / (V^2 - w^2) of E. Zermelo, Zeitschrift fuer angewandte Mathematik und
Mechanik 11 (1931) 114, for a uniform stream (cited from memory), and holds where w >= V too, inside the cone of
directions that can be made good at all.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import gcd

import numpy as np

LEAST_SHARE = 1e-3  # of the pace: what is slower over the ground is standing still
REACH_CELLS = 4  # 48 directions; the widest gap between two is 14 degrees, in the quarter round a side of the cell


def directions(reach_cells: int = REACH_CELLS) -> np.ndarray:
    """Steps (k, 2) in columns and rows to the cells in every direction of its own within so many cells."""
    span = range(-reach_cells, reach_cells + 1)
    return np.array([(column, row) for row in span for column in span if gcd(abs(column), abs(row)) == 1])


def ring(cells: int) -> np.ndarray:
    """Steps (8 * cells, 2) to the rim of the square so many cells round."""
    span = np.arange(-cells, cells)
    side = np.column_stack([span, np.full(2 * cells, -cells)])
    return np.concatenate([side, -side, np.column_stack([-side[:, 1], span]), np.column_stack([side[:, 1], -span])])


def passed(column: int, row: int) -> list[tuple[int, int]]:
    """Cells that the piece from the middle of a cell to that of the cell (column, row) away passes between the two.

    A cell that it only touches at a corner is not passed.
    """
    # Where the piece crosses the sides of cells, as shares of it: between two neighbouring ones it is in one cell.
    shares = {0.0, 1.0}
    for size in (abs(column), abs(row)):
        shares |= {(number + 0.5) / size for number in range(size)}
    breaks = np.array(sorted(shares))
    breaks = breaks[np.concatenate([[True], np.diff(breaks) > 1e-9])]
    middles = (breaks[1:] + breaks[:-1]) / 2.0
    cells = {(int(np.rint(column * share)), int(np.rint(row * share))) for share in middles}
    return sorted(cells - {(0, 0), (column, row)})


def piece_s(way_m: np.ndarray, stream_m_s: np.ndarray, pace_m_s: float) -> np.ndarray:
    """Seconds (...) for straight pieces (..., 2) in streams (..., 2); infinite where a piece cannot be swum or its
    water is not known."""
    ahead = np.einsum("...i,...i->...", way_m, stream_m_s)
    square = np.einsum("...i,...i->...", way_m, way_m)
    with np.errstate(invalid="ignore", divide="ignore"):
        # The way over the ground in a second, times the way: nothing but the closed form, turned upside down.
        made = ahead + np.sqrt(square * (pace_m_s**2 - np.einsum("...i,...i->...", stream_m_s, stream_m_s)) + ahead**2)
        good = made > LEAST_SHARE * pace_m_s * np.sqrt(square)
        return np.where(good, square / made, np.where(square == 0.0, 0.0, np.inf))


@dataclass(frozen=True, kw_only=True)
class Steps:
    """Steps (k,) on a grid: how far their ends are in flat numbers, their lengths, and their directions
    (2, k)."""

    jump: np.ndarray
    length_m: np.ndarray
    unit: np.ndarray

    @classmethod
    def of(cls, steps: np.ndarray, width: int, cell_m: float) -> Steps:
        """Steps (k, 2) in columns and rows over arrays so many columns wide."""
        length = np.hypot(*steps.T)
        jump = steps[:, 1] * width + steps[:, 0]
        return cls(jump=jump, length_m=length * cell_m, unit=(steps / length[:, None]).T)

    def seconds(self, vector: np.ndarray, pace_m_s: float) -> np.ndarray:
        """Seconds (m, k) for each step in the stream (m, 2) of each cell."""
        square = np.einsum("ij,ij->i", vector, vector)[:, None]
        ahead = vector @ self.unit
        speed = ahead**2
        speed += pace_m_s**2 - square
        with np.errstate(invalid="ignore"):
            np.sqrt(speed, out=speed)
        speed += ahead
        if square.max() >= (1.0 - LEAST_SHARE) * pace_m_s**2:
            speed[~(speed > LEAST_SHARE * pace_m_s)] = 1e-12  # cannot be made good: so late that nobody takes it
        return np.divide(self.length_m, speed, out=speed)
