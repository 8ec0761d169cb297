"""The limits that stop a departure, and which of them is told of it."""

from __future__ import annotations

import numpy as np

# The limit told of a departure that meets several is the first of these.
LIMITS = ("", "range", "land", "closed", "unknown", "stream", "ferry", "dark", "hours", "depth")


class Told:
    """What has been told of n departures so far: ``limit`` the number in ``LIMITS``, 0 for none, ``leg`` from 1 (0 for
    the whole swim) and ``item`` the number of what is met there, -1 for nothing with a name."""

    def __init__(self, n: int) -> None:
        self.limit = np.zeros(n, dtype=np.int8)
        self.leg = np.zeros(n, dtype=np.int16)
        self.item = np.full(n, -1, dtype=np.int16)

    def tell(self, rows: np.ndarray, limit: str, leg: int, item: int = -1) -> None:
        """Tell rows (n,) bool of a limit; one told before stands unless this one comes first among ``LIMITS``."""
        code = LIMITS.index(limit)
        fresh = rows & ((self.limit == 0) | (code < self.limit))
        self.limit[fresh], self.leg[fresh], self.item[fresh] = code, leg, item
