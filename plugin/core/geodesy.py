"""Geodesic legs on WGS84 and the plan's own metric frame."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

import numpy as np
from numpy.typing import ArrayLike

from .errors import OutsideModelError
from .projecting import in_projecting_thread
from .words import tr

SEMI_MAJOR_AXIS_M = 6378137.0  # WGS84, NGA.STND.0036


@cache
def _ellipsoid() -> Any:
    from pyproj import Geod

    return Geod(ellps="WGS84")


def geodesic_leg(start_lon: float, start_lat: float, end_lon: float, end_lat: float) -> tuple[float, float]:
    """Length in metres and true bearing at the start in degrees 0-360, of the shortest line on WGS84.

    Source: C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013), through PROJ.
    """
    azimuth, _, length_m = _ellipsoid().inv(start_lon, start_lat, end_lon, end_lat)
    return float(length_m), float(azimuth) % 360.0


def geodesic_steps(lonlat: np.ndarray) -> np.ndarray:
    """Lengths (n - 1,) in metres of the steps of a line (n, 2) of degrees, as ``geodesic_leg`` has them."""
    lon, lat = np.asarray(lonlat, dtype=float).reshape(-1, 2).T
    return np.asarray(_ellipsoid().inv(lon[:-1], lat[:-1], lon[1:], lat[1:])[2])


def check_position(lon: float, lat: float, name: str) -> None:
    """OutsideModelError unless longitude is within 180 and latitude within 89 degrees (no frame at a pole)."""
    if not (np.isfinite(lon) and np.isfinite(lat) and abs(lon) <= 180.0 and abs(lat) <= 89.0):
        raise OutsideModelError(
            asked=tr("{name} is at longitude {lon}, latitude {lat}").format(name=name, lon=lon, lat=lat),
            allowed=tr("Longitudes reach from -180 to 180 and latitudes from -89 to 89 degrees"),
            remedy=tr("Check the layer's coordinate reference system and the order longitude, latitude"),
        )


@dataclass(frozen=True, kw_only=True)
class LocalFrame:
    """Transverse Mercator on WGS84 centred on the plan, scale 1 on the centre's meridian: x east, y north, in metres.

    The scale error is (x / R)^2 / 2: 0.3 mm a kilometre at 5 km from the centre, 8 mm at 25 km.
    Source: IOGP Guidance Note 7-2, method 9807, through PROJ.
    """

    lon: float
    lat: float

    def __post_init__(self) -> None:
        check_position(self.lon, self.lat, tr("The plan's centre"))

    @classmethod
    def around(cls, lonlat: np.ndarray) -> LocalFrame:
        """Frame centred on the places (n, 2) in degrees; places on both sides of the date line are taken as near."""
        lonlat = np.asarray(lonlat, dtype=float).reshape(-1, 2)
        lon = lonlat[0, 0] + np.mean(_wrapped(lonlat[:, 0] - lonlat[0, 0]))
        return cls(lon=float(_wrapped(lon)), lat=float(lonlat[:, 1].mean()))

    @property
    def proj_text(self) -> str:
        """The frame as a PROJ string."""
        return f"+proj=tmerc +lat_0={self.lat!r} +lon_0={self.lon!r} +k=1 +x_0=0 +y_0=0 +ellps=WGS84 +units=m +no_defs"

    def to_xy(self, lonlat: np.ndarray) -> np.ndarray:
        """Places (n, 2) in degrees to metres (n, 2)."""
        lonlat = np.asarray(lonlat, dtype=float).reshape(-1, 2)
        return np.column_stack(self._projected(lonlat))

    def to_lonlat(self, xy_m: np.ndarray) -> np.ndarray:
        """Places (n, 2) in metres to degrees (n, 2), longitudes within 180."""
        xy_m = np.asarray(xy_m, dtype=float).reshape(-1, 2)
        lon, lat = self._projected(xy_m, inverse=True)
        return np.column_stack([_wrapped(np.asarray(lon)), lat])

    def _projected(self, pairs: np.ndarray, *, inverse: bool = False) -> tuple[Any, Any]:
        # pyproj warns of an array of one, so a single place goes as two numbers.
        first, second = pairs[0] if len(pairs) == 1 else pairs.T
        return in_projecting_thread(_project, self.proj_text, first, second, inverse)

    def convergence_at(self, x_m: ArrayLike) -> np.ndarray:
        """Degrees to add to a bearing of the frame's grid, x metres east of the centre, to get the true bearing there.

        gamma = x tan(lat) / a, the first term of atan(tan(dlon) sin(lat)); the error is below 1 % of the convergence
        within 25 km of the centre up to 70 degrees of latitude. Source: Snyder, Map Projections (USGS PP 1395), p. 55.
        """
        return np.degrees(np.asarray(x_m, dtype=float) * np.tan(np.radians(self.lat)) / SEMI_MAJOR_AXIS_M)


@lru_cache(maxsize=16)
def _projection(proj_text: str) -> Any:
    """In the projecting thread only."""
    from pyproj import Proj

    return Proj(proj_text)


def _project(proj_text: str, first: Any, second: Any, inverse: bool) -> tuple[Any, Any]:
    """In the projecting thread."""
    return _projection(proj_text)(first, second, inverse=inverse)


def _wrapped(degrees: ArrayLike) -> np.ndarray:
    """Angle differences brought to -180..180."""
    return (np.asarray(degrees) + 180.0) % 360.0 - 180.0
