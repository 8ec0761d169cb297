"""The parts of the card by name: what a frame of a layout may hold, each as blocks that are not cut in two."""

from __future__ import annotations

from dataclasses import dataclass, replace

from ..core.results.card import distinct_places, position_text
from ..core.results.swim_plan import SwimPlan
from ..words import tr
from . import card_foot
from .block import SMALL_DROP_MM, SMALL_LINE_MM, Block, ruled, stacked, wrapped
from .card_title import Sides, title
from .leg_rows import column_heads, left_out, leg_rows, positions_in_rows
from .paper import SMALL, SMALL_BOLD, Paper
from .transits_part import transits
from .turn_back_block import turn_back
from .ways_home import home_by_departure, if_late

TITLE, SKETCH = "title", "sketch"
# In the order in which a card is read. A frame names them so, whatever the language: they are in the users' files.
PARTS = (
    TITLE,
    "legs",
    "turn back",
    "flags",
    "if late",
    "home by departure",
    "foot",
    "transits",
    "positions",
    SKETCH,
    "caution",
)
NEEDED = (TITLE, "legs", "turn back", "caution")  # without these a card misleads


@dataclass(frozen=True, kw_only=True)
class Detail:
    """How much is said: lines of flags and of later headings, rows of ways home and of depths, tides and turns of the
    stream, and the parts that are left out."""

    heading_lines: int
    flag_lines: int
    late_rows: int
    home_rows: int
    home_of_all_marks: bool
    depth_rows: int
    moments: int
    leaves_out: tuple[str, ...] = ()


ALL = Detail(heading_lines=3, flag_lines=12, late_rows=5, home_rows=8, home_of_all_marks=True, depth_rows=8, moments=4)
FEWER = replace(ALL, flag_lines=6, late_rows=4, home_rows=6, home_of_all_marks=False, depth_rows=4)
FEW = replace(FEWER, heading_lines=1, flag_lines=4, late_rows=3, home_rows=4, depth_rows=2, moments=3)
NO_SKETCH = replace(FEW, late_rows=2, depth_rows=1, leaves_out=(SKETCH,))
NO_PLACES = replace(NO_SKETCH, moments=2, leaves_out=(SKETCH, "positions", "transits"))
NO_LATE = replace(NO_PLACES, late_rows=0, leaves_out=(*NO_PLACES.leaves_out, "if late"))
LESS = replace(NO_LATE, flag_lines=3, home_rows=0, depth_rows=0, leaves_out=(*NO_LATE.leaves_out, "home by departure"))
LEAST = replace(LESS, moments=0, leaves_out=(*LESS.leaves_out, "tides"))
DETAILS = (ALL, FEWER, FEW, NO_SKETCH, NO_PLACES, NO_LATE, LESS, LEAST)


@dataclass(frozen=True, kw_only=True)
class PartBlocks:
    """A part as blocks in order, and what is said again above those that go on in another frame."""

    blocks: tuple[Block, ...]
    head: Block | None = None


def part_blocks(plan: SwimPlan, width_mm: float, detail: Detail, sides: Sides, legs: int) -> dict[str, PartBlocks]:
    """Every part but the sketch, for frames so wide, with the first so many legs."""
    rows = leg_rows(plan, detail.heading_lines, width_mm)
    if legs < len(rows):
        rows = [*rows[:legs], left_out(legs + 1, len(rows), width_mm)]
    late = if_late(plan, width_mm, detail.late_rows) if detail.late_rows else []
    home = (
        home_by_departure(plan, width_mm, detail.home_rows, all_marks=detail.home_of_all_marks)
        if detail.home_rows
        else []
    )
    ending = [wrapped(_not_here(detail), width_mm, 3)] if detail.leaves_out else []
    if plan.marks_left_out:
        ending = [wrapped(left_out_words(), width_mm, 3)]
    found = {
        TITLE: [title(plan, width_mm, sides)],
        "turn back": turn_back(plan, width_mm),
        "flags": card_foot.flags(plan, detail.flag_lines, width_mm),
        "if late": late,
        "home by departure": home,
        "foot": [ruled(width_mm), *card_foot.foot(plan, width_mm, detail.depth_rows, detail.moments)],
        "transits": transits(plan, width_mm),
        "positions": [] if plan.marks_left_out or positions_in_rows(width_mm) else _positions(plan, width_mm),
        "caution": [stacked([*ending, card_foot.caution(width_mm)])],
    }
    parts = {
        name: PartBlocks(blocks=() if name in detail.leaves_out else tuple(blocks)) for name, blocks in found.items()
    }
    return {**parts, "legs": PartBlocks(blocks=tuple(rows), head=column_heads(width_mm))}


def left_out_words() -> str:
    """What a card to share says of itself."""
    return tr("Marks are left out for sharing: no positions, headings or distances.")


def _not_here(detail: Detail) -> str:
    if len(detail.leaves_out) >= len(LESS.leaves_out):
        return tr("Left out: all but the legs and limits.")
    words = {
        SKETCH: tr("sketch"),
        "positions": tr("positions"),
        "transits": tr("transits"),
        "if late": tr("ways if late"),
    }
    return tr("Not on this card: {parts}.").format(parts=", ".join(words[part] for part in detail.leaves_out))


def _positions(plan: SwimPlan, width_mm: float) -> list[Block]:
    """A line a place: its name in what the position leaves of it, on a line of its own where that is too little."""
    return [_position(place.name, position_text(place.lon, place.lat), width_mm) for place in distinct_places(plan)]


def _position(name: str, position: str, width_mm: float) -> Block:
    position_mm = SMALL.width(position)
    beside = SMALL_BOLD.width(name) <= width_mm - position_mm - 2.0

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.text(name, x, y + SMALL_DROP_MM, SMALL_BOLD, width=width_mm)
        lower = y + SMALL_DROP_MM + (0.0 if beside else SMALL_LINE_MM)
        paper.text(position, x, lower, SMALL, width=width_mm, right=True)

    return Block(height_mm=SMALL_LINE_MM * (1 if beside else 2), draw=draw)
