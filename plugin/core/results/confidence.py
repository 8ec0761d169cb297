"""How sure a plan is: when each stop is reached on many days, where dead reckoning ends, and where a float drifts."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from .plain_values import iso_time, rounded

Ring = tuple[tuple[float, float], ...]


@dataclass(frozen=True, kw_only=True)
class Ellipse:
    """Where 95 of 100 swimmers are who hold the planned headings for the planned time from the last stop.

    ``lon`` and ``lat`` of the middle, ``off_m`` from the stop; variances and covariance along the plan's grid, m2;
    ``major_true_deg`` 0-180; ``ring`` in degrees; ``unknown_share`` of the members met water that is not known.
    """

    lon: float
    lat: float
    off_m: float
    east_m2: float
    north_m2: float
    east_north_m2: float
    semi_major_m: float
    semi_minor_m: float
    major_true_deg: float
    ring: Ring
    unknown_share: float


@dataclass(frozen=True, kw_only=True)
class StopSpread:
    """When a stop is reached. ``p10``, ``p50``, ``p90``: by then so many of 100 members are there, those who never
    arrive counted in; None where they never are so many. ``planned`` is None where the plan itself does not get there.
    ``mean_min`` and ``sd_min`` after the departure, of those who arrive."""

    number: int
    name: str
    lon: float
    lat: float
    planned: datetime | None
    p10: datetime | None
    p50: datetime | None
    p90: datetime | None
    arrives_share: float
    mean_min: float | None
    sd_min: float | None
    ellipse: Ellipse | None


@dataclass(frozen=True, kw_only=True)
class LegDoubt:
    """A leg: how many members began it, how many could not complete it, and for which reasons (words, members)."""

    number: int
    start_name: str
    end_name: str
    began: int
    failed: int
    reasons: tuple[tuple[str, int], ...]


@dataclass(frozen=True, kw_only=True)
class HomeBy:
    """A moment to be home by, and the share of all members that are; both None where there is no such moment."""

    name: str
    moment: datetime | None
    share: float | None


@dataclass(frozen=True, kw_only=True)
class DriftArea:
    """Where a float with a person is that stopped swimming at ``start`` (None: at any time of the swim).

    ``moment`` is when; ``after_min`` counts from the start, or where that is None from the planned return. ``ring`` is
    the hull of the members in degrees, empty where more than a tenth of them met water that is not known;
    ``ashore_share`` have drifted onto land.
    """

    start: datetime | None
    place: str
    lon: float | None
    lat: float | None
    after_min: float
    moment: datetime
    ring: Ring
    farthest_m: float | None
    ashore_share: float
    unknown_share: float


@dataclass(frozen=True, kw_only=True)
class LatestHome:
    """The last safe moment at which one, or the group, leaves the last mark; None where there is none."""

    who: str
    latest: datetime | None


@dataclass(frozen=True, kw_only=True)
class Confidence:
    """How sure a plan is, from so many members drawn with a seed; ``doubts`` says in words from what."""

    route: str
    swimmer: str
    zone: str
    depart: datetime
    arrive: datetime | None
    members: int
    seed: int
    doubts: tuple[str, ...]
    completed_share: float
    home_by: tuple[HomeBy, ...]
    stops: tuple[StopSpread, ...]
    legs: tuple[LegDoubt, ...]
    wind: str
    drift: tuple[DriftArea, ...]
    home_deadline: datetime | None
    latest_home: tuple[LatestHome, ...]
    warnings: tuple[str, ...]


def confidence_dict(found: Confidence, *, version: str) -> dict[str, object]:
    """The result as JSON's own kinds of value: times ISO 8601 with offset, None where something is not known."""
    return {
        "tideleg": version,
        "route": found.route,
        "swimmer": found.swimmer,
        "zone": found.zone,
        "depart": iso_time(found.depart, where="depart"),
        "arrive": iso_time(found.arrive, where="arrive"),
        "members": found.members,
        "seed": found.seed,
        "doubts": list(found.doubts),
        "completed_share": rounded(found.completed_share),
        "home_by": [
            {"name": one.name, "time": iso_time(one.moment, where=one.name), "share": rounded(one.share)}
            for one in found.home_by
        ],
        "stops": [_stop(one) for one in found.stops],
        "legs": [_leg(one) for one in found.legs],
        "wind": found.wind,
        "drift": [_drift(one) for one in found.drift],
        "latest_home": {
            "back_by": iso_time(found.home_deadline, where="back_by"),
            "who": [{"name": one.who, "latest": iso_time(one.latest, where="latest")} for one in found.latest_home],
        },
        "warnings": list(found.warnings),
    }


def _stop(one: StopSpread) -> dict[str, object]:
    times = {name: iso_time(getattr(one, name), where=name) for name in ("planned", "p10", "p50", "p90")}
    return {
        "number": one.number,
        "name": one.name,
        "lon": one.lon,
        "lat": one.lat,
        **times,
        "arrives_share": rounded(one.arrives_share),
        "mean_min": rounded(one.mean_min),
        "sd_min": rounded(one.sd_min),
        "ellipse": None if one.ellipse is None else _ellipse(one.ellipse),
    }


def _ellipse(one: Ellipse) -> dict[str, object]:
    numbers = ("off_m", "east_m2", "north_m2", "east_north_m2", "semi_major_m", "semi_minor_m", "major_true_deg")
    return {
        "lon": one.lon,
        "lat": one.lat,
        **{name: rounded(getattr(one, name)) for name in numbers},
        "unknown_share": rounded(one.unknown_share),
    }


def _leg(one: LegDoubt) -> dict[str, object]:
    return {
        "number": one.number,
        "from": one.start_name,
        "to": one.end_name,
        "began": one.began,
        "failed": one.failed,
        "reasons": dict(one.reasons),
    }


def _drift(one: DriftArea) -> dict[str, object]:
    return {
        "start": iso_time(one.start, where="start"),
        "place": one.place,
        "lon": one.lon,
        "lat": one.lat,
        "after_min": rounded(one.after_min),
        "time": iso_time(one.moment, where="time"),
        "farthest_m": rounded(one.farthest_m),
        "ashore_share": rounded(one.ashore_share),
        "unknown_share": rounded(one.unknown_share),
        "ring": [list(place) for place in one.ring],
    }
