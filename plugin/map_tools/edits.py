"""Changes to the plan's layers through QGIS's edit buffers: one step of undo for each, nothing saved, nothing lost."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager

from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

from ..core.errors import SwimPlanError
from ..words import tr

Vertex = tuple[int, int]  # the feature's id, and the number of the vertex


@contextmanager
def one_change(layer: QgsVectorLayer, words: str) -> Iterator[None]:
    """One step of undo, named by ``words``; a change that fails leaves no trace and raises SwimPlanError.

    Editing is begun where it is not yet, and goes on afterwards: saving is the user's.
    """
    if not layer.isEditable() and not layer.startEditing():
        raise _not_editable(layer)
    layer.beginEditCommand(words)
    try:
        yield
    except BaseException:
        layer.destroyEditCommand()
        raise
    layer.endEditCommand()
    layer.triggerRepaint()


def require_editable(layer: QgsVectorLayer) -> None:
    """SwimPlanError for a layer that is known to take no edits: said before anything is drawn."""
    if not layer.isEditable() and not layer.supportsEditing():
        raise _not_editable(layer)


def check(done: bool, layer: QgsVectorLayer) -> None:
    """Within a change: SwimPlanError where QGIS did not do it."""
    if not done:
        raise SwimPlanError(
            asked=tr("QGIS did not take the change into the layer '{}'").format(layer.name()),
            allowed=tr("What is changed must still be there"),
            remedy=tr("Look at the layer and try again; nothing was changed"),
        )


def add_row(layer: QgsVectorLayer, feature: QgsFeature, words: str) -> None:
    """Add a row that has been drawn."""
    with one_change(layer, words):
        check(layer.addFeature(feature), layer)


def move_point(layer: QgsVectorLayer, fid: int, lonlat: tuple[float, float], words: str) -> None:
    """Move a point elsewhere."""
    with one_change(layer, words):
        _check_there(layer, fid)
        check(layer.changeGeometry(fid, QgsGeometry.fromPointXY(QgsPointXY(*lonlat))), layer)


def move_vertex(layer: QgsVectorLayer, fid: int, vertex: int, lonlat: tuple[float, float], words: str) -> None:
    """Move one vertex of a line elsewhere."""
    with one_change(layer, words):
        _check_vertex(layer, fid, vertex)
        check(layer.moveVertex(*lonlat, fid, vertex), layer)


def move_vertices(layer: QgsVectorLayer, vertices: Sequence[Vertex], lonlat: tuple[float, float], words: str) -> None:
    """Move several vertices to one place in one step."""
    with one_change(layer, words):
        for fid, vertex in vertices:
            check(layer.moveVertex(*lonlat, fid, vertex), layer)


def vertices_at(layer: QgsVectorLayer, lonlat: tuple[float, float]) -> list[Vertex]:
    """The vertices that lie exactly at a place."""
    return [
        (row.id(), number)
        for row in layer.getFeatures()
        for number, vertex in enumerate(row.geometry().vertices())
        if (vertex.x(), vertex.y()) == lonlat
    ]


def insert_vertex(layer: QgsVectorLayer, fid: int, before: int, lonlat: tuple[float, float], words: str) -> None:
    """Put a vertex into a line before the one of this number."""
    with one_change(layer, words):
        _check_vertex(layer, fid, before)
        check(layer.insertVertex(*lonlat, fid, before), layer)


def delete_vertex(layer: QgsVectorLayer, fid: int, vertex: int, words: str) -> None:
    """Take a vertex out of a line, which keeps two."""
    with one_change(layer, words):
        count = _check_vertex(layer, fid, vertex)
        if count <= 2:
            raise SwimPlanError(
                asked=tr("A route of two stops cannot lose one"),
                allowed=tr("A route has two stops or more"),
                remedy=tr("Move the stop, or delete the whole route in QGIS"),
            )
        done = layer.deleteVertex(fid, vertex)
        check(done == QgsVectorLayer.EditResult.Success, layer)


def _not_editable(layer: QgsVectorLayer) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("The layer '{}' cannot be edited").format(layer.name()),
        allowed=tr("It must not be read-only, and its file must be writable and not held by another program"),
        remedy=tr("Allow editing in the project's properties or free the file, then try again"),
    )


def _check_there(layer: QgsVectorLayer, fid: int) -> QgsGeometry:
    geometry = layer.getGeometry(fid)
    check(not geometry.isNull(), layer)
    return geometry


def _check_vertex(layer: QgsVectorLayer, fid: int, vertex: int) -> int:
    """How many vertices the line has; SwimPlanError where it no longer has this one."""
    geometry = _check_there(layer, fid)  # kept while what it holds is asked
    count = geometry.constGet().nCoordinates()
    check(0 <= vertex < count, layer)
    return count
