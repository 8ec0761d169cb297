"""The map of a project that holds nothing but a plan: one on which angles are as they are on the water.

A plan is stored in degrees, and a map in degrees is squeezed east to west: a leg drawn at 45 degrees would look like
one at 55 in the latitude of the Channel.
"""

from __future__ import annotations

from collections.abc import Sequence

from qgis.core import QgsCoordinateReferenceSystem, QgsProject, QgsVectorLayer
from qgis.PyQt.QtCore import QTimer

ANYWHERE = "EPSG:3857"  # while nothing says where the plan is
UTM_NORTH, UTM_SOUTH = 32600, 32700  # EPSG's codes of zone 0, WGS 84


def needs_map_crs(project: QgsProject) -> bool:
    """Whether the project shows nothing yet, in degrees or in no system: a choice of the user's stays."""
    shows = any(layer.isSpatial() for layer in project.mapLayers().values())
    return not shows and (project.crs().isGeographic() or not project.crs().isValid())


def map_crs(layers: Sequence[QgsVectorLayer]) -> QgsCoordinateReferenceSystem:
    """The UTM zone of the first place in the plan's layers (WGS 84); Web Mercator while the plan is empty."""
    for layer in layers:
        row = next(iter(layer.getFeatures()), None) if layer.isSpatial() else None
        if row is not None and row.hasGeometry() and not row.geometry().isEmpty():
            place = next(row.geometry().vertices())
            zone = int((place.x() + 180.0) % 360.0 // 6.0) + 1
            return QgsCoordinateReferenceSystem.fromEpsgId((UTM_NORTH if place.y() >= 0.0 else UTM_SOUTH) + zone)
    return QgsCoordinateReferenceSystem(ANYWHERE)


def show_in(project: QgsProject, crs: QgsCoordinateReferenceSystem) -> None:
    """Show the project in this system, also once the window has seen its first layer and taken that one's."""
    project.setCrs(crs)
    later = QTimer(project)
    later.setSingleShot(True)
    later.timeout.connect(lambda: project.setCrs(crs))
    later.timeout.connect(later.deleteLater)
    later.start(0)
