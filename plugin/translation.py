"""The plugin's own words in the language that QGIS speaks."""

from __future__ import annotations

from pathlib import Path

from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QCoreApplication, QTranslator

from .core.words import speak
from .words import tr

FOLDER = Path(__file__).resolve().parent / "i18n"


def file_for(locale: str) -> Path | None:
    """The file of a locale such as ``de_AT``, of its language where the country has none; None for English."""
    whole = locale.replace("-", "_").partition(".")[0]
    names = (whole, whole.partition("_")[0])
    found = (FOLDER / f"tideleg_{name}.qm" for name in names if name)
    return next((file for file in found if file.is_file()), None)


def install_translator(locale: str | None = None) -> QTranslator | None:
    """Have the words translated from now on; None where QGIS's language has no file, and they stay English.

    Whoever installs it keeps it, and takes it out with ``remove_translator``.
    """
    file = file_for(QgsApplication.locale() if locale is None else locale)
    translator = QTranslator() if file is not None else None
    if translator is None or not translator.load(str(file)):
        return None
    QCoreApplication.installTranslator(translator)
    speak(tr)
    return translator


def remove_translator(translator: QTranslator | None) -> None:
    """Take it out again."""
    if translator is not None:
        speak(None)
        QCoreApplication.removeTranslator(translator)
