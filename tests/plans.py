"""Planned swims made for the tests of what is written from them: invented places, invented numbers that agree.

``make_plan`` lays a ring of marks round an entry in the open ocean and swims it in a steady stream, so that headings,
minutes, times and tracks belong together. Nothing here is computed by the plugin.
"""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from pyproj import Geod
from tideleg.core.results.flag import Flag
from tideleg.core.results.swim_plan import HeadingChange, Leg, Stop, StreamTurn, SwimPlan, TideMoment, TrackPoint
from tideleg.core.results.turn_back import LeavingBand, StopTurnBack, TurnBack, WayHome

GEOD = Geod(ellps="WGS84")
VARIATION_DEG = -4.0
PACE_M_S = 0.7
STREAM_KN, STREAM_SET_DEG = 0.5, 200.0
NAMES = ("Kettle Slip", "Gannet Heads", "Long Sill", "Three Ovens", "Cinder Patch", "Lost Anchor", "Petrel Rock")


def make_plan(
    *,
    legs: int = 2,
    lon: float = -28.5,
    lat: float = 42.4,
    zone: str = "Atlantic/Azores",
    names: tuple[str, ...] = (),
    unswimmable: tuple[int, ...] = (),
    headings_per_leg: int = 1,
    flags: tuple[Flag, ...] | None = None,
    leg_m: float = 700.0,
    stay_min: float = 20.0,
    bare: bool = False,
) -> SwimPlan:
    """A swim of so many legs from the entry round the marks and home; legs after an unswimmable one have no times.

    ``bare`` leaves out all that may be unknown: tides, stream turns, depths, sun, alarm, land, flags.
    """
    zone_info = ZoneInfo(zone)
    depart = datetime(2027, 6, 5, 9, 40, tzinfo=zone_info)
    places = _ring(lon, lat, legs, leg_m)
    labels = [_name(names, index, legs) for index in range(legs + 1)]
    planned: list[Leg] = []
    stops = [_stop(labels[0], places[0], None, depart, kind="entry", bare=bare)]
    clock: datetime | None = depart
    for number in range(1, legs + 1):
        leg = _leg(number, labels, places, clock, headings_per_leg, number in unswimmable)
        planned.append(leg)
        last = number == legs
        clock = None if leg.arrive is None or last else leg.arrive + timedelta(minutes=stay_min)
        kind = "exit" if last else "mark"
        stops.append(_stop(labels[number], places[number], leg.arrive, clock, kind=kind, bare=bare))
    arrive = planned[-1].arrive
    swim_min = None if arrive is None else sum(leg.minutes for leg in planned)
    return SwimPlan(
        route="Round of the sills",
        swimmer="steady",
        zone=zone,
        datum="chart datum",
        title="INVENTED - NOT FOR NAVIGATION",
        depart=depart,
        arrive=arrive,
        total_m=sum(leg.distance_m for leg in planned),
        total_min=None if arrive is None else (arrive - depart).total_seconds() / 60.0,
        swim_min=swim_min,
        feasible=not unswimmable,
        variation_deg=VARIATION_DEG,
        variation_model="WMM2025",
        variation_date=depart,
        heading_mode=0 if headings_per_leg == 1 else 1,
        heading_step_deg=5.0,
        line_m=30.0,
        legs=tuple(planned),
        stops=tuple(stops),
        flags=_flags(places, depart) if flags is None and not bare else flags or (),
        warnings=() if bare else ("2 empty geometries skipped in channels",),
        tides=() if bare else _tides(depart),
        stream_turns=() if bare else _turns(depart),
        sunset=None if bare else depart.replace(hour=20, minute=4, second=31),
        civil_dusk=None if bare else depart.replace(hour=20, minute=36),
        alarm=None if bare or arrive is None else arrive + timedelta(minutes=30),
        land_rings=() if bare else (_land(lon, lat),),
    )


def with_turn_backs(plan: SwimPlan, **changes: object) -> SwimPlan:
    """The plan with a turn back at every stop between its ends: 40 min after the planned leaving, 25 on a bad day."""
    stops = []
    for number, stop in enumerate(plan.stops[1:-1], start=1):
        if stop.arrive is None or stop.leave is None:
            continue
        latest, bad = stop.leave + timedelta(minutes=40), stop.leave + timedelta(minutes=25)
        about = {
            "latest_leave": latest,
            "latest_leave_pessimistic": bad,
            "exit": "Boat Steps",
            "planned_exit": plan.stops[-1].name,
            "latest_planned_exit": latest - timedelta(minutes=10),
            "latest_planned_exit_pessimistic": bad - timedelta(minutes=10),
            "pessimistic_not_before": None,
            "else_exit": "Boat Steps",
        }
        band = LeavingBand(first=stop.arrive, last=latest, exit="Boat Steps", ends_by="dusk")
        stops.append(
            StopTurnBack(
                name=stop.name,
                number=number,
                lon=stop.lon,
                lat=stop.lat,
                arrive=stop.arrive,
                leave=stop.leave,
                bands=(band,),
                bands_pessimistic=(),
                **{**about, **changes},
            )
        )
    found = TurnBack(
        exits=(plan.stops[-1].name, "Boat Steps"),
        reserve_factor=1.3,
        reserve_min=25.0,
        hard_stops=(),
        stops=tuple(stops),
        no_return=(),
    )
    return replace(plan, turn_back=found)


def with_ways_home(plan: SwimPlan, *, exit: str = "Boat Steps") -> SwimPlan:
    """The plan with five ways if late and six by departure at every stop of its turn back; the fourth is too late."""

    def way(leave: datetime, number: int, name: str) -> WayHome:
        return WayHome(
            leave=leave,
            exit=name,
            headings_mag_deg=(213.0, 190.0) if number == 2 else (213.0,),
            minutes=35.2 + number,
            arrive=leave + timedelta(minutes=35.2 + number),
            minutes_pessimistic=44.0,
            safe=number < 3,
            safe_pessimistic=number < 2,
        )

    stops = [
        replace(
            stop,
            if_late=tuple(way(stop.leave + timedelta(minutes=10 * n), n, exit) for n in range(5)),
            by_departure=tuple(way(stop.arrive + timedelta(minutes=15 * n), n, stop.planned_exit) for n in range(6)),
        )
        for stop in plan.turn_back.stops
    ]
    return replace(plan, turn_back=replace(plan.turn_back, stops=tuple(stops)))


def with_legs(plan: SwimPlan, **changes: object) -> SwimPlan:
    """The plan with the same fields changed in every leg."""
    return replace(plan, legs=tuple(replace(leg, **changes) for leg in plan.legs))


def _ring(lon: float, lat: float, legs: int, leg_m: float) -> list[tuple[float, float]]:
    """Entry, marks, and the entry again as the exit: a closed polygon of equal legs (there and back for two legs)."""
    places = [(lon, lat)]
    for number in range(1, legs):
        bearing = 60.0 + 360.0 * (number - 1) / legs
        east, north, _ = GEOD.fwd(*places[-1], bearing, leg_m)
        places.append((east, north))
    return places + [(lon, lat)]


def _name(names: tuple[str, ...], index: int, legs: int) -> str:
    if index < len(names):
        return names[index]
    if index in (0, legs):
        return NAMES[0]
    return NAMES[index % len(NAMES)] if index < len(NAMES) else f"Patch {index}"


def _leg(
    number: int, labels: list[str], places: list[tuple[float, float]], depart: datetime | None, parts: int, stuck: bool
) -> Leg:
    start, end = places[number - 1], places[number]
    bearing, _, distance = GEOD.inv(*start, *end)
    common = dict(
        number=number,
        start_name=labels[number - 1],
        end_name=labels[number],
        start_lon=start[0],
        start_lat=start[1],
        end_lon=end[0],
        end_lat=end[1],
        distance_m=distance,
        bearing_true_deg=bearing % 360.0,
        bearing_mag_deg=(bearing - VARIATION_DEG) % 360.0,
    )
    if depart is None or stuck:
        reason = "Across-stream 1.1 kn beats 0.7 m/s." if depart else "An earlier leg cannot be swum."
        return Leg(**common, **_unknown(), depart=depart, arrive=None, feasible=False, reason=reason)
    stream = STREAM_KN * 1852.0 / 3600.0
    angle = math.radians(STREAM_SET_DEG - bearing)
    offset = math.degrees(math.asin(-stream * math.sin(angle) / PACE_M_S))
    speed = stream * math.cos(angle) + math.sqrt(PACE_M_S**2 - (stream * math.sin(angle)) ** 2)
    seconds = distance / speed
    magnetic = (bearing + offset - VARIATION_DEG) % 360.0
    changes = tuple(
        HeadingChange(
            moment=depart + timedelta(seconds=seconds * part / parts),
            heading_true_deg=(magnetic + VARIATION_DEG + 10.0 * part) % 360.0,
            heading_mag_deg=(magnetic + 10.0 * part) % 360.0,
        )
        for part in range(parts)
    )
    return Leg(
        **common,
        heading_true_deg=(bearing + offset) % 360.0,
        heading_mag_deg=magnetic,
        card_heading=f"{int(math.floor(magnetic / 5.0 + 0.5) * 5) % 360:03d}M",
        ground_speed_m_s=speed,
        minutes=seconds / 60.0,
        depart=depart,
        arrive=depart + timedelta(seconds=seconds),
        stream_set_deg=STREAM_SET_DEG,
        stream_kn=STREAM_KN,
        off_line_m=distance * 0.03,
        feasible=True,
        reason="",
        headings=changes,
        track=_track(start, bearing, distance, depart, seconds, speed, magnetic),
    )


def _unknown() -> dict[str, None]:
    names = "heading_true_deg heading_mag_deg card_heading ground_speed_m_s minutes stream_set_deg stream_kn off_line_m"
    return dict.fromkeys(names.split())


def _track(start, bearing, distance, depart, seconds, speed, magnetic) -> tuple[TrackPoint, ...]:
    """Twenty-one places, bowed 3 % to the right of the straight line."""
    points = []
    for step in range(21):
        share = step / 20.0
        east, north, _ = GEOD.fwd(*start, bearing, distance * share)
        east, north, _ = GEOD.fwd(east, north, bearing + 90.0, 0.03 * distance * math.sin(math.pi * share))
        points.append(
            TrackPoint(
                lon=east,
                lat=north,
                moment=depart + timedelta(seconds=seconds * share),
                heading_mag_deg=magnetic,
                ground_speed_m_s=speed,
                stream_set_deg=STREAM_SET_DEG,
                stream_kn=STREAM_KN,
            )
        )
    return tuple(points)


def _stop(name, place, arrive, leave, *, kind: str, bare: bool) -> Stop:
    known = kind == "mark" and not bare
    hours = [(datetime(2027, 6, 5, hour, tzinfo=ZoneInfo("UTC")), 9.0 + 0.4 * (hour - 9)) for hour in range(10, 15)]
    return Stop(
        name=name,
        kind=kind,
        lon=place[0],
        lat=place[1],
        arrive=arrive,
        leave=leave,
        charted_depth_m=8.5 if known else None,
        depth_now_m=10.2 if known and arrive is not None else None,
        depth_by_hour=tuple((m.astimezone(arrive.tzinfo), d) for m, d in hours) if known and arrive else (),
    )


def _flags(places: list[tuple[float, float]], depart: datetime) -> tuple[Flag, ...]:
    start, end = places[0], places[1]
    stretch = tuple((start[0] + (end[0] - start[0]) * s, start[1] + (end[1] - start[1]) * s) for s in (0.3, 0.4, 0.5))
    channel = Flag(
        kind="channel",
        severity="warn",
        message="Leg 1 crosses Slate Gut from 09:48 to 09:53 at 62 degrees to its flow: turn square across.",
        points=stretch,
        leg=1,
        name="Slate Gut",
        start=depart + timedelta(minutes=8),
        end=depart + timedelta(minutes=13),
        length_m=140.0,
        crossing_angle_deg=62.0,
    )
    default = Flag(
        kind="uncalibrated", severity="note", message="The pace is a guess until swum and timed.", points=(start,)
    )
    reserve = Flag(
        kind="closed_area",
        severity="stop",
        message="Leg 2 enters Tern Reserve: no entry, 1 Apr to 31 Aug.",
        points=(end,),
        leg=2,
        name="Tern Reserve",
    )
    return channel, default, reserve


def _tides(depart: datetime) -> tuple[TideMoment, ...]:
    return (
        TideMoment(moment=depart.replace(hour=8, minute=12), kind="LW", height_m=0.8),
        TideMoment(moment=depart.replace(hour=14, minute=21), kind="HW", height_m=4.1),
    )


def _turns(depart: datetime) -> tuple[StreamTurn, ...]:
    return (
        StreamTurn(moment=depart.replace(hour=11, minute=34), rate_kn=0.1, set_after_deg=20.0),
        StreamTurn(moment=depart.replace(hour=17, minute=40), rate_kn=0.0, set_after_deg=None),
    )


def _land(lon: float, lat: float):
    import numpy as np

    west = [(lon - 0.02, lat - 0.02), (lon - 0.001, lat - 0.02), (lon - 0.0004, lat), (lon - 0.003, lat + 0.02)]
    return np.array(west + [(lon - 0.02, lat + 0.02), (lon - 0.02, lat - 0.02)])
