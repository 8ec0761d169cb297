"""A page of a print layout measured in millimetres: text of a given letter height, rules, boxes and arrows in black."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from functools import lru_cache

from qgis.core import (
    QgsFillSymbol,
    QgsLayoutItem,
    QgsLayoutItemLabel,
    QgsLayoutItemPolygon,
    QgsLayoutItemPolyline,
    QgsLayoutItemShape,
    QgsLayoutPoint,
    QgsLayoutSize,
    QgsLineSymbol,
    QgsPrintLayout,
    QgsTextFormat,
    QgsUnitTypes,
)
from qgis.PyQt.QtCore import QPointF, Qt
from qgis.PyQt.QtGui import QColor, QFont, QFontInfo, QFontMetricsF, QPolygonF

MM = QgsUnitTypes.LayoutUnit.LayoutMillimeters
POINTS_PER_MM = 72.0 / 25.4
# The first that is installed is taken, with its stretch in percent (0: as it is). All are about as narrow.
FAMILIES = (("DejaVu Sans Condensed", 0), ("Liberation Sans", 0), ("Arial", 0), ("Noto Sans", 0), ("DejaVu Sans", 90))
GENERIC_FAMILY = "Sans Serif"  # never none at all: a machine may answer that with a family of symbols
MEASURING_PIXELS = 1000  # metrics are taken large, so that hinting does not count
DRAWN_WIDER = 1.01  # hinting at the drawn size adds up to 0.7 % to the width (seen with DejaVu in PDF)
ELLIPSIS = "…"
BREAKS = re.compile(r"[ \t\r\n]+")  # not at a no-break space


@dataclass(frozen=True)
class Lettering:
    """Letters by the height of their capitals in millimetres: on a wet card that is what can be read or not."""

    cap_mm: float
    bold: bool = False

    @property
    def em_mm(self) -> float:
        """Size of the font in millimetres, large enough that a capital is ``cap_mm`` high."""
        return self.cap_mm * MEASURING_PIXELS / _cap_height(self.bold)

    @property
    def ascent_mm(self) -> float:
        """From the top of the text's box down to the baseline."""
        return self._metrics.ascent() * self.em_mm / MEASURING_PIXELS

    @property
    def line_mm(self) -> float:
        """Height of the text's box."""
        return self._metrics.height() * self.em_mm / MEASURING_PIXELS

    @property
    def _metrics(self) -> QFontMetricsF:
        return _metrics(self.bold)

    def font(self) -> QFont:
        """The font at its printed size."""
        font = _font(self.bold)
        font.setPointSizeF(self.em_mm * POINTS_PER_MM)
        return font

    def width(self, text: str) -> float:
        """Width of the text in millimetres."""
        return DRAWN_WIDER * _advance(self.bold, text) * self.em_mm / MEASURING_PIXELS

    def elide(self, text: str, width_mm: float) -> str:
        """The text, cut with an ellipsis where it is wider."""
        if self.width(text) <= width_mm:
            return text
        # Halving finds where to cut; a name of ten thousand letters must not hold the screen.
        fits, too_long = 0, len(text)
        while too_long - fits > 1:
            middle = (fits + too_long) // 2
            if self.width(text[:middle].rstrip() + ELLIPSIS) <= width_mm:
                fits = middle
            else:
                too_long = middle
        return text[:fits].rstrip() + ELLIPSIS

    def wrap(self, text: str, width_mm: float, max_lines: int) -> list[str]:
        """The text in lines no wider than asked; what does not fit in the last one is cut with an ellipsis."""
        lines: list[str] = []
        words = BREAKS.split(text.strip())
        while words and len(lines) < max_lines - 1:
            count = 1
            while count < len(words) and self.width(" ".join(words[: count + 1])) <= width_mm:
                count += 1
            lines.append(self.elide(" ".join(words[:count]), width_mm))
            words = words[count:]
        return lines + [self.elide(" ".join(words), width_mm)] if words else lines

    def whole_sentences(self, text: str, width_mm: float, max_lines: int) -> list[str]:
        """As many whole sentences as fit the lines, an ellipsis for the rest; a first one too long is cut itself."""
        sentences = re.split(r"(?<=[.!?]) +", text.strip())
        for count in range(len(sentences), 0, -1):
            kept = " ".join(sentences[:count]) + ("" if count == len(sentences) else f" {ELLIPSIS}")
            lines = self.wrap(kept, width_mm, max_lines + 1)
            if len(lines) <= max_lines:
                return lines
        return self.wrap(text, width_mm, max_lines)


BIG = Lettering(7.05)
BIG_BOLD = Lettering(7.05, bold=True)
SMALL = Lettering(4.05)
SMALL_BOLD = Lettering(4.05, bold=True)


@lru_cache(maxsize=1)
def _chosen_font() -> tuple[str, int]:
    """Family and stretch: the first of ours that is installed, else whatever Qt has without serifs."""
    installed = ((name, stretch) for name, stretch in FAMILIES if QFontInfo(QFont(name)).family() == name)
    return next(installed, (GENERIC_FAMILY, 0))


def _font(bold: bool) -> QFont:
    family, stretch = _chosen_font()
    font = QFont(family)
    font.setStyleHint(QFont.StyleHint.SansSerif)
    font.setBold(bold)
    if stretch:
        font.setStretch(stretch)
    return font


@lru_cache(maxsize=2)
def _metrics(bold: bool) -> QFontMetricsF:
    font = _font(bold)
    font.setPixelSize(MEASURING_PIXELS)
    return QFontMetricsF(font)


@lru_cache(maxsize=2)
def _cap_height(bold: bool) -> float:
    return _metrics(bold).capHeight()


@lru_cache(maxsize=20_000)
def _advance(bold: bool, text: str) -> float:
    """Kept, because a card is laid out many times over with the same words until it fits."""
    return _metrics(bold).horizontalAdvance(text)


class Paper:
    """Draws on one page of a layout. All places are millimetres from the top left corner of the page."""

    def __init__(self, layout: QgsPrintLayout, page: int = 0) -> None:
        self.layout = layout
        self._top_mm = layout.pageCollection().page(page).pos().y()  # pages of a layout lie one below the other

    def text(
        self,
        text: str,
        x: float,
        baseline: float,
        letters: Lettering,
        *,
        width: float = 0.0,
        right: bool = False,
        inverted: bool = False,
    ) -> None:
        """One line of text on its baseline; with a width it is cut to it, and set to its right edge if asked."""
        shown = plain(letters.elide(text, width) if width else text)
        if not shown:
            return
        needed = letters.width(shown)
        left = x + width - needed if right else x
        item = QgsLayoutItemLabel(self.layout)
        item.setText(shown)
        item.setMarginX(0.0)
        item.setMarginY(0.0)
        _set_letters(item, letters, QColor("white" if inverted else "black"))
        self._place(item, left, baseline - letters.ascent_mm, needed + 2.0, letters.line_mm + 1.0)

    def box(
        self, x: float, y: float, width: float, height: float, *, fill: str = "white", edge_mm: float = 0.4
    ) -> None:
        """A rectangle with a black edge, filled white or black."""
        item = QgsLayoutItemShape(self.layout)
        item.setShapeType(QgsLayoutItemShape.Shape.Rectangle)
        look = {"color": fill, "outline_color": "black", "outline_width": str(edge_mm), "style": "solid"}
        item.setSymbol(QgsFillSymbol.createSimple(look))
        self._place(item, x, y, width, height)

    def veil(self, x: float, y: float, width: float, height: float) -> None:
        """A white patch without an edge, so that words over lines can be read."""
        item = QgsLayoutItemShape(self.layout)
        item.setShapeType(QgsLayoutItemShape.Shape.Rectangle)
        item.setSymbol(QgsFillSymbol.createSimple({"color": "white", "outline_style": "no"}))
        self._place(item, x, y, width, height)

    def rule(self, x: float, y: float, width: float, *, thick_mm: float = 0.3) -> None:
        """A horizontal line."""
        self.line((x, y), (x + width, y), thick_mm=thick_mm)

    def line(self, start: tuple[float, float], end: tuple[float, float], *, thick_mm: float = 0.3) -> None:
        """A straight line from place to place."""
        ends = [QPointF(x, y + self._top_mm) for x, y in (start, end)]
        item = QgsLayoutItemPolyline(QPolygonF(ends), self.layout)
        item.setSymbol(QgsLineSymbol.createSimple({"color": "black", "width": str(thick_mm), "capstyle": "flat"}))
        self.layout.addLayoutItem(item)

    def arrow(self, x: float, y: float, length: float, towards_deg: float) -> None:
        """A black arrow centred on a place, pointing to where the stream sets, with true north up the page."""
        shape = ((0.0, 0.5), (0.34, 0.02), (0.12, 0.02), (0.12, -0.5), (-0.12, -0.5), (-0.12, 0.02), (-0.34, 0.02))
        turn = math.radians(towards_deg)
        corners = [
            QPointF(
                x + length * (across * math.cos(turn) + along * math.sin(turn)),
                y + self._top_mm - length * (along * math.cos(turn) - across * math.sin(turn)),
            )
            for across, along in shape
        ]
        item = QgsLayoutItemPolygon(QPolygonF(corners), self.layout)
        item.setSymbol(QgsFillSymbol.createSimple({"color": "black", "outline_style": "no"}))
        self.layout.addLayoutItem(item)

    def _place(self, item: QgsLayoutItemLabel | QgsLayoutItemShape, x: float, y: float, w: float, h: float) -> None:
        self.put(item, x, y)
        item.attemptResize(QgsLayoutSize(w, h, MM))
        self.layout.addLayoutItem(item)

    def put(self, item: QgsLayoutItem, x: float, y: float) -> None:
        """Move an item's top left corner to a place of the page."""
        item.attemptMove(QgsLayoutPoint(x, y + self._top_mm, MM))


def plain(text: str) -> str:
    """The text on one line and without what a layout label would take for an expression to evaluate."""
    return " ".join(text.split()).replace("[%", "[ %")


def text_format(letters: Lettering, color: QColor | None = None) -> QgsTextFormat:
    """The lettering as QGIS's text format, for scale bars and map labels."""
    look = QgsTextFormat()
    look.setFont(letters.font())
    look.setSize(letters.em_mm * POINTS_PER_MM)
    look.setSizeUnit(QgsUnitTypes.RenderUnit.RenderPoints)
    look.setColor(color or QColor("black"))
    return look


def _set_letters(item: QgsLayoutItemLabel, letters: Lettering, color: QColor) -> None:
    if hasattr(item, "setTextFormat"):  # since 3.24
        item.setTextFormat(text_format(letters, color))
    else:
        item.setFont(letters.font())
        item.setFontColor(color)
    item.setHAlign(Qt.AlignmentFlag.AlignLeft)
    item.setVAlign(Qt.AlignmentFlag.AlignTop)
