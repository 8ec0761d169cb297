"""Pairs of transits that cross at a mark, by the error of the fix they give."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from .transit_lines import Lines

MOST_USES_OF_A_LANDMARK = 2


@dataclass(frozen=True, kw_only=True)
class FixPair:
    """Two lines by index, the sharper first, the angle at which they cross (to 90) and the error of their fix."""

    first: int
    second: int
    crossing_deg: float
    error_m: float


def best_fixes(lines: Lines, least_crossing_deg: float, most: int) -> tuple[FixPair, ...]:
    """The pairs of least error, no landmark in more than two of them and no two sharing three landmarks."""
    used: Counter[int] = Counter()
    chosen: list[FixPair] = []
    held: list[set[int]] = []
    for pair in _by_error(lines, least_crossing_deg):
        if len(chosen) == most:
            break
        four = {int(array[number]) for array in (lines.front, lines.rear) for number in (pair.first, pair.second)}
        if any(used[one] >= MOST_USES_OF_A_LANDMARK for one in four) or any(len(four & other) > 2 for other in held):
            continue
        chosen.append(pair)
        held.append(four)
        used.update(four)
    return tuple(chosen)


def fix_error_m(
    turn_deg: np.ndarray, offsets_m: tuple[np.ndarray, np.ndarray], sensitivities_m: tuple[np.ndarray, np.ndarray]
) -> np.ndarray:
    """How far from the mark two lines of sight put a swimmer, root mean square, arrays of one shape.

    The lines, ``turn_deg`` apart in bearing, meet at the place whose distances from both are their offsets; what the
    eye misses moves each line by its sensitivity, as often to one side as to the other.
    """
    turn = np.radians(turn_deg)
    (first, second), (eye, other) = offsets_m, sensitivities_m
    squares = first**2 + second**2 - 2.0 * first * second * np.cos(turn) + eye**2 + other**2
    return np.sqrt(squares) / np.abs(np.sin(turn))


def crossing_angle_deg(turn_deg: np.ndarray) -> np.ndarray:
    """The angle (0 to 90) between lines whose bearings differ by ``turn_deg``."""
    return np.abs((np.asarray(turn_deg) + 90.0) % 180.0 - 90.0)


def nearest_square(bearings_deg: np.ndarray, number: int) -> float | None:
    """The crossing angle of one line with that of the others which comes nearest to 90; None without others."""
    others = np.delete(bearings_deg, number)
    return float(crossing_angle_deg(others - bearings_deg[number]).max()) if len(others) else None


def _by_error(lines: Lines, least_crossing_deg: float) -> Iterator[FixPair]:
    one, two = np.triu_indices(len(lines), 1)
    turn = lines.bearing_deg[one] - lines.bearing_deg[two]
    crossing = crossing_angle_deg(turn)
    steep = np.flatnonzero(crossing >= least_crossing_deg)
    one, two, turn, crossing = one[steep], two[steep], turn[steep], crossing[steep]
    offsets, eye = lines.offset_m, lines.sensitivity_m
    error = fix_error_m(turn, (offsets[one], offsets[two]), (eye[one], eye[two]))
    sharp = lines.error_m
    for at in np.argsort(error, kind="stable").tolist():
        first, second = sorted((int(one[at]), int(two[at])), key=lambda number: (sharp[number], number))
        yield FixPair(first=first, second=second, crossing_deg=float(crossing[at]), error_m=float(error[at]))
