"""What the dock's tables say, row by row, as text: rounded the safe way, as on the card, and never 0 for unknown."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from ..core.clock import elapsed
from ..core.quantities import knots_from_m_s
from ..core.results.card import (
    card_angle,
    clock_down,
    clock_up,
    heading_changes,
    leg_state,
    names_a_leg,
    whole_minutes,
    worst_first,
)
from ..core.results.plain_values import nearest_second
from ..core.results.swim_plan import Leg, SwimPlan
from ..core.results.turn_back import LeavingBand, StopTurnBack
from ..words import tr
from .flag_shapes import severity_word

Points = tuple[tuple[float, float], ...]


@dataclass(frozen=True, kw_only=True)
class Row:
    """One row: its cells, where it is as (lon, lat) pairs, and how grave it is where that counts; ``spots`` are places
    that flash as points.

    Where there are fewer cells than columns the last one takes the rest of the row.
    """

    cells: tuple[str, ...]
    points: Points = ()
    severity: str = ""
    spots: Points = ()


def leg_headers() -> list[tuple[str, str]]:
    """Title and tooltip of the columns of the legs."""
    return [
        (tr("To"), tr("The stop at the end of the leg")),
        (tr("Hold"), tr("Heading to hold on the compass, degrees magnetic, as on the card")),
        (tr("Min"), tr("Minutes from leaving to arriving, as the clock shows them")),
        (tr("Leave,\narrive"), tr("Clock times in the plan's zone, rounded up")),
        (tr("Stream\nto"), tr("Mean stream on the leg: degrees true it runs towards, and its rate in knots")),
        (tr("Ground"), tr("Speed made good over the ground, in knots like the stream, and in metres a second")),
    ]


def leg_rows(swim: SwimPlan) -> list[Row]:
    """The legs in swimming order; one that cannot be swum says so in words, and so do those after it."""
    stuck = next((number for number, leg in enumerate(swim.legs, start=1) if leg_state(leg) == "stuck"), len(swim.legs))
    return [
        _leg_row(leg, swim.heading_step_deg, stuck if number > stuck else 0)
        for number, leg in enumerate(swim.legs, start=1)
    ]


def _leg_row(leg: Leg, step_deg: float, stuck: int) -> Row:
    """``stuck`` is the number of the leg before it that cannot be swum, 0 for none."""
    points = ((leg.start_lon, leg.start_lat), (leg.end_lon, leg.end_lat))
    state = leg_state(leg)
    if state != "swim":
        words = tr("Cannot be swum: {}") if state == "stuck" else tr("Not reached: {}")
        return Row(cells=(leg.end_name, words.format(leg.reason)), points=points, severity="stop")
    speed = ground_words(leg)
    times = (clock_minutes(leg), f"{clock_up(leg.depart)}\n{clock_up(leg.arrive)}")
    name = f"{leg.end_name}\n{tr('only if leg {} could be swum').format(stuck)}" if stuck else leg.end_name
    return Row(cells=(name, _held(leg, step_deg), *times, stream_words(leg), speed), points=points)


def clock_minutes(leg: Leg) -> str:
    """The minutes between the two clock times, each rounded up: leaving and they give arriving."""
    leave, arrive = (-(-nearest_second(moment).timestamp() // 60.0) for moment in (leg.depart, leg.arrive))
    return str(round(arrive - leave))


def _held(leg: Leg, step_deg: float) -> str:
    """``095M`` and, where new headings are taken on the way, each with its time on a line of its own."""
    later = [f"{moment} {heading}" for moment, heading in heading_changes(leg, step_deg)]
    return "\n".join([leg.card_heading or tr("not known"), *later])


def ground_words(leg: Leg) -> str:
    """``1.3 kn`` and, below it, ``0.66 m/s``: in the stream's unit and in that of a pace."""
    if leg.ground_speed_m_s is None:
        return tr("not known")
    return f"{knots_from_m_s(leg.ground_speed_m_s):.1f} kn\n{leg.ground_speed_m_s:.2f} m/s"


def stream_words(leg: Leg) -> str:
    """``085T`` and, below it, ``0.3 kn``: where the stream goes and how fast; in words where it is not known."""
    if leg.stream_kn is None:
        return tr("not known")
    towards = "" if leg.stream_set_deg is None else f"{card_angle(leg.stream_set_deg)}T\n"
    return f"{towards}{leg.stream_kn:.1f} kn"


def mind_rows(swim: SwimPlan, notes: list[str]) -> list[Row]:
    """Every flag, gravest first: how grave, its leg and its few words on the first line, then the whole of it; then
    what the plan could not know, which has no place."""
    found = []
    for flag in worst_first(swim.flags):
        few = flag.brief or flag.message
        where = "" if flag.leg is None or names_a_leg(few) else tr("Leg {}: ").format(flag.leg)
        lines = [f"{severity_word(flag.severity)}. {where}{few}", *([flag.message] if flag.message != few else [])]
        found.append(Row(cells=("\n".join(lines),), points=flag.points, severity=flag.severity))
    said = list(dict.fromkeys([*notes, *swim.warnings]))
    return found + [Row(cells=(f"{severity_word('note')}. {words}",), severity="note") for words in said]


def turn_headers() -> list[tuple[str, str]]:
    """Title and tooltip of the columns of the turn back."""
    return [
        (tr("From"), tr("The stop to leave")),
        (tr("Leave by"), tr("Latest leaving time that keeps the reserve, in the water expected; rounded down")),
        (tr("Bad day"), tr("The same with a tenth less pace, a stronger stream and its turn early or late")),
        (tr("For"), tr("The exit that is quickest and safe at that minute")),
    ]


def turn_rows(swim: SwimPlan) -> list[Row]:
    """Each stop with the time it must be left by."""
    return [_turn_row(stop) for stop in (swim.turn_back.stops if swim.turn_back is not None else ())]


def _turn_row(stop: StopTurnBack) -> Row:
    point = ((stop.lon, stop.lat),)
    if stop.latest_leave is None:
        words = tr("Not safe even if left at once: no exit is reached with the reserve kept.")
        return Row(cells=(stop.name, words), points=point, severity="stop")
    good = _span(stop, stop.bands, stop.latest_leave)
    bad = _span(stop, stop.bands_pessimistic, stop.latest_leave_pessimistic)
    return Row(cells=(stop.name, good, bad, stop.exit or ""), points=point)


def _span(stop: StopTurnBack, bands: tuple[LeavingBand, ...], last: datetime | None) -> str:
    """``12:21``, or ``from 11:40`` and ``to 12:21`` below it where leaving on arrival is not safe yet."""
    if last is None:
        return tr("not safe")
    first = next((band.first for band in bands if band.last == last), stop.arrive)
    if elapsed(stop.arrive, first) < timedelta(minutes=1):  # bands are of whole minutes
        return clock_down(last)
    return tr("from {}\nto {}").format(clock_up(first), clock_down(last))


def headline(swim: SwimPlan) -> str:
    """The swim in one line: whether it can be swum, when one is home, how far and how long.

    Where a leg cannot be swum no time is given: what comes after it is not reached.
    """
    stuck = next((leg.number for leg in swim.legs if leg_state(leg) != "swim"), None)
    if stuck is not None or swim.total_min is None:
        return tr("Cannot be swum: leg {}").format(stuck)
    hours, minutes = divmod(int(whole_minutes(swim.total_min)), 60)
    length = f"{hours}\u00a0h\u00a0{minutes:02d}\u00a0min" if hours else f"{minutes}\u00a0min"
    home = tr("home {}").format(clock_up(swim.arrive))
    stops = len([flag for flag in swim.flags if flag.severity == "stop"])
    outcome = tr("Not like this ({} x Stop below)").format(stops) if stops else tr("Can be swum")
    return f"{outcome}: {home}, {swim.total_m / 1000.0:.1f}\u00a0km, {length}"
