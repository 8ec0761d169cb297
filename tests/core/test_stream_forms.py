"""The forms in which a stream is known at a station: each against hand-worked values and what must hold of it."""

from __future__ import annotations

from datetime import datetime, timezone

import numpy as np
import pytest
from tideleg.core.errors import SwimPlanError
from tideleg.core.quantities import m_s_from_knots
from tideleg.core.water.coefficients import DayCoefficients, rates_by_coefficient
from tideleg.core.water.corrected import CorrectedStream
from tideleg.core.water.events import EventStream
from tideleg.core.water.harmonic_stream import HarmonicStream
from tideleg.core.water.hourly import HOURS, HourlyStream, HourlyTable
from tideleg.core.water.series_stream import SeriesStream
from tideleg.core.water.slack_offset import SlackOffsetStream
from tideleg.core.water.stream import EXTRAPOLATED, KNOWN, UNKNOWN
from tideleg.core.water.subordinate import StreamDifferences, subordinate_stream
from tideleg.core.water.tide import TideTable
from tideleg.core.water.wind_drift import WindDrivenStream, WindTable

HOUR_S = 3600.0
NAN = float("nan")


def tide(ranges_m=(3.0, 3.0, 3.0, 3.0), first_h=-6.2):
    """A low water first, then highs and lows every 6.2 hours, each so much higher or lower than the one before."""
    up = np.where(np.arange(len(ranges_m)) % 2 == 0, 1.0, -1.0)
    return TideTable(
        port="P",
        times_s=HOUR_S * (first_h + 6.2 * np.arange(len(ranges_m) + 1)),
        heights_m=1.0 + np.concatenate([[0.0], np.cumsum(up * np.array(ranges_m))]),
        is_high=np.arange(len(ranges_m) + 1) % 2 == 1,
    )


def hourly_table(reference="HW", spring_kn=2.0, neap_kn=1.0, **ranges):
    return HourlyTable(
        station="A",
        reference=reference,
        set_deg=np.full(13, 90.0),
        spring_m_s=np.full(13, m_s_from_knots(spring_kn)),
        neap_m_s=np.full(13, m_s_from_knots(neap_kn)),
        **ranges,
    )


def kn(value):
    return np.asarray(value) / m_s_from_knots(1.0)


class TestCoefficients:
    def test_rate_is_linear_in_the_coefficient(self) -> None:
        """V = V45 + (V95 - V45)(C - 45)/50: at 70 half way, worked by hand."""
        rate, beyond = rates_by_coefficient(2.0, 1.0, np.array([45.0, 70.0, 95.0, 105.0, 20.0]))
        assert rate == pytest.approx([1.0, 1.5, 2.0, 2.2, 0.5])
        assert beyond.tolist() == [False, False, False, True, True]

    def test_rate_never_falls_below_half_of_the_neap_rate_in_proportion(self) -> None:
        assert rates_by_coefficient(3.0, 0.2, 20.0)[0] == pytest.approx(0.5 * 0.2 * 20.0 / 45.0)

    def test_with_95_alone_the_rate_goes_with_the_coefficient_and_is_extrapolated(self) -> None:
        rate, beyond = rates_by_coefficient(1.9, NAN, 50.0)
        assert (float(rate), bool(beyond)) == (pytest.approx(1.0), True)

    def test_without_a_coefficient_the_rate_at_95_stands_extrapolated(self) -> None:
        rate, beyond = rates_by_coefficient(1.9, 0.8, NAN)
        assert (float(rate), bool(beyond)) == (1.9, True)

    def test_blank_at_both_stays_unknown(self) -> None:
        assert np.isnan(rates_by_coefficient(NAN, NAN, 70.0)[0])

    def test_each_tide_has_its_own_coefficient(self) -> None:
        waters = tide((3.0,) * 6)
        day = DayCoefficients(port="P", times_s=waters.reference_times_s("HW")[[2, 0]], coefficients=np.array([95, 45]))
        stream = HourlyStream(hourly_table(), waters, day)
        sample = stream.at(waters.reference_times_s("HW"))
        assert kn(sample.rate_m_s) == pytest.approx([1.0, 2.0, 2.0])
        assert sample.status.tolist() == [KNOWN, EXTRAPOLATED, KNOWN], "the middle tide has none: the rate at 95 stands"

    def test_coefficient_of_a_tide_holds_for_its_low_water_too(self) -> None:
        waters = tide((3.0,) * 4)
        high = waters.reference_times_s("HW")
        day = DayCoefficients(port="P", times_s=high, coefficients=np.array([45.0, 95.0]))
        assert day.of_waters(waters.reference_times_s("LW")[:1]).tolist() == [45.0]
        assert np.isnan(day.of_waters(high[-1:] + 30 * HOUR_S)).all()

    def test_two_coefficients_at_one_time_are_refused(self) -> None:
        with pytest.raises(SwimPlanError, match="two rows at one time"):
            DayCoefficients(port="P", times_s=np.array([0.0, 0.0]), coefficients=np.array([45.0, 50.0]))


class TestHourly:
    def test_hours_from_low_water_count_from_low_water(self) -> None:
        rates = np.arange(13.0)
        table = HourlyTable(
            station="A",
            reference="LW",
            set_deg=np.full(13, 90.0),
            spring_m_s=rates,
            neap_m_s=rates,
            spring_range_m=4.0,
            neap_range_m=2.0,
        )
        waters = tide((3.0,) * 4)
        low = waters.reference_times_s("LW")[1]
        assert HourlyStream(table, waters).at(low + HOUR_S * HOURS).east_m_s[1:12] == pytest.approx(rates[1:12])

    def test_shape_of_what_is_asked_is_kept(self) -> None:
        stream = HourlyStream(hourly_table(spring_range_m=4.0, neap_range_m=2.0), tide())
        assert stream.at(np.zeros((2, 3, 4))).east_m_s.shape == (2, 3, 4)
        assert np.shape(stream.at(0.0).status) == ()
        assert stream.at(np.array([NAN, np.inf])).status.tolist() == [UNKNOWN, UNKNOWN]


def reference(**changes):
    """Slack, flood, slack, ebb, slack every 3.1 hours; flood 2 kn, ebb 1 kn."""
    return EventStream(
        **{
            "station": "R",
            "times_s": 3.1 * HOUR_S * np.arange(5),
            "rates_m_s": m_s_from_knots(np.array([0.0, 2.0, 0.0, -1.0, 0.0])),
            "flood_set_deg": 10.0,
            "ebb_set_deg": 190.0,
            **changes,
        }
    )


def differences(**changes):
    given = {"slack_before_flood_s": 0, "flood_s": 0, "slack_before_ebb_s": 0, "ebb_s": 0}
    return StreamDifferences(**{**given, "flood_ratio": 1.0, "ebb_ratio": 1.0, **changes})


def place(stream=None, **changes):
    return subordinate_stream(
        stream or reference(), differences(**changes), station="S", flood_set_deg=40.0, ebb_set_deg=230.0
    )


class TestSubordinate:
    def test_each_kind_of_event_gets_its_own_minutes_and_ratio(self) -> None:
        got = place(
            slack_before_flood_s=600, flood_s=1200, slack_before_ebb_s=-300, ebb_s=-900, flood_ratio=0.5, ebb_ratio=1.5
        )
        assert got.times_s - reference().times_s == pytest.approx([600, 1200, -300, -900, 600])
        assert kn(got.rates_m_s) == pytest.approx([0.0, 1.0, 0.0, -1.5, 0.0])

    def test_sets_are_its_own(self) -> None:
        sample = place().at(HOUR_S * np.array([3.1, 9.3]))
        assert sample.set_deg == pytest.approx([40.0, 230.0])

    def test_later_is_positive(self) -> None:
        hour = dict.fromkeys(("slack_before_flood_s", "flood_s", "slack_before_ebb_s", "ebb_s"), HOUR_S)
        times = HOUR_S * np.linspace(1.1, 12.0, 40)
        assert place(**hour).signed_rate_m_s(times) == pytest.approx(place().signed_rate_m_s(times - HOUR_S))

    def test_a_first_and_a_last_slack_are_told_by_the_other_side(self) -> None:
        stream = reference(times_s=HOUR_S * np.array([0, 3, 6]), rates_m_s=np.array([-1.0, 0.0, 1.0]))
        assert place(stream, slack_before_flood_s=60).times_s.tolist() == [0.0, 3 * HOUR_S + 60, 6 * HOUR_S]
        last = reference(times_s=HOUR_S * np.array([0, 3]), rates_m_s=np.array([-1.0, 0.0]))
        assert place(last, slack_before_flood_s=60).times_s[-1] == 3 * HOUR_S + 60

    def test_a_maximum_without_rate_leaves_the_stream_unknown_around_it(self) -> None:
        stream = place(reference(rates_m_s=m_s_from_knots(np.array([0.0, NAN, 0.0, -1.0, 0.0]))))
        sample = stream.at(HOUR_S * np.array([1.0, 4.0, 9.3]))
        assert sample.status.tolist() == [UNKNOWN, UNKNOWN, KNOWN]

    def test_a_flood_too_weak_to_count_is_unknown_not_slack(self) -> None:
        """Ratio 0: the table says nothing of when and whither the weak stream runs."""
        assert place(flood_ratio=0.0).at(2.0 * HOUR_S).status == UNKNOWN

    def test_differences_that_turn_the_order_round_are_refused_by_name(self) -> None:
        with pytest.raises(SwimPlanError, match="S put its slack before flood after its flood"):
            place(slack_before_flood_s=4 * HOUR_S)

    def test_missing_difference_is_not_nothing(self) -> None:
        with pytest.raises(SwimPlanError, match="flood_s is missing"):
            differences(flood_s=NAN)
        with pytest.raises(SwimPlanError, match="0 to 10"):
            differences(ebb_ratio=-1.0)


def offset_stream(waters=None, **changes):
    given = {"offset_s": 7200.0, "spring_m_s": 0.9, "flood_set_deg": 60.0, "ebb_set_deg": 250.0}
    return SlackOffsetStream(waters or tide(), station="A", **{**given, **changes})


class TestSlackOffset:
    def test_slack_lies_so_long_after_each_water(self) -> None:
        waters = tide()
        sample = offset_stream(waters).at(waters.times_s + 7200.0)
        assert sample.rate_m_s.tolist() == [0.0] * 5

    def test_ebb_runs_after_the_slack_of_high_water_and_flood_after_that_of_low(self) -> None:
        waters = tide()
        sample = offset_stream(waters).at(waters.times_s[:4] + 7200.0 + 3.1 * HOUR_S)
        assert sample.set_deg == pytest.approx([60.0, 250.0, 60.0, 250.0])

    def test_between_slacks_it_is_the_50_90_rule(self) -> None:
        """0/50/90/100/90/50/0 (trade rule); the sine lies within 0.04."""
        stream = offset_stream(tide((4.0,) * 4), spring_range_m=4.0, offset_s=0.0)
        share = stream.at(HOUR_S * 6.2 / 6.0 * np.arange(7.0)).rate_m_s / 0.9
        assert share == pytest.approx([0, 0.5, 0.9, 1.0, 0.9, 0.5, 0], abs=0.04)

    def test_rate_goes_with_the_range_of_its_own_rise_or_fall(self) -> None:
        stream = offset_stream(
            tide((4.0, 2.0, 3.0, 5.0)), offset_s=0.0, spring_range_m=4.0, neap_range_m=2.0, neap_m_s=0.3
        )
        sample = stream.at(HOUR_S * (-3.1 + 6.2 * np.arange(4)))
        assert sample.rate_m_s == pytest.approx([0.9, 0.3, 0.6, 1.2])
        assert sample.status.tolist() == [KNOWN, KNOWN, KNOWN, EXTRAPOLATED]

    def test_with_no_ranges_the_spring_rate_stands_extrapolated(self) -> None:
        sample = offset_stream(offset_s=0.0).at(3.1 * HOUR_S)
        assert (float(sample.rate_m_s), int(sample.status)) == (pytest.approx(0.9), EXTRAPOLATED)

    def test_before_the_first_slack_and_after_the_last_it_is_unknown(self) -> None:
        waters = tide()
        ends = waters.times_s[[0, -1]] + 7200.0
        assert offset_stream(waters).at(ends + np.array([-1.0, 1.0])).status.tolist() == [UNKNOWN, UNKNOWN]

    def test_missing_rate_or_set_is_unknown_not_slack(self) -> None:
        middle = 3.1 * HOUR_S + 7200.0
        assert offset_stream(spring_m_s=NAN).at(middle).status == UNKNOWN
        assert offset_stream(ebb_set_deg=NAN).at(middle).status == UNKNOWN

    def test_story_of_a_window_on_a_weak_stream(self) -> None:
        """HW 09:40, slack 11:40, cmax 0.9, limit 0.3: weak from 11:00 to 12:20 (worked story 3, a sine of 372 min)."""
        stream = offset_stream(tide((4.0,) * 4, first_h=9.667 - 6.2), offset_s=7200.0, spring_range_m=4.0)
        times = np.arange(10.5, 13.0, 1 / 60.0)
        weak = times[stream.at(HOUR_S * times).rate_m_s <= 0.3]
        assert weak[0] == pytest.approx(11.0, abs=2 / 60) and weak[-1] == pytest.approx(12 + 20 / 60, abs=2 / 60)


class TestWind:
    def winds(self, from_deg=(225.0, 225.0), speed=(10.0, 10.0), hours=(0.0, 3.0)):
        return WindTable(times_s=HOUR_S * np.array(hours), from_deg=np.array(from_deg), speed_m_s=np.array(speed))

    def test_south_westerly_drives_towards_north_east(self) -> None:
        sample = WindDrivenStream(self.winds(), percent=3.0).at(HOUR_S)
        assert (float(sample.set_deg), float(sample.rate_m_s)) == (pytest.approx(45.0), pytest.approx(0.3))

    def test_turn_to_the_right_adds_to_the_set(self) -> None:
        assert float(WindDrivenStream(self.winds(), percent=3.0, turn_deg=20.0).at(0.0).set_deg) == pytest.approx(65.0)

    def test_between_winds_the_components_are_linear(self) -> None:
        """Half way between a northerly and an easterly of one speed: a north-easterly of 1/sqrt 2, not its mean."""
        sample = WindDrivenStream(self.winds(from_deg=(0.0, 90.0)), percent=10.0).at(1.5 * HOUR_S)
        assert (float(sample.set_deg), float(sample.rate_m_s)) == (pytest.approx(225.0), pytest.approx(np.sqrt(0.5)))

    def test_outside_beside_a_blank_and_across_a_long_gap_it_is_unknown(self) -> None:
        stream = WindDrivenStream(self.winds(speed=(10.0, NAN)), percent=3.0)
        assert stream.at(HOUR_S * np.array([-0.1, 0.0, 1.0, 3.1])).status.tolist() == [UNKNOWN, KNOWN, UNKNOWN, UNKNOWN]
        assert WindDrivenStream(self.winds(hours=(0, 7)), percent=3.0).at(HOUR_S).status == UNKNOWN

    def test_a_calm_needs_no_direction_but_a_wind_does(self) -> None:
        calm = WindDrivenStream(self.winds(from_deg=(NAN, NAN), speed=(0.0, 0.0)), percent=3.0).at(HOUR_S)
        assert (float(calm.rate_m_s), int(calm.status)) == (0.0, KNOWN)
        assert WindDrivenStream(self.winds(from_deg=(NAN, 0.0)), percent=3.0).at(HOUR_S).status == UNKNOWN


class TestSeries:
    def test_vectors_are_linear_between_times_and_unknown_beyond(self) -> None:
        stream = SeriesStream(
            station="A",
            times_s=HOUR_S * np.array([1.0, 0.0, 4.0]),
            set_deg=np.array([90.0, 0.0, 90.0]),
            rate_m_s=np.array([1.0, 1.0, 1.0]),
        )
        sample = stream.at(HOUR_S * np.array([0.5, 1.0, 2.0, -0.1]))
        assert sample.east_m_s[:2] == pytest.approx([0.5, 1.0])
        assert sample.status.tolist() == [KNOWN, KNOWN, UNKNOWN, UNKNOWN], "the gap of three hours is too long"

    def test_two_rows_at_one_time_are_refused(self) -> None:
        with pytest.raises(SwimPlanError, match="two rows at one time"):
            SeriesStream(station="A", times_s=np.zeros(2), set_deg=np.zeros(2), rate_m_s=np.zeros(2))


START = datetime(2027, 6, 5, tzinfo=timezone.utc)


def harmonic(names=("M2", "Z0"), u=(0.8, 0.1), u_phase=(30.0, 0.0), v=(0.4, -0.05), v_phase=(75.0, 0.0)):
    return HarmonicStream(
        station="A",
        constituents=names,
        u_amplitude_m_s=np.array(u),
        u_phase_deg=np.array(u_phase),
        v_amplitude_m_s=np.array(v),
        v_phase_deg=np.array(v_phase),
        start=START,
        lat_deg=50.0,
    )


class TestHarmonic:
    def test_mean_alone_is_a_constant_stream(self) -> None:
        sample = harmonic(("Z0",), (0.3,), (0.0,), (-0.4,), (0.0,)).at(np.array([0.0, 1e6]))
        assert sample.east_m_s == pytest.approx([0.3, 0.3]) and sample.north_m_s == pytest.approx([-0.4, -0.4])

    def test_mean_over_a_month_is_z0_and_swing_is_the_amplitude(self) -> None:
        east = harmonic().at(np.arange(0.0, 29.53 * 86400.0, 600.0)).east_m_s
        assert np.mean(east) == pytest.approx(0.1, abs=0.002)
        assert (east.max() - east.min()) / 2.0 == pytest.approx(0.8, rel=0.04), "f of M2 is within 4 percent of 1"

    def test_east_and_north_keep_their_own_phase(self) -> None:
        """The east part leads the north part by 45 degrees of M2: 45 / 28.984 h."""
        stream, later = harmonic(("M2",), (0.5,), (30.0,), (0.5,), (75.0,)), 45.0 / 28.9841042 * HOUR_S
        times = np.arange(0.0, 86400.0, 1800.0)
        assert stream.at(times).east_m_s == pytest.approx(stream.at(times + later).north_m_s, abs=2e-3)

    def test_many_times_are_as_good_as_few(self) -> None:
        stream, times = harmonic(), np.random.default_rng(3).uniform(0.0, 3600.0, 5000)
        many = stream.at(times).east_m_s
        few = np.array([float(stream.at(t).east_m_s) for t in times[:50]])
        assert many[:50] == pytest.approx(few, abs=1e-5)

    def test_missing_constant_leaves_the_stream_unknown(self) -> None:
        assert harmonic(u=(np.nan, 0.1)).at(0.0).status == UNKNOWN

    def test_unknown_name_and_a_name_twice_are_refused(self) -> None:
        with pytest.raises(SwimPlanError, match="XX9"):
            harmonic(("XX9", "Z0"))
        with pytest.raises(SwimPlanError, match="twice"):
            harmonic(("M2", "M2"))


@pytest.mark.parametrize(
    "stream", [reference(), offset_stream(offset_s=0.0), HourlyStream(hourly_table(), tide())], ids=lambda s: type(s)
)
def test_a_positive_shift_makes_the_stream_later(stream) -> None:
    times = HOUR_S * np.array([3.0, 4.0, 5.0])
    shifted = CorrectedStream(stream=stream, rate_factor=1.5, shift_s=1800.0).at(times + 1800.0)
    assert shifted.east_m_s == pytest.approx(1.5 * stream.at(times).east_m_s)
    assert shifted.north_m_s == pytest.approx(1.5 * stream.at(times).north_m_s)
