"""Places between the canvas, in any reference system, and degrees; and the mark that is near one."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCsException,
    QgsFeatureRequest,
    QgsPointXY,
    QgsProject,
    QgsVectorLayer,
)
from qgis.gui import QgsMapCanvas

from ..core.chart.marks import TAKES_NAME_WITHIN_M
from ..core.errors import SwimPlanError
from ..core.geodesy import geodesic_leg
from ..words import tr

SNAP_PX = 12.0  # as QGIS itself snaps unless it is told otherwise
M_PER_DEG = 111_195.0  # of latitude on a sphere: to leave out the marks that are far off, no more


@dataclass(frozen=True, kw_only=True)
class MarkPlace:
    """A mark of the layer, as it stands in its edit buffer. ``fid`` is its feature's id."""

    fid: int
    name: str
    kind: str
    lon: float
    lat: float


@dataclass(frozen=True, kw_only=True)
class Place:
    """A place under the cursor in degrees; ``mark`` is the one whose exact place it took."""

    lon: float
    lat: float
    mark: MarkPlace | None = None

    @property
    def lonlat(self) -> tuple[float, float]:
        """Longitude and latitude."""
        return self.lon, self.lat


class CanvasPlaces:
    """Turns places of one canvas into degrees and back."""

    def __init__(self, canvas: QgsMapCanvas) -> None:
        self._canvas = canvas
        self._crs = QgsCoordinateReferenceSystem()

    def to_degrees(self, point: QgsPointXY) -> tuple[float, float]:
        """Longitude and latitude of a point of the map; SwimPlanError off the globe."""
        try:
            place = self._transforms()[1].transform(point)
            lon, lat = place.x(), place.y()
        except QgsCsException:
            lon = lat = math.nan
        if not (abs(lon) <= 360.0 and abs(lat) <= 90.0):
            raise SwimPlanError(
                asked=tr("This place of the map is not on the globe"),
                allowed=tr("Longitudes lie within 360 and latitudes within 90 degrees"),
                remedy=tr("Move the map back over the plan"),
            )
        return lon, lat

    def to_map(self, lonlat: tuple[float, float]) -> QgsPointXY | None:
        """The point of the map; None where the map's reference system does not reach."""
        try:
            return self._transforms()[0].transform(QgsPointXY(*lonlat))
        except QgsCsException:
            return None

    def pixels_apart(self, point: QgsPointXY, other: QgsPointXY) -> float:
        """How far two points of the map are apart on the screen."""
        return math.sqrt(point.sqrDist(other)) / self._canvas.mapUnitsPerPixel()

    def mark_near(self, point: QgsPointXY, marks: Iterable[MarkPlace]) -> MarkPlace | None:
        """The nearest mark that a vertex at this point of the map takes its place from.

        It lies within the pixels that QGIS snaps in, or so near that a route's vertex takes its name anyway.
        """
        lon, lat = self.to_degrees(point)
        found = []
        for mark in marks:
            drawn = self.to_map((mark.lon, mark.lat))
            apart = self.pixels_apart(point, drawn) if drawn is not None else math.inf
            if apart <= SNAP_PX or within_name(lon, lat, mark):
                found.append((apart, mark.fid, mark))
        return min(found, key=lambda one: one[:2])[2] if found else None

    def _transforms(self) -> tuple[QgsCoordinateTransform, QgsCoordinateTransform]:
        """From degrees to the map and back, made anew where the map's reference system is another."""
        crs, context = self._canvas.mapSettings().destinationCrs(), QgsProject.instance().transformContext()
        if self._made is None or self._crs != crs or self._made[0].context() != context:
            degrees, self._crs = QgsCoordinateReferenceSystem("EPSG:4326"), crs
            self._made = (
                QgsCoordinateTransform(degrees, crs, context),
                QgsCoordinateTransform(crs, degrees, context),
            )
        return self._made

    _made: tuple[QgsCoordinateTransform, QgsCoordinateTransform] | None = None


def within_name(lon: float, lat: float, mark: MarkPlace) -> bool:
    """Whether a route's vertex at a place takes the mark's name."""
    if abs(mark.lat - lat) * M_PER_DEG > 2.0 * TAKES_NAME_WITHIN_M:
        return False
    return geodesic_leg(lon, lat, mark.lon, mark.lat)[0] <= TAKES_NAME_WITHIN_M


def marks_of(layer: QgsVectorLayer | None, named: str = "name") -> list[MarkPlace]:
    """The marks, or a layer's other points with the field ``named``, as they are drawn now, saved or not; those without
    a place are left out."""
    if layer is None:
        return []
    columns = [field if layer.fields().indexOf(field) >= 0 else "" for field in (named, "kind")]
    request = QgsFeatureRequest().setSubsetOfAttributes([one for one in columns if one], layer.fields())
    found = []
    for row in layer.getFeatures(request):
        geometry = row.geometry()
        if geometry.isNull() or geometry.isEmpty():
            continue
        point = next(geometry.vertices())
        name, kind = (text if field and isinstance(text := row[field], str) else "" for field in columns)
        found.append(MarkPlace(fid=row.id(), name=name, kind=kind, lon=point.x(), lat=point.y()))
    return found
