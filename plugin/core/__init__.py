"""The computing: no QGIS and no Qt here, only the standard library, numpy, shapely, pyproj, pygeomag and astral."""
