"""The sample plan on its chart, drawn to a PNG with the styles stored in the plan and in the results."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from bay_frame import LATITUDE_DEG, LONGITUDE_DEG, NOTICE
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsGeometry,
    QgsLabelBlockingRegion,
    QgsMapLayer,
    QgsMapRendererParallelJob,
    QgsMapSettings,
    QgsProject,
    QgsRectangle,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtCore import QPointF, QRectF, QSize, Qt
from qgis.PyQt.QtGui import QColor, QFont, QImage, QPainter, QPen, QPolygonF

INK = QColor("#10222e")
SWUM = "#12355b"
SEA = QColor("#e9f2f7")
VIEW_M = QgsRectangle(-2350.0, -400.0, 2350.0, 3420.0)
SIZE = QSize(1880, 1528)
DPI = 125
BANNER_HEIGHT = 74
LABEL_GAP_MM = 1.3
TRACK_MARGIN_M = 120.0


def draw_chart(layers: Iterable[QgsMapLayer], path: Path, title: str) -> Path:
    """Draw the layers (first on top) over the bay's middle part and all of the track.

    Raises OSError when the file cannot be written.
    """
    settings = QgsMapSettings()
    settings.setDestinationCrs(bay_crs())
    layers = list(layers)
    for rank, layer in enumerate(layers):
        _rank_labels(layer, max(1, 10 - rank))
    settings.setLayers(layers)
    settings.setOutputSize(SIZE)
    settings.setOutputDpi(DPI)
    settings.setExtent(view_of(layers))
    settings.setBackgroundColor(SEA)
    settings.setLabelBlockingRegions([_blocked(settings, area) for area in (_banner(), _corner())])
    job = QgsMapRendererParallelJob(settings)
    job.start()
    job.waitForFinished()
    picture = job.renderedImage()
    _write_margin(picture, title, picture.width() / settings.visibleExtent().width())
    if not picture.save(str(path), "PNG"):
        raise OSError(f"The picture could not be written to {path}.")
    return path


def bay_crs() -> QgsCoordinateReferenceSystem:
    """Metres east and north of the bay's middle."""
    local = f"+proj=tmerc +lat_0={LATITUDE_DEG} +lon_0={LONGITUDE_DEG} +k=1 +datum=WGS84 +units=m +type=crs"
    return QgsCoordinateReferenceSystem.fromProj(local)


def view_of(layers: Iterable[QgsMapLayer]) -> QgsRectangle:
    """The bay's middle part, grown in its own proportions until all of the track stands clear of title and key."""
    view = QgsRectangle(VIEW_M)
    for layer in (layer for layer in layers if layer.name() == "track"):
        to_view = QgsCoordinateTransform(layer.crs(), bay_crs(), QgsProject.instance())
        swum = to_view.transformBoundingBox(layer.extent())
        swum.grow(TRACK_MARGIN_M)
        view.combineExtentWith(swum)
    scale = max(view.width() / VIEW_M.width(), view.height() / VIEW_M.height())
    width, height = scale * VIEW_M.width(), scale * VIEW_M.height()
    # What is too much goes to the west and the north: in the south land ends, in the east lies what made it grow.
    return QgsRectangle(view.xMaximum() - width, view.yMinimum(), view.xMaximum(), view.yMinimum() + height)


def _blocked(settings: QgsMapSettings, area: QRectF) -> QgsLabelBlockingRegion:
    """A part of the picture where no label may stand."""
    area = area.adjusted(-12.0, -32.0, 12.0, 12.0)
    corners = (area.topLeft(), area.topRight(), area.bottomRight(), area.bottomLeft())
    ring = [settings.mapToPixel().toMapCoordinates(int(corner.x()), int(corner.y())) for corner in corners]
    return QgsLabelBlockingRegion(QgsGeometry.fromPolygonXY([ring]))


def _rank_labels(layer: QgsMapLayer, priority: int) -> None:
    """Let the labels of upper layers win, and let no small dot of the chart keep a name away."""
    if layer.labeling() is None:
        return
    settings = layer.labeling().settings()
    settings.priority = priority
    settings.dist = max(settings.dist, LABEL_GAP_MM)
    settings.obstacleSettings().setIsObstacle(False)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))


def _write_margin(picture: QImage, title: str, pixels_per_m: float) -> None:
    """Title and notice along the top, key, north arrow and scale bar in the lower right corner."""
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(_banner(), QColor(255, 255, 255))
    text = _banner().adjusted(26.0, 0.0, -26.0, 0.0)
    painter.setPen(INK)
    painter.setFont(_font(30, bold=True))
    painter.drawText(text, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, title)
    painter.setPen(QColor("#a01818"))
    painter.setFont(_font(24, bold=True))
    painter.drawText(text, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight, NOTICE)
    painter.setPen(QPen(INK, 1.5))
    painter.drawLine(_banner().bottomLeft(), _banner().bottomRight())
    painter.setBrush(QColor("white"))
    painter.drawRect(_corner())
    painter.setFont(_font(22))
    _write_key(painter)
    _write_scale(painter, pixels_per_m)
    painter.end()


def _banner() -> QRectF:
    return QRectF(0.0, 0.0, SIZE.width(), BANNER_HEIGHT)


def _corner() -> QRectF:
    return QRectF(SIZE.width() - 530.0, SIZE.height() - 298.0, 510.0, 278.0)


def _font(pixels: int, *, bold: bool = False) -> QFont:
    font = QFont("Sans Serif")  # no family at all is a family of symbols on some machines
    font.setStyleHint(QFont.StyleHint.SansSerif)
    font.setPixelSize(pixels)
    font.setBold(bold)
    return font


def _write_key(painter: QPainter) -> None:
    """What the lines of a leg mean."""
    left, top = _corner().left() + 24.0, _corner().top() + 30.0
    thick = QPen(QColor(SWUM), 5.0)
    dots = QPen(QColor(SWUM), 3.0, Qt.PenStyle.DotLine)
    dashes = QPen(INK, 2.0, Qt.PenStyle.DashLine)
    lines = ((thick, "Predicted track"), (dots, "Leg that cannot be swum"), (dashes, "Straight leg: heading, minutes"))
    for number, (pen, words) in enumerate(lines):
        y = top + 36.0 * number
        painter.setPen(pen)
        painter.drawLine(QPointF(left, y), QPointF(left + 80.0, y))
        painter.setPen(INK)
        painter.drawText(QPointF(left + 100.0, y + 8.0), words)


def _write_scale(painter: QPainter, pixels_per_m: float) -> None:
    left, bottom = _corner().left() + 40.0, _corner().bottom() - 34.0
    half = 500.0 * pixels_per_m
    painter.setPen(QPen(INK, 2.0))
    for start, colour in ((left, INK), (left + half, QColor("white"))):
        painter.setBrush(colour)
        painter.drawRect(QRectF(start, bottom, half, 10.0))
    for metres in (0, 500, 1000):
        place = QRectF(left + metres * pixels_per_m - 60.0, bottom - 36.0, 120.0, 28.0)
        painter.drawText(place, Qt.AlignmentFlag.AlignCenter, f"{metres} m" if metres == 1000 else str(metres))
    painter.setBrush(INK)
    tip = QPointF(left + half, bottom - 96.0)
    painter.drawPolygon(
        QPolygonF([tip + QPointF(*step) for step in ((-10.0, 32.0), (0.0, 0.0), (10.0, 32.0), (0.0, 24.0))])
    )
    painter.drawText(QRectF(tip.x() + 8.0, tip.y() + 2.0, 40.0, 28.0), Qt.AlignmentFlag.AlignCenter, "N")
