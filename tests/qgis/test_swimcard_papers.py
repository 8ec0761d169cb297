"""tideleg:swimcard on paper: PDFs of a real plan, read again by poppler, on Tideleg's layouts and on one's own."""

from __future__ import annotations

import math
import re
import shutil
import subprocess
import sys
from datetime import datetime
from pathlib import Path

import pytest
from made_sample import sample_at
from plans import make_plan
from qgis.core import (
    QgsLayoutItemLabel,
    QgsLayoutPoint,
    QgsLayoutSize,
    QgsProcessingContext,
    QgsReadWriteContext,
)
from qgis.PyQt.QtGui import QImage
from qgis.PyQt.QtXml import QDomDocument
from swims import run
from tideleg.cards.card_parts import PARTS
from tideleg.cards.card_templates import PAPERS, SIDES, CardError, open_template, shipped, take_frames
from tideleg.cards.wet_card import CardLook, card_layout
from tideleg.core.results.card import clock_up
from tideleg.processing.planswim import PlanSwim
from tideleg.processing.swimcard import SwimCard

ROOT = Path(__file__).resolve().parents[2]
SWIM = {"ROUTE": "Inner reef and home", "DEPART": "2027-06-26T10:00", "SWIMMER": "Steady"}
SIZES_MM = {"A6": (105.0, 148.0), "A5": (148.0, 210.0), "A4": (210.0, 297.0)}
needs_poppler = pytest.mark.skipif(not shutil.which("pdftotext"), reason="needs poppler's pdftotext")


@pytest.fixture(scope="module")
def plan(qgis_app, tmp_path_factory) -> Path:
    return sample_at(tmp_path_factory.mktemp("papers") / "bay.gpkg")


@pytest.fixture(scope="module")
def report(plan: Path) -> dict:
    ran = run(PlanSwim().create(), {"PLAN": str(plan), **SWIM, "REPORT": str(plan.with_name("report.json"))})
    return ran.report


def written(plan: Path, folder: Path, **parameters: object) -> Path:
    """The PDF of the sample's card."""
    pdf = folder / "card.pdf"
    ran = run(SwimCard().create(), {"PLAN": str(plan), **SWIM, "CARD": str(pdf), **parameters})
    assert ran.ok, ran.said
    return pdf


def refused(plan: Path, folder: Path, **parameters: object) -> str:
    """What is said when the card is refused; nothing is written."""
    pdf = folder / "card.pdf"
    ran = run(SwimCard().create(), {"PLAN": str(plan), **SWIM, "CARD": str(pdf), **parameters})
    assert not pdf.exists() and not ran.ok and ran.results == {}
    return ran.said


def poppler(tool: str, pdf: Path, *words: str) -> str:
    return subprocess.run([tool, *words, str(pdf), *(["-"] if tool == "pdftotext" else [])], **HEARD).stdout


HEARD = {"check": True, "capture_output": True, "text": True, "timeout": 60}


@needs_poppler
@pytest.mark.parametrize("paper", PAPERS)
def test_headings_and_times_read_from_the_pdf_are_those_of_the_report(plan, report, tmp_path, paper) -> None:
    text = poppler("pdftotext", written(plan, tmp_path, PAPER=1 + PAPERS.index(paper)), "-layout")
    for leg in report["legs"]:
        assert leg["card_heading"] in text and leg["to"] in text
        assert re.search(rf"\b{clock_up(datetime.fromisoformat(leg['depart']))}\b", text)
    for stop in report["stops"]:
        if stop["latest_leave"] is not None and stop["exit"] is not None and stop is not report["stops"][-1]:
            assert stop["name"] in text
    assert "PREDICTED" in text and "TURN BACK BY" in text and "variation 14.1" in " ".join(text.split())


def test_two_sides_of_a6_hold_the_samples_three_legs_and_name_what_is_not_on_them(plan, tmp_path) -> None:
    text = " ".join(poppler("pdftotext", written(plan, tmp_path, PAPER=1, SIDES=2), "-layout").split())
    assert "1/2" in text and "2/2" in text and "3/" not in text
    assert "TURN BACK BY" in text and "ALARM" in text and "Never dive alone" in text
    assert re.search(r"Not on this card: [^.]*depths, line, tides, ways home\.", text)


@needs_poppler
def test_one_side_of_a5_holds_the_samples_three_legs_with_the_figures_of_the_report(plan, report, tmp_path) -> None:
    pdf = written(plan, tmp_path, PAPER=2, SIDES=1)
    text = " ".join(poppler("pdftotext", pdf, "-layout").split())
    assert "1/1" in text and re.search(r"Pages:\s+1\b", poppler("pdfinfo", pdf))
    for leg in report["legs"]:
        depart, arrive = (clock_up(datetime.fromisoformat(leg[key])) for key in ("depart", "arrive"))
        assert f"{leg['card_heading']} {depart} {arrive}" in text and leg["to"] in text
        assert f"{math.ceil(leg['minutes'])} min" in text
    for stop in report["stops"][1:-1]:
        assert f"{stop['name']}: as predicted {datetime.fromisoformat(stop['latest_leave']):%H:%M}" in text
        assert f"{datetime.fromisoformat(stop['latest_leave_pessimistic']):%H:%M}" in text
    assert len(re.findall(r"home \d{3}M", text)) == 2  # there is no room for tables of ways home
    assert "HW" in text and "LW" in text and "ALARM" in text and "Weakest stream" in text
    assert "Not on this card: sketch, positions, transits, depths, line, ways home." in text


@needs_poppler
@pytest.mark.parametrize("paper", PAPERS)
def test_the_pdf_is_of_the_paper_asked_for_with_its_fonts_in_it_and_no_picture(plan, tmp_path, paper) -> None:
    pdf = written(plan, tmp_path, PAPER=1 + PAPERS.index(paper))
    width, height = re.search(r"Page size:\s+([\d.]+) x ([\d.]+) pts", poppler("pdfinfo", pdf)).groups()
    assert (float(width) / 72 * 25.4, float(height) / 72 * 25.4) == pytest.approx(SIZES_MM[paper], abs=0.6)
    fonts = [line.split() for line in poppler("pdffonts", pdf).splitlines()[2:]]
    assert fonts and all(font[-5] == "yes" for font in fonts)  # the column "emb"
    assert len(poppler("pdfimages", pdf, "-list").splitlines()) == 2  # its two lines of heads: all is drawn as vectors


@needs_poppler
def test_sides_are_at_most_as_many_as_asked_for(plan, tmp_path) -> None:
    def sides(**parameters: object) -> int:
        pdf = written(plan, tmp_path, PAPER=2, **parameters)
        return int(re.search(r"Pages:\s+(\d+)", poppler("pdfinfo", pdf)).group(1))

    assert sides(SIDES=2) == 2 and 2 <= sides(SIDES=3) <= 4 and 2 <= sides(SIDES=0) <= 4


def test_a_card_that_cannot_have_so_few_sides_is_refused(plan, tmp_path) -> None:
    said = refused(plan, tmp_path, PAPER=1, SIDES=1)
    assert "does not fit A6, 1 side" in said and "no room for a single leg of this swim" in said
    assert "Choose larger paper or more sides; what takes this swim: A6, 2 sides or A5, 1 side" in said


def test_text_and_picture_are_written_with_it(plan, tmp_path) -> None:
    text, png = tmp_path / "card.txt", tmp_path / "card.png"
    written(plan, tmp_path, CARD_TEXT=str(text), CARD_PNG=str(png), PAPER=2)
    assert "TURN BACK BY" in text.read_text(encoding="utf-8") and "HOME from" in text.read_text(encoding="utf-8")
    image = QImage(str(png))
    assert image.width() == pytest.approx(2 * 148.0 / 25.4 * 150 + 12, abs=3)  # two sides beside each other


@needs_poppler
def test_a_card_to_share_says_when_and_not_where(plan, report, tmp_path) -> None:
    text = tmp_path / "card.txt"
    pdf = written(plan, tmp_path, PRIVATE=True, PAPER=2, CARD_TEXT=str(text))
    for told in (poppler("pdftotext", pdf, "-layout"), text.read_text(encoding="utf-8")):
        for leg in report["legs"]:
            arrive = clock_up(datetime.fromisoformat(leg["arrive"]))
            assert arrive in told and leg["to"] in told and leg["card_heading"] not in told
        assert "°" not in told.replace("14.1°W", "") and not re.search(r"\d{3}M|\d{3,4} m\b", told)
        assert "Marks are left out for sharing" in " ".join(told.split()) and "IN LINE" not in told


def test_the_sheet_is_not_written_to_be_shared(plan, tmp_path) -> None:
    asked = {"PLAN": str(plan), **SWIM, "CARD": str(tmp_path / "card.pdf"), "SHEET": str(tmp_path / "sheet.pdf")}
    ok, why = SwimCard().create().checkParameterValues({**asked, "PRIVATE": True}, QgsProcessingContext())
    assert not ok and "leave SHEET empty" in why


def saved(layout, path: Path) -> Path:
    """The layout as a template of the user's."""
    assert layout.saveAsTemplate(str(path), QgsReadWriteContext())
    return path


def own_layout(path: Path, change) -> Path:
    """Tideleg's A4 layout of one side after the user's change, saved as a template."""
    layout = open_template(shipped("A4", 1))
    change(layout, next(item for item in layout.items() if isinstance(item, QgsLayoutItemLabel)))
    return saved(layout, path)


@needs_poppler
def test_a_layout_of_ones_own_is_filled_where_its_frames_stand_and_keeps_what_else_it_holds(plan, tmp_path) -> None:
    def change(layout, frame) -> None:
        frame.setText("Title\nLegs\n\nTurn  back\nflags\nhome by departure\nfoot\ncaution")
        frame.attemptResize(QgsLayoutSize(194.0, 260.0))
        note = QgsLayoutItemLabel(layout)
        note.setText("Spare key under the blue stone")
        layout.addLayoutItem(note)
        note.attemptMove(QgsLayoutPoint(20.0, 280.0))
        note.attemptResize(QgsLayoutSize(150.0, 10.0))

    own = own_layout(tmp_path / "mine.qpt", change)
    text = poppler("pdftotext", written(plan, tmp_path, LAYOUT=str(own)), "-layout")
    assert "Spare key under the blue stone" in text and "350M" in text and "TURN BACK BY" in text
    assert "tideleg" not in text.lower() and "home by departure" not in text


def test_what_is_wrong_with_a_layout_of_ones_own_is_said(plan, tmp_path) -> None:
    def unknown(_layout, frame) -> None:
        frame.setText(frame.text() + "\nweather")

    def without_turn_back(_layout, frame) -> None:
        frame.setText(frame.text().replace("turn back\n", ""))

    def narrow(_layout, frame) -> None:
        frame.attemptResize(QgsLayoutSize(60.0, 280.0))

    def low(_layout, frame) -> None:
        frame.attemptResize(QgsLayoutSize(194.0, 40.0))

    def too_far_left(layout, frame) -> None:
        frame.attemptMove(QgsLayoutPoint(-30.0, 10.0))

    def too_low(layout, frame) -> None:
        frame.attemptMove(QgsLayoutPoint(8.0, 150.0))

    def turned(_layout, frame) -> None:
        frame.setItemRotation(90.0)

    def one_over_the_other(layout, frame) -> None:
        other = QgsLayoutItemLabel(layout)
        other.setId("tideleg 2")
        other.setText("flags")
        layout.addLayoutItem(other)
        other.attemptMove(QgsLayoutPoint(20.0, 20.0))
        other.attemptResize(QgsLayoutSize(100.0, 100.0))

    wrong = {
        too_far_left: "'tideleg 1' .* reaches over the edge of its page",
        too_low: "reaches over the edge of its page",
        turned: "is turned|reaches over the edge",
        one_over_the_other: "'tideleg 2' .* lies over 'tideleg 1'",
        unknown: "names 'weather'.*one part a line, of: title, legs",
        without_turn_back: "no frame for: turn back",
        narrow: "have 60 mm of width.*at least 94 mm",
        low: "does not fit .*no room for 'turn back', the last frame for it is 'tideleg 1'",
    }
    for number, (change, words) in enumerate(wrong.items()):
        own = own_layout(tmp_path / f"own {number}.qpt", change)
        assert re.search(words, refused(plan, tmp_path, LAYOUT=str(own))), change.__name__
    no_xml = tmp_path / "no.qpt"
    no_xml.write_text("not a layout", encoding="utf-8")
    assert "cannot be read: it is not XML" in refused(plan, tmp_path, LAYOUT=str(no_xml))
    no_xml.write_bytes(b"\xff\xfe\x00broken")
    assert "cannot be read" in refused(plan, tmp_path, LAYOUT=str(no_xml))
    assert "cannot be read" in refused(plan, tmp_path, LAYOUT=str(tmp_path / "not there.qpt"))


def test_the_card_is_never_written_over_the_layout_it_is_made_from(plan, tmp_path) -> None:
    own = own_layout(tmp_path / "mine.qpt", lambda _layout, _frame: None)
    before = own.read_bytes()
    ran = run(SwimCard().create(), {"PLAN": str(plan), **SWIM, "CARD": str(own), "LAYOUT": str(own)})
    assert not ran.ok and "reads from" in ran.said and own.read_bytes() == before


def test_parts_go_on_in_the_next_frame_that_names_them(qgis_app, tmp_path) -> None:
    layout = open_template(shipped("A4", 2))
    first, second = sorted(
        (item for item in layout.items() if isinstance(item, QgsLayoutItemLabel)), key=lambda item: item.id()
    )
    first.setText("title\nlegs")
    second.setText("legs\nturn back\nflags\nfoot\ncaution")
    own = saved(layout, tmp_path / "two.qpt")
    texts = {0: [], 1: []}
    card = card_layout(make_plan(legs=20), CardLook(template=own))  # kept: its items go with it
    for item in card.layout.items():
        if isinstance(item, QgsLayoutItemLabel):
            texts[item.page()].append(item.currentText())
    places = {page: [text for text in found if re.search("'N 0", text)] for page, found in texts.items()}
    assert len(places[0]) > 10 and len(places[1]) > 3 and len(places[0]) + len(places[1]) == 20
    assert "HEADING" in texts[0] and "HEADING" in texts[1]


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("sides", SIDES)
def test_the_layouts_that_come_with_tideleg_are_those_its_script_makes(qgis_app, paper, sides) -> None:
    path = shipped(paper, sides)
    frames = take_frames(open_template(path), path)
    assert [frame.page for frame in frames] == list(range(sides)) and {frame.parts for frame in frames} == {PARTS}
    tools = str(ROOT / "tools")
    sys.path.insert(0, tools)
    try:
        from card_templates import template
    finally:
        sys.path.remove(tools)
    fresh = QDomDocument()
    assert fresh.setContent(template(paper, sides))[0]
    rows = [(item.attribute("id"), item.attribute("position"), item.attribute("size")) for item in labels(fresh)]
    stored = QDomDocument()
    assert stored.setContent(path.read_text(encoding="utf-8"))[0]
    assert rows == [
        (item.attribute("id"), item.attribute("position"), item.attribute("size")) for item in labels(stored)
    ]
    assert len(rows) == sides


def labels(document: QDomDocument) -> list:
    found = document.elementsByTagName("LayoutItem")
    items = [found.at(number).toElement() for number in range(found.count())]
    return sorted((item for item in items if item.attribute("id")), key=lambda item: item.attribute("id"))


def test_a_layout_that_is_none_is_refused_by_its_reader(tmp_path) -> None:
    with pytest.raises(CardError, match="print layout template"):
        open_template(tmp_path / "nowhere.qpt")
