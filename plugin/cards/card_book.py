"""Many layouts in one PDF, one after the other: the season's swims to choose from on the morning."""

from __future__ import annotations

from pathlib import Path

from qgis.core import QgsLayoutExporter, QgsPrintLayout
from qgis.PyQt.QtCore import QMarginsF, QRectF, QSizeF
from qgis.PyQt.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from ..words import tr
from .vector_pdf import MAKER, draw_as_vectors

DPI = 300


class CardBook:
    """A PDF that layouts are added to, each page of its own size; for the main thread, and closed in any case.

    A layout may go once it is added: a hundred of them would take gigabytes. OSError where the file cannot be written.
    """

    def __init__(self, path: Path, title: str) -> None:
        self._path = path
        self._writer = QPdfWriter(str(path))
        self._writer.setResolution(DPI)
        self._writer.setTitle(title)
        self._writer.setCreator(MAKER)
        self._painter = QPainter()

    def add(self, layout: QgsPrintLayout) -> None:
        """Draw every page of a layout."""
        for number in range(layout.pageCollection().pageCount()):
            self._set_page(layout, number)
            if self._painter.isActive():
                self._writer.newPage()
            elif not self._painter.begin(self._writer):
                raise OSError(0, tr("the file cannot be written"), str(self._path))
            self._draw(layout, number)

    def close(self) -> None:
        """The file is whole, and nothing of Qt's is left for another thread to throw away."""
        self._painter.end()
        del self._painter, self._writer

    def _set_page(self, layout: QgsPrintLayout, number: int) -> None:
        """The next page gets the size of this one, without margins: the layout has its own."""
        size = layout.pageCollection().page(number).pageSize()
        page = QPageSize(QSizeF(size.width(), size.height()), QPageSize.Unit.Millimeter)
        self._writer.setPageLayout(QPageLayout(page, QPageLayout.Orientation.Portrait, QMarginsF()))

    def _draw(self, layout: QgsPrintLayout, number: int) -> None:
        """Vectors, with text that stays text."""
        draw_as_vectors(layout, DPI)
        page = layout.pageCollection().page(number)
        area = QRectF(page.pos().x(), page.pos().y(), page.rect().width(), page.rect().height())
        QgsLayoutExporter(layout).renderRegion(self._painter, area)
