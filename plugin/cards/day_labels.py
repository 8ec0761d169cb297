"""The words on a day's picture: where each may stand, placed by rank so that none is cut or covers another."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache

from qgis.PyQt.QtCore import QPointF, QRectF, Qt
from qgis.PyQt.QtGui import QColor, QFont, QPainter

from .day_ink import Ink
from .paper import Lettering

LEFT, MIDDLE, RIGHT = 0.0, 0.5, 1.0  # which part of the words stands at the spot
KEEP_APART = 0.15  # of the letters' size, between words
ROUNDING = 0.01  # of a unit: lines that touch do not overlap


@lru_cache(maxsize=16)
def letters(size: int, bold: bool = False) -> Lettering:
    """Lettering whose font is ``size`` of the picture's units; what it calls mm are then those units."""
    any_size = Lettering(1.0, bold)
    return Lettering(size / any_size.em_mm, bold)


@dataclass(frozen=True, kw_only=True)
class Spot:
    """A place for words: the top of their line, and the x at which their left end, middle or right end stands."""

    x: float
    y: float
    at: float = MIDDLE


@dataclass(frozen=True, kw_only=True)
class Label:
    """Words to place: the fullest of ``texts`` that is free at one of ``spots`` and lies within ``within``.

    Labels of a low ``rank`` are placed first. A veil is a patch of paper behind the words, for those over a hatch.
    ``apart`` is what is kept free at either side, in letters' sizes.
    """

    texts: tuple[str, ...]
    spots: tuple[Spot, ...]
    within: QRectF
    rank: int
    letters: Lettering
    color: QColor
    veil: bool = False
    apart: float = KEEP_APART


@dataclass(frozen=True, kw_only=True)
class PlacedText:
    """Words that were drawn, and the rectangle they keep to: for tests, tool tips and readers of the screen."""

    text: str
    rect: QRectF


def draw_labels(
    painter: QPainter, labels: Iterable[Label], ink: Ink, bounds: QRectF, keep_clear: Iterable[QRectF] = ()
) -> tuple[PlacedText, ...]:
    """Draw the labels that find room in the bounds, those of low rank first; none covers what is to be kept clear."""
    placed: list[PlacedText] = []
    taken = list(keep_clear)
    for label in sorted(labels, key=lambda one: one.rank):
        found = next((one for one in _tries(label) if _is_free(one.rect, label, bounds, taken)), None)
        if found is not None:
            placed.append(found)
            taken.append(found.rect)
            if label.veil:
                painter.fillRect(_veil(label, found), ink.paper)
            _draw_words(painter, label, found)
    return tuple(placed)


def _tries(label: Label) -> Iterator[PlacedText]:
    for text in label.texts:
        size = label.letters
        width = size.width(text)
        for spot in label.spots:
            left = spot.x - spot.at * width
            if spot.at not in (LEFT, RIGHT):
                # Words about a middle may be pushed along to stay within; others would lie over what they stand beside.
                left = max(min(left, label.within.right() - width), label.within.left())
            if text:
                yield PlacedText(text=text, rect=QRectF(left, spot.y, width, size.line_mm))


def _is_free(rect: QRectF, label: Label, bounds: QRectF, taken: list[QRectF]) -> bool:
    apart = label.apart * label.letters.em_mm
    roomy = rect.adjusted(-apart, ROUNDING, apart, -ROUNDING)
    around = label.within.intersected(bounds).adjusted(-ROUNDING, -ROUNDING, ROUNDING, ROUNDING)
    return around.contains(rect) and not any(roomy.intersects(other) for other in taken)


def _veil(label: Label, found: PlacedText) -> QRectF:
    """The patch behind words: a little wider, and less high, so that the frame of a low lane stays whole."""
    apart = KEEP_APART * label.letters.em_mm
    return found.rect.adjusted(-apart, 0.5 * apart, apart, -0.5 * apart).intersected(label.within)


def _draw_words(painter: QPainter, label: Label, found: PlacedText) -> None:
    painter.setPen(label.color)
    painter.setFont(_font(label.letters))
    # From a point, not into a rectangle: that would turn round and align by the language of the desktop.
    painter.drawText(QPointF(found.rect.left(), found.rect.top() + label.letters.ascent_mm), found.text)


def _font(lettering: Lettering) -> QFont:
    """The font at its size in the painter's units, whatever the device's dots; unhinted, so that widths scale."""
    font = lettering.font()
    font.setPixelSize(round(lettering.em_mm))
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return font


def left_to_right(painter: QPainter) -> None:
    """Time runs to the right in every language."""
    painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
