"""Transits: two things ashore seen in line from a mark, and pairs of them that cross there."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from .plain_values import iso_time, rounded

LonLat = tuple[float, float]


@dataclass(frozen=True, kw_only=True)
class Transit:
    """Two landmarks in line, ``front`` the nearer one; ``lonlat`` are the mark, the front and the rear in degrees.

    Bearings are those of the line, looking from the mark over the front at the rear. ``offset_m`` is how far the line
    passes from the mark, positive to the right of it as one looks; ``sensitivity_m`` how far off the line one is when
    the two stand 5 minutes of arc apart. ``crossing_deg`` (0-90) is the angle with the other transit of the mark that
    comes nearest to a right angle, None without another.
    """

    mark: str
    front: str
    rear: str
    bearing_true_deg: float
    bearing_mag_deg: float
    offset_m: float
    sensitivity_m: float
    front_m: float
    rear_m: float
    lonlat: tuple[LonLat, LonLat, LonLat]
    crossing_deg: float | None = None


@dataclass(frozen=True, kw_only=True)
class TransitFix:
    """Two transits that cross at ``crossing_deg`` (to 90); ``error_m`` is how far from the mark they can be expected to
    put a swimmer who has both in line. The first one is the sharper."""

    first: Transit
    second: Transit
    crossing_deg: float
    error_m: float


@dataclass(frozen=True, kw_only=True)
class MarkTransits:
    """What was found for one mark: pairs that cross, the best first; where there are none, the best single transits.

    ``in_line`` counts all transits within the limits; ``reason`` says why there is no pair, empty where there is one.
    """

    mark: str
    lon: float
    lat: float
    in_line: int
    fixes: tuple[TransitFix, ...] = ()
    singles: tuple[Transit, ...] = ()
    reason: str = ""


@dataclass(frozen=True, kw_only=True)
class TransitsFound:
    """The transits of several marks out of ``landmarks`` things ashore; ``date`` is that of the magnetic variation."""

    marks: tuple[MarkTransits, ...]
    landmarks: int
    offset_limit_m: float
    variation_model: str
    date: datetime
    warnings: tuple[str, ...] = ()


def bearing_text(transit: Transit) -> str:
    """The magnetic bearing of the line as a card has it: three whole degrees and M, ``045M``."""
    return f"{round(transit.bearing_mag_deg) % 360:03d}M"


def transit_words(transit: Transit) -> str:
    """Front, rear and bearing in one line: ``Mill / Tower 045M``."""
    return f"{transit.front} / {transit.rear} {bearing_text(transit)}"


def transits_dict(found: TransitsFound, *, version: str) -> dict[str, object]:
    """All of it as JSON's own kinds of value; None where something is not known."""
    return {
        "tideleg": version,
        "landmarks": found.landmarks,
        "offset_limit_m": rounded(found.offset_limit_m),
        "variation_model": found.variation_model,
        "date": iso_time(found.date, where="date"),
        "marks": [
            {
                "mark": one.mark,
                "lon": round(one.lon, 7),
                "lat": round(one.lat, 7),
                "in_line": one.in_line,
                "fixes": [_fix(number, fix) for number, fix in enumerate(one.fixes, start=1)],
                "singles": [_transit(transit) for transit in one.singles],
                "reason": one.reason,
            }
            for one in found.marks
        ],
        "warnings": list(found.warnings),
    }


def _fix(number: int, fix: TransitFix) -> dict[str, object]:
    return {
        "rank": number,
        "crossing_deg": rounded(fix.crossing_deg),
        "error_m": rounded(fix.error_m),
        "transits": [_transit(fix.first), _transit(fix.second)],
    }


def _transit(transit: Transit) -> dict[str, object]:
    names = ("bearing_true_deg", "bearing_mag_deg", "offset_m", "sensitivity_m", "front_m", "rear_m", "crossing_deg")
    return {
        "front": transit.front,
        "rear": transit.rear,
        **{name: rounded(getattr(transit, name)) for name in names},
        "words": transit_words(transit),
    }
