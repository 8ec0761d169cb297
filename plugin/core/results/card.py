"""How a planned swim reads on paper: headings, times, distances and positions as strings, rounded the safe way."""

from __future__ import annotations

import math
import re
import unicodedata
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta

from ..clock import later
from ..words import tr
from .flag import SEVERITIES, Flag
from .plain_values import nearest_second
from .swim_plan import Leg, Stop, SwimPlan

DISTANCE_STEP_M = 50.0  # a swimmer cannot judge less; common practice, no source
ISOLATE, POP_ISOLATE = "\u2068", "\u2069"  # Unicode: the words between have a direction of their own
MINUTES_NOISE = 1e-3  # minutes: a leg of 29.0004 is 29, not 30


def clock_up(moment: datetime) -> str:
    """``HH:MM`` rounded up: for arrivals and departures, so that no printed time is earlier than predicted."""
    moment = nearest_second(moment)
    return later(moment, timedelta(seconds=-moment.second % 60)).strftime("%H:%M")


def clock_down(moment: datetime) -> str:
    """``HH:MM`` rounded down: for sunset, alarm and other limits."""
    return nearest_second(moment).strftime("%H:%M")


def clock_nearest(moment: datetime) -> str:
    """``HH:MM`` to the nearest minute: for tides and turns of the stream."""
    return later(moment, timedelta(seconds=30)).strftime("%H:%M")


def whole_minutes(minutes: float) -> str:
    """Minutes rounded up to a whole number."""
    return str(math.ceil(minutes - MINUTES_NOISE))


def card_distance(distance_m: float) -> str:
    """Distance to the nearest 50 m, never to nothing: ``1200 m``, ``< 50 m``."""
    steps = math.floor(distance_m / DISTANCE_STEP_M + 0.5)
    return f"{steps * DISTANCE_STEP_M:.0f} m" if steps else "< 50 m"


def card_angle(angle_deg: float, step_deg: float = 1.0) -> str:
    """Three digits, to the nearest step, north as 000."""
    return f"{round(angle_deg / step_deg) * step_deg % 360.0:03.0f}"


def position_text(lon: float, lat: float) -> str:
    """Degrees and decimal minutes with three decimals (1.9 m): ``48°12.345'N 005°06.700'W``.

    Latitude stands first, as handheld receivers show it.
    """
    return f"{_degrees_minutes(lat, 2, 'NS')} {_degrees_minutes((lon + 180.0) % 360.0 - 180.0, 3, 'EW')}"


def _degrees_minutes(angle_deg: float, width: int, letters: str) -> str:
    thousandths = round(abs(angle_deg) * 60_000.0)  # whole thousandths of a minute: 60.000' cannot appear
    degrees, rest = divmod(thousandths, 60_000)
    return f"{degrees:0{width}d}°{rest // 1000:02d}.{rest % 1000:03d}'{letters[angle_deg < 0.0]}"


def variation_text(variation_deg: float) -> str:
    """``4.0°W``, ``12.3°E``."""
    return f"{abs(variation_deg):.1f}°{'W' if variation_deg < 0.0 else 'E'}"


def offset_text(moment: datetime) -> str:
    """The moment's offset from UTC: ``UTC``, ``UTC+1``, ``UTC-3:30``."""
    minutes = int(moment.utcoffset().total_seconds() // 60)
    hours, rest = divmod(abs(minutes), 60)
    return "UTC" + (f"{'-' if minutes < 0 else '+'}{hours}" + (f":{rest:02d}" if rest else "") if minutes else "")


def day_text(moment: date) -> str:
    """``2027-06-05``: the one order of digits that reads the same everywhere."""
    return moment.strftime("%Y-%m-%d")


def leg_state(leg: Leg) -> str:
    """``swim``, ``stuck`` (it is reached but cannot be swum) or ``unreached`` (nobody gets as far as its start)."""
    if leg.depart is None:
        return "unreached"
    return "swim" if leg.feasible and leg.arrive is not None else "stuck"


def heading_changes(leg: Leg, step_deg: float) -> list[tuple[str, str]]:
    """(clock time, heading as ``105M``) of each new heading after the first; equal printed headings are merged."""
    changes: list[tuple[str, str]] = []
    before = leg.card_heading
    for change in leg.headings:
        heading = f"{card_angle(change.heading_mag_deg, step_deg)}M"
        if heading != before and change.moment != leg.depart:
            changes.append((clock_nearest(change.moment), heading))
            before = heading
    return changes


def leg_comment(leg: Leg, step_deg: float) -> str:
    """The leg in one line for a receiver's screen: ``105M 29min leave 10:12 arrive 10:41``, or why it is not swum.

    Later headings follow with their times: ``then 10:20 110M``.
    """
    state = leg_state(leg)
    if state == "unreached":
        return tr("NOT REACHED {reason}").format(reason=leg.reason).strip()
    if state == "stuck":
        return tr("NOT SWIMMABLE {reason}").format(reason=leg.reason).strip()
    times = tr("{minutes}min leave {depart} arrive {arrive}").format(
        minutes=whole_minutes(leg.minutes), depart=clock_up(leg.depart), arrive=clock_up(leg.arrive)
    )
    later_on = "".join(
        tr(" then {when} {heading}").format(when=when, heading=heading)
        for when, heading in heading_changes(leg, step_deg)
    )
    return f"{leg.card_heading or ''} {times}{later_on}".strip()


def isolated(name: str) -> str:
    """The name as it may stand in a sentence: one read from right to left must not draw the figures beside it along."""
    if any(unicodedata.bidirectional(letter) in ("R", "AL", "AN") for letter in name):
        return f"{ISOLATE}{name}{POP_ISOLATE}"
    return name


def worst_first(flags: tuple[Flag, ...]) -> list[Flag]:
    """The flags from the gravest down, in the plan's order among equals."""
    return sorted(flags, key=lambda flag: SEVERITIES.index(flag.severity))


def names_a_leg(words: str) -> bool:
    """Whether the words name a leg by its number, as a flag's do that is of one leg."""
    leg = tr("leg {number}").format(number="")
    return re.search(rf"\b{re.escape(leg)}\d", words, re.IGNORECASE) is not None


def merged_flags(flags: tuple[Flag, ...]) -> list[tuple[Flag, list[int]]]:
    """The flags from the gravest down, those that read alike once, each with the numbers of its legs in order.

    The numbers are empty for a flag of the whole swim and for one whose words name the leg themselves.
    """
    found: dict[tuple[str, str], tuple[Flag, list[int]]] = {}
    for flag in worst_first(flags):
        words = flag.brief or flag.message
        _, legs = found.setdefault((flag.severity, words), (flag, []))
        if flag.leg is not None and flag.leg not in legs and not names_a_leg(words):
            legs.append(flag.leg)
    return [(flag, sorted(legs)) for flag, legs in found.values()]


def dive_stops(plan: SwimPlan) -> list[Stop]:
    """The stops whose depth by the hour is known, each place once."""
    found: dict[tuple[str, float, float], Stop] = {}
    for stop in plan.stops:
        if stop.depth_by_hour:
            found.setdefault((stop.name, stop.lon, stop.lat), stop)
    return list(found.values())


@dataclass(frozen=True, kw_only=True)
class Place:
    """A place of the route, degrees; ``stop`` is what is known of it if the swim stops there."""

    name: str
    lon: float
    lat: float
    stop: Stop | None = None

    @property
    def key(self) -> tuple[str, float, float]:
        """Equal for the same place: name, and position to a centimetre."""
        return self.name, round(self.lon, 7), round(self.lat, 7)


def route_places(plan: SwimPlan) -> list[Place]:
    """The places in swimming order: the start of the first leg, then the end of every leg."""
    stops: dict[tuple[str, float, float], Stop] = {}
    for stop in plan.stops:
        stops.setdefault((stop.name, round(stop.lon, 7), round(stop.lat, 7)), stop)
    first = plan.legs[:1]
    bare = [Place(name=leg.start_name, lon=leg.start_lon, lat=leg.start_lat) for leg in first]
    bare += [Place(name=leg.end_name, lon=leg.end_lon, lat=leg.end_lat) for leg in plan.legs]
    return [replace(place, stop=stops.get(place.key)) for place in bare]


def distinct_places(plan: SwimPlan) -> list[Place]:
    """The places, each once: a beach that is both entry and exit stands on the sketch once."""
    found: dict[tuple[str, float, float], Place] = {}
    for place in route_places(plan):
        found.setdefault(place.key, place)
    return list(found.values())
