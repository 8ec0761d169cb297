"""An ordinary vector layer or table read into one layer of a plan, reprojected and with its fields mapped."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCoordinateTransformContext,
    QgsCsException,
    QgsFeature,
    QgsFeatureRequest,
    QgsGeometry,
    QgsProcessingFeatureSource,
    QgsRectangle,
    QgsWkbTypes,
)

from ..core.errors import BadInputError
from ..plan_package.field_spec import LayerSpec
from ..plan_package.row_check import checked_geometry, checked_values
from ..words import tr
from .field_mapping import FieldMapping
from .plan_rows import PlanRow
from .read_tally import ReadTally
from .whole_shapes import TYPE_OF_KIND, whole_shapes

PLAN_CRS = "EPSG:4326"


class LayerReader:
    """Reads the features of one layer into rows of the plan layer ``into``.

    BadInputError where the layer has no CRS or a geometry the plan layer does not hold.
    """

    def __init__(
        self,
        source: QgsProcessingFeatureSource,
        *,
        into: LayerSpec,
        mapping: dict[str, str],
        extent: QgsRectangle | None,
        transforms: QgsCoordinateTransformContext,
        tally: ReadTally,
    ) -> None:
        self._source = source
        self._into = into
        self._named = replace(into, name=source.sourceName())  # so that refusals speak of the user's layer
        self._extent = extent
        self._counted = tally.of(source.sourceName())
        self._to_plan = self._transform(transforms) if into.has_geometry else None
        self._fields = FieldMapping(layer=source.sourceName(), fields=source.fields(), into=into, mapping=mapping)

    def features(self) -> Iterator[QgsFeature]:
        """The layer's features, invalid ones too: they are repaired here, and counted."""
        unchecked = QgsProcessingFeatureSource.Flag.FlagSkipGeometryValidityChecks
        return self._source.getFeatures(QgsFeatureRequest(), unchecked)

    def rows_of(self, feature: QgsFeature) -> tuple[PlanRow, ...]:
        """The feature's rows, one for each part; none where it has no geometry or lies outside the extent."""
        self._counted.read += 1
        if not self._into.has_geometry:
            self._counted.used += 1
            return (PlanRow(layer=self._into.name, values=self._values(feature)),)
        shapes = whole_shapes(self._placed(feature), self._extent)
        self._counted.repaired += shapes.repaired
        if shapes.reason == "clipped":
            self._counted.clipped_away += 1
        elif shapes.reason or shapes.kind not in self._into.geometry_types:
            self._counted.skipped[
                shapes.reason
                or tr("{kind}, where {geometry} is held").format(kind=shapes.kind, geometry=self._into.geometry)
            ] += 1
        else:
            self._counted.used += 1
            values = self._values(feature)
            return tuple(PlanRow(layer=self._into.name, geometry=part, values=values) for part in shapes.parts)
        return ()

    def _values(self, feature: QgsFeature) -> dict:
        return checked_values(self._named, feature.id(), self._fields.values_of(feature))

    def _placed(self, feature: QgsFeature) -> QgsGeometry | None:
        """The feature's geometry in the plan's system; None where it has none."""
        if not feature.hasGeometry() or feature.geometry().isEmpty():
            return None
        geometry = QgsGeometry(feature.geometry())
        try:
            geometry.transform(self._to_plan)
        except QgsCsException as error:
            raise BadInputError(
                layer=self._source.sourceName(),
                row=feature.id(),
                field="geometry",
                allowed=tr("The position cannot be brought to longitude and latitude: {error}").format(error=error),
                remedy=tr("Check the layer's coordinate reference system"),
            ) from error
        if geometry.type() in TYPE_OF_KIND and TYPE_OF_KIND[geometry.type()] in self._named.geometry_types:
            checked_geometry(self._named, feature.id(), geometry)
        return geometry

    def _transform(self, transforms: QgsCoordinateTransformContext) -> QgsCoordinateTransform:
        name, crs = self._source.sourceName(), self._source.sourceCrs()
        kind = QgsWkbTypes.geometryType(self._source.wkbType())
        if kind != QgsWkbTypes.GeometryType.UnknownGeometry and TYPE_OF_KIND.get(kind) not in self._into.geometry_types:
            raise BadInputError(
                layer=name,
                field="geometry",
                value=QgsWkbTypes.displayString(self._source.wkbType()),
                allowed=tr("The plan's layer {layer} holds {geometry}").format(
                    layer=self._into.name, geometry=self._into.geometry
                ),
                remedy=tr("Choose another layer, or another plan layer in INTO"),
            )
        if not crs.isValid():
            raise BadInputError(
                layer=name,
                allowed=tr("A layer says in which coordinate reference system it is"),
                remedy=tr("Set the layer's coordinate reference system (Layer properties, Source)"),
            )
        return QgsCoordinateTransform(crs, QgsCoordinateReferenceSystem(PLAN_CRS), transforms)
