"""The letters of every label that is stored with a layer."""

from __future__ import annotations

from qgis.core import QgsTextFormat
from qgis.PyQt.QtGui import QColor, QFont

# Every font system knows a family of this name or a stand-in for it. A style made without a screen has no family of
# its own accord, and a machine that is asked for no family may answer with one of symbols.
GENERIC_FAMILY = "Sans Serif"


def plain_font() -> QFont:
    """Upright letters without serifs, whatever the machine has of them."""
    font = QFont(GENERIC_FAMILY)
    font.setStyleHint(QFont.StyleHint.SansSerif)
    return font


def plain_letters(size_pt: float, color: str) -> QgsTextFormat:
    """A text format of plain letters: size in points, colour as ``#rrggbb``."""
    look = QgsTextFormat()
    look.setFont(plain_font())
    look.setSize(size_pt)
    look.setColor(QColor(color))
    return look
