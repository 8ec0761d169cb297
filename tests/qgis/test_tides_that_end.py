"""Where the tide table ends, what floats there is not known: the papers come all the same and say so."""

from __future__ import annotations

import subprocess
from pathlib import Path

import pytest
from made_sample import sample_at
from qgis.core import QgsVectorLayer
from swims import run
from tideleg.processing.confidence import Confidence
from tideleg.processing.swimcard import SwimCard

SWIM = {"ROUTE": "Inner reef and home", "SWIMMER": "Steady"}
BEYOND = "2028-01-26T10:00"  # a day of which the sample has no tides
LAST = "2027-06-26T19:00:00Z"  # after the day's last low water


def papers(plan: Path, depart: str) -> dict[str, str]:
    """Card and sheet in words, by file."""
    paths = {name: plan.with_name(name) for name in ("card.pdf", "card.txt", "sheet.pdf", "sheet.html")}
    keys = dict(zip(("CARD", "CARD_TEXT", "SHEET", "SHEET_HTML"), map(str, paths.values())))
    ran = run(SwimCard().create(), {"PLAN": str(plan), **SWIM, "DEPART": depart, **keys})
    assert ran.ok, ran.said
    return {"feasible": ran.results["FEASIBLE"], **{name: words_of(path) for name, path in paths.items()}}


def words_of(path: Path) -> str:
    if path.suffix != ".pdf":
        return path.read_text(encoding="utf-8")
    asked = ["pdftotext", "-layout", str(path), "-"]
    return subprocess.run(asked, capture_output=True, text=True, check=True).stdout


@pytest.fixture
def plan(qgis_app, tmp_path: Path) -> Path:
    return sample_at(tmp_path / "bay.gpkg")


@pytest.fixture
def plan_of_the_day(plan: Path) -> Path:
    """The sample with the tides of the swim's day alone, as one who types them in has it."""
    tides = QgsVectorLayer(f"{plan}|layername=tides", "tides", "ogr")
    assert tides.startEditing()
    for row in list(tides.getFeatures(f"\"time\" > '{LAST}'")):
        assert tides.deleteFeature(row.id())
    assert tides.commitChanges()
    return plan


def test_a_swim_on_a_day_without_tides_has_its_papers_and_they_say_that_nothing_is_known(plan: Path) -> None:
    found = papers(plan, BEYOND)
    assert found["feasible"] is False
    for name in ("card.pdf", "card.txt", "sheet.pdf", "sheet.html"):
        assert "NOT FEASIBLE" in found[name], name
    assert "NOT SWIMMABLE" in found["card.txt"] and "not known: the stream" in found["sheet.html"]
    assert "within" not in found["sheet.html"]  # no area of a drift in a stream that is not known


def test_a_swim_whose_drift_runs_past_the_table_says_not_known_and_keeps_its_times(plan_of_the_day: Path) -> None:
    found = papers(plan_of_the_day, "2027-06-26T12:00")
    assert found["feasible"] is True and "TURN BACK BY" in found["card.txt"]
    after = found["sheet.html"].split("anywhere on the swim")[1].split("</tr>")[0]
    assert after.count("not known: the stream there is not known") == 3
    assert "within" in found["sheet.html"]  # the drift of the first stops is known


def test_how_sure_a_swim_is_without_tides_is_not_known(plan: Path) -> None:
    report = plan.with_name("sure.json")
    ran = run(Confidence().create(), {"PLAN": str(plan), **SWIM, "DEPART": BEYOND, "REPORT": str(report)})
    assert ran.ok, ran.said
    assert any("not known" in words for words in ran.warnings)
