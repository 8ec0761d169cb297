"""Tables of tides that leave a doubt which hurts: units, high or low, minus signs; read plainly, or refused by row."""

from __future__ import annotations

import pytest
from tideleg.core.errors import BadInputError
from tideleg.core.water.tide_reading import TideReading, TidesAsked
from tideleg.core.water.tide_text import read_tides

HIGH_ALONE = ("2027-06-04 19:10 3.9", "2027-06-05 07:35 4.1", "2027-06-05 20:00 4.0", "2027-06-06 08:25 4.2")


def read(text: str, **asked: str) -> TideReading:
    return read_tides(text, TidesAsked(**{"zone": "UTC", **asked}))


def heights(reading: TideReading) -> list[float]:
    return [round(row.height_m, 4) for row in reading.heights]


def kinds(reading: TideReading) -> list[bool | None]:
    return [row.is_high for row in reading.heights]


def waters(heading: str, *cells: str) -> str:
    return f"Date,Time,{heading},Type\n2027-06-15,02:10,{cells[0]},L\n2027-06-15,08:22,{cells[1]},H\n"


class TestUnits:
    @pytest.mark.parametrize(
        ("heading", "cells"),
        [
            ("Height (cm)", ("70", "390")),
            ("Height dm", ("7", "39")),
            ("Height [mm]", ("700", "3900")),
            ("Height in metres", ("0.7", "3.9")),
            ("Height (centimetres)", ("70", "390")),
        ],
    )
    def test_the_heading_says_the_unit(self, heading: str, cells: tuple[str, str]) -> None:
        assert heights(read(waters(heading, *cells))) == [0.7, 3.9]

    @pytest.mark.parametrize(("heading", "unit"), [("Height (cm)", "cm"), ("Height dm", "dm"), ("Height (ft)", "ft")])
    def test_units_against_the_heading_are_refused(self, heading: str, unit: str) -> None:
        with pytest.raises(BadInputError, match=rf"row 2, field 'height'.*says {unit}, UNITS says m"):
            read(waters(heading, "7", "9"), units="m")

    def test_a_cell_against_its_heading_is_refused(self) -> None:
        with pytest.raises(BadInputError, match=r"row 3.*'12.8ft'.*heading 'Height \(m\)' says m, the cell says ft"):
            read(waters("Height (m)", "0.7", "12.8 ft"))

    @pytest.mark.parametrize(
        "heading", ["Height (fathoms)", "Height (in)", "Height (0.1 m)", "Height, tenths", "Height (x10)"]
    )
    def test_a_unit_that_is_not_read_is_refused_though_units_says_metres(self, heading: str) -> None:
        with pytest.raises(BadInputError, match="row 2.*and heights are read in ft, m, dm, cm, mm"):
            read(waters(f'"{heading}"', "0.7", "3.9"), units="m")

    def test_a_title_against_units_is_refused(self) -> None:
        rows = "2027-06-15 02:10 0.7 L\n2027-06-15 08:22 3.9 H\n"
        with pytest.raises(BadInputError, match="row 1.*It says ft, and UNITS says m"):
            read("Heights in feet\n" + rows, units="m")
        assert heights(read("Heights in metres\n" + rows, units="m")) == [0.7, 3.9]
        assert heights(read("Tower, 30 feet from the pier\n" + rows, units="m")) == [0.7, 3.9]

    def test_constants_in_centimetres(self) -> None:
        text = "Constituent,Amplitude (cm),Phase (GMT)\nM2,120,100\nS2,40,140\nK1,10,20\n"
        assert [one.amplitude_m for one in read(text).constants] == pytest.approx([1.2, 0.4, 0.1])
        with pytest.raises(BadInputError, match="says cm, UNITS says m"):
            read(text, units="m")


class TestKinds:
    def test_high_waters_alone_are_not_taken_for_high_and_low(self) -> None:
        with pytest.raises(BadInputError, match="row 1.*12.4 h apart.*Write H or L in each row"):
            read("\n".join(HIGH_ALONE), units="m")

    def test_with_letters_they_are_read(self) -> None:
        assert kinds(read("\n".join(f"{row} H" for row in HIGH_ALONE), units="m")) == [True] * 4

    @pytest.mark.parametrize("height", ["3.85", "3.9"])
    def test_heights_that_hardly_differ_tell_nothing(self, height: str) -> None:
        text = f"2027-06-15 02:10 0.7\n2027-06-15 08:22 3.9\n2027-06-15 14:30 {height}\n2027-06-15 20:45 4.0\n"
        with pytest.raises(BadInputError, match="row 3, field 'kind'.*differs from row 2.*Write H or L"):
            read(text, units="m")

    def test_the_preview_says_how_they_were_told(self) -> None:
        reading = read("2027-06-15 02:10 0.7\n2027-06-15 08:22 3.9\n2027-06-15 14:30 0.8", units="m")
        assert kinds(reading) == [False, True, False]
        assert "none says high or low" in reading.preview()["taken"]["kinds"]
        assert "by 3.10 m or more" in reading.preview()["taken"]["kinds"]


class TestFirstRow:
    @pytest.mark.parametrize("minus", ["-", "\u2212", "\u2013"])
    @pytest.mark.parametrize("heading", ["", "Date Time Height Type\n"])
    def test_any_minus_is_read(self, minus: str, heading: str) -> None:
        text = f"{heading}2027-06-15 02:10 {minus}0.3 L\n2027-06-15 08:22 3.9 H\n2027-06-15 14:30 {minus}0.1 L"
        reading = read(text, units="m")
        assert heights(reading) == [-0.3, 3.9, -0.1]
        assert not [one for one in reading.skipped if one.row > bool(heading)]

    @pytest.mark.parametrize("cell", ["0.3-", "(0.3)", "?"])
    @pytest.mark.parametrize("separator", [" ", ","])
    @pytest.mark.parametrize("heading", ["", "Date{}Time{}Height (m){}Type\n"])
    def test_one_with_a_height_that_cannot_be_read_is_refused(self, cell: str, separator: str, heading: str) -> None:
        rows = [
            ("2027-06-15", "02:10", cell, "L"),
            ("2027-06-15", "08:22", "3.9", "H"),
            ("2027-06-15", "14:30", "0.1", "L"),
        ]
        heading = heading.format(*[separator] * 3) if separator == "," else ""
        text = heading + "\n".join(separator.join(row) for row in rows)
        with pytest.raises(BadInputError, match="That is no height") as caught:
            read(text, units="m")
        assert caught.value.row == 1 + bool(heading)

    def test_a_title_with_dates_is_still_a_title(self) -> None:
        title = "Tides from 2027-06-15 00:00 to 2027-06-16 00:00\n"
        text = title + "2027-06-15 02:10 0.7 L\n2027-06-15 08:22 3.9 H\n2027-06-15 14:30 0.8 L\n"
        assert heights(read(text, units="m")) == [0.7, 3.9, 0.8]
