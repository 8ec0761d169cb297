"""The table of legs, read back by the csv module."""

import csv
import io
from dataclasses import replace

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
    assert {len(row) for row in rows} == {len(COLUMNS) + 1} and text.endswith("\r\n")
    assert rows[1][1] == 'two\r\nlines, "quoted"'


def test_unknown_values_are_empty_and_the_reason_is_given():
    row = rows_of(make_plan(legs=3, unswimmable=(2,)))[1]
    assert row["minutes_min"] == row["arrive_iso"] == row["card_heading"] == ""
    assert row["feasible"] == "no" and row["reason"].startswith("Across-stream")


@pytest.mark.parametrize("name", ["=1+1", "+1", "-1", "@x", "\tx", "\rx"])
def test_a_name_that_a_spreadsheet_would_run_is_defused(name):
    assert rows_of(make_plan(names=(name, "Rock", name)))[0]["from"] == f"'{name}"


@pytest.mark.parametrize(
    "name",
    [
        "  =1+1",
        "\u00a0=1",
        "\ufeff=1",
        "\u200b@x",
        '"=1',
        "'=1",
        "＝1",
        "＋1",
        "－1",
        "＠x",
        "\x00=1",
        "\x1b=1",
        "\n=1",
    ],
)
def test_a_formula_is_defused_behind_what_a_spreadsheet_may_drop(name):
    cell = rows_of(make_plan(names=(name, "Rock", name)))[0]["from"]
    seen = cell.replace("\n", "")  # read line by line, each line is a cell
    assert seen.startswith("'") and cell.replace("'", "") == name.replace("\x00", "").replace("\x1b", "").replace(
        "'", ""
    )


def cells_with(separator, text):
    """Cells as a spreadsheet finds them that takes another separator and no quotes."""
    return [cell for line in text.splitlines() for cell in line.split(separator)]


@pytest.mark.parametrize("separator", [";", "\t"])
def test_no_cell_begins_with_a_formula_where_the_separator_is_another(separator):
    name = f'a{separator}=1+1{separator} "@x\r\n-1\n{separator}＝2'
    cells = cells_with(separator, csv_text(make_plan(names=(name, "Rock", name))))
    bare = [cell.lstrip(' "') for cell in cells]
    assert not [cell for cell in bare if cell[:1] in ("=", "@", "＝") or cell.startswith("-1")]


def test_what_no_file_can_hold_is_left_out():
    text = csv_text(make_plan(names=("a\ud800b\x00c", "Rock", "x")))
    assert "abc" in text and text.encode("utf-8")


def test_a_shared_table_has_times_and_names_but_no_place_of_a_mark():
    plan = make_plan(legs=3)
    rows = list(csv.DictReader(io.StringIO(csv_text(plan, private=True), newline="")))
    for row in rows:
        hidden = "distance_m bearing_true_deg bearing_mag_deg heading_true_deg heading_mag_deg card_heading off_line_m"
        assert not any(row[name] for name in [*hidden.split(), "ground_speed_m_s", "stream_set_deg", "stream_kn"])
        assert row["minutes_min"] and row["depart_iso"] and "Marks are left out for sharing" in row["note"]
    assert [row["to"] for row in rows] == [leg.end_name for leg in plan.legs]
    assert [bool(row["to_lon_deg"]) for row in rows] == [False, False, True]  # only the exit


def test_every_row_says_that_it_is_predicted_and_of_what():
    for row in rows_of(make_plan(legs=2)):
        assert row["note"] == "PREDICTED, not for navigation. Leg of Round of the sills; times in Atlantic/Azores."


def test_a_leg_that_cannot_be_swum_has_no_heading_and_no_minutes_even_where_they_were_reckoned():
    plan = make_plan(legs=3)
    legs = (plan.legs[0], replace(plan.legs[1], feasible=False, reason="x"), plan.legs[2])
    first, second, third = rows_of(replace(plan, legs=legs))
    for name in ("heading_true_deg", "heading_mag_deg", "card_heading", "minutes_min", "arrive_iso"):
        assert second[name] == "" and first[name] and third[name]
    assert "Only if leg 2 could be swum" in third["note"] and "Only if" not in first["note"] + second["note"]


def test_times_and_minutes_of_a_shared_table_are_whole_minutes():
    plan = make_plan(legs=3)
    assert any(not float(row["minutes_min"]).is_integer() for row in rows_of(plan))
    for row in csv.DictReader(io.StringIO(csv_text(plan, private=True), newline="")):
        assert float(row["minutes_min"]).is_integer()
        assert row["depart_iso"][16:19] == row["arrive_iso"][16:19] == ":00"


def test_negative_numbers_are_numbers_not_text():
    assert float(rows_of(make_plan(lon=-28.5))[0]["from_lon_deg"]) == -28.5


def test_harmless_text_is_left_alone():
    assert harmless("Rock = 1") == "Rock = 1"
