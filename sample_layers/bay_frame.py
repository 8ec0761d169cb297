"""Where the invented bay lies: metres of the bay to longitude and latitude. INVENTED - NOT FOR NAVIGATION."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from pyproj import CRS, Transformer

LONGITUDE_DEG, LATITUDE_DEG = -50.0, 36.0
"""The bay's middle: open North Atlantic, more than a thousand kilometres from the nearest land."""

ZONE = "Atlantic/Bermuda"
"""Clock of the invented bay: an existing zone that fits the longitude and has daylight saving (UTC-3 in June)."""

NOTICE = "INVENTED - NOT FOR NAVIGATION"
DECIMALS = 7


@lru_cache(maxsize=1)
def _to_degrees() -> Transformer:
    local = f"+proj=tmerc +lat_0={LATITUDE_DEG} +lon_0={LONGITUDE_DEG} +k=1 +datum=WGS84 +units=m"
    return Transformer.from_crs(CRS.from_proj4(local), CRS.from_epsg(4326), always_xy=True)


def lon_lat(places: Iterable[tuple[float, float]]) -> list[tuple[float, float]]:
    """Longitude and latitude in degrees of places given in metres east and north of the bay's middle."""
    return [(round(lon, DECIMALS), round(lat, DECIMALS)) for lon, lat in _to_degrees().itransform(places)]
