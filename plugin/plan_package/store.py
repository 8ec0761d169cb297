"""Makes, opens and fills the GeoPackage of a plan."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from pathlib import Path

from qgis.core import QgsGeometry, QgsVectorLayer

from ..core.errors import BadInputError
from ..words import tr
from . import database
from .geopackage import GeoPackage
from .placing import placed_whole
from .row_check import checked_geometry, checked_values
from .schema import EPSG, LAYER_BY_NAME, LAYERS, LayerSpec, default_settings
from .settings import checked_settings, read_settings, require_plain_path, require_readable, write_settings
from .styles import store_styles

__all__ = ["append_rows", "create_plan", "open_layer", "read_settings", "write_settings"]

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
    require_plain_path(Path(path))
    settings = checked_settings({**default_settings(), "zone": zone, "datum": datum, "title": title})
    with placed_whole(path, overwrite=overwrite) as draft:
        with GeoPackage(draft, create=True) as package:
            for spec in LAYERS:
                package.add_layer(spec, EPSG)
        write_settings(draft, settings)
        store_styles(draft, LAYERS)
    return Path(path)


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
        _require_fields(spec, package.field_names(layer_name))
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
            allowed=tr("The file {path} must be a plan with this layer").format(path=path),
            remedy=tr("Make a new plan, or copy the file again if it is damaged"),
        )
    return layer


def _require_fields(spec: LayerSpec, present: list[str]) -> None:
    for field in spec.fields:
        if field.name not in present:
            raise BadInputError(
                layer=spec.name,
                field=field.name,
                allowed=tr("The plan's layer lacks this field"),
                remedy=tr("Bring the plan up to date, or make a new one"),
            )


def _spec(path: Path, layer_name: str) -> LayerSpec:
    spec = LAYER_BY_NAME.get(layer_name)
    if spec is None:
        raise BadInputError(
            layer=layer_name,
            allowed=tr("A plan has the layers {names}").format(names=", ".join(LAYER_BY_NAME)),
            remedy=tr("Use one of these names"),
        )
    if layer_name not in database.table_names(path):
        raise BadInputError(
            layer=layer_name,
            allowed=tr("The plan {path} lacks this layer").format(path=path),
            remedy=tr("Make a new plan, or bring this one up to date"),
        )
    return spec
