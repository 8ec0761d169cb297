"""What one run writes: all of it, or nothing that was not there before."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable, Mapping
from pathlib import Path

from qgis.core import QgsDataSourceUri, QgsProcessingOutputLayerDefinition, QgsProviderRegistry, QgsVectorLayer

from ..core.errors import SwimPlanError
from ..plan_package.database import is_plan
from ..words import tr

# Files that are made together, and what makes their writers; SwimPlanError where it cannot.
Paper = tuple[list[str], Callable[[], Mapping["str | Path", Callable[[Path], None]]]]
BESIDE = ("", "-wal", "-shm", "-journal")  # what SQLite lays beside a GeoPackage


class WholeOutputs:
    """The files of a run; ``undo`` takes away those that were not there when it began."""

    def __init__(self, paths: Iterable[str], *, read: Iterable[str] = ()) -> None:
        """``read`` are the files the run reads from. Raises SwimPlanError where an output would take the place of one
        of them, or where a file's folder cannot be made or written to; nothing is written yet."""
        self._paths = [Path(path) for path in paths if path]
        sources = {Path(path + ending).resolve() for path in map(str, read) if path for ending in BESIDE}
        for path in self._paths:
            _check_folder(path)
            if path.resolve() in sources:
                raise SwimPlanError(
                    asked=tr("Asked to write {}, which this run reads from").format(path),
                    allowed=tr("Outputs go to files of their own, so that nothing of yours is lost"),
                    remedy=tr("Choose another file"),
                )
            if is_plan(path):
                raise SwimPlanError(
                    asked=tr("Asked to write {}, which is a plan").format(path),
                    allowed=tr("Outputs go to files of their own, so that nothing of yours is lost"),
                    remedy=tr("Choose another file"),
                )
        self._fresh = [path for path in self._paths if not path.exists()]

    def undo(self) -> None:
        """Remove the files that this run made."""
        for path in self._fresh:
            for ending in BESIDE:
                path.with_name(path.name + ending).unlink(missing_ok=True)


def write_each(papers: Iterable[Paper]) -> None:
    """Write each paper whole or not at all, and all that can be; SwimPlanError that names what was and was not."""
    from ..cards.whole_files import write_whole

    written: list[str] = []
    failed: list[str] = []
    why: list[SwimPlanError] = []
    for paths, writers in papers:
        try:
            write_whole(writers())
            written += paths
        except SwimPlanError as error:
            failed += paths
            why.append(error)
    if not why:
        return
    done = tr("Written were: {}").format(", ".join(written)) if written else tr("Nothing was written")
    raise SwimPlanError(asked=tr("Not written: {}. {}").format(", ".join(failed), " ".join(map(str, why))), remedy=done)


def file_of_sink(destination: object) -> str:
    """The file that a sink's parameter writes to; empty for a layer in memory, in a database, or none."""
    if isinstance(destination, QgsProcessingOutputLayerDefinition):
        destination = destination.sink.staticValue()
    text = str(destination or "")
    if text.startswith("ogr:"):
        text = QgsDataSourceUri(text[len("ogr:") :]).database()
    return text if os.path.isabs(text) else ""


def file_of_layer(layer: QgsVectorLayer) -> str:
    """The file a layer is read from, empty where it is none."""
    parts = QgsProviderRegistry.instance().decodeUri(layer.providerType(), layer.source())
    return str(parts.get("path") or "")


def _check_folder(path: Path) -> None:
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        writable = os.access(path.parent, os.W_OK) and not path.is_dir()
    except OSError:  # a name too long is one of these
        writable = False
    if not writable:
        raise SwimPlanError(
            asked=tr("Could not write {}").format(path),
            allowed=tr("Outputs go to a folder that can be written to, under a name that is no folder's"),
            remedy=tr("Choose another folder or name"),
        )
