"""The front over a grid: against closed forms, a compiled solver of the same problem, and walls of every kind."""

from __future__ import annotations

import cmath
import math

import numpy as np
import pytest
from independent_swim import WaterStream
from invented_waters import RandomWater, steady, tide_and_eddy
from reach_waters import NO_SHORES, front_from, open_water, seconds_at
from tideleg.core.errors import StoppedError
from tideleg.core.planar import PlanarArea
from tideleg.core.solve.reach.beside import set_out
from tideleg.core.solve.reach.front import run_front
from tideleg.core.solve.reach.front_stream import FrontStream
from tideleg.core.solve.reach.open_water import OpenWater, ReachGrid, TimedArea
from tideleg.core.solve.reach.stencil import directions, passed, piece_s

PACE = 0.5
BOX = (-2000.0, -2000.0, 2000.0, 2000.0)


def still(place, t_s):
    return 0.0 * place


def closed_form_s(grid: ReachGrid, source: complex, stream: complex) -> np.ndarray:
    """Zermelo's time in a uniform stream, as a quadratic of its own: |d - w T| = V T."""
    x, y = np.meshgrid(grid.x_m, grid.y_m)
    way = x + 1j * y - source
    dot, least = (way.conj() * stream).real, PACE**2 - abs(stream) ** 2
    return (-dot + np.sqrt(dot**2 + least * np.abs(way) ** 2)) / least


def area(*corners: complex) -> PlanarArea:
    return PlanarArea(rings=(np.array([[z.real, z.imag] for z in corners]),))


def wall(start: complex, end: complex, thick_m: float) -> PlanarArea:
    side = 1j * (end - start) / abs(end - start) * thick_m / 2.0
    return area(start + side, end + side, end - side, start - side)


@pytest.mark.parametrize(("share", "mean", "most"), [(0.0, 1e-3, 8e-3), (0.4, 1e-3, 1e-2), (0.8, 2e-3, 2e-2)])
@pytest.mark.parametrize("towards_deg", [0.0, 20.0, 63.0])
def test_uniform_stream_is_met_everywhere(share: float, mean: float, most: float, towards_deg: float) -> None:
    flow = steady(towards_deg, share * PACE)
    water = open_water(BOX, 20.0)
    front = front_from(water, flow, 130.0 - 70j, PACE, 1e6)
    exact = closed_form_s(water.grid, 130.0 - 70j, complex(flow(0j, 0.0)))
    far = exact > 10 * 20.0 / PACE
    error = water.grid.without_rim(front.after_s)[far] / exact[far] - 1.0
    assert np.abs(error).mean() < mean
    assert np.abs(error).max() < most
    assert error.min() > -1e-9


def test_a_finer_grid_errs_less() -> None:
    """In a stream of space and time, against one a quarter as coarse again as the finest."""
    found = {}
    for cell in (80.0, 40.0, 20.0, 5.0):
        front = front_from(open_water(BOX, cell), tide_and_eddy, -900.0 - 700j, PACE, 12000.0)
        places = [1100.0 + 900j, 300.0 - 1300j, -1500.0 + 1200j, 900.0 + 100j]
        found[cell] = np.array([seconds_at(front, place) for place in places])
    error = {cell: np.abs(found[cell] / found[5.0] - 1.0).mean() for cell in (80.0, 40.0, 20.0)}
    assert error[80.0] > error[40.0] > error[20.0]
    assert error[20.0] < 1e-3


@pytest.mark.parametrize("seed", range(3))
def test_no_stream_with_islands_agrees_with_scikit_fmm(seed: int) -> None:
    """scikit-fmm (dev extra) solves |grad T| = 1 / V by second-order fast marching, masked where it is dry."""
    skfmm = pytest.importorskip("skfmm")
    rng = np.random.default_rng(seed)
    islands = [
        area(*(complex(*rng.uniform(-1500, 1500, 2)) + rng.uniform(150, 450) * np.exp(2j * np.pi * np.arange(7) / 7)))
        for _ in range(5)
    ]
    water = open_water(BOX, 10.0, islands)
    free = np.argwhere(~water.dry)
    row, column = free[rng.integers(len(free))]
    while water.dry[max(row - 6, 0) : row + 7, max(column - 6, 0) : column + 7].any():
        row, column = free[rng.integers(len(free))]
    source = complex(water.grid.x_m[column], water.grid.y_m[row])
    own = water.grid.without_rim(front_from(water, still, source, PACE, 1e6, land=islands).after_s)
    x, y = np.meshgrid(water.grid.x_m, water.grid.y_m)
    # Started from a circle, where the exact times are known: fast marching is first order round a point.
    round_m = 60.0
    phi = np.ma.MaskedArray(np.abs(x + 1j * y - source) - round_m, water.dry)
    other = skfmm.travel_time(phi, np.full(x.shape, PACE), dx=10.0) + round_m / PACE
    far = ~water.dry & ~np.ma.getmaskarray(other) & (np.abs(x + 1j * y - source) > 2 * round_m)
    assert np.isfinite(own[far]).all()
    error = own[far] / np.ma.getdata(other)[far] - 1.0
    assert np.abs(error).mean() < 5e-3
    assert np.abs(error).max() < 3e-2


@pytest.mark.parametrize("seed", range(12))
def test_a_wall_thinner_than_a_cell_is_not_jumped(seed: int) -> None:
    """From inside a closed ring of thin walls, at any slant and place against the grid, nothing outside is reached."""
    rng = np.random.default_rng(seed)
    corners = rng.uniform(400, 900) * np.exp(1j * (2 * np.pi * np.arange(5) / 5 + rng.uniform(0, 6)))
    corners = corners + complex(*rng.uniform(-10, 10, 2))
    thick = float(rng.uniform(0.01, 3.0))
    # Each wall is a little longer than the side, so that the ring is closed.
    walls = [wall(a - (b - a) / 200, b + (b - a) / 200, thick) for a, b in zip(corners, np.roll(corners, -1))]
    water = open_water(BOX, 20.0, walls)
    front = front_from(water, steady(50.0, 0.3), complex(np.mean(corners)), PACE, 40000.0, land=walls)
    came = water.grid.without_rim(np.isfinite(front.after_s))
    x, y = np.meshgrid(water.grid.x_m, water.grid.y_m)
    outside = ~area(*corners).contains(np.column_stack([x.ravel(), y.ravel()])).reshape(x.shape)
    assert came.any() and not (came & outside).any()


def test_a_maze_is_swum_by_its_one_way() -> None:
    """Walls from side to side with gaps at alternate ends: the way is a taut string over the gaps' corners."""
    walls = [wall(-2000.0 - 1000j, 1700.0 - 1000j, 4.0), wall(-1700.0 + 0j, 2000.0 + 0j, 4.0)]
    walls.append(wall(-2000.0 + 1000j, 1700.0 + 1000j, 4.0))
    water = open_water(BOX, 10.0, walls)
    source, end = -1500.0 - 1500j, -1500.0 + 1500j
    corners = [1700.0 - 1000j, -1700.0 + 0j, 1700.0 + 1000j]
    string = [source, *corners, end]
    shortest = sum(abs(b - a) for a, b in zip(string, string[1:])) / PACE
    time = seconds_at(front_from(water, still, source, PACE, 1e6, land=walls), end)
    assert shortest < time < shortest * 1.01 + 3 * 2 * 10.0 / PACE


def test_passed_cells_are_those_a_line_of_points_runs_through() -> None:
    for column, row in directions().tolist():
        shares = np.arange(1, 4000) / 4000.0
        x, y = column * shares, row * shares
        inner = (np.abs(x - np.rint(x)) < 0.499) & (np.abs(y - np.rint(y)) < 0.499)
        cells = {(int(a), int(b)) for a, b in zip(np.rint(x[inner]), np.rint(y[inner]))}
        assert set(passed(column, row)) == cells - {(0, 0), (column, row)}


def test_unknown_water_is_not_passed_and_told() -> None:
    """A belt of unknown stream across the box: nothing behind it is reached, and the front says where it stopped."""

    def flow(place, t_s):
        return np.where(np.abs(place.real - 500.0) < 60.0, complex(np.nan), 0.1 + 0.0 * place)

    water = open_water(BOX, 10.0)
    front = front_from(water, flow, -500.0 + 0j, PACE, 20000.0)
    came = water.grid.without_rim(np.isfinite(front.after_s))
    assert came[:, water.grid.x_m < 430.0].all()
    assert not came[:, water.grid.x_m > 440.0].any()
    told = water.grid.without_rim(front.unknown)
    assert told.any() and np.all(np.abs(water.grid.x_m[np.nonzero(told)[1]] - 500.0) < 60.0)


def test_a_stream_that_ends_in_time_ends_the_front() -> None:
    def flow(place, t_s):
        return np.where(t_s > 2000.0, complex(np.nan), 0.0 * place)

    front = front_from(open_water(BOX, 20.0), flow, 0j, PACE, 20000.0)
    assert np.nanmax(front.after_s) <= 2000.0
    assert front.unknown.any()


@pytest.mark.parametrize("towards_deg", [0.0, 100.0, 190.0])
def test_stronger_than_the_pace_only_the_cone_is_reached(towards_deg: float) -> None:
    """At twice the pace one gets no more than 30 degrees off the stream's set, and nowhere upstream."""
    flow = steady(towards_deg, 2.0 * PACE)
    water = open_water(BOX, 10.0)
    front = front_from(water, flow, 0j, PACE, 1e5)
    x, y = np.meshgrid(water.grid.x_m, water.grid.y_m)
    place = x + 1j * y
    off_deg = np.abs(np.degrees(np.angle(place * complex(flow(0j, 0.0)).conjugate())))
    came = water.grid.without_rim(np.isfinite(front.after_s))
    far = np.abs(place) > 300.0
    assert not came[far & (off_deg > 30.0)].any()
    assert came[far & (off_deg < 26.0)].all()
    inside = far & (off_deg < 20.0)
    # Of the quadratic's two roots the earlier one is positive here as well.
    dot, least = (place.conj() * complex(flow(0j, 0.0))).real, PACE**2 - (2 * PACE) ** 2
    exact = (dot - np.sqrt(np.maximum(dot**2 + least * np.abs(place) ** 2, 0.0))) / -least
    error = water.grid.without_rim(front.after_s)[inside] / exact[inside] - 1.0
    assert np.abs(error).max() < 0.01


@pytest.mark.parametrize("seed", range(6))
def test_out_and_home_are_one_front_run_both_ways(seed: int) -> None:
    """From A to B forward, leaving at 0; from B backward, from the arrival: it is at A at 0 again."""
    rng = np.random.default_rng(seed)
    flow = RandomWater(rng, [1500.0], [1.5], [0.35]).one(0)
    start, end = (complex(*rng.uniform(-1500, 1500, 2)) for _ in range(2))
    water = open_water(BOX, 20.0)
    out = seconds_at(front_from(water, flow, start, PACE, 30000.0), end)
    back = seconds_at(front_from(water, flow, end, PACE, 30000.0, start_s=out, backward=True), start)
    assert back == pytest.approx(out, rel=4e-3)


@pytest.mark.parametrize("seed", range(6))
def test_the_front_is_never_behind_a_swimmer_on_one_heading(seed: int) -> None:
    """Whatever heading a swimmer holds (RK4, 10 s), the front has been at each place before, but for 0.5 %."""
    rng = np.random.default_rng(100 + seed)
    flow = RandomWater(rng, [1500.0], [1.5], [0.4]).one(0)
    water = open_water(BOX, 20.0)
    front = front_from(water, flow, 0j, PACE, 6000.0)
    after = water.grid.without_rim(front.after_s)
    headings = np.linspace(0.0, 2 * np.pi, 72, endpoint=False)
    place, own, t = np.zeros(72, dtype=complex), PACE * np.exp(1j * headings), 0.0
    gaps = []
    while t < 5000.0:
        k1 = own + flow(place, np.full(72, t))
        k2 = own + flow(place + 5.0 * k1, np.full(72, t + 5.0))
        k3 = own + flow(place + 5.0 * k2, np.full(72, t + 5.0))
        k4 = own + flow(place + 10.0 * k3, np.full(72, t + 10.0))
        place, t = place + 10.0 / 6.0 * (k1 + 2 * k2 + 2 * k3 + k4), t + 10.0
        column = np.rint((place.real - water.grid.low_m[0]) / 20.0).astype(int)
        row = np.rint((place.imag - water.grid.low_m[1]) / 20.0).astype(int)
        inside = (column >= 0) & (row >= 0) & (column < after.shape[1]) & (row < after.shape[0])
        middle = water.grid.x_m[column[inside]] + 1j * water.grid.y_m[row[inside]]
        # From the cell's middle to the place it is a still-water way of its own, at the slowest against the stream.
        spare = np.abs(middle - place[inside]) / (PACE - 0.4)
        gaps.append(np.max((after[row[inside], column[inside]] - spare) / t - 1.0, initial=-1.0))
    assert max(gaps) < 5e-3


def test_an_area_that_closes_is_passed_before_and_gone_round_after() -> None:
    water = open_water(BOX, 20.0)
    x, _ = np.meshgrid(water.grid.x_m, water.grid.y_m)
    belt = np.abs(x - 500.0) < 30.0
    steps = np.arange(40)
    late = TimedArea(mask=belt, closed=steps >= 20)  # from 6000 s on
    early = TimedArea(mask=belt, closed=steps < 20)
    source = -500.0 + 0j
    for timed, passes in ((late, True), (early, False)):
        closing = OpenWater(grid=water.grid, dry=water.dry, timed=(timed,), first_s=0.0, step_s=300.0)
        front = front_from(closing, still, source, PACE, 5000.0)
        came = np.isfinite(seconds_at(front, 1000.0 + 0j))
        assert came == passes
    free = seconds_at(front_from(water, still, source, PACE, 5000.0), 1000.0 + 0j)
    late_water = OpenWater(grid=water.grid, dry=water.dry, timed=(late,), first_s=0.0, step_s=300.0)
    assert seconds_at(front_from(late_water, still, source, PACE, 5000.0), 1000.0 + 0j) == pytest.approx(free, rel=5e-3)


def test_a_thin_closed_strip_is_not_jumped_by_long_steps() -> None:
    """Strips of one cell, closed at that hour, lie three cells apart: no step of four cells may lead over one."""
    grid = open_water(BOX, 20.0).grid
    strip = np.zeros(grid.shape, dtype=bool)
    strip[:, ::25] = True
    timed = TimedArea(mask=strip, closed=np.ones(60, dtype=bool) & (np.arange(60) < 59))
    water = OpenWater(grid=grid, dry=np.zeros(grid.shape, dtype=bool), timed=(timed,), first_s=0.0, step_s=300.0)
    front = front_from(water, still, complex(grid.x_m[112], 0.0), PACE, 9000.0)
    columns = np.nonzero(grid.without_rim(np.isfinite(front.after_s)))[1]
    assert columns.min() == 101 and columns.max() == 124


def test_weighed_water_is_crossed_squarely() -> None:
    """A slanting way bends at heavy water as light does: sin outside over sin inside is the weight (Snell's law)."""
    grid = open_water(BOX, 10.0).grid
    x, _ = np.meshgrid(grid.x_m, grid.y_m)
    heavy = OpenWater(grid=grid, dry=np.zeros(grid.shape, dtype=bool), weight=np.where(np.abs(x) < 200.0, 4.0, 1.0))
    front = front_from(heavy, still, -1000.0 - 1500j, PACE, 30000.0)
    (cell,) = grid.cells_within(np.array([1005.0, 1505.0]), 1.0)
    way = grid.xy_of(front.way_to(cell))
    inside = way[np.abs(way[:, 0]) < 200.0]
    slant = abs(cmath.phase(complex(*(inside[-1] - inside[0]))))
    offset = np.arctan2(3000.0, 2000.0)
    assert slant < math.asin(1.0 / 4.0) + 0.08 < offset
    plain = front_from(open_water(BOX, 10.0), still, -1000.0 - 1500j, PACE, 30000.0)
    seconds = front.after_s[cell]
    length = np.hypot(*np.diff(way, axis=0).T).sum()
    assert seconds == pytest.approx(length / PACE, rel=0.02)  # the clock is not weighed
    assert seconds > plain.after_s[cell]


def test_pieces_meet_the_closed_form_and_its_ends() -> None:
    way = np.array([[1000.0, 0.0], [0.0, 0.0], [1000.0, 0.0], [1000.0, 0.0]])
    stream = np.array([[0.3, 0.0], [0.3, 0.0], [-0.6, 0.0], [np.nan, 0.0]])
    seconds = piece_s(way, stream, PACE)
    assert seconds[0] == pytest.approx(1000.0 / 0.8)
    assert seconds[1] == 0.0
    assert np.isinf(seconds[2:]).all()


def test_stopping_is_asked_often_and_heard() -> None:
    water = open_water(BOX, 20.0)
    stream = FrontStream(stream=WaterStream(still), origin_s=0.0)
    cells, seconds = set_out(water, stream, NO_SHORES, np.zeros(2), PACE)
    asked = []

    def stop() -> bool:
        asked.append(True)
        return len(asked) > 20

    with pytest.raises(StoppedError):
        run_front(water, stream, PACE, cells, seconds, 1e6, is_cancelled=stop)
    assert len(asked) == 21
    shares: list[float] = []
    run_front(water, stream, PACE, cells, seconds, 6000.0, progress=shares.append)
    assert shares == sorted(shares) and 0.8 < shares[-1] <= 1.0
