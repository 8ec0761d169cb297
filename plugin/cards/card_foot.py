"""What stands below the rows of the card: tides, light, depths, line, variation, cautions."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import datetime

from ..core.anchor_line import line_in_rock_m, line_on_flat_m
from ..core.clock import elapsed, later
from ..core.results.card import (
    clock_down,
    clock_nearest,
    day_text,
    dive_stops,
    isolated,
    offset_text,
    variation_text,
)
from ..core.results.swim_plan import Stop, SwimPlan
from ..words import tr
from .block import (
    BIG_DROP_MM,
    BIG_LINE_MM,
    SMALL_DROP_MM,
    SMALL_LINE_MM,
    Block,
    Item,
    flowing,
    small_lines,
    stacked,
    wrapped,
)
from .paper import BIG, SMALL, SMALL_BOLD, Paper

MOST_MOMENTS = 4  # of tides, and of turns of the stream: those nearest to the swim
DEPTH_NAME_MM = 44.0
DEPTH_COLUMN_MM = 30.0
TABLE_LEAST_MM = 134.0
SMALL_PRINT_LINES = 12


def foot(plan: SwimPlan, width_mm: float, depth_rows: int, moments: int) -> list[Block]:
    """Alarm and light, so many high and low waters and turns of the stream, depths by the hour, line, variation."""
    # The longer words for the alarm only where they cost no line.
    alarms = (tr("ALARM (shore contact)"), tr("shore ALARM"))
    parts = [min((flowing(limits(plan, word) + tides(plan, moments), width_mm) for word in alarms), key=_height)]
    turns = stream_turns(plan, moments)
    if turns:
        head = tr("Weakest stream, then sets to:")
        apart = stacked([wrapped(head, width_mm, 2), flowing(turns, width_mm)])
        beside = [replace(turns[0], before=head), *turns[1:]]
        fits = beside[0].width_mm <= width_mm
        parts.append(min([apart, *([flowing(beside, width_mm)] if fits else [])], key=_height))
    parts += _depths(plan, width_mm, depth_rows) if depth_rows else []
    whole = moments and (depth_rows or not says_depths(plan))
    sentences = small_print(plan) if whole else _few_sentences(plan)
    if turns or (moments and any(leg.stream_set_deg is not None for leg in plan.legs)):
        sentences.append(tr("Set arrows: true north is up."))
    lines = SMALL.wrap(" ".join(sentences), width_mm, SMALL_PRINT_LINES)
    return [part for part in (*parts, *(small_lines([line]) for line in lines)) if part.height_mm]


def says_depths(plan: SwimPlan) -> bool:
    """Whether there is something to say of depths and of the line to let out."""
    return bool(dive_stops(plan) or _line_words(plan))


def _few_sentences(plan: SwimPlan) -> list[str]:
    """What must be said where the card names depths, or tides too, among what is not on it."""
    unknown = [tr("No arrival, so no alarm time.")] if plan.arrive is None else []
    unknown += [] if plan.tides else [tr("Tide not known.")]
    return [*_clock_words(plan), *unknown, *variation_words(plan)]


def caution_words() -> str:
    """What every card ends with."""
    return tr("Predicted, not observed. Not for navigation of vessels. Never dive alone.")


def short_caution_words() -> str:
    """The same where it saves a line."""
    return tr("Predicted. Not for navigation of vessels. Never dive alone.")


def _height(block: Block) -> float:
    return block.height_mm


def limits(plan: SwimPlan, alarm: str) -> list[Item]:
    """The alarm, which is the shore contact's, and sunset."""
    ends = ((alarm, plan.alarm), (tr("sunset"), plan.sunset))
    return [
        Item(before=word, clock=clock_down(moment), after="" if same_day(plan, moment) else day_text(moment))
        for word, moment in ends
        if moment is not None
    ]


def same_day(plan: SwimPlan, moment: datetime) -> bool:
    """True for a moment on the day of departure: the day is then not said again."""
    return day_text(moment) == day_text(plan.depart)


def tides(plan: SwimPlan, count: int = MOST_MOMENTS) -> list[Item]:
    """The high and low waters nearest to the swim."""
    near = _nearest([(tide.moment, tide) for tide in plan.tides], plan, count)
    return [
        Item(
            before=tide.kind,
            clock=clock_nearest(tide.moment),
            after="" if tide.height_m is None else f"{tide.height_m:.1f} m",
        )
        for tide in near
    ]


def stream_turns(plan: SwimPlan, count: int = MOST_MOMENTS) -> list[Item]:
    """The turns of the stream nearest to the swim, and where it sets to afterwards."""
    near = _nearest([(turn.moment, turn) for turn in plan.stream_turns], plan, count)
    return [
        Item(
            before="",
            clock=clock_nearest(turn.moment),
            after=f"{turn.rate_kn:.1f} kn",
            set_deg=turn.set_after_deg,
        )
        for turn in near
    ]


def _nearest(moments: list[tuple[datetime, object]], plan: SwimPlan, count: int) -> list:
    """The few that are nearest to the middle of the swim, in order of time."""
    middle = plan.depart if plan.arrive is None else later(plan.depart, elapsed(plan.depart, plan.arrive) / 2)
    near = sorted(moments, key=lambda pair: abs(elapsed(middle, pair[0])))[:count]
    return [what for _, what in sorted(near, key=lambda pair: pair[0].timestamp())]


def _depths(plan: SwimPlan, width_mm: float, most_rows: int) -> list[Block]:
    """Depth at the marks on the full hours round the stay; a dash where an hour is not a mark's own."""
    stops = dive_stops(plan)
    if not stops:
        return []
    if width_mm < TABLE_LEAST_MM:
        blocks = [_depth_items(stop, width_mm) for stop in stops[:most_rows]]
        left_out = len(stops) - len(blocks)
    else:
        room = int((width_mm - DEPTH_NAME_MM) / DEPTH_COLUMN_MM)
        groups = _hour_groups(stops[:most_rows], room)
        blocks = [_depth_table(rows, columns) for rows, columns in groups]
        left_out = len(stops) - sum(len(rows) for rows, _ in groups)
    if left_out == 1:
        blocks.append(wrapped(tr("The depth of 1 more mark is not shown."), width_mm, 2))
    elif left_out:
        blocks.append(wrapped(tr("Depths of {count} more marks are not shown.").format(count=left_out), width_mm, 2))
    return blocks


def _depth_items(stop: Stop, width_mm: float) -> Block:
    """One mark's depths where a table would be too wide: its name, then time and depth, one after the other."""
    items = [
        Item(before="", clock=clock_nearest(moment), after=f"{depth:.1f} m") for moment, depth in stop.depth_by_hour
    ]
    words = tr("depth at {name}:").format(name=isolated(stop.name))
    return stacked([wrapped(words, width_mm, 1, bold=True), flowing(items, width_mm)])


def _hour_groups(stops: list[Stop], room: int) -> list[tuple[list[Stop], list[datetime]]]:
    """Stops that share a line of hours, as long as their hours together fit the columns; in swimming order."""
    groups: list[tuple[list[Stop], list[datetime]]] = []
    for stop in stops:
        own = [moment for moment, _ in stop.depth_by_hour][:room]
        together = sorted(set(own) | set(groups[-1][1])) if groups else own
        if groups and len(together) <= room:
            groups[-1] = ([*groups[-1][0], stop], together)
        else:
            groups.append(([stop], own))
    return groups


def _depth_table(stops: list[Stop], hours: list[datetime]) -> Block:
    def draw(paper: Paper, x: float, y: float) -> None:
        paper.text(tr("depth, m, at"), x, y + BIG_DROP_MM, SMALL, width=DEPTH_NAME_MM - 2.0)
        for column, hour in enumerate(hours):
            left = x + DEPTH_NAME_MM + column * DEPTH_COLUMN_MM
            paper.text(clock_nearest(hour), left, y + BIG_DROP_MM, BIG)
            for row, stop in enumerate(stops):
                depth = dict(stop.depth_by_hour).get(hour)
                baseline = y + BIG_LINE_MM + row * SMALL_LINE_MM + SMALL_DROP_MM
                shown = "–" if depth is None else f"{depth:.1f}"
                paper.text(shown, left, baseline, SMALL, width=BIG.width("00:00"), right=True)
        for row, stop in enumerate(stops):
            baseline = y + BIG_LINE_MM + row * SMALL_LINE_MM + SMALL_DROP_MM
            paper.text(stop.name, x, baseline, SMALL_BOLD, width=DEPTH_NAME_MM - 2.0)

    return Block(height_mm=BIG_LINE_MM + len(stops) * SMALL_LINE_MM, draw=draw)


def small_print(plan: SwimPlan) -> list[str]:
    """Line to let out, what is not known, and the variation used, in sentences."""
    words = _line_words(plan)
    if plan.arrive is None:
        words.insert(0, tr("No arrival, so no alarm time."))
    if not plan.tides:
        words.append(tr("Tide not known."))
    if not plan.marks_left_out and not any(stop.depth_by_hour or stop.depth_now_m is not None for stop in plan.stops):
        words.append(tr("Depths not known."))
    return [*_clock_words(plan), *words, *variation_words(plan)]


def _line_words(plan: SwimPlan) -> list[str]:
    """How much line to let out at each mark, by its greatest depth while one is there, and how far a float swings."""
    if plan.line_m is None:
        return []
    carried = f"{plan.line_m:g}"
    wanted = [
        tr("{place} {flat} m, in rock {rock} m").format(
            place=isolated(stop.name),
            flat=_span(line_on_flat_m(stop.deepest_m)),
            rock=_span(line_in_rock_m(stop.deepest_m)),
        )
        for stop in dict.fromkeys(plan.stops)
        if stop.deepest_m is not None and stop.kind == "mark"
    ]
    words = (
        [
            tr("Line to let out, on flat ground: {places}. You carry {line} m.").format(
                places="; ".join(wanted), line=carried
            )
        ]
        if wanted
        else [tr("Let out up to {line} m of line.").format(line=carried)]
    )
    swings = [f"{isolated(stop.name)} {stop.swing_m:.0f} m" for stop in plan.stops if stop.swing_m is not None]
    return (
        [*words, tr("On all of it the float swings: {places}.").format(places=", ".join(swings))] if swings else words
    )


def _span(metres: tuple[float, float]) -> str:
    return f"{math.ceil(metres[0])}-{math.ceil(metres[1])}"


def _clock_words(plan: SwimPlan) -> list[str]:
    """That clocks change during the swim: the card's times then go on in the new clock."""
    ends = [stop.arrive for stop in plan.stops if stop.arrive is not None]
    last = ends[-1] if ends else None
    if last is None or last.utcoffset() == plan.depart.utcoffset():
        return []
    words = tr("CLOCKS CHANGE during this swim: times are {before} first, {after} at its end.")
    return [words.format(before=offset_text(plan.depart), after=offset_text(last))]


def variation_words(plan: SwimPlan) -> list[str]:
    """The variation that is in every heading, with its model and date; nothing for a card without headings."""
    if plan.marks_left_out:
        return []
    words = tr("M is magnetic: variation {variation}, {model}, {day}.").format(
        variation=variation_text(plan.variation_deg), model=plan.variation_model, day=day_text(plan.variation_date)
    )
    return [words]
