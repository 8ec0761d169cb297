"""A stream model in the bands of rasters: u and v, step by step, in one file or two, read around the plan alone."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ..core.clock import PlanClock
from ..core.geodesy import LocalFrame
from ..core.water.grid_stream import PlaneMap, RasterStream
from ..words import tr
from .model_places import ModelPlaces, box_lattice, turn_true
from .model_row import ModelRow
from .model_times import check_size, model_times_s, needed_steps
from .model_units import refuse_wind, speed_factor, without_fillers, without_still_places
from .raster_bands import EAST_NAMES, NORTH_NAMES, Component, component

MARGIN_M = 500.0
AROUND_CELLS = 2
CLOSE_CELLS = 0.05  # the map from the plan's frame to cells must be better than this everywhere


def raster_stream(
    row: ModelRow, frame: LocalFrame, clock: PlanClock, box_m: np.ndarray, warnings: list[str]
) -> RasterStream | None:
    """The model's stream around a box of the plan's frame; None where it does not reach the plan in place or time."""
    first = component(row, row.path, "group", row.group, EAST_NAMES)
    second = component(row, row.v_path or row.path, "v_group", row.v_group, NORTH_NAMES)
    _check_pair(row, first, second)
    times = _times_s(row, first, second, clock, warnings)
    steps = needed_steps(row, clock, times, warnings)
    if not len(steps):
        return None
    window = _Window.around(row, first, frame, box_m, warnings)
    if window is None:
        warnings.append(
            tr("Stream model '{name}' has no cells around the plan: it does not know its stream.").format(name=row.name)
        )
        return None
    check_size(row, len(steps), window.height * window.width)
    factors = [speed_factor(row, part.unit, warnings) for part in (first, second)]
    shape = (len(steps), window.height, window.width)
    u, v = np.empty(shape, dtype=np.float32), np.empty(shape, dtype=np.float32)
    for place, step in enumerate(steps.tolist()):
        u[place] = window.read(first, step) * factors[0]
        v[place] = window.read(second, step) * factors[1]
    without_fillers(row, u, v, warnings)
    without_still_places(row, u, v, warnings)
    if not (first.is_true and second.is_true):
        window.turn_true(u, v)
    return RasterStream(place=window.place, times_s=times[steps], east_m_s=u, north_m_s=v, name=row.name)


@dataclass(frozen=True, kw_only=True)
class _Window:
    """The part of a raster around the plan. ``pieces`` are its columns, (first, count), in two where it spans the seam.

    ``place`` maps the plan's frame to the window's cells; ``x``, ``y`` (height, width) are the centres of its cells.
    """

    top: int
    height: int
    pieces: list[tuple[int, int]]
    place: PlaneMap
    places: ModelPlaces
    x: np.ndarray
    y: np.ndarray

    @property
    def width(self) -> int:
        return sum(count for _, count in self.pieces)

    @classmethod
    def around(
        cls, row: ModelRow, part: Component, frame: LocalFrame, box_m: np.ndarray, warnings: list[str]
    ) -> _Window | None:
        """The cells that a box of the plan's frame touches, and two more all round; None where there are none."""
        raster = part.dataset
        columns, rows = raster.RasterXSize, raster.RasterYSize
        affine = _Affine(raster.GetGeoTransform())
        corners = affine.xy(np.array([0.0, columns, 0.0, columns]) - 0.5, np.array([0.0, 0.0, rows, rows]) - 0.5)
        extent = tuple(float(edge(axis)) for edge in (np.min, np.max) for axis in corners)
        places = ModelPlaces(row, raster.GetProjection(), extent, frame, warnings)
        xy_m, lonlat = box_lattice(frame, box_m, MARGIN_M)
        x, y = places.own(lonlat)
        if places.in_degrees:
            middle = (extent[0] + extent[2]) / 2.0
            x = middle + _near(x[len(x) // 2] - middle) + _near(x - x[len(x) // 2])
        column, line = affine.cells(x, y)
        if not (np.all(np.isfinite(column)) and np.all(np.isfinite(line))):
            return None
        left, right = _span(column)
        top, bottom = max(_span(line)[0], 0), min(_span(line)[1], rows - 1)
        whole_turn = places.in_degrees and abs(extent[2] - extent[0] - 360.0) < 0.51 * abs(affine.width)
        if not whole_turn:
            left, right = max(left, 0), min(right, columns - 1)
        if left > right or top > bottom or right - left >= columns:
            return None
        place = PlaneMap.through(xy_m, np.column_stack([column - left, line - top]))
        _check_map(row, place, xy_m, column - left, line - top)
        at = np.meshgrid(np.arange(left, right + 1, dtype=float), np.arange(top, bottom + 1, dtype=float))
        cell_x, cell_y = affine.xy(*at)
        return cls(
            top=top,
            height=bottom - top + 1,
            pieces=_pieces(left, right, columns),
            place=place,
            places=places,
            x=cell_x,
            y=cell_y,
        )

    def read(self, part: Component, step: int) -> np.ndarray:
        """One step's values (height, width)."""
        return part.read(step, self.pieces, self.top, self.height)

    def turn_true(self, u: np.ndarray, v: np.ndarray) -> None:
        """Make components along the axes of the raster's system true east and north, in place."""
        right, up = (axis.reshape(self.x.shape) for axis in self.places.axes(self.x.ravel(), self.y.ravel()))
        turn_true(u, v, right, up)


class _Affine:
    """Columns and rows of cell centres from the raster's own coordinates, and back."""

    def __init__(self, geotransform: tuple[float, ...]) -> None:
        x0, self.width, x_row, y0, y_column, y_row = geotransform
        self._matrix = np.array([[self.width, x_row], [y_column, y_row]])
        self._origin = np.array([x0, y0]) + self._matrix @ [0.5, 0.5]

    def xy(self, column: np.ndarray, row: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        return tuple(o + a * column + b * row for o, (a, b) in zip(self._origin, self._matrix))

    def cells(self, x: np.ndarray, y: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        inverse = np.linalg.inv(self._matrix)
        dx, dy = x - self._origin[0], y - self._origin[1]
        return tuple(a * dx + b * dy for a, b in inverse)


def _check_pair(row: ModelRow, first: Component, second: Component) -> None:
    for part in (first, second):
        refuse_wind(row, part.label)
    grids = [(p.dataset.RasterXSize, p.dataset.RasterYSize, p.dataset.GetGeoTransform()) for p in (first, second)]
    same = grids[0][:2] == grids[1][:2] and np.allclose(grids[0][2], grids[1][2], rtol=1e-9, atol=1e-9)
    if not same or len(first.bands) != len(second.bands):
        raise row.refused(
            "v_group",
            second.label or None,
            tr(
                "Both parts stand in the same cells at the same times; they have {first} and {second} "
                "steps, {grids} x {grids_2} and {grids_3} x {grids_4} cells"
            ).format(
                first=len(first.bands),
                second=len(second.bands),
                grids=grids[0][0],
                grids_2=grids[0][1],
                grids_3=grids[1][0],
                grids_4=grids[1][1],
            ),
            tr("Name two parts of one model, brought to common cells"),
        )
    if first.dataset.GetDescription() == second.dataset.GetDescription() and first.bands == second.bands:
        raise row.refused("v_group", row.v_group or None, tr("The two parts differ"), tr("Name the north part's bands"))


def _times_s(row: ModelRow, first: Component, second: Component, clock: PlanClock, warnings: list[str]) -> np.ndarray:
    moments = first.moments
    if moments != second.moments:
        raise row.refused(
            "v_group", second.label, tr("Both parts have the same times"), tr("Name two parts of one model")
        )
    count = len(first.bands)
    if moments is None:
        return model_times_s(row, clock, None, None, count, warnings)
    relative = np.array([(moment - moments[0]).total_seconds() for moment in moments])
    return model_times_s(row, clock, moments[0], relative, count, warnings)


def _check_map(row: ModelRow, place: PlaneMap, xy_m: np.ndarray, column: np.ndarray, line: np.ndarray) -> None:
    found = place.at(*xy_m.T)
    off = np.hypot(found[0] - column, found[1] - line)
    if not np.max(off) < CLOSE_CELLS:
        raise row.refused(
            "path",
            row.path.name,
            tr("The raster's projection bends too much around the plan to find places in it"),
            tr("Bring the raster into a projection made for the area, UTM for instance"),
        )


def _span(cells: np.ndarray) -> tuple[int, int]:
    return int(np.floor(cells.min())) - AROUND_CELLS, int(np.ceil(cells.max())) + AROUND_CELLS


def _pieces(left: int, right: int, columns: int) -> list[tuple[int, int]]:
    """Columns from left to right as they stand in a raster that goes round the Earth, or within it."""
    start, count = left % columns, right - left + 1
    before_seam = min(count, columns - start)
    pieces = [(start, before_seam), (0, count - before_seam)]
    return [piece for piece in pieces if piece[1]]


def _near(degrees: np.ndarray) -> np.ndarray:
    return (degrees + 180.0) % 360.0 - 180.0
