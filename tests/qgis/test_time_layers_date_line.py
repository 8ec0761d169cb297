"""Swimmer and stream arrows near the date line: drawn on every map, and pointing where the water goes."""

from __future__ import annotations

import math

import pytest
from qgis.core import QgsCoordinateReferenceSystem, QgsCoordinateTransform, QgsCoordinateTransformContext, QgsPointXY
from tideleg.layers_out.time_layers import POINTS_AHEAD_DEG, _ahead

MERCATOR = QgsCoordinateReferenceSystem("EPSG:3857")
DEGREES = QgsCoordinateReferenceSystem("EPSG:4326")
SETS_DEG = (0.0, 35.0, 90.0, 180.0, 215.0, 270.0)
# From the line itself an arrow to the west reaches a tenth of a metre over it: that one cannot be drawn so.
ARROWS = [
    (lon, set_deg)
    for lon in (179.998, 179.99999, -179.998, -180.0, 20.0)
    for set_deg in SETS_DEG
    if not (lon == -180.0 and set_deg > 180.0)
]


@pytest.mark.parametrize(("lon", "set_deg"), ARROWS)
def test_an_arrow_points_where_the_water_goes_on_a_map_that_ends_at_the_date_line(qgis_app, lon, set_deg) -> None:
    lat = -30.0
    to = _ahead(lon, lat, set_deg)
    way = QgsCoordinateTransform(DEGREES, MERCATOR, QgsCoordinateTransformContext())
    start, end = way.transform(QgsPointXY(lon, lat)), way.transform(QgsPointXY(to["to_lon"], to["to_lat"]))
    drawn = math.degrees(math.atan2(end.x() - start.x(), end.y() - start.y())) % 360.0
    # Mercator keeps angles; half a kilometre of it bends by less than a tenth of a degree.
    assert abs((drawn - set_deg + 180.0) % 360.0 - 180.0) < 0.1
    assert abs(to["to_lon"]) <= 180.0 and abs(to["to_lat"] - lat) <= POINTS_AHEAD_DEG
