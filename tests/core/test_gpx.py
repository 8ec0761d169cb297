"""GPX read back by the standard library and by an independent library with its rule table."""

import re
import xml.etree.ElementTree as ElementTree
from dataclasses import replace
from datetime import datetime, timezone

import pytest
from plans import make_plan
from tideleg.cards.gpx import gpx_text
from tideleg.cards.xml_text import clean
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
    assert read.metadata.time == datetime(2027, 6, 5, 9, 40, tzinfo=timezone.utc)
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
