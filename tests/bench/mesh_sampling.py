"""A million places and times sampled from a mesh in time, beside QGIS's own call for one place on the same mesh."""

from __future__ import annotations

import sys
import time
from datetime import datetime, timezone
from pathlib import Path
from tempfile import TemporaryDirectory

import numpy as np
from qgis.core import QgsMeshDatasetIndex, QgsMeshLayer, QgsPointXY, QgsVectorLayer
from tideleg.core.clock import PlanClock
from tideleg.core.geodesy import LocalFrame
from tideleg.core.water.mesh_stream import MeshStream
from tideleg.layers_in.models_in import models_from
from tideleg.layers_in.table import Table
from tideleg.plan_package.schema import LAYER_BY_NAME

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "qgis"))
from model_files import ugrid

PAIRS, STEPS, NODES_A_SIDE, QGIS_CALLS = 1_000_000, 24, 159, 4_000
HALF_DEG = 0.1
FRAME = LocalFrame(lon=-17.56, lat=44.0)
CLOCK = PlanClock(start=datetime(2027, 6, 5, 6, tzinfo=timezone.utc), zone_name="UTC")
BOX_M = np.array([[-20_000.0, -20_000.0], [20_000.0, 20_000.0]])


def field(x: np.ndarray, y: np.ndarray, hours: float) -> tuple[np.ndarray, np.ndarray]:
    """A stream that differs everywhere and always."""
    return 0.5 * np.sin(60.0 * x + 0.5 * hours), 0.5 * np.cos(50.0 * y - 0.4 * hours)


def mesh_file(path: Path) -> Path:
    """About 50 000 triangles of uneven size."""
    rng = np.random.default_rng(3)
    step = 2.0 * HALF_DEG / (NODES_A_SIDE - 1)
    x, y = (axis.ravel() for axis in np.meshgrid(*[np.arange(NODES_A_SIDE) * step - HALF_DEG] * 2))
    x, y = (axis + rng.uniform(-0.3, 0.3, len(x)) * step for axis in (x, y))
    node = np.arange(NODES_A_SIDE**2).reshape(NODES_A_SIDE, -1)
    a, b, c, d = (part.ravel() for part in (node[:-1, :-1], node[:-1, 1:], node[1:, 1:], node[1:, :-1]))
    faces = np.concatenate([np.column_stack([a, b, c]), np.column_stack([a, c, d])])
    return ugrid(path, FRAME.lon + x, FRAME.lat + y, faces, list(range(STEPS)), field)


def read_model(path: Path) -> MeshStream:
    """The mesh as a plan reads it."""
    spec = LAYER_BY_NAME["stream_models"]
    fields = "&".join(f"field={one.name}:string" for one in spec.fields if one.kind == "text")
    rows = QgsVectorLayer(f"none?{fields}", spec.name, "memory")
    from qgis.core import QgsFeature

    row = QgsFeature(rows.fields())
    row["model"], row["kind"], row["path"] = "bench", "mesh", str(path)
    rows.dataProvider().addFeatures([row])
    (model,) = models_from({spec.name: Table(rows, spec, [])}, FRAME, CLOCK, None, BOX_M, [])
    return model.stream


def places(count: int) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    rng = np.random.default_rng(8)
    xy = rng.uniform(-6500.0, 6500.0, (count, 2))
    return xy[:, 0], xy[:, 1], rng.uniform(0.0, (STEPS - 1) * 3600.0, count)


def by_qgis(layer: QgsMeshLayer, count: int) -> tuple[np.ndarray, float]:
    """Vectors (count, 2) by QgsMeshLayer.datasetValue, two steps for each time as it is linear between; and seconds."""
    x, y, t = places(PAIRS)
    degrees = FRAME.to_lonlat(np.column_stack([x, y])[:count])
    provider = layer.dataProvider()
    group = next(g for g in range(provider.datasetGroupCount()) if provider.datasetGroupMetadata(g).isVector())
    layer.updateTriangularMesh()
    layer.datasetValue(QgsMeshDatasetIndex(group, 0), QgsPointXY(*degrees[0]))
    start = time.perf_counter()
    found = []
    for place, hours in zip(degrees.tolist(), (t[:count] / 3600.0).tolist()):
        step = min(int(hours), STEPS - 2)
        spot, late = QgsPointXY(*place), hours - step
        first = layer.datasetValue(QgsMeshDatasetIndex(group, step), spot)
        second = layer.datasetValue(QgsMeshDatasetIndex(group, step + 1), spot)
        found.append((first.x() + late * (second.x() - first.x()), first.y() + late * (second.y() - first.y())))
    return np.array(found), time.perf_counter() - start


def report() -> None:
    """Print the row of the speed table."""
    with TemporaryDirectory() as folder:
        path = mesh_file(Path(folder) / "mesh.nc")
        start = time.perf_counter()
        mesh = read_model(path)
        reading = time.perf_counter() - start
        x, y, t = places(PAIRS)
        taken = []
        for _ in range(3):
            start = time.perf_counter()
            sample = mesh.at(x, y, t)
            taken.append(time.perf_counter() - start)
        layer = QgsMeshLayer(str(path), "bench", "mdal", QgsMeshLayer.LayerOptions())
        theirs, seconds = by_qgis(layer, QGIS_CALLS)
    ours = np.column_stack([sample.east_m_s, sample.north_m_s])[:QGIS_CALLS]
    both = np.isfinite(theirs).all(axis=1) & np.isfinite(ours).all(axis=1)
    apart = float(np.max(np.abs(ours[both] - theirs[both])))
    known = int(np.isfinite(sample.east_m_s).sum())
    print(
        f"mesh, {PAIRS:,} places and times from {STEPS} steps of {len(mesh.triangles):,} triangles, locating included: "
        f"{min(taken):.2f} s ({known:,} known; target 2 s; reading the file {reading:.2f} s); QGIS's own call for one "
        f"place, {QGIS_CALLS:,} times: {1e6 * seconds / QGIS_CALLS:.0f} us each; ratio "
        f"{seconds / QGIS_CALLS * PAIRS / min(taken):.0f}; largest difference {1000.0 * apart:.4f} mm/s"
    )


if __name__ == "__main__":
    from qgis.core import QgsApplication

    application = QgsApplication([], False)
    application.initQgis()
    report()
    application.exitQgis()
