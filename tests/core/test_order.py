"""The best order of marks against every order swum at every departure, and against closed forms."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, time, timedelta, timezone
from itertools import permutations

import numpy as np
import pytest
from invented_orders import Moving, every_order, numbers_of, order_request
from invented_requests import NOON, SWIMMER, Site, minutes_between
from invented_waters import RandomWater, rotary, tide_and_eddy
from questions import StopAfter
from tideleg.core.chart.areas import Channel, ClosedArea, Land, Sailing
from tideleg.core.chart.hours import InForce
from tideleg.core.errors import StoppedError, SwimPlanError
from tideleg.core.planar import length_m, stretches_inside
from tideleg.core.results.best_order import orders_dict
from tideleg.core.solve.order.find_order import find_orders, table_times_s
from tideleg.core.solve.order.leg_times import LegTimer
from tideleg.core.solve.order.request import stopper, ways_between
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.solve.quick_legs import quick_legs
from tideleg.core.solve.swim import GridStream
from tideleg.core.solve.windows.departures import swim_departures
from tideleg.core.water.field import StreamField
from tideleg.core.water.tide import TideTable

FAR = replace(SWIMMER, range_m=40_000.0, max_hours=7.0)
SITES = (Site(), Site(lon=179.995, lat=-41.0, turn_deg=130.0), Site(lon=-100.0, lat=0.05, turn_deg=60.0))


def random_water(seed: int, site: Site) -> Moving:
    water = RandomWater(np.random.default_rng(seed), [2500.0], [2.0], [0.45])
    return Moving(water.one(0), site.frame)


def seconds_of(plan) -> float:
    return 60.0 * plan.minutes


@pytest.mark.parametrize("seed", range(8))
def test_the_best_orders_are_those_of_swimming_every_order(seed: int) -> None:
    rng, site = np.random.default_rng(seed), SITES[seed % 3]
    count = 5 if seed % 4 == 0 else 4
    # Noon at each place is not noon at another: the departures of the far places stay in daylight too.
    order = order_request(
        site,
        (0.0, 0.0),
        rng.uniform(-900.0, 900.0, (count, 2)),
        exits_m=[(0.0, 0.0), (700.0, -500.0)][: 1 + seed % 2],
        stays_min=rng.uniform(5.0, 25.0, count),
        swimmer=FAR,
        stream=random_water(seed, site),
        hours=2.5,
        depart=noon_at(site),
    )
    found, everything = find_orders(order), every_order(order)
    least = sorted((np.nanmin(total), numbers) for numbers, total in everything.items() if np.isfinite(total).any())
    assert len(found.plans) == 5
    for plan, (best_s, _) in zip(found.plans, least):
        assert plan.feasible
        assert seconds_of(plan) <= best_s + 1.0
        at_best = everything[numbers_of(order, plan)]
        if not any(stop.longer_min for stop in plan.stops):
            row = int(np.nanargmin(at_best))
            assert seconds_of(plan) == pytest.approx(at_best[row], abs=1.0)
            assert at_best[np.searchsorted(order.depart_s, order.swim.clock.seconds(plan.depart))] <= at_best[row] + 1.0


def noon_at(site: Site) -> datetime:
    # 10:30 by the sun, so that the swims end before dusk.
    return datetime(2027, 6, 5, 10, 30, tzinfo=timezone.utc) - timedelta(hours=site.lon / 15.0)


@pytest.mark.parametrize("seed", range(2))
def test_nine_marks_in_slack_water_are_the_shortest_round(seed: int) -> None:
    rng, site = np.random.default_rng(seed), Site()
    order = order_request(site, (0.0, 0.0), rng.uniform(-600.0, 600.0, (9, 2)), swimmer=FAR, hours=1.0)
    found = find_orders(order, alternatives=3)
    places = order.places_m
    away = np.hypot(*(places[:, None] - places[None]).transpose(2, 0, 1))
    rounds = np.array(list(permutations(range(1, 10))))
    length = away[0, rounds[:, 0]] + away[rounds[:, -1], 10] + away[rounds[:, :-1], rounds[:, 1:]].sum(axis=1)
    shortest = np.sort(length)
    # Each round is as long the other way.
    assert [plan.length_m for plan in found.plans] == pytest.approx(shortest[[0, 1, 2]], abs=0.05)
    assert found.plans[0].minutes == pytest.approx(shortest[0] / SWIMMER.pace_m_s / 60.0, abs=0.01)
    assert sorted(found.plans[0].names) == sorted(place.name for place in order.places)
    # Slack water has no best hour: of equals the earliest departure is taken.
    assert found.plans[0].depart == order.swim.depart


def test_no_exchange_of_marks_betters_nine_marks_in_a_stream() -> None:
    rng, site = np.random.default_rng(3), Site()
    order = order_request(
        site,
        (0.0, 0.0),
        rng.uniform(-700.0, 700.0, (9, 2)),
        stays_min=[4.0] * 9,
        swimmer=FAR,
        stream=Moving(rotary(0.35, 9.0), site.frame),
        hours=2.0,
        depart=noon_at(site),
    )
    best = find_orders(order, alternatives=1).plans[0]
    numbers, places = numbers_of(order, best), order.places_m
    depart_s = np.array([order.swim.clock.seconds(best.depart)])

    def total_s(tried) -> float:
        legs = tuple(places[list(pair)] for pair in zip(tried, tried[1:]))
        swum = swim_departures(order.swim_over(tried, legs, (0.0,) * len(legs)), depart_s)
        return float(swum.total_s[0]) if swum.feasible[0] else np.inf

    assert total_s(numbers) == pytest.approx(seconds_of(best), abs=1.0)
    for first in range(1, 9):
        for last in range(first + 1, 10):
            swapped, turned = list(numbers), list(numbers)
            swapped[first], swapped[last] = swapped[last], swapped[first]
            turned[first : last + 1] = turned[first : last + 1][::-1]
            assert min(total_s(tuple(swapped)), total_s(tuple(turned))) >= seconds_of(best) - 1.0


def test_a_stream_that_turns_turns_the_order() -> None:
    site = Site(turn_deg=35.0)
    half_s, long_leg_s = 372.0 * 60.0, 84.0 * 60.0
    along = 1j * np.exp(-1j * np.radians(site.towards(0.0)))
    # Strongest about when the long leg from one mark to the other is swum, and the other way half a tide later.
    stream = Moving(
        lambda place, t_s: 0.5 * along * np.cos(np.pi * (t_s - long_leg_s) / half_s) + 0.0 * place, site.frame
    )
    order = order_request(
        site,
        (0.0, 0.0),
        [(0.0, 500.0), (0.0, -500.0)],
        stays_min=[60.0, 60.0],
        swimmer=FAR,
        stream=stream,
        hours=0.0,
        depart=NOON.replace(hour=7),
    )
    plans = find_orders(order).plans
    later = find_orders(replace(order, depart_s=np.array([half_s]))).plans
    assert plans[0].names == ("Slip", "Rock 2", "Rock 1", "Beach 0")
    assert later[0].names == ("Slip", "Rock 1", "Rock 2", "Beach 0")
    assert plans[0].minutes < plans[1].minutes - 5.0
    assert [plan.minutes for plan in later] == pytest.approx([plan.minutes for plan in plans], abs=1.0 / 60.0)


def test_waiting_at_a_mark_for_the_stream_to_stop_is_told() -> None:
    site = Site()
    # 0.9 m/s to the north for the first hour, too much to come home against; none afterwards.
    stream = Moving(lambda place, t_s: np.where(t_s < 3600.0, 0.9j, 0.0j) + 0.0 * place, site.frame)
    order = order_request(site, (0.0, 0.0), [(0.0, 600.0)], stays_min=[10.0], swimmer=FAR, stream=stream, hours=0.0)
    plan = find_orders(order).plans[0]
    assert plan.feasible
    reached_s, home_s = 600.0 / 1.6, 600.0 / 0.7
    wait_min = (3600.0 - reached_s - 600.0) / 60.0
    # The table has a row every 150 s.
    assert wait_min - 0.01 <= plan.stops[1].longer_min <= wait_min + 2.5
    assert plan.minutes == pytest.approx(60.0 + home_s / 60.0, abs=2.5)
    assert any("longer at Rock 1" in note for note in plan.notes)
    told = plan_swim(replace(order.swim, stops=tuple(_stops(order, plan))))
    assert told.feasible
    assert told.total_min == pytest.approx(plan.minutes, abs=1.0 / 60.0)


def _stops(order, plan):
    return [replace(stop, stay_min=one.stay_min) for stop, one in zip(order.swim.stops, plan.stops)]


def test_ten_marks_are_refused() -> None:
    with pytest.raises(SwimPlanError, match="From 1 to 9"):
        order_request(Site(), (0.0, 0.0), np.arange(20.0).reshape(-1, 2) * 50.0 + 100.0)


def test_marks_behind_land_are_swum_to_round_it() -> None:
    site = Site(turn_deg=20.0)
    head = Land(name="Head", area=site.box(-40.0, -600.0, 40.0, 500.0))
    order = order_request(
        site,
        (-400.0, 0.0),
        [(-300.0, 300.0), (300.0, 0.0), (350.0, 250.0)],
        swimmer=FAR,
        land=[head],
        hours=1.0,
    )
    plan = find_orders(order).plans[0]
    assert plan.feasible
    assert any(stop.turn for stop in plan.stops)
    assert stretches_inside([head.area], site.frame.to_xy(plan.lonlat)) == []
    # Round the nearer, northern end both ways, the mark this side taken on one of them.
    exact = sum(
        np.hypot(*np.diff(np.array(line, dtype=float), axis=0).T).sum()
        for line in [
            [(-400, 0), (-40, 500), (40, 500), (300, 0), (350, 250), (40, 500), (-40, 500), (-300, 300), (-400, 0)],
        ]
    )
    assert exact < plan.length_m < exact + 130.0
    assert "Goes round land" in " ".join(plan.notes)


def test_a_track_that_would_bow_onto_the_land_is_swum_wider() -> None:
    site = Site()
    # The way runs for 40 min along the west side of a long island, in a stream that swings across it every hour.
    island = Land(name="Long", area=site.box(0.0, -800.0, 6000.0, 800.0))
    stream = Moving(lambda place, t_s: 0.06 * np.cos(np.pi * t_s / 1800.0) + 0.0 * place, site.frame)
    about = {"swimmer": FAR, "stream": stream, "hours": 0.0, "land": [island]}
    order = order_request(site, (300.0, -1000.0), [(300.0, 1000.0)], **about)
    check = stopper(bool, None, 0.0, 1.0)
    ways = ways_between(order, 3600.0, check)
    near, wide = ways[0, 1]
    assert length_m(near) < length_m(wide) < length_m(near) + 250.0
    (leg,) = LegTimer(order, ways, np.arange(0.0, 7200.0, 150.0)).table(check).legs[0, 1]
    # At some hours the near way bows onto the land, at others it does not and is taken; a way there always is.
    assert set(leg.way.tolist()) == {0, 1}
    assert np.isfinite(leg.end_s).all()
    assert find_orders(order).plans[0].feasible


def test_a_mark_on_an_island_without_a_way_is_named() -> None:
    site = Site()
    lake = Land(
        name="Atoll",
        area=site.area(
            [(200, 200), (800, 200), (800, 800), (200, 800)], [(400, 400), (600, 400), (600, 600), (400, 600)]
        ),
    )
    order = order_request(site, (0.0, 0.0), [(500.0, 500.0), (0.0, 400.0)], swimmer=FAR, land=[lake], hours=1.0)
    found = find_orders(order)
    assert not any(plan.feasible for plan in found.plans)
    assert found.stopped_by == {"land": 3}
    assert any("No way over water leads to Rock 1" in warning for warning in found.warnings)


def test_unknown_stream_is_never_taken_as_slack() -> None:
    site = Site()
    marks = [(0.0, 500.0), (300.0, 100.0)]
    nowhere = order_request(site, (0.0, 0.0), marks, swimmer=FAR, stream=StreamField(stations=()), hours=1.0)
    found = find_orders(nowhere)
    assert not found.plans[0].feasible
    assert found.plans[0].minutes is None
    assert found.stopped_by == {"unknown": 3}
    assert "not known" in found.plans[0].reason
    # Known for the first 50 minutes only: what would take longer is not feasible.
    brief = Moving(lambda place, t_s: np.where(t_s < 3000.0, 0.0j, np.nan) + 0.0 * place, site.frame)
    order = order_request(site, (0.0, 0.0), marks, swimmer=FAR, stream=brief, hours=1.0)
    plan = find_orders(order).plans[0]
    assert plan.feasible
    assert minutes_between(order.swim.depart, plan.arrive) < 50.0
    late = find_orders(replace(order, depart_s=order.depart_s + 1800.0))
    assert not late.plans[0].feasible


def crowded(site: Site, **changes):
    """Marks with everything that can stop a swim."""
    half_s = 372.0 * 60.0
    high = np.arange(12) % 2 == 0
    tide = TideTable(
        port="invented", times_s=half_s * (np.arange(12) - 5.2), heights_m=np.where(high, 4.2, 0.5), is_high=high
    )
    cut = Channel(
        name="Cut",
        kind="ferry",
        area=site.box(-1500.0, 300.0, 1500.0, 380.0),
        sailings=tuple(
            Sailing(when=time(hour, 20), clear_before_min=10, clear_after_min=5) for hour in range(8, 20, 2)
        ),
    )
    closed = ClosedArea(
        name="Range",
        rule="no_entry",
        area=site.box(-500.0, 600.0, -250.0, 900.0),
        in_force=InForce(start=time(11, 0), end=time(14, 30)),
    )
    along = 1j * np.exp(-1j * np.radians(site.towards(15.0)))
    stream = Moving(lambda place, t_s: 0.45 * along * np.sin(np.pi * t_s / half_s) + 0.0 * place, site.frame)
    about = {
        "stream": stream,
        "stays_min": (20.0, 12.0, 15.0),
        "depths_m": (8.0, 9.5, 9.0),
        "tide": tide,
        "channels": (cut,),
        "closed_areas": (closed,),
        "swimmer": replace(FAR, depth_limit_m=12.5, max_hours=3.2),
        "hours": 9.0,
        "step_min": 20.0,
    }
    return order_request(site, (0.0, 0.0), [(300.0, 600.0), (-350.0, 750.0), (200.0, 150.0)], **{**about, **changes})


def swum_one_by_one(order) -> dict[tuple[int, ...], float]:
    """Seconds of every order at its best departure, straight from mark to mark without waiting, where feasible."""
    places, best = order.places_m, {}
    for middle in permutations(range(1, order.first_exit)):
        numbers = (0, *middle, order.first_exit)
        legs = tuple(places[list(pair)] for pair in zip(numbers, numbers[1:]))
        swum = swim_departures(order.swim_over(numbers, legs, (0.0,) * len(legs)), order.depart_s)
        if swum.feasible.any():
            best[numbers] = float(np.min(swum.total_s[swum.feasible]))
    return best


def test_every_limit_counts_as_it_does_for_a_swim_planned_one_by_one() -> None:
    order = crowded(Site())
    best = swum_one_by_one(order)
    plans = {numbers_of(order, plan): plan for plan in find_orders(order, alternatives=6).plans if plan.feasible}
    assert best
    for numbers, plan in plans.items():
        if not any(stop.longer_min or stop.turn for stop in plan.stops):
            assert seconds_of(plan) == pytest.approx(best[numbers], abs=1.0)
        swim = order.swim_over(numbers, _legs_of(order, plan), _waits_of(plan))
        told = plan_swim(replace(swim, depart=plan.depart))
        assert told.feasible
        assert not any(flag.kind in ("deep", "shallow") for flag in told.flags)
        assert told.total_min == pytest.approx(plan.minutes, abs=1.0 / 60.0)


# Among them are waters in which a leg can be begun for a minute or two only, between two rows of the table.
@pytest.mark.parametrize("seed", [1, 2, 3, 13, 20, 83, 157, 176, 183, 186, 192])
def test_no_order_is_missed_for_limits_that_close_between_the_rows_of_the_table(seed: int) -> None:
    rng = np.random.default_rng(1000 + seed)
    site = Site(turn_deg=float(rng.uniform(0.0, 360.0)))
    water = RandomWater(rng, [1500.0], [1.5], [rng.uniform(0.3, 0.65)]).one(0)
    order = crowded(
        site,
        stream=Moving(water, site.frame),
        stays_min=tuple(rng.uniform(5.0, 30.0, 3)),
        depths_m=tuple(rng.uniform(7.0, 10.0, 3)),
        swimmer=replace(
            FAR,
            depth_limit_m=float(rng.uniform(11.5, 14.0)),
            max_hours=float(rng.uniform(2.0, 4.0)),
            range_m=float(rng.uniform(2500.0, 5000.0)),
        ),
    )
    best = swum_one_by_one(order)
    assert best
    plans = {numbers_of(order, plan): plan for plan in find_orders(order, alternatives=6).plans if plan.feasible}
    for numbers, total_s in best.items():
        assert seconds_of(plans[numbers]) <= total_s + 1.0


def _legs_of(order, plan):
    """The way of each leg, its turns in it."""
    xy = order.swim.frame.to_xy(plan.lonlat)
    places = [row for row, stop in enumerate(plan.stops) if not stop.turn]
    return tuple(xy[first : last + 1] for first, last in zip(places, places[1:]))


def _waits_of(plan):
    return tuple(60.0 * stop.longer_min for stop in plan.stops if not stop.turn)[:-1]


def test_the_deep_mark_waits_for_low_water() -> None:
    site = Site()
    # Two marks alike but for their depth; the tide falls from 4 m to 0 in the six hours that follow.
    tide = TideTable(
        port="invented", times_s=np.array([-22320.0, 0.0, 22320.0, 44640.0]), heights_m=np.array([0.0, 4.0, 0.0, 4.0]),
        is_high=np.array([False, True, False, True]),
    )  # fmt: skip

    def visited(depths) -> tuple[str, ...]:
        order = order_request(
            site,
            (0.0, 0.0),
            [(-300.0, 300.0), (300.0, 300.0)],
            stays_min=[60.0, 60.0],
            depths_m=depths,
            tide=tide,
            swimmer=replace(FAR, depth_limit_m=12.0),
            hours=0.0,
        )
        plan = find_orders(order).plans[0]
        assert plan.feasible
        return plan.names

    # After 80 min the height is 3.7 m: 9 m charted are too deep at first, and so they would be on the way out.
    assert visited((7.0, 8.4))[1:3] == ("Rock 1", "Rock 2")
    assert visited((8.4, 7.0))[1:3] == ("Rock 2", "Rock 1")


def test_orders_over_the_swimmers_range_are_left_out_however_quick() -> None:
    site = Site()
    along = 1j * np.exp(-1j * np.radians(site.towards(0.0)))
    stream = Moving(lambda place, t_s: np.where(place.real > 150.0, 0.45, -0.45) * along, site.frame)
    marks = [(300.0, 500.0), (-300.0, 500.0), (300.0, -500.0), (-300.0, -500.0)]
    free = order_request(site, (0.0, -600.0), marks, swimmer=FAR, stream=stream, hours=0.0)
    lengths = {plan.names: plan.length_m for plan in find_orders(free, alternatives=24).plans}
    ranges = sorted(lengths.values())
    bound = replace(free, swim=replace(free.swim, swimmer=replace(FAR, range_m=ranges[len(ranges) // 3] + 1.0)))
    plans = find_orders(bound, alternatives=24).plans
    short = {names for names, metres in lengths.items() if metres <= bound.swim.swimmer.range_m}
    assert {plan.names for plan in plans if plan.feasible} == short
    assert 0 < len(short) < len(lengths)


def test_a_swim_that_fits_no_limit_is_told_with_what_stops_it() -> None:
    order = order_request(
        Site(), (0.0, 0.0), [(0.0, 900.0), (500.0, 500.0)], swimmer=replace(FAR, range_m=500.0), hours=1.0
    )
    found = find_orders(order)
    assert len(found.plans) == 1
    assert not found.plans[0].feasible
    assert "longer than the 0.5 km" in found.plans[0].reason
    assert found.stopped_by == {"range": 3}
    assert orders_dict(found, version="0")["feasible"] is False


def test_halving_the_step_of_the_table_shrinks_its_error() -> None:
    site = Site()
    order = order_request(
        site, (0.0, 0.0), [(900.0, 700.0)], swimmer=FAR, stream=Moving(tide_and_eddy, site.frame), hours=6.0
    )
    check = stopper(bool, None, 0.0, 1.0)
    ways = ways_between(order, 8 * 3600.0, check)
    exact_s = np.arange(0.0, 6 * 3600.0, 97.0)
    grid = GridStream(stream=order.swim.stream, frame=site.frame)
    legs = quick_legs(grid, *ways[0, 1][0], exact_s, SWIMMER.made_good_m_s, step_s=30.0)

    def worst_s(step_s: float) -> float:
        table = LegTimer(order, ways, np.arange(0.0, 8 * 3600.0, step_s)).table(check)
        leg = table.legs[0, 1][0]
        return float(np.max(np.abs(np.interp(exact_s, table.times_s, leg.end_s) - legs.arrive_s)))

    errors = [worst_s(step) for step in (2400.0, 1200.0, 600.0)]
    assert errors[0] > 2.5 * errors[1] > 2.5 * 2.5 * errors[2]
    assert worst_s(150.0) < 0.2


def test_departures_are_rows_of_the_table() -> None:
    for step_min, hours in ((10.0, 10.0), (7.0, 3.5), (60.0, 24.0), (30.0, 24.0 * 14), (1.0, 2.0)):
        order = order_request(Site(), (0.0, 0.0), [(0.0, 500.0)], hours=hours, step_min=step_min)
        times_s = table_times_s(order)
        assert len(times_s) < 3100
        row = np.searchsorted(times_s, order.depart_s - 1e-6)
        if step_min >= 30.0 or hours < 24.0:
            assert np.allclose(times_s[row], order.depart_s) or step_min < 2.5
        assert times_s[-1] >= order.depart_s[-1] + 3600.0 * order.swim.swimmer.max_hours
    with pytest.raises(SwimPlanError, match="31 days"):
        table_times_s(order_request(Site(), (0.0, 0.0), [(0.0, 500.0)], hours=24.0 * 32))


def test_it_tells_how_far_it_is_and_stops_when_told() -> None:
    order = crowded(Site())
    shares: list[float] = []
    find_orders(order, progress=shares.append)
    assert shares == sorted(shares)
    assert len(shares) > 20
    assert 0.0 <= shares[0] < 0.1
    asked = []

    def stop_after() -> bool:
        asked.append(None)
        return len(asked) > 30

    with pytest.raises(StoppedError):
        find_orders(order, is_cancelled=stop_after)


def test_the_table_of_legs_asks_at_every_look_at_the_stream() -> None:
    order, never = crowded(Site()), StopAfter()
    times_s = table_times_s(order)
    ways = ways_between(order, float(times_s[-1]), lambda share: None)

    LegTimer(order, ways, times_s, is_cancelled=never).table(lambda share: None)
    assert never.asked > 5 * len(order.pairs())
    last = StopAfter(never.asked - 1)
    with pytest.raises(StoppedError):
        LegTimer(order, ways, times_s, is_cancelled=last).table(lambda share: None)
    assert last.asked == never.asked
