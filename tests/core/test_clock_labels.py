"""The clock that a table names in headings, titles and comments: read, and never gone against."""

from __future__ import annotations

import pytest
from tideleg.core.clock_labels import LabelledPlace, labels_in_heading, labels_in_line
from tideleg.core.errors import BadInputError
from tideleg.core.water.tide_reading import TidesAsked
from tideleg.core.water.tide_text import read_tides

JULY, JANUARY = "2027-07-05", "2027-01-05"


def kinds(place: LabelledPlace | None) -> list[tuple[str, str]]:
    return [] if place is None else [(label.text, str(label.zone or label.kind)) for label in place.labels]


@pytest.mark.parametrize(
    ("heading", "found"),
    [
        ("Time (EDT)", [("EDT", "named")]),
        ("time_est", [("EST", "named")]),
        ("Time (LST)", [("LST", "standard")]),
        ("Time (LST/LDT)", [("LST", "standard"), ("LDT", "daylight")]),
        ("time_utc", [("utc", "UTC")]),
        ("Time Z", [("Z", "UTC")]),
        ("Time (GMT+01:00)", [("GMT+01:00", "UTC+01:00")]),
        ("Time (UTC \u2212 5)", [("UTC - 5", "UTC-05:00")]),
        ("Time (-0330)", [("-0330", "UTC-03:30")]),
        ("Time (Europe/Lisbon)", [("Europe/Lisbon", "Europe/Lisbon")]),
        ("Date America/New_York", [("America/New_York", "America/New_York")]),
        ("Eastern Daylight Time", [("EDT", "named")]),
        ("British Summer Time", [("BST", "named")]),
        ("Time [AEST]", [("AEST", "named")]),
        ("Date Time", []),
        ("Date et heure", []),
        ("Date/Time", []),
        ("Time - 24h", []),
        ("High water time", []),
    ],
)
def test_clock_in_a_heading(heading: str, found: list[tuple[str, str]]) -> None:
    assert kinds(labels_in_heading(heading)) == found


@pytest.mark.parametrize(
    ("line", "found"),
    [
        ("All times are EST", [("EST", "named")]),
        ("Tide predictions, NZDT", [("NZDT", "named")]),
        ("Time zone: LST/LDT", [("LST", "standard"), ("LDT", "daylight")]),
        ("time_zone: LST_LDT", [("LST", "standard"), ("LDT", "daylight")]),
        ("Time zone: -0500", [("-0500", "UTC-05:00")]),
        ("Zone: America/New_York", [("America/New_York", "America/New_York")]),
        ("Times are GMT, not corrected for BST", [("GMT", "UTC"), ("not corrected for BST", "standard")]),
        ("Times in GMT. Add 1 hour for BST", [("GMT", "UTC"), ("Add 1 hour for BST", "standard")]),
        ("Times: WEST", [("WEST", "named")]),
        ("WEST COAST TIDE TIMES", []),
        ("Salt Lake, UT", []),
        ("Generated 2027-06-01 10:00 UTC", []),
        ("Time difference +00:20", []),
        ("Times adjusted for daylight saving", []),
        ("Tides at Kettle Slip, heights in metres", []),
    ],
)  # fmt: skip
def test_clock_in_a_title_or_comment(line: str, found: list[tuple[str, str]]) -> None:
    assert kinds(labels_in_line(1, line)) == found


def table(heading: str = "Time", day: str = JULY, above: str = "", below: str = "") -> str:
    lines = [f"Date,{heading},Height (m)", f"{day},02:10,0.7", f"{day},08:22,3.9", f"{day},14:30,0.8"]
    return "\n".join([*([above] if above else []), *lines, *([below] if below else [])])


def first(text: str, zone: str = "") -> str:
    return f"{read_tides(text, TidesAsked(zone=zone)).heights[0].time:%H:%M}"


REFUSED = [
    ("Time (EDT)", JULY, "UTC", r"'Time \(EDT\)' says EDT, and at 2027-07-05 02:10 UTC has UTC \(\+00:00\).*-04:00"),
    ("Time (EST)", JULY, "America/New_York", r"says EST.*America/New_York has EDT \(-04:00\).*fixed offset -05:00"),
    ("Time (LST)", JULY, "America/New_York", r"says LST.*has EDT \(-04:00\).*fixed offset -05:00"),
    ("Time (LDT)", JANUARY, "America/New_York", r"says LDT.*has EST \(-05:00\).*fixed offset -04:00"),
    ("Time (CST)", JULY, "America/Chicago", r"says CST.*has CDT \(-05:00\).*fixed offset -06:00"),
    ("Time (BST)", JANUARY, "Europe/London", r"says BST.*has GMT \(\+00:00\).*fixed offset \+01:00"),
    ("Time (GMT)", JULY, "Europe/London", r"says GMT.*has BST \(\+01:00\).*give ZONE as UTC"),
    ("Time (AEDT)", JULY, "Australia/Sydney", r"says AEDT.*has AEST \(\+10:00\).*fixed offset \+11:00"),
    ("Time (UTC-4)", JULY, "UTC", r"says UTC-4.*fixed offset -04:00"),
    ("Time (PST)", JULY, "-05:00", r"says PST.*-08:00, where PST means that"),
]


@pytest.mark.parametrize(("heading", "day", "zone", "said"), REFUSED)
def test_zone_in_which_the_heading_cannot_be_true_is_refused(heading: str, day: str, zone: str, said: str) -> None:
    with pytest.raises(BadInputError, match="row 2, field 'ZONE'.*" + said):
        first(table(heading, day), zone)


@pytest.mark.parametrize(
    ("heading", "day", "zone", "utc"),
    [
        ("Time (EDT)", JULY, "America/New_York", "06:10"),
        ("Time (EST)", JANUARY, "America/New_York", "07:10"),
        ("Time (EST)", JULY, "-05:00", "07:10"),
        ("Time (EST)", JULY, "America/Jamaica", "07:10"),
        ("Time (LST)", JULY, "-05:00", "07:10"),
        ("Time (LST/LDT)", JULY, "America/New_York", "06:10"),
        ("Time (LST)", JULY, "America/Phoenix", "09:10"),
        ("Time (ET)", JULY, "America/New_York", "06:10"),
        ("Time (GMT/BST)", JULY, "Europe/London", "01:10"),
        ("Time (WEST)", JULY, "Europe/Lisbon", "01:10"),
        ("Time (GMT)", JANUARY, "Europe/London", "02:10"),
        ("Time (BST)", JULY, "Asia/Dhaka", "20:10"),
        ("Time (UTC-5)", JULY, "", "07:10"),
        ("Time (GMT)", JULY, "", "02:10"),
        ("Time (America/New_York)", JULY, "", "06:10"),
    ],
)
def test_zone_that_the_heading_agrees_with_is_read(heading: str, day: str, zone: str, utc: str) -> None:
    reading = read_tides(table(heading, day), TidesAsked(zone=zone))
    assert f"{reading.heights[0].time:%H:%M}" == utc
    assert f"the heading '{heading}'" in reading.taken["zone"]


@pytest.mark.parametrize("label", ["EDT", "EST", "LST", "LST/LDT", "CST", "BST", "ET", "GMT/BST"])
def test_letters_that_stand_for_several_clocks_never_decide(label: str) -> None:
    with pytest.raises(
        BadInputError, match=f"row 2.*'Time \\({label}\\)' says {label}, which names no one zone.*Give ZONE"
    ):
        first(table(f"Time ({label})"))


@pytest.mark.parametrize("where", ["above", "below"])
def test_titles_and_notes_count_as_headings_do(where: str) -> None:
    with pytest.raises(BadInputError, match="'All times are EST' says EST.*fixed offset -05:00"):
        first(table(**{where: "All times are EST"}), "America/New_York")
    with pytest.raises(BadInputError, match="'All times are EST' says EST, which names no one zone"):
        first(table(**{where: "All times are EST"}))
    assert first(table(**{where: "All times are EST"}), "-05:00") == "07:10"
    assert first(table(**{where: "# Times in UTC"})) == "02:10"


@pytest.mark.parametrize(
    "heading", ["Date Time (EST) Height", "Date Time EST Height", "Date  Time (EST)  Height", "Time Date Height EST"]
)
def test_heading_parted_by_spaces_counts_wherever_it_stands(heading: str) -> None:
    text = f"{heading}\n{JULY} 02:10 0.7 L\n{JULY} 08:22 3.9 H"
    with pytest.raises(BadInputError, match="says EST.*fixed offset -05:00"):
        read_tides(text, TidesAsked(zone="America/New_York", units="m"))


def test_summer_hour_still_to_be_added_is_not_in_the_table() -> None:
    text = table(above="Times in GMT. Add 1 hour for BST")
    assert first(text) == first(text, "UTC") == "02:10"
    with pytest.raises(BadInputError, match="has BST.*give ZONE as UTC"):
        first(text, "Europe/London")


def test_two_headings_of_different_clocks_are_refused() -> None:
    with pytest.raises(BadInputError, match="'All times are EDT' says EDT.*UTC has UTC"):
        first(table("Time (UTC)", above="All times are EDT"))


def test_table_that_passes_into_summer_time_is_refused_at_its_first_summer_row() -> None:
    text = "Date,Time (EST),Height (m)\n2027-03-13,20:00,0.7\n2027-03-14,01:50,3.9\n2027-03-14,08:00,0.8"
    with pytest.raises(BadInputError, match="row 4.*has EDT"):
        first(text, "America/New_York")
    assert first(text, "-05:00") == "01:00"


def test_column_of_clocks_counts() -> None:
    text = f"Date,Time,Zone,Height (m)\n{JULY},02:10,EDT,0.7\n{JULY},08:22,EDT,3.9\n{JULY},14:30,EDT,0.8"
    assert first(text, "America/New_York") == "06:10"
    with pytest.raises(BadInputError, match="Column 3 'Zone' says EDT"):
        first(text, "UTC")


def test_what_json_says_beside_its_rows_counts() -> None:
    rows = ", ".join(
        f'{{"t": "{JULY} {clock}", "v": "{height}"}}' for clock, height in (("02:10", 0.7), ("08:22", 3.9))
    )
    text = f'{{"metadata": {{"time_zone": "LST"}}, "predictions": [{rows}]}}'
    with pytest.raises(BadInputError, match="'time_zone: LST' says LST"):
        read_tides(text, TidesAsked(zone="America/New_York", units="m"))
    assert read_tides(text, TidesAsked(zone="-05:00", units="m")).heights[0].time.hour == 7


def test_phases_of_another_clock_than_the_one_given_are_refused() -> None:
    text = "Constituent,Amplitude (m),Phase ({})\nM2,1.2,100\nS2,0.4,140"
    for label, zone in (("GMT", "UTC-8"), ("PST", "UTC"), ("UTC-8", "UTC")):
        with pytest.raises(BadInputError, match=f"says {label}.*another clock"):
            read_tides(text.format(label), TidesAsked(zone=zone))
    with pytest.raises(BadInputError, match="says PST.*Give ZONE"):
        read_tides(text.format("PST"), TidesAsked())
    assert read_tides(text.format("UTC"), TidesAsked()).constants[0].phase_deg == 100.0
    # M2 runs 28.984 degrees an hour: eight hours are 231.873 degrees.
    assert read_tides(text.format("PST"), TidesAsked(zone="-08:00")).constants[0].phase_deg == pytest.approx(
        331.87, abs=0.01
    )


@pytest.mark.parametrize(
    "heading", ["Time (local not UTC)", "Time (not GMT)", "Time (Etc/GMT-1)", "Time (local, GMT+1)"]
)
def test_a_heading_that_may_turn_its_label_round_decides_no_clock(heading: str) -> None:
    place = labels_in_heading(heading)
    assert place is not None and place.zone() is None
