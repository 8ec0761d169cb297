"""Boat channels on the track really swum: times, angles, set-down, the clear distance, ferries."""

from datetime import datetime, time, timedelta

import numpy as np
import pytest
from independent_swim import WaterStream
from invented_requests import NOON, UTC, Site, minutes_between, of_kind
from invented_waters import growing
from tideleg.core.chart.areas import Channel, Sailing
from tideleg.core.quantities import m_s_from_knots
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.water.field import RuledArea, StreamField

SITE = Site()
ACROSS = [(0.0, 0.0), (0.0, 1000.0)]  # due ahead, across a channel that lies right and left


def channel(low, high, *, flow_deg=90.0, **about):
    area = about.pop("area", None) or SITE.box(-3000.0, low, 3000.0, high)
    return Channel(name="Gut", kind="fairway", area=area, flow_deg=flow_deg, **about)


def only(plan, kind="channel"):
    (flag,) = of_kind(plan, kind)
    return flag


def plan_over(channels, *, stops=ACROSS, **about):
    return plan_swim(SITE.request(stops, channels=channels, **about))


def test_entry_exit_and_length_in_slack_water():
    flag = only(plan_over([channel(300.0, 510.0)]))
    assert minutes_between(NOON, flag.start) == pytest.approx(300.0 / 0.7 / 60.0, abs=0.005)
    assert minutes_between(NOON, flag.end) == pytest.approx(510.0 / 0.7 / 60.0, abs=0.005)
    assert flag.length_m == pytest.approx(210.0, abs=0.05)
    assert flag.crossing_angle_deg == pytest.approx(90.0, abs=0.01)
    assert (flag.severity, flag.leg, flag.name) == ("note", 1, "Gut")
    assert "13:07 to 13:12: 5.0 min over 210 m" in flag.message


def test_places_of_the_flag_lie_on_the_channels_edges():
    flag = only(plan_over([channel(300.0, 510.0)]))
    ends = SITE.frame.to_xy(np.array(flag.points)[[0, -1]])
    assert ends[:, 1] == pytest.approx([300.0, 510.0], abs=0.02)


def test_square_crossing_and_set_down_of_a_quarter_kilometre():
    """W = 250 m, v = 0.7, c = 0.4 along the channel: square 6.0 min and set down 143 m; holding the track 7.3 min."""
    plan = plan_over([channel(300.0, 550.0)], stream=SITE.steady(90.0, 0.4))
    flag = only(plan)
    assert minutes_between(flag.start, flag.end) == pytest.approx(7.3, abs=0.05)
    assert "takes 6.0 min and sets you down 143 m towards 090° true" in flag.message


def test_crossing_angle_is_that_of_the_heading_and_the_tracks_is_told_too():
    """Holding the track in that stream the heading lies asin(0.4 / 0.7) = 34.8 degrees up-stream: 55 to the traffic."""
    flag = only(plan_over([channel(300.0, 550.0)], stream=SITE.steady(90.0, 0.4)))
    assert flag.crossing_angle_deg == pytest.approx(90.0 - np.degrees(np.arcsin(0.4 / 0.7)), abs=0.02)
    assert "you point 55° off the line of its traffic and move 90° off it" in flag.message
    assert flag.severity == "warn" and "cross square" in flag.message


@pytest.mark.parametrize(
    ("flow_deg", "angle"), [(0.0, 0.0), (180.0, 0.0), (30.0, 30.0), (330.0, 30.0), (150.0, 30.0), (91.0, 89.0)]
)
def test_crossing_angle_is_acute_whichever_way_the_traffic_runs(flow_deg, angle):
    flag = only(plan_over([channel(300.0, 550.0, flow_deg=flow_deg)]))
    assert flag.crossing_angle_deg == pytest.approx(angle, abs=0.01)


@pytest.mark.parametrize(("flow_deg", "severity"), [(70.1, "note"), (69.9, "warn"), (110.1, "warn"), (109.9, "note")])
def test_twenty_degrees_from_square_is_the_limit_of_square(flow_deg, severity):
    assert only(plan_over([channel(300.0, 550.0, flow_deg=flow_deg)])).severity == severity


def test_limit_of_square_is_the_plans_own():
    assert only(plan_over([channel(300.0, 550.0, flow_deg=60.0)], square_within_deg=31.0)).severity == "note"


def test_clear_distance_is_the_boats_way_in_the_time_inside():
    """210 m at 0.7 m/s are 300 s; 25 kn are 12.861 m/s: 3.9 km."""
    flag = only(plan_over([channel(300.0, 510.0, boat_m_s=m_s_from_knots(25.0))]))
    assert "A boat at 25 kn runs 3.9 km in that time" in flag.message


def test_boat_at_25_knots_runs_300_m_in_23_seconds():
    assert 300.0 / m_s_from_knots(25.0) == pytest.approx(23.0, abs=0.5)
    near = only(plan_over([channel(300.0, 300.0 + 0.7 * 23.3, boat_m_s=m_s_from_knots(25.0))]))
    assert "runs 300 m" in near.message


def test_channel_drawn_as_a_line_takes_its_traffic_from_the_nearest_piece():
    """A channel that bends: its second piece runs 135, the track crosses there."""
    centre = SITE.xy([(-2000.0, 900.0), (-400.0, 900.0), (500.0, 0.0)])
    area = SITE.area([(-400.0, 960.0), (-400.0, 840.0), (440.0, 0.0), (560.0, 0.0)])
    flag = only(plan_over([channel(0, 0, area=area, flow_deg=float("nan"), centre=centre)]))
    assert flag.crossing_angle_deg == pytest.approx(45.0, abs=0.2)


def test_two_crossings_on_one_leg_are_two_flags():
    right = [(50.0, 200.0), (50.0, 300.0), (20.0, 300.0), (20.0, 700.0), (50.0, 700.0), (50.0, 800.0)]
    left = [(-50.0, 800.0), (-50.0, 700.0), (10.0, 700.0), (10.0, 300.0), (-50.0, 300.0), (-50.0, 200.0)]
    bend = SITE.area(right + left)
    plan = plan_over([channel(0, 0, area=bend)])
    lengths = [flag.length_m for flag in of_kind(plan, "channel")]
    assert lengths == pytest.approx([100.0, 100.0], abs=0.05)


def test_channel_beside_the_track_is_no_flag():
    assert of_kind(plan_over([channel(1001.0, 1500.0), channel(-400.0, -1.0)]), "channel") == []


def test_track_wholly_inside_a_channel_is_flagged_from_end_to_end():
    flag = only(plan_over([channel(-500.0, 1500.0, flow_deg=0.0)]))
    assert (flag.start, flag.length_m) == (NOON, pytest.approx(1000.0, abs=0.05))
    assert flag.severity == "warn" and flag.crossing_angle_deg == pytest.approx(0.0, abs=0.01)


def test_mark_in_a_channel_warns_of_the_stay():
    plan = plan_over([channel(900.0, 1100.0)], stops=[(0.0, 0.0), (0.0, 1000.0), (0.0, 0.0)], stays_min=(25.0,))
    first, second = of_kind(plan, "channel")
    assert "you would stay 25 min among the boats" in first.message and first.severity == "warn"
    assert "stay" not in second.message


def test_bowed_track_meets_a_channel_that_the_ruler_line_clears():
    """An eddy half way sets to the right, then the main stream to the left: the line is clear, the bow is not."""
    stream = StreamField(
        stations=(
            SITE.station("main", (0.0, -4000.0), towards=270.0, rate_m_s=0.25),
            SITE.station("eddy", towards=90.0, rate_m_s=0.25),
        ),
        ruled_areas=(RuledArea(area=SITE.box(-2000.0, -200.0, 2000.0, 500.0), station="eddy"),),
    )
    request = {"stops": ACROSS, "stream": stream}
    beside = channel(0, 0, area=SITE.box(60.0, 300.0, 400.0, 700.0))
    bowed = plan_over([beside], **request)
    assert bowed.legs[0].off_line_m > 100.0
    assert only(bowed).length_m > 100.0
    assert of_kind(plan_over([beside], mode=2, **request), "channel") == [], "crabbing on the line stays clear"


def test_ruler_line_meets_a_channel_that_the_bowed_track_clears():
    stream = StreamField(
        stations=(
            SITE.station("main", (0.0, -4000.0), towards=270.0, rate_m_s=0.25),
            SITE.station("eddy", towards=90.0, rate_m_s=0.25),
        ),
        ruled_areas=(RuledArea(area=SITE.box(-2000.0, -200.0, 2000.0, 500.0), station="eddy"),),
    )
    on_line = channel(0, 0, area=SITE.box(-40.0, 450.0, 40.0, 550.0))
    assert of_kind(plan_over([on_line], stream=stream), "channel") == []
    assert only(plan_over([on_line], stream=stream, mode=2)).length_m == pytest.approx(100.0, abs=0.1)


def test_leg_that_is_not_swum_is_checked_on_its_straight_line_and_not_timed():
    flag = only(plan_over([channel(300.0, 510.0)], stream=SITE.steady(180.0, 0.9)))
    assert flag.start is None and flag.end is None and flag.severity == "warn"
    assert "straight line of leg 1" in flag.message and flag.length_m == pytest.approx(210.0, abs=0.05)


# Ferries. 240 m across at 0.70 m/s take 5 min 43 s; sailings at 10:05 and 10:35, clear 10 min before and after.
def ferry_plan(depart, *, zone="UTC", sailings=(time(10, 5), time(10, 35)), stream=None):
    """Entered 300 s after the departure: 210 m to the edge."""
    times = tuple(Sailing(when=when, clear_before_min=10.0, clear_after_min=10.0) for when in sailings)
    gut = Channel(
        name="Ferry", kind="ferry", area=SITE.box(-3000.0, 210.0, 3000.0, 450.0), flow_deg=90.0, sailings=times
    )
    return only(plan_swim(SITE.request(ACROSS, channels=[gut], depart=depart, zone=zone, stream=stream)))


def at(hours, minutes, seconds=0):
    return datetime(2027, 6, 5, hours, minutes, seconds, tzinfo=UTC)


CROSS = timedelta(seconds=240.0 / 0.7)
TO_EDGE = timedelta(seconds=300.0)


@pytest.mark.parametrize(
    ("enter", "clear"),
    [
        (at(10, 15, 1), True),
        (at(10, 14, 59), False),
        (at(10, 25) - CROSS - timedelta(seconds=1), True),
        (at(10, 25) - CROSS + timedelta(seconds=1), False),
        (at(10, 45, 1), True),
        (at(9, 55) - CROSS - timedelta(seconds=1), True),
        (at(9, 55) - CROSS + timedelta(seconds=1), False),
    ],
)
def test_ferry_gap_is_open_to_its_borders(enter, clear):
    flag = ferry_plan(enter - TO_EDGE)
    assert (flag.severity != "stop") == clear
    assert ("too near" in flag.message) == (not clear)
    assert "A timetable is not the traffic." in flag.message


def test_ferry_slot_is_told_in_whole_minutes_inside_it():
    """10:15 to 10:19:17, so 10:15 to 10:19; set down 103 m by 0.3 m/s."""
    flag = ferry_plan(at(10, 20), stream=SITE.steady(90.0, 0.3))
    assert "The ferry of 10:35 is too near." in flag.message
    assert "Enter between 10:15 and 10:19." in flag.message
    assert "sets you down 103 m" in flag.message


def test_ferry_slot_before_the_first_and_after_the_last_sailing():
    assert "Enter from 10:45 on." in ferry_plan(at(10, 36)).message
    assert "Enter by 09:49." in ferry_plan(at(9, 45)).message


def test_sailings_too_close_together_leave_no_slot_between():
    flag = ferry_plan(at(10, 14), sailings=(time(10, 5), time(10, 28)))
    assert "Enter from 10:38 on." in flag.message or "Enter by 09:49." in flag.message
    assert "between" not in flag.message


def test_daily_sailing_is_of_the_plans_zone():
    """10:05 in Lisbon in June is 09:05 UTC."""
    assert ferry_plan(at(9, 0), zone="Europe/Lisbon").severity == "stop"
    assert ferry_plan(at(10, 0), zone="Europe/Lisbon", sailings=(time(10, 5),)).severity != "stop"


def test_sailing_after_midnight_is_met_by_a_swim_begun_before_it():
    flag = ferry_plan(at(23, 50), sailings=(time(0, 2),))
    assert flag.severity == "stop" and "The ferry of 00:02 is too near." in flag.message


def test_sailing_of_one_date_is_of_that_date():
    day = datetime(2027, 6, 6, 10, 5, tzinfo=UTC)
    assert ferry_plan(at(10, 0), sailings=(day,)).severity != "stop"
    assert ferry_plan(at(10, 0) + timedelta(days=1), sailings=(day,)).severity == "stop"


@pytest.mark.parametrize(("day", "utc_hour"), [(27, 10), (28, 9)])
def test_daily_sailing_keeps_clock_time_over_the_change_to_summer_time(day, utc_hour):
    """Clocks in Lisbon go forward on 2027-03-28: 10:05 there is 10:05 UTC the day before and 09:05 UTC that day."""
    depart = datetime(2027, 3, day, utc_hour, 0, tzinfo=UTC)
    assert ferry_plan(depart, zone="Europe/Lisbon", sailings=(time(10, 5),)).severity == "stop"
    other = depart + timedelta(hours=1 if day == 28 else -1)
    assert ferry_plan(other, zone="Europe/Lisbon", sailings=(time(10, 5),)).severity != "stop"


def test_headings_on_both_sides_of_north_are_averaged_round_the_compass():
    """Crabbing north up a stream that swings from left to right: from 008 to 352, 000 in the mean."""
    stream = WaterStream(growing(90.0, -0.1, 0.2 * 3600.0 / (1000.0 / 0.7)))
    flag = only(plan_over([channel(5.0, 995.0)], stream=stream, mode=2))
    headings = [change.heading_true_deg for change in plan_over([], stream=stream, mode=2).legs[0].headings]
    assert min(headings) < 10.0 and max(headings) > 350.0
    assert flag.crossing_angle_deg == pytest.approx(90.0, abs=0.5)
