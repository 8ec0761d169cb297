"""A model's coordinates in the plan's frame, and which way its axes really point."""

from __future__ import annotations

from functools import lru_cache
from typing import Any

import numpy as np

from ..core.geodesy import LocalFrame
from ..core.projecting import in_projecting_thread
from ..words import tr
from .model_row import ModelRow

DEGREES = "EPSG:4326"
SEMI_MAJOR_M, ECCENTRICITY_SQUARED = 6378137.0, 0.00669437999014  # WGS84, NGA.STND.0036
STEP_M, STEP_DEG = 1.0, 1e-5
LATTICE = 9


class ModelPlaces:
    """Places of a model's reference system, x to the east or right and y to the north or up as QGIS has them.

    ``wkt`` is its reference system. Where the file has none, the row's stands; where that has none either, coordinates
    that can be degrees and reach the plan are taken as longitude and latitude, and said so; others are refused.
    """

    def __init__(
        self, row: ModelRow, wkt: str, extent: tuple[float, float, float, float], frame: LocalFrame, warnings: list[str]
    ) -> None:
        from pyproj.exceptions import CRSError

        self.frame = frame
        self._crs = wkt or row.crs or DEGREES
        try:
            self.in_degrees = in_projecting_thread(_is_in_degrees, self._crs)
        except CRSError as error:
            raise row.refused(
                "path" if wkt else "crs",
                row.crs or row.path.name,
                tr("The coordinate reference system is not understood"),
                tr("Write it into the file, or give its code, such as EPSG:32610, in the field crs"),
            ) from error
        if not wkt and not row.crs:
            _check_degrees(row, extent, frame)
            warnings.append(
                tr(
                    "Stream model '{name}': the file names no coordinate reference system; its coordinates were "
                    "taken as longitude and latitude on WGS84."
                ).format(name=row.name)
            )
        self._step = STEP_DEG if self.in_degrees else STEP_M

    def lonlat(self, x: np.ndarray, y: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Longitude within 180 and latitude, infinite where the system does not reach."""
        lon, lat = self._transformed(np.asarray(x, dtype=float), np.asarray(y, dtype=float))
        return _wrapped(lon), np.asarray(lat)

    def own(self, lonlat: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """The model's x and y of places (n, 2) in degrees."""
        x, y = self._transformed(*np.asarray(lonlat, dtype=float).T, direction="INVERSE")
        return np.asarray(x), np.asarray(y)

    def _transformed(self, first: np.ndarray, second: np.ndarray, direction: str = "FORWARD") -> tuple[Any, Any]:
        return in_projecting_thread(_transform, self._crs, first, second, direction)

    def frame_xy(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """Places (n, 2) in the plan's frame."""
        return self.frame.to_xy(np.column_stack(self.lonlat(x, y)))

    def axes(self, x: np.ndarray, y: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Where the model's x and y axes point at its places: two complex numbers of size 1, true east + i north.

        Found by a small step along each axis, so it holds for any projection, turned or mirrored ones too.
        """
        lon, lat = self.lonlat(x, y)
        return tuple(
            _direction(lon, lat, *self.lonlat(x + along * self._step, y + (1.0 - along) * self._step))
            for along in (1.0, 0.0)
        )


def _is_in_degrees(crs: str) -> bool:
    """In the projecting thread; CRSError where the system is not understood."""
    from pyproj import CRS

    return CRS.from_user_input(crs).is_geographic


@lru_cache(maxsize=16)
def _transformer(crs: str) -> Any:
    """In the projecting thread only."""
    from pyproj import Transformer

    return Transformer.from_crs(crs, DEGREES, always_xy=True)


def _transform(crs: str, first: np.ndarray, second: np.ndarray, direction: str) -> tuple[Any, Any]:
    """In the projecting thread."""
    return _transformer(crs).transform(first, second, direction=direction)


def turn_true(first: np.ndarray, second: np.ndarray, right: np.ndarray, up: np.ndarray) -> None:
    """Make components (n_times, ...) along axes that point ``right`` and ``up`` true east and north, in place."""
    for u, v in zip(first, second):  # a step at a time: the whole may be large
        east, north = u * right.real + v * up.real, u * right.imag + v * up.imag
        u[...], v[...] = east, north


def box_lattice(frame: LocalFrame, box_m: np.ndarray, margin_m: float) -> tuple[np.ndarray, np.ndarray]:
    """Places (81, 2) evenly over a box of the plan's frame and a margin round it: in metres, and in degrees."""
    corners = np.asarray(box_m, dtype=float).reshape(-1, 2)
    low, high = corners.min(axis=0) - margin_m, corners.max(axis=0) + margin_m
    axes = np.meshgrid(*(np.linspace(low[k], high[k], LATTICE) for k in (0, 1)))
    xy = np.stack(axes, axis=-1).reshape(-1, 2)
    return xy, frame.to_lonlat(xy)


def _direction(lon: np.ndarray, lat: np.ndarray, to_lon: np.ndarray, to_lat: np.ndarray) -> np.ndarray:
    """The true direction of a short step, east + i north of size 1."""
    squeeze = 1.0 - ECCENTRICITY_SQUARED * np.sin(np.radians(lat)) ** 2
    east = _wrapped(to_lon - lon) * np.cos(np.radians(lat)) * SEMI_MAJOR_M / np.sqrt(squeeze)
    north = (to_lat - lat) * SEMI_MAJOR_M * (1.0 - ECCENTRICITY_SQUARED) / squeeze**1.5
    step = east + 1j * north
    return step / np.abs(step)


def _check_degrees(row: ModelRow, extent: tuple[float, float, float, float], frame: LocalFrame) -> None:
    low_x, low_y, high_x, high_y = extent
    fits = -360.0 <= low_x and high_x <= 360.0 and -90.0 <= low_y and high_y <= 90.0
    middle = (low_x + high_x) / 2.0
    near = abs(_wrapped(np.array(frame.lon - middle))) <= (high_x - low_x) / 2.0 + 1.0
    near = near and low_y - 1.0 <= frame.lat <= high_y + 1.0
    if not (fits and near):
        raise row.refused(
            "path",
            row.path.name,
            tr(
                "The file names no coordinate reference system, and its coordinates, {low_x:g} to {high_x:g} "
                "by {low_y:g} to {high_y:g}, are not longitudes and latitudes around the plan"
            ).format(low_x=low_x, high_x=high_x, low_y=low_y, high_y=high_y),
            tr("Write the system into the file, or give its code, such as EPSG:32610, in the field crs"),
        )


def _wrapped(degrees: np.ndarray) -> np.ndarray:
    """Angles brought to -180..180; what is not finite stays so."""
    with np.errstate(invalid="ignore"):
        return (np.asarray(degrees) + 180.0) % 360.0 - 180.0
