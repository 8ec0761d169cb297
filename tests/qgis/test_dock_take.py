"""Take it along: the files of the swim shown, through the real dialogs, never in the place of another unasked."""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path

import pytest
from desk import desk_with_dock, layer_of, leave, opened, settle
from qgis.PyQt.QtCore import QObject, QTimer, QUrl, pyqtSlot
from qgis.PyQt.QtGui import QDesktopServices
from qgis.PyQt.QtWidgets import QApplication, QDialog, QDialogButtonBox, QFileDialog, QLineEdit, QMessageBox
from swims import DAY, FILES, digest, invented_bay, left_in, swum
from tideleg.cards import read_back
from tideleg.core.errors import SwimPlanError
from tideleg.dock import take_files
from tideleg.dock.dock import TidelegDock
from tideleg.dock.take_files import proposed_name, write_all, write_one

NAME = "Ledge 2027-06-05 1000"
ENDINGS = {
    "card": " card.pdf",
    "text": " card.txt",
    "gpx": ".gpx",
    "kml": ".kml",
    "geojson": ".geojson",
    "csv": " legs.csv",
    "report": " report.json",
}


@pytest.fixture()
def dock(qgis_app: object, tmp_path: Path) -> Iterator[TidelegDock]:
    with desk_with_dock() as (_, open_dock):
        opened(open_dock, invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
        yield open_dock


class Answers:
    """Answers the modal dialogs that come up, one after the other, each with its own function."""

    def __init__(self, *answers: Callable[[QDialog], object]) -> None:
        self.left = list(answers)
        self.answered: list[QDialog] = []
        self.timer = QTimer()
        self.timer.timeout.connect(self.look)
        self.timer.start(20)

    def look(self) -> None:
        shown = QApplication.activeModalWidget()
        if self.left and shown is not None and (not self.answered or shown is not self.answered[-1]):
            self.answered.append(shown)
            # Outside of this slot: the answer may bring up another dialog, and this timer must go on looking.
            QTimer.singleShot(0, partial(self.left.pop(0), shown))


def accepted(path: Path, seen: list[Path] | None = None) -> Callable[[QFileDialog], None]:
    """Type a path and press the button; ``seen`` takes what the dialog proposed."""

    def answer(dialog: QFileDialog) -> None:
        line = dialog.findChild(QLineEdit, "fileNameEdit")
        if seen is not None:
            seen.append(Path(dialog.directory().absolutePath()) / line.text())
        line.setText(str(path))
        agree(dialog)

    return answer


def agree(dialog: QFileDialog) -> None:
    """Press the button that saves or chooses."""
    box = dialog.findChild(QDialogButtonBox)
    kinds = (QDialogButtonBox.StandardButton.Save, QDialogButtonBox.StandardButton.Open)
    next(button for button in map(box.button, kinds) if button is not None).click()


def press(word: QMessageBox.StandardButton) -> Callable[[QMessageBox], None]:
    return lambda box: box.button(word).click()


def in_folder(folder: Path) -> Callable[[QFileDialog], None]:
    def answer(dialog: QFileDialog) -> None:
        dialog.setDirectory(str(folder))
        dialog.findChild(QLineEdit, "fileNameEdit").setText(str(folder))
        agree(dialog)

    return answer


def without_dates(pdf: Path) -> bytes:
    """A PDF without the moment it was made at."""
    return re.sub(rb"/CreationDate[^\n]*|<xmp:[^\n]*|xmp:\w*Date=\S*|uuid:[^\n<]*", b"", pdf.read_bytes())


def undated(gpx: Path) -> str:
    """A GPX file without the moment it was made at."""
    return re.sub(r"<time>[^<]*</time>", "", gpx.read_text(encoding="utf-8"), count=1)


def test_everything_is_what_planswim_writes(dock, tmp_path: Path) -> None:
    folder = tmp_path / "algorithm"
    folder.mkdir()
    files = {name: str(folder / file) for name, file in FILES.items()}
    report = swum(dock.session.path, folder, DEPART=f"{DAY}T10:00", SWIMMER=dock.session.ticked[0], **files)
    answers = Answers(in_folder(tmp_path))
    dock.take.everything.click()
    assert len(answers.answered) == 1
    made = tmp_path / NAME
    assert left_in(made) == sorted(NAME + ending for ending in ENDINGS.values())
    assert json.loads((made / f"{NAME} report.json").read_text(encoding="utf-8")) == report
    assert undated(made / f"{NAME}.gpx") == undated(Path(files["GPX"]))
    assert (made / f"{NAME} legs.csv").read_bytes() == Path(files["CSV"]).read_bytes()
    assert without_dates(made / f"{NAME} card.pdf") == without_dates(Path(files["CARD"]))
    words = (made / f"{NAME} card.txt").read_text(encoding="utf-8")
    assert all(leg["card_heading"] in words for leg in report["legs"])
    assert dock.take.note.text() == f"Written: {made}"


def test_everything_never_goes_into_a_folder_that_is_there(dock, tmp_path: Path) -> None:
    (tmp_path / NAME).mkdir()
    (tmp_path / NAME / f"{NAME}.gpx").write_text("mine", encoding="utf-8")
    answers = Answers(in_folder(tmp_path))
    dock.take.everything.click()
    assert answers.answered and dock.take.note.text() == f"Written: {tmp_path / (NAME + ' (2)')}"
    assert len(left_in(tmp_path / f"{NAME} (2)")) == len(ENDINGS)
    assert left_in(tmp_path / NAME) == [f"{NAME}.gpx"]
    assert (tmp_path / NAME / f"{NAME}.gpx").read_text(encoding="utf-8") == "mine"


@pytest.mark.parametrize("key", list(ENDINGS))
def test_each_button_proposes_a_name_beside_the_plan_and_writes_there(dock, tmp_path: Path, key: str) -> None:
    seen: list[Path] = []
    target = tmp_path / f"taken{ENDINGS[key]}"
    answers = Answers(accepted(target, seen))
    dock.take.buttons[key].click()
    assert len(answers.answered) == 1
    assert seen == [tmp_path / f"{NAME}{ENDINGS[key]}"]
    assert target.stat().st_size > 300 and dock.take.note.text() == f"Written: {target}"
    assert dock.take.open_it.isVisibleTo(dock.take)


def test_a_file_that_is_there_is_asked_about_and_kept_on_no(dock, tmp_path: Path) -> None:
    target = tmp_path / "kept.gpx"
    target.write_text("mine", encoding="utf-8")
    answers = Answers(accepted(target), press(QMessageBox.StandardButton.No), lambda dialog: dialog.reject())
    dock.take.buttons["gpx"].click()
    assert len(answers.answered) == 3 and target.read_text(encoding="utf-8") == "mine"
    answers = Answers(accepted(target), press(QMessageBox.StandardButton.Yes))
    dock.take.buttons["gpx"].click()
    assert answers.answered and target.read_text(encoding="utf-8").startswith("<?xml")


def test_the_plan_itself_cannot_be_written_over(dock, tmp_path: Path) -> None:
    plan, before = dock.session.path, digest(dock.session.path)
    answers = Answers(accepted(plan), press(QMessageBox.StandardButton.Yes))
    dock.take.buttons["csv"].click()
    assert len(answers.answered) == 2 and digest(plan) == before
    assert dock.take.note.text() == f"Written: {plan}.csv"
    # That file is there now: another ending than the table's is asked about by its whole name.
    answers = Answers(accepted(plan), press(QMessageBox.StandardButton.Yes), press(QMessageBox.StandardButton.No))
    mine = Path(f"{plan}.csv")
    mine.write_text("mine", encoding="utf-8")
    dock.take.buttons["csv"].click()
    assert len(answers.answered) == 3 and mine.read_text(encoding="utf-8") == "mine"


def test_given_up_is_nothing_written(dock, tmp_path: Path) -> None:
    before = left_in(tmp_path)
    for button in (dock.take.buttons["card"], dock.take.everything):
        answers = Answers(lambda dialog: dialog.reject())
        button.click()
        assert answers.answered and left_in(tmp_path) == before and dock.take.note.isHidden()


def test_a_swim_that_changes_while_the_dialog_is_open_is_not_written(dock, tmp_path: Path) -> None:
    target = tmp_path / "late.gpx"

    def later_and_accept(dialog: QFileDialog) -> None:
        dock.session.step_departure(1)
        accepted(target)(dialog)

    answers = Answers(later_and_accept)
    dock.take.buttons["gpx"].click()
    assert answers.answered and not target.exists()
    assert dock.take.note.text() == "The swim has changed meanwhile: nothing was written."


def test_while_a_swim_is_planned_nothing_can_be_written_and_it_says_why(dock) -> None:
    assert dock.take.reason() == "" and all(button.isEnabled() for button in dock.take.buttons.values())
    stages = []
    dock.session.swim_changed.connect(lambda: stages.append((dock.session.stage, dock.take.reason())))
    dock.swim.later.click()
    assert dock.take.why_not.text() == "The swim is being planned."
    assert not any(button.isEnabled() for button in (*dock.take.buttons.values(), dock.take.everything))
    settle(dock.session)
    assert ("turning", "Working out when to turn back…") in stages
    assert dock.take.why_not.isHidden() and dock.take.everything.isEnabled()


def test_stopped_or_refused_is_said_and_greyed(dock) -> None:
    dock.session.plan_again()
    dock.session.stop()
    assert "no planned swim" in dock.take.why_not.text() and not dock.take.everything.isEnabled()
    leave(dock, "2027-03-28 01:30")  # Lisbon's clocks jump over that hour (IANA zone data)
    assert not dock.take.everything.isEnabled() and dock.take.why_not.text()


def test_a_swim_with_a_stop_is_written_and_says_so_first(dock, tmp_path: Path) -> None:
    assert not any(flag.severity == "stop" for flag in dock.session.swim.flags) and dock.take.warning.isHidden()
    dock.swim.pace.setValue(0.2)
    settle(dock.session)
    assert "cannot be swum" in dock.take.warning.text() and not dock.take.warning.isHidden()
    target = tmp_path / "stuck.txt"
    answers = Answers(accepted(target))
    dock.take.buttons["text"].click()
    assert answers.answered and "NOT SWIMMABLE" in target.read_text(encoding="utf-8")
    dock.swim.pace.setValue(dock.swim.pace.minimum())
    leave(dock, f"{DAY} 21:30")
    settle(dock.session)
    stops = sum(flag.severity == "stop" for flag in dock.session.swim.flags)
    assert stops and dock.take.warning.text().startswith(f"{stops} x Stop in What to Mind")


def test_what_a_filter_hides_is_told_in_the_report_too(dock, tmp_path: Path) -> None:
    areas = layer_of(dock, "closed_areas")
    assert areas.setSubsetString("\"name\" = 'none such'")
    settle(dock.session)
    answers = Answers(accepted(tmp_path / "r.json"))
    dock.take.buttons["report"].click()
    assert answers.answered
    told = json.loads((tmp_path / "r.json").read_text(encoding="utf-8"))["warnings"]
    assert any("is filtered" in words for words in told)


class Opened(QObject):
    """Takes the place of the desktop's programs."""

    urls: list[QUrl] = []

    @pyqtSlot(QUrl)
    def take(self, url: QUrl) -> None:
        self.urls.append(url)


def test_what_was_written_can_be_opened_and_its_folder_shown(dock, tmp_path: Path) -> None:
    target, desktop = tmp_path / "opened.gpx", Opened()
    answers = Answers(accepted(target))
    dock.take.buttons["gpx"].click()
    assert answers.answered
    QDesktopServices.setUrlHandler("file", desktop, "take")
    try:
        dock.take.open_it.click()
        dock.take.open_folder.click()
    finally:
        QDesktopServices.unsetUrlHandler("file")
    assert [Path(url.toLocalFile()) for url in desktop.urls] == [target, tmp_path]


def test_a_place_that_cannot_be_written_is_refused_and_leaves_nothing(dock, tmp_path: Path, monkeypatch) -> None:
    swim, wall = dock.session.swim, tmp_path / "wall"
    wall.write_text("a file, no folder", encoding="utf-8")
    files = take_files.take_files()
    for write in (lambda: write_all(files, swim, wall), lambda: write_one(files[2], swim, wall / "x.gpx")):
        with pytest.raises(SwimPlanError, match="Choose another folder"):
            write()
    before = left_in(tmp_path)
    good = take_files.take_files()

    def fails(_path: Path) -> None:
        raise OSError(28, "No space left on device")

    bad = take_files.TakeFile(key="bad", button="", tip="", ending=".bad", kind="", writer=lambda _swim: fails)
    monkeypatch.setattr(take_files, "take_files", lambda: (*good, bad))
    with pytest.raises(SwimPlanError, match="No space left"):
        write_all(take_files.take_files(), swim, tmp_path)
    assert left_in(tmp_path) == before


@pytest.mark.parametrize(
    ("route", "name"),
    [
        ("Ledge", "Ledge"),
        ("../../etc/passwd", "etc passwd"),
        ('A/B: "c"?*|<d>\\e', "A B c d e"),
        ("  Ünter-Ålands   Riff. ", "Ünter-Ålands Riff"),
        ("礁の道", "礁の道"),
        ("...", "route"),
        ("- -", "route"),
    ],
)
def test_names_of_files_hold_letters_digits_blanks_and_hyphens_alone(route: str, name: str) -> None:
    from dataclasses import replace

    from plans import make_plan

    assert proposed_name(replace(make_plan(), route=route)) == f"{name} 2027-06-05 0940"


@pytest.mark.parametrize("letter", ["x", "é", "礁", "𓆛"])
def test_the_longest_names_fit_a_file_system(letter: str, tmp_path: Path) -> None:
    from dataclasses import replace

    from plans import make_plan

    swim = replace(make_plan(), route=letter * 300)
    for file in take_files.take_files()[1:]:
        write_one(file, swim, tmp_path / f"{proposed_name(swim)}{file.ending}")
    assert len(left_in(tmp_path)) == len(ENDINGS) - 1


def test_without_a_plan_there_is_nothing_to_take(qgis_app) -> None:
    with desk_with_dock() as (_, dock):
        assert not dock.take.isEnabled() and dock.take.hint.text() == "Open a plan first."


def test_what_was_written_is_not_opened_any_more_when_another_swim_is_asked_for(dock, tmp_path: Path) -> None:
    answers = Answers(accepted(tmp_path / "taken.gpx"))
    dock.take.buttons["gpx"].click()
    assert answers.answered and dock.take.open_it.isVisibleTo(dock.take)
    dock.session.step_departure(1)
    assert not dock.take.open_it.isVisibleTo(dock.take) and not dock.take.open_folder.isVisibleTo(dock.take)
    assert "taken.gpx" not in dock.take.note.text()


def test_a_single_file_to_share_is_proposed_under_a_name_that_says_so(dock, tmp_path: Path) -> None:
    dock.take.share.click()
    seen: list[Path] = []
    answers = Answers(accepted(tmp_path / "taken.csv", seen))
    dock.take.buttons["csv"].click()
    assert answers.answered and seen == [tmp_path / f"{NAME} legs shared.csv"]


def test_a_file_that_this_gdal_cannot_read_again_is_told_of(dock, tmp_path: Path, monkeypatch) -> None:
    monkeypatch.setitem(read_back.DRIVERS, "GPX", ("none such",))
    answers = Answers(accepted(tmp_path / "taken.gpx"))
    dock.take.buttons["gpx"].click()
    assert answers.answered and "GPX file is not read again" in dock.take.note.text()


def test_what_is_written_to_share_says_when_and_not_where(dock: TidelegDock, tmp_path: Path) -> None:
    take = dock.take
    take.share.click()
    assert not take.buttons["report"].isEnabled() and take.buttons["card"].isEnabled()
    answers = Answers(in_folder(tmp_path))
    take.everything.click()
    assert answers.answered, take.note.text()
    folder = next(path for path in tmp_path.iterdir() if path.is_dir() and "1000" in path.name)
    names = [path.name for path in folder.iterdir()]
    # Never to be taken for those with the marks.
    assert folder.name == f"{NAME} shared" and all(Path(name).stem.endswith(" shared") for name in names), names
    assert not any(name.endswith(".json") and "report" in name for name in names) and len(names) >= 4
    leg = dock.session.swim.legs[0]
    for path in folder.iterdir():
        if path.suffix in (".txt", ".gpx", ".csv", ".kml", ".geojson"):
            text = path.read_text(encoding="utf-8")
            assert leg.card_heading not in text and f"{leg.end_lat:.5f}" not in text, path.name
    take.share.click()
    assert take.buttons["report"].isEnabled()
