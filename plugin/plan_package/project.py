"""Shows a plan in a QGIS project: one group, every layer in it, with its stored form and style."""

from __future__ import annotations

from pathlib import Path

from qgis.core import QgsLayerTreeGroup, QgsProject, QgsVectorLayer

from ..words import tr
from . import database
from .map_crs import map_crs, needs_map_crs, show_in
from .schema import LAYER_BY_NAME, YOUNGER, LayerSpec
from .settings import read_settings
from .store import open_layer
from .words import schema_words

# Top of the layer tree first: what is drawn last lies on top, tables stand below the chart.
TREE_ORDER = (
    "marks",
    "routes",
    "transits",
    "landmarks",
    "sessions",
    "stream_stations",
    "soundings",
    "channels",
    "closed_areas",
    "stream_areas",
    "depth_contours",
    "land",
    "tides",
    "tide_ports",
    "tide_series",
    "tide_constants",
    "tide_coefficients",
    "stream_rates",
    "stream_events",
    "stream_series",
    "stream_constants",
    "stream_models",
    "winds",
    "drifts",
    "ferries",
    "swimmers",
    "settings",
    "catches",
)


def add_plan_to_project(path: str | Path, project: QgsProject) -> QgsLayerTreeGroup:
    """Add every layer of the plan to the project in one group at the top, named by the plan's title.

    A layer that holds lines and areas comes as two, so that either can be drawn; one that the plan is too old to have
    is left out. A project that shows nothing yet takes a map on which angles are true. Raises SwimPlanError with
    nothing added when the plan cannot be read.
    """
    path = Path(path)
    title = read_settings(path)["title"] or path.stem
    lacking = set(YOUNGER) - database.table_names(path)
    names = [name for name in TREE_ORDER if name not in lacking]
    layers = [layer for name in names for layer in _layers_of(path, LAYER_BY_NAME[name])]
    crs = map_crs(layers) if needs_map_crs(project) else None
    group = project.layerTreeRoot().insertGroup(0, title)
    for layer in layers:
        project.addMapLayer(layer, False)
        group.addLayer(layer).setExpanded(False)
    if crs is not None:
        show_in(project, crs, layers)
    return group


def _layers_of(path: Path, spec: LayerSpec) -> list[QgsVectorLayer]:
    title = schema_words(spec.title)
    part_titles = {"LineString": tr("{} (lines)"), "Polygon": tr("{} (areas)")}
    if len(spec.geometry_types) < 2:
        layers = {title: open_layer(path, spec.name)}
    else:
        layers = {
            part_titles[part].format(title): open_layer(path, spec.name, geometry_type=part)
            for part in spec.geometry_types
        }
    for name, layer in layers.items():
        layer.setName(name)
    return list(layers.values())
