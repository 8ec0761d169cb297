"""The reach as rasters: GeoTIFF in the plan's own frame."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import numpy as np
from osgeo import gdal, osr

from ..core.errors import SwimPlanError
from ..core.results.reach import Reach
from ..words import tr

NODATA = -9999.0


def raster_writer(reach: Reach, minutes: np.ndarray, words: str) -> Callable[[Path], None]:
    """A function that writes minutes (rows, columns; row 0 south, NaN where there are none) as a GeoTIFF.

    The file has row 0 north, as every raster, and its coordinate system is the plan's local transverse Mercator frame.
    """

    def write(path: Path) -> None:
        rows, columns = minutes.shape
        options = ["COMPRESS=DEFLATE", "TILED=YES", "PREDICTOR=3"]
        made = gdal.GetDriverByName("GTiff").Create(str(path), columns, rows, 1, gdal.GDT_Float32, options)
        if made is None:
            raise SwimPlanError(
                asked=tr("Could not write the raster {}").format(path.name),
                allowed=tr("Rasters go to files that can be written to"),
                remedy=tr("Choose another folder or close the program that holds the file"),
            )
        cell, west = reach.cell_m, reach.low_m[0] - reach.cell_m / 2.0
        north = reach.low_m[1] + (rows - 0.5) * cell
        made.SetGeoTransform((west, cell, 0.0, north, 0.0, -cell))
        made.SetProjection(_wkt(reach.frame.proj_text))
        band = made.GetRasterBand(1)
        band.SetNoDataValue(NODATA)
        band.SetDescription(words)
        band.WriteArray(np.where(np.isnan(minutes), NODATA, minutes)[::-1].astype(np.float32))
        band.FlushCache()

    return write


def _wkt(proj_text: str) -> str:
    system = osr.SpatialReference()
    system.ImportFromProj4(proj_text)
    return system.ExportToWkt()
