"""Which departures of a window are worth planning whole, turn back included."""

from __future__ import annotations

from datetime import datetime

import numpy as np

from ...clock import PlanClock
from ...results.windows import DepartureWindow
from .departures import DeparturesSwum

APART_S = 1200.0  # departures nearer to each other than this turn back alike; common practice, no source
MOST_TRIED = 8


def departures_to_try(clock: PlanClock, swum: DeparturesSwum, window: DepartureWindow) -> tuple[datetime, ...]:
    """The window's best departure, then others from all over it, the quickest first: eight at most, at least twenty
    minutes apart.

    The windows themselves do not look at the turn back, which takes a thousand times as long.
    """
    first, last, best = (clock.seconds(moment) for moment in (window.first, window.last, window.best))
    rows = np.flatnonzero((swum.depart_s >= first - 1e-3) & (swum.depart_s <= last + 1e-3))
    spread = rows[np.unique(np.round(np.linspace(0, len(rows) - 1, MOST_TRIED - 1)).astype(int))]
    chosen = [best]
    for row in spread[np.argsort(np.round(swum.total_s[spread]), kind="stable")]:
        at = float(swum.depart_s[row])
        if min(abs(at - one) for one in chosen) >= APART_S - 1e-3:
            chosen.append(at)
    return tuple(clock.moment(at) for at in chosen)
