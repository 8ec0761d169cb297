"""The card is a stack of blocks: each knows its height before anything is drawn, so that a page can be chosen."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from .paper import BIG, SMALL, SMALL_BOLD, Lettering, Paper

# From baseline to baseline: capitals of 7 and 4 mm, feet of 1.3 mm below them, and room to tell the lines apart.
BIG_LINE_MM = 9.2
SMALL_LINE_MM = 5.8
BIG_DROP_MM = 7.9  # from the top of a line down to its baseline
SMALL_DROP_MM = 4.5


@dataclass(frozen=True, kw_only=True)
class Block:
    """A part of the card of a known height; ``draw(paper, x, y)`` puts it with its top left corner there.

    ``again`` is what must be said above it where it is the first of its part on a side; ``instead`` stands there in its
    place.
    """

    height_mm: float
    draw: Callable[[Paper, float, float], None]
    again: Block | None = None
    instead: Block | None = None


@dataclass(frozen=True, kw_only=True)
class Item:
    """A few words and a time that stay together on a line: ``HW 14:21 4.1 m``, with an arrow to ``set_deg``."""

    before: str
    clock: str
    after: str = ""
    set_deg: float | None = None

    GAP_MM = 1.6
    ARROW_MM = 8.0

    @property
    def width_mm(self) -> float:
        """Width of the whole item."""
        words = [SMALL.width(text) + self.GAP_MM for text in (self.before, self.after) if text]
        arrow = self.ARROW_MM + self.GAP_MM if self.set_deg is not None else 0.0
        return sum(words) + BIG.width(self.clock) + arrow

    def draw(self, paper: Paper, x: float, baseline: float) -> None:
        """Put the item on a baseline."""
        if self.before:
            paper.text(self.before, x, baseline, SMALL)
            x += SMALL.width(self.before) + self.GAP_MM
        paper.text(self.clock, x, baseline, BIG)
        x += BIG.width(self.clock) + self.GAP_MM
        if self.set_deg is not None:
            paper.arrow(x + self.ARROW_MM / 2.0, baseline - BIG.cap_mm / 2.0, self.ARROW_MM, self.set_deg)
            x += self.ARROW_MM + self.GAP_MM
        if self.after:
            paper.text(self.after, x, baseline, SMALL)


def stacked(blocks: list[Block]) -> Block:
    """The blocks one below the other, as one block."""

    def draw(paper: Paper, x: float, y: float) -> None:
        for block in blocks:
            block.draw(paper, x, y)
            y += block.height_mm

    return Block(height_mm=sum(block.height_mm for block in blocks), draw=draw)


def flowing(items: list[Item], width_mm: float) -> Block:
    """Items from left to right, on as many big lines as they need."""
    gap = 5.0
    lines: list[list[tuple[float, Item]]] = []
    x = width_mm
    for item in items:
        if not lines or x + item.width_mm > width_mm:
            lines.append([])
            x = 0.0
        lines[-1].append((x, item))
        x += item.width_mm + gap

    def draw(paper: Paper, left: float, top: float) -> None:
        for number, line in enumerate(lines):
            for x_mm, item in line:
                item.draw(paper, left + x_mm, top + number * BIG_LINE_MM + BIG_DROP_MM)

    return Block(height_mm=len(lines) * BIG_LINE_MM, draw=draw)


def wrapped(text: str, width_mm: float, max_lines: int = 2, *, bold: bool = False) -> Block:
    """Small text in up to so many lines."""
    letters = SMALL_BOLD if bold else SMALL
    return small_lines(letters.wrap(text, width_mm, max_lines), letters)


def small_lines(lines: list[str], letters: Lettering = SMALL) -> Block:
    """Small lines of text as they are."""

    def draw(paper: Paper, x: float, y: float) -> None:
        for number, line in enumerate(lines):
            paper.text(line, x, y + number * SMALL_LINE_MM + SMALL_DROP_MM, letters)

    return Block(height_mm=len(lines) * SMALL_LINE_MM, draw=draw)


def space(height_mm: float) -> Block:
    """Nothing, so high."""
    return Block(height_mm=height_mm, draw=lambda paper, x, y: None)


def ruled(width_mm: float) -> Block:
    """A thick rule with a little room about it."""
    return Block(height_mm=1.6, draw=lambda paper, x, y: paper.rule(x, y + 0.8, width_mm, thick_mm=0.6))
