"""Leaving one place at every minute: which exits are reached in time, in the water expected and on the bad days."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ...results.turn_back import HardStop, LeavingBand
from ...words import marked, spoken
from ..request import SwimRequest
from ..windows.limits import LIMITS
from .hard_stops import spare_s
from .homeward import Homeward
from .landings import Landing

ENDS_BY = {
    "stream": marked("the stream"),
    "unknown": marked("the stream is not known"),
    "land": marked("land"),
    "closed": marked("closed water"),
    "ferry": marked("a sailing"),
}


@dataclass(frozen=True, kw_only=True)
class Leaving:
    """Leaving at minutes (n,) for each of the landings. Arrivals (n_landings, n), NaN where not reached.

    ``worst_s`` are the latest arrivals of the bad days. ``safe`` and ``safe_bad`` (n_landings, n) say where every hard
    stop keeps its reserve.
    """

    request: SwimRequest
    landings: tuple[Landing, ...]
    stops: tuple[HardStop, ...]
    leave_s: np.ndarray
    homes: tuple[Homeward, ...]

    @property
    def arrive_s(self) -> np.ndarray:
        """Arrivals in the water expected."""
        return np.stack([home.arrive_s[0] for home in self.homes])

    @property
    def worst_s(self) -> np.ndarray:
        """The latest arrivals on the bad days, NaN where one of them does not get there."""
        return np.stack([home.worst_s for home in self.homes])

    def safe(self, arrive_s: np.ndarray) -> np.ndarray:
        """Whether arrivals (n_landings, n) keep every hard stop."""
        with np.errstate(invalid="ignore"):
            return np.all(spare_s(self.request, self.stops, self.leave_s, arrive_s) >= 0.0, axis=0)

    def quickest(self, arrive_s: np.ndarray, safe: np.ndarray) -> np.ndarray:
        """The landing (n,) first reached among the safe ones, else among all, -1 where none is."""
        first = np.where(safe, arrive_s, np.inf)
        any_safe = np.isfinite(first).any(axis=0)
        first = np.where(any_safe, first, np.where(np.isfinite(arrive_s), arrive_s, np.inf))
        return np.where(np.isfinite(first).any(axis=0), np.argmin(first, axis=0), -1)

    def bands(self, arrive_s: np.ndarray, *, bad: bool) -> tuple[LeavingBand, ...]:
        """Runs of minutes at which some landing is safe."""
        safe = self.safe(arrive_s)
        best = self.quickest(arrive_s, safe)
        edges = np.diff(np.concatenate([[False], safe.any(axis=0), [False]]).astype(int))
        moment = self.request.clock.moment
        return tuple(
            LeavingBand(
                first=moment(self.leave_s[first]),
                last=moment(self.leave_s[last]),
                exit=self.landings[best[last]].name,
                ends_by=self._ends_by(int(best[last]), int(last) + 1, arrive_s, bad),
            )
            for first, last in zip(np.flatnonzero(edges == 1), np.flatnonzero(edges == -1) - 1)
        )

    def _ends_by(self, landing: int, after: int, arrive_s: np.ndarray, bad: bool) -> str:
        """What stops the minute after a band, for the landing that was best at its end."""
        if after >= len(self.leave_s):
            return self._first_stop()
        if np.isnan(arrive_s[landing, after]):
            limit = self.homes[landing].limit[:, after]
            # A bad day counts what stops the day expected too, as its own arrivals are the latest of all days.
            return next(spoken(ENDS_BY[LIMITS[int(code)]]) for code in (limit if bad else limit[:1]) if code)
        spare = spare_s(self.request, self.stops, self.leave_s, arrive_s)[:, landing, after]
        return self.stops[int(np.argmin(spare))].words

    def _first_stop(self) -> str:
        return min(self.stops, key=lambda stop: self.request.clock.seconds(stop.moment)).words
