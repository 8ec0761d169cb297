"""The fastest path: straight where nothing is in the way, round land, with the stream, square over channels."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import numpy as np
import pytest
from independent_swim import WaterStream
from invented_requests import NOON, SWIMMER, UTC, Site, of_kind
from invented_waters import RandomWater
from tideleg.core.chart.areas import Channel, ClosedArea, Land
from tideleg.core.chart.hours import InForce
from tideleg.core.errors import StoppedError, SwimPlanError
from tideleg.core.results.fastest_path import path_dict
from tideleg.core.solve.reach.find_path import find_path
from tideleg.core.solve.reach.open_water import ReachGrid
from tideleg.core.solve.reach.request import CROSS_SQUARE, KEEP_OUT, ReachRequest
from tideleg.core.solve.reach.way_swims import Corners, WaySwims
from tideleg.core.solve.swim import swim_route
from tideleg.core.water.field import StreamField
from tideleg.core.water.model_stream import ModelStream

HEAD = [(-300, -2000), (-200, 900), (0, 1100), (250, 800), (300, -2000)]
PACE = SWIMMER.made_good_m_s


def asked(site: Site, start, end, *, how=0, cell_m=0.0, margin_m=1500.0, flow=None, **about) -> ReachRequest:
    swim = site.request([start, end], **about)
    if flow is not None:
        water = StreamField(stations=(), models=(ModelStream(name="formula", stream=WaterStream(flow)),))
        swim = replace(swim, stream=water)
    area = np.concatenate([swim.stops_m.min(axis=0) - margin_m, swim.stops_m.max(axis=0) + margin_m])
    return ReachRequest(
        swim=swim,
        back_by=swim.depart + timedelta(hours=8),
        stay_min=0.0,
        area=area,
        marks=(swim.stops[-1],),
        cell_m=cell_m,
        channels=how,
    )


def random_water(seed: int, most_m_s: float):
    rng = np.random.default_rng(seed)
    return RandomWater(rng, np.array([1000.0]), np.array([2.0]), np.array([most_m_s])).one(0)


def corners_of(site: Site, path) -> np.ndarray:
    return site.frame.to_xy(path.lonlat)


def tracks_m(request: ReachRequest, path) -> list[np.ndarray]:
    """The tracks of the legs, swum again by the route's solver."""
    swim, stops_m = request.swim, request.swim.frame.to_xy(path.lonlat)
    swum = swim_route(swim.stream, swim.frame, stops_m, np.zeros(len(stops_m)), np.array([0.0]), swim.swimmer, swim.way)
    found = []
    for leg in swum.legs:
        kept = np.isfinite(leg.nodes.t_s[0])
        found.append(np.column_stack([leg.nodes.x_m[0, kept], leg.nodes.y_m[0, kept]]))
    return found


def densely(track: np.ndarray) -> np.ndarray:
    at = np.arange(0.0, len(track) - 1, 0.05)
    return np.column_stack([np.interp(at, np.arange(len(track)), column) for column in track.T])


@pytest.mark.parametrize("rate", [0.0, 0.3])
def test_nothing_in_the_way_gives_one_leg(rate: float) -> None:
    site = Site()
    path = find_path(asked(site, (0, 0), (2000, 0), stream=site.steady(0.0, rate)))
    assert len(path.plan.legs) == 1
    # Across a steady stream the way made good is sqrt(pace^2 - stream^2): the current triangle.
    minutes = 2000.0 / np.sqrt(PACE**2 - rate**2) / 60.0
    assert path.plan.total_min == pytest.approx(minutes, abs=0.02)
    assert path.straight.minutes == pytest.approx(minutes, abs=0.02)
    assert path.optimum_min == pytest.approx(minutes, rel=5e-3)
    assert path.straight.reason == ""


@pytest.mark.parametrize("rate", [0.0, 0.3, -0.3])
@pytest.mark.parametrize("turn_deg", [0.0, 130.0])
def test_land_is_gone_round_in_a_few_legs(rate: float, turn_deg: float) -> None:
    site = Site(turn_deg=turn_deg)
    head = Land(name="Head", area=site.area(HEAD))
    request = asked(site, (-900, 0), (900, 0), land=[head], stream=site.steady(90.0, rate))
    path = find_path(request)
    assert path.straight.reason == "land lies in the way"
    assert path.plan.feasible and not of_kind(path.plan, "land")
    assert len(path.plan.legs) <= 5
    assert path.plan.total_min <= 1.02 * path.optimum_min
    for track in tracks_m(request, path):
        assert not head.area.contains(densely(track)).any()
    if rate == 0.0:
        # The string pulled tight round the head's corners is the shortest there is.
        string = site.xy([(-900, 0), (-200, 900), (0, 1100), (250, 800), (900, 0)])
        tight_min = np.hypot(*np.diff(string, axis=0).T).sum() / PACE / 60.0
        assert tight_min < path.plan.total_min < 1.04 * tight_min


def fan_s(rate, slope, end_x: float, pace: float) -> float:
    """The least time to (end_x, 0) in a stream u(y) to the east: a fan of headings that turn by Zermelo's equation,
    dtheta/dt = -cos^2(theta) u'(y), each stopped at the east of the end; RK4."""

    def rates(state):
        x, y, theta = state
        return np.stack([pace * np.cos(theta) + rate(y), pace * np.sin(theta), -(np.cos(theta) ** 2) * slope(y)])

    theta = np.linspace(-1.4, 1.4, 6001)
    state, step = np.stack([0.0 * theta, 0.0 * theta, theta]), 5.0
    y_there, t_there = np.full(len(theta), np.nan), np.full(len(theta), np.nan)
    for number in range(1400):
        k1 = rates(state)
        k2 = rates(state + step / 2 * k1)
        k3 = rates(state + step / 2 * k2)
        k4 = rates(state + step * k3)
        after = state + step / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
        passed = (state[0] < end_x) & (after[0] >= end_x) & np.isnan(t_there)
        share = (end_x - state[0]) / np.where(after[0] == state[0], 1.0, after[0] - state[0])
        y_there[passed] = (state[1] + share * (after[1] - state[1]))[passed]
        t_there[passed] = (step * (number + share))[passed]
        state = after
    hits = np.flatnonzero(np.sign(y_there[:-1]) * np.sign(y_there[1:]) < 0.0)
    share = y_there[hits] / (y_there[hits] - y_there[hits + 1])
    return float(np.min(t_there[hits] + share * (t_there[hits + 1] - t_there[hits])))


def test_in_a_shear_it_beats_the_straight_line_and_meets_a_fan_of_headings() -> None:
    site = Site()

    def rate(y):
        return 0.2 * (1.0 + np.tanh((y - 350.0) / 150.0))

    def slope(y):
        return 0.2 / 150.0 / np.cosh((y - 350.0) / 150.0) ** 2

    path = find_path(asked(site, (0, 0), (3000, 0), flow=lambda place, t_s: rate(place.imag) + 0j))
    best_min = fan_s(rate, slope, 3000.0, PACE) / 60.0
    assert path.optimum_min == pytest.approx(best_min, rel=4e-3)
    assert path.plan.total_min < 0.9 * path.straight.minutes
    assert best_min * 0.999 < path.plan.total_min < 1.025 * best_min
    assert 2 <= len(path.plan.legs) <= 5


@pytest.mark.parametrize("seed", range(6))
def test_moving_any_corner_gains_next_to_nothing(seed: int) -> None:
    """The route's own solver, corner by corner, in invented water that changes with place and time."""
    site, water = Site(), random_water(seed, 0.35)
    head = Land(name="Head", area=site.area([(-60, -900), (-60, 500), (60, 500), (60, -900)]))
    request = asked(site, (-900, 0), (900, 100), land=[head], flow=water)
    path = find_path(request)
    swim, corners = request.swim, corners_of(site, path)
    assert path.plan.feasible

    def minutes(places):
        swum = swim_route(
            swim.stream, swim.frame, places, np.zeros(len(places)), np.array([0.0]), swim.swimmer, swim.way
        )
        return float(swum.arrive_s[0, -1]) / 60.0

    assert minutes(corners) == pytest.approx(path.plan.total_min, abs=0.01)
    for number in range(1, len(corners) - 1):
        for step in ((150, 0), (-150, 0), (0, 150)):
            moved = corners.copy()
            moved[number] += step
            away = np.concatenate([densely(moved[n : n + 2]) for n in range(len(moved) - 1)])
            if np.min(head.area.distance_m(away)) > 40.0 and not head.area.contains(away).any():
                assert not minutes(moved) < 0.99 * path.plan.total_min


def islands(site: Site, rng) -> list[Land]:
    """Ragged islands between the ends, none on them."""
    found = []
    for number in range(12):
        centre, radius = rng.uniform(-1200.0, 1200.0, 2), rng.uniform(60.0, 300.0)
        if min(np.hypot(centre[0] - east, centre[1]) for east in (-1300.0, 1300.0)) > radius + 120.0:
            turn, out = np.sort(rng.uniform(0.0, 2 * np.pi, 9)), radius * rng.uniform(0.5, 1.0, 9)
            ring = centre + np.column_stack([out * np.sin(turn), out * np.cos(turn)])
            found.append(Land(name=f"Holm {number}", area=site.area(ring)))
    return found


@pytest.mark.parametrize("seed", range(8))
def test_among_islands_in_changing_water_the_route_is_as_quick_as_the_grid_and_touches_none(seed: int) -> None:
    rng = np.random.default_rng(100 + seed)
    site = Site(turn_deg=rng.uniform(0.0, 360.0))
    request = asked(
        site, (-1300, 0), (1300, 0), land=islands(site, rng), flow=random_water(seed, rng.uniform(0.1, 0.5))
    )
    path = find_path(request)
    assert path.plan.feasible
    assert path.plan.total_min < 1.03 * path.optimum_min
    for track in tracks_m(request, path):
        assert not any(land.area.contains(densely(track)).any() for land in request.swim.chart.land)


def channel(site: Site, **about) -> Channel:
    ring = [(-3000, 400), (3000, 1000), (3000, 1250), (-3000, 650)]
    return Channel(name="Cut", kind="fairway", area=site.area(ring), **about)


@pytest.mark.parametrize("towards", [90.0, 270.0])
def test_a_channel_is_crossed_on_a_leg_whose_heading_is_square(towards: float) -> None:
    site = Site()
    about = {"channels": (channel(site),), "stream": site.steady(towards, 0.3)}
    plain = find_path(asked(site, (0, 0), (1500, 2000), **about))
    square = find_path(asked(site, (0, 0), (1500, 2000), how=CROSS_SQUARE, **about))
    (before,), (after,) = (of_kind(path.plan, "channel") for path in (plain, square))
    assert before.crossing_angle_deg < 75.0
    assert after.crossing_angle_deg == pytest.approx(90.0, abs=1.0)
    assert after.severity == "note"
    assert square.square_legs == (after.leg,)
    assert plain.plan.total_min < square.plan.total_min < 1.1 * plain.plan.total_min


def test_two_channels_of_one_name_are_both_crossed_square() -> None:
    site = Site()
    lanes = tuple(
        Channel(name="", kind="lane", area=site.area([(-3000, y), (3000, y + 900), (3000, y + 1100), (-3000, y + 200)]))
        for y in (-100.0, 700.0)
    )
    path = find_path(asked(site, (0, 0), (500, 2000), how=CROSS_SQUARE, channels=lanes, stream=site.steady(90.0, 0.2)))
    angles = [flag.crossing_angle_deg for flag in of_kind(path.plan, "channel")]
    assert angles == pytest.approx([90.0, 90.0], abs=1.0)
    assert len(path.square_legs) == 2


def test_channels_kept_out_of_are_gone_round() -> None:
    site = Site()
    cut = Channel(name="Cut", kind="lane", area=site.box(-400, 500, 3000, 700))
    path = find_path(asked(site, (0, 0), (0, 1200), how=KEEP_OUT, channels=(cut,)))
    assert not of_kind(path.plan, "channel")
    # Round the west end: twice to a corner 20 m or so off it.
    string = np.hypot(400.0, 500.0) + 200.0 + np.hypot(400.0, 500.0)
    assert string < path.plan.total_m < 1.06 * string


def test_a_channel_that_cannot_be_crossed_square_is_named() -> None:
    site = Site()
    round_one = [(300 * np.sin(a), 800 + 300 * np.cos(a)) for a in np.linspace(0.0, 2 * np.pi, 7)[:-1] + 0.3]
    unknown = Channel(name="Basin", kind="small_craft", area=site.area(round_one))
    inside = Channel(name="Haven", kind="small_craft", area=site.box(-300, -100, 300, 100), flow_deg=90.0)
    path = find_path(asked(site, (0, 0), (0, 1600), how=CROSS_SQUARE, channels=(unknown, inside)))
    said = " ".join(path.plan.warnings)
    assert "Haven square: it starts or ends in it" in said
    # What has no known direction weighs, too: it is gone round, or said.
    assert "Basin" in said or "Basin" not in {flag.name for flag in of_kind(path.plan, "channel")}


def test_closed_water_counts_in_its_hours() -> None:
    site = Site()
    pool = site.box(-600, 500, 600, 700)
    always = ClosedArea(name="Pool", rule="no_entry", area=pool)
    later = InForce(start=NOON + timedelta(hours=3), end=NOON + timedelta(hours=5))
    now = InForce(start=NOON - timedelta(hours=1), end=NOON + timedelta(hours=2))
    straight_min = 1200.0 / PACE / 60.0
    for area, round_it in (
        (always, True),
        (replace(always, in_force=now), True),
        (replace(always, in_force=later), False),
    ):
        path = find_path(asked(site, (0, 0), (0, 1200), closed_areas=(area,)))
        assert path.plan.feasible
        assert (path.plan.total_min > 1.2 * straight_min) is round_it
        assert not [flag for flag in of_kind(path.plan, "closed_area") if flag.severity == "stop"]


@pytest.mark.parametrize(("lon", "lat"), [(-28.5, -42.4), (179.998, 12.0), (-179.999, -55.0)])
def test_the_same_path_anywhere_on_the_earth(lon: float, lat: float) -> None:
    def at(site):
        head = Land(name="Head", area=site.area(HEAD))
        return find_path(asked(site, (-900, 0), (900, 0), land=[head], stream=site.steady(90.0, 0.2)))

    here, there = at(Site()), at(Site(lon=lon, lat=lat))
    assert there.plan.total_min == pytest.approx(here.plan.total_min, rel=3e-3)
    assert len(there.plan.legs) == len(here.plan.legs)
    # It may be night there; nothing else stands against it.
    assert {flag.kind for flag in there.plan.flags if flag.severity == "stop"} <= {"after_dark"}


def test_refusals_say_what_is_in_the_way() -> None:
    site = Site()
    wall = Land(
        name="Wall",
        area=site.area(
            [(-500, -500), (500, -500), (500, 500), (-500, 500)], [(-300, -300), (300, -300), (300, 300), (-300, 300)]
        ),
    )
    with pytest.raises(SwimPlanError, match="No way was found from Slip to Beach"):
        find_path(asked(site, (0, 0), (900, 0), land=[wall]))
    inland = Land(name="Holm", area=site.box(700, -300, 1300, 300))
    with pytest.raises(SwimPlanError, match="The end 'Beach' lies 300 m inside Holm"):
        find_path(asked(site, (0, 0), (1000, 0), land=[inland]))
    with pytest.raises(SwimPlanError, match="No stream is known at the entry"):
        find_path(asked(site, (0, 0), (1000, 0), flow=lambda place, t_s: np.where(place.real < 500.0, np.nan, 0.0)))
    # A stream that runs faster than the swimmer all the time takes nobody against it.
    with pytest.raises(SwimPlanError, match="No way was found"):
        find_path(asked(site, (0, 0), (1000, 0), stream=site.steady(270.0, 0.9)))


def test_progress_rises_to_one_and_stopping_stops() -> None:
    site = Site()
    head = Land(name="Head", area=site.area(HEAD))
    shares: list[float] = []
    request = asked(site, (-900, 0), (900, 0), land=[head])
    find_path(request, progress=shares.append)
    assert shares == sorted(shares) and shares[-1] == 1.0
    for looks in (1, 40, 400):
        left = iter(range(looks))
        with pytest.raises(StoppedError):
            find_path(request, is_cancelled=lambda left=left: next(left, None) is None)


def test_ways_swum_at_once_arrive_as_each_does_alone() -> None:
    site, water = Site(), random_water(3, 0.4)
    request = asked(site, (-900, 0), (900, 100), flow=water)
    rng = np.random.default_rng(8)
    ends = request.swim.stops_m
    ways = np.stack([[ends[0], *rng.uniform(-700.0, 700.0, (2, 2)), ends[1]] for _ in range(12)])
    grid = ReachGrid.over(np.array([-2000.0, -2000.0, 2000.0, 2000.0]), 50.0)
    swims = WaySwims(request.swim, [], grid, None, bool)
    found = swims.swim_all(Corners(at=(0, 1, 2, 3), crossing=(None,) * 4), ways)
    for way, arrive_s, limit in zip(ways, found.arrive_s, found.limit):
        swim = request.swim
        alone = swim_route(swim.stream, swim.frame, way, np.zeros(4), np.array([0.0]), swim.swimmer, swim.way)
        if limit == 0:
            assert arrive_s == pytest.approx(alone.arrive_s[0, -1], abs=1.0)
    assert (found.limit == 0).sum() >= 6


def test_the_report_compares_and_is_that_of_the_plan() -> None:
    site = Site()
    path = find_path(asked(site, (0, 0), (2000, 0), stream=site.steady(0.0, 0.3), depart=NOON.astimezone(UTC)))
    told = path_dict(path, version="x")
    assert told["compared"]["route_min"] == pytest.approx(told["total_min"], abs=1e-3)
    assert told["compared"]["straight_min"] == pytest.approx(told["total_min"], abs=0.01)
    assert told["compared"]["straight_reason"] is None
    assert told["feasible"] is True
    assert "steers anew" in told["method"]
