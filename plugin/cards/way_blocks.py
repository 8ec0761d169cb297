"""How the tables of ways home are drawn: heads that are said again, short rows beside each other, doubts said once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import groupby

from ..words import tr
from .block import BIG_DROP_MM, BIG_LINE_MM, SMALL_DROP_MM, SMALL_LINE_MM, Block, stacked, wrapped
from .paper import BIG, BIG_BOLD, SMALL, Paper

GAP_MM = 2.0
COLUMN_GAP_MM = 6.0
HEAD_LINES = 5  # two long names must not hide which exit is meant


@dataclass(frozen=True, kw_only=True)
class WayLine:
    """A time to leave at, the headings to hold one after the other, and the rest in small words."""

    leave: str
    headings: tuple[str, ...]
    words: str
    doubt: str = ""

    @property
    def whole(self) -> str:
        """All that is said beside the headings: what keeps no reserve says so first."""
        return ", ".join(filter(None, (self.doubt, self.words)))


@dataclass(frozen=True, kw_only=True)
class WayTable:
    """A head in words and the rows below it; ``ending`` says what there is no row for any more.

    ``short`` is enough of a head below the table of the same mark with another exit.
    """

    words: str
    lines: tuple[WayLine, ...]
    ending: str = ""
    short: str = ""


def way_blocks(table: WayTable, width_mm: float) -> list[Block]:
    """A head that stays with its first row and is said again on the next side; two short rows beside each other."""
    half = (width_mm - COLUMN_GAP_MM) / 2.0
    goes_on = wrapped(tr("{head} (goes on)").format(head=table.words), width_mm, HEAD_LINES, bold=True)
    rows: list[Block] = []
    for doubt, run in groupby(table.lines, key=lambda line: line.doubt):
        lines, above, again = list(run), [], goes_on
        if _said_once(lines, half, width_mm):
            # Said once above all rows that it holds for, instead of beside or below each of them.
            lines = [replace(line, doubt="") for line in lines]
            above = [wrapped(f"{doubt}:", width_mm, 1, bold=True)]
        for number, row in enumerate(_rows(lines, half, width_mm)):
            rows.append(replace(stacked([*above, row]) if number == 0 else row, again=again))
            again = stacked([goes_on, *above])
    if table.ending:
        ending = wrapped(table.ending, width_mm, 3, bold=True)
        rows[-1] = replace(stacked([rows[-1], ending]), again=rows[-1].again)
    head = wrapped(table.short or table.words, width_mm, HEAD_LINES, bold=True)
    first = replace(stacked([head, rows[0]]), again=None)
    if table.short:  # on a side where the mark's first table does not stand, all of it is said
        whole = wrapped(table.words, width_mm, HEAD_LINES, bold=True)
        first = replace(first, instead=stacked([whole, rows[0]]))
    return [first, *rows[1:]]


def _fits(line: WayLine, width_mm: float) -> bool:
    return _big_mm(line) + GAP_MM + SMALL.width(line.whole) <= width_mm


def _said_once(lines: Sequence[WayLine], half_mm: float, width_mm: float) -> bool:
    """Whether rows with the same doubt take less height when that has a line of its own above them."""
    if not lines[0].doubt:
        return False
    plain = [replace(line, doubt="") for line in lines]
    apart, own = (sum(row.height_mm for row in _rows(some, half_mm, width_mm)) for some in (lines, plain))
    return own + SMALL_LINE_MM < apart - 0.01


def _rows(lines: Sequence[WayLine], half_mm: float, width_mm: float) -> list[Block]:
    """Rows one below the other, two short ones beside each other."""
    rows, waiting = [], list(lines)
    while waiting:
        if len(waiting) > 1 and all(_fits(line, half_mm) for line in waiting[:2]):
            rows.append(_beside(tuple(waiting[:2]), half_mm))
            waiting = waiting[2:]
        else:
            rows.append(_one(waiting.pop(0), width_mm))
    return rows


def _beside(lines: tuple[WayLine, ...], half_mm: float) -> Block:
    def draw(paper: Paper, x: float, y: float) -> None:
        for number, line in enumerate(lines):
            left = _draw_big(paper, line, x + number * (half_mm + COLUMN_GAP_MM), y)
            paper.text(line.whole, left, y + BIG_DROP_MM, SMALL)

    return Block(height_mm=BIG_LINE_MM, draw=draw)


def _one(line: WayLine, width_mm: float) -> Block:
    """The words beside the headings where they find room there, else below them."""
    beside = _fits(line, width_mm)
    indent = BIG.width("00:00") + GAP_MM
    below = [] if beside else SMALL.wrap(line.whole, width_mm - indent, 2)
    chunks = _headings_by_line(line, width_mm)
    rows_mm = len(chunks) * BIG_LINE_MM

    def draw(paper: Paper, x: float, y: float) -> None:
        left = x
        for number, chunk in enumerate(chunks):
            part = WayLine(leave=line.leave if number == 0 else "", headings=chunk, words="")
            start = x if number == 0 else x + indent
            left = _draw_big(paper, part, start, y + number * BIG_LINE_MM)
        if beside:
            paper.text(line.whole, left, y + BIG_DROP_MM, SMALL)
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
