"""Coasts whose corners a way over water may turn at, worked out once each, as far from its ends as a way may go."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import numpy as np

from ..errors import StoppedError
from ..planar import PlanarArea, boxes_touch
from .way_corners import WaterCorners, turns_right

# Shares of the distance kept off. The water's edge that corners lie on is thinned by less than the corners lie outside
# the one that no piece of a way may cross, and that one by less than it lies outside the true coast.
COAST_THINNED, CORNERS_THINNED, KEPT_OFF, KEPT_OFF_THINNED = 0.1, 0.25, 0.5, 0.05
REACH = 1.5  # shares of the distance kept off beyond which a coast grown by it, and thinned, does not go
ARC_PIECES = 2  # a quarter circle round a point
JOINED_AT_ONCE = 16
FEW_EDGES = 64


@dataclass(frozen=True, kw_only=True)
class Coast:
    """One coast: its corners (m, 6) with the ones before and after, ``water`` (m,) the number of the piece of water
    each lies on, those ``pieces`` where there are several, and ``edges`` (k, 4) no piece of a way may cross."""

    corners: np.ndarray
    water: np.ndarray
    pieces: tuple[PlanarArea, ...]
    edges: np.ndarray


class Coasts:
    """The coasts of areas within a box (4,) of the frame, their corners ``keep_off_m`` outside them.

    Areas so near each other that what is grown round them meets are one coast; a coast is worked out when it is first
    asked for.
    """

    def __init__(
        self, areas: tuple[PlanarArea, ...], box: np.ndarray, keep_off_m: float, ask: Callable[[], None]
    ) -> None:
        self.areas, self.box, self.keep_off_m = areas, box, keep_off_m
        bounds = np.array([area.bounds for area in areas]).reshape(-1, 4)
        self.boxes = bounds + REACH * keep_off_m * np.array([-1.0, -1.0, 1.0, 1.0])
        self.coast_of_area = _together(areas, self.boxes, ask)
        self._coasts: dict[int, Coast] = {}
        self._water: dict[tuple[int, int], np.ndarray] = {}

    def within(self, start_m: np.ndarray, end_m: np.ndarray, sum_m: float, ask: Callable[[], None]) -> WaterCorners:
        """The corners whose distances from two places (2,) sum up to so much at the most, and what bars the way there.

        No way from one place to the other that is not longer goes beyond them: they lie in an ellipse.
        """
        numbers = np.unique(self.coast_of_area[least_sums_m(self.boxes, start_m, end_m) <= sum_m]).tolist()
        coasts = [self._coast(number, ask) for number in numbers]
        rows = np.concatenate([np.empty((0, 6)), *(coast.corners for coast in coasts)])
        edges = np.concatenate([np.empty((0, 4)), *(coast.edges for coast in coasts)])
        water = self._waters(numbers, coasts, ask)
        near = np.hypot(*(rows[:, :2] - start_m).T) + np.hypot(*(rows[:, :2] - end_m).T) <= sum_m
        rows = rows[near]
        return WaterCorners(
            xy_m=rows[:, 0:2],
            before_m=rows[:, 2:4],
            after_m=rows[:, 4:6],
            water=water[near],
            edges=edges[least_sums_m(boxes_of(edges), start_m, end_m) <= sum_m],
        )

    def _coast(self, number: int, ask: Callable[[], None]) -> Coast:
        if number not in self._coasts:
            ask()
            areas = [self.areas[row] for row in np.flatnonzero(self.coast_of_area == number)]
            self._coasts[number] = _coast(areas, self.box, self.keep_off_m, ask)
        return self._coasts[number]

    def _waters(self, numbers: list[int], coasts: list[Coast], ask: Callable[[], None]) -> np.ndarray:
        """The number (n,) of the connected water that each corner of some coasts lies on.

        Coasts that do not meet part two places only where one of them does alone: each that has several pieces of water
        is asked for itself.
        """
        columns = [np.zeros(sum(len(coast.corners) for coast in coasts), dtype=int)]
        for parting, coast in zip(numbers, coasts):
            if coast.pieces:
                ask()
                columns.append(np.concatenate([self._pieces_at(parting, number) for number in numbers]))
        return np.unique(np.stack(columns, axis=1), axis=0, return_inverse=True)[1].reshape(-1)

    def _pieces_at(self, parting: int, number: int) -> np.ndarray:
        """The piece of one coast's water that each corner (m,) of another, or of its own, lies on."""
        if parting == number:
            return self._coasts[number].water
        if (parting, number) not in self._water:
            places = self._coasts[number].corners[:, :2]
            found = np.full(len(places), -1)
            for piece, area in enumerate(self._coasts[parting].pieces):
                found[area.contains(places)] = piece
            self._water[parting, number] = found
        return self._water[parting, number]


def asker(is_cancelled: Callable[[], bool]) -> Callable[[], None]:
    """A function that raises StoppedError when the user has stopped."""

    def ask() -> None:
        if is_cancelled():
            raise StoppedError()

    return ask


def boxes_of(edges: np.ndarray) -> np.ndarray:
    """The boxes (k, 4) of edges (k, 4)."""
    return np.hstack([np.minimum(edges[:, :2], edges[:, 2:]), np.maximum(edges[:, :2], edges[:, 2:])])


def least_sums_m(boxes: np.ndarray, start_m: np.ndarray, end_m: np.ndarray) -> np.ndarray:
    """At most the least sum (n,) of the distances of a place in each box (n, 4) from two places (2,)."""
    return sum(
        np.hypot(*np.maximum(np.maximum(boxes[:, :2] - place, place - boxes[:, 2:]), 0.0).T)
        for place in (start_m, end_m)
    )


def _together(areas: tuple[PlanarArea, ...], boxes: np.ndarray, ask: Callable[[], None]) -> np.ndarray:
    """Numbers (n,), the same for areas whose boxes touch, or are joined by others whose boxes do."""
    parent = np.arange(len(boxes))

    def root(row: int) -> int:
        while parent[row] != row:
            parent[row] = parent[parent[row]]
            row = parent[row]
        return row

    order = np.argsort(boxes[:, 0], kind="stable")
    lows = boxes[order, 0]
    for place, row in enumerate(order.tolist()):
        if place % 256 == 0:
            ask()
        others = order[place + 1 : np.searchsorted(lows, boxes[row, 2], side="right")]
        for other in others[boxes_touch(boxes[others], boxes[row])].tolist():
            if root(row) != root(other) and _meet(areas, boxes, row, other):
                parent[root(other)] = root(row)
    return np.array([root(row) for row in range(len(boxes))], dtype=int)


def _meet(areas: tuple[PlanarArea, ...], boxes: np.ndarray, row: int, other: int) -> bool:
    """Whether two areas whose boxes touch may meet, grown: a long coast does only where one of its edges is near."""
    long, short = sorted((row, other), key=lambda one: -len(areas[one].edges))
    if len(areas[long].edges) <= FEW_EDGES:
        return True
    reach_m = areas[long].bounds[0] - boxes[long, 0]
    return bool(boxes_touch(boxes_of(areas[long].edges), boxes[short], reach_m).any())


def _coast(areas: list[PlanarArea], box: np.ndarray, keep_off_m: float, ask: Callable[[], None]) -> Coast:
    from shapely.geometry import box as rectangle

    frame = rectangle(*box)
    # What lies beyond the box cannot be met within it, nor can its cut edge.
    wide = frame.buffer(4.0 * keep_off_m)
    solid = _each(lambda area: _solid(area, COAST_THINNED * keep_off_m).intersection(wide), areas, ask)
    inner, outer = (
        _joined(_each(lambda shape, by=share: shape.buffer(by * keep_off_m, ARC_PIECES), solid, ask), ask)
        for share in (KEPT_OFF, 1.0)
    )
    barred = inner.simplify(KEPT_OFF_THINNED * keep_off_m)
    water = _polygons(frame.difference(outer.simplify(CORNERS_THINNED * keep_off_m)))
    rings = [(number, ring) for number, piece in enumerate(water) for ring in _rings_with_water_left(piece)]
    corners = [turns_right(ring) for _, ring in rings]
    edges = [np.hstack([ring[:-1], ring[1:]]) for piece in _polygons(barred) for ring in _rings_with_water_left(piece)]
    pieces = [PlanarArea(rings=tuple(_rings_with_water_left(piece))) for piece in water] if len(water) > 1 else []
    return Coast(
        corners=np.concatenate([np.empty((0, 6)), *corners]),
        water=np.repeat([number for number, _ in rings], [len(some) for some in corners]).astype(int),
        pieces=tuple(pieces),
        edges=np.concatenate([np.empty((0, 4)), *edges]),
    )


def _each(work: Callable[[Any], Any], things: list, ask: Callable[[], None]) -> list:
    found = []
    for number, thing in enumerate(things):
        if number % JOINED_AT_ONCE == 0:
            ask()
        found.append(work(thing))
    return found


def _joined(shapes: list, ask: Callable[[], None]) -> Any:
    """All the shapes as one, neighbours first."""
    from shapely.ops import unary_union

    shapes = sorted((shape for shape in shapes if not shape.is_empty), key=lambda shape: shape.bounds[0])
    while len(shapes) > JOINED_AT_ONCE:
        batches = [shapes[first : first + JOINED_AT_ONCE] for first in range(0, len(shapes), JOINED_AT_ONCE)]
        shapes = []
        for batch in batches:
            ask()
            shapes.append(unary_union(batch))
    return unary_union(shapes)


def _solid(area: PlanarArea, thinned_m: float) -> Any:
    """The area as a shape, its rings thinned."""
    from shapely.geometry import Polygon
    from shapely.ops import unary_union

    polygons = [Polygon(ring).buffer(0.0) for ring in area.rings if len(ring) > 3]
    if len(polygons) == 1:
        return polygons[0].simplify(thinned_m)
    level = [sum(other.contains(one) for other in polygons) for one in polygons]
    shape = Polygon()
    # Even-odd: a ring inside one other is a hole, and what lies in the hole is solid again. Each contains itself.
    for depth in range(1, max(level, default=0) + 1):
        layer = unary_union([one for one, deep in zip(polygons, level) if deep == depth])
        shape = shape.union(layer) if depth % 2 else shape.difference(layer)
    return shape.simplify(thinned_m)


def _polygons(shape: Any) -> list[Any]:
    parts = getattr(shape, "geoms", [shape])
    return [part for part in parts if part.geom_type == "Polygon" and not part.is_empty]


def _rings_with_water_left(polygon: Any) -> list[np.ndarray]:
    """Rings (k, 2), closed, that keep the polygon on their left."""
    from shapely.geometry.polygon import orient

    whole = orient(polygon)
    return [np.array(ring.coords)[:, :2] for ring in (whole.exterior, *whole.interiors)]
