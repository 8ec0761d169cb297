"""The ground of the invented bay: one height function from which coast, contours, soundings and depths all come.

INVENTED - NOT FOR NAVIGATION. Metres throughout: x east and y north of the bay's middle, depth positive down from chart
datum. The coastline is the line of `COAST_DEPTH_M`, about the height of high water at springs.
"""

from __future__ import annotations

import numpy as np

SEED = 20270612
"""Seed of every random choice in the sample; change it and the bay is another bay."""

COAST_DEPTH_M = -2.6
WEST_M, EAST_M, SOUTH_M, NORTH_M = -3600.0, 3600.0, -700.0, 3900.0

Points = np.ndarray


class SmoothNoise:
    """A smooth random field of unit variance: plane waves of random bearing, phase and length about `length_m`."""

    def __init__(self, generator: np.random.Generator, length_m: float, waves: int = 28) -> None:
        bearing = generator.uniform(0.0, 2.0 * np.pi, waves)
        wave_number = 2.0 * np.pi / (length_m * generator.uniform(0.7, 1.6, waves))
        self._kx = wave_number * np.sin(bearing)
        self._ky = wave_number * np.cos(bearing)
        self._phase = generator.uniform(0.0, 2.0 * np.pi, waves)

    def __call__(self, x_m: Points, y_m: Points) -> Points:
        """Value at each place (any shape, the same for both coordinates)."""
        total = np.zeros(np.broadcast(x_m, y_m).shape)
        for kx, ky, phase in zip(self._kx, self._ky, self._phase):
            total += np.cos(kx * x_m + ky * y_m + phase)
        return total * np.sqrt(2.0 / len(self._kx))


def _ramp(value: Points) -> Points:
    return 1.0 / (1.0 + np.exp(-value))


def _blend_min(first: Points, second: Points, width_m: float) -> Points:
    """Smaller of two distances, rounded off where they meet, so that headland and shore join in a curve."""
    weight = np.clip(0.5 + 0.5 * (second - first) / width_m, 0.0, 1.0)
    return second + (first - second) * weight - width_m * weight * (1.0 - weight)


def _beside_line(x_m: Points, y_m: Points, line: tuple[tuple[float, float], ...]) -> tuple[Points, Points]:
    """Distance to a broken line in metres, and how far along it (0..1 by vertices) the nearest place is."""
    nearest = np.full(np.broadcast(x_m, y_m).shape, np.inf)
    along = np.zeros(nearest.shape)
    pieces = len(line) - 1
    for number, ((x0, y0), (x1, y1)) in enumerate(zip(line, line[1:])):
        dx, dy = x1 - x0, y1 - y0
        part = np.clip(((x_m - x0) * dx + (y_m - y0) * dy) / (dx * dx + dy * dy), 0.0, 1.0)
        distance = np.hypot(x_m - x0 - part * dx, y_m - y0 - part * dy)
        along = np.where(distance < nearest, (number + part) / pieces, along)
        nearest = np.minimum(distance, nearest)
    return nearest, along


HEADLAND_SPINE = ((2150.0, -500.0), (1950.0, 500.0), (1600.0, 1080.0), (1330.0, 1330.0))
ISLET = (-700.0, 2960.0)
CHANNEL_AXIS = ((-1690.0, 640.0), (560.0, 1180.0), (1080.0, 1760.0), (3600.0, 2440.0))
GULLY = ((-470.0, 1130.0), (-385.0, 1360.0), (-395.0, 1560.0), (-300.0, 1820.0))
PINNACLE = (1420.0, 2330.0)
# centre, half length and half width in metres, bearing of the long axis, rise in metres
REEFS = (
    ((-160.0, 1400.0), 480.0, 150.0, 72.0, 5.9),
    ((170.0, 1640.0), 330.0, 120.0, 60.0, 5.0),
    ((-1480.0, 1520.0), 560.0, 210.0, 80.0, 6.6),
    ((-1250.0, 2010.0), 300.0, 120.0, 105.0, 5.5),
    ((640.0, 2060.0), 300.0, 110.0, 48.0, 6.2),
    ((1280.0, 1560.0), 260.0, 90.0, 352.0, 5.0),
    ((-780.0, 2740.0), 420.0, 190.0, 30.0, 6.0),
)


class Seabed:
    """Depth of the invented bay as a function of place; two instances give the same depths to the last bit."""

    def __init__(self) -> None:
        generator = np.random.default_rng(SEED)
        self._bend_x, self._bend_y = SmoothNoise(generator, 900.0), SmoothNoise(generator, 900.0)
        self._kink_x, self._kink_y = SmoothNoise(generator, 260.0), SmoothNoise(generator, 260.0)
        self._crag_x, self._crag_y = SmoothNoise(generator, 95.0), SmoothNoise(generator, 95.0)
        self._swell, self._rough, self._fine = (SmoothNoise(generator, length) for length in (800.0, 260.0, 120.0))

    def depth_m(self, x_m: Points, y_m: Points) -> Points:
        """Depth below chart datum at each place; negative above it."""
        x_m, y_m = np.asarray(x_m, dtype=float), np.asarray(y_m, dtype=float)
        off_m = self._off_shore_m(x_m, y_m)
        outside = np.maximum(off_m, 0.0)
        depth = COAST_DEPTH_M + 11.2 * (1.0 - np.exp(-outside / 330.0)) + 0.0056 * outside
        depth += 13.0 * _ramp((y_m + 0.12 * x_m - 3250.0 + 220.0 * self._bend_x(x_m, y_m)) / 260.0)
        depth = np.where(off_m < 0.0, COAST_DEPTH_M + 0.05 * off_m, depth)
        away = _ramp((outside - 260.0) / 70.0)
        return depth + away * self._features_m(x_m, y_m)

    def _off_shore_m(self, x_m: Points, y_m: Points) -> Points:
        """Rough distance seaward of the coastline, negative on land, after bending the map to make the coast wander."""
        u = x_m + 70.0 * self._bend_x(x_m, y_m) + 24.0 * self._kink_x(x_m, y_m) + 6.0 * self._crag_x(x_m, y_m)
        v = y_m + 70.0 * self._bend_y(x_m, y_m) + 24.0 * self._kink_y(x_m, y_m) + 6.0 * self._crag_y(x_m, y_m)
        shore = v - 1250.0 * _ramp((-u - 2080.0) / 210.0) - 260.0 * _ramp((u - 950.0) / 160.0)
        beside, along = _beside_line(u, v, HEADLAND_SPINE)
        headland = beside - (480.0 - 330.0 * along)
        islet = np.hypot((u - ISLET[0]) / 1.5, v - ISLET[1]) - 105.0
        return np.minimum(_blend_min(shore, headland, 420.0), islet)

    def _features_m(self, x_m: Points, y_m: Points) -> Points:
        """What reefs, gully, pinnacle, channel and rough ground add to the plain slope."""
        change = 0.9 * self._swell(x_m, y_m)
        rough = 1.0 + 0.22 * self._rough(x_m, y_m) + 0.09 * self._fine(x_m, y_m)
        for (cx, cy), length, width, bearing, rise in REEFS:
            angle = np.radians(bearing)
            along = (x_m - cx) * np.sin(angle) + (y_m - cy) * np.cos(angle)
            across = (x_m - cx) * np.cos(angle) - (y_m - cy) * np.sin(angle)
            change -= rise * rough * np.exp(-(((along / length) ** 2 + (across / width) ** 2) ** 1.5))
        change += 5.5 * np.exp(-((_beside_line(x_m, y_m, GULLY)[0] / 45.0) ** 2))
        change += 3.2 * np.exp(-((_beside_line(x_m, y_m, CHANNEL_AXIS)[0] / 150.0) ** 2))
        steep = np.hypot(x_m - PINNACLE[0], y_m - PINNACLE[1]) / 62.0
        return change - 10.2 * np.exp(-(steep**1.6))


def depth_grid(seabed: Seabed, cell_m: float = 12.0) -> tuple[Points, Points, Points]:
    """Depths on a regular grid: x (n_cols,), y (n_rows,) with row 0 in the north, depth (n_rows, n_cols)."""
    x = np.arange(WEST_M, EAST_M + cell_m / 2.0, cell_m)
    y = np.arange(NORTH_M, SOUTH_M - cell_m / 2.0, -cell_m)
    columns, rows = np.meshgrid(x, y)
    return x, y, seabed.depth_m(columns, rows)
