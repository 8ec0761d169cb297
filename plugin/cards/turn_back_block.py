"""The inverted block of the card: by when each stop must be left, and which exit to take else."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from ..core.clock import elapsed
from ..core.results.card import card_angle, clock_down, clock_up, isolated
from ..core.results.swim_plan import SwimPlan
from ..core.results.turn_back import StopTurnBack
from ..words import tr
from .block import BIG_DROP_MM, BIG_LINE_MM, SMALL_DROP_MM, SMALL_LINE_MM, Block, stacked, wrapped
from .paper import BIG, BIG_BOLD, ELLIPSIS, SMALL_BOLD, Lettering, Paper

MOST_STOPS = 12  # the rest is counted; a card that says everything is not read
ROW_MM = 2 * SMALL_LINE_MM + 1.2
WIDE_MM = 190.0  # from here on all of a stop stands side by side
CLOCK_MM, ELSE_MM = 68.0, 100.0
CLOCK_WIDTH_MM = 28.5
STATEMENT_LINES = 3
BESIDE = 2  # small lines that stand beside a large time
A_MINUTE = timedelta(minutes=1)
NEAR_IN_TIME = timedelta(minutes=10)  # a heading home changes little meanwhile; common practice, no source


def turn_back(plan: SwimPlan, width_mm: float, *, with_heading: bool = False) -> list[Block]:
    """A row for every mark with its latest leaving time; boxes to fill in by hand where none was computed.

    What the plan itself leaves too late stands first. ``with_heading``: the heading home at that time too, for a card
    that has no tables of ways home.
    """
    stops = turn_back_stops(plan)
    if not stops:
        return [_boxes(width_mm)]
    shown = stops[:MOST_STOPS]
    late = [_late_row(stop, width_mm) for stop in stops if leaves_too_late(stop)]
    said = [turn_back_words(stop) for stop in shown]
    if with_heading:
        said = [_with_heading(words, stop, plan.heading_step_deg) for words, stop in zip(said, shown)]
    common = _common(said)
    head = ", ".join((tr("TURN BACK BY"), *common))
    again = _black_head(tr("{head} (goes on)").format(head=head), width_mm)
    if width_mm >= WIDE_MM:
        rows = [_row(stop.name, words, width_mm) for stop, words in zip(shown, said)]
    else:
        rows = [_narrow_row(stop.name, words, common, width_mm) for stop, words in zip(shown, said)]
        rows[0] = stacked([_black_head(head, width_mm), rows[0]])
    rows = [rows[0], *(replace(row, again=again) for row in rows[1:])]
    if len(stops) > MOST_STOPS:
        words = tr("Turn-back times of {count} more stops: read the report.")
        rows.append(wrapped(words.format(count=len(stops) - MOST_STOPS), width_mm, 2))
    return [*late, *rows]


def leaves_too_late(stop: StopTurnBack) -> bool:
    """Whether the plan itself leaves the stop after its last safe minute on the day expected."""
    latest = _latest(stop)[0]
    return latest is not None and elapsed(latest, stop.leave) > A_MINUTE


def late_words(stop: StopTurnBack) -> str:
    """What is said of a plan that leaves a stop too late."""
    return tr("THE PLAN LEAVES TOO LATE: {clock}").format(clock=clock_up(stop.leave))


def _latest(stop: StopTurnBack) -> tuple[datetime | None, datetime | None]:
    """The last minutes, on the day expected and on a bad day: for the planned exit where that is ever safe."""
    if stop.latest_planned_exit is None:
        return stop.latest_leave, stop.latest_leave_pessimistic
    return stop.latest_planned_exit, stop.latest_planned_exit_pessimistic


def turn_back_stops(plan: SwimPlan) -> tuple[StopTurnBack, ...]:
    """The stops whose turn back a card gives: waypoints are only passed."""
    stops = () if plan.turn_back is None else plan.turn_back.stops
    return tuple(stop for stop in stops if plan.stops[stop.number].kind != "waypoint")


def _late_row(stop: StopTurnBack, width_mm: float) -> Block:
    """The gravest that a card can say, framed in white within the black."""
    room = width_mm - 8.0
    large = BIG_BOLD.wrap(_with_clock(late_words(stop)), room, 9)
    letters, line_mm, drop_mm = (BIG_BOLD, BIG_LINE_MM, BIG_DROP_MM)
    if len(large) > 2:
        large, letters = SMALL_BOLD.wrap(_with_clock(late_words(stop)), room, 2), SMALL_BOLD
        line_mm, drop_mm = SMALL_LINE_MM, SMALL_DROP_MM
    names_mm = SMALL_LINE_MM
    height = len(large) * line_mm + names_mm + 3.2

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y, width_mm, height, fill="black", edge_mm=0.2)
        paper.box(x + 1.2, y + 1.2, width_mm - 2.4, height - 2.4)
        paper.text(stop.name, x + 4.0, y + 1.4 + SMALL_DROP_MM, SMALL_BOLD, width=room)
        for number, words in enumerate(large):
            baseline = y + 1.4 + names_mm + number * line_mm + drop_mm
            paper.text(words, x + 4.0, baseline, letters, width=room)

    return Block(height_mm=height, draw=draw)


def _row(name: str, said: TurnBackWords, width_mm: float) -> Block:
    """Name, time and what it means side by side; a line for each statement."""
    room = width_mm - ELSE_MM - 2.0
    lines = [line for words in said.lines for line in SMALL_BOLD.wrap(_with_clock(words), room, 3)]
    height = max(len(lines), 2) * SMALL_LINE_MM + 1.2

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y, width_mm, height - 0.4, fill="black", edge_mm=0.2)
        upper, lower = y + SMALL_DROP_MM, y + SMALL_LINE_MM + SMALL_DROP_MM
        paper.text(name, x + 3.0, upper, SMALL_BOLD, width=CLOCK_MM - 5.0, inverted=True)
        paper.text(tr("TURN BACK BY"), x + 3.0, lower, SMALL_BOLD, inverted=True)
        baseline = y + BIG_DROP_MM + (ROW_MM - BIG_LINE_MM) / 2.0
        paper.text(said.clock, x + CLOCK_MM, baseline, BIG_BOLD, width=ELSE_MM - CLOCK_MM - 2.0, inverted=True)
        for number, words in enumerate(lines):
            baseline = y + number * SMALL_LINE_MM + SMALL_DROP_MM
            paper.text(words, x + ELSE_MM, baseline, SMALL_BOLD, width=room, inverted=True)

    return Block(height_mm=height, draw=draw)


def _common(said: list[TurnBackWords]) -> tuple[str, ...]:
    """The exit, and the day with it, that hold for every time of the block: they are said once, in its head."""
    timed = [words for words in said if words.to_exit]
    exits, days = {words.to_exit for words in timed}, {words.day for words in timed}
    if len(exits) != 1 or any(words.only for words in timed):
        return ()
    return (*exits, *(days if len(days) == 1 else ()))


def _narrow_row(name: str, said: TurnBackWords, common: tuple[str, ...], width_mm: float) -> Block:
    """The time at the right, name and statements at its left and below it.

    ``common`` is in the head and not said again.
    """
    room = width_mm - 5.0
    own = [words for words in (said.to_exit, said.day) if words and words not in common]
    statements = [words for words in (", ".join(own), *said.more) if words]
    lines = _beside_the_clock(name, statements, room - CLOCK_WIDTH_MM, room)
    height = max(len(lines), BESIDE) * SMALL_LINE_MM + 1.2

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y, width_mm, height - 0.4, fill="black", edge_mm=0.2)
        left = x + 2.5
        clock_left, baseline = left + room - CLOCK_WIDTH_MM, y + BESIDE * SMALL_LINE_MM / 2.0 + BIG.cap_mm / 2.0 + 0.4
        paper.text(said.clock, clock_left, baseline, BIG_BOLD, width=CLOCK_WIDTH_MM, right=True, inverted=True)
        for number, words in enumerate(lines):
            wide = room - CLOCK_WIDTH_MM if number < BESIDE else room
            lower = y + number * SMALL_LINE_MM + SMALL_DROP_MM + 0.4
            paper.text(words, left, lower, SMALL_BOLD, inverted=True, width=wide)

    return Block(height_mm=height, draw=draw)


def _beside_the_clock(name: str, statements: list[str], narrow_mm: float, wide_mm: float) -> list[str]:
    """The name, then the statements, as many on a line as it takes; the lines beside the time are the narrow ones."""
    lines = [SMALL_BOLD.elide(name, narrow_mm)]
    for number, statement in enumerate(map(_with_clock, statements)):
        joined = lines[-1] + (": " if number == 0 else "; ") + statement
        if SMALL_BOLD.width(joined) <= (narrow_mm if len(lines) <= BESIDE else wide_mm):
            lines[-1] = joined
            continue
        numbers = range(len(lines), len(lines) + STATEMENT_LINES)
        lines += _wrapped(statement, [narrow_mm if number < BESIDE else wide_mm for number in numbers])
    return lines


def _wrapped(words: str, widths_mm: list[float]) -> list[str]:
    """The words in lines of at most these widths, one after the other; what the last one does not take is cut."""
    lines: list[str] = []
    for width_mm in widths_mm[:-1]:
        if not words:
            return lines
        lines.append(SMALL_BOLD.wrap(words, width_mm, 2)[0])
        words = "" if lines[-1].endswith(ELLIPSIS) else words[len(lines[-1]) :].strip()
    return lines + [SMALL_BOLD.elide(words, widths_mm[-1])] if words else lines


def _with_clock(words: str) -> str:
    """The words with every time kept on the line of the word before it: it is not read alone."""
    return re.sub(r" (?=\d\d:\d\d)", "\u00a0", words)


def _black_head(words: str, width_mm: float) -> Block:
    lines = SMALL_BOLD.wrap(words, width_mm - 5.0, 4)
    height = len(lines) * SMALL_LINE_MM + 0.6  # room for feet, which the row below would cover

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y, width_mm, height + 0.4, fill="black", edge_mm=0.2)
        for number, line in enumerate(lines):
            baseline = y + number * SMALL_LINE_MM + SMALL_DROP_MM + 0.2
            paper.text(line, x + 2.5, baseline, SMALL_BOLD, width=width_mm - 5.0, inverted=True)

    return Block(height_mm=height, draw=draw)


@dataclass(frozen=True, kw_only=True)
class TurnBackWords:
    """The time in large letters, the exit it is for, which day it is of, and each further statement."""

    clock: str
    to_exit: str = ""
    day: str = ""
    more: tuple[str, ...] = ()
    only: bool = False  # later no exit is in time, the planned one neither

    @property
    def lines(self) -> tuple[str, ...]:
        """Each statement by itself."""
        return tuple(line for line in (", ".join(filter(None, (self.to_exit, self.day))), *self.more) if line)


def turn_back_words(stop: StopTurnBack) -> TurnBackWords:
    """What is said of a stop. The time is that of a bad day where there is one: it is what is read at arm's length."""
    if stop.latest_leave is None:
        return TurnBackWords(clock="--:--", more=(tr("no exit is reached in time"), tr("do not plan to be here")))
    latest, bad = _latest(stop)
    if stop.latest_planned_exit is None:
        to_exit, others = tr("ONLY TO {exit}").format(exit=isolated(stop.exit or "")), ()
    else:
        to_exit, others = tr("to {exit}").format(exit=isolated(stop.planned_exit)), (_other_exit(stop),)
    only = stop.latest_planned_exit is None
    if bad is None:
        more = (tr("on a bad day not safe at all"), *others)
        return TurnBackWords(clock=clock_down(latest), to_exit=to_exit, day=tr("as predicted"), more=more, only=only)
    day = tr("on a bad day")
    if stop.pessimistic_not_before is not None:
        day = tr("on a bad day only from {first} on").format(first=clock_up(stop.pessimistic_not_before))
    more = (tr("as predicted {clock}").format(clock=clock_down(latest)), *others)
    if elapsed(bad, stop.leave) > A_MINUTE and not leaves_too_late(stop):
        more += (tr("the plan leaves at {clock}: not on a bad day").format(clock=clock_up(stop.leave)),)
    return TurnBackWords(clock=clock_down(bad), to_exit=to_exit, day=day, more=more, only=only)


def _with_heading(said: TurnBackWords, stop: StopTurnBack, step_deg: float) -> TurnBackWords:
    """The same with the heading to hold when one leaves for the planned exit at the time in large letters.

    It is that of the row of the ways home nearest in time; none where that needs several headings or is far off.
    """
    latest, bad = _latest(stop)
    moment = latest if bad is None else bad
    if moment is None or stop.latest_planned_exit is None:
        return said
    ways = [way for way in (*stop.by_departure, *stop.if_late) if way.exit == stop.planned_exit]
    nearest = min(ways, key=lambda way: abs(elapsed(moment, way.leave)), default=None)
    if nearest is None or len(nearest.headings_mag_deg) != 1 or abs(elapsed(moment, nearest.leave)) > NEAR_IN_TIME:
        return said
    heading = f"{card_angle(nearest.headings_mag_deg[0], step_deg)}M"
    return replace(said, more=(*said.more, tr("home {heading}").format(heading=heading)))


def _other_exit(stop: StopTurnBack) -> str:
    if not stop.else_exit:
        return tr("later no exit in time")
    if stop.else_not_before is None:
        return tr("ELSE EXIT {exit}").format(exit=isolated(stop.else_exit))
    words = tr("ELSE EXIT {exit}, from {clock} on")
    return words.format(exit=isolated(stop.else_exit), clock=clock_up(stop.else_not_before))


def _boxes(width_mm: float) -> Block:
    """Room to write the turn-back time and the other exit by hand."""
    before, after = tr("TURN BACK BY"), tr("ELSE EXIT")
    words_mm = BIG_BOLD.width(before) + BIG_BOLD.width(after) + 17.0
    if words_mm > 0.75 * width_mm:
        large = all(BIG_BOLD.width(words) < 2.0 * width_mm / 3.0 - 8.0 for words in (before, after))
        return stacked([_box(words, width_mm, BIG_BOLD if large else SMALL_BOLD) for words in (before, after)])
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


def _box(words: str, width_mm: float, letters: Lettering) -> Block:
    """One of them on a line of its own."""
    height, box_mm = BIG_LINE_MM + 3.0, width_mm / 3.0

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y, width_mm, height, fill="black", edge_mm=0.2)
        paper.text(words, x + 2.5, y + 1.5 + BIG_DROP_MM, letters, width=width_mm - box_mm - 6.0, inverted=True)
        paper.box(x + width_mm - box_mm - 1.5, y + 1.2, box_mm, height - 2.4)

    return Block(height_mm=height, draw=draw)
