"""When to turn back: the worked stories, an independent scan with the full solver, and the rule itself."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import datetime, time, timedelta

import numpy as np
import pytest
from invented_requests import NOON, SWIMMER, UTC, Site
from tideleg.core.chart.areas import Channel, ClosedArea, Land, Sailing
from tideleg.core.chart.hours import InForce
from tideleg.core.chart.marks import Mark
from tideleg.core.errors import StoppedError
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.solve.swim import GridStream, SwimWay, swim_leg, swimmable
from tideleg.core.solve.swum import Line
from tideleg.core.solve.turn_back.hard_stops import hard_stops_of
from tideleg.core.solve.turn_back.homeward import Homeward
from tideleg.core.solve.turn_back.landings import Landing
from tideleg.core.solve.turn_back.leaving import Leaving
from tideleg.core.solve.turn_back.turn_back import turn_back, with_turn_back
from tideleg.core.solve.windows.limits import LIMITS
from tideleg.core.water.field import StreamField
from tideleg.core.water.stream import KNOWN, StreamSample

HALF_S = 372.0 * 60.0
NO_RESERVE = {"reserve_factor": 1.0, "reserve_min": 0.0, "alarm_after_min": 720.0, "ashore_before_sunset_min": -60.0}
ALL_DAY = {"max_hours": 24.0, "range_m": 50_000.0, "min_ground_speed_m_s": 0.0}


class Sine:
    """A stream along one line, nothing at ``slack``, then growing towards a true direction."""

    def __init__(self, towards_deg: float, most_m_s: float, slack_s: float) -> None:
        self.angle, self.most, self.slack_s = math.radians(towards_deg), most_m_s, slack_s

    def at(self, t_s) -> StreamSample:
        rate = self.most * np.sin(np.pi * (np.asarray(t_s, dtype=float) - self.slack_s) / HALF_S)
        status = np.full(np.shape(t_s), KNOWN, dtype=np.int8)
        return StreamSample(east_m_s=rate * np.sin(self.angle), north_m_s=rate * np.cos(self.angle), status=status)


def sine_field(site: Site, towards: float, most: float, slack_s: float, **doubts) -> StreamField:
    station = site.station(stream=Sine(site.towards(towards), most, slack_s))
    return StreamField(stations=(replace(station, **doubts),))


def found_for(request):
    plan = plan_swim(request)
    return plan, turn_back(request, plan)


def clock(moment) -> str:
    return f"{moment:%H:%M}"


@pytest.mark.parametrize(("pace", "latest"), [(0.75, "12:42"), (0.55, "12:26")])
def test_story_9_latest_departure_alone_and_together(pace: float, latest: str) -> None:
    """Story 9, common practice, no source: 1 km home, adverse from 12:00, peak 0.5, home by 13:15."""
    site, noon = Site(), datetime(2027, 6, 5, 12, 0, tzinfo=UTC)
    depart = noon - timedelta(minutes=60)
    request = site.request(
        [(0.0, 0.0), (0.0, 1000.0), (0.0, 0.0)],
        stream=sine_field(site, 0.0, 0.5, 3600.0),
        depart=depart,
        swimmer=replace(SWIMMER, pace_m_s=pace, **ALL_DAY),
        **NO_RESERVE,
        back_by="13:15",
    )
    _, found = found_for(request)
    (stop,) = found.stops
    assert clock(stop.latest_leave) == latest
    assert stop.bands[0].ends_by == "back by 13:15"
    assert stop.exit == stop.planned_exit == "Beach"


def test_story_4_reserve_before_dusk_against_the_opening_of_the_window() -> None:
    """Story 4, common practice, no source: sunset 17:22, ashore by 16:37, home 50 min x 1.3: leave by 15:32."""
    site = Site()
    depart = datetime(2027, 1, 5, 13, 30, tzinfo=UTC)
    request = site.request(
        [(0.0, 0.0), (0.0, 2100.0), (0.0, 0.0)],
        depart=depart,
        swimmer=replace(SWIMMER, pace_m_s=0.7, **ALL_DAY),
        reserve_factor=1.3,
        reserve_min=0.0,
        alarm_after_min=720.0,
        ashore_before_sunset_min=45.0,
    )
    plan, found = found_for(request)
    dusk = next(stop for stop in found.hard_stops if stop.name == "dusk")
    assert plan.sunset - dusk.moment == timedelta(minutes=45)
    assert round(plan.legs[1].minutes) == 50
    (stop,) = found.stops
    # 1.3 x 50 min before the time to be ashore, as 15:32 is before 16:37.
    assert 16 * 60 + 37 - 1.3 * 50.0 == 15 * 60 + 32
    exact = dusk.moment - timedelta(minutes=1.3 * plan.legs[1].minutes)
    assert exact - timedelta(minutes=1) < stop.latest_leave <= exact
    assert stop.bands[0].ends_by == "dusk"


def test_story_7_quickest_exit_is_not_the_nearest() -> None:
    """Story 7, common practice, no source: A up-stream 900 m, B down-stream 2.1 km, v 0.65: A 50 min, B 35 at 0.35."""
    site = Site()

    def request(rate: float):
        swim = site.request(
            [(0.0, 0.0), (900.0, 0.0), (0.0, 0.0)],
            stream=site.steady(90.0, rate),
            swimmer=replace(SWIMMER, pace_m_s=0.65, **ALL_DAY),
            **NO_RESERVE,
        )
        lon, lat = site.lonlat([(3000.0, 0.0)])[0]
        return replace(swim, exits=(Mark(name="B", kind="exit", lon=float(lon), lat=float(lat)),))

    _, found = found_for(request(0.35))
    (stop,) = found.stops
    assert found.exits == ("Beach", "B")
    assert stop.exit == "B"
    assert round(stop.if_late[0].minutes) == 35
    to_a = stop.by_departure[0]
    assert (to_a.exit, round(to_a.minutes)) == ("Beach", 50)
    assert stop.else_exit == "B"
    _, weak = found_for(request(0.2))
    assert weak.stops[0].exit == "Beach"
    _, even = found_for(request(0.26))
    assert abs(even.stops[0].by_departure[0].minutes - 900.0 / 0.39 / 60.0) < 0.1
    assert abs(even.stops[0].by_departure[0].minutes - 2100.0 / 0.91 / 60.0) < 0.1


def story_11(site: Site, **settings):
    """1.6 km home, v 0.65, turn 11:20, adverse peak 0.8."""
    depart = datetime(2027, 6, 5, 10, 20, tzinfo=UTC)
    return site.request(
        [(150.0, 1600.0), (0.0, 1600.0), (0.0, 0.0)],
        stream=sine_field(site, 0.0, 0.8, 60 * 60.0),
        depart=depart,
        stays_min=(30.0,),
        swimmer=replace(SWIMMER, pace_m_s=0.65, **ALL_DAY),
        # Where it starts nobody can land again: the place lies inside a rock.
        land=(Land(name="Rock", area=site.box(90.0, 1500.0, 290.0, 1700.0)),),
        **{**NO_RESERVE, **settings},
    )


def test_story_11_time_home_is_a_cliff() -> None:
    """Story 11, common practice, no source: 11:00 41 min, 11:20 58, 11:30 84, 11:40 5.5 h."""
    site = Site()
    request = story_11(site)
    line = Line(start=request.stops_m[1], end=request.stops_m[2])
    grid = GridStream(stream=request.stream, frame=request.frame)
    leave = request.clock.seconds_of([datetime(2027, 6, 5, 11, m, tzinfo=UTC) for m in (0, 20, 30, 40)])
    leg = swim_leg(grid, line, leave, 0.65, SwimWay())
    minutes = (leg.arrive_s - leave) / 60.0
    assert [int(one) for one in minutes[:3]] == [41, 58, 84]
    assert round(float(minutes[3]) / 60.0, 1) == 5.5
    _, found = found_for(request)
    (stop,) = found.stops
    # From 11:31 on the swimmer would be pushed back on the way: not safe, and safe again when the stream turns.
    assert len(stop.bands) == 2
    assert "11:30" <= clock(stop.latest_leave) <= "11:40"
    assert stop.bands[0].ends_by == "the stream"
    again = stop.bands[1].first
    assert "15:00" < clock(again) < "17:40"
    # On a bad day it turns half an hour earlier, and the last minute is earlier by more than that.
    assert stop.latest_leave - stop.latest_leave_pessimistic > timedelta(minutes=30)


def brute_force_latest(request, plan, pace: float, stream, factor: float, fixed_min: float, stops) -> datetime:
    """The last safe minute after the arrival by the full solver, minute by minute."""
    clock, grid = request.clock, GridStream(stream=stream, frame=request.frame)
    line = Line(start=request.stops_m[1], end=request.stops_m[2])
    minute, last = math.ceil(clock.seconds(plan.stops[1].arrive) / 60.0), None
    for t_s in 60.0 * np.arange(minute, minute + 600):
        leg = swim_leg(grid, line, np.array([t_s]), pace, request.way)
        if not swimmable(leg, line, replace(request.swimmer, pace_m_s=pace, path_factor=1.0))[0]:
            break
        home = float(leg.arrive_s[0]) - t_s
        ends = [t_s + factor * home + 60.0 * fixed_min if one.with_reserve else t_s + home for one in stops]
        if any(end > clock.seconds(one.moment) for end, one in zip(ends, stops)):
            break
        last = t_s
    return clock.moment(last)


def test_latest_leave_is_that_of_the_full_solver_minute_by_minute() -> None:
    site = Site(lon=-20.0, lat=-38.0, turn_deg=200.0)
    request = story_11(site, reserve_factor=1.3, reserve_min=20.0, alarm_after_min=60.0, back_by="14:30")
    plan, found = found_for(request)
    (stop,) = found.stops
    stops = hard_stops_of(request, request.clock.seconds(plan.arrive))
    assert stop.latest_leave == brute_force_latest(request, plan, 0.65, request.stream, 1.3, 20.0, stops)


def test_bad_day_is_the_worst_of_early_on_time_and_late() -> None:
    site = Site()
    request = story_11(site, reserve_factor=1.2, reserve_min=10.0)
    plan, found = found_for(request)
    stops = hard_stops_of(request, request.clock.seconds(plan.arrive))
    latest = []
    for shift in (-1800.0, 0.0, 1800.0):
        stream = sine_field(site, 0.0, 0.8 * 1.3, 60 * 60.0 + shift)
        latest.append(brute_force_latest(request, plan, 0.9 * 0.65, stream, 1.2, 10.0, stops))
    assert found.stops[0].latest_leave_pessimistic == min(latest)


def test_more_reserve_never_lets_one_stay_longer() -> None:
    site, before = Site(), None
    for factor, fixed in ((1.0, 0.0), (1.2, 10.0), (1.3, 25.0), (1.6, 60.0)):
        _, found = found_for(story_11(site, reserve_factor=factor, reserve_min=fixed, back_by="14:30"))
        latest = found.stops[0].latest_leave
        assert before is None or latest <= before
        before = latest


def test_alarm_is_kept_without_the_reserve_and_hours_with_it() -> None:
    site = Site()
    swim = site.request(
        [(0.0, 0.0), (0.0, 700.0), (0.0, 0.0)],
        stays_min=(30.0,),
        swimmer=replace(SWIMMER, max_hours=3.0),
        reserve_factor=1.3,
        reserve_min=25.0,
        alarm_after_min=30.0,
    )
    plan, found = found_for(swim)
    (stop,) = found.stops
    # Still water: leaving half an hour later than planned is home as the alarm goes out.
    assert abs((stop.latest_leave - plan.stops[1].leave).total_seconds() / 60.0 - 30.0) <= 1.0
    assert stop.bands[0].ends_by == "the alarm"
    short = replace(swim, swimmer=replace(swim.swimmer, max_hours=1.5))
    plan, found = found_for(short)
    exact = NOON + timedelta(minutes=90 - 25 - 1.3 * plan.legs[1].minutes)
    assert exact - timedelta(minutes=1) < found.stops[0].latest_leave <= exact
    assert "1.5 h in the water" == found.stops[0].bands[0].ends_by


def test_too_late_on_arrival_is_told_and_left_empty() -> None:
    site = Site()
    swim = site.request(
        [(0.0, 0.0), (0.0, 1500.0), (0.0, 0.0)], swimmer=replace(SWIMMER, max_hours=1.25), reserve_factor=1.5
    )
    plan, found = found_for(swim)
    assert found.stops[0].latest_leave is None and found.stops[0].exit is None
    assert "no exit is reached in time" in found.flags[0].message and found.warnings == found.warnings[-1:]
    filled = with_turn_back(plan, found)
    assert filled.flags[0] == found.flags[0]
    assert filled.stops[1].latest_leave is None
    assert filled.turn_back is found


def test_unknown_stream_on_the_way_home_is_never_safe() -> None:
    site = Site()
    known = site.request([(0.0, 0.0), (0.0, 700.0), (0.0, 0.0)])

    class UntilHalfPast:
        def at(self, t_s) -> StreamSample:
            still = np.where(np.asarray(t_s, dtype=float) < 2400.0, 0.0, np.nan)
            status = np.where(np.isnan(still), 0, KNOWN).astype(np.int8)
            return StreamSample(east_m_s=still, north_m_s=still, status=status)

    plan, _ = found_for(known)
    field = StreamField(stations=(replace(site.station(stream=UntilHalfPast()), phase_uncertainty_s=0.0),))
    found = turn_back(replace(known, stream=field), plan)
    (stop,) = found.stops
    exact = NOON + timedelta(seconds=2400.0) - timedelta(minutes=plan.legs[1].minutes)
    assert stop.latest_leave is None or stop.latest_leave <= exact
    assert all(band.ends_by == "the stream is not known" for band in stop.bands[:1])


def test_way_home_goes_round_land_and_closed_water() -> None:
    site = Site()
    wall = Land(name="Spit", area=site.box(-300.0, 400.0, 900.0, 440.0))
    around = [(0.0, 0.0), (-450.0, 420.0), (0.0, 800.0), (-450.0, 420.0), (0.0, 0.0)]
    swim = site.request(around, land=(wall,), swimmer=replace(SWIMMER, **ALL_DAY), **NO_RESERVE)
    plan, found = found_for(swim)
    assert not [flag for flag in plan.flags if flag.kind == "land"]
    mark = found.stops[1]
    way = mark.by_departure[0]
    assert len(way.headings_mag_deg) >= 2
    straight = 800.0 / SWIMMER.pace_m_s / 60.0
    shortest = 2.0 * math.hypot(300.0, 400.0) / SWIMMER.pace_m_s / 60.0
    assert straight < shortest <= way.minutes + 0.5 < 1.15 * shortest
    ban = ClosedArea(name="Range", rule="no_entry", area=wall.area)
    closed = replace(swim, chart=replace(swim.chart, land=(), closed_areas=(ban,)))
    assert abs(found_for(closed)[1].stops[1].by_departure[0].minutes - way.minutes) < 2.0


def test_no_way_home_but_over_land_is_never_safe() -> None:
    site = Site()
    ring = [(-600.0, -600.0), (600.0, -600.0), (600.0, 600.0), (-600.0, 600.0)]
    hole = [(-300.0, -300.0), (300.0, -300.0), (300.0, 300.0), (-300.0, 300.0)]
    atoll = Land(name="Ring", area=site.area(ring, hole))
    swim = site.request([(900.0, 0.0), (0.0, 0.0), (900.0, 0.0)], land=(atoll,))
    plan, found = found_for(swim)
    assert found.stops[0].latest_leave is None
    assert found.stops[0].if_late == ()


def test_point_of_no_return_is_where_the_way_back_stops_being_safe() -> None:
    """Out with the stream and back against it: from a place x the way back takes x / (v - c), in a steady stream."""
    site, pace, rate = Site(), 0.7, 0.3
    swim = site.request(
        [(0.0, 0.0), (0.0, 3000.0), (0.0, 0.0)],
        stream=site.steady(0.0, rate),
        swimmer=replace(SWIMMER, pace_m_s=pace, max_hours=1.5, range_m=9000.0),
        reserve_factor=1.2,
        reserve_min=10.0,
        alarm_after_min=720.0,
    )
    plan, found = found_for(swim)
    expected, bad = found.no_return
    assert (expected.leg, expected.pessimistic, bad.pessimistic) == (1, False, True)
    # t + 1.2 x / (v - c) + 10 min = 90 min with x = (v + c) t.
    t_s = (90.0 - 10.0) * 60.0 / (1.0 + 1.2 * (pace + rate) / (pace - rate))
    step_m = 3000.0 / 12.0
    assert (pace + rate) * t_s - step_m <= expected.way_m <= (pace + rate) * t_s
    assert not expected.whole_leg and expected.moment is not None
    assert bad.way_m < expected.way_m
    easy = replace(swim, swimmer=replace(swim.swimmer, max_hours=12.0))
    assert found_for(easy)[1].no_return[0].whole_leg


def test_heading_home_of_an_if_late_row_is_the_full_solvers() -> None:
    site = Site(turn_deg=35.0)
    request = story_11(site, alarm_after_min=30.0)
    plan, found = found_for(request)
    way = found.stops[0].if_late[0]
    assert abs((way.leave - plan.stops[1].leave).total_seconds()) <= 60.0
    late = replace(
        request,
        route=replace(request.route, lonlat=request.route.lonlat[1:]),
        stops=request.stops[1:],
        depart=way.leave,
    )
    alone = plan_swim(late)
    assert abs(alone.legs[0].heading_mag_deg - way.headings_mag_deg[0]) < 0.3
    assert abs(alone.legs[0].minutes - way.minutes) < 0.02


def test_polar_day_has_no_dusk_and_polar_night_lets_nobody_leave() -> None:
    day = Site(lon=20.0, lat=71.0).request([(0.0, 0.0), (0.0, 500.0), (0.0, 0.0)])
    assert "dusk" not in [stop.name for stop in found_for(day)[1].hard_stops]
    night = Site(lon=20.0, lat=80.0).request(
        [(0.0, 0.0), (0.0, 500.0), (0.0, 0.0)], depart=datetime(2027, 12, 21, 11, tzinfo=UTC)
    )
    _, found = found_for(night)
    assert next(stop for stop in found.hard_stops if stop.name == "dusk").moment == night.depart
    assert found.stops[0].latest_leave is None


def test_back_by_is_read_by_the_plans_clock() -> None:
    site = Site(lon=174.9, lat=-41.0)
    zone = "Pacific/Auckland"
    depart = datetime(2027, 6, 5, 22, 0, tzinfo=UTC)
    request = site.request([(0.0, 0.0), (0.0, 500.0), (0.0, 0.0)], depart=depart, zone=zone, back_by="12:00")
    stop = next(one for one in hard_stops_of(request, math.nan) if one.name == "back_by")
    assert stop.moment.isoformat() == "2027-06-06T12:00:00+12:00"
    past = replace(request, settings=replace(request.settings, back_by="09:30"))
    stop = next(one for one in hard_stops_of(past, math.nan) if one.name == "back_by")
    assert stop.moment.isoformat() == "2027-06-06T09:30:00+12:00"
    assert found_for(past)[1].stops[0].latest_leave is None
    evening = replace(past, depart=datetime(2027, 6, 6, 10, 30, tzinfo=UTC))
    after_midnight = replace(evening, settings=replace(request.settings, back_by="00:30"))
    stop = next(one for one in hard_stops_of(after_midnight, math.nan) if one.name == "back_by")
    assert stop.moment.isoformat() == "2027-06-07T00:30:00+12:00"
    assert "alarm" not in [one.name for one in hard_stops_of(request, math.nan)]


def test_stopping_raises() -> None:
    request = Site().request([(0.0, 0.0), (0.0, 500.0), (0.0, 0.0)])
    with pytest.raises(StoppedError):
        turn_back(request, plan_swim(request), is_cancelled=lambda: True)


def test_minutes_are_whole_by_the_clock_whatever_second_the_plan_starts_at() -> None:
    depart = datetime(2027, 6, 5, 12, 0, 17, tzinfo=UTC)
    request = Site().request([(0.0, 0.0), (0.0, 700.0), (0.0, 0.0)], depart=depart, stays_min=(20.0,))
    _, found = found_for(request)
    (stop,) = found.stops
    assert stop.latest_leave.second == 0 and stop.bands[0].first.second == 0
    assert timedelta(0) <= stop.bands[0].first - stop.arrive < timedelta(minutes=1)


def test_back_by_in_an_hour_that_comes_twice_is_the_earlier_one() -> None:
    request = Site().request(
        [(0.0, 0.0), (0.0, 300.0), (0.0, 0.0)],
        depart=datetime(2027, 10, 30, 23, 30, tzinfo=UTC),
        zone="Europe/Lisbon",
        back_by="01:30",
    )
    stop = next(one for one in hard_stops_of(request, math.nan) if one.name == "back_by")
    assert stop.moment.isoformat() == "2027-10-31T01:30:00+01:00"


def test_a_bad_day_is_never_better_than_the_day_expected() -> None:
    """A fair stream may fail: 8 km with 0.6 m/s, pace 0.6, k 2, back by 15:00."""
    site = Site()
    swim = site.request(
        [(0.0, 8300.0), (0.0, 8000.0), (0.0, 0.0)],
        stream=site.steady(180.0, 0.6),
        depart=datetime(2027, 6, 5, 9, 30, tzinfo=UTC),
        swimmer=replace(SWIMMER, pace_m_s=0.6, **ALL_DAY),
        land=(Land(name="Rock", area=site.box(-200.0, 8200.0, 200.0, 8500.0)),),
        back_by="15:00",
        **{**NO_RESERVE, "reserve_factor": 2.0},
    )
    _, found = found_for(swim)
    (stop,) = found.stops
    home_min = 8000.0 / (0.9 * 0.6 + 0.7 * 0.6) / 60.0
    exact = datetime(2027, 6, 5, 15, 0, tzinfo=UTC) - timedelta(minutes=2.0 * home_min)
    assert exact - timedelta(minutes=1) < stop.latest_leave_pessimistic <= exact < stop.latest_leave


def test_bad_day_and_else_exit_of_the_planned_exit_are_its_own() -> None:
    """Slip is up-stream and closes first; Cove is down-stream; a far beach is no other exit in time."""
    site = Site()
    swim = site.request(
        [(0.0, 0.0), (0.0, 1500.0), (0.0, 0.0)],
        stream=site.steady(0.0, 0.3),
        depart=datetime(2027, 6, 5, 9, 0, tzinfo=UTC),
        swimmer=replace(SWIMMER, pace_m_s=0.6, **ALL_DAY),
        back_by="17:00",
        **{**NO_RESERVE, "reserve_factor": 1.3, "reserve_min": 25.0},
    )
    cove, far = (
        Mark(name=name, kind="exit", lon=float(lon), lat=float(lat))
        for name, (lon, lat) in zip(("Cove", "Far Beach"), site.lonlat([(0.0, 3000.0), (0.0, -9000.0)]))
    )
    _, found = found_for(replace(swim, exits=(cove,)))
    (stop,) = found.stops
    assert stop.latest_planned_exit < stop.latest_leave
    assert stop.else_exit == stop.exit == "Cove"
    planned_bad = [way for way in stop.by_departure if way.safe_pessimistic]
    latest_bad = stop.latest_planned_exit_pessimistic
    assert (latest_bad is None) == (not planned_bad)
    assert latest_bad is None or latest_bad < stop.latest_planned_exit
    _, found = found_for(replace(swim, exits=(far,)))
    assert found.stops[0].else_exit is None


def test_a_closing_at_other_hours_does_not_bar_the_way_home() -> None:
    site = Site()
    beach = ClosedArea(
        name="Night range",
        rule="no_entry",
        area=site.box(-400.0, -100.0, 400.0, 300.0),
        in_force=InForce(start=time(22, 0), end=time(6, 0)),
    )
    swim = site.request([(0.0, 0.0), (0.0, 700.0), (0.0, 0.0)])
    open_day = found_for(swim)[1].stops[0]
    night = found_for(replace(swim, chart=replace(swim.chart, closed_areas=(beach,))))[1].stops[0]
    assert night.latest_leave == open_day.latest_leave
    always = replace(beach, in_force=InForce(start=time(8, 0), end=time(20, 0)))
    shut = found_for(replace(swim, chart=replace(swim.chart, closed_areas=(always,))))[1].stops[0]
    assert shut.latest_leave is None


def test_two_places_of_one_name_are_told_apart() -> None:
    site = Site()
    swim = site.request([(0.0, 0.0), (0.0, 700.0), (300.0, 0.0)])
    lon, lat = site.lonlat([(600.0, 0.0)])[0]
    _, found = found_for(replace(swim, exits=(Mark(name="Beach", kind="exit", lon=float(lon), lat=float(lat)),)))
    assert found.exits == ("Beach", "Slip", "Beach (2)")


def test_planned_leaving_after_its_exits_last_minute_is_told() -> None:
    site = Site()
    swim = story_11(site, back_by="13:00")
    late = replace(swim, stops=(swim.stops[0], replace(swim.stops[1], stay_min=110.0), swim.stops[2]))
    plan, found = found_for(late)
    assert plan.stops[1].leave > found.stops[0].latest_leave
    (flag,) = found.flags
    assert (flag.kind, flag.severity, flag.leg) == ("over_time", "warn", 2)
    assert "the last safe minute" in flag.message and "too late after" in flag.brief
    assert with_turn_back(plan, found).flags[0] == flag
    assert found_for(swim)[1].flags == ()


def test_ways_if_late_reach_the_last_safe_minute_and_end_with_the_first_row_that_is_too_late() -> None:
    site = Site()
    about = {"swimmer": replace(SWIMMER, **ALL_DAY), "back_by": "15:00", "alarm_after_min": 720}
    swim = site.request([(0.0, 0.0), (0.0, 700.0), (0.0, 0.0)], **about)
    (stop,) = found_for(swim)[1].stops
    rows = stop.if_late
    assert len(rows) > 7 and stop.latest_leave in [row.leave for row in rows]
    assert [row.safe for row in rows] == [True] * (len(rows) - 1) + [False]
    steps = {second.leave - first.leave for first, second in zip(rows, rows[1:])}
    assert max(steps) == timedelta(minutes=10)


def test_another_exit_that_opens_minutes_later_is_named_with_its_time() -> None:
    """The water to Cove is closed until six minutes after the planned exit's last safe minute."""
    site = Site()
    swim = site.request([(0.0, 0.0), (0.0, 700.0), (0.0, 0.0)], swimmer=replace(SWIMMER, **ALL_DAY), back_by="13:00")
    lon, lat = site.lonlat([(0.0, 1000.0)])[0]
    cove = Mark(name="Cove", kind="exit", lon=float(lon), lat=float(lat))
    last = found_for(swim)[1].stops[0].latest_planned_exit
    shut = ClosedArea(
        name="Range",
        rule="no_entry",
        area=site.box(-300.0, 750.0, 300.0, 900.0),
        in_force=InForce(start=time(6, 0), end=(last + timedelta(minutes=6)).time()),
    )
    closed = replace(swim, exits=(cove,), chart=replace(swim.chart, closed_areas=(shut,)))
    (stop,) = found_for(closed)[1].stops
    assert stop.latest_planned_exit == last
    assert stop.else_exit == "Cove"
    assert timedelta(0) < stop.else_not_before - last <= timedelta(minutes=6)


def test_a_band_that_only_the_day_expected_ends_on_bad_days_says_what_ends_it() -> None:
    """The latest arrival of all days counts: what stops the day expected alone ends the band of the bad days too."""
    request = Site().request([(0.0, 0.0), (0.0, 500.0), (0.0, 0.0)])
    arrive = np.full((5, 4), 1800.0)
    limit = np.zeros((5, 4), dtype=np.int8)
    arrive[0, 2:], limit[0, 2:] = np.nan, LIMITS.index("ferry")
    home = Homeward(arrive_s=arrive, limit=limit, heading_rad=np.zeros((5, 4, 1)))
    leaving = Leaving(
        request=request,
        landings=(Landing(name="Beach", place_m=np.zeros(2), planned=True),),
        stops=hard_stops_of(request, math.nan),
        leave_s=60.0 * np.arange(4),
        homes=(home,),
    )
    (band,) = leaving.bands(leaving.worst_s, bad=True)
    assert band.ends_by == "a sailing"
    assert band.last == request.clock.moment(60.0)


def test_where_leaving_on_arrival_is_not_safe_the_band_of_the_planned_leaving_counts() -> None:
    """A sailing bars the way home for the first minutes of the stay; after it the way is open."""
    site = Site()
    cut = Channel(
        name="Cut",
        kind="ferry",
        area=site.box(-800.0, 300.0, 800.0, 400.0),
        flow_deg=site.towards(90.0),
        sailings=(Sailing(when=time(13, 28), clear_before_min=4.0, clear_after_min=6.0),),
    )
    swim = site.request([(0.0, 0.0), (0.0, 700.0), (0.0, 0.0)], stays_min=(40.0,), channels=(cut,))
    plan, found = found_for(swim)
    (stop,) = found.stops
    assert stop.bands[0].first > stop.arrive + timedelta(minutes=1)
    assert stop.latest_leave is not None and stop.latest_leave > plan.stops[1].leave
    assert any("not before" in flag.message for flag in found.flags)
