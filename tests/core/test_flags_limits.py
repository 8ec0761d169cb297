"""Range, hours, fluid, the dark, the depth at the marks and what is not known of the water."""

from dataclasses import replace
from datetime import datetime, timedelta, timezone

import numpy as np
import pytest
from independent_swim import WaterStream
from invented_requests import NOON, UTC, Site, minutes_between, of_kind
from tideleg.core.chart.depths import DepthSurvey
from tideleg.core.quantities import m_s_from_knots
from tideleg.core.solve.leg_results import card_heading
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.swimmer import Swimmer
from tideleg.core.water.field import StreamField
from tideleg.core.water.hourly import HourlyStream, HourlyTable
from tideleg.core.water.stream import ConstantStream
from tideleg.core.water.tide import TideTable

SITE = Site()
ACROSS = [(0.0, 0.0), (0.0, 1000.0)]
OUT_AND_HOME = [(0.0, 0.0), (0.0, 1000.0), (0.0, 0.0)]


def swimmer(**about):
    return Swimmer(**{"name": "steady", "pace_m_s": 0.7, "path_factor": 1.0, **about})


def planned(stops=ACROSS, *, site=SITE, **about):
    return plan_swim(site.request(stops, **about))


def only(plan, kind):
    (flag,) = of_kind(plan, kind)
    return flag


@pytest.mark.parametrize(("range_m", "flagged"), [(2000.1, False), (1999.9, True)])
def test_over_range_is_the_whole_route(range_m, flagged):
    plan = planned(OUT_AND_HOME, swimmer=swimmer(range_m=range_m))
    assert bool(of_kind(plan, "over_range")) == flagged and plan.feasible != flagged


@pytest.mark.parametrize(("spare_min", "flagged"), [(0.1, False), (-0.1, True)])
def test_over_time_counts_the_stays(spare_min, flagged):
    minutes = 2000.0 / 0.7 / 60.0 + 40.0 + spare_min
    plan = planned(OUT_AND_HOME, stays_min=(40.0,), swimmer=swimmer(max_hours=minutes / 60.0))
    assert bool(of_kind(plan, "over_time")) == flagged and plan.feasible != flagged


@pytest.mark.parametrize(("carried_l", "flagged"), [(1.0001, False), (0.9999, True)])
def test_fluid_counts_all_the_hours(carried_l, flagged):
    hours = 2000.0 / 0.7 / 3600.0 + 0.5
    plan = planned(OUT_AND_HOME, stays_min=(30.0,), swimmer=swimmer(fluid_l=carried_l, fluid_l_h=1.0 / hours))
    assert bool(of_kind(plan, "fluid")) == flagged and plan.feasible, "fluid warns, it does not stop"


def test_guessed_numbers_are_named():
    flag = only(planned(swimmer=swimmer(guessed=("pace_m_s", "fluid_l_h"))), "uncalibrated")
    assert flag.severity == "note" and "pace_m_s, fluid_l_h" in flag.message
    assert not of_kind(planned(), "uncalibrated")


def test_swim_that_is_not_completed_is_not_judged_by_its_hours():
    plan = planned(stream=SITE.steady(180.0, 0.9), swimmer=swimmer(max_hours=0.1))
    assert plan.total_min is None and plan.arrive is None and not plan.feasible
    assert not of_kind(plan, "over_time") and only(plan, "not_swimmable").severity == "stop"


# The dark.
def test_dark_begins_at_civil_dusk_and_the_flag_begins_there_too():
    dusk = planned().civil_dusk
    plan = planned(depart=dusk.astimezone(UTC) - timedelta(minutes=10))
    flag = only(plan, "after_dark")
    assert abs((flag.start - dusk).total_seconds()) < 2.0
    assert flag.end == plan.arrive and flag.severity == "stop" and not plan.feasible
    start = SITE.frame.to_xy([flag.points[0]])[0]
    assert start[1] == pytest.approx(600.0 * 0.7, abs=2.0)


def test_swim_that_lands_before_dusk_is_light():
    dusk = planned().civil_dusk.astimezone(UTC)
    swim = timedelta(seconds=1000.0 / 0.7)
    assert not of_kind(planned(depart=dusk - swim - timedelta(seconds=30)), "after_dark")
    assert of_kind(planned(depart=dusk - swim + timedelta(seconds=30)), "after_dark")


def test_dark_before_dawn_ends_at_civil_dawn():
    plan = planned(depart=datetime(2027, 6, 5, 5, 30, tzinfo=UTC))
    flag = only(plan, "after_dark")
    assert flag.start == plan.depart and "civil dawn" in flag.message
    sunrise_side = planned(depart=flag.end.astimezone(UTC) + timedelta(seconds=5))
    assert not of_kind(sunrise_side, "after_dark")


@pytest.mark.parametrize(
    ("site", "moment", "dark"),
    [
        (Site(lon=20.0, lat=70.0), datetime(2027, 6, 21, 22, 40, tzinfo=UTC), False),  # midnight sun
        (Site(lon=20.0, lat=70.0), datetime(2027, 12, 21, 10, 40, tzinfo=UTC), False),  # polar night, twilight at noon
        (Site(lon=20.0, lat=70.0), datetime(2027, 12, 21, 22, 40, tzinfo=UTC), True),
        (Site(lon=20.0, lat=78.0), datetime(2027, 12, 21, 10, 40, tzinfo=UTC), True),  # not even twilight
        (Site(lon=20.0, lat=-70.0), datetime(2027, 12, 21, 22, 40, tzinfo=UTC), False),
        (Site(lon=179.99, lat=-19.0), datetime(2027, 6, 5, 0, 0, tzinfo=UTC), False),  # noon on the date line
        (Site(lon=179.99, lat=-19.0), datetime(2027, 6, 5, 12, 0, tzinfo=UTC), True),
        (Site(lon=-179.99, lat=-19.0), datetime(2027, 6, 5, 0, 0, tzinfo=UTC), False),
        (Site(lon=-179.99, lat=-19.0), datetime(2027, 6, 5, 12, 0, tzinfo=UTC), True),
    ],
)
@pytest.mark.parametrize("zone", ["UTC", "Pacific/Auckland", "Pacific/Kiritimati", "America/Adak"])
def test_dark_is_the_suns_matter_and_not_the_zones(site, moment, dark, zone):
    plan = planned(site=site, depart=moment, zone=zone)
    assert bool(of_kind(plan, "after_dark")) == dark


# Depth at the marks. High water 5.2 m at 12:00, low water 0.8 m at 18:10.
def tide(last_hour=18.4, *, depart=NOON):
    day = (datetime(2027, 6, 5, tzinfo=UTC) - depart).total_seconds()
    hours = np.array([-0.2, 5.9, 12.0, 18.0 + 1.0 / 6.0, 24.4])
    kept = hours <= last_hour
    return TideTable(
        port="drawn",
        times_s=day + 3600.0 * hours[kept],
        heights_m=np.array([5.0, 0.9, 5.2, 0.8, 5.1])[kept],
        is_high=np.array([True, False, True, False, True])[kept],
    )


def test_too_deep_a_mark_says_from_when_it_is_within_reach():
    """8.0 m charted, limit 12 m: within reach from 14:09. Arrived at 13:23:48."""
    plan = planned(OUT_AND_HOME, stays_min=(20.0,), depths_m=(8.0,), tide=tide())
    flag = only(plan, "deep")
    assert "It is within your limit from 14:09." in flag.message
    assert (flag.name, flag.leg, flag.severity) == ("Rock 1", 1, "warn")
    assert minutes_between(flag.start, flag.end) == pytest.approx(20.0, abs=0.01)


def test_a_mark_that_the_line_does_not_hold_at_is_told_of():
    """1.3 x depth hooked in rock, 3 x on flat ground, of the greatest depth of the stay; common practice, no source."""
    deep = swimmer(depth_limit_m=40.0, line_m=15.0)
    plan = planned(OUT_AND_HOME, stays_min=(20.0,), depths_m=(8.0,), tide=tide(), swimmer=deep)
    flag, greatest = only(plan, "deep"), plan.stops[1].deepest_m
    assert greatest == pytest.approx(max(depth for _, depth in plan.stops[1].depth_by_hour), abs=1.0)
    assert f"wants {1.3 * greatest:.0f} m of line, one on flat ground {3.0 * greatest:.0f} m" in flag.message
    assert flag.brief == "Rock 1: 15 m of line do not hold"
    longer = replace(deep, line_m=1.31 * greatest)
    assert not of_kind(planned(OUT_AND_HOME, stays_min=(20.0,), depths_m=(8.0,), tide=tide(), swimmer=longer), "deep")


def test_mark_that_becomes_too_deep_says_until_when():
    """On the rising tide: low water 0.9 m at 05:54, high water 5.2 m at 12:00."""
    depart = NOON - timedelta(hours=5)
    table = tide(depart=depart)
    plan = planned(OUT_AND_HOME, stays_min=(120.0,), depths_m=(9.0,), tide=table, depart=depart)
    reach_min = 366.0 / np.pi * np.arccos(1.0 - 2.0 * (3.0 - 0.9) / 4.3)
    until = datetime(2027, 6, 5, 5, 54, tzinfo=UTC) + timedelta(minutes=reach_min)
    assert f"until {until:%H:%M}" in only(plan, "deep").message


def test_depth_now_is_charted_depth_and_height_of_tide():
    plan = planned(OUT_AND_HOME, depths_m=(8.0,), tide=tide())
    fraction = minutes_between(datetime(2027, 6, 5, 12, tzinfo=UTC), plan.stops[1].arrive) / 370.0
    assert plan.stops[1].depth_now_m == pytest.approx(
        8.0 + 5.2 - 4.4 * (1.0 - np.cos(np.pi * fraction)) / 2.0, abs=1e-6
    )


@pytest.mark.parametrize(("charted_m", "flagged"), [(-3.1, False), (-3.2, True), (-6.0, True)])
def test_shallow_mark_is_below_a_metre_and_a_half_at_its_least(charted_m, flagged):
    """Drying heights are negative depths. Arrived at 13:24, with 4.66 m of tide, falling."""
    plan = planned(OUT_AND_HOME, depths_m=(charted_m,), tide=tide())
    assert bool(of_kind(plan, "shallow")) == flagged


def test_mark_too_deep_at_all_tides_says_so_only_where_the_tide_is_known():
    """11.3 m charted needs a tide of 0.7 m, and the next low water is 0.8 m; 13 hours on the tide has turned twice."""
    known = only(planned(OUT_AND_HOME, depths_m=(14.0,), tide=longer_tide()), "deep")
    assert "It stays so through the tide." in known.message
    ended = only(planned(OUT_AND_HOME, depths_m=(11.3,), tide=tide()), "deep")
    assert "through the tide" not in ended.message and "The tide table ends" in ended.message


def longer_tide():
    """The same tide and one more."""
    return TideTable(
        port="drawn",
        times_s=3600.0 * np.array([-7.1, -1.0, 5.2, 11.4, 17.5]),
        heights_m=np.array([0.9, 5.2, 0.8, 5.1, 0.9]),
        is_high=np.array([False, True, False, True, False]),
    )


def test_unknown_tide_gives_no_depth():
    plan = planned(OUT_AND_HOME, depths_m=(8.0,))
    assert plan.stops[1].depth_now_m is None and plan.stops[1].charted_depth_m == 8.0
    flag = only(plan, "tide_unknown")
    assert "8.0 m" in flag.message and not of_kind(plan, "deep")
    ended = planned(OUT_AND_HOME, depths_m=(8.0,), tide=tide(), stays_min=(350.0,))
    assert only(ended, "tide_unknown").name == "Rock 1", "the table ends during the stay"


def test_unknown_depth_is_a_warning_and_no_number():
    plan = planned(OUT_AND_HOME, tide=tide())
    assert plan.stops[1].depth_now_m is None and plan.stops[1].charted_depth_m is None
    assert any("Rock 1" in warning and "500 m" in warning for warning in plan.warnings)


def test_depth_comes_from_the_survey_where_the_mark_has_none():
    sounding = np.append(SITE.xy([(0.0, 1000.0)])[0] + 10.0, 9.0)[None, :]
    plan = planned(OUT_AND_HOME, tide=tide(), survey=DepthSurvey(soundings=sounding))
    assert plan.stops[1].charted_depth_m == 9.0


# What is not known of the water.
def hourly(range_m):
    """A station whose port has the given range that day; mean ranges 4.2 and 1.9 m."""
    waters = TideTable(
        port="drawn",
        times_s=3600.0 * np.array([-9.0, -3.0, 3.0, 9.0]),
        heights_m=np.array([0.5, 0.5 + range_m, 0.5, 0.5 + range_m]),
        is_high=np.array([False, True, False, True]),
    )
    rates = m_s_from_knots(np.full(13, 0.3))
    table = HourlyTable(
        station="drawn", reference="HW", set_deg=np.full(13, 90.0), spring_m_s=rates, neap_m_s=rates / 2.0,
        spring_range_m=4.2, neap_range_m=1.9,
    )  # fmt: skip
    return StreamField(stations=(SITE.station(stream=HourlyStream(table, waters)),))


@pytest.mark.parametrize(("range_m", "flagged"), [(1.8, True), (2.0, False), (4.1, False), (4.3, True), (np.nan, True)])
def test_range_of_the_day_outside_springs_and_neaps_is_extrapolated(range_m, flagged):
    plan = planned(stream=hourly(range_m))
    assert bool(of_kind(plan, "stream_extrapolated")) == flagged and plan.feasible
    if flagged:
        assert only(plan, "stream_extrapolated").severity == "warn"


def test_stream_unknown_stops_the_leg_and_leaves_the_later_ones_undated():
    plan = planned(
        OUT_AND_HOME,
        stream=StreamField(stations=(SITE.station(stream=ConstantStream(east_m_s=np.nan, north_m_s=0.0)),)),
    )
    assert only(plan, "stream_unknown").leg == 1
    assert not plan.feasible and plan.total_min is None
    for leg in plan.legs:
        assert not leg.feasible and leg.reason and leg.minutes is None and leg.heading_mag_deg is None
        assert leg.stream_kn is None and leg.ground_speed_m_s is None and leg.card_heading is None
    assert "add a stream station" in plan.legs[0].reason and "earlier leg" in plan.legs[1].reason


def test_no_station_at_all_is_unknown_and_not_slack():
    plan = planned(stream=StreamField(stations=()))
    assert of_kind(plan, "stream_unknown") and plan.legs[0].minutes is None


# The rest of what a plan says.
@pytest.mark.parametrize(
    ("heading", "step", "card"),
    [(103.0, 5.0, "105M"), (312.0, 5.0, "310M"), (358.0, 5.0, "000M"), (2.0, 5.0, "000M"), (7.6, 5.0, "010M"),
     (97.4, 5.0, "095M"), (103.4, 1.0, "103M"), (359.6, 1.0, "000M"), (359.7, 0.1, "000M"), (45.0, 45.0, "045M")],
)  # fmt: skip
def test_card_heading_has_three_digits_to_the_nearest_step(heading, step, card):
    assert card_heading(heading, step) == card


def test_alarm_is_half_an_hour_after_the_landing_over_the_night_that_clocks_go_back():
    """Lisbon, 2027-10-31: landed at 01:33 summer time, alarm at 01:03 winter time."""
    plan = planned(depart=datetime(2027, 10, 31, 0, 10, tzinfo=UTC), zone="Europe/Lisbon")
    arrive, alarm = plan.arrive.astimezone(UTC), plan.alarm.astimezone(UTC)
    assert alarm - arrive == timedelta(minutes=30)
    assert (plan.arrive.utcoffset(), plan.alarm.utcoffset()) == (timedelta(hours=1), timedelta(0))


def test_clock_of_the_departure_changes_nothing_but_how_times_are_shown():
    """The same moment in four zones, one of them the plan's own over its change of clocks."""
    moment = datetime(2027, 3, 28, 0, 40, tzinfo=UTC)
    plans = [
        planned(OUT_AND_HOME, depart=moment.astimezone(zone), zone="Europe/Lisbon", tide=tide(), depths_m=(5.0,))
        for zone in (UTC, timezone(timedelta(hours=9)), plan_zone("Europe/Lisbon"), plan_zone("America/New_York"))
    ]
    for plan in plans:
        assert plan.arrive == plans[0].arrive and plan.civil_dusk == plans[0].civil_dusk
        assert [flag.message for flag in plan.flags] == [flag.message for flag in plans[0].flags]
        assert plan.depart.utcoffset() == timedelta(0) and plan.arrive.utcoffset() == timedelta(hours=1)


def plan_zone(name):
    from zoneinfo import ZoneInfo

    return ZoneInfo(name)


def test_hours_of_depth_are_an_hour_apart_over_the_change_of_clocks():
    hours = np.arange(-9.0, 16.0, 6.2)
    table = TideTable(
        port="drawn",
        times_s=3600.0 * hours,
        heights_m=np.where(np.arange(len(hours)) % 2 == 0, 1.0, 4.0),
        is_high=np.arange(len(hours)) % 2 == 1,
    )
    depart = datetime(2027, 10, 31, 0, 10, tzinfo=plan_zone("Europe/Lisbon"))
    plan = planned(OUT_AND_HOME, depart=depart, zone="Europe/Lisbon", tide=table, depths_m=(5.0,), stays_min=(180.0,))
    moments = [moment.astimezone(UTC) for moment, _ in plan.stops[1].depth_by_hour]
    assert len(moments) >= 4 and {b - a for a, b in zip(moments, moments[1:])} == {timedelta(hours=1)}


def test_turn_of_the_stream_is_found_to_the_minute():
    """A stream that goes through slack at 14:00 and sets the other way after it."""

    def water(place, t_s):
        return 0.4j * (t_s - 3600.0) / 7200.0 + 0.0 * place

    plan = planned(OUT_AND_HOME, stream=WaterStream(water))
    (turn,) = plan.stream_turns
    assert turn.moment == NOON + timedelta(hours=1) and turn.rate_kn == pytest.approx(0.0, abs=1e-9)
    assert turn.set_after_deg == pytest.approx(0.0, abs=1e-6)
