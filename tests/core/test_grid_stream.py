"""Streams on rasters against bilinear sums by hand, masked cells, turned rasters, the ends of time."""

from __future__ import annotations

import math

import numpy as np
import pytest
from tideleg.core.errors import SwimPlanError
from tideleg.core.geodesy import LocalFrame
from tideleg.core.water.grid_stream import PlaneMap, RasterStream
from tideleg.core.water.stream import EXTRAPOLATED, KNOWN, UNKNOWN

CELL_M = 100.0


def lattice(low: tuple[float, float], high: tuple[float, float], n: int = 9) -> np.ndarray:
    axes = np.meshgrid(np.linspace(low[0], high[0], n), np.linspace(low[1], high[1], n))
    return np.stack(axes, axis=-1).reshape(-1, 2)


def even_map(columns: int, rows: int, turn_deg: float = 0.0) -> PlaneMap:
    """Cells of 100 m, column 0, row 0 at the origin, turned about it."""
    side = 2.0 * CELL_M * max(columns, rows)
    xy = lattice((-side, -side), (side, side))
    angle = math.radians(turn_deg)
    column = (xy[:, 0] * math.cos(angle) + xy[:, 1] * math.sin(angle)) / CELL_M
    row = (-xy[:, 0] * math.sin(angle) + xy[:, 1] * math.cos(angle)) / CELL_M
    return PlaneMap.through(xy, np.column_stack([column, row]))


def raster(
    east: np.ndarray, north: np.ndarray | None = None, times=(0.0, 100.0), turn_deg: float = 0.0
) -> RasterStream:
    north = np.zeros_like(east) if north is None else north
    place = even_map(east.shape[2], east.shape[1], turn_deg)
    return RasterStream(place=place, times_s=np.array(times), east_m_s=east, north_m_s=north)


def test_four_cells_share_a_place_by_the_areas_opposite_and_two_steps_by_time() -> None:
    east = np.array([[[1.0, 2.0], [3.0, 5.0]], [[2.0, 4.0], [6.0, 10.0]]])
    stream = raster(east, -east)
    # 30 m along and 80 m up the square of centres: 0.7*0.2, 0.3*0.2, 0.7*0.8, 0.3*0.8.
    first = 0.14 * 1.0 + 0.06 * 2.0 + 0.56 * 3.0 + 0.24 * 5.0
    sample = stream.at(30.0, 80.0, np.array([0.0, 25.0, 100.0]))
    np.testing.assert_allclose(sample.east_m_s, [first, 1.25 * first, 2.0 * first], rtol=1e-9)
    np.testing.assert_allclose(sample.north_m_s, -sample.east_m_s)
    assert (sample.status == KNOWN).all()


def test_beside_a_masked_cell_a_place_takes_its_own_cell_flagged_and_in_it_nothing_is_known() -> None:
    east = np.tile(np.arange(1.0, 13.0).reshape(3, 4), (2, 1, 1))
    east[:, 1, 2] = np.nan
    stream = raster(east)
    x = np.array([130.0, 160.0, 130.0, 100.0, 300.0, 130.0])
    y = np.array([100.0, 100.0, 70.0, 130.0, 0.0, 0.0])
    sample = stream.at(x, y, 50.0)
    # Own cell (1,1) holds 6; 160 lies in the masked cell; on the column of centres 1 the mask has no weight.
    assert sample.status.tolist() == [EXTRAPOLATED, UNKNOWN, EXTRAPOLATED, KNOWN, KNOWN, KNOWN]
    np.testing.assert_allclose(sample.east_m_s, [6.0, np.nan, 6.0, 6.0 + 0.3 * 4.0, 4.0, 2.3], rtol=1e-9)


def test_water_is_not_drawn_across_a_spit_one_cell_wide() -> None:
    east = np.ones((2, 5, 5))
    east[:, :, 3:] = -1.0
    east[:, :, 2] = np.nan
    x = np.linspace(0.0, 400.0, 401)
    sample = raster(east).at(x, 200.0, 50.0)
    known = sample.status != UNKNOWN
    assert np.array_equal(known, (x < 150.0) | (x > 250.0)) or np.array_equal(known, (x <= 150.0) | (x >= 250.0))
    np.testing.assert_allclose(sample.east_m_s[known], np.where(x[known] < 200.0, 1.0, -1.0), rtol=1e-12)
    assert (sample.status[(x > 100.5) & (x < 149.5)] == EXTRAPOLATED).all()


def test_beyond_the_raster_and_its_time_nothing_is_known() -> None:
    stream = raster(np.ones((2, 3, 3)))
    x = np.array([-51.0, -49.0, 0.0, 200.0, 249.0, 251.0, 1e6])
    expected = [UNKNOWN, EXTRAPOLATED, KNOWN, KNOWN, EXTRAPOLATED, UNKNOWN, UNKNOWN]
    assert stream.at(x, 100.0, 50.0).status.tolist() == expected
    assert stream.at(100.0, x, 50.0).status.tolist() == expected
    assert stream.at(100.0, 100.0, np.array([-1e-6, 0.0, 100.0, 100.001])).status.tolist() == [0, KNOWN, KNOWN, 0]
    assert np.isnan(stream.at(1e6, 0.0, 0.0).east_m_s)


def test_a_cell_that_dries_at_one_step_is_unknown_on_both_sides_of_it() -> None:
    east = np.ones((3, 2, 2))
    east[1] = np.nan
    sample = raster(east, times=(0.0, 100.0, 200.0)).at(50.0, 50.0, np.array([0.0, 1.0, 100.0, 150.0, 200.0]))
    assert sample.status.tolist() == [KNOWN, UNKNOWN, UNKNOWN, UNKNOWN, KNOWN]


@pytest.mark.parametrize("turn_deg", [0.0, 33.0, 200.0])
def test_a_linear_field_comes_out_exactly_however_the_raster_is_turned(turn_deg: float) -> None:
    angle = math.radians(turn_deg)
    column, row = np.meshgrid(np.arange(8) * CELL_M, np.arange(6) * CELL_M)
    x = column * math.cos(angle) - row * math.sin(angle)
    y = column * math.sin(angle) + row * math.cos(angle)
    field = 0.2 + 3e-4 * x - 2e-4 * y
    stream = raster(np.stack([field, field + 1.0]), np.stack([-field, -field]), turn_deg=turn_deg)
    rng = np.random.default_rng(3)
    c, r = rng.uniform(0.0, 700.0, 200), rng.uniform(0.0, 500.0, 200)
    px, py = c * math.cos(angle) - r * math.sin(angle), c * math.sin(angle) + r * math.cos(angle)
    sample = stream.at(px, py, 40.0)
    assert (sample.status == KNOWN).all()
    np.testing.assert_allclose(sample.east_m_s, 0.2 + 3e-4 * px - 2e-4 * py + 0.4, atol=1e-9)
    np.testing.assert_allclose(sample.north_m_s, -(0.2 + 3e-4 * px - 2e-4 * py), atol=1e-9)


def test_a_raster_in_degrees_is_found_to_a_centimetre_over_forty_kilometres() -> None:
    frame = LocalFrame(lon=-17.5, lat=62.0)
    xy = lattice((-20_000.0, -20_000.0), (20_000.0, 20_000.0))
    place = PlaneMap.through(xy, (frame.to_lonlat(xy) - [-18.0, 61.5]) / 0.01)
    asked = np.random.default_rng(0).uniform(-20_000.0, 20_000.0, (500, 2))
    column, row = place.at(*asked.T)
    back = frame.to_xy(np.column_stack([column, row]) * 0.01 + [-18.0, 61.5])
    assert np.max(np.hypot(*(back - asked).T)) < 0.01


def test_shapes_that_do_not_match_are_refused() -> None:
    with pytest.raises(SwimPlanError, match="times, rows, columns"):
        raster(np.ones((3, 2, 2)))
    with pytest.raises(SwimPlanError, match="two steps"):
        raster(np.ones((1, 2, 2)), times=(0.0,))
