"""Where a float with a person on it goes who stops swimming: the stream, and the wind's push on what stands out of it.

Leeway of a surfboard with a person: 1.93 % of the wind's speed downwind, 0.51 % to either side across it. Source:
A. A. Allen 2010, the list of leeway classes used with SAROPS.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..errors import StoppedError, SwimPlanError
from ..geodesy import LocalFrame
from ..planar import PlanarArea, bounds_of, boxes_touch, filled_grid
from ..quantities import m_s_from_knots
from ..water.members import down
from ..water.stream import Stream, StreamSample, for_rows
from ..words import tr
from .marching import march, places_at
from .swim import GridStream

DOWNWIND, ACROSS = 0.0193, 0.0051
AFTER_MIN = (30.0, 60.0, 120.0)
STEP_S = 120.0
LAND_CELL_M, LAND_CELLS = 5.0, 1500
LAND_LOOKS = 8  # places of each step at which it is seen whether there is land


@dataclass(frozen=True, kw_only=True)
class Wind:
    """A steady wind: where it comes FROM, degrees true, and its speed in knots."""

    from_deg: float
    speed_kn: float

    def __post_init__(self) -> None:
        if not (0.0 <= self.from_deg <= 360.0 and 0.0 <= self.speed_kn <= 100.0):
            raise SwimPlanError(
                asked=tr("Asked for a wind from {from_deg:g} degrees of {speed_kn:g} kn").format(
                    from_deg=self.from_deg, speed_kn=self.speed_kn
                ),
                allowed=tr("It comes from 0 to 360 degrees true with 0 to 100 kn"),
                remedy=tr("Correct the wind, or leave it empty where it is not known"),
            )

    def leeway_m_s(self, aside: ArrayLike) -> tuple[np.ndarray, np.ndarray]:
        """The push to true east and north; ``aside`` (n,) from -1 to 1, how far to the right of downwind it yaws."""
        angle, speed = np.radians(self.from_deg + 180.0), m_s_from_knots(self.speed_kn)
        ahead, right = DOWNWIND * speed, ACROSS * speed * np.asarray(aside, dtype=float)
        return ahead * np.sin(angle) + right * np.cos(angle), ahead * np.cos(angle) - right * np.sin(angle)


@dataclass(frozen=True, kw_only=True)
class PushedStream:
    """A stream, of true vectors, and the wind's push on each row's float (n,): what it makes over the ground."""

    stream: Stream
    east_m_s: np.ndarray
    north_m_s: np.ndarray

    def at(self, x_m: ArrayLike, y_m: ArrayLike, t_s: ArrayLike) -> StreamSample:
        """Stream and push at places and times, rows on the first axis."""
        sample = self.stream.at(x_m, y_m, t_s)
        east, north = (down(part, sample.east_m_s.ndim) for part in (self.east_m_s, self.north_m_s))
        return StreamSample(
            east_m_s=sample.east_m_s + east,
            north_m_s=sample.north_m_s + north,
            status=sample.status,
            source=sample.source,
        )


@dataclass(frozen=True, kw_only=True)
class Adrift:
    """Floats that stopped at starts: times (n_starts, k), seconds, and places (n_starts, n_members, k, 2) in the frame.

    NaN from where the stream is not known on. ``ashore`` (n_starts, n_members, k) says who lies on land.
    """

    times_s: np.ndarray
    places_m: np.ndarray
    ashore: np.ndarray

    def at(self, start: int, moment_s: float) -> tuple[np.ndarray, np.ndarray]:
        """Places (n_members, 2) of those of one start at a moment, and who lies on land by then."""
        n = self.places_m.shape[1]
        times = np.broadcast_to(self.times_s[start], (n, self.times_s.shape[1]))
        places = places_at(times, self.places_m[start], np.full(n, moment_s))
        node = int(np.clip(np.searchsorted(self.times_s[start], moment_s + 1e-6, side="right") - 1, 0, None))
        return places, self.ashore[start, :, node]


def drift(
    water: Stream,
    frame: LocalFrame,
    starts_m: np.ndarray,
    starts_s: np.ndarray,
    until_s: np.ndarray,
    aside: np.ndarray,
    *,
    wind: Wind | None = None,
    land: Sequence[PlanarArea] = (),
    step_s: float = STEP_S,
    progress: Callable[[float], None] | None = None,
    is_cancelled: Callable[[], bool] = bool,
) -> Adrift:
    """Let go at places (n_starts, 2) and times (n_starts,), followed until times (n_starts,), once for each member.

    ``water`` has a member a row, or is one water for all; ``aside`` (n_members,) as in ``Wind``. Without a wind its
    push is left out, which is not the same as a calm. A float stops at land, to within some ten metres. Second order
    in the step.
    """
    n_starts, n = len(starts_s), len(aside)
    member = np.tile(np.arange(n), n_starts)
    stream = for_rows(water, member)
    if wind is not None:
        east, north = wind.leeway_m_s(aside[member])
        stream = PushedStream(stream=stream, east_m_s=east, north_m_s=north)
    longest = float(np.max(until_s - starts_s))
    shares = np.linspace(0.0, 1.0, max(4, int(np.ceil(longest / step_s))) + 1)
    times = starts_s[:, None] + (until_s - starts_s)[:, None] * shares
    places = march(
        GridStream(stream=stream, frame=frame),
        np.repeat(starts_m, n, axis=0),
        np.repeat(times, n, axis=0),
        progress=progress,
        is_cancelled=is_cancelled,
    )
    places, ashore = stopped_at_land(places, land, is_cancelled=is_cancelled)
    shape = (n_starts, n, len(shares))
    return Adrift(times_s=times, places_m=places.reshape(*shape, 2), ashore=ashore.reshape(shape))


def stopped_at_land(
    places_m: np.ndarray, land: Sequence[PlanarArea], *, is_cancelled: Callable[[], bool] = bool
) -> tuple[np.ndarray, np.ndarray]:
    """Tracks (n, k, 2) that lie still from where they meet land on, and where (n, k) they do.

    Land is looked up on a grid of 5 m, coarser beyond 7 km, at eight places a step.
    """
    ashore = np.zeros(places_m.shape[:2], dtype=bool)
    known = places_m[np.isfinite(places_m[..., 0])]
    box = bounds_of(known) if len(known) else np.full(4, np.nan)
    near = [area for area in land if boxes_touch(area.bounds[None], box, LAND_CELL_M)[0]]
    if not near:
        return places_m, ashore
    cell = max(LAND_CELL_M, float(np.max(box[2:] - box[:2])) / LAND_CELLS)
    x, y = (np.arange(low - cell, high + 2.0 * cell, cell) for low, high in zip(box[:2], box[2:]))
    is_land = filled_grid(near, x, y)
    stopped, low = places_m.copy(), box[:2] - cell
    lies = _on(is_land, places_m[:, 0], low, cell)
    ashore[:, 0] = lies
    for node in range(places_m.shape[1] - 1):
        if is_cancelled():
            raise StoppedError()
        before, after = stopped[:, node], places_m[:, node + 1]
        stopped[lies, node + 1] = before[lies]
        for look in range(LAND_LOOKS):
            ahead = before + ((look + 1) / LAND_LOOKS) * (after - before)
            hit = _on(is_land, ahead, low, cell) & ~lies
            # It lies at the last place seen in the water.
            stopped[hit, node + 1] = (before + (look / LAND_LOOKS) * (after - before))[hit]
            lies |= hit
        ashore[:, node + 1] = lies
    return stopped, ashore


def _on(is_land: np.ndarray, place: np.ndarray, low_m: np.ndarray, cell_m: float) -> np.ndarray:
    """Whether places (n, 2) are on land by the nearest point of the grid; one that is not known is not."""
    known = np.isfinite(place[:, 0])
    column, row = np.rint((np.where(known[:, None], place, low_m) - low_m) / cell_m).astype(int).T
    return known & is_land[np.clip(row, 0, len(is_land) - 1), np.clip(column, 0, is_land.shape[1] - 1)]
