"""`tideleg:readchart` on a cell of an invented sea: what each class of object becomes, what a failed run leaves."""

import json
import shutil
import struct
from collections import Counter
from pathlib import Path

import pytest
from invented_cell import InventedCell
from osgeo import gdal, ogr
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProject,
    QgsRectangle,
)
from tideleg.plan_package.store import create_plan
from tideleg.processing.readchart import ReadChart

# IHO S-57 Edition 3.1, Appendix A, Chapter 2, example of TS_TSP, with its last pair left blank as in real cells.
TS_TSP = (
    "63230,Darwin,HW,124,2.2,128,2.1,125,2.9,116,2.8,110,2.0,095,0.6,020,0.2,320,1.9,315,2.1,300,2.8,268,2.6,200,2.4,,"
)
CITED = "on chart {}, edition 4, update 0, dated 2027-01-05"


@pytest.fixture(scope="module")
def empty_plan(tmp_path_factory) -> Path:
    folder = tmp_path_factory.mktemp("empty")
    return create_plan(folder / "plan.gpkg", zone="Atlantic/Azores", datum="lowest astronomical tide")


@pytest.fixture
def plan(empty_plan, tmp_path) -> Path:
    return Path(shutil.copy(empty_plan, tmp_path / "plan.gpkg"))


@pytest.fixture
def cell(tmp_path) -> Path:
    """INVENTED - NOT FOR NAVIGATION: a bit of everything at 30 N 30 W."""
    path = tmp_path / "IX4INVEN.000"
    with InventedCell(path) as sea:
        sea.box("M_COVR", -30.1, 29.9, -29.9, 30.1, CATCOV=1)
        sea.box("FAIRWY", -30.02, 30.00, -30.00, 30.01, OBJNAM="Gannet Reach", ORIENT=405.0, TRAFIC=4, RESTRN=["1"])
        sea.box("DRGARE", -30.015, 30.00, -30.005, 30.01, DRVAL1=3.0)
        sea.box("DRGARE", -30.05, 30.05, -30.04, 30.06, DRVAL1=3.0)
        sea.line("FERYRT", [(-30.05, 30.0), (-30.03, 30.01), (-30.0, 30.02)], OBJNAM="Long Sill ferry")
        sea.line("NAVLNE", [(-30.05, 30.03), (-30.0, 30.03)], CATNAV=3, ORIENT=90.0)
        sea.line("NAVLNE", [(-30.05, 30.04), (-30.0, 30.04)], CATNAV=1, ORIENT=90.0)
        sea.box("RESARE", -30.03, 30.02, -30.01, 30.03, RESTRN=["2", "4", "8"], CATREA=["4"], INFORM="Bylaw 12.")
        sea.box("RESARE", -30.09, 30.02, -30.08, 30.03, RESTRN=["3"], PERSTA="--0401", PEREND="--0930")
        sea.box("RESARE", -30.09, 30.04, -30.08, 30.05, RESTRN=["16"], TXTDSC="IX4A.TXT")
        sea.point("CTNARE", -30.06, 30.06, INFORM="Strong eddies")
        sea.box("LNDARE", -30.09, 29.91, -30.05, 29.95, OBJNAM="Cinder Island")
        sea.point("LNDARE", -30.04, 29.95)
        sea.line("DEPCNT", [(-30.05, 30.0), (-30.0, 30.02)], VALDCO=5.0)
        sea.line("DEPCNT", [(-30.05, 29.96), (-30.0, 29.96)], VALDCO=-0.5)
        sea.line("DEPCNT", [(-30.05, 29.97), (-30.0, 29.97)])
        sea.soundings([(-30.01, 30.01, 4.5), (-30.02, 30.01, -1.2), (-30.02, 30.012, 12.0)])
        sea.point("UWTROC", -30.03, 30.006, VALSOU=1.5, WATLEV=3)
        sea.point("UWTROC", -30.03, 30.007, WATLEV=4)
        sea.point("WRECKS", -30.03, 30.008, WATLEV=3, INFORM="Trawler")
        sea.box("OBSTRN", -30.07, 30.0, -30.06, 30.01, VALSOU=2.5, WATLEV=3)
        sea.line("OBSTRN", [(-30.07, 30.02), (-30.06, 30.02)], WATLEV=3)
        sea.point("TS_PAD", -29.95, 29.95, TS_TSP=TS_TSP)
        sea.point("TS_PAD", -29.95, 29.96, TS_TSP="1,Darwin,MW,1,2")
        sea.point("TS_FEB", -29.95, 29.97, CAT_TS=1, CURVEL=1.5, ORIENT=40.0)
        sea.point("TS_TIS", -29.95, 29.98, TS_TSV="135,1.5,156,1.9,301,1.1,342,0.9")
        sea.point("T_TIMS", -29.95, 29.99, OBJNAM="Port Petrel", T_HWLW="20270428T1020Z,1.2,20270428T1455Z,4.8")
        sea.point("T_TIMS", -29.95, 29.99, OBJNAM="Port Petrel", T_HWLW="20270429T1020,1.2,20270429T1455,4.8")
        sea.point("BOYLAT", -30.0, 30.0, OBJNAM="No. 1")
    return path


def read(plan: Path, *, feedback: QgsProcessingFeedback | None = None, **parameters: object) -> dict:
    """Run the algorithm as Processing does: check the parameters, then run; its error is raised."""
    algorithm, context = ReadChart().create(), QgsProcessingContext()
    parameters = {"PLAN": str(plan), **{key: value for key, value in parameters.items() if value is not None}}
    accepted, message = algorithm.checkParameterValues(parameters, context)
    if not accepted:
        raise QgsProcessingException(message)
    results, done = algorithm.run(parameters, context, feedback or QgsProcessingFeedback(), {}, False)
    assert done
    return results


def read_with_report(plan: Path, folder: Path, **parameters: object) -> dict:
    report = folder / "report.json"
    read(plan, REPORT=str(report), **parameters)
    return json.loads(report.read_text(encoding="utf-8"))


def rows(plan: Path, layer: str) -> list[dict]:
    """The rows of a plan's layer, read with GDAL alone; the geometry as an OGR geometry."""
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR)
    found = []
    for feature in dataset.GetLayerByName(layer):
        geometry = feature.GetGeometryRef()
        found.append({**feature.items(), "geometry": geometry.Clone() if geometry is not None else None})
    return found


def content(plan: Path) -> dict[str, list]:
    """Everything in the plan's layers, for telling whether a run changed anything."""
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR)
    layers = (dataset.GetLayer(at) for at in range(dataset.GetLayerCount()))
    return {layer.GetName(): [feature.ExportToJson() for feature in layer] for layer in layers}


def of_name(found: list[dict], name: str) -> dict:
    (row,) = [row for row in found if row["name"] == name]
    return row


def test_channels(plan, cell):
    read(plan, CHART=str(cell))
    found = rows(plan, "channels")
    assert Counter(row["name"] for row in found) == {
        "Gannet Reach": 1, "dredged area": 1, "leading line": 1, "Long Sill ferry": 1
    }  # fmt: skip
    reach = of_name(found, "Gannet Reach")
    assert (reach["kind"], reach["width_m"], reach["flow_deg"], reach["boat_kn"]) == ("fairway", None, 45.0, None)
    assert reach["geometry"].GetEnvelope() == pytest.approx((-30.02, -30.0, 30.0, 30.01))
    ferry = of_name(found, "Long Sill ferry")
    assert (ferry["kind"], ferry["width_m"], ferry["flow_deg"]) == ("ferry", 100.0, None)
    assert ferry["geometry"].GetGeometryName() == "LINESTRING" and ferry["geometry"].GetPointCount() == 3
    assert (of_name(found, "leading line")["kind"], of_name(found, "leading line")["flow_deg"]) == ("fairway", 90.0)


def test_dredged_bottom_of_a_fairway_is_one_channel_only(plan, cell, tmp_path):
    counted = read_with_report(plan, tmp_path, CHART=str(cell))["classes"]["DRGARE"]
    assert (counted["read"], counted["used"]) == (2, 1)
    assert counted["skipped"] == {"dredged bottom of a fairway already read": 1}


def test_strictest_rule_with_everything_cited(plan, cell):
    read(plan, CHART=str(cell))
    found = {row["citation"].split(";")[0]: row for row in rows(plan, "closed_areas")}
    reserve = found["anchoring restricted, fishing restricted, entry restricted, nature reserve"]
    assert (reserve["name"], reserve["rule"], reserve["checked_on"]) == ("restricted area", "no_entry", "2027-01-05")
    assert reserve["citation"].endswith("nature reserve; Bylaw 12; RESARE " + CITED.format("IX4INVEN"))
    assert (reserve["from_time"], reserve["to_time"]) == (None, None)
    season = found["fishing prohibited"]
    assert (season["rule"], season["from_time"], season["to_time"]) == ("no_spearing", "--0401", "--0930")
    sewage = found["discharging prohibited"]
    assert sewage["rule"] == "caution" and "see the chart's text IX4A.TXT" in sewage["citation"]


def test_restricted_fairway_is_a_closed_area_too(plan, cell):
    read(plan, CHART=str(cell))
    assert of_name(rows(plan, "closed_areas"), "Gannet Reach")["rule"] == "no_anchoring"


def test_warning_at_a_point_gets_a_circle(plan, cell):
    read(plan, CHART=str(cell))
    circle = of_name(rows(plan, "closed_areas"), "caution area")
    west, east, south, north = circle["geometry"].GetEnvelope()
    # A degree of latitude at 30 N is 110.85 km, of longitude 96.49 km (WGS 84 ellipsoid, meridian and parallel arcs).
    assert ((north - south) * 110_850, (east - west) * 96_490) == pytest.approx((100.0, 100.0), rel=1e-3)
    assert (west + east) / 2 == pytest.approx(-30.06, abs=1e-9)
    assert circle["citation"].startswith("Strong eddies; CTNARE on chart")


def test_land_and_depths(plan, cell):
    read(plan, CHART=str(cell))
    assert [row["name"] for row in rows(plan, "land")] == ["Cinder Island"]
    assert sorted(row["depth_m"] for row in rows(plan, "depth_contours")) == [0.0, 5.0]
    # three soundings (one dries), a rock of 1.5 m, a rock that dries, a foul area of 2.5 m
    assert sorted(row["depth_m"] for row in rows(plan, "soundings")) == [0.0, 0.0, 1.5, 2.5, 4.5, 12.0]
    assert {row["geometry"].GetGeometryName() for row in rows(plan, "soundings")} == {"POINT"}
    deep = next(row for row in rows(plan, "soundings") if row["depth_m"] == 12.0)
    assert (deep["geometry"].GetX(), deep["geometry"].GetY()) == pytest.approx((-30.02, 30.012), abs=1e-7)


def test_hazards_without_a_depth_are_areas_and_are_listed(plan, cell, tmp_path):
    report = read_with_report(plan, tmp_path, CHART=str(cell))
    assert [(h["class"], h["what"], h["text"]) for h in report["hazards_without_depth"]] == [
        ("OBSTRN", "obstruction of unknown depth", ""),
        ("WRECKS", "wreck of unknown depth", "Trawler"),
    ]
    assert (report["hazards_without_depth"][1]["lon"], report["hazards_without_depth"][1]["lat"]) == (-30.03, 30.008)
    assert of_name(rows(plan, "closed_areas"), "wreck of unknown depth")["rule"] == "caution"
    assert report["classes"]["OBSTRN"]["skipped"] == {"line hazard without a depth": 1}
    assert report["classes"]["UWTROC"]["notes"] == {"no depth charted, covers and uncovers: taken as 0 m": 1}
    assert report["classes"]["SOUNDG"]["notes"] == {"dries: depth taken as 0 m": 1}


def test_stream_table_with_a_blank_hour(plan, cell, tmp_path):
    report = read_with_report(plan, tmp_path, CHART=str(cell))
    (station,) = rows(plan, "stream_stations")
    assert (station["form"], station["reference"], station["port"]) == ("hourly", "HW", "Darwin")
    assert (station["spring_range_m"], station["neap_range_m"]) == (None, None)
    assert station["source"] == "TS_PAD " + CITED.format("IX4INVEN")
    rates = rows(plan, "stream_rates")
    assert {rate["station"] for rate in rates} == {station["station"]}
    assert [rate["hour"] for rate in rates] == list(range(-6, 6))
    assert [rates[0]["set_deg"], rates[0]["spring_kn"], rates[11]["set_deg"], rates[11]["spring_kn"]] == [
        124.0, 2.2, 200.0, 2.4
    ]  # fmt: skip
    assert {rate["neap_kn"] for rate in rates} == {None}
    counted = report["classes"]["TS_PAD"]
    assert (counted["read"], counted["used"], counted["notes"]["hour +6 blank"]) == (2, 1, 1)
    (refusal,) = counted["skipped"]
    assert "value 3 is 'MW'" in refusal
    assert report["classes"]["TS_FEB"]["used"] == 0 and sum(report["classes"]["TS_FEB"]["skipped"].values()) == 1
    assert list(report["classes"]["TS_TIS"]["skipped"]) == ["4 streams at set times, which a plan cannot hold"]


def test_tide_times_without_offset_are_refused_and_with_offset_kept(plan, cell, tmp_path):
    report = read_with_report(plan, tmp_path, CHART=str(cell))
    assert [(row["port"], row["time"], row["height_m"], row["kind"]) for row in rows(plan, "tides")] == [
        ("Port Petrel", "2027/04/28 10:20:00+00", 1.2, "LW"),
        ("Port Petrel", "2027/04/28 14:55:00+00", 4.8, "HW"),
    ]
    (refusal,) = report["classes"]["T_TIMS"]["skipped"]
    assert "without a time zone" in refusal


def test_every_object_read_is_accounted_for(plan, cell, tmp_path):
    report = read_with_report(plan, tmp_path, CHART=str(cell), EXTENT="-30.06,-29.99,30.0,30.1 [EPSG:4326]")
    assert len(report["classes"]) == 16
    for name, counted in report["classes"].items():
        lost = counted["read"] - counted["used"] - counted["clipped_away"] - sum(counted["skipped"].values())
        assert (name, lost) == (name, 0)
    assert report["classes"]["LNDARE"]["clipped_away"] == 2
    assert report["unread_classes"] == {"BOYLAT": 1, "M_COVR": 1}
    assert {name: counts["written"] for name, counts in report["layers"].items()} == {
        name: len(rows(plan, name)) for name in report["layers"]
    }
    assert (report["cell"]["edition"], report["cell"]["sounding_datum"]) == ("4", "lowest astronomical tide")


def test_clipped_to_the_extent(plan, cell):
    read(plan, CHART=str(cell), EXTENT="-30.01,-29.99,29.99,30.03 [EPSG:4326]")
    inside = ogr.CreateGeometryFromWkt("POLYGON((-30.01 29.99,-29.99 29.99,-29.99 30.03,-30.01 30.03,-30.01 29.99))")
    kept = [row for layer in ("channels", "closed_areas", "depth_contours", "soundings") for row in rows(plan, layer)]
    assert len(kept) >= 5
    assert all(inside.Buffer(1e-9).Contains(row["geometry"]) for row in kept)
    assert of_name(rows(plan, "channels"), "Gannet Reach")["geometry"].GetEnvelope() == pytest.approx(
        (-30.01, -30.0, 30.0, 30.01)
    )
    assert rows(plan, "land") == []
    assert len(rows(plan, "stream_stations")) == 1, "the station lies outside but rules the streams inside"


def test_extent_in_another_system(plan, cell, tmp_path):
    degrees, mercator = QgsCoordinateReferenceSystem("EPSG:4326"), QgsCoordinateReferenceSystem("EPSG:3857")
    wanted = QgsRectangle(-30.015, 29.99, -29.99, 30.03)
    metres = QgsCoordinateTransform(degrees, mercator, QgsProject.instance()).transformBoundingBox(wanted)
    extent = f"{metres.xMinimum()},{metres.xMaximum()},{metres.yMinimum()},{metres.yMaximum()} [EPSG:3857]"
    report = read_with_report(plan, tmp_path, CHART=str(cell), EXTENT=extent)
    assert report["extent"] == pytest.approx([-30.015, 29.99, -29.99, 30.03], abs=1e-7)
    assert len(rows(plan, "soundings")) == 1


def test_extent_beyond_the_chart_is_said(plan, cell, tmp_path):
    half = read_with_report(plan, tmp_path, CHART=str(cell), EXTENT="-30.1,-29.7,29.9,30.1 [EPSG:4326]")
    assert "The chart has no data for 50 % of the extent: water there is unknown." in half["warnings"]
    away = read_with_report(plan, tmp_path, CHART=str(cell), EXTENT="-20,-19,10,11 [EPSG:4326]")
    assert any("100 %" in warning for warning in away["warnings"])


def test_other_datum_is_said(tmp_path, cell):
    plan = create_plan(tmp_path / "other.gpkg", datum="mean sea level")
    report = read_with_report(plan, tmp_path, CHART=str(cell))
    assert any("lowest astronomical tide" in text and "mean sea level" in text for text in report["warnings"])


def test_same_datum_is_not_remarked_on(plan, cell, tmp_path):
    assert not any("count" in text for text in read_with_report(plan, tmp_path, CHART=str(cell))["warnings"])


def test_folded_polygon_is_repaired_and_counted(plan, tmp_path):
    path = tmp_path / "IX4FOLDS.000"
    with InventedCell(path) as sea:
        sea.area("RESARE", [(-30.0, 30.0), (-29.98, 30.02), (-29.98, 30.0), (-30.0, 30.02)], RESTRN=["7"])
    report = read_with_report(plan, tmp_path, CHART=str(path))
    assert report["classes"]["RESARE"]["repaired"] == 1
    areas = [row["geometry"] for row in rows(plan, "closed_areas")]
    assert all(area.IsValid() for area in areas)
    # The two triangles of the bow tie: each half of the base 0.02 deg times the height 0.01 deg.
    assert [area.Area() for area in areas] == pytest.approx([1e-4, 1e-4])


def test_reading_twice_changes_nothing(plan, cell, tmp_path):
    empty = sum(len(found) for found in content(plan).values())
    first = read(plan, CHART=str(cell))
    before = content(plan)
    second = read(plan, CHART=str(cell))
    assert content(plan) == before
    assert first["WRITTEN"] == second["ALREADY_THERE"] == sum(len(found) for found in before.values()) - empty
    assert (first["ALREADY_THERE"], second["WRITTEN"]) == (0, 0)


def test_rows_of_the_user_stay(plan, cell):
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_UPDATE)
    layer = dataset.GetLayerByName("soundings")
    feature = ogr.Feature(layer.GetLayerDefn())
    feature.SetField("depth_m", 3.3)
    feature.SetGeometry(ogr.CreateGeometryFromWkt("POINT (-30.0 30.0)"))
    layer.CreateFeature(feature)
    del feature, layer, dataset
    read(plan, CHART=str(cell))
    assert [row["depth_m"] for row in rows(plan, "soundings")][0] == 3.3


@pytest.mark.parametrize("percent", [0, 60, 70])
def test_stopped_run_leaves_the_plan_as_it_was(plan, cell, percent, tmp_path):
    before, report = content(plan), tmp_path / "report.json"
    feedback = QgsProcessingFeedback()
    feedback.progressChanged.connect(lambda done: feedback.cancel() if done >= percent else None)
    if percent == 0:
        feedback.cancel()
    with pytest.raises(QgsProcessingException, match="as it was"):
        read(plan, feedback=feedback, CHART=str(cell), REPORT=str(report))
    assert content(plan) == before
    assert not report.exists()


def test_report_that_cannot_be_written_leaves_the_plan_as_it_was(plan, cell, tmp_path):
    (tmp_path / "taken.json").mkdir()
    (tmp_path / "taken.json" / "kept").touch()
    before = content(plan)
    with pytest.raises(QgsProcessingException, match="taken.json.* could not be written"):
        read(plan, CHART=str(cell), REPORT=str(tmp_path / "taken.json"))
    assert content(plan) == before


def test_plan_that_somebody_else_is_writing_to(plan, cell):
    before = content(plan)
    other = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_UPDATE)
    other.ExecuteSQL("BEGIN IMMEDIATE")
    gdal.SetThreadLocalConfigOption("SQLITE_BUSY_TIMEOUT", "50")
    try:
        with pytest.raises(QgsProcessingException, match="nothing else is writing to"):
            read(plan, CHART=str(cell))
    finally:
        gdal.SetThreadLocalConfigOption("SQLITE_BUSY_TIMEOUT", None)
        other.ExecuteSQL("ROLLBACK")
    assert content(plan) == before


def test_options_of_the_user_for_charts_stay(plan, cell):
    gdal.SetConfigOption("OGR_S57_OPTIONS", "SPLIT_MULTIPOINT=OFF,LIST_AS_STRING=ON")
    try:
        read(plan, CHART=str(cell))
        assert gdal.GetConfigOption("OGR_S57_OPTIONS") == "SPLIT_MULTIPOINT=OFF,LIST_AS_STRING=ON"
    finally:
        gdal.SetConfigOption("OGR_S57_OPTIONS", None)
    assert len(rows(plan, "soundings")) == 6


def test_depths_in_feet_are_refused(plan, cell):
    written = cell.read_bytes()
    # DSPM, S-57 Edition 3.1, Part 3, 7.3.2.1: HDAT, VDAT, SDAT (a byte each), CSCL (four), DUNI (a byte).
    head = struct.pack("<BBBI", 2, 7, 23, 52_000)
    assert written.count(head) == 1
    at = written.index(head) + len(head)
    cell.write_bytes(written[:at] + b"\x03" + written[at + 1 :])
    with pytest.raises(QgsProcessingException, match="metres"):
        read(plan, CHART=str(cell))


@pytest.mark.parametrize(
    ("parameters", "said"),
    [
        ({}, "nothing to read"),
        ({"CHART": "{folder}/none.000"}, "no file"),
        ({"CHART": "{folder}/text.000"}, "cannot be read as an S-57 chart cell"),
        ({"CHART": "{cell}", "EXTENT": "1,1,2,2 [EPSG:4326]"}, "is empty"),
        ({"CHART": "{cell}", "PLAN": "{folder}/none.gpkg"}, "none.gpkg"),
        ({"CHART": "{cell}", "PLAN": "{folder}/text.000"}, "PLAN"),
        ({"CHART": "{cell}", "PLAN": "{folder}/text.gpkg"}, "could not be read"),
    ],
)
def test_wrong_parameters_are_refused_by_name(plan, cell, tmp_path, parameters, said):
    for name in ("text.000", "text.gpkg"):
        (tmp_path / name).write_text("neither a chart nor a plan", encoding="utf-8")
    before = content(plan)
    filled = {key: text.format(folder=tmp_path, cell=cell) for key, text in parameters.items()}
    with pytest.raises(QgsProcessingException, match=said):
        read(Path(filled.pop("PLAN", plan)), **filled)
    assert content(plan) == before
