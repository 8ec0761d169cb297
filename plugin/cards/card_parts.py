"""The parts of the card by name: what a frame of a layout may hold, each as blocks that are not cut in two."""

from __future__ import annotations

from dataclasses import dataclass

from ..core.results.card import distinct_places, isolated, position_text
from ..core.results.swim_plan import SwimPlan
from ..words import tr
from . import card_foot
from .block import SMALL_DROP_MM, SMALL_LINE_MM, Block, ruled, stacked, wrapped
from .card_detail import DEPTHS, FLAGS, HOME, LATE, POSITIONS, SKETCH, TIDES, TITLE, TRANSITS, Detail
from .card_flags import flags
from .card_title import Sides, title
from .leg_rows import column_heads, left_out, leg_rows
from .paper import SMALL, SMALL_BOLD, Paper
from .row_looks import row_look
from .transits_part import transit_stops, transits
from .turn_back_block import turn_back, turn_back_stops
from .ways_home import home_by_departure, home_marks, if_late

# In the order in which a card is read. A frame names them so, whatever the language: they are in the users' files.
PARTS = (
    TITLE,
    "legs",
    "turn back",
    FLAGS,
    LATE,
    HOME,
    "foot",
    TRANSITS,
    POSITIONS,
    SKETCH,
    "caution",
)
NEEDED = (TITLE, "legs", "turn back", "caution")  # without these a card misleads


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
    look = row_look(width_mm, low=detail.low, private=plan.marks_left_out)
    rows = leg_rows(plan, detail.heading_lines, width_mm, look)
    if legs < len(rows):
        rows = [*rows[:legs], left_out(legs + 1, len(rows), width_mm)]
    with_late = bool(detail.late_rows) and LATE not in taken_out
    late = if_late(plan, width_mm, detail.late_rows) if with_late else []
    about_home = {"all_marks": detail.home_of_all_marks, "with_late": bool(late)}
    home = home_by_departure(plan, width_mm, detail.home_rows, **about_home) if detail.home_rows else []
    of_all = bool(home) and detail.home_of_all_marks
    with_heading = detail.home_headings and not late and not of_all
    found = {
        TITLE: [title(plan, width_mm, sides, with_plan=TIDES not in detail.leaves_out)],
        "turn back": turn_back(plan, width_mm, with_heading=with_heading),
        FLAGS: flags(plan, detail.note_lines, detail.grave_lines, width_mm),
        LATE: late,
        HOME: home,
        "foot": _ruled_foot(plan, width_mm, detail),
        TRANSITS: transits(plan, width_mm),
        POSITIONS: [] if plan.marks_left_out or "position" in look.cells else _positions(plan, width_mm),
        "caution": _ending(plan, detail, taken_out, width_mm),
    }
    parts = {
        name: PartBlocks(blocks=() if name in detail.leaves_out else tuple(blocks)) for name, blocks in found.items()
    }
    heads = column_heads(width_mm, look)
    return {**parts, "legs": PartBlocks(blocks=tuple(rows), head=heads)}


def _ruled_foot(plan: SwimPlan, width_mm: float, detail: Detail) -> list[Block]:
    """The foot below a rule that stays with its first line."""
    first, *others = card_foot.foot(plan, width_mm, detail.depth_rows, detail.moments)
    return [stacked([ruled(width_mm), first]), *others]


def _ending(plan: SwimPlan, detail: Detail, taken_out: tuple[str, ...], width_mm: float) -> list[Block]:
    """What is not on the card, in words, and the caution; in one paragraph where that saves a line."""
    words = {
        SKETCH: tr("sketch"),
        POSITIONS: tr("positions"),
        TRANSITS: tr("transits"),
        LATE: tr("ways if late"),
        HOME: tr("headings home"),
        TIDES: tr("tides"),
        DEPTHS: tr("depths, line"),
        "foot": tr("alarm, tides, depths"),
        FLAGS: tr("flags"),
    }
    missing = left_out_parts(plan, detail, width_mm, taken_out)
    if LATE in missing and HOME in missing:
        words |= {LATE: tr("ways home")}
        missing = tuple(part for part in missing if part != HOME)
    named = [words[part] for part in missing if part in words]
    if not detail.home_of_all_marks and HOME not in detail.leaves_out + taken_out:
        named += [tr("HOME from {place}").format(place=isolated(stop.name)) for stop in home_marks(plan)[:-1]]
    said = [left_out_words()] if plan.marks_left_out else []
    said += [tr("Not on this card: {parts}.").format(parts=", ".join(named))] if named else []
    cautions = [card_foot.caution_words(), card_foot.short_caution_words()]
    apart = [[wrapped(text, width_mm, 6) for text in (*said, caution)] for caution in cautions]
    together = [[wrapped(" ".join((*said, caution)), width_mm, 12)] for caution in cautions]
    return [min(map(stacked, (*apart, *together)), key=lambda block: block.height_mm)]


def left_out_parts(plan: SwimPlan, detail: Detail, width_mm: float, taken_out: tuple[str, ...] = ()) -> tuple[str, ...]:
    """The parts of which this plan has something to say and that are not on the card."""
    turn_backs = turn_back_stops(plan)
    in_rows = "position" in row_look(width_mm, low=detail.low, private=plan.marks_left_out).cells
    empty = {
        SKETCH: plan.marks_left_out,
        POSITIONS: plan.marks_left_out or in_rows,
        TRANSITS: not transit_stops(plan),
        LATE: not any(stop.if_late for stop in turn_backs),
        HOME: not home_marks(plan),
        TIDES: not plan.tides and not plan.stream_turns,
        DEPTHS: not card_foot.says_depths(plan) or "foot" in taken_out,
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
