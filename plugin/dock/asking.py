"""What the sections ask with: editors and forms that all look and work the same."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import QComboBox, QDateTimeEdit, QFormLayout, QLabel, QSpinBox, QWidget

from ..words import tr


def moment_editor() -> QDateTimeEdit:
    """Asks for a date and time; its digits are the plan's clock: see ``departure.digits_of``."""
    editor = QDateTimeEdit()
    editor.setTimeSpec(Qt.TimeSpec.UTC)
    editor.setDisplayFormat("yyyy-MM-dd  HH:mm")
    editor.setCalendarPopup(True)
    return editor


def minutes_box(least: int, most: int, value: int, step: int = 1) -> QSpinBox:
    """Asks for whole minutes, and tells of them once they are typed."""
    box = QSpinBox()
    box.setRange(least, most)
    box.setSingleStep(step)
    box.setValue(value)
    box.setSuffix(tr(" min"))
    box.setKeyboardTracking(False)
    return box


def choice_box() -> QComboBox:
    """Asks for one of several names; a long one does not widen the dock."""
    box = QComboBox()
    box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    return box


def form_of(rows: Iterable[tuple[str, QWidget]]) -> QFormLayout:
    """Words and what they ask with, row by row; a letter after ``&`` leads there from the keyboard."""
    form = QFormLayout()
    form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
    for words, field in rows:
        name = QLabel(words)
        if "&" in words:
            name.setBuddy(field)
        form.addRow(name, field)
    return form


def name_widgets(about: Mapping[QWidget, tuple[str, str]]) -> None:
    """Give each the name that a screen reader says, and its tooltip."""
    for widget, (name, tip) in about.items():
        widget.setAccessibleName(name)
        widget.setToolTip(tip)
