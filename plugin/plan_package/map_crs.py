"""The map of a project that holds nothing but a plan: one on which angles are as they are on the water.

A plan is stored in degrees, and a map in degrees is squeezed east to west: a leg drawn at 45 degrees would look like
one at 55 in the latitude of the Channel.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from qgis.core import QgsCoordinateReferenceSystem, QgsPoint, QgsProject, QgsVectorLayer
from qgis.PyQt.QtCore import QTimer

ANYWHERE = "EPSG:3857"  # while nothing says where the plan is
UTM_NORTH, UTM_SOUTH = 32600, 32700  # EPSG's codes of zone 0, WGS 84
UTM_SOUTH_END, UTM_NORTH_END = -80.0, 84.0  # degrees of latitude


def needs_map_crs(project: QgsProject) -> bool:
    """Whether the project shows nothing yet, in degrees or in no system: a choice of the user's stays."""
    shows = any(layer.isSpatial() for layer in project.mapLayers().values())
    return not shows and (project.crs().isGeographic() or not project.crs().isValid())


def map_crs(layers: Sequence[QgsVectorLayer]) -> QgsCoordinateReferenceSystem:
    """The UTM zone of the first place in the plan's layers (WGS 84); Web Mercator while the plan is empty."""
    place = next((found for layer in layers if layer.isSpatial() for found in _places(layer)), None)
    if place is None:
        return QgsCoordinateReferenceSystem(ANYWHERE)
    zone = int((place.x() + 180.0) % 360.0 // 6.0) + 1
    return QgsCoordinateReferenceSystem.fromEpsgId((UTM_NORTH if place.y() >= 0.0 else UTM_SOUTH) + zone)


def _places(layer: QgsVectorLayer) -> Iterator[QgsPoint]:
    """The first vertex of each row that lies where a UTM zone does."""
    for row in layer.getFeatures():
        place = next(row.geometry().vertices(), None) if row.hasGeometry() else None
        if place is not None and math.isfinite(place.x()) and UTM_SOUTH_END <= place.y() <= UTM_NORTH_END:
            yield place


def show_in(project: QgsProject, crs: QgsCoordinateReferenceSystem, layers: Sequence[QgsVectorLayer]) -> None:
    """Show the project in this system, also once the window has seen the first of these layers and taken its own."""
    project.setCrs(crs)
    ids = [layer.id() for layer in layers]

    def again() -> None:
        """Not in a project that was read meanwhile."""
        if any(project.mapLayer(one) is not None for one in ids):
            project.setCrs(crs)

    later = QTimer(project)
    later.setSingleShot(True)
    later.timeout.connect(again)
    later.timeout.connect(later.deleteLater)
    later.start(0)
