"""Puts a new plan's file in place whole or not at all."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from ..core.errors import SwimPlanError
from ..words import tr
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
            asked=tr("The plan was to be written to {path}").format(path=path),
            allowed=tr("A plan is a GeoPackage and its name ends in {suffix}").format(suffix=SUFFIX),
            remedy=tr("Use {name}{suffix}").format(name=path.name, suffix=SUFFIX),
        )
    if not path.parent.is_dir():
        raise SwimPlanError(
            asked=tr("The plan was to be written to {path}").format(path=path),
            allowed=tr("The folder must exist"),
            remedy=tr("Make the folder {parent} or choose another").format(parent=path.parent),
        )
    if path.is_dir() or (path.exists() and not overwrite):
        raise SwimPlanError(
            asked=tr("The plan was to be written to {path}, which is already there").format(path=path),
            allowed=tr("An existing plan is not written over unless that is asked for"),
            remedy=tr("Choose another name, or ask for the old plan to be replaced"),
        )
    return path


def _workshop(target: Path) -> Path:
    try:
        return Path(tempfile.mkdtemp(prefix=".tideleg-", dir=target.parent))
    except OSError as error:
        raise SwimPlanError(
            asked=tr("The plan was to be written to {target} ({strerror})").format(
                target=target, strerror=error.strerror
            ),
            allowed=tr("The folder must be writable"),
            remedy=tr("Choose another folder"),
        ) from error


def _move(draft: Path, target: Path) -> None:
    try:
        os.replace(draft, target)
    except OSError as error:
        raise SwimPlanError(
            asked=tr("The plan could not be put in place as {target} ({strerror})").format(
                target=target, strerror=error.strerror
            ),
            allowed=tr("No other program may have the file open"),
            remedy=tr("Remove its layers from open projects and try again"),
        ) from error
