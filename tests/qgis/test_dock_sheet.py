"""The shore contact's sheet from the dock: what is typed, what the plan holds, and nothing lost on the way."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from desk import Desk, desk_with_dock, opened, wait_for
from qgis.PyQt.QtWidgets import QFileDialog, QMessageBox
from swims import DAY, invented_bay
from tideleg.core.results.card import clock_up
from tideleg.dock.dock import TidelegDock
from tideleg.plan_package.store import write_settings


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


@pytest.fixture()
def dock(at_desk: tuple[Desk, TidelegDock], tmp_path: Path) -> TidelegDock:
    plan = invented_bay(tmp_path / "bay.gpkg")
    write_settings(plan, {"emergency_numbers": "Coast +00 11", "flag": "blue and white"})
    opened(at_desk[1], plan, depart=f"{DAY} 10:00")
    return at_desk[1]


def written(dock: TidelegDock, monkeypatch: pytest.MonkeyPatch, to: Path) -> str:
    """Press the button, name a file, wait; the HTML text."""
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(to), ""))
    dock.sheet.ask.click()
    wait_for(lambda: not dock.sheet.answer.isHidden(), "the sheet")
    return to.with_suffix(".html").read_text(encoding="utf-8")


def test_the_sheet_of_the_swim_shown_is_written_with_what_is_typed_and_what_the_plan_holds(
    dock: TidelegDock, monkeypatch, tmp_path: Path
) -> None:
    assert dock.sheet.facts["flag"].placeholderText() == "blue and white"
    dock.sheet.facts["float_colours"].setText("orange")
    text = written(dock, monkeypatch, tmp_path / "out" / "sheet.pdf")
    assert (tmp_path / "out" / "sheet.pdf").read_bytes().startswith(b"%PDF")
    assert "orange" in text and "blue and white" in text and "Coast" in text
    assert f"as planned: {clock_up(dock.session.swim.arrive)}" in re.sub("<[^>]+>", "", text)
    assert not dock.sheet.open_html.isHidden() and "sheet.pdf" in dock.sheet.note.text()


def test_giving_up_in_the_dialog_writes_nothing(dock: TidelegDock, monkeypatch, tmp_path: Path) -> None:
    before = sorted(tmp_path.rglob("*.html")) + sorted(tmp_path.rglob("*.pdf"))
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: ("", ""))
    dock.sheet.ask.click()
    assert "Nothing was written" in dock.sheet.status.text()
    assert sorted(tmp_path.rglob("*.html")) + sorted(tmp_path.rglob("*.pdf")) == before


def test_an_html_file_that_is_there_is_asked_about_and_kept(dock: TidelegDock, monkeypatch, tmp_path: Path) -> None:
    mine = tmp_path / "sheet.html"
    mine.write_text("mine", encoding="utf-8")
    asked: list[str] = []
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "sheet.pdf"), ""))

    def no(_parent: object, _title: str, words: str) -> QMessageBox.StandardButton:
        asked.append(words)
        return QMessageBox.StandardButton.No

    monkeypatch.setattr(QMessageBox, "question", no)
    dock.sheet.ask.click()
    assert "sheet.html" in asked[0] and mine.read_text(encoding="utf-8") == "mine"
    assert not (tmp_path / "sheet.pdf").exists()


def test_half_a_wind_is_refused_and_a_change_of_the_hour_makes_the_sheet_old(
    dock: TidelegDock, monkeypatch, tmp_path: Path
) -> None:
    dock.sheet.wind_kn.setValue(12.0)
    dock.sheet.ask.click()
    assert "half of the wind" in dock.sheet.status.text()
    dock.sheet.wind_from.setValue(240.0)
    assert "Wind from 240 true, 12 kn" in written(dock, monkeypatch, tmp_path / "sheet.pdf")
    dock.session.step_departure(1)
    assert not dock.sheet.answer.isEnabled() and "changed" in dock.sheet.status.text()


def pressed(dock: TidelegDock, monkeypatch: pytest.MonkeyPatch, to: Path) -> None:
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(to), ""))
    dock.sheet.ask.click()


def test_how_far_the_sheet_is_is_said_and_drawn_while_the_window_lives(
    dock: TidelegDock, monkeypatch, tmp_path: Path
) -> None:
    sheet, told, bars = dock.sheet, [], []
    say = sheet.status.setText
    monkeypatch.setattr(sheet.status, "setText", lambda words: (told.append(words), say(words)))
    sheet.bar.valueChanged.connect(bars.append)
    assert sheet.bar.isHidden() and sheet.stop.isHidden()
    pressed(dock, monkeypatch, tmp_path / "sheet.pdf")
    assert not sheet.bar.isHidden() and sheet.bar.maximum() == 0 and not sheet.stop.isHidden()
    wait_for(lambda: not sheet.answer.isHidden(), "the sheet")
    assert any("turn back" in words and "%" in words for words in told)
    assert any("float drifts" in words for words in told)
    assert max(bars) > 50
    assert sheet.bar.isHidden() and sheet.stop.isHidden() and sheet.status.text() == ""


def test_a_sheet_that_is_stopped_writes_nothing_and_leaves_no_draft(
    dock: TidelegDock, monkeypatch, tmp_path: Path
) -> None:
    folder = tmp_path / "out"
    folder.mkdir()
    (folder / "sheet.html").write_text("of before", encoding="utf-8")
    monkeypatch.setattr(QMessageBox, "question", lambda *_: QMessageBox.StandardButton.Yes)
    pressed(dock, monkeypatch, folder / "sheet.pdf")
    wait_for(lambda: "%" in dock.sheet.status.text(), "words on how far it is")
    dock.sheet.stop.click()
    assert dock.sheet.status.text() == "Stopped." and dock.sheet.bar.isHidden()
    wait_for(lambda: not dock.sheet._work._running, "the worker's end")
    assert [path.name for path in folder.iterdir()] == ["sheet.html"] and dock.sheet.answer.isHidden()
    assert (folder / "sheet.html").read_text(encoding="utf-8") == "of before"


def test_a_sheet_that_cannot_be_written_leaves_no_half_of_it(dock: TidelegDock, monkeypatch, tmp_path: Path) -> None:
    folder = tmp_path / "out"
    (folder / "sheet.html").mkdir(parents=True)  # a folder where the second file would be
    (folder / "sheet.html" / "kept").write_text("mine", encoding="utf-8")
    monkeypatch.setattr(QMessageBox, "question", lambda *_: QMessageBox.StandardButton.Yes)
    pressed(dock, monkeypatch, folder / "sheet.pdf")
    wait_for(lambda: not dock.sheet.answer.isHidden(), "the refusal")
    assert "Could not write" in dock.sheet.note.text() and dock.sheet.open_html.isHidden()
    assert [path.name for path in folder.iterdir()] == ["sheet.html"]
