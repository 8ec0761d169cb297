"""The two lanes of a day's picture that have curves: the stream on the route, and the height of tide."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from qgis.PyQt.QtCore import QLineF, QPointF, QRectF, Qt
from qgis.PyQt.QtGui import QPainter, QPolygonF

from ..core.results.day_strip import TideMoment
from ..words import tr
from .day_axis import DayAxis
from .day_ink import Ink
from .day_labels import LEFT, MIDDLE, RIGHT, Label, Spot
from .day_words import clock_text, height_text, not_known

NICE = (0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0)
LEAST_TOP_KN = 0.5  # a lane of slack water is not stretched to look like a stream
LEAST_RISE_M = 1.0
DOT = 0.22  # radius of a high or low water, of the letters' size
FINE = 1.0  # the picture's units between points of a curve


@dataclass(frozen=True, kw_only=True)
class Scale:
    """Values up a lane: ``low`` lies ``foot`` above its bottom, ``high`` ``head`` below its top."""

    lane: QRectF
    low: float
    high: float
    head: float = 0.0
    foot: float = 0.0

    def y(self, value: np.ndarray | float) -> np.ndarray | float:
        """Where a value lies."""
        share = (np.asarray(value, dtype=float) - self.low) / (self.high - self.low)
        return self.lane.bottom() - self.foot - share * (self.lane.height() - self.head - self.foot)

    def ticks(self, apart: float) -> list[float]:
        """Round values of the lane, their places so far apart or more."""
        room = abs(float(self.y(0.0)) - float(self.y(1.0)))
        step = next((one for one in NICE if one * room >= apart), NICE[-1])
        first = int(np.ceil(self.low / step - 1e-9))
        return [number * step for number in range(first, int(np.floor(self.high / step + 1e-9)) + 1)]


def known_pieces(times_s: np.ndarray, length_s: float, fine_s: float, *values: np.ndarray) -> list[list[np.ndarray]]:
    """Times and values of each stretch in which the values are known, within the day, at closer times.

    A value that is not known breaks the curve from the known one before it to the known one after it.
    """
    known = np.isfinite(values[0])
    edges = np.flatnonzero(np.diff(np.concatenate([[False], known, [False]]).astype(int)))
    pieces = []
    for first, end in zip(edges[::2], edges[1::2]):
        own = times_s[first:end]
        low, high = max(own[0], 0.0), min(own[-1], length_s)
        if low <= high:
            inner = own[(own > low) & (own < high)]
            times = np.unique(np.concatenate([np.arange(low, high, fine_s), inner, [low, high]]))
            pieces.append([times, *(np.interp(times, own, value[first:end]) for value in values)])
    return pieces


def gaps_between(pieces: list[list[np.ndarray]], length_s: float) -> list[tuple[float, float]]:
    """(from, to) in seconds of what no piece covers."""
    edges = [0.0, *(float(end) for piece in pieces for end in (piece[0][0], piece[0][-1])), length_s]
    return [(low, high) for low, high in zip(edges[::2], edges[1::2]) if high > low]


def paint_stream(painter: QPainter, axis: DayAxis, ink: Ink, top_kn: float | None) -> list[Label]:
    """The band between the weakest and the strongest rate, darker where it is faster than the swimmer."""
    strip, lane = axis.strip, axis.lanes["stream"]
    head = axis.line if axis.leaves_name_room(lane) else 0.0
    scale = Scale(lane=lane, low=0.0, high=1.12 * max(top_kn or strip.greatest_kn, LEAST_TOP_KN), head=head)
    labels = _scale_labels(painter, axis, ink, scale)
    pieces = known_pieces(
        strip.stream_times_s, strip.length_s, _fine_s(axis), strip.stream_least_kn, strip.stream_most_kn
    )
    for times, least, most in pieces:
        x = axis.x_of_s(times)
        _fill(painter, x, scale.y(least), scale.y(most), ink, beyond=False)
        if strip.pace_kn is not None:
            pace = strip.pace_kn
            _fill(painter, x, scale.y(np.maximum(least, pace)), scale.y(np.maximum(most, pace)), ink, beyond=True)
        for rate, width in ((least, 0.1), (most, 0.16)):
            _curve(painter, x, scale.y(rate), ink, width * axis.size)
    labels += _gap_labels(axis, ink, lane, gaps_between(pieces, strip.length_s), tr("stream not known"))
    if strip.pace_kn is not None:
        labels += _paint_pace(painter, axis, ink, scale, strip.pace_kn)
    return labels


def paint_tide(painter: QPainter, axis: DayAxis, ink: Ink) -> list[Label]:
    """The height of tide, its high and low waters marked with time and height."""
    strip, lane = axis.strip, axis.lanes["tide"]
    scale = _tide_scale(axis)
    labels = _scale_labels(painter, axis, ink, scale)
    pieces = known_pieces(strip.tide_times_s, strip.length_s, _fine_s(axis), strip.tide_heights_m)
    for times, heights in pieces:
        _curve(painter, axis.x_of_s(times), scale.y(heights), ink, 0.16 * axis.size)
    labels += _gap_labels(axis, ink, lane, gaps_between(pieces, strip.length_s), tr("tide not known"))
    return labels + [_water_label(axis, ink, scale, tide) for tide in _waters(axis)]


def paint_waters(painter: QPainter, axis: DayAxis, ink: Ink) -> None:
    """A dot at each high and low water; open, on the edge of its lane, where the height is not known."""
    scale = _tide_scale(axis)
    painter.setPen(ink.pen(ink.ink, 0.12 * axis.size))
    for tide in _waters(axis):
        painter.setBrush(ink.paper if tide.height_m is None else ink.ink)
        painter.drawEllipse(_water_place(axis, scale, tide), DOT * axis.size, DOT * axis.size)


def _waters(axis: DayAxis) -> list[TideMoment]:
    """The high and low waters of the day itself."""
    return [tide for tide in axis.strip.tides if 0.0 <= axis.strip.seconds(tide.moment) <= axis.strip.length_s]


def _water_place(axis: DayAxis, scale: Scale, tide: TideMoment) -> QPointF:
    edge = scale.high if tide.kind == "HW" else scale.low
    return QPointF(axis.x_of(tide.moment), float(scale.y(edge if tide.height_m is None else tide.height_m)))


def _tide_scale(axis: DayAxis) -> Scale:
    strip = axis.strip
    heights = [*strip.tide_heights_m, *(tide.height_m for tide in strip.tides if tide.height_m is not None)]
    known = np.array(heights, dtype=float)
    known = known[np.isfinite(known)]
    low, high = (float(known.min()), float(known.max())) if len(known) else (0.0, LEAST_RISE_M)
    if high - low < LEAST_RISE_M:
        low, high = (low + high - LEAST_RISE_M) / 2.0, (low + high + LEAST_RISE_M) / 2.0
    # Room for a line of words above the high waters and below the low ones, where the lane is high enough.
    room = min(1.25 * axis.line, 0.32 * axis.lanes["tide"].height())
    return Scale(lane=axis.lanes["tide"], low=low, high=high, head=room, foot=room)


def _water_label(axis: DayAxis, ink: Ink, scale: Scale, tide: TideMoment) -> Label:
    """Time and height, above a high water and below a low one."""
    is_high, lane = tide.kind == "HW", scale.lane
    place = _water_place(axis, scale, tide)
    x, y = place.x(), place.y()
    at = clock_text(axis.strip, tide.moment)
    height = not_known() if tide.height_m is None else height_text(tide.height_m)
    off = 0.25 * axis.size
    top = min(max(y - off - axis.line if is_high else y + off, lane.top()), lane.bottom() - axis.line)
    # Where a low lane leaves no room above or below, beside the dot, out of the curve's way.
    beside = min(max(y - axis.line / 2.0, lane.top()), lane.bottom() - axis.line)
    fits = top + axis.line <= y if is_high else top >= y
    spots = [Spot(x=x, y=top)] if fits else []
    return Label(
        texts=(f"{tide.kind} {at} {height}", f"{at} {height}", f"{tide.kind} {at}", at),
        spots=(*spots, Spot(x=x + 2.0 * off, y=beside, at=LEFT), Spot(x=x - 2.0 * off, y=beside, at=RIGHT)),
        within=lane,
        rank=30,
        letters=axis.letters,
        color=ink.ink,
        veil=True,
    )


def _paint_pace(painter: QPainter, axis: DayAxis, ink: Ink, scale: Scale, pace_kn: float) -> list[Label]:
    lane, y = scale.lane, float(scale.y(pace_kn))
    painter.setPen(ink.pen(ink.ink, 0.12 * axis.size, (5.0, 3.0)))
    painter.drawLine(QLineF(lane.left(), y, lane.right(), y))
    # In the margin where that is wide enough, so that the stream stays clear.
    spots = [Spot(x=lane.left() - 0.4 * axis.size, y=y - axis.line / 2.0, at=RIGHT)] if axis.named else []
    top = max(y - axis.line - 0.15 * axis.size, lane.top())
    spots += [Spot(x=lane.left() + share * lane.width(), y=top, at=share) for share in (0.995, 0.005, 0.5, 0.25, 0.75)]
    rate, words = f"{pace_kn:.1f}", tr("you make {pace}") if axis.named else tr("you make {pace} kn")
    label = Label(
        # At a glance the heading over the days says once what the line is.
        texts=(rate,) if axis.glance else (words.format(pace=rate), rate),
        spots=tuple(spots),
        within=lane.adjusted(axis.inner.left() - lane.left(), -axis.line, 0.0, axis.line),
        rank=40,
        letters=axis.letters,
        color=ink.ink,
        veil=True,
    )
    return [label]


def _scale_labels(painter: QPainter, axis: DayAxis, ink: Ink, scale: Scale) -> list[Label]:
    """The lane's frame, its round values and, where the margin is narrow, the unit at its top."""
    lane = scale.lane
    painter.setPen(ink.pen(ink.grid, 0.1 * axis.size))
    values = scale.ticks(1.5 * axis.line)
    for value in values:
        y = float(scale.y(value))
        painter.drawLine(QLineF(lane.left(), y, lane.right(), y))
    digits = 0 if all(abs(value - round(value)) < 1e-6 for value in values) else 1
    margin = QRectF(axis.inner.left(), lane.top() - axis.line / 2.0, axis.plot.left() - axis.inner.left(), 0.0)
    margin.setHeight(lane.height() + axis.line)
    return [
        Label(
            texts=(f"{value + 0.0:.{digits}f}",),
            spots=(Spot(x=lane.left() - 0.4 * axis.size, y=float(scale.y(value)) - axis.line / 2.0, at=RIGHT),),
            within=margin.adjusted(0.0, 0.0, -0.3 * axis.size, 0.0),
            rank=55,
            letters=axis.letters,
            color=ink.soft,
        )
        for value in values
    ]


def _gap_labels(axis: DayAxis, ink: Ink, lane: QRectF, gaps: list[tuple[float, float]], whole: str) -> list[Label]:
    """What is not known is left empty and says so."""
    labels = []
    for low, high in gaps:
        left, right = axis.x_of_s(low), axis.x_of_s(high)
        within = QRectF(left, lane.top(), right - left, lane.height())
        middle = Spot(x=(left + right) / 2.0, y=lane.center().y() - axis.line / 2.0, at=MIDDLE)
        labels.append(
            Label(
                texts=(whole, not_known(), "?"),
                spots=(middle, *(Spot(x=middle.x, y=middle.y + shift * axis.line) for shift in (-1.0, 1.0))),
                within=within,
                rank=20,
                letters=axis.letters,
                color=ink.ink,
                veil=True,
            )
        )
    return labels


def _fill(painter: QPainter, x: np.ndarray, below: np.ndarray, above: np.ndarray, ink: Ink, *, beyond: bool) -> None:
    corners = [QPointF(a, b) for a, b in zip(x, above)] + [QPointF(a, b) for a, b in zip(x[::-1], below[::-1])]
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(ink.beyond if beyond else ink.band)
    painter.drawPolygon(QPolygonF(corners))


def _curve(painter: QPainter, x: np.ndarray, y: np.ndarray, ink: Ink, width: float) -> None:
    painter.setPen(ink.pen(ink.ink, width))
    if len(x) == 1:  # one known value between two that are not
        painter.drawEllipse(QPointF(x[0], y[0]), width, width)
    painter.drawPolyline(QPolygonF([QPointF(a, b) for a, b in zip(x, y)]))


def _fine_s(axis: DayAxis) -> float:
    """Seconds that one fine step of a curve takes."""
    return FINE * axis.strip.length_s / axis.plot.width()
