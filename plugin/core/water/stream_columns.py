"""Which column of a stream table is what: by its heading, or by its place where there is none."""

from __future__ import annotations

import re
from dataclasses import dataclass

from ..quantities import M_S_PER_KNOT
from ..text_table import TextTable
from ..words import tr

# What the headings of a table may be called, without what stands in brackets and without units.
_HEADINGS: dict[str, str] = {
    "hour": r"(tidal )?(hours?|hrs?|h)( (from|to|relative to|after|of)( the)?( (tide|hw|lw|high water|low water))?)?",
    "set": r"(set|direction|dir|towards?|bearing|course|current direction|stream direction|going to)( true)?",
    "spring": r"(rate |speed )?(at )?(mean )?(springs?|sp)( rates?| speed)?",
    "neap": r"(rate |speed )?(at )?(mean )?(neaps?|np)( rates?| speed)?",
    "at_95": r"(v|c|rate|coef(f|ficient)?|vive eau|ve)?( at)? ?95",
    "at_45": r"(v|c|rate|coef(f|ficient)?|morte eau|me)?( at)? ?45",
    "rate": r"rate|speed|velocity|current speed|stream rate|rate flood ebb",
    "time": r"time|date ?/? ?time|date and time|moment|datetime|local time|begin|start( time)?",
    "date": r"date|day",
    "clock": r"clock|time of day",
    "kind": r"kind|event|type|phase|state",
    "flood_set": r"(mean )?(flood (set|dir|direction|towards)|set of the flood)( true)?",
    "ebb_set": r"(mean )?(ebb (set|dir|direction|towards)|set of the ebb)( true)?",
    "constituent": r"constituents?|const|harmonic",
    "u_amplitude": r"(u|east|eastward) ?(amp|amplitude)|amp(litude)? u",
    "u_phase": r"(u|east|eastward) ?(phase|g|lag|phase lag)|phase u",
    "v_amplitude": r"(v|north|northward) ?(amp|amplitude)|amp(litude)? v",
    "v_phase": r"(v|north|northward) ?(phase|g|lag|phase lag)|phase v",
    "lon": r"(start )?(lon|long|longitude)",
    "lat": r"(start )?(lat|latitude)",
    "end_lon": r"end (lon|long|longitude)",
    "end_lat": r"end (lat|latitude)",
    "end_time": r"end( time)?|ended|stop( time)?",
    "minutes": r"minutes|duration|min",
    "note": r"notes?|remarks?|comments?",
    "from": r"(wind )?(from|wind direction|wind dir|wind from)",
    "wind_speed": r"(wind ?speed|wind|wind rate)",
    "coefficient": r"(tide )?coef(f|ficient)?",
}
_PATTERNS = {role: re.compile(pattern) for role, pattern in _HEADINGS.items()}
KNOTS_PER = {"kn": 1.0, "m/s": 1.0 / M_S_PER_KNOT, "cm/s": 0.01 / M_S_PER_KNOT}
_UNITS = (
    ("cm/s", re.compile(r"(?<![a-z])cm ?(/|_per_|_|\u00b7| )? ?s(ec)?(-1|\b)", re.IGNORECASE)),
    ("m/s", re.compile(r"(?<![a-z])(m ?(/|_per_|_|\u00b7| )? ?s(ec)?(-1|\b)|mps\b)", re.IGNORECASE)),
    ("kn", re.compile(r"(?<![a-z])(kn|kts?|knots?)(?![a-z])", re.IGNORECASE)),
)
# Roles by place in a table without headings; the first list that is as long as its rows serves.
BY_PLACE: dict[str, tuple[tuple[str, ...], ...]] = {
    "hourly": (("hour", "set", "spring", "neap"), ("hour", "set", "spring")),
    "events": (("time", "kind", "rate"), ("time", "rate"), ("date", "clock", "kind", "rate")),
    "series": (("time", "set", "rate"), ("date", "clock", "set", "rate")),
    "constants": (("constituent", "u_amplitude", "u_phase", "v_amplitude", "v_phase"),),
    "winds": (("time", "from", "wind_speed"), ("date", "clock", "from", "wind_speed")),
    "tide_coefficients": (("time", "coefficient"), ("date", "clock", "coefficient"), ("date", "coefficient")),
}
NEEDED: dict[str, tuple[tuple[str, ...], ...]] = {
    "hourly": (("hour",), ("set",), ("spring", "neap", "rate")),
    "coefficients": (("hour",), ("set",), ("at_95", "at_45", "spring")),
    "events": (("time", "date"), ("rate",)),
    "series": (("time", "date"), ("set",), ("rate",)),
    "constants": (("constituent",), ("u_amplitude",), ("u_phase",), ("v_amplitude",), ("v_phase",)),
    "drift": (("time", "date"), ("lon",), ("lat",), ("end_time", "minutes"), ("end_lon",), ("end_lat",)),
    "winds": (("time", "date"), ("from",), ("wind_speed",)),
    "tide_coefficients": (("time", "date"), ("coefficient",)),
}


@dataclass(frozen=True, kw_only=True)
class Columns:
    """What the columns of a table are: by role the column's number from 0; ``headings`` as they stand, if they do.

    ``unit`` is that of the rates as their headings say it, "" where they say none; ``first`` the first row of figures.
    """

    places: dict[str, int]
    headings: tuple[str, ...]
    first: int
    unit: str = ""

    def words(self) -> list[dict[str, str]]:
        """For each column its heading or number, and what it was taken for."""
        roles = {place: role for role, place in self.places.items()}
        count = max([len(self.headings), *(place + 1 for place in roles)])
        return [
            {
                "column": self.headings[place]
                if place < len(self.headings)
                else tr("column {number}").format(number=place + 1),
                "taken_for": roles.get(place, tr("nothing")),
            }
            for place in range(count)
        ]

    def heading(self, role: str) -> str:
        """The heading of a role's column, or its number, as an error names it."""
        place = self.places.get(role, -1)
        if 0 <= place < len(self.headings):
            return self.headings[place]
        return tr("column {number}").format(number=place + 1) if place >= 0 else role


def columns_by_heading(table: TextTable) -> Columns | None:
    """The columns by their headings; None where the first row has none.

    ValueError where two columns have headings for the same thing.
    """
    if not table.rows:
        return None
    headings = table.rows[0].cells
    roles = [role_of(heading) for heading in headings]
    known = [role for role in roles if role]
    if len(known) < 2 and not (known and len(headings) == 1):
        return None
    if "date" in known and "time" in known:
        roles = ["clock" if role == "time" else role for role in roles]
    places: dict[str, int] = {}
    for place, role in enumerate(roles):
        if role in places:
            raise ValueError(
                tr("Columns '{first}' and '{second}' both say the {role}").format(
                    first=headings[places[role]], second=headings[place], role=role
                )
            )
        if role:
            places[role] = place
    return Columns(places=places, headings=headings, first=1, unit=_unit(headings, places))


def columns_by_place(table: TextTable, form: str) -> Columns | None:
    """The columns of a table without headings by their places; None where their number fits no order of the form."""
    width = max((len(row.cells) for row in table.rows), default=0)
    for roles in BY_PLACE.get(form, ()):
        if len(roles) == width:
            return Columns(places={role: place for place, role in enumerate(roles)}, headings=(), first=0)
    return None


def role_of(heading: str) -> str:
    """What a heading stands for, "" for one that is not known."""
    plain = re.sub(r"\(.*?\)|\[.*?\]", " ", heading.lower())
    plain = re.sub(r"_(m_s|kn|deg|min|h|m)$|\b(c?m/s|c?m s-1|kn|kts?|knots?|deg(rees)?|true|utc|gmt)\b", " ", plain)
    plain = re.sub(r"[^a-z0-9/]+", " ", plain).strip()
    if not plain and _unit_in(heading):
        return "rate"
    return next((role for role, pattern in _PATTERNS.items() if pattern.fullmatch(plain)), "")


def _unit(headings: tuple[str, ...], places: dict[str, int]) -> str:
    """The one unit that the headings of rates name; ValueError where they name two."""
    rates = ("spring", "neap", "at_95", "at_45", "rate", "u_amplitude", "v_amplitude", "wind_speed")
    found = {_unit_in(headings[places[role]]) for role in rates if role in places} - {""}
    if len(found) > 1:
        raise ValueError(tr("The headings name two units: {units}").format(units=tr(" and ").join(sorted(found))))
    return found.pop() if found else ""


def _unit_in(heading: str) -> str:
    return next((unit for unit, pattern in _UNITS if pattern.search(heading)), "")
