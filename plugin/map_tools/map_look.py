"""Shows a place on the map canvas: goes there, and has it flash."""

from __future__ import annotations

import math
from collections.abc import Iterable

from qgis.core import QgsCoordinateTransform, QgsCsException, QgsGeometry, QgsPointXY, QgsProject, QgsRectangle
from qgis.gui import QgsMapCanvas

from ..core.results.report import unwrapped
from ..layers_out.plan_layers import line_over, output_crs

M_PER_DEG = 111_195.0  # of latitude on a sphere: to know how much to show, no more
LEAST_AROUND_M = 250.0
SHARE_AROUND = 0.25


def box_around(points: Iterable[tuple[float, float]], least_m: float = LEAST_AROUND_M) -> QgsRectangle:
    """A box in degrees with room on all sides of (lon, lat) pairs, ``least_m`` at the least; drawn on beyond 180
    degrees at the date line."""
    places = unwrapped(points)
    lons, lats = zip(*places)
    box = QgsRectangle(min(lons), min(lats), max(lons), max(lats))
    around_m = max(least_m, SHARE_AROUND * M_PER_DEG * max(box.width(), box.height()))
    up = around_m / M_PER_DEG
    across = up / max(0.05, math.cos(math.radians(box.center().y())))
    return QgsRectangle(box.xMinimum() - across, box.yMinimum() - up, box.xMaximum() + across, box.yMaximum() + up)


class MapLook:
    """Moves one canvas; the project's reference system may be any."""

    def __init__(self, canvas: QgsMapCanvas) -> None:
        self._canvas = canvas

    def go_to(
        self,
        points: Iterable[tuple[float, float]],
        *,
        flash: bool = True,
        spots: Iterable[tuple[float, float]] = (),
        least_m: float = LEAST_AROUND_M,
    ) -> bool:
        """Show places given as (lon, lat), and have the line over them flash, and the ``spots`` as points. False where
        the map's reference system does not reach there."""
        points = list(points)
        to_map = QgsCoordinateTransform(
            output_crs(), self._canvas.mapSettings().destinationCrs(), QgsProject.instance()
        )
        try:
            extent = to_map.transformBoundingBox(box_around(points, least_m))
        except QgsCsException:
            return False
        self._canvas.setExtent(extent)
        self._canvas.refresh()
        if flash:
            self._flash(points, spots)
        return True

    def _flash(self, points: list[tuple[float, float]], spots: Iterable[tuple[float, float]]) -> None:
        drawn = QgsGeometry.fromPointXY(QgsPointXY(*points[0])) if len(set(points)) == 1 else line_over(points)
        dots = [QgsGeometry.fromPointXY(QgsPointXY(*spot)) for spot in spots]
        self._canvas.flashGeometries([drawn, *dots], output_crs())
