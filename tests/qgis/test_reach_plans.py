"""tideleg:reach on real plan files, through QGIS's own doors."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from osgeo import gdal, osr
from qgis.core import QgsProcessingContext, QgsProject, QgsVectorLayer
from swims import (
    DAY,
    LAT,
    LON,
    Heard,
    Ran,
    add_constant_stream,
    add_sine_stream,
    add_swimmer,
    box,
    digest,
    invented_bay,
    left_in,
    moved,
    new_plan,
    point,
    run,
    utc,
)
from tideleg.plan_package.store import append_rows
from tideleg.processing.reach import ReachOfEntry

OUTPUTS = {
    "OUT_TIME": "out.tif",
    "HOME_BY": "home.tif",
    "REACH": "reach.gpkg",
    "MARKS_REACH": "marks.gpkg",
    "REPORT": "report.json",
}
AFLOAT = moved(150.0, 0.0)  # off Kettle Head's beach


def reach(plan: Path, folder: Path, feedback: Heard | None = None, **parameters: object) -> Ran:
    folder.mkdir(exist_ok=True)
    asked = {
        "PLAN": str(plan),
        "ENTRY": "{},{} [EPSG:4326]".format(*AFLOAT),
        "DEPART": f"{DAY}T10:00",
        "BACK_BY": f"{DAY}T12:30",
        "STAY": 20,
        **{name: str(folder / file) for name, file in OUTPUTS.items()},
        **parameters,
    }
    return run(ReachOfEntry().create(), asked, feedback)


@pytest.fixture(scope="module")
def bay(tmp_path_factory, qgis_app) -> tuple[Path, Path, Ran]:
    """The invented bay's plan, and its reach written to files."""
    folder = tmp_path_factory.mktemp("reach")
    plan = invented_bay(folder / "bay.gpkg")
    exits = [(point(moved(60.0, -900.0)), {"name": "South Steps", "kind": "exit"})]
    append_rows(plan, "marks", exits)
    ran = reach(plan, folder / "out")
    assert ran.ok, ran.said
    return plan, folder / "out", ran


def raster(path: Path) -> tuple[np.ndarray, gdal.Dataset]:
    file = gdal.Open(str(path))
    values = file.GetRasterBand(1).ReadAsArray().astype(float)
    values[values == file.GetRasterBand(1).GetNoDataValue()] = np.nan
    return values, file


def value_at(path: Path, lon: float, lat: float) -> float:
    """The raster's value at a place in degrees, by GDAL and PROJ alone."""
    values, file = raster(path)
    degrees, own = osr.SpatialReference(), osr.SpatialReference(wkt=file.GetProjection())
    degrees.ImportFromEPSG(4326)
    for system in (degrees, own):
        system.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    x, y, _ = osr.CoordinateTransformation(degrees, own).TransformPoint(lon, lat)
    west, step, _, north, _, down = file.GetGeoTransform()
    return float(values[int((y - north) / down), int((x - west) / step)])


def test_rasters_are_readable_and_in_the_plans_frame(bay) -> None:
    _, folder, ran = bay
    for name in ("OUT_TIME", "HOME_BY"):
        values, file = raster(folder / OUTPUTS[name])
        assert file.GetDriver().ShortName == "GTiff"
        assert file.GetRasterBand(1).GetNoDataValue() == -9999.0
        system = osr.SpatialReference(wkt=file.GetProjection())
        assert system.GetAttrValue("PROJECTION") == "Transverse_Mercator"
        assert system.GetProjParm("scale_factor") == 1.0
        assert abs(system.GetProjParm("latitude_of_origin") - LAT) < 0.05
        assert abs(system.GetProjParm("central_meridian") - LON) < 0.05
        assert values.shape == (ran.report["grid"]["rows"], ran.report["grid"]["columns"])
        assert np.isfinite(values).sum() > 1000
        assert 0.0 <= np.nanmin(values) and np.nanmax(values) <= 150.0


def test_values_at_the_marks_are_those_of_the_report_and_the_layer(bay) -> None:
    _, folder, ran = bay
    layer = QgsVectorLayer(str(folder / "marks.gpkg"), "marks", "ogr")
    rows = {row["name"]: row for row in layer.getFeatures()}
    told = {mark["name"]: mark for mark in ran.report["marks"]}
    assert set(rows) == set(told) == {"Kettle Slip", "Gannet Ledge", "South Steps"}
    cell_min = ran.report["grid"]["cell_m"] / (0.6 / 1.1 - 0.3) / 60.0  # the way from the cell's middle to the mark
    mark = told["Gannet Ledge"]
    out = value_at(folder / "out.tif", mark["lon"], mark["lat"])
    home = value_at(folder / "home.tif", mark["lon"], mark["lat"])
    assert out == pytest.approx(mark["solver"]["out_min"], abs=cell_min)
    assert home == pytest.approx(mark["solver"]["latest_leave_min"], abs=cell_min)
    row = rows["Gannet Ledge"]
    assert row["out_min"] == pytest.approx(mark["solver"]["out_min"], abs=1e-3)
    assert row["latest_leave_min_one_heading"] == pytest.approx(mark["one_heading"]["latest_leave_min"], abs=1e-3)
    assert row["latest_leave_local"] == mark["solver"]["latest_leave"]
    assert mark["solver"]["latest_leave"].endswith("+01:00")
    for way in ("solver", "one_heading"):
        assert mark[way]["stay_min"] == pytest.approx(mark[way]["latest_leave_min"] - mark[way]["out_min"], abs=2e-3)
    # The bay is 1 km wide and its stream smooth: one heading loses little, and wins nothing but the grid's own error.
    assert mark["one_heading"]["out_min"] == pytest.approx(mark["solver"]["out_min"], rel=0.03)
    assert mark["one_heading"]["out_min"] > mark["solver"]["out_min"] * 0.995


def test_areas_are_valid_nested_and_agree_with_the_rasters(bay) -> None:
    _, folder, ran = bay
    layer = QgsVectorLayer(str(folder / "reach.gpkg"), "reach", "ogr")
    assert layer.crs().authid() == "EPSG:4326"
    rows = list(layer.getFeatures())
    assert all(row.geometry().isGeosValid() for row in rows)
    out = [row for row in rows if row["kind"] == "out"]
    minutes = [row["minutes"] for row in out]
    assert minutes == sorted(minutes, reverse=True) and minutes[-1] == 15.0
    assert set(np.diff(minutes)) == {-15.0}
    for outer, inner in zip(out, out[1:]):
        assert inner.geometry().difference(outer.geometry()).area() < 1e-3 * inner.geometry().area()
    (stay,) = [row for row in rows if row["kind"] == "stay"]
    assert stay["minutes"] == 20.0 and "12:30" in stay["label"]
    out_min, home_min = raster(folder / "out.tif")[0], raster(folder / "home.tif")[0]
    km2 = np.sum(home_min - out_min >= 20.0) * ran.report["grid"]["cell_m"] ** 2 / 1e6
    assert ran.report["stay_area_km2"] == pytest.approx(km2, rel=2e-3)
    degree_km = 111.19
    flat = stay.geometry().area() * degree_km**2 * np.cos(np.radians(LAT))
    assert flat == pytest.approx(km2, rel=0.03)
    assert stay.geometry().contains(point(moved(1000.0, 250.0)))


def test_land_is_not_reached(bay) -> None:
    _, folder, _ = bay
    inland = moved(-200.0, 0.0)
    assert np.isnan(value_at(folder / "out.tif", *inland))
    for row in QgsVectorLayer(str(folder / "reach.gpkg"), "reach", "ogr").getFeatures():
        assert not row.geometry().contains(point(inland))


def test_the_report_says_what_to_know(bay) -> None:
    report = bay[2].report
    assert report["exits"] == ["Entry", "South Steps"]
    assert report["zone"] == "Europe/Lisbon"
    assert report["depart"] == f"{DAY}T10:00:00+01:00"
    assert "steers anew" in report["method"]
    assert report["grid"]["cell_chosen"] is True
    assert report["expected_error"]["mean_min"] < 1.0


def test_a_reach_without_files_goes_to_memory(bay, tmp_path) -> None:
    plan, _, _ = bay
    context = QgsProcessingContext()
    context.setProject(QgsProject.instance())
    asked = {
        "PLAN": str(plan),
        "ENTRY": "{},{} [EPSG:4326]".format(*AFLOAT),
        "DEPART": f"{DAY}T10:00",
        "BACK_BY": f"{DAY}T11:00",
        "STAY": 0,
        "CELL": 50,
        "REACH": "TEMPORARY_OUTPUT",
    }
    results, ok = ReachOfEntry().create().run(asked, context, Heard())
    assert ok
    layer = context.takeResultLayer(results["REACH"])
    assert layer.featureCount() == 5
    assert "OUT_TIME" not in results


def test_stopping_leaves_nothing(bay, tmp_path) -> None:
    plan, _, _ = bay
    before = digest(plan)
    for after in (1, 30, 200):
        heard = Stops(after)
        ran = reach(plan, tmp_path / str(after), heard)
        assert not ran.results.get("REPORT")
        assert left_in(tmp_path / str(after)) == []
        assert "Stopped" in ran.said
    assert digest(plan) == before


class Stops(Heard):
    """Stops when it has been asked so many times whether to go on."""

    def __init__(self, after: int) -> None:
        super().__init__()
        self.left = after

    def isCanceled(self) -> bool:
        self.left -= 1
        return self.left < 0


@pytest.mark.parametrize(
    ("parameters", "words"),
    [
        ({"BACK_BY": f"{DAY}T09:00"}, "BACK_BY"),
        ({"BACK_BY": "noon"}, "BACK_BY"),
        ({"DEPART": "2027-06-05"}, "DEPART"),
        ({"DEPART": "2027-07-05T10:00", "BACK_BY": "2027-07-05T12:00"}, "No stream is known at the entry"),
        ({"ENTRY": "{},{} [EPSG:4326]".format(*moved(-250.0, 0.0))}, "inside Kettle Head"),
        ({"CELL": 0.2}, "CELL"),
        ({"SWIMMER": "Nobody"}, "Nobody"),
        ({"ENTRY": "400,44 [EPSG:4326]"}, "longitude 400"),
    ],
)
def test_bad_input_is_refused_by_name_and_nothing_is_written(bay, tmp_path, parameters, words) -> None:
    plan, _, _ = bay
    ran = reach(plan, tmp_path / "out", **parameters)
    assert not ran.ok and words in ran.said
    assert left_in(tmp_path / "out") == []


def test_a_raster_of_another_kind_and_the_plan_itself_are_refused(bay, tmp_path) -> None:
    plan, _, _ = bay
    before = digest(plan)
    ran = reach(plan, tmp_path / "out", OUT_TIME=str(tmp_path / "out" / "out.asc"))
    assert not ran.ok and "GeoTIFF" in ran.said
    ran = reach(plan, tmp_path / "out", REACH=str(plan))
    assert not ran.ok and "reads from" in ran.said
    assert left_in(tmp_path / "out") == [] and digest(plan) == before


def test_closed_water_at_the_entry_is_refused_by_name(tmp_path) -> None:
    plan = invented_bay(tmp_path / "bay.gpkg")
    shut = {"name": "Range", "rule": "no_entry", "from_time": "10:00", "to_time": "11:00"}
    append_rows(plan, "closed_areas", [(box(100.0, -50.0, 200.0, 50.0), shut)])
    ran = reach(plan, tmp_path / "out")
    assert not ran.ok and "Range" in ran.said
    assert reach(plan, tmp_path / "out", DEPART=f"{DAY}T11:30").ok


def test_channels_kept_out_of_shut_the_bay_off(bay, tmp_path) -> None:
    plan, _, free = bay
    kept = reach(plan, tmp_path / "kept", CHANNELS=1)
    square = reach(plan, tmp_path / "square", CHANNELS=2)
    assert kept.ok and square.ok
    ledge = [
        next(mark for mark in ran.report["marks"] if mark["name"] == "Gannet Ledge")["solver"]["out_min"]
        for ran in (free, square, kept)
    ]
    # The Cut is 1.8 km long: round its end the ledge is far.
    assert ledge[0] <= ledge[1] * 1.001
    assert ledge[2] is None or ledge[2] > ledge[0] + 10.0


def test_a_steady_stream_from_a_file_meets_the_closed_form(tmp_path) -> None:
    """Story 15 of the worked stories: 1.35 km out with 0.12 m/s against one at 0.67 takes 41 min, home 28.5."""
    plan = new_plan(tmp_path / "plan.gpkg")
    add_swimmer(plan, 0.67)
    add_constant_stream(plan, 0.12, 180.0)
    append_rows(plan, "marks", [(point(moved(0.0, 1350.0)), {"name": "Far Rock", "kind": "mark"})])
    ran = reach(plan, tmp_path / "out", ENTRY=f"{LON},{LAT} [EPSG:4326]")
    assert ran.ok, ran.said
    (mark,) = ran.report["marks"]
    assert mark["solver"]["out_min"] == pytest.approx(1350.0 / 0.55 / 60.0, rel=4e-3)
    assert mark["solver"]["latest_leave_min"] == pytest.approx(150.0 - 1350.0 / 0.79 / 60.0, rel=4e-3)
    assert mark["one_heading"]["out_min"] == pytest.approx(1350.0 / 0.55 / 60.0, abs=0.02)
    assert any("no land" in warning for warning in ran.warnings)


def test_a_turning_stream_lets_one_leave_late_one_way_only(tmp_path) -> None:
    """Slack at 11:30, flood to the north before and ebb after: the mark in the north is near early and home late."""
    plan = new_plan(tmp_path / "plan.gpkg")
    add_swimmer(plan, 0.6)
    add_sine_stream(plan, utc("11:30"), 0.5, 0.0)
    places = {"North": moved(0.0, 1000.0), "South": moved(0.0, -1000.0)}
    append_rows(plan, "marks", [(point(place), {"name": name, "kind": "mark"}) for name, place in places.items()])
    ran = reach(plan, tmp_path / "out", ENTRY=f"{LON},{LAT} [EPSG:4326]", BACK_BY=f"{DAY}T13:30")
    north, south = (mark["solver"] for mark in ran.report["marks"])
    assert north["out_min"] < south["out_min"]
    assert north["latest_leave_min"] > south["latest_leave_min"]
    assert north["stay_min"] > south["stay_min"]


def test_a_pace_given_overrides_the_swimmers(bay, tmp_path) -> None:
    plan, _, usual = bay
    quick = reach(plan, tmp_path / "quick", PACE=1.2)
    assert quick.ok
    minutes = [
        next(mark for mark in ran.report["marks"] if mark["name"] == "Gannet Ledge")["solver"]["out_min"]
        for ran in (usual, quick)
    ]
    assert minutes[1] < 0.7 * minutes[0]
    assert quick.report["stay_area_km2"] > usual.report["stay_area_km2"]


def test_over_the_date_line_and_in_the_south(tmp_path) -> None:
    at = (179.999, -48.0)
    plan = new_plan(tmp_path / "plan.gpkg")
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.1, 90.0, at=at)
    append_rows(plan, "marks", [(point(moved(800.0, 0.0, *at)), {"name": "Other Side", "kind": "mark"})])
    ran = reach(plan, tmp_path / "out", ENTRY=f"{at[0]},{at[1]} [EPSG:4326]", BACK_BY=f"{DAY}T11:00")
    assert ran.ok, ran.said
    (mark,) = ran.report["marks"]
    assert mark["lon"] < -179.0
    assert mark["solver"]["out_min"] == pytest.approx(800.0 / 0.7 / 60.0, rel=5e-3)
    for row in QgsVectorLayer(str(tmp_path / "out" / "reach.gpkg"), "reach", "ogr").getFeatures():
        assert row.geometry().boundingBox().width() < 0.1
