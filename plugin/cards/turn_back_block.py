"""The inverted block of the card: by when each stop must be left, and which exit to take else."""

from __future__ import annotations

from datetime import datetime, timedelta

from ..core.clock import later
from ..core.results.card import clock_down, clock_up
from ..core.results.swim_plan import SwimPlan
from ..core.results.turn_back import StopTurnBack
from ..words import tr
from .block import BIG_DROP_MM, BIG_LINE_MM, SMALL_DROP_MM, SMALL_LINE_MM, Block, small_lines, stacked
from .leg_rows import ROW_WIDTH_MM
from .paper import BIG_BOLD, SMALL_BOLD, Paper

MOST_STOPS = 12  # the rest is counted; a card that says everything is not read
ROW_MM = 2 * SMALL_LINE_MM + 1.2
CLOCK_MM, ELSE_MM = 68.0, 100.0


def turn_back(plan: SwimPlan) -> Block:
    """A row for every mark with its latest leaving time; boxes to fill in by hand where none was computed."""
    stops = turn_back_stops(plan)
    if not stops:
        return _boxes()
    rows = [_row(stop) for stop in stops[:MOST_STOPS]]
    if len(stops) > MOST_STOPS:
        words = tr("Turn-back times of {count} more stops: read the report.")
        rows.append(small_lines([words.format(count=len(stops) - MOST_STOPS)]))
    return stacked(rows)


def turn_back_stops(plan: SwimPlan) -> tuple[StopTurnBack, ...]:
    """The stops whose turn back a card gives: waypoints are only passed."""
    stops = () if plan.turn_back is None else plan.turn_back.stops
    return tuple(stop for stop in stops if plan.stops[stop.number].kind != "waypoint")


def _row(stop: StopTurnBack) -> Block:
    clock, beside = turn_back_words(stop)

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y, ROW_WIDTH_MM, ROW_MM - 0.4, fill="black", edge_mm=0.2)
        upper, lower = y + SMALL_DROP_MM, y + SMALL_LINE_MM + SMALL_DROP_MM
        paper.text(stop.name, x + 3.0, upper, SMALL_BOLD, width=CLOCK_MM - 5.0, inverted=True)
        paper.text(tr("TURN BACK BY"), x + 3.0, lower, SMALL_BOLD, inverted=True)
        baseline = y + BIG_DROP_MM + (ROW_MM - BIG_LINE_MM) / 2.0
        paper.text(clock, x + CLOCK_MM, baseline, BIG_BOLD, width=ELSE_MM - CLOCK_MM - 2.0, inverted=True)
        for words, line in zip(beside, (upper, lower)):
            paper.text(words, x + ELSE_MM, line, SMALL_BOLD, width=ROW_WIDTH_MM - ELSE_MM - 2.0, inverted=True)

    return Block(height_mm=ROW_MM, draw=draw)


def turn_back_words(stop: StopTurnBack) -> tuple[str, tuple[str, str]]:
    """The time in large letters, and the two lines beside it."""
    if stop.latest_leave is None:
        return "--:--", (tr("no exit is reached in time"), tr("do not plan to be here"))
    if stop.latest_planned_exit is None:
        latest, bad, other = stop.latest_leave, stop.latest_leave_pessimistic, tr("ONLY TO {exit}")
        other = other.format(exit=stop.exit)
    else:
        latest, bad = stop.latest_planned_exit, stop.latest_planned_exit_pessimistic
        other = tr("ELSE EXIT {exit}").format(exit=stop.else_exit) if stop.else_exit else tr("no other exit in time")
    bad_day = tr("on a bad day {clock}").format(clock=_clock(bad))
    if stop.pessimistic_not_before is not None and bad is not None:
        bad_day = tr("bad day: from {first} to {last}")
        bad_day = bad_day.format(first=clock_up(stop.pessimistic_not_before), last=clock_down(bad))
    if stop.leave > later(latest, timedelta(minutes=1)):
        bad_day = tr("THE PLAN LEAVES AT {clock}").format(clock=clock_up(stop.leave))
    return clock_down(latest), (other, bad_day)


def _clock(moment: datetime | None) -> str:
    return tr("not safe at all") if moment is None else clock_down(moment)


def _boxes() -> Block:
    """Room to write the turn-back time and the other exit by hand."""
    before, after = tr("TURN BACK BY"), tr("ELSE EXIT")
    height = BIG_LINE_MM + 4.0

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y + 1.0, ROW_WIDTH_MM, height - 2.0, fill="black")
        left, baseline = x + 3.0, y + 2.0 + BIG_DROP_MM
        box_width = (ROW_WIDTH_MM - BIG_BOLD.width(before) - BIG_BOLD.width(after) - 17.0) / 2.0
        for words in (before, after):
            paper.text(words, left, baseline, BIG_BOLD, inverted=True)
            left += BIG_BOLD.width(words) + 3.0
            paper.box(left, y + 2.2, box_width, height - 4.4)
            left += box_width + 5.0

    return Block(height_mm=height, draw=draw)
