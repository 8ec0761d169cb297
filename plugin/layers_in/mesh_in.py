"""A stream model that QGIS opens as a mesh layer: its part around the plan, whole steps at a time."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsMesh,
    QgsMeshDataProvider,
    QgsMeshDatasetGroupMetadata,
    QgsMeshDatasetIndex,
    QgsMeshLayer,
)

from ..core.clock import PlanClock
from ..core.geodesy import LocalFrame
from ..core.water.mesh_faces import drying_mesh, split_faces
from ..core.water.mesh_stream import MeshStream
from ..words import tr
from .mesh_part import MeshPart
from .model_places import ModelPlaces
from .model_row import ModelRow, listed
from .model_times import check_size, model_times_s, needed_steps
from .model_units import refuse_wind, speed_factor, without_fillers
from .moments import utc_moment

ON_FACES = QgsMeshDatasetGroupMetadata.DataType.DataOnFaces
ON_NODES = QgsMeshDatasetGroupMetadata.DataType.DataOnVertices


def mesh_stream(
    row: ModelRow, frame: LocalFrame, clock: PlanClock, box_m: np.ndarray, warnings: list[str]
) -> MeshStream | None:
    """The model's stream around a box of the plan's frame; None where it does not reach the plan in place or time."""
    # Made here and known to no project: nothing of the user's is touched. No style is looked for beside the file.
    layer = QgsMeshLayer(str(row.path), row.name, "mdal", QgsMeshLayer.LayerOptions())
    if not layer.isValid():
        raise row.refused(
            "path",
            row.path.name,
            tr("QGIS does not open this file as a mesh"),
            tr("Name a mesh with its dataset groups, or write kind 'raster' if it is a raster"),
        )
    provider = layer.dataProvider()
    _add_datasets(row, provider)
    groups = _groups(row, provider)
    steps = _Steps(row, provider, groups, clock, warnings)
    if not len(steps.numbers):
        return None
    part = _part(row, layer, frame, box_m, warnings)
    if part is None:
        warnings.append(
            tr("Stream model '{name}' has no mesh around the plan: it does not know its stream.").format(name=row.name)
        )
        return None
    return _stream(row, part, steps, warnings)


class _Steps:
    """The steps of a vector group, or of two scalar ones, that the plan needs: their times and their values."""

    def __init__(
        self,
        row: ModelRow,
        provider: QgsMeshDataProvider,
        groups: list[int],
        clock: PlanClock,
        warnings: list[str],
    ) -> None:
        self._row, self._provider, self._groups = row, provider, groups
        metadata = [provider.datasetGroupMetadata(group) for group in groups]
        for one in metadata:
            refuse_wind(row, one.name())
        self.on_faces = self._place(metadata)
        counts = {provider.datasetCount(group) for group in groups}
        if len(counts) > 1:
            raise row.refused(
                "v_group", row.v_group, tr("Both parts have the same steps"), tr("Name two parts of one model")
            )
        times = _times_s(row, provider, groups[0], clock, counts.pop(), warnings)
        self.numbers = needed_steps(row, clock, times, warnings)
        self.times_s = times[self.numbers]
        self._factors = [speed_factor(row, _unit(one), warnings) for one in metadata[: 1 if len(groups) == 1 else 2]]

    def values(self, kept: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Both components (n_times, k) along the model's own axes, in m/s, at the nodes or faces kept (k,)."""
        check_size(self._row, len(self.numbers), len(kept))
        first, second = np.empty((2, len(self.numbers), len(kept)), dtype=np.float32)
        for place, step in enumerate(self.numbers.tolist()):
            blocks = [self._block(group, step) for group in self._groups]
            pair = blocks[0].reshape(-1, 2).T if len(blocks) == 1 else blocks
            factors = self._factors * (2 // len(self._factors))
            first[place], second[place] = (part[kept] * factor for part, factor in zip(pair, factors))
        return first, second

    def inactive(self, faces: np.ndarray) -> np.ndarray | None:
        """Which of the faces (k,) are switched off at each step (n_times, k); None where the file switches none off."""
        count = self._provider.faceCount()
        found = np.zeros((len(self.numbers), len(faces)), dtype=bool)
        for place, step in enumerate(self.numbers.tolist()):
            block = self._provider.areFacesActive(QgsMeshDatasetIndex(self._groups[0], step), 0, count)
            if block.isValid() and block.count() == count:
                found[place] = [not block.active(face) for face in faces.tolist()]
        return found if found.any() else None

    def _block(self, group: int, step: int) -> np.ndarray:
        count = self._provider.faceCount() if self.on_faces else self._provider.vertexCount()
        block = self._provider.datasetValues(QgsMeshDatasetIndex(group, step), 0, count)
        values = np.array(block.values(), dtype=float)
        if len(values) != count * (2 if len(self._groups) == 1 else 1):
            return np.full(count * (2 if len(self._groups) == 1 else 1), np.nan)
        return values

    def _place(self, metadata: list[QgsMeshDatasetGroupMetadata]) -> bool:
        """Whether the values stand in faces; at nodes otherwise."""
        kinds = {one.dataType() for one in metadata}
        if kinds not in ({ON_FACES}, {ON_NODES}):
            raise self._row.refused(
                "group",
                metadata[0].name(),
                tr("The stream stands at the mesh's nodes or in its faces; layered and edge values are not read"),
                tr("Export the surface layer"),
            )
        return kinds == {ON_FACES}


def _stream(row: ModelRow, part: MeshPart, steps: _Steps, warnings: list[str]) -> MeshStream:
    kept = part.faces if steps.on_faces else part.nodes
    east, north = steps.values(kept)
    without_fillers(row, east, north, warnings)
    part.turn_true(east, north, steps.on_faces)
    inactive = steps.inactive(part.faces)
    x, y = part.xy_m.T
    if steps.on_faces:
        if inactive is not None:
            east[inactive] = north[inactive] = np.nan
        return MeshStream.of_faces(
            x_m=x, y_m=y, corners=part.corners, times_s=steps.times_s, east_m_s=east, north_m_s=north, name=row.name
        )
    triangles = split_faces(part.corners)
    if inactive is not None:
        x, y, triangles, (east, north) = drying_mesh(x, y, part.corners, np.stack([east, north]), inactive)
    return MeshStream(
        x_m=x, y_m=y, triangles=triangles, times_s=steps.times_s, east_m_s=east, north_m_s=north, name=row.name
    )


def _add_datasets(row: ModelRow, provider: QgsMeshDataProvider) -> None:
    """Values in a file of their own beside the mesh, as .dat beside .2dm."""
    if row.v_path is not None and not provider.addDataset(str(row.v_path)):
        raise row.refused(
            "v_path",
            row.v_path.name,
            tr(
                "For a mesh this is a file of dataset groups that belong to it, and QGIS does not read this one as such"
            ),
            tr("Correct the file, or leave the field empty"),
        )


def _groups(row: ModelRow, provider: QgsMeshDataProvider) -> list[int]:
    """The vector group the row names, or the only one; or the two scalar groups it names."""
    metadata = [provider.datasetGroupMetadata(group) for group in range(provider.datasetGroupCount())]
    names = [one.name() for one in metadata]
    vectors = [group for group, one in enumerate(metadata) if one.isVector()]
    if not row.group:
        if len(vectors) == 1:
            return vectors
        raise _no_group(row, "group", names, vectors)
    first = _named(row, "group", row.group, names, vectors)
    if first in vectors:
        return [first]
    if not row.v_group:
        raise _no_group(row, "group", names, vectors)
    second = _named(row, "v_group", row.v_group, names, vectors)
    return [first, second]


def _named(row: ModelRow, field: str, asked: str, names: list[str], vectors: list[int]) -> int:
    """The group of that name, or the only one that begins so."""
    low = asked.lower()
    exact = [group for group, name in enumerate(names) if name.lower() == low]
    begins = [group for group, name in enumerate(names) if name.lower().startswith(low)]
    for found in (exact, begins):
        if len(found) == 1:
            return found[0]
    raise _no_group(row, field, names, vectors)


def _no_group(row: ModelRow, field: str, names: list[str], vectors: list[int]) -> Exception:
    return row.refused(
        field,
        getattr(row, field) or None,
        tr("Its groups with a direction are {directed}; all its groups are {names}").format(
            directed=listed([names[group] for group in vectors]), names=listed(names)
        ),
        tr("Name one with a direction, or the east and the north part in group and v_group"),
    )


def _unit(metadata: QgsMeshDatasetGroupMetadata) -> str:
    options = {key.lower(): value for key, value in metadata.extraOptions().items()}
    return str(options.get("units") or options.get("unit") or "")


def _times_s(
    row: ModelRow, provider: QgsMeshDataProvider, group: int, clock: PlanClock, count: int, warnings: list[str]
) -> np.ndarray:
    """Seconds from the plan's start of the group's steps, whatever zone the machine is in."""
    capabilities = provider.temporalCapabilities()
    moment = capabilities.referenceTime() if capabilities.hasReferenceTime() else None
    reference = None
    if moment is not None and moment.isValid():
        # Digits in local time are UTC digits: a model file has no machine's zone.
        reference = utc_moment(moment, layer=row.table.name, row=row.number, field="path")
    milliseconds = [capabilities.datasetTime(QgsMeshDatasetIndex(group, step)) for step in range(count)]
    return model_times_s(row, clock, reference, np.array(milliseconds, dtype=float) / 1000.0, count, warnings)


def _part(
    row: ModelRow, layer: QgsMeshLayer, frame: LocalFrame, box_m: np.ndarray, warnings: list[str]
) -> MeshPart | None:
    """What of the mesh lies around the plan."""
    mesh = QgsMesh()
    layer.dataProvider().populateMesh(mesh)
    xy = np.fromiter(_coordinates(mesh), dtype=float, count=2 * mesh.vertexCount()).reshape(-1, 2)
    # The provider's own maximum is not set by every driver on 3.22: it can be any number.
    width = max((len(mesh.face(face)) for face in range(mesh.faceCount())), default=3)
    corners = np.fromiter(_corners(mesh, width), dtype=np.int32, count=width * mesh.faceCount()).reshape(-1, width)
    extent = layer.extent()
    bounds = (extent.xMinimum(), extent.yMinimum(), extent.xMaximum(), extent.yMaximum())
    crs = layer.crs()
    wkt = crs.toWkt(QgsCoordinateReferenceSystem.WktVariant.WKT2_2019) if crs.isValid() else ""
    places = ModelPlaces(row, wkt, bounds, frame, warnings)
    return MeshPart.around(places, xy, corners, box_m)


def _coordinates(mesh: QgsMesh) -> Iterator[float]:
    for node in range(mesh.vertexCount()):
        point = mesh.vertex(node)
        yield point.x()
        yield point.y()


def _corners(mesh: QgsMesh, width: int) -> Iterator[int]:
    for face in range(mesh.faceCount()):
        nodes = mesh.face(face)
        yield from nodes
        yield from (-1,) * (width - len(nodes))
