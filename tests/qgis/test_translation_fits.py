"""German is longer than English: nothing of the dock is cut off at its least width, and nothing on the card."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest
from desk import Desk, desk_with_dock, opened, settle, wait_for
from qgis.core import QgsSettings
from qgis.PyQt.QtCore import QCoreApplication, Qt
from qgis.PyQt.QtGui import QFont
from qgis.PyQt.QtWidgets import QAbstractButton, QApplication, QLabel, QWidget
from swims import DAY, invented_bay, swum
from tideleg import translation
from tideleg.dock.dock import TidelegDock

ELIDED = ("…", "...")


@pytest.fixture(params=[9.0, 13.0], ids=["letters of 9 points", "letters of 13 points"])
def german_desk(request: pytest.FixtureRequest, qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    """The dock in German, with letters of a size that other desktops have."""
    settings = QgsSettings()
    before = QApplication.font()
    font = QFont(before)
    font.setPointSizeF(request.param)
    QApplication.setFont(font)
    settings.setValue("locale/overrideFlag", True)
    settings.setValue("locale/userLocale", "de")
    settings.setValue("tideleg/walk_offered", True)
    try:
        with desk_with_dock() as both:
            yield both
    finally:
        for key in ("locale/overrideFlag", "locale/userLocale", "tideleg/walk_offered"):
            settings.remove(key)
        QApplication.setFont(before)


def unfolded(dock: TidelegDock) -> None:
    for section in dock.frames:
        section.setCollapsed(False)


def cut_off(top: QWidget) -> list[str]:
    """The words of each visible button that has less room than it asks for, and of each label in one line."""
    found = [one for one in top.findChildren(QAbstractButton) if one.isVisible() and one.text()]
    found += [one for one in top.findChildren(QLabel) if one.isVisible() and one.text() and not one.wordWrap()]
    return [one.text() for one in found if one.width() < one.sizeHint().width()]


def test_nothing_of_the_dock_is_cut_off_in_german_at_its_least_width(german_desk, tmp_path: Path) -> None:
    desk, dock = german_desk
    unfolded(dock)
    opened(dock, invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    assert dock.swim.title() == "Tour"
    dock.swim.way.setCurrentIndex(1)  # which asks for one thing more
    dock.swim.way.activated.emit(1)
    least = dock.minimumSizeHint().width()
    desk.window.resizeDocks([dock], [least], Qt.Orientation.Horizontal)
    wait_for(lambda: abs(dock.width() - least) < 30, f"a dock of {least} pixels")
    QApplication.processEvents()
    assert dock.area.horizontalScrollBar().maximum() == 0
    assert cut_off(dock) == []


def test_no_step_of_the_walk_is_cut_off_in_german(german_desk, tmp_path: Path) -> None:
    desk, dock = german_desk
    unfolded(dock)
    opened(dock, invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    desk.window.resizeDocks([dock], [dock.minimumSizeHint().width()], Qt.Orientation.Horizontal)
    dock.walk.begin()
    words = dock.walk.words
    for _ in range(len(dock.walk.steps)):
        QApplication.processEvents()
        assert cut_off(dock.walk) == []
        wait_for(lambda: words.height() >= words.heightForWidth(words.width()), f"room for {words.text()}")
        dock.walk.next.click()
        settle(dock.session)


@pytest.mark.skipif(not shutil.which("pdftotext"), reason="needs poppler's pdftotext")
def test_the_german_card_leaves_out_no_more_than_the_english(qgis_app, tmp_path: Path) -> None:
    plan = invented_bay(tmp_path / "bay.gpkg")
    texts = []
    for language in ("en", "de"):
        folder = tmp_path / language
        folder.mkdir()
        translator = translation.install_translator(language)
        try:
            swum(plan, folder, CARD=str(folder / "card.pdf"), DEPART=f"{DAY}T10:00")
        finally:
            translation.remove_translator(translator)
        command = ["pdftotext", "-layout", str(folder / "card.pdf"), "-"]
        texts.append(subprocess.run(command, capture_output=True, text=True, check=True).stdout)
    english, german = texts
    assert "UMKEHR BIS" in german and "TURN BACK BY" in english
    assert sum(german.count(one) for one in ELIDED) <= sum(english.count(one) for one in ELIDED)
    assert german.count("\f") == english.count("\f")  # pages


def test_two_letters_of_a_shortcut_are_never_the_same_in_one_section(german_desk, tmp_path: Path) -> None:
    _, dock = german_desk
    opened(dock, invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    for section in dock.frames:
        labels = [one.text() for one in section.findChildren(QLabel) if "&" in one.text() and one.buddy()]
        letters = [text.replace("&&", "").partition("&")[2][:1].lower() for text in labels]
        assert len(set(letters)) == len(letters), f"{section.title()}: {labels}"


def test_the_words_go_with_the_plugin(german_desk) -> None:
    assert QCoreApplication.translate("Tideleg", "Legs") == "Abschnitte"
