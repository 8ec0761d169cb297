"""Heights between the waters: curves from series, their turns, and tables that carry a curve."""

from __future__ import annotations

import numpy as np
import pytest
from tideleg.core.errors import SwimPlanError
from tideleg.core.water.height_curve import SeriesCurve
from tideleg.core.water.tide import TideTable
from tideleg.core.water.tide_series import scatter_m, table_of_series, waters_of_series

HOUR_S = 3600.0
PERIOD_S = 12.42 * HOUR_S


def semidiurnal(t_s: np.ndarray) -> np.ndarray:
    """High water at 0 s; heights 2 +- 1.5 m with a quarter-diurnal part that leaves the turns where they are."""
    turn = 2.0 * np.pi * t_s / PERIOD_S
    return 2.0 + 1.5 * np.cos(turn) + 0.05 * np.cos(2.0 * turn)


def test_a_series_goes_through_its_rows_and_is_close_between_them() -> None:
    times = np.arange(0.0, 48.0 * HOUR_S, HOUR_S)
    curve = SeriesCurve(times_s=times, heights_m=semidiurnal(times))
    assert curve.step_s == HOUR_S
    np.testing.assert_allclose(curve.height_m(times), semidiurnal(times), atol=1e-12)
    between = np.arange(2.0 * HOUR_S, 45.0 * HOUR_S, 97.0)
    error = np.abs(curve.height_m(between) - semidiurnal(between)).max()
    straight = np.abs(np.interp(between, times, semidiurnal(times)) - semidiurnal(between)).max()
    assert error < 0.006, error
    assert straight > 8.0 * error


def test_a_shorter_step_makes_the_series_better_by_its_cube() -> None:
    errors = []
    for step in (HOUR_S, HOUR_S / 2.0):
        times = np.arange(-6.0 * HOUR_S, 60.0 * HOUR_S, step)
        between = np.arange(0.0, 50.0 * HOUR_S, 61.0)
        curve = SeriesCurve(times_s=times, heights_m=semidiurnal(times))
        errors.append(np.abs(curve.height_m(between) - semidiurnal(between)).max())
    assert errors[0] / errors[1] > 7.5


def test_nothing_is_known_outside_a_series_nor_in_its_gap() -> None:
    times = np.arange(0.0, 24.0 * HOUR_S, 360.0)
    kept = (times < 5.0 * HOUR_S) | (times > 6.0 * HOUR_S)
    curve = SeriesCurve(times_s=times[kept], heights_m=semidiurnal(times[kept]))
    assert np.isnan(curve.height_m([-1.0, 5.5 * HOUR_S, 24.1 * HOUR_S])).all()
    beside = np.array([4.85, 6.15]) * HOUR_S
    np.testing.assert_allclose(curve.height_m(beside), semidiurnal(beside), atol=1e-4)


def test_an_unknown_height_is_a_gap_of_its_two_steps() -> None:
    times = np.arange(0.0, 10.0 * HOUR_S, HOUR_S)
    heights = semidiurnal(times)
    heights[4] = np.nan
    height = SeriesCurve(times_s=times, heights_m=heights).height_m(np.array([2.5, 3.5, 4.5, 5.5]) * HOUR_S)
    assert np.isfinite(height).tolist() == [True, False, False, True]


@pytest.mark.parametrize(("times", "heights"), [([0.0], [1.0]), ([0.0, 1.0], [1.0]), ([0.0, 0.0], [1.0, 2.0])])
def test_a_series_without_order_is_refused(times: list[float], heights: list[float]) -> None:
    with pytest.raises(SwimPlanError):
        SeriesCurve(times_s=np.array(times), heights_m=np.array(heights))


@pytest.mark.parametrize(("step_s", "within_s"), [(360.0, 0.5), (HOUR_S, 25.0)])
def test_turns_are_found_between_the_rows(step_s: float, within_s: float) -> None:
    times = np.arange(-3.0 * HOUR_S, 52.0 * HOUR_S, step_s) + 101.0
    waters = waters_of_series(times, semidiurnal(times))
    wanted = PERIOD_S / 2.0 * np.arange(9)
    assert len(waters.times_s) == 9
    np.testing.assert_allclose(waters.times_s, wanted, atol=within_s)
    assert waters.is_high.tolist() == [True, False] * 4 + [True]
    np.testing.assert_allclose(waters.heights_m, semidiurnal(wanted), atol=0.002)


def test_noise_makes_no_waters_and_moves_them_little() -> None:
    times = np.arange(-3.0 * HOUR_S, 14.1 * 24.0 * HOUR_S, 360.0)
    noise = np.random.default_rng(7).normal(0.0, 0.02, len(times))
    heights = semidiurnal(times) + noise
    assert scatter_m(heights) == pytest.approx(0.02, rel=0.1)
    clean, noisy = waters_of_series(times, semidiurnal(times)), waters_of_series(times, heights)
    assert noisy.is_high.tolist() == clean.is_high.tolist()
    assert np.abs(noisy.times_s - clean.times_s).max() < 400.0
    assert np.abs(noisy.heights_m - clean.heights_m).max() < 0.03


def test_a_turn_on_printed_centimetres_lies_in_the_middle_of_its_flat_top() -> None:
    times = np.arange(-3.0 * HOUR_S, 30.0 * HOUR_S, 360.0)
    waters = waters_of_series(times, np.round(semidiurnal(times), 2))
    np.testing.assert_allclose(waters.times_s, PERIOD_S / 2.0 * np.arange(5), atol=120.0)


def test_a_water_in_a_gap_is_not_invented() -> None:
    times = np.arange(-3.0 * HOUR_S, 26.0 * HOUR_S, 360.0)
    times = times[np.abs(times - PERIOD_S / 2.0) > HOUR_S]  # the first low water is missing
    table = table_of_series("Port", times, semidiurnal(times))
    assert table.is_high.tolist() == [True, True, False, True]
    gap = np.array([PERIOD_S / 2.0])
    assert np.isnan(table.height_m(gap)).all()
    assert np.isnan(table.rising(gap)).all()
    assert table.height_m([HOUR_S]) == pytest.approx(semidiurnal(np.array([HOUR_S])), abs=1e-4)
    # The range of the first high water is not its difference to the next high water.
    assert np.isnan(table.ranges_m("HW")[0])
    assert table.ranges_m("HW")[1:] == pytest.approx([3.0, 3.0], abs=0.001)


def test_heights_that_never_turn_are_refused() -> None:
    with pytest.raises(SwimPlanError, match="never turn"):
        table_of_series("Port", np.arange(5.0) * HOUR_S, np.arange(5.0))


class Ramp:
    """A curve that knows one hour only."""

    def height_m(self, t_s: np.ndarray) -> np.ndarray:
        t_s = np.asarray(t_s, dtype=float)
        return np.where((t_s >= 0.0) & (t_s <= HOUR_S), 7.0, np.nan)


def test_the_curve_rules_where_it_knows_and_the_cosine_elsewhere() -> None:
    rows = {"times_s": [0.0, 6.0 * HOUR_S], "heights_m": [4.0, 1.0], "is_high": [True, False]}
    bare, curved = TideTable(port="P", **rows), TideTable(port="P", **rows, curve=Ramp())
    times = np.array([0.5, 3.0, 7.0]) * HOUR_S
    assert curved.height_m(times)[0] == 7.0
    assert curved.height_m(times)[1] == bare.height_m(times)[1] == pytest.approx(2.5)
    assert np.isnan(curved.height_m(times)[2])


def test_two_waters_of_a_kind_without_a_curve_stay_refused() -> None:
    rows = {"times_s": [0.0, 6.0 * HOUR_S, 9.0 * HOUR_S], "heights_m": [4.0, 4.1, 1.0], "is_high": [True, True, False]}
    with pytest.raises(SwimPlanError, match="two of the same kind"):
        TideTable(port="P", **rows)
    assert np.isnan(TideTable(port="P", **rows, curve=Ramp()).height_m(3.0 * HOUR_S))


def test_a_long_fall_of_a_mixed_tide_is_whole_when_its_curve_says_so() -> None:
    times = np.arange(0.0, 20.0 * HOUR_S, 600.0)
    curve = SeriesCurve(times_s=times, heights_m=3.0 - times / (10.0 * HOUR_S))
    rows = {"times_s": [0.0, 18.0 * HOUR_S], "heights_m": [3.0, 1.2], "is_high": [True, False]}
    assert np.isnan(TideTable(port="P", **rows).rising(9.0 * HOUR_S))
    assert TideTable(port="P", **rows, curve=curve).rising(9.0 * HOUR_S) == 0.0
