"""Keeps the mouse wheel from changing a pace, a departure or a choice while somebody only scrolls the dock."""

from __future__ import annotations

from qgis.PyQt.QtCore import QEvent, QObject, Qt
from qgis.PyQt.QtWidgets import QAbstractSlider, QAbstractSpinBox, QComboBox, QScrollBar, QWidget

CHANGED_BY_WHEEL = (QAbstractSpinBox, QComboBox, QAbstractSlider)


class StillWheel(QObject):
    """Lets the wheel through to what scrolls. Even an editor with the focus takes none: after typing one scrolls on."""

    def __init__(self, inside: QWidget) -> None:
        super().__init__(inside)
        for widget in inside.findChildren(QWidget):
            if isinstance(widget, CHANGED_BY_WHEEL) and not isinstance(widget, QScrollBar):
                widget.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # the wheel does not bring the focus
                widget.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Hold back a wheel that turns over an editor; ignored, it goes on to the widget behind."""
        if event.type() == QEvent.Type.Wheel:
            event.ignore()
            return True
        return False
