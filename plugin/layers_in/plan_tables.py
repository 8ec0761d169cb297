"""The tables a plan is read from: its own layers, or others in their place."""

from __future__ import annotations

from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path

from qgis.core import QgsFeatureSource, QgsVectorLayer

from ..core.errors import SwimPlanError
from ..plan_package.database import row_count, table_names
from ..plan_package.odd_numbers import check_numbers
from ..plan_package.offsets import check_offsets
from ..plan_package.schema import LAYER_BY_NAME, YOUNGER
from ..plan_package.store import open_layer
from ..words import tr
from .copied_source import CopiedSource
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
TRIES = 6


def tables_of(
    plan: str | Path | None, sources: Mapping[str, QgsFeatureSource], warnings: list[str]
) -> dict[str, Table]:
    """The tables by name: a given layer first, else the plan's."""
    found, present = {}, table_names(Path(plan)) if plan else set()
    if plan:
        check_offsets(plan)
        check_numbers(plan)
    for name in USED + YOUNGER:
        source = sources.get(name)
        if source is None and plan and name in YOUNGER and name not in present:
            continue
        if source is None and plan:
            if name not in present and name != "routes":
                warnings.append(
                    tr("The plan has no layer '{name}', which was taken as empty: bring the plan up to date.").format(
                        name=name
                    )
                )
                continue
            source = _plan_rows(plan, name)
        if source is not None:
            found[name] = Table(source, LAYER_BY_NAME[name], warnings)
    return found


def rows_of_plan(plan: str | Path) -> dict[str, CopiedSource]:
    """The rows of every layer that the plan has, for whoever reads it many times: what QGIS keeps of a layer that was
    opened goes only when its window comes to rest, and no window rests in a run from a shell.

    SwimPlanError where they do not come whole.
    """
    present = table_names(Path(plan))
    return {name: _plan_rows(plan, name) for name in USED + YOUNGER if name in present}


def _plan_rows(plan: str | Path, name: str) -> CopiedSource:
    """The rows of the plan's layer, read at once and all of them.

    While somebody edits a GeoPackage in QGIS, what QGIS had open of it before gives errors in the place of rows, once
    for each time it was open; the layer then looks empty or has no system. So it is asked again, and the rows are
    counted without GDAL. Raises SwimPlanError where they do not come.
    """
    least = row_count(Path(plan), name)
    for _ in range(TRIES - 1):
        layer = _opened(plan, name)
        if layer.isValid() and (layer.crs().isValid() or not LAYER_BY_NAME[name].has_geometry):
            with suppress(SwimPlanError):
                return CopiedSource([layer], least)
    layer = _opened(plan, name)
    return CopiedSource([layer if layer.isValid() else open_layer(plan, name)], least)


def _opened(plan: str | Path, name: str) -> QgsVectorLayer:
    """The plan's layer without its form and style: they take longer to load than the rows."""
    return QgsVectorLayer(f"{plan}|layername={name}", name, "ogr", QgsVectorLayer.LayerOptions(False))
