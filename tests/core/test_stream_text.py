"""Stream tables as text: what each form gives, and what is refused by its row."""

from __future__ import annotations

from datetime import datetime, timezone
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tideleg.core.errors import BadInputError, SwimPlanError
from tideleg.core.text_moments import offset_zone
from tideleg.core.water.stream_asked import StreamAsked, StreamReading
from tideleg.core.water.stream_cells import coordinate_in, direction_in, hour_in, number_in
from tideleg.core.water.stream_text import FORMS, read_streams

LISBON = ZoneInfo("Europe/Lisbon")
# IHO S-57, Edition 3.1, Appendix A, Chapter 2, attribute TS_TSP: the printed example.
DARWIN = (
    "63230,Darwin,HW,124,2.2,128,2.1,125,2.9,116,2.8,110,2.0,095,0.6,"
    "020,0.2,320,1.9,315,2.1,300,2.8,268,2.6,200,2.4,165,2.5"
)


def one(text: str, **asked) -> StreamReading:
    (reading,) = read_streams(text, StreamAsked(**{"station": "A", **asked}))
    return reading


def values(text: str, field: str, **asked) -> list:
    return [row.values[field] for row in one(text, **asked).rows]


def at(*clock: int) -> datetime:
    return datetime(*clock, tzinfo=timezone.utc)


class TestCells:
    @pytest.mark.parametrize(
        ("text", "value"), [("1.5", 1.5), ("1,5", 1.5), ("\u22121.5", -1.5), (".5", 0.5), ("3", 3)]
    )
    def test_numbers(self, text: str, value: float) -> None:
        assert number_in(text, -15.0, 15.0) == value

    @pytest.mark.parametrize("text", ["1.5.2", "1,5,2", "1e1", "inf", "16", "--1", "\u0661", "1 5", "kn"])
    def test_what_is_no_number_in_range_is_refused(self, text: str) -> None:
        with pytest.raises(ValueError, match="from -15 to 15"):
            number_in(text, -15.0, 15.0)

    @pytest.mark.parametrize(
        ("text", "value"), [("095", 95), ("95\u00b0", 95), ("95T", 95), ("NE", 45), ("wnw", 292.5)]
    )
    def test_directions(self, text: str, value: float) -> None:
        assert direction_in(text) == value

    @pytest.mark.parametrize("text", ["095M", "95 mag", "361", "-5", "north by east"])
    def test_magnetic_and_other_directions_are_refused(self, text: str) -> None:
        with pytest.raises(ValueError, match="true direction"):
            direction_in(text)

    @pytest.mark.parametrize(
        ("text", "value"),
        [
            ("-6", (-6, "")),
            ("+3h", (3, "")),
            ("HW", (0, "HW")),
            ("HW+2", (2, "HW")),
            ("lw - 4", (-4, "LW")),
            ("3 before", (-3, "")),
            ("2h after LW", (2, "LW")),
            ("\u22125", (-5, "")),
        ],
    )
    def test_hours(self, text: str, value: tuple[int, str]) -> None:
        assert hour_in(text) == value

    @pytest.mark.parametrize("text", ["7", "-7", "1.5", "", "h", "12:30", "HW+7", "before"])
    def test_what_is_no_whole_hour_of_the_table_is_refused(self, text: str) -> None:
        with pytest.raises(ValueError, match="-6 to 6"):
            hour_in(text)

    @pytest.mark.parametrize(
        ("text", "value"), [("-28.5", -28.5), ("28.5 W", -28.5), ("28 30 W", -28.5), ("28\u00b030.6'E", 28.51)]
    )
    def test_places(self, text: str, value: float) -> None:
        assert coordinate_in(text, 180.0, "EW") == pytest.approx(value)

    @pytest.mark.parametrize("text", ["28 30", "181", "-28.5 W", "28 61 W", "28.5 N", "W", "1 2 3 W"])
    def test_doubtful_places_are_refused(self, text: str) -> None:
        with pytest.raises(ValueError, match="degrees"):
            coordinate_in(text, 180.0, "EW")


HOURLY = "hour;set;spring (kn);neap (kn)\nHW-6;124;2,2;1,1\n-5;;0;0\n-4;130;1,5;\n-3;140;-;-\n"


class TestHourly:
    def test_rows_blanks_and_decimal_comma(self) -> None:
        reading = one(HOURLY)
        assert reading.form == "hourly"
        assert [tuple(row.values.values()) for row in reading.rows] == [
            ("A", -6, 124.0, 2.2, 1.1),
            ("A", -5, 0.0, 0.0, 0.0),
            ("A", -4, 130.0, 1.5, None),
        ]
        assert reading.skipped == ((5, "no rate: the hour is unknown, not slack"),)
        assert reading.station["reference"] == "HW"
        assert {word["column"]: word["taken_for"] for word in reading.columns}["neap (kn)"] == "neap"

    def test_hours_from_low_water(self) -> None:
        assert one(HOURLY.replace("HW-6", "LW-6")).station["reference"] == "LW"
        assert one(HOURLY.replace("HW-6", "-6"), reference="LW").station["reference"] == "LW"

    def test_reference_that_nothing_says_or_two_things_say_is_refused(self) -> None:
        with pytest.raises(SwimPlanError, match="from which tide"):
            one(HOURLY.replace("HW-6", "-6"))
        with pytest.raises(BadInputError, match="row 2.*LW"):
            one(HOURLY, reference="LW")

    def test_metres_a_second_become_knots(self) -> None:
        assert values(HOURLY.replace("kn", "m/s"), "spring_kn")[0] == pytest.approx(2.2 * 3600 / 1852, abs=1e-6)

    def test_unit_that_nothing_says_or_two_things_say_is_refused(self) -> None:
        bare = HOURLY.replace(" (kn)", "")
        with pytest.raises(BadInputError, match="UNITS"):
            one(bare)
        assert values(bare, "spring_kn", unit="kn")[0] == 2.2
        with pytest.raises(BadInputError, match="m/s was asked for"):
            one(HOURLY, unit="m/s")
        with pytest.raises(BadInputError, match="two units"):
            one(HOURLY.replace("neap (kn)", "neap (m/s)"))

    @pytest.mark.parametrize(
        ("line", "field"),
        [
            ("7;124;2;1", "hour"),
            ("-6;361;2;1", "set"),
            ("-6;124;16;1", "spring"),
            ("-6;124;-1;1", "spring"),
            ("-6;;2;1", "set"),
            (";124;2;1", "hour"),
            ("-6;124;2;fast", "neap"),
            ("-6;124M;2;1", "set"),
        ],
    )
    def test_bad_cell_is_named_by_row_and_column(self, line: str, field: str) -> None:
        with pytest.raises(BadInputError) as caught:
            one(f"hour;set;spring (kn);neap (kn)\nHW+1;90;1;1\n{line}\n")
        assert caught.value.row == 3
        assert caught.value.field.startswith(field)

    def test_hour_twice_and_a_cell_too_many_are_refused(self) -> None:
        with pytest.raises(BadInputError, match="Row 2 has that hour"):
            one(HOURLY + "-6;124;2;1\n")
        with pytest.raises(BadInputError, match="row 3.*4 cells"):
            one("hour,set,spring kn,neap kn\nHW,90,1.0,0.5\n1,90,1,0,0,5\n")

    def test_rates_at_coefficients(self) -> None:
        reading = one("hour,set,rate at 45 (kn),rate at 95 (kn)\nHW,90,0.8,1.6\n")
        assert (reading.form, reading.station["form"]) == ("coefficients", "coefficients")
        assert (reading.rows[0].values["spring_kn"], reading.rows[0].values["neap_kn"]) == (1.6, 0.8)

    def test_rows_without_headings_are_taken_by_their_places_and_said_so(self) -> None:
        reading = one("HW-6 124 2.2 1.1\nHW-5 130 1.9 1.0\n", unit="kn")
        assert [word["taken_for"] for word in reading.columns] == ["hour", "set", "spring", "neap"]
        assert reading.rows[1].values["neap_kn"] == 1.0

    def test_columns_that_could_be_anything_are_refused(self) -> None:
        with pytest.raises(BadInputError, match="names the columns"):
            one("124 2.2\n130 1.9\n", unit="kn")

    def test_station_that_nothing_names_is_refused(self) -> None:
        with pytest.raises(SwimPlanError, match="STATION"):
            one(HOURLY, station="")


EVENTS = (
    "Date Time, Event, Speed (knots)\n2027-06-05 9:40 AM, slack, -\n2027-06-05 12:40 PM, flood, 1.9\n"
    "2027-06-05 4:02 PM, slack,-\n2027-06-05 07:02 PM,ebb,1.1\n"
)


class TestEvents:
    def test_words_for_flood_and_ebb_give_the_sign(self) -> None:
        reading = one(EVENTS, zone=LISBON)
        assert [row.values["kind"] for row in reading.rows] == ["slack", "max", "slack", "max"]
        assert [row.values["rate_kn"] for row in reading.rows] == [0.0, 1.9, 0.0, -1.1]

    def test_am_and_pm_in_the_zone_of_the_table(self) -> None:
        assert values(EVENTS, "time", zone=LISBON)[:2] == [at(2027, 6, 5, 8, 40), at(2027, 6, 5, 11, 40)]

    def test_signed_rates_and_letters_behind_them(self) -> None:
        text = (
            "time,rate_kn\n2027-06-05T09:40Z,0\n2027-06-05T12:40Z,1.9\n2027-06-05T19:00Z,-1.1\n2027-06-05T23:40Z,2.0F\n"
        )
        assert values(text, "rate_kn") == [0.0, 1.9, -1.1, 2.0]
        assert values(text.replace("-1.1", "1.1E"), "rate_kn")[2] == -1.1

    def test_maximum_without_rate_stays_unknown(self) -> None:
        assert values("time,kind,rate_kn\n2027-06-05T09:40Z,max,\n", "rate_kn") == [None]

    @pytest.mark.parametrize(
        ("row", "why"),
        [
            ("2027-06-05T12:40Z,slack,1.2", "A slack has no rate"),
            ("2027-06-05T12:40Z,flood,-1.2", "positive"),
            ("2027-06-05T12:40Z,weak,0.2", "slack, max, flood or ebb"),
            ("2027-06-05T12:40Z,,", "has a rate"),
            ("2027-06-05,slack,0", "date and a clock time"),
            ("2027-13-05T12:40Z,slack,0", "date"),
            ("2027-06-05T25:40Z,slack,0", "date and a clock time"),
            ("2027-06-05T12:40,slack,0", "no zone"),
        ],
    )
    def test_contradictions_and_bad_times_are_refused_by_row(self, row: str, why: str) -> None:
        with pytest.raises(BadInputError, match=f"row 3.*{why}"):
            one(f"time,kind,rate_kn\n2027-06-05T09:40Z,slack,0\n{row}\n")

    def test_hour_that_comes_twice_is_refused_where_it_stands_once(self) -> None:
        text = "time,kind,rate_kn\n2027-10-30 20:10,slack,0\n2027-10-31 01:20,max,1.2\n"
        with pytest.raises(BadInputError, match="row 3.*2027-10-31 01:20.*comes twice"):
            one(text, zone=LISBON)

    def test_hour_that_does_not_exist_is_refused(self) -> None:
        with pytest.raises(BadInputError, match="row 2.*2027-03-28 01:20.*jump"):
            one("time,kind,rate_kn\n2027-03-28 01:20,slack,0\n", zone=LISBON)

    def test_zone_of_the_heading_counts_and_may_not_contradict(self) -> None:
        text = "time (UTC),kind,rate_kn\n2027-06-05 09:40,slack,0\n"
        assert values(text, "time") == [at(2027, 6, 5, 9, 40)]
        with pytest.raises(BadInputError, match=r"'time \(UTC\)' says UTC.*\+01:00"):
            one(text, zone=LISBON)
        winter = text.replace("2027-06", "2027-01")
        assert values(winter, "time", zone=LISBON) == [at(2027, 1, 5, 9, 40)]

    def test_label_that_cannot_be_true_in_the_zone_is_refused(self) -> None:
        new_york = ZoneInfo("America/New_York")
        for label, month, said in (("EST", "07", "-05:00"), ("LST", "07", "-05:00"), ("EDT", "01", "-04:00")):
            heading = f"time ({label}),kind,rate_kn\n2027-{month}-05 09:40,slack,0\n"
            comment = f"# all times are {label}\ntime,kind,rate_kn\n2027-{month}-05 09:40,slack,0\n"
            for text, row in ((heading, "row 2"), (comment, "row 3")):
                with pytest.raises(BadInputError, match=f"{row}.*{label}.*has E.T .*fixed offset {said}"):
                    one(text, zone=new_york)
                assert values(text, "time", zone=offset_zone(said))[0].month == int(month)
                with pytest.raises(BadInputError, match=f"{label}.*names no one zone"):
                    one(text)
        assert one(heading.replace("-01-", "-07-"), zone=new_york).clock == (
            "America/New_York, as given; the heading 'time (EDT)' says EDT"
        )

    def test_comment_above_all_stations_speaks_of_each(self) -> None:
        table = "time,kind,rate_kn\n2027-06-05 09:40,slack,0\n"
        text = f"# Times in UTC\n# station: A\n{table}# station: B\n{table}"
        for reading in read_streams(text, StreamAsked()):
            assert reading.rows[0].values["time"] == at(2027, 6, 5, 9, 40)
            assert reading.clock == "UTC, by row 1, 'Times in UTC'"
        with pytest.raises(BadInputError, match="row 4.*'Times in UTC'"):
            read_streams(text, StreamAsked(zone=LISBON))

    def test_zone_given_against_the_zone_in_the_text_is_refused(self) -> None:
        text = "# station: A\n# zone: Europe/Lisbon\ntime,kind,rate_kn\n2027-06-05 09:40,slack,0\n"
        assert read_streams(text, StreamAsked())[0].rows[0].values["time"] == at(2027, 6, 5, 8, 40)
        with pytest.raises(BadInputError, match="zone: Europe/Lisbon.*UTC has UTC"):
            read_streams(text, StreamAsked(zone=timezone.utc))

    def test_order_of_day_and_month_is_told_by_the_rows_or_asked_for(self) -> None:
        text = "time,kind,rate_kn\n06/05/2027 09:40,slack,0\n{}06/2027 12:40,max,1\n"
        assert values(text.format("13/"), "time", zone=timezone.utc)[0] == at(2027, 5, 6, 9, 40)
        with pytest.raises(BadInputError, match="DATE_ORDER"):
            one(text.format("12/"), zone=timezone.utc)
        ordered = one(text.format("12/"), zone=timezone.utc, date_order="mdy")
        assert ordered.rows[0].values["time"] == at(2027, 6, 5, 9, 40)


class TestOtherForms:
    def test_series_keeps_its_blanks_as_rows(self) -> None:
        text = "date,time (UTC),set,rate_kn\n2027-06-05,09:40,90,1.2\n2027-06-05,10:40,,\n"
        reading = one(text)
        assert reading.station["form"] == "series"
        assert [row.values["rate_kn"] for row in reading.rows] == [1.2, None]

    def test_series_over_the_night_of_the_change_leaves_out_the_doubtful_hour(self) -> None:
        text = "time,set,rate_kn\n" + "".join(f"2027-10-31 0{hour}:30,90,1\n" for hour in range(4))
        reading = one(text, zone=LISBON)
        assert [row.line for row in reading.rows] == [2, 4, 5]
        assert reading.skipped[0][0] == 3 and "comes twice" in reading.skipped[0][1]

    def test_series_with_the_hour_twice_is_read_right(self) -> None:
        hours = ("00:30", "01:00", "01:30", "01:00", "01:30", "02:00")
        text = "time,set,rate_kn\n" + "".join(f"2027-10-31 {hour},90,1\n" for hour in hours)
        times = values(text, "time", zone=LISBON)
        assert [(later - times[0]).total_seconds() / 60 for later in times] == [0, 30, 60, 90, 120, 150]

    def test_constants(self) -> None:
        text = (
            "constituent u_amplitude_m_s u_phase_deg v_amplitude_m_s v_phase_deg\nM2 .5 30 .2 -60\nZ0 -0.1 0 0.02 0\n"
        )
        rows = one(text).rows
        assert rows[0].values == {
            "station": "A",
            "constituent": "M2",
            "u_amplitude_m_s": 0.5,
            "u_phase_deg": 30.0,
            "v_amplitude_m_s": 0.2,
            "v_phase_deg": 300.0,
        }
        assert rows[1].values["u_amplitude_m_s"] == -0.1

    @pytest.mark.parametrize("row", ["XX9 .5 30 .2 -60", "M2 .5 30 .2 n/a", "M2 .5 400 .2 0"])
    def test_bad_constant_is_refused_by_row(self, row: str) -> None:
        with pytest.raises(BadInputError, match="row 2"):
            one(f"constituent u_amplitude_m_s u_phase_deg v_amplitude_m_s v_phase_deg\n{row}\n")

    def test_constituent_twice_under_another_spelling_is_refused(self) -> None:
        text = "constituent,u amp (m/s),u phase,v amp (m/s),v phase\nM2,1,0,1,0\nm2,1,0,1,0\n"
        with pytest.raises(BadInputError, match="Row 2 has that constituent"):
            one(text)

    def test_drift_with_minutes_or_an_end(self) -> None:
        head, place = "time,lon,lat,{},end_lon,end_lat\n", "2027-06-05T09:40Z,28 30.7 W,42 24.1N,{},28 30.5W,42 24.1N\n"
        for column, cell in (("minutes", "20"), ("end time", "2027-06-05T10:00Z")):
            row = one(head.format(column) + place.format(cell)).rows[0].values
            assert row["end_time"] == at(2027, 6, 5, 10, 0)
            assert row["end_lon"] == pytest.approx(-28.508333, abs=1e-6)

    def test_absurd_drift_is_refused_by_row(self) -> None:
        text = "time,lon,lat,minutes,end_lon,end_lat\n2027-06-05T09:40Z,-28.5,42,20,-27.5,42\n"
        with pytest.raises(BadInputError, match="row 2.*kn"):
            one(text)

    def test_winds_and_coefficients(self) -> None:
        wind = one("time,wind from,wind speed (m/s)\n2027-06-05T09:40Z,SW,7\n2027-06-05T12:40Z,,0\n", station="").rows
        assert wind[0].values["speed_kn"] == pytest.approx(7 * 3600 / 1852, abs=1e-6)
        assert (wind[0].values["from_deg"], wind[1].values["from_deg"]) == (225.0, None)
        text = "time\tcoef\n2027-06-05T09:40Z\t87\n2027-06-05T22:00Z\t\n"
        reading = one(text, station="", port="P")
        assert [row.values["coefficient"] for row in reading.rows] == [87.0]
        assert reading.skipped == ((3, "no coefficient"),)


class TestChartTexts:
    def test_ts_tsp_with_a_blank_last_pair(self) -> None:
        reading = one(DARWIN.removesuffix("165,2.5") + ",", station="")
        assert (reading.form, reading.station["station"], reading.station["reference"]) == ("ts_tsp", "Darwin", "HW")
        assert [row.values["hour"] for row in reading.rows] == list(range(-6, 6))
        assert reading.skipped == ((1, "hour +6 blank: unknown, not slack"),)

    def test_several_panels_are_several_stations(self) -> None:
        other = DARWIN.replace("63230,Darwin", "63231,Other")
        names = [part.station["station"] for part in read_streams(f"{DARWIN}\n{other}\n", StreamAsked())]
        assert names == ["Darwin", "Other"]

    def test_bad_panel_is_refused_by_its_line(self) -> None:
        with pytest.raises(BadInputError, match="row 2.*value 4"):
            read_streams(DARWIN + "\n" + DARWIN.replace("124", "999"), StreamAsked())

    def test_ts_tsv_needs_start_and_step(self) -> None:
        # IHO S-57, Edition 3.1, Appendix A, Chapter 2, attribute TS_TSV: the printed example.
        text = "135,1.5,156,1.9,301,1.1,342,0.9"
        reading = one(text, form="ts_tsv", start=at(2027, 6, 5, 9), step_min=60.0)
        assert [row.values["time"].hour for row in reading.rows] == [9, 10, 11, 12]
        assert [row.values["set_deg"] for row in reading.rows] == [135, 156, 301, 342]
        with pytest.raises(SwimPlanError, match="START"):
            one(text, form="ts_tsv")


class TestBlocks:
    TEXT = (
        "# station: One\n# lon: -28.5\n# lat: 42.4\n# port: P\nhour,set,spring kn\nHW,90,1.5\n"
        "\n# station: Two\n# form: slack_offset\n# slack_offset_min: 90\n# spring_kn: 1.2\n"
    )

    def test_each_station_has_its_own_part_and_numbers_stay_those_of_the_text(self) -> None:
        first, second = read_streams(self.TEXT, StreamAsked())
        assert (first.station["port"], first.rows[0].line) == ("P", 6)
        assert (second.station["station"], second.station["slack_offset_min"], second.rows) == ("Two", "90", ())

    def test_another_station_asked_for_contradicts(self) -> None:
        with pytest.raises(BadInputError, match="'One'.*Three"):
            read_streams(self.TEXT, StreamAsked(station="Three"))

    def test_nothing_is_refused(self) -> None:
        for text in ("", "\n \n", "# a remark without more\n"):
            with pytest.raises(BadInputError, match="nothing in it"):
                read_streams(text, StreamAsked())


def read_or_refused(text: str, **asked) -> None:
    """Whatever the text: rows within the plan's limits, or a refusal that says something."""
    try:
        readings = read_streams(text, StreamAsked(**{"station": "A", "unit": "", **asked}))
    except SwimPlanError as error:
        assert len(str(error)) > 20
        return
    lines = len(text.splitlines())
    for reading in readings:
        for row in reading.rows:
            assert 1 <= row.line <= lines
            assert abs(row.values.get("rate_kn") or 0.0) <= 15.0
            assert 0.0 <= (row.values.get("set_deg") or 0.0) <= 360.0
            assert -6 <= row.values.get("hour", 0) <= 6
            if "time" in row.values:
                assert row.values["time"].tzinfo is not None


CELLS = st.one_of(
    st.sampled_from(
        ["-6", "HW+3", "7", "095", "361", "1,5", "1.5", "slack", "ebb", "flood", "2.0F", "-", "", "M2", "kn", "NE"]
    ),
    st.sampled_from(
        ["2027-06-05 09:40", "5 Jun 2027 9:40 pm", "06/05/2027 12:00", "31.02.2027 09:00", "2027-10-31 01:30", "0940"]
    ),
    st.floats(allow_nan=True).map(str),
    st.text(max_size=8),
)
HEADS = st.sampled_from(
    [
        "hour{}set{}spring kn{}neap kn",
        "time{}kind{}rate kn{}note",
        "date{}time (UTC){}set{}rate m/s",
        "time{}set{}rate{}note",
        "constituent{}u amp (m/s){}u phase{}v amp (m/s)",
        "time{}lon{}lat{}minutes",
        "time{}wind from{}wind speed kn{}x",
        "{}{}{}",
    ]
)


@settings(derandomize=True, max_examples=400, deadline=None)
@given(
    head=HEADS,
    separator=st.sampled_from([",", ";", "\t", " ", "|"]),
    rows=st.lists(st.lists(CELLS, min_size=1, max_size=6), max_size=6),
    form=st.sampled_from(FORMS),
    zone=st.sampled_from([None, LISBON, timezone.utc]),
)
def test_any_table_is_read_or_refused(head, separator, rows, form, zone) -> None:
    lines = [head.format(*[separator] * 3), *(separator.join(cells) for cells in rows)]
    read_or_refused("\n".join(lines), form=form, zone=zone, reference="HW", start=at(2027, 6, 5), step_min=60.0)


@settings(derandomize=True, max_examples=400, deadline=None)
@given(text=st.text(max_size=200), form=st.sampled_from(FORMS))
def test_any_text_is_read_or_refused(text: str, form: str) -> None:
    read_or_refused(text, form=form, zone=timezone.utc, reference="HW", unit="kn", start=at(2027, 6, 5), step_min=60.0)


@settings(derandomize=True, max_examples=300, deadline=None)
@given(cells=st.lists(CELLS, min_size=20, max_size=30))
def test_any_panel_is_read_or_refused(cells: list[str]) -> None:
    read_or_refused("1,P,HW," + ",".join(cells))
    read_or_refused(",".join(cells), form="ts_tsv", start=at(2027, 6, 5), step_min=60.0)


@settings(derandomize=True, max_examples=150, deadline=None)
@given(row=st.integers(0, 4), column=st.integers(0, 3), rubbish=st.sampled_from(["x", "99999", "1.2.3", "0x1", "1e3"]))
def test_one_spoilt_cell_is_refused_by_its_row(row: int, column: int, rubbish: str) -> None:
    cells = [[f"{hour}", "90", "1.0", "0.5"] for hour in range(-2, 3)]
    cells[row][column] = rubbish
    text = "hour,set,spring kn,neap kn\n" + "\n".join(",".join(line) for line in cells)
    with pytest.raises(BadInputError) as caught:
        one(text, reference="HW")
    assert caught.value.row == row + 2
