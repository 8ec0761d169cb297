"""Files written whole or not at all: everything is laid beside its place first, then moved there."""

from __future__ import annotations

import json
import os
import shutil
from collections.abc import Callable, Mapping
from contextlib import suppress
from pathlib import Path

from ..core.errors import SwimPlanError
from ..words import tr

# How files of a kind begin and end.
ENDS = {b"%PDF": b"%%EOF", b"\x89PNG": b"IEND"}
ENDS_WITHIN = 1024


def write_whole(files: Mapping[str | Path, Callable[[Path], None]]) -> None:
    """Write each file with its function, which gets the path to write to.

    Nothing is moved to its place before all are written; drafts are removed if one fails, and where one cannot be moved
    the others are as they were. SwimPlanError where the folder cannot be written to.
    """
    drafts = {
        Path(path): Path(path).with_name(f".draft-{os.getpid()}-{number}{Path(path).suffix}")
        for number, path in enumerate(files)
    }
    try:
        for path, write in files.items():
            Path(path).parent.mkdir(parents=True, exist_ok=True)
            write(drafts[Path(path)])
            _check_whole(Path(path), drafts[Path(path)])
        _move(drafts)
    except OSError as error:
        raise SwimPlanError(
            asked=tr("Could not write {}: {}").format(", ".join(map(str, drafts)), error.strerror),
            remedy=tr("Choose another folder or close the program that holds the file"),
        ) from error
    finally:
        for draft in drafts.values():
            # A folder that is none has no drafts to remove; its own error is the one to tell.
            with suppress(OSError):
                draft.unlink(missing_ok=True)


def _move(drafts: Mapping[Path, Path]) -> None:
    """Move all drafts to their places, or none: what was in the places before comes back where one cannot be."""
    if len(drafts) == 1:
        for path, draft in drafts.items():
            draft.replace(path)
        return
    kept = {path: draft.with_name(f"{draft.name}.before") for path, draft in drafts.items() if path.exists()}
    moved: list[Path] = []
    try:
        for path, copy in kept.items():
            shutil.copy2(path, copy)
        for path, draft in drafts.items():
            draft.replace(path)
            moved.append(path)
    except OSError:
        for path in moved:
            kept[path].replace(path) if path in kept else path.unlink()
        raise
    finally:
        for copy in kept.values():
            with suppress(OSError):
                copy.unlink(missing_ok=True)


def _check_whole(path: Path, draft: Path) -> None:
    """SwimPlanError where a picture or a PDF was cut short: Qt says nothing of a disk that is full."""
    with draft.open("rb") as file:
        head = file.read(8)
        file.seek(0, os.SEEK_END)
        file.seek(max(file.tell() - ENDS_WITHIN, 0))
        tail = file.read()
    ends = next((end for start, end in ENDS.items() if head.startswith(start)), b"")
    if not head or ends not in tail:
        raise SwimPlanError(
            asked=tr("{} could not be written whole").format(path),
            allowed=tr("What was there before stays"),
            remedy=tr("Check free space on the disk and try again"),
        )


def text_writer(text: str) -> Callable[[Path], None]:
    """A function that writes the text as UTF-8 with the line ends it has."""

    def write(path: Path) -> None:
        path.write_bytes(text.encode("utf-8"))

    return write


def json_writer(told: dict[str, object]) -> Callable[[Path], None]:
    """A function that writes JSON: UTF-8 letters kept, no numbers that are none."""
    return text_writer(json.dumps(told, indent=1, ensure_ascii=False, allow_nan=False) + "\n")
