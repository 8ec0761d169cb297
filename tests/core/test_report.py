"""The JSON report against its schema, for swims of every shape, and what it refuses."""

import json
from copy import deepcopy
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from plans import make_plan, with_legs
from tideleg.core.errors import NaiveTimeError
from tideleg.core.results.flag import FLAG_KINDS, SEVERITIES, Flag
from tideleg.core.results.report import ReportError, middle_of, report_dict, report_text

jsonschema = pytest.importorskip("jsonschema")
SCHEMA_PATH = Path(__file__).resolve().parents[2] / "docs" / "report.schema.json"
SCHEMA = json.loads(SCHEMA_PATH.read_text(encoding="utf-8"))
VALIDATOR = jsonschema.Draft202012Validator(SCHEMA)

PLANS = {
    "two legs": make_plan(),
    "nothing known but the legs": make_plan(bare=True),
    "a leg that cannot be swum": make_plan(legs=5, unswimmable=(3,)),
    "first leg that cannot be swum": make_plan(legs=2, unswimmable=(1,), bare=True),
    "twenty legs, five headings each": make_plan(legs=20, headings_per_leg=5),
    "on the date line": make_plan(lon=179.999, lat=-19.0, zone="Pacific/Auckland"),
    "70 N": make_plan(lon=-9.0, lat=70.0, zone="UTC"),
    "names of every kind": make_plan(names=('<Reef & "Käse">', "=1+1", "日本\t岩")),
}


@pytest.mark.parametrize("plan", PLANS.values(), ids=PLANS.keys())
def test_report_obeys_its_schema(plan):
    report = json.loads(report_text(plan, "1.2.3"))
    assert [error.message for error in VALIDATOR.iter_errors(report)] == []
    assert len(report["legs"]) == len(plan.legs) and len(report["flags"]) == len(plan.flags)


def test_schema_is_itself_valid():
    jsonschema.Draft202012Validator.check_schema(SCHEMA)


def test_schema_knows_the_same_kinds_and_severities_as_the_code():
    flag = SCHEMA["$defs"]["flag"]["properties"]
    assert flag["kind"]["enum"] == list(FLAG_KINDS)
    assert flag["severity"]["enum"] == list(SEVERITIES)


BREAKAGES = {
    "an unknown key": lambda report: report.update(extra=1),
    "a missing key": lambda report: report.pop("zone"),
    "an unknown key in a leg": lambda report: report["legs"][0].update(extra=1),
    "a missing key in a stop": lambda report: report["stops"][0].pop("exit"),
    "a time without offset": lambda report: report.update(depart="2027-06-05T09:40:00"),
    "an unknown flag": lambda report: report["flags"][0].update(kind="whale"),
    "an unknown severity": lambda report: report["flags"][0].update(severity="fatal"),
    "a bearing of 360": lambda report: report["legs"][0].update(bearing_true_deg=360.0),
    "a crossing angle past square": lambda report: report["flags"][0].update(crossing_angle_deg=91.0),
    "a heading without M": lambda report: report["legs"][0].update(card_heading="105"),
    "unknown minutes without a reason": lambda report: report["legs"][0].update(minutes=None, reason=""),
    "an unswimmable leg without a reason": lambda report: report["legs"][0].update(feasible=False, reason=""),
    "a longitude of 181": lambda report: report["flags"][0].update(lon=181.0),
}


@pytest.mark.parametrize("breakage", BREAKAGES.values(), ids=BREAKAGES.keys())
def test_schema_refuses(breakage):
    report = json.loads(report_text(make_plan(), "1.2.3"))
    broken = deepcopy(report)
    breakage(broken)
    assert VALIDATOR.is_valid(report) and not VALIDATOR.is_valid(broken)


def test_values_stand_under_their_keys():
    plan = make_plan()
    report = report_dict(plan, version="1.2.3")
    leg, out = plan.legs[0], report["legs"][0]
    assert report["tideleg"] == "1.2.3" and report["variation_deg"] == -4.0
    assert (out["from"], out["to"]) == ("Kettle Slip", "Gannet Heads")
    assert out["minutes"] == pytest.approx(leg.minutes, abs=1e-6)
    assert out["heading_mag_deg"] == pytest.approx(leg.heading_mag_deg, abs=1e-6)
    assert report["depart"] == "2027-06-05T09:40:00+00:00"  # the Azores keep UTC in summer
    assert report["flags"][0]["from"] == "2027-06-05T09:48:00+00:00"
    assert datetime.fromisoformat(out["arrive"]) - leg.arrive < timedelta(seconds=0.5)


def test_times_keep_the_offset_of_the_plans_zone():
    report = report_dict(make_plan(zone="Pacific/Auckland"), version="1")
    assert report["depart"] == "2027-06-05T09:40:00+12:00"


def test_times_go_to_the_nearest_second_across_midnight():
    plan = replace(make_plan(), sunset=None, depart=datetime(2027, 6, 5, 23, 59, 59, 600_000, tzinfo=ZoneInfo("UTC")))
    assert report_dict(plan, version="1")["depart"] == "2027-06-06T00:00:00+00:00"


@pytest.mark.parametrize("bad", [float("nan"), float("inf"), np.float64("nan")])
@pytest.mark.parametrize("name", ["minutes", "stream_kn", "bearing_true_deg", "off_line_m"])
def test_a_number_that_is_not_finite_is_refused_by_name(name, bad):
    with pytest.raises(ReportError, match=f"leg 1 {name}"):
        report_dict(with_legs(make_plan(), **{name: bad}), version="1")


def test_a_flag_nowhere_is_refused():
    flag = Flag(kind="land", severity="stop", message="Aground.", points=((float("nan"), 1.0),))
    with pytest.raises(ReportError, match="flag land lon"):
        report_dict(make_plan(flags=(flag,)), version="1")


def test_a_naive_time_is_refused():
    with pytest.raises(NaiveTimeError, match="leg 1 depart"):
        report_dict(with_legs(make_plan(), depart=datetime(2027, 6, 5, 9, 40)), version="1")  # noqa: DTZ001


def test_numpy_values_become_plain_json():
    plan = with_legs(make_plan(), minutes=np.float32(12.5), feasible=np.bool_(True), number=np.int64(3))
    leg = json.loads(report_text(plan, "1"))["legs"][0]
    assert (leg["minutes"], leg["feasible"], leg["number"]) == (12.5, True, 3)


def test_an_angle_that_rounds_up_to_north_is_zero():
    plan = with_legs(make_plan(), bearing_true_deg=359.999_999_9)
    assert report_dict(plan, version="1")["legs"][0]["bearing_true_deg"] == 0.0


def test_middle_of_a_bent_stretch_is_half_way_along_it():
    assert middle_of([(0.0, 0.0), (0.0, 0.003), (0.0, 0.004)]) == pytest.approx((0.0, 0.002))
    assert middle_of([(0.0, 60.0), (0.002, 60.0), (0.002, 60.001)]) == pytest.approx((0.002, 60.0), abs=2e-6)


def test_middle_of_a_stretch_over_the_date_line_stays_there():
    lon, lat = middle_of([(179.999, 10.0), (-179.997, 10.0)])
    assert (lon, lat) == pytest.approx((-179.999, 10.0))


@pytest.mark.parametrize("points", [[(3.0, 4.0)], [(3.0, 4.0), (3.0, 4.0)]])
def test_middle_of_a_place_is_the_place(points):
    assert middle_of(points) == (3.0, 4.0)
