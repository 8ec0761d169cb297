"""Polygons cut off and laid flat hold the same places as shapely says of them in degrees."""

from __future__ import annotations

import numpy as np
import pytest
from shapely.geometry import Point, Polygon
from tideleg.core.geodesy import LocalFrame
from tideleg.core.planar import PlanarArea
from tideleg.layers_in.flat_rings import flat_line, flat_rings


def star(rng: np.random.Generator, centre: tuple[float, float], reach_deg: float) -> np.ndarray:
    """A closed ring that never crosses itself, with corners near and far."""
    angle = np.sort(rng.uniform(0.0, 2.0 * np.pi, 12))
    radius = reach_deg * rng.uniform(0.05, 1.0, 12)
    ring = np.column_stack([centre[0] + radius * np.cos(angle), centre[1] + radius * np.sin(angle)])
    return np.vstack([ring, ring[:1]])


@pytest.mark.parametrize("seed", range(12))
@pytest.mark.parametrize("reach_deg", [0.3, 3.0, 25.0])
def test_what_is_inside_stays_inside(seed: int, reach_deg: float) -> None:
    rng = np.random.default_rng(seed)
    frame = LocalFrame(lon=-17.5, lat=44.0)
    off = reach_deg * rng.uniform(-0.6, 0.6, 2)
    ring = star(rng, (frame.lon + off[0], frame.lat + off[1]), reach_deg)
    hole = star(rng, (frame.lon + off[0], frame.lat + off[1]), 0.04 * reach_deg)
    rings = flat_rings((ring, hole), frame)
    places = np.array([frame.lon, frame.lat]) + rng.uniform(-1.0, 1.0, (400, 2))
    shape = Polygon(ring).symmetric_difference(Polygon(hole))
    clear = np.array([shape.boundary.distance(Point(*place)) > 1e-5 for place in places])
    expected = np.array([shape.contains(Point(*place)) for place in places])
    found = PlanarArea(rings=rings).contains(frame.to_xy(places)) if rings else np.zeros(400, dtype=bool)
    assert np.array_equal(found[clear], expected[clear])
    assert clear.sum() > 390


def test_nothing_near_leaves_nothing() -> None:
    frame = LocalFrame(lon=-17.5, lat=44.0)
    far = np.array([[30.0, 10.0], [60.0, 10.0], [60.0, 40.0], [30.0, 10.0]])
    assert flat_rings((far,), frame) == ()


def test_short_edges_are_left_alone_and_long_ones_divided() -> None:
    frame = LocalFrame(lon=-17.5, lat=44.0)
    short = np.array([[-17.5, 44.0], [-17.49, 44.01]])
    assert np.allclose(flat_line(short, frame), frame.to_xy(short))
    long = flat_line(np.array([[-18.5, 44.0], [-16.5, 44.0]]), frame)
    assert len(long) == 101
    assert np.allclose(frame.to_lonlat(long)[:, 1], 44.0, atol=1e-9)


@pytest.mark.parametrize("centre", [179.9, -179.9])
def test_ring_over_the_date_line_is_one_however_it_is_written(centre: float) -> None:
    frame = LocalFrame(lon=centre, lat=-30.0)
    beyond = np.array([[179.8, -30.1], [180.2, -30.1], [180.2, -29.9], [179.8, -29.9], [179.8, -30.1]])
    jumping = beyond.copy()
    jumping[:, 0] = (jumping[:, 0] + 180.0) % 360.0 - 180.0
    (first,), (second,) = flat_rings((beyond,), frame), flat_rings((jumping,), frame)
    assert np.allclose(first, second, atol=1e-6)
    assert PlanarArea(rings=(first,)).contains(frame.to_xy([[180.0, -30.0], [179.7, -30.0]])).tolist() == [True, False]
