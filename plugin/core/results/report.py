"""The planned swim as the JSON report, for people's scripts and for the shore contact's own checks.

The keys are a contract: docs/report.schema.json states them, docs/report.md explains them.
"""

from __future__ import annotations

import json
import math
from collections.abc import Iterable

from .flag import Flag
from .plain_values import iso_time
from .swim_plan import HeadingChange, Leg, Stop, SwimPlan

DECIMALS = 6  # a micrometre, a microdegree: far below what is known, and free of binary noise
PLACE_DECIMALS = 7  # of a degree of longitude or latitude: about a centimetre


class ReportError(ValueError):
    """A number that is not finite was about to enter a report; unknown numbers are None."""


def report_text(plan: SwimPlan, version: str) -> str:
    """JSON text of ``report_dict``, UTF-8 letters kept, ending with a newline."""
    return json.dumps(report_dict(plan, version=version), indent=1, ensure_ascii=False, allow_nan=False) + "\n"


def report_dict(plan: SwimPlan, *, version: str) -> dict[str, object]:
    """The report as plain dicts, lists, numbers and strings, in the order of the contract.

    Times are ISO 8601 with offset, to the second; lengths metres, angles degrees in [0, 360), rates knots.
    Raises ``ReportError`` where a number is not finite and ``NaiveTimeError`` where a time has no offset.
    """
    return {
        "tideleg": version,
        "route": plan.route,
        "depart": iso_time(plan.depart, where="depart"),
        "arrive": iso_time(plan.arrive, where="arrive"),
        "zone": plan.zone,
        "swimmer": plan.swimmer,
        "total_m": _number(plan.total_m, "total_m"),
        "total_min": _number(plan.total_min, "total_min"),
        "swim_min": _number(plan.swim_min, "swim_min"),
        "feasible": bool(plan.feasible),
        "variation_deg": _number(plan.variation_deg, "variation_deg"),
        "variation_model": plan.variation_model,
        "legs": [_leg(leg) for leg in plan.legs],
        "stops": [_stop(stop) for stop in plan.stops],
        "flags": [_flag(flag) for flag in plan.flags],
        "warnings": [str(warning) for warning in plan.warnings],
    }


def middle_of(points: Iterable[tuple[float, float]]) -> tuple[float, float]:
    """(lon, lat) half-way along a stretch of (lon, lat) points, in degrees; one point is its own middle.

    Lengths are taken on a local equirectangular sheet, good to well under 1 % of a swim's length, and the
    antimeridian is crossed the short way.
    """
    line = unwrapped(points)
    shrink = math.cos(math.radians(line[0][1]))
    lengths = [math.hypot((b[0] - a[0]) * shrink, b[1] - a[1]) for a, b in zip(line, line[1:])]
    left = sum(lengths) / 2.0
    for (a, b), length in zip(zip(line, line[1:]), lengths):
        if length > 0.0 and left <= length:
            share = left / length
            return wrapped_lon(a[0] + share * (b[0] - a[0])), a[1] + share * (b[1] - a[1])
        left -= length
    return wrapped_lon(line[0][0]), line[0][1]


def unwrapped(points: Iterable[tuple[float, float]]) -> list[tuple[float, float]]:
    """The points with longitudes shifted by whole turns so that no step is longer than half a turn."""
    line: list[tuple[float, float]] = []
    for lon, lat in points:
        if line:
            lon += 360.0 * round((line[-1][0] - lon) / 360.0)
        line.append((float(lon), float(lat)))
    return line


def wrapped_lon(lon: float) -> float:
    """Longitude in [-180, 180) degrees."""
    return (lon + 180.0) % 360.0 - 180.0


def _leg(leg: Leg) -> dict[str, object]:
    where = f"leg {leg.number}"
    return {
        "number": int(leg.number),
        "from": leg.start_name,
        "to": leg.end_name,
        "distance_m": _number(leg.distance_m, f"{where} distance_m"),
        "bearing_true_deg": _angle(leg.bearing_true_deg, f"{where} bearing_true_deg"),
        "bearing_mag_deg": _angle(leg.bearing_mag_deg, f"{where} bearing_mag_deg"),
        "heading_true_deg": _angle(leg.heading_true_deg, f"{where} heading_true_deg"),
        "heading_mag_deg": _angle(leg.heading_mag_deg, f"{where} heading_mag_deg"),
        "card_heading": leg.card_heading,
        "ground_speed_m_s": _number(leg.ground_speed_m_s, f"{where} ground_speed_m_s"),
        "minutes": _number(leg.minutes, f"{where} minutes"),
        "depart": iso_time(leg.depart, where=f"{where} depart"),
        "arrive": iso_time(leg.arrive, where=f"{where} arrive"),
        "stream_set_deg": _angle(leg.stream_set_deg, f"{where} stream_set_deg"),
        "stream_kn": _number(leg.stream_kn, f"{where} stream_kn"),
        "off_line_m": _number(leg.off_line_m, f"{where} off_line_m"),
        "feasible": bool(leg.feasible),
        "reason": leg.reason,
        "headings": [_heading(change, where) for change in leg.headings],
    }


def _heading(change: HeadingChange, where: str) -> dict[str, object]:
    return {
        "from": iso_time(change.moment, where=f"{where} headings"),
        "heading_mag_deg": _angle(change.heading_mag_deg, f"{where} headings"),
    }


def _stop(stop: Stop) -> dict[str, object]:
    where = f"stop {stop.name!r}"
    return {
        "name": stop.name,
        "arrive": iso_time(stop.arrive, where=f"{where} arrive"),
        "leave": iso_time(stop.leave, where=f"{where} leave"),
        "depth_now_m": _number(stop.depth_now_m, f"{where} depth_now_m"),
        "latest_leave": iso_time(stop.latest_leave, where=f"{where} latest_leave"),
        "latest_leave_pessimistic": iso_time(stop.latest_leave_pessimistic, where=f"{where} latest_leave_pessimistic"),
        "exit": stop.exit,
    }


def _flag(flag: Flag) -> dict[str, object]:
    where = f"flag {flag.kind}"
    lon, lat = middle_of(flag.points)
    return {
        "kind": flag.kind,
        "severity": flag.severity,
        "leg": None if flag.leg is None else int(flag.leg),
        "name": flag.name,
        "message": flag.message,
        "lon": _number(lon, f"{where} lon", PLACE_DECIMALS),
        "lat": _number(lat, f"{where} lat", PLACE_DECIMALS),
        "from": iso_time(flag.start, where=f"{where} from"),
        "to": iso_time(flag.end, where=f"{where} to"),
        "length_m": _number(flag.length_m, f"{where} length_m"),
        "crossing_angle_deg": _number(flag.crossing_angle_deg, f"{where} crossing_angle_deg"),
    }


def _number(value: float | None, where: str, decimals: int = DECIMALS) -> float | None:
    if value is None:
        return None
    if not math.isfinite(value):
        raise ReportError(f"The report's {where} is {value}. Unknown numbers are None. Mend what computed it.")
    return round(float(value), decimals) + 0.0  # + 0.0: no minus zero


def _angle(value: float | None, where: str) -> float | None:
    number = _number(value, where)
    return None if number is None else round(number % 360.0, DECIMALS) % 360.0
