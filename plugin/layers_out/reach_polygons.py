"""Lines of equal time as polygons: where a grid's values stay at or below a level."""

from __future__ import annotations

import numpy as np
from osgeo import gdal, ogr

from ..core.geodesy import LocalFrame

NEAR_NOTHING = 1e-6


def area_below(values: np.ndarray, level: float, low_m: np.ndarray, cell_m: float) -> ogr.Geometry | None:
    """The area of the frame in which values (rows, columns; row 0 south) lie at or below a level; None where empty.

    Between neighbouring cells the edge is where the value, linear between them, passes the level; towards a cell
    without a value (NaN) it is half-way.
    """
    above = np.pad(np.where(np.isnan(values), np.inf, values - level), 1, constant_values=np.inf)
    inside = above <= 0.0
    if not inside.any():
        return None
    most = max(-float(above.min()), NEAR_NOTHING)
    # A blank cell lies as far above the level as the cells beside it lie below: the edge comes half-way between.
    depth, count = (_over_neighbours(part) for part in (np.where(inside, -above, 0.0), inside))
    opposite = np.where(count > 0, np.maximum(depth / np.maximum(count, 1), NEAR_NOTHING), most)
    return _contoured(np.where(np.isinf(above), opposite, np.clip(above, -most, most)), low_m - cell_m, cell_m)


def _over_neighbours(values: np.ndarray) -> np.ndarray:
    """Sums over each cell and the eight round it."""
    rows, columns = values.shape
    wide = np.pad(values, 1).astype(float)
    return sum(wide[a : a + rows, b : b + columns] for a in range(3) for b in range(3))


def _contoured(values: np.ndarray, low_m: np.ndarray, cell_m: float) -> ogr.Geometry | None:
    """The area where values (row 0 south) lie below 0, by GDAL's contours."""
    rows, columns = values.shape
    grid = gdal.GetDriverByName("MEM").Create("", columns, rows, 1, gdal.GDT_Float64)
    half = cell_m / 2.0
    # Rows run south to north here, so the step of the rows is positive.
    grid.SetGeoTransform((low_m[0] - half, cell_m, 0.0, low_m[1] - half, 0.0, cell_m))
    grid.GetRasterBand(1).WriteArray(values)
    source = ogr.GetDriverByName("Memory").CreateDataSource("")
    layer = source.CreateLayer("areas", geom_type=ogr.wkbMultiPolygon)
    layer.CreateField(ogr.FieldDefn("low", ogr.OFTReal))
    layer.CreateField(ogr.FieldDefn("high", ogr.OFTReal))
    options = ["FIXED_LEVELS=0", "POLYGONIZE=YES", "ELEV_FIELD_MIN=0", "ELEV_FIELD_MAX=1"]
    gdal.ContourGenerateEx(grid.GetRasterBand(1), layer, options=options)
    areas = [feature.GetGeometryRef().Clone() for feature in layer if feature.GetField("high") <= 1e-9]
    return areas[0] if areas else None


def rings_lonlat(area: ogr.Geometry, frame: LocalFrame) -> list[list[list[tuple[float, float]]]]:
    """The rings of an area of the frame in degrees, polygon by polygon, drawn on beyond 180 degrees."""
    polygons = [area.GetGeometryRef(n) for n in range(area.GetGeometryCount())]
    return [
        [_ring(polygon.GetGeometryRef(n), frame) for n in range(polygon.GetGeometryCount())] for polygon in polygons
    ]


def _ring(ring: ogr.Geometry, frame: LocalFrame) -> list[tuple[float, float]]:
    lonlat = frame.to_lonlat(np.array([point[:2] for point in ring.GetPoints()]))
    lonlat[:, 0] = frame.lon + (lonlat[:, 0] - frame.lon + 180.0) % 360.0 - 180.0
    return [(float(lon), float(lat)) for lon, lat in lonlat]
