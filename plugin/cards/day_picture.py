"""The picture of a day: departures, stream, tide and daylight over one axis of time.

Reads like a strip of a recorder: hatched where a limit stops the swim, clear paper where it is feasible. The same
painter serves a widget, the card and files; everything is lines, fills and letters, so print stays sharp.
"""

from __future__ import annotations

from qgis.PyQt.QtCore import QRectF
from qgis.PyQt.QtGui import QPainter

from ..core.results.day_strip import DayStrip
from .day_axis import DayAxis
from .day_curves import paint_stream, paint_tide, paint_waters
from .day_departures import kept_clear, paint_departures, paint_now, paint_planned
from .day_frame import (
    lane_labels,
    note_labels,
    paint_ground,
    paint_hours,
    paint_legend,
    title_labels,
)
from .day_ink import Ink
from .day_labels import PlacedText, draw_labels, left_to_right
from .day_light import paint_light

LEAST_WIDTH, LEAST_HEIGHT = 300, 160  # below it words are missing


def paint_day(
    painter: QPainter, rect: QRectF, strip: DayStrip, *, ink: Ink, glance: bool = False, top_kn: float | None = None
) -> tuple[PlacedText, ...]:
    """Paint a day into a rectangle and return the words drawn with where they stand.

    Units are 1/96 inch: letters are 9 to 12 high, so scale the painter for other devices. ``DayAxis(rect, strip)`` has
    the lanes and the times of this picture. ``glance`` is the low form for one of many days; ``top_kn`` gives days the
    same scale of stream.
    """
    axis = DayAxis(rect, strip, glance=glance)
    painter.save()
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
        left_to_right(painter)
        paint_ground(painter, axis, ink)
        labels = title_labels(axis, ink) + lane_labels(axis, ink)
        labels += paint_stream(painter, axis, ink, top_kn)
        if "tide" in axis.lanes:
            labels += paint_tide(painter, axis, ink)
        if "light" in axis.lanes:
            labels += paint_light(painter, axis, ink)
        labels += paint_departures(painter, axis, ink)
        labels += paint_hours(painter, axis, ink)
        labels += paint_now(painter, axis, ink) + paint_planned(painter, axis, ink)
        if "legend" in axis.lanes:
            labels += paint_legend(painter, axis, ink)
        if "notes" in axis.lanes:
            labels += note_labels(axis, ink)
        placed = draw_labels(painter, labels, ink, axis.rect, kept_clear(axis))
        if "tide" in axis.lanes:
            paint_waters(painter, axis, ink)  # over the patches behind words
        return placed
    finally:
        painter.restore()
