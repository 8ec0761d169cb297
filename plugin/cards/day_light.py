"""The lane of daylight: night and twilight hatched, with dawn, sunrise, sunset and dusk."""

from __future__ import annotations

from datetime import datetime
from typing import NamedTuple

from qgis.PyQt.QtCore import QLineF, QRectF, Qt
from qgis.PyQt.QtGui import QPainter

from ..core.sun_days import Spans, night_spans, sun_down_spans
from ..words import tr
from .day_axis import DayAxis
from .day_hatch import NIGHT, TWILIGHT, draw_hatch
from .day_ink import Ink
from .day_labels import LEFT, MIDDLE, RIGHT, Label, Spot
from .day_words import clock_text


def paint_light(painter: QPainter, axis: DayAxis, ink: Ink) -> list[Label]:
    """Night and twilight hatched, the day clear; dawn and sunset written before, sunrise and dusk after their time."""
    lane, strip = axis.lanes["light"], axis.strip
    if not strip.daylight:
        return [_light_words(axis, ink, tr("daylight not known"))]
    nights = within_day(axis, night_spans(strip.daylight, strip.clock))
    dim = within_day(axis, sun_down_spans(strip.daylight, strip.clock))
    for spans, hatch in ((dim, TWILIGHT), (nights, NIGHT)):
        for low, high in spans:
            area = QRectF(low, lane.top(), high - low, lane.height())
            painter.fillRect(area, ink.paper)
            draw_hatch(painter, area, hatch, ink, axis.size)
    painter.setPen(ink.pen(ink.soft, 0.1 * axis.size))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(lane)
    if any(low <= 0.0 and high >= strip.length_s for low, high in night_spans(strip.daylight, strip.clock)):
        return [_light_words(axis, ink, tr("dark all day"))]
    labels = [] if nights else [_light_words(axis, ink, tr("light all night"))]
    for day in strip.daylight:
        # Rounded so that nobody is told of light that is not there.
        dawns = [_Edge(day.civil_dawn, tr("dawn"), "up", -1.0, True), _Edge(day.sunrise, tr("sunrise"), "up", 1.0)]
        dusks = [_Edge(day.civil_dusk, tr("dusk"), "down", 1.0, True), _Edge(day.sunset, tr("sunset"), "down", -1.0)]
        for pair in (dawns, dusks):
            here = [edge for edge in pair if edge.moment and 0.0 <= strip.seconds(edge.moment) <= strip.length_s]
            labels += _edge_labels(painter, axis, ink, here)
    return labels


class _Edge(NamedTuple):
    """A moment of the light, its word, how its time is rounded, and the side on which it is written: -1 is left."""

    moment: datetime | None
    word: str
    rounding: str
    side: float
    limits: bool = False

    def texts(self, axis: DayAxis) -> tuple[str, str]:
        """The word with the time, and the time alone."""
        text = clock_text(axis.strip, self.moment, self.rounding)
        return f"{self.word} {text}", text


def _edge_labels(painter: QPainter, axis: DayAxis, ink: Ink, edges: list[_Edge]) -> list[Label]:
    """Lines at dawn and sunrise, or dusk and sunset, in this order, and their words.

    Where the night is too narrow for its words both stand at the day's side, if they leave room for the other end.
    """
    lane, places = axis.lanes["light"], [axis.x_of(edge.moment) for edge in edges]
    painter.setPen(ink.pen(ink.ink, 0.1 * axis.size))
    painter.drawLines([QLineF(x, lane.top(), x, lane.bottom()) for x in places])
    if len(edges) == 2:
        night = places[0] - lane.left() if edges[0].side < 0.0 else lane.right() - places[0]
        both = ", ".join(edge.texts(axis)[0] for edge in sorted(edges, key=lambda one: one.moment))
        room, off = 0.4 * lane.width(), 0.4 * axis.size
        if axis.letters.width(edges[0].texts(axis)[0]) + off > night and axis.letters.width(both) + off <= room:
            return [_edge_label(axis, ink, edges[1], (both,), 32)]
    return [_edge_label(axis, ink, edge, edge.texts(axis), 32 if edge.limits else 34) for edge in edges]


def _edge_label(axis: DayAxis, ink: Ink, edge: _Edge, texts: tuple[str, ...], rank: int) -> Label:
    lane, x = axis.lanes["light"], axis.x_of(edge.moment)
    # Dawn and dusk limit the swim: where the night is too narrow they are written over the twilight.
    sides = (edge.side, -edge.side) if edge.limits else (edge.side,)
    spots = [
        Spot(x=x + side * 0.4 * axis.size, y=lane.center().y() - axis.line / 2.0, at=LEFT if side > 0.0 else RIGHT)
        for side in sides
    ]
    return Label(
        texts=texts, spots=tuple(spots), within=lane, rank=rank, letters=axis.letters, color=ink.ink, veil=True
    )


def _light_words(axis: DayAxis, ink: Ink, words: str) -> Label:
    lane = axis.lanes["light"]
    spot = Spot(x=lane.center().x(), y=lane.center().y() - axis.line / 2.0, at=MIDDLE)
    return Label(texts=(words,), spots=(spot,), within=lane, rank=30, letters=axis.letters, color=ink.ink, veil=True)


def within_day(axis: DayAxis, spans: Spans) -> list[tuple[float, float]]:
    """Left and right of spans of seconds, cut to the day."""
    length = axis.strip.length_s
    cut = [(max(low, 0.0), min(high, length)) for low, high in spans]
    return [(axis.x_of_s(low), axis.x_of_s(high)) for low, high in cut if high > low]
