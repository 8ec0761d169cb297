"""The table of legs, read back by the csv module."""

import csv
import io

import pytest
from plans import make_plan
from tideleg.cards.csv_legs import COLUMNS, csv_text, harmless


def rows_of(plan):
    return list(csv.DictReader(io.StringIO(csv_text(plan), newline="")))


def test_one_row_a_leg_with_units_in_the_headers():
    plan = make_plan(legs=5)
    rows = rows_of(plan)
    assert [row["number"] for row in rows] == ["1", "2", "3", "4", "5"]
    assert {"distance_m", "heading_mag_deg", "stream_kn", "ground_speed_m_s", "to_lat_deg"} <= set(rows[0])
    assert float(rows[0]["distance_m"]) == pytest.approx(plan.legs[0].distance_m, abs=0.05)
    assert float(rows[0]["to_lon_deg"]) == pytest.approx(plan.legs[0].end_lon, abs=1e-7)
    assert rows[0]["depart_iso"] == "2027-06-05T09:40:00+00:00"


def test_lines_end_as_rfc_4180_says_and_are_equally_long():
    text = csv_text(make_plan(legs=3, names=('two\r\nlines, "quoted"',)))
    rows = list(csv.reader(io.StringIO(text, newline=""), strict=True))
    assert {len(row) for row in rows} == {len(COLUMNS)} and text.endswith("\r\n")
    assert rows[1][1] == 'two\r\nlines, "quoted"'


def test_unknown_values_are_empty_and_the_reason_is_given():
    row = rows_of(make_plan(legs=3, unswimmable=(2,)))[1]
    assert row["minutes_min"] == row["arrive_iso"] == row["card_heading"] == ""
    assert row["feasible"] == "no" and row["reason"].startswith("Across-stream")


@pytest.mark.parametrize("name", ["=1+1", "+1", "-1", "@x", "\tx", "\rx"])
def test_a_name_that_a_spreadsheet_would_run_is_defused(name):
    assert rows_of(make_plan(names=(name, "Rock", name)))[0]["from"] == f"'{name}"


def test_negative_numbers_are_numbers_not_text():
    assert float(rows_of(make_plan(lon=-28.5))[0]["from_lon_deg"]) == -28.5


def test_harmless_text_is_left_alone():
    assert harmless("Rock = 1") == "Rock = 1"
