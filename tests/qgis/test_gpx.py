"""GPX read back by the standard library and by an independent library with its rule table."""

import re
import xml.etree.ElementTree as ElementTree
from dataclasses import replace
from datetime import datetime, timezone

import pytest
from plans import make_plan
from tideleg.cards.gps_options import GpsOptions, options_of
from tideleg.cards.gpx import gpx_text
from tideleg.cards.short_names import shortened
from tideleg.cards.xml_text import clean
from tideleg.core.errors import SwimPlanError
from tideleg.core.results.card import heading_changes
from tideleg.version import tideleg_version

NS = {"g": "http://www.topografix.com/GPX/1/1"}
# GPX 1.1 schema, wptType and rteType: the order in which children must stand.
POINT_ORDER = "ele time magvar geoidheight name cmt desc src link sym type fix".split()
PLANS = {
    "two legs": make_plan(),
    "nothing known": make_plan(bare=True),
    "not swimmable": make_plan(legs=4, unswimmable=(2,)),
    "twenty legs": make_plan(legs=20),
    "date line": make_plan(lon=179.99999999, lat=-19.0, zone="Pacific/Auckland"),
    "names": make_plan(legs=3, names=('<Reef & "Käse">', "a\x00b\x1b]0;c\ud800", "岩 ]]> '")),
}


def tree_of(plan):
    return ElementTree.fromstring(gpx_text(plan).encode("utf-8"))


@pytest.mark.parametrize("plan", PLANS.values(), ids=PLANS.keys())
def test_an_independent_rule_table_finds_nothing(plan, tmp_path):
    gpx = pytest.importorskip("gpx")
    path = tmp_path / "swim.gpx"
    path.write_text(gpx_text(plan), encoding="utf-8")
    result = gpx.validate(path)
    assert result.is_valid and list(result.issues) == []


def test_the_rule_table_would_find_a_wrong_order(tmp_path):
    gpx = pytest.importorskip("gpx")
    path = tmp_path / "swim.gpx"
    text = gpx_text(make_plan())
    path.write_text(re.sub(r"(<rte>)(.*)(</rte>)", r"\1<rtept/>\2\3", text, flags=re.S), encoding="utf-8")
    assert not gpx.validate(path).is_valid


@pytest.mark.parametrize("plan", PLANS.values(), ids=PLANS.keys())
def test_elements_stand_in_the_order_of_the_schema(plan):
    root = tree_of(plan)
    assert root.get("version") == "1.1" and root.get("creator") == f"Tideleg {tideleg_version()}"
    names = [child.tag.split("}")[1] for child in root]
    assert names == ["metadata", *["wpt"] * (len(names) - 3), "rte", "trk"]
    for point in root.findall("g:wpt", NS) + root.findall("g:rte/g:rtept", NS):
        order = [POINT_ORDER.index(child.tag.split("}")[1]) for child in point]
        assert order == sorted(set(order))
    route = [child.tag.split("}")[1] for child in root.find("g:rte", NS)]
    assert route[:2] == ["name", "desc"] and set(route[2:]) == {"rtept"}


def test_an_independent_library_reads_places_names_and_comments(tmp_path):
    gpx = pytest.importorskip("gpx")
    plan = make_plan()
    path = tmp_path / "swim.gpx"
    path.write_text(gpx_text(plan), encoding="utf-8")
    read = gpx.read_gpx(path)
    points = read.rte[0].rtept
    assert [point.name for point in points] == ["Kettle Slip", "Gannet Heads", "Kettle Slip"]
    assert [float(point.lat) for point in points[1:]] == [round(leg.end_lat, 7) for leg in plan.legs]
    assert [point.name for point in read.wpt] == ["Kettle Slip", "Gannet Heads"]
    # GPX 1.1: "the creation date of the file".
    assert abs((read.metadata.time - datetime.now(timezone.utc)).total_seconds()) < 600.0
    assert "Departure 2027-06-05 09:40." in read.metadata.desc
    assert "PREDICTED, not for navigation" in read.metadata.desc


def test_comment_says_heading_minutes_and_times_of_the_leg_that_leads_there():
    plan = make_plan()
    comments = [point.findtext("g:cmt", namespaces=NS) for point in tree_of(plan).findall("g:rte/g:rtept", NS)]
    first = plan.legs[0]
    assert comments[0] == "leave 09:40"
    assert re.fullmatch(rf"{first.card_heading} \d+min leave 09:40 arrive \d\d:\d\d", comments[1])
    minutes = int(re.search(r" (\d+)min", comments[1]).group(1))
    assert first.minutes <= minutes < first.minutes + 1


def test_a_leg_that_cannot_be_swum_says_so():
    comments = [p.findtext("g:cmt", namespaces=NS) for p in tree_of(PLANS["not swimmable"]).findall(".//g:rtept", NS)]
    assert comments[2].startswith("NOT SWIMMABLE Across-stream") and comments[3].startswith("NOT REACHED")


def test_awkward_names_survive():
    names = [point.findtext("g:name", namespaces=NS) for point in tree_of(PLANS["names"]).findall("g:wpt", NS)]
    assert names == ['<Reef & "Käse">', "a b ]0;c", "岩 ]]> '", "Kettle Slip"]


def test_different_places_of_one_name_are_told_apart():
    plan = make_plan(legs=4, names=("Beach", "Rock", "Rock", "Rock", "Beach"))
    names = [point.findtext("g:name", namespaces=NS) for point in tree_of(plan).findall("g:wpt", NS)]
    assert names == ["Beach", "Rock", "Rock 2", "Rock 3"]


def test_a_nameless_place_gets_a_name():
    plan = make_plan(names=("\x01", "Rock", ""))
    assert "stop" in [point.findtext("g:name", namespaces=NS) for point in tree_of(plan).findall("g:wpt", NS)]


def test_longitude_stays_within_the_schemas_half_open_turn():
    for point in tree_of(PLANS["date line"]).iter("{http://www.topografix.com/GPX/1/1}rtept"):
        assert -180.0 <= float(point.get("lon")) < 180.0
        assert re.fullmatch(r"-?\d+\.\d{7}", point.get("lon"))


@pytest.mark.parametrize(
    "text, wanted", [("a\tb", "a b"), (" x\x7f", "x"), ("\ufffe", ""), ("Käse 岩 🐙", "Käse 岩 🐙")]
)
def test_only_what_xml_cannot_carry_is_dropped(text, wanted):
    assert clean(text) == wanted


def test_a_leg_with_headings_only_later_still_has_a_comment():
    plan = make_plan()
    plan = replace(plan, legs=tuple(replace(leg, card_heading=None) for leg in plan.legs))
    comment = tree_of(plan).findall(".//g:rtept", NS)[1].findtext("g:cmt", namespaces=NS)
    assert re.match(r"\d+min leave", comment)


def test_later_headings_of_a_leg_stand_in_its_comment_with_their_times():
    plan = make_plan(legs=2, headings_per_leg=3)
    comments = [point.findtext("g:cmt", namespaces=NS) for point in tree_of(plan).findall("g:rte/g:rtept", NS)]
    for leg, comment in zip(plan.legs, comments[1:]):
        assert comment.count(" then ") == len(heading_changes(leg, plan.heading_step_deg)) > 0


SMALL = GpsOptions(name_length=6, upper_case=True)


def waypoint_names(plan, options):
    root = ElementTree.fromstring(gpx_text(plan, options).encode("utf-8"))
    return [point.findtext("g:name", namespaces=NS) for point in root.findall("g:wpt", NS)]


@pytest.mark.parametrize(
    ("name", "length", "short"),
    [
        ("Long Sill", 10, "Long Sill"),
        ("Long Sill", 8, "LongSill"),
        ("Gannet Heads", 8, "GanntHds"),
        ("Outer edge 12", 8, "OtrEdg12"),
        ("Aoife", 6, "Aoife"),
        ("aaaaaaaaaa", 6, "Aaaaaa"),
        ("1234567890123", 6, "190123"),
    ],
)
def test_a_short_name_loses_blanks_then_vowels_then_its_end_but_not_its_number(name, length, short):
    assert shortened(name, length) == short


@pytest.mark.parametrize("length", range(6, 11))
def test_short_names_are_short_plain_and_all_different_whatever_they_are_made_from(length):
    awkward = (
        "Ὕφαλος",
        "שונית",
        "🐙",
        "",
        "Reef",
        "REEF",
        "reef",
        "Réef",
        "Ångström's Bank",
        "L1P1",
        "MARK1",
        "-",
        "岩",
    )
    plan = make_plan(legs=len(awkward), names=(*awkward, awkward[0]))
    found = [gpx_text(plan, GpsOptions(name_length=length, upper_case=True, every_m=150.0)) for _ in range(2)]
    assert found[0] == found[1]
    root = ElementTree.fromstring(found[0].encode("utf-8"))
    names = [point.findtext("g:name", namespaces=NS) for point in root.findall("g:wpt", NS)]
    assert len(set(names)) == len(names)
    assert all(re.fullmatch(rf"[A-Z0-9 -]{{1,{length}}}", name) for name in names)
    route = [point.findtext("g:name", namespaces=NS) for point in root.findall("g:rte/g:rtept", NS)]
    assert route[: len(awkward)] == names[: len(awkward)] and "L1P1" in names[len(awkward) :]


def test_a_name_in_another_script_is_its_kind_with_a_number():
    plan = make_plan(legs=3, names=("שונית", "🐙", "", "שונית"))
    assert waypoint_names(plan, SMALL) == ["ENTRY1", "MARK1", "MARK2"]


def test_the_same_place_has_one_short_name():
    plan = make_plan(legs=2)
    root = ElementTree.fromstring(gpx_text(plan, SMALL).encode("utf-8"))
    names = [point.findtext("g:name", namespaces=NS) for point in root.findall("g:rte/g:rtept", NS)]
    assert names[0] == names[2] != names[1]


def test_times_of_the_track_never_go_back_and_no_segment_is_of_a_leg_that_cannot_be_swum():
    root = tree_of(PLANS["not swimmable"])
    segments = root.findall("g:trk/g:trkseg", NS)
    assert len(segments) == 1
    for tree in map(tree_of, PLANS.values()):
        times = [one.text for one in tree.findall("g:trk/g:trkseg/g:trkpt/g:time", NS)]
        assert times == sorted(times) and all(re.fullmatch(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ", one) for one in times)


def test_too_many_waypoints_and_names_too_long_for_the_receiver_are_refused():
    with pytest.raises(SwimPlanError, match="500 waypoints.*further apart"):
        gpx_text(make_plan(legs=20), GpsOptions(every_m=25.0))
    plan = make_plan(legs=10, leg_m=2600.0)
    long_last_leg = replace(plan, legs=(*(replace(leg, track=()) for leg in plan.legs[:-1]), plan.legs[-1]))
    with pytest.raises(SwimPlanError, match="up to 7 letters.*further apart"):
        gpx_text(long_last_leg, GpsOptions(every_m=25.0, name_length=6))
    assert "<name>L10P100</name>" in gpx_text(long_last_leg, GpsOptions(every_m=25.0, name_length=7))


@pytest.mark.parametrize(
    "wrong", [{"name_length": 5}, {"name_length": 11}, {"every_m": 24.9}, {"every_m": float("nan")}]
)
def test_what_no_receiver_needs_is_refused(wrong):
    with pytest.raises(SwimPlanError, match="Asked for"):
        GpsOptions(**wrong)


def test_the_plans_settings_say_how_and_nought_is_no_limit():
    assert options_of({"gps_name_length": "0", "gps_upper_case": "0", "gps_every_m": "0"}) == GpsOptions()
    asked = {"gps_name_length": "8", "gps_upper_case": "1", "gps_every_m": "200"}
    assert options_of(asked, private=True) == GpsOptions(name_length=8, upper_case=True, every_m=200.0, private=True)
