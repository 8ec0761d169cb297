"""Streams on triangles: weights worked out by areas, linear fields, turned grids, shifted clocks, dry land."""

from __future__ import annotations

import math

import numpy as np
import pytest
from tideleg.core.errors import SwimPlanError
from tideleg.core.water.mesh_faces import split_faces
from tideleg.core.water.mesh_stream import MeshStream
from tideleg.core.water.model_stream import ModelStream
from tideleg.core.water.stream import KNOWN, UNKNOWN
from tideleg.core.water.triangles import TriangleFinder

HOUR = 3600.0


def crooked_grid(n: int, side_m: float, seed: int, crooked: float = 0.3) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Nodes of an n by n grid, its inner ones pushed about, and two triangles in each cell."""
    rng = np.random.default_rng(seed)
    x, y = (axis.ravel() for axis in np.meshgrid(np.linspace(0.0, side_m, n), np.linspace(0.0, side_m, n)))
    inner = (x > 0.0) & (x < side_m) & (y > 0.0) & (y < side_m)
    push = crooked * side_m / (n - 1)
    x, y = x + inner * rng.uniform(-push, push, n * n), y + inner * rng.uniform(-push, push, n * n)
    node = np.arange(n * n).reshape(n, n)
    a, b, c, d = (part.ravel() for part in (node[:-1, :-1], node[:-1, 1:], node[1:, 1:], node[1:, :-1]))
    return x, y, np.concatenate([np.column_stack([a, b, c]), np.column_stack([a, c, d])])


def random_mesh(*, n: int = 12, side_m: float = 3000.0, steps: int = 4, seed: int = 5) -> MeshStream:
    x, y, triangles = crooked_grid(n, side_m, seed)
    rng = np.random.default_rng(seed + 1)
    east, north = rng.normal(size=(2, steps, len(x)))
    times = np.cumsum(rng.uniform(0.3, 2.0, steps)) * HOUR
    return MeshStream(x_m=x, y_m=y, triangles=triangles, times_s=times, east_m_s=east, north_m_s=north)


def by_hand(mesh: MeshStream, x: float, y: float, t: float) -> tuple[float, float] | None:
    """Every triangle tried in turn, weights as parts of its area, then the two steps round the time."""

    def area(p, q, r) -> float:
        return abs((q[0] - p[0]) * (r[1] - p[1]) - (r[0] - p[0]) * (q[1] - p[1])) / 2.0

    times = mesh.times_s.tolist()
    if not times[0] <= t <= times[-1]:
        return None
    after = next(k for k in range(1, len(times)) if times[k] >= t)
    late = (t - times[after - 1]) / (times[after] - times[after - 1])
    for nodes in mesh.triangles.tolist():
        corners = [(mesh.x_m[node], mesh.y_m[node]) for node in nodes]
        whole = area(*corners)
        parts = [area(*[(x, y) if k == j else corners[k] for k in range(3)]) / whole for j in range(3)]
        if sum(parts) <= 1.0 + 1e-9:
            return tuple(
                sum(
                    part * ((1.0 - late) * values[after - 1, node] + late * values[after, node])
                    for part, node in zip(parts, nodes)
                )
                for values in (mesh.east_m_s, mesh.north_m_s)
            )
    return None


def test_places_and_times_get_what_the_areas_of_their_triangle_give() -> None:
    mesh = random_mesh()
    rng = np.random.default_rng(11)
    x, y = rng.uniform(-400.0, 3400.0, (2, 300))
    t = rng.uniform(mesh.times_s[0] - 600.0, mesh.times_s[-1] + 600.0, 300)
    sample = mesh.at(x, y, t)
    expected = [by_hand(mesh, *where) for where in zip(x, y, t)]
    known = np.array([value is not None for value in expected])
    assert 100 < known.sum() < 260
    assert np.array_equal(sample.status == KNOWN, known) and np.array_equal(sample.status == UNKNOWN, ~known)
    assert np.array_equal(np.isfinite(sample.east_m_s), known)
    pairs = np.array([value for value in expected if value is not None])
    np.testing.assert_allclose(sample.east_m_s[known], pairs[:, 0], atol=1e-9)
    np.testing.assert_allclose(sample.north_m_s[known], pairs[:, 1], atol=1e-9)


def linear(x: np.ndarray, y: np.ndarray, t: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Linear in place and, at each place, in time."""
    hours = t / HOUR
    return 0.3 + 2e-4 * x - 1e-4 * y + 0.1 * hours, -0.2 + 5e-5 * x + 3e-4 * y - 0.05 * hours


@pytest.mark.parametrize("kind", ["nodes", "faces"])
def test_a_field_linear_in_place_and_time_comes_out_exactly(kind: str) -> None:
    x, y, triangles = crooked_grid(15, 4000.0, 3, crooked=0.3 if kind == "nodes" else 0.15)
    times = np.array([0.0, 1.0, 2.5]) * HOUR
    made = {"x_m": x, "y_m": y, "times_s": times}
    if kind == "nodes":
        east, north = linear(x, y, times[:, None])
        mesh = MeshStream(**made, triangles=triangles, east_m_s=east, north_m_s=north)
    else:
        east, north = linear(x[triangles].mean(axis=1), y[triangles].mean(axis=1), times[:, None])
        mesh = MeshStream.of_faces(**made, corners=triangles, east_m_s=east, north_m_s=north)
    rng = np.random.default_rng(2)
    # Beside the mesh's edge a node has faces on one side only: exactness is promised inside.
    px, py = rng.uniform(700.0, 3300.0, (2, 500))
    t = rng.uniform(0.0, 2.5 * HOUR, 500)
    sample = mesh.at(px, py, t)
    expected = linear(px, py, t)
    np.testing.assert_allclose(sample.east_m_s, expected[0], atol=1e-9)
    np.testing.assert_allclose(sample.north_m_s, expected[1], atol=1e-9)


def test_on_a_very_crooked_mesh_of_faces_a_linear_field_is_right_to_a_hundredth_of_its_range() -> None:
    x, y, triangles = crooked_grid(15, 4000.0, 3)
    centres = x[triangles].mean(axis=1), y[triangles].mean(axis=1)
    east, north = linear(*centres, np.array([[0.0], [HOUR]]))
    mesh = MeshStream.of_faces(x_m=x, y_m=y, corners=triangles, times_s=[0.0, HOUR], east_m_s=east, north_m_s=north)
    px, py = np.random.default_rng(2).uniform(0.0, 4000.0, (2, 2000))
    expected, _ = linear(px, py, np.zeros(2000))
    error = np.abs(mesh.at(px, py, 0.0).east_m_s - expected)
    inside = (px > 700.0) & (px < 3300.0) & (py > 700.0) & (py < 3300.0)
    assert np.max(error[inside]) < 0.01 * np.ptp(expected)
    # The coast's own triangles take what lies inland of them: nothing is drawn out beyond what is known.
    assert np.max(error) < 0.06 * np.ptp(expected) and mesh.east_m_s.max() <= east.max() + 1e-12


def test_a_face_has_its_own_vector_at_its_centre_and_the_stream_is_continuous_between_faces() -> None:
    x, y, triangles = crooked_grid(10, 2000.0, 8)
    rng = np.random.default_rng(4)
    east, north = rng.normal(size=(2, 2, len(triangles)))
    mesh = MeshStream.of_faces(x_m=x, y_m=y, corners=triangles, times_s=[0.0, HOUR], east_m_s=east, north_m_s=north)
    centres = x[triangles].mean(axis=1), y[triangles].mean(axis=1)
    np.testing.assert_allclose(mesh.at(*centres, 0.0).east_m_s, east[0], atol=1e-9)
    np.testing.assert_allclose(mesh.at(*centres, HOUR).north_m_s, north[1], atol=1e-9)
    along = np.linspace(50.0, 1950.0, 200_001)
    sample = mesh.at(along, 0.37 * along + 300.0, 0.5 * HOUR)
    # Own values differ by several m/s between faces some 200 m wide; a centimetre on, nothing jumps.
    assert np.max(np.abs(np.diff(sample.east_m_s))) < 0.01 and np.ptp(sample.east_m_s) > 1.0


def test_nothing_is_known_in_dry_triangles_outside_the_mesh_or_outside_the_time() -> None:
    mesh = MeshStream(
        x_m=[0.0, 100.0, 100.0, 0.0, 50.0],
        y_m=[0.0, 0.0, 100.0, 100.0, 200.0],
        triangles=[[0, 1, 2], [0, 2, 3], [3, 2, 4]],
        times_s=[0.0, 100.0],
        east_m_s=[[1.0, 1.0, 1.0, 1.0, np.nan]] * 2,
        north_m_s=[[0.0] * 5] * 2,
    )
    # In the square; in the dry triangle; on the edge they share; outside; before; after; at the very ends.
    x, y = np.array([80.0, 50.0, 50.0, 150.0, 80.0, 80.0, 80.0, 80.0]), np.array([20.0, 150.0, 100.0] + [20.0] * 5)
    t = np.array([50.0, 50.0, 50.0, 50.0, -0.01, 100.01, 0.0, 100.0])
    sample = mesh.at(x, y, t)
    assert sample.status.tolist() == [KNOWN, UNKNOWN, KNOWN, UNKNOWN, UNKNOWN, UNKNOWN, KNOWN, KNOWN]
    assert np.array_equal(np.isnan(sample.east_m_s), sample.status == UNKNOWN)
    assert np.array_equal(np.isnan(sample.north_m_s), sample.status == UNKNOWN)
    assert np.all(sample.east_m_s[sample.status == KNOWN] == 1.0)


def test_a_corner_with_two_faces_has_their_mean_not_nothing() -> None:
    # Two triangles of unlike stream in a square: its corners have one face or two.
    mesh = MeshStream.of_faces(
        x_m=[0.0, 100.0, 100.0, 0.0],
        y_m=[0.0, 0.0, 100.0, 100.0],
        corners=[[0, 1, 2], [0, 2, 3]],
        times_s=[0.0, 1.0],
        east_m_s=[[1.0, 2.0]] * 2,
        north_m_s=[[0.5, 0.5]] * 2,
    )
    sample = mesh.at(np.array([0.0, 100.0, 100.0, 0.0]), np.array([0.0, 0.0, 100.0, 100.0]), 0.5)
    np.testing.assert_allclose(sample.east_m_s, [1.5, 1.0, 1.5, 2.0])
    np.testing.assert_allclose(sample.north_m_s, 0.5)


def test_a_face_that_falls_dry_is_unknown_until_the_step_at_which_it_is_wet_again() -> None:
    x, y, triangles = crooked_grid(8, 800.0, 1)
    east = np.ones((3, len(triangles)))
    dry = 40
    east[1, dry] = np.nan
    mesh = MeshStream.of_faces(
        x_m=x, y_m=y, corners=triangles, times_s=[0.0, 100.0, 200.0], east_m_s=east, north_m_s=0.0 * east
    )
    centre = x[triangles[dry]].mean(), y[triangles[dry]].mean()
    status = mesh.at(*centre, np.array([0.0, 1.0, 100.0, 199.0, 200.0])).status
    assert status.tolist() == [KNOWN, UNKNOWN, UNKNOWN, UNKNOWN, KNOWN]
    others = np.arange(len(triangles)) != dry
    places = x[triangles].mean(axis=1)[others], y[triangles].mean(axis=1)[others]
    np.testing.assert_allclose(mesh.at(*places, 100.0).east_m_s, 1.0)


def test_two_meshes_with_land_between_are_not_joined_across_it() -> None:
    x = np.array([0.0, 100.0, 0.0, 100.0, 200.0, 200.0, 300.0, 300.0])
    y = np.array([0.0, 0.0, 100.0, 100.0, 0.0, 100.0, 0.0, 100.0])
    triangles = [[0, 1, 3], [0, 3, 2], [4, 6, 7], [4, 7, 5]]
    east = np.where(x <= 100.0, 1.0, -1.0) * np.ones((2, 1))
    mesh = MeshStream(x_m=x, y_m=y, triangles=triangles, times_s=[0.0, 1.0], east_m_s=east, north_m_s=0.0 * east)
    sample = mesh.at(np.array([99.0, 100.5, 150.0, 199.5, 201.0]), 50.0, 0.5)
    np.testing.assert_array_equal(sample.east_m_s, [1.0, np.nan, np.nan, np.nan, -1.0])


@pytest.mark.parametrize("turn_deg", [37.0, 90.0, 251.0])
def test_turning_the_mesh_and_its_stream_turns_the_answer(turn_deg: float) -> None:
    mesh = random_mesh(seed=9)
    angle = math.radians(turn_deg)

    def turned(x: np.ndarray, y: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        return x * math.cos(angle) - y * math.sin(angle), x * math.sin(angle) + y * math.cos(angle)

    x, y = turned(mesh.x_m, mesh.y_m)
    east, north = turned(mesh.east_m_s, mesh.north_m_s)
    other = MeshStream(
        x_m=x + 700.0,
        y_m=y - 90.0,
        triangles=mesh.triangles,
        times_s=mesh.times_s,
        east_m_s=east,
        north_m_s=north,
    )
    rng = np.random.default_rng(1)
    px, py = rng.uniform(5.0, 2995.0, (2, 400))
    t = rng.uniform(*mesh.times_s[[0, -1]], 400)
    first = mesh.at(px, py, t)
    qx, qy = turned(px, py)
    second = other.at(qx + 700.0, qy - 90.0, t)
    assert (second.status == KNOWN).all() and (first.status == KNOWN).all()
    expected = turned(first.east_m_s, first.north_m_s)
    np.testing.assert_allclose(second.east_m_s, expected[0], atol=1e-7)
    np.testing.assert_allclose(second.north_m_s, expected[1], atol=1e-7)


def test_shifting_the_clock_of_a_model_moves_its_answers_later() -> None:
    mesh = random_mesh(seed=6)
    model = ModelStream(name="M", stream=mesh, rate_factor=1.5, shift_s=1200.0)
    t = np.linspace(mesh.times_s[0], mesh.times_s[-1], 50)
    plain, late = mesh.at(1500.0, 1400.0, t), model.at(1500.0, 1400.0, t + 1200.0)
    np.testing.assert_allclose(late.east_m_s, 1.5 * plain.east_m_s)
    assert (late.status == KNOWN).all()
    assert model.at(1500.0, 1400.0, mesh.times_s[0] + 1199.0).status == UNKNOWN


def test_arguments_broadcast_and_blocks_leave_no_seam() -> None:
    mesh = random_mesh()
    x, y = np.random.default_rng(0).uniform(0.0, 3000.0, (2, 400))
    t = np.linspace(mesh.times_s[0], mesh.times_s[-1], 500)
    table = mesh.at(x[:, None], y[:, None], t)
    assert table.east_m_s.shape == table.status.shape == (400, 500)
    # 200 000 pairs are several blocks; each pair asked alone must give the same.
    rows, columns = np.random.default_rng(1).integers(0, 400, 50), np.random.default_rng(2).integers(0, 500, 50)
    for row, column in zip(rows, columns):
        one = mesh.at(x[row], y[row], t[column])
        assert one.east_m_s.shape == ()
        assert one.east_m_s == pytest.approx(table.east_m_s[row, column], abs=1e-12)


def test_a_mesh_of_very_uneven_triangles_is_located_without_gaps() -> None:
    # Rings ever wider round a point: sizes from a centimetre to kilometres, and a sliver without any area.
    radius, turn = np.geomspace(0.01, 5000.0, 40), np.linspace(0.0, 2.0 * np.pi, 25)[:-1]
    x = (radius[:, None] * np.cos(turn)).ravel()
    y = (radius[:, None] * np.sin(turn)).ravel()
    node = np.arange(len(x)).reshape(40, 24)
    a, b, c, d = node[:-1], np.roll(node, -1, axis=1)[:-1], np.roll(node, -1, axis=1)[1:], node[1:]
    triangles = np.concatenate(
        [np.stack([a, b, c], axis=-1).reshape(-1, 3), np.stack([a, c, d], axis=-1).reshape(-1, 3), [[0, 0, 1]]]
    )
    finder = TriangleFinder(x, y, triangles)
    rng = np.random.default_rng(5)
    r, angle = np.exp(rng.uniform(np.log(0.011), np.log(4900.0), 3000)), rng.uniform(0.0, 2.0 * np.pi, 3000)
    px, py = r * np.cos(angle), r * np.sin(angle)
    found, second, third = finder.locate(px, py)
    assert (found >= 0).all()
    weights = np.stack([1.0 - second - third, second, third])
    assert weights.min() >= -1e-8
    corners = triangles[found]
    np.testing.assert_allclose(np.sum(weights * x[corners].T, axis=0), px, rtol=1e-6, atol=1e-6)
    np.testing.assert_allclose(np.sum(weights * y[corners].T, axis=0), py, rtol=1e-6, atol=1e-6)


def test_faces_of_four_and_five_corners_are_split_into_the_whole_face() -> None:
    corners = np.array([[0, 1, 2, -1, -1], [0, 2, 3, 4, -1], [5, 6, 7, 8, 9]])
    assert sorted(map(tuple, split_faces(corners).tolist())) == [
        (0, 1, 2),
        (0, 2, 3),
        (0, 3, 4),
        (5, 6, 7),
        (5, 7, 8),
        (5, 8, 9),
    ]
    square = MeshStream.of_faces(
        x_m=[0.0, 10.0, 10.0, 0.0, 20.0],
        y_m=[0.0, 0.0, 10.0, 10.0, 5.0],
        corners=[[0, 1, 2, 3], [1, 4, 2, -1]],
        times_s=[0.0, 1.0],
        east_m_s=[[2.0, 3.0]] * 2,
        north_m_s=[[0.0, 0.0]] * 2,
    )
    assert square.at(5.0, 5.0, 0.5).east_m_s == pytest.approx(2.0)
    assert square.at(40.0 / 3.0, 5.0, 0.5).east_m_s == pytest.approx(3.0)
    x, y = (axis.ravel() for axis in np.meshgrid(np.linspace(0.1, 9.9, 20), np.linspace(0.1, 9.9, 20)))
    assert (square.at(x, y, 0.5).status == KNOWN).all()


@pytest.mark.parametrize(
    "changes",
    [
        {"times_s": [0.0, 0.0]},
        {"times_s": [0.0]},
        {"triangles": [[0, 1, 3]]},
        {"east_m_s": [[1.0, 1.0]] * 2},
        {"times_s": [0.0, 1.0, 2.0]},
    ],
)
def test_parts_that_do_not_belong_together_are_refused(changes: dict) -> None:
    made = {
        "x_m": [0.0, 1.0, 0.0],
        "y_m": [0.0, 0.0, 1.0],
        "triangles": [[0, 1, 2]],
        "times_s": [0.0, 1.0],
        "east_m_s": [[1.0] * 3] * 2,
        "north_m_s": [[1.0] * 3] * 2,
    }
    assert MeshStream(**made).at(0.2, 0.2, 0.5).status == KNOWN
    with pytest.raises(SwimPlanError):
        MeshStream(**{**made, **changes})
