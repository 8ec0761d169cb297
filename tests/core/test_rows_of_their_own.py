"""One pace and one water a departure: the solvers swim each row as if it were alone."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pytest
from tideleg.core.geodesy import LocalFrame
from tideleg.core.solve.swim import HOLD_LINE, NEW_HEADINGS, ONE_HEADING, SwimWay, swim_leg, swim_route, swimmable
from tideleg.core.solve.swum import ARRIVED, Line
from tideleg.core.swimmer import Swimmer
from tideleg.core.water.stream import KNOWN, UNKNOWN, StreamSample, for_rows

LINE = Line(start=np.array([0.0, 0.0]), end=np.array([500.0, 900.0]))


@dataclass(frozen=True)
class Waters:
    """A tide and a shear of its own strength and hour for each row; a strength of NaN is not known."""

    strength: np.ndarray
    later_s: np.ndarray

    def at(self, x_m, y_m, t_s) -> StreamSample:
        x, y, t = np.broadcast_arrays(*(np.asarray(value, dtype=float) for value in (x_m, y_m, t_s)))
        if len(x) != len(self.strength):
            raise ValueError(f"{len(x)} rows asked for of {len(self.strength)}")
        shape = (-1,) + (1,) * (x.ndim - 1)
        strength, later = self.strength.reshape(shape), self.later_s.reshape(shape)
        east = strength * np.sin((t - later) / 3600.0) * (1.0 + y / 3000.0)
        north = strength * 0.5 * np.cos((t - later) / 4000.0 + x / 2000.0)
        status = np.where(np.isfinite(east), KNOWN, UNKNOWN)
        return StreamSample(east_m_s=east, north_m_s=north, status=status)

    def of_rows(self, rows: np.ndarray) -> Waters:
        return Waters(self.strength[rows], self.later_s[rows])


def some(seed: int, n: int = 40) -> tuple[Waters, np.ndarray, np.ndarray]:
    """Waters, departures and paces; some departures missing, some waters unknown, some too strong to swim in."""
    rng = np.random.default_rng(seed)
    strength = rng.uniform(0.0, 0.9, n)
    strength[rng.random(n) < 0.1] = np.nan
    departs = rng.uniform(0.0, 20_000.0, n)
    departs[rng.random(n) < 0.1] = np.nan
    return Waters(strength, rng.uniform(-3600.0, 3600.0, n)), departs, rng.uniform(0.3, 1.0, n)


@pytest.mark.parametrize("mode", [ONE_HEADING, NEW_HEADINGS, HOLD_LINE])
def test_each_row_is_swum_as_it_would_be_alone(mode: int) -> None:
    waters, departs, paces = some(5)
    way = SwimWay(mode=mode, step_s=5.0)  # a row's nodes are closer where another row swims longer
    together = swim_leg(waters, LINE, departs, paces, way)
    assert 5 < np.sum(together.ending == ARRIVED) < 35
    for row in range(len(departs)):
        one = waters.of_rows(np.array([row]))
        alone = swim_leg(one, LINE, departs[[row]], float(paces[row]), way)
        assert alone.ending[0] == together.ending[row]
        np.testing.assert_allclose(together.arrive_s[row], alone.arrive_s[0], atol=0.1)
        np.testing.assert_allclose(together.least_ahead_m_s[row], alone.least_ahead_m_s[0], atol=5e-3)


def test_a_route_takes_a_pace_for_each_row_and_keeps_rows_apart_after_some_have_failed() -> None:
    waters, departs, paces = some(9)
    frame, stops = LocalFrame(lon=-28.5, lat=0.0), np.array([[0.0, 0.0], [500.0, 900.0], [-200.0, 300.0]])
    swimmer = Swimmer(pace_m_s=2.0, path_factor=1.0)
    stays = np.array([0.0, 600.0, 0.0])
    together = swim_route(waters, frame, stops, stays, departs, swimmer, SwimWay(), pace_m_s=paces)
    for row in range(len(departs)):
        one = waters.of_rows(np.array([row]))
        own = Swimmer(pace_m_s=float(paces[row]), path_factor=1.0)
        alone = swim_route(one, frame, stops, stays, departs[[row]], own, SwimWay())
        np.testing.assert_allclose(together.arrive_s[row], alone.arrive_s[0], atol=0.5)


def test_a_leg_too_strong_for_a_rows_own_pace_is_not_swimmable_for_it_alone() -> None:
    waters = Waters(np.full(2, 0.5), np.zeros(2))
    line, departs = Line(start=np.zeros(2), end=np.array([0.0, 800.0])), np.full(2, 5000.0)
    paces = np.array([0.4, 0.9])
    leg = swim_leg(waters, line, departs, paces, SwimWay())
    assert swimmable(leg, line, Swimmer(), paces).tolist() == [False, True]


def test_a_plain_stream_is_the_same_for_any_rows() -> None:
    class Plain:
        def at(self, x_m, y_m, t_s) -> StreamSample: ...

    plain = Plain()
    assert for_rows(plain, np.array([3])) is plain
