"""The shore contact's sheet in plain words, part by part, for the screen of a phone and for paper alike."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import datetime

from ..core.geodesy import geodesic_leg
from ..core.results.card import (
    card_distance,
    clock_down,
    clock_up,
    day_text,
    leg_state,
    merged_flags,
    offset_text,
    position_text,
    whole_minutes,
)
from ..core.results.confidence import DriftArea
from ..core.results.flag import Flag
from ..core.results.shore_sheet import ShoreSheet
from ..core.results.swim_plan import Leg, Stop, SwimPlan
from ..core.solve.drift import AFTER_MIN
from ..words import tr

MOST_FLAGS = 6


@dataclass(frozen=True, kw_only=True)
class Part:
    """A part of the sheet: sentences, then a table. ``urgent`` stands out; ``numbers`` are to be rung; ``big`` is the
    one thing to be seen from afar; ``picture`` names the map that goes with it, swim or drift."""

    title: str
    big: str = ""
    lines: tuple[str, ...] = ()
    heads: tuple[str, ...] = ()
    rows: tuple[tuple[str, ...], ...] = ()
    numbers: tuple[str, ...] = ()
    urgent: bool = False
    picture: str = ""
    on_new_page: bool = False


def sheet_title(sheet: ShoreSheet) -> str:
    """What the sheet is, of which day."""
    return tr("Swim on {day}: for the shore contact").format(day=day_text(sheet.swim.depart))


def sheet_parts(sheet: ShoreSheet) -> list[Part]:
    """All parts: what is wrong with the plan first, then what is needed in an emergency."""
    about = (_alarm, _who, _story, _timeline, _landings, _drift)
    alarm, who, *others = (part(sheet) for part in about)
    wrong = _wrong(sheet)
    return [*wrong, alarm, who, _where(on_new_page=bool(wrong)), *others, _cautions()]


def _only_if(sheet: ShoreSheet) -> str:
    """What the times after a leg that cannot be swum hang on; empty where every leg can be."""
    return "" if sheet.stuck is None else tr("only if leg {number} could be swum").format(number=sheet.stuck.number)


def _wrong(sheet: ShoreSheet) -> list[Part]:
    """Why the plan is not to be accepted; nothing where it is as it should be."""
    lines = []
    if sheet.stuck is not None:
        words = tr("LEG {number}, FROM {start} TO {end}, CANNOT BE SWUM: {why}.")
        leg = sheet.stuck
        lines.append(words.format(number=leg.number, start=leg.start_name, end=leg.end_name, why=leg.reason))
    lines += [_late_words(stop, sheet.swim) for stop in sheet.late_stops]
    return [Part(title=tr("DO NOT ACCEPT THIS PLAN AS IT STANDS"), lines=tuple(lines), urgent=True)] if lines else []


def _late_words(stop: Stop, swim: SwimPlan) -> str:
    if stop.latest_leave is None:
        words = tr("FROM {stop} NO WAY OUT IS SAFE when they are there, {arrive} to {leave}.")
        return words.format(stop=stop.name, arrive=_moment(stop.arrive, swim), leave=_moment(stop.leave, swim))
    words = tr("THE PLAN LEAVES {stop} AT {leave}, WHICH IS TOO LATE: its last safe minute is {latest}.")
    latest = _moment(stop.latest_leave, swim, up=False)
    return words.format(stop=stop.name, leave=_moment(stop.leave, swim), latest=latest)


def _moment(moment: datetime | None, swim: SwimPlan, *, up: bool = True) -> str:
    """Clock time, with its day where that is not the day of the departure; in words where it is not known."""
    if moment is None:
        return tr("not known")
    clock = clock_up(moment) if up else clock_down(moment)
    return clock if moment.date() == swim.depart.date() else f"{clock} ({day_text(moment)})"


def _hanging(words: str, sheet: ShoreSheet) -> str:
    """The words, and what they hang on."""
    only_if = _only_if(sheet)
    return f"{words}, {only_if}" if only_if else words


def _alarm(sheet: ShoreSheet) -> Part:
    swim, numbers, big = sheet.swim, sheet.facts.numbers, ""
    if swim.alarm is None:
        lines = [
            tr("This plan has no time of return: it cannot be swum as it stands, and there is no alarm time."),
            tr("Do not accept it: ask for a plan that has both."),
        ]
    else:
        alarm = _moment(swim.alarm, swim, up=False)
        big = tr("ALARM {alarm}").format(alarm=alarm)
        lines = [
            tr(
                "ALARM at {alarm}: if nobody has told you by then that they are ashore, ring the emergency service."
            ).format(alarm=_hanging(alarm, sheet)),
            tr("Back on shore, as planned: {home}.").format(home=_hanging(_moment(swim.arrive, swim), sheet)),
            tr(
                "Say: swimmers with a float are missing at sea; how many; when they left; where they were bound; the "
                "places and the drift areas below; the colours of float and flag."
            ),
            tr("Stay where you can be reached, do not go out yourself, and do what the service asks."),
            tr("If they come ashore after the alarm, tell the service at once."),
        ]
    if not numbers:
        lines.append(tr("No emergency number was typed. Write down the number of your sea rescue before they leave:"))
    numbers = numbers or ("_" * 24,)
    return Part(title=tr("If they are not back"), big=big, lines=tuple(lines), numbers=numbers, urgent=True)


def _who(sheet: ShoreSheet) -> Part:
    facts, unsaid = sheet.facts, tr("not stated: ask before they leave")
    rows = [
        (tr("Swimmers"), sheet.swim.swimmer or unsaid),
        (tr("How many"), unsaid if sheet.members is None else str(sheet.members)),
        (tr("Float"), facts.float_colours or unsaid),
        (tr("Flag"), facts.flag or unsaid),
    ]
    return Part(title=tr("Who"), rows=tuple(rows), lines=(facts.note,) if facts.note else ())


def _where(*, on_new_page: bool) -> Part:
    line = tr("Solid line: the way they expect to swim. Dashed: the straight legs. North is up.")
    return Part(title=tr("Where"), lines=(line,), picture="swim", on_new_page=on_new_page)


def _story(sheet: ShoreSheet) -> Part:
    swim = sheet.swim
    lines = [_leg_words(leg, swim) for leg in swim.legs]
    for stop in swim.stops[1:-1]:
        lines += _turn_back_words(stop, swim)
    lines += [_late_words(stop, swim) for stop in sheet.late_stops]
    told = {stop.name for stop in sheet.late_stops}
    grave = tuple(
        flag
        for flag in swim.flags
        if flag.severity in ("stop", "warn") and not (flag.kind == "over_time" and flag.name in told)
    )
    lines += [tr("To mind: {}").format(_brief(flag, legs)) for flag, legs in merged_flags(grave)[:MOST_FLAGS]]
    # The map below what is wrong with the plan is on a new page, with room for words.
    return Part(title=tr("The plan in words"), lines=tuple(lines), on_new_page=not _wrong(sheet))


def _brief(flag: Flag, legs: list[int]) -> str:
    """The few words of a card: how a channel is crossed is of no use ashore."""
    words = flag.brief or flag.message
    words = words if flag.name in words else f"{flag.name}: {words}"
    if not legs:
        return words
    numbers = ", ".join(map(str, legs))
    return (tr("leg {}, {}") if len(legs) == 1 else tr("legs {}, {}")).format(numbers, words)


def _leg_words(leg: Leg, swim: SwimPlan) -> str:
    if leg_state(leg) != "swim":
        return tr("From {start} to {end}: cannot be swum ({why}).").format(
            start=leg.start_name, end=leg.end_name, why=leg.reason
        )
    words = tr(
        "They leave {start} at {leave}, swim {far} to {end} in about {minutes} minutes and are there at {arrive}."
    )
    return words.format(
        start=leg.start_name,
        leave=_moment(leg.depart, swim),
        far=card_distance(leg.distance_m),
        end=leg.end_name,
        minutes=whole_minutes(leg.minutes),
        arrive=_moment(leg.arrive, swim),
    )


def _turn_back_words(stop: Stop, swim: SwimPlan) -> list[str]:
    if stop.latest_leave is None:
        return []
    words = tr("They must leave {stop} by {latest}; then the nearest safe way out may be {exit}.")
    return [words.format(stop=stop.name, latest=_moment(stop.latest_leave, swim, up=False), exit=stop.exit or "?")]


def _timeline(sheet: ShoreSheet) -> Part:
    swim = sheet.swim
    rows = []
    late = sheet.late_stops
    for number, stop in enumerate(swim.stops):
        place, hangs = position_text(stop.lon, stop.lat), _hangs(number, sheet)
        if number:
            arrive = tr("arrive at {}").format(stop.name)
            rows.append((_moment(stop.arrive, swim), _hanging(arrive, sheet) if hangs else arrive, place))
        if number + 1 < len(swim.stops):
            leave = tr("leave {}").format(stop.name)
            leave = tr("{leave}: TOO LATE").format(leave=leave) if stop in late else leave
            rows.append((_moment(stop.leave, swim), _hanging(leave, sheet) if hangs else leave, place))
    if swim.alarm is not None:
        rows.append((_moment(swim.alarm, swim, up=False), _hanging(tr("ALARM, if not heard from"), sheet), ""))
    zone = tr("Times are those of {zone} ({offset}).").format(zone=swim.zone, offset=offset_text(swim.depart))
    return Part(
        title=tr("Timeline"), lines=(zone,), heads=(tr("Time"), tr("What"), tr("Position (WGS84)")), rows=tuple(rows)
    )


def _hangs(number: int, sheet: ShoreSheet) -> bool:
    """Whether a stop lies after a leg that cannot be swum."""
    return sheet.stuck is not None and number >= sheet.stuck.number


def _landings(sheet: ShoreSheet) -> Part:
    rows = tuple((one.name, position_text(one.lon, one.lat)) for one in sheet.landings)
    words = tr("Where they may come ashore. Late swimmers may use another exit than planned: look there too.")
    return Part(title=tr("Ways out"), lines=(words,), heads=(tr("Place"), tr("Position (WGS84)")), rows=rows)


def _drift(sheet: ShoreSheet) -> Part:
    lines = [
        tr("Where a float with a person may be who stopped swimming. A prediction: the sea may do otherwise."),
        sheet.wind,
        tr("Dotted on the map: where a float may be so many minutes after the planned return. North is up."),
    ]
    swim, home = sheet.swim, sheet.drift_after_return
    rows = [_drift_row(stop.name, stop.arrive, sheet.drift_from(stop), swim) for stop in swim.stops]
    if home:
        rows.insert(0, _drift_row(tr("anywhere on the swim"), swim.arrive, home, swim))
    heads = (tr("Last heard of"), *(tr("{:.0f} min later").format(minutes) for minutes in AFTER_MIN))
    return Part(
        title=tr("Drift areas"),
        lines=tuple(lines),
        heads=heads,
        rows=tuple(filter(None, rows)),
        picture="drift" if home else "",
        on_new_page=True,
    )


def _drift_row(place: str, moment: datetime | None, areas: tuple[DriftArea, ...], swim: SwimPlan) -> tuple[str, ...]:
    """Where and when, then each area in words; nothing for a stop that is not reached."""
    if not areas:
        return ()
    by_time = {area.after_min: area for area in areas}
    found = (by_time.get(minutes) for minutes in AFTER_MIN)
    return (f"{place}, {_moment(moment, swim)}", *(_area_words(area) for area in found))


def _area_words(area: DriftArea | None) -> str:
    if area is None or len(area.ring) == 0:
        return tr("not known: the stream there is not known")
    lon, lat = middle_of(area)
    reach_m = max(geodesic_leg(lon, lat, *place)[0] for place in area.ring)
    km = math.ceil(reach_m / 100.0) / 10.0  # rather too far than not far enough
    words = (
        tr("within {km:.1f} km of {place}, or ashore")
        if area.ashore_share > 0.0
        else tr("within {km:.1f} km of {place}")
    )
    return words.format(km=km, place=position_text(lon, lat))


def middle_of(area: DriftArea) -> tuple[float, float]:
    """The middle of an area's box in degrees; its ring may be drawn on beyond 180."""
    first = area.ring[0][0]
    lons = [first + (lon - first + 180.0) % 360.0 - 180.0 for lon, _ in area.ring]
    lats = [lat for _, lat in area.ring]
    lon = (min(lons) + max(lons)) / 2.0
    return (lon + 180.0) % 360.0 - 180.0, (min(lats) + max(lats)) / 2.0


def _cautions() -> Part:
    lines = [
        tr("PREDICTED from tables and a chart, not observed. Water depths, streams and boats may be otherwise."),
        tr("Agree how they tell you that they are ashore. The alarm is yours: it works without their telephones."),
        tr("Local rules and the rescue service's word go before this sheet."),
    ]
    return Part(title=tr("Cautions"), lines=tuple(lines))
