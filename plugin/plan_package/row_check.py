"""Checks rows against the schema before anything is written; geometry and values come out ready to store."""

from __future__ import annotations

import math
import numbers
import re
from collections.abc import Mapping
from datetime import datetime, timezone

from qgis.core import QgsGeometry, QgsWkbTypes
from qgis.PyQt.QtCore import QDateTime, Qt, QVariant

from ..core.errors import BadInputError
from ..layers_in.moments import utc_moment
from ..words import tr
from .field_spec import FieldSpec, LayerSpec

LARGEST_LATITUDE_DEG = 90.0
LARGEST_LONGITUDE_DEG = 360.0
_TYPE_NAMES = {
    QgsWkbTypes.GeometryType.PointGeometry: "Point",
    QgsWkbTypes.GeometryType.LineGeometry: "LineString",
    QgsWkbTypes.GeometryType.PolygonGeometry: "Polygon",
}
_CLOCK_WITH_OFFSET = re.compile(r"[0-9](Z|[+-][0-9]{2}(:?[0-9]{2})?)$")


def checked_values(layer: LayerSpec, row: int, values: Mapping[str, object]) -> dict[str, object]:
    """The row's values as they are stored: str, int, float, aware UTC datetime or None.

    A field that is left out takes its default; None stays empty. Raises BadInputError naming layer, row, field, value.
    """
    known = {field.name for field in layer.fields}
    for name, value in values.items():
        if name not in known:
            raise BadInputError(
                layer=layer.name,
                row=row,
                field=name,
                value=value,
                allowed=tr("The layer has the fields {names}").format(
                    names=", ".join(field.name for field in layer.fields)
                ),
                remedy=tr("Drop the value or give it one of these names"),
            )
    return {
        field.name: checked_value(layer, row, field, values.get(field.name, field.default)) for field in layer.fields
    }


def checked_text(field: FieldSpec, text: str, *, layer: str, row: object) -> object:
    """A value that is stored as text (a setting), read as what `field` says; raises BadInputError."""
    if field.kind == "text":
        return text
    try:
        return _checked_number(layer, row, field, int(text) if field.kind == "integer" else float(text))
    except (TypeError, ValueError, BadInputError):
        raise _refusal(layer, row, field, text) from None


def checked_geometry(layer: LayerSpec, row: int, geometry: QgsGeometry | None) -> list[bytes | None]:
    """The row's geometry as WKB of single, flat parts, one stored row each; `[None]` for a table.

    Coordinates are degrees, longitude first. Raises BadInputError for a missing or empty geometry, another type than
    the layer's, and coordinates off the globe.
    """
    if not layer.has_geometry:
        if geometry is not None and not geometry.isNull():
            raise _wrong_geometry(layer, row, geometry, tr("The table holds no geometry"), tr("Pass None"))
        return [None]
    if geometry is None or geometry.isNull() or geometry.isEmpty():
        raise _wrong_geometry(
            layer,
            row,
            None,
            tr("A row needs a {geometry}").format(geometry=layer.geometry),
            tr("Draw it or leave the row out"),
        )
    if _TYPE_NAMES.get(geometry.type()) not in layer.geometry_types:
        raise _wrong_geometry(
            layer,
            row,
            geometry,
            tr("The layer holds {geometry}").format(geometry=layer.geometry),
            tr("Convert the geometry or choose another layer"),
        )
    return [_checked_part(layer, row, part) for part in _flat_parts(geometry)]


def checked_value(layer: LayerSpec, row: int, field: FieldSpec, value: object) -> object:
    """The value as it is stored: str, int, float, aware UTC datetime or None; BadInputError for one not allowed."""
    if _is_null(value) or (field.kind == "text" and value == ""):
        if field.required:
            raise BadInputError(
                layer=layer.name,
                row=row,
                field=field.name,
                allowed=tr("The field must be filled: {what}").format(what=field.allowed_words()),
                remedy=tr("Fill it in"),
            )
        return None
    if field.kind == "text":
        return _checked_string(layer.name, row, field, value)
    if field.kind == "datetime":
        return _checked_moment(layer.name, row, field, value)
    return _checked_number(layer.name, row, field, value)


def _is_null(value: object) -> bool:
    return value is None or (isinstance(value, (QVariant, QDateTime)) and value.isNull())


def _checked_string(layer: str, row: object, field: FieldSpec, value: object) -> str:
    if not isinstance(value, str):
        raise _refusal(layer, row, field, value)
    if field.choices is not None and value not in field.choices and not field.open_list:
        raise _refusal(layer, row, field, value)
    if field.pattern and not re.match(field.pattern, value):
        raise _refusal(layer, row, field, value)
    return value


def _checked_number(layer: str, row: object, field: FieldSpec, value: object) -> int | float:
    if isinstance(value, bool) or not isinstance(value, numbers.Real) or not math.isfinite(value):
        raise _refusal(layer, row, field, value)
    if field.kind == "integer" and value != int(value):
        raise _refusal(layer, row, field, value)
    if field.minimum is not None and (value < field.minimum or (field.above_minimum and value == field.minimum)):
        raise _refusal(layer, row, field, value)
    if field.maximum is not None and value > field.maximum:
        raise _refusal(layer, row, field, value)
    return int(value) if field.kind == "integer" else float(value)


def _checked_moment(layer: str, row: object, field: FieldSpec, value: object) -> datetime:
    """Unlike a column that is read, a value that is written must say its zone itself."""
    naive = (
        (isinstance(value, datetime) and value.tzinfo is None)
        or (isinstance(value, QDateTime) and value.timeSpec() == Qt.TimeSpec.LocalTime)
        or (isinstance(value, str) and not _CLOCK_WITH_OFFSET.search(value.strip()))
    )
    if naive:
        raise BadInputError(
            layer=layer,
            row=row,
            field=field.name,
            value=value if isinstance(value, str) else str(value),
            allowed=tr("Times carry a zone or an offset"),
            remedy=tr("Write the offset, for example 2027-06-05T09:40+00:00"),
        )
    return utc_moment(value, layer=layer, row=row, field=field.name).astimezone(timezone.utc)


def _refusal(layer: str, row: object, field: FieldSpec, value: object) -> BadInputError:
    return BadInputError(
        layer=layer,
        row=row,
        field=field.name,
        value=value,
        allowed=tr("Allowed is {what}").format(what=field.allowed_words()),
        remedy=tr("Correct the value") if field.required else tr("Correct the value, or leave it empty"),
    )


def _wrong_geometry(
    layer: LayerSpec, row: int, geometry: QgsGeometry | None, allowed: str, remedy: str
) -> BadInputError:
    value = tr("no geometry") if geometry is None else QgsWkbTypes.displayString(geometry.wkbType())
    return BadInputError(layer=layer.name, row=row, field="geometry", value=value, allowed=allowed, remedy=remedy)


def _flat_parts(geometry: QgsGeometry) -> list[QgsGeometry]:
    """Single parts without Z, M or curves, as the layers of a plan hold them."""
    flat = QgsGeometry(geometry.constGet().segmentize())
    flat.get().dropZValue()
    flat.get().dropMValue()
    return [part for part in flat.asGeometryCollection() if not part.isEmpty()]


def _checked_part(layer: LayerSpec, row: int, part: QgsGeometry) -> bytes:
    for vertex in part.vertices():
        longitude_deg, latitude_deg = vertex.x(), vertex.y()
        if not abs(latitude_deg) <= LARGEST_LATITUDE_DEG:
            raise _off_the_globe(
                layer,
                row,
                tr("latitude {lat:g}").format(lat=latitude_deg),
                tr("Latitude is from -90 to 90 deg"),
            )
        if not abs(longitude_deg) <= LARGEST_LONGITUDE_DEG:
            raise _off_the_globe(
                layer,
                row,
                tr("longitude {lon:g}").format(lon=longitude_deg),
                tr("Longitude is from -360 to 360 deg"),
            )
    return bytes(part.asWkb())


def _off_the_globe(layer: LayerSpec, row: int, value: str, allowed: str) -> BadInputError:
    return BadInputError(
        layer=layer.name,
        row=row,
        field="geometry",
        value=value,
        allowed=allowed,
        remedy=tr("Reproject the layer to EPSG:4326, longitude before latitude"),
    )
