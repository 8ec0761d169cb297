"""Plane geometry against shapely, and the places where tracks and edges only just touch."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tideleg.core.planar import (
    PlanarArea,
    along,
    boxes_touch,
    distance_to_segments,
    filled_grid,
    length_m,
    part_of,
    stretches_inside,
)

shapely_geometry = pytest.importorskip("shapely.geometry")
SQUARE = np.array([[0.0, 0.0], [10.0, 0.0], [10.0, 10.0], [0.0, 10.0]])


def stretches_of(area, track):
    return [(start, end) for _, start, end in stretches_inside([area], track)]


def star(rng, corners=14, radius=500.0):
    """A ring that does not cross itself, with deep bays."""
    angle = (np.arange(corners) + rng.uniform(0.05, 0.95, corners)) * 2.0 * np.pi / corners
    reach = radius * rng.uniform(0.2, 1.0, corners)
    return np.column_stack([reach * np.cos(angle), reach * np.sin(angle)])


def wandering(rng, places=30):
    return np.cumsum(rng.normal(scale=80.0, size=(places, 2)), axis=0) + rng.uniform(-400.0, 400.0, 2)


@pytest.mark.parametrize("seed", range(25))
def test_stretches_inside_are_those_of_shapely(seed):
    rng = np.random.default_rng(seed)
    ring, hole, track = star(rng), star(rng, 6, 60.0), wandering(rng)
    area = PlanarArea(rings=(ring, hole))
    polygon = shapely_geometry.Polygon(ring).symmetric_difference(shapely_geometry.Polygon(hole))
    stretches = stretches_of(area, track)
    inside = polygon.intersection(shapely_geometry.LineString(track))
    assert sum(length_m(part_of(track, *stretch)) for stretch in stretches) == pytest.approx(inside.length, abs=1e-6)
    assert all(start < end for start, end in stretches)
    assert all(first[1] < second[0] for first, second in zip(stretches, stretches[1:]))


def test_many_areas_at_once_are_each_alone():
    rng = np.random.default_rng(77)
    areas = [PlanarArea(rings=(star(rng, radius=200.0) + rng.uniform(-600.0, 600.0, 2),)) for _ in range(40)]
    track = wandering(rng, 60)
    alone = [(number, *stretch) for number, area in enumerate(areas) for stretch in stretches_of(area, track)]
    assert len(alone) > 5
    assert np.array(sorted(stretches_inside(areas, track))) == pytest.approx(np.array(sorted(alone)), abs=1e-12)
    assert stretches_inside([], track) == []


@pytest.mark.parametrize("seed", range(10))
def test_places_inside_are_those_of_shapely(seed):
    rng = np.random.default_rng(1000 + seed)
    ring = star(rng)
    places = rng.uniform(-520.0, 520.0, (400, 2))
    expected = [shapely_geometry.Polygon(ring).contains(shapely_geometry.Point(place)) for place in places]
    assert PlanarArea(rings=(ring,)).contains(places).tolist() == expected


@pytest.mark.parametrize("seed", range(10))
def test_filled_grid_is_what_contains_says(seed):
    rng = np.random.default_rng(2000 + seed)
    areas = [PlanarArea(rings=(star(rng), star(rng, 5, 50.0))), PlanarArea(rings=(star(rng) + 300.0,))]
    x, y = np.linspace(-600.0, 900.0, 61), np.linspace(-600.0, 900.0, 47)
    places = np.stack(np.meshgrid(x, y), axis=-1).reshape(-1, 2)
    expected = (areas[0].contains(places) | areas[1].contains(places)).reshape(47, 61)
    assert np.array_equal(filled_grid(areas, x, y), expected)


@pytest.mark.parametrize(
    ("track", "expected"),
    [
        ([(-5.0, 5.0), (15.0, 5.0)], [(0.25, 0.75)]),
        ([(5.0, 5.0), (15.0, 5.0)], [(0.0, 0.5)]),
        ([(-5.0, 5.0), (5.0, 5.0)], [(0.5, 1.0)]),
        ([(2.0, 2.0), (5.0, 5.0), (8.0, 2.0)], [(0.0, 2.0)]),
        ([(-5.0, 5.0), (0.0, 5.0), (10.0, 5.0), (15.0, 5.0)], [(1.0, 2.0)]),  # nodes on the edges
        ([(-5.0, -5.0), (15.0, 15.0)], [(0.25, 0.75)]),  # through two corners
        ([(-5.0, 12.0), (15.0, 12.0)], []),
        ([(-5.0, 5.0), (15.0, 5.0), (15.0, 20.0), (5.0, 20.0), (5.0, -5.0)], [(0.25, 0.75), (3.4, 3.8)]),
        ([(-10.0, 0.0), (0.0, 10.0), (10.0, 20.0)], []),  # touches a corner
    ],
)
def test_stretches_of_a_square(track, expected):
    stretches = stretches_of(PlanarArea(rings=(SQUARE,)), np.array(track))
    assert np.array(stretches).reshape(-1, 2) == pytest.approx(np.array(expected).reshape(-1, 2), abs=1e-12)


@given(
    turn=st.floats(0.0, 2 * np.pi),
    corner=st.integers(0, 3),
    ahead=st.floats(0.0, np.pi),
    nodes=st.integers(2, 9),
)
@settings(max_examples=150, derandomize=True, deadline=None, database=None)
def test_track_through_a_corner_or_a_node_on_an_edge_is_one_stretch_of_the_right_length(turn, corner, ahead, nodes):
    """Corners, edges and nodes that coincide but for rounding must neither split a stretch nor lose one."""
    spin = np.array([[np.cos(turn), -np.sin(turn)], [np.sin(turn), np.cos(turn)]])
    ring = SQUARE @ spin.T
    direction = np.array([np.cos(ahead), np.sin(ahead)]) @ spin.T
    place = ring[corner]
    track = place + np.linspace(-30.0, 30.0, 2 * nodes + 1)[:, None] * direction
    stretches = stretches_of(PlanarArea(rings=(ring,)), track)
    expected = shapely_geometry.Polygon(ring).intersection(shapely_geometry.LineString(track[[0, -1]])).length
    lengths = [length_m(part_of(track, *stretch)) for stretch in stretches]
    along_edge = min(abs(np.sin(2 * ahead)), 1.0) < 1e-6
    if not along_edge:
        assert sum(lengths) == pytest.approx(expected, abs=1e-6)
        assert sum(length > 1e-6 for length in lengths) <= 1


def test_track_that_stands_still_is_in_no_two_minds():
    area = PlanarArea(rings=(SQUARE,))
    assert stretches_of(area, np.array([[5.0, 5.0], [5.0, 5.0]])) == [(0.0, 1.0)]
    assert stretches_of(area, np.array([[50.0, 5.0], [50.0, 5.0]])) == []
    assert stretches_of(area, np.array([[5.0, 5.0]])) == []


def test_along_and_part_of_a_track():
    track = np.array([[0.0, 0.0], [10.0, 0.0], [10.0, 20.0]])
    assert along(track, [0.5, 1.0, 1.25, 2.0]).tolist() == [[5.0, 0.0], [10.0, 0.0], [10.0, 5.0], [10.0, 20.0]]
    assert part_of(track, 0.5, 1.5).tolist() == [[5.0, 0.0], [10.0, 0.0], [10.0, 10.0]]
    assert part_of(track, 0.0, 1.0).tolist() == [[0.0, 0.0], [10.0, 0.0]]
    assert length_m(part_of(track, 0.5, 1.5)) == 15.0


def test_distance_to_segments_and_the_nearest_share():
    segments = np.array([[0.0, 0.0, 10.0, 0.0], [0.0, 5.0, 0.0, 5.0]])
    distance, share = distance_to_segments(np.array([[5.0, 3.0], [-4.0, 3.0]]), segments)
    assert distance.tolist() == [[3.0, pytest.approx(np.hypot(5.0, 2.0))], [5.0, pytest.approx(np.hypot(4.0, 2.0))]]
    assert share[:, 0].tolist() == [0.5, 0.0]


def test_boxes_touch_at_their_rims():
    boxes = np.array([[0.0, 0.0, 1.0, 1.0], [1.0, 1.0, 2.0, 2.0], [3.0, 0.0, 4.0, 1.0]])
    assert boxes_touch(boxes, np.array([0.5, 0.5, 1.0, 1.0])).tolist() == [True, True, False]
    assert boxes_touch(boxes, np.array([0.5, 0.5, 1.0, 1.0]), margin_m=2.0).tolist() == [True, True, True]
