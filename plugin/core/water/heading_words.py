"""What the heading of a stream table says beside its name, in brackets or behind it: known, or refused by name."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence

from ..errors import BadInputError
from ..words import marked, spoken, tr
from .stream_columns import role_of

_DEGREES = {
    "\u00b0",
    "deg",
    "degs",
    "degree",
    "degrees",
    "t",
    "true",
    "tn",
    "degt",
    "degst",
    "0",
    "00",
    "000",
    "359",
    "360",
}
_TOWARDS = {"to", "toward", "towards", "going", "flowing", "which", "the", "water", "goes", "flows", "set"}
_RATE = {
    "kn",
    "kt",
    "kts",
    "knot",
    "knots",
    "m/s",
    "cm/s",
    "mps",
    "m s-1",
    "cm s-1",
    "m s",
    "cm s",
    "in",
    "mean",
    "rate",
}
_RATE |= {"speed", "average", "springs", "spring", "neaps", "neap", "max", "maximum"}
_TIDE = {"h", "hr", "hrs", "hour", "hours", "hw", "lw", "high", "low", "water", "from", "to", "before", "after", "of"}
_TIDE |= {"relative", "at", "the", "whole", "+", "-", "+/-", "\u00b1", "0", "6", "-6", "+6"}
_ANGLE = {"\u00b0", "deg", "degree", "degrees"}
_DIRECTIONS = ("set", "flood_set", "ebb_set")
_RATES = ("spring", "neap", "at_95", "at_45", "rate", "u_amplitude", "v_amplitude", "wind_speed")
# Which words may stand there for which column; columns that are not named here may say anything.
_KNOWN: dict[str, set[str]] = {
    **dict.fromkeys(_DIRECTIONS, _DEGREES | _TOWARDS),
    "from": _DEGREES | {"from", "coming", "blowing", "which", "the", "wind", "blows", "comes"},
    **dict.fromkeys(_RATES, _RATE),
    "hour": _TIDE,
    **dict.fromkeys(("u_phase", "v_phase"), _ANGLE | {"g", "greenwich", "utc", "gmt", "lag"}),
    **dict.fromkeys(("lon", "end_lon"), _ANGLE | {"e", "east", "+e", "wgs84", "wgs 84", "decimal"}),
    **dict.fromkeys(("lat", "end_lat"), _ANGLE | {"n", "north", "+n", "wgs84", "wgs 84", "decimal"}),
    "minutes": {"min", "mins", "minute", "minutes"},
}
_SHOWN = {
    **dict.fromkeys(_DIRECTIONS, "deg, \u00b0, T, true, towards"),
    "from": "deg, \u00b0, T, true, from",
    **dict.fromkeys(_RATES, "kn, m/s, cm/s"),
    "hour": "h, HW, LW",
    **dict.fromkeys(("u_phase", "v_phase"), "deg, Greenwich"),
    **dict.fromkeys(("lon", "end_lon"), "deg, E"),
    **dict.fromkeys(("lat", "end_lat"), "deg, N"),
    "minutes": "min",
}
_BESIDE = re.compile(r"\((.*?)\)|\[(.*?)\]|_(m_s|kn|deg|min|h|m)$", re.IGNORECASE)
_UNIT = re.compile(
    r"(?<![a-z/])(c?m ?(?:/|_per_|_|\u00b7| )? ?s(?:ec)?(?:-1|\b)|mps\b|kn\b|kts?\b|knots?\b)", re.IGNORECASE
)
_WAYS = re.compile(
    r"(?:\+(?:ve)?|positive)\s*(?:is |=|on (?:the )?)?\s*flood|flood\s*(?:is |=)?\s*(?:\+(?:ve)?|positive)"
    r"|(?:-(?:ve)?|negative)\s*(?:is |=|on (?:the )?)?\s*ebb|ebb\s*(?:is |=)?\s*(?:-(?:ve)?|negative)"
)
_FROM_NORTH = re.compile(r"\b(clockwise )?from (true )?(n|north)\b")
_MAGNETIC = re.compile(r"\b(mag|magn|magnetic|m)\b|\u00b0\s*m\b|compass")
_MAGNETIC_ALONE = re.compile(
    r"(?<![a-z])(mag|magn|magnetic)(?![a-z])|\u00b0\s*m\b|\b(set|direction|dir|course|bearing)[ _]+m$"
)
_DIRECTION_FROM = re.compile(
    r"\b(set|direction|dir|course|bearing|current|stream|flow|flows|water|coming|comes)\b.*\bfrom\b|"
    r"\bfrom[ _]+(direction|dir|bearing|deg)"
)
_TO_TRUE = marked("Give true directions: magnetic plus the east variation")
_TO_TOWARDS = marked("Give true directions the water goes to")


def check_headings(headings: Sequence[str], roles: Mapping[int, str], form: str, row: int, name: str) -> None:
    """Refuse what a heading says that is not read: units that are not known, magnetic directions, streams from.

    ``roles`` says by place what each column was taken for. BadInputError names the heading and what is allowed.
    """
    for place, heading in enumerate(headings):
        fault = _fault(heading, roles.get(place, ""), form) or _half_known(heading, place, roles)
        if fault:
            raise BadInputError(layer=name, row=row, field=heading, allowed=fault[0], remedy=fault[1])


def tide_in(heading: str) -> str:
    """The tide from which a heading of hours counts them: HW, LW, "" for neither or both."""
    high = bool(re.search(r"\bhw\b|\bhigh water\b", heading, re.IGNORECASE))
    low = bool(re.search(r"\blw\b|\blow water\b", heading, re.IGNORECASE))
    return "" if high == low else "HW" if high else "LW"


def _half_known(heading: str, place: int, roles: Mapping[int, str]) -> tuple[str, str] | None:
    """What is wrong with a column that begins as one of rates or directions, goes on otherwise, and is not there else.

    It would be passed over, and with it half of the table.
    """
    words = re.findall(r"[a-z]+", heading.lower())
    begins = role_of(words[0]) if words and place not in roles else ""
    if begins not in (*_DIRECTIONS, *_RATES) or begins in roles.values():
        return None
    return (
        tr("It begins as a column for {role}, and the rest of it is not read; in brackets it may say {words}").format(
            role=begins, words=_SHOWN[begins]
        ),
        tr("Turn the figures into what the table may say, and correct the heading"),
    )


def _fault(heading: str, role: str, form: str) -> tuple[str, str] | None:
    """What is wrong with a heading, and the remedy; None where it is clear."""
    plain = heading.lower().replace("\u2212", "-")
    if _MAGNETIC_ALONE.search(plain) and role not in ("kind", "note"):
        return tr("It says magnetic, and directions are true"), spoken(_TO_TRUE)
    if not role and _DIRECTION_FROM.search(_FROM_NORTH.sub(" ", plain.replace("_", " "))):
        return tr("It says from, and streams are where the water goes to"), spoken(_TO_TOWARDS)
    if role == "from" and form != "winds":
        return tr("It says from, which only a wind does; streams are where the water goes to"), spoken(_TO_TOWARDS)
    if role in _RATES and len(set(_UNIT.findall(plain))) > 1:
        return tr("It names two units"), tr("Name the one that the figures are in")
    if role not in _KNOWN:
        return None
    for found in _BESIDE.finditer(plain):
        fault = _fault_beside(next(filter(None, found.groups()), ""), role)
        if fault:
            return fault
    return None


def _fault_beside(text: str, role: str) -> tuple[str, str] | None:
    plain = _WAYS.sub(" ", _FROM_NORTH.sub(" ", text.strip())) if role in _RATES else _FROM_NORTH.sub(" ", text.strip())
    known = _KNOWN[role]
    if plain.strip() in known:
        return None
    if role in _RATES:
        plain = re.sub(r"^\s*" + _UNIT.pattern + r"(?=$|[\s,;])", " ", plain, flags=re.IGNORECASE)
    words = [
        word for word in re.findall(r"\u00b0|[^\s,;.:\u00b0]+", re.sub(r"(?<=\d)\s*[-\u2013]\s*(?=\d)", " ", plain))
    ]
    strange = next((word for word in words if word not in known), "")
    if not strange:
        return None
    if role in (*_DIRECTIONS, "from") and _MAGNETIC.search(plain):
        return tr("It says '{text}', and directions are true").format(text=text), spoken(_TO_TRUE)
    if role in _DIRECTIONS and "from" in words:
        return tr("It says '{text}', and streams are where the water goes to").format(text=text), spoken(_TO_TOWARDS)
    return (
        tr("It says '{text}', which is not read; beside its name a heading may say {words}").format(
            text=text, words=_SHOWN[role]
        ),
        tr("Turn the figures into what the table may say, and correct the heading"),
    )
