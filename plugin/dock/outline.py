"""A frame drawn over a section to point at it: thick, with an arrow head, so that it needs no colour to be seen."""

from __future__ import annotations

from qgis.PyQt.QtCore import QPointF, QRectF, Qt
from qgis.PyQt.QtGui import QPainter, QPaintEvent, QPalette, QPen, QPolygonF
from qgis.PyQt.QtWidgets import QWidget

LINE_PX = 3.0
ARROW_PX = 11.0
CORNER_PX = 5.0


class Outline(QWidget):
    """Lies over what it points at and lets every click through."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("TidelegOutline")
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)

    def paintEvent(self, event: QPaintEvent) -> None:
        """The frame, and the arrow head at the left of its upper edge, pointing in."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colour = self.palette().color(QPalette.ColorRole.Highlight)
        painter.setPen(QPen(colour, LINE_PX))
        edge = LINE_PX / 2.0
        frame = QRectF(self.rect()).adjusted(edge, edge, -edge, -edge)
        painter.drawRoundedRect(frame, CORNER_PX, CORNER_PX)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        middle = min(self.height() / 2.0, 3.0 * ARROW_PX)
        painter.drawPolygon(
            QPolygonF([QPointF(0.0, middle - ARROW_PX), QPointF(ARROW_PX, middle), QPointF(0.0, middle + ARROW_PX)])
        )
        painter.end()
