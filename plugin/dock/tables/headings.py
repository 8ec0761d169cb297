"""Which columns of a pasted table are which fields: by its headings where it has some, else from a cell on.

A heading also says what the numbers are: one that names another unit is refused, and a clock it names is taken.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import tzinfo

from ...core.clock_labels import labels_in_heading
from ...words import tr
from .cell_numbers import UNIT_NAMES, is_unit
from .cell_text import Column

# What people call a field besides its name and title.
_COMMON: dict[str, tuple[str, ...]] = {
    "time": (
        "date time",
        "datetime",
        "date and time",
        "moment",
        "when",
        "date",
        "timestamp",
        "passes at",
        "begin",
        "start",
    ),
    "end_time": ("end", "ended", "stop"),
    "height_m": ("height", "level", "tide", "ht", "hgt", "water level"),
    "kind": ("type", "event", "hw lw", "high low", "water", "state"),
    "set_deg": ("set", "direction", "dir", "towards", "bearing", "stream direction"),
    "spring_kn": ("springs", "spring", "spring rate", "rate springs", "at springs"),
    "neap_kn": ("neaps", "neap", "neap rate", "rate neaps", "at neaps"),
    "rate_kn": ("rate", "speed", "velocity"),
    "hour": ("hours", "hour from hw", "hour from lw", "hours from hw", "hours from lw", "tidal hour", "hr"),
    "station": ("place", "stream station"),
    "port": ("harbour", "harbor", "place"),
    "name": ("swimmer", "who"),
    "pace_m_s": ("pace", "speed"),
    "channel": ("ferry", "lane"),
    "clear_before_min": ("before", "clear before"),
    "clear_after_min": ("after", "clear after"),
    "constituent": ("const", "harmonic"),
    "amplitude_m": ("amp", "amplitude"),
    "phase_deg": ("phase", "g", "lag", "phase lag"),
    "coefficient": ("coef", "coeff", "tide coefficient"),
    "from_deg": ("wind from", "wind direction", "wind dir", "from"),
    "speed_kn": ("wind", "wind speed", "speed"),
    "flood_set_deg": ("flood set", "flood direction", "set of flood"),
    "ebb_set_deg": ("ebb set", "ebb direction", "set of ebb"),
}
_UNIT_WORDS = frozenset().union(*UNIT_NAMES.values()) | {"ft", "feet", "foot", "cm", "mm", "cm/s", "km/h", "mph", "s"}
_BRACKETS = re.compile(r"[(\[]([^)\]]*)[)\]]")
MOST_HEADING = 120


@dataclass(frozen=True, kw_only=True)
class Matched:
    """Where each pasted column goes, None for one that is not used; the clock its times are read from where its heading
    names one; why the paste is refused as a whole; and what to say of it."""

    columns: tuple[Column | None, ...]
    zones: tuple[tzinfo | None, ...]
    refused: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()


def by_headings(columns: Sequence[Column], cells: Sequence[str]) -> Matched | None:
    """The fields that a row of headings names; None where the row is none: most of its cells must name a field."""
    found: list[Column | None] = [_named(columns, cell) for cell in cells]
    found = [one if one is not None and one not in found[:place] else None for place, one in enumerate(found)]
    named = sum(one is not None for one in found)
    if not named or 2 * named < sum(bool(cell) for cell in cells):
        return None
    refused, notes = [], []
    zones: list[tzinfo | None] = [None] * len(found)
    for place, (cell, column) in enumerate(zip(cells, found)):
        if column is None:
            if cell:
                notes.append(tr("The column '{}' is not used: no field is called so.").format(cell[:MOST_HEADING]))
        elif column.field.kind == "datetime":
            zones[place], words = _zone(column, cell)
            refused += words
            if zones[place] is not None:
                notes.append(tr("{}: read as {}, as the heading says.").format(column.title, zones[place]))
        elif wrong := _other_unit(column, cell):
            refused.append(
                tr("The heading '{}' says {}, and the column here is in {}. Convert the numbers first.").format(
                    cell[:MOST_HEADING], wrong, column.field.unit or tr("no unit")
                )
            )
    return Matched(columns=tuple(found), zones=tuple(zones), refused=tuple(refused), notes=tuple(notes))


def by_place(columns: Sequence[Column], first: int, width: int) -> Matched:
    """The fields from one on; what sticks out on the right is not used."""
    found = list(columns[first : first + width])
    over = width - len(found)
    notes = (tr("{} columns stick out on the right and are not used.").format(over),) if over else ()
    return Matched(columns=(*found, *[None] * over), zones=(None,) * width, notes=notes)


def plain_words(heading: str) -> str:
    """A heading without brackets, signs and case: ``Rate, flood +, ebb - (kn)`` is ``rate flood ebb``."""
    return " ".join(re.findall(r"[^\W_]+", _BRACKETS.sub(" ", heading[:MOST_HEADING]).casefold()))


def _named(columns: Sequence[Column], heading: str) -> Column | None:
    """The field whose name or title it is, else one that is commonly called so, with or without a unit behind."""
    whole = plain_words(heading)
    words = whole.split(" ")
    shorter = (
        " ".join(words[:-1]) if len(words) > 1 and (words[-1] in _UNIT_WORDS or words[-1] in ("utc", "gmt")) else ""
    )
    for wanted in filter(None, (whole, shorter)):
        for names in (_own_names, _common_names):
            for column in columns:
                if wanted in names(column):
                    return column
    return None


def _own_names(column: Column) -> set[str]:
    return {plain_words(one) for one in (column.field.name, column.field.alias, column.title)} - {""}


def _common_names(column: Column) -> set[str]:
    return set(_COMMON.get(column.field.name, ()))


def _other_unit(column: Column, heading: str) -> str:
    """The unit that a heading names where it is not the field's; "" where it names none, or that one."""
    said = [one.strip().casefold() for one in _BRACKETS.findall(heading)]
    last = re.split(r"[\s_]+", _BRACKETS.sub(" ", heading).strip().casefold())[-1]
    # The field's own name ends in its unit too, such as height_m, and a title may end in a word that is one.
    own = heading.strip().casefold() in (column.field.name, column.title.casefold())
    said += [last] if last in _UNIT_WORDS and len(plain_words(heading).split()) > 1 and not own else []
    return next((one for one in said if one in _UNIT_WORDS and not is_unit(column.field, one)), "")


def _zone(column: Column, heading: str) -> tuple[tzinfo | None, list[str]]:
    """The clock that a heading names; the plan's where it names none. Letters that name no one zone are refused."""
    place = labels_in_heading(heading) if column.zone_name not in _BRACKETS.findall(heading) else None
    if place is None:
        return None, []
    if place.zone() is None or place.doubtful:
        words = tr("The heading '{}' names no one clock for certain. Write UTC or an offset such as +01:00 there.")
        return None, [words.format(heading[:MOST_HEADING])]
    return place.zone(), []
