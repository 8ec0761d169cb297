"""Shapes for how grave a flag is, the same as on the map: drawn in the widget's own ink, so any theme shows them."""

from __future__ import annotations

from qgis.PyQt.QtCore import QPointF, QRectF, Qt
from qgis.PyQt.QtGui import QBrush, QColor, QIcon, QPainter, QPen, QPixmap, QPolygonF

from ..words import tr

SIDE = 64  # drawn large: Qt scales it down to the icon size of any screen


def severity_word(severity: str) -> str:
    """The word that stands beside the shape."""
    return {"stop": tr("Stop"), "warn": tr("Warning"), "note": tr("Note")}[severity]


def severity_icon(severity: str, ink: QColor) -> QIcon:
    """Stop: a full diamond; warning: an open triangle; note: a small ring."""
    picture = QPixmap(SIDE, SIDE)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(ink, SIDE / 10.0))
    if severity == "stop":
        painter.setBrush(QBrush(ink))
        painter.drawPolygon(_polygon((0.5, 0.08), (0.92, 0.5), (0.5, 0.92), (0.08, 0.5)))
    elif severity == "warn":
        painter.drawPolygon(_polygon((0.5, 0.12), (0.9, 0.86), (0.1, 0.86)))
    else:
        painter.drawEllipse(QRectF(SIDE * 0.3, SIDE * 0.3, SIDE * 0.4, SIDE * 0.4))
    painter.end()
    return QIcon(picture)


def _polygon(*shares: tuple[float, float]) -> QPolygonF:
    return QPolygonF([QPointF(SIDE * x, SIDE * y) for x, y in shares])
