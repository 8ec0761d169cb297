"""Corners of obstacles that a way over water may turn at, and which of them see each other."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True, kw_only=True)
class WaterCorners:
    """Corners ``xy_m`` (n, 2) with their neighbours ``before_m`` and ``after_m`` (n, 2) along the water's edge.

    ``water`` (n,) numbers the piece of connected water each lies on; ``edges`` (k, 4) are what no piece of a way
    between corners may cross.
    """

    xy_m: np.ndarray
    before_m: np.ndarray
    after_m: np.ndarray
    water: np.ndarray
    edges: np.ndarray

    def tangent(self, rows: np.ndarray, place_m: np.ndarray) -> np.ndarray:
        """Whether a way from or to a place (2,) may turn at each corner (m,): its edge lies to one side of the line."""
        corner = self.xy_m[rows]
        line = corner - place_m
        before, after = _cross(line, self.before_m[rows] - corner), _cross(line, self.after_m[rows] - corner)
        return before * after >= 0.0

    def sees(self, row: int, others: np.ndarray) -> np.ndarray:
        """Whether a shortest way may run straight from one corner to each of the others (m,)."""
        place = self.xy_m[row]
        line = self.xy_m[others] - place
        before, after = _cross(line, self.before_m[row] - place), _cross(line, self.after_m[row] - place)
        seen = (before * after >= 0.0) & self.tangent(others, place)
        rows = np.flatnonzero(seen)
        seen[rows] = ~hidden(place, self.xy_m[others[rows]], self.edges)
        return seen


def hidden(place_m: np.ndarray, others_m: np.ndarray, edges: np.ndarray, beyond_m: float = 0.0) -> np.ndarray:
    """Whether the straight lines from a place (2,) to others (m, 2) cross any edge (k, 4) farther off than so much.

    A touch of an end counts: a line may run out through a corner. An edge is tried only on the lines that run into the
    angle it is seen under.
    """
    lines = others_m - place_m
    found = np.zeros(len(lines), dtype=bool)
    first, second = edges[:, :2] - place_m, edges[:, 2:] - place_m
    line, edge = _within_angles(np.arctan2(*lines.T), np.arctan2(*first.T), np.arctan2(*second.T))
    to, start, end = lines[line], first[edge], second[edge]
    side = end - start
    across = _cross(to, side)
    with np.errstate(divide="ignore", invalid="ignore"):
        share = _cross(start, side) / across
    crossed = (_cross(to, start) * _cross(to, end) <= 0.0) & (share > 0.0) & (share < 1.0)
    found[line[crossed & (share * np.hypot(*to.T) > beyond_m)]] = True
    return found


def _within_angles(angle: np.ndarray, first: np.ndarray, second: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Pairs, numbers of angles and numbers of sectors, where an angle lies in the lesser sector between two."""
    whole = 2.0 * np.pi
    width = (second - first + np.pi) % whole - np.pi
    # Wider by a hair: what lies on the border is looked at.
    low = (np.where(width >= 0.0, first, second) - 1e-9) % whole
    order = np.argsort(angle % whole)
    turned = (angle % whole)[order]
    twice = np.concatenate([turned, turned + whole])
    begin = np.searchsorted(twice, low)
    count = np.searchsorted(twice, low + np.abs(width) + 2e-9, side="right") - begin
    sector = np.repeat(np.arange(len(first)), count)
    place = np.arange(len(sector)) - np.repeat(np.cumsum(count) - count, count) + begin[sector]
    return np.concatenate([order, order])[place], sector


def turns_right(ring: np.ndarray) -> np.ndarray:
    """The vertices of a closed ring at which it turns right, with the ones before and after, (m, 6)."""
    here = ring[:-1]
    before, after = np.roll(here, 1, axis=0), np.roll(here, -1, axis=0)
    right = _cross(here - before, after - here) < 0.0
    return np.hstack([here, before, after])[right]


def _cross(first: np.ndarray, second: np.ndarray) -> np.ndarray:
    return first[..., 0] * second[..., 1] - first[..., 1] * second[..., 0]
