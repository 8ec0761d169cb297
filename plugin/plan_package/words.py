"""A plan's words in the user's language."""

from __future__ import annotations

from qgis.PyQt.QtCore import QCoreApplication


def schema_words(text: str) -> str:
    """Words of the schema (titles, helps, values) in the user's language; tools/strings.py reads them off it."""
    return QCoreApplication.translate("Tideleg", text)
