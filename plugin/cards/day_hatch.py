"""Hatches of a day's picture, one for each limit, drawn line by line.

A brush pattern has the size of a device's dots: it would vanish in print, and SVG writers know no clipping.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from qgis.PyQt.QtCore import QLineF, QPointF, QRectF
from qgis.PyQt.QtGui import QPainter

from ..core.results.day_strip import ENDS_DARK
from .day_ink import Ink

Strokes = Iterator[QLineF]
NIGHT, TWILIGHT = "dark", "twilight"  # night has the hatch of the limit that it is


def draw_hatch(painter: QPainter, rect: QRectF, name: str, ink: Ink, unit: float) -> None:
    """Fill a rectangle with a limit's hatch; ``unit`` is the letters' size, which the hatch keeps pace with."""
    strokes = list(HATCHES[name](rect, unit / 10.0))
    painter.setPen(ink.pen(ink.soft, 0.08 * unit))
    if strokes:
        painter.drawLines(strokes)


def _rising(rect: QRectF, step: float) -> Strokes:
    """Strokes that rise to the right: x + y is constant along each."""
    first, last = rect.left() + rect.top(), rect.right() + rect.bottom()
    for total in _multiples(first, last, step):
        left, right = max(rect.left(), total - rect.bottom()), min(rect.right(), total - rect.top())
        yield QLineF(left, total - left, right, total - right)


def _falling(rect: QRectF, step: float) -> Strokes:
    """Strokes that fall to the right: x - y is constant along each."""
    first, last = rect.left() - rect.bottom(), rect.right() - rect.top()
    for apart in _multiples(first, last, step):
        left, right = max(rect.left(), apart + rect.top()), min(rect.right(), apart + rect.bottom())
        yield QLineF(left, left - apart, right, right - apart)


def _level(rect: QRectF, step: float) -> Strokes:
    for y in _multiples(rect.top(), rect.bottom(), step):
        yield QLineF(rect.left(), y, rect.right(), y)


def _upright(rect: QRectF, step: float) -> Strokes:
    for x in _multiples(rect.left(), rect.right(), step):
        yield QLineF(x, rect.top(), x, rect.bottom())


def _crossed(rect: QRectF, step: float) -> Strokes:
    yield from _rising(rect, step)
    yield from _falling(rect, step)


def _scattered(*glyph: tuple[float, float, float, float]) -> Callable[[QRectF, float], Strokes]:
    """Small figures in staggered rows, their strokes given in steps from their middle; none is cut."""
    half_wide = max(max(abs(x1), abs(x2)) for x1, _, x2, _ in glyph)
    half_high = max(max(abs(y1), abs(y2)) for _, y1, _, y2 in glyph)

    def strokes(rect: QRectF, step: float) -> Strokes:
        inner = rect.adjusted(half_wide * step, half_high * step, -half_wide * step, -half_high * step)
        for row, y in enumerate(_multiples(inner.top(), inner.bottom(), 0.7 * step)):
            for x in _multiples(inner.left() - row % 2 * step / 2.0, inner.right(), step):
                middle = QPointF(x + row % 2 * step / 2.0, y)
                if inner.left() <= middle.x() <= inner.right():
                    yield from (
                        QLineF(middle + QPointF(x1, y1) * step, middle + QPointF(x2, y2) * step)
                        for x1, y1, x2, y2 in glyph
                    )

    return strokes


def _multiples(low: float, high: float, step: float) -> Iterator[float]:
    """The multiples of a step between two values, neither of which counts."""
    number = int(low // step) + 1
    while number * step < high:
        yield number * step
        number += 1


def _spaced(strokes: Callable[[QRectF, float], Strokes], step: float) -> Callable[[QRectF, float], Strokes]:
    """The strokes so far apart, in tenths of the letters' size."""
    return lambda rect, tenth: strokes(rect, step * tenth)


_TICKS = _scattered((0.0, -0.3, 0.0, 0.3))
_DASHES = _scattered((-0.3, 0.0, 0.3, 0.0))
_STARS = _scattered((-0.12, 0.0, 0.12, 0.0), (0.0, -0.12, 0.0, 0.12))
_SINKING = _scattered((-0.2, -0.12, 0.0, 0.15), (0.0, 0.15, 0.2, -0.12))
_CORNERS = _scattered((-0.2, 0.15, 0.0, -0.15), (0.0, -0.15, 0.2, 0.15))

HATCHES: dict[str, Callable[[QRectF, float], Strokes]] = {
    "stream": _spaced(_rising, 6.0),
    "range": _spaced(_falling, 9.0),
    "hours": _spaced(_upright, 5.0),
    NIGHT: _spaced(_level, 2.6),
    TWILIGHT: _spaced(_level, 5.2),
    ENDS_DARK: _spaced(_SINKING, 4.5),
    "closed": _spaced(_crossed, 8.0),
    "land": _spaced(_CORNERS, 6.5),
    "ferry": _spaced(_TICKS, 5.0),
    "depth": _spaced(_DASHES, 7.0),
    "unknown": _spaced(_STARS, 8.0),
}
