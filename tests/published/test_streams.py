"""Tidal streams against printed tables and rules."""

import numpy as np
import pytest
from tideleg.core.quantities import knots_from_m_s, m_s_from_knots
from tideleg.core.water.chart_strings import parse_ts_tsp
from tideleg.core.water.events import EventStream
from tideleg.core.water.hourly import HOURS, HourlyStream, HourlyTable
from tideleg.core.water.stream import EXTRAPOLATED, KNOWN, UNKNOWN
from tideleg.core.water.tide import TideTable

HOUR_S = 3600.0


def clock_s(text):
    hours, minutes = text.split(":")
    return HOUR_S * int(hours) + 60.0 * int(minutes)


def events(times_s, rates_kn, *, flood=40.0, ebb=220.0):
    return EventStream(
        station="published",
        times_s=np.array(times_s),
        rates_m_s=m_s_from_knots(np.array(rates_kn, dtype=float)),
        flood_set_deg=flood,
        ebb_set_deg=ebb,
    )


# US Navy training course 14220 (Quartermaster), p. 7-22, by Table 3 of the NOAA Tidal Current Tables:
# slack 09:31, maximum 11:59 of 0.66 kn; at 11:00 the factor is 0.8, the rate 0.5 kn.
def test_navy_table_3_example():
    stream = events([clock_s("09:31"), clock_s("11:59")], [0.0, 0.66])
    rate_kn = float(knots_from_m_s(stream.signed_rate_m_s(clock_s("11:00"))))
    assert rate_kn / 0.66 == pytest.approx(0.8, abs=0.05)
    assert rate_kn == pytest.approx(0.5, abs=0.05)


# Matthews 2007, p. 90: the 50/90 rule, 0/50/90/100/90/50/0 % of the maximum by the hour.
def test_50_90_rule_is_within_0_04_of_the_sine():
    stream = events(HOUR_S * np.array([0.0, 3.0, 6.0]), [0.0, 1.0, 0.0])
    share = knots_from_m_s(stream.signed_rate_m_s(HOUR_S * np.arange(7.0)))
    rule = np.array([0.0, 0.5, 0.9, 1.0, 0.9, 0.5, 0.0])
    assert np.max(np.abs(share - rule)) < 0.04
    assert np.allclose(share[[0, 1, 3, 5, 6]], rule[[0, 1, 3, 5, 6]], atol=1e-12)


# Bown, sea kayak navigation (bookdown), 2.10: springs 1.7 kn, range of the day 3.1 m, spring range 4.73 m -> 1.1 kn.
def test_bown_factor_method():
    table = HourlyTable(
        station="Bown",
        reference="HW",
        set_deg=np.full(13, 90.0),
        spring_m_s=np.full(13, m_s_from_knots(1.7)),
        neap_m_s=np.full(13, np.nan),
        spring_range_m=4.73,
    )
    rate, extrapolated = table.rates_for_range(np.array([3.1]))
    assert knots_from_m_s(rate[0]) == pytest.approx(np.full(13, 1.1), abs=0.05)
    assert not extrapolated.any()


# IHO S-57, Edition 3.1, Appendix A, Chapter 2, attribute TS_TSP: the printed example (spring rates only).
DARWIN = (
    "63230,Darwin,HW,124,2.2,128,2.1,125,2.9,116,2.8,110,2.0,095,0.6,"
    "020,0.2,320,1.9,315,2.1,300,2.8,268,2.6,200,2.4,165,2.5"
)
PRINTED = [
    (124, 2.2), (128, 2.1), (125, 2.9), (116, 2.8), (110, 2.0), (95, 0.6), (20, 0.2),
    (320, 1.9), (315, 2.1), (300, 2.8), (268, 2.6), (200, 2.4), (165, 2.5),
]  # fmt: skip
HW_S = 50_000.0


def darwin_stream(text=DARWIN, *, range_m=6.0, spring_range_m=6.0):
    """The printed table at an invented spring range, between the high water at 50 000 s and its low waters."""
    panel = parse_ts_tsp(text)
    sets, rates = np.array(panel.pairs).T
    table = HourlyTable(
        station=panel.name,
        reference=panel.reference,
        set_deg=sets,
        spring_m_s=m_s_from_knots(rates),
        neap_m_s=np.full(13, np.nan),
        spring_range_m=spring_range_m,
    )
    tide = TideTable(
        port=panel.name,
        times_s=HW_S + HOUR_S * np.array([-6.2, 0.0, 6.2]),
        heights_m=np.array([0.5, 0.5 + range_m, 0.5]),
        is_high=np.array([False, True, False]),
    )
    return HourlyStream(table, tide)


def test_printed_panel_by_the_hour():
    sample = darwin_stream().at(HW_S + HOUR_S * HOURS)
    assert sample.status.tolist() == [KNOWN] * 13
    assert sample.set_deg == pytest.approx([float(towards) for towards, _ in PRINTED], abs=1e-9)
    assert knots_from_m_s(sample.rate_m_s) == pytest.approx([rate for _, rate in PRINTED], abs=1e-12)


def test_printed_panel_between_hours_is_the_mean_vector():
    """Half way from 095 at 0.6 to 020 at 0.2: the vectors' mean, not the mean of sets and rates."""
    sample = darwin_stream().at(HW_S - 0.5 * HOUR_S)
    first, second = (rate * np.exp(1j * np.radians(towards)) for towards, rate in (PRINTED[5], PRINTED[6]))
    mean = (first + second) / 2.0
    assert float(sample.set_deg) == pytest.approx(np.degrees(np.angle(mean)), abs=1e-9)
    assert float(knots_from_m_s(sample.rate_m_s)) == pytest.approx(abs(mean), abs=1e-12)
    assert abs(mean) < 0.4, "the mean of the rates would be 0.4"


def test_printed_panel_on_a_lesser_tide_by_the_factor():
    sample = darwin_stream(range_m=3.0).at(HW_S + HOUR_S * HOURS)
    assert knots_from_m_s(sample.rate_m_s) == pytest.approx([rate / 2.0 for _, rate in PRINTED], abs=1e-12)


def test_printed_panel_without_a_spring_range_is_extrapolated():
    sample = darwin_stream(spring_range_m=np.nan).at(HW_S + HOUR_S * HOURS)
    assert sample.status.tolist() == [EXTRAPOLATED] * 13
    assert knots_from_m_s(sample.rate_m_s) == pytest.approx([rate for _, rate in PRINTED], abs=1e-12)


def test_blank_last_pair_is_unknown_water_and_not_slack():
    stream = darwin_stream(DARWIN.removesuffix("165,2.5") + ",")
    sample = stream.at(HW_S + HOUR_S * np.array([4.0, 4.99, 5.01, 5.99, 6.0]))
    assert sample.status.tolist() == [KNOWN, KNOWN, UNKNOWN, UNKNOWN, UNKNOWN]
    assert np.isnan(sample.east_m_s[2:]).all() and np.isnan(sample.north_m_s[2:]).all()
