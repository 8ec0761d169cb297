"""Tables of tides as people paste them: what is read, and what is refused with its row named."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone

import numpy as np
import pytest
from tideleg.core.errors import BadInputError, SwimPlanError
from tideleg.core.water.harmonics import TidalSum
from tideleg.core.water.tide_csv import csv_of
from tideleg.core.water.tide_reading import TideReading, TidesAsked, row_runs
from tideleg.core.water.tide_text import read_tides

UTC = timezone.utc


def read(text: str, **asked: str) -> TideReading:
    return read_tides(text, TidesAsked(**asked))


def rows(reading: TideReading) -> list[tuple[str, float, bool | None]]:
    return [(f"{row.time:%m-%d %H:%M}", round(row.height_m, 3), row.is_high) for row in reading.heights]


# Low, high, low water of one day in as many clothes as tables wear.
WANTED = [("06-15 02:10", 0.7, False), ("06-15 08:22", 3.9, True), ("06-15 14:30", 0.8, False)]
SAME_DAY = {
    "event rows, ISO, letters": ("2027-06-15T02:10Z,0.7 m,L\n2027-06-15T08:22Z,3.9 m,H\n2027-06-15T14:30Z,0.8 m,L", {}),
    "spaces, no letters": (
        "2027-06-15 02:10 0.7\n2027-06-15 08:22 3.9\n2027-06-15 14:30 0.8",
        {"zone": "UTC", "units": "m"},
    ),
    "am and pm": (
        "15 Jun 2027  2:10 AM  0.7 m\n15 Jun 2027  8:22 a.m.  3.9 m\n15 Jun 2027  2:30 pm  0.8 m",
        {"zone": "UTC"},
    ),
    "decimal comma, semicolons, day first": (
        "Datum;Zeit;Wert\n15.06.2027;02:10;0,7\n15.06.2027;08:22;3,9\n15.06.2027;14:30;0,8",
        {"zone": "UTC", "units": "m", "columns": "date,time,height"},
    ),
    "decimal comma, spaces": (
        "15/06/2027 02:10 0,7\n15/06/2027 08:22 3,9\n15/06/2027 14:30 0,8",
        {"zone": "UTC", "units": "m"},
    ),
    "month first": (
        "Date,Time (UTC),Height (m)\n06/15/2027,02:10,0.7\n06/15/2027,08:22,3.9\n06/15/2027,14:30,0.8",
        {},
    ),
    "a row for each day": (
        "Date,Time (UTC),Height (m),Time (UTC),Height (m),Time (UTC),Height (m),Time (UTC),Height (m)\n"
        "2027-06-15,02:10,0.7,08:22,3.9,14:30,0.8,,",
        {},
    ),
    "a row for each day, four digits": (
        "Tue 15 Jun 2027  0210 0.7  0822 3.9  1430 0.8",
        {"zone": "GMT", "units": "m"},
    ),
    "the date once": ("2027-06-15\t02:10\t0.7\n\t08:22\t3.9\n\t14:30\t0.8", {"zone": "UTC", "units": "m"}),
    "a table drawn with bars": (
        "| Date | Time | Height | |\n|---|---|---|---|\n| 2027-06-15 | 02:10 | 0.7 | Low |\n"
        "| 2027-06-15 | 08:22 | 3.9 | High |\n| 2027-06-15 | 14:30 | 0.8 | Low |",
        {"zone": "UTC", "units": "m"},
    ),
    "feet in the cells": (
        "June 15, 2027, 02:10, 2.2966 ft, low water\nJune 15, 2027, 08:22, 12.7953 ft, high water\n"
        "June 15, 2027, 14:30, 2.6247 ft, low water",
        {"zone": "UTC"},
    ),
    "metres and feet beside each other": (
        "Date\tTime (UTC)\tHeight (ft)\tHeight (m)\n2027-06-15\t02:10\t2.3\t0.7\n2027-06-15\t08:22\t12.8\t3.9\n"
        "2027-06-15\t14:30\t2.6\t0.8",
        {},
    ),
    "a zone with summer time": (
        "2027-06-15 03:10 0.7\n2027-06-15 09:22 3.9\n2027-06-15 15:30 0.8",
        {"zone": "Europe/Lisbon", "units": "m"},
    ),
    "a fixed offset across midnight": (
        "2027-06-14 18:10 0.7\n2027-06-15 00:22 3.9\n2027-06-15 06:30 0.8",
        {"zone": "UTC-8", "units": "m"},
    ),
    "JSON with types": (
        '{"predictions": [{"t": "2027-06-15 02:10", "v": "0.7", "type": "L"}, {"t": "2027-06-15 08:22", "v": "3.9", '
        '"type": "H"}, {"t": "2027-06-15 14:30", "v": "0.8", "type": "L"}]}',
        {"zone": "UTC", "units": "m"},
    ),
    "title, notes and an empty column": (
        "Tides at Kettle Slip\nheights in metres above datum\n\nDate,Time (UTC),,Height (m)\n2027-06-15,02:10,,0.7\n"
        "2027-06-15,08:22,,3.9\nDate,Time (UTC),,Height (m)\n2027-06-15,14:30,,0.8\nNot for navigation",
        {},
    ),
    "rows out of order": (
        "2027-06-15 14:30 0.8\n2027-06-15 02:10 0.7\n2027-06-15 08:22 3.9",
        {"zone": "UTC", "units": "m", "form": "events"},
    ),
    "columns that must be named": (
        "2027-06-15,02:10,0.7,45\n2027-06-15,08:22,3.9,45\n2027-06-15,14:30,0.8,46",
        {"zone": "UTC", "units": "m", "columns": "date, time, height, skip"},
    ),
    "kinds in the headings": (
        "Date;Low water (UTC);m;High water (UTC);m\n2027-06-15;02:10;0.7;08:22;3.9\n2027-06-15;14:30;0.8;;",
        {"columns": "date,time,height,time,height", "units": "m"},
    ),
}


@pytest.mark.parametrize("clothes", SAME_DAY)
def test_the_same_waters_are_read_from_every_layout(clothes: str) -> None:
    text, asked = SAME_DAY[clothes]
    reading = read(text, **asked)
    assert reading.form == "events"
    assert rows(reading) == WANTED


REFUSED = {
    "two orders of day and month": (
        "2027-06-15 02:10 x\n05/06/2027,02:10,0.7\n05/06/2027,08:22,3.9",
        {"zone": "UTC", "units": "m", "columns": "date,time,height"},
        r"row 2, field 'date': got '05/06/2027'. It may be 2027-06-05 \(dmy\) or 2027-05-06 \(mdy\).*DATE_ORDER",
    ),
    "two orders in one table": (
        "15/06/2027,02:10,0.7\n06/16/2027,08:22,3.9",
        {"zone": "UTC", "units": "m"},
        "row 2.*'06/16/2027'.*The rows before it read as dmy",
    ),
    "two digits for the year": (
        "05-06-27,02:10,0.7\n05-06-27,08:22,3.9",
        {"zone": "UTC", "units": "m"},
        "row 1.*2005-06-27.*2027-06-05.*2027-05-06",
    ),
    "an order that does not fit": (
        "15/06/2027,02:10,0.7\n15/06/2027,08:22,3.9",
        {"zone": "UTC", "units": "m", "date_order": "mdy"},
        "row 1.*to be read as mdy",
    ),
    "no zone": ("2027-06-15 02:10 0.7 L\n2027-06-15 08:22 3.9 H", {"units": "m"}, "row 1.*Give ZONE"),
    "no unit": ("2027-06-15 02:10 0.7 L\n2027-06-15 08:22 3.9 H", {"zone": "UTC"}, "row 1.*Give UNITS"),
    "another unit": ("2027-06-15 02:10 0.7ft\n2027-06-15 08:22 3.9m", {"zone": "UTC", "units": "ft"}, "row 2.*says m"),
    "another zone": (
        "Date,Time (UTC),Height (m)\n2027-06-15,02:10,0.7\n2027-06-15,08:22,3.9",
        {"zone": "Europe/Lisbon"},
        r"row 2.*'Europe/Lisbon'. The heading 'Time \(UTC\)' says UTC, .* has WEST \(\+01:00\).*give ZONE as UTC",
    ),
    "no zone of that name": ("2027-06-15 02:10 0.7 L", {"zone": "Mars/Olympus", "units": "m"}, "'Mars/Olympus'"),
    "a clock that daylight saving skips": (
        "2027-03-28 01:30 0.7 L\n2027-03-28 08:22 3.9 H",
        {"zone": "Europe/Lisbon", "units": "m"},
        "row 1, field 'time'.*does not exist.*fixed offset",
    ),
    "a clock that comes twice": (
        "2027-10-31 08:22 3.9 H\n2027-10-31 01:30 0.7 L",
        {"zone": "Europe/Lisbon", "units": "m"},
        "row 2, field 'time'.*comes twice.*2027-10-31T01:30:00",
    ),
    "a height that is none": (
        "2027-06-15 02:10 0.7\n2027-06-15 08:22 3..9\n2027-06-15 14:30 0.8\n2027-06-15 20:30 3.8\n2027-06-16 02:30 0.8",
        {"zone": "UTC", "units": "m"},
        r"row 2, field 'height': got '3\.\.9'",
    ),
    "a time that is none": (
        "2027-06-15,02:10,0.7\n2027-06-15,08:72,3.9\n2027-06-15,14:30,0.8\n2027-06-15,20:30,3.8\n2027-06-16,02:30,0.8",
        {"zone": "UTC", "units": "m"},
        "row 2, field 'time': got '08:72'",
    ),
    "13 pm": (
        "2027-06-15,8:22 am,3.9\n" * 5 + "2027-06-15,13:10 pm,0.7",
        {"zone": "UTC", "units": "m"},
        "row 6.*'13:10pm'",
    ),
    "a date that is none": (
        "2027-06-15,02:10,0.7\n2027-06-31,08:22,3.9\n" + "2027-06-16,02:10,0.7\n" * 5,
        {"zone": "UTC", "units": "m"},
        "row 2, field 'date': got '2027-06-31'. That is no date",
    ),
    "a height beyond any tide": ("2027-06-15 02:10 70 L", {"zone": "UTC", "units": "m"}, "row 1.*from -10.0 to 25.0"),
    "a kind that is none": (
        "2027-06-15 02:10 0.7 L\n2027-06-15 08:22 3.9 H\n2027-06-15 14:30 0.8 L\n2027-06-15 20:30 3.8 H\n"
        "2027-06-16 02:30 0.8 X",
        {"zone": "UTC", "units": "m"},
        "row 5, field 'kind': got 'X'",
    ),
    "a kind left out": (
        "2027-06-15 02:10 0.7 L\n2027-06-15 08:22 3.9 H\n2027-06-15 14:30 0.8\n2027-06-15 20:30 3.8 H",
        {"zone": "UTC", "units": "m"},
        "row 3, field 'kind'.*this one does not",
    ),
    "two highs in a row": (
        "2027-06-15 02:10 0.7 L\n2027-06-15 08:22 3.9 H\n2027-06-15 20:30 3.8 H",
        {"zone": "UTC", "units": "m"},
        "row 3.*high water and so is row 2",
    ),
    "a low above a high": (
        "2027-06-15 02:10 3.9 L\n2027-06-15 08:22 0.7 H",
        {"zone": "UTC", "units": "m"},
        "row 2.*high water and lower than row 1",
    ),
    "heights that do not alternate": (
        "2027-06-15 02:10 0.7\n2027-06-15 08:22 3.9\n2027-06-15 14:30 4.2\n2027-06-15 20:30 3.8",
        {"zone": "UTC", "units": "m"},
        "row 2.*one higher and one lower",
    ),
    "two rows half a day apart": (
        "2027-06-15 02:10 0.7\n2027-06-15 14:30 0.8",
        {"zone": "UTC", "units": "m", "form": "events"},
        "row 1.*12.3 h apart: they may be high waters alone",
    ),
    "one row alone": ("2027-06-15 02:10 0.7", {"zone": "UTC", "units": "m", "form": "events"}, "row 1.*No row within"),
    "two heights at one time": (
        "2027-06-15 02:10 0.7 L\n2027-06-15 02:10 0.8 L",
        {"zone": "UTC", "units": "m"},
        "row 2.*Row 1 differs at the same time",
    ),
    "neither events nor series": (
        "2027-06-15 02:10 0.7\n2027-06-18 08:22 3.9\n2027-06-21 14:30 0.8",
        {"zone": "UTC", "units": "m"},
        "Say in FORM",
    ),
    "two numbers for one time": (
        "2027-06-15,02:10,0.7,45\n2027-06-15,08:22,3.9,45",
        {"zone": "UTC", "units": "m"},
        "row 1, field 'columns'.*COLUMNS",
    ),
    "an unknown role": ("2027-06-15,02:10,0.7", {"columns": "date,clock,height"}, "'date,clock,height'"),
    "no date": ("02:10 0.7 L\n08:22 3.9 H", {"zone": "UTC", "units": "m"}, "columns.*one date"),
    "more cells than columns": (
        "2027-06-15 02:10 0.7\n2027-06-15 08:22 3.9 12\n2027-06-15 14:30 0.8\n2027-06-15 20:30 3.8\n"
        "2027-06-16 02:30 0.8",
        {"zone": "UTC", "units": "m"},
        "row 2, field 'columns': got '12'",
    ),
    "a stray row of figures": (
        "2027-06-15,02:10,0.7\n7,7,7\n2027-06-15,08:22,3.9",
        {"zone": "UTC", "units": "m"},
        "row 2, field 'time'",
    ),
    "words": ("no tides today", {}, "date or time and a height"),
    "nothing": (" \n\n", {}, "nothing in it"),
    "broken JSON": ('{"predictions": [', {}, "looks|starts like JSON"),
    "JSON of another kind": ('{"a": 1}', {}, "list of records"),
    "nested JSON": ('[{"t": [1]}]', {}, "row 1, field 't'.*plain"),
}


@pytest.mark.parametrize("case", REFUSED)
def test_what_cannot_be_read_for_sure_is_refused(case: str) -> None:
    text, asked, said = REFUSED[case]
    with pytest.raises(SwimPlanError, match=said):
        read(text, **asked)


def test_the_preview_shows_how_everything_was_taken() -> None:
    text = "Kettle Slip\nDay,Clock (UTC),Height (ft),Moon\n15/06/2027,02:10,2.3,full\n15/06/2027,08:22,-,full\n"
    text += "15/06/2027,14:30,2.6,full\n"
    with pytest.raises(BadInputError, match="row 4.*no height"):  # which of the others are high
        read(text, form="events")
    shown = read(text + "15/06/2027,20:30,12.5,full\n16/06/2027,02:30,2.4,full\n", form="series").preview()
    assert [column["taken_for"] for column in shown["taken"]["columns"]] == ["date", "time", "height", "skip"]
    assert [column["heading"] for column in shown["taken"]["columns"]] == ["Day", "Clock (UTC)", "Height (ft)", "Moon"]
    assert shown["taken"]["columns"][2]["unit"] == "ft"
    assert (shown["taken"]["separator"], shown["taken"]["date_order"]) == ("comma", "dmy")
    assert shown["taken"]["zone"] == "UTC, by the heading 'Clock (UTC)'"
    assert shown["first_rows"][0] == {
        "row": 3,
        "local_time": "2027-06-15T02:10:00+00:00",
        "time": "2027-06-15T02:10:00Z",
        "height_m": 0.701,
    }
    assert shown["skipped"] == [
        {"reason": "above the table", "count": 2, "rows": "1-2"},
        {"reason": "no height", "count": 1, "rows": "4"},
    ]
    assert shown["rows"] == 4


def test_row_numbers_are_told_in_runs() -> None:
    assert row_runs([9, 3, 4, 5, 12]) == "3-5, 9, 12"


def test_a_row_given_twice_is_counted_and_left_out() -> None:
    reading = read("2027-06-15 02:10 0.7\n2027-06-15 02:10 0.7\n2027-06-15 08:22 3.9", zone="UTC", units="m")
    assert [(one.row, one.reason) for one in reading.skipped] == [(2, "given twice")]
    assert len(reading.heights) == 2


# ---------------------------------------------------------------- even series and clocks


def series_text(start: str, end: str, zone_hours: float, step_min: int = 6, skip: tuple[str, ...] = ()) -> str:
    """A smooth tide at even steps of true time; each line carries the clock of ``zone_hours`` at its moment."""
    first, last = (datetime.fromisoformat(one).replace(tzinfo=UTC) for one in (start, end))
    lines = ["Time,Height (m)"]
    while first <= last:
        height = 2.0 + 1.5 * np.cos(2.0 * np.pi * first.timestamp() / 44712.0)
        lines.append(f"{first + timedelta(hours=zone_hours):%Y-%m-%d %H:%M},{height:.3f}")
        first += timedelta(minutes=step_min)
    return "\n".join(line for line in lines if line[:16] not in skip) + "\n"


@pytest.mark.parametrize("step_min", [6, 60])
def test_an_even_series_is_told_by_its_steps(step_min: int) -> None:
    reading = read(series_text("2027-06-15T00:00", "2027-06-17T00:00", 0.0, step_min), zone="UTC")
    assert reading.form == "series"
    assert len(reading.heights) == 48 * 60 / step_min + 1
    assert reading.warnings == ()
    assert {row.is_high for row in reading.heights} == {None}


def lisbon(utc_start: str, utc_end: str, change: str, before_h: int, after_h: int) -> str:
    """A series on a clock that changes at an hour of UTC."""
    lines = []
    moment, last, turn = (datetime.fromisoformat(one).replace(tzinfo=UTC) for one in (utc_start, utc_end, change))
    while moment <= last:
        height = 2.0 + 1.5 * np.cos(2.0 * np.pi * moment.timestamp() / 44712.0)
        clock = moment + timedelta(hours=before_h if moment < turn else after_h)
        lines.append(f"{clock:%Y-%m-%d %H:%M} {height:.3f}")
        moment += timedelta(minutes=10)
    return "\n".join(lines)


def test_the_hour_that_is_skipped_in_spring_leaves_an_even_series() -> None:
    text = lisbon("2027-03-27T20:00", "2027-03-28T06:00", "2027-03-28T01:00", 0, 1)
    reading = read(text, zone="Europe/Lisbon", units="m")
    steps = {(b.time - a.time).total_seconds() for a, b in zip(reading.heights, reading.heights[1:])}
    assert (steps, reading.skipped, reading.warnings) == ({600.0}, (), ())


def test_the_hour_that_comes_twice_is_told_by_order_when_it_stands_there_twice() -> None:
    text = lisbon("2027-10-30T20:00", "2027-10-31T06:00", "2027-10-31T01:00", 1, 0)
    reading = read(text, zone="Europe/Lisbon", units="m")
    steps = {(b.time - a.time).total_seconds() for a, b in zip(reading.heights, reading.heights[1:])}
    assert (steps, reading.skipped, reading.warnings) == ({600.0}, (), ())


@pytest.mark.parametrize("missing", ["first", "second"])
def test_the_hour_that_stands_there_once_is_left_out_and_its_jump_named(missing: str) -> None:
    lines = lisbon("2027-10-30T20:00", "2027-10-31T06:00", "2027-10-31T01:00", 1, 0).split("\n")
    twice = [place for place, line in enumerate(lines) if line.startswith("2027-10-31 01:")]
    gone = twice[:6] if missing == "first" else twice[6:]
    kept = [line for place, line in enumerate(lines) if place not in gone]
    reading = read("\n".join(kept), zone="Europe/Lisbon", units="m")
    first = twice[0] + 1
    assert [one.row for one in reading.skipped] == list(range(first, first + 6))
    assert f"Rows {first} to {first + 5}: clocks go back" in reading.warnings[0]
    edge = first - 1 if missing == "first" else first + 5
    assert f"Between rows {edge} and {edge + 1} the height changes by" in reading.warnings[0]
    gap = max(b.time - a.time for a, b in zip(reading.heights, reading.heights[1:]))
    assert gap == timedelta(hours=2, minutes=10)


def test_a_series_in_a_clock_that_does_not_change_is_refused_for_a_zone_that_does() -> None:
    with pytest.raises(BadInputError, match=r"row \d+, field 'time'.*does not exist.*fixed offset"):
        read(lisbon("2027-03-27T20:00", "2027-03-28T06:00", "2027-03-28T01:00", 0, 0), zone="Europe/Lisbon", units="m")


def test_a_jump_in_a_series_is_named() -> None:
    lines = series_text("2027-06-15T00:00", "2027-06-16T00:00", 0.0).split("\n")
    lines[101] = lines[101].split(",")[0] + ",9.0"
    assert "The height jumps before row 102" in read("\n".join(lines), zone="UTC").warnings[0]


def test_a_missing_row_of_a_series_is_a_gap_that_is_named() -> None:
    text = series_text("2027-06-15T00:00", "2027-06-16T00:00", 0.0, skip=("2027-06-15 10:00",))
    assert read(text, zone="UTC").warnings == (
        "1 gap in the series, the first after row 101: the curve is unknown there.",
    )


# ---------------------------------------------------------------- constants


def test_constants_are_read_with_their_mean_level_and_headings() -> None:
    text = "No,Name,Amplitude (ft),Phase (GMT),Speed\n1,M2,2.0,210.5,28.984104\n2,LAM2,0.1,-10,29.455625\n3,Z0,3.0,,0\n"
    text += "4,X7,0,0,1.0\n5,S2,,12,30\n"
    reading = read(text)
    assert [(one.constituent, round(one.amplitude_m, 4), one.phase_deg) for one in reading.constants] == [
        ("M2", 0.6096, 210.5),
        ("LDA2", 0.0305, 350.0),
    ]
    assert reading.mean_level_m == pytest.approx(0.9144)
    assert [(one.row, one.reason) for one in reading.skipped] == [
        (1, "above the table"),
        (5, "not known, and of amplitude 0"),
        (6, "no amplitude or phase"),
    ]


def test_phases_of_a_local_clock_give_the_same_tide() -> None:
    """The same cosine at the same moments: its argument is reckoned from another midnight."""
    local = read("M2 1.0 40\nS2 0.5 100\nK1 0.3 300\nO1 0.2 10", zone="UTC-8", units="m")
    greenwich = read("M2 1.0 40\nS2 0.5 100\nK1 0.3 300\nO1 0.2 10", zone="UTC", units="m")
    start = datetime(2027, 6, 15, tzinfo=UTC)
    hours = np.arange(0.0, 50.0) * 3600.0

    def heights(reading: TideReading, shift_s: float) -> np.ndarray:
        tide = TidalSum(
            names=tuple(one.constituent for one in reading.constants),
            amplitudes=[one.amplitude_m for one in reading.constants],
            phases_deg=[one.phase_deg for one in reading.constants],
            start=start,
            corrected_on=start,
        )
        return tide.at(hours + shift_s)

    np.testing.assert_allclose(heights(local, 8.0 * 3600.0), heights(greenwich, 0.0), atol=1e-4)


@pytest.mark.parametrize(
    ("text", "asked", "said"),
    [
        ("M2 1.0 40\nS2 0.5 100", {"units": "m"}, "Greenwich and UTC or to a local clock"),
        ("M2 1.0 40\nS2 0.5 100", {"units": "m", "zone": "Europe/Lisbon"}, "fixed offset"),
        ("M2 1.0 40\nS2 0.5 100", {"zone": "UTC"}, "row 1.*metres or feet"),
        ("M2 1.0 40\nXQ2 0.5 100\nS2 .1 2", {"zone": "UTC", "units": "m"}, "row 2, field 'constituent': got 'XQ2'"),
        ("M2 1.0 40\nM2 0.5 100", {"zone": "UTC", "units": "m"}, "row 2.*Row 1 gives M2 too"),
        ("M2 1.0 400\nS2 0.5 100", {"zone": "UTC", "units": "m"}, "row 1, field 'phase'"),
        ("M2 -1.0 40\nS2 0.5 100", {"zone": "UTC", "units": "m"}, "row 1, field 'amplitude'"),
        ("M2 1.0 4.0\nS2 0.5 1.0", {"zone": "UTC", "units": "m"}, "which number is the amplitude"),
        ("A B C", {"form": "constants"}, "No column of it names constituents"),
    ],
)
def test_constants_that_leave_a_choice_are_refused(text: str, asked: dict[str, str], said: str) -> None:
    with pytest.raises(BadInputError, match=said):
        read(text, **asked)


# ---------------------------------------------------------------- secondary ports


def test_differences_are_read_from_rows_and_from_lines() -> None:
    wide = read(
        "Port,Reference port,HW springs min,HW neaps min,LW minutes,MHWS (m),MHWN (m),LW height (m)\n"
        "Cove,Kettle,+0020,-0:15,5 min,-0.4,,0.1\n"
    )
    wanted = {
        "port": "Cove",
        "reference_port": "Kettle",
        "hw_minutes_springs": 20.0,
        "hw_minutes_neaps": -15.0,
        "lw_minutes_springs": 5.0,
        "lw_minutes_neaps": 5.0,
        "hw_height_springs_m": -0.4,
        "lw_height_springs_m": 0.1,
        "lw_height_neaps_m": 0.1,
    }
    assert (wide.form, wide.secondary) == ("secondary", (wanted,))
    lines = "reference port; Kettle\nport; Cove\nhw minutes springs; 20\nhw minutes neaps; -15\nlw minutes; 5\n"
    lines += "mhws; -0.4\nlw height; 0.1\n"
    assert read(lines, units="m").secondary == (wanted,)


@pytest.mark.parametrize(
    ("cells", "said"),
    [
        ("Cove,1:75,0,0,0", "row 2, field 'hw_minutes_springs': got '1:75'"),
        ("Cove,0020,0,0,0", "row 2, field 'hw_minutes_springs': got '0020'"),
        ("Cove,2000,0,0,0", "row 2, field 'hw_minutes_springs': got '2000'"),
        ("Cove,5,x,0,0", "row 2, field 'lw_minutes_springs': got 'x'"),
        ("Cove,5,5,x,0", "row 2, field 'hw_height_springs_m': got 'x'"),
        ("Cove,5,5,40,0", "row 2, field 'hw_height_springs_m': got '40'"),
        ("Cove,,,,", "row 2.*no difference"),
    ],
)
def test_differences_that_cannot_be_read_are_refused(cells: str, said: str) -> None:
    with pytest.raises(BadInputError, match=said):
        read("port,hw_minutes,lw_minutes,hw_height_m,lw_height_m\n" + cells)


def test_differences_without_a_unit_are_refused() -> None:
    with pytest.raises(BadInputError, match="UNITS"):
        read("port,hw minutes,lw minutes,hw height,lw height\nCove,5,5,0.1,0.1")


# ---------------------------------------------------------------- and back


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        (SAME_DAY["feet in the cells"][0], {"zone": "America/Los_Angeles"}),
        (series_text("2027-06-15T00:00", "2027-06-16T00:00", 0.0), {"zone": "Europe/Lisbon"}),
        ("M2 1.0 40\nZ0 1.1 0\nLAM2 0.0123 359.99", {"zone": "UTC-8", "units": "ft"}),
        ("port,reference,hw min,lw min,hw height (ft),lw height (ft)\nCove,Kettle,5,-0:12,0.1,-0.3", {}),
    ],
)
def test_csv_of_what_was_read_reads_back_the_same(text: str, asked: dict[str, str]) -> None:
    first = read(text, **asked)
    again = read(csv_of(first))
    assert again.form == first.form
    assert [(row.time, row.is_high) for row in again.heights] == [(row.time, row.is_high) for row in first.heights]
    assert [row.height_m for row in again.heights] == pytest.approx([row.height_m for row in first.heights], abs=1e-9)
    assert [one.constituent for one in again.constants] == [one.constituent for one in first.constants]
    for name in ("amplitude_m", "phase_deg"):
        pairs = zip(again.constants, first.constants)
        assert all(getattr(a, name) == pytest.approx(getattr(b, name), abs=1e-9) for a, b in pairs)
    assert again.mean_level_m == pytest.approx(first.mean_level_m)
    assert [list(one) for one in again.secondary] == [list(one) for one in first.secondary]
    for a, b in zip(again.secondary, first.secondary):
        assert {k: v for k, v in a.items() if k.startswith("hw")} == pytest.approx(
            {k: v for k, v in b.items() if k.startswith("hw")}
        )
    assert again.count == first.count > 0


def test_a_tide_of_one_high_water_a_day_needs_letters() -> None:
    text = "2027-06-15 02:10 0.3{}\n2027-06-15 14:30 1.1{}\n2027-06-16 02:50 0.4{}\n2027-06-16 15:20 1.2{}"
    lettered = read(text.format(" L", " H", " L", " H"), zone="UTC", units="m")
    assert [row[2] for row in rows(lettered)] == [False, True, False, True]
    with pytest.raises(BadInputError, match="row 1, field 'kind'.*Write H or L in each row"):
        read(text.format("", "", "", ""), zone="UTC", units="m")
