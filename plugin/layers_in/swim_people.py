"""Who swims, and the plan's settings, as the core's objects."""

from __future__ import annotations

from dataclasses import replace

from ..core.errors import SwimPlanError
from ..core.solve.request import SETTING_LIMITS, PlanSettings
from ..core.swimmer import LIMITS, NUMBERS, Swimmer
from .table import Table

IN_WORDS = {
    "pace_m_s": "pace {:g} m/s",
    "path_factor": "path factor {:g}",
    "range_m": "range {:g} m",
    "max_hours": "{:g} hours",
    "depth_limit_m": "depth limit {:g} m",
    "min_ground_speed_m_s": "least ground speed {:g} m/s",
    "fluid_l": "{:g} L to drink",
    "fluid_l_h": "{:g} L an hour drunk",
    "line_m": "anchor line {:g} m",
}


def swimmer_from(table: Table | None, name: str, pace_m_s: float | None, warnings: list[str]) -> Swimmer:
    """The swimmer of that name, the only one where none is named, or the defaults; a pace given overrides theirs."""
    rows = {row.values["name"]: row for row in (table.rows() if table else ())}
    if name and name not in rows:
        raise SwimPlanError(
            asked=f"Asked for the swimmer '{name}'",
            allowed=f"The swimmers table has {', '.join(rows) or 'no rows'}",
            remedy="Choose one of them or add the swimmer",
        )
    swimmer = _default_swimmer()
    if rows:
        chosen = name or next(iter(rows))
        if not name and len(rows) > 1:
            warnings.append(f"No swimmer was named; planned for the first one, {chosen}.")
        values = rows[chosen].values
        swimmer = Swimmer(name=chosen, **{key: values[key] for key in NUMBERS})
        # A form or the database may have written the defaults into the row: they are guesses all the same.
        at_default = frozenset(key for key in NUMBERS if getattr(swimmer, key) == getattr(Swimmer(), key))
        swimmer = replace(swimmer, guessed=_in_words(swimmer, rows[chosen].filled | at_default))
    if pace_m_s is None:
        return swimmer
    low, high = LIMITS["pace_m_s"]
    if not low <= pace_m_s <= high:
        raise SwimPlanError(
            asked=f"Asked for a pace of {pace_m_s:g} m/s",
            allowed=f"A pace lies from {low:g} to {high:g} m/s",
            remedy="Correct the pace, or leave it empty for the swimmer's own",
        )
    guessed = tuple(words for words in swimmer.guessed if not words.startswith("pace"))
    return replace(swimmer, pace_m_s=pace_m_s, guessed=guessed)


def _default_swimmer() -> Swimmer:
    return replace(Swimmer(), guessed=_in_words(Swimmer(), frozenset(NUMBERS)))


def _in_words(swimmer: Swimmer, keys: frozenset[str]) -> tuple[str, ...]:
    return tuple(IN_WORDS[key].format(getattr(swimmer, key)) for key in NUMBERS if key in keys)


def settings_from(texts: dict[str, str]) -> PlanSettings:
    """The settings that planning needs, from the texts of the settings table."""
    values = {key: texts[key] for key in ("title", "zone", "datum", "back_by") if texts.get(key)}
    for key in SETTING_LIMITS:
        if texts.get(key):
            values[key] = _number(key, texts[key])
    return PlanSettings(**values)


def _number(key: str, text: str) -> float:
    try:
        return float(text)
    except ValueError as error:
        raise SwimPlanError(
            asked=f"The setting {key} is {text!r}", allowed="It is a number", remedy="Correct the settings table"
        ) from error
