"""Ways over water between places: straight where that is clear, else round land and what nobody may enter."""

from __future__ import annotations

import heapq
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime, tzinfo
from functools import cached_property

import numpy as np

from ..chart.areas import Chart
from ..planar import PlanarArea, bounds_of, boxes_touch, distance_to_segments, length_m, part_of, stretches_inside
from .flags.closed import BEACH_M
from .way_coasts import Coasts, asker, boxes_of, least_sums_m
from .way_corners import WaterCorners, hidden

KEEP_OFF_M = 20.0  # about what a compass swimmer needs off the rocks; common practice, no source
NARROWS = (1.0, 0.25, 0.05)  # shares of the distance kept off that are tried until a way is found
# It is looked for near the straight line first: the share of its length, and the metres, that a way may be longer.
LONGER, LONGER_M, WIDENED = 0.05, 100.0, 3.0


@dataclass(frozen=True, kw_only=True, eq=False)
class Obstacles:
    """Land and closed areas nobody may enter, near a box (4,) of the plan's frame, within which ways are looked for.

    ``is_cancelled`` is asked often while one is looked for, unless another is given then.
    """

    land: tuple[PlanarArea, ...]
    closed: tuple[PlanarArea, ...]
    box: np.ndarray
    is_cancelled: Callable[[], bool] = bool
    _coasts: dict[float, Coasts] = field(default_factory=dict, init=False, repr=False)

    @classmethod
    def of(
        cls,
        chart: Chart,
        box: np.ndarray,
        first: datetime,
        last: datetime,
        zone: tzinfo,
        *,
        is_cancelled: Callable[[], bool] = bool,
    ) -> Obstacles:
        """What of the chart touches the box; closed areas where they are in force at any time between two moments."""
        box = np.asarray(box, dtype=float)
        closed = [
            one.area
            for one in chart.near("closed_areas", box)
            if one.rule == "no_entry" and one.in_force.overlaps(first, last, zone)
        ]
        land = tuple(one.area for one in chart.near("land", box))
        return cls(land=land, closed=tuple(closed), box=box, is_cancelled=is_cancelled)

    @cached_property
    def edges(self) -> np.ndarray:
        """The sides (k, 4) of all of them that touch the box."""
        edges = np.concatenate([np.empty((0, 4)), *(area.edges for area in self.land + self.closed)])
        return edges[boxes_touch(boxes_of(edges), self.box)]

    @cached_property
    def _edge_boxes(self) -> np.ndarray:
        return boxes_of(self.edges)

    @cached_property
    def _land_boxes(self) -> np.ndarray:
        return _bounds(self.land)

    @cached_property
    def _closed_boxes(self) -> np.ndarray:
        return _bounds(self.closed)

    def edges_within(self, start_m: np.ndarray, end_m: np.ndarray, sum_m: float) -> np.ndarray:
        """The sides (k, 4) that no line between places misses whose distances from two sum up to so much at most."""
        return self.edges[least_sums_m(self._edge_boxes, start_m, end_m) <= sum_m]

    def coasts(self, keep_off_m: float, ask: Callable[[], None]) -> Coasts:
        """The coasts with corners so far outside, kept from one way to the next."""
        if keep_off_m not in self._coasts:
            self._coasts[keep_off_m] = Coasts(self.land + self.closed, self.box, keep_off_m, ask)
        return self._coasts[keep_off_m]

    def clear(self, start_m: np.ndarray, end_m: np.ndarray) -> bool:
        """Whether the straight line between places (2,) meets none; up to 50 m of land at either end are a beach."""
        line = np.array([start_m, end_m], dtype=float)
        span = bounds_of(line)
        if stretches_inside(_near(self.closed, self._closed_boxes, span), line):
            return False
        whole = length_m(line)
        land = _near(self.land, self._land_boxes, span)
        return all(_beach(line, start, end, whole) for _, start, end in stretches_inside(land, line))

    def shut_in(self, place_m: np.ndarray) -> bool:
        """Whether a place (2,) lies where no line leads out: in a closed area, or on land farther in than a beach."""
        place, span = place_m[None], np.tile(place_m, 2)
        if any(area.contains(place)[0] for area in _near(self.closed, self._closed_boxes, span)):
            return True
        land = _near(self.land, self._land_boxes, span)
        return any(area.contains(place)[0] and area.distance_m(place)[0] > BEACH_M for area in land)


def _bounds(areas: tuple[PlanarArea, ...]) -> np.ndarray:
    return np.array([area.bounds for area in areas]).reshape(-1, 4)


def _near(areas: tuple[PlanarArea, ...], boxes: np.ndarray, box: np.ndarray) -> list[PlanarArea]:
    return [areas[row] for row in np.flatnonzero(boxes_touch(boxes, box))]


def _beach(line: np.ndarray, start: float, end: float, whole_m: float) -> bool:
    """Whether a stretch over land is only the beach at an end of the line; a touch is none at all."""
    touches = (end - start) * whole_m <= 1e-6
    return touches or ((start == 0.0 or end == 1.0) and length_m(part_of(line, start, end)) <= BEACH_M)


def way_round(
    start_m: np.ndarray,
    end_m: np.ndarray,
    obstacles: Obstacles,
    *,
    keep_off_m: float = KEEP_OFF_M,
    is_cancelled: Callable[[], bool] | None = None,
) -> np.ndarray | None:
    """The shortest way (k, 2) over water from a place (2,) to another, ends included; None where there is none.

    It is the straight line where that is clear. Else it turns at corners ``keep_off_m`` off the obstacles, keeping off
    them by 0.3 of that at the least between its first turn and its last; through narrows it keeps off less, but only
    where there is no other way. Error: coasts are thinned by up to a quarter of the distance kept off. A way that would
    leave the box is not found. Raises StoppedError when stopped.
    """
    ask = asker(obstacles.is_cancelled if is_cancelled is None else is_cancelled)
    ask()
    start, end = np.asarray(start_m, dtype=float), np.asarray(end_m, dtype=float)
    if obstacles.clear(start, end):
        return np.array([start, end])
    if obstacles.shut_in(start) or obstacles.shut_in(end):
        return None
    for share in NARROWS:
        way = _in_ellipses(start, end, obstacles, obstacles.coasts(share * keep_off_m, ask), ask)
        if way is not None:
            return way
    return None


def _in_ellipses(
    start: np.ndarray, end: np.ndarray, obstacles: Obstacles, coasts: Coasts, ask: Callable[[], None]
) -> np.ndarray | None:
    """The shortest way, looked for in an ellipse about the ends that is widened until none outside can be shorter."""
    straight = float(np.hypot(*(end - start)))
    sum_m = (1.0 + LONGER) * straight + LONGER_M
    west, south, east, north = obstacles.box
    farthest = np.array([(west, south), (west, north), (east, south), (east, north)])
    all_m = float(np.max(np.hypot(*(farthest - start).T) + np.hypot(*(farthest - end).T)))
    while True:
        everywhere = sum_m >= all_m
        within_m = np.inf if everywhere else sum_m
        edges = obstacles.edges_within(start, end, within_m)
        way = _along_corners(start, end, obstacles, edges, coasts.within(start, end, within_m, ask), ask)
        # A way that is no longer than the sum lies in the ellipse, and so does every shorter one.
        if everywhere or (way is not None and length_m(way) <= sum_m):
            return way
        sum_m = straight + WIDENED * (sum_m - straight) if way is None else (1.0 + 1e-9) * length_m(way)


def _along_corners(
    start: np.ndarray,
    end: np.ndarray,
    obstacles: Obstacles,
    edges: np.ndarray,
    corners: WaterCorners,
    ask: Callable[[], None],
) -> np.ndarray | None:
    """The shortest way over the corners: best first by the way so far and the straight rest."""
    first, last = (_seen_from(place, obstacles, edges, corners, ask) for place in (start, end))
    joined = np.intersect1d(corners.water[first], corners.water[last])
    first, last = (rows[np.isin(corners.water[rows], joined)] for rows in (first, last))
    if not len(joined):
        return None
    n = len(corners.xy_m)
    rest = np.hypot(*(corners.xy_m - end).T)
    home = np.full(n, np.inf)
    home[last] = rest[last]
    so_far, came_from, done = np.full(n + 1, np.inf), np.full(n + 1, -1), np.zeros(n + 1, dtype=bool)
    so_far[first] = np.hypot(*(corners.xy_m[first] - start).T)
    queue = [(float(so_far[row] + rest[row]), int(row)) for row in first]
    heapq.heapify(queue)
    while queue:
        ask()
        _, row = heapq.heappop(queue)
        if row == n:
            return np.array([start, *corners.xy_m[_traced(came_from, n)], end])
        if done[row]:
            continue
        done[row] = True
        if so_far[row] + home[row] < so_far[n]:
            so_far[n], came_from[n] = so_far[row] + home[row], row
            heapq.heappush(queue, (float(so_far[n]), n))
        onward = np.flatnonzero(~done[:n] & (corners.water == corners.water[row]))
        length = so_far[row] + np.hypot(*(corners.xy_m[onward] - corners.xy_m[row]).T)
        shorter = (length < so_far[onward]) & (length + rest[onward] < so_far[n])
        onward, length = onward[shorter], length[shorter]
        seen = corners.sees(row, onward)
        for other, metres in zip(onward[seen].tolist(), length[seen].tolist()):
            so_far[other], came_from[other] = metres, row
            heapq.heappush(queue, (metres + float(rest[other]), other))
    return None


def _traced(came_from: np.ndarray, last: int) -> list[int]:
    rows = [int(came_from[last])]
    while came_from[rows[-1]] >= 0:
        rows.append(int(came_from[rows[-1]]))
    return rows[::-1]


def _seen_from(
    place: np.ndarray, obstacles: Obstacles, edges: np.ndarray, corners: WaterCorners, ask: Callable[[], None]
) -> np.ndarray:
    """The numbers (m,) of the corners to which the straight line from a place (2,) is clear, a beach at the place.

    ``edges`` (k, 4) are those of the obstacles that such a line may cross.
    """
    ask()
    if not len(edges) or distance_to_segments(place[None], edges)[0].min() > BEACH_M:
        return np.flatnonzero(~hidden(place, corners.xy_m, edges))
    # Most are hidden by a coast beyond a beach's length: those need no second look.
    rows = []
    for row in np.flatnonzero(~hidden(place, corners.xy_m, edges, BEACH_M)):
        ask()
        if obstacles.clear(place, corners.xy_m[row]):
            rows.append(row)
    return np.array(rows, dtype=int)
