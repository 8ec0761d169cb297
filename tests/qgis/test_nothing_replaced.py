"""No output takes the place of a plan, of what lies beside one, and edits that are not saved are told of."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest
from qgis.core import QgsProject
from swims import DEPART, Heard, digest, invented_bay, run, swim
from tideleg.plan_package.store import open_layer
from tideleg.processing.transits import TransitsOfMarks


@pytest.fixture
def plan(qgis_app: object, tmp_path: Path) -> Path:
    return invented_bay(tmp_path / "bay.gpkg")


@pytest.mark.parametrize("output", ["CARD", "REPORT", "GPX", "CSV", "LEGS"])
def test_another_plan_is_never_replaced_by_an_output(plan: Path, output: str) -> None:
    other = Path(shutil.copy(plan, plan.parent / "other.gpkg"))
    before = digest(other)
    ran = swim(plan, plan.parent, ROUTE="Ledge", DEPART=DEPART, **{output: str(other)})
    assert not ran.ok and "which is a plan" in ran.said
    assert digest(other) == before


@pytest.mark.parametrize("ending", ["-wal", "-shm", "-journal"])
def test_the_journal_of_the_plan_is_no_place_for_an_output(plan: Path, ending: str) -> None:
    ran = swim(plan, plan.parent, ROUTE="Ledge", DEPART=DEPART, CSV=f"{plan}{ending}")
    assert not ran.ok and "which this run reads from" in ran.said
    assert not Path(f"{plan}{ending}").exists()


def test_edits_that_are_not_saved_are_told_of_and_not_counted(plan: Path) -> None:
    marks = open_layer(plan, "marks")
    QgsProject.instance().addMapLayer(marks)
    try:
        saved = swim(plan, plan.parent, ROUTE="Ledge", DEPART=DEPART)
        assert not any("not saved" in one for one in saved.warnings)
        marks.startEditing()
        row = next(marks.getFeatures())
        marks.changeAttributeValue(row.id(), marks.fields().indexOf("stay_min"), 77.0)
        ran = swim(plan, plan.parent, Heard(), ROUTE="Ledge", DEPART=DEPART)
        assert ran.ok and any("not saved yet" in one and marks.name() in one for one in ran.warnings)
        assert ran.report["legs"] == saved.report["legs"]
        assert marks.isModified()
        marks.rollBack()
    finally:
        QgsProject.instance().removeMapLayer(marks.id())


def test_the_file_of_a_layer_that_is_given_is_no_place_for_an_output(plan: Path) -> None:
    landmarks = plan.parent / "landmarks.geojson"
    rows = [((-28.50, 42.41), "Church"), ((-28.49, 42.42), "Mast")]
    features = [
        {"type": "Feature", "properties": {"name": name}, "geometry": {"type": "Point", "coordinates": place}}
        for place, name in rows
    ]
    landmarks.write_text(json.dumps({"type": "FeatureCollection", "features": features}), encoding="utf-8")
    before = landmarks.read_bytes()
    asked = {"PLAN": str(plan), "LANDMARKS": str(landmarks), "DATE": "2027-06-26", "REPORT": str(landmarks)}
    ran = run(TransitsOfMarks().create(), asked)
    assert not ran.ok and "reads from" in ran.said
    assert landmarks.read_bytes() == before
