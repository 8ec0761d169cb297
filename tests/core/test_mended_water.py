"""Ways in which water that is not known could have passed for slack, or a rule for none."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from tideleg.core.chart.hours import in_force_from_text, sailings_between
from tideleg.core.clock import moment_from_text
from tideleg.core.errors import OutsideModelError, SwimPlanError
from tideleg.core.magnetism import variation_at
from tideleg.core.planar import PlanarArea
from tideleg.core.water.coefficients import rates_by_coefficient
from tideleg.core.water.day_rates import rates_by_range
from tideleg.core.water.events import EventStream
from tideleg.core.water.field import Station, StreamField
from tideleg.core.water.members import MemberWater
from tideleg.core.water.slack_offset import SlackOffsetStream
from tideleg.core.water.stream import UNKNOWN, ConstantStream
from tideleg.core.water.tide import TideTable

HOUR_S = 3600.0
LONDON = ZoneInfo("Europe/London")
UTC = timezone.utc


def test_a_slack_offset_between_two_high_waters_is_unknown_not_slack() -> None:
    tide = TideTable(
        port="P",
        times_s=HOUR_S * np.array([0.0, 12.4, 24.8]),
        heights_m=np.array([4.0, 4.0, 4.1]),
        is_high=np.array([True, True, True]),
    )
    stream = SlackOffsetStream(
        tide, station="S", offset_s=0.0, spring_m_s=1.0, spring_range_m=4.0, flood_set_deg=90.0, ebb_set_deg=270.0
    )
    sample = stream.at(HOUR_S * np.array([2.0, 6.0, 10.0, 20.0]))
    assert np.isnan(sample.east_m_s).all() and (sample.status == UNKNOWN).all()


def test_a_tide_smaller_than_neaps_never_stops_the_stream() -> None:
    ranges = np.array([0.2, 0.5, 1.0, 1.5, 2.0])
    rate, extrapolated = rates_by_range(3.0, 1.0, ranges, 4.0, 2.0)
    assert np.all(rate > 0.0) and np.all(np.diff(rate) > 0.0)
    assert extrapolated.tolist() == [True, True, True, True, False]
    # Near neaps the line through neaps and springs stands as it is.
    assert rate[3] == pytest.approx(1.0 + (3.0 - 1.0) * (1.5 - 2.0) / (4.0 - 2.0))


def test_a_small_tide_coefficient_never_stops_the_stream() -> None:
    rate, extrapolated = rates_by_coefficient(3.0, 0.5, np.array([20.0, 30.0, 44.0, 45.0, 95.0]))
    assert np.all(rate > 0.0) and extrapolated.tolist() == [True, True, True, False, False]
    assert rate[2:] == pytest.approx([0.45, 0.5, 3.0])


@pytest.mark.parametrize("thick_m", [60.0, 5.0])
@pytest.mark.parametrize("far_m", [None, 30_000.0, 150_000.0])
def test_land_hides_a_station_however_thin_it_is_and_however_far_another_station_lies(thick_m, far_m) -> None:
    spit = PlanarArea(
        rings=(np.array([[-6000.0, 500.0], [6000.0, 500.0], [6000.0, 500.0 + thick_m], [-6000.0, 500.0 + thick_m]]),)
    )
    stations = [
        Station(name="hidden", x_m=400.0, y_m=700.0, stream=ConstantStream.from_set(90.0, 1.5)),
        Station(name="open", x_m=400.0, y_m=-3000.0, stream=ConstantStream.from_set(270.0, 0.5)),
    ]
    if far_m is not None:
        far = Station(name="far", x_m=0.0, y_m=-far_m, stream=ConstantStream.from_set(270.0, 0.5))
        stations.append(far)
    places = np.array([[-2000.0, -2000.0], [2800.0, 2000.0]])
    field = StreamField(stations=tuple(stations), land=(spit,), places_m=places)
    sample = field.at(np.array([0.0, 400.0, 800.0]), 0.0, 0.0)
    assert sample.set_deg == pytest.approx([270.0] * 3, abs=0.01)


def test_hours_closed_in_the_hour_that_comes_twice_are_closed_both_times() -> None:
    rule = in_force_from_text("01:00", "01:20", LONDON)
    first = datetime(2027, 10, 31, 1, 57, tzinfo=LONDON)
    last = first.astimezone(UTC) + timedelta(minutes=7)
    assert rule.overlaps(first, last.astimezone(LONDON), LONDON)
    later = datetime(2027, 10, 31, 1, 30, tzinfo=LONDON).replace(fold=1)
    assert not rule.overlaps(later, later.astimezone(UTC) + timedelta(minutes=5), LONDON)


def test_a_daily_sailing_in_the_hour_that_comes_twice_is_looked_for_in_both() -> None:
    when = in_force_from_text("01:30", "02:30", LONDON).start
    start = datetime(2027, 10, 31, 0, 0, tzinfo=UTC)
    found = sailings_between(when, start, start + timedelta(hours=3), LONDON)
    assert [moment.astimezone(UTC).hour * 60 + moment.astimezone(UTC).minute for moment in found] == [30, 90]


@pytest.mark.parametrize("text", ["2027-06-05", "2027-06-05x10:00", "2027-W22-6T10:00", "10:00", ""])
def test_a_departure_needs_a_date_and_a_time_of_day(text: str) -> None:
    with pytest.raises(SwimPlanError, match="2027-06-05T10:00"):
        moment_from_text(text, LONDON)


@pytest.mark.parametrize("text", ["9999-12-31T23:59", "0001-01-01T00:00"])
def test_a_year_at_the_end_of_the_calendar_is_refused_as_outside_the_model(text: str) -> None:
    moment = moment_from_text(text, ZoneInfo("Pacific/Auckland"))
    with pytest.raises(OutsideModelError, match="2025"):
        variation_at(170.0, -40.0, moment)


@pytest.mark.parametrize(("later", "slack_h"), [(1.0, 12.5), (-1.0, 11.5), (0.0, 12.0)])
def test_a_bad_days_water_is_stronger_and_turns_late_or_early(later: float, slack_h: float) -> None:
    turning = EventStream(
        station="S",
        times_s=HOUR_S * np.array([9.0, 12.0, 15.0]),
        rates_m_s=np.array([1.0, 0.0, -1.0]),
        flood_set_deg=90.0,
        ebb_set_deg=270.0,
    )
    field = StreamField(stations=(Station(name="S", x_m=0.0, y_m=0.0, stream=turning),))
    worse = MemberWater(field=field, rate_doubts=np.ones(3), phase_doubts=np.full(3, later))
    times = HOUR_S * np.array([slack_h - 2.0, slack_h, slack_h + 2.0])
    before, slack, after = worse.at(np.zeros(3), np.zeros(3), times).east_m_s
    assert slack == pytest.approx(0.0, abs=1e-12)
    assert before == pytest.approx(1.3 * np.sin(np.pi / 3.0)) and after == pytest.approx(-before)


def test_hours_count_from_the_nearest_high_or_low_water() -> None:
    tide = TideTable(
        port="P",
        times_s=HOUR_S * np.array([0.0, 6.0, 12.0]),
        heights_m=np.array([4.0, 1.0, 4.0]),
        is_high=np.array([True, False, True]),
    )
    asked = HOUR_S * np.array([-1.0, 2.0, 7.0, 13.5])
    assert tide.hours_from("HW", asked) == pytest.approx([-1.0, 2.0, -5.0, 1.5])
    assert tide.hours_from("LW", asked) == pytest.approx([-7.0, -4.0, 1.0, 7.5])
