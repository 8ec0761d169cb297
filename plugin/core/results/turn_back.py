"""When each stop must be left, which exit to take if late, and from where on the way out there is no turning back."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime

from .flag import Flag
from .plain_values import iso_time, rounded


@dataclass(frozen=True, kw_only=True)
class HardStop:
    """A moment to be ashore by: dusk, hours, back_by or alarm. The reserve counts where ``with_reserve``."""

    name: str
    words: str
    moment: datetime
    with_reserve: bool


@dataclass(frozen=True, kw_only=True)
class LeavingBand:
    """Leaving times from ``first`` to ``last``, whole minutes, at all of which some exit is reached in time.

    ``exit`` is the quickest safe one at the last minute; ``ends_by`` says what ends the band.
    """

    first: datetime
    last: datetime
    exit: str
    ends_by: str


@dataclass(frozen=True, kw_only=True)
class WayHome:
    """Leaving at a moment for an exit: headings to hold, piece by piece, magnetic, and minutes, in the water expected.

    ``minutes_pessimistic`` is the longest of the bad days, None where the exit is not reached on one of them; ``safe``
    says whether every hard stop keeps its reserve, ``safe_pessimistic`` the same for the bad days.
    """

    leave: datetime
    exit: str
    headings_mag_deg: tuple[float, ...]
    minutes: float
    arrive: datetime
    minutes_pessimistic: float | None
    safe: bool
    safe_pessimistic: bool


@dataclass(frozen=True, kw_only=True)
class StopTurnBack:
    """One stop: when it must be left.

    ``latest_leave`` ends the band that holds the arrival, else the planned leaving; None where neither is safe;
    ``exit`` is the quickest safe exit at that minute. ``planned_exit`` is the route's end, ``latest_planned_exit``
    the last minute at which that one is safe; ``_pessimistic`` is the same on a bad day, and
    ``pessimistic_not_before`` the first minute of that where it is not so on arriving. ``else_exit`` is the quickest
    other one that is safe a minute later, or soon, from ``else_not_before`` on. ``if_late`` are ways by the quickest
    exit at and after the planned leaving, ``by_departure`` ways to the planned exit.
    """

    name: str
    number: int
    lon: float
    lat: float
    arrive: datetime
    leave: datetime
    bands: tuple[LeavingBand, ...]
    bands_pessimistic: tuple[LeavingBand, ...]
    latest_leave: datetime | None
    latest_leave_pessimistic: datetime | None
    exit: str | None
    planned_exit: str
    latest_planned_exit: datetime | None
    latest_planned_exit_pessimistic: datetime | None
    pessimistic_not_before: datetime | None
    else_exit: str | None
    else_not_before: datetime | None = None
    if_late: tuple[WayHome, ...] = ()
    by_departure: tuple[WayHome, ...] = ()


@dataclass(frozen=True, kw_only=True)
class NoReturn:
    """The last place on an outward leg from which turning back to the best exit keeps every hard stop.

    ``moment``, ``lon`` and ``lat`` are None where one may turn back from all of the leg, and ``way_m`` is then the
    leg's length; 0 where turning is not safe even at its start.
    """

    leg: int
    name: str
    pessimistic: bool
    whole_leg: bool
    moment: datetime | None
    lon: float | None
    lat: float | None
    way_m: float


@dataclass(frozen=True, kw_only=True)
class TurnBack:
    """The turn back of a whole swim. ``exits`` are the names of the places to land that were looked at; ``flags`` say
    where the plan itself leaves too late."""

    exits: tuple[str, ...]
    reserve_factor: float
    reserve_min: float
    hard_stops: tuple[HardStop, ...]
    stops: tuple[StopTurnBack, ...]
    no_return: tuple[NoReturn, ...]
    flags: tuple[Flag, ...] = ()
    warnings: tuple[str, ...] = ()


def turn_back_dict(found: TurnBack, *, version: str, alone: Mapping[str, TurnBack] | None = None) -> dict[str, object]:
    """The turn back as JSON's own kinds of value; None where something is not known or not there.

    ``alone`` are those of the swimmers of a group, each alone at the group's places and times.
    """
    return {
        "tideleg": version,
        "exits": list(found.exits),
        "reserve_factor": found.reserve_factor,
        "reserve_min": found.reserve_min,
        "hard_stops": [
            {
                "name": stop.name,
                "words": stop.words,
                "time": iso_time(stop.moment, where=stop.name),
                "with_reserve": stop.with_reserve,
            }
            for stop in found.hard_stops
        ],
        "stops": [_stop(stop) for stop in found.stops],
        "no_return": [
            {
                "leg": one.leg,
                "to": one.name,
                "pessimistic": one.pessimistic,
                "whole_leg": one.whole_leg,
                "time": iso_time(one.moment, where="no_return"),
                "lon": one.lon,
                "lat": one.lat,
                "way_m": rounded(one.way_m),
            }
            for one in found.no_return
        ],
        "alone": {name: [_latest(stop) for stop in one.stops] for name, one in (alone or {}).items()},
        "warnings": [*(flag.message for flag in found.flags), *found.warnings],
    }


def _latest(stop: StopTurnBack) -> dict[str, object]:
    times = {name: iso_time(getattr(stop, name), where=name) for name in ("latest_leave", "latest_leave_pessimistic")}
    return {"name": stop.name, **times, "exit": stop.exit}


def _stop(stop: StopTurnBack) -> dict[str, object]:
    times = ("arrive", "leave", "latest_leave", "latest_leave_pessimistic")
    planned = ("latest_planned_exit", "latest_planned_exit_pessimistic", "pessimistic_not_before", "else_not_before")
    return {
        "name": stop.name,
        **{name: iso_time(getattr(stop, name), where=name) for name in times + planned},
        "exit": stop.exit,
        "planned_exit": stop.planned_exit,
        "else_exit": stop.else_exit,
        "bands": [_band(band) for band in stop.bands],
        "bands_pessimistic": [_band(band) for band in stop.bands_pessimistic],
        "if_late": [_way(way) for way in stop.if_late],
        "by_departure": [_way(way) for way in stop.by_departure],
    }


def _band(band: LeavingBand) -> dict[str, object]:
    ends = {name: iso_time(getattr(band, name), where=name) for name in ("first", "last")}
    return {**ends, "exit": band.exit, "ends_by": band.ends_by}


def _way(way: WayHome) -> dict[str, object]:
    return {
        "leave": iso_time(way.leave, where="leave"),
        "exit": way.exit,
        "headings_mag_deg": [rounded(heading) for heading in way.headings_mag_deg],
        "minutes": rounded(way.minutes),
        "arrive": iso_time(way.arrive, where="arrive"),
        "minutes_pessimistic": rounded(way.minutes_pessimistic),
        "safe": way.safe,
        "safe_pessimistic": way.safe_pessimistic,
    }
