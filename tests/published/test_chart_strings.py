"""The three comma separated texts of electronic charts, against the examples printed in their standard."""

from datetime import datetime, timezone
from math import isnan

import pytest
from tideleg.core.errors import NaiveTimeError, SwimPlanError
from tideleg.core.water.chart_strings import parse_t_hwlw, parse_ts_tsp, parse_ts_tsv, tide_kinds

# IHO Transfer Standard for Digital Hydrographic Data S-57, Edition 3.1, Appendix A (object catalogue), Chapter 2
# (attributes): the example of each attribute's page. Values are printed whole, so they are met exactly.
TS_TSP_EXAMPLE = (
    "63230,Darwin,HW,124,2.2,128,2.1,125,2.9,116,2.8,110,2.0,095,0.6,"
    "020,0.2,320,1.9,315,2.1,300,2.8,268,2.6,200,2.4,165,2.5"
)
TS_TSV_EXAMPLE = "135,1.5,156,1.9,301,1.1,342,0.9"
T_HWLW_EXAMPLE = "19950428T1020,1.2,19950428T1455,4.8"


def test_printed_stream_panel():
    panel = parse_ts_tsp(TS_TSP_EXAMPLE)
    assert (panel.station_id, panel.name, panel.reference) == ("63230", "Darwin", "HW")
    assert panel.pairs == (
        (124.0, 2.2), (128.0, 2.1), (125.0, 2.9), (116.0, 2.8), (110.0, 2.0), (95.0, 0.6), (20.0, 0.2),
        (320.0, 1.9), (315.0, 2.1), (300.0, 2.8), (268.0, 2.6), (200.0, 2.4), (165.0, 2.5),
    )  # fmt: skip
    assert panel.missing_hours == ()


def test_printed_time_series():
    assert parse_ts_tsv(TS_TSV_EXAMPLE) == ((135.0, 1.5), (156.0, 1.9), (301.0, 1.1), (342.0, 0.9))


def test_printed_high_and_low_water():
    tides = parse_t_hwlw(T_HWLW_EXAMPLE, zone=timezone.utc)
    assert tides == (
        (datetime(1995, 4, 28, 10, 20, tzinfo=timezone.utc), 1.2),
        (datetime(1995, 4, 28, 14, 55, tzinfo=timezone.utc), 4.8),
    )
    assert tide_kinds((1.2, 4.8)) == ("LW", "HW")


def test_offsets_are_kept():
    tides = parse_t_hwlw("19950428T1020Z,1.2,19950428T145530-0930,4.8")
    assert tides[0][0].utcoffset().total_seconds() == 0.0
    assert tides[1][0] == datetime(1995, 4, 29, 0, 25, 30, tzinfo=timezone.utc)


def test_high_and_low_water_without_a_zone_is_refused():
    with pytest.raises(NaiveTimeError, match="value 1"):
        parse_t_hwlw(T_HWLW_EXAMPLE)


@pytest.mark.parametrize("ending", ["", ",", ",,"])
def test_blank_last_pair_is_missing_and_not_slack(ending):
    panel = parse_ts_tsp(TS_TSP_EXAMPLE.removesuffix(",165,2.5") + ending)
    assert panel.missing_hours == (6,)
    assert isnan(panel.pairs[12][0]) and isnan(panel.pairs[12][1])
    assert panel.pairs[11] == (200.0, 2.4)


def test_set_without_rate_is_missing_and_zero_rate_is_still_water():
    panel = parse_ts_tsp(TS_TSP_EXAMPLE.replace("020,0.2", ",0.0").replace("095,0.6", "095,"))
    assert panel.missing_hours == (-1,)
    assert isnan(panel.pairs[6][0]) and panel.pairs[6][1] == 0.0


def test_north_is_zero_degrees():
    assert parse_ts_tsv("360,1.0") == ((0.0, 1.0),)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "1 values"),
        ("63230,Darwin,HW", "3 values"),
        (TS_TSP_EXAMPLE.replace(",HW,", ",MW,"), "value 3 is 'MW'"),
        (TS_TSP_EXAMPLE.replace("124,2.2", "124,fast"), "value 5 is 'fast'"),
        (TS_TSP_EXAMPLE.replace("124,2.2", "424,2.2"), "value 4 is 424"),
        (TS_TSP_EXAMPLE.replace("165,2.5", "165,40"), "value 29 is 40"),
        (TS_TSP_EXAMPLE.replace("165,2.5", "165,nan"), "value 29 is nan"),
        (TS_TSP_EXAMPLE.replace("165,2.5", "165,-1"), "value 29 is -1"),
        (TS_TSP_EXAMPLE.replace("128,2.1", ",2.1"), "value 6 is blank"),
        (TS_TSP_EXAMPLE + ",1,2", "14 pairs"),
        (TS_TSP_EXAMPLE.removesuffix(",200,2.4,165,2.5"), "11 pairs"),
        (TS_TSP_EXAMPLE + ",17", "27 values"),
        ("63230,Darwin,HW" + "," * 26, "every pair is blank"),
    ],
)
def test_wrong_panel_is_refused_by_place(text, said):
    with pytest.raises(SwimPlanError, match=said) as caught:
        parse_ts_tsp(text)
    assert "printed table" in str(caught.value)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("19950428T1020", "1 values"),
        ("19951328T1020,1.2", "value 1"),
        ("19950428,1.2", "value 1"),
        ("19950428T1020,high", "value 2"),
        ("19950428T1455,4.8,19950428T1020,1.2", "Times run forward"),
    ],
)
def test_wrong_high_and_low_water_is_refused_by_place(text, said):
    with pytest.raises(SwimPlanError, match=said):
        parse_t_hwlw(text, zone=timezone.utc)


@pytest.mark.parametrize("heights_m", [(1.2,), (1.0, 2.0, 3.0), (1.0, 1.0)])
def test_waters_that_do_not_turn_are_refused(heights_m):
    with pytest.raises(SwimPlanError, match="T_HWLW"):
        tide_kinds(heights_m)
