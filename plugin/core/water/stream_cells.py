"""What the cells of a stream table say: numbers, directions, hours from a tide, places.

Each reader raises ValueError saying what it allows, so that whoever knows the row can name it.
"""

from __future__ import annotations

import math
import re

from ..text_table import is_missing
from ..words import tr

_NUMBER = re.compile(r"[+-]?(\d+([.,]\d*)?|[.,]\d+)$")
_POINTS = ("N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW")
_HOURS = re.compile(r"(?P<water>HW|LW)?\s*(?P<hours>[+-]?\s*\d+)?\s*(h|hr|hrs|hours?)?$", re.IGNORECASE)
_BESIDE = re.compile(
    r"(?P<hours>\d+)\s*(h|hr|hrs|hours?)?\s*(?P<side>before|after)(\s*(?P<water>HW|LW))?$", re.IGNORECASE
)


def is_blank(text: str) -> bool:
    """Whether a cell says that nothing is known: empty, a dash, n/a."""
    return is_missing(text) or text.strip() in ("\u2013", "\u2014")


def number_in(text: str, low: float, high: float) -> float:
    """A number with a decimal point or comma; ValueError for another text and for one out of range."""
    plain = _plain(text)
    value = float(plain.replace(",", ".")) if plain.isascii() and _NUMBER.match(plain) else math.nan
    if not (math.isfinite(value) and low <= value <= high):
        raise ValueError(tr("It is a number from {low:g} to {high:g}").format(low=low, high=high))
    return value


def direction_in(text: str) -> float:
    """A true direction in degrees 0-360, from a number, with or without a degree sign or T, or a compass point."""
    plain = _plain(text).upper()
    if plain in _POINTS:
        return 22.5 * _POINTS.index(plain)
    if re.search(r"M(AG.*)?$", plain):
        raise ValueError(tr("It is a true direction; magnetic ones must be turned into true ones first"))
    plain = re.sub(r"\s*(\u00b0|DEG(REES)?|T(RUE)?)+$", "", re.sub(r"\s+", "", plain))
    try:
        return number_in(plain, 0.0, 360.0)
    except ValueError as error:
        raise ValueError(tr("It is a true direction from 0 to 360 degrees, or a compass point")) from error


def hour_in(text: str) -> tuple[int, str]:
    """Whole hours from a tide, -6 to 6, and the tide if the cell names it (HW, LW or ""): `-3`, `HW+2`, `3 before`."""
    plain = _plain(text)
    beside = _BESIDE.match(plain)
    found = beside or _HOURS.match(plain)
    if not plain or not found or not (found["hours"] or found["water"]):
        raise ValueError(tr("It is whole hours from the tide, from -6 to 6, such as -3, HW+2 or '3 before HW'"))
    hours = int(re.sub(r"\s", "", found["hours"] or "0"))
    if beside and beside["side"].lower() == "before":
        hours = -hours
    if not -6 <= hours <= 6:
        raise ValueError(tr("It is whole hours from the tide, from -6 to 6"))
    return hours, (found["water"] or "").upper()


def coordinate_in(text: str, limit: float, letters: str) -> float:
    """Degrees, negative for the second of the two letters (`EW` or `NS`): `-28.512`, `28 30.7 W`, `28.512W`.

    ``limit`` is the largest degree.
    """
    plain = re.sub(r"[\u00b0'\u2032\u2019\"]", " ", _plain(text).upper()).strip()
    letter = plain[-1:] if plain[-1:] in tuple(letters) else ""
    parts = (plain[:-1] if letter else plain).split()
    allowed = tr("It is degrees up to {limit:g}, or degrees and minutes with {first} or {second}").format(
        limit=limit, first=letters[0], second=letters[1]
    )
    if not 1 <= len(parts) <= 2:
        raise ValueError(allowed)
    try:
        degrees = number_in(parts[0], -limit, limit)
        minutes = number_in(parts[1], 0.0, 59.99999) if len(parts) == 2 else 0.0
    except ValueError as error:
        raise ValueError(allowed) from error
    if (letter or len(parts) == 2) and parts[0].startswith(("+", "-")) or (len(parts) == 2 and not letter):
        raise ValueError(allowed)
    value = degrees + minutes / 60.0
    if abs(value) > limit:
        raise ValueError(allowed)
    return -value if letter and letter == letters[1] else value


def _plain(text: str) -> str:
    """Without blanks around, with a plain minus."""
    return text.strip().replace("\u2212", "-").replace("\u2013", "-")
