"""Marks at stops, depths between contours, hours in force, a swimmer's numbers, an even grid."""

from dataclasses import replace
from datetime import datetime, time, timedelta, timezone
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from tideleg.core.chart.depths import DepthSurvey
from tideleg.core.chart.hours import in_force_from_text, sailing_from_text, sailings_between
from tideleg.core.chart.marks import Mark, Route, doubts_about_stops, marks_at_stops
from tideleg.core.errors import NaiveTimeError, SwimPlanError
from tideleg.core.geodesy import LocalFrame
from tideleg.core.grid import EvenGrid
from tideleg.core.swimmer import LIMITS, NUMBERS, Swimmer

UTC = timezone.utc
LISBON = ZoneInfo("Europe/Lisbon")


# Marks.
def reef(lon, lat, name="Reef"):
    return Mark(name=name, kind="mark", lon=lon, lat=lat, stay_min=30.0, charted_depth_m=7.0)


@pytest.mark.parametrize(("lon", "lat"), [(-28.5, 42.4), (180.0, -19.0), (12.0, 70.0), (12.0, -70.0)])
@pytest.mark.parametrize(("metres", "taken"), [(14.9, True), (15.1, False)])
@pytest.mark.parametrize("bearing", [0.0, 90.0, 225.0])
def test_vertex_takes_a_mark_within_fifteen_metres(lon, lat, metres, taken, bearing):
    frame = LocalFrame(lon=lon, lat=lat)
    away = frame.to_lonlat(metres * np.array([[np.sin(np.radians(bearing)), np.cos(np.radians(bearing))]]))[0]
    stop, _ = marks_at_stops(Route(name="r", lonlat=np.array([[lon, lat], [lon - 0.01, lat + 0.01]])), [reef(*away)])
    assert (stop.name == "Reef") == taken and (stop.stay_min, stop.charted_depth_m) == (
        (30.0, 7.0) if taken else (0.0, None)
    )
    assert (stop.lon, stop.lat) == (lon, lat), "the vertex's own position stands"


def test_nearest_of_two_marks_is_taken():
    frame = LocalFrame(lon=10.0, lat=50.0)
    places = frame.to_lonlat([[0.0, 0.0], [0.0, 9.0], [0.0, 6.0], [500.0, 0.0]])
    marks = [reef(*places[1], name="Farther"), reef(*places[2], name="Nearer")]
    assert marks_at_stops(Route(name="r", lonlat=places[[0, 3]]), marks)[0].name == "Nearer"


def test_stops_with_no_mark_are_waypoints_between_entry_and_exit():
    lonlat = np.array([[0.0, 50.0], [0.01, 50.0], [0.02, 50.0], [0.0, 50.01]])
    stops = marks_at_stops(Route(name="r", lonlat=lonlat), [])
    assert [stop.name for stop in stops] == ["Entry", "Waypoint 1", "Waypoint 2", "Exit"]
    assert [stop.kind for stop in stops] == ["entry", "waypoint", "waypoint", "exit"]


def test_route_drops_vertices_drawn_twice_and_refuses_one_stop():
    doubled = Route(name="r", lonlat=np.array([[0.0, 50.0], [0.0, 50.0], [0.01, 50.0], [0.01, 50.0]]))
    assert len(doubled.lonlat) == 2
    for lonlat in ([[0.0, 50.0]], [[0.0, 50.0], [0.0, 50.0]], np.empty((0, 2))):
        with pytest.raises(SwimPlanError, match="'Twice round' has [01] stop"):
            Route(name="Twice round", lonlat=np.array(lonlat))


# Depths.
def test_sounding_within_25_m_stands_and_the_shoalest_of_several():
    survey = DepthSurvey(soundings=np.array([[0.0, 20.0, 9.0], [0.0, -24.0, 7.0], [0.0, 26.0, 2.0]]))
    assert survey.depth_at(0.0, 0.0).depth_m == 7.0
    assert survey.depth_at(0.0, 50.5).depth_m == 2.0


def contours(*rows):
    return DepthSurvey(contours=np.array([[x, -1000.0, x, 1000.0, depth] for x, depth in rows]))


@pytest.mark.parametrize(("x", "depth"), [(0.0, 5.0), (25.0, 6.25), (50.0, 7.5), (100.0, 10.0), (150.0, 12.5)])
def test_depth_between_contours_is_shared_by_distance(x, depth):
    """On an even slope: 5 m at x = 0, 10 m at 100, 15 m at 200."""
    assert contours((0.0, 5.0), (100.0, 10.0), (200.0, 15.0)).depth_at(x, 0.0).depth_m == pytest.approx(depth)


def test_depth_beyond_the_survey_is_unknown_with_its_reason():
    survey = contours((0.0, 5.0))
    assert np.isnan(survey.depth_at(501.0, 0.0).depth_m) and "500 m" in survey.depth_at(501.0, 0.0).basis
    assert survey.depth_at(499.0, 0.0).depth_m == 5.0
    assert np.isnan(DepthSurvey().depth_at(0.0, 0.0).depth_m)


def test_depth_is_never_beyond_the_two_that_share_it():
    rng = np.random.default_rng(3)
    survey = DepthSurvey(
        soundings=np.column_stack([rng.uniform(-800, 800, (60, 2)), rng.uniform(1.0, 30.0, 60)]),
        contours=np.column_stack([rng.uniform(-800, 800, (40, 4)), rng.choice([5.0, 10.0, 20.0], 40)]),
    )
    for x, y in rng.uniform(-700.0, 700.0, (100, 2)):
        assert 1.0 <= survey.depth_at(x, y).depth_m <= 30.0


# Hours in force. What they do to a plan is tested with the flags.
@pytest.mark.parametrize("text", ["25:00", "12:60", "--1301", "--0230x", "2027-02-29", "noon", "2027-06-05T25:00"])
def test_time_that_cannot_be_read_is_refused_by_what_it_said(text):
    with pytest.raises(SwimPlanError) as caught:
        in_force_from_text(text, "", UTC)
    assert repr(text) in str(caught.value) or "2027-06-05T25:00" in str(caught.value)


@pytest.mark.parametrize(
    ("start", "end"), [("08:00", "--0401"), ("--0401", "2027-04-30"), ("22:00", "2027-04-30T06:00Z")]
)
def test_ends_of_two_kinds_are_refused(start, end):
    with pytest.raises(SwimPlanError) as caught:
        in_force_from_text(start, end, UTC)
    assert repr(start) in str(caught.value) and "two rows" in str(caught.value)


def test_leap_day_may_end_a_season():
    season = in_force_from_text("--0201", "--0229", UTC)
    day = timedelta(days=1)
    for moment, held in ((datetime(2027, 2, 28, 12, tzinfo=UTC), True), (datetime(2027, 3, 1, 12, tzinfo=UTC), False),
                         (datetime(2028, 2, 29, 12, tzinfo=UTC), True)):  # fmt: skip
        assert season.overlaps(moment, moment + day / 24, UTC) == held


def test_always_is_always_and_naive_spans_are_refused():
    always = in_force_from_text("", "", UTC)
    moment = datetime(2027, 6, 5, 3, tzinfo=UTC)
    assert always.overlaps(moment, moment, UTC) and always.words() == ""
    with pytest.raises(NaiveTimeError):
        in_force_from_text("08:00", "", UTC).overlaps(datetime(2027, 6, 5), moment, UTC)  # noqa: DTZ001


@pytest.mark.parametrize(
    ("start", "end", "words"),
    [("22:00", "06:00", "22:00 to 06:00"), ("--1201", "--0228", "01 Dec to 28 Feb"),
     ("2027-04-01", "", "2027-04-01 to further notice"),
     ("", "2027-04-01", "the beginning to 2027-04-01")],
)  # fmt: skip
def test_time_in_force_in_words(start, end, words):
    assert in_force_from_text(start, end, UTC).words() == words


@pytest.mark.parametrize(
    "text", ["2027-06-05 10:05:00+00", "2027/06/05 10:05:00+00:00", "2027-06-05T10:05Z", "2027-06-05 10:05:00.000+0000"]
)
def test_moments_as_databases_write_them(text):
    assert sailing_from_text(text, LISBON) == datetime(2027, 6, 5, 10, 5, tzinfo=UTC)


def test_sailing_is_no_date():
    for text in ("2027-06-05", "--0605", "", "soon"):
        with pytest.raises(SwimPlanError):
            sailing_from_text(text, UTC)


def test_daily_sailings_over_the_change_of_clocks_keep_their_clock_time():
    first = datetime(2027, 3, 27, 0, tzinfo=UTC)
    found = sailings_between(time(10, 5), first, first + timedelta(days=3), LISBON)
    assert [moment.astimezone(UTC).hour for moment in found] == [10, 9, 9]
    assert {(moment.hour, moment.minute) for moment in found} == {(10, 5)}


# A swimmer.
@pytest.mark.parametrize("name", NUMBERS)
def test_number_of_a_swimmers_outside_its_limits_is_refused_by_name(name):
    low, high = LIMITS[name]
    assert getattr(Swimmer(**{name: low}), name) == low and getattr(Swimmer(**{name: high}), name) == high
    for value in (np.nextafter(low, -np.inf), np.nextafter(high, np.inf), float("nan")):
        with pytest.raises(SwimPlanError) as caught:
            Swimmer(name="Ondine", **{name: value})
        assert name in str(caught.value) and "Ondine" in str(caught.value)


def test_path_factor_divides_the_pace():
    assert Swimmer(pace_m_s=0.66, path_factor=1.1).made_good_m_s == pytest.approx(0.6)


# An even grid.
def test_grid_is_exact_for_a_bilinear_field_and_keeps_its_rim_beyond():
    low, high = np.array([-30.0, 10.0]), np.array([71.0, 95.0])
    x, y = EvenGrid.places(low, high, 7.0)
    assert x[0] == -30.0 and y[0] == 10.0 and x[-1] >= 71.0 and y[-1] >= 95.0

    def field(x, y):
        return 3.0 + 0.5 * x - 0.25 * y + 0.01 * x * y

    grid = EvenGrid(low_m=low, cell_m=7.0, values=field(*np.meshgrid(x, y))[None])
    rng = np.random.default_rng(8)
    px, py = rng.uniform(-30.0, x[-1], 200), rng.uniform(10.0, y[-1], 200)
    assert grid.at(px, py)[0] == pytest.approx(field(px, py), abs=1e-3)
    assert grid.at(np.array([-999.0]), np.array([10.0]))[0, 0] == pytest.approx(field(-30.0, 10.0))
    assert grid.at(np.array([x[3]]), np.array([y[4]]))[0, 0] == pytest.approx(field(x[3], y[4]))


def test_grid_of_a_single_cell_serves():
    x, y = EvenGrid.places(np.zeros(2), np.zeros(2), 5.0)
    assert len(x) == len(y) == 2


def test_marks_of_different_stays_at_one_stop_are_told_of() -> None:
    route = Route(name="R", lonlat=[(-30.0, 42.0), (-30.0, 42.01), (-30.0, 42.0)])
    home = Mark(name="Slip", kind="entry", lon=-30.0, lat=42.0)
    ledge = Mark(name="Ledge", kind="mark", lon=-30.0, lat=42.01, stay_min=20.0)
    marks = [home, replace(home, kind="exit"), ledge, replace(ledge, name="Ledge two", stay_min=60.0)]
    told = doubts_about_stops(route, marks_at_stops(route, marks), marks)
    assert any("2 marks lie at one stop (Ledge, Ledge two)" in one and "stay 20 min" in one for one in told)
    same = [*marks[:3], replace(ledge, name="Again")]
    assert not any("Ledge" in one for one in doubts_about_stops(route, marks_at_stops(route, same), same))
