"""Values on an even grid: exact for a plane, its rim beyond it, and a place that is not known has no value."""

from __future__ import annotations

import numpy as np
import pytest
from tideleg.core.grid import EvenGrid


def plane() -> EvenGrid:
    x, y = EvenGrid.places(np.array([0.0, 0.0]), np.array([100.0, 50.0]), 10.0)
    return EvenGrid(low_m=np.zeros(2), cell_m=10.0, values=(2.0 * x[None, :] + 3.0 * y[:, None])[None])


def test_a_plane_is_read_exactly_and_beyond_the_grid_its_rim() -> None:
    x, y = np.array([0.0, 33.0, 99.0]), np.array([50.0, 12.5, 1.0])
    np.testing.assert_allclose(plane().at(x, y)[0], 2.0 * x + 3.0 * y, atol=1e-3)
    assert plane().at(np.array([500.0]), np.array([-20.0]))[0, 0] == pytest.approx(200.0, abs=1e-3)


def test_a_place_that_is_not_known_has_no_value_and_hides_no_other() -> None:
    found = plane().at(np.array([np.nan, 10.0, 10.0]), np.array([10.0, np.nan, 10.0]))[0]
    assert np.isnan(found[:2]).all() and found[2] == pytest.approx(50.0)
