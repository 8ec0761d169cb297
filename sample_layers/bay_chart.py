"""Coast, depth contours and soundings of the invented bay, all drawn from `bay_shape.Seabed`.

INVENTED - NOT FOR NAVIGATION. Places are metres of the bay's frame.
"""

from __future__ import annotations

import numpy as np
from bay_shape import COAST_DEPTH_M, EAST_M, NORTH_M, SOUTH_M, WEST_M, Seabed, depth_grid
from osgeo import gdal, ogr, osr
from qgis.core import QgsGeometry

CONTOURS_M = (0.0, 2.0, 5.0, 10.0, 15.0, 20.0, 30.0)
SHORTEST_CONTOUR_M = 60.0
SMALLEST_LAND_M2 = 900.0
DRAWING_TOLERANCE_M = 2.0

gdal.UseExceptions()
ogr.UseExceptions()


def _depth_raster(seabed: Seabed) -> gdal.Dataset:
    """The seabed as a raster in memory, in metres."""
    x, y, depth = depth_grid(seabed)
    cell = x[1] - x[0]
    raster = gdal.GetDriverByName("MEM").Create("", len(x), len(y), 1, gdal.GDT_Float64)
    raster.SetGeoTransform((x[0] - cell / 2.0, cell, 0.0, y[0] + cell / 2.0, 0.0, -cell))
    raster.GetRasterBand(1).WriteArray(depth)
    return raster


def _contoured(raster: gdal.Dataset, levels: tuple[float, ...], *, areas: bool) -> list[tuple[float, QgsGeometry]]:
    """GDAL's contours as (level, line), or the areas between them as (upper level, area)."""
    memory = ogr.GetDriverByName("Memory").CreateDataSource("")
    nowhere = osr.SpatialReference()
    layer = memory.CreateLayer("contours", nowhere, ogr.wkbMultiPolygon if areas else ogr.wkbLineString)
    for name in ("low", "high"):
        layer.CreateField(ogr.FieldDefn(name, ogr.OFTReal))
    options = ["FIXED_LEVELS=" + ",".join(f"{level:g}" for level in levels), f"POLYGONIZE={'YES' if areas else 'NO'}"]
    options += ["ELEV_FIELD_MIN=0", "ELEV_FIELD_MAX=1"] if areas else ["ELEV_FIELD=0"]
    gdal.ContourGenerateEx(raster.GetRasterBand(1), layer, options=options)
    value = "high" if areas else "low"
    return [(row.GetField(value), QgsGeometry.fromWkt(row.geometry().ExportToWkt())) for row in layer]


def land_areas(seabed: Seabed) -> list[QgsGeometry]:
    """Land as simple polygons, largest first; rocks too small to draw are left out."""
    lands = []
    for upper_m, areas in _contoured(_depth_raster(seabed), (COAST_DEPTH_M,), areas=True):
        if upper_m > COAST_DEPTH_M + 1e-6:
            continue
        lands += [part.simplify(DRAWING_TOLERANCE_M) for part in areas.asGeometryCollection()]
    return sorted((part for part in lands if part.area() >= SMALLEST_LAND_M2), key=lambda part: -part.area())


def depth_contours(seabed: Seabed) -> list[tuple[float, QgsGeometry]]:
    """(depth in metres, line) of each contour long enough to draw, by depth and then from west to east."""
    lines = [
        (depth_m, line.simplify(DRAWING_TOLERANCE_M))
        for depth_m, line in _contoured(_depth_raster(seabed), CONTOURS_M, areas=False)
        if line.length() >= SHORTEST_CONTOUR_M
    ]
    return sorted(lines, key=lambda pair: (pair[0], pair[1].boundingBox().xMinimum(), pair[1].length()))


def soundings(seabed: Seabed, generator: np.random.Generator) -> list[tuple[float, float, float]]:
    """(x, y, depth) of soundings, thrown at random and kept where none is near: denser where the water is shoal."""
    tries = 6000
    x = generator.uniform(WEST_M + 100.0, EAST_M - 100.0, tries)
    y = generator.uniform(SOUTH_M + 100.0, NORTH_M - 100.0, tries)
    depth = seabed.depth_m(x, y)
    apart = np.clip(24.0 * depth, 125.0, 340.0)
    kept: list[int] = []
    for index in np.flatnonzero(depth > 0.4):
        near = np.hypot(x[kept] - x[index], y[kept] - y[index]) if kept else np.array([np.inf])
        if near.min() > apart[index]:
            kept.append(int(index))
    return [(float(x[i]), float(y[i]), round(float(depth[i]), 1)) for i in kept]
