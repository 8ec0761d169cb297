"""Plans filled by other programs than QGIS, in ways a stranger would choose: read right, or refused by row."""

from __future__ import annotations

import json
from pathlib import Path

import processing
import pytest
from osgeo import gdal, ogr
from qgis.core import QgsApplication, QgsProcessingException, QgsProcessingFeedback, QgsVectorLayer
from swims import (
    DAY,
    LAT,
    LON,
    add_constant_stream,
    add_route,
    add_swimmer,
    box,
    moved,
    new_plan,
    point,
    swim,
    swum,
    utc,
)
from tideleg.plan_package.store import append_rows
from tideleg.processing.provider import TidelegProvider

HOME = (LON, LAT)
DEPART = f"{DAY}T10:00"


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    made = new_plan(tmp_path / "plan.gpkg")
    add_route(made, "Out", HOME, moved(600.0, 0.0))
    add_swimmer(made, 0.5)
    add_constant_stream(made, 0.1, 90.0)
    return made


def write_tides(plan: Path, rows: list[tuple[str, float, str]]) -> None:
    """Rows as GDAL writes them: the time as text."""
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_UPDATE)
    layer = dataset.GetLayerByName("tides")
    for when, height, kind in rows:
        feature = ogr.Feature(layer.GetLayerDefn())
        feature.SetField("time", when)
        feature.SetField("height_m", height)
        feature.SetField("kind", kind)
        layer.CreateFeature(feature)


def test_a_time_stored_with_another_offset_is_refused_not_read_hours_wrong(plan: Path, tmp_path: Path) -> None:
    gdal.UseExceptions()
    write_tides(plan, [("2027-06-05T11:40:00+02:00", 3.0, "HW")])
    ran = swim(plan, tmp_path, DEPART=DEPART)
    assert not ran.ok
    assert "tides" in ran.said and "row 1" in ran.said and "+02" in ran.said and "UTC" in ran.said


@pytest.mark.parametrize("when", ["2027-06-05T09:40:00Z", "2027-06-05T09:40:00+00:00", "2027-06-05 09:40:00"])
def test_a_time_stored_in_utc_or_without_an_offset_is_utc(plan: Path, tmp_path: Path, when: str) -> None:
    mark = moved(300.0, 0.0)
    append_rows(plan, "marks", [(point(moved(600.0, 0.0)), {"name": "M", "kind": "mark", "charted_depth_m": 5.0})])
    add_route(plan, "Two", HOME, moved(600.0, 0.0), mark)
    write_tides(plan, [(when, 3.0, "HW"), ("2027-06-05T15:50:00Z", 1.0, "LW")])
    stop = swum(plan, tmp_path, ROUTE="Two", DEPART="2027-06-05T09:24:00+00:00")["stops"][1]
    assert stop["depth_now_m"] == pytest.approx(8.0, abs=0.02)


def test_high_waters_alone_count_hours_and_leave_heights_unknown(plan: Path, tmp_path: Path) -> None:
    append_rows(plan, "stream_stations", [(point(HOME), {"station": "H", "form": "hourly", "reference": "HW"})])
    rows = [(None, {"station": "H", "hour": h, "set_deg": 90.0, "spring_kn": 0.4}) for h in range(-6, 7)]
    append_rows(plan, "stream_rates", rows)
    append_rows(
        plan, "tides", [(None, {"time": utc(when), "height_m": 3.0, "kind": "HW"}) for when in ("04:00", "16:20")]
    )
    report = swum(plan, tmp_path, ROUTE="Out", DEPART=DEPART)
    assert report["legs"][0]["minutes"] is not None
    assert report["stops"][1]["depth_now_m"] is None


@pytest.mark.parametrize("name", ["LEGS", "REPORT", "CSV", "GPX", "CARD"])
def test_no_output_takes_the_place_of_the_plan(plan: Path, tmp_path: Path, name: str) -> None:
    before = plan.read_bytes()
    ran = swim(plan, tmp_path, DEPART=DEPART, **{name: str(plan)})
    assert not ran.ok and "reads from" in ran.said
    assert plan.read_bytes() == before


def test_no_output_takes_the_place_of_a_layer_that_is_read(plan: Path, tmp_path: Path) -> None:
    marks = tmp_path / "marks.geojson"
    gdal.VectorTranslate(str(marks), str(plan), layers=["marks"], format="GeoJSON")
    before = marks.read_bytes()
    ran = swim(plan, tmp_path, DEPART=DEPART, MARKS=f"{marks}", STOPS=str(marks))
    assert not ran.ok and marks.read_bytes() == before


def test_a_layer_of_a_geopackage_without_a_reference_system_is_refused(plan: Path, tmp_path: Path) -> None:
    other = tmp_path / "coast.gpkg"
    dataset = gdal.GetDriverByName("GPKG").Create(str(other), 0, 0, 0, gdal.GDT_Unknown)
    layer = dataset.CreateLayer("coast", None, ogr.wkbPolygon)
    feature = ogr.Feature(layer.GetLayerDefn())
    feature.SetGeometry(ogr.CreateGeometryFromWkt("POLYGON((0 0,1 0,1 1,0 0))"))
    layer.CreateFeature(feature)
    feature = layer = dataset = None
    ran = swim(plan, tmp_path, DEPART=DEPART, LAND=f"{other}|layername=coast")
    assert not ran.ok and "coast" in ran.said and "coordinate reference system" in ran.said


@pytest.mark.parametrize("field", ["set_deg", "spring_kn", "hour"])
def test_a_rates_layer_without_a_needed_field_is_refused_by_name(plan: Path, tmp_path: Path, field: str) -> None:
    fields = {"station": "string", "hour": "integer", "set_deg": "double", "spring_kn": "double"}
    del fields[field]
    uri = "NoGeometry?" + "&".join(f"field={name}:{kind}" for name, kind in fields.items())
    layer = QgsVectorLayer(uri, "my rates", "memory")
    ran = swim(plan, tmp_path, DEPART=DEPART, STREAM_RATES=layer)
    assert not ran.ok and "my rates" in ran.said and field in ran.said


def test_the_words_of_a_refusal_reach_the_caller_of_processing_run(plan: Path, tmp_path: Path, qgis_processing) -> None:
    provider = TidelegProvider()
    QgsApplication.processingRegistry().addProvider(provider)
    try:
        with pytest.raises(QgsProcessingException, match="Asked for the route 'Nowhere'"):
            asked = {"PLAN": str(plan), "ROUTE": "Nowhere", "DEPART": DEPART}
            processing.run("tideleg:planswim", asked, feedback=QgsProcessingFeedback())
    finally:
        QgsApplication.processingRegistry().removeProvider(provider)


@pytest.mark.parametrize("when", ["10:05", "10:05:00", f"{DAY}T10:05", f"{DAY} 10:05:00"])
def test_a_sailing_may_be_written_with_or_without_seconds_or_day(plan: Path, tmp_path: Path, when: str) -> None:
    strip = "POLYGON(({} {}, {} {}, {} {}, {} {}, {} {}))".format(
        *[
            f"{value:.7f}"
            for place in ((200, -300), (300, -300), (300, 300), (200, 300), (200, -300))
            for value in moved(*place)
        ]
    )
    from qgis.core import QgsGeometry

    append_rows(plan, "channels", [(QgsGeometry.fromWkt(strip), {"name": "Cut", "kind": "ferry", "flow_deg": 0.0})])
    append_rows(plan, "ferries", [(None, {"channel": "Cut", "time": when})])
    report = swum(plan, tmp_path, ROUTE="Out", DEPART=DEPART)
    (flag,) = [flag for flag in report["flags"] if flag["kind"] == "channel"]
    assert flag["severity"] == "stop" and "10:05" in flag["message"]


def test_a_ferry_that_sails_while_the_swimmer_stays_in_its_track_stops_the_plan(plan: Path, tmp_path: Path) -> None:
    mark = moved(400.0, 0.0)
    add_route(plan, "Stay", HOME, mark, HOME)
    append_rows(plan, "marks", [(point(mark), {"name": "In it", "kind": "mark", "stay_min": 60.0})])
    append_rows(plan, "channels", [(box(300.0, -200.0, 500.0, 200.0), {"name": "F", "kind": "ferry", "flow_deg": 0.0})])
    asked = {"channel": "F", "time": "10:45", "clear_before_min": 5.0, "clear_after_min": 5.0}
    append_rows(plan, "ferries", [(None, asked)])
    report = swum(plan, tmp_path, ROUTE="Stay", DEPART=DEPART)
    assert not report["feasible"]
    assert any(flag["severity"] == "stop" and "10:45" in flag["message"] for flag in report["flags"])


def test_an_edge_over_half_the_earth_is_refused_not_drawn_the_wrong_way_round(plan: Path, tmp_path: Path) -> None:
    for west, east in ((-60.0, 150.0), (-180.0, 180.0)):
        wide = tmp_path / "wide.geojson"
        corners = [[west, 30.0], [east, 30.0], [east, 60.0], [west, 60.0], [west, 30.0]]
        shape = {"type": "Polygon", "coordinates": [corners]}
        feature = {"type": "Feature", "properties": {"name": "all", "rule": "no_entry"}, "geometry": shape}
        wide.write_text(json.dumps({"type": "FeatureCollection", "features": [feature]}), encoding="utf-8")
        ran = swim(plan, tmp_path, DEPART=DEPART, CLOSED_AREAS=str(wide))
        assert not ran.ok and "degrees of longitude" in ran.said and "row" in ran.said
