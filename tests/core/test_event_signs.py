"""Slacks and maxima whose rates carry no sign: refused, never read as one flood after the other."""

from __future__ import annotations

import pytest
from tideleg.core.errors import BadInputError
from tideleg.core.water.stream_asked import StreamAsked
from tideleg.core.water.stream_text import read_streams

CLOCKS = ("03:10", "06:15", "09:20", "12:25", "15:30")


def rates(*cells: str, heading: str = "time,rate", behind: str = "") -> list[float | None]:
    lines = [f"2027-06-05T{clock}Z,{cell}{behind}" for clock, cell in zip(CLOCKS, cells)]
    (reading,) = read_streams("\n".join([heading, *lines]), StreamAsked(station="A", unit="kn", form="events"))
    return [row.values["rate_kn"] for row in reading.rows]


def test_ebbs_without_a_sign_are_refused() -> None:
    for heading, behind in (("time,rate", ""), ("time,rate,flood set,ebb set", ",70,250")):
        with pytest.raises(BadInputError, match="row 5.*Row 3 before the slack.*Write ebb rates negative") as caught:
            rates("0", "2.0", "0", "1.5", "0", heading=heading, behind=behind)
        assert caught.value.row == 5


def test_so_are_two_ebbs_and_maxima_that_words_do_not_tell_apart() -> None:
    with pytest.raises(BadInputError, match="say flood or ebb in each row"):
        rates("0", "-2.0", "0", "-1.5", "0")
    with pytest.raises(BadInputError, match="a stream turns at slack"):
        rates("slack,", "max,2.0", "slack,", "max,1.5", heading="time,event,rate")
    with pytest.raises(BadInputError, match="a stream turns at slack"):
        rates("slack,", "flood,2.0", "slack,", "max,1.5", heading="time,event,rate")


def test_the_order_of_the_rows_does_not_hide_it() -> None:
    text = "time,rate\n2027-06-05T12:25Z,1.5\n2027-06-05T06:15Z,2.0\n2027-06-05T09:20Z,0\n"
    with pytest.raises(BadInputError, match="row 2.*Row 3 before the slack"):
        read_streams(text, StreamAsked(station="A", unit="kn", form="events"))


def test_signed_rates_and_words_are_read() -> None:
    assert rates("0", "2.0", "0", "-1.5", "0") == [0.0, 2.0, 0.0, -1.5, 0.0]
    assert rates("0", "2.0F", "0", "1.5E", "0") == [0.0, 2.0, 0.0, -1.5, 0.0]
    words = rates("slack,", "flood,2.0", "slack,", "ebb,1.5", heading="time,event,rate")
    assert words == [0.0, 2.0, 0.0, -1.5]


def test_a_flood_that_rests_and_goes_on_is_read_where_words_say_so() -> None:
    words = rates("slack,", "flood,2.0", "slack,", "flood,1.5", heading="time,event,rate")
    assert words == [0.0, 2.0, 0.0, 1.5]


def test_two_maxima_far_apart_have_lost_rows_between_them() -> None:
    text = "time,rate\n2027-06-05T06:15Z,2.0\n2027-06-05T09:20Z,0\n2027-06-06T07:00Z,1.9\n"
    (reading,) = read_streams(text, StreamAsked(station="A", unit="kn", form="events"))
    assert len(reading.rows) == 3


def test_words_decide_the_way_of_a_minimum_too() -> None:
    found = rates("max ebb,1.5", "min ebb,0.4", "max ebb,1.2", "min flood,0.3", heading="time,event,rate")
    assert found == [-1.5, -0.4, -1.2, 0.3]


def test_a_minimum_before_the_ebb_needs_its_sign() -> None:
    with pytest.raises(BadInputError, match=r"row 2.*Write \+ for flood, - for ebb"):
        rates("min before ebb,0.4", heading="time,event,rate")
    assert rates("min before ebb,+0.4", "min before flood,-0.3", heading="time,event,rate") == [0.4, -0.3]
