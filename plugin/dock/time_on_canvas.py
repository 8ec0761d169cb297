"""The time that the map shows: set while a swim is played, and put back as it was afterwards.

QGIS's own temporal controller sets the same range. Whoever moves it last is followed; what the user set there since is
never put back to something older.
"""

from __future__ import annotations

from datetime import datetime, timezone

from qgis.core import QgsDateTimeRange
from qgis.gui import QgsMapCanvas
from qgis.PyQt.QtCore import QObject, pyqtSignal

from ..layers_out.plan_layers import utc_qdatetime


class TimeOnCanvas(QObject):
    """``moved`` comes when somebody else changes the time that the map shows: the new beginning, None for all times."""

    moved = pyqtSignal(object)

    def __init__(self, canvas: QgsMapCanvas, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._canvas = canvas
        self._before: QgsDateTimeRange | None = None
        self._ours: QgsDateTimeRange | None = None
        canvas.temporalRangeChanged.connect(self._changed)

    @property
    def is_drawing(self) -> bool:
        """Whether the map is still being drawn."""
        return self._canvas.isDrawing()

    def show(self, begin: datetime, end: datetime) -> None:
        """Show the time from one moment to another, the end left out."""
        if self._ours is None:
            self._before = self._canvas.temporalRange()
        self._ours = QgsDateTimeRange(utc_qdatetime(begin), utc_qdatetime(end), True, False)
        self._canvas.setTemporalRange(self._ours)

    def put_back(self) -> None:
        """Show the time from before, unless somebody has chosen another since."""
        before, self._before, self._ours = self._before, None, None
        if before is not None:
            self._canvas.setTemporalRange(before)

    def release(self) -> None:
        """Put it back and let go of the canvas."""
        self._canvas.temporalRangeChanged.disconnect(self._changed)
        self.put_back()

    def _changed(self) -> None:
        shown = self._canvas.temporalRange()
        if self._ours is not None and shown == self._ours:
            return
        self._before = self._ours = None
        self.moved.emit(None if shown.isInfinite() else _moment(shown))


def _moment(shown: QgsDateTimeRange) -> datetime | None:
    """The beginning's digits, which QGIS means as UTC whatever zone they are labelled with."""
    begin = shown.begin()
    if not begin.isValid():
        return None
    return datetime.fromisoformat(begin.toString("yyyy-MM-ddTHH:mm:ss")).replace(tzinfo=timezone.utc)
