"""Who swims, and the plan's settings, as the core's objects."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path

from qgis.core import QgsFeatureSource

from ..core.errors import SwimPlanError
from ..core.solve.request import SETTING_LIMITS, PlanSettings
from ..core.swimmer import LIMITS, NUMBERS, Swimmer, group_of, in_words
from ..plan_package.settings import TABLE as SETTINGS
from ..plan_package.settings import read_settings, require_readable, settings_of
from ..words import tr
from .table import Table, TableRow


def settings_read(plan: str | Path, sources: Mapping[str, QgsFeatureSource]) -> dict[str, str]:
    """Every setting of the plan as text: those of a given layer, edits that are not saved included, else the file's.

    Raises as ``read_settings`` does.
    """
    table = sources.get(SETTINGS)
    if table is None:
        return read_settings(plan)
    require_readable(Path(plan))
    return settings_of(tuple(row.attribute(name) or None for name in ("key", "value")) for row in table.getFeatures())


def swimmer_from(table: Table | None, name: str, pace_m_s: float | None, warnings: list[str]) -> Swimmer:
    """The swimmer of that name, the only one where none is named, or the defaults; a pace given overrides theirs.

    Several names with ``;`` between them are a group that swims together.
    """
    rows = {row.values["name"]: row for row in (table.rows() if table else ())}
    names = [name] if name in rows else list(dict.fromkeys(part.strip() for part in name.split(";") if part.strip()))
    for one in names:
        if one not in rows:
            raise SwimPlanError(
                asked=tr("Asked for the swimmer '{name}'").format(name=one),
                allowed=tr("The swimmers table has {names}").format(names=", ".join(rows) or tr("no rows")),
                remedy=tr("Choose one of them or add the swimmer; names of a group have a semicolon between them"),
            )
    if not names and rows:
        names = [next(iter(rows))]
        if len(rows) > 1:
            warnings.append(tr("No swimmer was named; planned for the first one, {name}.").format(name=names[0]))
    swimmer = group_of([_swimmer(rows[one]) for one in names]) if names else _default_swimmer()
    if pace_m_s is not None:
        swimmer = _with_pace(swimmer, pace_m_s)
    if swimmer.members:
        set_by = "; ".join(swimmer.set_by) or tr("all have the same numbers")
        warnings.append(
            tr("{name} swim together, and the slowest sets the pace: {set_by}.").format(
                name=swimmer.name, set_by=set_by
            )
        )
    return swimmer


def _swimmer(row: TableRow) -> Swimmer:
    swimmer = Swimmer(name=row.values["name"], **{key: row.values[key] for key in NUMBERS})
    # A form or the database may have written the defaults into the row: they are guesses all the same.
    at_default = frozenset(key for key in NUMBERS if getattr(swimmer, key) == getattr(Swimmer(), key))
    return replace(swimmer, guessed=_guessed(swimmer, row.filled | at_default))


def _with_pace(swimmer: Swimmer, pace_m_s: float) -> Swimmer:
    """The swimmer, or everybody of the group, at a pace given; the group's path factor stays that of the slowest."""
    low, high = LIMITS["pace_m_s"]
    if not low <= pace_m_s <= high:
        raise SwimPlanError(
            asked=tr("Asked for a pace of {pace_m_s:g} m/s").format(pace_m_s=pace_m_s),
            allowed=tr("A pace lies from {low:g} to {high:g} m/s").format(low=low, high=high),
            remedy=tr("Correct the pace, or leave it empty for the swimmer's own"),
        )
    own_pace = in_words(swimmer, "pace_m_s")
    guessed, set_by = (
        tuple(words for words in found if not words.startswith(own_pace)) for found in (swimmer.guessed, swimmer.set_by)
    )
    if swimmer.members:
        set_by = (tr("pace {pace_m_s:g} m/s as given").format(pace_m_s=pace_m_s), *set_by)
    members = tuple(replace(one, pace_m_s=pace_m_s) for one in swimmer.members)
    return replace(swimmer, pace_m_s=pace_m_s, guessed=guessed, set_by=set_by, members=members)


def _default_swimmer() -> Swimmer:
    return replace(Swimmer(), guessed=_guessed(Swimmer(), frozenset(NUMBERS)))


def _guessed(swimmer: Swimmer, keys: frozenset[str]) -> tuple[str, ...]:
    return tuple(in_words(swimmer, key) for key in NUMBERS if key in keys)


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
            asked=tr("The setting {key} is {text!r}").format(key=key, text=text),
            allowed=tr("It is a number"),
            remedy=tr("Correct the settings table"),
        ) from error
