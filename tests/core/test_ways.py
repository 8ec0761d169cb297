"""Ways over water against closed forms and against every corner tried with every other."""

from __future__ import annotations

from datetime import datetime, time, timezone

import numpy as np
import pytest
from questions import StopAfter
from shapely.geometry import LineString, Polygon
from shapely.ops import unary_union
from tideleg.core.chart.areas import Chart, ClosedArea, Land
from tideleg.core.chart.hours import InForce
from tideleg.core.errors import StoppedError
from tideleg.core.planar import PlanarArea, length_m, stretches_inside
from tideleg.core.solve.ways import Obstacles, _along_corners, way_round

UTC = timezone.utc
BOX = np.array([-3000.0, -3000.0, 3000.0, 3000.0])
FINE_M = 0.5  # kept off where the answer is compared with one that touches the corners


def ring(*corners) -> PlanarArea:
    return PlanarArea(rings=(np.array(corners, dtype=float),))


def rectangle(west, south, east, north) -> PlanarArea:
    return ring((west, south), (east, south), (east, north), (west, north))


def obstacles(*land: PlanarArea, closed=()) -> Obstacles:
    return Obstacles(land=land, closed=tuple(closed), box=BOX)


def place(x, y) -> np.ndarray:
    return np.array([x, y], dtype=float)


def coast(rng, centre, radius_m, vertices, *, rough=0.5) -> PlanarArea:
    """A rough island about a centre."""
    turn = np.linspace(0.0, 2.0 * np.pi, vertices, endpoint=False)
    radius = np.full(vertices, float(radius_m))
    for wave in range(2, max(3, vertices // 6)):
        radius += radius_m * rough / wave**1.2 * rng.normal() * np.cos(wave * turn + rng.uniform(0.0, 6.28))
    radius = np.maximum(radius, 0.2 * radius_m)
    return PlanarArea(rings=(np.asarray(centre) + radius[:, None] * np.column_stack([np.cos(turn), np.sin(turn)]),))


def brute_force_m(start, end, areas) -> float:
    """Length of the shortest way that may touch the areas: all corners with all others, Floyd and Warshall's rule."""
    solid = unary_union([Polygon(area.rings[0]) for area in areas])
    inner = solid.buffer(-1e-6)
    parts = getattr(solid, "geoms", [solid])
    corners = [corner for part in parts for corner in list(part.exterior.coords)[:-1]]
    nodes = [tuple(start), tuple(end), *corners]
    size = len(nodes)
    table = np.full((size, size), np.inf)
    for a in range(size):
        table[a, a] = 0.0
        for b in range(a):
            if not LineString([nodes[a], nodes[b]]).intersects(inner):
                table[a, b] = table[b, a] = np.hypot(nodes[a][0] - nodes[b][0], nodes[a][1] - nodes[b][1])
    for middle in range(size):
        table = np.minimum(table, table[:, middle : middle + 1] + table[middle : middle + 1])
    return float(table[0, 1])


def test_open_water_is_swum_straight() -> None:
    way = way_round(place(0, 0), place(100, 50), obstacles(rectangle(200, 200, 300, 300)))
    assert way.tolist() == [[0, 0], [100, 50]]
    assert way_round(place(0, 0), place(1, 1), obstacles()).shape == (2, 2)


def test_round_a_square_is_the_closed_form() -> None:
    square = rectangle(-100, -100, 100, 100)
    exact = 2.0 * np.hypot(200.0, 100.0) + 200.0
    metres = length_m(way_round(place(-300, 0), place(300, 0), obstacles(square), keep_off_m=FINE_M))
    assert exact < metres < exact + 2.0
    # Kept off by 20 m it is about the way round a square grown by as much, its corners cut off.
    wide = length_m(way_round(place(-300, 0), place(300, 0), obstacles(square)))
    grown = 2.0 * np.hypot(180.0, 120.0) + 240.0
    assert exact + 10.0 < wide < grown


@pytest.mark.parametrize("offset_m", [0.0, 40.0, -90.0])
def test_round_a_circle_is_the_closed_form(offset_m: float) -> None:
    radius, turn = 200.0, np.linspace(0.0, 2.0 * np.pi, 1440, endpoint=False)
    circle = PlanarArea(rings=(radius * np.column_stack([np.cos(turn), np.sin(turn)]),))
    start, end = place(-500.0, offset_m), place(700.0, offset_m)
    away = [np.hypot(*start), np.hypot(*end)]
    between = np.arccos(start @ end / (away[0] * away[1]))
    arc = between - sum(np.arccos(radius / one) for one in away)
    exact = sum(np.sqrt(one**2 - radius**2) for one in away) + radius * arc
    metres = length_m(way_round(start, end, obstacles(circle), keep_off_m=FINE_M))
    assert exact < metres < exact + 2.5


@pytest.mark.parametrize("seed", range(12))
def test_no_way_over_the_corners_is_shorter(seed: int) -> None:
    rng = np.random.default_rng(seed)
    islands = [coast(rng, rng.uniform(-700, 700, 2), rng.uniform(60, 250), 9, rough=0.3) for _ in range(5)]
    sea, found = obstacles(*islands), 0
    solid = unary_union([Polygon(one.rings[0]) for one in islands])
    for _ in range(8):
        ends = rng.uniform(-900, 900, (2, 2))
        if LineString(ends).boundary.distance(solid) < 60.0:
            continue
        exact = brute_force_m(*ends, islands)
        way = way_round(*ends, sea, keep_off_m=FINE_M)
        assert exact - 1e-6 <= length_m(way) <= exact + 2.0 * FINE_M * len(way)
        found += 1
    assert found >= 2


@pytest.mark.parametrize("seed", range(6))
def test_ways_keep_to_the_water_and_are_the_same_both_ways(seed: int) -> None:
    rng = np.random.default_rng(100 + seed)
    land = [coast(rng, (0, 0), 900.0, 2000), *(coast(rng, rng.uniform(-2000, 2000, 2), 60.0, 30) for _ in range(25))]
    closed = [rectangle(-200, -1900, 200, 1900)] if seed % 2 else []
    sea, bent = obstacles(*land, closed=closed), 0
    for _ in range(6):
        ends = rng.uniform(-2500, 2500, (2, 2))
        if any(area.contains(ends).any() for area in land + closed):
            continue
        way, back = way_round(*ends, sea), way_round(*ends[::-1], sea)
        straight = length_m(ends)
        assert length_m(way) >= straight - 1e-9
        assert length_m(back) == pytest.approx(length_m(way), abs=1e-6)
        assert np.array_equal(way[[0, -1]], ends)
        assert stretches_inside(land + closed, way) == []
        assert sea.clear(*ends) == (len(way) == 2)
        for piece in zip(way[1:-2], way[2:-1]):
            assert LineString(piece).distance(unary_union([Polygon(a.rings[0]).buffer(0) for a in land + closed])) > 6.0
        bent += len(way) > 2
    assert bent >= 1


def test_a_beach_is_fifty_metres_of_land_at_an_end_and_no_more() -> None:
    shore = obstacles(rectangle(-1000, -1000, 1000, 0))
    assert shore.clear(place(0, -45), place(0, 400))
    assert shore.clear(place(0, 400), place(0, -45))
    assert not shore.clear(place(0, -55), place(0, 400))
    assert not shore.clear(place(0, -30), place(300, 40))  # 50 m and more slantwise
    # A spit in the middle is no beach, however thin.
    assert not obstacles(rectangle(-1000, 100, 1000, 110)).clear(place(0, 0), place(0, 300))
    # Nor is the beach of a place nobody may enter.
    assert not obstacles(closed=[rectangle(-50, -50, 50, 10)]).clear(place(0, 0), place(0, 300))


def test_a_swim_from_the_beach_goes_round_the_head() -> None:
    bay = ring((-2000, -2000), (2000, -2000), (2000, 0), (100, 0), (100, 600), (-100, 600), (-100, 0), (-2000, 0))
    way = way_round(place(-400, -20), place(400, -20), obstacles(bay), keep_off_m=FINE_M)
    exact = 2.0 * np.hypot(300.0, 620.0) + 200.0
    assert exact < length_m(way) < exact + 3.0


def test_a_way_leads_out_of_a_harbour_and_none_out_of_a_lagoon() -> None:
    outer, inner = rectangle(-500, -500, 500, 500).rings[0], rectangle(-200, -200, 200, 200).rings[0]
    atoll = PlanarArea(rings=(outer, inner))
    assert way_round(place(0, 0), place(0, 900), obstacles(atoll)) is None
    assert way_round(place(0, 900), place(0, 0), obstacles(atoll)) is None
    # With a mouth of 30 m to the south, narrower than twice the distance kept off, there is one.
    arms = ring(
        *[(-15, -500), (-500, -500), (-500, 500), (500, 500), (500, -500), (15, -500)],
        *[(15, -200), (200, -200), (200, 200), (-200, 200), (-200, -200), (-15, -200)],
    )
    way = way_round(place(0, 0), place(0, 900), obstacles(arms))
    assert stretches_inside([arms], way) == []
    assert way[:, 1].min() < -500.0
    assert length_m(way) == pytest.approx(500.0 + np.hypot(500.0, 0.0) + 1000.0 + np.hypot(500.0, 400.0), rel=0.03)


def test_narrows_are_swum_only_where_there_is_no_other_way() -> None:
    walls = [rectangle(-600, -150, -15, 150), rectangle(15, -150, 600, 150)]
    ends = place(100, -300), place(-100, 300)
    assert np.abs(way_round(*ends, obstacles(*walls), keep_off_m=10.0)[:, 0]).max() < 101.0
    assert np.abs(way_round(*ends, obstacles(*walls))[:, 0]).max() > 600.0


def test_an_island_in_a_lake_on_an_island_is_land() -> None:
    squares = [rectangle(-size, -size, size, size).rings[0] for size in (1000, 600, 100)]
    nested = obstacles(PlanarArea(rings=tuple(squares)))
    way = way_round(place(-400, 0), place(400, 0), nested, keep_off_m=FINE_M)
    exact = 2.0 * np.hypot(300.0, 100.0) + 200.0
    assert exact < length_m(way) < exact + 2.0


def test_only_what_nobody_may_enter_at_the_time_bars_the_way() -> None:
    morning = InForce(start=time(8, 0), end=time(11, 0))
    area = rectangle(-50, 100, 50, 200)
    chart = Chart(
        closed_areas=tuple(
            ClosedArea(name=rule, rule=rule, area=area, in_force=morning) for rule in ("no_entry", "no_spearing")
        ),
        land=(Land(name="far", area=rectangle(9000, 9000, 9100, 9100)),),
    )

    def at(hour: int) -> Obstacles:
        moment = datetime(2027, 6, 5, hour, tzinfo=UTC)
        return Obstacles.of(chart, BOX, moment, moment.replace(hour=hour + 1), UTC)

    assert (len(at(9).closed), len(at(12).closed), len(at(9).land)) == (1, 0, 0)
    assert len(way_round(place(0, 0), place(0, 400), at(9))) > 2
    assert len(way_round(place(0, 0), place(0, 400), at(12))) == 2


def test_land_that_reaches_over_the_box_is_not_swum_round_outside_it() -> None:
    wall = obstacles(rectangle(-9000, 100, 9000, 200))
    assert way_round(place(0, 0), place(0, 400), wall) is None


def islets(count: int) -> tuple[PlanarArea, ...]:
    rng = np.random.default_rng(7)
    return tuple(coast(rng, rng.uniform(-2800, 2800, 2), rng.uniform(5, 30), 9) for _ in range(count))


def test_only_coasts_near_the_line_are_worked_out_and_the_way_is_that_of_all_of_them() -> None:
    land = (*islets(400), rectangle(-20, -90, 20, 90))
    sea, ends = obstacles(*land), (place(-300, 5), place(320, -5))
    way = way_round(*ends, sea)
    coasts = sea.coasts(20.0, lambda: None)
    assert 0 < len(coasts._coasts) < len(np.unique(coasts.coast_of_area)) / 4
    # A sum of distances that takes in the whole box leaves nothing out.
    edges = sea.edges_within(*ends, np.inf)
    everywhere = coasts.within(*ends, np.inf, lambda: None)
    whole = _along_corners(*ends, sea, edges, everywhere, lambda: None)
    assert len(everywhere.xy_m) > 1000
    assert len(way) > 2
    assert length_m(way) == pytest.approx(length_m(whole), abs=1e-9)


def test_a_way_far_longer_than_the_line_is_found_by_widening() -> None:
    wall = rectangle(-2500, 100, 1500, 120)
    way = way_round(place(-500, 0), place(-500, 220), obstacles(wall), keep_off_m=FINE_M)
    exact = 2.0 * np.hypot(2000.0, 100.0) + 20.0
    assert exact < length_m(way) < exact + 2.0


def test_a_way_among_islets_asks_often_and_stops_when_told() -> None:
    ends, land = (place(-1500, 3), place(1500, -3)), (*islets(400), rectangle(-20, -90, 20, 90))
    never = StopAfter()
    way = way_round(*ends, obstacles(*land), is_cancelled=never)
    assert never.asked > 30
    for count in (0, 3, never.asked // 2, never.asked - 1):
        sea, stop = obstacles(*land), StopAfter(count)
        with pytest.raises(StoppedError):
            way_round(*ends, sea, is_cancelled=stop)
        assert stop.asked == count + 1
        # What was begun is not kept half done.
        assert np.array_equal(way_round(*ends, sea), way)


def test_obstacles_that_were_given_a_question_ask_it() -> None:
    land = tuple(Land(name="islet", area=area) for area in islets(20))
    moment = datetime(2027, 6, 5, 9, tzinfo=UTC)
    sea = Obstacles.of(Chart(land=land), BOX, moment, moment, UTC, is_cancelled=lambda: True)
    with pytest.raises(StoppedError):
        way_round(place(-500, 0), place(500, 0), sea)


def test_from_a_place_shut_in_there_is_no_way() -> None:
    block = rectangle(-200, -200, 200, 200)
    assert obstacles(block).shut_in(place(0, 0))
    assert not obstacles(block).shut_in(place(160, 0))  # a beach of 40 m
    assert not obstacles(block).shut_in(place(210, 0))
    assert obstacles(closed=[block]).shut_in(place(199, 0))
    assert way_round(place(0, 0), place(900, 0), obstacles(block)) is None
    assert way_round(place(900, 0), place(199, 0), obstacles(closed=[block])) is None
