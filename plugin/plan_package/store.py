"""Makes, opens and fills the GeoPackage of a plan."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterable, Mapping
from pathlib import Path

from qgis.core import QgsGeometry, QgsVectorLayer

from ..core.errors import BadInputError, SwimPlanError
from . import database
from .geopackage import GeoPackage
from .row_check import checked_geometry, checked_values
from .schema import EPSG, LAYER_BY_NAME, LAYERS, LayerSpec, default_settings
from .settings import checked_settings, read_settings, require_readable, write_settings
from .styles import store_styles

__all__ = ["append_rows", "create_plan", "open_layer", "read_settings", "write_settings"]

SUFFIX = ".gpkg"

Row = tuple["QgsGeometry | None", Mapping[str, object]]


def create_plan(
    path: str | Path,
    *,
    zone: str = "UTC",
    datum: str = "chart datum",
    title: str = "",
    overwrite: bool = False,
) -> Path:
    """Make an empty plan with every layer and table, its forms and styles, and the default settings.

    `zone` is an IANA name. The file appears whole or not at all. An existing file is refused unless `overwrite`; then
    it is replaced once the new one is whole. Raises SwimPlanError.
    """
    target = _checked_target(Path(path), overwrite=overwrite)
    settings = checked_settings({**default_settings(), "zone": zone, "datum": datum, "title": title})
    workshop = Path(tempfile.mkdtemp(prefix=".tideleg-", dir=target.parent))
    try:
        draft = workshop / target.name
        _build(draft, settings)
        database.settle(draft)
        if target.exists():
            database.settle_before_replacing(target)
        _move(draft, target)
    finally:
        shutil.rmtree(workshop, ignore_errors=True)
    return target


def append_rows(path: str | Path, layer_name: str, rows: Iterable[Row]) -> int:
    """Add rows to a layer of a plan, all or none, and return how many were stored.

    A row is a geometry in EPSG:4326 (longitude first; None for a table) and a dict from field name to value. A field
    left out takes its default. Geometries of several parts are stored as one row per part. Times need their zone.
    Raises BadInputError naming layer, row (counted from 1), field and value, with nothing written.
    """
    path = Path(path)
    require_readable(path)
    spec = _spec(path, layer_name)
    stored = []
    for number, (geometry, values) in enumerate(rows, start=1):
        checked = checked_values(spec, number, values)
        stored.extend((wkb, checked) for wkb in checked_geometry(spec, number, geometry))
    if not stored:
        return 0
    with GeoPackage(path) as package:
        return package.append(layer_name, stored)


def open_layer(path: str | Path, layer_name: str, *, geometry_type: str = "") -> QgsVectorLayer:
    """One layer or table of a plan with its stored form and style.

    `channels` holds lines and areas: its layer gives the features of both and takes its type from the first of them,
    none while it is empty. `geometry_type` ("LineString" or "Polygon") opens one of the two alone, ready to be drawn
    into. Raises BadInputError when the file or the layer is not there.
    """
    path = Path(path)
    require_readable(path)
    spec = _spec(path, layer_name)
    part = f"|geometrytype={geometry_type}" if geometry_type else ""
    layer = QgsVectorLayer(f"{path}|layername={layer_name}{part}", layer_name, "ogr")
    if not layer.isValid():
        raise BadInputError(
            layer=spec.name,
            allowed=f"The file {path} must be a plan with this layer",
            remedy="Make a new plan, or copy the file again if it is damaged",
        )
    return layer


def _checked_target(path: Path, *, overwrite: bool) -> Path:
    if path.suffix.lower() != SUFFIX:
        raise SwimPlanError(
            asked=f"The plan was to be written to {path}",
            allowed=f"A plan is a GeoPackage and its name ends in {SUFFIX}",
            remedy=f"Use {path.with_suffix(SUFFIX).name}",
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


def _build(draft: Path, settings: Mapping[str, str]) -> None:
    with GeoPackage(draft, create=True) as package:
        for spec in LAYERS:
            package.add_layer(spec, EPSG)
    write_settings(draft, settings)
    store_styles(draft, LAYERS)


def _move(draft: Path, target: Path) -> None:
    try:
        os.replace(draft, target)
    except OSError as error:
        raise SwimPlanError(
            asked=f"The plan could not be put in place as {target} ({error.strerror})",
            allowed="No other program may have the file open",
            remedy="Remove its layers from open projects and try again",
        ) from error


def _spec(path: Path, layer_name: str) -> LayerSpec:
    spec = LAYER_BY_NAME.get(layer_name)
    if spec is None:
        raise BadInputError(
            layer=layer_name,
            allowed="A plan has the layers " + ", ".join(LAYER_BY_NAME),
            remedy="Use one of these names",
        )
    if layer_name not in database.table_names(path):
        raise BadInputError(
            layer=layer_name,
            allowed=f"The plan {path} lacks this layer",
            remedy="Make a new plan, or bring this one up to date",
        )
    return spec
