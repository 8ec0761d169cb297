"""The inks of a day's picture: black on white for paper, or the colours of a widget's palette."""

from __future__ import annotations

from dataclasses import dataclass

from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtGui import QColor, QPalette, QPen

SHOWS = 3.0  # least contrast of a mark with its ground; WCAG 2.1, 1.4.11 (from memory)
READS = 4.5  # least contrast of letters; WCAG 2.1, 1.4.3 (from memory)


@dataclass(frozen=True, kw_only=True)
class Ink:
    """Colours by what they are for. Nothing is told by colour alone: shapes, hatches and words say it too.

    ``paper`` is the ground, ``ink`` letters and lines, ``soft`` hatches and lesser words, ``grid`` the lines of the
    hours, ``night`` a wash behind the lanes, ``band`` the stream and ``beyond`` what of it is faster than the swimmer,
    ``accent`` the planned departure.
    """

    paper: QColor
    ink: QColor
    soft: QColor
    grid: QColor
    night: QColor
    band: QColor
    beyond: QColor
    accent: QColor

    @classmethod
    def on_paper(cls) -> Ink:
        """Black and greys on white."""
        return cls._between(QColor("white"), QColor("black"), QColor("black"))

    @classmethod
    def of_palette(cls, palette: QPalette) -> Ink:
        """The colours of a widget, dark or light; its highlight marks the planned departure where it shows."""
        paper, ink = palette.color(QPalette.ColorRole.Base), palette.color(QPalette.ColorRole.Text)
        if contrast(paper, ink) < READS:
            ink = max((QColor("black"), QColor("white")), key=lambda one: contrast(paper, one))
        highlight = palette.color(QPalette.ColorRole.Highlight)
        return cls._between(paper, ink, highlight if contrast(paper, highlight) >= READS else ink)

    @classmethod
    def _between(cls, paper: QColor, ink: QColor, accent: QColor) -> Ink:
        """The greys are shares of the way from paper to ink; the soft one is as soft as letters may be."""
        soft = next((mixed(paper, ink, share) for share in (0.66, 0.8) if _reads(paper, ink, share)), ink)
        grid, night, band, beyond = (mixed(paper, ink, share) for share in (0.17, 0.08, 0.24, 0.5))
        return cls(paper=paper, ink=ink, soft=soft, grid=grid, night=night, band=band, beyond=beyond, accent=accent)

    def pen(self, color: QColor, width: float, dashes: tuple[float, ...] = ()) -> QPen:
        """A pen so wide in the picture's units; dashes and the gaps between them in widths of the pen."""
        pen = QPen(color)
        pen.setWidthF(width)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        if dashes:
            pen.setDashPattern(list(dashes))
        return pen


def mixed(paper: QColor, ink: QColor, share: float) -> QColor:
    """The colour a share of the way from paper to ink."""
    parts = zip(paper.getRgb()[:3], ink.getRgb()[:3])
    return QColor(*(round(a + share * (b - a)) for a, b in parts))


def contrast(one: QColor, other: QColor) -> float:
    """Contrast of two colours, 1 to 21: (L1 + 0.05) / (L2 + 0.05), relative luminances; WCAG 2.1 (from memory)."""
    lights = sorted(_luminance(color) for color in (one, other))
    return (lights[1] + 0.05) / (lights[0] + 0.05)


def _luminance(color: QColor) -> float:
    linear = [part / 12.92 if part <= 0.03928 else ((part + 0.055) / 1.055) ** 2.4 for part in color.getRgbF()[:3]]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def _reads(paper: QColor, ink: QColor, share: float) -> bool:
    return contrast(paper, mixed(paper, ink, share)) >= READS
