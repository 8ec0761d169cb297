"""How headings, times, distances and positions read on paper."""

from dataclasses import replace
from datetime import datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import pytest
from plans import make_plan
from tideleg.core.results import card
from tideleg.core.results.flag import Flag
from tideleg.core.results.swim_plan import HeadingChange

TEN = datetime(2027, 6, 5, 10, 12, tzinfo=timezone.utc)


@pytest.mark.parametrize(
    "seconds, up, down, nearest",
    [
        (0, "10:12", "10:12", "10:12"),
        (1, "10:13", "10:12", "10:12"),
        (29, "10:13", "10:12", "10:12"),
        (30, "10:13", "10:12", "10:13"),
        (59.7, "10:13", "10:13", "10:13"),
        (0.3, "10:12", "10:12", "10:12"),  # a third of a second is the computer's, not the swimmer's
    ],
)
def test_clock_times_are_rounded_to_the_safe_side(seconds, up, down, nearest):
    moment = TEN + timedelta(seconds=seconds)
    assert (card.clock_up(moment), card.clock_down(moment), card.clock_nearest(moment)) == (up, down, nearest)


def test_a_printed_arrival_is_never_after_the_printed_leaving():
    for plan in (make_plan(legs=20, stay_min=0.0), make_plan(legs=20, stay_min=0.4)):
        for leg, after in zip(plan.legs, plan.legs[1:]):
            assert card.clock_up(leg.arrive) <= card.clock_up(after.depart)


@pytest.mark.parametrize("minutes, text", [(28.2, "29"), (29.0, "29"), (29.0001, "29"), (29.01, "30"), (0.2, "1")])
def test_minutes_are_whole_and_rounded_up(minutes, text):
    assert card.whole_minutes(minutes) == text


@pytest.mark.parametrize(
    "metres, text", [(1213.0, "1200 m"), (1225.0, "1250 m"), (1224.9, "1200 m"), (24.0, "< 50 m"), (40.0, "50 m")]
)
def test_distance_goes_to_fifty_metres(metres, text):
    assert card.card_distance(metres) == text


@pytest.mark.parametrize(
    "angle, step, text",
    [(103.0, 5.0, "105"), (312.0, 5.0, "310"), (358.0, 5.0, "000"), (2.4, 5.0, "000"), (64.4, 1.0, "064")],
)
def test_angles_have_three_digits_and_north_is_000(angle, step, text):
    assert card.card_angle(angle, step) == text


@pytest.mark.parametrize(
    "lon, lat, text",
    [
        (-28.5, 42.4, "42°24.000'N 028°30.000'W"),
        (179.99999999, -47.98, "47°58.800'S 180°00.000'E"),
        (5.99999999, 0.0, "00°00.000'N 006°00.000'E"),
        (-0.0001, -0.0001, "00°00.006'S 000°00.006'W"),
        (181.0, 10.123456, "10°07.407'N 179°00.000'W"),
    ],
)
def test_positions_are_degrees_and_minutes_with_three_decimals(lon, lat, text):
    assert card.position_text(lon, lat) == text


def test_sixty_minutes_never_appear():
    texts = [card.position_text(lon, lat) for lon, lat in ((9.99999999, 9.99999999), (-59.999999, -0.999999999))]
    assert not any("60.000" in text for text in texts)


@pytest.mark.parametrize("east, text", [(-4.0, "4.0°W"), (12.34, "12.3°E"), (0.0, "0.0°E")])
def test_variation_names_its_side(east, text):
    assert card.variation_text(east) == text


@pytest.mark.parametrize(
    "zone, text",
    [("UTC", "UTC"), ("Pacific/Auckland", "UTC+12"), ("America/St_Johns", "UTC-2:30"), ("Asia/Kathmandu", "UTC+5:45")],
)
def test_offset_is_short(zone, text):
    assert card.offset_text(datetime(2027, 6, 5, 12, tzinfo=ZoneInfo(zone))) == text


def test_a_leg_is_swum_stuck_or_unreached():
    plan = make_plan(legs=4, unswimmable=(3,))
    assert [card.leg_state(leg) for leg in plan.legs] == ["swim", "swim", "stuck", "unreached"]


def test_a_leg_that_arrives_but_is_not_feasible_is_stuck():
    leg = replace(make_plan().legs[0], feasible=False, reason="Too slow over the ground.")
    assert card.leg_state(leg) == "stuck" and card.leg_comment(leg, 5.0) == "NOT SWIMMABLE Too slow over the ground."


def change(minute, magnetic):
    moment = TEN + timedelta(minutes=minute)
    return HeadingChange(moment=moment, heading_true_deg=magnetic - 4.0, heading_mag_deg=magnetic)


def test_later_headings_that_print_alike_are_merged():
    headings = (change(0, 103), change(10, 104), change(20, 109), change(30, 111), change(40, 103))
    leg = replace(make_plan().legs[0], depart=TEN, card_heading="105M", headings=headings)
    assert card.heading_changes(leg, 5.0) == [("10:32", "110M"), ("10:52", "105M")]


def test_one_heading_has_no_changes():
    assert card.heading_changes(make_plan().legs[0], 5.0) == []


def test_flags_come_gravest_first_and_keep_their_order():
    kinds = [("note", "fluid"), ("stop", "land"), ("warn", "deep"), ("stop", "over_range")]
    flags = tuple(Flag(kind=k, severity=s, message=k, points=((0.0, 0.0),)) for s, k in kinds)
    assert [flag.kind for flag in card.worst_first(flags)] == ["land", "over_range", "deep", "fluid"]


def test_a_beach_that_is_entry_and_exit_is_one_place():
    plan = make_plan(legs=3)
    assert [place.name for place in card.route_places(plan)][::3] == ["Kettle Slip", "Kettle Slip"]
    assert [place.name for place in card.distinct_places(plan)] == ["Kettle Slip", "Gannet Heads", "Long Sill"]


def test_places_know_their_stop():
    places = card.route_places(make_plan(legs=3))
    assert [place.stop.kind for place in places] == ["entry", "mark", "mark", "entry"]


def test_dive_stops_are_those_with_depths_each_once():
    plan = make_plan(legs=4)
    doubled = replace(plan, stops=(*plan.stops, plan.stops[1]))
    assert [stop.name for stop in card.dive_stops(doubled)] == ["Gannet Heads", "Long Sill", "Three Ovens"]


def test_flags_that_read_alike_are_merged_and_keep_the_numbers_of_their_legs():
    def flag(leg, brief, severity="warn"):
        return Flag(kind="land", severity=severity, message="long", brief=brief, points=((0.0, 0.0),), leg=leg)

    found = (flag(3, "same"), flag(1, "same"), flag(1, "same", "stop"), flag(2, "Leg 2 itself"), flag(None, "swim"))
    merged = [(one.severity, one.brief, legs) for one, legs in card.merged_flags(found)]
    assert merged == [
        ("stop", "same", [1]),
        ("warn", "same", [1, 3]),
        ("warn", "Leg 2 itself", []),
        ("warn", "swim", []),
    ]
