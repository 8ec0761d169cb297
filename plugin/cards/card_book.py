"""Many layouts in one PDF, one after the other: the season's swims to choose from on the morning."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from qgis.core import QgsLayoutExporter, QgsPrintLayout
from qgis.PyQt.QtCore import QMarginsF, QRectF, QSizeF
from qgis.PyQt.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from ..words import tr
from .vector_pdf import MAKER, draw_as_vectors

DPI = 300


def book_writer(layouts: Sequence[QgsPrintLayout], title: str) -> Callable[[Path], None]:
    """A function that writes the pages of all layouts, each of its own size; for the main thread.

    OSError where the file cannot be written.
    """

    def write(path: Path) -> None:
        writer = QPdfWriter(str(path))
        writer.setResolution(DPI)
        writer.setTitle(title)
        writer.setCreator(MAKER)
        painter = QPainter()
        for layout in layouts:
            for page in range(layout.pageCollection().pageCount()):
                _set_page(writer, layout, page)
                if not painter.isActive():
                    if not painter.begin(writer):
                        raise OSError(0, tr("the file cannot be written"), str(path))
                else:
                    writer.newPage()
                _draw(painter, layout, page)
        painter.end()

    return write


def _set_page(writer: QPdfWriter, layout: QgsPrintLayout, number: int) -> None:
    """The next page gets the size of this one, without margins: the layout has its own."""
    size = layout.pageCollection().page(number).pageSize()
    page = QPageSize(QSizeF(size.width(), size.height()), QPageSize.Unit.Millimeter)
    writer.setPageLayout(QPageLayout(page, QPageLayout.Orientation.Portrait, QMarginsF()))


def _draw(painter: QPainter, layout: QgsPrintLayout, number: int) -> None:
    """Draw one page as vectors with text that stays text."""
    draw_as_vectors(layout, DPI)
    page = layout.pageCollection().page(number)
    area = QRectF(page.pos().x(), page.pos().y(), page.rect().width(), page.rect().height())
    QgsLayoutExporter(layout).renderRegion(painter, area)
