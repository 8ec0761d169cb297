"""Paper and layout of the wet card, chosen in the dock with real widgets and QGIS's real layout designer."""

from __future__ import annotations

import re
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest
from desk import Desk, desk_with_dock, opened, settle
from qgis.core import QgsLayoutItemLabel, QgsProject, QgsReadWriteContext, QgsSettings
from swims import DAY, invented_bay
from tideleg.cards.card_templates import open_template, shipped
from tideleg.cards.wet_card import CardLook
from tideleg.dock.card_choice import KEY, CardChoice
from tideleg.dock.dock import TidelegDock
from tideleg.dock.take_files import write_one


@pytest.fixture(autouse=True)
def no_settings(qgis_app: object) -> Iterator[None]:
    yield
    for name in ("paper", "sides", "layout"):
        QgsSettings().remove(KEY.format(name))


@pytest.fixture()
def at_desk(qgis_app: object, tmp_path: Path) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as (desk, open_dock):
        opened(open_dock, invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
        yield desk, open_dock


@pytest.fixture()
def dock(at_desk: tuple[Desk, TidelegDock]) -> TidelegDock:
    return at_desk[1]


def pages(pdf: Path) -> list[str]:
    """``105 x 148``: the size of every page, whole millimetres, as poppler reads it."""
    told = subprocess.run(["pdfinfo", "-l", "9", str(pdf)], check=True, capture_output=True, text=True).stdout
    sizes = re.findall(r"^Page +\d+ size: +([\d.]+) x ([\d.]+) pts", told, re.MULTILINE)
    return [" x ".join(f"{float(side) / 72 * 25.4:.0f}" for side in size) for size in sizes]


def test_the_card_is_written_on_the_paper_chosen(dock, tmp_path) -> None:
    settle(dock.session)
    choice = dock.take.card
    choice.paper.setCurrentText("A6")
    write_one(dock.take.files["card"], dock.session.swim, tmp_path / "small.pdf")
    choice.paper.setCurrentText("A4")
    choice.sides.setCurrentText("1 side")
    write_one(dock.take.files["card"], dock.session.swim, tmp_path / "large.pdf")
    assert set(pages(tmp_path / "small.pdf")) == {"105 x 148"} and pages(tmp_path / "large.pdf") == ["210 x 297"]


def test_what_was_chosen_is_there_again_in_the_next_session(qgis_app, tmp_path) -> None:
    own = tmp_path / "mine.qpt"
    own.write_bytes(shipped("A5", 2).read_bytes())
    first = CardChoice()
    first.paper.setCurrentText("A6")
    first.sides.setCurrentText("2 sides")
    assert CardChoice().look() == CardLook(paper="A6", sides=2)
    first.choose_layout(own)
    assert first.look() == CardLook(template=own) and not first.sides.isEnabled()
    again = CardChoice()
    assert again.look() == CardLook(template=own) and again.paper.currentText() == "mine"
    own.unlink()
    assert CardChoice().look() == CardLook(paper="", sides=2)  # gone: as it was before anything was chosen


def test_a_layout_that_cannot_be_read_is_told_and_not_chosen(dock, tmp_path) -> None:
    wrong = tmp_path / "wrong.qpt"
    wrong.write_text("<no>", encoding="utf-8")
    dock.take.card.choose_layout(wrong)
    assert "cannot be read" in dock.take.note.text() and dock.take.card.look() == CardLook()


def test_a_layout_opened_in_the_designer_is_saved_as_a_template_and_printed_on(at_desk, tmp_path) -> None:
    desk, dock = at_desk
    settle(dock.session)
    manager = QgsProject.instance().layoutManager()
    dock.take.card.paper.setCurrentText("A5")
    dock.take.card.change.trigger()
    (layout,) = manager.layouts()
    assert desk.designed == [layout]
    frames = [item for item in layout.items() if isinstance(item, QgsLayoutItemLabel)]
    assert len(frames) == 2 and "turn back" in frames[0].text()
    own = tmp_path / "mine.qpt"
    assert layout.saveAsTemplate(str(own), QgsReadWriteContext())
    manager.removeLayout(layout)
    dock.take.card.choose_layout(own)
    write_one(dock.take.files["card"], dock.session.swim, tmp_path / "card.pdf")
    assert pages(tmp_path / "card.pdf")[0] == "148 x 210"


def test_layouts_put_into_the_project_never_take_another_ones_name(dock) -> None:
    for _ in range(2):
        dock.take.card.open_in_designer()
    names = [layout.name() for layout in QgsProject.instance().layoutManager().layouts()]
    assert len(names) == len(set(names)) == 2
    QgsProject.instance().layoutManager().clear()


def test_a_layout_is_opened_in_the_project_it_is_for(qgis_app) -> None:
    project = QgsProject()
    layout = open_template(shipped("A6", 1), project)
    assert layout.project() is project
