"""tideleg:seasoncards: one PDF with the cards of the best days, read again by poppler, and chained in a model."""

from __future__ import annotations

import re
import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest
from made_sample import sample_at
from qgis.core import (
    QgsApplication,
    QgsProcessingContext,
    QgsProcessingModelAlgorithm,
    QgsProcessingModelChildAlgorithm,
    QgsProcessingModelChildParameterSource,
    QgsProcessingModelOutput,
    QgsProcessingModelParameter,
    QgsProcessingParameterString,
    QgsProject,
)
from swims import Heard, edited, run
from tideleg.processing.departurewindows import DepartureWindows
from tideleg.processing.planswim import PlanSwim
from tideleg.processing.provider import TidelegProvider
from tideleg.processing.seasoncards import SeasonCards

ROOT = Path(__file__).resolve().parents[2]
SPAN = {
    "ROUTE": "Inner reef and home",
    "FROM": "2027-06-14",
    "TO": "2027-06-17",
    "SWIMMER": "Steady",
    "STEP": 30,
    "LEAST": 0,
}
pytestmark = pytest.mark.skipif(not shutil.which("pdftotext"), reason="needs poppler's pdftotext")


@pytest.fixture
def plan(qgis_app, tmp_path: Path) -> Path:
    return sample_at(tmp_path / "bay.gpkg")


def pages(pdf: Path) -> list[str]:
    told = subprocess.run(["pdftotext", "-layout", str(pdf), "-"], check=True, capture_output=True, text=True)
    return told.stdout.split("\f")[:-1]


def test_the_best_days_have_their_cards_in_order_with_the_numbers_of_planswim(plan: Path, tmp_path: Path) -> None:
    pdf = tmp_path / "season.pdf"
    about = {"MOST": 3, "EACH": 1, "PAPER": 2}
    ran = run(SeasonCards().create(), {"PLAN": str(plan), **SPAN, **about, "CARDS": str(pdf)})
    assert ran.ok, ran.said
    found = run(DepartureWindows().create(), {"PLAN": str(plan), **SPAN, "REPORT": str(tmp_path / "windows.json")})
    best = sorted(day["best"] for day in found.report["days"][:3])
    assert ran.results["COUNT"] == len(best) == 3
    firsts = [page for page in pages(pdf)[1:] if "Atlantic/Bermuda" in page]
    assert [re.search(r"\d{4}-\d\d-\d\d", page).group() for page in firsts] == [moment[:10] for moment in best]
    for moment, page in zip(best, firsts):
        swum = run(
            PlanSwim().create(),
            {
                "PLAN": str(plan),
                "ROUTE": SPAN["ROUTE"],
                "SWIMMER": "Steady",
                "DEPART": moment,
                "REPORT": str(tmp_path / "r.json"),
            },
        )
        assert swum.report["legs"][0]["card_heading"] in page and moment[11:16] in page


def test_every_window_of_a_day_has_a_card_and_the_contents_name_its_page(plan: Path, tmp_path: Path) -> None:
    pdf, span = tmp_path / "season.pdf", {**SPAN, "FROM": "2027-06-25", "TO": "2027-06-27", "STEP": 10}
    ran = run(SeasonCards().create(), {"PLAN": str(plan), **span, "PAPER": 2, "CARDS": str(pdf)})
    assert ran.ok, ran.said
    found = run(DepartureWindows().create(), {"PLAN": str(plan), **span, "REPORT": str(tmp_path / "windows.json")})
    windows = found.report["windows"]
    assert len(windows) > len({window["first"][:10] for window in windows})  # a day has two of them
    assert ran.results["COUNT"] == len(windows)
    contents, *cards = pages(pdf)
    told = " ".join(contents.split())
    firsts = [number for number, page in enumerate(cards, start=2) if "Atlantic/Bermuda" in page]
    assert len(firsts) == len(windows)
    for window, number in zip(windows, firsts):
        clocks = f"leave {window['first'][11:16]} to {window['last'][11:16]}"
        assert f"{window['best'][:10]} {number} {clocks}" in told


def test_short_windows_are_left_out_when_asked(plan: Path, tmp_path: Path) -> None:
    pdf = tmp_path / "season.pdf"
    ran = run(SeasonCards().create(), {"PLAN": str(plan), **SPAN, "LEAST": 1440, "CARDS": str(pdf)})
    assert not ran.ok and "Every window of this span is shorter" in ran.said and not pdf.exists()


def test_a_window_in_which_no_departure_leaves_every_stop_in_time_is_told_as_late(plan: Path, tmp_path: Path) -> None:
    edited(plan, "marks", {"stay_min": 50.0}, "kind = 'mark'")
    pdf, span = tmp_path / "season.pdf", {**SPAN, "FROM": "2027-06-25", "TO": "2027-06-26", "STEP": 10}
    ran = run(SeasonCards().create(), {"PLAN": str(plan), **span, "CARDS": str(pdf)})
    assert ran.ok, ran.said
    told = " ".join(pages(pdf)[0].split())
    late, good = told.split("leave 04:40")[1].split("leave 08:")  # the morning's window is too short for such stays
    assert "LATE: no departure" in late and "LATE" not in good


def test_its_fonts_are_in_the_pdf_and_nothing_is_a_picture(plan: Path, tmp_path: Path) -> None:
    pdf = tmp_path / "season.pdf"
    run(SeasonCards().create(), {"PLAN": str(plan), **SPAN, "MOST": 1, "PAPER": 3, "CARDS": str(pdf)})
    told = subprocess.run(["pdfinfo", str(pdf)], check=True, capture_output=True, text=True).stdout
    width, height = map(float, re.search(r"Page size: +([\d.]+) x ([\d.]+)", told).groups())
    assert (width / 72 * 25.4, height / 72 * 25.4) == pytest.approx((210.0, 297.0), abs=0.6)
    pictures = subprocess.run(["pdfimages", "-list", str(pdf)], check=True, capture_output=True, text=True).stdout
    assert len(pictures.splitlines()) == 2  # its heads


def test_cards_to_share_have_no_headings_and_no_positions(plan: Path, tmp_path: Path) -> None:
    pdf = tmp_path / "shared.pdf"
    about = {"TO": "2027-06-14", "MOST": 1, "PRIVATE": True}
    ran = run(SeasonCards().create(), {"PLAN": str(plan), **SPAN, **about, "CARDS": str(pdf)})
    assert ran.ok, ran.said
    text = " ".join(" ".join(pages(pdf)).split())
    assert "Marks are left out" in text and not re.search(r"\b\d{3}M\b|\d\d°\d\d\.\d{3}", text)


def test_a_span_without_a_window_writes_nothing_and_says_why(plan: Path, tmp_path: Path) -> None:
    pdf = tmp_path / "season.pdf"
    asked = {**SPAN, "FROM": "2031-01-01", "TO": "2031-01-02", "CARDS": str(pdf)}
    ran = run(SeasonCards().create(), {"PLAN": str(plan), **asked})
    assert not ran.ok and "No departure of this span can be swum" in ran.said and not pdf.exists()


def test_a_run_that_is_stopped_writes_nothing(plan: Path, tmp_path: Path) -> None:
    class Stopped(Heard):
        def pushInfo(self, info: str) -> None:
            self.cancel()  # after the first day

    pdf = tmp_path / "season.pdf"
    run(SeasonCards().create(), {"PLAN": str(plan), **SPAN, "CARDS": str(pdf)}, Stopped())
    assert not pdf.exists()


def step(kind: str, child: str, **sources: object) -> QgsProcessingModelChildAlgorithm:
    """A step of a model; what is not a source of a model already is a fixed value."""
    made = QgsProcessingModelChildAlgorithm(f"tideleg:{kind}")
    made.setChildId(child)
    for name, source in sources.items():
        fixed = not isinstance(source, QgsProcessingModelChildParameterSource)
        made.addParameterSources(name, [Source.fromStaticValue(source) if fixed else source])
    return made


def final(child: str, name: str) -> QgsProcessingModelOutput:
    output = QgsProcessingModelOutput(f"{child} {name}", f"{child} {name}")
    output.setChildId(child)
    output.setChildOutputName(name)
    return output


Source = QgsProcessingModelChildParameterSource


@pytest.fixture
def provider(qgis_app) -> Iterator[None]:
    added = TidelegProvider()
    QgsApplication.processingRegistry().addProvider(added)
    yield
    QgsApplication.processingRegistry().removeProvider(added)


def test_a_path_is_found_swum_and_put_on_a_card_by_one_model(provider, plan: Path, tmp_path: Path) -> None:
    model = QgsProcessingModelAlgorithm("Quickest way on a card", "trial")
    model.addModelParameter(QgsProcessingParameterString("depart", "depart"), QgsProcessingModelParameter("depart"))
    depart = Source.fromModelParameter("depart")
    places = {"START": "-50.0,36.0003 [EPSG:4326]", "END": "-50.00293,36.01233 [EPSG:4326]"}
    path = step("fastestpath", "path", PLAN=str(plan), DEPART=depart, **places)
    swim = step("planswim", "swim", PLAN=str(plan), DEPART=depart, ROUTES=Source.fromChildOutput("path", "ROUTE"))
    swim.setModelOutputs({name: final("swim", name) for name in ("CARD", "REPORT")})
    for child in (path, swim):
        model.addChildAlgorithm(child)
    model.updateDestinationParameters()
    asked = {one.name(): str(tmp_path / f"out {n}") for n, one in enumerate(model.destinationParameterDefinitions())}
    assert len(asked) == 2
    context = QgsProcessingContext()
    context.setProject(QgsProject.instance())
    heard = Heard()
    results, ok = model.run({"depart": "2027-06-26T10:00", **asked}, context, heard)
    assert ok, heard.errors
    made = sorted(Path(file).read_bytes()[:4] for file in asked.values())
    assert made[0] == b"%PDF" and made[1].startswith(b"{"), results
