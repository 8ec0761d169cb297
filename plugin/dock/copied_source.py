"""Copies of a plan's layers as they stand now, edit buffers included: what a worker may read while the user draws on.

A copy answers the few questions that `layers_in.table.Table` asks of a feature source, and nothing else. Features are
shared until somebody writes to one, so copying is quick; QGIS's own layers stay on the main thread.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from qgis.core import QgsCoordinateReferenceSystem, QgsFeature, QgsFields, QgsVectorLayer, QgsWkbTypes


class CopiedSource:
    """The rows of one layer, or of the layers that together hold one of the plan's (channels: lines and areas)."""

    def __init__(self, layers: Sequence[QgsVectorLayer]) -> None:
        first = layers[0]
        self._name = first.name()
        self._fields = QgsFields(first.fields())
        self._crs = QgsCoordinateReferenceSystem(first.crs())
        self._kind = first.wkbType() if len(layers) == 1 else QgsWkbTypes.Type.Unknown
        self._features = [feature for layer in layers for feature in layer.getFeatures()]

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

    def texts(self, field: str) -> list[str]:
        """The values of a field as text, empty ones left out."""
        index = self._fields.indexOf(field)
        values = (feature.attribute(index) for feature in self._features) if index >= 0 else ()
        return [value.strip() for value in values if isinstance(value, str) and value.strip()]
