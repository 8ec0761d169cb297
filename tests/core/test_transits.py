"""Transits of a mark, against every pair looked at one by one with geodesics."""

from __future__ import annotations

from datetime import datetime, timezone
from itertools import combinations, permutations

import numpy as np
import pytest
from pyproj import Geod
from tideleg.core.errors import OutsideModelError, SwimPlanError
from tideleg.core.magnetism import Variation
from tideleg.core.results.transits import (
    Transit,
    TransitsFound,
    bearing_text,
    transit_words,
    transits_dict,
)
from tideleg.core.solve.transit_fixes import fix_error_m
from tideleg.core.solve.transit_lines import TransitLimits
from tideleg.core.solve.transits import (
    Landmarks,
    find_transits,
    measured_transit,
    with_crossings,
)

WGS84 = Geod(ellps="WGS84")
NOON = datetime(2027, 6, 5, 12, 0, tzinfo=timezone.utc)
VARIATION = Variation(east_deg=-4.0, date=NOON)
# Mid-ocean, the date line, the south, and as near to a pole as plans go.
PLACES = [(-28.5, 42.4), (179.9999, -17.0), (-180.0, 51.0), (12.0, -63.0), (70.0, 88.9)]
OPENING_DEG = 5.0 / 60.0


def placed(lon: float, lat: float, bearings_deg, distances_m) -> np.ndarray:
    """Places (n, 2) in degrees by geodesics from one place."""
    n = len(bearings_deg)
    lons, lats, _ = WGS84.fwd(np.full(n, lon), np.full(n, lat), bearings_deg, distances_m)
    return np.column_stack([lons, lats])


def landmarks(lonlat: np.ndarray) -> Landmarks:
    return Landmarks(names=tuple(f"L{number}" for number in range(len(lonlat))), lonlat=lonlat)


def scattered(seed: int, lon: float, lat: float, n: int, *, within_deg: float = 360.0) -> Landmarks:
    rng = np.random.default_rng(seed)
    return landmarks(placed(lon, lat, rng.uniform(0.0, within_deg, n), rng.uniform(60.0, 11_000.0, n)))


def numbers(transit: Transit) -> tuple[int, int]:
    return int(transit.front[1:]), int(transit.rear[1:])


def off_line(lon: float, lat: float, front, rear) -> tuple[float, float]:
    """How far the geodesic through two places passes from a third, right positive, and its bearing there.

    Followed back from the front in the direction away from the rear to where the mark is abeam.
    """
    to_rear, _, _ = WGS84.inv(*front, *rear)
    to_mark, _, away = WGS84.inv(*front, lon, lat)
    back = np.radians(to_mark - (to_rear + 180.0))
    foot_lon, foot_lat, from_foot = WGS84.fwd(*front, to_rear + 180.0, away * np.cos(back))
    _, _, offset = WGS84.inv(lon, lat, foot_lon, foot_lat)
    # With the back to the landmarks, a mark to the right of the line means a line to its right as one looks at them.
    return float(np.copysign(offset, np.sin(back))), float(from_foot) % 360.0


def by_hand(lon: float, lat: float, things: Landmarks, limits: TransitLimits) -> dict[tuple[int, int], tuple]:
    """Every transit: (front, rear) to (offset, bearing, sensitivity), one pair after another on the ellipsoid."""
    n = len(things.names)
    _, _, distance = WGS84.inv(np.full(n, lon), np.full(n, lat), *things.lonlat.T)
    found = {}
    for front, rear in permutations(range(n), 2):
        gap = distance[rear] - distance[front]
        if not limits.nearest_m <= distance[front] or distance[rear] > limits.farthest_m:
            continue
        if gap < limits.least_gap_m or gap < limits.gap_share * distance[front]:
            continue
        bearings = [WGS84.inv(lon, lat, *things.lonlat[one])[0] for one in (front, rear)]
        if np.cos(np.radians(bearings[0] - bearings[1])) <= 0.0:
            continue
        offset, bearing = off_line(lon, lat, things.lonlat[front], things.lonlat[rear])
        if abs(offset) <= limits.offset_m:
            eye = np.radians(OPENING_DEG) * distance[front] * distance[rear] / gap
            found[front, rear] = (offset, bearing, eye)
    return found


@pytest.mark.parametrize(("lon", "lat"), PLACES)
def test_every_transit_is_found_and_measured_as_on_the_ellipsoid(lon: float, lat: float) -> None:
    limits = TransitLimits()
    things = scattered(3, lon, lat, 110)
    expected = by_hand(lon, lat, things, limits)
    result = find_transits("A", lon, lat, things, VARIATION, limits=limits, most=50)
    assert len(expected) > 5 and result.in_line == len(expected)
    seen = [one for fix in result.fixes for one in (fix.first, fix.second)]
    assert len(seen) >= 2
    for transit in seen:
        offset, bearing, eye = expected[numbers(transit)]
        assert transit.offset_m == pytest.approx(offset, abs=0.02)
        assert (transit.bearing_true_deg - bearing + 180.0) % 360.0 - 180.0 == pytest.approx(0.0, abs=0.01)
        assert transit.sensitivity_m == pytest.approx(eye, rel=1e-4)
        assert transit.bearing_mag_deg == pytest.approx((transit.bearing_true_deg + 4.0) % 360.0)


@pytest.mark.parametrize("seed", range(12))
@pytest.mark.parametrize(("lon", "lat"), PLACES[:3])
def test_best_pair_is_the_best_of_all_pairs_tried_one_by_one(seed: int, lon: float, lat: float) -> None:
    limits = TransitLimits(offset_m=60.0)
    things = scattered(100 + seed, lon, lat, 60)
    lines = by_hand(lon, lat, things, limits)
    best = np.inf
    for one, two in combinations(lines, 2):
        (o1, b1, s1), (o2, b2, s2) = lines[one], lines[two]
        turn = np.radians(b1 - b2)
        if abs(np.sin(turn)) < np.sin(np.radians(60.0)):
            continue
        normals = np.array([[np.cos(np.radians(b)), -np.sin(np.radians(b))] for b in (b1, b2)])
        meeting = np.linalg.solve(normals, [o1, o2])
        best = min(best, float(np.sqrt(meeting @ meeting + (s1**2 + s2**2) / np.sin(turn) ** 2)))
    result = find_transits("A", lon, lat, things, VARIATION, limits=limits)
    assert np.isfinite(best)
    assert result.fixes[0].error_m == pytest.approx(best, rel=1e-3)


def test_error_of_a_fix_is_that_of_many_wobbling_eyes() -> None:
    rng = np.random.default_rng(7)
    for turn_deg, offsets, eyes in ((90.0, (5.0, -3.0), (4.0, 9.0)), (62.0, (12.0, 10.0), (2.0, 6.0))):
        first, second = np.radians(20.0), np.radians(20.0 + turn_deg)
        normals = np.array([[np.cos(b), -np.sin(b)] for b in (first, second)])
        seen = np.column_stack([offset + eye * rng.standard_normal(400_000) for offset, eye in zip(offsets, eyes)])
        miss = np.linalg.solve(normals, seen.T)
        expected = np.sqrt((miss**2).sum(axis=0).mean())
        got = fix_error_m(np.array([turn_deg]), tuple(map(np.array, offsets)), tuple(map(np.array, eyes)))
        assert float(got[0]) == pytest.approx(expected, rel=0.005)


@pytest.mark.parametrize(("lon", "lat"), PLACES)
@pytest.mark.parametrize("side", [-90.0, 90.0])
def test_moving_off_the_line_by_the_sensitivity_opens_the_two_by_five_minutes(lon, lat, side) -> None:
    pair = landmarks(placed(lon, lat, [37.0, 37.0], [900.0, 2600.0]))
    transit = measured_transit("A", lon, lat, pair, VARIATION)
    assert transit.offset_m == pytest.approx(0.0, abs=0.01)

    def opening_deg(moved_m: float) -> float:
        here = WGS84.fwd(lon, lat, 37.0 + side, moved_m)[:2]
        seen = [WGS84.inv(*here, *place)[0] for place in pair.lonlat]
        return abs((seen[0] - seen[1] + 180.0) % 360.0 - 180.0)

    low, high = 0.0, 50.0
    for _ in range(60):
        middle = 0.5 * (low + high)
        low, high = (middle, high) if opening_deg(middle) < OPENING_DEG else (low, middle)
    assert transit.sensitivity_m == pytest.approx(low, rel=2e-3)


def test_line_to_the_right_of_the_mark_has_a_positive_offset() -> None:
    lon, lat = PLACES[0]
    for bearing in (0.0, 75.0, 180.0, 300.0):
        side = placed(lon, lat, [bearing + 90.0], [12.0])[0]
        pair = landmarks(placed(*side, [bearing, bearing], [800.0, 2000.0]))
        transit = measured_transit("A", lon, lat, pair, VARIATION)
        assert transit.offset_m == pytest.approx(12.0, abs=0.01)
        mirrored = placed(lon, lat, [bearing - 90.0], [12.0])[0]
        other = landmarks(placed(*mirrored, [bearing, bearing], [800.0, 2000.0]))
        assert measured_transit("A", lon, lat, other, VARIATION).offset_m == pytest.approx(-12.0, abs=0.01)


def test_mark_between_the_two_or_a_rear_no_farther_is_no_transit() -> None:
    lon, lat = PLACES[0]
    between = landmarks(placed(lon, lat, [10.0, 190.0], [500.0, 900.0]))
    assert measured_transit("A", lon, lat, between, VARIATION) is None
    turned = landmarks(placed(lon, lat, [10.0, 10.0], [900.0, 500.0]))
    assert measured_transit("A", lon, lat, turned, VARIATION) is None


def test_found_transits_keep_to_the_limits() -> None:
    lon, lat = PLACES[1]
    limits = TransitLimits(offset_m=8.0)
    result = find_transits("A", lon, lat, scattered(5, lon, lat, 400), VARIATION, limits=limits, most=20)
    assert len(result.fixes) > 3
    for fix in result.fixes:
        assert 60.0 <= fix.crossing_deg <= 90.0
        turn = fix.first.bearing_true_deg - fix.second.bearing_true_deg
        assert abs(np.sin(np.radians(turn))) == pytest.approx(np.sin(np.radians(fix.crossing_deg)))
        for one in (fix.first, fix.second):
            assert abs(one.offset_m) <= 8.0
            assert 100.0 <= one.front_m and one.rear_m <= 10_000.0
            assert one.rear_m - one.front_m >= max(50.0, 0.1 * one.front_m)


def test_pairs_come_by_error_and_no_landmark_in_a_dozen_variants() -> None:
    lon, lat = PLACES[0]
    result = find_transits("A", lon, lat, scattered(11, lon, lat, 300), VARIATION, most=6)
    errors = [fix.error_m for fix in result.fixes]
    assert len(errors) == 6 and errors == sorted(errors)
    sets = [{one for t in (fix.first, fix.second) for one in (t.front, t.rear)} for fix in result.fixes]
    assert all(len(one) == 4 for one in sets)
    assert all(len(one & other) <= 2 for one, other in combinations(sets, 2))
    names = [name for one in sets for name in one]
    assert max(names.count(name) for name in names) <= 2


def test_landmarks_on_one_bearing_cost_little_memory_and_leave_room_for_the_crossing_line() -> None:
    """2000 in one row: two million transits, of which a few are kept, and two landmarks abeam that cross them."""
    import tracemalloc

    lon, lat = PLACES[0]
    rng = np.random.default_rng(1)
    bearings = np.concatenate([rng.normal(0.0, 0.02, 1998), [90.0, 90.0]])
    things = landmarks(placed(lon, lat, bearings, np.concatenate([rng.uniform(300.0, 9000.0, 1998), [700.0, 1900.0]])))
    tracemalloc.start()
    result = find_transits("A", lon, lat, things, VARIATION)
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert result.in_line > 1_000_000
    assert peak < 150e6
    assert {result.fixes[0].first.front, result.fixes[0].second.front} & {"L1998"}
    assert result.fixes[0].crossing_deg == pytest.approx(90.0, abs=1.0)


def test_transits_do_not_depend_on_the_order_of_the_landmarks() -> None:
    lon, lat = PLACES[2]
    things = scattered(21, lon, lat, 120)
    turned = Landmarks(names=things.names[::-1], lonlat=things.lonlat[::-1])
    one, other = (find_transits("A", lon, lat, given, VARIATION) for given in (things, turned))
    assert [fix.error_m for fix in one.fixes] == pytest.approx([fix.error_m for fix in other.fixes])
    assert {numbers(fix.first) for fix in one.fixes} == {numbers(fix.first) for fix in other.fixes}


def test_too_few_none_in_line_and_none_that_cross_are_said_in_words() -> None:
    lon, lat = PLACES[0]

    def reason(bearings, distances) -> str:
        result = find_transits("Sill", lon, lat, landmarks(placed(lon, lat, bearings, distances)), VARIATION)
        assert result.fixes == () and "Sill" in result.reason
        return result.reason

    assert "there are no landmarks" in reason([], [])
    assert "1 of 3 landmarks lie from 100 m to 10 km" in reason([10.0, 10.0, 50.0], [50.0, 20_000.0, 400.0])
    assert "no two of 3 landmarks are in line within 20 m" in reason([10.0, 100.0, 200.0], [500.0, 900.0, 700.0])
    assert "no two that cross at 60 degrees" in reason([10.0, 10.0, 40.0, 40.0], [500.0, 900.0, 700.0, 1500.0])


def test_single_transits_come_where_none_cross() -> None:
    lon, lat = PLACES[0]
    things = landmarks(placed(lon, lat, [10.0, 10.0, 40.0, 40.0], [500.0, 900.0, 700.0, 1500.0]))
    result = find_transits("A", lon, lat, things, VARIATION)
    assert result.in_line == 2 and [one.crossing_deg for one in result.singles] == [None, None]
    assert [(one.front, one.rear) for one in result.singles] == [("L0", "L1"), ("L2", "L3")]  # 1.6 m, then 1.9 m


def test_landmarks_on_the_other_side_of_the_globe_are_out_of_range_not_an_error() -> None:
    lon, lat = PLACES[0]
    near = placed(lon, lat, [0.0, 0.0, 90.0, 90.0], [500.0, 1500.0, 600.0, 1800.0])
    things = landmarks(np.vstack([near, [[lon + 180.0, -lat], [lon + 90.0, 0.0]]]))
    assert len(find_transits("A", lon, lat, things, VARIATION).fixes) == 1


def test_limit_of_the_offset_beyond_the_nearest_front_is_refused() -> None:
    for offset_m in (0.0, -5.0, 150.0, float("nan")):
        with pytest.raises(SwimPlanError, match="at most 100 m"):
            TransitLimits(offset_m=offset_m)


def test_mark_at_a_pole_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        find_transits("A", 0.0, 89.9, landmarks(np.zeros((0, 2))), VARIATION)


def test_crossing_of_a_picked_transit_is_that_with_the_squarest_other() -> None:
    lon, lat = PLACES[0]
    picked = tuple(
        measured_transit("A", lon, lat, landmarks(placed(lon, lat, [b, b], [500.0, 1500.0])), VARIATION)
        for b in (10.0, 60.0, 285.0)
    )
    assert [one.crossing_deg for one in with_crossings(picked)] == pytest.approx([85.0, 50.0, 85.0], abs=0.01)
    assert with_crossings(picked[:1])[0].crossing_deg is None
    assert with_crossings(()) == ()


def test_bearing_of_nearly_north_is_printed_as_000() -> None:
    lon, lat = PLACES[0]
    pair = Landmarks(names=("Mill", "Tower"), lonlat=placed(lon, lat, [355.8, 355.8], [500.0, 1500.0]))
    transit = measured_transit("A", lon, lat, pair, VARIATION)
    assert (bearing_text(transit), transit_words(transit)) == ("000M", "Mill / Tower 000M")


def test_report_holds_every_pair_and_no_value_that_json_lacks() -> None:
    import json

    lon, lat = PLACES[0]
    result = find_transits("A", lon, lat, scattered(11, lon, lat, 300), VARIATION)
    alone = find_transits("B", lon, lat, landmarks(placed(lon, lat, [10.0, 10.0], [500.0, 900.0])), VARIATION)
    found = TransitsFound(
        marks=(result, alone), landmarks=300, offset_limit_m=20.0, variation_model="WMM2025", date=NOON, warnings=("w",)
    )
    told = json.loads(json.dumps(transits_dict(found, version="1.0.0"), allow_nan=False))
    assert [len(mark["fixes"]) for mark in told["marks"]] == [3, 0]
    assert told["marks"][0]["fixes"][0]["transits"][0]["words"] == transit_words(result.fixes[0].first)
    assert told["marks"][1]["singles"][0]["crossing_deg"] is None and told["marks"][1]["reason"]


def test_no_landmarks_give_no_lines() -> None:
    lon, lat = PLACES[0]
    assert find_transits("A", lon, lat, landmarks(np.zeros((0, 2))), VARIATION).singles == ()


def test_as_many_names_as_places() -> None:
    with pytest.raises(ValueError, match="2 names for 1 places"):
        Landmarks(names=("a", "b"), lonlat=np.zeros((1, 2)))
