"""High and low waters found in a series of heights at even times."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from ..errors import SwimPlanError
from ..words import tr
from .height_curve import LONGEST_STEP_RATIO, SeriesCurve
from .tide import TideTable

LEAST_RISE_M = 0.01  # a smaller rise and fall is the rounding of printed heights
RISE_IN_NOISES = 8.0  # nor is one within the scatter of the heights a tide: eight times its standard deviation
NOISY_M = 0.004  # scatter above which more heights are taken for the top of each tide
HALF_TOP_S, HALF_NOISY_TOP_S = 1800.0, 3600.0  # heights taken on each side of a turn for its parabola


@dataclass(frozen=True, kw_only=True)
class Waters:
    """High and low waters: ``times_s``, ``heights_m`` and ``is_high``, each (n,), in order of time."""

    times_s: np.ndarray
    heights_m: np.ndarray
    is_high: np.ndarray


def table_of_series(port: str, times_s: np.ndarray, heights_m: np.ndarray) -> TideTable:
    """The tide of a port given by its heights at even times: the series is the curve, its turns the waters.

    ``times_s`` (n,) seconds from the plan's start, rising; ``heights_m`` (n,), NaN for a gap. SwimPlanError as
    SeriesCurve and where nothing turns.
    """
    curve = SeriesCurve(times_s=times_s, heights_m=heights_m)
    waters = waters_of_series(curve.times_s, curve.heights_m)
    if not len(waters.times_s):
        raise SwimPlanError(
            asked=tr("The heights of {port} never turn").format(port=port),
            allowed=tr("A series shows at least one high or low water"),
            remedy=tr("Read a longer series, or check which column was taken for the height"),
        )
    return TideTable(port=port, times_s=waters.times_s, heights_m=waters.heights_m, is_high=waters.is_high, curve=curve)


def waters_of_series(times_s: np.ndarray, heights_m: np.ndarray) -> Waters:
    """The turns of a series, in time between its rows by the parabola through the heights around each.

    A turn counts when the height rises and falls by more than the scatter of the heights on both sides of it; what lies
    in a gap, or at an end, is not guessed. Hourly heights of a mixed tide give the times of 6-minute ones within 40 s.
    """
    found: list[tuple[float, float, bool]] = []
    for piece in _whole_pieces(times_s, heights_m):
        found += _turns_of_piece(times_s[piece], heights_m[piece])
    times, heights, highs = ([row[i] for row in found] for i in range(3))
    return Waters(
        times_s=np.array(times, dtype=float),
        heights_m=np.array(heights, dtype=float),
        is_high=np.array(highs, dtype=bool),
    )


def scatter_m(heights_m: np.ndarray) -> float:
    """Standard deviation of the noise of evenly spaced heights, from their third differences; 0 for under four.

    A tide is smooth, so what is left of it in third differences is small; 20 is the sum of their squared weights.
    """
    third = np.diff(heights_m, n=3)
    third = third[np.isfinite(third)]
    return float(1.4826 * np.median(np.abs(third - np.median(third))) / np.sqrt(20.0)) if len(third) else 0.0


def _whole_pieces(times_s: np.ndarray, heights_m: np.ndarray) -> Iterator[np.ndarray]:
    """Row numbers of each stretch without a gap."""
    known = np.flatnonzero(np.isfinite(heights_m))
    if len(known) < 3:
        return
    steps = np.diff(times_s[known])
    yield from np.split(known, np.flatnonzero(steps > LONGEST_STEP_RATIO * np.median(steps)) + 1)


def _turns_of_piece(times_s: np.ndarray, heights_m: np.ndarray) -> list[tuple[float, float, bool]]:
    if len(times_s) < 3:
        return []
    step_s = float(np.median(np.diff(times_s)))
    # On hourly heights third differences hold the tide itself: only closely spaced ones show the noise.
    noise_m = scatter_m(heights_m) if step_s <= 900.0 else 0.0
    noisy = noise_m > NOISY_M
    half = max(1, round((HALF_NOISY_TOP_S if noisy else HALF_TOP_S) / step_s))
    smooth_m, scatter = (
        (_running_mean(heights_m, half // 2), noise_m / np.sqrt(half)) if noisy else (heights_m, noise_m)
    )
    turns = _turning_rows(smooth_m, max(LEAST_RISE_M, RISE_IN_NOISES * scatter))
    return [(*_top(times_s, heights_m, row, half), is_high) for row, is_high in turns]


def _running_mean(heights_m: np.ndarray, half: int) -> np.ndarray:
    """Mean of each height and ``half`` on each side of it, of fewer near the ends."""
    total = np.concatenate([[0.0], np.cumsum(heights_m)])
    rows = np.arange(len(heights_m))
    reach = np.minimum(half, np.minimum(rows, len(heights_m) - 1 - rows))
    return (total[rows + reach + 1] - total[rows - reach]) / (2 * reach + 1)


def _turning_rows(heights_m: np.ndarray, least_rise_m: float) -> list[tuple[int, bool]]:
    """Rows of highs and lows that rise above, or fall below, the rows on both sides by at least so much.

    Only the rows at which the height bends are walked through, so that a year of 6-minute heights is quick.
    """
    steps = np.sign(np.diff(heights_m))
    moving = np.flatnonzero(steps)
    if not len(moving):
        return []
    turned = np.flatnonzero(steps[moving[1:]] != steps[moving[:-1]])
    bends = (moving[turned] + 1 + moving[turned + 1]) // 2  # the middle of a flat top
    turns: list[tuple[int, bool]] = []
    low = high = 0
    rising: bool | None = None
    for row in [*bends.tolist(), len(heights_m) - 1]:
        high = row if heights_m[row] > heights_m[high] else high
        low = row if heights_m[row] < heights_m[low] else low
        if rising is not False and heights_m[high] - heights_m[row] >= least_rise_m:
            turns.append((high, True))
            rising, low = False, row
        elif rising is not True and heights_m[row] - heights_m[low] >= least_rise_m:
            turns.append((low, False))
            rising, high = True, row
    # The first one is a turn only if something came before it.
    return [turn for turn in turns if 0 < turn[0] < len(heights_m) - 1]


def _top(times_s: np.ndarray, heights_m: np.ndarray, row: int, half: int) -> tuple[float, float]:
    """Time and height of a turn: of the parabola by least squares through the heights around it.

    Where the step is so coarse that only its neighbours are near, of the quartic through five heights instead: hourly
    heights of a tide with shallow-water harmonics do not lie on one parabola.
    """
    room = min(row, len(times_s) - 1 - row)
    coarse = half == 1 and room >= 2
    half = 2 if coarse else min(half, room)
    around = slice(row - half, row + half + 1)
    from_row_s = times_s[around] - times_s[row]
    scale_s = from_row_s[-1]
    curve = np.polynomial.Polynomial.fit(
        from_row_s / scale_s, heights_m[around], 4 if coarse else 2, domain=(-1.0, 1.0), window=(-1.0, 1.0)
    )
    offset = 0.0
    for _ in range(4):  # Newton; a parabola is there after the first
        bend = float(curve.deriv(2)(offset))
        offset -= float(curve.deriv()(offset)) / bend if bend else 0.0
    if not abs(offset) <= 1.0:
        return float(times_s[row]), float(heights_m[row])
    return float(times_s[row] + offset * scale_s), float(curve(offset))


def unlikely_rises(times_s: np.ndarray, heights_m: np.ndarray) -> np.ndarray:
    """Places of heights that differ from the one before by far more than the steps around them do, shape (k,).

    More than 5 cm, and 12 times what is usual in the series; across a gap nothing is said.
    """
    steps, rises = np.diff(times_s), np.diff(heights_m)
    if len(rises) < 8:
        return np.empty(0, dtype=int)
    expected = (rises[:-2] + rises[2:]) / 2.0
    odd = np.abs(rises[1:-1] - expected)
    even = np.abs(steps - np.median(steps)) < 1.0
    even = even[:-2] & even[1:-1] & even[2:]
    usual = float(np.median(odd[even])) if even.any() else np.inf
    # A jump shows in the steps beside it too, half as large: only the largest nearby is the jump.
    beside = np.concatenate([[0.0], odd, [0.0]])
    largest = (odd >= beside[:-2]) & (odd >= beside[2:])
    return np.flatnonzero(even & largest & (odd > max(0.05, 12.0 * usual))) + 2
