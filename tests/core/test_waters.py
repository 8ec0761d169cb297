"""Tides, hourly tables, events and the stream over the plan: what is known, and what must not be made up."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tideleg.core.errors import SwimPlanError
from tideleg.core.planar import PlanarArea
from tideleg.core.water.events import EventStream
from tideleg.core.water.field import RuledArea, Station, StreamField
from tideleg.core.water.hourly import HOURS, HourlyStream, HourlyTable
from tideleg.core.water.stream import EXTRAPOLATED, KNOWN, UNKNOWN, ConstantStream
from tideleg.core.water.tide import TideTable, first_time_height_reaches

HOUR_S = 3600.0
NAN = float("nan")


# Tides.
def tide(hours, heights, *, first_high=True):
    high = (np.arange(len(hours)) % 2 == 0) == first_high
    return TideTable(
        port="Slate", times_s=HOUR_S * np.array(hours, dtype=float), heights_m=np.array(heights), is_high=high
    )


DAY = tide([0.0, 6.2, 12.4, 18.6], [4.0, 1.0, 4.4, 0.6])


def test_height_meets_every_water_and_stays_between_its_neighbours():
    assert DAY.height_m(DAY.times_s) == pytest.approx(DAY.heights_m)
    t = np.linspace(0.0, 18.6 * HOUR_S, 2000)
    height, row = DAY.height_m(t), np.minimum(np.searchsorted(DAY.times_s, t, side="right"), 3)
    low, high = np.sort(np.stack([DAY.heights_m[row - 1], DAY.heights_m[row]]), axis=0)
    assert np.all((height >= low - 1e-12) & (height <= high + 1e-12))
    assert float(DAY.height_m(3.1 * HOUR_S)) == pytest.approx(2.5)


def test_height_outside_the_table_and_over_a_missing_row_is_unknown():
    assert np.isnan(DAY.height_m([-1.0, 18.6 * HOUR_S + 1.0])).all()
    gap = tide([0.0, 6.2, 23.0, 29.0], [4.0, 1.0, 4.4, 0.6])
    assert np.isnan(gap.height_m(15.0 * HOUR_S)) and np.isfinite(gap.height_m(25.0 * HOUR_S))
    assert np.isnan(gap.rising(15.0 * HOUR_S)) and float(gap.rising(25.0 * HOUR_S)) == 0.0
    assert np.isnan(tide([0.0], [4.0]).height_m(0.0)) and np.isnan(tide([], []).height_m(0.0))
    assert np.isnan(tide([0.0, 6.0], [NAN, 1.0]).height_m(3.0 * HOUR_S))


def test_rows_in_any_order_are_the_same_table():
    order = np.array([2, 0, 3, 1])
    mixed = TideTable(port="m", times_s=DAY.times_s[order], heights_m=DAY.heights_m[order], is_high=DAY.is_high[order])
    t = np.linspace(0.0, 18.6 * HOUR_S, 50)
    assert np.array_equal(mixed.height_m(t), DAY.height_m(t))


@pytest.mark.parametrize(
    ("hours", "heights", "high", "word"),
    [
        ([0.0, 6.0, 12.0], [4.0, 4.1, 1.0], [True, True, False], "two of the same kind"),
        ([0.0, 6.0], [1.0, 4.0], [True, False], "a low water above a high water"),
        ([0.0, 0.0], [4.0, 1.0], [True, False], "two rows at one time"),
        ([0.0, NAN], [4.0, 1.0], [True, False], "without a time"),
    ],
)
def test_tide_table_that_cannot_be_is_refused_with_the_port(hours, heights, high, word):
    with pytest.raises(SwimPlanError) as caught:
        TideTable(port="Slate", times_s=HOUR_S * np.array(hours), heights_m=np.array(heights), is_high=np.array(high))
    assert word in str(caught.value) and "Slate" in str(caught.value)


def test_range_of_the_day_is_the_mean_of_rise_and_fall():
    assert DAY.ranges_m("HW") == pytest.approx([3.0, (3.4 + 3.8) / 2.0])
    assert DAY.ranges_m("LW") == pytest.approx([(3.0 + 3.4) / 2.0, 3.8])
    assert np.isnan(tide([0.0], [4.0]).ranges_m("HW")).tolist() == [True]


def test_first_time_a_height_is_reached():
    assert first_time_height_reaches(DAY, 2.5, 0.0, 6.2 * HOUR_S) == pytest.approx(3.1 * HOUR_S, abs=1.0)
    assert np.isnan(first_time_height_reaches(DAY, 4.5, 0.0, 18.0 * HOUR_S))
    assert np.isnan(first_time_height_reaches(DAY, 2.5, 20.0 * HOUR_S, 30.0 * HOUR_S))


# Hourly tables.
def table(*, spring=1.0, neap=0.5, set_deg=90.0, spring_range_m=4.0, neap_range_m=2.0, reference="HW"):
    full = np.full(13, 1.0)
    return HourlyTable(
        station="Gut", reference=reference, set_deg=full * set_deg, spring_m_s=full * spring, neap_m_s=full * neap,
        spring_range_m=spring_range_m, neap_range_m=neap_range_m,
    )  # fmt: skip


@pytest.mark.parametrize(
    ("range_m", "rate", "extrapolated"),
    [
        (4.0, 1.0, False),
        (2.0, 0.5, False),
        (3.0, 0.75, False),
        (5.0, 1.25, True),
        (1.0, 0.25, True),
        (-1.0, 0.0, True),
        (NAN, 1.0, True),
    ],
)
def test_rates_go_with_the_range_of_the_day(range_m, rate, extrapolated):
    """R = Rn + (Rs - Rn)(r - rn)/(rs - rn), not below nothing; with no range the spring rate, as careful."""
    rates, beyond = table().rates_for_range(np.array([range_m]))
    assert rates[0] == pytest.approx(np.full(13, rate)) and beyond[0].tolist() == [extrapolated] * 13


def test_neap_rate_above_the_spring_rate_is_interpolated_all_the_same():
    assert table(spring=0.5, neap=0.8).rates_for_range(np.array([3.0]))[0][0, 0] == pytest.approx(0.65)


def test_table_of_another_length_or_ranges_the_wrong_way_round_are_refused():
    with pytest.raises(SwimPlanError, match="Gut has 12 values of set_deg"):
        HourlyTable(station="Gut", reference="HW", set_deg=np.zeros(12), spring_m_s=np.zeros(13), neap_m_s=np.zeros(13))
    with pytest.raises(SwimPlanError, match="Gut"):
        table(spring_range_m=2.0, neap_range_m=2.0)


def numbered(tide_table, *, blanks=(), reference="HW"):
    """A stream to the east whose rate in m/s is the hour + 10, so that the hour can be read off it."""
    rates = 10.0 + HOURS.astype(float)
    rates[[hour + 6 for hour in blanks]] = NAN
    rows = HourlyTable(station="n", reference=reference, set_deg=np.full(13, 90.0), spring_m_s=rates, neap_m_s=rates,
                       spring_range_m=9.0, neap_range_m=0.0)  # fmt: skip
    return HourlyStream(rows, tide_table)


LONG = tide(np.arange(-18.6, 40.0, 6.2), np.where(np.arange(10) % 2 == 0, 4.0, 1.0))


def test_hours_count_from_the_nearest_reference_water():
    for reference, water in (("HW", -6.2), ("LW", 0.0)):
        stream = numbered(LONG, reference=reference)
        hours = np.linspace(-6.0, 6.0, 49)
        assert stream.at(HOUR_S * (water + hours)).east_m_s == pytest.approx(10.0 + hours)


def test_join_of_two_tables_is_bridged_and_keeps_within_its_ends():
    """High waters 12.4 h apart leave 0.4 h between +6 h of one and -6 h of the next."""
    stream = numbered(LONG)
    t = HOUR_S * (-6.2 + np.linspace(5.9, 6.5, 61))
    sample = stream.at(t)
    assert (sample.status == KNOWN).all()
    assert (
        np.all((sample.east_m_s >= 4.0) & (sample.east_m_s <= 16.0)) and np.max(np.abs(np.diff(sample.east_m_s))) < 0.5
    )


def test_overlapping_tables_pass_over_half_way():
    """High waters 11 h apart: up to 5.5 h the one table, from there the other's -5.5 h."""
    near = tide([0.0, 5.5, 11.0, 16.5], [4.0, 1.0, 4.0, 1.0])
    east = numbered(near).at(HOUR_S * np.array([5.0, 5.49, 5.51, 6.0])).east_m_s
    assert east == pytest.approx([15.0, 15.49, 4.51, 5.0])


@pytest.mark.parametrize("blank", [-6, -3, 0, 6])
def test_blank_hour_is_unknown_to_its_neighbours(blank):
    stream = numbered(tide([-6.2, 0.0, 6.2], [1.0, 4.0, 1.0], first_high=False), blanks=(blank,))
    t = np.linspace(-6.0, 6.0, 241)
    inside = np.abs(t - blank) < 1.0 - 1e-9
    sample = stream.at(HOUR_S * t)
    assert np.array_equal(np.isnan(sample.east_m_s), inside) and np.array_equal(sample.status == UNKNOWN, inside)


def test_stream_beyond_the_tide_table_is_unknown():
    stream = numbered(tide([-6.2, 0.0, 6.2], [1.0, 4.0, 1.0], first_high=False))
    sample = stream.at(HOUR_S * np.array([-6.01, -6.0, 6.0, 6.01, 100.0]))
    assert sample.status.tolist() == [UNKNOWN, KNOWN, KNOWN, UNKNOWN, UNKNOWN]
    assert np.isnan(sample.east_m_s[[0, 3, 4]]).all()
    assert (numbered(tide([], [])).at(np.zeros((2, 3))).status == UNKNOWN).all()


def test_missing_high_water_leaves_its_hours_unknown_and_not_bridged():
    whole = tide([-6.2, 0.0, 6.2, 23.5, 29.7], [1.0, 4.0, 1.0, 4.0, 1.0], first_high=False)
    sample = numbered(whole).at(HOUR_S * np.array([5.0, 8.0, 12.0, 17.0, 18.0, 23.5]))
    assert sample.status.tolist() == [KNOWN, UNKNOWN, UNKNOWN, UNKNOWN, KNOWN, KNOWN]


def test_rate_of_nothing_needs_no_set_and_a_rate_without_a_set_is_unknown():
    slack = table(spring=0.0, neap=0.0, set_deg=NAN)
    lost = table(set_deg=NAN)
    at_noon = [HourlyStream(rows, LONG).at(-6.2 * HOUR_S) for rows in (slack, lost)]
    assert (float(at_noon[0].rate_m_s), int(at_noon[0].status)) == (0.0, KNOWN)
    assert np.isnan(at_noon[1].rate_m_s) and int(at_noon[1].status) == UNKNOWN


# Events.
def events(hours, rates, **sets):
    return EventStream(
        station="e",
        times_s=HOUR_S * np.array(hours),
        rates_m_s=np.array(rates),
        **{"flood_set_deg": 40.0, "ebb_set_deg": 215.0, **sets},
    )


def test_events_are_met_and_ebb_sets_its_own_way():
    stream = events([0.0, 3.0, 6.0, 9.2, 12.4], [0.0, 0.8, 0.0, -0.6, 0.0])
    assert stream.signed_rate_m_s(stream.times_s) == pytest.approx([0.0, 0.8, 0.0, -0.6, 0.0], abs=1e-12)
    sample = stream.at(HOUR_S * np.array([3.0, 9.2]))
    assert sample.set_deg == pytest.approx([40.0, 215.0]) and sample.rate_m_s == pytest.approx([0.8, 0.6])


def test_two_maxima_in_a_row_have_no_slack_between():
    rate = events([0.0, 6.0], [0.8, 0.3]).signed_rate_m_s(HOUR_S * np.linspace(0.0, 6.0, 61))
    assert np.all((rate <= 0.8) & (rate >= 0.3)) and np.all(np.diff(rate) < 1e-12)


@pytest.mark.parametrize(("hours", "rates", "at"), [([0.0, 3.0], [0.0, 0.8], 3.1), ([0.0, 3.0], [0.0, 0.8], -0.1),
                                                    ([0.0, 8.1], [0.0, 0.8], 4.0), ([0.0, 6.0], [0.0, 0.0], 3.0),
                                                    ([0.0], [0.0], 0.0)])  # fmt: skip
def test_events_do_not_say_what_they_do_not_know(hours, rates, at):
    sample = events(hours, rates).at(HOUR_S * at)
    assert int(sample.status) == UNKNOWN and np.isnan(sample.east_m_s) and np.isnan(sample.north_m_s)


def test_event_without_a_set_is_unknown_but_slack_is_slack():
    stream = events([0.0, 3.0, 6.0], [0.0, 0.8, 0.0], flood_set_deg=NAN)
    assert stream.at(HOUR_S * np.array([0.0, 1.0, 3.0])).status.tolist() == [KNOWN, UNKNOWN, UNKNOWN]


# The stream over the plan.
def station(name, x, y, towards=90.0, rate=0.3, **about):
    return Station(name=name, x_m=x, y_m=y, stream=about.pop("stream", ConstantStream.from_set(towards, rate)), **about)


def test_two_stations_share_by_the_inverse_square_of_the_distance():
    field = StreamField(stations=(station("a", 0.0, 0.0, 90.0, 0.4), station("b", 3000.0, 0.0, 0.0, 0.4)))
    sample = field.at(1000.0, 0.0, 0.0)
    assert (float(sample.east_m_s), float(sample.north_m_s)) == pytest.approx((0.4 * 4.0 / 5.0, 0.4 / 5.0))
    assert float(field.at(0.0, 0.0, 0.0).east_m_s) == pytest.approx(0.4, abs=1e-6)


@given(
    places=st.lists(st.tuples(st.floats(-4000, 4000), st.floats(-4000, 4000)), min_size=1, max_size=4, unique=True),
    x=st.floats(-4000, 4000),
    y=st.floats(-4000, 4000),
)
@settings(max_examples=60, derandomize=True, deadline=None, database=None)
def test_stream_between_stations_is_never_stronger_than_the_strongest(places, x, y):
    stations = tuple(station(f"s{n}", *place, towards=77.0 * n, rate=0.1 + 0.1 * n) for n, place in enumerate(places))
    sample = StreamField(stations=stations).at(x, y, 0.0)
    assert float(sample.rate_m_s) <= 0.1 * len(places) + 1e-12 and int(sample.status) == KNOWN


def test_station_that_matters_and_does_not_know_leaves_the_stream_unknown():
    blind = station("blind", 3000.0, 0.0, stream=ConstantStream(east_m_s=NAN, north_m_s=NAN))
    field = StreamField(stations=(station("sees", 0.0, 0.0), blind))
    sample = field.at(np.array([100.0, 800.0, 2000.0]), 0.0, 0.0)
    assert sample.status.tolist() == [KNOWN, UNKNOWN, UNKNOWN], "at 800 m its share is 0.117"
    assert np.isnan(sample.east_m_s[1:]).all() and float(sample.east_m_s[0]) == pytest.approx(0.3)


def test_no_station_is_no_stream():
    sample = StreamField(stations=()).at(np.zeros(3), np.zeros(3), 0.0)
    assert (sample.status == UNKNOWN).all() and np.isnan(sample.rate_m_s).all()


def test_more_than_ten_kilometres_from_every_station_the_stream_is_extrapolated():
    field = StreamField(stations=(station("a", 0.0, 0.0), station("b", 500.0, 0.0)))
    assert field.at(np.array([-9_990.0, -10_010.0]), 0.0, 0.0).status.tolist() == [KNOWN, EXTRAPOLATED]


def box(x1, y1, x2, y2):
    return PlanarArea(rings=(np.array([[x1, y1], [x2, y1], [x2, y2], [x1, y2]]),))


def test_station_behind_land_has_no_share_and_all_share_where_none_is_seen():
    """A ridge at x = 0 between the stations; an islet's ring round the last place."""
    ridge = box(-100.0, -6000.0, 100.0, 6000.0)
    rings = (box(2300.0, 2300.0, 2700.0, 2700.0).rings[0], box(2400.0, 2400.0, 2600.0, 2600.0).rings[0])
    lagoon = PlanarArea(rings=rings)
    places = np.array([[-1500.0, 0.0], [1500.0, 0.0], [2500.0, 2500.0]])
    field = StreamField(
        stations=(station("west", -2500.0, 0.0, 90.0, 0.2), station("east", 2500.0, 0.0, 90.0, 0.6)),
        land=(ridge, lagoon),
        places_m=places,
    )
    sample = field.at(places[:, 0], places[:, 1], 0.0)
    assert sample.east_m_s[:2] == pytest.approx([0.2, 0.6], abs=1e-6)
    assert sample.status.tolist() == [KNOWN, KNOWN, EXTRAPOLATED]
    assert 0.2 < float(sample.east_m_s[2]) < 0.6


EDDY = box(-300.0, -300.0, 300.0, 300.0)


def with_eddy(phase, eddy_stream=None, tide_table=None):
    own = {"stream": eddy_stream} if eddy_stream is not None else {}
    return StreamField(
        stations=(
            station("main", 5000.0, 0.0, 90.0, 0.3),
            station("eddy", 0.0, 0.0, 270.0, 0.2, tide=tide_table, **own),
        ),
        ruled_areas=(RuledArea(area=EDDY, station="eddy", phase=phase),),
    )


def test_ruled_area_has_its_own_stream_and_its_station_no_say_outside():
    sample = with_eddy("always").at(np.array([0.0, 290.0, 345.0, 1000.0]), 0.0, 0.0)
    assert sample.east_m_s == pytest.approx([-0.2, -0.2, 0.3, 0.3], abs=1e-9)
    across = with_eddy("always").at(np.linspace(280.0, 360.0, 81), 0.0, 0.0).east_m_s
    assert np.all(np.diff(across) >= -1e-12), "between them it passes over without a jump"
    assert np.max(np.diff(across)) < 0.03


def test_ruled_area_follows_the_phase_of_its_tide():
    """Falling from 0 to 6.2 h, rising from 6.2 to 12.4 h."""
    t = HOUR_S * np.array([3.0, 9.0])
    assert with_eddy("flood", tide_table=DAY).at(0.0, 0.0, t).east_m_s == pytest.approx([0.3, -0.2], abs=1e-9)
    assert with_eddy("ebb", tide_table=DAY).at(0.0, 0.0, t).east_m_s == pytest.approx([-0.2, 0.3], abs=1e-9)


@pytest.mark.parametrize("tide_table", [None, DAY])
def test_phase_that_is_not_known_leaves_the_area_unknown_and_no_more(tide_table):
    sample = with_eddy("flood", tide_table=tide_table).at(np.array([0.0, 1000.0]), 0.0, 30.0 * HOUR_S)
    assert sample.status.tolist() == [UNKNOWN, KNOWN] and np.isnan(sample.east_m_s[0])


def test_blind_station_in_a_ruled_area_is_not_filled_in_by_the_main_stream():
    blind = ConstantStream(east_m_s=NAN, north_m_s=NAN)
    sample = with_eddy("always", eddy_stream=blind).at(np.array([0.0, 299.0, 1000.0]), 0.0, 0.0)
    assert sample.status.tolist() == [UNKNOWN, UNKNOWN, KNOWN] and np.isnan(sample.rate_m_s[:2]).all()


def test_each_maximum_has_a_set_of_its_own():
    hours = np.array([0.0, 3.0, 6.0, 9.0, 12.0, 15.0, 18.0])
    stream = EventStream(
        station="Bend",
        times_s=HOUR_S * hours,
        rates_m_s=np.array([0.0, 1.0, 0.0, -1.0, 0.0, 1.0, 0.0]),
        flood_set_deg=np.array([270.0, 270.0, 270.0, 270.0, 200.0, 200.0, 200.0]),
        ebb_set_deg=90.0,
    )
    asked = stream.at(HOUR_S * np.array([1.0, 5.0, 8.0, 13.0, 17.0]))
    assert asked.set_deg == pytest.approx([270.0, 270.0, 90.0, 200.0, 200.0])
