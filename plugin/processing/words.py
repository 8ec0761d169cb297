"""The algorithms' words in the user's language, for what is no method of one."""

from __future__ import annotations

from qgis.PyQt.QtCore import QCoreApplication


def tr(text: str) -> str:
    """The text in the user's language."""
    return QCoreApplication.translate("Tideleg", text)
