"""A plan's file: its layers are the agreed ones, it comes whole or not at all, and nothing wrong gets into it."""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing
from datetime import datetime, timedelta, timezone
from pathlib import Path

import pytest
from osgeo import gdal, ogr
from qgis.core import QgsFeature, QgsGeometry, QgsProject, QgsVectorLayer, QgsWkbTypes
from qgis.PyQt.QtCore import QDate, QDateTime, Qt, QTime
from tideleg.core.errors import BadInputError, SwimPlanError
from tideleg.layers_in.moments import utc_moment
from tideleg.plan_package import store as store_module
from tideleg.plan_package.field_spec import FieldSpec, LayerSpec
from tideleg.plan_package.migrate import bring_up_to_date
from tideleg.plan_package.project import TREE_ORDER, add_plan_to_project
from tideleg.plan_package.schema import LAYER_BY_NAME, LAYERS, YOUNGER
from tideleg.plan_package.settings import package_version
from tideleg.plan_package.store import append_rows, create_plan, open_layer, read_settings, write_settings

# The layers and fields every reader of a plan relies on, written out here a second time on purpose.
CONTRACT = {
    "marks": ("Point", "name kind stay_min charted_depth_m bottom note"),
    "routes": ("Line String", "name note"),
    "channels": ("Unknown (any)", "name kind width_m flow_deg boat_kn"),
    "closed_areas": ("Polygon", "name rule from_time to_time citation checked_on"),
    "land": ("Polygon", "name"),
    "depth_contours": ("Line String", "depth_m"),
    "soundings": ("Point", "depth_m"),
    "landmarks": ("Point", "name kind height_m note"),
    "transits": ("Line String", "mark front rear note"),
    "tides": ("None", "port time height_m kind"),
    "tide_ports": (
        "None",
        "port form datum_offset_m reference_port hw_minutes_springs hw_minutes_neaps lw_minutes_springs "
        "lw_minutes_neaps hw_height_springs_m hw_height_neaps_m lw_height_springs_m lw_height_neaps_m source "
        "latitude_deg high_springs_m high_neaps_m low_neaps_m low_springs_m",
    ),
    "tide_series": ("None", "port time height_m"),
    "tide_constants": ("None", "port constituent amplitude_m phase_deg"),
    "tide_coefficients": ("None", "port time coefficient"),
    "stream_stations": (
        "Point",
        "station form reference port spring_range_m neap_range_m source confidence reach_m rate_uncertainty "
        "phase_uncertainty_min rate_factor shift_min reference_station slack_before_flood_min flood_minutes "
        "slack_before_ebb_min ebb_minutes flood_speed_ratio ebb_speed_ratio slack_offset_min flood_set_deg ebb_set_deg "
        "spring_kn neap_kn wind_percent wind_turn_deg",
    ),
    "stream_rates": ("None", "station hour set_deg spring_kn neap_kn"),
    "stream_events": ("None", "station time kind rate_kn flood_set_deg ebb_set_deg"),
    "stream_series": ("None", "station time set_deg rate_kn"),
    "stream_constants": ("None", "station constituent u_amplitude_m_s u_phase_deg v_amplitude_m_s v_phase_deg"),
    "stream_models": (
        "None",
        "model kind path group v_path v_group crs start step_min rate_uncertainty phase_uncertainty_min rate_factor "
        "shift_min source",
    ),
    "stream_areas": ("Polygon", "station phase"),
    "winds": ("None", "time from_deg speed_kn"),
    "drifts": ("None", "time lon lat end_time end_lon end_lat station note"),
    "ferries": ("None", "channel time clear_before_min clear_after_min"),
    "swimmers": (
        "None",
        "name pace_m_s path_factor range_m max_hours depth_limit_m min_ground_speed_m_s fluid_l fluid_l_h line_m",
    ),
    "settings": ("None", "key value"),
}
LOG = {"sessions": "Point", "catches": "None"}
VALUE_LISTS = {
    ("marks", "kind"): {"entry", "mark", "exit", "waypoint"},
    ("channels", "kind"): {"fairway", "ferry", "lane", "small_craft"},
    ("closed_areas", "rule"): {"no_entry", "no_spearing", "no_anchoring", "loaded_gun_ban", "caution"},
    ("landmarks", "kind"): {
        "tower",
        "spire",
        "chimney",
        "mast",
        "windmill",
        "dome",
        "monument",
        "cross",
        "cairn",
        "flagpole",
        "building",
        "tank",
        "beacon",
        "light",
        "rock",
        "headland",
    },
    ("tides", "kind"): {"HW", "LW"},
    ("tide_ports", "form"): {"events", "series", "harmonic", "secondary"},
    ("stream_stations", "form"): {
        "hourly",
        "events",
        "constant",
        "coefficients",
        "subordinate",
        "slack_offset",
        "series",
        "harmonic",
        "wind",
    },
    ("stream_stations", "confidence"): {"measured", "official", "table", "model", "words"},
    ("stream_models", "kind"): {"mesh", "raster"},
    ("stream_stations", "reference"): {"HW", "LW"},
    ("stream_events", "kind"): {"slack", "max"},
    ("stream_areas", "phase"): {"flood", "ebb", "always"},
}
DEFAULT_SETTINGS = {
    "title": "",
    "zone": "UTC",
    "datum": "chart datum",
    "port": "",
    "reserve_factor": "1.3",
    "reserve_min": "25",
    "heading_step_deg": "5",
    "alarm_after_min": "30",
    "square_within_deg": "20",
    "shallow_depth_m": "1.5",
    "ashore_before_sunset_min": "45",
    "back_by": "",
    "float_colours": "",
    "flag": "",
    "emergency_numbers": "",
    "gps_name_length": "0",
    "gps_upper_case": "0",
    "gps_every_m": "0",
    "package_version": "1",
}
SWIMMER = {
    "pace_m_s": 0.5,
    "path_factor": 1.10,
    "range_m": 5000.0,
    "max_hours": 4.0,
    "depth_limit_m": 12.0,
    "min_ground_speed_m_s": 0.15,
    "fluid_l": 2.0,
    "fluid_l_h": 0.7,
    "line_m": 30.0,
}
POINT = "Point (-28.5 42.4)"
LINE = "LineString (-28.5 42.4, -28.4 42.5)"
AREA = "Polygon ((-28.5 42.4, -28.4 42.4, -28.4 42.5, -28.5 42.4))"
NOON = datetime(2027, 6, 5, 12, 0, tzinfo=timezone.utc)


@pytest.fixture(scope="module")
def empty_plan(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return create_plan(tmp_path_factory.mktemp("empty") / "bay.gpkg", title="Invented bay")


@pytest.fixture
def plan(empty_plan: Path, tmp_path: Path) -> Path:
    """A plan of the test's own, copied because that is quicker than making it."""
    return Path(shutil.copy(empty_plan, tmp_path / "bay.gpkg"))


def shape(wkt: str | None) -> QgsGeometry | None:
    return None if wkt is None else QgsGeometry.fromWkt(wkt)


def count(plan: Path, layer: str) -> int:
    with closing(sqlite3.connect(plan)) as connection:
        return connection.execute(f'SELECT count(*) FROM "{layer}"').fetchone()[0]


def layer_fields(plan: Path, name: str) -> tuple[str, list[str]]:
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR)
    layer = dataset.GetLayerByName(name)
    definition = layer.GetLayerDefn()
    fields = [definition.GetFieldDefn(index).GetName() for index in range(definition.GetFieldCount())]
    return ogr.GeometryTypeToName(layer.GetGeomType()), fields


@pytest.mark.parametrize("name", CONTRACT)
def test_layer_has_the_agreed_geometry_and_fields_in_order(plan: Path, name: str) -> None:
    geometry, fields = CONTRACT[name]
    assert layer_fields(plan, name) == (geometry, fields.split())


def test_plan_holds_the_agreed_layers_the_log_and_nothing_else(plan: Path) -> None:
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR)
    names = {dataset.GetLayer(index).GetName() for index in range(dataset.GetLayerCount())}
    assert names - {"layer_styles"} == {*CONTRACT, *LOG}
    for name, geometry in LOG.items():
        assert layer_fields(plan, name)[0] == geometry


def test_every_layer_with_a_place_is_in_wgs84(plan: Path) -> None:
    spatial = [name for name, (geometry, _fields) in CONTRACT.items() if geometry != "None"]
    systems = {name: open_layer(plan, name).crs().authid() for name in spatial if name != "channels"}
    systems["channels"] = open_layer(plan, "channels", geometry_type="Polygon").crs().authid()
    assert systems == dict.fromkeys(spatial, "EPSG:4326")


def test_value_lists_are_the_agreed_ones() -> None:
    held = {
        (layer.name, field.name): set(field.allowed)
        for layer in LAYERS
        for field in layer.fields
        if field.allowed and layer.name not in LOG
    }
    assert held == VALUE_LISTS


def test_file_itself_carries_defaults_not_null_titles_and_value_lists(plan: Path) -> None:
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR)
    definition = dataset.GetLayerByName("channels").GetLayerDefn()
    kind = definition.GetFieldDefn(definition.GetFieldIndex("kind"))
    assert kind.GetDefault() == "'fairway'"
    assert set(dataset.GetFieldDomain(kind.GetDomainName()).GetEnumeration()) == VALUE_LISTS["channels", "kind"]
    pace_layer = dataset.GetLayerByName("swimmers").GetLayerDefn()
    pace = pace_layer.GetFieldDefn(pace_layer.GetFieldIndex("pace_m_s"))
    domain = dataset.GetFieldDomain(pace.GetDomainName())
    assert (domain.GetMinAsDouble(), domain.GetMaxAsDouble()) == (0.1, 2.5)
    stores_titles = int(gdal.VersionInfo()) >= 3_070_000
    assert pace.GetAlternativeName() == ("Pace (m/s)" if stores_titles else "")
    tides = dataset.GetLayerByName("tides").GetLayerDefn()
    assert not tides.GetFieldDefn(tides.GetFieldIndex("time")).IsNullable()


def test_every_dimensional_field_says_its_unit_in_its_title() -> None:
    unit_ends = ("_m", "_kn", "_deg", "_min", "_s", "_l", "_h", "_cm", "_c", "_hours")
    for layer in LAYERS:
        for field in layer.fields:
            if field.is_number and field.name.endswith(unit_ends):
                assert field.unit, f"{layer.name}.{field.name}"
                assert f"({field.unit})" in field.alias


def test_settings_start_with_their_defaults(tmp_path: Path) -> None:
    assert read_settings(create_plan(tmp_path / "bay.gpkg")) == DEFAULT_SETTINGS


def test_zone_datum_and_title_are_kept(tmp_path: Path) -> None:
    path = create_plan(tmp_path / "bay.gpkg", zone="Atlantic/Azores", datum="LAT", title="Bay, 'north' side")
    settings = read_settings(path)
    assert (settings["zone"], settings["datum"], settings["title"]) == ("Atlantic/Azores", "LAT", "Bay, 'north' side")


def test_written_setting_replaces_every_row_of_its_key(plan: Path) -> None:
    append_rows(plan, "settings", [(None, {"key": "reserve_min", "value": "40"})])
    assert read_settings(plan)["reserve_min"] == "40"
    write_settings(plan, {"reserve_min": 35})
    assert read_settings(plan) == {**DEFAULT_SETTINGS, "title": "Invented bay", "reserve_min": "35"}
    assert count(plan, "settings") == len(DEFAULT_SETTINGS)


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("zone", "Moon/Tranquility"),
        ("zone", ""),
        ("zone", "../../etc/passwd"),
        ("reserve_factor", "0.9"),
        ("reserve_factor", "a third"),
        ("reserve_factor", "nan"),
        ("heading_step_deg", "0"),
        ("alarm_after_min", "-1"),
    ],
)
def test_setting_that_means_nothing_is_refused_by_key_and_value(plan: Path, key: str, value: str) -> None:
    with pytest.raises(BadInputError) as caught:
        write_settings(plan, {"title": "new", key: value})
    assert (caught.value.layer, caught.value.row, caught.value.value) == ("settings", key, value)
    assert read_settings(plan)["title"] == "Invented bay"


def test_unknown_setting_is_refused_with_the_keys_there_are(plan: Path) -> None:
    with pytest.raises(BadInputError, match=r"'speed'.*reserve_factor"):
        write_settings(plan, {"speed": "3"})


def test_setting_spoilt_in_the_table_is_refused_when_read(plan: Path) -> None:
    append_rows(plan, "settings", [(None, {"key": "reserve_factor", "value": "lots"})])
    with pytest.raises(BadInputError, match=r"'settings', row reserve_factor.*'lots'.*1 to 5"):
        read_settings(plan)


GOOD_ROWS = {
    "marks": (POINT, {"name": "Long Sill", "charted_depth_m": 9}),
    "routes": (LINE, {"name": "Short"}),
    "channels": (LINE, {"name": "Cut", "width_m": 80}),
    "closed_areas": (AREA, {"name": "Reserve", "rule": "no_entry", "from_time": "06:00", "to_time": "--1031"}),
    "land": (AREA, {"name": "Head"}),
    "depth_contours": (LINE, {"depth_m": 0}),
    "soundings": (POINT, {"depth_m": 4.3}),
    "landmarks": (POINT, {"name": "Mill", "kind": "silo with a red roof", "height_m": 24}),
    "transits": (LINE, {"mark": "Long Sill", "front": "Mill", "rear": "Spire"}),
    "tides": (None, {"port": "Kettle Slip", "time": NOON, "height_m": 3.1, "kind": "HW"}),
    "tide_ports": (None, {"port": "B", "form": "secondary", "reference_port": "A", "hw_minutes_springs": -20}),
    "tide_series": (None, {"port": "A", "time": NOON, "height_m": 1.2}),
    "tide_constants": (None, {"port": "A", "constituent": "M2", "amplitude_m": 1.7, "phase_deg": 120}),
    "tide_coefficients": (None, {"port": "A", "time": NOON, "coefficient": 87}),
    "stream_stations": (POINT, {"station": "A", "reference": "HW", "spring_range_m": 4, "confidence": "own eyes"}),
    "stream_rates": (None, {"station": "A", "hour": -6, "set_deg": 360, "spring_kn": 15}),
    "stream_events": (None, {"station": "A", "time": NOON, "kind": "max", "rate_kn": -1.5}),
    "stream_series": (None, {"station": "A", "time": NOON, "set_deg": 90, "rate_kn": 1.1}),
    "stream_constants": (None, {"station": "A", "constituent": "M2", "u_amplitude_m_s": 0.4, "u_phase_deg": 210}),
    "stream_models": (None, {"model": "bay", "path": "bay.nc", "step_min": 60}),
    "stream_areas": (AREA, {"station": "A", "phase": "ebb"}),
    "winds": (None, {"time": NOON, "from_deg": 225, "speed_kn": 12}),
    "drifts": (
        None,
        {"time": NOON, "lon": 10, "lat": 50, "end_time": NOON + timedelta(minutes=20), "end_lon": 10.01, "end_lat": 50},
    ),
    "ferries": (None, {"channel": "Cut", "time": "10:05"}),
    "swimmers": (None, {"name": "Ilm"}),
    "settings": (None, {"key": "note", "value": "x"}),
    "sessions": (POINT, {"name": "s1", "started": NOON, "felt_stream": "weak"}),
    "catches": (None, {"session": "s1", "species": "Wrasse", "count_kept": 1}),
}


@pytest.mark.parametrize("name", [layer.name for layer in LAYERS])
def test_good_row_is_stored_as_given_with_defaults_for_the_rest(plan: Path, name: str) -> None:
    wkt, values = GOOD_ROWS[name]
    before = count(plan, name)
    assert append_rows(plan, name, [(shape(wkt), values)]) == 1
    feature = list(open_layer(plan, name).getFeatures())[before]
    for field in LAYER_BY_NAME[name].fields:
        expected = values.get(field.name, field.default)
        got = feature[field.name]
        if expected is None:
            assert not got, field.name  # QGIS's NULL, whose truth is False
        elif field.kind == "datetime":
            assert utc_moment(got, layer=name, row=1, field=field.name) == expected
        else:
            assert got == expected, field.name
    if wkt is not None:
        assert feature.geometry().equals(shape(wkt))


def test_swimmer_defaults_are_the_agreed_ones(plan: Path) -> None:
    append_rows(plan, "swimmers", [(None, {"name": "Ilm"})])
    feature = next(open_layer(plan, "swimmers").getFeatures())
    assert {name: feature[name] for name in SWIMMER} == SWIMMER


def test_a_program_that_writes_only_some_fields_is_let_in(plan: Path) -> None:
    layer = open_layer(plan, "swimmers")
    feature = QgsFeature(layer.fields())
    feature["name"] = "Ilm"
    stored, _features = layer.dataProvider().addFeatures([feature])
    assert stored


REFUSED = [
    ("stream_rates", None, {"station": "A", "hour": 7}, "hour", 7),
    ("stream_rates", None, {"station": "A", "hour": 1.5}, "hour", 1.5),
    ("stream_rates", None, {"station": "A", "hour": 1, "spring_kn": 40}, "spring_kn", 40),
    ("stream_rates", None, {"station": "A", "hour": 1, "spring_kn": -1}, "spring_kn", -1),
    ("stream_rates", None, {"station": "A", "hour": 1, "set_deg": 361}, "set_deg", 361),
    ("stream_rates", None, {"station": "A", "hour": 1, "set_deg": float("nan")}, "set_deg", None),
    ("stream_rates", None, {"station": "A", "hour": 1, "neap_kn": "1.2"}, "neap_kn", "1.2"),
    ("stream_rates", None, {"station": "A", "hour": True}, "hour", True),
    ("stream_rates", None, {"hour": 1}, "station", None),
    ("stream_rates", None, {"station": "", "hour": 1}, "station", None),
    ("stream_rates", None, {"station": "A", "hour": 1, "rate": 2}, "rate", 2),
    ("stream_events", None, {"station": "A", "time": NOON, "kind": "max", "rate_kn": -15.5}, "rate_kn", -15.5),
    ("depth_contours", LINE, {"depth_m": -3}, "depth_m", -3),
    ("soundings", POINT, {"depth_m": -3}, "depth_m", -3),
    ("soundings", POINT, {}, "depth_m", None),
    ("marks", POINT, {"name": "A", "charted_depth_m": -3}, "charted_depth_m", -3),
    ("marks", POINT, {"name": "A", "kind": "beach"}, "kind", "beach"),
    ("marks", POINT, {"name": 7}, "name", 7),
    ("marks", None, {"name": "A"}, "geometry", "no geometry"),
    ("marks", "Point EMPTY", {"name": "A"}, "geometry", "no geometry"),
    ("marks", LINE, {"name": "A"}, "geometry", "LineString"),
    ("marks", "Point (10 95)", {"name": "A"}, "geometry", "latitude 95"),
    ("marks", "Point (500000 5000)", {"name": "A"}, "geometry", "latitude 5000"),
    ("marks", "Point (361 50)", {"name": "A"}, "geometry", "longitude 361"),
    ("routes", AREA, {"name": "A"}, "geometry", "Polygon"),
    ("channels", POINT, {"name": "A"}, "geometry", "Point"),
    ("channels", LINE, {"width_m": 0}, "width_m", 0),
    ("channels", LINE, {"boat_kn": 61}, "boat_kn", 61),
    ("closed_areas", AREA, {"name": "A"}, "rule", None),
    ("closed_areas", AREA, {"rule": "no_entry", "from_time": "6:00"}, "from_time", "6:00"),
    ("closed_areas", AREA, {"rule": "no_entry", "from_time": "--1301"}, "from_time", "--1301"),
    ("closed_areas", AREA, {"rule": "no_entry", "checked_on": "5 June"}, "checked_on", "5 June"),
    ("ferries", POINT, {"channel": "A", "time": "10:05"}, "geometry", "Point"),
    ("ferries", None, {"channel": "A", "time": "25:05"}, "time", "25:05"),
    ("tides", None, {"time": NOON.replace(tzinfo=None), "height_m": 3, "kind": "HW"}, "time", "2027-06-05 12:00:00"),
    ("tides", None, {"time": "2027-06-05T12:00", "height_m": 3, "kind": "HW"}, "time", "2027-06-05T12:00"),
    ("tides", None, {"time": "noon Z", "height_m": 3, "kind": "HW"}, "time", "noon Z"),
    ("tides", None, {"time": NOON, "height_m": 40, "kind": "HW"}, "height_m", 40),
    ("tides", None, {"time": NOON, "height_m": 4, "kind": "high"}, "kind", "high"),
    ("swimmers", None, {"name": "A", "pace_m_s": 3}, "pace_m_s", 3),
    ("swimmers", None, {"name": "A", "path_factor": 0.9}, "path_factor", 0.9),
    ("swimmers", None, {"name": "A", "pace_m_s": None}, "pace_m_s", None),
]


@pytest.mark.parametrize(("name", "wkt", "values", "field", "value"), REFUSED)
def test_bad_row_is_refused_by_name_row_and_value_and_nothing_is_written(
    plan: Path, name: str, wkt: str | None, values: dict, field: str, value: object
) -> None:
    good_wkt, good = GOOD_ROWS[name]
    before = count(plan, name)
    with pytest.raises(BadInputError) as caught:
        append_rows(plan, name, [(shape(good_wkt), good), (shape(wkt), values)])
    error = caught.value
    assert (error.layer, error.row, error.field) == (name, 2, field)
    if value is not None:
        assert error.value == value
    assert error.allowed
    assert error.remedy
    assert count(plan, name) == before


def test_naive_qt_time_is_refused_and_one_with_its_zone_is_stored_as_utc(plan: Path) -> None:
    day, clock = QDate(2027, 6, 5), QTime(12, 0)
    row = {"height_m": 3, "kind": "HW"}
    with pytest.raises(BadInputError, match="zone or an offset"):
        append_rows(plan, "tides", [(None, {**row, "time": QDateTime(day, clock)})])
    zoned = [
        NOON.astimezone(timezone(timedelta(hours=-9))),
        QDateTime(day, QTime(14, 0), Qt.TimeSpec.OffsetFromUTC, 7200),
        "2027-06-05T13:30+01:30",
    ]
    append_rows(plan, "tides", [(None, {**row, "time": moment}) for moment in zoned])
    with closing(sqlite3.connect(plan)) as connection:
        stored = [text for (text,) in connection.execute("SELECT time FROM tides")]
    # GDAL 3.6 writes milliseconds, 3.10 only where there are some.
    assert [text.replace(".000", "") for text in stored] == ["2027-06-05T12:00:00Z"] * 3


def test_parts_of_a_multi_geometry_become_rows_of_their_own_without_heights(plan: Path) -> None:
    two = shape("MultiLineStringZ ((1 2 9, 3 4 9), (5 6 9, 7 8 9))")
    assert append_rows(plan, "routes", [(two, {"name": "A"})]) == 2
    features = list(open_layer(plan, "routes").getFeatures())
    assert [feature.geometry().asWkt() for feature in features] == ["LineString (1 2, 3 4)", "LineString (5 6, 7 8)"]
    assert two.constGet().numGeometries() == 2, "the caller's geometry was changed"


def test_channels_hold_lines_and_areas_together(plan: Path) -> None:
    append_rows(plan, "channels", [(shape(LINE), {"width_m": 50}), (shape(AREA), {"name": "Dredged"})])
    both = [QgsWkbTypes.displayString(f.geometry().wkbType()) for f in open_layer(plan, "channels").getFeatures()]
    assert both == ["LineString", "Polygon"]
    areas = list(open_layer(plan, "channels", geometry_type="Polygon").getFeatures())
    assert [feature["name"] for feature in areas] == ["Dredged"]


def test_rows_go_in_while_a_project_shows_the_layer(plan: Path) -> None:
    layer = open_layer(plan, "marks")
    assert layer.featureCount() == 0
    append_rows(plan, "marks", [(shape(POINT), {"name": "A"})])
    layer.reload()
    assert [feature["name"] for feature in layer.getFeatures()] == ["A"]


def test_write_that_fails_half_way_leaves_no_row(plan: Path) -> None:
    with closing(sqlite3.connect(plan)) as connection, connection:
        connection.execute(
            "CREATE TRIGGER full BEFORE INSERT ON ferries WHEN (SELECT count(*) FROM ferries) >= 2 "
            "BEGIN SELECT RAISE(ABORT, 'disk is full'); END"
        )
    with pytest.raises(SwimPlanError, match="disk is full"):
        append_rows(plan, "ferries", [(None, {"channel": "Cut", "time": f"1{hour}:00"}) for hour in range(5)])
    assert count(plan, "ferries") == 0


def test_unknown_layer_is_refused_with_the_names_there_are(plan: Path) -> None:
    with pytest.raises(BadInputError, match=r"'wrecks'.*marks, routes"):
        append_rows(plan, "wrecks", [])
    with pytest.raises(BadInputError, match=r"'wrecks'"):
        open_layer(plan, "wrecks")


def test_what_is_not_a_plan_is_refused_by_path(tmp_path: Path) -> None:
    absent = tmp_path / "absent.gpkg"
    other = tmp_path / "other.gpkg"
    other.write_text("not a database, but long enough to be read as the header of one" * 20)
    for path in (absent, other):
        for ask in (read_settings, lambda p: open_layer(p, "marks"), lambda p: append_rows(p, "marks", [])):
            with pytest.raises(SwimPlanError, match=path.name):
                ask(path)
    assert not absent.exists()


def test_existing_file_is_refused_and_stays_as_it_is(plan: Path) -> None:
    append_rows(plan, "marks", [(shape(POINT), {"name": "A"})])
    before = plan.read_bytes()
    with pytest.raises(SwimPlanError, match="already there"):
        create_plan(plan)
    assert plan.read_bytes() == before


def test_overwriting_gives_an_empty_plan(plan: Path) -> None:
    append_rows(plan, "marks", [(shape(POINT), {"name": "A"})])
    create_plan(plan, overwrite=True, title="Second")
    assert count(plan, "marks") == 0
    assert read_settings(plan)["title"] == "Second"


def test_failed_overwrite_leaves_the_old_plan_and_no_litter(plan: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    before = plan.read_bytes()

    def fail(*_arguments: object) -> None:
        raise SwimPlanError(asked="The disk is full")

    monkeypatch.setattr(store_module, "store_styles", fail)
    with pytest.raises(SwimPlanError, match="disk is full"):
        create_plan(plan, overwrite=True)
    assert plan.read_bytes() == before
    with pytest.raises(SwimPlanError, match="disk is full"):
        create_plan(plan.with_name("other.gpkg"))
    assert [path.name for path in plan.parent.iterdir()] == [plan.name]


def test_plan_that_is_open_for_writing_is_not_replaced(plan: Path) -> None:
    with closing(sqlite3.connect(plan)) as connection:
        connection.execute("PRAGMA journal_mode = WAL")
        with connection:
            connection.execute("INSERT INTO ferries (channel, time) VALUES ('Cut', '10:05')")
        with pytest.raises(SwimPlanError, match="while it is open"):
            create_plan(plan, overwrite=True)
        assert count(plan, "ferries") == 1
    create_plan(plan, overwrite=True)
    assert count(plan, "ferries") == 0


def test_new_plan_is_one_file(tmp_path: Path) -> None:
    create_plan(tmp_path / "bay.gpkg")
    assert [path.name for path in tmp_path.iterdir()] == ["bay.gpkg"]


@pytest.mark.parametrize("name", ["bay.sqlite", "bay", "no/such/folder/bay.gpkg"])
def test_path_that_cannot_be_a_plan_is_refused_with_a_remedy(tmp_path: Path, name: str) -> None:
    with pytest.raises(SwimPlanError) as caught:
        create_plan(tmp_path / name)
    assert caught.value.remedy
    assert list(tmp_path.iterdir()) == []


def test_unknown_zone_is_refused_before_anything_is_made(tmp_path: Path) -> None:
    with pytest.raises(BadInputError, match=r"'Moon/Base'.*IANA.*Europe/Lisbon"):
        create_plan(tmp_path / "bay.gpkg", zone="Moon/Base")
    assert list(tmp_path.iterdir()) == []


def test_plan_of_a_newer_version_is_refused_in_clear_words(plan: Path) -> None:
    write_settings(plan, {"package_version": 2})
    for ask in (read_settings, lambda p: open_layer(p, "marks"), lambda p: append_rows(p, "marks", [])):
        with pytest.raises(
            SwimPlanError, match="version 2, made by a newer plugin.*up to version 1.*Update the plugin"
        ):
            ask(plan)


def test_incomplete_plan_is_brought_up_on_a_copy_with_its_rows_kept(tmp_path: Path) -> None:
    old = tmp_path / "old.gpkg"
    dataset = gdal.GetDriverByName("GPKG").Create(str(old), 0, 0, 0, gdal.GDT_Unknown)
    layer = dataset.CreateLayer("ferries", None, ogr.wkbNone)
    layer.CreateField(ogr.FieldDefn("channel", ogr.OFTString))
    feature = ogr.Feature(layer.GetLayerDefn())
    feature["channel"] = "Cut"
    layer.CreateFeature(feature)
    feature = layer = dataset = None
    before = old.read_bytes()
    assert package_version(old) == 0
    with pytest.raises(BadInputError, match="lacks this field"):
        append_rows(old, "ferries", [(None, {"channel": "Cut", "time": "10:05"})])

    new = bring_up_to_date(old, tmp_path / "new.gpkg")

    assert old.read_bytes() == before
    assert read_settings(new) == DEFAULT_SETTINGS
    for name, (geometry, fields) in CONTRACT.items():
        assert layer_fields(new, name) == (geometry, fields.split())
    ferries = open_layer(new, "ferries")
    assert [feature["channel"] for feature in ferries.getFeatures()] == ["Cut"]
    assert ferries.attributeAlias(ferries.fields().lookupField("time")) == "Passes at (plan's zone)"
    with pytest.raises(SwimPlanError, match="already there"):
        bring_up_to_date(old, new)


def test_bringing_up_keeps_settings_rows_and_the_users_own_styles(plan: Path) -> None:
    write_settings(plan, {"reserve_min": 40})
    append_rows(plan, "marks", [(shape(POINT), {"name": "A"})])
    open_layer(plan, "marks").saveStyleToDatabase("my own", "", False, "")
    new = bring_up_to_date(plan, plan.with_name("new.gpkg"))
    assert read_settings(new) == read_settings(plan)
    assert count(new, "marks") == 1
    with closing(sqlite3.connect(new)) as connection:
        names = connection.execute("SELECT styleName FROM layer_styles WHERE f_table_name = 'marks' ORDER BY 1")
        assert names.fetchall() == [("marks",), ("my own",)]


def test_project_gets_one_group_named_by_the_title_with_every_layer(plan: Path) -> None:
    project = QgsProject()
    group = add_plan_to_project(plan, project)
    assert [child.name() for child in project.layerTreeRoot().children()] == [group.name()] == ["Invented bay"]
    layers = [node.layer() for node in group.findLayers()]
    assert all(layer.isValid() for layer in layers)
    tables = [layer.dataProvider().uri().table() or layer.source().split("layername=")[1] for layer in layers]
    held = [table.split("|")[0] for table in tables]
    assert list(dict.fromkeys(held)) == list(TREE_ORDER)
    assert set(held) == {layer.name for layer in LAYERS}
    channels = [layer for layer, name in zip(layers, held) if name == "channels"]
    assert [QgsWkbTypes.displayString(layer.wkbType()) for layer in channels] == ["LineString", "Polygon"]
    assert layers[0].name() == "Marks"
    assert layers[0].renderer().type() == "categorizedSymbol"


def without_layers(plan: Path, names: tuple[str, ...]) -> Path:
    """The plan as it was made before it had these layers."""
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_UPDATE)
    for name in names:
        dataset.ExecuteSQL(f'DROP TABLE "{name}"')
    dataset = None
    return plan


def test_plan_made_before_the_younger_layers_opens_without_them_and_gets_them_when_brought_up(plan: Path) -> None:
    old = without_layers(plan, YOUNGER)
    project = QgsProject()
    group = add_plan_to_project(old, project)
    assert len(group.findLayers()) == len(LAYERS) - len(YOUNGER) + 1  # channels come as two
    assert all(node.layer().isValid() for node in group.findLayers())
    new = bring_up_to_date(old, old.with_name("new.gpkg"))
    for name in ("landmarks", "transits"):
        wkt, values = GOOD_ROWS[name]
        assert append_rows(new, name, [(shape(wkt), values)]) == 1
        assert open_layer(new, name).renderer().type() == "singleSymbol"


def test_plan_without_a_layer_that_every_plan_has_is_not_shown_at_all(plan: Path) -> None:
    project = QgsProject()
    with pytest.raises(BadInputError, match="land"):
        add_plan_to_project(without_layers(plan, ("land",)), project)
    assert project.layerTreeRoot().children() == []


def test_untitled_plan_is_shown_by_its_file_name(tmp_path: Path) -> None:
    project = QgsProject()
    assert add_plan_to_project(create_plan(tmp_path / "north bay.gpkg"), project).name() == "north bay"


def test_unreadable_plan_adds_nothing_to_the_project(tmp_path: Path) -> None:
    project = QgsProject()
    with pytest.raises(SwimPlanError):
        add_plan_to_project(tmp_path / "absent.gpkg", project)
    assert project.layerTreeRoot().children() == []


def test_field_without_its_unit_in_the_title_is_no_field() -> None:
    with pytest.raises(ValueError, match="lacks its unit"):
        FieldSpec(name="depth_m", kind="real", alias="Depth", unit="m")
    with pytest.raises(ValueError, match="value list"):
        FieldSpec(name="kind", kind="text", alias="Kind", choices={"a": "A"}, default="b")
    with pytest.raises(ValueError, match="twice"):
        name = FieldSpec(name="name", kind="text", alias="Name")
        LayerSpec(name="x", geometry="Point", title="X", fields=(name, name))


def test_plain_vector_layer_opens_without_the_store(plan: Path) -> None:
    layer = QgsVectorLayer(f"{plan}|layername=marks", "any name", "ogr")
    assert layer.attributeAlias(layer.fields().lookupField("stay_min")) == "Stay (min)"


def test_reference_page_says_what_the_schema_says(root: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.syspath_prepend(str(root / "tools"))
    import plan_reference

    page = plan_reference.PAGE.read_text(encoding="utf-8")
    assert page == plan_reference.page_with(plan_reference.reference(), page), "run tools/plan_reference.py"
    assert page.count("\n### `") == len(LAYERS)
