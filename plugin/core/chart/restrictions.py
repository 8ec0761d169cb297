"""What a charted restriction means to a swimmer: the rule, the words for it, and when it is in force.

The codes are those of the IHO S-57 attributes RESTRN, CATREA, PERSTA, PEREND, DATSTA and DATEND. Codes up to RESTRN 15
and the CATREA list were compared with the catalogue that GDAL ships (``s57expectedinput.csv``); RESTRN 16 to 27 and
CATREA 26 to 28 are from memory. Which rule a code becomes is this project's choice, on the careful side.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from ..words import marked, spoken, tr

NO_ENTRY, NO_SPEARING, NO_ANCHORING, LOADED_GUN_BAN, CAUTION = (
    "no_entry",
    "no_spearing",
    "no_anchoring",
    "loaded_gun_ban",
    "caution",
)
STRICTEST_FIRST = (NO_ENTRY, NO_SPEARING, LOADED_GUN_BAN, NO_ANCHORING, CAUTION)

# A restricted act may be allowed to some, at times or by permit; for a swimmer who has none it is taken as barred.
# A float at anchor stops, so "stopping prohibited" bars anchoring. A ban on diving bars what spearing needs.
RESTRN = {
    1: (marked("anchoring prohibited"), NO_ANCHORING),
    2: (marked("anchoring restricted"), NO_ANCHORING),
    3: (marked("fishing prohibited"), NO_SPEARING),
    4: (marked("fishing restricted"), NO_SPEARING),
    5: (marked("trawling prohibited"), CAUTION),
    6: (marked("trawling restricted"), CAUTION),
    7: (marked("entry prohibited"), NO_ENTRY),
    8: (marked("entry restricted"), NO_ENTRY),
    9: (marked("dredging prohibited"), CAUTION),
    10: (marked("dredging restricted"), CAUTION),
    11: (marked("diving prohibited"), NO_SPEARING),
    12: (marked("diving restricted"), NO_SPEARING),
    13: (marked("no wake"), CAUTION),
    14: (marked("area to be avoided"), CAUTION),
    15: (marked("construction prohibited"), CAUTION),
    16: (marked("discharging prohibited"), CAUTION),
    17: (marked("discharging restricted"), CAUTION),
    18: (marked("exploration or development prohibited"), CAUTION),
    19: (marked("exploration or development restricted"), CAUTION),
    20: (marked("drilling prohibited"), CAUTION),
    21: (marked("drilling restricted"), CAUTION),
    22: (marked("removal of historical artefacts prohibited"), CAUTION),
    23: (marked("cargo transhipment prohibited"), CAUTION),
    24: (marked("dragging prohibited"), CAUTION),
    25: (marked("stopping prohibited"), NO_ANCHORING),
    26: (marked("landing prohibited"), CAUTION),
    27: (marked("speed restricted"), CAUTION),
}
# The category says what a place is for, not what is barred; what such places often bar is common practice, no source.
CATREA = {
    1: (marked("offshore safety zone"), NO_ENTRY),
    4: (marked("nature reserve"), NO_SPEARING),
    5: (marked("bird sanctuary"), CAUTION),
    6: (marked("game preserve"), CAUTION),
    7: (marked("seal sanctuary"), CAUTION),
    8: (marked("degaussing range"), CAUTION),
    9: (marked("military area"), NO_ENTRY),
    10: (marked("historic wreck area"), NO_SPEARING),
    12: (marked("navigational aid safety zone"), CAUTION),
    14: (marked("minefield"), NO_ENTRY),
    18: (marked("swimming area"), LOADED_GUN_BAN),
    19: (marked("waiting area"), CAUTION),
    20: (marked("research area"), CAUTION),
    21: (marked("dredging area"), CAUTION),
    22: (marked("fish sanctuary"), NO_SPEARING),
    23: (marked("ecological reserve"), NO_SPEARING),
    24: (marked("no wake area"), CAUTION),
    25: (marked("swinging area"), CAUTION),
    26: (marked("water skiing area"), CAUTION),
    27: (marked("environmentally sensitive sea area"), CAUTION),
    28: (marked("particularly sensitive sea area"), CAUTION),
}

_FULL_DATE = re.compile(r"(\d{4})(\d\d)(\d\d)$")
_EACH_YEAR = re.compile(r"--(\d\d)(\d\d|--?)?$")
_LAST_DAY = (31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)  # 29 February: a leap year's day is still in the season


@dataclass(frozen=True, kw_only=True)
class Restriction:
    """The strictest rule of an area and the words of everything charted about it, strict or not."""

    rule: str
    words: str

    def __post_init__(self) -> None:
        if self.rule not in STRICTEST_FIRST:
            raise ValueError(f"rule is {self.rule!r}; it is one of {', '.join(STRICTEST_FIRST)}")


@dataclass(frozen=True, kw_only=True)
class Season:
    """When an area is in force: ISO dates or each year's `--MMDD`, "" where there is no limit.

    ``words`` says what of the charted dates is not in ``from_time`` and ``to_time``; the times then stand wider.
    """

    from_time: str = ""
    to_time: str = ""
    words: str = ""


def restriction_of(restrn: Iterable[int] = (), catrea: Iterable[int] = ()) -> Restriction:
    """The strictest rule among the codes of RESTRN and CATREA; caution where there are none or none is known."""
    charted = [_meaning("RESTRN", RESTRN, code) for code in restrn]
    charted += [_meaning("CATREA", CATREA, code) for code in catrea]
    rules = {rule for _, rule in charted} | {CAUTION}
    return Restriction(
        rule=next(rule for rule in STRICTEST_FIRST if rule in rules), words=", ".join(words for words, _ in charted)
    )


def season_of(*, persta: str = "", perend: str = "", datsta: str = "", datend: str = "") -> Season:
    """When an area is in force, from the charted season (PERSTA, PEREND) or else the charted dates (DATSTA, DATEND).

    The plan has room for one of the two: the season is kept, as it lasts longer than the dates of one edition. A season
    with one end only, or with a date that is neither a day nor a month, is not used: the area then counts at all times.
    """
    season = (_each_year(persta, first=True), _each_year(perend, first=False))
    dates = (_full_date(datsta), _full_date(datend))
    if all(season):
        return Season(from_time=season[0], to_time=season[1], words=_said(DATSTA=datsta, DATEND=datend))
    words = _said(
        PERSTA=persta,
        PEREND=perend,
        DATSTA="" if dates[0] else datsta,
        DATEND="" if dates[1] else datend,
    )
    return Season(from_time=dates[0], to_time=dates[1], words=words)


def _meaning(name: str, table: dict[int, tuple[str, str]], code: int) -> tuple[str, str]:
    if code not in table:
        return tr("{name} code {code}, not known here").format(name=name, code=code), CAUTION
    words, rule = table[code]
    return spoken(words), rule


def _each_year(text: str, *, first: bool) -> str:
    """`--MMDD` of a charted season's end, a month alone being its first or last day; "" where it is not a date."""
    found = _EACH_YEAR.match(text.strip()) or re.match(r"\d{4}(\d\d)(\d\d)$", text.strip())
    if not found or not 1 <= int(found[1]) <= 12:
        return ""
    last = _LAST_DAY[int(found[1]) - 1]
    if not (found[2] or "").isdigit():
        return f"--{found[1]}{1 if first else last:02d}"
    return f"--{found[1]}{found[2]}" if 1 <= int(found[2]) <= last else ""


def _full_date(text: str) -> str:
    found = _FULL_DATE.match(text.strip())
    if not found or not (1 <= int(found[2]) <= 12 and 1 <= int(found[3]) <= _LAST_DAY[int(found[2]) - 1]):
        return ""
    return f"{found[1]}-{found[2]}-{found[3]}"


def _said(**attributes: str) -> str:
    return ", ".join(f"{name} {text.strip()}" for name, text in attributes.items() if text.strip())
