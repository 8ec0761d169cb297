"""Ways home on the card: by the quickest exit if late, and to the planned exit by the time of leaving."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import groupby

from ..core.results.card import card_angle, clock_down, whole_minutes
from ..core.results.swim_plan import SwimPlan
from ..core.results.turn_back import StopTurnBack, WayHome
from ..words import tr
from .block import BIG_DROP_MM, BIG_LINE_MM, SMALL_DROP_MM, SMALL_LINE_MM, Block, stacked, wrapped
from .paper import BIG, BIG_BOLD, SMALL, Paper
from .turn_back_block import turn_back_stops

GAP_MM = 2.0
COLUMN_GAP_MM = 6.0
HEAD_LINES = 5  # two long names must not hide which exit is meant


@dataclass(frozen=True, kw_only=True)
class WayLine:
    """A time to leave at, the headings to hold one after the other, and the rest in small words."""

    leave: str
    headings: tuple[str, ...]
    words: str


@dataclass(frozen=True, kw_only=True)
class WayTable:
    """A head in words and the rows below it."""

    words: str
    lines: tuple[WayLine, ...]


def if_late(plan: SwimPlan, width_mm: float, most_rows: int) -> list[Block]:
    """The tables for leaving late as blocks that are not cut in two."""
    return [block for table in late_tables(plan, most_rows) for block in _blocks(table, width_mm)]


def home_by_departure(plan: SwimPlan, width_mm: float, most_rows: int, *, all_marks: bool) -> list[Block]:
    """The tables of headings home as blocks, of every mark or of the last one alone."""
    tables = home_tables(plan, most_rows)[0 if all_marks else -1 :]
    return [block for table in tables for block in _blocks(table, width_mm)]


def late_tables(plan: SwimPlan, most_rows: int | None = None) -> list[WayTable]:
    """At every mark the quickest exit by the time of leaving, from the planned one on; one for each exit."""
    tables = []
    for stop in _marks(plan, "if_late"):
        for exit_name, ways in groupby(late_ways(stop, most_rows), key=lambda way: way.exit):
            words = tr("LATE at {place}: to {exit}, leave at").format(place=stop.name, exit=exit_name)
            tables.append(_table(words, ways, plan.heading_step_deg))
    return tables


def home_tables(plan: SwimPlan, most_rows: int | None = None) -> list[WayTable]:
    """Headings to the planned exit by the time of leaving, of every mark."""
    tables = []
    for stop in _marks(plan, "by_departure"):
        words = tr("HOME from {place} to {exit}, leave at").format(place=stop.name, exit=stop.planned_exit)
        tables.append(_table(words, home_ways(stop, most_rows), plan.heading_step_deg))
    return tables


def _table(words: str, ways: Iterable[WayHome], step_deg: float) -> WayTable:
    return WayTable(words=words, lines=tuple(way_line(way, step_deg) for way in ways))


def late_ways(stop: StopTurnBack, most_rows: int | None) -> tuple[WayHome, ...]:
    """Those from the planned leaving on, up to the first that comes too late, which stays as its warning."""
    return _to_first_unsafe(stop.if_late)[:most_rows]


def home_ways(stop: StopTurnBack, most_rows: int | None) -> tuple[WayHome, ...]:
    """The rows round the planned leaving where there are more than fit: half before, half after it."""
    ways = _to_first_unsafe(stop.by_departure)
    if most_rows is None:
        return ways
    before = sum(way.leave.timestamp() <= stop.leave.timestamp() for way in ways)
    first = max(min(before - most_rows // 2, len(ways) - most_rows), 0)
    return ways[first : first + most_rows]


def _to_first_unsafe(ways: tuple[WayHome, ...]) -> tuple[WayHome, ...]:
    end = next((number + 1 for number, way in enumerate(ways) if not way.safe), len(ways))
    return ways[:end]


def way_line(way: WayHome, step_deg: float) -> WayLine:
    """``11:45 180M  44 min``; a way that keeps no reserve says so first."""
    words, doubt = tr("{minutes} min").format(minutes=whole_minutes(way.minutes)), ""
    if not way.safe:
        doubt = tr("TOO LATE") + ", "
    elif not way.safe_pessimistic:
        doubt = tr("not on a bad day") + ", "
    headings = tuple(f"{card_angle(heading, step_deg)}M" for heading in way.headings_mag_deg)
    return WayLine(leave=clock_down(way.leave), headings=headings, words=doubt + words)


def _marks(plan: SwimPlan, table: str) -> list[StopTurnBack]:
    """The marks that have rows: one leaves them, and not the last place of the swim."""
    return [stop for stop in turn_back_stops(plan) if getattr(stop, table)]


def _blocks(table: WayTable, width_mm: float) -> list[Block]:
    """A head that stays with its first row, and two rows beside each other where all are short enough."""
    lines = table.lines
    half = (width_mm - COLUMN_GAP_MM) / 2.0
    if all(_big_mm(line) + GAP_MM + SMALL.width(line.words) <= half for line in lines):
        rows = [_beside(lines[at : at + 2], half) for at in range(0, len(lines), 2)]
    else:
        rows = [_one(line, width_mm) for line in lines]
    return [stacked([wrapped(table.words, width_mm, HEAD_LINES, bold=True), rows[0]]), *rows[1:]]


def _beside(lines: tuple[WayLine, ...], half_mm: float) -> Block:
    def draw(paper: Paper, x: float, y: float) -> None:
        for number, line in enumerate(lines):
            left = _draw_big(paper, line, x + number * (half_mm + COLUMN_GAP_MM), y)
            paper.text(line.words, left, y + BIG_DROP_MM, SMALL)

    return Block(height_mm=BIG_LINE_MM, draw=draw)


def _one(line: WayLine, width_mm: float) -> Block:
    """The words beside the headings where they find room there, else below them."""
    beside = _big_mm(line) + GAP_MM + SMALL.width(line.words) <= width_mm
    indent = BIG.width("00:00") + GAP_MM
    below = [] if beside else SMALL.wrap(line.words, width_mm - indent, 2)
    chunks = _headings_by_line(line, width_mm)
    rows_mm = len(chunks) * BIG_LINE_MM

    def draw(paper: Paper, x: float, y: float) -> None:
        left = x
        for number, chunk in enumerate(chunks):
            part = WayLine(leave=line.leave if number == 0 else "", headings=chunk, words="")
            start = x if number == 0 else x + indent
            left = _draw_big(paper, part, start, y + number * BIG_LINE_MM)
        if beside:
            paper.text(line.words, left, y + BIG_DROP_MM, SMALL)
        for number, words in enumerate(below):
            paper.text(words, x + indent, y + rows_mm + number * SMALL_LINE_MM + SMALL_DROP_MM, SMALL)

    return Block(height_mm=rows_mm + len(below) * SMALL_LINE_MM, draw=draw)


def _headings_by_line(line: WayLine, width_mm: float) -> list[tuple[str, ...]]:
    """The headings in lines no wider than the card."""
    room = width_mm - BIG.width("00:00") - GAP_MM
    a_line = max(int((room + GAP_MM) / (BIG_BOLD.width("000M") + GAP_MM)), 1)
    count = max(len(line.headings), 1)
    return [line.headings[at : at + a_line] for at in range(0, count, a_line)]


def _big_mm(line: WayLine) -> float:
    return BIG.width(line.leave) + sum(GAP_MM + BIG_BOLD.width(heading) for heading in line.headings)


def _draw_big(paper: Paper, line: WayLine, x: float, y: float) -> float:
    """Time and headings; returns where the words go on."""
    if line.leave:
        paper.text(line.leave, x, y + BIG_DROP_MM, BIG)
        x += BIG.width(line.leave) + GAP_MM
    for heading in line.headings:
        paper.text(heading, x, y + BIG_DROP_MM, BIG_BOLD)
        x += BIG_BOLD.width(heading) + GAP_MM
    return x
