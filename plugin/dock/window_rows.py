"""What the dock says of departure windows: row by row, and the tide that the route needs in words."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta

from ..cards.day_words import certain_clock, named_day, state_meaning
from ..core.results.card import whole_minutes
from ..core.results.windows import DepartureWindow, WindowsFound
from ..words import tr
from .rows import Row

DEFAULT_DAYS = 14


@dataclass(frozen=True, kw_only=True)
class WindowRow(Row):
    """A window's row; ``best`` is the departure that choosing it chooses."""

    best: datetime


def default_span(day: date, last_tide: date | None) -> tuple[date, date]:
    """The first and the last day to look at: from the chosen one as far as the tides go, two weeks at most."""
    last = day + timedelta(days=DEFAULT_DAYS - 1)
    return day, last if last_tide is None else max(day, min(last, last_tide))


def window_headers() -> list[tuple[str, str]]:
    """Title and tooltip of the columns of the windows."""
    return [
        (
            tr("Day, and why it ends"),
            tr("The day on which it opens, that day's rank, and what stops later departures"),
        ),
        (tr("First,\nlast"), tr("The first and the last departure of the window, clock times in the plan's zone")),
        (tr("Best"), tr("The departure of the shortest swim: a click on the row chooses it")),
        (tr("Min"), tr("Minutes from the best departure to the end of the route, stays included, rounded up")),
    ]


def window_rows(found: WindowsFound, *, by_rank: bool) -> list[WindowRow]:
    """A row a window, those of the best days first or all in order of time."""
    ranks = {day.day: day.rank for day in found.days}
    windows = list(found.windows)
    if by_rank:
        windows.sort(key=lambda window: ranks[window.first.date()])  # windows of one day stay in order
    return [_row(window, ranks[window.first.date()]) for window in windows]


def _row(window: DepartureWindow, rank: int) -> WindowRow:
    day = window.first.date()
    words = tr("{day}, rank {rank}\n{why}").format(day=named_day(day), rank=rank, why=_sentence(window.closes.words))
    span = (_at(window.first, day, "up"), _at(window.last, day, "down"))
    return WindowRow(
        cells=(words, "\n".join(span), _at(window.best, day), whole_minutes(window.best_min)), best=window.best
    )


def _at(moment: datetime, day: date, rounding: str = "nearest") -> str:
    """A clock time; one of another day says so."""
    at = certain_clock(moment, rounding)
    return at if moment.date() == day else tr("{at}, {days} d on").format(at=at, days=(moment.date() - day).days)


def _sentence(words: str) -> str:
    return f"{words[:1].upper()}{words[1:].rstrip('. ')}."


def windows_headline(found: WindowsFound) -> str:
    """How many windows there are, or what stops the departures."""
    if found.windows:
        words = tr("{windows} windows on {days} days: {feasible} of {departures} departures can be swum")
        return words.format(
            windows=len(found.windows), days=len(found.days), feasible=found.feasible, departures=found.departures
        )
    stopped = ", ".join(f"{state_meaning(limit)} {count}" for limit, count in found.limits.items())
    return tr("None of {departures} departures can be swum: {stopped}").format(
        departures=found.departures, stopped=stopped
    )


def range_words(found: WindowsFound) -> str:
    """The range of tide at which the stream lets the route be swum."""
    needed = found.range_needed
    if needed.up_to_m is None and needed.not_at_m is None:
        return tr("The tide that the route needs is not known: no tide of a known range lies whole in this time.")
    up_to, not_at = (None if one is None else f"{one:.1f}" for one in (needed.up_to_m, needed.not_at_m))
    if up_to is None:
        return tr("The stream lets the route be swum not even at the smallest tide of this time, {} m.").format(not_at)
    if not_at is None:
        return tr("The stream lets the route be swum at every tide of this time, up to a range of {} m.").format(up_to)
    words = tr("The stream lets the route be swum at tides up to a range of {up_to} m, and not at one of {not_at} m.")
    return words.format(up_to=up_to, not_at=not_at)
