"""Copies of a plan's layers as they stand now, edit buffers included: what a worker may read while the user draws on.

A copy answers the few questions that `layers_in.table.Table` asks of a feature source, and nothing else. Features are
shared until somebody writes to one, so copying is quick; QGIS's own layers stay on the main thread.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from qgis.core import QgsCoordinateReferenceSystem, QgsFeature, QgsFields, QgsVectorLayer, QgsWkbTypes

from ..core.errors import SwimPlanError
from ..words import tr


class RowsMissingError(SwimPlanError):
    """A layer that gives fewer rows than it has: its file is held, or was taken from under it."""


def _stored_first(layer: QgsVectorLayer) -> list[QgsFeature]:
    """The rows in the order of the file, then those that were drawn and not saved yet, the first drawn first."""
    return sorted(layer.getFeatures(), key=lambda row: (row.id() < 0, abs(row.id())))


class CopiedSource:
    """The rows of one layer, or of the layers that together hold one of the plan's (channels: lines and areas).

    ``others`` are rows of the plan's layer that none of these holds, such as channels drawn as points: whoever reads
    the copy says what is wrong with them. ``least`` is how many rows they must have at the least. RowsMissingError
    where fewer come: a layer whose file cannot be read looks like an empty one, and an area that was not read is no
    permission.
    """

    def __init__(self, layers: Sequence[QgsVectorLayer], least: int = 0, others: Sequence[QgsFeature] = ()) -> None:
        first = layers[0]
        self._name = first.name()
        self._fields = QgsFields(first.fields())
        self._crs = QgsCoordinateReferenceSystem(first.crs())
        self._kind = first.wkbType() if len(layers) == 1 else QgsWkbTypes.Type.Unknown
        self._features = [*(feature for layer in layers for feature in _stored_first(layer)), *others]
        if len(self._features) < least:
            raise RowsMissingError(
                asked=tr("Layer '{name}' gave {count} of its rows").format(name=self._name, count=len(self._features)),
                allowed=tr("It has {least}").format(least=least),
                remedy=tr("Another program may hold the file: try again, or open the plan again"),
            )

    def sourceName(self) -> str:
        """The layer's name, as the user sees it."""
        return self._name

    def fields(self) -> QgsFields:
        """The fields of every row."""
        return self._fields

    def sourceCrs(self) -> QgsCoordinateReferenceSystem:
        """What the places are in."""
        return self._crs

    def wkbType(self) -> QgsWkbTypes.Type:
        """The kind of geometry; unknown where two layers of different kinds are one of the plan's."""
        return self._kind

    def featureCount(self) -> int:
        """How many rows there are."""
        return len(self._features)

    def getFeatures(self, _request: object = None) -> Iterator[QgsFeature]:
        """A copy of every row: two workers may read at the same time."""
        return (QgsFeature(feature) for feature in self._features)

    def holds_the_same(self, other: CopiedSource) -> bool:
        """Whether the rows, their order, fields and system are those of another copy."""
        alike = self._fields == other._fields and self._crs == other._crs and self._kind == other._kind
        return alike and self._name == other._name and self._features == other._features

    def texts(self, field: str) -> list[str]:
        """The values of a field as text, empty ones left out."""
        index = self._fields.indexOf(field)
        values = (feature.attribute(index) for feature in self._features) if index >= 0 else ()
        return [value.strip() for value in values if isinstance(value, str) and value.strip()]
