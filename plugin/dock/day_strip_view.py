"""The picture of a day as a widget: the departure is dragged on it, and what is under the cursor is read.

Seen are the day's own seconds, so that an hour that comes twice is two places and one that is skipped is none.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timezone

from qgis.PyQt.QtCore import QEvent, QLineF, QPointF, QRectF, QSize, Qt, pyqtSignal
from qgis.PyQt.QtGui import QPainter, QPalette
from qgis.PyQt.QtWidgets import QApplication, QSizePolicy, QWidget

from ..cards.day_axis import DayAxis, letters_size
from ..cards.day_ink import Ink
from ..cards.day_labels import PlacedText
from ..cards.day_picture import LEAST_HEIGHT, LEAST_WIDTH, paint_day
from ..core.results.day_strip import DayStrip
from ..core.results.route_day import RouteDay
from ..words import tr

SNAP_S = 300.0  # a departure that is dragged moves by so much; every moment of the picture's is looked at
GRASP = 9.0  # how near to the handle a press takes hold of it, in the picture's units
UNITS_PER_INCH = 96.0
LETTERS_SHARE = 0.85  # of the desktop's letters that those of the picture are at least, where there is room
LEAST_VIEW, MOST_VIEW = 27.0, 33.0  # heights in the desktop's letters
SHAPE = 0.62  # of the height to the width
OLD_OPACITY = 0.45
OPAQUE = 255
KEYS = {
    Qt.Key.Key_Left: ("stepped", -1),
    Qt.Key.Key_Right: ("stepped", 1),
    Qt.Key.Key_PageUp: ("day_stepped", -1),
    Qt.Key.Key_PageDown: ("day_stepped", 1),
}


class DayStripView(QWidget):
    """``moved`` comes with the departure at every step of a drag, ``stepped`` and ``day_stepped`` with keys, ``read``
    with the moment under the cursor, None where it has left the times of the picture.

    While it is dragged the handle follows at once; who listens need not answer.
    """

    moved = pyqtSignal(object)
    stepped = pyqtSignal(int)
    day_stepped = pyqtSignal(int)
    read = pyqtSignal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.day: RouteDay | None = None
        self.departure: datetime | None = None
        self.placed: tuple[PlacedText, ...] = ()
        self.cursor_at: datetime | None = None
        self._home: datetime | None = None
        self._is_old = False
        self._held: datetime | None = None  # the departure before it was taken hold of
        self._apart = 0.0  # of the cursor from the handle it holds
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setAccessibleName(tr("Picture of the day"))
        self._fit()

    @property
    def is_dragging(self) -> bool:
        """Whether the departure is in the user's hand."""
        return self._held is not None

    def show_day(self, day: RouteDay | None, *, is_old: bool = False) -> None:
        """Show a day; an old one, of before the last change, is pale."""
        if day is not self.day or is_old != self._is_old:
            self.day, self._is_old = day, is_old
            self.update()

    def show_departure(self, departure: datetime | None, home: datetime | None = None) -> None:
        """Show the departure and when its swim is home; without that, as the day knows it."""
        self.departure = departure
        if home is None and departure is not None and self.day is not None:
            home = self.day.home_of(departure)
        self._home = home
        self.update()

    def strip(self) -> DayStrip:
        """The day as it is drawn, with the departure; only where a day is shown."""
        return replace(self.day.strip, planned=self.departure, planned_home=self._home if self.departure else None)

    def axis(self) -> DayAxis:
        """Lanes and times of the picture in its own units: pixels are ``scale`` times as many."""
        return DayAxis(QRectF(0.0, 0.0, self.width() / self.scale, self.height() / self.scale), self.strip())

    @property
    def scale(self) -> float:
        """Pixels a unit of the picture: it grows with the desktop's letters as far as there is room for its words."""
        plain = self.logicalDpiX() / UNITS_PER_INCH
        drawn = letters_size(self.width() / plain, self.height() / plain)
        wanted = max(plain, LETTERS_SHARE * self.fontInfo().pixelSize() / drawn)
        return max(min(wanted, self.width() / LEAST_WIDTH, self.height() / LEAST_HEIGHT), 0.5)

    def sizeHint(self) -> QSize:
        """Wide enough for its words, no wider than it must."""
        return QSize(LEAST_WIDTH, self.height())

    minimumSizeHint = sizeHint

    def paintEvent(self, _event: QEvent) -> None:
        """The picture, the cursor, and a frame: heavy where the keys go to it."""
        ink = Ink.of_palette(ground_palette(self))
        painter = QPainter(self)
        painter.fillRect(self.rect(), ink.paper)
        if self.day is not None:
            painter.save()
            painter.setOpacity(OLD_OPACITY if self._is_old else 1.0)
            painter.scale(self.scale, self.scale)
            axis = self.axis()
            strip = replace(axis.strip, now=datetime.now(timezone.utc))
            self.placed = paint_day(painter, axis.rect, strip, ink=ink)
            self._paint_cursor(painter, axis, ink)
            painter.restore()
        frame = self.palette().color(QPalette.ColorRole.Highlight) if self.hasFocus() else ink.grid
        painter.setPen(ink.pen(frame, 2.0 if self.hasFocus() else 1.0))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5))

    def _paint_cursor(self, painter: QPainter, axis: DayAxis, ink: Ink) -> None:
        """A fine line through the lanes at the moment that is read."""
        if self.cursor_at is None or self.is_dragging:
            return
        x = axis.x_of(self.cursor_at)
        painter.setPen(ink.pen(ink.ink, 0.8, (4.0, 3.0)))
        painter.drawLine(QLineF(x, axis.lanes["departures"].top(), x, axis.lanes["hours"].top()))

    def mousePressEvent(self, event: QEvent) -> None:
        """On the handle: take hold of it. Elsewhere among the times: bring it there."""
        place = self._place(event)
        if event.button() != Qt.MouseButton.LeftButton or not self._is_among_times(place):
            super().mousePressEvent(event)
            return
        self._held = self.departure
        self._apart = place.x() - self._handle_x() if self._is_near(place) else 0.0
        if not self._is_near(place):
            self._drag(place)
        self.update()

    def mouseMoveEvent(self, event: QEvent) -> None:
        """Drag the handle, or read what is under the cursor."""
        place = self._place(event)
        if self.is_dragging:
            self._drag(place)
            return
        among = self._is_among_times(place)
        near = among and self._is_near(place)
        self.setCursor(Qt.CursorShape.SizeHorCursor if near else Qt.CursorShape.ArrowCursor)
        self._read(self.axis().moment_at(place.x()) if among else None)

    def mouseReleaseEvent(self, event: QEvent) -> None:
        """Let the handle go; what is read is of where the pointer is now, not of where the drag began."""
        self._held = None
        super().mouseReleaseEvent(event)
        place = self._place(event)
        self._read(self.axis().moment_at(place.x()) if self._is_among_times(place) else None)
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        """Nothing is under the cursor."""
        super().leaveEvent(event)
        self._read(None)

    def keyPressEvent(self, event: QEvent) -> None:
        """Arrows move the departure by ten minutes, page keys by a day; Home and End to the first and the last that is
        feasible; Escape gives back the one that was taken hold of."""
        feasible = self.day.feasible() if self.day is not None and not self._is_old else ()
        ends = {Qt.Key.Key_Home: 0, Qt.Key.Key_End: -1}
        if event.key() in KEYS and self.departure is not None:
            name, steps = KEYS[event.key()]
            getattr(self, name).emit(steps)
        elif event.key() in ends and feasible:
            self._move(feasible[ends[event.key()]])
        elif event.key() == Qt.Key.Key_Escape and self.is_dragging:
            before, self._held = self._held, None
            self._move(before)
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QEvent) -> None:
        """As high as the width asks for."""
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        """Other letters take other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._fit()

    def focusInEvent(self, event: QEvent) -> None:
        """The frame tells."""
        super().focusInEvent(event)
        self.update()

    def _fit(self) -> None:
        letters = self.fontInfo().pixelSize()
        self.setFixedHeight(round(min(max(SHAPE * self.width(), LEAST_VIEW * letters), MOST_VIEW * letters)))

    def _place(self, event: QEvent) -> QPointF:
        """Where the mouse is, in the picture's units: between pixels as well, where the screen is finer."""
        at = event.position() if hasattr(event, "position") else event.localPos()  # Qt 6, Qt 5
        return QPointF(at) / self.scale

    def _is_among_times(self, place: QPointF) -> bool:
        """Whether a place lies on the lanes that have times."""
        if self.day is None:
            return False
        axis = self.axis()
        area = axis.lanes["times"].united(axis.lanes["hours"])
        return area.adjusted(-GRASP, 0.0, GRASP, 0.0).contains(place)

    def _handle_x(self) -> float:
        return self.axis().x_of(self.departure)

    def _is_near(self, place: QPointF) -> bool:
        """Whether a press there takes hold of the handle."""
        return self.departure is not None and abs(place.x() - self._handle_x()) <= GRASP

    def _drag(self, place: QPointF) -> None:
        """The departure goes to the nearest step; none of them lies on another day."""
        strip = self.day.strip
        at_s = strip.seconds(self.axis().moment_at(place.x() - self._apart))
        last = SNAP_S * (-(-strip.length_s // SNAP_S) - 1.0)
        self._move(strip.moment(min(SNAP_S * round(at_s / SNAP_S), last)))

    def _move(self, departure: datetime) -> None:
        if self.departure is None or departure.astimezone(timezone.utc) != self.departure.astimezone(timezone.utc):
            self.show_departure(departure)
            self.moved.emit(departure)

    def _read(self, moment: datetime | None) -> None:
        if moment != self.cursor_at or moment is not None:
            self.cursor_at = moment
            self.read.emit(moment)
            self.update()


def ground_palette(widget: QWidget) -> QPalette:
    """The palette of what a widget is seen on: a theme may leave the widget itself without a ground of its own."""
    seen: QWidget | None = widget
    while seen is not None:
        if seen.palette().color(QPalette.ColorRole.Base).alpha() == OPAQUE:
            return seen.palette()
        seen = seen.parentWidget()
    return QApplication.palette()
