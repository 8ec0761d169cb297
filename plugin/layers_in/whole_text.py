"""Texts that a read leaves beside the plan, written whole or not at all."""

from __future__ import annotations

from pathlib import Path

from ..core.errors import SwimPlanError
from ..words import tr


def write_whole_text(path: Path, text: str, *, what: str, allowed: str = "", parameter: str) -> None:
    """Write a text as UTF-8 beside its place and move it there.

    SwimPlanError where it cannot be written: ``what`` names it, ``parameter`` is where another place is given.
    """
    draft = path.with_name(path.name + ".part")
    try:
        draft.write_text(text, encoding="utf-8")
        draft.replace(path)
    except OSError as error:
        draft.unlink(missing_ok=True)
        raise SwimPlanError(
            asked=tr("The {what} {path} could not be written ({why})").format(what=what, path=path, why=error.strerror),
            allowed=allowed,
            remedy=tr("Choose another place for {parameter}").format(parameter=parameter),
        ) from error
