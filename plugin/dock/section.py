"""A section of the dock: a box that folds, with words in the place of what is not there yet."""

from __future__ import annotations

from collections.abc import Callable

from qgis.core import QgsApplication
from qgis.gui import QgsCollapsibleGroupBox
from qgis.PyQt.QtCore import QEvent, QObject, Qt
from qgis.PyQt.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QToolButton, QVBoxLayout, QWidget

from ..words import tr


def label(text: str = "", *, strong: bool = False) -> QLabel:
    """Words that wrap and can be selected; never read as markup, since names in them are the user's."""
    made = QLabel(text)
    made.setTextFormat(Qt.TextFormat.PlainText)
    made.setWordWrap(True)
    made.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    if strong:
        font = made.font()
        font.setBold(True)
        made.setFont(font)
    return made


def keep_room(*widgets: QWidget) -> None:
    """What comes and goes keeps its place while it is hidden, so that nothing below it jumps."""
    for widget in widgets:
        policy = widget.sizePolicy()
        policy.setRetainSizeWhenHidden(True)
        widget.setSizePolicy(policy)


def side_by_side(first: QWidget, *others: QWidget) -> QWidget:
    """The first takes the room that is left over, the others stand after it."""
    whole = QWidget()
    row = QHBoxLayout(whole)
    row.setContentsMargins(0, 0, 0, 0)
    row.addWidget(first, 1)
    for other in others:
        row.addWidget(other)
    return whole


class Section(QgsCollapsibleGroupBox):
    """``hint`` says what to do next where there is nothing to show; ``body`` holds the rest.

    ``page`` is the page of the documentation on it, with the heading there: ``dock.md#turn-back``.
    """

    page: str = "dock.md"

    def __init__(self, name: str, title: str, parent: QWidget | None = None) -> None:
        super().__init__(title, parent)
        self.setObjectName(f"Tideleg{name}")
        self.setSettingGroup("tideleg")
        self.setAccessibleName(title)
        self.hint = label()
        self.hint.setObjectName(f"Tideleg{name}Hint")
        self.body = QWidget()
        self.inside = QVBoxLayout(self.body)
        self.inside.setContentsMargins(0, 0, 0, 0)
        whole = QVBoxLayout(self)
        whole.addWidget(self.hint)
        whole.addWidget(self.body)

    def show_hint(self, words: str) -> None:
        """Show these words and nothing else; no words show what the section holds."""
        self.hint.setText(words)
        self.hint.setVisible(bool(words))
        self.body.setVisible(not words)


class SectionFrame(QWidget):
    """A section with its help button in the upper corner.

    The button stands beside the section, not in it, so that help can also be had where that is still grey or folded.
    """

    def __init__(self, section: Section, show_help: Callable[[str], None], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.section = section
        self.help = QToolButton()
        self.help.setIcon(QgsApplication.getThemeIcon("/mActionHelpContents.svg"))
        self.help.setAutoRaise(True)
        self.help.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        name = tr("Help: {}").format(section.title())
        self.help.setAccessibleName(name)
        self.help.setToolTip(name)
        self.help.clicked.connect(lambda: show_help(section.page))
        self.place = QGridLayout(self)
        self.place.setContentsMargins(0, 0, 0, 0)
        self.place.addWidget(section, 0, 0)
        self.place.addWidget(self.help, 0, 0, Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignRight)
        self.help.raise_()
        section.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A section that is hidden takes its help with it."""
        if watched is self.section and event.type() in (QEvent.Type.HideToParent, QEvent.Type.ShowToParent):
            self.setVisible(event.type() == QEvent.Type.ShowToParent)
        return super().eventFilter(watched, event)
