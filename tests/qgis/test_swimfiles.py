"""tideleg:swimfiles: GPX, KML, GeoJSON and CSV of real plans, read by other readers than those that check them."""

from __future__ import annotations

import csv
import json
import math
import shutil
from datetime import datetime, timezone
from pathlib import Path
from xml.etree import ElementTree

import pytest
from plans import make_plan
from swims import DAY, LAT, LON, add_constant_stream, add_route, add_swimmer, moved, new_plan, point, run
from tideleg.cards import read_back, swim_files
from tideleg.cards.gps_options import GpsOptions
from tideleg.cards.gpx import gpx_text
from tideleg.cards.whole_files import write_whole
from tideleg.core.errors import SwimPlanError
from tideleg.plan_package.store import append_rows, write_settings
from tideleg.processing.planswim import PlanSwim
from tideleg.processing.swimfiles import SwimFiles

GPX, KML = "{http://www.topografix.com/GPX/1/1}", "{http://www.opengis.net/kml/2.2}"
SLIP, REEF = (LON, LAT), moved(300.0, 900.0)
HOSTILE = (
    "<script>alert('x')</script>",
    '=HYPERLINK("http://x")',
    "＝1+1",
    "🏊 Ὕφαλος",
    "שונית",
    "A" * 500,
    "two\nlines",
)
NAMES = {"GPX": "s.gpx", "KML": "s.kml", "GEOJSON": "s.geojson", "CSV": "s.csv", "TEXT": "s.txt"}


@pytest.fixture(scope="module")
def made(qgis_app, tmp_path_factory) -> Path:
    plan = new_plan(tmp_path_factory.mktemp("files") / "plan.gpkg", ZONE="Atlantic/Azores")
    add_route(plan, "Out and home", SLIP, REEF, SLIP)
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.3, 90.0)
    rows = [(SLIP, "Slip", "entry", 0.0), (REEF, "Outer reef edge", "mark", 20.0)]
    append_rows(plan, "marks", [(point(at), {"name": n, "kind": k, "stay_min": stay}) for at, n, k, stay in rows])
    return plan


@pytest.fixture
def plan(made: Path, tmp_path: Path) -> Path:
    return Path(shutil.copy(made, tmp_path / "plan.gpkg"))


def files(plan: Path, **asked: object) -> dict[str, str]:
    """The texts of all files of the swim."""
    paths = {key: str(plan.with_name(name)) for key, name in NAMES.items()}
    ran = run(SwimFiles().create(), {"PLAN": str(plan), "DEPART": f"{DAY}T10:00", **paths, **asked})
    assert ran.ok, ran.said
    return {key: Path(path).read_text(encoding="utf-8") for key, path in paths.items()}


def report(plan: Path) -> dict:
    asked = {"PLAN": str(plan), "DEPART": f"{DAY}T10:00", "REPORT": str(plan.with_name("r.json"))}
    return run(PlanSwim().create(), asked).report


def distance_m(here: tuple[float, float], there: tuple[float, float]) -> float:
    """Flat, good to a millimetre in a hundred metres."""
    north, east = (there[1] - here[1]) * 111_100.0, (there[0] - here[0]) * 111_100.0 * math.cos(math.radians(LAT))
    return math.hypot(north, east)


def test_the_track_has_the_times_and_ends_of_the_legs(plan: Path) -> None:
    root, told = ElementTree.fromstring(files(plan)["GPX"]), report(plan)
    assert [child.tag.removeprefix(GPX) for child in root] == ["metadata", "wpt", "wpt", "rte", "trk"]
    segments = root.findall(f"{GPX}trk/{GPX}trkseg")
    assert len(segments) == len(told["legs"]) == 2
    for leg, segment in zip(told["legs"], segments):
        times = [datetime.fromisoformat(one.text.replace("Z", "+00:00")) for one in segment.iter(f"{GPX}time")]
        assert times == sorted(times) and len(times) == len(segment)
        ends = [datetime.fromisoformat(leg[name]).astimezone(timezone.utc) for name in ("depart", "arrive")]
        assert abs((times[0] - ends[0]).total_seconds()) <= 1 and abs((times[-1] - ends[1]).total_seconds()) <= 1


def test_points_on_the_way_lie_on_the_bowed_track_so_far_apart(plan: Path) -> None:
    root = ElementTree.fromstring(files(plan, EVERY_M=100.0, NAME_LENGTH=6, UPPER_CASE=True)["GPX"])
    points = {
        one.findtext(f"{GPX}name"): (float(one.get("lon")), float(one.get("lat"))) for one in root.iter(f"{GPX}wpt")
    }
    assert all(1 <= len(name) <= 6 and name == name.upper() and name.isascii() for name in points)
    way = [place for name, place in points.items() if name.startswith("L1")]
    track = [(float(one.get("lon")), float(one.get("lat"))) for one in root.find(f"{GPX}trk/{GPX}trkseg")]
    assert len(way) >= 8
    for here, there in zip([track[0], *way], way):
        assert 90.0 < distance_m(here, there) <= 100.5  # along the track, straight across a little less
    assert all(min(distance_m(one, other) for other in track) < 12.0 for one in way)


def names_in(gpx: str) -> set[str]:
    return {one.findtext(f"{GPX}name") for one in ElementTree.fromstring(gpx).iter(f"{GPX}wpt")}


def test_what_the_plans_settings_say_of_the_gps_holds_where_nothing_is_asked(plan: Path) -> None:
    write_settings(plan, {"gps_name_length": "7", "gps_upper_case": "1", "gps_every_m": "200"})
    gpx = plan.with_name("by planswim.gpx")
    ran = run(PlanSwim().create(), {"PLAN": str(plan), "DEPART": f"{DAY}T10:00", "GPX": str(gpx)})
    assert ran.ok, ran.said
    for text in (files(plan)["GPX"], gpx.read_text(encoding="utf-8")):
        names = names_in(text)
        assert {"L1P1", "L2P1"} <= names and all(len(name) <= 7 and name == name.upper() for name in names)
        assert "L1P8" not in names
    assert "L1P8" in names_in(files(plan, EVERY_M=100.0)["GPX"])


def test_planswims_files_to_share_hold_no_way_to_the_mark_and_its_report_is_whole(plan: Path) -> None:
    paths = {key: str(plan.with_name(f"p{key}")) for key in ("GPX", "CSV", "REPORT")}
    ran = run(PlanSwim().create(), {"PLAN": str(plan), "DEPART": f"{DAY}T10:00", "PRIVATE": True, **paths})
    assert ran.ok, ran.said
    for key in ("GPX", "CSV"):
        text = Path(paths[key]).read_text(encoding="utf-8")
        assert f"{REEF[1]:.4f}" not in text and ran.report["legs"][0]["card_heading"] not in text
        assert "Marks are left out for sharing" in text
    assert ran.report["legs"][0]["distance_m"] > 0.0


def test_a_file_that_this_gdal_cannot_read_again_is_told_of(plan: Path, monkeypatch) -> None:
    monkeypatch.setitem(read_back.DRIVERS, "GPX", ("none such",))
    for algorithm in (PlanSwim(), SwimFiles()):
        asked = {"PLAN": str(plan), "DEPART": f"{DAY}T10:00", "GPX": str(plan.with_name("s.gpx"))}
        ran = run(algorithm.create(), asked)
        assert ran.ok and any("GPX file is not read again" in words for words in ran.warnings), ran.warnings


def test_kml_and_geojson_hold_places_legs_and_track_and_nothing_from_elsewhere(plan: Path) -> None:
    texts = files(plan)
    kml = ElementTree.fromstring(texts["KML"])
    assert not list(kml.iter(f"{KML}href")) and "PREDICTED" in texts["KML"]
    assert {"Slip", "Outer reef edge"} <= {one.text for one in kml.iter(f"{KML}name")}
    found = json.loads(texts["GEOJSON"])
    kinds = [feature["geometry"]["type"] for feature in found["features"]]
    assert kinds.count("Point") >= 2 and kinds.count("LineString") >= 3
    near = [
        feature["geometry"]["coordinates"] for feature in found["features"] if feature["geometry"]["type"] == "Point"
    ]
    assert all(abs(lon - LON) < 0.1 and abs(lat - LAT) < 0.1 for lon, lat in near)  # longitude first


def test_files_to_share_hold_no_way_to_the_mark(plan: Path) -> None:
    texts, told = files(plan, PRIVATE=True), report(plan)
    root = ElementTree.fromstring(texts["GPX"])
    assert [one.findtext(f"{GPX}name") for one in root.findall(f"{GPX}wpt")] == ["Slip"]
    assert not root.findall(f"{GPX}rte") and not root.findall(f"{GPX}trk")
    for key, text in texts.items():
        assert f"{REEF[1]:.4f}" not in text and told["legs"][0]["card_heading"] not in text, key
        assert "Marks are left out for sharing" in " ".join(text.split()), key


@pytest.mark.parametrize("name", HOSTILE)
def test_any_name_comes_back_as_text_and_never_as_a_formula(qgis_app, tmp_path: Path, name: str) -> None:
    plan = make_plan(legs=3, names=(name, "Mark", name))
    for options in (GpsOptions(), GpsOptions(name_length=6, upper_case=True, every_m=200.0)):
        write_whole({tmp_path / NAMES[key]: make(plan, options) for key, make in swim_files.WRITERS.items()})
        root = ElementTree.parse(tmp_path / "s.gpx").getroot()
        names = [one.findtext(f"{GPX}name") for one in root.findall(f"{GPX}wpt")]
        assert len(names) == len(set(names)) and all(names)
    with (tmp_path / "s.csv").open(encoding="utf-8", newline="") as file:
        cells = [cell for row in csv.reader(file) for cell in row]
    assert not any(cell.lstrip()[:1] in ("=", "@", "＝", "＠") for cell in cells)


def test_lines_over_the_date_line_are_cut_there(qgis_app, tmp_path: Path) -> None:
    plan = make_plan(legs=4, lon=179.998, lat=-47.98, zone="Pacific/Auckland")
    write_whole({tmp_path / NAMES[key]: make(plan, GpsOptions()) for key, make in swim_files.WRITERS.items()})
    found = json.loads((tmp_path / "s.geojson").read_text(encoding="utf-8"))
    found["features"] = [one for one in found["features"] if one["properties"]["what"] != "flag"]

    def lines(geometry: dict) -> list:
        many = geometry["type"] == "MultiLineString"
        return geometry["coordinates"] if many else [geometry["coordinates"]]

    drawn = [line for one in found["features"] if "Line" in one["geometry"]["type"] for line in lines(one["geometry"])]
    assert any(abs(end[0]) == 180.0 for line in drawn for end in (line[0], line[-1]))
    assert all(abs(a[0] - b[0]) < 1.0 and abs(a[0]) <= 180.0 for line in drawn for a, b in zip(line, line[1:]))


def test_a_file_that_reads_back_otherwise_is_not_kept(qgis_app, tmp_path: Path) -> None:
    plan, other = make_plan(legs=3), make_plan(legs=3, lat=42.41)
    wrong = swim_files._checked(gpx_text(other), lambda path: swim_files.check_gpx(path, plan, GpsOptions()))
    with pytest.raises(SwimPlanError, match="read again"):
        write_whole({tmp_path / "s.gpx": wrong})
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize(("asked", "words"), [({"EVERY_M": 25.0}, "waypoints"), ({}, "name at least one")])
def test_what_cannot_be_written_is_refused_and_nothing_is(plan: Path, asked: dict, words: str) -> None:
    long = plan.with_name("long.gpkg")
    shutil.copy(plan, long)
    add_route(long, "Long", SLIP, moved(0.0, 9_000.0), SLIP, moved(0.0, 9_000.0))
    paths = {"GPX": str(plan.with_name("s.gpx"))} if asked else {}
    ran = run(SwimFiles().create(), {"PLAN": str(long), "ROUTE": "Long", "DEPART": f"{DAY}T10:00", **paths, **asked})
    assert not ran.ok and words in ran.said and not plan.with_name("s.gpx").exists()
