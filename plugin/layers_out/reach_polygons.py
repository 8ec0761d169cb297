"""Lines of equal time as polygons: where a grid's values stay at or below a level."""

from __future__ import annotations

import numpy as np
from osgeo import gdal, ogr

from ..core.geodesy import LocalFrame

FAR_PAST = 3.0  # levels: what is not reached lies so far beyond any level that the edge falls beside the last cell


def area_below(values: np.ndarray, level: float, low_m: np.ndarray, cell_m: float) -> ogr.Geometry | None:
    """The area of the frame in which values (rows, columns; row 0 south) lie at or below a level; None where empty.

    Between neighbouring cells the edge is where the value, linear between them, passes the level; towards a cell
    without a value (NaN) it is half-way.
    """
    filled = np.where(np.isnan(values), np.inf, values) - level
    if not (filled <= 0.0).any():
        return None
    # Levels are cut at 0. A blank neighbour counts as far above as the cell itself lies below: half-way between.
    blank = np.pad(filled, 1, constant_values=np.inf)
    lowest = -float(np.min(filled))
    scale = max(lowest, 1e-6)
    clipped = np.clip(blank, -scale, scale)
    inside = blank <= 0.0
    beside = _beside(inside)
    depth = np.where(inside, -clipped, 0.0)
    clipped[np.isinf(blank) & beside] = _neighbours_mean(depth, inside)[np.isinf(blank) & beside]
    clipped[np.isinf(blank) & ~beside] = scale
    return _contoured(clipped, low_m - cell_m, cell_m)


def _beside(inside: np.ndarray) -> np.ndarray:
    padded = np.pad(inside, 1)
    rows, columns = inside.shape
    return np.logical_or.reduce(
        [padded[1 + a : 1 + a + rows, 1 + b : 1 + b + columns] for a in (-1, 0, 1) for b in (-1, 0, 1)]
    )


def _neighbours_mean(depth: np.ndarray, inside: np.ndarray) -> np.ndarray:
    """Mean of the neighbours that lie inside, and no less than a little."""
    rows, columns = depth.shape
    total, count = np.zeros(depth.shape), np.zeros(depth.shape)
    padded_depth, padded_inside = np.pad(depth, 1), np.pad(inside, 1)
    for a in (-1, 0, 1):
        for b in (-1, 0, 1):
            total += padded_depth[1 + a : 1 + a + rows, 1 + b : 1 + b + columns]
            count += padded_inside[1 + a : 1 + a + rows, 1 + b : 1 + b + columns]
    return np.maximum(total / np.maximum(count, 1), 1e-6)


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
