"""A million streams from an hourly table: at moments alone, and at places and moments through the plan's field."""

from __future__ import annotations

import numpy as np
from replan import _stream, seconds_of
from tideleg.core.water.hourly import HourlyStream

PAIRS = 1_000_000
DAYS = 3.0


def samples(seed: int = 3) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Places within 5 km of the middle and moments of three days, in no order."""
    rng = np.random.default_rng(seed)
    x, y = rng.uniform(-5000.0, 5000.0, (2, PAIRS))
    return x, y, rng.uniform(0.0, DAYS * 86400.0, PAIRS)


def report() -> None:
    """Print the row of the speed table; beside it the least that numpy needs to place the moments in the table."""
    field = _stream()
    x, y, t = samples()
    station = field.stations[0].stream
    if not isinstance(station, HourlyStream):
        raise TypeError("the bench measures an hourly table")
    knots = np.arange(0.0, DAYS * 86400.0, 3600.0)
    one = seconds_of(lambda: station.at(t), 5)
    whole = seconds_of(lambda: field.at(x, y, t), 3)
    placing = seconds_of(lambda: np.searchsorted(knots, t), 5)
    print(
        f"stream from an hourly table, {PAIRS} places and times: {one:.3f} s (target 0.3 s); numpy's search of the "
        f"times alone: {placing:.3f} s, ratio {one / placing:.1f}; two stations shared by distance: {whole:.3f} s"
    )
