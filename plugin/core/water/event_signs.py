"""Whether the rates of slacks and maxima can be signed as they stand: a stream turns at its slack."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

LONGEST_TURN = timedelta(hours=16)  # from maximum to maximum, some 12 h where the tide is diurnal; beyond it rows lack


@dataclass(frozen=True, kw_only=True)
class SignedEvent:
    """An event as read: its row, moment in UTC, signed rate (None unknown, 0 slack) and whether words say the way."""

    row: int
    time: datetime
    rate_kn: float | None
    is_said: bool


def unturned(events: Sequence[SignedEvent]) -> tuple[int, int] | None:
    """Rows of the first two maxima of one sign on both sides of a slack, where not both say flood or ebb; else None.

    Rates without a sign look so, and the ebb would be read as another flood.
    """
    events = sorted(events, key=lambda event: event.time)
    for before, slack, after in zip(events, events[1:], events[2:]):
        if slack.rate_kn != 0.0 or not before.rate_kn or not after.rate_kn:
            continue
        near = after.time - before.time <= LONGEST_TURN
        if near and before.rate_kn * after.rate_kn > 0.0 and not (before.is_said and after.is_said):
            return before.row, after.row
    return None
