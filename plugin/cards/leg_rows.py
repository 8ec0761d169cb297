"""The rows of the card: for every leg the heading and times in large letters, the rest below in small ones."""

from __future__ import annotations

from ..core.results.card import (
    card_angle,
    card_distance,
    clock_up,
    heading_changes,
    leg_state,
    position_text,
    whole_minutes,
)
from ..core.results.swim_plan import Leg, SwimPlan
from ..words import tr
from .block import BIG_DROP_MM, BIG_LINE_MM, SMALL_DROP_MM, SMALL_LINE_MM, Block, stacked
from .paper import BIG, BIG_BOLD, SMALL, SMALL_BOLD, Paper
from .row_looks import RowLook

PAIR_MM, PAIR_GAP_MM = 58.0, 3.0  # a later heading with its time
SMALL_WORDS = {
    "name": (lambda leg: leg.end_name, SMALL_BOLD),
    "bearing": (lambda leg: f"{card_angle(leg.bearing_mag_deg)}M", SMALL),
    "distance": (lambda leg: card_distance(leg.distance_m), SMALL),
    "position": (lambda leg: position_text(leg.end_lon, leg.end_lat), SMALL),
}


def column_heads(width_mm: float, look: RowLook) -> Block:
    """What the columns are, in a line or two; what explains itself beside its unit has no head."""
    words = {
        "heading": tr("HEADING"),
        "leave": tr("leave"),
        "arrive": tr("arrive"),
        "minutes": tr("min"),
        "stream": tr("set, kn"),
        "box": tr("actual"),
        "name": tr("to"),
        "bearing": tr("bearing"),
        "distance": tr("distance"),
        "position": tr("position"),
    }

    first = min(head.line for head in look.heads.values())
    lines = 2 - first

    def draw(paper: Paper, x: float, y: float) -> None:
        for key, head in look.heads.items():
            letters = SMALL_BOLD if key == "heading" else SMALL
            baseline = y + (head.line - first) * SMALL_LINE_MM + SMALL_DROP_MM
            paper.text(words[key], x + head.left, baseline, letters, width=head.width, right=head.right)
        paper.rule(x, y + lines * SMALL_LINE_MM + 0.8, width_mm, thick_mm=0.6)

    return Block(height_mm=lines * SMALL_LINE_MM + 1.6, draw=draw)


def leg_rows(plan: SwimPlan, heading_lines: int, width_mm: float, look: RowLook) -> list[Block]:
    """A row a leg; legs behind one that cannot be swum say that their times hang on it."""
    rows: list[Block] = []
    stuck: int | None = None
    for leg in plan.legs:
        rows.append(_leg_row(leg, plan, heading_lines, stuck, width_mm, look))
        stuck = leg.number if leg_state(leg) == "stuck" else stuck
    return rows


def left_out(first: int, last: int, width_mm: float) -> Block:
    """The black line for legs that no page takes."""
    words = tr("LEGS {first}-{last} ARE NOT ON THIS CARD").format(first=first, last=last)
    letters = BIG_BOLD if BIG_BOLD.width(words) < width_mm - 6.0 else SMALL_BOLD

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y + 0.5, width_mm, 11.0, fill="black")
        paper.text(words, x + 3.0, y + 9.5, letters, inverted=True, width=width_mm - 6.0)

    return Block(height_mm=12.0, draw=draw)


def _leg_row(leg: Leg, plan: SwimPlan, heading_lines: int, stuck: int | None, width_mm: float, look: RowLook) -> Block:
    """One leg: more lines where the heading changes on the way or where a reason must be given."""
    parts, indent = [_main_lines(leg, look, width_mm)], look.indent
    if leg_state(leg) == "swim":
        parts += _later_headings(leg, plan.heading_step_deg, heading_lines, width_mm, indent)
        if stuck is not None:
            parts.append(_indented(tr("Only if leg {number} could be swum.").format(number=stuck), width_mm, indent))
    elif leg.reason:
        sentence = leg.reason[:1].upper() + leg.reason[1:]
        parts += [_indented(line, width_mm, indent) for line in SMALL.wrap(sentence, width_mm - indent, 4)]
    parts.append(Block(height_mm=1.2, draw=lambda paper, x, y: paper.rule(x, y + 0.8, width_mm)))
    return stacked(parts)


def _main_lines(leg: Leg, look: RowLook, width_mm: float) -> Block:
    """A line of large letters and up to two of small ones, each word in its column."""
    swum = leg_state(leg) == "swim"

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.text(str(leg.number), x, y + BIG_DROP_MM, SMALL_BOLD)
        if swum:
            _draw_times(paper, leg, look, x, y)
            for box in look.boxes:
                paper.box(x + box.left, y + box.top + 0.7, box.width, box.height - 1.2, edge_mm=0.25)
        else:
            _draw_refusal(paper, leg_state(leg), look, x, y, width_mm)
        if "stream" in look.cells:
            _draw_stream(paper, leg, look, x, y)
        for key, (said, letters) in SMALL_WORDS.items():
            cell = look.cells.get(key)
            if cell is not None:
                paper.text(said(leg), x + cell.left, y + cell.baseline, letters, width=cell.width, right=cell.right)

    return Block(height_mm=BIG_LINE_MM + (look.lines - 1) * SMALL_LINE_MM, draw=draw)


def _draw_times(paper: Paper, leg: Leg, look: RowLook, x: float, y: float) -> None:
    baseline = y + BIG_DROP_MM
    if "heading" in look.cells:
        paper.text(leg.card_heading or "", x + look.cells["heading"].left, baseline, BIG_BOLD)
    paper.text(clock_up(leg.depart), x + look.cells["leave"].left, baseline, BIG)
    paper.text(clock_up(leg.arrive), x + look.cells["arrive"].left, baseline, BIG)
    cell, minutes = look.cells["minutes"], whole_minutes(leg.minutes)
    if cell.line:
        minutes = tr("{minutes} min").format(minutes=minutes)
    letters = SMALL if cell.line else BIG
    paper.text(minutes, x + cell.left, y + cell.baseline, letters, width=cell.width, right=True)


def _draw_refusal(paper: Paper, state: str, look: RowLook, x: float, y: float, width_mm: float) -> None:
    """White on black for the leg that stops the swim, a plain frame for those behind it."""
    words, inverted = (tr("NOT SWIMMABLE"), True) if state == "stuck" else (tr("NOT REACHED"), False)
    left = look.indent
    behind = [cell.left for key, cell in look.cells.items() if key in ("stream", "name") and cell.line == 0]
    room = min([*behind, width_mm]) - left - 6.0
    letters = BIG_BOLD if BIG_BOLD.width(words) <= room else SMALL_BOLD
    fill = "black" if inverted else "white"
    paper.box(x + left - 0.5, y + 0.3, min(letters.width(words), room) + 5.0, BIG_LINE_MM - 0.4, fill=fill)
    paper.text(words, x + left + 2.0, y + BIG_DROP_MM + 0.2, letters, inverted=inverted, width=room)


def _draw_stream(paper: Paper, leg: Leg, look: RowLook, x: float, y: float) -> None:
    cell = look.cells["stream"]
    left, baseline = x + cell.left, y + cell.baseline
    if leg.stream_kn is None or leg.stream_set_deg is None:
        if leg_state(leg) == "swim":
            paper.text(tr("not known"), left, baseline, SMALL)
        return
    rate = f"{leg.stream_kn:.1f}"
    if rate != "0.0":  # a stream of nothing goes nowhere
        middle = baseline - (BIG if cell.line == 0 else SMALL).cap_mm / 2.0
        paper.arrow(left + look.arrow_mm / 2.0, middle, look.arrow_mm, leg.stream_set_deg)
    words = rate if "stream" in look.heads else tr("{rate} kn").format(rate=rate)
    paper.text(words, left + look.arrow_mm + look.arrow_gap_mm, baseline, SMALL)


def _later_headings(leg: Leg, step_deg: float, most_lines: int, width_mm: float, indent: float) -> list[Block]:
    """``10:22 110M`` for every later heading; what does not fit in the lines is counted."""
    changes = heading_changes(leg, step_deg)
    a_line = max(int((width_mm - indent) / PAIR_MM), 1)
    shown = changes[: a_line * most_lines]
    blocks = [_pair_line(shown[at : at + a_line], indent) for at in range(0, len(shown), a_line)]
    if len(changes) > len(shown):
        words = tr("and {count} more new headings: see the report").format(count=len(changes) - len(shown))
        blocks += [_indented(line, width_mm, indent) for line in SMALL.wrap(words, width_mm - indent, 2)]
    return blocks


def _pair_line(pairs: list[tuple[str, str]], indent: float) -> Block:
    def draw(paper: Paper, x: float, y: float) -> None:
        for number, (clock, heading) in enumerate(pairs):
            left = x + indent + number * PAIR_MM
            paper.text(clock, left, y + BIG_DROP_MM, BIG)
            paper.text(heading, left + BIG.width(clock) + PAIR_GAP_MM, y + BIG_DROP_MM, BIG_BOLD)

    return Block(height_mm=BIG_LINE_MM, draw=draw)


def _indented(words: str, width_mm: float, indent: float) -> Block:
    return Block(
        height_mm=SMALL_LINE_MM,
        draw=lambda paper, x, y: paper.text(words, x + indent, y + SMALL_DROP_MM, SMALL, width=width_mm - indent),
    )
