"""A swim looked at minute by minute agrees with the swim planned, with the water itself and with reckoning by hand."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from independent_swim import WaterStream
from invented_requests import NOON, Site
from invented_waters import growing, rotary, tide_and_eddy
from tideleg.core.chart.areas import Land
from tideleg.core.chart.depths import DepthSurvey
from tideleg.core.errors import StoppedError
from tideleg.core.quantities import M_S_PER_KNOT, knots_from_m_s
from tideleg.core.results.swim_in_time import StreamHere, SwimInTime
from tideleg.core.results.swim_plan import SwimPlan
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.solve.request import SwimRequest
from tideleg.core.solve.swim_in_time import MOST_ARROWS, swim_in_time
from tideleg.core.water.tide import TideTable

SITE = Site()
STOPS_M = [(0.0, 0.0), (300.0, 900.0), (900.0, 600.0), (0.0, 0.0)]
STAYS_MIN = (20.0, 10.0)
MINUTE = timedelta(minutes=1)


def looked_at(water=tide_and_eddy, stops_m=STOPS_M, **about) -> tuple[SwimRequest, SwimPlan, SwimInTime]:
    request = SITE.request(stops_m, stream=WaterStream(water), stays_min=STAYS_MIN, **about)
    swim = plan_swim(request)
    return request, swim, swim_in_time(request, swim)


def tide_table() -> TideTable:
    return TideTable(
        port="P",
        times_s=np.array([-2.0, 4.0, 10.0]) * 3600.0,
        heights_m=np.array([0.5, 3.5, 0.7]),
        is_high=np.array([False, True, False]),
    )


def test_the_minutes_follow_each_other_from_leaving_to_landing() -> None:
    _, swim, found = looked_at()
    assert swim.arrive is not None
    assert found.minutes[0].moment == swim.depart and found.minutes[-1].moment == swim.arrive
    assert all(one.end == after.moment for one, after in zip(found.minutes, found.minutes[1:]))
    assert all(one.end - one.moment <= MINUTE for one in found.minutes)


@pytest.mark.parametrize("water", [tide_and_eddy, growing(30.0, 0.1, 0.2), rotary(0.3, 6.0)])
def test_the_swimmer_is_where_heading_and_stream_have_carried_him(water) -> None:
    """Reckoned second by second from the first stop with the heading told and the water itself."""
    request, swim, found = looked_at(water)
    leg = swim.legs[0]
    turn_deg = float(request.frame.convergence_at(np.mean(request.stops_m[:2, 0])))
    heading = np.radians(leg.heading_true_deg - turn_deg)
    place = complex(*request.stops_m[0])
    pace = request.swimmer.made_good_m_s * complex(np.sin(heading), np.cos(heading))
    away = []
    for minute in [one for one in found.minutes if one.leg == 1 and not one.is_stay]:
        seen = complex(*request.frame.to_xy(np.array([[minute.lon, minute.lat]]))[0])
        away.append(abs(seen - place))
        for second in range(60):
            t_s = request.clock.seconds(minute.moment) + second + 0.5
            place += pace + complex(water(np.array([place]), np.array([t_s]))[0])
    assert len(away) > 15 and max(away) < 2.0


def test_stream_heading_and_leg_are_those_of_the_track_at_its_own_moments() -> None:
    _, swim, found = looked_at()
    for leg in swim.legs:
        for point in leg.track[:-1]:
            minute = next(one for one in found.minutes if one.moment <= point.moment < one.end)
            if point.moment == minute.moment:
                assert minute.leg == leg.number and minute.place == leg.end_name
                assert minute.stream.rate_kn == pytest.approx(point.stream_kn, abs=0.02)
                assert minute.heading_mag_deg == pytest.approx(point.heading_mag_deg)


def test_a_stay_holds_no_heading_and_stands_on_the_stop() -> None:
    request, swim, found = looked_at(depths_m=(7.0, 12.0), tide=tide_table())
    stay = [one for one in found.minutes if one.is_stay and one.leg == 1]
    assert len(stay) == pytest.approx(STAYS_MIN[0], abs=1)
    assert {one.heading_mag_deg for one in stay} == {None} and {one.place for one in stay} == {"Rock 1"}
    assert all((one.lon, one.lat) == pytest.approx((swim.stops[1].lon, swim.stops[1].lat), abs=1e-7) for one in stay)
    height = float(request.tide.height_m(request.clock.seconds(stay[0].moment)))
    assert stay[0].tide_m == pytest.approx(height) and stay[0].depth_m == pytest.approx(7.0 + height)
    assert stay[0].depth_m == pytest.approx(swim.stops[1].depth_now_m, abs=0.02)


def test_without_a_tide_height_and_depth_are_unknown_and_not_nought() -> None:
    _, _, found = looked_at(depths_m=(7.0, 12.0))
    assert {one.tide_m for one in found.minutes} == {one.depth_m for one in found.minutes} == {None}
    assert {one.tide_rises for one in found.minutes} == {None}


def test_a_tide_that_turns_on_the_way_rises_before_and_falls_after() -> None:
    _, _, found = looked_at(tide=replace(tide_table(), times_s=np.array([-5.0, 0.5, 7.0]) * 3600.0))
    turn = NOON + timedelta(minutes=30)
    assert {one.tide_rises for one in found.minutes if one.moment < turn} == {True}
    assert {one.tide_rises for one in found.minutes if one.moment > turn} == {False}


def test_the_arrows_along_the_track_stand_at_regular_minutes_and_one_after_the_other() -> None:
    _, swim, found = looked_at()
    assert all(one.moment.minute % 5 == 0 for one in found.along) and len(found.along) <= MOST_ARROWS + 1
    assert all(one.end == after.begin for one, after in zip(found.along, found.along[1:]))
    assert found.along[-1].end >= swim.arrive


def test_a_longer_swim_has_its_arrows_farther_apart() -> None:
    _, _, found = looked_at(stops_m=[(0.0, 0.0), (2500.0, 4000.0), (4000.0, 600.0), (0.0, 0.0)])
    gaps = {after.begin - one.begin for one, after in zip(found.along, found.along[1:])}
    assert len(found.along) <= MOST_ARROWS + 1 and gaps <= {timedelta(minutes=10), timedelta(minutes=15)}


def test_arrows_are_true_where_the_grid_is_not() -> None:
    """Ten kilometres east of the frame's centre its grid is turned: the set told is the stream's own, true."""
    far = Site(lon=SITE.lon)
    request = far.request([(0.0, 0.0), (0.0, 800.0), (0.0, 0.0)], stream=far.steady(60.0, 0.2))
    moved = replace(request, frame=replace(request.frame, lon=request.frame.lon - 0.2))
    found = swim_in_time(moved, plan_swim(moved))
    turn_deg = float(moved.frame.convergence_at(moved.stops_m[0, 0]))
    assert turn_deg > 0.1
    assert found.along[1].set_deg == pytest.approx(60.0 + turn_deg, abs=0.01)


def gap(place, t_s):
    return np.where(place.imag > 500.0, np.nan, 0.1 + 0.0j)


def test_water_not_known_gives_marks_along_the_leg_and_never_a_rate() -> None:
    _, swim, found = looked_at(gap)
    assert not swim.legs[0].track and swim.legs[0].depart is not None and swim.legs[1].depart is None
    first = [one for one in found.along if one.leg == 1]
    assert {one.known for one in first} == {"known", "unknown"}  # it begins in water that is known
    assert all((one.rate_kn is None) is (one.known == "unknown") for one in found.along)
    assert all(one.rate_kn is None or one.rate_kn > 0.1 for one in found.along)
    later_on = [one for one in found.along if one.leg in (2, 3)]
    assert {one.leg for one in later_on} == {2, 3}
    assert {(one.known, one.moment, one.begin, one.end) for one in later_on} == {("unknown", None, None, None)}
    assert len(found.minutes) == 1 and found.minutes[0].place == "Slip"  # it gets no further than the start


def test_a_reading_without_a_rate_cannot_be_called_known() -> None:
    about = {"lon": 0.0, "lat": 0.0, "moment": None, "begin": None, "end": None, "set_deg": None}
    with pytest.raises(ValueError, match="known"):
        StreamHere(**about, rate_kn=None, known="known")
    with pytest.raises(ValueError, match="unknown"):
        StreamHere(**about, rate_kn=0.0, known="unknown")


def test_a_swim_that_gets_stuck_ends_where_it_waits() -> None:
    """From the second leg on, which goes east, the stream sets west at twice the pace."""
    _, swim, found = looked_at(lambda place, t_s: np.where(t_s > 2400.0, -1.4 + 0.0j, 0.05 + 0.0j) + 0.0 * place)
    assert swim.legs[0].feasible and not swim.legs[1].track
    assert found.minutes[-1].is_stay and found.minutes[-1].place == "Rock 1"
    assert found.minutes[-1].moment == swim.stops[1].leave
    stuck = [one for one in found.along if one.leg == 2]
    assert stuck and {one.begin for one in stuck} == {swim.legs[1].depart}
    assert all(one.rate_kn == pytest.approx(1.4 / M_S_PER_KNOT, abs=0.01) for one in stuck)


def test_a_leg_that_cannot_be_swum_is_told_so_and_gives_no_heading() -> None:
    """A stream that for a while sets harder across the second leg than anyone can offset, as the plan says."""

    def water(place, t_s):
        return np.where((t_s > 2700.0) & (t_s < 2900.0), 0.9j, 0.05j) + 0.0 * place

    _, swim, found = looked_at(water)
    assert not swim.legs[1].feasible and swim.legs[1].track
    second = [one for one in found.minutes if one.leg == 2 and not one.is_stay]
    assert second and not any(one.can_be_swum for one in second)
    assert {one.heading_mag_deg for one in second} == {None}
    assert all(one.can_be_swum for one in found.minutes if one.leg == 1)


def test_every_moment_of_the_swim_is_held_by_one_reading_at_each_place_of_the_grid() -> None:
    request, swim, found = looked_at()
    places = {(one.lon, one.lat) for one in found.around}
    assert 20 <= len(places) <= 150
    for minute in found.minutes[:: len(found.minutes) // 7]:
        now = [one for one in found.around if one.begin <= minute.moment < one.end]
        assert {(one.lon, one.lat) for one in now} == places and len(now) == len(places)
    for one in found.around[:: len(found.around) // 20]:
        x_m, y_m = request.frame.to_xy(np.array([[one.lon, one.lat]]))[0]
        t_s = request.clock.seconds(one.moment)
        water = tide_and_eddy(np.array([complex(x_m, y_m)]), np.array([t_s]))[0]
        assert one.rate_kn == pytest.approx(knots_from_m_s(abs(water)), abs=1e-4)


def test_the_grid_reaches_round_the_route_and_leaves_out_the_land() -> None:
    land = SITE.box(-2000.0, -2000.0, 2000.0, -50.0)
    request, _, found = looked_at(land=(Land(name="Shore", area=land),))
    xy_m = request.frame.to_xy(np.array([(one.lon, one.lat) for one in found.around]))
    assert not land.contains(xy_m).any()
    assert xy_m[:, 0].min() < -100.0 and xy_m[:, 0].max() > 1000.0 and xy_m[:, 1].max() > 1000.0
    _, _, without = looked_at()
    assert len(without.around) > len(found.around)


def test_near_a_beach_the_contour_farther_out_is_not_taken_for_the_depth() -> None:
    beach = Land(name="Shore", area=SITE.box(-2000.0, -2000.0, 2000.0, -20.0))
    ten = SITE.xy([(-2000.0, 600.0), (2000.0, 600.0)])
    survey = DepthSurvey(contours=np.array([[*ten[0], *ten[1], 10.0]]))
    request, _, found = looked_at(land=(beach,), survey=survey, tide=tide_table())
    swum = [one for one in found.minutes if not one.is_stay]
    north_m = request.frame.to_xy(np.array([(one.lon, one.lat) for one in swum]))[:, 1]
    close = [one.depth_m for one, y_m in zip(swum, north_m) if y_m < 350.0]
    out = [one for one, y_m in zip(swum, north_m) if 500.0 < y_m < 900.0]
    assert len(close) > 5 and set(close) == {None}
    assert out and all(one.depth_m == pytest.approx(10.0 + one.tide_m) for one in out)


def test_minutes_are_elapsed_ones_on_the_night_when_clocks_go_back() -> None:
    """Lisbon, 31 October 2027: after 01:59 summer time comes 01:00 (IANA zone data)."""
    depart = datetime(2027, 10, 31, 0, 30, tzinfo=timezone.utc).astimezone(ZoneInfo("Europe/Lisbon"))
    _, _, found = looked_at(depart=depart, zone="Europe/Lisbon")
    seconds = [one.moment.timestamp() for one in found.minutes]
    assert np.allclose(np.diff(seconds)[:-1], 60.0)
    assert [f"{found.minutes[row].moment:%H:%M}" for row in (0, 29, 30)] == ["01:30", "01:59", "01:00"]
    begins = [one.begin.timestamp() for one in found.along]
    assert np.allclose(np.diff(begins), 300.0)


def test_the_heading_is_the_one_in_force_in_the_hour_that_comes_twice() -> None:
    """Lisbon, 31 October 2027, as above: the changes of heading before the clocks go back are not those after it."""
    depart = datetime(2027, 10, 31, 0, 48, tzinfo=timezone.utc).astimezone(ZoneInfo("Europe/Lisbon"))
    _, swim, found = looked_at(depart=depart, zone="Europe/Lisbon", mode=1)
    told = {one.moment.timestamp(): one.heading_mag_deg for one in found.minutes if not one.is_stay}
    changes = [change.moment.timestamp() for leg in swim.legs for change in leg.headings]  # at these either is right
    points = [point for leg in swim.legs for point in leg.track[:-1] if point.moment.timestamp() in told]
    points = [one for one in points if min(abs(one.moment.timestamp() - change) for change in changes) > 1.0]
    assert len(points) > 10 and len({round(point.heading_mag_deg, 3) for point in points}) > 1
    for point in points:
        assert told[point.moment.timestamp()] == pytest.approx(point.heading_mag_deg)


def test_it_stops_when_stopped() -> None:
    request, swim, _ = looked_at()
    with pytest.raises(StoppedError):
        swim_in_time(request, swim, is_cancelled=lambda: True)
