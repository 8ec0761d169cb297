"""Puts a new plan's file in place whole or not at all."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from ..core.errors import SwimPlanError
from . import database

SUFFIX = ".gpkg"


@contextmanager
def placed_whole(path: str | Path, *, overwrite: bool = False) -> Iterator[Path]:
    """Give the path of a draft to write to; when the block ends without an error, the draft becomes `path`.

    The draft lies in a folder of its own beside `path`, so that the last step is one rename. Raises SwimPlanError for
    another suffix than .gpkg, a folder that is not there, and an existing file unless `overwrite`.
    """
    target = _checked_target(Path(path), overwrite=overwrite)
    workshop = _workshop(target)
    try:
        draft = workshop / target.name
        yield draft
        database.settle(draft)
        if target.exists():
            database.settle_before_replacing(target)
        _move(draft, target)
    finally:
        shutil.rmtree(workshop, ignore_errors=True)


def _checked_target(path: Path, *, overwrite: bool) -> Path:
    if path.suffix.lower() != SUFFIX:
        raise SwimPlanError(
            asked=f"The plan was to be written to {path}",
            allowed=f"A plan is a GeoPackage and its name ends in {SUFFIX}",
            remedy=f"Use {path.name}{SUFFIX}",
        )
    if not path.parent.is_dir():
        raise SwimPlanError(
            asked=f"The plan was to be written to {path}",
            allowed="The folder must exist",
            remedy=f"Make the folder {path.parent} or choose another",
        )
    if path.is_dir() or (path.exists() and not overwrite):
        raise SwimPlanError(
            asked=f"The plan was to be written to {path}, which is already there",
            allowed="An existing plan is not written over unless that is asked for",
            remedy="Choose another name, or ask for the old plan to be replaced",
        )
    return path


def _workshop(target: Path) -> Path:
    try:
        return Path(tempfile.mkdtemp(prefix=".tideleg-", dir=target.parent))
    except OSError as error:
        raise SwimPlanError(
            asked=f"The plan was to be written to {target} ({error.strerror})",
            allowed="The folder must be writable",
            remedy="Choose another folder",
        ) from error


def _move(draft: Path, target: Path) -> None:
    try:
        os.replace(draft, target)
    except OSError as error:
        raise SwimPlanError(
            asked=f"The plan could not be put in place as {target} ({error.strerror})",
            allowed="No other program may have the file open",
            remedy="Remove its layers from open projects and try again",
        ) from error
