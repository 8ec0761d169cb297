"""What stands above the rows of the card, on its first side and on the later ones."""

from __future__ import annotations

from dataclasses import dataclass

from ..core.results.card import clock_up, day_text, isolated, offset_text
from ..core.results.swim_plan import SwimPlan
from ..words import tr
from .block import SMALL_DROP_MM, SMALL_LINE_MM, Block, space, stacked, wrapped
from .paper import SMALL_BOLD, Paper

LEAST_NAME_MM = 40.0  # a name cut shorter tells nothing
SIDE = "0/0"  # as wide as the stamp that counts the sides


@dataclass
class Sides:
    """How many sides the card has, known only when everything has found its place."""

    count: int = 1


def title(plan: SwimPlan, width_mm: float, sides: Sides, *, with_plan: bool = True) -> Block:
    """Route, day, zone, swimmer and entry; the zone is said here and nowhere else. ``with_plan``: the plan's title
    too."""
    stamps = _stamps(plan)
    about = [day_text(plan.depart), tr("times in {zone}").format(zone=f"{plan.zone} ({offset_text(plan.depart)})")]
    about += [tr("swimmer {name}").format(name=isolated(plan.swimmer))] if plan.swimmer else []
    entry = [tr("from {name}").format(name=isolated(leg.start_name)) for leg in plan.legs[:1]]
    room = width_mm - _stamps_mm([*stamps, SIDE]) - 2.0
    name = ", ".join([isolated(plan.route), *entry])
    if SMALL_BOLD.width(name) > room:  # the entry is better whole on the next line than cut here
        name, about = plan.route, [*entry, *about]
    below = []
    if SMALL_BOLD.width(name) > room:  # and so is the name
        below = [wrapped(name, width_mm, 2, bold=True)]
        name = ""
    head = [_stamped(name, stamps, width_mm, 1, sides), *below]
    said = ", ".join(about)
    apart = [wrapped(said, width_mm, 4)]
    if plan.title and with_plan:  # the plan's title goes on in the line where that saves one
        apart.append(wrapped(plan.title, width_mm, 2))
        apart = min(apart, [wrapped(f"{said}. {plan.title}", width_mm, 6)], key=_lines_mm)
    return stacked([*head, *apart, space(1.0)])


def _lines_mm(blocks: list[Block]) -> float:
    return sum(block.height_mm for block in blocks)


def running_title(plan: SwimPlan, width_mm: float, sides: Sides, side: int) -> Block:
    """What stands above the later sides, so that two cards of a day are not mixed up."""
    stamps = _stamps(plan)
    short = f"{clock_up(plan.depart)}, {isolated(plan.route)}"
    names = (f"{day_text(plan.depart)} {short}", short)
    room = width_mm - _stamps_mm([*stamps, SIDE]) - 2.0
    name = next((name for name in names if SMALL_BOLD.width(name) <= room), names[-1])
    below = []
    if room < min(LEAST_NAME_MM, SMALL_BOLD.width(name)):
        name, below = "", [wrapped(name, width_mm, 1, bold=True)]
    return stacked([_stamped(name, stamps, width_mm, side, sides), *below, space(1.0)])


def _stamps(plan: SwimPlan) -> list[str]:
    return [tr("PREDICTED")] if plan.feasible else [tr("NOT FEASIBLE"), tr("PREDICTED")]


def _stamps_mm(stamps: list[str]) -> float:
    return sum(SMALL_BOLD.width(stamp) + 6.0 for stamp in stamps)


def _stamped(name: str, stamps: list[str], width_mm: float, side: int, sides: Sides) -> Block:
    """A name at the left and white-on-black stamps at the right, the side's number first; in two lines where they
    are too many for one."""
    lines = [[SIDE, *stamps]]
    if _stamps_mm(lines[0]) - 2.0 > width_mm:
        lines = [[SIDE, *stamps[:-1]], stamps[-1:]]

    def draw(paper: Paper, x: float, y: float) -> None:
        for number, line in enumerate(lines):
            shown = [f"{side}/{sides.count}" if stamp == SIDE else stamp for stamp in line]
            draw_line(paper, x, y + number * line_mm, shown, "" if number else name)

    def draw_line(paper: Paper, x: float, y: float, shown: list[str], name: str) -> None:
        left = x + width_mm - _stamps_mm(shown) + 2.0
        paper.text(name, x, y + SMALL_DROP_MM + 0.4, SMALL_BOLD, width=left - x - 2.0)
        for stamp in shown:
            width = SMALL_BOLD.width(stamp) + 4.0
            paper.box(left, y, width, SMALL_LINE_MM + 0.6, fill="black")
            paper.text(stamp, left + 2.0, y + SMALL_DROP_MM + 0.4, SMALL_BOLD, inverted=True)
            left += width + 2.0

    line_mm = SMALL_LINE_MM + 1.0
    return Block(height_mm=len(lines) * line_mm, draw=draw)
