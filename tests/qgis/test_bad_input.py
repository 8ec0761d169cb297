"""What planswim is given and cannot use: refused by layer, row, field and value with a remedy, or skipped and counted.

After each refusal the plan's file is byte for byte what it was, and no output is there.
"""

from __future__ import annotations

import csv
import json
import os
import shutil
import sqlite3
from collections.abc import Callable
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from xml.etree import ElementTree

import pytest
from osgeo import gdal, ogr
from qgis.core import QgsCoordinateReferenceSystem, QgsFeature, QgsGeometry, QgsVectorLayer
from swims import (
    DEPART,
    LAT,
    LEDGE,
    LON,
    SLIP,
    Ran,
    add_constant_stream,
    add_route,
    box,
    digest,
    every_output,
    flags_of,
    invented_bay,
    left_in,
    line,
    moved,
    point,
    swim,
    swum,
    utc,
)
from tideleg.core.errors import SwimPlanError
from tideleg.plan_package import database
from tideleg.plan_package.store import append_rows, create_plan, write_settings


@pytest.fixture
def plan(qgis_app: object, tmp_path: Path) -> Path:
    return invented_bay(tmp_path / "bay.gpkg")


def refused(plan: Path, *words: str, **parameters: object) -> str:
    """A run with every output that must be refused with all the words, and leaves nothing and changes nothing."""
    before, there = digest(plan), left_in(plan.parent)
    ran = swim(plan, plan.parent, **{"DEPART": DEPART, "ROUTE": "Ledge", **every_output(plan.parent), **parameters})
    assert not ran.ok
    for word in words:
        assert word in ran.said
    assert left_in(plan.parent) == there
    assert digest(plan) == before
    return ran.said


def accepted(plan: Path, **parameters: object) -> Ran:
    """A run that must succeed; what it said is in its report."""
    ran = swim(plan, plan.parent, **{"DEPART": DEPART, "ROUTE": "Ledge", **parameters})
    assert ran.ok, ran.said
    assert "NaN" not in (plan.parent / "report.json").read_text(encoding="utf-8")
    return ran


def spoil(plan: Path, table: str, column: str, value: object, row: int | None = None) -> None:
    """Put a value into a cell as another program would, past the plugin's own checks and the form's."""
    where = "" if row is None else f" WHERE fid = {row}"
    literal = "NULL" if value is None else repr(value)
    if isinstance(value, str):
        literal = "'" + value.replace("'", "''") + "'"
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_UPDATE)
    dataset.ExecuteSQL(f'UPDATE "{table}" SET "{column}" = {literal}{where}')


def emptied(plan: Path, *tables: str) -> None:
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_UPDATE)
    for table in tables:
        dataset.ExecuteSQL(f'DELETE FROM "{table}"')


def drawn(
    kind: str, fields: str, *rows: tuple[str | QgsGeometry | None, dict], crs: str = "EPSG:4326"
) -> QgsVectorLayer:
    """A layer in memory, as a user brings it; fields like `name:string,depth_m:double`."""
    uri = f"{kind}?" + "&".join([f"crs={crs}"] * bool(crs) + [f"field={one}" for one in fields.split(",") if one])
    layer = QgsVectorLayer(uri, f"my {kind.lower()} layer", "memory")
    assert layer.isValid()
    if not crs:
        layer.setCrs(QgsCoordinateReferenceSystem())
    for geometry, values in rows:
        feature = QgsFeature(layer.fields())
        if geometry is not None:
            feature.setGeometry(QgsGeometry.fromWkt(geometry) if isinstance(geometry, str) else geometry)
        for name, value in values.items():
            feature.setAttribute(layer.fields().indexOf(name), value)
        assert layer.dataProvider().addFeature(feature)
    return layer


# ---------------------------------------------------------------- a value in a cell of the plan


@dataclass(frozen=True)
class Cell:
    """A value that is not allowed, and what the message must say of what is."""

    layer: str
    field: str
    value: object
    allowed: str
    row: int = 1
    shown: str | None = None

    def __str__(self) -> str:
        return f"{self.layer}.{self.field}={self.value}"


CELLS = (
    Cell("stream_rates", "hour", 7, "-6 to 6", row=3),
    Cell("stream_rates", "hour", -7, "-6 to 6", row=3),
    Cell("stream_rates", "spring_kn", 40.0, "0 to 15", row=3),
    Cell("stream_rates", "neap_kn", -1.0, "0 to 15", row=3),
    Cell("stream_rates", "set_deg", 361.0, "0 to 360", row=3),
    Cell("stream_rates", "station", "B", "must be in stream_stations, which has A", row=3),
    Cell("soundings", "depth_m", -3.0, "0 to"),
    Cell("depth_contours", "depth_m", -3.0, "0 to", row=2),
    Cell("marks", "charted_depth_m", -3.0, "0 to", row=2),
    Cell("marks", "stay_min", -5.0, "0 to 720", row=2),
    Cell("marks", "stay_min", 1e9, "0 to 720", row=2, shown="1000000000.0"),
    Cell("marks", "kind", "reef", "one of entry, mark, exit, waypoint", row=2),
    Cell("marks", "name", "", "must be filled", row=2, shown=""),
    Cell("routes", "name", "", "must be filled", shown=""),
    Cell("channels", "kind", "canal", "one of fairway, ferry, lane, small_craft"),
    Cell("channels", "width_m", None, "needs its width", shown=""),
    Cell("channels", "width_m", 0.0, "above 0"),
    Cell("channels", "flow_deg", 400.0, "0 to 360"),
    Cell("channels", "boat_kn", 500.0, "0 to"),
    Cell("closed_areas", "rule", "no_fun", "one of no_entry, no_spearing"),
    Cell("closed_areas", "from_time", "25:00", "HH:MM"),
    Cell("closed_areas", "to_time", "--1340", "MMDD"),
    Cell("tides", "height_m", 90.0, "-10 to 25", row=2),
    Cell("tides", "kind", "EW", "one of HW, LW", row=2),
    Cell("stream_stations", "form", "daily", "one of hourly, events, constant"),
    Cell("stream_stations", "reference", "MW", "one of HW, LW"),
    Cell("stream_stations", "spring_range_m", -4.0, "above 0"),
    Cell("stream_stations", "neap_range_m", 5.0, "The spring range is the larger"),
    Cell("ferries", "time", "25:99", "HH:MM"),
    Cell("ferries", "time", "--0605", "HH:MM"),
    Cell("ferries", "clear_before_min", -1.0, "0 to 240"),
    Cell("swimmers", "pace_m_s", 9.0, "0.1 to 2.5"),
    Cell("swimmers", "path_factor", 0.5, "1 to 2"),
    Cell("swimmers", "range_m", 0.0, "above 0"),
    Cell("swimmers", "max_hours", 100.0, "24"),
    Cell("swimmers", "depth_limit_m", 900.0, "200"),
    Cell("swimmers", "min_ground_speed_m_s", -0.1, "above 0"),
    Cell("swimmers", "fluid_l", 50.0, "0 to 20"),
    Cell("swimmers", "name", "", "must be filled", shown=""),
)


@pytest.mark.parametrize("cell", CELLS, ids=str)
def test_value_that_is_not_allowed_is_refused_by_layer_row_field_and_value(plan: Path, cell: Cell) -> None:
    spoil(plan, cell.layer, cell.field, cell.value, cell.row)
    shown = repr(cell.value) if cell.shown is None else cell.shown
    said = refused(plan, f"'{cell.layer}'", f"row {cell.row}", f"'{cell.field}'", shown, cell.allowed)
    # Place and value, what is allowed, and then what to do.
    assert len(said.split(". ")) >= 3


@pytest.mark.parametrize(
    ("key", "value", "words"),
    [
        ("zone", "Moon/Base", ("'Moon/Base'", "IANA")),
        ("zone", "../../etc/passwd", ("passwd", "IANA")),
        ("zone", "", ("IANA",)),
        ("reserve_factor", "lots", ("'lots'", "1 to 5")),
        ("reserve_min", "-5", ("'-5'", "0 to 240")),
        ("heading_step_deg", "0", ("'0'", "above 0 to 45")),
        ("shallow_depth_m", "nan", ("'nan'", "0 to 50")),
        ("square_within_deg", "inf", ("'inf'", "0 to 90")),
        ("ashore_before_sunset_min", "500", ("'500'", "-60 to 240")),
        ("back_by", "half past five", ("'half past five'", "17:30")),
        ("alarm_after_min", "1e9", ("'1e9'", "0 to 720")),
        ("port", "Q", ("'Q'", "The plan has tides of P")),
        ("package_version", "99", ("version 99", "Update the plugin")),
        ("package_version", "one", ("'one'",)),
    ],
)
def test_setting_that_cannot_be_meant_is_refused_by_key_and_value(plan: Path, key: str, value: str, words) -> None:
    with closing(sqlite3.connect(plan)) as connection, connection:
        connection.execute("DELETE FROM settings WHERE key = ?", (key,))
        connection.execute("INSERT INTO settings (key, value) VALUES (?, ?)", (key, value))
    refused(plan, key if key != "package_version" else "", *words)


# SQLite keeps text in a column of numbers, and GDAL reads it as 0: a stream of nothing where none is known.
@pytest.mark.parametrize(
    ("table", "field", "stored", "remedy"),
    [
        ("stream_rates", "spring_kn", "fast", "point before decimals"),
        ("stream_rates", "spring_kn", "-", "point before decimals"),
        ("stream_rates", "neap_kn", "1,2", "point before decimals"),
        ("stream_rates", "set_deg", "", "Set it to NULL"),
        ("stream_rates", "hour", 1.5, "whole number"),
        ("tides", "height_m", "", "Set it to NULL"),
        ("tides", "height_m", "  ", "Set it to NULL"),
        ("marks", "charted_depth_m", "deep", "point before decimals"),
        ("swimmers", "pace_m_s", "quick", "point before decimals"),
    ],
)
def test_text_stored_for_a_number_is_refused_and_never_read_as_nought(
    plan: Path, table: str, field: str, stored: object, remedy: str
) -> None:
    spoil(plan, table, field, stored, 1)
    refused(plan, table, "row 1", field, remedy)


def test_numbers_stored_as_text_that_are_numbers_are_numbers(plan: Path) -> None:
    before = swum(plan, plan.parent, DEPART=DEPART)["legs"]
    with closing(sqlite3.connect(plan)) as connection, connection:
        connection.execute("UPDATE stream_rates SET spring_kn = CAST(spring_kn AS TEXT)")  # which SQLite turns back
    assert swum(plan, plan.parent, DEPART=DEPART)["legs"] == before


def test_setting_that_nobody_knows_is_left_alone(plan: Path) -> None:
    with closing(sqlite3.connect(plan)) as connection, connection:
        connection.execute("INSERT INTO settings (key, value) VALUES ('colour of the float', '<b>orange</b>')")
    assert accepted(plan).report["feasible"] in (True, False)


# ---------------------------------------------------------------- layers that do not fit

GEOMETRY = {
    "ROUTES": "LineString",
    "MARKS": "Point",
    "CHANNELS": "LineString",
    "CLOSED_AREAS": "Polygon",
    "LAND": "Polygon",
    "DEPTH_CONTOURS": "LineString",
    "SOUNDINGS": "Point",
    "TIDES": "None",
    "STREAM_STATIONS": "Point",
    "STREAM_RATES": "None",
}
SHAPES = {
    "Point": f"Point ({LON} {LAT})",
    "LineString": f"LineString ({LON} {LAT}, {LON + 0.01} {LAT})",
    "Polygon": f"Polygon (({LON} {LAT}, {LON + 0.01} {LAT}, {LON} {LAT + 0.01}, {LON} {LAT}))",
}
FIELDS = {
    "ROUTES": {"name": "Ledge"},
    "MARKS": {"name": "Kettle Slip"},
    "CHANNELS": {"width_m": 50.0},
    "CLOSED_AREAS": {"rule": "caution"},
    "LAND": {},
    "DEPTH_CONTOURS": {"depth_m": 5.0},
    "SOUNDINGS": {"depth_m": 5.0},
    "TIDES": {"time": "2027-06-05T08:00Z", "height_m": 3.9, "kind": "HW"},
    "STREAM_STATIONS": {"station": "A"},
    "STREAM_RATES": {"station": "A", "hour": 0},
}
NEEDED = [
    (name, field)
    for name, values in FIELDS.items()
    for field in values
    if not (name == "CHANNELS" and field == "width_m")
]


def fields_of(values: dict[str, object]) -> str:
    kinds = {str: "string", int: "integer", float: "double"}
    return ",".join(f"{name}:{kinds[type(value)]}" for name, value in values.items())


def fitting(name: str, *, without: str = "", geometry: str = "", crs: str = "EPSG:4326") -> QgsVectorLayer:
    """A layer of one row that would do for the parameter, but for what is asked to be wrong."""
    values = {key: value for key, value in FIELDS[name].items() if key != without}
    kind = geometry or GEOMETRY[name]
    return drawn(kind, fields_of(values), (SHAPES.get(kind), values), crs=crs)


@pytest.mark.parametrize("name", [name for name, kind in GEOMETRY.items() if kind != "None"])
def test_layer_without_a_reference_system_is_refused_by_name(plan: Path, name: str) -> None:
    layer = fitting(name, crs="")
    assert not layer.crs().isValid()
    refused(plan, f"'{layer.name()}'", "coordinate reference system", "in its properties", **{name: layer})


@pytest.mark.parametrize(("name", "field"), NEEDED)
def test_layer_without_a_needed_field_is_refused_by_both_names(plan: Path, name: str, field: str) -> None:
    layer = fitting(name, without=field)
    refused(plan, f"'{layer.name()}'", f"'{field}'", "Rename the field", **{name: layer})


@pytest.mark.parametrize(
    ("name", "kind"),
    [
        (name, kind)
        for name, right in GEOMETRY.items()
        for kind in SHAPES
        if kind != right and right != "None" and (name, kind) != ("CHANNELS", "Polygon")
    ],
)
def test_layer_of_another_geometry_is_refused(plan: Path, name: str, kind: str) -> None:
    layer = fitting(name, geometry=kind)
    said = refused(plan, **{name: layer})
    assert f"'{layer.name()}'" in said or name in said
    assert kind in said
    assert GEOMETRY[name] in said


@pytest.mark.parametrize(
    ("name", "wkt", "words"),
    [
        ("MARKS", f"Point ({LON} 95)", ("row 1", "latitude 95", "longitude before latitude")),
        ("MARKS", f"Point (400 {LAT})", ("row 1", "longitude 400")),
        ("SOUNDINGS", f"Point ({LON} -95)", ("row 1", "latitude -95")),
        ("ROUTES", f"LineString ({LON} {LAT}, {LON} 95)", ("row 1", "latitude 95")),
        ("ROUTES", f"LineString ({LON} 89.5, {LON} 89.6)", ("latitude 89.5", "-89 to 89")),
        ("LAND", "Polygon ((0 0, 1 0, 1 100, 0 0))", ("row 1", "latitude 100")),
        ("STREAM_STATIONS", f"Point ({LON} 95)", ("row 1", "latitude 95")),
    ],
)
def test_place_off_the_globe_is_refused(plan: Path, name: str, wkt: str, words) -> None:
    layer = drawn(GEOMETRY[name], fields_of(FIELDS[name]), (wkt, FIELDS[name]))
    refused(plan, *words, **{name: layer})


def test_place_where_the_system_is_not_defined_is_refused(plan: Path) -> None:
    layer = drawn("Point", "name:string", ("Point (1e30 1e30)", {"name": "Far"}), crs="EPSG:32628")
    refused(plan, f"'{layer.name()}'", "row 1", "Check the layer's coordinate reference system", MARKS=layer)


@pytest.mark.parametrize(
    ("name", "fields", "values", "words"),
    [
        ("SOUNDINGS", "depth_m:string", {"depth_m": "deep"}, ("'depth_m'", "'deep'", "a number")),
        ("SOUNDINGS", "depth_m:double", {"depth_m": float("nan")}, ("'depth_m'", "nan")),
        ("SOUNDINGS", "depth_m:string", {"depth_m": "inf"}, ("'depth_m'", "'inf'")),
        ("SOUNDINGS", "depth_m:double", {}, ("'depth_m'", "must be filled")),
        ("MARKS", "name:string,stay_min:string", {"name": "A", "stay_min": "long"}, ("'stay_min'", "'long'")),
        (
            "STREAM_RATES",
            "station:string,hour:double,set_deg:double,spring_kn:double",
            {"station": "A", "hour": 1.5},
            ("'hour'", "1.5", "whole"),
        ),
        (
            "STREAM_RATES",
            "station:string,hour:string,set_deg:double,spring_kn:double",
            {"station": "A", "hour": "HW"},
            ("'hour'", "'HW'", "whole"),
        ),
        (
            "TIDES",
            "time:string,height_m:double,kind:string",
            {"time": "noon", "height_m": 1.0, "kind": "HW"},
            ("'noon'",),
        ),
        ("TIDES", "time:string,height_m:double,kind:string", {"height_m": 1.0, "kind": "HW"}, ("'time'", "filled")),
        (
            "TIDES",
            "time:string,height_m:double,kind:string",
            {"time": "2027-06-05T08:00Z", "height_m": 1.0},
            ("'kind'", "must be filled"),
        ),
    ],
)
def test_value_of_the_wrong_kind_is_refused(plan: Path, name: str, fields: str, values: dict, words) -> None:
    layer = drawn(GEOMETRY[name], fields, (SHAPES.get(GEOMETRY[name]), values), crs="EPSG:4326")
    refused(plan, f"'{layer.name()}'", "row 1", *words, **{name: layer})


# ---------------------------------------------------------------- rows that contradict each other


def two_highs(plan: Path) -> None:
    append_rows(plan, "tides", [(None, {"port": "P", "time": utc("11:00"), "height_m": 4.0, "kind": "HW"})])


def low_above_high(plan: Path) -> None:
    spoil(plan, "tides", "height_m", 6.5, 3)


def same_time(plan: Path) -> None:
    append_rows(plan, "tides", [(None, {"port": "P", "time": utc("14:15"), "height_m": 0.9, "kind": "LW"})])


def hour_twice(plan: Path) -> None:
    append_rows(plan, "stream_rates", [(None, {"station": "A", "hour": 2, "set_deg": 5.0, "spring_kn": 1.0})])


def station_twice(plan: Path) -> None:
    append_rows(plan, "stream_stations", [(point(LEDGE), {"station": "A", "form": "constant"})])


def constant_without_a_row(plan: Path) -> None:
    append_rows(plan, "stream_stations", [(point(LEDGE), {"station": "K", "form": "constant"})])


def constant_at_another_hour(plan: Path) -> None:
    constant_without_a_row(plan)
    append_rows(plan, "stream_rates", [(None, {"station": "K", "hour": 1, "set_deg": 0.0, "spring_kn": 1.0})])


def events_at_one_time(plan: Path) -> None:
    append_rows(plan, "stream_stations", [(point(LEDGE), {"station": "E", "form": "events"})])
    event = {"station": "E", "time": utc("10:00"), "kind": "slack", "rate_kn": 0.0}
    append_rows(plan, "stream_events", [(None, event), (None, event)])


def events_of_nobody(plan: Path) -> None:
    append_rows(plan, "stream_events", [(None, {"station": "N", "time": utc("10:00"), "kind": "slack"})])


def eddy_of_nobody(plan: Path) -> None:
    append_rows(plan, "stream_areas", [(box(0.0, 0.0, 100.0, 100.0), {"station": "N"})])


def hours_and_dates_mixed(plan: Path) -> None:
    spoil(plan, "closed_areas", "from_time", "08:00", 1)
    spoil(plan, "closed_areas", "to_time", "2027-09-30", 1)


@pytest.mark.parametrize(
    ("break_it", "words"),
    [
        (two_highs, ("'tides'", "P", "row 3", "two of the same kind", "Check the kind")),
        (low_above_high, ("'tides'", "P", "row 3", "a low water above a high water")),
        (same_time, ("'tides'", "row 5", "'time'", "14:15", "Delete one")),
        (hour_twice, ("'stream_rates'", "row 14", "'A'", "'hour'", "got 2", "Delete")),
        (station_twice, ("'stream_stations'", "'station'", "'A'", "stands once", "Rename or delete")),
        (constant_without_a_row, ("'stream_stations'", "row 2", "hour 0", "stream_rates")),
        (constant_at_another_hour, ("'stream_stations'", "row 2", "hour 0", "stream_rates")),
        (events_at_one_time, ("'stream_events'", "row 2", "'time'", "10:00", "Delete one")),
        (events_of_nobody, ("'stream_events'", "row 1", "'N'", "Correct the name or add the station")),
        (eddy_of_nobody, ("'stream_areas'", "row 1", "'N'", "Correct the name or add the station")),
        (hours_and_dates_mixed, ("'closed_areas'", "row 1", "08:00", "2027-09-30", "the same way")),
    ],
    ids=lambda value: value.__name__ if callable(value) else "",
)
def test_rows_that_contradict_each_other_are_refused(plan: Path, break_it: Callable, words) -> None:
    break_it(plan)
    refused(plan, *words)


# ---------------------------------------------------------------- skipped and counted, repaired and said


def test_empty_and_null_geometries_are_skipped_and_counted(plan: Path) -> None:
    rows = [(None, {"name": "Nowhere"}), ("Point EMPTY", {"name": "Empty"}), (point(SLIP), {"name": "Here"})]
    ran = accepted(plan, MARKS=drawn("Point", "name:string", *rows))
    assert "Layer 'my point layer': 2 rows with no geometry skipped: 1, 2." in ran.report["warnings"]
    assert ran.report["stops"][0]["name"] == "Here"


@pytest.mark.parametrize("name", ["ROUTES", "CHANNELS", "CLOSED_AREAS", "LAND", "DEPTH_CONTOURS", "SOUNDINGS"])
def test_a_null_row_beside_good_ones_is_counted_in_each_layer(plan: Path, name: str) -> None:
    kind = GEOMETRY[name]
    whole = line(SLIP, LEDGE) if name == "ROUTES" else SHAPES[kind]
    layer = drawn(kind, fields_of(FIELDS[name]), (None, FIELDS[name]), (whole, FIELDS[name]))
    ran = accepted(plan, **{name: layer})
    assert f"Layer '{layer.name()}': 1 row with no geometry skipped: 1." in ran.report["warnings"]


def test_a_closed_area_in_a_collection_is_met_and_one_of_mixed_kinds_is_refused_by_its_row(plan: Path) -> None:
    corners = [moved(400.0, -300.0), moved(800.0, -300.0), moved(800.0, 700.0), moved(400.0, 700.0)]
    ring = ", ".join(f"{lon:.9f} {lat:.9f}" for lon, lat in [*corners, corners[0]])
    put_past_the_checks(plan, "closed_areas", f"GEOMETRYCOLLECTION (POLYGON (({ring})))", name="Range", rule="no_entry")
    met = accepted(plan)
    assert "Range" in [flag["name"] for flag in flags_of(met.report, "closed_area")]
    mixed = f"GEOMETRYCOLLECTION (POLYGON (({ring})), POINT ({ring.split(',')[0]}))"
    row = put_past_the_checks(plan, "closed_areas", mixed, name="Other", rule="no_entry")
    refused(plan, f"row {row}", "GeometryCollection", "Convert the geometry")


def put_past_the_checks(plan: Path, layer: str, wkt: str, **values: object) -> int:
    """A row as another program may write it; its id."""
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_UPDATE)
    rows = dataset.GetLayerByName(layer)
    feature = ogr.Feature(rows.GetLayerDefn())
    for name, value in values.items():
        feature.SetField(name, value)
    feature.SetGeometry(ogr.CreateGeometryFromWkt(wkt))
    rows.CreateFeature(feature)
    return feature.GetFID()


@pytest.mark.parametrize("name", ["a%20b.gpkg", "50%25 more/plan.gpkg"])
def test_a_path_that_qgis_takes_for_another_is_refused_and_never_answered_from_its_neighbour(
    tmp_path: Path, name: str
) -> None:
    """QGIS's provider decodes %20: the plan `a b.gpkg` beside it would be read in its place."""
    invented_bay(tmp_path / "a b.gpkg")
    odd = tmp_path / name
    odd.parent.mkdir(exist_ok=True)
    shutil.copy(tmp_path / "a b.gpkg", odd)
    refused(odd, "QGIS reads as something else", "Rename the file or the folder")
    with pytest.raises(SwimPlanError, match="reads as something else"):
        create_plan(tmp_path / "c%41.gpkg")
    assert not (tmp_path / "c%41.gpkg").exists()


def test_a_layer_without_pace_and_stay_says_what_is_taken(plan: Path) -> None:
    swimmers = drawn("NoGeometry", "name:string", (None, {"name": "Runa"}))
    marks = drawn("Point", "name:string,kind:string", (point(LEDGE), {"name": "Here", "kind": "mark"}))
    told = accepted(plan, MARKS=marks, SWIMMERS=swimmers).report["warnings"]
    assert any("no field 'stay_min': 0 is taken" in one for one in told)


def test_settings_in_a_column_of_numbers_are_read(plan: Path) -> None:
    with closing(sqlite3.connect(plan)) as file, file:
        file.execute("UPDATE settings SET value = CAST(value AS INTEGER) WHERE key = 'reserve_min'")
    assert database.read_pairs(plan) and accepted(plan).ok


def test_a_plan_without_its_settings_is_refused_and_not_swum_in_utc(plan: Path) -> None:
    with closing(sqlite3.connect(plan)) as file, file:
        file.execute("DROP TABLE settings")
    refused(plan, "settings", "time zone and reserve are not known")


@pytest.mark.parametrize(("name", "kind"), [("LAND", "land"), ("CLOSED_AREAS", "closed_area")])
def test_bow_tie_is_repaired_said_so_and_still_met(plan: Path, name: str, kind: str) -> None:
    corners = [moved(400.0, -300.0), moved(800.0, 700.0), moved(800.0, -300.0), moved(400.0, 700.0)]
    ring = ", ".join(f"{lon:.9f} {lat:.9f}" for lon, lat in [*corners, corners[0]])
    bow_tie = drawn(
        "Polygon", fields_of({**FIELDS[name], "name": ""}), (f"Polygon (({ring}))", {**FIELDS[name], "name": "Tie"})
    )
    assert not next(bow_tie.getFeatures()).geometry().isGeosValid()
    ran = accepted(plan, **{name: bow_tie})
    assert "Layer 'my polygon layer': 1 row with an invalid polygon repaired: 1." in ran.report["warnings"]
    met = [flag for flag in flags_of(ran.report, kind) if flag["name"] == "Tie"]
    assert met and all(flag["length_m"] > 50.0 for flag in met)


def test_multipart_geometries_are_read_part_by_part(plan: Path) -> None:
    first, second = box(300.0, -500.0, 400.0, 800.0).asWkt(9), box(700.0, -500.0, 800.0, 800.0).asWkt(9)
    parts = f"MultiPolygon ({first[len('Polygon ') :]}, {second[len('Polygon ') :]})"
    layer = drawn("MultiPolygon", "name:string,rule:string", (parts, {"name": "Twin", "rule": "no_entry"}))
    ran = accepted(plan, CLOSED_AREAS=layer)
    out = [flag for flag in flags_of(ran.report, "closed_area") if flag["leg"] == 1]
    assert [flag["name"] for flag in out] == ["Twin", "Twin"]


def test_a_closed_area_with_a_hole_is_open_in_the_hole(plan: Path) -> None:
    outer, inner = box(200.0, -500.0, 900.0, 800.0), box(400.0, -400.0, 700.0, 700.0)
    layer = drawn("Polygon", "name:string,rule:string", (outer.difference(inner), {"name": "Ring", "rule": "no_entry"}))
    ran = accepted(plan, CLOSED_AREAS=layer)
    out = [flag["length_m"] for flag in flags_of(ran.report, "closed_area") if flag["leg"] == 1]
    assert len(out) == 2
    assert all(150.0 < length < 300.0 for length in out)


# ---------------------------------------------------------------- water that is not known is never none


def unknown(report: dict) -> None:
    """Nothing is said of the first leg's stream, and why is."""
    leg = report["legs"][0]
    assert not report["feasible"]
    assert not leg["feasible"]
    assert "not known" in leg["reason"]
    for key in (
        "heading_true_deg",
        "heading_mag_deg",
        "card_heading",
        "minutes",
        "arrive",
        "stream_kn",
        "stream_set_deg",
    ):
        assert leg[key] is None
    assert leg["headings"] == []
    assert report["arrive"] is None
    assert report["total_min"] is None
    assert {flag["severity"] for flag in flags_of(report, "stream_unknown")} == {"stop"}


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_station_without_a_tide_leaves_the_stream_unknown(plan: Path, mode: int) -> None:
    spoil(plan, "stream_stations", "port", "Q")
    ran = accepted(plan, HEADING_MODE=mode)
    unknown(ran.report)
    assert any("'A'" in warning and "tides of Q" in warning for warning in ran.report["warnings"])


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_no_station_at_all_leaves_the_stream_unknown(plan: Path, mode: int) -> None:
    emptied(plan, "stream_stations", "stream_rates")
    unknown(accepted(plan, HEADING_MODE=mode).report)


def test_station_without_any_rate_leaves_the_stream_unknown(plan: Path) -> None:
    emptied(plan, "stream_rates")
    unknown(accepted(plan).report)


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_blank_hour_leaves_the_stream_beside_it_unknown(plan: Path, mode: int) -> None:
    for column in ("set_deg", "spring_kn", "neap_kn"):
        spoil(plan, "stream_rates", column, None, 8)  # hour +1, from 09:00 to 11:00 of the plan's zone
    unknown(accepted(plan, HEADING_MODE=mode).report)


def test_missing_hours_are_blank_hours(plan: Path) -> None:
    with closing(sqlite3.connect(plan)) as connection, connection:
        connection.execute("DELETE FROM stream_rates WHERE hour = 1")
    unknown(accepted(plan).report)


def test_rate_without_a_set_is_unknown_and_a_set_without_a_rate_too(plan: Path) -> None:
    for column in ("set_deg", "spring_kn"):
        copy = Path(shutil.copy(plan, plan.with_name(f"{column}.gpkg")))
        spoil(copy, "stream_rates", column, None, 8)
        if column == "spring_kn":
            spoil(copy, "stream_rates", "neap_kn", None, 8)
        else:
            spoil(copy, "stream_rates", "spring_kn", 1.0, 8)
        unknown(accepted(copy).report)


def test_constant_station_without_a_rate_is_unknown(plan: Path) -> None:
    emptied(plan, "stream_stations", "stream_rates")
    append_rows(plan, "stream_stations", [(point(SLIP), {"station": "K", "form": "constant"})])
    append_rows(plan, "stream_rates", [(None, {"station": "K", "hour": 0, "set_deg": 90.0})])
    unknown(accepted(plan).report)


def test_legs_after_an_unknown_one_are_still_told(plan: Path) -> None:
    emptied(plan, "stream_rates")
    report = accepted(plan).report
    assert [leg["distance_m"] > 1000.0 for leg in report["legs"]] == [True, True]
    assert "earlier leg" in report["legs"][1]["reason"]
    assert flags_of(report, "channel")  # against the straight line, not timed


def test_depth_without_a_tide_is_unknown_not_the_charted_one(plan: Path) -> None:
    emptied(plan, "tides", "stream_stations", "stream_rates")
    add_constant_stream(plan, 0.1, 90.0)
    report = accepted(plan).report
    assert [stop["depth_now_m"] for stop in report["stops"]] == [None] * 3
    assert [flag["name"] for flag in flags_of(report, "tide_unknown")] == ["Gannet Ledge"]


def test_range_outside_neaps_and_springs_is_said(plan: Path) -> None:
    spoil(plan, "stream_stations", "spring_range_m", 2.5)
    report = accepted(plan).report
    assert {flag["leg"] for flag in flags_of(report, "stream_extrapolated")} == {1, 2}


# ---------------------------------------------------------------- names that do not match, shapes that are odd


def test_ferry_of_a_channel_that_is_not_there_is_told(plan: Path) -> None:
    append_rows(plan, "ferries", [(None, {"channel": "Sound", "time": "10:05"})])
    assert any("'Sound'" in warning and "not among" in warning for warning in accepted(plan).report["warnings"])


@pytest.mark.parametrize(
    ("wkt", "words"),
    [
        (f"LineString ({LON} {LAT}, {LON} {LAT})", ("'Odd'",)),
        (
            f"MultiLineString (({LON} {LAT}, {LON + 0.01} {LAT}), ({LON} {LAT + 0.1}, {LON + 0.01} {LAT + 0.1}))",
            ("'Odd'", "one piece"),
        ),
        ("LineString EMPTY", ("'Odd'",)),
        (None, ("'Odd'",)),
    ],
    ids=["one place", "two pieces", "empty", "null"],
)
def test_route_that_is_no_route_is_refused(plan: Path, wkt: str | None, words) -> None:
    kind = "MultiLineString" if wkt and wkt.startswith("Multi") else "LineString"
    refused(plan, *words, ROUTE="Odd", ROUTES=drawn(kind, "name:string", (wkt, {"name": "Odd"})))


def test_repeated_vertices_of_a_route_count_once(plan: Path) -> None:
    add_route(plan, "Stutter", SLIP, SLIP, LEDGE, LEDGE, LEDGE, SLIP)
    stutter, plain = (accepted(plan, ROUTE=name).report for name in ("Stutter", "Ledge"))
    assert len(stutter["legs"]) == 2
    assert stutter["total_min"] == pytest.approx(plain["total_min"], abs=1e-6)


def test_marks_at_one_place_give_one_stop(plan: Path) -> None:
    append_rows(plan, "marks", [(point(LEDGE), {"name": "Twin", "kind": "mark", "stay_min": 5.0})])
    report = accepted(plan).report
    assert [stop["name"] for stop in report["stops"]] == ["Kettle Slip", "Gannet Ledge", "Kettle Slip"]


def test_vertex_takes_the_nearest_mark_within_fifteen_metres(plan: Path) -> None:
    emptied(plan, "marks")
    near, nearer, far = moved(1100.0 + 14.0, 250.0), moved(1100.0, 250.0 + 6.0), moved(16.0, 0.0)
    rows = [(point(near), {"name": "Near"}), (point(nearer), {"name": "Nearer"}), (point(far), {"name": "Far"})]
    append_rows(plan, "marks", rows)
    assert [stop["name"] for stop in accepted(plan).report["stops"]] == ["Entry", "Nearer", "Exit"]


HOSTILE = (
    "O'Malley's \"Rock\"",
    "<script>alert('x')</script>",
    "Seal 🦭 Rock — Ñandú 礁",
    "'; DROP TABLE marks; --",
    "[% 1 + 1 %]",
    '=HYPERLINK("http://example.invalid")',
    "צוק הכלבים\u202e abc",
    "two\nlines\tand a tab",
    "bell \x07 and null-like \x1b",
    "]]> &amp; <![CDATA[",
    "long " * 2000,
)


@pytest.mark.parametrize("name", HOSTILE, ids=lambda name: name[:12].encode("unicode_escape").decode())
def test_hostile_names_come_through_whole_and_do_no_harm(plan: Path, name: str) -> None:
    before = rows_of(plan)
    for table, column in (("marks", "name"), ("routes", "name"), ("swimmers", "name"), ("channels", "name")):
        spoil(plan, table, column, name)
    for table, column in (
        ("closed_areas", "name"),
        ("land", "name"),
        ("ferries", "channel"),
        ("closed_areas", "citation"),
    ):
        spoil(plan, table, column, name)
    spoil(plan, "stream_stations", "station", name)
    spoil(plan, "stream_rates", "station", name)
    spoil(plan, "stream_stations", "port", name)
    spoil(plan, "tides", "port", name)
    write_settings(plan, {"title": name})
    state = digest(plan)
    outputs = every_output(plan.parent)
    if len(name) > 1000:
        outputs.pop("CARD")  # it elides letter by letter and would take minutes
    ran = accepted(plan, ROUTE="", **outputs)
    assert (ran.report["route"], ran.report["swimmer"]) == (name, name)
    assert {stop["name"] for stop in ran.report["stops"]} == {name}
    assert any(flag["name"] == name for flag in flags_of(ran.report, "channel"))
    assert digest(plan) == state
    assert rows_of(plan) == before
    ElementTree.parse(ran.results["GPX"])
    with open(ran.results["CSV"], newline="", encoding="utf-8-sig") as file:
        assert len(list(csv.DictReader(file))) == 2
    legs = QgsVectorLayer(ran.results["LEGS"], "legs", "ogr")
    assert [row["start_name"] for row in legs.getFeatures()] == [name, name]
    if "CARD" in outputs:
        page = gdal.OpenEx(outputs["CARD"], open_options=["DPI=30"])
        assert (page.ReadAsArray()[:3].min(axis=0) < 128).any()


def rows_of(plan: Path) -> dict[str, int]:
    with closing(sqlite3.connect(plan)) as connection:
        names = [name for (name,) in connection.execute("SELECT table_name FROM gpkg_contents")]
        return {name: connection.execute(f'SELECT count(*) FROM "{name}"').fetchone()[0] for name in names}


# ---------------------------------------------------------------- files that are no plan


def text_file(plan: Path) -> None:
    plan.write_text("This is no plan. " * 200, encoding="utf-8")


def cut_short(plan: Path) -> None:
    content = plan.read_bytes()
    plan.write_bytes(content[: len(content) // 3])


def nothing_in_it(plan: Path) -> None:
    plan.write_bytes(b"")


def another_geopackage(plan: Path) -> None:
    plan.unlink()
    dataset = ogr.GetDriverByName("GPKG").CreateDataSource(str(plan))
    dataset.CreateLayer("roads", geom_type=ogr.wkbLineString)


def torn_pages(plan: Path) -> None:
    content = bytearray(plan.read_bytes())
    content[4096 : len(content) - 4096] = b"\xff" * (len(content) - 8192)
    plan.write_bytes(bytes(content))


@pytest.mark.parametrize("break_it", [text_file, cut_short, nothing_in_it, another_geopackage, torn_pages])
def test_file_that_is_no_plan_is_refused_by_its_path(plan: Path, break_it: Callable) -> None:
    break_it(plan)
    refused(plan, str(plan), "plan")


def test_plan_that_is_not_there_or_a_folder_is_refused(plan: Path) -> None:
    refused(plan, "none.gpkg", "Check the path", PLAN=str(plan.with_name("none.gpkg")))
    folder = plan.with_name("folder.gpkg")
    folder.mkdir()
    refused(plan, "folder.gpkg", PLAN=str(folder))


def test_locked_plan_is_refused_and_not_waited_for_for_ever(plan: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(database, "BUSY_S", 0.1)
    with closing(sqlite3.connect(plan, isolation_level=None)) as other:
        other.execute("BEGIN EXCLUSIVE")
        ran = swim(plan, plan.parent, DEPART=DEPART)
        other.execute("ROLLBACK")
    assert not ran.ok
    assert "locked" in ran.said
    assert str(plan) in ran.said


def test_read_only_plan_in_a_read_only_folder_can_be_planned(plan: Path, tmp_path_factory) -> None:
    folder, out = tmp_path_factory.mktemp("shelf"), plan.parent
    kept = Path(shutil.copy(plan, folder / "bay.gpkg"))
    os.chmod(kept, 0o444)
    os.chmod(folder, 0o555)
    before = digest(kept)
    try:
        report = swum(kept, out, DEPART=DEPART)
    finally:
        os.chmod(folder, 0o755)
    assert report["route"] == "Ledge"
    assert (digest(kept), left_in(folder)) == (before, ["bay.gpkg"])


def test_plan_that_lacks_tables_is_told_which_and_planned_without_them(plan: Path) -> None:
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_UPDATE)
    for table in ("ferries", "stream_areas", "land"):
        dataset.ExecuteSQL(f"DROP TABLE {table}")
    dataset = None
    warnings = accepted(plan).report["warnings"]
    for table in ("ferries", "stream_areas", "land"):
        assert any(f"no layer '{table}'" in warning for warning in warnings)


def test_plan_without_a_routes_layer_is_refused(plan: Path) -> None:
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_UPDATE)
    dataset.ExecuteSQL("DROP TABLE routes")
    dataset = None
    refused(plan, "'routes'", str(plan))


def test_report_is_strict_json_in_every_unhappy_case(plan: Path) -> None:
    emptied(plan, "tides", "soundings", "depth_contours", "channels", "closed_areas", "land")
    ran = accepted(plan)
    text = (plan.parent / "report.json").read_text(encoding="utf-8")
    json.loads(text, parse_constant=pytest.fail)
    assert ran.report["stops"][1]["depth_now_m"] is None
    assert any("No charted depth at Gannet Ledge" in warning for warning in ran.report["warnings"])
    assert any("not to say there is none" in warning for warning in ran.report["warnings"])
