"""What a cell's text means, and what it never means."""

from __future__ import annotations

from datetime import datetime, timezone

import pytest
from tideleg.core.errors import SwimPlanError
from tideleg.dock.tables.cell_text import Column, problem_of, shown, value_of
from tideleg.dock.tables.problems import problems_between
from tideleg.plan_package.schema import LAYER_BY_NAME, LAYERS

UTC = timezone.utc


def column(table: str, field: str, zone: str = "Europe/Lisbon") -> Column:
    layer = LAYER_BY_NAME[table]
    return Column(layer=layer, field=layer.field(field), zone_name=zone)


@pytest.mark.parametrize(
    ("table", "field", "text", "value"),
    [
        ("tides", "height_m", "1.2", 1.2),
        ("tides", "height_m", "1,2", 1.2),
        ("tides", "height_m", "\u22120.3", -0.3),
        ("tides", "height_m", " +0.3 m ", 0.3),
        ("tides", "height_m", "1,234", 1.234),  # 1234 m is no height of tide, so nothing else can be meant
        ("swimmers", "range_m", "1.234,5", 1234.5),
        ("swimmers", "range_m", "1,234.5", 1234.5),
        ("swimmers", "range_m", "5\u202f000", 5000.0),
        ("swimmers", "range_m", "5000", 5000.0),
        ("stream_rates", "set_deg", "095°", 95.0),
        ("stream_rates", "set_deg", "-", None),
        ("stream_rates", "spring_kn", "n/a", None),
        ("stream_rates", "spring_kn", "", None),
        ("stream_rates", "spring_kn", "0", 0.0),
        ("stream_rates", "spring_kn", "1.5 knots", 1.5),
        ("stream_rates", "hour", "-6", -6),
        ("stream_rates", "hour", "3.0", 3),
        ("tides", "kind", "HW", "HW"),
        ("tides", "kind", "high water", "HW"),
        ("tides", "kind", "L", "LW"),
        ("stream_stations", "confidence", "Own measurement", "measured"),
        ("stream_stations", "confidence", "heard at the pier", "heard at the pier"),
        ("ferries", "time", "9:40", "09:40"),
        ("marks", "note", "two\nlines", "two\nlines"),
        (
            "sessions",
            "felt_stream",
            "none",
            "none",
        ),  # a word of its list, though elsewhere it says that nothing is there
    ],
)
def test_a_text_means_what_people_write_it_for(table: str, field: str, text: str, value: object) -> None:
    read = value_of(column(table, field), text)
    assert read == value and type(read) is type(value)


@pytest.mark.parametrize(
    ("table", "field", "text", "because"),
    [
        ("tides", "height_m", "abc", "a number from -10 to 25 m"),
        ("tides", "height_m", "26", "a number from -10 to 25 m"),
        ("tides", "height_m", "", "must be filled"),
        ("tides", "height_m", "nan", "must be filled"),
        ("tides", "height_m", "inf", "a number"),
        ("tides", "height_m", "1e999", "a number"),
        ("tides", "height_m", "1_0", "a number"),
        ("tides", "height_m", "9" * 5000, "a number"),
        ("tides", "height_m", "=1+1", "a formula"),
        ("tides", "height_m", "4 ft", "in m"),
        ("tides", "height_m", "4 kn", "in m"),
        ("swimmers", "range_m", "5,000", "5000 or 5.000"),
        ("stream_rates", "hour", "7", "from -6 to 6 h"),
        ("stream_rates", "hour", "2.5", "a whole number"),
        ("stream_rates", "set_deg", "361", "from 0 to 360"),
        ("tides", "kind", "flood", "one of HW, LW"),
        ("tides", "port", "=HYPERLINK(1)", "a formula"),
        ("tides", "port", "a\x00b", "cannot be seen"),
        ("tides", "port", "a\u202eb", "cannot be seen"),
        ("tides", "port", "x" * 501, "up to 500 characters"),
        ("ferries", "time", "25:00", "HH:MM each day"),
        ("tides", "time", "2027-06-05", "lacks the time of day"),
        ("tides", "time", "05/06/2027 09:40", "2027-06-05 or 2027-05-06"),
        ("tides", "time", "2027-02-30 09:40", "a date and time"),
        ("tides", "time", "40000.5", "a date and time"),  # a spreadsheet's own count of days
    ],
)
def test_what_cannot_be_meant_is_refused_with_words(table: str, field: str, text: str, because: str) -> None:
    with pytest.raises(SwimPlanError) as refused:
        value_of(column(table, field), text)
    assert because in str(refused.value)
    assert len(str(refused.value)) < 300 and "\x00" not in str(refused.value)


def test_a_time_is_read_in_the_plans_zone_and_kept_in_utc() -> None:
    moment = value_of(column("tides", "time"), "2027-06-05 09:40")
    assert moment == datetime(2027, 6, 5, 8, 40, tzinfo=UTC)
    assert column("tides", "time").title == "Time (Europe/Lisbon)"
    assert shown(column("tides", "time", "Atlantic/Azores"), moment) == "2027-06-05 08:40"


# Lisbon's clocks jump from 01:00 to 02:00 on 2027-03-28 and go back from 02:00 to 01:00 on 2027-10-31 (IANA zone data).
def test_an_hour_that_clocks_skip_or_show_twice_is_refused_and_an_offset_says_which() -> None:
    time = column("tides", "time")
    with pytest.raises(SwimPlanError, match="does not exist"):
        value_of(time, "2027-03-28 01:30")
    with pytest.raises(SwimPlanError, match="comes twice"):
        value_of(time, "2027-10-31 01:30")
    assert value_of(time, "2027-10-31 01:30+00:00") == datetime(2027, 10, 31, 1, 30, tzinfo=UTC)


def test_a_moment_shown_is_read_back_as_itself_through_the_nights_on_which_clocks_change() -> None:
    time = column("tides", "time")
    for day in (datetime(2027, 3, 28, tzinfo=UTC), datetime(2027, 10, 30, 20, tzinfo=UTC)):
        for minutes in range(0, 720, 10):
            moment = datetime.fromtimestamp(day.timestamp() + 60 * minutes, UTC)
            assert value_of(time, shown(time, moment)) == moment


def test_what_the_schema_gives_as_a_default_is_shown_and_read_back_in_every_table() -> None:
    for layer in LAYERS:
        for field in layer.fields:
            one = Column(layer=layer, field=field)
            if field.default is not None:
                assert value_of(one, shown(one, field.default)) == field.default
                assert value_of(one, shown(one, field.default, in_words=False)) == field.default
            for code in field.allowed:
                assert value_of(one, shown(one, code)) == code


def test_a_stored_value_that_may_not_be_there_is_named_with_what_may() -> None:
    assert problem_of(column("stream_rates", "hour"), 3) == ""
    assert "whole number from -6 to 6 h" in problem_of(column("stream_rates", "hour"), 7)
    assert "must be filled" in problem_of(column("tides", "height_m"), None)


def tide(port: str, hour: float, height: float | None, kind: str) -> dict[str, object]:
    moment = datetime.fromtimestamp(datetime(2027, 6, 5, tzinfo=UTC).timestamp() + 3600 * hour, UTC)
    return {"port": port, "time": moment, "height_m": height, "kind": kind}


def found(table: str, rows: dict[int, dict[str, object]], **names: list[str]) -> set[tuple[int, str]]:
    return {(one.fid, one.field) for one in problems_between(table, rows, names)}


def test_tides_that_rise_and_fall_in_turn_have_nothing_wrong() -> None:
    rows = {n: tide("Port Tern", 6.2 * n, 0.5 if n % 2 else 3.5, "LW" if n % 2 else "HW") for n in range(8)}
    assert found("tides", rows) == set()


def test_two_waters_of_one_port_at_one_time_are_both_wrong_and_those_of_two_ports_are_not() -> None:
    rows = {1: tide("Port Tern", 0, 3.5, "HW"), 2: tide("Port Tern", 0, 3.6, "HW")}
    assert found("tides", rows) == {(1, "time"), (2, "time")}
    assert found("tides", {1: rows[1], 2: {**rows[2], "port": "Port Auk"}}) == set()


def test_a_high_water_no_higher_than_the_low_water_beside_it_is_marked_and_so_is_the_low_water() -> None:
    rows = {1: tide("A", 0, 3.5, "HW"), 2: tide("A", 6, 3.6, "LW"), 3: tide("A", 12, 3.7, "HW")}
    assert found("tides", rows) == {(1, "height_m"), (2, "height_m")}


def test_two_high_waters_in_a_row_are_marked_whatever_the_order_of_the_rows() -> None:
    rows = {1: tide("A", 12, 3.5, "HW"), 2: tide("A", 0, 3.6, "HW")}
    assert found("tides", rows) == {(1, "kind")}


def test_a_tide_that_lacks_its_height_or_kind_is_compared_with_nothing() -> None:
    rows = {1: tide("A", 0, None, "HW"), 2: tide("A", 6, 0.5, "LW"), 3: {**tide("A", 12, 3.0, "HW"), "kind": None}}
    assert found("tides", rows) == set()


def test_an_hour_that_a_station_has_twice_and_a_station_nobody_knows_are_marked() -> None:
    rows = {n: {"station": "Sill", "hour": hour} for n, hour in enumerate((-1, 0, 0))}
    assert found("stream_rates", rows, station=["Sill"]) == {(1, "hour"), (2, "hour")}
    assert found("stream_rates", {0: rows[0]}, station=["Ledge"]) == {(0, "station")}


def test_a_transit_that_stands_twice_and_a_landmark_nobody_knows_are_marked() -> None:
    row = {"mark": "Sill", "front": "Post", "rear": "Mill"}
    assert found("transits", {1: row, 2: dict(row), 3: {**row, "rear": "Mast"}}) == {(1, "rear"), (2, "rear")}
    assert found("transits", {1: row}, mark=["Sill"], front=["Post"], rear=["Mast"]) == {(1, "rear")}


def test_a_slack_with_a_rate_and_flood_after_ebb_without_slack_are_marked() -> None:
    def event(hour: int, kind: str, rate: float) -> dict[str, object]:
        return {"station": "Sill", "time": datetime(2027, 6, 5, hour, tzinfo=UTC), "kind": kind, "rate_kn": rate}

    rows = {1: event(1, "slack", 0.4), 2: event(4, "max", 1.2), 3: event(10, "max", -1.2)}
    assert found("stream_events", rows) == {(1, "rate_kn"), (3, "rate_kn")}


def test_a_setting_that_cannot_mean_what_its_key_needs_is_marked() -> None:
    rows = {1: {"key": "reserve_factor", "value": "much"}, 2: {"key": "title", "value": "Bay"}}
    assert found("settings", rows) == {(1, "value")}
