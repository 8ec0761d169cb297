"""The reach there and back over grids of several sizes, beside a compiled fast-marching library without stream."""

from __future__ import annotations

import resource
import sys
import time
from pathlib import Path

import numpy as np
import replan
from tideleg.core.planar import PlanarArea
from tideleg.core.solve.reach.beside import Shores, set_out
from tideleg.core.solve.reach.front import Front, run_front
from tideleg.core.solve.reach.front_stream import FrontStream
from tideleg.core.solve.reach.open_water import OpenWater, ReachGrid, covered
from tideleg.core.solve.swim import GridStream
from tideleg.core.water.stream import KNOWN, StreamSample

SIDE_M, HOURS, ENTRY_M = 8000.0, 4.0, np.array([-500.0, 0.0])
SIZES, TARGET_SIZE = (100, 200, 400, 800), 400


class Uniform:
    """The same stream everywhere and always."""

    def __init__(self, east_m_s: float, north_m_s: float) -> None:
        self.vector = east_m_s, north_m_s

    def at(self, x_m, y_m, t_s):
        shape = np.broadcast_shapes(np.shape(x_m), np.shape(y_m), np.shape(t_s))
        east, north = (np.full(shape, one) for one in self.vector)
        return StreamSample(east_m_s=east, north_m_s=north, status=np.full(shape, KNOWN, dtype=np.int8))


def islands(count: int) -> list[PlanarArea]:
    """Islands of ten corners, as the replanning bench strews its polygons, none near the entry."""
    rng = np.random.default_rng(3)
    turn = 2.0 * np.pi * np.arange(10) / 10.0
    found = []
    while len(found) < count:
        centre, radius = rng.uniform(-3500.0, 3500.0, 2), rng.uniform(40.0, 300.0)
        if np.hypot(*(centre - ENTRY_M)) > radius + 400.0:
            ring = centre + radius * np.column_stack([np.cos(turn), np.sin(turn)])
            found.append(PlanarArea(rings=(ring,)))
    return found


def both_ways(size: int, stream, pace_m_s: float, land: list[PlanarArea]) -> tuple[float, list[Front], list[float]]:
    """Seconds for out and home over size x size cells, the land laid on the grid too; the fronts, and the times between
    two looks at the stop button."""
    asked = [time.perf_counter()]

    def look() -> bool:
        asked.append(time.perf_counter())
        return False

    start = time.perf_counter()
    grid = ReachGrid.over(np.array([-SIDE_M, -SIDE_M, SIDE_M, SIDE_M]) / 2.0, SIDE_M / size)
    water = OpenWater(grid=grid, dry=covered(grid, land))
    fronts = []
    for backward in (False, True):
        front_stream = FrontStream(stream=stream, origin_s=HOURS * 3600.0 * backward, backward=backward)
        cells, seconds = set_out(water, front_stream, Shores(land=land), ENTRY_M, pace_m_s)
        fronts.append(run_front(water, front_stream, pace_m_s, cells, seconds, HOURS * 3600.0, is_cancelled=look))
    return time.perf_counter() - start, fronts, np.diff(asked).tolist()


def fast_marching_s(size: int, pace_m_s: float) -> float:
    """Seconds of scikit-fmm for one way on the same grid without stream or land; NaN where it is missing."""
    try:
        import skfmm
    except ImportError:
        return float("nan")
    phi = np.ones((size, size))
    phi[size // 2, size // 2] = -1.0
    speed = np.full((size, size), pace_m_s)
    return replan.seconds_of(lambda: skfmm.travel_time(phi, speed, dx=SIDE_M / size), 3)


def closed_form_error(share: float) -> tuple[float, float]:
    """Mean and largest error in per cent beside Zermelo's closed form, in a uniform stream of a share of the pace."""
    pace, angle = 0.5, np.radians(33.0)
    stream = share * pace * np.array([np.sin(angle), np.cos(angle)])
    _, (front, _), _ = both_ways(TARGET_SIZE, Uniform(*stream), pace, [])
    grid = front.water.grid
    x, y = np.meshgrid(grid.x_m - ENTRY_M[0], grid.y_m - ENTRY_M[1])
    dot, rest = x * stream[0] + y * stream[1], pace**2 - stream @ stream
    exact = (np.sqrt(dot**2 + rest * (x**2 + y**2)) - dot) / rest
    after = grid.without_rim(front.after_s)
    far = np.isfinite(after) & (np.hypot(x, y) > 10.0 * grid.cell_m)
    error = 100.0 * np.abs(after[far] / exact[far] - 1.0)
    return float(error.mean()), float(error.max())


def report() -> None:
    """Print the rows of the speed table."""
    swim = replan.request()
    stream, pace = GridStream(stream=swim.stream, frame=swim.frame), swim.swimmer.made_good_m_s
    land = islands(30)
    for size in SIZES:
        runs = [both_ways(size, stream, pace, land) for _ in range(3 if size <= TARGET_SIZE else 1)]
        seconds, fronts, gaps = min(runs, key=lambda run: run[0])
        marching = fast_marching_s(size, pace)
        cells = sum(int(np.isfinite(front.after_s).sum()) for front in fronts)
        beside = "scikit-fmm is missing"
        if not np.isnan(marching):
            beside = (
                f"scikit-fmm one way without stream {1e3 * marching:.0f} ms, ratio {seconds / 2 / marching:.1f} a way"
            )
        print(
            f"reach there and back, {size} x {size} cells, {HOURS:g} h, two hourly stations, 30 islands: "
            f"{seconds:.2f} s ({1e6 * seconds / cells:.1f} ms per 1000 cells reached, longest between two looks at the "
            f"stop button {1e3 * max(gaps):.0f} ms); {beside}"
        )
    errors = ", ".join(
        f"{100 * share:.0f} % of the pace: mean {mean:.2f} %, most {most:.2f} %"
        for share in (0.0, 0.4, 0.8)
        for mean, most in (closed_form_error(share),)
    )
    print(f"reach, error beside the closed form, uniform stream of {errors}")
    peak_mb = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024.0
    print(f"peak memory so far, with {SIZES[-1]} x {SIZES[-1]} cells there and back: {peak_mb:.0f} MB")


if __name__ == "__main__":
    sys.path.insert(0, str(Path(__file__).resolve().parent))
    report()
