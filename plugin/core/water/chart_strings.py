"""Tidal streams and heights as electronic charts write them: comma separated texts in three attributes.

The forms are those of the IHO S-57 attribute catalogue (Transfer Standard, Edition 3.1, Appendix A, Chapter 2):
TS_TSP tidal stream panel values, TS_TSV time series values, T_HWLW high and low water values.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import datetime, timedelta, timezone, tzinfo
from math import isfinite, isnan, nan

from ..errors import NaiveTimeError, SwimPlanError
from ..words import tr

PANEL_HOURS = tuple(range(-6, 7))
MAX_RATE_KN = 15.0  # as in the plan: faster than a swim is planned in (common practice, no source), so it is a slip
MAX_HEIGHT_M = 20.0  # the largest charted ranges are about 16 m (from memory)
_HWLW_TIME = re.compile(r"(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)?(Z|[+-]\d\d:?\d\d)?$")

Pair = tuple[float, float]


@dataclass(frozen=True, kw_only=True)
class StreamPanel:
    """An hourly stream table of one chart position, from its TS_TSP text.

    ``pairs`` holds 13 (set_deg towards, rate_kn at springs) for the hours -6..+6 of ``reference`` (HW or LW) at the
    port ``name``, whose number is ``station_id``. A missing pair is (nan, nan); still water may have no set: (nan, 0).
    """

    station_id: str
    name: str
    reference: str
    pairs: tuple[Pair, ...]

    def __post_init__(self) -> None:
        if self.reference not in ("HW", "LW"):
            raise _refused(
                "TS_TSP", tr("value 3 is {reference!r}").format(reference=self.reference), tr("Value 3 is HW or LW")
            )
        if len(self.pairs) != len(PANEL_HOURS):
            raise _refused(
                "TS_TSP",
                tr("it has {count} pairs").format(count=len(self.pairs)),
                tr("There are 13 pairs, for the hours -6 to +6"),
            )
        if all(isnan(rate) for _, rate in self.pairs):
            raise _refused("TS_TSP", tr("every pair is blank"), tr("At least one hour has a set and a rate"))

    @property
    def missing_hours(self) -> tuple[int, ...]:
        """Hours from the reference for which the chart gives no rate."""
        return tuple(hour for hour, (_, rate) in zip(PANEL_HOURS, self.pairs) if isnan(rate))


def parse_ts_tsp(text: str) -> StreamPanel:
    """The hourly stream table in a TS_TSP text: station, port, HW or LW, then 13 pairs of set and spring rate.

    A blank pair is missing, not slack water; so is a last pair that was left off. SwimPlanError names the value.
    """
    values = [value.strip() for value in text.split(",")]
    if len(values) < 5:
        raise _refused(
            "TS_TSP",
            tr("it has {count} values").format(count=len(values)),
            tr("It has a station, a port, HW or LW, and 13 pairs"),
        )
    pairs = _pairs("TS_TSP", values[3:], first_position=4)
    if len(pairs) == len(PANEL_HOURS) - 1:
        pairs += ((nan, nan),)
    return StreamPanel(station_id=values[0], name=values[1], reference=values[2].upper(), pairs=pairs)


def parse_ts_tsv(text: str) -> tuple[Pair, ...]:
    """The (set_deg, rate_kn) pairs of a TS_TSV text, at equal steps of time; a blank pair is (nan, nan)."""
    return _pairs("TS_TSV", [value.strip() for value in text.split(",")], first_position=1)


def parse_t_hwlw(text: str, *, zone: tzinfo | None = None) -> tuple[tuple[datetime, float], ...]:
    """The (time, height in metres) pairs of a T_HWLW text, in the order of time.

    A time without an offset is taken in ``zone``; without that either, NaiveTimeError.
    """
    values = [value.strip() for value in text.split(",")]
    if len(values) % 2:
        raise _refused(
            "T_HWLW", tr("it has {count} values").format(count=len(values)), tr("Times and heights come in pairs")
        )
    tides = tuple(
        (_hwlw_time(values[at], at + 1, zone), _number("T_HWLW", values[at + 1], at + 2, -MAX_HEIGHT_M, MAX_HEIGHT_M))
        for at in range(0, len(values), 2)
    )
    if any(later[0] <= earlier[0] for earlier, later in zip(tides, tides[1:])):
        raise _refused("T_HWLW", tr("a time does not follow the one before"), tr("Times run forward"))
    return tides


def tide_kinds(heights_m: tuple[float, ...]) -> tuple[str, ...]:
    """HW or LW for each height of a run of turning waters; SwimPlanError where they do not alternate."""
    if len(heights_m) < 2:
        raise _refused("T_HWLW", tr("it has one water only"), tr("Two waters or more tell high from low"))
    kinds = tuple("HW" if height > heights_m[at - 1 if at else 1] else "LW" for at, height in enumerate(heights_m))
    if any(earlier == later for earlier, later in zip(kinds, kinds[1:])):
        raise _refused("T_HWLW", tr("two high or two low waters follow each other"), tr("High and low water alternate"))
    return kinds


def _pairs(name: str, values: list[str], *, first_position: int) -> tuple[Pair, ...]:
    """Pairs of set and rate; ``first_position`` is the place of the first value in the whole text, counted from 1."""
    if len(values) % 2:
        if values[-1]:
            raise _refused(
                name, tr("it has {count} values of set and rate").format(count=len(values)), tr("They come in pairs")
            )
        values = values[:-1]  # a comma after the last pair
    return tuple(_pair(name, values[at], values[at + 1], first_position + at) for at in range(0, len(values), 2))


def _pair(name: str, set_text: str, rate_text: str, position: int) -> Pair:
    set_deg = nan if not set_text else _number(name, set_text, position, 0.0, 360.0) % 360.0
    if not rate_text:
        return (nan, nan)  # a set without a rate says nothing of how fast: the hour is missing
    rate_kn = _number(name, rate_text, position + 1, 0.0, MAX_RATE_KN)
    if isnan(set_deg) and rate_kn > 0.0:
        raise _refused(
            name,
            tr("value {position} is blank beside a rate of {rate_kn:g} kn").format(position=position, rate_kn=rate_kn),
            tr("A rate has a set"),
        )
    return (set_deg, rate_kn)


def _number(name: str, text: str, position: int, low: float, high: float) -> float:
    try:
        value = float(text)
    except ValueError as error:
        raise _refused(
            name, tr("value {position} is {text!r}").format(position=position, text=text), _number_allowed(low, high)
        ) from error
    if not (isfinite(value) and low <= value <= high):
        raise _refused(
            name, tr("value {position} is {text}").format(position=position, text=text), _number_allowed(low, high)
        )
    return value


def _number_allowed(low: float, high: float) -> str:
    return tr("It is a number from {low:g} to {high:g}").format(low=low, high=high)


def _hwlw_time(text: str, position: int, zone: tzinfo | None) -> datetime:
    found = _HWLW_TIME.match(text)
    allowed = tr("Times are written as 19950428T1020, with Z or an offset where they carry one")
    if not found:
        raise _refused("T_HWLW", tr("value {position} is {text!r}").format(position=position, text=text), allowed)
    *numbers, offset = found.groups()
    zone = _offset(offset) if offset else zone
    if zone is None:
        raise NaiveTimeError(value=text, where=tr("T_HWLW, value {position}").format(position=position))
    try:
        return datetime(*(int(number or 0) for number in numbers), tzinfo=zone)
    except ValueError as error:
        raise _refused(
            "T_HWLW", tr("value {position} is {text!r}").format(position=position, text=text), allowed
        ) from error


def _offset(text: str) -> tzinfo:
    if text == "Z":
        return timezone.utc
    sign = -1 if text[0] == "-" else 1
    digits = text[1:].replace(":", "")
    return timezone(sign * timedelta(hours=int(digits[:2]), minutes=int(digits[2:])))


def _refused(name: str, got: str, allowed: str) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("The chart's {name} text cannot be read: {got}").format(name=name, got=got),
        allowed=allowed,
        remedy=tr("Correct the text, or enter the stream by hand from the printed table"),
    )
