"""Many cards in one PDF, one after the other: the season's swims to choose from on the morning."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from qgis.core import QgsLayoutExporter
from qgis.PyQt.QtCore import QMarginsF, QRectF, QSizeF
from qgis.PyQt.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from ..words import tr
from .vector_pdf import MAKER, draw_as_vectors
from .wet_card import Card

DPI = 300


def book_writer(cards: Sequence[Card], title: str) -> Callable[[Path], None]:
    """A function that writes the sides of all cards, each on a page of its own size; for the main thread.

    OSError where the file cannot be written.
    """

    def write(path: Path) -> None:
        writer = QPdfWriter(str(path))
        writer.setResolution(DPI)
        writer.setTitle(title)
        writer.setCreator(MAKER)
        painter = QPainter()
        for card in cards:
            for side in range(card.sides):
                _set_page(writer, card, side)
                if not painter.isActive():
                    if not painter.begin(writer):
                        raise OSError(0, tr("the file cannot be written"), str(path))
                else:
                    writer.newPage()
                _draw(painter, writer, card, side)
        painter.end()

    return write


def _set_page(writer: QPdfWriter, card: Card, side: int) -> None:
    """The next page gets the size of this side, without margins: the layout has its own."""
    size = card.layout.pageCollection().page(side).pageSize()
    page = QPageSize(QSizeF(size.width(), size.height()), QPageSize.Unit.Millimeter)
    writer.setPageLayout(QPageLayout(page, QPageLayout.Orientation.Portrait, QMarginsF()))


def _draw(painter: QPainter, writer: QPdfWriter, card: Card, side: int) -> None:
    """Draw one side as vectors with text that stays text."""
    draw_as_vectors(card.layout, DPI)
    page = card.layout.pageCollection().page(side)
    area = QRectF(page.pos().x(), page.pos().y(), page.rect().width(), page.rect().height())
    QgsLayoutExporter(card.layout).renderRegion(painter, area)
