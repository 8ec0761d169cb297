"""`tideleg:readchart` on ordinary layers: reprojection, mapped fields, repairs, and refusals by name."""

import json
import shutil
from pathlib import Path

import pytest
from osgeo import gdal
from pyproj import Transformer
from qgis.core import (
    QgsFeature,
    QgsField,
    QgsGeometry,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QVariant
from test_readchart import content, rows
from tideleg.core.errors import SwimPlanError
from tideleg.layers_in.field_mapping import mapping_from_text
from tideleg.plan_package.schema import LAYER_BY_NAME
from tideleg.plan_package.store import create_plan
from tideleg.processing.readchart import TARGETS, ReadChart

KINDS = {int: QVariant.Int, float: QVariant.Double, str: QVariant.String}


@pytest.fixture(scope="module")
def empty_plan(tmp_path_factory):
    return create_plan(tmp_path_factory.mktemp("empty") / "plan.gpkg")


@pytest.fixture
def plan(empty_plan, tmp_path):
    return Path(shutil.copy(empty_plan, tmp_path / "plan.gpkg"))


def make_layer(
    geometry: str, fields: dict[str, type], features: list[tuple], name: str = "my depths"
) -> QgsVectorLayer:
    """A memory layer; ``geometry`` as in `Point?crs=EPSG:4326`, features as (WKT or None, values...)."""
    layer = QgsVectorLayer(geometry, name, "memory")
    layer.dataProvider().addAttributes([QgsField(field, KINDS[kind]) for field, kind in fields.items()])
    layer.updateFields()
    for wkt, *values in features:
        feature = QgsFeature(layer.fields())
        feature.setAttributes(list(values))
        if wkt is not None:
            feature.setGeometry(QgsGeometry.fromWkt(wkt))
        assert layer.dataProvider().addFeatures([feature])[0]
    return layer


def read(plan, layer, into, fields="", **parameters):
    algorithm, context = ReadChart().create(), QgsProcessingContext()
    parameters = {"PLAN": str(plan), "LAYER": layer, "INTO": into, "FIELDS": fields, **parameters}
    report = plan.with_name("report.json")
    results, done = algorithm.run({**parameters, "REPORT": str(report)}, context, QgsProcessingFeedback(), {}, False)
    assert done and results["PLAN"] == str(plan)
    return json.loads(report.read_text(encoding="utf-8"))


def test_depths_in_feet_from_another_system(plan):
    layer = make_layer(
        "Point?crs=EPSG:32625", {"FEET": float, "depth_m": float}, [("POINT (500000 3320000)", 10.0, 99.0)]
    )
    read(plan, layer, "soundings", "depth_m = FEET * 0.3048")
    (sounding,) = rows(plan, "soundings")
    assert sounding["depth_m"] == pytest.approx(3.048, abs=1e-12)
    expected = Transformer.from_crs("EPSG:32625", "EPSG:4326", always_xy=True).transform(500_000, 3_320_000)
    assert (sounding["geometry"].GetX(), sounding["geometry"].GetY()) == pytest.approx(expected, abs=1e-8)


def test_fields_of_the_same_name_are_taken_and_defaults_filled(plan):
    layer = make_layer("Point?crs=EPSG:4326", {"NAME": str, "stay_min": int}, [("POINT (-30 30)", "Kettle Slip", 20)])
    read(plan, layer, "marks", "note = 'seen; from = the boat'")
    (mark,) = rows(plan, "marks")
    assert (mark["name"], mark["kind"], mark["stay_min"], mark["note"]) == (
        "Kettle Slip", "mark", 20.0, "seen; from = the boat"
    )  # fmt: skip


def test_parts_repairs_and_features_without_a_place_are_counted(plan):
    layer = make_layer(
        "MultiPolygonZ?crs=EPSG:4326",
        {"id": int},
        [
            ("MULTIPOLYGON Z (((0 0 1,1 0 1,1 1 1,0 0 1)),((2 0 1,3 0 1,3 1 1,2 0 1)))", 1),
            ("MULTIPOLYGON Z (((0 5 1,2 7 1,2 5 1,0 7 1,0 5 1)))", 2),
            (None, 3),
            ("MULTIPOLYGON Z EMPTY", 4),
        ],
        name="cliffs",
    )
    report = read(plan, layer, "land", "name = 'piece ' || id")
    counted = report["classes"]["cliffs"]
    assert (counted["read"], counted["used"], counted["repaired"]) == (4, 2, 1)
    assert counted["skipped"] == {"no geometry": 2}
    found = rows(plan, "land")
    assert [row["name"] for row in found] == ["piece 1", "piece 1", "piece 2", "piece 2"]
    assert all(row["geometry"].IsValid() and row["geometry"].GetGeometryName() == "POLYGON" for row in found)
    assert all(row["geometry"].GetCoordinateDimension() == 2 for row in found)


def test_clipped_layer(plan):
    layer = make_layer(
        "LineString?crs=EPSG:4326", {"depth_m": float}, [("LINESTRING (0 0,4 0)", 5.0), ("LINESTRING (9 9,9 8)", 2.0)]
    )
    report = read(plan, layer, "depth_contours", EXTENT="1,2,-1,1 [EPSG:4326]")
    (contour,) = rows(plan, "depth_contours")
    assert contour["geometry"].GetEnvelope() == (1.0, 2.0, 0.0, 0.0)
    assert report["classes"]["my depths"]["clipped_away"] == 1


def test_table_without_geometry(plan):
    layer = make_layer("None", {"when": str, "h": float}, [(None, "2027-04-28T10:20:00+02:00", 1.2)], name="tide list")
    read(plan, layer, "tides", "time = \"when\"\nheight_m = h\nkind = if(h < 2, 'LW', 'HW'); port = 'Port Petrel'")
    (tide,) = rows(plan, "tides")
    assert (tide["time"], tide["height_m"], tide["kind"]) == ("2027/04/28 08:20:00+00", 1.2, "LW")


def test_same_layer_twice_adds_nothing(plan):
    layer = make_layer("Point?crs=EPSG:32625", {"depth_m": float}, [("POINT (500000 3320000)", 4.0)])
    read(plan, layer, "soundings")
    report = read(plan, layer, "soundings")
    assert report["layers"] == {"soundings": {"written": 0, "already_there": 1}}
    assert len(rows(plan, "soundings")) == 1


def test_source_layer_is_not_changed(plan):
    layer = make_layer("Polygon?crs=EPSG:32625", {"name": str}, [("POLYGON ((0 0,2 2,2 0,0 2,0 0))", "knot")])
    before = [(feature.geometry().asWkt(), feature.attributes()) for feature in layer.getFeatures()]
    read(plan, layer, "land")
    assert [(feature.geometry().asWkt(), feature.attributes()) for feature in layer.getFeatures()] == before


GOOD = ("Point?crs=EPSG:4326", {"depth_m": float}, [("POINT (-30 30)", 4.0)])


@pytest.mark.parametrize(
    ("layer", "into", "fields", "said"),
    [
        (("Point?crs=", {"depth_m": float}, [("POINT (-30 30)", 4.0)]), "soundings", "",
         ["my depths", "coordinate reference"]),
        (GOOD, "depth_contours", "", ["my depths", "geometry", "LineString"]),
        (GOOD, "soundings", "depth_m = fathoms * 1.8288", ["my depths", "depth_m", "no field fathoms"]),
        (GOOD, "soundings", "depth_m = * 2", ["my depths", "depth_m", "cannot be read"]),
        (GOOD, "soundings", "depth = 2", ["my depths", "'depth'", "has the fields depth_m"]),
        (GOOD, "closed_areas", "", ["my depths", "geometry", "Polygon"]),
        (GOOD, "stream_stations", "", ["my depths", "station", "must be filled"]),
        (GOOD, "soundings", "depth_m", ["depth_m = DEPTH"]),
        (GOOD, "soundings", "depth_m = -3", ["my depths", "row 1", "depth_m", "-3", "from 0"]),
        (GOOD, "soundings", "depth_m = to_real('deep')", ["my depths", "row 1", "depth_m", "deep"]),
        (GOOD, "soundings", "depth_m = NULL", ["my depths", "row 1", "depth_m", "must be filled"]),
        (("Point?crs=EPSG:4326", {"depth_m": float}, [("POINT (-30 95)", 4.0)]), "soundings", "",
         ["my depths", "row 1", "latitude 95"]),
        (("None", {"when": str}, [(None, "2027-04-28T10:20")]), "tides", "time = \"when\"; height_m = 1; kind = 'HW'",
         ["my depths", "row 1", "time", "2027-04-28T10:20", "offset"]),
        (("None", {"hour": int}, [(None, 7)]), "stream_rates", "station = 'A'",
         ["my depths", "row 1", "hour", "7", "-6 to 6"]),
        (("None", {"spring_kn": float}, [(None, 40.0)]), "stream_rates", "station = 'A'; hour = 0",
         ["my depths", "row 1", "spring_kn", "40", "15 kn"]),
    ],
)  # fmt: skip
def test_wrong_layer_is_refused_by_name_row_and_value(plan, layer, into, fields, said):
    before = content(plan)
    with pytest.raises(QgsProcessingException) as caught:
        read(plan, make_layer(*layer), into, fields)
    assert [part for part in said if part not in str(caught.value)] == []
    assert content(plan) == before


def test_one_bad_row_of_many_keeps_all_out(plan):
    layer = make_layer(
        "Point?crs=EPSG:4326", {"depth_m": float}, [("POINT (-30 30)", 4.0)] * 5 + [("POINT (-30 31)", -1.0)]
    )
    before = content(plan)
    with pytest.raises(QgsProcessingException, match="row 6"):
        read(plan, layer, "soundings")
    assert content(plan) == before


def test_layer_on_disk_and_chosen_by_path(plan, tmp_path):
    path = tmp_path / "cliffs.geojson"
    dataset = gdal.VectorTranslate(str(path), _geojson(), format="GeoJSON")
    assert dataset is not None
    del dataset
    read(plan, str(path), "land")
    assert [row["name"] for row in rows(plan, "land")] == ["Cinder Island"]


def _geojson() -> str:
    square = [[[-30, 30], [-29, 30], [-29, 31], [-30, 30]]]
    feature = {
        "type": "Feature",
        "properties": {"name": "Cinder Island"},
        "geometry": {"type": "Polygon", "coordinates": square},
    }
    return json.dumps({"type": "FeatureCollection", "features": [feature]})


def test_mapping_keeps_expressions_whole():
    text = "name = \"a;b\" || ';='; depth_m = coalesce(\"D\",\n 0)\nkind='mark'"
    assert mapping_from_text(text) == {
        "name": "\"a;b\" || ';='", "depth_m": "coalesce(\"D\",\n 0)", "kind": "'mark'"
    }  # fmt: skip


@pytest.mark.parametrize("text", ["name", "= 3", "name =", "a b = 3", "name = 1; name = 2"])
def test_mapping_that_is_none_is_refused(text):
    with pytest.raises(SwimPlanError, match="FIELDS"):
        mapping_from_text(text)


def test_a_layer_can_go_into_every_plan_layer_but_the_settings_and_the_log() -> None:
    assert TARGETS == tuple(name for name in LAYER_BY_NAME if name not in ("settings", "sessions", "catches"))
