"""Headings of stream tables: what they say beside the name of a column is read, or refused by name."""

from __future__ import annotations

import pytest
from tideleg.core.errors import BadInputError, SwimPlanError
from tideleg.core.water.stream_asked import StreamAsked, StreamReading
from tideleg.core.water.stream_text import read_streams


def one(text: str, **asked) -> StreamReading:
    (reading,) = read_streams(text, StreamAsked(**{"station": "A", "unit": "kn", **asked}))
    return reading


def hourly(direction: str = "set", spring: str = "spring", hour: str = "hour", **asked) -> StreamReading:
    return one(f"{hour},{direction},{spring}\n-1,70,0.8\n0,75,0.4\n", **{"reference": "HW", **asked})


def series(direction: str, rate: str = "rate") -> StreamReading:
    return one(f"time (UTC),{direction},{rate}\n2027-06-05 09:00,70,0.5\n2027-06-05 10:00,75,0.6\n")


FROM = ("direction (coming from)", "set (from)", "direction [from]", "course (deg; from)")
MAGNETIC = ("set (mag)", "set [magnetic]", "course (M)", "set (\u00b0M)", "dir (deg mag)", "course_M", "set (compass)")


@pytest.mark.parametrize("heading", FROM)
def test_a_direction_that_the_water_comes_from_is_refused(heading: str) -> None:
    for read in (hourly, series):
        with pytest.raises(BadInputError, match="Give true directions the water goes to") as caught:
            read(heading)
        assert caught.value.field == heading


@pytest.mark.parametrize("heading", ["direction from", "from", "set from", "from direction"])
def test_so_is_one_that_says_it_without_brackets(heading: str) -> None:
    with pytest.raises(BadInputError, match="the water goes to"):
        series(heading)


@pytest.mark.parametrize("heading", MAGNETIC)
def test_a_magnetic_direction_is_refused(heading: str) -> None:
    for read in (hourly, series):
        with pytest.raises(BadInputError, match="Give true directions: magnetic plus the east variation") as caught:
            read(heading)
        assert caught.value.field == heading


@pytest.mark.parametrize("heading", ["wind from (mag)", "from (M)", "wind direction [magnetic]", "wind from mag"])
def test_a_magnetic_wind_is_refused(heading: str) -> None:
    with pytest.raises(BadInputError, match="magnetic plus the east variation"):
        one(f"time (UTC),{heading},wind speed (kn)\n2027-06-05 09:00,240,8\n")


def test_a_wind_that_says_where_it_goes_is_refused() -> None:
    with pytest.raises(BadInputError, match="It says 'towards', which is not read"):
        one("time (UTC),wind direction (towards),wind speed (kn)\n2027-06-05 09:00,240,8\n")


@pytest.mark.parametrize(
    "heading",
    [
        "set (deg)",
        "set (\u00b0)",
        "set (\u00b0T)",
        "direction (towards)",
        "set (true; towards)",
        "course [T]",
        "set_deg",
    ],
)
def test_true_directions_are_read(heading: str) -> None:
    assert [row.values["set_deg"] for row in hourly(heading).rows] == [70.0, 75.0]
    assert [row.values["set_deg"] for row in series(heading).rows] == [70.0, 75.0]


def test_a_true_wind_from_is_read() -> None:
    (row,) = one("time (UTC),wind direction (from; deg true),wind speed (kn)\n2027-06-05 09:00,240,8\n").rows
    assert (row.values["from_deg"], row.values["speed_kn"]) == (240.0, 8.0)


@pytest.mark.parametrize(
    "heading",
    ["spring (0.1 kn)", "spring (tenths of kn)", "spring (km/h)", "spring (kn x 10)", "spring (ft/s)", "spring (%)"],
)
def test_a_unit_that_is_not_known_is_refused_though_units_says_knots(heading: str) -> None:
    with pytest.raises(BadInputError, match="a heading may say kn, m/s, cm/s") as caught:
        hourly(spring=heading)
    assert caught.value.field == heading


@pytest.mark.parametrize("heading", ["spring 0.1kn", "spring tenths", "spring km/h"])
def test_so_is_a_column_that_would_be_passed_over(heading: str) -> None:
    with pytest.raises(BadInputError, match="It begins as a column for spring") as caught:
        one(f"hour,set,{heading},neap (kn)\n0,70,8,0.4\n", reference="HW")
    assert caught.value.field == heading


def test_the_same_in_another_unit_beside_it_is_left_alone() -> None:
    (row,) = one("hour,set,spring (kn),spring km/h\n0,70,0.8,1.5\n", reference="HW").rows
    assert row.values["spring_kn"] == 0.8


def test_beaufort_is_refused() -> None:
    with pytest.raises(BadInputError, match="It says 'bft', which is not read"):
        one("time (UTC),wind from,wind speed (Bft)\n2027-06-05 09:00,240,4\n")


def test_two_units_in_one_heading_are_refused() -> None:
    with pytest.raises(BadInputError, match="It names two units"):
        hourly(spring="spring (kn or m/s)", unit="")


@pytest.mark.parametrize(
    ("heading", "rate"),
    [
        ("spring (kn)", 0.8),
        ("spring [knots]", 0.8),
        ("spring (m/s)", 1.555076),
        ("spring (cm/s)", 0.015551),
        ("spring (mean kn)", 0.8),
        ("spring_kn", 0.8),
    ],
)
def test_known_units_are_read(heading: str, rate: float) -> None:
    assert hourly(spring=heading, unit="").rows[0].values["spring_kn"] == pytest.approx(rate, abs=1e-6)


def test_a_rate_may_say_which_way_is_positive_if_it_is_ours() -> None:
    table = "time (UTC),{}\n2027-06-05 09:00,0\n2027-06-05 12:00,1.5\n"
    assert len(one(table.format("rate (kn; flood +; ebb -)")).rows) == 2
    with pytest.raises(BadInputError, match="which is not read"):
        one(table.format("rate (kn; ebb +; flood -)"))


@pytest.mark.parametrize("heading", ["lon (W)", "lon (deg W)"])
def test_a_longitude_counted_westwards_is_refused(heading: str) -> None:
    table = f"time (UTC),{heading},lat,minutes,end lon,end lat\n2027-06-05 09:00,28.5,38.5,20,28.51,38.5\n"
    with pytest.raises(BadInputError, match="a heading may say deg, E"):
        one(table, station="")


class TestTide:
    def test_a_heading_that_counts_from_the_other_tide_is_refused(self) -> None:
        with pytest.raises(BadInputError, match="counts its hours from HW") as caught:
            hourly(hour="hours from LW")
        assert caught.value.field == "hours from LW"
        with pytest.raises(BadInputError, match="counts its hours from LW"):
            hourly(hour="hour (HW)", reference="LW")

    def test_a_heading_says_the_tide_where_nothing_else_does(self) -> None:
        assert hourly(hour="hours from LW", reference="").station["reference"] == "LW"
        assert hourly(hour="hour (after HW)", reference="").station["reference"] == "HW"

    def test_a_heading_that_names_none_leaves_it_open(self) -> None:
        with pytest.raises(SwimPlanError, match="Choose REFERENCE"):
            hourly(hour="hour (h)", reference="")
