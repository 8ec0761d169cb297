"""What a tool draws over the map while it works: rubber bands in the colour that QGIS digitises with."""

from __future__ import annotations

from collections.abc import Sequence

from qgis.core import QgsPointXY, QgsSettings, QgsWkbTypes
from qgis.gui import QgsMapCanvas, QgsRubberBand
from qgis.PyQt import sip
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtGui import QColor

from .places import CanvasPlaces

WIDTH_PX = 2
ICON_PX = 10
AREA_SHARE = 0.25  # how much of the line's opacity an area is filled with
# Name, kind of geometry, style of pen: what is fixed is solid, what follows the cursor is dashed.
GeometryType = QgsWkbTypes.GeometryType
KINDS = {
    "fixed": (GeometryType.LineGeometry, Qt.PenStyle.SolidLine),
    "loose": (GeometryType.LineGeometry, Qt.PenStyle.DashLine),
    "area": (GeometryType.PolygonGeometry, Qt.PenStyle.SolidLine),
    "spots": (GeometryType.PointGeometry, Qt.PenStyle.SolidLine),
}


class DrawnLines:
    """Bands by name, made when first drawn into and gone after ``clear``."""

    def __init__(self, canvas: QgsMapCanvas, places: CanvasPlaces) -> None:
        self._canvas = canvas
        self._places = places
        self._bands: dict[str, QgsRubberBand] = {}

    def show(self, name: str, lonlats: Sequence[tuple[float, float]]) -> None:
        """Draw these places as one of KINDS; none hide it."""
        band = self._bands.get(name)
        if band is None:
            if not lonlats:
                return
            band = self._bands[name] = self._made(name)
        band.reset(KINDS[name][0])
        for number, lonlat in enumerate(lonlats, start=1):
            point = self._places.to_map(lonlat)
            if point is not None:
                band.addPoint(QgsPointXY(point), number == len(lonlats))

    def hide(self, *names: str) -> None:
        """Draw nothing of these."""
        for name in names:
            self.show(name, ())

    def clear(self) -> None:
        """Take all of it off the canvas."""
        for band in self._bands.values():
            if not sip.isdeleted(band):
                self._canvas.scene().removeItem(band)
                sip.delete(band)
        self._bands.clear()

    def _made(self, name: str) -> QgsRubberBand:
        kind, pen = KINDS[name]
        colour = digitising_colour()
        fill = QColor(colour)
        fill.setAlphaF(colour.alphaF() * AREA_SHARE)
        band = QgsRubberBand(self._canvas, kind)
        band.setStrokeColor(colour)
        band.setFillColor(fill)
        band.setWidth(WIDTH_PX)
        band.setLineStyle(pen)
        if name == "spots":
            band.setIcon(QgsRubberBand.IconType.ICON_CIRCLE)
            band.setIconSize(ICON_PX)
        return band


def digitising_colour() -> QColor:
    """The colour set in QGIS for digitising, red unless the user chose another."""
    settings = QgsSettings()
    parts = (("red", 255), ("green", 0), ("blue", 0), ("alpha", 200))
    return QColor(*(int(settings.value(f"qgis/digitizing/line_color_{part}", usual)) for part, usual in parts))
