"""Turns the objects of a source into rows, one after another, asking now and then whether to stop."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TypeVar

from ..core.errors import StoppedError
from .plan_rows import PlanRow

_ASK_EVERY = 100
Thing = TypeVar("Thing")


def gather_rows(
    things: Iterable[Thing],
    rows_of: Callable[[Thing], Iterable[PlanRow]],
    *,
    total: int,
    is_cancelled: Callable[[], bool] = lambda: False,
    progress: Callable[[float], None] = lambda _share: None,
) -> list[PlanRow]:
    """The rows of all things; ``progress`` gets a share from 0 to 1. StoppedError where the user stopped."""
    rows: list[PlanRow] = []
    for number, thing in enumerate(things):
        if number % _ASK_EVERY == 0:
            if is_cancelled():
                raise StoppedError
            progress(min(1.0, number / max(total, 1)))
        rows.extend(rows_of(thing))
    return rows
