"""Rows of a plan's layer that none of its halves gives: channels stored as points, as triangles, or without a place.

Lines and areas of one layer stand in the project as two; what is of another kind belongs to neither, and must not be
lost for that: whoever reads it then says so, as where the layer is read as one.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from qgis.core import QgsFeature, QgsFeatureRequest, QgsVectorLayer

from ..plan_package.database import row_count
from ..plan_package.schema import LAYER_BY_NAME


def stray_rows(path: Path, name: str, halves: Sequence[QgsVectorLayer]) -> list[QgsFeature]:
    """The stored rows that belong to none of the halves, in the order of the file."""
    if len(halves) < 2:
        return []
    if any(half.subsetString() for half in halves):  # a row that a filter hides is no stray
        halves = [_opened(path, name, f"|geometrytype={part}") for part in LAYER_BY_NAME[name].geometry_types]
    only_ids = QgsFeatureRequest().setFlags(QgsFeatureRequest.Flag.NoGeometry).setNoAttributes()
    known = {row.id() for half in halves for row in half.dataProvider().getFeatures(only_ids)}
    if len(known) >= row_count(path, name):
        return []
    return sorted((row for row in _opened(path, name).getFeatures() if row.id() not in known), key=QgsFeature.id)


def _opened(path: Path, name: str, part: str = "") -> QgsVectorLayer:
    """Without form and style, which take longer to load than the rows."""
    return QgsVectorLayer(f"{path}|layername={name}{part}", name, "ogr", QgsVectorLayer.LayerOptions(False))
