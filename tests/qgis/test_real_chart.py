"""`tideleg:readchart` on a published chart cell, counted again by other means: GDAL and shapely on the cell itself.

The cell is NOAA's US4MD81M (Chesapeake Bay), public domain, not for navigation; where it is absent, all is skipped.
"""

import json
from collections import Counter

import pytest
import shapely
import shapely.wkb
from osgeo import gdal
from qgis.core import QgsProcessingContext, QgsProcessingFeedback, QgsVectorLayer
from shapely.geometry import box
from tideleg.plan_package.store import create_plan
from tideleg.processing.readchart import ReadChart

# Chesapeake Beach: a beach, a dredged channel out of a creek, a restricted area on its south side.
WEST, SOUTH, EAST, NORTH = -76.545, 38.675, -76.495, 38.715
STANDING = ("LNDMRK", "BCNCAR", "BCNISD", "BCNLAT", "BCNSAW", "BCNSPP", "BUISGL", "SILTNK", "LIGHTS")
FLOATING = ("BOYCAR", "BOYINB", "BOYISD", "BOYLAT", "BOYSAW", "BOYSPP", "LITFLT", "LITVES")
EXTENT = box(WEST, SOUTH, EAST, NORTH)
DRIES_OR_AWASH = (1, 2, 4, 5)  # WATLEV, IHO S-57 Edition 3.1, Appendix A, Chapter 2


@pytest.fixture(scope="module")
def cell(real_data):
    path = real_data / "chart-us4md81m" / "US4MD81M.000"
    if not path.exists():
        pytest.skip(f"no chart cell {path}")
    return path


@pytest.fixture(scope="module")
def charted(cell):
    """Objects of the cell by class, as (attributes, shapely geometry), read here without the plugin."""
    options = ["SPLIT_MULTIPOINT=ON", "ADD_SOUNDG_DEPTH=ON"]
    dataset = gdal.OpenEx(str(cell), gdal.OF_VECTOR, allowed_drivers=["S57"], open_options=options)

    def objects(name):
        layer = dataset.GetLayerByName(name)
        found = [] if layer is None else list(layer)
        return [
            (feature.items(), shapely.wkb.loads(bytes(feature.GetGeometryRef().ExportToWkb()))) for feature in found
        ]

    return objects


@pytest.fixture(scope="module")
def whole(cell, tmp_path_factory):
    return read(cell, tmp_path_factory.mktemp("whole"))


@pytest.fixture(scope="module")
def beach(cell, tmp_path_factory):
    return read(cell, tmp_path_factory.mktemp("beach"), EXTENT=f"{WEST},{EAST},{SOUTH},{NORTH} [EPSG:4326]")


def read(cell, folder, **parameters):
    """The plan that the cell was read into, and the report."""
    plan, report = create_plan(folder / "plan.gpkg", datum="MLLW"), folder / "report.json"
    algorithm, context = ReadChart().create(), QgsProcessingContext()
    parameters = {"PLAN": str(plan), "CHART": str(cell), "REPORT": str(report), **parameters}
    assert algorithm.checkParameterValues(parameters, context) == (True, "")
    _, done = algorithm.run(parameters, context, QgsProcessingFeedback(), {}, False)
    assert done
    return plan, json.loads(report.read_text(encoding="utf-8"))


def features(plan, name):
    layer = QgsVectorLayer(f"{plan}|layername={name}", name, "ogr")
    assert layer.isValid()
    return list(layer.getFeatures())


def shapes(plan, name):
    """The geometries of a plan's layer; `channels` holds two kinds, so GDAL reads it."""
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR)
    return [shapely.wkb.loads(bytes(row.GetGeometryRef().ExportToWkb())) for row in dataset.GetLayerByName(name)]


def parts(geometry, area, kind):
    """The single parts of one kind of what lies inside an area; a touch at the edge is no part."""
    kept = geometry if area is None else geometry.intersection(area)
    singles = [part for part in getattr(kept, "geoms", [kept]) if part.geom_type == kind and not part.is_empty]
    return singles if kind == "Point" else [part for part in singles if part.length > 0.0]


def expected_counts(charted, area):
    """Rows by plan layer, counted from the cell's own objects."""
    counts = Counter()
    for _, geometry in charted("FAIRWY"):
        counts["channels"] += len(parts(geometry, area, "Polygon"))
    lines = charted("RECTRC") + [thing for thing in charted("NAVLNE") if thing[0]["CATNAV"] == 3]
    for _, geometry in lines:
        counts["channels"] += len(parts(geometry, area, "LineString"))
    for name in ("RESARE", "MIPARE", "CTNARE", "MARCUL", "CBLARE", "PIPARE", "DMPGRD", "UNSARE"):
        for _, geometry in charted(name):
            counts["closed_areas"] += len(parts(geometry, area, "Polygon")) + len(parts(geometry, area, "Point"))
    for _, geometry in charted("LNDARE"):
        counts["land"] += len(parts(geometry, area, "Polygon"))
    for _, geometry in charted("DEPCNT"):
        counts["depth_contours"] += len(parts(geometry, area, "LineString"))
    for _, geometry in charted("SOUNDG"):
        counts["soundings"] += len(parts(geometry, area, "Point"))
    for name in ("UWTROC", "OBSTRN", "WRECKS"):
        for said, geometry in charted(name):
            areas, points = len(parts(geometry, area, "Polygon")), len(parts(geometry, area, "Point"))
            known = said["VALSOU"] is not None or said["WATLEV"] in DRIES_OR_AWASH
            counts["soundings"] += (areas + points) if known else 0
            counts["closed_areas"] += areas + (0 if known else points)
    counts["landmarks"] = sum(bool(parts(place, area, "Point")) for place in expected_landmarks(charted))
    return {name: number for name, number in counts.items() if number}


def expected_landmarks(charted):
    """The points of the cell's landmarks, each once: its areas are not conspicuous."""
    floats = [place for name in FLOATING for _, place in charted(name)]
    found = []
    for name in STANDING:
        for said, place in charted(name):
            seen = said["CONVIS"] == 1 if name == "BUISGL" else True
            afloat = name == "LIGHTS" and any(place.distance(other) < 1e-7 for other in floats)
            if seen and not afloat and not any(place.distance(other) < 1e-7 for other in found):
                assert place.geom_type == "Point", name
                found.append(place)
    return found


def written(report):
    return {name: counts["written"] + counts["already_there"] for name, counts in report["layers"].items()}


def test_whole_cell_row_by_row(whole, charted):
    plan, report = whole
    assert written(report) == expected_counts(charted, None)
    assert all(counts["already_there"] == 0 for counts in report["layers"].values())
    assert {name: len(shapes(plan, name)) for name in report["layers"]} == written(report)


def test_beach_row_by_row(beach, charted):
    plan, report = beach
    assert written(report) == expected_counts(charted, EXTENT)
    assert {name: len(shapes(plan, name)) for name in report["layers"]} == written(report)
    assert set(report["layers"]) == {"channels", "closed_areas", "land", "depth_contours", "soundings", "landmarks"}


def test_every_object_is_accounted_for(whole, beach, charted):
    for _, report in (whole, beach):
        for name, counted in report["classes"].items():
            assert counted["read"] == len(charted(name))
            assert counted["read"] == counted["used"] + counted["clipped_away"] + sum(counted["skipped"].values()), name


def test_nothing_invalid_and_nothing_outside(whole, beach):
    edge = EXTENT.buffer(1e-9)
    for name in beach[1]["layers"]:
        assert all(shape.is_valid and edge.contains(shape) for shape in shapes(beach[0], name)), name
    for name in whole[1]["layers"]:
        assert all(shape.is_valid and not shape.is_empty for shape in shapes(whole[0], name)), name


def test_areas_and_lengths_inside_are_the_cell_s_own(beach, charted):
    plan, _ = beach
    land = sum(geometry.intersection(EXTENT).area for _, geometry in charted("LNDARE"))
    assert sum(shape.area for shape in shapes(plan, "land")) == pytest.approx(land, rel=1e-9)
    contours = sum(geometry.intersection(EXTENT).length for _, geometry in charted("DEPCNT"))
    assert sum(shape.length for shape in shapes(plan, "depth_contours")) == pytest.approx(contours, rel=1e-9)


def test_depths_are_the_cell_s_own(beach, charted):
    inside = [said["DEPTH"] for said, place in charted("SOUNDG") if EXTENT.contains(place)]
    for name in ("UWTROC", "OBSTRN", "WRECKS"):
        inside += [s["VALSOU"] for s, place in charted(name) if place.intersects(EXTENT) and s["VALSOU"] is not None]
    assert sorted(row["depth_m"] for row in features(beach[0], "soundings")) == sorted(inside)


def test_fairway_and_restricted_area_of_the_beach(beach):
    plan, report = beach
    (channel,) = features(plan, "channels")
    assert (channel["name"], channel["kind"]) == ("Fishing Creek Channel", "fairway")
    (area,) = [row for row in features(plan, "closed_areas") if row["name"] == "Naval Research Laboratory"]
    assert (area["rule"], area["checked_on"]) == ("no_entry", report["cell"]["dated"])
    assert area["citation"].startswith(
        "fishing restricted, entry restricted; Restricted Fish Trap Area D, 33 CFR 334.170"
    )
    assert area["citation"].endswith("RESARE on chart US4MD81M, edition 31, update 3, dated 2025-09-23")
    assert report["warnings"] == [report["warnings"][0]], "the plan's datum is the chart's, and the chart covers it all"


def test_updates_are_applied_whatever_the_user_has_set(cell, tmp_path):
    gdal.SetConfigOption("OGR_S57_OPTIONS", "UPDATES=IGNORE")
    try:
        _, report = read(cell, tmp_path)
    finally:
        gdal.SetConfigOption("OGR_S57_OPTIONS", None)
    assert (report["cell"]["update"], report["cell"]["dated"]) == ("3", "2025-09-23")
