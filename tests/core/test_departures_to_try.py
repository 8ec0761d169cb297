"""Which departures of a window are planned whole, turn back included."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone
from types import SimpleNamespace

import numpy as np
import pytest
from tideleg.core.clock import PlanClock
from tideleg.core.solve.windows.departures_to_try import MOST_TRIED, departures_to_try

START = datetime(2027, 6, 5, tzinfo=timezone.utc)
CLOCK = PlanClock(start=START, zone_name="UTC")
MINUTES = np.arange(0, 24 * 60, 10)


def tried(first: int, last: int, best: int, minutes: np.ndarray = MINUTES) -> list[int]:
    """In minutes from the start, of a swim that is the quicker the later it begins."""
    swum = SimpleNamespace(depart_s=60.0 * minutes, total_s=10_000.0 - minutes)
    window = SimpleNamespace(
        **{name: START + timedelta(minutes=at) for name, at in zip(("first", "last", "best"), (first, last, best))}
    )
    moments = departures_to_try(CLOCK, swum, window)
    return [round((moment - START).total_seconds() / 60.0) for moment in moments]


def test_the_best_comes_first_and_the_others_by_their_minutes() -> None:
    found = tried(300, 900, 500)
    assert found[0] == 500
    assert found[1:] == sorted(found[1:], reverse=True)


def test_they_lie_all_over_the_window_and_apart() -> None:
    found = sorted(tried(300, 900, 450))
    assert found[0] == 300 and found[-1] == 900 and len(found) == MOST_TRIED
    assert min(np.diff(found)) >= 20


@pytest.mark.parametrize(("first", "last", "count"), [(300, 300, 1), (300, 310, 1), (300, 320, 2)])
def test_a_short_window_has_few(first: int, last: int, count: int) -> None:
    assert len(tried(first, last, first)) == count
    assert all(first <= at <= last for at in tried(first, last, first))
