"""The plugin's words in the user's language."""

from __future__ import annotations

from qgis.PyQt.QtCore import QCoreApplication


def tr(text: str) -> str:
    """The text in the user's language."""
    return QCoreApplication.translate("Tideleg", text)
