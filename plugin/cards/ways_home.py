"""Ways home on the card: by the quickest exit if late, and to the planned exit by the time of leaving."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import datetime
from itertools import groupby

from ..core.results.card import card_angle, clock_down, clock_up, isolated, whole_minutes
from ..core.results.swim_plan import SwimPlan
from ..core.results.turn_back import StopTurnBack, WayHome
from ..words import tr
from .block import Block
from .turn_back_block import turn_back_stops
from .way_blocks import WayLine, WayTable, way_blocks


def if_late(plan: SwimPlan, width_mm: float, most_rows: int) -> list[Block]:
    """The tables for leaving late as blocks that are not cut in two."""
    return [block for table in late_tables(plan, most_rows) for block in way_blocks(table, width_mm)]


def home_by_departure(
    plan: SwimPlan, width_mm: float, most_rows: int, *, all_marks: bool, with_late: bool
) -> list[Block]:
    """The tables of headings home as blocks, of every mark or of the last one alone."""
    marks = None if all_marks else {stop.number for stop in home_marks(plan)[-1:]}
    tables = home_tables(plan, most_rows, marks=marks, with_late=with_late)
    return [block for table in tables for block in way_blocks(table, width_mm)]


def late_tables(plan: SwimPlan, most_rows: int | None = None) -> list[WayTable]:
    """At every mark the quickest exit by the time of leaving, from the planned one on; one for each exit."""
    tables: list[WayTable] = []
    for stop in _marks(plan, "if_late"):
        shown = late_ways(stop, most_rows)
        for number, (exit_name, ways) in enumerate(groupby(shown, key=lambda way: way.exit)):
            words = tr("LATE at {place}: to {exit}, leave at")
            words = words.format(place=isolated(stop.name), exit=isolated(exit_name))
            short = tr("to {exit}, leave at").format(exit=isolated(exit_name)) if number else ""
            tables.append(replace(_table(words, ways, plan.heading_step_deg), short=short))
        ending = _ending(shown, stop.if_late, shown[-1].leave)
        tables[-1] = replace(tables[-1], ending=_with_count(ending, shown, stop.if_late))
    return tables


def home_tables(
    plan: SwimPlan, most_rows: int | None = None, *, marks: set[int] | None = None, with_late: bool = True
) -> list[WayTable]:
    """Headings to the planned exit by the time of leaving, of every mark or of those numbers.

    ``with_late`` says that the ways if late stand there too: rows that would only repeat them are left to them.
    """
    tables = []
    for stop in home_marks(plan):
        if marks is not None and stop.number not in marks:
            continue
        words = tr("HOME from {place} to {exit}, leave at")
        words = words.format(place=isolated(stop.name), exit=isolated(stop.planned_exit))
        ways, ending = stop.by_departure, ""
        if with_late and _late_is_home(stop):
            ways = tuple(way for way in ways if way.leave.timestamp() < stop.if_late[0].leave.timestamp())
            ending = tr("From {clock} on: see LATE.").format(clock=clock_up(stop.if_late[0].leave))
        if not ways:
            continue
        shown = _thinned(_without_runs(ways), most_rows)
        table = _table(words, shown, plan.heading_step_deg)
        last = stop.latest_planned_exit
        if last is None or last.timestamp() < shown[-1].leave.timestamp():
            last = shown[-1].leave
        if not (ending and shown[-1].safe):
            ending = _ending(shown, ways, last)
        tables.append(replace(table, ending=_with_count(ending, shown, ways)))
    return tables


def home_marks(plan: SwimPlan) -> list[StopTurnBack]:
    """The marks that have headings home by the time of leaving."""
    return _marks(plan, "by_departure")


def _late_is_home(stop: StopTurnBack) -> bool:
    """Whether leaving late always means the planned exit: its rows are then rows home."""
    return bool(stop.if_late) and all(way.exit == stop.planned_exit for way in stop.if_late)


def _table(words: str, ways: Iterable[WayHome], step_deg: float) -> WayTable:
    return WayTable(words=words, lines=tuple(way_line(way, step_deg) for way in ways))


def _ending(shown: Sequence[WayHome], ways: Sequence[WayHome], last: datetime) -> str:
    """What is said below rows of which the last is still in time; ``last`` is until when they hold."""
    if not shown[-1].safe:
        return ""
    after = [way for way in ways if way.leave.timestamp() > shown[-1].leave.timestamp()]
    if after and not after[0].safe:
        return tr("TOO LATE after {clock}").format(clock=clock_down(last))
    return tr("Later rows are not on this card: it covers leaving until {clock}.").format(
        clock=clock_down(shown[-1].leave)
    )


def _with_count(ending: str, shown: Sequence[WayHome], ways: Sequence[WayHome]) -> str:
    """The same with how many rows in time are left out between those shown."""
    moments = [way.leave.timestamp() for way in shown]
    between = sum(way.safe and min(moments) < way.leave.timestamp() < max(moments) for way in ways)
    left_out = between - sum(way.safe for way in shown if min(moments) < way.leave.timestamp() < max(moments))
    if not left_out:
        return ending
    words = tr("1 row is left out.") if left_out == 1 else tr("{count} rows are left out.").format(count=left_out)
    return f"{ending}{'' if ending.endswith('.') else '.'} {words}" if ending else words


def late_ways(stop: StopTurnBack, most_rows: int | None) -> tuple[WayHome, ...]:
    """Those from the planned leaving on; the first that comes too late stays as its warning while there is room."""
    return _thinned(_without_runs(stop.if_late), most_rows)


def _thinned(ways: tuple[WayHome, ...], most_rows: int | None) -> tuple[WayHome, ...]:
    """About so many rows, with a longer step between them: the first and the last safe one always stay."""
    if most_rows is None or len(ways) <= most_rows:
        return ways
    last = max((number for number, way in enumerate(ways) if way.safe), default=0)
    kept = range(last + 1)
    for step in range(1, len(ways) + 1):
        # A row of the step shortly before the last safe one is left to that.
        kept = [
            number
            for number in range(last + 1)
            if number in (0, last) or not ways[number].safe or (number % step == 0 and number + step // 2 <= last)
        ]
        if len(kept) <= most_rows:
            break
    return tuple(ways[number] for number in kept)


def _without_runs(ways: tuple[WayHome, ...]) -> tuple[WayHome, ...]:
    """Of several that come too late one after the other the first alone."""
    return tuple(way for number, way in enumerate(ways) if way.safe or number == 0 or ways[number - 1].safe)


def way_line(way: WayHome, step_deg: float) -> WayLine:
    """``11:45 180M  44 min``; a way that keeps no reserve says so first."""
    words, doubt = tr("{minutes} min").format(minutes=whole_minutes(way.minutes)), ""
    if not way.safe:
        doubt = tr("TOO LATE")
    elif not way.safe_pessimistic:
        doubt = tr("not on a bad day")
    headings = tuple(f"{card_angle(heading, step_deg)}M" for heading in way.headings_mag_deg)
    return WayLine(leave=clock_down(way.leave), headings=headings, words=words, doubt=doubt)


def _marks(plan: SwimPlan, table: str) -> list[StopTurnBack]:
    """The marks that have rows: one leaves them, and not the last place of the swim."""
    return [stop for stop in turn_back_stops(plan) if getattr(stop, table)]
