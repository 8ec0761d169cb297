"""`tideleg:transits` on real plan files and layers: what it writes, keeps, refuses and says."""

from __future__ import annotations

import json
from datetime import datetime, timezone
from pathlib import Path

import pytest
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsFeature,
    QgsGeometry,
    QgsPointXY,
    QgsProject,
    QgsVectorLayer,
)
from swims import DAY, GEOD, LAT, LON, Heard, new_plan, offset
from swims import run as run_algorithm
from tideleg.layers_in.swim_in import SwimAsked, request_from
from tideleg.layers_out.transits_layer import TRANSITS, style_transits
from tideleg.plan_package.store import append_rows
from tideleg.processing.transits import TransitsOfMarks

SILL = offset(0.0, 1000.0)
# Bearing and metres from the mark: two lines that cross squarely, and one thing that stands for itself.
THINGS = {
    "Post": (5.0, 600.0),
    "Mill": (5.0, 1900.0),
    "Barn": (95.5, 700.0),
    "Spire": (95.5, 2400.0),
    "Tank": (200.0, 1500.0),
}


def seen_from(place: tuple[float, float], bearing: float, metres: float) -> tuple[float, float]:
    lon, lat, _ = GEOD.fwd(*place, bearing, metres)
    return lon, lat


def point(place: tuple[float, float]) -> QgsGeometry:
    return QgsGeometry.fromPointXY(QgsPointXY(*place))


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    """A beach, a mark, one far off without landmarks near, and five things ashore."""
    path = new_plan(tmp_path / "plan.gpkg")
    far = seen_from(SILL, 270.0, 40_000.0)
    marks = [((LON, LAT), "Beach", "entry"), (SILL, "Sill", "mark"), (far, "Lost Rock", "mark")]
    append_rows(path, "marks", [(point(place), {"name": name, "kind": kind}) for place, name, kind in marks])
    rows = [(point(seen_from(SILL, *at)), {"name": name}) for name, at in THINGS.items()]
    append_rows(path, "landmarks", rows)
    return path


def run(plan: Path, folder: Path, feedback: Heard | None = None, **parameters: object):
    asked = {"PLAN": str(plan), "DATE": DAY, "REPORT": str(folder / "report.json"), **parameters}
    return run_algorithm(TransitsOfMarks().create(), asked, feedback)


def rows(path: Path | str, name: str) -> list[QgsFeature]:
    layer = QgsVectorLayer(f"{path}|layername={name}", name, "ogr")
    assert layer.isValid()
    return list(layer.getFeatures())


def test_pairs_come_as_lines_with_every_number_and_in_the_report(plan: Path, tmp_path: Path) -> None:
    out = tmp_path / "out.gpkg"
    ran = run(plan, tmp_path, TRANSITS=str(out))
    assert ran.ok, ran.said
    assert (ran.results["PAIRS"], ran.results["KEPT"]) == (1, 0)
    lines = rows(out, "out")
    assert [(line["mark"], line["rank"], line["pair"]) for line in lines] == [("Sill", 1, 1)] * 2
    north = next(line for line in lines if line["front"] == "Post")
    assert north["rear"] == "Mill"
    assert north["bearing_true_deg"] == pytest.approx(5.0, abs=0.01)
    assert north["bearing_mag_deg"] == pytest.approx(9.0, abs=0.1)  # 4 W here and then
    assert north["crossing_deg"] == pytest.approx(89.5, abs=0.02)
    assert north["offset_m"] == pytest.approx(0.0, abs=0.1)
    assert "Post in line with Mill, 009 magnetic" in north["words"]
    begin, front, rear = north.geometry().asPolyline()
    assert GEOD.inv(begin.x(), begin.y(), *SILL)[2] < 0.1
    assert GEOD.inv(begin.x(), begin.y(), rear.x(), rear.y())[2] == pytest.approx(1900.0, abs=0.5)
    told = ran.report
    sill, lost = told["marks"]
    assert sill["fixes"][0]["crossing_deg"] == pytest.approx(89.5, abs=0.02)
    assert lost["fixes"] == [] and "0 of 5 landmarks" in lost["reason"]
    assert told["landmarks"] == 5 and any("may hide it" in words for words in told["warnings"])


def test_what_is_not_found_is_said_to_the_user(plan: Path, tmp_path: Path) -> None:
    ran = run(plan, tmp_path)
    assert any("Lost Rock" in words and "Add landmarks" in words for words in ran.warnings)
    assert any("higher land" in words for words in ran.warnings)


def test_one_mark_is_asked_by_name_of_any_kind(plan: Path, tmp_path: Path) -> None:
    ran = run(plan, tmp_path, MARK="Beach")
    assert ran.ok and [mark["mark"] for mark in ran.report["marks"]] == ["Beach"]
    refused = run(plan, tmp_path, MARK="Sil")
    assert not refused.ok and "'Sil'" in refused.said and "Beach, Sill, Lost Rock" in refused.said


def test_kept_pair_stands_in_the_plan_once_and_swims_read_it(plan: Path, tmp_path: Path) -> None:
    ran = run(plan, tmp_path, KEEP=True)
    assert ran.ok and ran.results["KEPT"] == 2
    kept = [(row["mark"], row["front"], row["rear"]) for row in rows(plan, "transits")]
    assert sorted(kept) == [("Sill", "Barn", "Spire"), ("Sill", "Post", "Mill")]
    assert len(rows(plan, "landmarks")) == 5
    again = run(plan, tmp_path, KEEP=True)
    assert again.ok and again.results["KEPT"] == 0
    assert any("Sill" in words and "has some already" in words for words in again.warnings)
    assert len(rows(plan, "transits")) == 2
    line = QgsGeometry.fromPolylineXY([QgsPointXY(LON, LAT), QgsPointXY(*SILL), QgsPointXY(LON, LAT)])
    append_rows(plan, "routes", [(line, {"name": "Out"})])
    request = request_from(plan, {}, SwimAsked(depart=f"{DAY}T10:00"))
    assert len(request.transits) == 2 and not any("ransit" in words for words in request.warnings)


def other_layer(field: str, names: list[object], crs: str = "EPSG:4326", places=None) -> QgsVectorLayer:
    layer = QgsVectorLayer(f"Point?crs={crs}&field=id:integer&field={field}:string", "things", "memory")
    places = places or [seen_from(SILL, *at) for at in THINGS.values()]
    features = []
    for number, (name, place) in enumerate(zip(names, places)):
        feature = QgsFeature(layer.fields())
        feature.setAttributes([number, name])
        feature.setGeometry(point(place))
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    return layer


@pytest.mark.parametrize("field", ["name", "NAME", "what"])
def test_any_point_layer_serves_by_its_names_and_what_is_kept_of_it_goes_into_the_plan(plan, tmp_path, field) -> None:
    names = [f"New {name}" for name in THINGS]
    layer = other_layer(field, [*names[:4], None])
    ran = run(plan, tmp_path, LANDMARKS=layer, KEEP=True)
    assert ran.ok, ran.said
    assert ran.report["landmarks"] == 4
    assert any("1 of 5 rows give no landmark" in words for words in ran.warnings)
    assert [row["name"] for row in rows(plan, "landmarks")][:5] == list(THINGS)
    assert {row["name"] for row in rows(plan, "landmarks")} == {*THINGS, *names[:4]}
    assert {row["rear"] for row in rows(plan, "transits")} == {"New Mill", "New Spire"}


def test_layer_in_another_system_is_brought_over_and_one_without_is_refused(plan: Path, tmp_path: Path) -> None:
    mercator = QgsCoordinateReferenceSystem("EPSG:3857")
    over = QgsCoordinateTransform(QgsCoordinateReferenceSystem("EPSG:4326"), mercator, QgsProject.instance())
    degrees = [seen_from(SILL, *at) for at in THINGS.values()]
    places = [(p.x(), p.y()) for p in (over.transform(QgsPointXY(*place)) for place in degrees)]
    ran = run(plan, tmp_path, LANDMARKS=other_layer("name", list(THINGS), "EPSG:3857", places))
    assert ran.ok and ran.report["marks"][0]["fixes"][0]["crossing_deg"] == pytest.approx(89.5, abs=0.02)
    bare = other_layer("name", list(THINGS))
    bare.setCrs(QgsCoordinateReferenceSystem())
    refused = run(plan, tmp_path, LANDMARKS=bare)
    assert not refused.ok and "coordinate reference system" in refused.said


def test_layer_without_a_text_is_refused_by_name(plan: Path, tmp_path: Path) -> None:
    layer = QgsVectorLayer("Point?crs=EPSG:4326&field=id:integer", "numbers only", "memory")
    refused = run(plan, tmp_path, LANDMARKS=layer)
    assert not refused.ok and "numbers only" in refused.said and "field of text" in refused.said


def test_landmark_called_like_another_of_the_plan_is_not_kept(plan: Path, tmp_path: Path) -> None:
    moved = [seen_from(SILL, bearing, metres + 40.0) for bearing, metres in THINGS.values()]
    ran = run(plan, tmp_path, LANDMARKS=other_layer("name", list(THINGS), places=moved), KEEP=True)
    assert ran.ok and ran.results["KEPT"] == 0 and rows(plan, "transits") == []
    assert any("another landmark called" in words and "40 m" in words for words in ran.warnings)
    twice = run(plan, tmp_path, LANDMARKS=other_layer("name", ["Post", "Mill", "Barn", "Post", "Mill"]), KEEP=True)
    assert twice.ok and twice.results["KEPT"] == 0
    assert any("2 landmarks are called" in words for words in twice.warnings)


def test_outputs_that_cannot_be_written_leave_the_plan_as_it_was(plan: Path, tmp_path: Path) -> None:
    before = plan.read_bytes()
    (tmp_path / "folder").mkdir()
    refused = run(plan, tmp_path, KEEP=True, REPORT=str(tmp_path / "folder"))
    assert not refused.ok
    assert rows(plan, "transits") == [] and len(before) == plan.stat().st_size
    assert not run(plan, tmp_path, KEEP=True, TRANSITS=str(plan)).ok
    assert rows(plan, "transits") == []


def test_stopped_run_writes_nothing(plan: Path, tmp_path: Path) -> None:
    heard = Heard()
    heard.cancel()
    ran = run(plan, tmp_path, heard, KEEP=True)
    assert not ran.ok and rows(plan, "transits") == [] and not (tmp_path / "report.json").exists()


@pytest.mark.parametrize(
    ("parameters", "words"),
    [({"DATE": "tomorrow"}, "year-month-day"), ({"DATE": "2040-01-01"}, "2029"), ({"OFFSET": 500}, "OFFSET")],
)
def test_what_cannot_be_meant_is_refused(plan: Path, tmp_path: Path, parameters, words) -> None:
    refused = run(plan, tmp_path, **parameters)
    assert not refused.ok and words in refused.said


def test_empty_date_is_today(plan: Path, tmp_path: Path) -> None:
    ran = run(plan, tmp_path, DATE="")
    assert ran.ok, ran.said
    assert abs(datetime.fromisoformat(ran.report["date"]) - datetime.now(timezone.utc)).total_seconds() < 3600.0


def test_plan_without_landmarks_says_what_to_do(tmp_path: Path) -> None:
    path = new_plan(tmp_path / "bare.gpkg")
    append_rows(path, "marks", [(point(SILL), {"name": "Sill"})])
    ran = run(path, tmp_path, KEEP=True)
    assert ran.ok and ran.results["PAIRS"] == 0
    assert any("there are no landmarks" in words for words in ran.warnings)
    assert any("no pair was found" in words for words in ran.warnings)
    assert json.loads((tmp_path / "report.json").read_text())["marks"][0]["singles"] == []


def test_lines_are_dashed_and_told_beside_the_mouse_with_the_users_letters_as_written() -> None:
    layer = QgsVectorLayer("LineString?crs=EPSG:4326&field=mark:string&field=words:string", "t", "memory")
    style_transits(layer)
    symbol = layer.renderer().symbol().symbolLayer(0)
    assert symbol.useCustomDashPattern()
    assert "&amp;" in layer.mapTipTemplate()
    assert TRANSITS.fields().names()[:3] == ["mark", "rank", "pair"]
