"""`tideleg:readchart` on charted landmarks of an invented sea: what each becomes, once, and by which name."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from invented_cell import InventedCell
from osgeo import gdal
from qgis.core import QgsFeature, QgsProcessingContext, QgsProcessingFeedback, QgsVectorLayer
from tideleg.core.chart import landmark_classes
from tideleg.core.chart.landmark_classes import CATLMK, CATSIL, FUNCTN, kind_and_words
from tideleg.layers_in.chart_landmarks import minutes_text
from tideleg.plan_package.store import create_plan
from tideleg.processing.readchart import ReadChart

HERE = "-30.1,-29.9,29.9,30.1 [EPSG:4326]"


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    return create_plan(tmp_path / "plan.gpkg")


@pytest.fixture
def cell(tmp_path: Path) -> Path:
    """INVENTED - NOT FOR NAVIGATION: things that stand and things that float at 30 N 30 W."""
    path = tmp_path / "IX4LANDM.000"
    with InventedCell(path) as sea:
        sea.box("M_COVR", -30.1, 29.9, -29.9, 30.1, CATCOV=1)
        sea.point("LNDMRK", -30.01, 30.01, OBJNAM="Gannet Mill", CATLMK=["18"], CONVIS=1, HEIGHT=31.5)
        sea.point("LNDMRK", -30.02, 30.01, CATLMK=["17"], FUNCTN=["20"], CONVIS=1, INFORM="Slate roof.")
        sea.point("LNDMRK", -30.03, 30.01, CATLMK=["17"], FUNCTN=["33"], OBJNAM="Sill Light")
        sea.point("LIGHTS", -30.03, 30.01, HEIGHT=24.0)
        sea.point("LIGHTS", -30.03, 30.01, HEIGHT=20.0)
        sea.point("LNDMRK", -30.04, 30.01, INFORM="Boathouse", CONVIS=2)
        sea.point("LNDMRK", -30.05, 30.01)
        sea.box("LNDMRK", -30.021, 30.02, -30.019, 30.022, CATLMK=["9"], OBJNAM="Old Fort")
        sea.point("LIGHTS", -30.02, 30.021)
        sea.point("BCNLAT", -30.01, 30.03, OBJNAM="No. 3 Beacon")
        sea.point("LIGHTS", -30.01, 30.03)
        sea.point("BCNSPP", -30.02, 30.03)
        sea.point("BUISGL", -30.01, 30.04, CONVIS=1, FUNCTN=["7"])
        sea.point("BUISGL", -30.02, 30.04, FUNCTN=["7"])
        sea.point("BUISGL", -30.03, 30.04, CONVIS=2, OBJNAM="Shed")
        sea.point("SILTNK", -30.01, 30.05, CATSIL=4)
        sea.point("SILTNK", -30.02, 30.05)
        sea.point("BOYLAT", -30.01, 30.06, OBJNAM="No. 1")
        sea.point("LIGHTS", -30.01, 30.06)
        sea.point("LIGHTS", -30.02, 30.06, HEIGHT=6.0)
        sea.point("LNDMRK", -29.5, 30.0, OBJNAM="Outside", CATLMK=["3"])
    return path


def read(plan: Path, cell: Path, **parameters: object) -> dict:
    report = plan.with_name("report.json")
    algorithm, context = ReadChart().create(), QgsProcessingContext()
    asked = {"PLAN": str(plan), "CHART": str(cell), "REPORT": str(report), **parameters}
    assert algorithm.checkParameterValues(asked, context) == (True, "")
    _, done = algorithm.run(asked, context, QgsProcessingFeedback(), {}, False)
    assert done
    return json.loads(report.read_text(encoding="utf-8"))


def landmarks(plan: Path) -> dict[str, QgsFeature]:
    layer = QgsVectorLayer(f"{plan}|layername=landmarks", "landmarks", "ogr")
    found = {feature["name"]: feature for feature in layer.getFeatures()}
    assert len(found) == layer.featureCount()
    return found


def test_each_thing_that_stands_comes_once_with_a_name(plan: Path, cell: Path) -> None:
    report = read(plan, cell, EXTENT=HERE)
    assert set(landmarks(plan)) == {
        "Gannet Mill",
        "church tower 00.600N 01.200W",
        "Sill Light",
        "Boathouse 00.600N 02.400W",
        "Old Fort",
        "No. 3 Beacon",
        "beacon 01.800N 01.200W",
        "hotel 02.400N 00.600W",
        "water tower 03.000N 00.600W",
        "tank or silo 03.000N 01.200W",
        "light 03.600N 01.200W",
    }
    counted = report["classes"]
    assert counted["LNDMRK"]["clipped_away"] == 1
    assert counted["LNDMRK"]["skipped"] == {"neither a name nor a kind charted": 1}
    assert counted["BUISGL"]["skipped"] == {"building that is not charted as conspicuous": 2}
    assert counted["LIGHTS"]["skipped"] == {
        "part of a landmark already read": 4,
        "light on something that floats": 1,
    }
    assert report["unread_classes"] == {"BOYLAT": 1, "M_COVR": 1}


def test_kind_height_and_what_the_chart_says_are_kept(plan: Path, cell: Path) -> None:
    read(plan, cell)
    found = landmarks(plan)
    assert (found["Gannet Mill"]["kind"], found["Gannet Mill"]["height_m"]) == ("windmill", 31.5)
    assert found["Gannet Mill"]["note"] == "conspicuous"
    assert found["church tower 00.600N 01.200W"]["kind"] == "spire"
    assert found["church tower 00.600N 01.200W"]["note"] == "conspicuous; Slate roof"
    assert (found["Sill Light"]["kind"], found["Sill Light"]["height_m"]) == ("light", None)
    assert found["Boathouse 00.600N 02.400W"]["note"] == "not conspicuous"
    assert found["light 03.600N 01.200W"]["note"] == "what carries the light is not charted"
    fort = found["Old Fort"].geometry().asPoint()
    assert -30.021 < fort.x() < -30.019 and 30.02 < fort.y() < 30.022
    assert "Outside" in found


def test_reading_again_another_extent_adds_only_what_is_new(plan: Path, cell: Path) -> None:
    read(plan, cell, EXTENT="-30.02,-29.9,29.9,30.1 [EPSG:4326]")  # through the middle of the fort
    first = set(landmarks(plan))
    assert "Old Fort" in first and "Sill Light" not in first
    read(plan, cell)
    assert len(landmarks(plan)) == 12
    assert read(plan, cell)["layers"]["landmarks"] == {"written": 0, "already_there": 12}


def test_plan_made_before_it_could_hold_landmarks_gets_the_rest_and_says_so(plan: Path, cell: Path) -> None:
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_UPDATE)
    dataset.ExecuteSQL("DROP TABLE landmarks")
    dataset = None
    with InventedCell(cell.with_name("IX4MIXED.000")) as sea:
        sea.point("LNDMRK", -30.01, 30.01, OBJNAM="Gannet Mill", CATLMK=["18"])
        sea.soundings([(-30.01, 30.02, 4.5)])
    report = read(plan, cell.with_name("IX4MIXED.000"))
    assert report["layers"] == {"soundings": {"written": 1, "already_there": 0}}
    assert any("no layer 'landmarks'" in warning and "1 landmarks" in warning for warning in report["warnings"])


def test_ordinary_layer_goes_into_landmarks_by_its_fields(plan: Path) -> None:
    layer = QgsVectorLayer("Point?crs=EPSG:4326&field=OBJNAM:string&field=FEET:double", "things", "memory")
    feature = QgsFeature(layer.fields())
    feature.setAttributes(["Water Tank", 100.0])
    from qgis.core import QgsGeometry

    feature.setGeometry(QgsGeometry.fromWkt("Point (-30 30)"))
    layer.dataProvider().addFeature(feature)
    algorithm, context = ReadChart().create(), QgsProcessingContext()
    fields = "name = OBJNAM; height_m = FEET * 0.3048; kind = 'tank'"
    asked = {"PLAN": str(plan), "LAYER": layer, "INTO": "landmarks", "FIELDS": fields}
    assert algorithm.checkParameterValues(asked, context) == (True, "")
    _, done = algorithm.run(asked, context, QgsProcessingFeedback(), {}, False)
    assert done
    [row] = landmarks(plan).values()
    assert (row["name"], row["kind"], row["height_m"]) == ("Water Tank", "tank", pytest.approx(30.48))


def gdal_codes(attribute: str) -> dict[int, str]:
    """Code and meaning of an attribute as GDAL ships them, out of the S-57 object catalogue."""
    folder = Path(gdal.FindFile("gdal", "s57attributes.csv")).parent
    names = [line.split(",") for line in (folder / "s57attributes.csv").read_text(encoding="latin-1").splitlines()]
    [number] = [row[0] for row in names if len(row) > 2 and row[2].strip('"') == attribute]
    listed = (folder / "s57expectedinput.csv").read_text(encoding="latin-1").splitlines()
    rows = [line.split(",", 2) for line in listed if line.startswith(f"{number},")]
    return {int(row[1]): row[2].strip().strip('"') for row in rows}


@pytest.mark.parametrize(
    ("attribute", "ours"),
    [("CATLMK", {c: w for c, (_, w) in CATLMK.items()}), ("CATSIL", {c: w for c, (_, w) in CATSIL.items()})]
    + [("FUNCTN", dict(FUNCTN))],
)
def test_codes_mean_what_the_catalogue_of_gdal_says(attribute: str, ours: dict[int, str]) -> None:
    """GDAL's s57expectedinput.csv, from IHO S-57 Edition 3.1, Appendix A, Chapter 2; some words are plainer here."""
    theirs = gdal_codes(attribute)
    plainer = {"wind turbine": "windmotor", "column": "column (pillar)", "flagpole": "flagstaff (flagpole)"}
    plainer |= {"spire or minaret": "spire/minaret", "silo": "silo in general", "tank": "tank in general"}
    plainer |= {"lighthouse": "light support", "cooling tower": "cooling"}
    assert {code: plainer.get(words, words) for code, words in ours.items()} == {code: theirs[code] for code in ours}


def test_first_code_that_means_something_gives_the_kind() -> None:
    assert kind_and_words("LNDMRK", (99, 3), (), ()) == ("chimney", "chimney")
    assert kind_and_words("LNDMRK", (), (), (16,)) == ("building", "factory")
    assert kind_and_words("LNDMRK", (), (), ()) == ("", "")
    assert kind_and_words("LNDMRK", (20,), (), (20,)) == ("spire", "spire or minaret")
    assert not set(landmark_classes.FLOATS) & set(landmark_classes.LANDMARKS)


def test_minutes_never_come_to_sixty() -> None:
    assert minutes_text(-30.9999999, -0.9999999) == "00.000S 00.000W"
    assert minutes_text(5.11166, 48.20575) == "12.345N 06.700E"
