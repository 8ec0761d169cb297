"""Plane geometry of the plan's frame in plain numpy: what lies inside what, and where a track crosses a boundary."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import ArrayLike


@dataclass(frozen=True, kw_only=True)
class PlanarArea:
    """An area of the plan's frame bounded by rings (k, 2) in metres, holes among them (even-odd rule)."""

    rings: tuple[np.ndarray, ...]
    edges: np.ndarray = field(init=False, repr=False)
    bounds: np.ndarray = field(init=False, repr=False)

    def __post_init__(self) -> None:
        rings = tuple(_closed(np.asarray(ring, dtype=float).reshape(-1, 2)) for ring in self.rings)
        edges = np.concatenate([np.hstack([ring[:-1], ring[1:]]) for ring in rings])
        corners = np.concatenate(rings)
        object.__setattr__(self, "rings", rings)
        object.__setattr__(self, "edges", edges)
        object.__setattr__(self, "bounds", np.concatenate([corners.min(axis=0), corners.max(axis=0)]))

    def contains(self, xy_m: np.ndarray) -> np.ndarray:
        """Whether the places (n, 2) lie inside, shape (n,)."""
        xy_m = np.asarray(xy_m, dtype=float).reshape(-1, 2)
        inside = np.zeros(len(xy_m), dtype=bool)
        low, high = self.bounds[:2], self.bounds[2:]
        near = np.flatnonzero(np.all((xy_m >= low) & (xy_m <= high), axis=1))
        # Blocks keep the table of places by edges within some tens of megabytes.
        size = max(1, 2_000_000 // len(self.edges))
        for block in range(0, len(near), size):
            rows = near[block : block + size]
            inside[rows] = _odd_crossings(xy_m[rows], self.edges)
        return inside

    def distance_m(self, xy_m: np.ndarray) -> np.ndarray:
        """Distance (n,) from places (n, 2) to the boundary."""
        size = max(1, 500_000 // len(self.edges))
        blocks = [xy_m[start : start + size] for start in range(0, len(xy_m), size)]
        return np.concatenate([distance_to_segments(block, self.edges)[0].min(axis=1) for block in blocks])


def stretches_inside(areas: list[PlanarArea], track_xy_m: np.ndarray) -> list[tuple[int, float, float]]:
    """Stretches of a track (n, 2) inside areas: (number of the area, start, end), in fractional vertex numbers."""
    track = np.asarray(track_xy_m, dtype=float).reshape(-1, 2)
    if len(track) < 2 or not areas:
        return []
    edges = np.concatenate([area.edges for area in areas])
    owner = np.repeat(np.arange(len(areas)), [len(area.edges) for area in areas])
    position, edge = _crossings(track, edges)
    found = []
    for number, area in enumerate(areas):
        here = position[owner[edge] == number]
        # A track that never crosses the boundary is inside from its first vertex on, or not at all.
        if len(here) or area.contains(track[:1])[0]:
            breaks = np.unique(np.concatenate([[0.0, len(track) - 1.0], here]))
            inside = area.contains(along(track, (breaks[1:] + breaks[:-1]) / 2.0))
            found += [(number, start, end) for start, end in _merged(breaks, inside)]
    return found


def stretches_of_many(area: PlanarArea, tracks_xy_m: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Stretches of many tracks (n, k, 2) inside one area: rows (m,), starts and ends (m,) in fractional vertex numbers.

    A track of NaN has none. The same stretches as ``stretches_inside`` finds track by track.
    """
    whole = np.flatnonzero(np.isfinite(tracks_xy_m).all(axis=(1, 2)))
    tracks = tracks_xy_m[whole]
    last = tracks.shape[1] - 1.0
    near = np.flatnonzero(boxes_touch(np.hstack([tracks.min(axis=1), tracks.max(axis=1)]), area.bounds))
    if not len(near):
        return np.empty(0, dtype=int), np.empty(0), np.empty(0)
    row, position = _crossings_of_many(tracks[near], area.edges)
    every = np.arange(len(near))
    row = np.concatenate([row, every, every])
    position = np.concatenate([position, np.zeros(len(near)), np.full(len(near), last)])
    order = np.lexsort((position, row))
    row, position = row[order], position[order]
    piece = np.flatnonzero((row[1:] == row[:-1]) & (position[1:] > position[:-1]))
    middle = (position[piece] + position[piece + 1]) / 2.0
    step = np.minimum(middle.astype(int), tracks.shape[1] - 2)
    first, second = tracks[near[row[piece]], step], tracks[near[row[piece]], step + 1]
    inside = area.contains(first + (second - first) * (middle - step)[:, None])
    row, start, end = row[piece][inside], position[piece][inside], position[piece + 1][inside]
    # Neighbouring pieces are one stretch: where the next one begins as this one ends, in the same track.
    joined = (row[1:] == row[:-1]) & (start[1:] == end[:-1])
    opens, closes = np.concatenate([[True], ~joined])[: len(row)], np.concatenate([~joined, [True]])[: len(row)]
    return whole[near[row[opens]]], start[opens], end[closes]


def bounds_of(xy_m: np.ndarray) -> np.ndarray:
    """Bounds (4,) x low, y low, x high, y high of places (n, 2)."""
    return np.concatenate([np.min(xy_m, axis=0), np.max(xy_m, axis=0)])


def boxes_touch(boxes: np.ndarray, box: np.ndarray, margin_m: float = 0.0) -> np.ndarray:
    """Which of the boxes (n, 4) touch the box (4,) widened by a margin, shape (n,)."""
    low_x, low_y, high_x, high_y = box + margin_m * np.array([-1.0, -1.0, 1.0, 1.0])
    return (boxes[:, 0] <= high_x) & (boxes[:, 2] >= low_x) & (boxes[:, 1] <= high_y) & (boxes[:, 3] >= low_y)


def along(track: np.ndarray, position: ArrayLike) -> np.ndarray:
    """Values of a track's rows, (n,) or (n, 2), n > 1, at fractional row numbers 0..n-1, linear between them."""
    position = np.asarray(position, dtype=float)
    row = np.minimum(position.astype(int), len(track) - 2)
    share = position - row
    if track.ndim > 1:
        share = share[..., None]
    first = track[row]
    return first + (track[row + 1] - first) * share


def part_of(track: np.ndarray, start: float, end: float) -> np.ndarray:
    """The rows of a track from one fractional row number to another, ends included."""
    inner = np.arange(np.floor(start) + 1, np.ceil(end))
    return along(track, np.concatenate([[start], inner, [end]]))


def length_m(track_xy_m: np.ndarray) -> float:
    """Length of a track (n, 2)."""
    return float(np.sum(np.hypot(*np.diff(track_xy_m, axis=0).T))) if len(track_xy_m) > 1 else 0.0


def distance_to_segments(xy_m: np.ndarray, segments: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Distance (n, m) from places (n, 2) to segments (m, 4), and the share 0-1 along each of its nearest place."""
    start, step = segments[None, :, :2], (segments[:, 2:] - segments[:, :2])[None]
    square = np.sum(step**2, axis=2)
    offset = xy_m[:, None, :] - start
    share = np.clip(np.sum(offset * step, axis=2) / np.where(square > 0.0, square, 1.0), 0.0, 1.0)
    return np.linalg.norm(offset - share[..., None] * step, axis=2), share


def filled_grid(areas: list[PlanarArea], x_m: np.ndarray, y_m: np.ndarray) -> np.ndarray:
    """Mask (len(y), len(x)) of the grid's points that lie inside any of the areas. ``x_m`` rises."""
    mask = np.zeros((len(y_m), len(x_m)), dtype=bool)
    for area in areas:
        for row in np.flatnonzero((y_m >= area.bounds[1]) & (y_m <= area.bounds[3])):
            crossings = np.sort(_row_crossings(area.edges, y_m[row]))
            mask[row] |= np.searchsorted(crossings, x_m) % 2 == 1
    return mask


def _row_crossings(edges: np.ndarray, y_m: float) -> np.ndarray:
    """Where the edges cross a row, x in metres."""
    x1, y1, x2, y2 = edges[(edges[:, 1] > y_m) != (edges[:, 3] > y_m)].T
    return x1 + (y_m - y1) / (y2 - y1) * (x2 - x1)


def _closed(ring: np.ndarray) -> np.ndarray:
    return ring if np.array_equal(ring[0], ring[-1]) else np.vstack([ring, ring[:1]])


def _odd_crossings(xy_m: np.ndarray, edges: np.ndarray) -> np.ndarray:
    """Even-odd rule: rays to the east that cross the edges an odd number of times."""
    x, y = xy_m[:, :1], xy_m[:, 1:]
    x1, y1, x2, y2 = (column[None, :] for column in edges.T)
    straddles = (y1 > y) != (y2 > y)
    with np.errstate(divide="ignore", invalid="ignore", over="ignore"):
        east_of = x < x1 + (y - y1) / (y2 - y1) * (x2 - x1)
    return np.sum(straddles & east_of, axis=1) % 2 == 1


def _crossings(track: np.ndarray, edges: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Where a track crosses edges (parallel touches left out): fractional vertex numbers, and the edges' numbers."""
    boxes = np.hstack([np.minimum(edges[:, :2], edges[:, 2:]), np.maximum(edges[:, :2], edges[:, 2:])])
    near = np.flatnonzero(boxes_touch(boxes, bounds_of(track)))
    # Blocks keep the table of segments by edges within some tens of megabytes.
    size = max(1, 1_000_000 // max(len(near), 1))
    found = [_crossings_of_block(track, block, size, edges[near]) for block in range(0, len(track) - 1, size)]
    return np.concatenate([position for position, _ in found]), near[np.concatenate([edge for _, edge in found])]


def _crossings_of_many(tracks: np.ndarray, edges: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Where tracks (n, k, 2) cross edges: rows and fractional vertex numbers."""
    low, high = tracks.min(axis=(0, 1)), tracks.max(axis=(0, 1))
    boxes = np.hstack([np.minimum(edges[:, :2], edges[:, 2:]), np.maximum(edges[:, :2], edges[:, 2:])])
    edges = edges[boxes_touch(boxes, np.concatenate([low, high]))]
    rows, positions = [np.empty(0, dtype=int)], [np.empty(0)]
    # Edge by edge over all the tracks' segments: there are many tracks and few edges near them.
    starts, steps = tracks[:, :-1], np.diff(tracks, axis=1)
    for edge in edges:
        edge_step = edge[2:] - edge[:2]
        offset = edge[:2] - starts
        denominator = _cross(steps, edge_step)
        with np.errstate(divide="ignore", invalid="ignore"):
            share, on_edge = _cross(offset, edge_step) / denominator, _cross(offset, steps) / denominator
        row, segment = np.nonzero(
            (denominator != 0.0) & (share >= 0.0) & (share <= 1.0) & (on_edge >= 0.0) & (on_edge <= 1.0)
        )
        rows.append(row)
        positions.append(segment + share[row, segment])
    return np.concatenate(rows), np.concatenate(positions)


def _crossings_of_block(track: np.ndarray, block: int, size: int, edges: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    part = track[block : block + size + 1]
    start, step = part[:-1, None, :], np.diff(part, axis=0)[:, None, :]
    edge_start, edge_step = edges[None, :, :2], (edges[:, 2:] - edges[:, :2])[None]
    offset = edge_start - start
    denominator = _cross(step, edge_step)
    with np.errstate(divide="ignore", invalid="ignore"):
        share = _cross(offset, edge_step) / denominator
        on_edge = _cross(offset, step) / denominator
    hit = (denominator != 0.0) & (share >= 0.0) & (share <= 1.0) & (on_edge >= 0.0) & (on_edge <= 1.0)
    segment, edge = np.nonzero(hit)
    return block + segment + share[hit], edge


def _cross(first: np.ndarray, second: np.ndarray) -> np.ndarray:
    return first[..., 0] * second[..., 1] - first[..., 1] * second[..., 0]


def _merged(breaks: np.ndarray, inside: np.ndarray) -> list[tuple[float, float]]:
    """Neighbouring inside pieces joined."""
    edges = np.diff(np.concatenate([[False], inside, [False]]).astype(int))
    return [
        (float(breaks[a]), float(breaks[b])) for a, b in zip(np.flatnonzero(edges == 1), np.flatnonzero(edges == -1))
    ]
