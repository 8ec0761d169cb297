"""A tool that picks something up and puts it down: by dragging, or with one click for each."""

from __future__ import annotations

from qgis.gui import QgsMapMouseEvent
from qgis.PyQt.QtCore import QPoint, Qt
from qgis.PyQt.QtWidgets import QApplication

from .places import Place
from .plan_tool import PlanTool


class CarryTool(PlanTool):
    """A kind of it picks up in ``pick`` and puts down in ``put``; what ``is_carrying`` means is its own."""

    @property
    def is_carrying(self) -> bool:
        """Whether something has been picked up."""
        raise NotImplementedError

    def pick(self, event: QgsMapMouseEvent) -> bool:
        """Pick up what is under the cursor; False where nothing is."""
        raise NotImplementedError

    def put(self, place: Place) -> None:
        """Put down what is carried."""
        raise NotImplementedError

    def canvasPressEvent(self, event: QgsMapMouseEvent) -> None:
        """Pick up; what is carried is put down. The right button lets go of it."""
        if event.button() == Qt.MouseButton.RightButton:
            self.drop()
        elif event.button() == Qt.MouseButton.LeftButton and self.is_carrying:
            self._pressed = None
            self._try(lambda: self.put(self.where(event)))
        elif event.button() == Qt.MouseButton.LeftButton:
            self._pressed = event.pos()
            self._try(lambda: self.pick(event))
        self.changed.emit()

    def canvasReleaseEvent(self, event: QgsMapMouseEvent) -> None:
        """Put down what was dragged; what was only clicked stays in hand until the next click."""
        if event.button() != Qt.MouseButton.LeftButton or self._pressed is None or not self.is_carrying:
            return
        dragged = (event.pos() - self._pressed).manhattanLength() >= QApplication.startDragDistance()
        self._pressed = None
        if dragged:
            self._try(lambda: self.put(self.where(event)))
        self.changed.emit()

    def point(self, place: Place) -> None:
        """A position was typed: put down there what is carried."""
        if self.is_carrying:
            self.put(place)

    _pressed: QPoint | None = None
