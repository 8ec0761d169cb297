"""Rows of a layer or table as the plan's schema means them: named fields, checked values, places in degrees."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, time
from typing import Any

import numpy as np
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCoordinateTransformContext,
    QgsCsException,
    QgsFeature,
    QgsFeatureRequest,
    QgsFeatureSource,
    QgsGeometry,
    QgsProcessingFeatureSource,
    QgsProject,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QDate, QDateTime, Qt, QTime, QVariant

from ..core.errors import BadInputError
from ..plan_package.field_spec import FieldSpec, LayerSpec
from ..plan_package.row_check import checked_value
from ..words import tr
from .moments import is_without_zone, utc_moment
from .whole_shapes import whole_shapes

PLAN_CRS = "EPSG:4326"
LEAST_DATE_LINE_JUMP_DEG = 350.0
UNDEFINED = ("Undefined geographic SRS", "Undefined Cartesian SRS", "Undefined SRS")  # a GeoPackage's words for none
# Fields that may hold empty values but must be there: a layer without them is another layer.
NEEDED = {
    "stream_rates": ("hour", "set_deg", "spring_kn"),
    "stream_events": ("rate_kn",),
    "stream_areas": ("station",),
}
# Fields whose default changes a swim without a flag of its own.
SAID = ("stay_min", "boat_kn", "pace_m_s", "path_factor", "max_hours", "range_m", "depth_limit_m")
MOST_ROWS_NAMED = 10
KINDLESS = (QgsWkbTypes.Type.NoGeometry, QgsWkbTypes.Type.Unknown)
CLOCK_DIGITS = "yyyy-MM-ddTHH:mm:ss"


@dataclass(frozen=True, kw_only=True)
class TableRow:
    """One row: its number as the user sees it, its values by field name, and its place.

    ``kind`` is Point, LineString or Polygon; ``rings`` are arrays (k, 2) of longitude and latitude: one point, one
    line, or the rings of one polygon. Both are empty for a table. ``filled`` names the fields that were empty and took
    the schema's default.
    """

    number: int
    values: dict[str, Any]
    kind: str = ""
    rings: tuple[np.ndarray, ...] = ()
    filled: frozenset[str] = frozenset()


class Table:
    """A layer read by the plan's schema. ``warnings`` collects what was skipped or repaired while reading."""

    def __init__(self, source: QgsFeatureSource, spec: LayerSpec, warnings: list[str]) -> None:
        self.name = source.sourceName() or spec.name
        self._source = source
        self._key = spec.name
        self._spec = replace(spec, name=self.name)
        self._warnings = warnings
        self._check_fields()
        self._transform = self._to_degrees() if spec.has_geometry and not self._undrawn() else None

    def rows(self) -> Iterator[TableRow]:
        """The rows in the layer's order, one for each part; BadInputError for a value that is not allowed."""
        skipped, repaired = [], []
        for feature in self._features():
            if not self._spec.has_geometry:
                yield TableRow(number=feature.id(), values=self._values(feature), filled=self._filled(feature))
                continue
            shapes = whole_shapes(feature.geometry(), None)
            if shapes.repaired:
                repaired.append(feature.id())
            if not shapes.parts:
                self._check_mixed(feature, shapes.kind)
                skipped.append(feature.id())
                continue
            self._check_kind(feature, shapes.kind)
            values = self._values(feature)
            for part in shapes.parts:
                rings = tuple(self._degrees(ring, feature.id()) for ring in _rings(part, shapes.kind))
                yield TableRow(number=feature.id(), values=values, kind=shapes.kind, rings=rings)
        self._note(skipped, tr("with no geometry skipped"))
        self._note(repaired, tr("with an invalid polygon repaired"))

    def refused(self, row: int, field: str, value: object, allowed: str, remedy: str) -> BadInputError:
        """The error for a value of this layer that a later check refuses."""
        return BadInputError(layer=self.name, row=row, field=field, value=value, allowed=allowed, remedy=remedy)

    def _note(self, rows: list[int], words: str) -> None:
        if rows:
            one = tr("Layer '{name}': 1 row {words}: {rows}.")
            several = tr("Layer '{name}': {count} rows {words}: {rows}.")
            shown = ", ".join(map(str, rows[:MOST_ROWS_NAMED])) + (", ..." if len(rows) > MOST_ROWS_NAMED else "")
            about = {"name": self.name, "count": len(rows), "words": words, "rows": shown}
            self._warnings.append((one if len(rows) == 1 else several).format(**about))

    def _check_mixed(self, feature: QgsFeature, kind: str) -> None:
        """A row that is drawn but cannot be used is no empty one: an area that is not read is no permission."""
        geometry = feature.geometry()
        if geometry.isNull() or geometry.isEmpty() or kind:
            return
        raise self._wrong_kind(feature, QgsWkbTypes.displayString(geometry.wkbType()))

    def _features(self) -> Iterator[QgsFeature]:
        if isinstance(self._source, QgsProcessingFeatureSource):
            # Invalid polygons are repaired here and said so, not refused by Processing.
            flag = QgsProcessingFeatureSource.Flag.FlagSkipGeometryValidityChecks
            return self._source.getFeatures(QgsFeatureRequest(), flag)
        return self._source.getFeatures(QgsFeatureRequest())

    def _check_fields(self) -> None:
        present = {field.name() for field in self._source.fields()}
        for field in self._spec.fields:
            needed = (field.required and field.default is None) or field.name in NEEDED.get(self._key, ())
            if needed and field.name not in present:
                raise BadInputError(
                    layer=self.name,
                    field=field.name,
                    allowed=tr("The layer needs the field '{name}'; it has {names}").format(
                        name=field.name, names=", ".join(sorted(present)) or tr("none")
                    ),
                    remedy=tr("Rename the field, add it, or read the layer into the plan with a field mapping"),
                )
            if field.name not in present and isinstance(field.default, float) and field.name in SAID:
                words = tr("Layer '{name}' has no field '{field}': {value:g} is taken for every row.")
                self._warnings.append(words.format(name=self.name, field=field.name, value=field.default))

    def _undrawn(self) -> bool:
        """Whether it is empty and without a kind, as the channels of a plan are before their first row."""
        return self._source.wkbType() in KINDLESS and self._source.featureCount() == 0

    def _to_degrees(self) -> QgsCoordinateTransform:
        crs = self._source.sourceCrs()
        if not crs.isValid() or (not crs.authid() and crs.description().startswith(UNDEFINED)):
            raise BadInputError(
                layer=self.name,
                allowed=tr("A layer with places needs a coordinate reference system; this one has none"),
                remedy=tr("Set the layer's coordinate reference system in its properties"),
            )
        degrees = QgsCoordinateReferenceSystem(PLAN_CRS)
        # A plan's own layers need nothing of the project, which a worker must not touch.
        none_needed = QgsCoordinateTransformContext()
        context = none_needed if crs == degrees else QgsProject.instance().transformContext()
        return QgsCoordinateTransform(crs, degrees, context)

    def _check_kind(self, feature: QgsFeature, kind: str) -> None:
        if kind not in self._spec.geometry_types:
            raise self._wrong_kind(feature, kind)

    def _wrong_kind(self, feature: QgsFeature, kind: str) -> BadInputError:
        return self.refused(
            feature.id(),
            "geometry",
            kind,
            tr("The layer holds {geometry}").format(geometry=self._spec.geometry),
            tr("Convert the geometry or choose another layer"),
        )

    def _degrees(self, ring: np.ndarray, row: int) -> np.ndarray:
        """A ring in degrees; refused when it is off the globe."""
        if not self._transform.isShortCircuited():
            try:
                ring = np.array([list(self._transform.transform(x, y)) for x, y in ring.tolist()])
            except QgsCsException as error:
                raise self.refused(
                    row,
                    "geometry",
                    str(error).split("\n")[0],
                    tr("The geometry must lie where its reference system is defined"),
                    tr("Check the layer's coordinate reference system"),
                ) from error
        wrong = ~(np.isfinite(ring).all(axis=1) & (np.abs(ring[:, 1]) <= 90.0) & (np.abs(ring[:, 0]) <= 360.0))
        if wrong.any():
            lon, lat = ring[wrong][0]
            raise self.refused(
                row,
                "geometry",
                tr("longitude {lon:g}, latitude {lat:g}").format(lon=lon, lat=lat),
                tr("Longitudes lie within 360 and latitudes within 90 degrees"),
                tr("Check the layer's coordinate reference system, longitude before latitude"),
            )
        self._check_edges(ring, row)
        return ring

    def _check_edges(self, ring: np.ndarray, row: int) -> None:
        """Refuse an edge of which nobody can tell which way round the Earth it runs.

        A jump of nearly 360 degrees is a step over the date line.
        """
        jumps = np.abs(np.diff(ring[:, 0]))
        wide = jumps[(jumps > 180.0) & ((jumps < LEAST_DATE_LINE_JUMP_DEG) | (jumps > 359.999))]
        if len(wide):
            raise self.refused(
                row,
                "geometry",
                tr("an edge of {wide:g} degrees of longitude").format(wide=wide[0]),
                tr("Edges span less than half the Earth"),
                tr("Add vertices along the edge, or clip the layer to the area of the plan"),
            )

    def _values(self, feature: QgsFeature) -> dict[str, Any]:
        return {field.name: self._value(feature, field) for field in self._spec.fields}

    def _filled(self, feature: QgsFeature) -> frozenset[str]:
        defaults = (field for field in self._spec.fields if field.default is not None)
        return frozenset(field.name for field in defaults if _missing(self._raw(feature, field)))

    def _raw(self, feature: QgsFeature, field: FieldSpec) -> Any:
        index = self._source.fields().indexOf(field.name)
        return feature.attribute(index) if index >= 0 else None

    def _value(self, feature: QgsFeature, field: FieldSpec) -> Any:
        raw = self._raw(feature, field)
        if _missing(raw):
            raw = field.default
        if raw is not None and field.kind == "datetime":
            self._say_whose_clock(raw, field.name)
            raw = utc_moment(raw, layer=self.name, row=feature.id(), field=field.name)
        return checked_value(self._spec, feature.id(), field, _plain(raw, field))

    def _say_whose_clock(self, raw: Any, field: str) -> None:
        """Once for a layer: text without a zone may be of a clock that is hours off."""
        if not is_without_zone(raw):
            return
        words = tr("Layer '{name}', field '{field}': times without a zone were read as UTC. Write Z or their offset.")
        told = words.format(name=self.name, field=field)
        if told not in self._warnings:
            self._warnings.append(told)


def _missing(raw: Any) -> bool:
    return raw is None or (isinstance(raw, (QVariant, QDateTime, QDate, QTime)) and raw.isNull()) or raw == ""


def _plain(raw: Any, field: FieldSpec) -> Any:
    """A value of QGIS as the schema's kind of Python value, where that is no guess."""
    if isinstance(raw, QDateTime):
        # Digits without a zone are left so: the reader of the text knows the plan's zone.
        naive = raw.timeSpec() == Qt.TimeSpec.LocalTime
        return raw.toString(CLOCK_DIGITS) if naive else raw.toUTC().toString(CLOCK_DIGITS) + "Z"
    if isinstance(raw, (QDate, QTime)):
        raw = raw.toPyDate() if isinstance(raw, QDate) else raw.toPyTime()
    if isinstance(raw, date) and field.kind == "text":
        return raw.isoformat()
    if isinstance(raw, time):
        return f"{raw:%H:%M}"
    if field.kind == "text" and isinstance(raw, (int, float)) and not isinstance(raw, bool):
        return f"{raw:g}" if isinstance(raw, float) else str(raw)
    if field.is_number and isinstance(raw, str):
        try:
            number = float(raw.strip())
        except ValueError:
            return raw
        return number if math.isfinite(number) else raw
    return raw


def _rings(part: QgsGeometry, kind: str) -> list[np.ndarray]:
    """Coordinates of a single part."""
    if kind == "Point":
        point = part.asPoint()
        return [np.array([[point.x(), point.y()]])]
    lines = [part.asPolyline()] if kind == "LineString" else part.asPolygon()
    return [np.array([[point.x(), point.y()] for point in line]) for line in lines]
