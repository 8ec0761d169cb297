"""The settings of a plan: read with their defaults, checked when written, and the version they carry."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from pathlib import Path

from ..core.clock import zone_named
from ..core.errors import BadInputError, SwimPlanError
from ..words import tr
from . import database
from .row_check import checked_text
from .schema import PACKAGE_VERSION, SETTING_BY_KEY, VERSION_KEY, default_settings

TABLE = "settings"
_NOT_PLAIN = re.compile(r"%[0-9A-Fa-f]{2}|\|")


def zone_remedy() -> str:
    """How a zone is written."""
    return tr("Write a name of the IANA time zone list, such as Europe/Lisbon, Pacific/Auckland or UTC")


def read_settings(path: str | Path) -> dict[str, str]:
    """Every setting of the plan as text; a key that is not in the table has its default, the later of two rows counts.

    Raises BadInputError for a value that cannot mean what its key needs, SwimPlanError for what is not a plan.
    """
    path = Path(path)
    require_readable(path)
    if TABLE not in database.table_names(path):
        raise BadInputError(
            layer=TABLE,
            allowed=tr("The plan {path} has no such table: its time zone and reserve are not known").format(path=path),
            remedy=tr("Bring the table back from a copy, or make a new plan"),
        )
    return settings_of(database.read_pairs(path))


def settings_of(pairs: Iterable[tuple[str | None, str | None]]) -> dict[str, str]:
    """Every setting as text out of the table's rows (key, value), as ``read_settings``; BadInputError as there."""
    stored = {key: value or "" for key, value in pairs if key}
    for key, text in stored.items():
        if key in SETTING_BY_KEY:
            _check_one(key, text)
    return {**default_settings(), **stored}


def write_settings(path: str | Path, settings: Mapping[str, str | int | float]) -> None:
    """Set the given keys, all or none; numbers are stored as text. Unknown keys are refused with BadInputError."""
    database.replace_pairs(Path(path), checked_settings({key: str(value) for key, value in settings.items()}))


def checked_settings(settings: Mapping[str, str]) -> dict[str, str]:
    """The settings as given; raises BadInputError for an unknown key and for a value that does not fit its key."""
    for key, text in settings.items():
        if key not in SETTING_BY_KEY:
            raise BadInputError(
                layer=TABLE,
                row=key,
                field="key",
                value=key,
                allowed=tr("The settings are {names}").format(names=", ".join(SETTING_BY_KEY)),
                remedy=tr("Use one of these keys"),
            )
        _check_one(key, text)
    return dict(settings)


def require_readable(path: Path) -> None:
    """Refuse a plan that a newer version of the plugin made, and a path that QGIS takes for another; a plan without a
    version row is taken as it is."""
    require_plain_path(path)
    version = package_version(path)
    if version > PACKAGE_VERSION:
        raise SwimPlanError(
            asked=tr("The plan {path} is of version {version}, made by a newer plugin").format(
                path=path, version=version
            ),
            allowed=tr("This plugin reads plans up to version {version}").format(version=PACKAGE_VERSION),
            remedy=tr("Update the plugin"),
        )


def require_plain_path(path: Path) -> None:
    """Refuse a path that QGIS reads as that of another file: it decodes %20 to a blank, and ends the path at a |."""
    found = _NOT_PLAIN.search(str(path.absolute()))
    if found is not None:
        raise SwimPlanError(
            asked=tr("The path {path} has '{found}' in it, which QGIS reads as something else").format(
                path=path, found=found.group()
            ),
            allowed=tr("Paths of plans have no | and no % before two figures or letters from A to F"),
            remedy=tr("Rename the file or the folder"),
        )


def package_version(path: Path) -> int:
    """The version of the plan's schema; 0 when the file says none."""
    text = dict(database.read_pairs(path)).get(VERSION_KEY)
    return (
        0 if text is None else int(checked_text(SETTING_BY_KEY[VERSION_KEY].value, text, layer=TABLE, row=VERSION_KEY))
    )


def _check_one(key: str, text: str) -> None:
    checked_text(SETTING_BY_KEY[key].value, text, layer=TABLE, row=key)
    if key == "zone":
        _check_zone(text)


def _check_zone(name: str) -> None:
    try:
        zone_named(name)
    except SwimPlanError as error:
        raise BadInputError(
            layer=TABLE, row="zone", field="value", value=name, allowed=error.allowed, remedy=zone_remedy()
        ) from error
