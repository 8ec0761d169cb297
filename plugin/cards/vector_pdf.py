"""How a card is drawn into a PDF: vectors, and text that stays text; the same for one card and for many."""

from __future__ import annotations

from qgis.core import Qgis, QgsLayoutExporter, QgsLayoutRenderContext, QgsPrintLayout

MAKER = "Tideleg"


def pdf_settings() -> QgsLayoutExporter.PdfExportSettings:
    """For QGIS's own export of a layout."""
    settings = QgsLayoutExporter.PdfExportSettings()
    settings.forceVectorOutput = True
    settings.appendGeoreference = False
    settings.simplifyGeometries = False
    settings.textRenderFormat = Qgis.TextRenderFormat.AlwaysText
    return settings


def draw_as_vectors(layout: QgsPrintLayout, dpi: float) -> None:
    """The same for a layout that is drawn side by side into a PDF of our own."""
    wanted, context = pdf_settings(), layout.renderContext()
    context.setDpi(dpi)
    context.setFlag(QgsLayoutRenderContext.Flag.FlagForceVectorOutput, wanted.forceVectorOutput)
    context.setTextRenderFormat(wanted.textRenderFormat)
