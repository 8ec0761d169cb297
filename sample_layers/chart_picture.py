"""The sample plan on its chart, drawn to a PNG with the styles stored in the plan and in the results."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from bay_frame import LATITUDE_DEG, LONGITUDE_DEG, NOTICE
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsMapLayer,
    QgsMapRendererParallelJob,
    QgsMapSettings,
    QgsRectangle,
)
from qgis.PyQt.QtCore import QPointF, QRectF, QSize, Qt
from qgis.PyQt.QtGui import QColor, QFont, QImage, QPainter, QPen, QPolygonF

SEA = QColor("#e9f2f7")
VIEW_M = QgsRectangle(-2350.0, -400.0, 2350.0, 3420.0)
SIZE = QSize(1880, 1528)
DPI = 125
BANNER_HEIGHT = 74


def draw_chart(layers: Iterable[QgsMapLayer], path: Path, title: str) -> Path:
    """Draw the layers (first on top) over the bay's middle part; raises OSError when the file cannot be written."""
    settings = QgsMapSettings()
    local = f"+proj=tmerc +lat_0={LATITUDE_DEG} +lon_0={LONGITUDE_DEG} +k=1 +datum=WGS84 +units=m +type=crs"
    settings.setDestinationCrs(QgsCoordinateReferenceSystem.fromProj(local))
    settings.setLayers(list(layers))
    settings.setOutputSize(SIZE)
    settings.setOutputDpi(DPI)
    settings.setExtent(VIEW_M)
    settings.setBackgroundColor(SEA)
    job = QgsMapRendererParallelJob(settings)
    job.start()
    job.waitForFinished()
    picture = job.renderedImage()
    _write_margin(picture, title, settings.visibleExtent())
    if not picture.save(str(path), "PNG"):
        raise OSError(f"The picture could not be written to {path}.")
    return path


def _write_margin(picture: QImage, title: str, shown_m: QgsRectangle) -> None:
    """Title and notice along the top, north arrow and scale bar in the lower right corner."""
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    banner = QRectF(0.0, 0.0, picture.width(), BANNER_HEIGHT)
    painter.fillRect(banner, QColor(255, 255, 255, 235))
    text = banner.adjusted(26.0, 0.0, -26.0, 0.0)
    painter.setPen(QColor("#10222e"))
    painter.setFont(_font(30, bold=True))
    painter.drawText(text, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, title)
    painter.setPen(QColor("#a01818"))
    painter.setFont(_font(24, bold=True))
    painter.drawText(text, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight, NOTICE)
    _write_scale(painter, picture, picture.width() / shown_m.width())
    painter.end()


def _font(pixels: int, *, bold: bool = False) -> QFont:
    font = QFont()
    font.setPixelSize(pixels)
    font.setBold(bold)
    return font


def _write_scale(painter: QPainter, picture: QImage, pixels_per_m: float) -> None:
    right, bottom = picture.width() - 70.0, picture.height() - 50.0
    half = 500.0 * pixels_per_m
    left = right - 2.0 * half
    painter.fillRect(QRectF(left - 36.0, bottom - 128.0, 2.0 * half + 90.0, 160.0), QColor(255, 255, 255, 215))
    ink = QColor("#10222e")
    painter.setPen(QPen(ink, 2.0))
    painter.setBrush(ink)
    painter.drawRect(QRectF(left, bottom, half, 9.0))
    painter.setBrush(QColor("white"))
    painter.drawRect(QRectF(left + half, bottom, half, 9.0))
    painter.setFont(_font(22))
    for metres, x in ((0, left), (500, left + half), (1000, right)):
        words = f"{metres} m" if metres == 1000 else str(metres)
        painter.drawText(QRectF(x - 60.0, bottom - 34.0, 120.0, 28.0), Qt.AlignmentFlag.AlignCenter, words)
    middle = left + half
    painter.setBrush(ink)
    arrow = ((-11.0, 0.0), (0.0, -34.0), (11.0, 0.0), (0.0, -8.0))
    painter.drawPolygon(QPolygonF([QPointF(middle + dx, bottom - 58.0 + dy) for dx, dy in arrow]))
    painter.drawText(QRectF(middle - 60.0, bottom - 124.0, 120.0, 28.0), Qt.AlignmentFlag.AlignCenter, "N")
