"""Closed areas and land on the track really swum, at the time it is swum."""

from datetime import datetime, timedelta

import pytest
from invented_requests import NOON, UTC, Site, minutes_between, of_kind
from tideleg.core.chart.areas import RULES, ClosedArea, Land
from tideleg.core.chart.hours import InForce, in_force_from_text
from tideleg.core.clock import zone_named
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.water.field import RuledArea, StreamField

SITE = Site()
ACROSS = [(0.0, 0.0), (0.0, 1000.0)]
OUT_AND_HOME = [(0.0, 0.0), (0.0, 1000.0), (0.0, 0.0)]


def closed(low=400.0, high=600.0, *, rule="no_entry", in_force=None, area=None, **about):
    area = area or SITE.box(-300.0, low, 300.0, high)
    return ClosedArea(name="Nursery", rule=rule, area=area, in_force=in_force or InForce(), **about)


def flags_of(closed_areas, *, stops=ACROSS, **about):
    return of_kind(plan_swim(SITE.request(stops, closed_areas=closed_areas, **about)), "closed_area")


def test_stretch_inside_is_timed_and_measured():
    (flag,) = flags_of([closed(citation="Order 7 of the bay.", checked_on="2027-05-01")])
    assert minutes_between(NOON, flag.start) == pytest.approx(400.0 / 0.7 / 60.0, abs=0.005)
    assert minutes_between(NOON, flag.end) == pytest.approx(600.0 / 0.7 / 60.0, abs=0.005)
    assert flag.length_m == pytest.approx(200.0, abs=0.05)
    assert "Rule: Order 7 of the bay." in flag.message and "Checked on 2027-05-01" in flag.message
    assert "the local law decides" in flag.message


@pytest.mark.parametrize(
    ("rule", "passing", "staying"),
    [("no_entry", "stop", "stop"), ("no_spearing", "note", "warn"), ("no_anchoring", "note", "warn"),
     ("loaded_gun_ban", "warn", "warn"), ("caution", "note", "note")],
)  # fmt: skip
def test_severity_goes_by_the_rule_and_the_stay(rule, passing, staying):
    first, second = flags_of([closed(900.0, 1100.0, rule=rule)], stops=OUT_AND_HOME, stays_min=(20.0,))
    assert (first.severity, second.severity) == (staying, passing)
    assert "Rock 1 lies inside it." in first.message and "lies inside" not in second.message


def test_every_rule_has_its_words():
    messages = {flags_of([closed(rule=rule)])[0].message for rule in RULES}
    assert len(messages) == len(RULES)


def test_area_with_a_hole_is_open_in_the_hole():
    ring = [(-300.0, 300.0), (300.0, 300.0), (300.0, 700.0), (-300.0, 700.0)]
    hole = [(-100.0, 400.0), (100.0, 400.0), (100.0, 600.0), (-100.0, 600.0)]
    lengths = [flag.length_m for flag in flags_of([closed(area=SITE.area(ring, hole))])]
    assert lengths == pytest.approx([100.0, 100.0], abs=0.05)


def in_force(start, end, zone="UTC"):
    return in_force_from_text(start, end, zone_named(zone))


# Entered 400 / 0.7 s = 9 min 31 s after leaving, left after 14 min 17 s.
@pytest.mark.parametrize(
    ("start", "end", "hour", "minute", "flagged"),
    [
        ("22:00", "06:00", 21, 40, False),
        ("22:00", "06:00", 21, 46, True),
        ("22:00", "06:00", 23, 50, True),
        ("22:00", "06:00", 3, 0, True),
        ("22:00", "06:00", 5, 50, True),
        ("22:00", "06:00", 5, 51, False),
        ("08:00", "17:00", 7, 45, False),
        ("08:00", "17:00", 7, 46, True),
        ("08:00", "17:00", 16, 50, True),
        ("08:00", "17:00", 16, 51, False),
        ("00:00", "24:00", 12, 0, True),
        ("20:00", "", 23, 0, True),
        ("20:00", "", 12, 0, False),
        ("", "06:00", 2, 0, True),
        ("", "06:00", 12, 0, False),
    ],
)
def test_daily_hours_over_midnight_too(start, end, hour, minute, flagged):
    depart = datetime(2027, 6, 5, hour, minute, tzinfo=UTC)
    assert bool(flags_of([closed(in_force=in_force(start, end))], depart=depart)) == flagged


@pytest.mark.parametrize(
    ("month", "day", "flagged"),
    [(11, 30, False), (12, 1, True), (12, 31, True), (1, 1, True), (2, 28, True), (3, 1, False), (7, 1, False)],
)
def test_season_over_new_year(month, day, flagged):
    depart = datetime(2027, month, day, 12, 0, tzinfo=UTC)
    assert bool(flags_of([closed(in_force=in_force("--1201", "--0228"))], depart=depart)) == flagged


def test_season_begun_during_the_swim_counts():
    depart = datetime(2027, 11, 30, 23, 48, tzinfo=UTC)
    assert flags_of([closed(in_force=in_force("--1201", "--0228"))], depart=depart)
    assert not flags_of([closed(in_force=in_force("--1201", "--0228"))], depart=depart - timedelta(minutes=4))


@pytest.mark.parametrize(
    ("start", "end", "day", "flagged"),
    [("2027-06-05", "2027-06-05", 5, True), ("2027-06-06", "", 5, False), ("", "2027-06-04", 5, False),
     ("2027-04-01", "2027-06-05", 5, True), ("", "2027-06-05", 5, True), ("2027-06-05", "", 5, True)],
)  # fmt: skip
def test_dates_hold_their_last_day(start, end, day, flagged):
    depart = datetime(2027, 6, day, 20, 0, tzinfo=UTC)
    assert bool(flags_of([closed(in_force=in_force(start, end))], depart=depart)) == flagged


def test_last_day_holds_beside_a_moment_too():
    """From a moment to a date: the date's whole day is in force, as it is between two dates."""
    until = in_force("2027-06-01T06:00+00:00", "2027-06-05")
    assert flags_of([closed(in_force=until)], depart=datetime(2027, 6, 5, 20, 0, tzinfo=UTC))
    assert not flags_of([closed(in_force=until)], depart=datetime(2027, 6, 6, 0, 5, tzinfo=UTC))


def test_date_is_that_of_the_plans_zone():
    """In Kiritimati, 14 hours ahead, it is the 6th while it is still the 5th in UTC."""
    zone = "Pacific/Kiritimati"
    rule = closed(in_force=in_force("2027-06-06", "2027-06-06", zone))
    assert flags_of([rule], depart=datetime(2027, 6, 5, 22, 0, tzinfo=UTC), zone=zone)
    assert not flags_of([rule], depart=datetime(2027, 6, 6, 12, 0, tzinfo=UTC), zone=zone)


@pytest.mark.parametrize(("day", "utc_hour"), [(27, 8), (28, 7)])
def test_daily_hours_keep_clock_time_over_the_change_to_summer_time(day, utc_hour):
    """Lisbon goes forward on 2027-03-28: 08:00 there is 08:00 UTC the day before and 07:00 UTC that day."""
    rule = closed(in_force=in_force("08:00", "17:00", "Europe/Lisbon"))
    opens = datetime(2027, 3, day, utc_hour, 0, tzinfo=UTC)
    leave_before, leave_after = opens - timedelta(minutes=14.5), opens - timedelta(minutes=14.0)
    assert not flags_of([rule], depart=leave_before, zone="Europe/Lisbon")
    assert flags_of([rule], depart=leave_after, zone="Europe/Lisbon")


def test_daily_hours_on_the_night_that_clocks_go_back():
    """Lisbon, 2027-10-31: 02:00 WEST becomes 01:00 WET, so 02:30 is at 02:30 UTC and 00:30 at 23:30 UTC."""
    rule = closed(in_force=in_force("02:30", "04:00", "Europe/Lisbon"))
    enter = timedelta(seconds=400.0 / 0.7)
    late, early = (datetime(2027, 10, 31, hour, 40, tzinfo=UTC) - enter for hour in (2, 1))
    assert flags_of([rule], depart=late, zone="Europe/Lisbon")
    assert not flags_of([rule], depart=early, zone="Europe/Lisbon")


def test_rule_that_begins_during_the_stay_is_met():
    """Arrived at 13:24, stayed 40 min; forbidden from 14:00."""
    rule = closed(900.0, 1100.0, rule="no_spearing", in_force=in_force("14:00", "18:00"))
    out, home = flags_of([rule], stops=OUT_AND_HOME, stays_min=(40.0,))
    assert out.severity == "warn" and home.severity == "note"
    assert not flags_of([rule], stops=OUT_AND_HOME, stays_min=(5.0,))


def eddy_stream():
    """First set to the right, then to the left."""
    return StreamField(
        stations=(
            SITE.station("main", (0.0, -4000.0), towards=270.0, rate_m_s=0.25),
            SITE.station("eddy", towards=90.0, rate_m_s=0.25),
        ),
        ruled_areas=(RuledArea(area=SITE.box(-2000.0, -200.0, 2000.0, 500.0), station="eddy"),),
    )


def test_bowed_track_enters_a_closed_area_that_the_ruler_line_clears():
    beside = closed(area=SITE.box(60.0, 300.0, 400.0, 700.0))
    (flag,) = flags_of([beside], stream=eddy_stream())
    assert flag.severity == "stop" and flag.length_m > 100.0
    assert not flags_of([beside], stream=eddy_stream(), mode=2)


def test_ruler_line_enters_a_closed_area_that_the_bowed_track_clears():
    on_line = closed(area=SITE.box(-40.0, 450.0, 40.0, 550.0))
    assert not flags_of([on_line], stream=eddy_stream())
    (flag,) = flags_of([on_line], stream=eddy_stream(), mode=2)
    assert flag.length_m == pytest.approx(100.0, abs=0.1)


def land_flags(rings, **about):
    land = tuple(Land(name=f"Cay {n}", area=SITE.area(ring)) for n, ring in enumerate(rings, start=1))
    return of_kind(plan_swim(SITE.request(about.pop("stops", ACROSS), land=land, **about)), "land")


def test_bowed_track_runs_ashore_where_the_ruler_line_is_clear():
    beside = [(60.0, 300.0), (400.0, 300.0), (400.0, 700.0), (60.0, 700.0)]
    (flag,) = land_flags([beside], stream=eddy_stream())
    assert flag.severity == "stop" and flag.length_m > 100.0 and "watching the bow" in flag.message
    assert not land_flags([beside], stream=eddy_stream(), mode=2)


def test_ruler_line_over_land_that_the_bowed_track_rounds_is_no_flag():
    islet = [(-40.0, 450.0), (40.0, 450.0), (40.0, 550.0), (-40.0, 550.0)]
    assert not land_flags([islet], stream=eddy_stream())
    assert land_flags([islet], stream=eddy_stream(), mode=2)[0].length_m == pytest.approx(100.0, abs=0.1)


def beach(reach_m, *, ahead=0.0):
    """Land behind the line, and a tongue of it that reaches so far over it from its end."""
    low, high = (ahead - 500.0, reach_m) if ahead == 0.0 else (ahead - reach_m, ahead + 500.0)
    return [(-500.0, low), (500.0, low), (500.0, high), (-500.0, high)]


@pytest.mark.parametrize(("reach_m", "severity"), [(49.0, "note"), (51.0, "stop")])
def test_a_few_metres_of_beach_at_the_entry_and_exit_are_only_noted(reach_m, severity):
    (entry,) = land_flags([beach(reach_m)])
    (exit_,) = land_flags([beach(reach_m, ahead=1000.0)])
    assert (entry.severity, exit_.severity) == (severity, severity)
    if severity == "note":
        assert "outside the entry" in entry.message and "outside the exit" in exit_.message


def test_mark_on_the_rocks_is_no_beach():
    """49 m of land round the mark in the middle of the route stop the plan; so they do on the leg home."""
    rock = [(-500.0, 951.0), (500.0, 951.0), (500.0, 1400.0), (-500.0, 1400.0)]
    out, home = land_flags([rock], stops=OUT_AND_HOME)
    assert (out.severity, home.severity) == ("stop", "stop")


def test_leg_over_land_makes_the_plan_unfeasible():
    land = (Land(name="Cay", area=SITE.box(-50.0, 400.0, 50.0, 500.0)),)
    assert not plan_swim(SITE.request(ACROSS, land=land)).feasible
    assert plan_swim(SITE.request(ACROSS)).feasible


def test_moments_bound_a_closure():
    opens, closes = NOON + timedelta(minutes=14.0), NOON + timedelta(hours=4)
    assert flags_of([closed(in_force=InForce(start=opens, end=closes))])
    assert not flags_of([closed(in_force=InForce(start=opens + timedelta(minutes=1), end=closes))])
    assert not flags_of([closed(in_force=InForce(end=NOON + timedelta(minutes=9)))])
