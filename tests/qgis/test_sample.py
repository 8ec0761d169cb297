"""The sample: what its bay promises to a reader of the guide, checked on the rows and on the file made from them."""

from __future__ import annotations

import datetime as dt
import re
import sys
from itertools import pairwise
from pathlib import Path
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from osgeo import ogr
from pyproj import Geod
from qgis.core import QgsApplication, QgsCoordinateTransform, QgsGeometry, QgsProject, QgsVectorLayer
from qgis.PyQt.QtGui import QColor, QImage

SAMPLE_FOLDER = Path(__file__).resolve().parents[2] / "sample_layers"
if str(SAMPLE_FOLDER) not in sys.path:
    sys.path.append(str(SAMPLE_FOLDER))

import bay_frame  # noqa: E402
import bay_plan  # noqa: E402
import bay_water  # noqa: E402
import chart_picture  # noqa: E402
import demo  # noqa: E402
import make_bay  # noqa: E402
from bay_shape import Seabed  # noqa: E402

GEOD = Geod(ellps="WGS84")
LAYERS_OF_THE_LOG = {"sessions", "catches"}
WATER_IN_OTHER_FORMS = {"tide_ports", "tide_series", "tide_constants", "tide_coefficients", "stream_series"}
WATER_IN_OTHER_FORMS |= {"stream_events", "stream_constants", "stream_models", "winds", "drifts"}
NOT_IN_THE_SAMPLE = LAYERS_OF_THE_LOG | WATER_IN_OTHER_FORMS


def distance_m(here: tuple[float, float], there: tuple[float, float]) -> float:
    return GEOD.inv(*here, *there)[2]


def lon_lat_of(geometry: QgsGeometry) -> tuple[float, float]:
    return geometry.asPoint().x(), geometry.asPoint().y()


def vertices(geometry: QgsGeometry) -> list[tuple[float, float]]:
    return [(vertex.x(), vertex.y()) for vertex in geometry.vertices()]


@pytest.fixture(scope="module")
def rows() -> make_bay.Rows:
    return make_bay.all_rows()


@pytest.fixture(scope="module")
def package(qgis_app, tmp_path_factory) -> Path:
    return make_bay.make(tmp_path_factory.mktemp("sample") / "bay.gpkg")


@pytest.fixture(scope="module")
def land(rows) -> QgsGeometry:
    return QgsGeometry.unaryUnion([geometry for geometry, _ in rows["land"]])


@pytest.fixture(scope="module")
def mark_places(rows) -> dict[str, tuple[float, float]]:
    return {fields["name"]: lon_lat_of(geometry) for geometry, fields in rows["marks"]}


def test_two_runs_give_the_same_rows(rows):
    again = make_bay.all_rows()
    assert list(again) == list(rows)
    for layer, layer_rows in rows.items():
        plain = [(geometry.asWkt() if geometry else None, fields) for geometry, fields in layer_rows]
        assert plain == [(geometry.asWkt() if geometry else None, fields) for geometry, fields in again[layer]], layer


def test_the_bay_lies_in_the_open_atlantic_and_nowhere_else(rows):
    assert (bay_frame.LONGITUDE_DEG, bay_frame.LATITUDE_DEG) == (-50.0, 36.0)
    middle = (bay_frame.LONGITUDE_DEG, bay_frame.LATITUDE_DEG)
    places = [place for layer in rows.values() for geometry, _ in layer if geometry for place in vertices(geometry)]
    assert len(places) > 1000
    assert max(distance_m(middle, place) for place in places) < 6000.0


def test_the_zone_has_daylight_saving_and_fits_the_longitude():
    zone = ZoneInfo(bay_frame.ZONE)
    summer, winter = (dt.datetime(2027, month, 15, tzinfo=zone).utcoffset() for month in (6, 12))
    assert summer - winter == dt.timedelta(hours=1)
    assert abs(summer.total_seconds() / 3600.0 - bay_frame.LONGITUDE_DEG / 15.0) <= 1.0


def test_every_layer_of_the_file_has_rows_and_carries_the_notice(package):
    from tideleg.plan_package.schema import LAYERS

    dataset = ogr.Open(str(package))
    for spec in LAYERS:
        layer = dataset.GetLayerByName(spec.name)
        assert bay_frame.NOTICE in layer.GetMetadataItem("DESCRIPTION"), spec.name
        assert (layer.GetFeatureCount() > 0) == (spec.name not in NOT_IN_THE_SAMPLE), spec.name


def test_the_file_holds_exactly_the_rows_made(package, rows):
    for name, layer_rows in rows.items():
        layer = QgsVectorLayer(f"{package}|layername={name}", name, "ogr")
        assert layer.featureCount() == len(layer_rows), name


def test_landmarks_stand_on_land_and_two_marks_have_the_transits_that_fix_them_best(rows, land, package):
    from tideleg.core.solve.transits_of_marks import transits_of_marks
    from tideleg.layers_in.swim_in import SwimAsked, request_from
    from tideleg.layers_in.transits_asked import TransitsAsked, transits_request

    assert all(land.contains(geometry) for geometry, _ in rows["landmarks"])
    asked = transits_request(package, None, TransitsAsked(day="2027-06-26"))
    found = transits_of_marks(asked.marks, asked.landmarks, asked.date, limits=asked.limits)
    pairs = {one.mark: one.fixes for one in found.marks}
    assert [mark for mark, fixes in pairs.items() if not fixes] == ["Far Table", "The Spindle"]
    for mark in ("Kelp Step", "Wether Table"):
        best = pairs[mark][0]
        ends = {(mark, one.front, one.rear) for one in (best.first, best.second)}
        assert ends == {picked for picked in bay_plan.TRANSITS if picked[0] == mark}
        assert best.error_m < 20.0
    request = request_from(package, {}, SwimAsked(route="Inner reef and home", depart=bay_plan.DEPART))
    assert len(request.transits) == len(bay_plan.TRANSITS)
    assert not any("ransit" in warning for warning in request.warnings)


def test_the_settings_give_zone_datum_and_notice(package):
    from tideleg.plan_package import store

    settings = store.read_settings(package)
    assert settings["zone"] == bay_frame.ZONE
    assert bay_frame.NOTICE in settings["title"]
    assert "invented" in settings["datum"]


def test_a_second_making_replaces_the_file_and_leaves_no_remains(package):
    made = make_bay.make(package)
    assert made == package
    assert [path.name for path in package.parent.iterdir()] == [package.name]


def slack_hours(station: str) -> list[float]:
    """Hours from high water at which the hourly table's stream turns, by its part along the strongest set."""
    table = {r["hour"]: r for r in bay_water.stream_rate_rows() if r["station"] == station}
    hours = sorted(table)
    assert hours == list(range(-6, 7))
    strongest = max(table.values(), key=lambda r: r["spring_kn"])
    turn = np.radians([table[hour]["set_deg"] - strongest["set_deg"] for hour in hours])
    along = np.array([table[hour]["spring_kn"] for hour in hours]) * np.cos(turn)
    return [h + a / (a - b) for h, (a, b) in zip(hours, pairwise(along)) if a * b < 0.0]


@pytest.mark.parametrize("station", [bay_water.INNER, bay_water.OUTER])
def test_slack_is_more_than_an_hour_away_from_high_water(station):
    slacks = slack_hours(station)
    assert len(slacks) == 2
    assert min(abs(hour) for hour in slacks) > 1.0


def test_the_bay_turns_hours_before_the_stream_off_the_head():
    inner, outer = (max(slack_hours(station)) for station in (bay_water.INNER, bay_water.OUTER))
    assert 1.0 < outer - inner < 4.0


def test_the_eddy_station_lies_inside_its_area(rows):
    [(area, fields)] = rows["stream_areas"]
    stations = {f["station"]: geometry for geometry, f in rows["stream_stations"]}
    assert area.contains(stations[fields["station"]])
    assert not any(area.contains(geometry) for name, geometry in stations.items() if name != fields["station"])


def test_every_stream_row_belongs_to_a_station_and_every_ferry_to_a_channel(rows):
    stations = {fields["station"] for _, fields in rows["stream_stations"]}
    assert {fields["station"] for _, fields in rows["stream_rates"]} == stations
    channels = {fields["name"] for _, fields in rows["channels"]}
    assert {fields["channel"] for _, fields in rows["ferries"]} <= channels


def test_no_station_or_route_touches_land(rows, land):
    for name in ("routes", "stream_stations", "marks"):
        for geometry, fields in rows[name]:
            assert not geometry.intersects(land), fields


def test_every_vertex_of_a_route_is_at_a_mark_in_water(rows, mark_places):
    depths = {fields["name"]: fields["charted_depth_m"] for _, fields in rows["marks"]}
    for geometry, fields in rows["routes"]:
        for place, stop in zip(vertices(geometry), bay_plan.ROUTES[fields["name"]][0]):
            assert distance_m(place, mark_places[stop]) < 15.0
            assert depths[stop] > 0.0


def test_marks_lie_apart_so_that_none_takes_another_ones_vertex(mark_places):
    places = list(mark_places.values())
    assert min(distance_m(a, b) for n, a in enumerate(places) for b in places[:n]) > 30.0


def test_marks_stand_on_soundings_of_their_own_depth(rows):
    soundings = [(lon_lat_of(geometry), fields["depth_m"]) for geometry, fields in rows["soundings"]]
    for geometry, fields in rows["marks"]:
        near = [depth for place, depth in soundings if distance_m(place, lon_lat_of(geometry)) < 5.0]
        assert near
        assert max(abs(depth - fields["charted_depth_m"]) for depth in near) <= 1.0, fields["name"]


def test_soundings_agree_with_the_contours_beside_them(rows):
    """A sounding within 12 m of a contour differs from it by no more than the seabed slopes in that distance."""
    lines = [(geometry, fields["depth_m"]) for geometry, fields in rows["depth_contours"]]
    compared = 0
    for geometry, fields in rows["soundings"]:
        here = lon_lat_of(geometry)
        for line, depth_m in lines:
            nearest = line.nearestPoint(geometry).asPoint()
            if distance_m(here, (nearest.x(), nearest.y())) < 12.0:
                compared += 1
                assert abs(fields["depth_m"] - depth_m) < 2.0, (fields, depth_m)
    assert compared >= 10


def test_contours_lie_at_their_own_depth_on_the_seabed():
    from bay_chart import depth_contours

    seabed = Seabed()
    off = [
        float(seabed.depth_m(vertex.x(), vertex.y())) - depth_m
        for depth_m, line in depth_contours(seabed)
        for vertex in line.vertices()
    ]
    assert len(off) > 1000
    assert np.quantile(np.abs(off), 0.95) < 0.5
    assert np.max(np.abs(off)) < 2.0


def test_the_charted_depths_show_reefs_a_gully_and_a_pinnacle():
    depth = Seabed().depth_m
    table, gully = bay_plan.MARKS["Wether Table"][0], bay_plan.MARKS["Gully Mouth"][0]
    assert depth(*gully) - depth(*table) > 10.0
    spindle = np.array(bay_plan.MARKS["The Spindle"][0])
    around = [depth(*(spindle + 180.0 * np.array([np.sin(a), np.cos(a)]))) for a in np.linspace(0.0, 6.0, 12)]
    assert min(around) - depth(*spindle) > 6.0


def tide_table(rows) -> list[dict]:
    return [fields for _, fields in rows["tides"]]


def test_high_and_low_waters_alternate_through_28_days(rows):
    table = tide_table(rows)
    assert all(a["kind"] != b["kind"] for a, b in pairwise(table))
    assert all(a["time"] < b["time"] for a, b in pairwise(table))
    assert table[-1]["time"] - table[0]["time"] >= dt.timedelta(days=28)
    assert all(row["time"].utcoffset() == dt.timedelta(0) for row in table)


def test_springs_range_is_more_than_1_6_times_the_neaps_range(rows):
    heights = [row["height_m"] for row in tide_table(rows)]
    ranges = np.abs(np.diff(heights))
    by_fortnight = np.array_split(ranges, 2)
    for fortnight in by_fortnight:
        daily = np.convolve(fortnight, np.full(4, 0.25), mode="valid")
        assert daily.max() > 1.6 * daily.min()


def test_successive_high_waters_show_a_diurnal_inequality(rows):
    highs = [row["height_m"] for row in tide_table(rows) if row["kind"] == "HW"]
    assert max(abs(a - b) for a, b in pairwise(highs)) > 0.3


def test_no_low_water_falls_below_chart_datum(rows):
    assert min(row["height_m"] for row in tide_table(rows)) >= 0.0


@pytest.mark.parametrize("minute", [600, 20_000, 35_000])
def test_high_water_is_the_highest_minute_of_its_tide(rows, minute):
    when = bay_water.FIRST_DAY + dt.timedelta(minutes=minute)
    high = min((r for r in tide_table(rows) if r["kind"] == "HW"), key=lambda r: abs(r["time"] - when))
    at = (high["time"] - bay_water.FIRST_DAY).total_seconds() / 60.0
    around = bay_water.height_m(np.arange(at - 180, at + 181))
    assert int(np.argmax(around)) == 180
    assert high["height_m"] == pytest.approx(around.max(), abs=0.005)


def test_a_plan_that_is_newer_than_its_scripts_is_not_stale(tmp_path):
    path = tmp_path / "bay.gpkg"
    assert make_bay.is_stale(path)
    path.touch()
    assert not make_bay.is_stale(path)


@pytest.fixture(scope="module")
def provider(qgis_app):
    """The Tideleg provider, taken away again only if it was not there before."""
    from tideleg.processing.provider import TidelegProvider

    registry = QgsApplication.processingRegistry()
    present = registry.providerById("tideleg")
    if present:
        yield present
        return
    added = TidelegProvider()
    registry.addProvider(added)
    yield added
    registry.removeProvider(added)


@pytest.fixture(scope="module")
def planned(package, provider, tmp_path_factory) -> dict[str, tuple[demo.Report, Path]]:
    folder = tmp_path_factory.mktemp("out")
    return {
        route: (demo.plan_swim(package, route, folder / demo.slug(route)), folder / demo.slug(route))
        for route in bay_plan.ROUTES
    }


def flags_of(report: demo.Report, kind: str) -> list[dict]:
    return [flag for flag in report["flags"] if flag["kind"] == kind]


def test_the_easy_route_can_be_swum_at_the_samples_hour(planned):
    report, _ = planned["Inner reef and home"]
    assert report["feasible"]
    assert 2500.0 < report["total_m"] < 3500.0
    assert not [flag for flag in report["flags"] if flag["severity"] == "stop"]
    fairway = flags_of(report, "channel")
    assert len(fairway) == 2
    assert min(flag["crossing_angle_deg"] for flag in fairway) > 70.0


def test_the_outer_route_has_a_leg_that_cannot_be_swum_at_the_samples_hour(planned):
    report, _ = planned["Round by the Spindle"]
    assert not report["feasible"]
    [stuck] = [leg for leg in report["legs"] if not leg["feasible"]]
    assert (stuck["from"], stuck["to"]) == ("The Spindle", "Elbow North")
    assert stuck["reason"]


def test_the_outer_route_can_be_swum_two_hours_later(package, provider, tmp_path):
    later = dt.datetime.fromisoformat(bay_plan.DEPART) + dt.timedelta(hours=2)
    report = demo.plan_swim(package, "Round by the Spindle", tmp_path / "later", later.isoformat())
    assert report["feasible"]
    assert dt.datetime.fromisoformat(report["depart"]).hour == 12


def test_the_slanting_route_crosses_the_fairway_obliquely_and_meets_a_ferry(planned):
    report, _ = planned["Slantwise from the slip"]
    assert all(leg["feasible"] for leg in report["legs"])
    first_leg = {flag["name"]: flag for flag in flags_of(report, "channel") if flag["leg"] == 1}
    assert {"Slip lane", bay_plan.FERRY, "Ostrel Channel, inner reach"} <= set(first_leg)
    assert first_leg["Ostrel Channel, inner reach"]["crossing_angle_deg"] < 60.0
    assert first_leg[bay_plan.FERRY]["severity"] == "stop"


def test_streams_near_the_marks_of_the_easy_route_are_moderate(planned):
    report, _ = planned["Inner reef and home"]
    assert max(leg["stream_kn"] for leg in report["legs"]) < 1.0
    assert max(leg["stream_kn"] for leg in report["legs"]) > 0.1


@pytest.mark.parametrize("name", ["report.json", "legs.csv", "marks.gpx", "card.pdf", demo.RESULT_LAYERS])
def test_every_route_leaves_its_files(planned, name):
    for _, folder in planned.values():
        assert (folder / name).stat().st_size > 200


def test_the_card_becomes_a_picture_with_ink_on_it(planned):
    _, folder = planned["Inner reef and home"]
    picture = QImage(str(demo.picture_of_card(folder / "card.pdf")))
    dark = sum(
        QColor(picture.pixel(x, y)).lightness() < 90
        for x in range(0, picture.width(), 4)
        for y in range(0, picture.height(), 4)
    )
    share = dark * 16 / (picture.width() * picture.height())
    assert 0.01 < share < 0.5


def test_the_chart_shows_land_sea_and_the_swum_track(package, planned):
    _, folder = planned["Inner reef and home"]
    layers = demo.chart_layers(package, folder, "Inner reef and home")
    picture = QImage(str(demo.draw_chart(layers, folder / "map.png", "Inner reef and home")))
    seen = {
        QColor(picture.pixel(x, y)).name() for x in range(0, picture.width(), 2) for y in range(0, picture.height(), 2)
    }
    assert {chart_picture.SEA.name(), chart_picture.SWUM} <= seen
    assert QColor(picture.pixel(60, picture.height() - 60)).name() not in (chart_picture.SEA.name(), "#ffffff")


def test_the_words_say_legs_stops_and_flags(planned):
    from demo_words import flag_sentences, headline, legs_table, stop_lines

    report, _ = planned["Round by the Spindle"]
    table = "\n".join(legs_table(report))
    assert all(leg["from"] in table and leg["to"] in table for leg in report["legs"])
    assert "Leg 3 cannot be swum: " in table
    assert "NOT FEASIBLE" in headline(report)[1]
    stops, turns = stop_lines(report)[::2], stop_lines(report)[1::2]
    assert [line.split(":")[0].strip() for line in stops] == ["East Shoulder", "The Spindle", "Elbow North"]
    latest = report["stops"][1]["latest_leave"][11:16]
    assert turns[0].strip().startswith(f"turn back by {latest} at the latest, to ")
    assert turns[1].strip() == "no exit is reached in time from here"
    assert flag_sentences(report)[0].startswith("  STOP: ")


def test_windows_of_the_sample_days_are_listed_and_drawn(package, provider, tmp_path):
    from demo_words import window_lines

    report = demo.find_windows(package, "Inner reef and home", tmp_path)
    lines = window_lines(report)
    assert [day["rank"] for day in report["days"]] == [1, 2, 3, 4]
    for window in report["windows"]:
        assert any(window["closes"]["words"][:30] in line for line in lines)
    assert not QImage(str(tmp_path / "days.png")).isNull()


def test_the_table_has_the_times_and_minutes_of_the_card(planned):
    from demo_words import headline, legs_table

    report, folder = planned["Inner reef and home"]
    with open(folder / "marks.gpx", encoding="utf-8") as gpx:
        said = re.findall(r"<cmt>(\d{3}M) (\d+)min leave (\d\d:\d\d) arrive (\d\d:\d\d)", gpx.read())
    rows = legs_table(report)[2:]
    assert len(said) == len(rows) == 3
    for row, words in zip(rows, said):
        assert all(word in row.split() for word in words), (row, words)
    assert headline(report)[1].startswith(f"Home {said[-1][-1]}, ")
    assert " bearing T " in legs_table(report)[0] and "track" not in legs_table(report)[0]


def test_a_leg_that_cannot_be_swum_has_no_heading_and_no_times_in_the_table(planned):
    from demo_words import headline, legs_table

    report, _ = planned["Round by the Spindle"]
    [row] = [line for line in legs_table(report) if line.split()[:1] == ["3"]]
    assert report["legs"][2]["card_heading"]  # the report has what the leg would need
    assert "not swimmable" in row and not re.search(r"\d{3}M|\d\d:\d\d", row)
    assert "Home" not in headline(report)[1]
    assert "only if leg 3 could be swum" in "\n".join(legs_table(report))


def test_the_chart_of_the_outer_route_shows_all_of_its_track_and_says_it_is_not_feasible(package, planned):
    report, folder = planned["Round by the Spindle"]
    assert demo.chart_title(report) == "Round by the Spindle - NOT FEASIBLE at this hour"
    assert demo.chart_title(planned["Inner reef and home"][0]) == "Inner reef and home"
    layers = demo.chart_layers(package, folder, "Round by the Spindle")
    [track] = [layer for layer in layers if layer.name() == "track"]
    view = chart_picture.view_of(layers)
    to_view = QgsCoordinateTransform(track.crs(), chart_picture.bay_crs(), QgsProject.instance())
    swum = to_view.transformBoundingBox(track.extent())
    assert not chart_picture.VIEW_M.contains(swum)
    assert view.contains(swum) and view.contains(chart_picture.VIEW_M)
    assert view.width() / view.height() == pytest.approx(chart_picture.VIEW_M.width() / chart_picture.VIEW_M.height())


def test_the_letters_of_the_chart_have_a_family():
    assert chart_picture._font(20).family() == "Sans Serif"
