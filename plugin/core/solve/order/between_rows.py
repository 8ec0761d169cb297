"""Times between the rows of a table of legs, where a leg may begin or cease to be available at any moment."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from numpy.typing import ArrayLike

from .leg_times import MOST_SLOPE, LegTable, LegTimes

WORTH_WAITING_S = 1.0
SURE_S = 1.0  # waited longer, lest the swim really swum comes a moment before the stream lets it
# Arriving so much later for leaving a step later is no slope any more: something has closed in between.
JUMP_STEPS = 3.0
LEAST_SLOPE = 0.5  # of arrivals over departures before such a place


def least_between(first: ArrayLike, second: ArrayLike, share: ArrayLike, step_s: float) -> np.ndarray:
    """The least that a time can be between two rows, by the share of the step; infinite where neither has one.

    Between rows that belong together it is straight; beside a row that is infinite, or where it jumps, it may be as at
    the other row for any part of the step.
    """
    first, second, share = (np.asarray(value, dtype=float) for value in (first, second, share))
    with np.errstate(invalid="ignore"):
        rise = second - first
        ends = first + rise * share
    ends = np.where(rise > JUMP_STEPS * step_s, first + LEAST_SLOPE * share * step_s, ends)
    ends = np.where(rise < -step_s, second - MOST_SLOPE * (1.0 - share) * step_s, ends)
    ends = np.where(np.isinf(first) & np.isinf(second), np.inf, ends)
    return np.where(share == 0.0, first, ends)


def leaving(table: LegTable, leg: LegTimes, t_s: float, waits: bool) -> Iterator[tuple[float, float]]:
    """When a leg may best be left from a time on, and when the stay at its end is then over: at once, and, where that
    is later or only hoped for, after waiting."""
    row, share = table.row_of(t_s)
    if not 0 <= row < len(table.times_s) - (share > 0.0):
        return
    at_once, sure = _at_once(leg.end_s, row, share, table.step_s)
    if np.isfinite(at_once):
        yield t_s, at_once
    following = row + 1 if share > 0.0 else row
    waited = float(leg.waited_s[following])
    if waits and np.isfinite(waited) and (at_once > waited + WORTH_WAITING_S or not sure):
        yield float(table.times_s[leg.leave_row[following]]) + SURE_S, waited + SURE_S


def way_at(table: LegTable, leg: LegTimes, leave_s: float) -> int:
    """The way taken leaving at a time: that of the row before, or of the next one where that row has none."""
    row, share = table.row_of(leave_s)
    return int(leg.way[row + (share > 0.0 and np.isinf(leg.end_s[row]))])


def _at_once(end_s: np.ndarray, row: int, share: float, step_s: float) -> tuple[float, bool]:
    """The end at a fractional row, and whether that is sure; else it goes on from one side as it does there."""
    first = float(end_s[row])
    if share == 0.0:
        return first, True
    second = float(end_s[row + 1])
    if np.isfinite(first) and second - first <= JUMP_STEPS * step_s:
        return first + (second - first) * share, True
    if np.isfinite(first):
        return first + share * _slope_s(end_s, row - 1, step_s), False
    return second - (1.0 - share) * _slope_s(end_s, row + 1, step_s), False


def _slope_s(end_s: np.ndarray, row: int, step_s: float) -> float:
    """The rise from a row to the next, that of time itself where the two do not belong together."""
    if not 0 <= row < len(end_s) - 1:
        return step_s
    rise = float(end_s[row + 1] - end_s[row]) if np.isfinite(end_s[row : row + 2]).all() else np.inf
    return rise if 0.0 <= rise <= JUMP_STEPS * step_s else step_s
