"""What is wrong with a table as a whole: rows that stand twice, tides that do not rise and fall, names nobody bears."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from itertools import pairwise
from typing import Any

from ...core.errors import SwimPlanError
from ...plan_package.row_check import checked_text
from ...plan_package.schema import SETTING_BY_KEY
from ...words import tr

Rows = Mapping[int, Mapping[str, Any]]
Found = Iterable["Problem"]

STOP, WARN = "stop", "warn"


@dataclass(frozen=True, kw_only=True)
class Problem:
    """One cell that is wrong (stop) or doubtful (warn), by the feature's id and the field's name."""

    fid: int
    field: str
    words: str
    severity: str = WARN


# What may stand only once in a table: the fields that together name one thing.
_ONCE: dict[str, tuple[str, ...]] = {
    "tides": ("port", "time"),
    "tide_ports": ("port",),
    "tide_series": ("port", "time"),
    "tide_constants": ("port", "constituent"),
    "tide_coefficients": ("port", "time"),
    "stream_stations": ("station",),
    "stream_rates": ("station", "hour"),
    "stream_events": ("station", "time"),
    "stream_series": ("station", "time"),
    "stream_constants": ("station", "constituent"),
    "stream_models": ("model",),
    "winds": ("time",),
    "transits": ("mark", "front", "rear"),
    "ferries": ("channel", "time"),
    "swimmers": ("name",),
    "settings": ("key",),
}
# Fields that name something of another table of the plan.
NAMED_ELSEWHERE: dict[tuple[str, str], tuple[str, str]] = {
    **{
        (table, "station"): ("stream_stations", "station")
        for table in ("stream_rates", "stream_events", "stream_series", "stream_constants", "drifts")
    },
    ("ferries", "channel"): ("channels", "name"),
    ("transits", "mark"): ("marks", "name"),
    ("transits", "front"): ("landmarks", "name"),
    ("transits", "rear"): ("landmarks", "name"),
    ("catches", "session"): ("sessions", "name"),
}


def problems_between(table: str, rows: Rows, names: Mapping[str, Sequence[str]] | None = None) -> list[Problem]:
    """What the rows of a table, by feature id, make wrong together; ``names``: what a field may refer to."""
    found = list(_twice(rows, _ONCE[table])) if table in _ONCE else []
    if table in _OWN_CHECKS:
        found += _OWN_CHECKS[table](rows)
    for field, known in (names or {}).items():
        found += _unknown_names(rows, field, set(known))
    return found


def _twice(rows: Rows, fields: tuple[str, ...]) -> Found:
    seen: dict[tuple, list[int]] = {}
    for fid, row in rows.items():
        key = tuple(row.get(field) for field in fields)
        if key[-1] is not None:
            seen.setdefault(key, []).append(fid)
    for fids in seen.values():
        for fid in fids if len(fids) > 1 else ():
            words = tr("Stands there {} times. Only one row of these may stay.").format(len(fids))
            yield Problem(fid=fid, field=fields[-1], words=words, severity=STOP)


def _in_time(rows: Rows, key: str) -> dict[object, list[tuple[int, Mapping[str, Any]]]]:
    """The rows that have a moment, by what they belong to, the earliest first."""
    found: dict[object, list] = {}
    for fid, row in rows.items():
        if isinstance(row.get("time"), datetime):
            found.setdefault(row.get(key), []).append((fid, row))
    return {one: sorted(mine, key=lambda pair: pair[1]["time"]) for one, mine in found.items()}


def _tides(rows: Rows) -> Found:
    for mine in _in_time(rows, "port").values():
        for (_, before), (fid, row) in pairwise(mine):
            if row["kind"] and row["kind"] == before["kind"] and row["time"] != before["time"]:
                other = tr("low water") if row["kind"] == "HW" else tr("high water")
                words = tr("Follows another of its kind. A {} between them is missing, or one is of the other kind.")
                yield Problem(fid=fid, field="kind", words=words.format(other))
        for place, (fid, row) in enumerate(mine):
            beside = [mine[one][1] for one in (place - 1, place + 1) if 0 <= one < len(mine)]
            yield from _height_problem(fid, row, beside)


def _height_problem(fid: int, row: Mapping[str, Any], beside: Sequence[Mapping[str, Any]]) -> Found:
    """A high water is higher than the low waters beside it, a low water lower than the high waters."""
    others = [one["height_m"] for one in beside if one["kind"] not in (None, row["kind"])]
    heights = [one for one in others if _is_number(one)]
    if not heights or not _is_number(row["height_m"]) or row["kind"] not in ("HW", "LW"):
        return
    if row["kind"] == "HW" and row["height_m"] <= max(heights):
        words = tr("This high water is not higher than a low water beside it ({:.2f} m). Check both heights.")
        yield Problem(fid=fid, field="height_m", words=words.format(max(heights)))
    elif row["kind"] == "LW" and row["height_m"] >= min(heights):
        words = tr("This low water is not lower than a high water beside it ({:.2f} m). Check both heights.")
        yield Problem(fid=fid, field="height_m", words=words.format(min(heights)))


def _stream_events(rows: Rows) -> Found:
    for fid, row in rows.items():
        if row["kind"] == "slack" and _is_number(row["rate_kn"]) and row["rate_kn"] != 0:
            yield Problem(fid=fid, field="rate_kn", words=tr("A slack has the rate 0. Correct the rate or the kind."))
    for mine in _in_time(rows, "station").values():
        for (_, before), (fid, row) in pairwise(mine):
            both = (before["rate_kn"], row["rate_kn"])
            if row["kind"] == before["kind"] == "slack" and row["time"] != before["time"]:
                words = tr("Follows another slack. The maximum between them is missing.")
                yield Problem(fid=fid, field="kind", words=words)
            elif row["kind"] == before["kind"] == "max" and all(map(_is_number, both)) and both[0] * both[1] < 0:
                words = tr("Flood and ebb follow each other without a slack between them. Check the signs.")
                yield Problem(fid=fid, field="rate_kn", words=words)


def _drifts(rows: Rows) -> Found:
    for fid, row in rows.items():
        ends = (row["time"], row["end_time"])
        if all(isinstance(one, datetime) for one in ends) and ends[1] <= ends[0]:
            yield Problem(
                fid=fid, field="end_time", words=tr("The drift ends before it begins. Correct one of the times.")
            )


def _settings(rows: Rows) -> Found:
    for fid, row in rows.items():
        spec = SETTING_BY_KEY.get(row["key"])
        if spec is None:
            continue
        try:
            checked_text(spec.value, row["value"] or "", layer="settings", row=fid)
        except SwimPlanError as error:
            yield Problem(fid=fid, field="value", words=f"{error.allowed}. {error.remedy}.", severity=STOP)


def _unknown_names(rows: Rows, field: str, known: set[str]) -> Found:
    for fid, row in rows.items():
        if row[field] is not None and row[field] not in known:
            words = tr("The plan has nothing of this name. Known are: {}").format(", ".join(sorted(known)[:8]) or "—")
            yield Problem(fid=fid, field=field, words=words)


def _is_number(value: object) -> bool:
    return isinstance(value, (int, float)) and not isinstance(value, bool)


_OWN_CHECKS: dict[str, Callable[[Rows], Found]] = {
    "tides": _tides,
    "stream_events": _stream_events,
    "drifts": _drifts,
    "settings": _settings,
}
