"""A position as a person types it: degrees and decimal minutes, with hemispheres or signs."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from .errors import SwimPlanError
from .words import tr

EXAMPLE = "36 12.345 N 050 01.234 W"
_TOKEN = re.compile(r"(?P<number>\d+(?:\.\d*)?|\.\d+)|(?P<letter>[NSEW])|(?P<sign>[+-])|(?P<part>[,;/])")
_SAME_AS_A_SPACE = re.compile("[°º˚'’‘′´`\"”“″:_\\s]+")
_DASH_BETWEEN_NUMBERS = re.compile(r"(?<=[\d.])-(?=[\d.])")  # 36-12.345N
_HEMISPHERE = re.compile("[NSEW]")
_DECIMAL_COMMA = re.compile(r"(?<=\d),(?=\d)")
LATITUDE, LONGITUDE = "NS", "EW"
MOST_DEG = {LATITUDE: 90.0, LONGITUDE: 180.0}
WORDS = {LATITUDE: "latitude", LONGITUDE: "longitude"}


@dataclass(frozen=True, kw_only=True)
class _Token:
    """A piece of the text and which of the four kinds it is."""

    kind: str
    text: str


def position_from_text(text: str) -> tuple[float, float]:
    """Longitude and latitude in degrees of a typed position; SwimPlanError for what is not one or may mean two.

    Degrees and decimal minutes; degrees alone, and degrees, minutes and seconds, are taken as well, with the usual
    marks or spaces between. Either both hemispheres stand there (before or after the figures, in any order), or none:
    then latitude comes first and south and west have a minus.
    """
    tokens = _tokens(text)
    letters = [token.text for token in tokens if token.kind == "letter"]
    if len(letters) not in (0, 2):
        raise _refused(text, tr("It has both hemispheres (N or S, and E or W) or neither"))
    first, second = _halves(text, tokens)
    if letters and letters[0] in LONGITUDE:
        first, second = second, first
    lat, lon = _degrees(text, first, LATITUDE), _degrees(text, second, LONGITUDE)
    return lon, lat


def _tokens(text: str) -> list[_Token]:
    plain = text.replace("−", "-").replace("–", "-").strip().upper()
    if "." not in plain:
        plain = _DECIMAL_COMMA.sub(".", plain)
    plain = _SAME_AS_A_SPACE.sub(" ", plain)
    if _HEMISPHERE.search(plain):  # without one a dash may be a minus
        plain = _DASH_BETWEEN_NUMBERS.sub(" ", plain)
    tokens, place = [], 0
    while place < len(plain):
        found = _TOKEN.match(plain, place)
        if found:
            tokens.append(_Token(kind=str(found.lastgroup), text=found.group()))
            place = found.end()
        elif plain[place] == " ":
            place += 1
        elif plain[place] == "O":
            raise _refused(text, tr("O is west in some languages and east in others: write E or W"))
        else:
            raise _refused(text, tr("{plain!r} has no place in it").format(plain=plain[place]))
    return tokens


def _halves(text: str, tokens: Sequence[_Token]) -> tuple[list[_Token], list[_Token]]:
    """The tokens of the one coordinate and of the other, what parts them left out."""
    cut = _cut(tokens)
    kept = [[token for token in half if token.kind != "part"] for half in (tokens[:cut], tokens[cut:])]
    if not all(any(token.kind == "number" for token in half) for half in kept):
        raise _refused(text, tr("It has a latitude and a longitude"))
    return kept[0], kept[1]


def _cut(tokens: Sequence[_Token]) -> int:
    """Where the second coordinate begins."""
    kinds = [token.kind for token in tokens]
    letters = [number for number, kind in enumerate(kinds) if kind == "letter"]
    if letters:
        return letters[1] if letters[0] == 0 else letters[0] + 1
    for kind in ("part", "sign"):
        inner = [number for number in range(1, len(kinds)) if kinds[number] == kind]
        if inner:
            return inner[0]
    numbers = [number for number, kind in enumerate(kinds) if kind == "number"]
    return numbers[len(numbers) // 2] if len(numbers) in (2, 4, 6) else len(tokens)


def _degrees(text: str, tokens: Sequence[_Token], axis: str) -> float:
    """The signed degrees of one coordinate."""
    word = WORDS[axis]
    letters = [token.text for token in tokens if token.kind == "letter"]
    signs = [number for number, token in enumerate(tokens) if token.kind == "sign"]
    figures = [token.text for token in tokens if token.kind == "number"]
    if letters and letters[0] not in axis:
        raise _refused(text, tr("It has one latitude (N or S) and one longitude (E or W)"))
    if signs and (letters or signs != [0]):
        raise _refused(text, tr("The {word} has either a hemisphere or one sign, before its degrees").format(word=word))
    if len(figures) > 3 or any("." in figure for figure in figures[:-1]):
        raise _refused(text, tr("The {word} has whole degrees, then minutes with decimals").format(word=word))
    degrees, minutes, seconds = ([float(figure) for figure in figures] + [0.0, 0.0])[:3]
    if minutes >= 60.0 or seconds >= 60.0:
        raise _refused(text, tr("Minutes and seconds of the {word} are below 60").format(word=word))
    size = degrees + minutes / 60.0 + seconds / 3600.0
    if size > MOST_DEG[axis]:
        raise _refused(text, tr("A {word} is at most {most_deg:g} degrees").format(word=word, most_deg=MOST_DEG[axis]))
    negative = (letters and letters[0] in "SW") or (signs and tokens[0].text == "-")
    return -size if negative else size


def _refused(text: str, allowed: str) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("'{text}' is not a position").format(text=text.strip())
        if text.strip()
        else tr("No position was typed"),
        allowed=allowed,
        remedy=tr("Write it like {example}").format(example=EXAMPLE),
    )
