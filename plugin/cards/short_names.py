"""Names that a small GPS can show: a few plain letters, no two alike, and still to be known again."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Sequence
from itertools import chain, count

from ..core.results.card import Place
from .gps_options import GpsOptions
from .xml_text import clean

# Letters that Unicode does not take apart into a plain one and a mark.
_SPELT = str.maketrans(
    {
        "ß": "ss", "ẞ": "SS", "æ": "ae", "Æ": "AE", "œ": "oe", "Œ": "OE", "ø": "o", "Ø": "O", "ł": "l", "Ł": "L",
        "đ": "d", "Đ": "D", "ð": "d", "Ð": "D", "þ": "th", "Þ": "Th", "ı": "i", "’": "", "'": "",
    }
)  # fmt: skip
_OTHER = re.compile(r"[^A-Za-z0-9-]+")
_KINDS = {"entry": "Entry", "mark": "Mark", "exit": "Exit", "waypoint": "Point"}
_VOWELS = frozenset("aeiouAEIOU")


def names_of(places: Sequence[Place], options: GpsOptions, taken: Iterable[str] = ()) -> list[str]:
    """A name a place: the same place keeps one name, different places of the same name are counted apart.

    ``taken`` are names that something else in the file has.
    """
    names: dict[tuple[str, float, float], str] = {}
    used = {name.upper() for name in taken} if options.plain_names else set(taken)
    for place in places:
        if place.key not in names:
            name = _free(place, used, options)
            used.add(name.upper() if options.plain_names else name)
            names[place.key] = name
    return [names[place.key] for place in places]


def short_text(text: str, options: GpsOptions, instead: str) -> str:
    """A name of its own list (of a route) as the receiver can show it; ``instead`` where nothing is left of it."""
    if not options.plain_names:
        return clean(text)
    plain = _plain(text) or instead
    plain = plain.upper() if options.upper_case else plain
    return plain if options.name_length is None else shortened(plain, options.name_length)


def shortened(name: str, length: int) -> str:
    """The name in so many characters: blanks go first, then vowels from the end, then the rest is cut.

    A first letter of a word is no vowel to lose, and a figure at the end stays.
    """
    if len(name) <= length:
        return name
    words = [word[:1].upper() + word[1:] for word in name.split(" ")]
    close = "".join(words)
    firsts = {sum(map(len, words[:number])) for number in range(len(words))}
    letters = list(close)
    for place in reversed(range(len(letters))):
        if sum(map(len, letters)) <= length:
            break
        if letters[place] in _VOWELS and place not in firsts:
            letters[place] = ""
    figures = re.search(r"\d*$", close).group()[-(length - 1) :]
    kept = "".join(letters)
    return kept if len(kept) <= length else kept[: length - len(figures)].rstrip("-") + figures


def _free(place: Place, used: set[str], options: GpsOptions) -> str:
    """The place's name, or the first number of it that is free; where no letter of it is left, its kind's with one."""
    if not options.plain_names:
        wanted = clean(place.name) or "stop"
        names = chain([wanted], (f"{wanted} {number}" for number in count(2)))
        return next(name for name in names if name not in used)
    wanted = short_text(place.name, options, "")
    if wanted:
        names = chain([wanted], (_numbered(wanted, number, options) for number in count(2)))
    else:
        kind = "stop" if place.stop is None else _KINDS.get(place.stop.kind, "stop")
        names = (_numbered(short_text(kind, options, ""), number, options) for number in count(1))
    # A receiver that has capitals alone takes Rock and ROCK for one.
    return next(name for name in names if name.upper() not in used)


def _numbered(name: str, number: int, options: GpsOptions) -> str:
    if options.name_length is None:
        return f"{name} {number}"
    return f"{shortened(name, options.name_length - len(str(number)))}{number}"


def _plain(text: str) -> str:
    """The text in plain letters, figures, hyphens and single blanks."""
    apart = unicodedata.normalize("NFKD", text.translate(_SPELT))
    marks_off = "".join(letter for letter in apart if not unicodedata.combining(letter))
    return _OTHER.sub(" ", marks_off).strip(" -")
