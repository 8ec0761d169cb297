"""The parts of the card by name: what a frame of a layout may hold, each as blocks that are not cut in two."""

from __future__ import annotations

from dataclasses import dataclass, replace

from ..core.results.card import distinct_places, isolated, position_text
from ..core.results.swim_plan import SwimPlan
from ..words import tr
from . import card_foot
from .block import SMALL_DROP_MM, SMALL_LINE_MM, Block, ruled, stacked, wrapped
from .card_flags import MOST_LINES, flags
from .card_title import Sides, title
from .leg_rows import column_heads, left_out, leg_rows, positions_in_rows
from .paper import SMALL, SMALL_BOLD, Paper
from .transits_part import transit_stops, transits
from .turn_back_block import turn_back, turn_back_stops
from .ways_home import home_by_departure, home_marks, if_late

TITLE, FLAGS, SKETCH = "title", "flags", "sketch"
# In the order in which a card is read. A frame names them so, whatever the language: they are in the users' files.
PARTS = (
    TITLE,
    "legs",
    "turn back",
    FLAGS,
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
    """How much is said: lines of flags (until so many notes, until so many stops and warnings) and of later headings,
    rows of ways home and of depths, tides and turns of the stream, and the parts that are left out."""

    heading_lines: int
    note_lines: int
    late_rows: int
    home_rows: int
    depth_rows: int
    moments: int
    home_of_all_marks: bool = True
    grave_lines: int = MOST_LINES
    leaves_out: tuple[str, ...] = ()


HOME, LATE, TIDES = "home by departure", "if late", "tides"
ALL = Detail(heading_lines=3, note_lines=12, late_rows=8, home_rows=8, depth_rows=8, moments=4)
FEWER = replace(ALL, note_lines=6, late_rows=5, home_rows=5, depth_rows=4)
FEW = replace(
    FEWER, heading_lines=1, note_lines=4, late_rows=4, home_rows=4, home_of_all_marks=False, depth_rows=2, moments=3
)
NO_SKETCH = replace(FEW, note_lines=3, late_rows=3, depth_rows=1, leaves_out=(SKETCH,))
NO_PLACES = replace(NO_SKETCH, moments=2, leaves_out=(SKETCH, "positions", "transits"))
NO_HOME = replace(NO_PLACES, home_rows=0, leaves_out=(*NO_PLACES.leaves_out, HOME))
LESS = replace(NO_HOME, late_rows=2, depth_rows=0)
NO_TIDES = replace(LESS, moments=0, leaves_out=(*LESS.leaves_out, TIDES))
LEAST = replace(NO_TIDES, late_rows=0, leaves_out=(*NO_TIDES.leaves_out, LATE))
BARE = replace(LEAST, grave_lines=1)  # the gravest flag alone in words, and as many more as there is room for
DETAILS = (ALL, FEWER, FEW, NO_SKETCH, NO_PLACES, NO_HOME, LESS, NO_TIDES, LEAST, BARE)
MORE_GRAVE_LINES = (40, 30, 24, 20, 16, 13, 10, 8, 6, 5, 4, 3)


@dataclass(frozen=True, kw_only=True)
class PartBlocks:
    """A part as blocks in order, and what is said again above those that go on in another frame."""

    blocks: tuple[Block, ...]
    head: Block | None = None


def part_blocks(
    plan: SwimPlan, width_mm: float, detail: Detail, sides: Sides, legs: int, taken_out: tuple[str, ...] = ()
) -> dict[str, PartBlocks]:
    """Every part but the sketch, for frames so wide, with the first so many legs.

    ``taken_out`` are parts that the layout's maker has no frame for.
    """
    rows = leg_rows(plan, detail.heading_lines, width_mm)
    if legs < len(rows):
        rows = [*rows[:legs], left_out(legs + 1, len(rows), width_mm)]
    with_late = bool(detail.late_rows) and LATE not in taken_out
    late = if_late(plan, width_mm, detail.late_rows) if with_late else []
    about_home = {"all_marks": detail.home_of_all_marks, "with_late": bool(late)}
    home = home_by_departure(plan, width_mm, detail.home_rows, **about_home) if detail.home_rows else []
    found = {
        TITLE: [title(plan, width_mm, sides, with_plan=TIDES not in detail.leaves_out)],
        "turn back": turn_back(plan, width_mm),
        FLAGS: flags(plan, detail.note_lines, detail.grave_lines, width_mm),
        LATE: late,
        HOME: home,
        "foot": [ruled(width_mm), *card_foot.foot(plan, width_mm, detail.depth_rows, detail.moments)],
        "transits": transits(plan, width_mm),
        "positions": [] if plan.marks_left_out or positions_in_rows(width_mm) else _positions(plan, width_mm),
        "caution": [stacked([*_ending(plan, detail, taken_out, width_mm), card_foot.caution(width_mm)])],
    }
    parts = {
        name: PartBlocks(blocks=() if name in detail.leaves_out else tuple(blocks)) for name, blocks in found.items()
    }
    heads = column_heads(width_mm, private=plan.marks_left_out)
    return {**parts, "legs": PartBlocks(blocks=tuple(rows), head=heads)}


def _ending(plan: SwimPlan, detail: Detail, taken_out: tuple[str, ...], width_mm: float) -> list[Block]:
    """What is not on the card, in words."""
    if plan.marks_left_out:
        return [wrapped(left_out_words(), width_mm, 3)]
    words = {
        SKETCH: tr("sketch"),
        "positions": tr("positions"),
        "transits": tr("transits"),
        LATE: tr("ways if late"),
        HOME: tr("headings home"),
        TIDES: tr("tides, depths"),
        "foot": tr("alarm, tides, depths"),
        FLAGS: tr("flags"),
    }
    missing = left_out_parts(plan, detail, taken_out)
    if LATE in missing and HOME in missing:
        words |= {LATE: tr("ways home")}
        missing = tuple(part for part in missing if part != HOME)
    named = [words[part] for part in missing if part in words]
    if not detail.home_of_all_marks and HOME not in detail.leaves_out + taken_out:
        named += [tr("HOME from {place}").format(place=isolated(stop.name)) for stop in home_marks(plan)[:-1]]
    return [wrapped(tr("Not on this card: {parts}.").format(parts=", ".join(named)), width_mm, 6)] if named else []


def left_out_parts(plan: SwimPlan, detail: Detail, taken_out: tuple[str, ...] = ()) -> tuple[str, ...]:
    """The parts of which this plan has something to say and that are not on the card."""
    turn_backs = turn_back_stops(plan)
    empty = {
        "transits": not transit_stops(plan),
        LATE: not any(stop.if_late for stop in turn_backs),
        HOME: not home_marks(plan),
    }
    both = dict.fromkeys((*detail.leaves_out, *taken_out))
    return tuple(part for part in both if not empty.get(part))


def left_out_words() -> str:
    """What a card to share says of itself."""
    return tr("Marks are left out for sharing: no positions, headings or distances.")


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
