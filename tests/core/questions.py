"""Counts how often a solver asks whether to stop, and says yes after so many times."""

from __future__ import annotations


class StopAfter:
    """Asked whether to stop, it says no ``count`` times, then yes; ``asked`` is how often it was asked."""

    def __init__(self, count: int = 10**9) -> None:
        self.count, self.asked = count, 0

    def __call__(self) -> bool:
        self.asked += 1
        return self.asked > self.count
