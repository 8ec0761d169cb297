"""Which windows of a season get a card, and which days have none."""

from __future__ import annotations

from datetime import date, datetime, timezone
from types import SimpleNamespace

from tideleg.core.results.season import days_without, good_windows


def at(day: int, hour: float) -> datetime:
    return datetime(2027, 6, day, int(hour), round(60 * (hour % 1)), tzinfo=timezone.utc)


def window(first: datetime, last: datetime) -> SimpleNamespace:
    return SimpleNamespace(first=first, last=last, open_min=(last - first).total_seconds() / 60.0, best_min=90.0)


def found(*windows: SimpleNamespace) -> SimpleNamespace:
    """Four days from the tenth on, ranked as they come."""
    days = [SimpleNamespace(day=day) for day in dict.fromkeys(one.first.date() for one in windows)]
    return SimpleNamespace(start=at(10, 0), end=at(14, 0), windows=windows, days=days)


NIGHT, MORNING, SHORT = window(at(10, 22), at(11, 3)), window(at(12, 6), at(12, 9)), window(at(12, 18), at(12, 18.25))


def test_a_day_on_which_a_window_only_closes_has_one() -> None:
    assert days_without(found(NIGHT, MORNING)) == (date(2027, 6, 13),)


def test_a_window_of_several_days_leaves_none_of_them_without() -> None:
    assert days_without(found(window(at(10, 0), at(13, 23)))) == ()


def test_every_window_or_the_longest_of_each_day_in_the_order_of_time() -> None:
    season = found(MORNING, SHORT, NIGHT)
    assert good_windows(season, most_days=9, each=True, least_min=0.0) == (NIGHT, MORNING, SHORT)
    assert good_windows(season, most_days=9, each=False, least_min=0.0) == (NIGHT, MORNING)
    assert good_windows(season, most_days=9, each=True, least_min=30.0) == (NIGHT, MORNING)
    assert good_windows(season, most_days=1, each=True, least_min=0.0) == (MORNING, SHORT)
