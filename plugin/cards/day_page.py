"""Several days of a route below each other, on one scale: how the windows move from day to day."""

from __future__ import annotations

from collections.abc import Sequence

from qgis.PyQt.QtCore import QRectF
from qgis.PyQt.QtGui import QPainter

from ..core.results.card import day_text
from ..core.results.day_strip import DayStrip
from ..words import tr
from .day_ink import Ink
from .day_labels import LEFT, RIGHT, Label, PlacedText, Spot, draw_labels, letters
from .day_legend import ROW_LINES, draw_legend_entry, legend_places
from .day_picture import paint_day
from .day_words import caution, dashed, state_hatches

MARGIN = 28.0
ONE_HEIGHT = 503.0  # a day alone: a page of A5, lying
WHOLE_HEIGHT = 355.0  # three of them fill an upright A4 page
GLANCE_HEIGHT = 69.0  # fourteen of them do, and their heading
MOST_WHOLE = 3  # days that are drawn in full
SIZE = 10  # of the page's own letters
HEADING_LINES, CAUTION_LINES = 1.8, 1.4


def is_whole(strips: Sequence[DayStrip]) -> bool:
    """Whether the days are few enough to be drawn in full, each with its own title, legend and notes."""
    return len(strips) <= MOST_WHOLE


def page_height(strips: Sequence[DayStrip], width: float) -> float:
    """The height that all these days need on one page of a width."""
    if is_whole(strips):
        return 2.0 * MARGIN + len(strips) * _each(strips)
    legend = ROW_LINES * len(legend_places(state_hatches(*strips), _across(width), SIZE))
    heading = (HEADING_LINES + legend + CAUTION_LINES) * letters(SIZE).line_mm
    return 2.0 * MARGIN + heading + len(strips) * _each(strips)


def paint_days(
    painter: QPainter, rect: QRectF, strips: Sequence[DayStrip], *, ink: Ink, top_kn: float | None = None
) -> tuple[PlacedText, ...]:
    """Paint days below each other from the top of a rectangle; the words drawn and where come back.

    ``top_kn`` is the rate at the top of every stream; without one it is the greatest of these days.
    """
    painter.fillRect(rect, ink.paper)
    across = _across(rect.width()).translated(rect.left(), rect.top())
    top_kn = top_kn or max(strip.greatest_kn for strip in strips)
    placed, y = ((), across.top()) if is_whole(strips) else _paint_heading(painter, across, strips, ink)
    for strip in strips:
        row = QRectF(across.left(), y, across.width(), _each(strips))
        placed += paint_day(painter, row, strip, ink=ink, glance=not is_whole(strips), top_kn=top_kn)
        y += row.height()
    return placed


def _each(strips: Sequence[DayStrip]) -> float:
    """The height of each of so many days."""
    if len(strips) == 1:
        return ONE_HEIGHT
    return WHOLE_HEIGHT if is_whole(strips) else GLANCE_HEIGHT


def _across(width: float) -> QRectF:
    """What lies between the margins, as far down as anybody likes."""
    return QRectF(MARGIN, MARGIN, width - 2.0 * MARGIN, 1e5)


def _paint_heading(
    painter: QPainter, across: QRectF, strips: Sequence[DayStrip], ink: Ink
) -> tuple[tuple[PlacedText, ...], float]:
    """Title, legend and caution over days at a glance: the words drawn, and where the first day begins."""
    words, line = _title(across, strips, ink), letters(SIZE).line_mm
    y = across.top() + HEADING_LINES * line
    for entries in legend_places(state_hatches(*strips), across, SIZE):
        words += [draw_legend_entry(painter, name, x, y, across, ink, SIZE) for name, x in entries]
        y += ROW_LINES * line
    notes = [caution()] if all(strip.pace_kn is None for strip in strips) else [dashed(), caution()]
    words.append(_words((" ".join(notes), caution()), across, across.left(), y, LEFT, ink))
    return draw_labels(painter, words, ink, across), y + CAUTION_LINES * line


def _title(across: QRectF, strips: Sequence[DayStrip], ink: Ink) -> list[Label]:
    """Route and dates at the left, the zone at the right."""
    days = [day_text(one.moment(0.0)) for one in (strips[0], strips[-1])]
    dates = tr("{first} to {last}").format(first=days[0], last=days[1])
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
