"""Makes and fills the tables of a plan's GeoPackage with GDAL."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime
from pathlib import Path

from osgeo import gdal, ogr, osr

from ..core.errors import SwimPlanError
from ..words import tr
from .field_spec import FieldSpec, LayerSpec

UTC_FLAG = 100  # GDAL's time zone flag for UTC (ogr_core.h, OGRField.Date.TZFlag); GDAL then stores a trailing Z
_FIELD_TYPES = {
    "text": ogr.OFTString,
    "integer": ogr.OFTInteger,
    "real": ogr.OFTReal,
    "datetime": ogr.OFTDateTime,
}
_GEOMETRY_TYPES = {
    "Point": ogr.wkbPoint,
    "LineString": ogr.wkbLineString,
    "Polygon": ogr.wkbPolygon,
    "LineString or Polygon": ogr.wkbUnknown,
    "none": ogr.wkbNone,
}


class GeoPackage:
    """An open GeoPackage; use it in a `with` block, so that it is written and closed at the end.

    Methods raise SwimPlanError when GDAL refuses; `remedy` is added to every one of them.
    """

    def __init__(self, path: Path, *, create: bool = False) -> None:
        self._path = path
        self._create = create
        self._dataset = None

    def __enter__(self) -> GeoPackage:
        if self._create:
            driver = gdal.GetDriverByName("GPKG")
            self._dataset = _told(lambda: driver.Create(str(self._path), 0, 0, 0, gdal.GDT_Unknown), self._path)
        else:
            self._dataset = _told(lambda: gdal.OpenEx(str(self._path), gdal.OF_VECTOR | gdal.OF_UPDATE), self._path)
        return self

    def __exit__(self, *_exception: object) -> None:
        self._dataset = None

    def layer_names(self) -> list[str]:
        """Names of the layers and tables in the file."""
        return [self._dataset.GetLayer(index).GetName() for index in range(self._dataset.GetLayerCount())]

    def field_names(self, layer_name: str) -> list[str]:
        """Names of a layer's fields."""
        definition = self._dataset.GetLayerByName(layer_name).GetLayerDefn()
        return [definition.GetFieldDefn(index).GetName() for index in range(definition.GetFieldCount())]

    def add_layer(self, spec: LayerSpec, epsg: int) -> None:
        """Make the empty layer with all its fields."""
        reference = None
        if spec.has_geometry:
            reference = osr.SpatialReference()
            reference.ImportFromEPSG(epsg)
        options = [
            f"IDENTIFIER={spec.name}",
            f"DESCRIPTION={spec.help}",
            "FID=fid",
        ]
        if spec.has_geometry:
            options.append("GEOMETRY_NAME=geom")
        geometry_type = _GEOMETRY_TYPES[spec.geometry]
        _told(lambda: self._dataset.CreateLayer(spec.name, reference, geometry_type, options), self._path)
        for field in spec.fields:
            self.add_field(spec.name, field)

    def add_field(self, layer_name: str, field: FieldSpec, *, nullable: bool = False) -> None:
        """Make one field with its title, default, NOT NULL and value range in the file itself.

        A field that has a default stays nullable: a program that writes an explicit NULL means the default.
        """
        definition = ogr.FieldDefn(field.name, _FIELD_TYPES[field.kind])
        definition.SetAlternativeName(field.alias)
        if field.required and field.default is None and not nullable:
            definition.SetNullable(False)
        if field.default is not None:
            definition.SetDefault(_sql_literal(field.default))
        domain = _domain(f"{layer_name}_{field.name}", field)
        if domain is not None and _succeeds(lambda: self._dataset.AddFieldDomain(domain)):
            definition.SetDomainName(domain.GetName())
        if hasattr(definition, "SetComment"):  # GDAL 3.7
            definition.SetComment(field.help)
        layer = self._dataset.GetLayerByName(layer_name)
        if _told(lambda: layer.CreateField(definition), self._path) != ogr.OGRERR_NONE:
            raise _failure(self._path)

    def append(self, layer_name: str, rows: Iterable[tuple[bytes | None, dict[str, object]]]) -> int:
        """Write rows of (WKB or None, stored values) in one transaction, all or none; returns their number."""
        layer = self._dataset.GetLayerByName(layer_name)
        if _told(lambda: self._dataset.StartTransaction(), self._path) != ogr.OGRERR_NONE:
            raise _failure(self._path)
        count = 0
        try:
            for wkb, values in rows:
                feature = _feature(layer.GetLayerDefn(), wkb, values)
                if _told(lambda feature=feature: layer.CreateFeature(feature), self._path) != ogr.OGRERR_NONE:
                    raise _failure(self._path)
                count += 1
        except BaseException:
            self._dataset.RollbackTransaction()
            raise
        if _told(lambda: self._dataset.CommitTransaction(), self._path) != ogr.OGRERR_NONE:
            raise _failure(self._path)
        return count


def _feature(definition: ogr.FeatureDefn, wkb: bytes | None, values: dict[str, object]) -> ogr.Feature:
    feature = ogr.Feature(definition)
    if wkb is not None:
        feature.SetGeometryDirectly(ogr.CreateGeometryFromWkb(wkb))
    for name, value in values.items():
        index = definition.GetFieldIndex(name)
        if value is None:
            feature.SetFieldNull(index)
        elif isinstance(value, datetime):
            second = value.second + value.microsecond / 1e6
            clock = (value.year, value.month, value.day, value.hour, value.minute, second)
            feature.SetField(index, *clock, UTC_FLAG)
        else:
            feature.SetField(index, value)
    return feature


def _sql_literal(default: object) -> str:
    return "'" + default.replace("'", "''") + "'" if isinstance(default, str) else repr(default)


def _domain(name: str, field: FieldSpec) -> ogr.FieldDomain | None:
    """The field's value list or range as a GeoPackage data column constraint; None where it has neither."""
    kind = _FIELD_TYPES[field.kind]
    if field.choices is not None and not field.open_list:
        return ogr.CreateCodedFieldDomain(name, field.alias, kind, ogr.OFSTNone, dict(field.choices))
    if not field.is_number or field.minimum is None or field.maximum is None:
        return None
    low, high = float(field.minimum), float(field.maximum)
    return ogr.CreateRangeFieldDomain(name, field.alias, kind, ogr.OFSTNone, low, not field.above_minimum, high, True)


def _told(action, path: Path):  # noqa: ANN001, ANN202  (whatever GDAL's call returns)
    """Run a GDAL call that may return None or raise, as the process has set GDAL up; either becomes SwimPlanError."""
    try:
        result = action()
    except RuntimeError as error:
        raise _failure(path) from error
    if result is None:
        raise _failure(path)
    return result


def _succeeds(action) -> bool:  # noqa: ANN001
    try:
        return bool(action())
    except RuntimeError:
        return False


def _failure(path: Path) -> SwimPlanError:
    said = gdal.GetLastErrorMsg() or tr("no reason given")
    return SwimPlanError(
        asked=tr("The plan {path} could not be written ({said})").format(path=path, said=said),
        allowed=tr("A plan is a GeoPackage that nothing else is writing to"),
        remedy=tr("Check the folder's permissions and free space, end edits of its layers, and try again"),
    )
