"""Signs, sides and places on Earth, end to end: what a swap of towards and from, of east and west would break."""

from __future__ import annotations

import math
import shutil
from pathlib import Path

import pytest
from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer
from swims import (
    DAY,
    GEOD,
    KNOT_M_S,
    LAT,
    LON,
    add_constant_stream,
    add_route,
    add_sine_stream,
    add_swimmer,
    box,
    flags_of,
    line,
    moved,
    new_plan,
    offset,
    point,
    swim,
    swum,
    utc,
)
from tideleg.plan_package.store import append_rows

DEPART = f"{DAY}T10:00Z"
# Variation far from nothing on either side; beyond the date line; near the pole; on the equator and the first meridian.
PLACES = {
    "north-east Atlantic": (LON, LAT),
    "Tasman Sea": (160.0, -40.0),
    "southern Indian Ocean": (60.0, -45.0),
    "date line": (179.995, -30.0),
    "date line from the east": (-179.995, 25.0),
    "70 north": (-5.0, 70.0),
    "70 south": (-100.0, -69.0),
    "first meridian and equator": (0.0, 0.0),
}


@pytest.fixture
def plan(qgis_app: object, tmp_path: Path) -> Path:
    return new_plan(tmp_path / "bay.gpkg")


def wrapped(place: tuple[float, float]) -> tuple[float, float]:
    return (place[0] + 180.0) % 360.0 - 180.0, place[1]


def difference(first_deg: float, second_deg: float) -> float:
    return (first_deg - second_deg + 180.0) % 360.0 - 180.0


# ---------------------------------------------------------------- towards, not from; up-stream, not down


@pytest.mark.parametrize(
    ("bearing", "towards", "side"),
    [(0.0, 90.0, -1), (0.0, 270.0, 1), (90.0, 180.0, -1), (90.0, 0.0, 1), (225.0, 315.0, -1)],
)
def test_heading_is_up_stream_of_the_line(plan: Path, tmp_path: Path, bearing, towards, side) -> None:
    add_route(plan, "Out", (LON, LAT), offset(bearing, 800.0))
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.3, towards)
    leg = swum(plan, tmp_path, DEPART=DEPART)["legs"][0]
    # asin(0.3 / 0.6) = 30 degrees to the side the stream comes from.
    assert difference(leg["heading_true_deg"], leg["bearing_true_deg"]) == pytest.approx(30.0 * side, abs=0.01)
    assert leg["ground_speed_m_s"] == pytest.approx(0.6 * math.cos(math.radians(30.0)), abs=1e-4)
    assert leg["stream_set_deg"] == pytest.approx(towards, abs=0.01)


@pytest.mark.parametrize(("towards", "speed"), [(90.0, 0.8), (270.0, 0.4)])
def test_stream_towards_the_mark_helps_and_from_it_hinders(plan: Path, tmp_path: Path, towards, speed) -> None:
    add_route(plan, "Out", (LON, LAT), offset(90.0, 800.0))
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.2, towards)
    assert swum(plan, tmp_path, DEPART=DEPART)["legs"][0]["ground_speed_m_s"] == pytest.approx(speed, abs=1e-4)


@pytest.mark.parametrize(("depart", "towards"), [("10:00", 40.0), ("14:00", 220.0)])
def test_flood_before_the_slack_and_ebb_after_it_run_towards_their_sets(plan, tmp_path, depart, towards) -> None:
    add_route(plan, "Out", (LON, LAT), offset(130.0, 300.0))
    add_swimmer(plan, 1.0)
    add_sine_stream(plan, utc("12:30"), 0.4, flood_set_deg=40.0)
    leg = swum(plan, tmp_path, DEPART=f"{DAY}T{depart}Z")["legs"][0]
    assert leg["stream_set_deg"] == pytest.approx(towards, abs=0.01)


def test_hours_before_high_water_are_before_it(plan: Path, tmp_path: Path) -> None:
    """Hour -2 sets north and +2 south; HW is at noon, so at 10:00 it sets north."""
    add_route(plan, "Out", (LON, LAT), offset(90.0, 200.0))
    add_swimmer(plan, 1.0)
    for when, height, kind in (("05:50", 0.5, "LW"), ("12:00", 4.5, "HW"), ("18:10", 0.5, "LW")):
        append_rows(plan, "tides", [(None, {"time": utc(when), "height_m": height, "kind": kind})])
    station = {"station": "A", "form": "hourly", "reference": "HW", "spring_range_m": 5.0, "neap_range_m": 2.0}
    append_rows(plan, "stream_stations", [(point((LON, LAT)), station)])
    rates = [{"station": "A", "hour": hour, "spring_kn": abs(hour) / 2.0, "neap_kn": 0.1} for hour in range(-6, 7)]
    append_rows(plan, "stream_rates", [(None, {**row, "set_deg": 0.0 if row["hour"] < 0 else 180.0}) for row in rates])
    before = swum(plan, tmp_path, DEPART=f"{DAY}T09:58Z")["legs"][0]
    after = swum(plan, tmp_path, DEPART=f"{DAY}T13:58Z")["legs"][0]
    assert (round(before["stream_set_deg"]) % 360, round(after["stream_set_deg"])) == (0, 180)
    # Range of the day 4.0 m: two thirds of the way from neaps to springs at hour 2.
    assert before["stream_kn"] == pytest.approx(0.1 + 0.9 * 2.0 / 3.0, abs=0.01)


# ---------------------------------------------------------------- magnetic, home


@pytest.mark.parametrize("name", PLACES)
def test_magnetic_is_true_less_easterly_variation_everywhere(plan: Path, tmp_path: Path, name: str) -> None:
    start = PLACES[name]
    add_route(plan, "Out", start, wrapped(offset(60.0, 900.0, *start)))
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.2, 150.0, at=start)
    report = swum(plan, tmp_path, DEPART=DEPART)
    leg, east = report["legs"][0], report["variation_deg"]
    assert abs(east) > 0.5
    for kind in ("bearing", "heading"):
        assert difference(leg[f"{kind}_mag_deg"], leg[f"{kind}_true_deg"] - east) == pytest.approx(0.0, abs=1e-5)
    assert leg["headings"][0]["heading_mag_deg"] == leg["heading_mag_deg"]
    assert leg["card_heading"].endswith("M")
    assert abs(difference(float(leg["card_heading"][:3]), leg["heading_mag_deg"])) <= 2.5


def test_variation_has_the_sign_of_the_chart(plan: Path, tmp_path: Path) -> None:
    """East of Tasmania and off New Zealand it is strongly east, off Iberia west (WMM2025)."""
    signs = {}
    for name in ("north-east Atlantic", "Tasman Sea", "southern Indian Ocean"):
        copy = Path(shutil.copy(plan, tmp_path / f"{len(signs)}.gpkg"))
        add_route(copy, "Out", PLACES[name], offset(60.0, 900.0, *PLACES[name]))
        add_constant_stream(copy, 0.0, None, at=PLACES[name])
        signs[name] = swum(copy, tmp_path, DEPART=DEPART)["variation_deg"]
    assert signs["north-east Atlantic"] == pytest.approx(-4.0, abs=0.05)
    assert signs["Tasman Sea"] > 10.0
    assert signs["southern Indian Ocean"] < -30.0


@pytest.mark.parametrize("name", PLACES)
def test_home_is_not_the_reciprocal_but_mirrors_it(plan: Path, tmp_path: Path, name: str) -> None:
    start = PLACES[name]
    mark = wrapped(offset(60.0, 900.0, *start))
    add_route(plan, "There and back", start, mark, start)
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.25, 150.0, at=start)
    out, home = swum(plan, tmp_path, DEPART=DEPART)["legs"]
    crab = math.degrees(math.asin(0.25 / 0.6))
    assert difference(out["heading_true_deg"], out["bearing_true_deg"]) == pytest.approx(-crab, abs=0.02)
    assert difference(home["heading_true_deg"], home["bearing_true_deg"]) == pytest.approx(crab, abs=0.02)
    reciprocal = abs(difference(home["heading_true_deg"], out["heading_true_deg"] + 180.0))
    assert reciprocal == pytest.approx(2.0 * crab, abs=0.05)


# ---------------------------------------------------------------- the same swim anywhere


@pytest.mark.parametrize("name", PLACES)
@pytest.mark.parametrize("mode", [0, 1, 2])
def test_swim_takes_as_long_anywhere_and_ends_on_the_mark(plan: Path, tmp_path: Path, name: str, mode: int) -> None:
    start = PLACES[name]
    mark = wrapped(offset(60.0, 1500.0, *start))
    add_route(plan, "Out", start, mark)
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.25, 195.0, at=start)
    ran = swim(plan, tmp_path, DEPART=DEPART, HEADING_MODE=mode, TRACK="memory:", LEGS="memory:")
    assert ran.ok, ran.said
    leg = ran.report["legs"][0]
    along, across = 0.25 * math.cos(math.radians(135.0)), 0.25 * math.sin(math.radians(135.0))
    assert leg["distance_m"] == pytest.approx(1500.0, abs=0.01)
    # At 70 degrees true north turns by 0.04 degree along the leg, and the set with it: half a second.
    assert leg["minutes"] == pytest.approx(1500.0 / (along + math.sqrt(0.36 - across**2)) / 60.0, abs=0.01)
    track = next(ran.layers["TRACK"].getFeatures()).geometry().constGet()
    end = track.endPoint()
    assert GEOD.inv(end.x(), end.y(), *mark)[2] < 0.1
    # No line runs round the world.
    assert ran.layers["TRACK"].extent().width() < 0.2
    assert ran.layers["LEGS"].extent().width() < 0.2


@pytest.mark.parametrize("name", ["date line", "date line from the east"])
@pytest.mark.parametrize("beyond", [False, True], ids=["jumping", "drawn beyond 180"])
def test_route_over_the_date_line_meets_what_lies_beyond_it(
    plan: Path, tmp_path: Path, name: str, beyond: bool
) -> None:
    start = PLACES[name]
    sign = 1.0 if start[0] > 0.0 else -1.0
    mark = offset(90.0 * sign % 360.0, 2000.0, *start)
    if beyond:
        mark = (mark[0] + sign * 360.0 if mark[0] * sign < 0.0 else mark[0], mark[1])
        assert abs(mark[0]) > 180.0
    else:
        mark = wrapped(mark)
        assert mark[0] * start[0] < 0.0
    add_route(plan, "Out", start, mark)
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.1, 0.0, at=start)
    middle = wrapped(offset(90.0 * sign % 360.0, 1400.0, *start))
    append_rows(plan, "closed_areas", [(box(-100.0, -200.0, 100.0, 200.0, middle), {"name": "B", "rule": "no_entry"})])
    append_rows(plan, "marks", [(point(wrapped(mark)), {"name": "Beyond", "kind": "mark", "charted_depth_m": 5.0})])
    report = swum(plan, tmp_path, DEPART=DEPART)
    assert report["legs"][0]["distance_m"] == pytest.approx(2000.0, abs=0.01)
    assert round(report["legs"][0]["bearing_true_deg"]) == (90 if sign > 0 else 270)
    assert report["legs"][0]["to"] == "Beyond"
    (flag,) = flags_of(report, "closed_area")
    assert flag["length_m"] == pytest.approx(200.0, abs=2.0)
    assert flag["lon"] * start[0] < 0.0


# ---------------------------------------------------------------- sides of lines and areas


@pytest.mark.parametrize("name", PLACES)
def test_area_is_met_where_it_lies_and_not_on_the_other_side(plan: Path, tmp_path: Path, name: str) -> None:
    start = PLACES[name]
    add_route(plan, "Out", start, wrapped(moved(0.0, 1000.0, *start)))
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.0, None, at=start)
    for label, west, east in (
        ("on the line", -50.0, 50.0),
        ("to the west", -300.0, -20.0),
        ("to the east", 20.0, 300.0),
    ):
        area = QgsGeometry(box(west, 400.0, east, 500.0, start))
        append_rows(plan, "closed_areas", [(area, {"name": label, "rule": "no_entry"})])
    (flag,) = flags_of(swum(plan, tmp_path, DEPART=DEPART), "closed_area")
    assert flag["name"] == "on the line"
    assert flag["length_m"] == pytest.approx(100.0, abs=0.5)
    assert GEOD.inv(flag["lon"], flag["lat"], *moved(0.0, 450.0, *start))[2] < 1.0


@pytest.mark.parametrize("lat", [-69.0, -44.0, 0.0, 44.0, 69.0])
def test_long_edge_along_a_parallel_stays_on_the_parallel(plan: Path, tmp_path: Path, lat: float) -> None:
    """A closed area's long side, drawn with two vertices far apart, lies where the map shows it."""
    start = (LON, lat)
    add_route(plan, "Out", start, moved(0.0, 1000.0, *start))
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.0, None, at=start)
    south, north = moved(0.0, 400.0, *start)[1], moved(0.0, 600.0, *start)[1]
    ring = [(LON - 0.8, south), (LON + 0.8, south), (LON + 0.8, north), (LON - 0.8, north), (LON - 0.8, south)]
    area = QgsGeometry.fromPolygonXY([[QgsPointXY(*corner) for corner in ring]])
    append_rows(plan, "closed_areas", [(area, {"name": "Park", "rule": "no_entry"})])
    (flag,) = flags_of(swum(plan, tmp_path, DEPART=DEPART), "closed_area")
    assert flag["length_m"] == pytest.approx(200.0, abs=0.5)
    assert flag["lat"] == pytest.approx((south + north) / 2.0, abs=1e-5)


@pytest.mark.parametrize("lat", [-60.0, -44.0, 0.0, 44.0, 60.0])
def test_land_of_half_a_world_is_land_here_and_only_here(plan: Path, tmp_path: Path, lat: float) -> None:
    """One polygon from far to the west to just east of the entry, as small-scale land layers have."""
    start = (LON, lat)
    add_route(plan, "Out", start, moved(1000.0, 0.0, *start))
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.0, None, at=start)
    coast = moved(-200.0, 0.0, *start)[0]
    spit = moved(600.0, 0.0, *start)[0]
    tip = moved(700.0, 0.0, *start)[0]
    ring = [(-175.0, -80.0), (coast, -80.0), (coast, lat + 0.01), (spit, lat + 0.01), (spit, lat - 0.01)]
    ring += [(tip, lat - 0.01), (tip, lat + 0.02), (coast, lat + 0.02), (coast, 80.0), (-175.0, 80.0), (-175.0, -80.0)]
    land = QgsGeometry.fromPolygonXY([[QgsPointXY(*corner) for corner in ring]])
    assert land.isGeosValid()
    append_rows(plan, "land", [(land, {"name": "Main"})])
    (flag,) = flags_of(swum(plan, tmp_path, DEPART=DEPART), "land")
    assert flag["length_m"] == pytest.approx(100.0, abs=1.0)
    assert spit < flag["lon"] < tip


@pytest.mark.parametrize("name", PLACES)
def test_channel_drawn_as_a_line_is_as_wide_as_it_says(plan: Path, tmp_path: Path, name: str) -> None:
    start = PLACES[name]
    add_route(plan, "Across", start, wrapped(moved(1000.0, 0.0, *start)))
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.2, 0.0, at=start)
    ends = [moved(500.0, north, *start) for north in (-3000.0, 3000.0)]
    append_rows(plan, "channels", [(line(*ends), {"name": "Cut", "kind": "fairway", "width_m": 150.0})])
    (flag,) = flags_of(swum(plan, tmp_path, DEPART=DEPART), "channel")
    assert flag["length_m"] == pytest.approx(150.0, abs=1.0)
    # The heading is asin(0.2 / 0.6) south of square.
    assert flag["crossing_angle_deg"] == pytest.approx(90.0 - math.degrees(math.asin(1.0 / 3.0)), abs=0.3)
    assert "towards 000" in flag["message"] or "towards 359" in flag["message"] or "towards 360" in flag["message"]


def test_tide_adds_to_a_depth_and_a_height_below_datum_takes_from_it(plan: Path, tmp_path: Path) -> None:
    mark = offset(90.0, 600.0)
    add_route(plan, "Out", (LON, LAT), mark, (LON, LAT))
    add_swimmer(plan, 0.5)
    add_constant_stream(plan, 0.0, None)
    append_rows(plan, "marks", [(point(mark), {"name": "Nine", "kind": "mark", "charted_depth_m": 9.0})])
    for when, height, kind in (("04:00", 2.0, "HW"), ("10:20", -0.4, "LW"), ("16:30", 2.0, "HW")):
        append_rows(plan, "tides", [(None, {"time": utc(when), "height_m": height, "kind": kind})])
    low = swum(plan, tmp_path, DEPART=DEPART)["stops"][1]["depth_now_m"]
    later = swum(plan, tmp_path, DEPART=f"{DAY}T12:00Z")["stops"][1]["depth_now_m"]
    assert low == pytest.approx(8.6, abs=1e-3)
    assert later > low + 0.3


def test_rates_are_knots_and_paces_metres_a_second(plan: Path, tmp_path: Path) -> None:
    add_route(plan, "Out", (LON, LAT), offset(90.0, 900.0))
    add_swimmer(plan, 1.0)
    append_rows(plan, "stream_stations", [(point((LON, LAT)), {"station": "K", "form": "constant"})])
    append_rows(plan, "stream_rates", [(None, {"station": "K", "hour": 0, "set_deg": 90.0, "spring_kn": 1.0})])
    leg = swum(plan, tmp_path, DEPART=DEPART)["legs"][0]
    assert leg["ground_speed_m_s"] == pytest.approx(1.0 + KNOT_M_S, abs=1e-4)
    assert leg["stream_kn"] == pytest.approx(1.0, abs=1e-5)


def test_longitude_stands_before_latitude_in_all_layers(plan: Path, tmp_path: Path) -> None:
    add_route(plan, "Out", (LON, LAT), offset(90.0, 900.0))
    add_swimmer(plan, 1.0)
    add_constant_stream(plan, 0.0, None)
    # A layer in a system whose authority puts latitude first is read as QGIS draws it.
    layer = QgsVectorLayer("Point?crs=EPSG:4258&field=name:string", "etrs", "memory")
    row = QgsFeature(layer.fields())
    row.setGeometry(point((LON, LAT)))
    row.setAttributes(["Slip"])
    layer.dataProvider().addFeature(row)
    report = swum(plan, tmp_path, DEPART=DEPART, MARKS=layer)
    assert report["stops"][0]["name"] == "Slip"
