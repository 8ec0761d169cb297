"""A section of the dock: a box that folds, with words in the place of what is not there yet."""

from __future__ import annotations

from qgis.gui import QgsCollapsibleGroupBox
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import QLabel, QVBoxLayout, QWidget


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


class Section(QgsCollapsibleGroupBox):
    """``hint`` says what to do next where there is nothing to show; ``body`` holds the rest."""

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
