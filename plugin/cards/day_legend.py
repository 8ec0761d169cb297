"""What the hatches of a day's picture stand for: a swatch and its meaning, row by row."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from qgis.PyQt.QtCore import QRectF, Qt
from qgis.PyQt.QtGui import QPainter

from ..core.results.day_strip import FEASIBLE
from .day_hatch import draw_hatch
from .day_ink import Ink
from .day_labels import LEFT, Label, Spot, letters
from .day_words import state_meaning

SWATCH = 2.6  # widths in letters' sizes: of a hatch with what keeps its word away
GAP = 1.6  # between entries
ROW_LINES = 1.25


def legend_places(hatches: Sequence[str], across: QRectF, size: int) -> list[list[tuple[str, float]]]:
    """(hatch, x) of the entries, row by row, from the left of a rectangle to its right."""
    rows: list[list[tuple[str, float]]] = []
    x = np.inf
    for name in hatches:
        width = SWATCH * size + letters(size).width(state_meaning(name)) + GAP * size
        if x + width > across.right():
            rows.append([])
            x = across.left()
        rows[-1].append((name, x))
        x += width
    return rows


def draw_legend_entry(painter: QPainter, name: str, x: float, top: float, across: QRectF, ink: Ink, size: int) -> Label:
    """Draw a swatch; the label of its meaning comes back."""
    line = letters(size).line_mm
    paint_state(painter, QRectF(x, top, (SWATCH - 0.6) * size, line), name, ink, size)
    left = x + SWATCH * size
    return Label(
        texts=(state_meaning(name),),
        spots=(Spot(x=left, y=top, at=LEFT),),
        within=QRectF(left, top, across.right() - left, line),
        rank=60,
        letters=letters(size),
        color=ink.ink,
    )


def paint_state(painter: QPainter, rect: QRectF, state: str, ink: Ink, size: float) -> None:
    """A stretch of departures: clear in a heavy frame where they are feasible, else the limit's hatch in a fine one."""
    feasible = state == FEASIBLE
    painter.fillRect(rect, ink.paper)
    if not feasible:
        draw_hatch(painter, rect, state, ink, size)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    pen = ink.pen(ink.ink, 0.22 * size) if feasible else ink.pen(ink.soft, 0.08 * size)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    painter.setPen(pen)
    painter.drawRect(rect)
