"""What a pasted table is taken for, before anything of it is written."""

from __future__ import annotations

from datetime import datetime, timezone

import pytest
from tideleg.core.errors import SwimPlanError
from tideleg.dock.tables.cell_text import columns_of
from tideleg.dock.tables.clipboard_table import MOST_ROWS, table_in, table_text
from tideleg.dock.tables.paste_plan import PastePlan, PasteTarget, plan_paste
from tideleg.plan_package.schema import LAYER_BY_NAME

UTC = timezone.utc
TIDES = "Port\tTime\tHeight\tKind\nPort Tern\t2027-06-05 09:40\t3.5\tHW\nPort Tern\t2027-06-05 15:52\t0.5\tLW\n"


def planned(text: str, table: str = "tides", *, over: bool | None = None, **target: object) -> PastePlan:
    columns = columns_of(LAYER_BY_NAME[table], "Europe/Lisbon")
    return plan_paste(table_in(text), PasteTarget(columns=columns, **{"fids": (), "values": {}, **target}), over=over)


def values(plan: PastePlan, field: str) -> list[object]:
    return [row.values.get(field) for row in plan.rows]


def test_tabs_semicolons_and_commas_give_the_same_rows() -> None:
    plans = [planned(TIDES), planned(TIDES.replace("\t", ";").replace(".", ",")), planned(TIDES.replace("\t", ","))]
    assert plans[0].rows == plans[1].rows == plans[2].rows
    assert values(plans[0], "height_m") == [3.5, 0.5] and not plans[0].bad and plans[0].has_headings
    assert values(plans[0], "time")[0] == datetime(2027, 6, 5, 8, 40, tzinfo=UTC)


@pytest.mark.parametrize("headings", ["port\ttime\theight_m\tkind", "PORT\tDate and time\tHeight (m)\tType"])
def test_headings_are_known_by_name_by_title_and_by_what_people_call_them(headings: str) -> None:
    plan = planned(TIDES.replace("Port\tTime\tHeight\tKind", headings))
    assert plan.has_headings and not plan.bad and values(plan, "kind") == ["HW", "LW"]


def test_headings_say_where_columns_go_whatever_their_order_and_a_stranger_is_left_out_and_named() -> None:
    plan = planned("Height;Moon;Kind;Time;Port\n3,5;full;HW;2027-06-05 09:40;Port Tern\n")
    assert plan.rows[0].values["height_m"] == 3.5 and plan.rows[0].values["port"] == "Port Tern"
    assert any("'Moon' is not used" in note for note in plan.notes)


def test_without_headings_columns_go_from_the_current_cell_on() -> None:
    plan = planned("3.5\tHW\n0.5\tLW\n", column=2)
    assert not plan.has_headings and values(plan, "height_m") == [3.5, 0.5] and values(plan, "kind") == ["HW", "LW"]


def test_cells_go_over_the_rows_from_the_current_one_on_and_grow_new_ones_below() -> None:
    there = {7: {"port": "A"}, 9: {"port": "A"}}
    plan = planned("1.5\n1.6\n1.7\n", fids=(7, 9), values=there, row=1, column=2)
    assert [row.fid for row in plan.rows] == [9, None, None]
    assert plan.rows[1].values == {"port": "A", "height_m": 1.6}


def test_a_table_with_headings_is_added_unless_it_is_to_go_over_what_is_there() -> None:
    there = {7: {"port": "A"}, 9: {"port": "A"}}
    assert [row.fid for row in planned(TIDES, fids=(7, 9), values=there, row=0).rows] == [None, None]
    assert [row.fid for row in planned(TIDES, over=True, fids=(7, 9), values=there, row=0).rows] == [7, 9]


def test_a_row_with_one_wrong_cell_is_refused_by_its_line_and_the_others_are_good() -> None:
    plan = planned(TIDES + "Port Tern\t2027-06-05 22:00\tabc\tHW\nPort Tern\t2027-03-28 01:30\t1\tLW\n")
    assert [row.line for row in plan.bad] == [4, 5] and len(plan.good) == 2
    assert "Height (m): Got 'abc'" in plan.bad[0].refusals[0] and "does not exist" in plan.bad[1].refusals[0]


def test_an_empty_cell_stays_empty_and_is_refused_where_it_must_be_filled() -> None:
    plan = planned("Station\tHour\tSet\tSprings\tNeaps\nSill\t0\t\t1.2\t-\n", "stream_rates")
    assert plan.good[0].values == {"station": "Sill", "hour": 0, "set_deg": None, "spring_kn": 1.2, "neap_kn": None}
    assert "must be filled" in planned("Station\tHour\nSill\t\n", "stream_rates").bad[0].refusals[0]


def test_numbers_of_another_unit_are_refused_as_a_whole() -> None:
    plan = planned("Time\tHeight (ft)\tKind\n2027-06-05 09:40\t11.5\tHW\n")
    assert plan.good == [] and "says ft, and the column here is in m" in plan.refused[0]


def test_a_clock_that_the_heading_names_is_read_and_letters_that_name_none_are_refused() -> None:
    utc = planned(TIDES.replace("Time", "Time (UTC)"))
    assert values(utc, "time")[0] == datetime(2027, 6, 5, 9, 40, tzinfo=UTC)
    assert any("read as UTC" in note for note in utc.notes)
    own = planned(TIDES.replace("Time", "Time (Europe/Lisbon)"))
    assert values(own, "time")[0] == datetime(2027, 6, 5, 8, 40, tzinfo=UTC)
    letters = planned(TIDES.replace("Time", "Time (EST)"))
    assert letters.good == [] and "names no one clock" in letters.refused[0]


def test_a_date_and_a_time_of_day_in_two_columns_are_one_moment() -> None:
    headed = planned("Date\tTime\tHeight\tKind\n2027-06-05\t09:40\t3.5\tHW\n")
    bare = planned("2027-06-05\t09:40\t3.5\tHW\n", column=1)
    for plan in (headed, bare):
        assert plan.good[0].values["time"] == datetime(2027, 6, 5, 8, 40, tzinfo=UTC)
        assert plan.good[0].values["height_m"] == 3.5


def test_a_date_in_figures_is_read_where_another_row_shows_the_order_and_else_refused() -> None:
    shows = planned("Time\tHeight\tKind\n05/06/2027 09:40\t3.5\tHW\n25/06/2027 09:40\t3.5\tHW\n")
    assert values(shows, "time")[0] == datetime(2027, 6, 5, 8, 40, tzinfo=UTC)
    leaves_open = planned("Time\tHeight\tKind\n05/06/2027 09:40\t3.5\tHW\n07/06/2027 09:40\t3.5\tHW\n")
    assert len(leaves_open.bad) == 2


def test_lines_of_one_decimal_with_a_comma_are_one_column() -> None:
    plan = planned("1,2\n1,3\n", column=2)
    assert values(plan, "height_m") == [1.2, 1.3] and any("decimal comma" in note for note in plan.notes)


def test_rows_that_are_drawn_on_the_map_cannot_be_added_by_pasting() -> None:
    plan = planned(
        "Sill\nLedge\n", "stream_stations", fids=(1,), values={1: {"station": "A", "port": None}}, can_grow=False, row=0
    )
    assert plan.rows[0].values == {"station": "Sill"} and "drawn on the map" in plan.bad[0].refusals[0]


@pytest.mark.parametrize(
    "text",
    [
        "x" * 10_000_001,
        "\t".join("1" for _ in range(1_000_000)),
        "1\n" * (MOST_ROWS + 2),
        "\t" * 15_000 + "1\n" + "1\n" * 15_000,
        "",
        " \n\t\n",
        "\n" * 1000,
    ],
    ids=[
        "too long",
        "one endless line",
        "too many rows",
        "one wide row and many short ones",
        "nothing",
        "blanks",
        "empty lines",
    ],
)
def test_a_text_that_is_too_much_or_nothing_is_refused_in_one_sentence(text: str) -> None:
    with pytest.raises(SwimPlanError) as refused:
        table_in(text)
    assert len(str(refused.value)) < 300


@pytest.mark.parametrize(
    "text",
    [
        "\x00\x01\x02\t\x1b[31m",
        '"unclosed\tquote\nnext',
        '"' * 9,
        "=1+1\t=cmd|' /C calc'!A0",
        "\ufeff\u202e1\t2",
        "\r\r\rx\r",
    ],
)
def test_hostile_text_gives_refusals_and_never_an_error(text: str) -> None:
    plan = planned(text, column=2)
    assert plan.rows and plan.good == []


def test_what_is_copied_is_pasted_back_as_itself_line_ends_quotes_and_tabs_included() -> None:
    cells = [["Name", "Note"], ["Sill", 'two\nlines, "quoted"'], ["Ledge", "a\ttab"]]
    assert [list(row) for row in table_in(table_text(cells)).rows] == cells
