"""The wet card as plain text, for a message or to copy by hand: the same figures in the same words."""

from __future__ import annotations

from ..core.results.card import (
    card_angle,
    card_distance,
    clock_nearest,
    clock_up,
    day_text,
    dive_stops,
    heading_changes,
    isolated,
    leg_state,
    merged_flags,
    offset_text,
    position_text,
    whole_minutes,
)
from ..core.results.swim_plan import Leg, SwimPlan
from ..words import tr
from .block import Item
from .card_flags import flag_words
from .card_foot import caution_words, limits, small_print, stream_turns, tides
from .card_parts import left_out_words
from .transits_part import transit_head, transit_line, transit_stops
from .turn_back_block import late_words, leaves_too_late, turn_back_stops, turn_back_words
from .ways_home import home_tables, late_tables


def card_text(plan: SwimPlan) -> str:
    """The card in lines of text; parts are separated by an empty line, and the last line ends like the others."""
    parts = (
        _title(plan),
        _legs(plan),
        _turn_back(plan),
        _flags(plan),
        *_ways(plan),
        *_transits(plan),
        _foot(plan),
        _ending(plan),
    )
    return "\n\n".join("\n".join(lines) for lines in parts if lines) + "\n"


def _ending(plan: SwimPlan) -> list[str]:
    return [left_out_words(), caution_words()] if plan.marks_left_out else [caution_words()]


def _title(plan: SwimPlan) -> list[str]:
    stamp = tr("PREDICTED") if plan.feasible else f"{tr('NOT FEASIBLE')}, {tr('PREDICTED')}"
    zone = tr("times in {zone}").format(zone=f"{plan.zone} ({offset_text(plan.depart)})")
    about = [
        day_text(plan.depart),
        zone,
        *([tr("swimmer {name}").format(name=isolated(plan.swimmer))] if plan.swimmer else []),
    ]
    entry = [tr("from {name}").format(name=isolated(leg.start_name)) for leg in plan.legs[:1]]
    return [
        f"{', '.join([isolated(plan.route), *entry])} - {stamp}",
        ", ".join(about),
        *([plan.title] if plan.title else []),
    ]


def _legs(plan: SwimPlan) -> list[str]:
    lines: list[str] = []
    stuck: int | None = None
    for leg in plan.legs:
        lines += _leg(leg, plan.heading_step_deg, stuck, private=plan.marks_left_out)
        stuck = leg.number if leg_state(leg) == "stuck" else stuck
    return lines


def _leg(leg: Leg, step_deg: float, stuck: int | None, *, private: bool) -> list[str]:
    """What to hold and when, then where that leads; what stands in the way in the place of the first."""
    state = leg_state(leg)
    where = "" if private else _where(leg)
    if state != "swim":
        refusal = tr("NOT SWIMMABLE") if state == "stuck" else tr("NOT REACHED")
        reason = f"{leg.reason[:1].upper()}{leg.reason[1:]}"
        said = " ".join(filter(None, (f"{leg.number}  {leg.end_name}: {refusal}.", reason)))
        return [said, f"   {where}"] if where else [said]
    times = tr("leave {leave}, arrive {arrive}, {minutes} min").format(
        leave=clock_up(leg.depart), arrive=clock_up(leg.arrive), minutes=whole_minutes(leg.minutes)
    )
    if private:
        lines = [f"{leg.number}  {leg.end_name}: {times}"]
    else:
        lines = [f"{leg.number}  {leg.end_name}: {tr('HEADING')} {leg.card_heading}, {times}"]
        lines.append(f"   {_stream(leg)}; {where}")
    changes = [f"{clock} {heading}" for clock, heading in heading_changes(leg, step_deg)]
    lines += [f"   {', '.join(changes)}"] if changes else []
    return lines + ([] if stuck is None else ["   " + tr("Only if leg {number} could be swum.").format(number=stuck)])


def _where(leg: Leg) -> str:
    """Bearing, distance and position of its end."""
    line = f"{card_angle(leg.bearing_mag_deg)}M, {card_distance(leg.distance_m)}"
    return f"{line}, {position_text(leg.end_lon, leg.end_lat)}"


def _stream(leg: Leg) -> str:
    if leg.stream_kn is None or leg.stream_set_deg is None:
        return tr("stream not known")
    return tr("stream sets {set} true, {rate} kn").format(
        set=card_angle(leg.stream_set_deg), rate=f"{leg.stream_kn:.1f}"
    )


def _turn_back(plan: SwimPlan) -> list[str]:
    """A line a mark; on paper there would be boxes to fill in where none was computed."""
    lines = []
    for stop in turn_back_stops(plan):
        said = turn_back_words(stop)
        lines.append(f"{stop.name}: {tr('TURN BACK BY')} {said.clock} {'; '.join(said.lines)}")
    late = [f"{stop.name}: {late_words(stop)}" for stop in turn_back_stops(plan) if leaves_too_late(stop)]
    return late + lines


def _ways(plan: SwimPlan) -> list[list[str]]:
    """A head and a line a way, as on paper."""
    return [
        [
            table.words,
            *(f"   {' '.join((line.leave, *line.headings, line.whole))}" for line in table.lines),
            *([f"   {table.ending}"] if table.ending else []),
        ]
        for table in (*late_tables(plan), *home_tables(plan))
    ]


def _transits(plan: SwimPlan) -> list[list[str]]:
    return [[transit_head(stop), *(f"   {transit_line(one)}" for one in stop.transits)] for stop in transit_stops(plan)]


def _flags(plan: SwimPlan) -> list[str]:
    found = [flag_words(flag, legs, shared=plan.marks_left_out) for flag, legs in merged_flags(plan.flags)]
    return found or [tr("No flags. Feasible is not safe.")]


def _foot(plan: SwimPlan) -> list[str]:
    lines = [", ".join(_item(item) for item in limits(plan, tr("ALARM (shore contact)")) + tides(plan))]
    turns = ", ".join(_item(item) for item in stream_turns(plan))
    lines += [f"{tr('Weakest stream, then sets to:')} {turns}"] if turns else []
    for stop in dive_stops(plan):
        depths = ", ".join(f"{clock_nearest(moment)} {depth:.1f} m" for moment, depth in stop.depth_by_hour)
        lines += [tr("Depth at {name}: {depths}").format(name=isolated(stop.name), depths=depths)] if depths else []
    return [line for line in [*lines, " ".join(small_print(plan))] if line]


def _item(item: Item) -> str:
    towards = "" if item.set_deg is None else tr("to {set} true").format(set=card_angle(item.set_deg))
    return " ".join(word for word in (item.before, item.clock, item.after, towards) if word)
