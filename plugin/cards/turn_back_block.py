"""The inverted block of the card: by when each stop must be left, and which exit to take else."""

from __future__ import annotations

import re
from datetime import datetime, timedelta

from ..core.clock import elapsed
from ..core.results.card import clock_down, clock_up
from ..core.results.swim_plan import SwimPlan
from ..core.results.turn_back import StopTurnBack
from ..words import tr
from .block import BIG_DROP_MM, BIG_LINE_MM, SMALL_DROP_MM, SMALL_LINE_MM, Block, stacked, wrapped
from .paper import BIG_BOLD, SMALL_BOLD, Paper

MOST_STOPS = 12  # the rest is counted; a card that says everything is not read
ROW_MM = 2 * SMALL_LINE_MM + 1.2
WIDE_MM = 190.0  # from here on all of a stop stands side by side
CLOCK_MM, ELSE_MM = 68.0, 100.0
CLOCK_WIDTH_MM = 31.0


def turn_back(plan: SwimPlan, width_mm: float) -> list[Block]:
    """A row for every mark with its latest leaving time; boxes to fill in by hand where none was computed."""
    stops = turn_back_stops(plan)
    if not stops:
        return [_boxes(width_mm)]
    shown = stops[:MOST_STOPS]
    if width_mm >= WIDE_MM:
        rows = [_row(stop, width_mm) for stop in shown]
    else:
        rows = [_narrow_row(stop, width_mm) for stop in shown]
        rows[0] = stacked([_black_head(tr("TURN BACK BY"), width_mm), rows[0]])
    if len(stops) > MOST_STOPS:
        words = tr("Turn-back times of {count} more stops: read the report.")
        rows.append(wrapped(words.format(count=len(stops) - MOST_STOPS), width_mm, 2))
    return rows


def turn_back_stops(plan: SwimPlan) -> tuple[StopTurnBack, ...]:
    """The stops whose turn back a card gives: waypoints are only passed."""
    stops = () if plan.turn_back is None else plan.turn_back.stops
    return tuple(stop for stop in stops if plan.stops[stop.number].kind != "waypoint")


def _row(stop: StopTurnBack, width_mm: float) -> Block:
    clock, beside = turn_back_words(stop)

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y, width_mm, ROW_MM - 0.4, fill="black", edge_mm=0.2)
        upper, lower = y + SMALL_DROP_MM, y + SMALL_LINE_MM + SMALL_DROP_MM
        paper.text(stop.name, x + 3.0, upper, SMALL_BOLD, width=CLOCK_MM - 5.0, inverted=True)
        paper.text(tr("TURN BACK BY"), x + 3.0, lower, SMALL_BOLD, inverted=True)
        baseline = y + BIG_DROP_MM + (ROW_MM - BIG_LINE_MM) / 2.0
        paper.text(clock, x + CLOCK_MM, baseline, BIG_BOLD, width=ELSE_MM - CLOCK_MM - 2.0, inverted=True)
        for words, line in zip(beside, (upper, lower)):
            paper.text(words, x + ELSE_MM, line, SMALL_BOLD, width=width_mm - ELSE_MM - 2.0, inverted=True)

    return Block(height_mm=ROW_MM, draw=draw)


def _narrow_row(stop: StopTurnBack, width_mm: float) -> Block:
    """The time at the right of the name; the other exit and the bad day below."""
    clock, beside = turn_back_words(stop)
    room = width_mm - 5.0
    # A time is not read alone on a line: it stays with the word before it.
    lines = SMALL_BOLD.wrap(re.sub(r" (?=\d\d:\d\d)", "\u00a0", ", ".join(beside)), room, 3)
    height = BIG_LINE_MM + len(lines) * SMALL_LINE_MM + 0.8

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y, width_mm, height - 0.4, fill="black", edge_mm=0.2)
        left, baseline = x + 2.5, y + BIG_DROP_MM + 0.6
        paper.text(stop.name, left, baseline, SMALL_BOLD, width=room - CLOCK_WIDTH_MM, inverted=True)
        clock_left = left + room - CLOCK_WIDTH_MM
        paper.text(clock, clock_left, baseline, BIG_BOLD, width=CLOCK_WIDTH_MM, right=True, inverted=True)
        for number, words in enumerate(lines):
            lower = y + BIG_LINE_MM + number * SMALL_LINE_MM + SMALL_DROP_MM
            paper.text(words, left, lower, SMALL_BOLD, inverted=True, width=room)

    return Block(height_mm=height, draw=draw)


def _black_head(words: str, width_mm: float) -> Block:
    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y, width_mm, SMALL_LINE_MM + 0.4, fill="black", edge_mm=0.2)
        paper.text(words, x + 2.5, y + SMALL_DROP_MM + 0.4, SMALL_BOLD, width=width_mm - 5.0, inverted=True)

    return Block(height_mm=SMALL_LINE_MM, draw=draw)


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
    if elapsed(latest, stop.leave) > timedelta(minutes=1):
        bad_day = tr("THE PLAN LEAVES AT {clock}").format(clock=clock_up(stop.leave))
    return clock_down(latest), (other, bad_day)


def _clock(moment: datetime | None) -> str:
    return tr("not safe at all") if moment is None else clock_down(moment)


def _boxes(width_mm: float) -> Block:
    """Room to write the turn-back time and the other exit by hand."""
    before, after = tr("TURN BACK BY"), tr("ELSE EXIT")
    words_mm = BIG_BOLD.width(before) + BIG_BOLD.width(after) + 17.0
    if words_mm > 0.75 * width_mm:
        return stacked([_box(words, width_mm) for words in (before, after)])
    height = BIG_LINE_MM + 4.0

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y + 1.0, width_mm, height - 2.0, fill="black")
        left, baseline = x + 3.0, y + 2.0 + BIG_DROP_MM
        box_width = (width_mm - words_mm) / 2.0
        for words in (before, after):
            paper.text(words, left, baseline, BIG_BOLD, inverted=True)
            left += BIG_BOLD.width(words) + 3.0
            paper.box(left, y + 2.2, box_width, height - 4.4)
            left += box_width + 5.0

    return Block(height_mm=height, draw=draw)


def _box(words: str, width_mm: float) -> Block:
    """One of them on a line of its own."""
    height, box_mm = BIG_LINE_MM + 3.0, width_mm / 3.0
    letters = BIG_BOLD if BIG_BOLD.width(words) < width_mm - box_mm - 8.0 else SMALL_BOLD

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y, width_mm, height, fill="black", edge_mm=0.2)
        paper.text(words, x + 2.5, y + 1.5 + BIG_DROP_MM, letters, width=width_mm - box_mm - 6.0, inverted=True)
        paper.box(x + width_mm - box_mm - 1.5, y + 1.2, box_mm, height - 2.4)

    return Block(height_mm=height, draw=draw)
