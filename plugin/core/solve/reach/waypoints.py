"""The path of a grid pulled into a few corners, between which one heading a leg is held.

It begins with the fewest corners. While a leg cannot be swum so, or meets something, it is parted where the path lies
farthest off it; while the whole takes longer than it might, so is the leg that the path lies farthest off. The corners
are then moved about for the least time, by a search in eight directions whose steps are halved when none is better (R.
Hooke and T. A. Jeeves, Journal of the ACM 8 (1961) 212; cited from memory).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ...planar import distance_to_segments
from ..windows.limits import LIMITS
from .square import SquareCrossing
from .way_swims import Corners, Swims, WaySwims

MOST_CORNERS = 10  # between the ends: a card holds no more
NEAR_OPTIMUM = 1.02
WORTH = 0.997  # what another corner must bring the time down to
MOST_ROUNDS = 60
COMPASS = np.array([(np.sin(a), np.cos(a)) for a in np.arange(8) * np.pi / 4.0])


@dataclass(frozen=True, kw_only=True, eq=False)
class Waypoints:
    """Corners (k, 2) of the plan's frame, ends included, and the arrival in seconds of the plan; ``stopped_by`` is one
    of ``LIMITS`` where no way of so many corners was found."""

    corners_m: np.ndarray
    corners: Corners
    arrive_s: float
    stopped_by: str = ""


class Puller:
    """Pulls one path (m, 2) into corners; ``target_s`` is what it takes on the grid, a moment of the plan."""

    def __init__(self, swims: WaySwims, path_m: np.ndarray, target_s: float, cell_m: float) -> None:
        self.swims, self.path_m, self.target_s, self.cell_m = swims, path_m, target_s, cell_m

    def pulled(self, crossings: list[SquareCrossing]) -> Waypoints:
        """The corners, crossings as legs of their own."""
        corners, places = self._begun(crossings)
        found = self._mended(corners, places)
        best = found
        while not found.stopped_by and not self._near_optimum(found.arrive_s):
            leg, at = self._farthest(found)
            if at < 0 or len(found.corners.at) - 2 >= MOST_CORNERS:
                break
            places = np.insert(found.corners_m, leg + 1, self.path_m[at], axis=0)
            found = self._mended(found.corners.with_one(leg, at), places)
            if found.stopped_by or not self._worth(found, best):
                break
            best = found
        return best if best.stopped_by else self._fewest(best)

    def _begun(self, crossings: list[SquareCrossing]) -> tuple[Corners, np.ndarray]:
        at, ends = [0], [None]
        for one in crossings:
            if one.begin > at[-1] or ends[-1] is not None:
                at.append(max(one.begin, at[-1]))
                ends.append(None)
            at.append(one.end)
            ends.append(one)
        at.append(len(self.path_m) - 1)
        ends.append(None)
        return Corners(at=tuple(at), crossing=tuple(ends)), self.path_m[at]

    def _near_optimum(self, arrive_s: float) -> bool:
        return arrive_s - self.swims.depart_s <= NEAR_OPTIMUM * (self.target_s - self.swims.depart_s)

    def _worth(self, found: Waypoints, best: Waypoints) -> bool:
        start = self.swims.depart_s
        return found.arrive_s - start <= WORTH * (best.arrive_s - start)

    def _mended(self, corners: Corners, places: np.ndarray) -> Waypoints:
        """Legs parted until all can be swum, then the corners moved about for the least time."""
        while True:
            swum = self.swims.swim_all(corners, places[None])
            if np.isfinite(swum.good_s[0]):
                return self._moved(corners, swum)
            leg = max(int(swum.leg[0]) - 1, 0)
            at = self._parting(corners, places, leg)
            if at < 0 or len(corners.at) - 2 >= MOST_CORNERS:
                return Waypoints(
                    corners_m=places, corners=corners, arrive_s=np.nan, stopped_by=LIMITS[int(swum.limit[0])]
                )
            corners = corners.with_one(leg, at)
            places = np.insert(places, leg + 1, self.path_m[at], axis=0)

    def _parting(self, corners: Corners, places: np.ndarray, leg: int) -> int:
        """The cell of the path at which a leg is parted, -1 where it cannot be."""
        first, last = corners.at[leg], corners.at[leg + 1]
        if last - first < 2 or corners.crossing[leg + 1] is not None:
            return -1
        off = distance_to_segments(self.path_m[first + 1 : last], np.hstack(places[leg : leg + 2])[None])[0][:, 0]
        far = int(off.argmax())
        return first + 1 + (far if off[far] > self.cell_m else (last - first) // 2 - 1)

    def _farthest(self, found: Waypoints) -> tuple[int, int]:
        """The leg that the path lies farthest off, and the cell of the path there; -1 where none can be parted."""
        best, off_m = (0, -1), 0.0
        for leg in range(len(found.corners.at) - 1):
            at = self._parting(found.corners, found.corners_m, leg)
            if at >= 0:
                line = np.hstack(found.corners_m[leg : leg + 2])[None]
                off = float(distance_to_segments(self.path_m[at][None], line)[0][0, 0])
                if off > off_m:
                    best, off_m = (leg, at), off
        return best

    def _moved(self, corners: Corners, swum: Swims) -> Waypoints:
        """The corners moved about for the least time."""
        places, arrive_s = swum.corners_m[0], float(swum.good_s[0])
        step_m = max(8.0 * self.cell_m, 0.05 * float(np.hypot(*(places[-1] - places[0]))))
        rounds = 0
        while corners.free and step_m >= 0.5 * self.cell_m and rounds < MOST_ROUNDS:
            rounds += 1
            better = self._better(corners, places, arrive_s, step_m)
            if better is None:
                step_m /= 2.0
            else:
                places, arrive_s = better
        return Waypoints(corners_m=places, corners=corners, arrive_s=arrive_s)

    def _better(
        self, corners: Corners, places: np.ndarray, arrive_s: float, step_m: float
    ) -> tuple[np.ndarray, float] | None:
        """The best of moving one corner by a step, and of moving all that gain by it; None where nothing is gained."""
        free = corners.free
        tried = np.repeat(places[None], len(free) * len(COMPASS), axis=0)
        for number, corner in enumerate(free):
            tried[number * len(COMPASS) : (number + 1) * len(COMPASS), corner] += step_m * COMPASS
        swum = self.swims.swim_all(corners, tried)
        good = swum.good_s.reshape(len(free), len(COMPASS))
        gains = np.flatnonzero(good.min(axis=1) < arrive_s - 0.1)
        if not len(gains):
            return None
        best = int(swum.good_s.argmin())
        if len(gains) > 1:
            all_moved = places.copy()
            for number in gains:
                all_moved[free[number]] += step_m * COMPASS[good[number].argmin()]
            both = self.swims.swim_all(corners, all_moved[None])
            if both.good_s[0] < swum.good_s[best]:
                return both.corners_m[0], float(both.good_s[0])
        return swum.corners_m[best], float(swum.good_s[best])

    def _fewest(self, best: Waypoints) -> Waypoints:
        """Without the corners that bring next to nothing."""
        for corner in reversed(best.corners.single):
            corners = best.corners.without(corner)
            swum = self.swims.swim_all(corners, np.delete(best.corners_m, corner, axis=0)[None])
            if np.isfinite(swum.good_s[0]):
                fewer = self._moved(corners, swum)
                if self._near_optimum(fewer.arrive_s) or not self._worth(best, fewer):
                    best = fewer
        return best
