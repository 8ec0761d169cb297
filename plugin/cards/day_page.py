"""Several days of a route below each other, on one scale: how the windows move from day to day."""

from __future__ import annotations

from collections.abc import Sequence

from qgis.PyQt.QtCore import QRectF
from qgis.PyQt.QtGui import QPainter

from ..core.results.card import day_text
from ..core.results.day_strip import DayStrip
from .day_ink import Ink
from .day_labels import LEFT, RIGHT, Label, PlacedText, Spot, draw_labels, letters
from .day_legend import draw_legend_entry, legend_places
from .day_picture import paint_day
from .day_words import caution, legend_hatches
from .words import tr

MARGIN = 28.0
GLANCE_HEIGHT = 69.0  # fourteen of them fill an upright A4 page
WHOLE_HEIGHT = 250.0
MOST_WHOLE = 4  # days of a page that are drawn in full
SIZE = 10  # of the page's own letters


def is_whole(strips: Sequence[DayStrip]) -> bool:
    """Whether the days are few enough to be drawn in full."""
    return len(strips) <= MOST_WHOLE


def page_height(strips: Sequence[DayStrip], width: float) -> float:
    """The height that all these days need on one page of a width."""
    legend = 0 if is_whole(strips) else len(legend_places(_hatches(strips), _across(width), SIZE))
    line = letters(SIZE).line_mm
    each = WHOLE_HEIGHT if is_whole(strips) else GLANCE_HEIGHT
    return 2.0 * MARGIN + (3.2 + 1.3 * legend) * line + len(strips) * each


def paint_days(
    painter: QPainter, rect: QRectF, strips: Sequence[DayStrip], *, ink: Ink, top_kn: float | None = None
) -> tuple[PlacedText, ...]:
    """Paint days below each other from the top of a rectangle; the words drawn and where come back.

    ``top_kn`` is the rate at the top of every stream; without one it is the greatest of these days.
    """
    painter.fillRect(rect, ink.paper)
    across, line = _across(rect.width()).translated(rect.left(), rect.top()), letters(SIZE).line_mm
    top_kn = top_kn or max(strip.greatest_kn for strip in strips)
    words = _heading(across, strips, ink)
    y = across.top() + 1.8 * line
    if not is_whole(strips):
        for entries in legend_places(_hatches(strips), across, SIZE):
            words += [draw_legend_entry(painter, name, x, y, across, ink, SIZE) for name, x in entries]
            y += 1.3 * line
    words.append(_words((caution(),), across, across.left(), y, LEFT, ink))
    placed = draw_labels(painter, words, ink)
    y += 1.4 * line
    each = WHOLE_HEIGHT if is_whole(strips) else GLANCE_HEIGHT
    for strip in strips:
        row = QRectF(across.left(), y, across.width(), each)
        placed += paint_day(painter, row, strip, ink=ink, glance=not is_whole(strips), top_kn=top_kn)
        y += each
    return placed


def _across(width: float) -> QRectF:
    return QRectF(MARGIN, MARGIN, width - 2.0 * MARGIN, 1e4)


def _heading(across: QRectF, strips: Sequence[DayStrip], ink: Ink) -> list[Label]:
    """Route and dates at the left, the zone at the right."""
    first, last = strips[0], strips[-1]
    days = list(dict.fromkeys(day_text(one.moment(0.0)) for one in (first, last)))
    dates = tr("{first} to {last}").format(first=days[0], last=days[-1]) if len(days) > 1 else days[0]
    zones = ", ".join(dict.fromkeys(strip.zone_name for strip in strips))
    routes = " / ".join(dict.fromkeys(strip.route for strip in strips))
    bold = letters(SIZE + 1, True)
    room = across.width() - letters(SIZE).width(zones) - bold.width(f"    {dates}")
    title = f"{bold.elide(routes, max(room, 0.0))}   {dates}"
    return [
        _words((title, dates), across, across.left(), across.top(), LEFT, ink, bold=True),
        _words((zones,), across, across.right(), across.top(), RIGHT, ink),
    ]


def _words(
    texts: tuple[str, ...], across: QRectF, x: float, y: float, at: float, ink: Ink, *, bold: bool = False
) -> Label:
    lettering = letters(SIZE + 1, True) if bold else letters(SIZE)
    return Label(texts=texts, spots=(Spot(x=x, y=y, at=at),), within=across, rank=0, letters=lettering, color=ink.ink)


def _hatches(strips: Sequence[DayStrip]) -> tuple[str, ...]:
    """The hatches of all the days; twilight is not drawn at a glance."""
    return legend_hatches(*strips)
