"""Redraw plugin/resources/icon.png, which the plugin list shows, from icon.svg."""

from __future__ import annotations

import sys
from pathlib import Path

from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtGui import QGuiApplication, QImage, QPainter
from qgis.PyQt.QtSvg import QSvgRenderer

RESOURCES = Path(__file__).resolve().parent.parent / "plugin" / "resources"


def render(svg: Path, png: Path, size: int) -> None:
    """Draw the picture `size` pixels square on a transparent ground."""
    image = QImage(size, size, QImage.Format.Format_ARGB32)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    QSvgRenderer(str(svg)).render(painter)
    painter.end()
    if not image.save(str(png)):
        raise OSError(f"cannot write {png}")


if __name__ == "__main__":
    application = QGuiApplication(sys.argv)
    render(RESOURCES / "icon.svg", RESOURCES / "icon.png", 64)
