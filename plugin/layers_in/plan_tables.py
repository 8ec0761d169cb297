"""The tables a plan is read from: its own layers, or others in their place."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from qgis.core import QgsFeatureSource, QgsVectorLayer

from ..plan_package.database import table_names
from ..plan_package.offsets import check_offsets
from ..plan_package.schema import LAYER_BY_NAME
from ..plan_package.store import open_layer
from .table import Table

USED = (
    "routes",
    "marks",
    "channels",
    "closed_areas",
    "land",
    "depth_contours",
    "soundings",
    "tides",
    "stream_stations",
    "stream_rates",
    "stream_events",
    "stream_areas",
    "ferries",
    "swimmers",
)
# Younger than the rest: a plan that lacks one of these simply has no such water.
WATER_FORMS = (
    "tide_ports",
    "tide_series",
    "tide_constants",
    "tide_coefficients",
    "stream_series",
    "stream_constants",
    "stream_models",
    "winds",
    "drifts",
)


def tables_of(
    plan: str | Path | None, sources: Mapping[str, QgsFeatureSource], warnings: list[str]
) -> dict[str, Table]:
    """The tables by name: a given layer first, else the plan's."""
    found, present = {}, table_names(Path(plan)) if plan else set()
    if plan:
        check_offsets(plan)
    for name in USED + WATER_FORMS:
        source = sources.get(name)
        if source is None and plan and name in WATER_FORMS and name not in present:
            continue
        if source is None and plan:
            if name not in present and name != "routes":
                warnings.append(f"The plan has no layer '{name}', which was taken as empty: bring the plan up to date.")
                continue
            source = _plan_layer(plan, name)
        if source is not None:
            found[name] = Table(source, LAYER_BY_NAME[name], warnings)
    return found


def _plan_layer(plan: str | Path, name: str) -> QgsVectorLayer:
    """The plan's layer to read from, without its form and style: they take longer to load than the rows."""
    layer = QgsVectorLayer(f"{plan}|layername={name}", name, "ogr", QgsVectorLayer.LayerOptions(False))
    return layer if layer.isValid() else open_layer(plan, name)  # which says why it cannot be opened
