"""A table read a second time in another zone clashes with itself; its continuation and its own rows do not."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone

import pytest
from tideleg.core.water.second_reading import Moment, clash_of_events, clash_of_series, clash_of_waters

START = datetime(2027, 6, 5, tzinfo=timezone.utc)
HOURS = (2.1, 8.3, 14.5, 20.7, 26.9, 33.1)


def moments(kinds: tuple[str, str], shift_h: float = 0.0, step: int | None = 1) -> list[Moment]:
    return [
        Moment(
            time=START + timedelta(hours=hour + shift_h),
            row=place + 1 if step else None,
            kind=kinds[place % 2],
            height_m=(0.7, 3.9)[place % 2],
        )
        for place, hour in enumerate(HOURS)
    ]


def series(step_min: float, count: int, shift_min: float = 0.0, given: bool = True) -> list[Moment]:
    return [
        Moment(time=START + timedelta(minutes=n * step_min + shift_min), row=n + 2 if given else None)
        for n in range(count)
    ]


HELD = moments(("LW", "HW"), step=None)


@pytest.mark.parametrize("shift_h", [-12.0, -8.0, -6.0, -5.0, -1.0, 0.5, 1.0, 2.0, 3.0, 5.5, 6.0, 9.5])
def test_waters_moved_by_a_zone_clash(shift_h: float) -> None:
    clash = clash_of_waters(HELD, moments(("LW", "HW"), shift_h))
    assert clash is not None
    assert 1 <= clash.row <= len(HOURS)


def test_the_first_row_that_clashes_is_named() -> None:
    clash = clash_of_waters(HELD, moments(("LW", "HW"), -1.0))
    assert (clash.row, clash.why) == (1, "The plan has a LW 60 min later, and high and low waters alternate")


def test_the_same_waters_again_and_those_that_follow_fit() -> None:
    assert clash_of_waters(HELD, moments(("LW", "HW"))) is None
    assert clash_of_waters(HELD, moments(("LW", "HW"), 6 * 6.2)) is None
    assert clash_of_waters(HELD, moments(("LW", "HW"), 12.4)) is None  # the last two days overlap and are the same
    assert clash_of_waters([], moments(("LW", "HW"))) is None


def test_a_missing_water_may_be_filled_in() -> None:
    held = HELD[:2] + HELD[3:]
    assert clash_of_waters(held, moments(("LW", "HW"))[2:3]) is None


def test_high_waters_read_twice_clash_too() -> None:
    high = [one for one in HELD if one.kind == "HW"]
    again = [one for one in moments(("LW", "HW"), 1.0) if one.kind == "HW"]
    assert clash_of_waters(high, again).row == 2


@pytest.mark.parametrize("shift_min", [-30.0, 15.0, 345.0])
def test_a_series_between_the_steps_of_another_clashes(shift_min: float) -> None:
    assert clash_of_series(series(60.0, 24, given=False), series(60.0, 24, shift_min)) is not None


def test_a_series_that_goes_on_or_says_the_same_fits() -> None:
    held = series(60.0, 24, given=False)
    assert clash_of_series(held, series(60.0, 24)) is None
    assert clash_of_series(held, series(60.0, 24, 24 * 60.0)) is None
    assert clash_of_series(held, series(60.0, 24, 20 * 60.0)) is None
    assert clash_of_series(held, series(10.0, 24, 24 * 60.0)) is None


@pytest.mark.parametrize("shift_h", [-1.0, 0.5, 1.0, 2.0, 5.0])
def test_slacks_and_maxima_moved_by_a_zone_clash(shift_h: float) -> None:
    assert clash_of_events(moments(("slack", "max"), step=None), moments(("slack", "max"), shift_h)) is not None


def test_maxima_may_be_filled_in_between_slacks() -> None:
    both = moments(("slack", "max"), step=None)
    slacks, maxima = both[::2], moments(("slack", "max"))[1::2]
    assert clash_of_events(slacks, maxima) is None
