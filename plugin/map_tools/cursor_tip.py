"""A few lines beside the cursor, in the colours of the user's tooltips."""

from __future__ import annotations

from collections.abc import Sequence

from qgis.gui import QgsMapCanvas
from qgis.PyQt.QtCore import QPoint, Qt
from qgis.PyQt.QtGui import QPalette
from qgis.PyQt.QtWidgets import QFrame, QLabel

AWAY_PX = 18
MARGIN_PX = 4
WIDEST_CHARACTERS = 44


class CursorTip(QLabel):
    """Shown over the canvas; the mouse goes through it. It stays within the canvas, on the cursor's other side."""

    def __init__(self, canvas: QgsMapCanvas) -> None:
        super().__init__(canvas.viewport())
        self.setObjectName("TidelegCursorTip")
        self.setTextFormat(Qt.TextFormat.PlainText)  # names in it are the user's
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFrameShape(QFrame.Shape.Box)
        self.setMargin(MARGIN_PX)
        self.setAutoFillBackground(True)
        self.setBackgroundRole(QPalette.ColorRole.ToolTipBase)
        self.setForegroundRole(QPalette.ColorRole.ToolTipText)
        self.hide()

    def show_lines(self, lines: Sequence[str], at: QPoint) -> None:
        """Show the lines beside a pixel of the canvas; none hide it."""
        if not lines:
            self.hide()
            return
        self.setText("\n".join(lines))
        widest = WIDEST_CHARACTERS * self.fontMetrics().averageCharWidth()
        self.setWordWrap(False)
        wide = self.sizeHint().width()
        self.setWordWrap(wide > widest)
        width = min(wide, widest)
        height = self.heightForWidth(width) if wide > widest else self.sizeHint().height()
        self.resize(width, height)
        self.move(self._corner(at, width, height))
        self.show()
        self.raise_()

    def _corner(self, at: QPoint, width: int, height: int) -> QPoint:
        room = self.parentWidget().size()
        x = at.x() + AWAY_PX if at.x() + AWAY_PX + width <= room.width() else at.x() - AWAY_PX - width
        y = at.y() + AWAY_PX if at.y() + AWAY_PX + height <= room.height() else at.y() - AWAY_PX - height
        return QPoint(max(0, x), max(0, y))
