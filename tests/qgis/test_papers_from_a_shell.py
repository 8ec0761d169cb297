"""The papers from `qgis_process` on a machine without a display, as a script or a scheduled job would make them."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from made_sample import sample_at

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = shutil.which("qgis_process.bin") or shutil.which("qgis_process")
SWIM = ("ROUTE=Inner reef and home", "SWIMMER=Steady")
pytestmark = pytest.mark.skipif(PROGRAM is None, reason="qgis_process is not installed")


@pytest.fixture(scope="module")
def shell(qgis_app, tmp_path_factory):
    """Runs an algorithm with files in a folder of its own, and no display to be had."""
    folder = tmp_path_factory.mktemp("shell")
    plan = sample_at(folder / "bay.gpkg")
    environment = {name: value for name, value in os.environ.items() if name not in ("DISPLAY", "WAYLAND_DISPLAY")}
    environment |= {
        "PYTHONPATH": os.pathsep.join(path for path in sys.path if path),
        "QGIS_PLUGINPATH": str(ROOT / ".cache" / "python"),
        "QGIS_CUSTOM_CONFIG_PATH": str(folder / "config"),
        "QT_QPA_PLATFORM": "offscreen",
    }

    def called(*words: str) -> subprocess.CompletedProcess:
        return subprocess.run([PROGRAM, *words], env=environment, capture_output=True, text=True, timeout=300)

    assert called("plugins", "enable", "tideleg").returncode == 0

    def run(algorithm: str, *asked: str, fails: bool = False) -> dict[str, bytes]:
        done = called("run", f"tideleg:{algorithm}", "--", f"PLAN={plan}", *SWIM, *asked)
        said = done.stdout + done.stderr
        assert (done.returncode != 0) == fails, said
        assert not fails or ("Results" not in done.stdout and "ERROR" in said), said
        return {path.name: path.read_bytes() for path in folder.iterdir() if path.is_file()}

    return folder, run


def test_card_and_sheet(shell) -> None:
    folder, run = shell
    names = {"CARD": "card.pdf", "CARD_PNG": "card.png", "CARD_TEXT": "card.txt", "SHEET": "sheet.pdf"}
    names["SHEET_HTML"] = "sheet.html"
    outputs = [f"{key}={folder / name}" for key, name in names.items()]
    made = run("swimcard", "DEPART=2027-06-26T10:00", "PAPER=1", *outputs)
    assert made["card.pdf"][:5] == made["sheet.pdf"][:5] == b"%PDF-" and made["card.png"][:4] == b"\x89PNG"
    assert b"TURN BACK BY" in made["card.txt"] and b"<html" in made["sheet.html"]


def test_a_card_that_does_not_fit_its_paper_makes_the_run_fail_and_keeps_no_other_paper_back(shell) -> None:
    folder, run = shell
    names = {"CARD": "none.pdf", "CARD_TEXT": "kept.txt", "SHEET": "kept.pdf"}
    outputs = [f"{key}={folder / name}" for key, name in names.items()]
    made = run("swimcard", "DEPART=2027-06-26T10:00", "PAPER=1", "SIDES=1", *outputs, fails=True)
    assert "none.pdf" not in made and b"TURN BACK BY" in made["kept.txt"] and made["kept.pdf"][:5] == b"%PDF-"


def test_a_card_that_cannot_be_written_makes_planswim_fail_and_nothing_is_left(shell) -> None:
    folder, run = shell
    card = folder / "bay.gpkg" / "card.pdf"  # a file is no folder, on every machine
    made = run("planswim", "DEPART=2027-06-26T10:00", f"CARD={card}", f"REPORT={folder / 'gone.json'}", fails=True)
    assert "gone.json" not in made


def test_a_seasons_cards_that_do_not_fit_make_the_run_fail(shell) -> None:
    folder, run = shell
    span = ("FROM=2027-06-14", "TO=2027-06-14", "STEP=60", "MOST=1", "PAPER=1", "SIDES=1")
    assert "unfit.pdf" not in run("seasoncards", *span, f"CARDS={folder / 'unfit.pdf'}", fails=True)


def test_files_for_a_gps(shell) -> None:
    folder, run = shell
    names = {"GPX": "s.gpx", "KML": "s.kml", "GEOJSON": "s.geojson", "CSV": "s.csv", "TEXT": "s.txt"}
    outputs = [f"{key}={folder / name}" for key, name in names.items()]
    made = run("swimfiles", "DEPART=2027-06-26T10:00", "EVERY_M=300", "NAME_LENGTH=6", "UPPER_CASE=true", *outputs)
    assert b"<name>L1P1</name>" in made["s.gpx"] and b"<kml" in made["s.kml"]
    assert b"FeatureCollection" in made["s.geojson"] and made["s.csv"].startswith(b"number,")
    assert b"TURN BACK BY" in made["s.txt"]


def test_a_seasons_cards(shell) -> None:
    folder, run = shell
    span = ("FROM=2027-06-14", "TO=2027-06-15", "STEP=60", "MOST=2")
    made = run("seasoncards", *span, f"CARDS={folder / 'season.pdf'}")
    assert made["season.pdf"][:5] == b"%PDF-" and len(made["season.pdf"]) > 20_000
