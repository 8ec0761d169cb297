"""When the steps of a model are, in seconds from the plan's start, and which of them a plan needs."""

from __future__ import annotations

import re
from datetime import datetime, timedelta

import numpy as np

from ..core.clock import UTC, PlanClock
from ..words import tr
from .model_row import ModelRow
from .moments import utc_moment

BEFORE_S, AFTER_S = 2.0 * 86_400.0, 32.0 * 86_400.0  # what of a long model is read: a plan and its windows
LONG_STEP_S = 2.0 * 3600.0  # between steps farther apart a straight line is no tide; common practice, no source
LARGEST_VALUES = 12_000_000  # times by places: 300 MB at the worst while reading
_UNITS_S = {"second": 1.0, "sec": 1.0, "s": 1.0, "minute": 60.0, "min": 60.0, "hour": 3600.0, "hr": 3600.0, "h": 3600.0}
_UNITS_S |= {"day": 86_400.0, "d": 86_400.0, "millisecond": 0.001, "msec": 0.001}
_SINCE = re.compile(r"^\s*(?P<unit>[A-Za-z]+?)s?\s+since\s+(?P<date>\d{4}-\d{1,2}-\d{1,2})(?:[T\s]+(?P<clock>\S+.*))?$")
_CALENDARS = ("", "standard", "gregorian", "proleptic_gregorian")


def model_times_s(
    row: ModelRow,
    clock: PlanClock,
    reference: datetime | None,
    relative_s: np.ndarray | None,
    count: int,
    warnings: list[str],
) -> np.ndarray:
    """Seconds (count,) from the plan's start of every step.

    ``reference`` and ``relative_s`` are what the file says, None where it says nothing. The row's start, the moment of
    the first step, stands where the file has no reference, and is preferred to it where it has one.
    """
    if row.start is None and reference is None:
        raise row.refused(
            "start",
            None,
            tr("The file does not say at what moment its steps begin"),
            tr("Give the first step's moment in UTC in the field start"),
        )
    rises = relative_s is not None and len(relative_s) > 1 and np.all(np.diff(relative_s) > 0.0)
    if row.start is None:
        return _checked(row, clock.seconds(reference) + relative_s, relative_s)
    if row.step_s is not None:
        relative_s = row.step_s * np.arange(count)
    elif not rises:
        raise row.refused(
            "step_min",
            None,
            tr("The file does not say how far apart its steps are"),
            tr("Give the minutes from step to step in the field step_min"),
        )
    times = clock.seconds(row.start) + relative_s - relative_s[0]
    if reference is not None:
        warnings.append(
            tr(
                "Stream model '{name}': the file's own times begin at {own}; the start given in the "
                "plan, {start:%Y-%m-%d %H:%M} UTC, stands in their place."
            ).format(name=row.name, own=_utc(reference, relative_s[0]), start=row.start)
        )
    return times


def needed_steps(row: ModelRow, clock: PlanClock, times_s: np.ndarray, warnings: list[str]) -> np.ndarray:
    """Numbers of the steps to read, in a row; none where the model has ended or has not begun, which is said."""
    until_s = max(AFTER_S, clock.end_s + BEFORE_S)
    if times_s[-1] < 0.0 or times_s[0] > until_s:
        warnings.append(
            tr(
                "Stream model '{name}' covers {first} to {last}; the plan starts at {start}: the model "
                "does not know its stream."
            ).format(
                name=row.name,
                first=_utc(clock.start, times_s[0]),
                last=_utc(clock.start, times_s[-1]),
                start=_utc(clock.start, 0.0),
            )
        )
    first = max(int(np.searchsorted(times_s, -BEFORE_S, side="right")) - 1, 0)
    last = min(int(np.searchsorted(times_s, until_s)), len(times_s) - 1)
    steps = np.arange(first, last + 1)
    if len(steps) < 2:
        return steps[:0]
    longest = float(np.max(np.diff(times_s[steps])))
    if longest > LONG_STEP_S:
        warnings.append(
            tr(
                "Stream model '{name}': its steps are up to {hours:g} h apart; between them the stream is "
                "drawn straight, which no tide is."
            ).format(name=row.name, hours=longest / 3600.0)
        )
    return steps


def check_size(row: ModelRow, steps: int, places: int) -> None:
    """BadInputError where reading would take more memory than a plan may."""
    if steps * places > LARGEST_VALUES:
        raise row.refused(
            "path",
            row.path.name,
            tr(
                "Around the plan the model has {steps} steps of {places} values; at most {largest_values} are read"
            ).format(steps=steps, places=places, largest_values=LARGEST_VALUES),
            tr("Cut the file to fewer steps, or to the plan's area"),
        )


def since(row: ModelRow, units: str, calendar: str = "") -> tuple[datetime, float]:
    """The reference and the seconds of a unit such as `hours since 1950-01-01`; without a zone it is UTC (CF 4.4)."""
    match = _SINCE.match(units)
    factor = _UNITS_S.get(match["unit"].lower()) if match else None
    if factor is None or calendar.lower() not in _CALENDARS:
        raise row.refused(
            "path",
            f"{units} {calendar}".strip(),
            tr("Times are seconds, minutes, hours or days since a moment of the Gregorian calendar"),
            tr("Convert the file's times, or give start and step_min"),
        )
    year, month, day = (int(part) for part in match["date"].split("-"))
    digits = f"{year:04d}-{month:02d}-{day:02d} {_clock(match['clock'] or '')}"
    return utc_moment(digits, layer=row.table.name, row=row.number, field="path"), factor


def _clock(text: str) -> str:
    """`0:0:0.0`, `00:00`, `06:00:00 UTC`, `12:00 +01:00` in the one way that moments are read."""
    found = re.match(r"^(\d{1,2})(?::(\d{1,2}))?(?::(\d{1,2})(?:\.\d+)?)?\s*(.*)$", text or "0")
    hour, minute, second, zone = found.groups() if found else ("0", None, None, text)
    zone = "" if zone.upper() in ("UTC", "GMT", "Z") else zone
    zone = re.sub(r"^([+-])(\d):", r"\g<1>0\2:", zone)
    return f"{int(hour):02d}:{int(minute or 0):02d}:{int(second or 0):02d}{zone}"


def _checked(row: ModelRow, times_s: np.ndarray, relative_s: np.ndarray | None) -> np.ndarray:
    if relative_s is None or len(times_s) < 2 or not np.all(np.diff(times_s) > 0.0):
        raise row.refused(
            "path",
            row.path.name,
            tr("A model has two steps or more, each later than the one before"),
            tr("Name a group that goes on in time, or give start and step_min"),
        )
    return times_s


def _utc(start: datetime, seconds: float) -> str:
    return f"{(start + timedelta(seconds=float(seconds))).astimezone(UTC):%Y-%m-%d %H:%M} UTC"
