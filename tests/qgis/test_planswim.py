"""`tideleg:planswim` through QGIS: parameters and outputs, whole files, other systems, zones, threads, the shell."""

from __future__ import annotations

import csv
import gc
import json
import math
import os
import re
import shutil
import sqlite3
import subprocess
import sys
import threading
from contextlib import closing
from datetime import datetime, timedelta
from pathlib import Path
from xml.etree import ElementTree

import jsonschema
import numpy as np
import pytest
from osgeo import gdal
from qgis.core import (
    QgsApplication,
    QgsCoordinateReferenceSystem,
    QgsFeature,
    QgsFeatureRequest,
    QgsProcessingAlgRunnerTask,
    QgsProcessingContext,
    QgsProcessingOutputLayerDefinition,
    QgsProject,
    QgsVectorLayer,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication
from swims import (
    DAY,
    DEPART,
    FILES,
    LEDGE,
    SINKS,
    SLIP,
    TIDE_ROWS,
    TITLE,
    ZONE,
    Heard,
    add_constant_stream,
    add_route,
    add_swimmer,
    box,
    digest,
    every_output,
    flags_of,
    invented_bay,
    left_in,
    moved,
    run,
    swim,
    swum,
    utc,
)
from tideleg.plan_package.store import append_rows, open_layer
from tideleg.processing.planswim import PlanSwim
from tideleg.processing.provider import TidelegProvider

NAMES = (
    "PLAN ROUTE DEPART SWIMMER PACE HEADING_MODE HEADING_EVERY ROUTES MARKS CHANNELS CLOSED_AREAS LAND DEPTH_CONTOURS "
    "SOUNDINGS TIDES STREAM_STATIONS STREAM_RATES LEGS TRACK FLAGS STOPS REPORT GPX CARD CSV "
    "PRIVATE"
).split()
GIVEN = {
    "ROUTES": "routes",
    "MARKS": "marks",
    "CHANNELS": "channels",
    "CLOSED_AREAS": "closed_areas",
    "LAND": "land",
    "DEPTH_CONTOURS": "depth_contours",
    "SOUNDINGS": "soundings",
    "TIDES": "tides",
    "STREAM_STATIONS": "stream_stations",
    "STREAM_RATES": "stream_rates",
}
# The keys of the report, written out here a second time on purpose.
REPORT_KEYS = (
    "tideleg route depart arrive zone swimmer total_m total_min swim_min feasible variation_deg variation_model legs "
    "stops flags warnings"
).split()
LEG_KEYS = (
    "number from to distance_m bearing_true_deg bearing_mag_deg heading_true_deg heading_mag_deg card_heading "
    "ground_speed_m_s minutes depart arrive stream_set_deg stream_kn off_line_m feasible reason headings"
).split()
STOP_KEYS = "name arrive leave depth_now_m latest_leave latest_leave_pessimistic exit".split()
FLAG_KEYS = "kind severity leg name message lon lat from to length_m crossing_angle_deg".split()


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory, qgis_app) -> Path:
    return invented_bay(tmp_path_factory.mktemp("made") / "bay.gpkg")


@pytest.fixture
def plan(qgis_app: object, tmp_path: Path) -> Path:
    return invented_bay(tmp_path / "bay.gpkg")


@pytest.fixture(scope="module")
def schema(root: Path) -> dict:
    return json.loads((root / "docs" / "report.schema.json").read_text(encoding="utf-8"))


@pytest.fixture(scope="module")
def whole(made: Path, tmp_path_factory: pytest.TempPathFactory):
    """One swim with every output, the layers in a GeoPackage."""
    folder = tmp_path_factory.mktemp("whole")
    layers = {name: f"ogr:dbname='{folder / 'out.gpkg'}' table=\"{name.lower()}\" (geom)" for name in SINKS}
    files = {name: str(folder / file) for name, file in FILES.items()}
    ran = swim(made, folder, DEPART=DEPART, **layers, **files)
    assert ran.ok, ran.said
    return ran


def valid(report: dict, schema: dict) -> dict:
    jsonschema.Draft202012Validator(schema).validate(report)
    return report


# ---------------------------------------------------------------- what it is called


def test_parameters_are_the_agreed_ones_and_only_the_departure_is_needed(qgis_app) -> None:
    algorithm = PlanSwim().create()
    parameters = {parameter.name(): parameter for parameter in algorithm.parameterDefinitions()}
    assert list(parameters) == NAMES
    needed = [name for name, one in parameters.items() if not one.flags() & one.Flag.FlagOptional]
    assert [name for name in needed if parameters[name].defaultValue() is None] == ["DEPART"]
    assert [name for name, one in parameters.items() if one.flags() & one.Flag.FlagAdvanced] == list(GIVEN)
    assert parameters["HEADING_MODE"].defaultValue() == 0
    assert len(parameters["HEADING_MODE"].options()) == 3
    assert set(NAMES[-9:-1]) <= {output.name() for output in algorithm.outputDefinitions()}


# ---------------------------------------------------------------- outputs


def test_report_has_exactly_the_agreed_keys_and_fits_its_schema(whole, schema) -> None:
    report = valid(whole.report, schema)
    assert list(report) == REPORT_KEYS
    assert len(report["legs"]) == 2
    assert len(report["stops"]) == 3
    for part, keys in (("legs", LEG_KEYS), ("stops", STOP_KEYS), ("flags", FLAG_KEYS)):
        assert report[part]
        assert all(list(entry) == keys for entry in report[part])
    assert all(list(change) == ["from", "heading_mag_deg"] for leg in report["legs"] for change in leg["headings"])


def test_report_says_what_was_swum(whole) -> None:
    report = whole.report
    assert (report["route"], report["swimmer"], report["zone"]) == ("Ledge", "Runa", ZONE)
    assert report["depart"] == f"{DEPART}:00+01:00"
    assert [(leg["from"], leg["to"]) for leg in report["legs"]] == [
        ("Kettle Slip", "Gannet Ledge"),
        ("Gannet Ledge", "Kettle Slip"),
    ]
    stop = report["stops"][1]
    stay = datetime.fromisoformat(stop["leave"]) - datetime.fromisoformat(stop["arrive"])
    assert stay == timedelta(minutes=20)
    assert report["total_min"] == pytest.approx(report["swim_min"] + 20.0, abs=1e-4)
    assert report["swim_min"] == pytest.approx(sum(leg["minutes"] for leg in report["legs"]), abs=1e-4)
    assert report["total_m"] == pytest.approx(sum(leg["distance_m"] for leg in report["legs"]), abs=1e-4)
    kinds = {flag["kind"] for flag in report["flags"]}
    assert {"channel", "closed_area"} <= kinds
    assert "stream_unknown" not in kinds
    assert "tide_unknown" not in kinds


def test_depth_comes_from_the_sounding_beside_the_mark_and_the_tide(whole) -> None:
    stop = whole.report["stops"][1]
    t = (datetime.fromisoformat(stop["arrive"]) - utc("08:00")) / (utc("14:15") - utc("08:00"))
    # Cosine between high and low water, the rule of twelfths drawn out.
    height = 2.4 + 1.5 * math.cos(math.pi * t)
    assert stop["depth_now_m"] == pytest.approx(9.2 + height, abs=0.001)


def test_all_times_of_the_report_are_in_the_plans_zone(whole) -> None:
    times = [whole.report["depart"], whole.report["arrive"]]
    times += [leg[key] for leg in whole.report["legs"] for key in ("depart", "arrive")]
    times += [flag[key] for flag in whole.report["flags"] for key in ("from", "to") if flag[key]]
    assert len(times) > 6
    assert {time[-6:] for time in times} == {"+01:00"}


def test_results_name_every_output_and_what_was_asked(whole) -> None:
    assert set(whole.results) == {*SINKS, *FILES, "FEASIBLE", "MINUTES"}
    assert whole.results["MINUTES"] == pytest.approx(whole.report["total_min"], abs=1e-5)
    assert whole.results["FEASIBLE"] is whole.report["feasible"]
    assert whole.warnings == whole.report["warnings"]


@pytest.mark.parametrize(
    ("name", "kind", "count"),
    [
        ("LEGS", QgsWkbTypes.GeometryType.LineGeometry, 2),
        ("TRACK", QgsWkbTypes.GeometryType.LineGeometry, 2),
        ("STOPS", QgsWkbTypes.GeometryType.PointGeometry, 3),
        ("FLAGS", QgsWkbTypes.GeometryType.PointGeometry, None),
    ],
)
def test_layers_in_a_geopackage_hold_what_the_report_says(whole, name, kind, count) -> None:
    layer = QgsVectorLayer(whole.results[name], name, "ogr")
    assert layer.isValid()
    assert layer.crs().authid() == "EPSG:4326"
    assert layer.geometryType() == kind
    assert layer.featureCount() == (len(whole.report["flags"]) if count is None else count)
    assert all(not row.geometry().isEmpty() for row in layer.getFeatures())


def test_legs_and_flags_of_the_layers_are_those_of_the_report(whole) -> None:
    legs = list(QgsVectorLayer(whole.results["LEGS"], "legs", "ogr").getFeatures())
    for row, leg in zip(legs, whole.report["legs"]):
        assert row["card_heading"] == leg["card_heading"]
        assert row["minutes"] == pytest.approx(leg["minutes"], abs=1e-5)
        assert row["arrive_local"] == leg["arrive"]
    flags = list(QgsVectorLayer(whole.results["FLAGS"], "flags", "ogr").getFeatures())
    assert [row["message"] for row in flags] == [flag["message"] for flag in whole.report["flags"]]
    for row, flag in zip(flags, whole.report["flags"]):
        assert row.geometry().asPoint().x() == pytest.approx(flag["lon"], abs=1e-6)


def test_track_ends_on_the_mark_and_bows_as_reported(whole) -> None:
    track = list(QgsVectorLayer(whole.results["TRACK"], "track", "ogr").getFeatures())
    last = track[0].geometry().constGet().endPoint()
    assert (last.x(), last.y()) == pytest.approx(LEDGE, abs=1e-6)
    assert track[0]["off_line_m"] == pytest.approx(whole.report["legs"][0]["off_line_m"], abs=1e-5)
    seconds = last.m() - track[0].geometry().constGet().startPoint().m()
    assert seconds == pytest.approx(60.0 * whole.report["legs"][0]["minutes"], abs=0.01)


def test_gpx_holds_the_marks_and_the_route_in_swimming_order(whole) -> None:
    tree = ElementTree.parse(whole.results["GPX"]).getroot()
    space = "{http://www.topografix.com/GPX/1/1}"
    assert (tree.tag, tree.get("version")) == (f"{space}gpx", "1.1")
    names = [one.findtext(f"{space}name") for one in tree.iterfind(f"{space}rte/{space}rtept")]
    assert names == ["Kettle Slip", "Gannet Ledge", "Kettle Slip"]
    place = tree.findall(f"{space}rte/{space}rtept")[1]
    assert (float(place.get("lon")), float(place.get("lat"))) == pytest.approx(LEDGE, abs=1e-6)
    marks = {one.findtext(f"{space}name") for one in tree.iterfind(f"{space}wpt")}
    assert marks == {"Kettle Slip", "Gannet Ledge"}
    # What stands at a place is how one gets there.
    assert whole.report["legs"][0]["card_heading"] in place.findtext(f"{space}cmt")


def test_csv_has_a_row_for_each_leg(whole) -> None:
    with open(whole.results["CSV"], newline="", encoding="utf-8-sig") as file:
        rows = list(csv.DictReader(file))
    assert [row["from"] for row in rows] == [leg["from"] for leg in whole.report["legs"]]
    assert [row["card_heading"] for row in rows] == [leg["card_heading"] for leg in whole.report["legs"]]


def test_card_has_few_sides_with_ink_on_each(whole) -> None:
    assert Path(whole.results["CARD"]).read_bytes().startswith(b"%PDF")
    card = gdal.OpenEx(whole.results["CARD"], open_options=["DPI=50"])
    sides = [name for name, _ in card.GetSubDatasets()] or [whole.results["CARD"]]
    assert 1 <= len(sides) <= 4
    for side in sides:
        page = gdal.OpenEx(side, open_options=["DPI=50"])
        dark = np.mean(page.ReadAsArray()[:3].min(axis=0) < 128)
        assert 0.01 < dark < 0.5


def test_temporary_outputs_and_memory_layers(plan: Path) -> None:
    layers = {"LEGS": "memory:", "TRACK": "TEMPORARY_OUTPUT", "FLAGS": "memory:", "STOPS": "TEMPORARY_OUTPUT"}
    ran = swim(plan, plan.parent, DEPART=DEPART, REPORT="TEMPORARY_OUTPUT", **layers)
    assert ran.ok, ran.said
    assert [ran.layers[name].dataProvider().name() for name in SINKS] == ["memory"] * 4
    assert [ran.layers[name].featureCount() for name in ("LEGS", "TRACK", "STOPS")] == [2, 2, 3]
    assert Path(ran.results["REPORT"]).is_file()
    assert left_in(plan.parent) == ["bay.gpkg"]


def test_only_the_outputs_asked_for_are_written(plan: Path) -> None:
    ran = swim(plan, plan.parent, DEPART=DEPART, REPORT=None, CSV=str(plan.parent / "legs.csv"))
    assert ran.ok, ran.said
    assert {"CSV"} <= set(ran.results) <= {"CSV", "REPORT", "FEASIBLE", "MINUTES"}
    assert "legs.csv" in left_in(plan.parent)
    assert not {"card.pdf", "marks.gpx"} & set(left_in(plan.parent))


def test_layers_come_into_the_project_with_their_style(plan: Path) -> None:
    context = QgsProcessingContext()
    sink = QgsProcessingOutputLayerDefinition("memory:", QgsProject.instance())
    ran = run(PlanSwim().create(), {"PLAN": str(plan), "DEPART": DEPART, "LEGS": sink}, context=context)
    assert ran.ok, ran.said
    details = context.layersToLoadOnCompletion()
    assert list(details) == [ran.results["LEGS"]]
    layer = context.getMapLayer(ran.results["LEGS"])
    before = layer.renderer().dump()
    gc.collect()  # the algorithm is gone by the time QGIS loads its layers
    details[ran.results["LEGS"]].postProcessor().postProcessLayer(layer, context, Heard())
    assert layer.renderer().dump() != before


def test_a_run_leaves_the_plan_as_it_was(plan: Path) -> None:
    before = digest(plan)
    swum(plan, plan.parent, DEPART=DEPART)
    assert digest(plan) == before
    assert left_in(plan.parent) == ["bay.gpkg", "report.json"]


# ---------------------------------------------------------------- layers in place of the plan's


def in_system(plan: Path, name: str, authid: str) -> QgsVectorLayer:
    """The plan's layer as a memory layer in another reference system."""
    part = "LineString" if name == "channels" else ""
    layer = open_layer(plan, name, geometry_type=part)
    request = QgsFeatureRequest()
    if layer.isSpatial():
        crs = QgsCoordinateReferenceSystem(authid)
        request.setDestinationCrs(crs, QgsProject.instance().transformContext())
    copy = layer.materialize(request)
    assert copy.featureCount() == layer.featureCount() > 0
    return copy


def close_to(report: dict, other: dict) -> None:
    """The two reports tell of the same swim, to a millimetre and a millisecond."""
    assert report["total_m"] == pytest.approx(other["total_m"], abs=2e-3)
    assert report["total_min"] == pytest.approx(other["total_min"], abs=1e-3)
    for leg, same in zip(report["legs"], other["legs"]):
        assert leg["heading_true_deg"] == pytest.approx(same["heading_true_deg"], abs=1e-3)
        assert leg["stream_kn"] == pytest.approx(same["stream_kn"], abs=1e-5)
        assert (leg["from"], leg["to"]) == (same["from"], same["to"])
    for stop, same in zip(report["stops"], other["stops"]):
        assert stop["depth_now_m"] == (
            None if same["depth_now_m"] is None else pytest.approx(same["depth_now_m"], abs=1e-3)
        )
    assert [flag["kind"] for flag in report["flags"]] == [flag["kind"] for flag in other["flags"]]


@pytest.mark.parametrize("authid", ["EPSG:3857", "EPSG:32628", "EPSG:4258"])
@pytest.mark.parametrize("with_plan", [True, False], ids=["plan", "no plan"])
def test_layers_of_any_system_give_the_same_swim(
    plan: Path, whole, schema, tmp_path: Path, authid: str, with_plan: bool
) -> None:
    layers = {parameter: in_system(plan, name, authid) for parameter, name in GIVEN.items()}
    if with_plan:
        with closing(sqlite3.connect(plan)) as connection:
            # Proof that the given layers are read: the plan's own are gone.
            connection.execute("DELETE FROM stream_rates")
            connection.execute("DELETE FROM tides")
            connection.commit()
    depart = f"{DEPART}+01:00"
    report = swum(plan if with_plan else None, tmp_path, DEPART=depart, PACE=0.6, **layers)
    valid(report, schema)
    assert report["zone"] == (ZONE if with_plan else "UTC")
    assert report["swimmer"] == ("Runa" if with_plan else "default swimmer")
    other = dict(whole.report)
    if not with_plan:
        # Without a plan there is no swimmer's table, so the swimmer's other numbers are guesses and said so.
        assert "No plan was given" in report["warnings"][0]
        assert [flag["kind"] for flag in report["flags"]].count("uncalibrated") == 1
    other["flags"] = [flag for flag in other["flags"] if flag["kind"] != "uncalibrated"]
    report["flags"] = [flag for flag in report["flags"] if flag["kind"] != "uncalibrated"]
    close_to(report, other)


def test_layer_with_fields_in_another_order_and_of_other_types(plan: Path, whole, tmp_path: Path) -> None:
    """As a table typed elsewhere comes in: text for numbers and times, extra columns."""
    tides = QgsVectorLayer(
        "None?field=remark:string&field=kind:string&field=height_m:string&field=time:string", "t", "memory"
    )
    for when, height, kind in TIDE_ROWS:
        row = QgsFeature(tides.fields())
        row.setAttributes(["typed", kind, str(height), f"{DAY} {when}:00"])
        tides.dataProvider().addFeature(row)
    report = swum(plan, tmp_path, DEPART=DEPART, TIDES=tides)
    # The table has no port, and the station names one: so its stream is unknown, not zero.
    assert flags_of(report, "stream_unknown")
    assert report["legs"][0]["stream_kn"] is None
    assert (
        "Layer 't', field 'time': times without a zone were read as UTC. Write Z or their offset." in report["warnings"]
    )
    # The only port there is gives the heights.
    stations = in_system(plan, "stream_stations", "EPSG:4326")
    stations.startEditing()
    for row in list(stations.getFeatures()):
        stations.changeAttributeValue(row.id(), stations.fields().indexOf("port"), None)
    stations.commitChanges()
    close_to(swum(plan, tmp_path, DEPART=DEPART, TIDES=tides, STREAM_STATIONS=stations), whole.report)


def test_a_layer_that_is_not_there_is_refused_not_replaced_by_the_plans(plan: Path) -> None:
    ran = swim(plan, plan.parent, DEPART=DEPART, MARKS=str(plan.parent / "nowhere.shp"))
    assert not ran.ok
    assert "nowhere.shp" in ran.said
    assert left_in(plan.parent) == ["bay.gpkg"]


def test_lines_and_areas_of_the_channels_are_both_met(plan: Path, tmp_path: Path) -> None:
    area = {"name": "Lane", "kind": "lane", "flow_deg": 0.0}
    append_rows(plan, "channels", [(box(650.0, -500.0, 700.0, 800.0), area)])
    report = swum(plan, tmp_path, DEPART=DEPART)
    assert {flag["name"] for flag in flags_of(report, "channel")} == {"Cut", "Lane"}


def test_neither_plan_nor_routes_is_refused_before_the_run(qgis_app, tmp_path: Path) -> None:
    ran = swim(None, tmp_path, DEPART=DEPART)
    assert not ran.ok
    assert "Give a plan" in ran.said
    assert left_in(tmp_path) == []


# ---------------------------------------------------------------- who, which, how


def test_pace_overrides_the_swimmers(plan: Path, whole, tmp_path: Path) -> None:
    report = swum(plan, tmp_path, DEPART=DEPART, PACE=0.9)
    assert report["swimmer"] == "Runa"
    assert report["swim_min"] < 0.8 * whole.report["swim_min"]


@pytest.mark.parametrize("pace", [0.0, -0.5, 9.0, "quick"])
def test_pace_nobody_swims_is_refused(plan: Path, pace) -> None:
    ran = swim(plan, plan.parent, DEPART=DEPART, PACE=pace)
    assert not ran.ok
    assert "PACE" in ran.said or "Asked for a pace" in ran.said
    assert "swimmers table" not in ran.said
    assert left_in(plan.parent) == ["bay.gpkg"]


def test_swimmer_is_chosen_by_name_and_an_unknown_one_is_told(plan: Path, tmp_path: Path) -> None:
    add_swimmer(plan, 0.8, name="Odd")
    assert swum(plan, tmp_path, DEPART=DEPART, SWIMMER="Odd")["swimmer"] == "Odd"
    report = swum(plan, tmp_path, DEPART=DEPART)
    assert report["swimmer"] == "Runa"
    assert any("No swimmer was named" in warning for warning in report["warnings"])
    ran = swim(plan, tmp_path, DEPART=DEPART, SWIMMER="Nils")
    assert not ran.ok
    for word in ("'Nils'", "Runa", "Odd", "add the swimmer"):
        assert word in ran.said


def test_route_is_chosen_by_name_and_never_guessed(plan: Path, tmp_path: Path) -> None:
    add_route(plan, "Short", SLIP, moved(300.0, 0.0))
    assert swum(plan, tmp_path, DEPART=DEPART, ROUTE="Short")["route"] == "Short"
    for asked, word in ((..., "No route was named"), ("Long", "'Long'")):
        ran = swim(plan, tmp_path, DEPART=DEPART, ROUTE=asked)
        assert not ran.ok
        assert all(one in ran.said for one in (word, "Ledge", "Short", "Name one route"))
    add_route(plan, "Short", SLIP, moved(400.0, 0.0))
    ran = swim(plan, tmp_path, DEPART=DEPART, ROUTE="Short")
    assert not ran.ok
    assert "stands there once" in ran.said


def test_one_heading_per_leg_is_one_heading(whole) -> None:
    assert [len(leg["headings"]) for leg in whole.report["legs"]] == [1, 1]
    for leg in whole.report["legs"]:
        assert leg["headings"] == [{"from": leg["depart"], "heading_mag_deg": leg["heading_mag_deg"]}]
    assert whole.report["legs"][0]["off_line_m"] > 1.0


@pytest.mark.parametrize("every", [5, 10])
def test_new_headings_come_every_so_many_minutes(plan: Path, schema, tmp_path: Path, every: int) -> None:
    report = valid(swum(plan, tmp_path, DEPART=DEPART, HEADING_MODE=1, HEADING_EVERY=every), schema)
    for leg in report["legs"]:
        start = datetime.fromisoformat(leg["depart"])
        minutes = [(datetime.fromisoformat(one["from"]) - start).total_seconds() / 60.0 for one in leg["headings"]]
        assert minutes[0] == 0.0
        assert len(minutes) > 1
        assert all(round(minute, 1) % every == 0.0 for minute in minutes)
        assert max(minutes) < leg["minutes"]


def test_holding_the_line_stays_on_it(plan: Path, whole, schema, tmp_path: Path) -> None:
    held = valid(swum(plan, tmp_path, DEPART=DEPART, HEADING_MODE=2), schema)
    renewed = swum(plan, tmp_path, DEPART=DEPART, HEADING_MODE=1, HEADING_EVERY=5)
    bows = [report["legs"][0]["off_line_m"] for report in (held, renewed, whole.report)]
    assert bows[0] < 0.01 < bows[1] < bows[2]
    # In a stream that changes, one well-chosen heading is never slower than crabbing along the line.
    assert whole.report["legs"][0]["minutes"] <= held["legs"][0]["minutes"]


# ---------------------------------------------------------------- when


@pytest.mark.parametrize(
    ("text", "depart"),
    [
        ("2027-06-05T10:00", "2027-06-05T10:00:00+01:00"),
        ("2027-06-05 10:00:30", "2027-06-05T10:00:30+01:00"),
        ("2027-06-05T09:00Z", "2027-06-05T10:00:00+01:00"),
        (" 2027-06-05T21:00+12:00 ", "2027-06-05T10:00:00+01:00"),
        ("2027-06-05T04:30-04:30", "2027-06-05T10:00:00+01:00"),
        ("2027-01-05T10:00", "2027-01-05T10:00:00+00:00"),
        # Clocks go from 01:00 to 02:00 on 28 March 2027 and from 02:00 back to 01:00 on 31 October 2027 in Lisbon.
        ("2027-03-28T00:59", "2027-03-28T00:59:00+00:00"),
        ("2027-03-28T02:00", "2027-03-28T02:00:00+01:00"),
        ("2027-10-31T01:30+01:00", "2027-10-31T01:30:00+01:00"),
        ("2027-10-31T01:30+00:00", "2027-10-31T01:30:00+00:00"),
    ],
)
def test_departure_is_read_in_the_plans_zone_unless_it_has_an_offset(plan, tmp_path, text, depart) -> None:
    assert swum(plan, tmp_path, DEPART=text)["depart"] == depart


@pytest.mark.parametrize(
    ("text", "words"),
    [
        (
            "2027-03-28T01:30",
            ("does not exist", "2027-03-28T01:30:00+00:00", "2027-03-28T01:30:00+01:00"),
        ),
        ("2027-10-31T01:30", ("twice", "2027-10-31T01:30:00+01:00", "2027-10-31T01:30:00+00:00")),
        ("tomorrow", ("'tomorrow'", "ISO 8601")),
        ("05/06/2027 10:00", ("'05/06/2027 10:00'", "ISO 8601")),
        ("2027-06-31T10:00", ("'2027-06-31T10:00'", "ISO 8601")),
        ("   ", ("ISO 8601",)),
        ("2031-06-05T10:00", ("2031-06-05", "WMM2025", "2029")),
        ("2024-12-31T23:00", ("2024-12-31", "2025-01-01")),
    ],
)
def test_departure_that_cannot_be_meant_is_refused_with_what_to_write(plan: Path, text: str, words) -> None:
    ran = swim(plan, plan.parent, DEPART=text)
    assert not ran.ok
    for word in words:
        assert word in ran.said
    assert left_in(plan.parent) == ["bay.gpkg"]


def test_a_swim_through_the_hour_that_comes_twice_keeps_its_length(plan: Path, tmp_path: Path) -> None:
    add_constant_stream(plan, 0.0, None, station="Z")
    still = {name: in_system(plan, name, "EPSG:4326") for name in ("stream_stations", "stream_rates")}
    for layer in still.values():
        layer.dataProvider().deleteFeatures([row.id() for row in layer.getFeatures() if row["station"] != "Z"])
    water = {name.upper(): layer for name, layer in still.items()}
    report = swum(plan, tmp_path, DEPART="2027-10-31T01:30+01:00", **water)
    start, end = (datetime.fromisoformat(report[key]) for key in ("depart", "arrive"))
    assert report["total_min"] > 60.0
    assert (end - start).total_seconds() / 60.0 == pytest.approx(report["total_min"], abs=0.02)


# ---------------------------------------------------------------- whole or not at all


class StopsAfter(Heard):
    """Cancels itself when it has been asked so many times whether to go on."""

    def __init__(self, asks: int) -> None:
        super().__init__()
        self.left = asks

    def isCanceled(self) -> bool:
        self.left -= 1
        return self.left < 0


@pytest.mark.parametrize("asks", [0, 1, 2])
def test_cancelled_run_writes_nothing(plan: Path, asks: int) -> None:
    before, folder = digest(plan), plan.parent
    outputs = every_output(folder)
    heard = StopsAfter(asks)
    ran = swim(plan, folder, heard, DEPART=DEPART, **outputs)
    assert heard.left < 0, "it was asked too seldom to be stopped"
    assert ran.results == {}
    assert left_in(folder) == ["bay.gpkg"]
    assert digest(plan) == before


@pytest.mark.parametrize("bad", [*FILES, *SINKS])
def test_output_that_cannot_be_written_leaves_none_of_the_others(plan: Path, bad: str) -> None:
    folder = plan.parent
    (folder / "a file").write_text("in the way", encoding="utf-8")
    outputs = every_output(folder)
    outputs[bad] = str(folder / "a file" / f"out{Path(outputs[bad]).suffix}")
    ran = swim(plan, folder, DEPART=DEPART, **outputs)
    assert not ran.ok
    assert "a file" in ran.said
    assert left_in(folder) == ["a file", "bay.gpkg"]


def test_older_outputs_stand_when_a_run_fails_and_go_when_it_succeeds(plan: Path) -> None:
    folder = plan.parent
    files = {name: folder / file for name, file in FILES.items()}
    for path in files.values():
        path.write_text("older", encoding="utf-8")
    outputs = {name: str(path) for name, path in files.items()}
    assert not swim(plan, folder, DEPART="nonsense", **outputs).ok
    assert {path.read_text(encoding="utf-8") for path in files.values()} == {"older"}
    assert swim(plan, folder, DEPART=DEPART, **outputs).ok
    assert all(path.read_bytes() != b"older" for path in files.values())


# ---------------------------------------------------------------- the user's own edits


def test_uncommitted_edits_are_neither_saved_nor_lost(plan: Path, whole, tmp_path: Path) -> None:
    layer = open_layer(plan, "marks")
    row = next(layer.getFeatures())
    assert layer.startEditing()
    assert layer.changeAttributeValue(row.id(), layer.fields().indexOf("name"), "Renamed")
    assert layer.deleteFeature([one.id() for one in layer.getFeatures()][1])
    report = swum(plan, tmp_path, DEPART=DEPART)
    # The plan's file is what was saved.
    assert [stop["name"] for stop in report["stops"]] == [stop["name"] for stop in whole.report["stops"]]
    assert layer.isEditable()
    assert layer.isModified()
    assert [one["name"] for one in layer.getFeatures()] == ["Renamed"]
    # Given as a layer, it is seen as it stands on the screen, and is still not saved.
    seen = swum(plan, tmp_path, DEPART=DEPART, MARKS=layer)
    assert [stop["name"] for stop in seen["stops"]] == ["Renamed", "Waypoint 1", "Renamed"]
    assert layer.isModified()
    with closing(sqlite3.connect(plan)) as connection:
        assert connection.execute("SELECT name FROM marks").fetchall() == [("Kettle Slip",), ("Gannet Ledge",)]
    assert layer.rollBack()
    assert layer.featureCount() == 2


def test_only_selected_rows_are_read_where_that_is_asked(plan: Path, tmp_path: Path) -> None:
    from qgis.core import QgsProcessingFeatureSourceDefinition

    add_route(plan, "Short", SLIP, moved(300.0, 0.0))
    routes = open_layer(plan, "routes")
    QgsProject.instance().addMapLayer(routes)
    try:
        routes.selectByExpression("name = 'Short'")
        chosen = QgsProcessingFeatureSourceDefinition(routes.id(), selectedFeaturesOnly=True)
        assert swum(plan, tmp_path, DEPART=DEPART, ROUTES=chosen)["route"] == "Short"
    finally:
        QgsProject.instance().removeMapLayer(routes.id())


# ---------------------------------------------------------------- other threads, other processes


def test_runs_as_a_task_in_the_background(plan: Path, whole, schema) -> None:
    folder, context, heard = plan.parent, QgsProcessingContext(), Heard()
    context.setProject(QgsProject.instance())
    outputs = {name: str(folder / file) for name, file in FILES.items()}
    # The registry's copy of the algorithm is what a task runs, so that QGIS owns it.
    parameters = {"PLAN": str(plan), "DEPART": DEPART, "LEGS": "memory:", **outputs}
    algorithm = PlanSwim().create()
    task, done = QgsProcessingAlgRunnerTask(algorithm, parameters, context, heard), []
    task.executed.connect(lambda ok, results: done.append((ok, dict(results))))
    QgsApplication.taskManager().addTask(task)
    deadline = datetime.now().astimezone() + timedelta(seconds=60)
    while not done and datetime.now().astimezone() < deadline:
        QCoreApplication.processEvents()
    assert done, "the task did not come back"
    ok, results = done[0]
    assert ok, heard.errors
    report = valid(json.loads(Path(results["REPORT"]).read_text(encoding="utf-8")), schema)
    assert report == whole.report
    assert set(FILES.values()) <= set(left_in(folder))


def test_worker_thread_needs_no_layer_of_the_main_thread(plan: Path, whole) -> None:
    algorithm, context, heard = PlanSwim().create(), QgsProcessingContext(), Heard()
    layer = in_system(plan, "marks", "EPSG:3857")
    parameters = {"PLAN": str(plan), "DEPART": DEPART, "MARKS": layer, "REPORT": str(plan.parent / "report.json")}
    assert algorithm.prepare(parameters, context, heard)
    del layer
    results = []
    worker = threading.Thread(target=lambda: results.append(algorithm.runPrepared(parameters, context, heard)))
    worker.start()
    worker.join(60.0)
    algorithm.postProcess(context, heard)
    assert results and results[0]["MINUTES"] == pytest.approx(whole.results["MINUTES"], abs=1e-3)


def shell(arguments: list[str], **environment: str) -> subprocess.CompletedProcess[str]:
    known = os.pathsep.join(path for path in sys.path if path)
    environment = {**os.environ, "PYTHONPATH": known, **environment}
    return subprocess.run(arguments, capture_output=True, text=True, env=environment, timeout=120, check=False)


def test_from_the_command_line_in_another_zone_of_the_machine(
    plan: Path, whole, schema, tmp_path_factory, root: Path
) -> None:
    program = shutil.which("qgis_process.bin") or shutil.which("qgis_process")
    if program is None:
        pytest.skip("qgis_process is not installed")
    folder = tmp_path_factory.mktemp("shell")
    environment = {
        "QGIS_PLUGINPATH": str(root / ".cache" / "python"),
        "QGIS_CUSTOM_CONFIG_PATH": str(folder / "config"),
        "TZ": "Pacific/Auckland",
    }
    enabled = shell([program, "plugins", "enable", "tideleg"], **environment)
    assert enabled.returncode == 0, enabled.stderr
    made = shell(
        [
            program,
            "--json",
            "run",
            "tideleg:newplan",
            "--",
            f"PLAN={folder / 'new.gpkg'}",
            f"ZONE={ZONE}",
            f"TITLE={TITLE}",
        ],
        **environment,
    )
    assert made.returncode == 0, made.stdout + made.stderr
    assert (folder / "new.gpkg").is_file()
    # The rows are the same; what is tried here is the reading and writing in another zone.
    copy_rows(plan, folder / "new.gpkg")
    outputs = [f"{name}={folder / file}" for name, file in FILES.items()] + [f"LEGS={folder / 'legs.gpkg'}"]
    done = shell(
        [
            program,
            "--json",
            "run",
            "tideleg:planswim",
            "--",
            f"PLAN={folder / 'new.gpkg'}",
            f"DEPART={DEPART}",
            *outputs,
        ],
        **environment,
    )
    assert done.returncode == 0, done.stdout + done.stderr
    told = json.loads(done.stdout[done.stdout.index("{") :])
    assert told["results"]["REPORT"] == str(folder / "report.json")
    report = valid(json.loads((folder / "report.json").read_text(encoding="utf-8")), schema)
    assert report == whole.report
    assert (folder / "card.pdf").stat().st_size > 1000
    # Only when it was made differs.
    gpx_of_both = (folder / "marks.gpx", Path(whole.results["GPX"]))
    here, there = (re.sub(r"<time>[^<]*</time>", "", file.read_text("utf-8"), count=1) for file in gpx_of_both)
    assert here == there

    wrong = shell(
        [program, "run", "tideleg:planswim", "--", f"PLAN={folder / 'new.gpkg'}", "DEPART=2027-03-28T01:30"],
        **environment,
    )
    assert wrong.returncode == 1
    assert "does not exist" in wrong.stdout + wrong.stderr


def copy_rows(source: Path, target: Path) -> None:
    with closing(sqlite3.connect(source)) as connection:
        names = [name for (name,) in connection.execute("SELECT table_name FROM gpkg_contents")]
    for name in names:
        if name != "settings":
            gdal.VectorTranslate(str(target), str(source), layers=[name], accessMode="append", layerName=name)


def test_the_provider_offers_it_under_its_id(qgis_app) -> None:
    provider = TidelegProvider()
    QgsApplication.processingRegistry().addProvider(provider)
    try:
        algorithm = QgsApplication.processingRegistry().createAlgorithmById("tideleg:planswim")
        assert algorithm is not None
        assert algorithm.displayName() == "Plan swim"
        assert run(algorithm, {"DEPART": DEPART}).ok is False
    finally:
        QgsApplication.processingRegistry().removeProvider(provider)
