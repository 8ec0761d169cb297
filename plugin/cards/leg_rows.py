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

ROW_WIDTH_MM = 194.0
# Left edges of the columns of the first line, then of the second.
HEADING, LEAVE, ARRIVE, MINUTES, SET, BOX_1, BOX_2 = 10.0, 43.0, 72.0, 100.0, 124.0, 152.0, 174.0
NAME, BEARING, DISTANCE, POSITION = 10.0, 72.0, 92.0, 124.0
MINUTES_WIDTH, DISTANCE_WIDTH, BOX_WIDTH = 18.0, 26.0, 20.0
ARROW_MM = 8.0
PAIRS_A_LINE = 3


def column_heads() -> Block:
    """What the columns are, in the two lines of a row."""
    first = ((HEADING, tr("HEADING")), (LEAVE, tr("leave")), (ARRIVE, tr("arrive")), (SET, tr("set, kn")))
    second = ((NAME, tr("to")), (BEARING, tr("bearing")), (POSITION, tr("position")))

    def draw(paper: Paper, x: float, y: float) -> None:
        upper, lower = y + SMALL_DROP_MM, y + SMALL_LINE_MM + SMALL_DROP_MM
        for left, word in first:
            paper.text(word, x + left, upper, SMALL_BOLD if left == HEADING else SMALL)
        paper.text(tr("min"), x + MINUTES, upper, SMALL, width=MINUTES_WIDTH, right=True)
        paper.text(tr("actual times"), x + BOX_1, upper, SMALL, width=ROW_WIDTH_MM - BOX_1)
        for left, word in second:
            paper.text(word, x + left, lower, SMALL)
        paper.text(tr("distance"), x + DISTANCE, lower, SMALL, width=DISTANCE_WIDTH, right=True)
        paper.rule(x, y + 2 * SMALL_LINE_MM + 0.8, ROW_WIDTH_MM, thick_mm=0.6)

    return Block(height_mm=2 * SMALL_LINE_MM + 1.6, draw=draw)


def leg_rows(plan: SwimPlan, heading_lines: int) -> list[Block]:
    """A row a leg; legs behind one that cannot be swum say that their times hang on it."""
    rows: list[Block] = []
    stuck: int | None = None
    for leg in plan.legs:
        rows.append(_leg_row(leg, plan.heading_step_deg, heading_lines, stuck))
        stuck = leg.number if leg_state(leg) == "stuck" else stuck
    return rows


def _leg_row(leg: Leg, step_deg: float, heading_lines: int, stuck: int | None) -> Block:
    """One leg: two lines, more where the heading changes on the way or where a reason must be given."""
    parts = [_first_line(leg), _second_line(leg)]
    if leg_state(leg) == "swim":
        parts += _later_headings(leg, step_deg, heading_lines)
        parts += [] if stuck is None else [_indented(tr("Only if leg {number} could be swum.").format(number=stuck))]
    elif leg.reason:
        parts.append(_reason(leg.reason))
    parts.append(Block(height_mm=1.2, draw=lambda paper, x, y: paper.rule(x, y + 0.8, ROW_WIDTH_MM)))
    return stacked(parts)


def _first_line(leg: Leg) -> Block:
    state = leg_state(leg)

    def draw(paper: Paper, x: float, y: float) -> None:
        baseline = y + BIG_DROP_MM
        paper.text(str(leg.number), x, baseline, SMALL_BOLD)
        if state == "swim":
            _draw_times(paper, leg, x, baseline)
        else:
            _draw_refusal(paper, state, x, y)
        _draw_stream(paper, leg, x, baseline)
        if state == "swim":
            for left in (BOX_1, BOX_2):
                paper.box(x + left, y + 0.7, BOX_WIDTH, BIG_LINE_MM - 1.2, edge_mm=0.25)

    return Block(height_mm=BIG_LINE_MM, draw=draw)


def _draw_times(paper: Paper, leg: Leg, x: float, baseline: float) -> None:
    paper.text(leg.card_heading or "", x + HEADING, baseline, BIG_BOLD)
    paper.text(clock_up(leg.depart), x + LEAVE, baseline, BIG)
    paper.text(clock_up(leg.arrive), x + ARRIVE, baseline, BIG)
    paper.text(whole_minutes(leg.minutes), x + MINUTES, baseline, BIG, width=MINUTES_WIDTH, right=True)


def _draw_refusal(paper: Paper, state: str, x: float, y: float) -> None:
    """White on black for the leg that stops the swim, a plain frame for those behind it."""
    words, inverted = (tr("NOT SWIMMABLE"), True) if state == "stuck" else (tr("NOT REACHED"), False)
    fill = "black" if inverted else "white"
    paper.box(x + HEADING - 0.5, y + 0.3, BIG_BOLD.width(words) + 5.0, BIG_LINE_MM - 0.4, fill=fill)
    paper.text(words, x + HEADING + 2.0, y + BIG_DROP_MM + 0.2, BIG_BOLD, inverted=inverted)


def _draw_stream(paper: Paper, leg: Leg, x: float, baseline: float) -> None:
    if leg.stream_kn is None or leg.stream_set_deg is None:
        if leg_state(leg) == "swim":
            paper.text(tr("not known"), x + SET, baseline, SMALL)
        return
    rate = f"{leg.stream_kn:.1f}"
    if rate != "0.0":  # a stream of nothing goes nowhere
        paper.arrow(x + SET + ARROW_MM / 2.0, baseline - BIG.cap_mm / 2.0, ARROW_MM, leg.stream_set_deg)
    paper.text(rate, x + SET + ARROW_MM + 3.0, baseline, SMALL)


def _second_line(leg: Leg) -> Block:
    def draw(paper: Paper, x: float, y: float) -> None:
        baseline = y + SMALL_DROP_MM
        paper.text(leg.end_name, x + NAME, baseline, SMALL_BOLD, width=BEARING - NAME - 2.0)
        paper.text(f"{card_angle(leg.bearing_mag_deg)}M", x + BEARING, baseline, SMALL)
        paper.text(card_distance(leg.distance_m), x + DISTANCE, baseline, SMALL, width=DISTANCE_WIDTH, right=True)
        paper.text(position_text(leg.end_lon, leg.end_lat), x + POSITION, baseline, SMALL)

    return Block(height_mm=SMALL_LINE_MM, draw=draw)


def _later_headings(leg: Leg, step_deg: float, most_lines: int) -> list[Block]:
    """``10:22 110M`` for every later heading, three a line; what does not fit in the lines is counted."""
    changes = heading_changes(leg, step_deg)
    shown = changes[: PAIRS_A_LINE * most_lines]
    lines = [shown[at : at + PAIRS_A_LINE] for at in range(0, len(shown), PAIRS_A_LINE)]
    blocks = [_pair_line(line) for line in lines]
    if len(changes) > len(shown):
        words = tr("and {count} more new headings: see the report").format(count=len(changes) - len(shown))
        blocks.append(_indented(words))
    return blocks


def _pair_line(pairs: list[tuple[str, str]]) -> Block:
    column = (ROW_WIDTH_MM - HEADING) / PAIRS_A_LINE

    def draw(paper: Paper, x: float, y: float) -> None:
        for number, (clock, heading) in enumerate(pairs):
            left = x + HEADING + number * column
            paper.text(clock, left, y + BIG_DROP_MM, BIG)
            paper.text(heading, left + BIG.width(clock) + 3.0, y + BIG_DROP_MM, BIG_BOLD)

    return Block(height_mm=BIG_LINE_MM, draw=draw)


def _reason(reason: str) -> Block:
    sentence = reason[:1].upper() + reason[1:]
    return stacked([_indented(line) for line in SMALL.wrap(sentence, ROW_WIDTH_MM - NAME, 2)])


def _indented(words: str) -> Block:
    return Block(
        height_mm=SMALL_LINE_MM,
        draw=lambda paper, x, y: paper.text(words, x + NAME, y + SMALL_DROP_MM, SMALL, width=ROW_WIDTH_MM - NAME),
    )
