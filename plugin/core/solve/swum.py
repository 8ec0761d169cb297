"""A leg as swum by many departures at once: the track's nodes and what is read off them."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..water.stream import EXTRAPOLATED, UNKNOWN

# How a leg ended; anything but ARRIVED has no arrival time.
ARRIVED, STREAM_UNKNOWN, TOO_STRONG_ACROSS, NEVER_ARRIVES, NO_SINGLE_HEADING, NOT_REACHED = range(6)


@dataclass(frozen=True, kw_only=True)
class Line:
    """The ruler line of a leg in the plan's frame: its ends, length and unit vectors ahead and to the right."""

    start: np.ndarray
    end: np.ndarray

    @property
    def length_m(self) -> float:
        """Length of the line."""
        return float(np.hypot(*(self.end - self.start)))

    @property
    def ahead(self) -> np.ndarray:
        """Unit vector (2,) along the line."""
        return (self.end - self.start) / self.length_m

    @property
    def right(self) -> np.ndarray:
        """Unit vector (2,) to the right of the line."""
        return np.array([self.ahead[1], -self.ahead[0]])


@dataclass(frozen=True, kw_only=True)
class Nodes:
    """Nodes of tracks, arrays (n, k): time, place, stream, stream status and heading in radians of the grid.

    Rows hold departures; a row is NaN after its swimmer has arrived.
    """

    t_s: np.ndarray
    x_m: np.ndarray
    y_m: np.ndarray
    east_m_s: np.ndarray
    north_m_s: np.ndarray
    status: np.ndarray
    heading_rad: np.ndarray

    @classmethod
    def joined(cls, parts: list[Nodes]) -> Nodes:
        """Parts of the same departures put one after the other."""
        return cls(**{name: np.concatenate([getattr(part, name) for part in parts], axis=1) for name in cls.names()})

    @classmethod
    def names(cls) -> tuple[str, ...]:
        """The arrays' names."""
        return tuple(cls.__dataclass_fields__)

    @classmethod
    def blank(cls, n: int, k: int) -> Nodes:
        """Nodes of swimmers who are elsewhere."""
        return cls(**{name: np.full((n, k), UNKNOWN if name == "status" else np.nan) for name in cls.names()})

    def spread_to(self, rows: np.ndarray, n: int) -> Nodes:
        """These nodes as the given rows of n departures, the others blank."""
        wide = Nodes.blank(n, self.t_s.shape[1])
        for name in self.names():
            getattr(wide, name)[rows] = getattr(self, name)
        return wide


@dataclass(frozen=True, kw_only=True)
class LegSwum:
    """A leg for n departures. Arrays (n,), NaN where the leg was not completed.

    ``ending`` says how it ended. ``least_ahead_m_s`` is the least speed toward the mark along the ruler line at any
    moment, ``most_across_m_s`` the strongest stream across it, ``off_line_m`` the largest bow, ``mean_east_m_s`` and
    ``mean_north_m_s`` the mean stream in the grid. ``nodes`` keeps the tracks where asked for.
    """

    depart_s: np.ndarray
    arrive_s: np.ndarray
    ending: np.ndarray
    least_ahead_m_s: np.ndarray
    most_across_m_s: np.ndarray
    off_line_m: np.ndarray
    mean_east_m_s: np.ndarray
    mean_north_m_s: np.ndarray
    extrapolated: np.ndarray
    nodes: Nodes | None = None


def read_off(
    line: Line,
    pace_m_s: ArrayLike,
    depart_s: np.ndarray,
    arrive_s: np.ndarray,
    ending: np.ndarray,
    nodes: Nodes,
    keep_track: bool,
) -> LegSwum:
    """What the nodes say of each leg; means by the trapezoid rule over time. ``pace_m_s`` is one or (n,)."""
    ahead_c = nodes.east_m_s * line.ahead[0] + nodes.north_m_s * line.ahead[1]
    right_c = nodes.east_m_s * line.right[0] + nodes.north_m_s * line.right[1]
    along = np.sin(nodes.heading_rad) * line.ahead[0] + np.cos(nodes.heading_rad) * line.ahead[1]
    own = np.reshape(pace_m_s, (-1, 1)) * along
    off = (nodes.x_m - line.start[0]) * line.right[0] + (nodes.y_m - line.start[1]) * line.right[1]
    seconds = arrive_s - depart_s
    return LegSwum(
        depart_s=depart_s,
        arrive_s=arrive_s,
        ending=ending,
        least_ahead_m_s=_least(own + ahead_c),
        most_across_m_s=-_least(-np.abs(right_c)),
        off_line_m=-_least(-np.abs(off)),
        mean_east_m_s=_integral(nodes.t_s, nodes.east_m_s) / seconds,
        mean_north_m_s=_integral(nodes.t_s, nodes.north_m_s) / seconds,
        extrapolated=np.any((nodes.status == EXTRAPOLATED) & np.isfinite(nodes.t_s), axis=1),
        nodes=nodes if keep_track else None,
    )


def _least(values: np.ndarray) -> np.ndarray:
    """Least value of each row, NaN where the row has none."""
    least = np.min(np.where(np.isnan(values), np.inf, values), axis=1)
    return np.where(np.isfinite(least), least, np.nan)


def _integral(t_s: np.ndarray, values: np.ndarray) -> np.ndarray:
    """Trapezoid integral over each row, the blank pieces left out."""
    pieces = np.diff(t_s, axis=1) * (values[:, 1:] + values[:, :-1]) / 2.0
    return np.nansum(pieces, axis=1)


def running_integral(values: np.ndarray, step_s: np.ndarray) -> np.ndarray:
    """Trapezoid integral (n, k) from the first node to each node, for steps (n,) that are even within a row."""
    pieces = (values[:, 1:] + values[:, :-1]) * (step_s[:, None] / 2.0)
    return np.concatenate([np.zeros((len(values), 1)), np.cumsum(pieces, axis=1)], axis=1)
