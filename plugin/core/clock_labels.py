"""The clocks that headings, titles and comments of a table name: UTC, offsets, zones, EST, LST and their like."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import datetime, timedelta, timezone, tzinfo

from .clock import zone_named
from .errors import SwimPlanError
from .text_moments import offset_zone
from .words import tr

FIXED, NAMED, STANDARD, DAYLIGHT = "fixed", "named", "standard", "daylight"
# Hours ahead of UTC that abbreviations stand for in their usual places; from memory, and several stand for more than
# one. They can show that a zone is wrong and never choose one. Where zoneinfo names a zone's clock so, that counts.
_HOURS: dict[str, tuple[float, ...]] = {
    **{"EST": (-5, 10), "EDT": (-4, 11), "CST": (-6, 8), "CDT": (-5,), "MST": (-7,), "MDT": (-6,), "PST": (-8, 8)},
    **{"PDT": (-7,), "AKST": (-9,), "AKDT": (-8,), "HST": (-10,), "HDT": (-9,), "HAST": (-10,), "HADT": (-9,)},
    **{"AST": (-4, 3), "ADT": (-3, 4), "NST": (-3.5,), "NDT": (-2.5,), "SST": (-11,), "CHST": (10,)},
    **{"BST": (1, 6), "IST": (1, 2, 5.5), "WET": (0,), "WEST": (1,), "CET": (1,), "CEST": (2,), "MEZ": (1,)},
    **{"MESZ": (2,), "EET": (2,), "EEST": (3,), "MSK": (3,), "SAST": (2,), "PKT": (5,), "WIB": (7,), "HKT": (8,)},
    **{"SGT": (8,), "AWST": (8,), "JST": (9,), "KST": (9,), "ACST": (9.5,), "ACDT": (10.5,), "AEST": (10,)},
    **{"AEDT": (11,), "NZST": (12,), "NZDT": (13,), "BRT": (-3,), "CLT": (-4,), "CLST": (-3,)},
    **{"ET": (-5, -4), "CT": (-6, -5), "MT": (-7, -6), "PT": (-8, -7)},
}
_SUMMER = {"EDT", "CDT", "MDT", "PDT", "AKDT", "HDT", "HADT", "ADT", "NDT", "BST", "WEST", "CEST", "MESZ", "EEST"}
_SUMMER |= {"ACDT", "AEDT", "NZDT", "CLST"}
_SPELT = (
    (re.compile(r"\beastern (standard|daylight)( time)?\b", re.I), {"s": "EST", "d": "EDT"}),
    (re.compile(r"\bcentral (standard|daylight)( time)?\b", re.I), {"s": "CST", "d": "CDT"}),
    (re.compile(r"\bmountain (standard|daylight)( time)?\b", re.I), {"s": "MST", "d": "MDT"}),
    (re.compile(r"\bpacific (standard|daylight)( time)?\b", re.I), {"s": "PST", "d": "PDT"}),
    (re.compile(r"\batlantic (standard|daylight)( time)?\b", re.I), {"s": "AST", "d": "ADT"}),
    (re.compile(r"\balaska (standard|daylight)( time)?\b", re.I), {"s": "AKST", "d": "AKDT"}),
    (re.compile(r"\bnew zealand (standard|daylight)( time)?\b", re.I), {"s": "NZST", "d": "NZDT"}),
    (re.compile(r"\bbritish (summer)( time)?\b", re.I), {"s": "BST"}),
    (re.compile(r"\bwestern european (summer)( time)?\b", re.I), {"s": "WEST"}),
    (re.compile(r"\bcentral european (summer)( time)?\b", re.I), {"s": "CEST"}),
    (re.compile(r"\beastern european (summer)( time)?\b", re.I), {"s": "EEST"}),
    (re.compile(r"\bwestern european time\b", re.I), {"": "WET"}),
    (re.compile(r"\bcentral european time\b", re.I), {"": "CET"}),
    (re.compile(r"\beastern european time\b", re.I), {"": "EET"}),
)
_OFFSET = r"[+\-\u2212]\s?\d{1,2}(?::?[0-5]\d)?(?![\d.,:])"
_UTC = r"(?i:UTC|GMT|Greenwich(?: mean)?(?: time)?|(?:coordinated )?universal time|Zulu)|UT[1C]?|Z"
_STANDARD = r"LST|(?i:local standard(?: time)?|standard time|winter time)"
_DAYLIGHT = r"LDT|DST|(?i:local daylight(?: time)?|(?:daylight|summer)(?:[ -]saving| savings)?(?: time)?)"
_WORD = re.compile(
    rf"(?<![A-Za-z0-9:])(?:(?P<utc>{_UTC})(?P<ahead>\s*{_OFFSET})?|(?P<standard>{_STANDARD})|(?P<daylight>{_DAYLIGHT})"
    rf"|(?P<named>{'|'.join(sorted(_HOURS, key=len, reverse=True))})|(?P<iana>[A-Z][A-Za-z]+(?:/[A-Z][A-Za-z_\-]+)+))"
    rf"(?![A-Za-z0-9])|(?<![\w.,:])(?P<bare>{_OFFSET})"
)
_LETTERS = re.compile(r"(?<![A-Za-z])[A-Za-z]{3,4}(?![A-Za-z])")
_STAMP = re.compile(r"\d{1,2}[:.hH]?\d{2}(?::\d{2}(?:\.\d+)?)?\s*(?:[ap]\.?m\.?)?\s*[(\[]?$", re.I)
_OF_TIME = re.compile(r"\b(?:times?|clocks?|zones?|tz|hours?|hora|horas|heures?|uhr|zeit|zeiten|tid|ora)\b", re.I)
_OF_ZONE = re.compile(
    r"\b(?:time ?zone|zone|tz|utc offset|offset|clock|times?(?=\s*[:=]))\b[^\w+\-\u2212]*(?:is|of)?\s*$", re.I
)
_IN = re.compile(r"\b(?:in|all|are)\s+$", re.I)
_TURNED = re.compile(
    r"\b(?:add|subtract|deduct|plus|minus|convert|not|without|no|un(?:corrected|adjusted)|never)\b", re.I
)
# The sign of Etc/GMT-1 is the reverse of what it looks like, so who wrote it may have meant either.
_MAYBE_LOCAL = re.compile(r"\blocal (?!standard|daylight)|\blocal\b(?=[^A-Za-z]*(?:UTC|GMT))|\bEtc/", re.I)
_OTHER_WORDS = {"WEST", "UT", "Z", "ET", "CT", "MT", "PT", "IST", "HST"}  # that stand for other things in titles


@dataclass(frozen=True, kw_only=True)
class ClockLabel:
    """One clock as a text names it.

    ``kind`` fixed (UTC, an offset, an IANA zone, in ``zone``), named (an abbreviation, which stands for the hours
    ahead of UTC in ``offsets``), standard (standard time of the place, all year) or daylight.
    """

    text: str
    kind: str
    zone: tzinfo | None = None
    offsets: tuple[timedelta, ...] = ()

    def holds(self, naive: datetime, zone: tzinfo) -> bool:
        """Whether a clock of that zone that shows ``naive`` may bear the label."""
        return any(self._holds(naive.replace(tzinfo=zone, fold=fold), zone) for fold in (0, 1))

    def _holds(self, moment: datetime, zone: tzinfo) -> bool:
        offset = moment.utcoffset()
        if self.kind == FIXED:
            return offset == self.zone.utcoffset(moment.replace(tzinfo=None))
        winter, summer = _through_the_year(moment, zone)
        if self.kind == STANDARD:
            return offset <= min(winter.utcoffset(), summer.utcoffset())
        if self.kind == DAYLIGHT:
            return is_steady(zone) or offset > min(winter.utcoffset(), summer.utcoffset())
        own = {one.tzname().upper() for one in (moment, winter, summer)}
        return moment.tzname().upper() == self.text if self.text in own else offset in self.offsets

    def steady_offset(self, naive: datetime, zone: tzinfo) -> timedelta | None:
        """The fixed offset the label most likely means beside that zone, None where it may mean several."""
        winter, summer = _through_the_year(naive.replace(tzinfo=zone), zone)
        both = (winter.utcoffset(), summer.utcoffset())
        if self.kind == FIXED:
            return self.zone.utcoffset(naive)
        if self.kind != NAMED:
            return None if is_steady(zone) else min(both) if self.kind == STANDARD else max(both)
        own = [one.utcoffset() for one in (winter, summer) if one.tzname().upper() == self.text]
        return own[0] if own else self.offsets[0] if len(self.offsets) == 1 else None


@dataclass(frozen=True, kw_only=True)
class LabelledPlace:
    """A heading or line of a table that names clocks: each of its times is on one of them. ``words`` says where.

    ``doubtful`` is one whose other words may turn the label round, as in "local, not UTC": it decides nothing.
    """

    words: str
    labels: tuple[ClockLabel, ...]
    row: int | None = None
    doubtful: bool = False

    @property
    def text(self) -> str:
        """Its labels as written."""
        return "/".join(dict.fromkeys(label.text for label in self.labels))

    def zone(self) -> tzinfo | None:
        """The zone that it decides alone, None where it leaves a choice; standard time beside a zone is that zone's."""
        if self.doubtful:
            return None
        zones = [label.zone for label in self.labels if label.kind == FIXED]
        more = any(label.kind not in (FIXED, STANDARD) for label in self.labels)
        return zones[0] if not more and len(set(map(str, zones))) == 1 else None


def is_steady(zone: tzinfo) -> bool:
    """Whether it is UTC or a fixed offset, which say nothing of daylight saving."""
    return isinstance(zone, timezone) or str(zone) in ("UTC", "GMT") or str(zone).startswith("Etc/")


def labels_in_heading(heading: str) -> LabelledPlace | None:
    """The clocks that the heading of a column of dates or times names; None for none."""
    text = _LETTERS.sub(_capitals, _spelt_out(heading))
    labels = _labels(text, lambda found: not (found["bare"] and not text[: found.start()].strip()))
    doubtful = bool(_TURNED.search(heading) or _MAYBE_LOCAL.search(heading))
    return (
        LabelledPlace(
            words=tr("the heading '{heading}'").format(heading=heading.strip()), labels=labels, doubtful=doubtful
        )
        if labels
        else None
    )


def labels_in_line(row: int | None, line: str) -> LabelledPlace | None:
    """The clocks that a title, comment or note names; None for none.

    What stands behind a clock time there ("made at 10:00 UTC") or in place of another word is none.
    """
    text = _spelt_out(line)
    labels = tuple(label for part in re.split(r"[;,]|\.(?=\s|$)", text) for label in _line_labels(part, text))
    if not labels:
        return None
    said = line.strip()[:60]
    words = tr("row {row}, '{said}'").format(row=row, said=said) if row else f"'{said}'"
    return LabelledPlace(words=words, labels=labels, row=row)


def _line_labels(part: str, line: str) -> tuple[ClockLabel, ...]:
    bare, alone = _is_bare(part), _is_bare(line)

    def counts(found: re.Match[str]) -> bool:
        if _STAMP.search(part[: found.start()]):
            return False
        told = bool(_OF_ZONE.search(part[: found.start()])) or alone or _is_bracketed(part, found)
        if found["bare"]:
            return bool(_OF_ZONE.search(part[: found.start()]))
        if found.group().upper() in _OTHER_WORDS:
            return told
        if told or bare or found["iana"] or _OF_TIME.search(line):
            return True
        return bool(_IN.search(part[: found.start()])) if found["utc"] else not line.isupper()

    labels = _labels(part, counts)
    if not _TURNED.search(part):
        # "Adjusted for daylight saving" says no more than that it is a local clock.
        spelt = any(label.kind == DAYLIGHT and label.text != "LDT" for label in labels)
        return () if spelt and not bare and len(labels) == 1 else labels
    # "Add an hour for BST", "no daylight saving": then it is standard time throughout.
    summer = [label for label in labels if label.kind == DAYLIGHT or label.text in _SUMMER]
    return tuple(ClockLabel(text=part.strip()[:40], kind=STANDARD) for _label in summer[:1])


def _is_bare(text: str) -> bool:
    """Whether there is nothing in it but labels."""
    return not re.search(r"[A-Za-z]", re.sub(r"\b(?:in|all|are|is|the)\b", "", _WORD.sub("", text), flags=re.I))


def _is_bracketed(text: str, found: re.Match[str]) -> bool:
    before, after = text[: found.start()].rstrip(), text[found.end() :].lstrip()
    return before[-1:] in ("(", "[", "/") and after[:1] in (")", "]", "/")


def _labels(text: str, counts) -> tuple[ClockLabel, ...]:  # noqa: ANN001  (a test of one match)
    found = (_label(one) for one in _WORD.finditer(text) if counts(one))
    return tuple(label for label in found if label is not None)


def _label(found: re.Match[str]) -> ClockLabel | None:
    text = " ".join(found.group().replace("\u2212", "-").split())
    if found["utc"] or found["bare"]:
        zone = offset_zone("UTC" + (found["ahead"] or found["bare"] or "").replace("\u2212", "-").replace(" ", ""))
        return None if zone is None else ClockLabel(text=text, kind=FIXED, zone=zone)
    if found["iana"]:
        try:
            return ClockLabel(text=text, kind=FIXED, zone=zone_named(found["iana"]))
        except SwimPlanError:  # High/Low is no zone
            return None
    if found["named"]:
        offsets = tuple(timedelta(hours=hours) for hours in _HOURS[found["named"]])
        return ClockLabel(text=text, kind=NAMED, offsets=offsets)
    return ClockLabel(text=text, kind=STANDARD if found["standard"] else DAYLIGHT)


def _spelt_out(text: str) -> str:
    """The text with spaces for underscores, but in America/New_York, and names of clocks as their abbreviations."""
    text = " ".join(word if "/" in word else word.replace("_", " ") for word in text.split(" "))
    for pattern, names in _SPELT:
        text = pattern.sub(lambda found, names=names: names[found.group(1)[0].lower() if found.groups() else ""], text)
    return text


def _capitals(found: re.Match[str]) -> str:
    """An abbreviation of a heading such as time_est."""
    word = found.group().upper()
    return word if word in _HOURS or word in ("LST", "LDT", "DST") else found.group()


def _through_the_year(moment: datetime, zone: tzinfo) -> tuple[datetime, datetime]:
    return tuple(datetime(moment.year, month, 15, 12, tzinfo=zone) for month in (1, 7))
