"""What frames a day's picture: title, ground, hours, names of the lanes, legend and notes."""

from __future__ import annotations

from datetime import datetime

from qgis.PyQt.QtCore import QLineF, QRectF
from qgis.PyQt.QtGui import QPainter

from ..core.sun_days import night_spans
from .day_axis import DayAxis
from .day_ink import Ink
from .day_labels import LEFT, RIGHT, Label, Spot
from .day_legend import ROW_LINES, draw_legend_entry
from .day_light import within_day
from .day_words import (
    change_text,
    clock_text,
    date_text,
    height_text,
    lane_name,
    unit_word,
    zone_text,
)
from .paper import Lettering

CURVES = ("stream", "tide")


def paint_ground(painter: QPainter, axis: DayAxis, ink: Ink) -> None:
    """Paper, the wash of the night behind the curves, and the lines of the written hours."""
    painter.fillRect(axis.rect, ink.paper)
    lanes = [axis.lanes[name] for name in CURVES if name in axis.lanes]
    for lane in lanes:
        for low, high in within_day(axis, night_spans(axis.strip.daylight, axis.strip.clock)):
            painter.fillRect(QRectF(low, lane.top(), high - low, lane.height()), ink.night)
    for tick in axis.ticks:
        if tick.hour % axis.step_h == 0:
            x = axis.x_of_s(tick.seconds)
            painter.setPen(ink.pen(ink.grid, 0.1 * axis.size))
            painter.drawLines([QLineF(x, lane.top(), x, lane.bottom()) for lane in lanes])


def title_labels(axis: DayAxis, ink: Ink) -> list[Label]:
    """Route and date at the left, the clock at the right; at a glance the date and the waters in the margin."""
    if axis.glance:
        return _margin_labels(axis, ink)
    lane, strip = axis.lanes["title"], axis.strip
    zone = zone_text(strip, tuple(after for _, after in axis.changes))
    date = date_text(strip)
    room = lane.width() - axis.bold.width(f"   {date}")
    with_zone = room - axis.letters.width(zone) - 2.0 * axis.size
    names = [axis.bold.elide(strip.route, wide) for wide in (with_zone, room) if wide > 5.0 * axis.size]
    # The route is shortened before the zone goes, and the date never is.
    texts = tuple(f"{name}   {date}" for name in names) + (date,)
    return [
        _line(texts, lane, lane.left(), LEFT, 0, axis.bold, ink),
        _line((zone, zone.split(",")[0]), lane, lane.right(), RIGHT, 1, axis.letters, ink),
    ]


def _line(
    texts: tuple[str, ...], lane: QRectF, x: float, at: float, rank: int, lettering: Lettering, ink: Ink
) -> Label:
    """Words on the first line of a lane."""
    return Label(
        texts=texts, spots=(Spot(x=x, y=lane.top(), at=at),), within=lane, rank=rank, letters=lettering, color=ink.ink
    )


def _margin_labels(axis: DayAxis, ink: Ink) -> list[Label]:
    margin = QRectF(axis.inner.left(), axis.inner.top(), axis.plot.left() - axis.inner.left(), axis.inner.height())
    lines = [(date_text(axis.strip), axis.bold)]
    for tide in axis.strip.tides:
        if 0.0 <= axis.strip.seconds(tide.moment) <= axis.strip.length_s and tide.height_m is not None:
            words = f"{tide.kind} {clock_text(axis.strip, tide.moment)} {height_text(tide.height_m)}"
            lines.append((words, axis.letters))
    return [
        _line((words,), margin.adjusted(0.0, row * axis.line, 0.0, 0.0), margin.left(), LEFT, row, lettering, ink)
        for row, (words, lettering) in enumerate(lines)
    ]


def lane_labels(axis: DayAxis, ink: Ink) -> list[Label]:
    """The names of the lanes: in the margin, or at the top of the lane where the margin is narrow."""
    if axis.glance:
        return []
    labels = []
    left, wide = axis.inner.left(), axis.plot.left() - axis.inner.left() - 2.4 * axis.size
    for name in ("departures", "stream", "tide", "light"):
        lane = axis.lanes.get(name)
        if lane is None:
            continue
        lines = lane_name(name, axis.strip)
        if axis.named:
            wrapped = [part for words in lines for part in axis.letters.wrap(words, wide, 2)]
            top = max(lane.center().y() - axis.line / 2.0, lane.top()) if name not in CURVES else lane.top()
            margin = QRectF(left, top, wide + 1.0, max(lane.height(), axis.line))
            labels += [
                _line(
                    (words,),
                    margin.adjusted(0.0, row * axis.line, 0.0, 0.0),
                    left,
                    LEFT,
                    57 if row else 38,
                    axis.letters,
                    ink,
                )
                for row, words in enumerate(wrapped)
            ]
        elif name in CURVES and axis.leaves_name_room(lane):
            texts = (" ".join(lines), lines[0])
            inner = lane.adjusted(0.3 * axis.size, 0.0, 0.0, 0.0)
            labels.append(_line(texts, inner, inner.left(), LEFT, 38, axis.letters, ink))
        elif name in CURVES:
            margin = QRectF(axis.inner.left(), lane.top(), lane.left() - axis.inner.left(), lane.height())
            end = lane.left() - 0.4 * axis.size
            labels.append(_line((unit_word(name),), margin, end, RIGHT, 38, axis.letters, ink))
    return labels


def paint_hours(painter: QPainter, axis: DayAxis, ink: Ink) -> list[Label]:
    """Ticks at every hour, the written ones longer; a change of the clocks is marked where it happens."""
    lane = axis.lanes["hours"]
    painter.setPen(ink.pen(ink.ink, 0.1 * axis.size))
    painter.drawLine(QLineF(lane.left(), lane.top(), lane.right(), lane.top()))
    across = QRectF(axis.inner.left(), lane.top(), axis.rect.right() - axis.inner.left(), lane.height())
    labels = []
    for tick in axis.ticks:
        x, written = axis.x_of_s(tick.seconds), tick.hour % axis.step_h == 0
        painter.drawLine(QLineF(x, lane.top(), x, lane.top() + (0.35 if written else 0.18) * axis.size))
        if written:
            spot = Spot(x=x, y=lane.bottom() - axis.line)
            labels.append(
                Label(
                    texts=(f"{tick.hour:02d}",),
                    spots=(spot,),
                    within=across,
                    rank=5,
                    letters=axis.letters,
                    color=ink.ink,
                )
            )
    return labels + [_paint_change(painter, axis, ink, *change) for change in axis.changes]


def _paint_change(painter: QPainter, axis: DayAxis, ink: Ink, before: datetime, after: datetime) -> Label:
    """A dotted line through the lanes and, on one of them, what the clocks do."""
    x, lanes = axis.x_of(after), [axis.lanes[name] for name in CURVES if name in axis.lanes]
    painter.setPen(ink.pen(ink.soft, 0.12 * axis.size, (1.0, 2.0)))
    painter.drawLine(QLineF(x, lanes[0].top(), x, axis.lanes["hours"].top()))
    spots = [
        Spot(x=x + side * 0.4 * axis.size, y=y, at=at)
        for lane in lanes
        for y in (lane.top() + 0.2 * axis.line, lane.bottom() - 1.2 * axis.line)
        for side, at in ((1.0, LEFT), (-1.0, RIGHT))
    ]
    return Label(
        texts=(change_text(before, after),),
        spots=tuple(spots),
        within=lanes[0].united(lanes[-1]),
        rank=25,
        letters=axis.letters,
        color=ink.ink,
        veil=True,
    )


def paint_legend(painter: QPainter, axis: DayAxis, ink: Ink) -> list[Label]:
    """A swatch and the meaning of every hatch of the day."""
    area = axis.lanes["legend"]
    return [
        draw_legend_entry(painter, name, x, area.top() + row * ROW_LINES * axis.line, axis.inner, ink, axis.size)
        for row, entries in enumerate(axis.legend_rows())
        for name, x in entries
    ]


def note_labels(axis: DayAxis, ink: Ink) -> list[Label]:
    """The notes, line by line."""
    area = axis.lanes["notes"]
    return [
        _line((words,), area.adjusted(0.0, row * axis.line, 1.0, 0.5), area.left(), LEFT, 70, axis.letters, ink)
        for row, words in enumerate(axis.note_lines())
    ]
