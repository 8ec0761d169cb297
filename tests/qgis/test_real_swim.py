"""A swim planned on a published chart cell: NOAA's US4MD81M, public domain, not for navigation; skipped where absent.

The cell holds no streams and no tides. The stream here is a constant one, stated as such, so that every number can be
worked out again by hand; the chart, the fairway, the restricted area and the coast are the cell's own.
"""

from __future__ import annotations

import json
import math
from pathlib import Path

import pytest
import shapely
import shapely.geometry
import shapely.ops
import shapely.wkb
from osgeo import gdal
from pyproj import Geod
from swims import GEOD, add_constant_stream, add_route, add_swimmer, flags_of, new_plan, point, run, swum
from tideleg.plan_package.store import append_rows
from tideleg.processing.readchart import ReadChart

EXTENT = "-76.545,-76.495,38.675,38.715 [EPSG:4326]"
BEACH, MARK, LANDING = (-76.53235, 38.69852), (-76.52350, 38.68800), (-76.53228, 38.70051)
PACE_M_S, STREAM_M_S, SET_DEG = 0.65, 0.15, 190.0


@pytest.fixture(scope="module")
def cell(real_data: Path) -> Path:
    path = real_data / "chart-us4md81m" / "US4MD81M.000"
    if not path.exists():
        pytest.skip(f"no chart cell {path}")
    return path


@pytest.fixture(scope="module")
def plan(cell: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    made = new_plan(tmp_path_factory.mktemp("real") / "plan.gpkg", ZONE="America/New_York", DATUM="MLLW")
    report = made.with_name("read.json")
    ran = run(ReadChart().create(), {"CHART": str(cell), "PLAN": str(made), "EXTENT": EXTENT, "REPORT": str(report)})
    assert ran.ok, ran.said
    add_route(made, "Across", BEACH, MARK, LANDING)
    marks = ((BEACH, "Beach", "entry", 0), (MARK, "Mark", "mark", 20), (LANDING, "Landing", "exit", 0))
    append_rows(made, "marks", [(point(at), {"name": n, "kind": k, "stay_min": s}) for at, n, k, s in marks])
    add_swimmer(made, PACE_M_S)
    add_constant_stream(made, STREAM_M_S, SET_DEG, at=MARK)
    return made


@pytest.fixture(scope="module")
def report(plan: Path) -> dict:
    return swum(plan, plan.parent, ROUTE="Across", DEPART="2027-06-05T08:00")


def charted(cell: Path, name: str) -> list[shapely.geometry.base.BaseGeometry]:
    """Polygons of a class, read here without the plugin."""
    # The data set must outlive its layer.
    dataset = gdal.OpenEx(str(cell), gdal.OF_VECTOR, allowed_drivers=["S57"])
    shapes = [shapely.wkb.loads(bytes(row.GetGeometryRef().ExportToWkb())) for row in dataset.GetLayerByName(name)]
    return [shape for shape in shapes if shape.geom_type == "Polygon"]


def inside_m(shapes: list, start: tuple[float, float], end: tuple[float, float]) -> float:
    """Length of a straight leg inside shapes, by shapely and the geodesic."""
    # A constant stream leaves the track straight, so the ruler line is the track.
    cut = shapely.ops.unary_union(shapes).intersection(shapely.geometry.LineString([start, end]))
    return Geod(ellps="WGS84").geometry_length(cut)


def test_the_route_is_a_swim_of_two_to_four_kilometres_with_the_minutes_of_the_triangle(report: dict) -> None:
    assert 2000.0 < report["total_m"] < 4000.0
    for leg, (start, end) in zip(report["legs"], ((BEACH, MARK), (MARK, LANDING))):
        bearing, _, metres = GEOD.inv(*start, *end)
        angle = math.radians(SET_DEG - bearing)
        along, across = STREAM_M_S * math.cos(angle), STREAM_M_S * math.sin(angle)
        ground = along + math.sqrt(PACE_M_S**2 - across**2)
        assert leg["feasible"]
        assert leg["minutes"] == pytest.approx(metres / ground / 60.0, abs=0.01)
        heading = (bearing - math.degrees(math.asin(across / PACE_M_S))) % 360.0
        assert leg["heading_true_deg"] == pytest.approx(heading, abs=0.02)
        assert leg["off_line_m"] == pytest.approx(0.0, abs=0.5)
        # West variation is added.
        assert report["variation_deg"] < -9.0
        assert leg["heading_mag_deg"] == pytest.approx((heading - report["variation_deg"]) % 360.0, abs=0.02)


def test_each_leg_crosses_the_charted_fairway_over_the_length_that_shapely_measures(cell: Path, report: dict) -> None:
    fairways = charted(cell, "FAIRWY")
    flags = flags_of(report, "channel")
    assert [flag["leg"] for flag in flags] == [1, 2] or [flag["leg"] for flag in flags] == [2, 1]
    for flag in flags:
        ends = (BEACH, MARK) if flag["leg"] == 1 else (MARK, LANDING)
        assert flag["length_m"] == pytest.approx(inside_m(fairways, *ends), abs=0.5)
        assert "Fishing Creek" in flag["name"]
        assert 0.0 <= flag["crossing_angle_deg"] <= 90.0


def test_the_restricted_area_stops_the_swim_and_names_its_rule(cell: Path, report: dict) -> None:
    areas = charted(cell, "RESARE")
    stops = [flag for flag in flags_of(report, "closed_area") if flag["severity"] == "stop"]
    assert stops and not report["feasible"]
    for leg, ends in ((1, (BEACH, MARK)), (2, (MARK, LANDING))):
        found = [flag for flag in stops if flag["leg"] == leg]
        assert max(flag["length_m"] for flag in found) == pytest.approx(inside_m(areas, *ends), rel=0.01)
        assert all("Rule:" in flag["message"] and "Checked on" in flag["message"] for flag in found)


def test_missing_tides_are_said_and_no_depth_is_invented(report: dict) -> None:
    mark = next(stop for stop in report["stops"] if stop["name"] == "Mark")
    assert mark["depth_now_m"] is None
    assert flags_of(report, "tide_unknown")
    assert json.loads(json.dumps(report, allow_nan=False)) == report


def test_no_leg_is_over_land(cell: Path, report: dict) -> None:
    assert not flags_of(report, "land")
    assert inside_m(charted(cell, "LNDARE"), BEACH, MARK) == 0.0


def test_without_a_stream_station_nothing_is_timed(plan: Path, tmp_path: Path) -> None:
    bare = tmp_path / "bare.gpkg"
    bare.write_bytes(plan.read_bytes())
    source = gdal.OpenEx(str(bare), gdal.OF_VECTOR | gdal.OF_UPDATE)
    for table in ("stream_stations", "stream_rates"):
        source.ExecuteSQL(f'DELETE FROM "{table}"')
    source = None
    report = swum(bare, tmp_path, ROUTE="Across", DEPART="2027-06-05T08:00")
    assert not report["feasible"] and report["total_min"] is None
    assert [leg["minutes"] for leg in report["legs"]] == [None, None]
    assert flags_of(report, "stream_unknown")
