"""When to leave at the latest to be home by a time.

The way home is not equally long at every hour, so the answer is bands of departures, not one number.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from ..swimmer import Swimmer
from ..water.stream import Stream
from .quick_legs import quick_legs
from .swim import SwimWay

SCAN_S = 60.0
EDGE_S = 1.0


@dataclass(frozen=True, kw_only=True)
class LeavingBands:
    """Departures ``leave_s`` (n,), minutes home (n,), NaN where the way cannot be swum, and which are safe (n,).

    ``bands`` are the first and last safe second of every run of safe departures; at the first and last departure asked
    for a run is cut off, not ended.
    """

    leave_s: np.ndarray
    home_min: np.ndarray
    safe: np.ndarray
    bands: tuple[tuple[float, float], ...]

    @property
    def latest_s(self) -> float:
        """The last safe second, NaN where none is."""
        return self.bands[-1][1] if self.bands else float("nan")


@dataclass(frozen=True, kw_only=True)
class LatestLeave:
    """Who leaves, one or a group, and the last safe second, NaN where there is none."""

    who: str
    latest_s: float


def leaving_bands(
    stream: Stream,
    start_m: np.ndarray,
    way_m: np.ndarray,
    leave_s: np.ndarray,
    pace_m_s: float,
    *,
    by_s: float,
    factor: float,
    fixed_s: float,
    min_ground_speed_m_s: float = 0.0,
) -> LeavingBands:
    """Departures (n,), rising, from a place (2,) over the places of a way (k, 2) that are home by ``by_s``.

    A departure t is safe where t + factor T(t) + fixed <= by, T(t) the way home at one heading a leg. ``stream`` gives
    vectors of the grid. The edges of a band lie on its safe side, within a second. A run of safe or unsafe departures
    that fits between two neighbours of ``leave_s`` is not seen.
    """
    leave_s = np.asarray(leave_s, dtype=float)

    def home_and_safe(departs_s: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        home_s = seconds_home(stream, start_m, way_m, departs_s, pace_m_s, min_ground_speed_m_s)
        return home_s, departs_s + factor * home_s + fixed_s <= by_s

    home_s, safe = home_and_safe(leave_s)
    bands = _bands(leave_s, safe, lambda departs_s: home_and_safe(departs_s)[1])
    return LeavingBands(leave_s=leave_s, home_min=home_s / 60.0, safe=safe, bands=bands)


def seconds_home(
    stream: Stream,
    start_m: np.ndarray,
    way_m: np.ndarray,
    leave_s: np.ndarray,
    pace_m_s: float,
    min_ground_speed_m_s: float = 0.0,
) -> np.ndarray:
    """Seconds (n,) over the way, NaN where one of its legs cannot be swum by the rules of ``swim.swimmable``."""
    places = np.concatenate([np.reshape(start_m, (1, 2)), np.reshape(way_m, (-1, 2))])
    now = np.array(leave_s, dtype=float)
    for start, end in zip(places[:-1], places[1:]):
        length_m = float(np.hypot(*(end - start)))
        if length_m > 0.0:
            leg = quick_legs(stream, start, end, now, pace_m_s, step_s=SwimWay().step_s)
            now = np.where(leg.swimmable(length_m, pace_m_s, min_ground_speed_m_s), leg.arrive_s, np.nan)
    return now - leave_s


def _bands(
    leave_s: np.ndarray, safe: np.ndarray, is_safe: Callable[[np.ndarray], np.ndarray]
) -> tuple[tuple[float, float], ...]:
    """Runs of safe departures; all their edges are halved together until each is known to a second."""
    change = np.diff(np.concatenate([[False], safe, [False]]).astype(int))
    first, last = np.flatnonzero(change == 1), np.flatnonzero(change == -1) - 1
    inside = np.concatenate([leave_s[first], leave_s[last]])
    outside = np.concatenate([leave_s[np.maximum(first - 1, 0)], leave_s[np.minimum(last + 1, len(leave_s) - 1)]])
    while len(inside) and np.max(np.abs(outside - inside)) > EDGE_S:
        middle = (inside + outside) / 2.0
        good = is_safe(middle)
        inside, outside = np.where(good, middle, inside), np.where(good, outside, middle)
    return tuple(zip(inside[: len(first)].tolist(), inside[len(first) :].tolist()))


def latest_leave(
    stream: Stream,
    start_m: np.ndarray,
    way_m: np.ndarray,
    pace_m_s: float,
    *,
    earliest_s: float,
    by_s: float,
    factor: float = 1.0,
    fixed_s: float = 0.0,
    min_ground_speed_m_s: float = 0.0,
) -> float:
    """The last safe second from ``earliest_s`` on, looked for minute by minute; NaN where there is none.

    The rest as in ``leaving_bands``.
    """
    return leaving_bands(
        stream,
        start_m,
        way_m,
        np.arange(earliest_s, by_s + SCAN_S, SCAN_S),
        pace_m_s,
        by_s=by_s,
        factor=factor,
        fixed_s=fixed_s,
        min_ground_speed_m_s=min_ground_speed_m_s,
    ).latest_s


def latest_of_each(
    stream: Stream,
    start_m: np.ndarray,
    way_m: np.ndarray,
    swimmer: Swimmer,
    *,
    earliest_s: float,
    by_s: float,
    factor: float = 1.0,
    fixed_s: float = 0.0,
) -> tuple[LatestLeave, ...]:
    """The last safe second of each of a group alone, and last of the group, or of one swimmer."""
    about = {"earliest_s": earliest_s, "by_s": by_s, "factor": factor, "fixed_s": fixed_s}

    def latest(one: Swimmer) -> float:
        least = one.min_ground_speed_m_s
        return latest_leave(stream, start_m, way_m, one.made_good_m_s, min_ground_speed_m_s=least, **about)

    return tuple(LatestLeave(who=one.name, latest_s=latest(one)) for one in (*swimmer.members, swimmer))
