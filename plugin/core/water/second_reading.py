"""Whether rows that are read fit among those a plan holds already: the same table read in another zone does not."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import groupby

import numpy as np

from ..words import marked, spoken, tr
from .tide import LONGEST_GAP_S, MISSING_ROW_S

# Waters, or slack and maximum, are hours apart; nearer ones are one and the same, moved. Rule of thumb, no source.
NEAREST_S = 1.5 * 3600.0
NEAREST_SLACKS_S = 4.0 * 3600.0
NEAREST_STEP = 0.9  # of the finer of two steps
_KINDS = {"slack": marked("slack"), "max": marked("max")}  # HW and LW are letters in every language


@dataclass(frozen=True, kw_only=True)
class Moment:
    """One row: its moment in UTC, its line in the text (None for one the plan holds), and what it says.

    ``kind`` is HW or LW, slack or max, "" in a series; ``height_m`` None where it has none.
    """

    time: datetime
    row: int | None = None
    kind: str = ""
    height_m: float | None = None


@dataclass(frozen=True, kw_only=True)
class Clash:
    """The first line of a text that does not fit beside a row of the plan, and why."""

    row: int
    time: datetime
    why: str


def clash_of_waters(held: Iterable[Moment], given: Iterable[Moment]) -> Clash | None:
    """The first high or low water that does not alternate with the plan's, or stands too near to one of them."""
    for mine, other in _neighbours(held, given):
        apart_s = abs((mine.time - other.time).total_seconds())
        if mine.kind == other.kind and apart_s <= MISSING_ROW_S:
            return _clash(mine, other, tr("high and low waters alternate"))
        if mine.kind != other.kind and apart_s < NEAREST_S:
            return _clash(mine, other, tr("high and low waters are hours apart"))
        if mine.kind != other.kind and apart_s <= LONGEST_GAP_S and _is_upside_down(mine, other):
            return _clash(mine, other, tr("high waters are higher than the low ones beside them"))
    return None


def clash_of_events(held: Iterable[Moment], given: Iterable[Moment]) -> Clash | None:
    """The first slack or maximum that stands too near to one of the plan's."""
    for mine, other in _neighbours(held, given):
        slacks = mine.kind == other.kind == "slack"
        if abs((mine.time - other.time).total_seconds()) < (NEAREST_SLACKS_S if slacks else NEAREST_S):
            return _clash(mine, other, tr("slacks and maxima are hours apart"))
    return None


def clash_of_series(held: Iterable[Moment], given: Iterable[Moment]) -> Clash | None:
    """The first row of a series that stands between the steps of the plan's."""
    held, given = list(held), list(given)
    steps = [step for step in (_step_s(held), _step_s(given)) if step]
    for mine, other in _neighbours(held, given) if steps else ():
        if abs((mine.time - other.time).total_seconds()) < NEAREST_STEP * min(steps):
            return _clash(mine, other, tr("a series goes in even steps"))
    return None


def _neighbours(held: Iterable[Moment], given: Iterable[Moment]) -> list[tuple[Moment, Moment]]:
    """Pairs of a given row and one of the plan's that follow each other, in order of time.

    A row that both have says the same thing in both: it stands for either.
    """
    both = sorted([*held, *given], key=lambda one: one.time)
    moments = [list(group) for _time, group in groupby(both, key=lambda one: one.time)]
    pairs = []
    for before, after in zip(moments, moments[1:]):
        for mine, other in ((before, after), (after, before)):
            mine_given, other_held = _of_one_side(mine, True), _of_one_side(other, False)
            if mine_given is not None and other_held is not None:
                pairs.append((mine_given, other_held))
    return pairs


def _of_one_side(moment: Sequence[Moment], is_given: bool) -> Moment | None:
    """The row of a moment that only the text, or only the plan has."""
    sides = {one.row is not None for one in moment}
    return moment[0] if sides == {is_given} else None


def _step_s(rows: Sequence[Moment]) -> float:
    times = sorted({one.time for one in rows})
    steps = [(after - before) / timedelta(seconds=1) for before, after in zip(times, times[1:])]
    return float(np.median(steps)) if steps else 0.0


def _is_upside_down(mine: Moment, other: Moment) -> bool:
    if mine.height_m is None or other.height_m is None:
        return False
    return (mine.height_m - other.height_m) * (1.0 if mine.kind == "HW" else -1.0) < 0.0


def _clash(mine: Moment, other: Moment, rule: str) -> Clash:
    minutes = abs((mine.time - other.time).total_seconds()) / 60.0
    apart = f"{minutes:.0f} min" if minutes < 90.0 else f"{minutes / 60.0:.1f} h"
    kind = spoken(_KINDS[other.kind]) if other.kind in _KINDS else other.kind
    held = _held(other.kind, other.time > mine.time).format(kind=kind, apart=apart)
    return Clash(row=mine.row or 0, time=mine.time, why=tr("{held}, and {rule}").format(held=held, rule=rule))


def _held(kind: str, is_later: bool) -> str:
    """What stands in the plan beside a row, ``{kind}`` and ``{apart}`` still to be filled in."""
    if kind:
        return tr("The plan has a {kind} {apart} later") if is_later else tr("The plan has a {kind} {apart} earlier")
    return tr("The plan has a row {apart} later") if is_later else tr("The plan has a row {apart} earlier")
