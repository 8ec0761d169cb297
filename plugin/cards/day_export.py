"""Pictures of days as files: PDF pages, one tall PNG, or one tall SVG; each is written whole or not at all."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from qgis.PyQt.QtCore import QMarginsF, QRectF, QSize, QSizeF
from qgis.PyQt.QtGui import QImage, QPageSize, QPainter, QPdfWriter

from ..core.errors import SwimPlanError
from ..core.results.day_strip import DayStrip
from ..words import tr
from .day_ink import Ink
from .day_page import is_whole, page_height, paint_days
from .whole_files import write_whole

UNITS_PER_INCH = 96.0
PAGE_WIDTH = 794.0  # an upright A4 page in these units
PAGE_HEIGHT = 1123.0
PNG_SCALE = 2
PDF_DPI = 300
LONGEST_PNG = 30_000  # pixels; beyond it images fail or take the memory of the machine
ENDINGS = (".pdf", ".png", ".svg")


def write_day_pictures(strips: Sequence[DayStrip], path: str | Path) -> None:
    """Write the days below each other; what kind of file it is the path's ending says.

    SwimPlanError for no days, for another ending, and where the file cannot be written.
    """
    write_whole({path: picture_writer(lambda: tuple(strips))})


def picture_writer(strips: Callable[[], Sequence[DayStrip]]) -> Callable[[Path], None]:
    """A function that writes the days to the path it is given."""

    def write(path: Path) -> None:
        days, ending = tuple(strips()), path.suffix.lower()
        if not days:
            raise SwimPlanError(asked=tr("Asked for a picture of no days"), remedy=tr("Give a longer time"))
        if ending not in ENDINGS:
            raise SwimPlanError(
                asked=tr("Asked for a picture in a file that ends in '{}'").format(ending),
                allowed=tr("Pictures are {}").format(", ".join(ENDINGS)),
                remedy=tr("Choose one of these endings"),
            )
        {".pdf": _write_pdf, ".png": _write_png, ".svg": _write_svg}[ending](days, path)

    return write


def _write_png(strips: tuple[DayStrip, ...], path: Path) -> None:
    height = page_height(strips, PAGE_WIDTH)
    if PNG_SCALE * height > LONGEST_PNG:
        raise SwimPlanError(
            asked=tr("Asked for a PNG of {} days").format(len(strips)),
            allowed=tr("It may be {} pixels high").format(LONGEST_PNG),
            remedy=tr("Write a PDF, or fewer days"),
        )
    image = QImage(round(PNG_SCALE * PAGE_WIDTH), round(PNG_SCALE * height), QImage.Format.Format_RGB32)
    image.setDotsPerMeterX(round(PNG_SCALE * UNITS_PER_INCH / 0.0254))
    image.setDotsPerMeterY(image.dotsPerMeterX())
    _paint(image, strips, PNG_SCALE, height)
    if not image.save(str(path), "PNG"):
        raise OSError(0, tr("the picture could not be written"))


def _write_svg(strips: tuple[DayStrip, ...], path: Path) -> None:
    try:
        from qgis.PyQt.QtSvg import QSvgGenerator
    except ImportError as error:
        raise SwimPlanError(
            asked=tr("Asked for an SVG, and this QGIS has no QtSvg"),
            remedy=tr("Install PyQt's QtSvg, or write a PDF or PNG"),
        ) from error
    height = page_height(strips, PAGE_WIDTH)
    device = QSvgGenerator()
    device.setFileName(str(path))
    device.setResolution(round(UNITS_PER_INCH))
    device.setSize(QSize(round(PAGE_WIDTH), round(height)))
    device.setTitle(strips[0].route)
    device.setViewBox(QRectF(0.0, 0.0, PAGE_WIDTH, height))
    _paint(device, strips, 1.0, height)
    if not path.exists():
        raise OSError(0, tr("the picture could not be written"))


def _write_pdf(strips: tuple[DayStrip, ...], path: Path) -> None:
    device = QPdfWriter(str(path))
    device.setResolution(PDF_DPI)
    device.setCreator("Tideleg")
    device.setTitle(strips[0].route)
    high = page_height(strips, PAGE_WIDTH) if len(strips) == 1 else PAGE_HEIGHT
    device.setPageSize(QPageSize(QSizeF(PAGE_WIDTH / UNITS_PER_INCH, high / UNITS_PER_INCH), QPageSize.Unit.Inch))
    device.setPageMargins(QMarginsF(0.0, 0.0, 0.0, 0.0))
    painter = QPainter()
    if not painter.begin(device):
        raise OSError(0, tr("the picture could not be written"))
    painter.scale(PDF_DPI / UNITS_PER_INCH, PDF_DPI / UNITS_PER_INCH)
    # One scale of the stream on all pages, so that days can be held against each other.
    top_kn = max(strip.greatest_kn for strip in strips)
    try:
        for number, page in enumerate(_pages(strips)):
            if number:
                device.newPage()
            paint_days(painter, QRectF(0.0, 0.0, PAGE_WIDTH, high), page, ink=Ink.on_paper(), top_kn=top_kn)
    finally:
        painter.end()


def _pages(strips: tuple[DayStrip, ...]) -> list[tuple[DayStrip, ...]]:
    """The days by pages, as many a page as it holds; no page has so few that they would be drawn another way."""
    most = len(strips)
    while not is_whole(strips) and page_height(strips[:most], PAGE_WIDTH) > PAGE_HEIGHT:
        most -= 1
    pages = -(-len(strips) // most)
    edges = [number * len(strips) // pages for number in range(pages + 1)]
    return [strips[first:end] for first, end in zip(edges, edges[1:])]


def _paint(device: QImage | object, strips: tuple[DayStrip, ...], scale: float, height: float) -> None:
    painter = QPainter()
    if not painter.begin(device):
        raise OSError(0, tr("the picture could not be written"))
    try:
        painter.scale(scale, scale)
        paint_days(painter, QRectF(0.0, 0.0, PAGE_WIDTH, height), strips, ink=Ink.on_paper())
    finally:
        painter.end()
