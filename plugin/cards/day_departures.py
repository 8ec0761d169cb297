"""The lane of departures: clear windows in a hatched band, their times above, the swim below."""

from __future__ import annotations

from datetime import datetime

from qgis.PyQt.QtCore import QLineF, QPointF, QRectF
from qgis.PyQt.QtGui import QPainter, QPolygonF

from ..core.results.day_strip import FEASIBLE
from ..core.results.windows import DepartureWindow
from ..words import tr
from .day_axis import DayAxis
from .day_frame import CURVES
from .day_ink import Ink
from .day_labels import LEFT, RIGHT, ROUNDING, Label, Spot
from .day_legend import paint_state
from .day_words import clock_text, state_word, swim_texts, window_texts

LEAST_WINDOW = 0.5  # of the letters' size: a single departure is still seen
OFF_MIDDLE = 0.3  # of its width a window's label may be pushed along, so that it still stands over its window
MOMENT_APART = 0.9  # of it, so that "now" is not read as part of a window's times beside it


def paint_departures(painter: QPainter, axis: DayAxis, ink: Ink) -> list[Label]:
    """Every stretch of departures with its word, and each window's first, last and best time."""
    lane, runs = axis.lanes["departures"], axis.strip.state_runs()
    labels = [] if runs else [_not_looked_at(axis, ink)]
    for state, low, high in sorted(runs, key=lambda run: run[0] == FEASIBLE):  # windows lie over the hatches
        left, right = axis.x_of_s(low), axis.x_of_s(high)
        if state == FEASIBLE:
            more = max(LEAST_WINDOW * axis.size - (right - left), 0.0) / 2.0
            left, right = left - more, right + more
        stretch = QRectF(left, lane.top(), right - left, lane.height())
        paint_state(painter, stretch, state, ink, axis.size)
        labels.append(_state_label(axis, ink, stretch, state))
    labels += _window_labels(axis, ink)
    for window in axis.strip.windows:
        _paint_window_lines(painter, axis, ink, window)
        if axis.strip.planned is None and "swims" in axis.lanes:
            labels += _paint_swim(painter, axis, ink, window.best, window.ends)
    return labels


def paint_planned(painter: QPainter, axis: DayAxis, ink: Ink) -> list[Label]:
    """The planned departure: a line through all lanes with a handle, and how long its swim lasts."""
    strip = axis.strip
    if strip.planned is None or not 0.0 <= strip.planned_s <= strip.length_s:
        return []
    x, lane = axis.x_of(strip.planned), axis.lanes["departures"]
    painter.setPen(ink.pen(ink.accent, 0.18 * axis.size))
    painter.drawLine(QLineF(x, lane.top(), x, axis.lanes["hours"].top()))
    half, top = 0.55 * axis.size, lane.top() - 0.1 * axis.size
    handle = [(-half, 0.0), (half, 0.0), (half, 0.5 * half), (0.0, 1.6 * half), (-half, 0.5 * half)]
    painter.setPen(ink.pen(ink.paper, 0.12 * axis.size))
    painter.setBrush(ink.accent)
    painter.drawPolygon(QPolygonF([QPointF(x + a, top + b) for a, b in handle]))
    at = clock_text(strip, strip.planned)
    labels = [_moment_label(axis, ink, x, (tr("planned {at}").format(at=at), at), 10)]
    if strip.planned_home is not None and "swims" in axis.lanes:
        labels += _paint_swim(painter, axis, ink, strip.planned, strip.planned_home)
    return labels


def paint_now(painter: QPainter, axis: DayAxis, ink: Ink) -> list[Label]:
    """Now, as a dotted line."""
    if axis.strip.now is None or not 0.0 <= axis.strip.seconds(axis.strip.now) <= axis.strip.length_s:
        return []
    x = axis.x_of(axis.strip.now)
    painter.setPen(ink.pen(ink.ink, 0.16 * axis.size, (1.0, 1.5)))
    painter.drawLine(QLineF(x, axis.lanes["departures"].top(), x, axis.lanes["hours"].top()))
    return [_moment_label(axis, ink, x, (tr("now"),), 35)]


def kept_clear(axis: DayAxis) -> list[QRectF]:
    """What no words may cover: the handle of the planned departure, the wedges of the best ones, the bars of swims."""
    strip, lane = axis.strip, axis.lanes["departures"]
    wide = axis.size
    found = [QRectF(axis.x_of(window.best) - wide / 2.0, lane.bottom() - wide, wide, wide) for window in strip.windows]
    swims = [(window.best, window.ends) for window in strip.windows]
    if strip.planned is not None:
        x = axis.x_of(strip.planned)
        found.append(QRectF(x - 0.6 * wide, lane.top(), 1.2 * wide, wide))
        swims = [(strip.planned, strip.planned_home)] if strip.planned_home is not None else []
    if "swims" in axis.lanes:
        bar = axis.lanes["swims"]
        found += [QRectF(axis.x_of(a), bar.top(), axis.x_of(b) - axis.x_of(a), bar.height()) for a, b in swims]
    return found


def _not_looked_at(axis: DayAxis, ink: Ink) -> Label:
    """An empty lane says why it is."""
    lane = axis.lanes["departures"]
    spot = Spot(x=lane.center().x(), y=lane.center().y() - axis.line / 2.0)
    words = tr("no departures looked at")
    return Label(texts=(words,), spots=(spot,), within=lane, rank=15, letters=axis.letters, color=ink.ink)


def _state_label(axis: DayAxis, ink: Ink, stretch: QRectF, state: str) -> Label:
    spot = Spot(x=stretch.center().x(), y=stretch.center().y() - axis.line / 2.0)
    edge = 0.35 * axis.size
    return Label(
        texts=(state_word(state),),
        spots=(spot, *(Spot(x=stretch.left() + share * stretch.width(), y=spot.y) for share in (0.25, 0.75))),
        within=stretch.adjusted(edge, 0.0, -edge, 0.0),
        rank=15,
        letters=axis.bold if state == FEASIBLE else axis.letters,
        color=ink.ink,
        veil=state != FEASIBLE,
    )


def _window_labels(axis: DayAxis, ink: Ink) -> list[Label]:
    """First, last and best departure above each window; the best goes, and then the labels of the shortest windows,
    where there is no room for all, and their number is told."""
    windows = sorted(axis.strip.windows, key=lambda window: axis.strip.seconds(window.first))
    texts = [window_texts(axis.strip, window) for window in windows]
    right = axis.rect.right() - 0.2 * axis.size
    middles = [_middle(axis, window) for window in windows]
    for level in (0, -1):
        widths = [axis.letters.width(found[level]) + 0.8 * axis.size for found in texts]
        lefts = side_by_side(middles, widths, axis.inner.left(), right)
        if all(_stands_over(axis, a, w, middle, right) for a, w, middle in zip(lefts, widths, middles)):
            return [_time_label(axis, ink, found[level:], left) for found, left in zip(texts, lefts)]
    # Too many: the longest windows first.
    order = sorted(range(len(windows)), key=lambda number: -windows[number].open_min)
    texts, middles = ([values[number] for number in order] for values in (texts, middles))
    words = tr("+{count} more")
    room = axis.letters.width(words.format(count=len(windows))) + 0.8 * axis.size
    placed = _placed(axis, [found[-1] for found in texts], middles, right - room)
    shown = [_time_label(axis, ink, found[-1:], left) for found, left in zip(texts, placed) if left is not None]
    more = words.format(count=placed.count(None))
    return [*shown, _time_label(axis, ink, (more,), right - room)]


def side_by_side(middles: list[float], widths: list[float], left: float, right: float) -> list[float]:
    """Left edges of things laid from left to right about their rising middles, pushed no more than needs be.

    They overlap where all of them together are wider than the room.
    """
    lefts = [middle - width / 2.0 for middle, width in zip(middles, widths)]
    edge = left
    for number, width in enumerate(widths):
        lefts[number] = max(lefts[number], edge)
        # Half of what two overlap by is the first one's to give way; the pass back takes it.
        if number and lefts[number] - (middles[number] - width / 2.0) > 0.0:
            lefts[number] -= (lefts[number] - (middles[number] - width / 2.0)) / 2.0
        edge = lefts[number] + width
    edge = right
    for number in range(len(widths) - 1, -1, -1):
        lefts[number] = min(lefts[number], edge - widths[number])
        edge = lefts[number]
    edge = left
    for number, width in enumerate(widths):
        lefts[number] = max(lefts[number], edge)
        edge = lefts[number] + width
    return lefts


def _middle(axis: DayAxis, window: DepartureWindow) -> float:
    """Where a window's label belongs: over its middle, or of what of it lies in this day."""
    lane = axis.lanes["times"]
    ends = (min(max(axis.x_of(moment), lane.left()), lane.right()) for moment in (window.first, window.last))
    return sum(ends) / 2.0


def _stands_over(axis: DayAxis, left: float, width: float, middle: float, right: float) -> bool:
    """Whether words stand over a window's middle, more or less; at the picture's ends they reach over it at least."""
    if left <= axis.inner.left() + ROUNDING or left + width >= right - ROUNDING:
        return left <= middle <= left + width
    return abs(left + width / 2.0 - middle) <= OFF_MIDDLE * width


def _placed(axis: DayAxis, texts: list[str], middles: list[float], right: float) -> list[float | None]:
    """The left edge of each text over its middle, at the picture's ends pushed in; None where one before it stands."""
    taken: list[tuple[float, float]] = []
    found: list[float | None] = []
    for text, middle in zip(texts, middles):
        width = axis.letters.width(text) + 0.8 * axis.size
        left = max(min(middle - width / 2.0, right - width), axis.inner.left())
        is_over = left <= middle <= left + width <= right + ROUNDING
        is_free = is_over and all(left >= end or left + width <= start for start, end in taken)
        found.append(left if is_free else None)
        if is_free:
            taken.append((left, left + width))
    return found


def _time_label(axis: DayAxis, ink: Ink, texts: tuple[str, ...], left: float) -> Label:
    lane, width = axis.lanes["times"], axis.letters.width(texts[0]) + 0.8 * axis.size
    return Label(
        texts=texts,
        spots=(Spot(x=left + width / 2.0, y=lane.top()),),
        within=QRectF(left, lane.top(), width, lane.height()),
        rank=8,
        letters=axis.letters,
        color=ink.ink,
    )


def _paint_window_lines(painter: QPainter, axis: DayAxis, ink: Ink, window: DepartureWindow) -> None:
    """A wedge at the best departure; fine lines from the window's ends down through the curves."""
    lane = axis.lanes["departures"]
    curves = [axis.lanes[name] for name in CURVES if name in axis.lanes]
    painter.setPen(ink.pen(ink.soft, 0.1 * axis.size, (2.0, 2.0)))
    for moment in (window.first, window.last):
        if 0.0 <= axis.strip.seconds(moment) <= axis.strip.length_s:
            x = axis.x_of(moment)
            painter.drawLines([QLineF(x, area.top(), x, area.bottom()) for area in curves])
    if 0.0 <= axis.strip.seconds(window.best) <= axis.strip.length_s:
        x, half = axis.x_of(window.best), 0.4 * axis.size
        corners = [(-half, half), (half, half), (0.0, -half)]
        painter.setPen(ink.pen(ink.paper, 0.1 * axis.size))
        painter.setBrush(ink.ink)
        painter.drawPolygon(QPolygonF([QPointF(x + a, lane.bottom() - half + b) for a, b in corners]))


def _paint_swim(painter: QPainter, axis: DayAxis, ink: Ink, depart: datetime, home: datetime) -> list[Label]:
    """A bar as long as the swim, and its minutes beside it."""
    strip, lane = axis.strip, axis.lanes["swims"]
    low, high = max(strip.seconds(depart), 0.0), min(strip.seconds(home), strip.length_s)
    if low >= high:
        return []
    left, right, y = axis.x_of_s(low), axis.x_of_s(high), lane.center().y()
    painter.setPen(ink.pen(ink.ink, 0.2 * axis.size))
    painter.drawLine(QLineF(left, y, right, y))
    for x, is_there in ((left, strip.seconds(depart) >= 0.0), (right, strip.seconds(home) <= strip.length_s)):
        if is_there:
            painter.drawLine(QLineF(x, y - 0.35 * axis.size, x, y + 0.35 * axis.size))
    off, top = 0.5 * axis.size, lane.center().y() - axis.line / 2.0
    label = Label(
        texts=swim_texts(strip, depart, home),
        spots=(Spot(x=right + off, y=top, at=LEFT), Spot(x=left - off, y=top, at=RIGHT)),
        within=lane,
        rank=28,
        letters=axis.letters,
        color=ink.ink,
        veil=True,
    )
    return [label]


def _moment_label(axis: DayAxis, ink: Ink, x: float, texts: tuple[str, ...], rank: int) -> Label:
    """Words for a moment: above the band where that is free, else on a curve's lane."""
    tops = [axis.lanes["times"].top()]
    tops += [axis.lanes[name].top() + 0.2 * axis.line for name in CURVES if name in axis.lanes]
    off = 0.4 * axis.size
    return Label(
        texts=texts,
        spots=(
            Spot(x=x, y=tops[0]),
            *(Spot(x=x + side * off, y=top, at=at) for top in tops[1:] for side, at in ((1.0, LEFT), (-1.0, RIGHT))),
        ),
        within=axis.inner,
        rank=rank,
        letters=axis.letters,
        color=ink.accent if rank == 10 else ink.ink,
        veil=True,
        apart=MOMENT_APART,
    )
