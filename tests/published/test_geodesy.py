"""Geodesic legs and the plan's frame against surveyors' published examples and an independent library."""

import math
import unittest

import numpy as np
import pytest
from pyproj import Geod, Proj
from tideleg.core.geodesy import LocalFrame, geodesic_leg

geographiclib_tests = pytest.importorskip("geographiclib.test.test_geodesic")


def degrees(d, m, s):
    return math.copysign(abs(d) + m / 60.0 + s / 3600.0, d)


# ICSM, GDA Technical Manual: Flinders Peak to Buninyong, GRS80. The line crosses a UTM zone border.
FLINDERS = (degrees(144, 25, 29.52440), degrees(-37, 57, 3.72030))
BUNINYONG = (degrees(143, 55, 35.38390), degrees(-37, 39, 10.15610))
LINE_M = 54972.271
FORWARD_DEG, BACK_DEG = degrees(306, 52, 5.37), degrees(127, 10, 25.07)
HALF_HUNDREDTH_OF_SECOND = 0.005 / 3600.0


def test_flinders_buninyong_on_its_own_ellipsoid():
    azimuth, back, length_m = Geod(ellps="GRS80").inv(*FLINDERS, *BUNINYONG)
    assert length_m == pytest.approx(LINE_M, abs=0.0005)
    assert azimuth % 360.0 == pytest.approx(FORWARD_DEG, abs=HALF_HUNDREDTH_OF_SECOND)
    assert back % 360.0 == pytest.approx(BACK_DEG, abs=HALF_HUNDREDTH_OF_SECOND)


def test_flinders_buninyong_leg():
    """WGS84 is 0.1 mm flatter at the poles than GRS80: nothing at the printed digit, on a line of 55 km."""
    length_m, bearing = geodesic_leg(*FLINDERS, *BUNINYONG)
    assert length_m == pytest.approx(LINE_M, abs=0.0005)
    assert bearing == pytest.approx(FORWARD_DEG, abs=HALF_HUNDREDTH_OF_SECOND)
    assert geodesic_leg(*BUNINYONG, *FLINDERS)[1] == pytest.approx(BACK_DEG, abs=HALF_HUNDREDTH_OF_SECOND)
    grs80_m = Geod(ellps="GRS80").inv(*FLINDERS, *BUNINYONG)[2]
    assert abs(length_m - grs80_m) < 1e-5


# The same manual: Flinders Peak on MGA zone 55 (GRS80, central meridian 147 E, k 0.9996, 500 000 E, 10 000 000 N).
def test_flinders_peak_on_mga_zone_55():
    grid = Proj("+proj=tmerc +lat_0=0 +lon_0=147 +k=0.9996 +x_0=500000 +y_0=10000000 +ellps=GRS80")
    assert grid(*FLINDERS) == pytest.approx((273741.297, 5796489.777), abs=0.0005)


# IOGP Guidance Note 7-2, method 9807, Transverse Mercator: the note's example is the British national grid on the Airy
# ellipsoid (a 6377563.396, 1/f 299.32496; origin 49 N, 2 W; k 0.9996013; 400 000 E, -100 000 N; constants from memory).
# The grid's own scale, 0.9996012717, gives 577274.984 and 69740.492: 8 mm off: the note rounded it first.
AIRY = {"a": 6377563.396, "f": 1.0 / 299.32496}
NOTE_SCALE, GRID_SCALE = 0.9996013, 0.9996012717
NOTE_PLACE, NOTE_GRID = (0.5, 50.5), (577274.99, 69740.50)


def transverse_mercator(lon, lat, *, lon_0, lat_0, a, f, k=1.0, easting=0.0, northing=0.0):
    """Method 9807 written out anew: Krueger's series in the third flattening n, to n^4.

    Source of the series: L. Krueger 1912, as in Karney, Transverse Mercator with an accuracy of a few nanometers,
    J. Geodesy 85 (2011) 475, eq. 35; the coefficients here from memory.
    """
    n = f / (2.0 - f)
    radius = a / (1.0 + n) * (1.0 + n**2 / 4.0 + n**4 / 64.0)
    alpha = (
        n / 2.0 - 2.0 * n**2 / 3.0 + 5.0 * n**3 / 16.0 + 41.0 * n**4 / 180.0,
        13.0 * n**2 / 48.0 - 3.0 * n**3 / 5.0 + 557.0 * n**4 / 1440.0,
        61.0 * n**3 / 240.0 - 103.0 * n**4 / 140.0,
        49561.0 * n**4 / 161280.0,
    )
    eccentricity = math.sqrt(f * (2.0 - f))

    def on_plane(lon_deg, lat_deg):
        phi, lam = math.radians(lat_deg), math.radians(lon_deg)
        conformal = math.sinh(math.asinh(math.tan(phi)) - eccentricity * math.atanh(eccentricity * math.sin(phi)))
        xi, eta = math.atan2(conformal, math.cos(lam)), math.asinh(math.sin(lam) / math.hypot(conformal, math.cos(lam)))
        terms = list(enumerate(alpha, start=1))
        north = xi + sum(c * math.sin(2 * j * xi) * math.cosh(2 * j * eta) for j, c in terms)
        east = eta + sum(c * math.cos(2 * j * xi) * math.sinh(2 * j * eta) for j, c in terms)
        return radius * east, radius * north

    east, north = on_plane((lon - lon_0 + 180.0) % 360.0 - 180.0, lat)
    return easting + k * east, northing + k * (north - on_plane(0.0, lat_0)[1])


def test_method_9807_by_the_series_of_this_test():
    grid = transverse_mercator(
        *NOTE_PLACE, lon_0=-2.0, lat_0=49.0, k=NOTE_SCALE, easting=400000.0, northing=-100000.0, **AIRY
    )
    assert grid == pytest.approx(NOTE_GRID, abs=0.005)


def test_method_9807_through_proj():
    grid = {
        k: Proj(f"+proj=tmerc +lat_0=49 +lon_0=-2 +k={k} +x_0=400000 +y_0=-100000 +a={AIRY['a']} +rf=299.32496")
        for k in (NOTE_SCALE, GRID_SCALE)
    }
    assert grid[NOTE_SCALE](*NOTE_PLACE) == pytest.approx(NOTE_GRID, abs=0.005)
    assert grid[GRID_SCALE](*NOTE_PLACE) == pytest.approx(NOTE_GRID, abs=0.01)


@pytest.mark.parametrize(
    ("lon", "lat"), [(-28.5, 42.4), (179.98, -19.0), (-179.99, 10.0), (15.0, 70.0), (0.0, 0.0), (120.0, -65.0)]
)
def test_local_frame_is_method_9807_on_wgs84(lon, lat):
    """WGS84: a 6378137, 1/f 298.257223563 (NGA.STND.0036)."""
    frame = LocalFrame(lon=lon, lat=lat)
    for dlon, dlat in ((0.0, 0.0), (0.12, 0.07), (-0.2, 0.1), (0.3, -0.25), (-0.01, -0.0001)):
        expected = transverse_mercator(lon + dlon, lat + dlat, lon_0=lon, lat_0=lat, a=6378137.0, f=1.0 / 298.257223563)
        place = [((lon + dlon + 180.0) % 360.0 - 180.0, lat + dlat)]
        assert frame.to_xy(place)[0] == pytest.approx(expected, abs=1e-5)
        assert frame.to_lonlat([expected])[0] == pytest.approx(place[0], abs=1e-10)


# C. F. F. Karney's test lines for his geodesic algorithms, carried by geographiclib (MIT), test/test_geodesic.py:
# lat1 lon1 azi1 lat2 lon2 azi2 s12 and more, on WGS84.
KARNEY_LINES = [case[:7] for case in geographiclib_tests.GeodesicTest.testcases]


@pytest.mark.parametrize("line", KARNEY_LINES, ids=range(1, len(KARNEY_LINES) + 1))
def test_karneys_lines(line):
    lat_1, lon_1, azimuth_1, lat_2, lon_2, azimuth_2, length = line
    length_m, bearing = geodesic_leg(lon_1, lat_1, lon_2, lat_2)
    assert length_m == pytest.approx(length, abs=1e-6)
    assert bearing == pytest.approx(azimuth_1 % 360.0, abs=1e-9)
    back_m, back = geodesic_leg(lon_2, lat_2, lon_1, lat_1)
    assert back_m == pytest.approx(length, abs=1e-6)
    assert back == pytest.approx((azimuth_2 + 180.0) % 360.0, abs=1e-9)


def test_there_are_karneys_twenty_lines():
    assert len(KARNEY_LINES) == 20 and issubclass(geographiclib_tests.GeodesicTest, unittest.TestCase)


def test_short_legs_agree_with_geographiclib():
    from geographiclib.geodesic import Geodesic

    rng = np.random.default_rng(7)
    for _ in range(50):
        lon, lat = rng.uniform(-180.0, 180.0), rng.uniform(-80.0, 80.0)
        end = Geodesic.WGS84.Direct(lat, lon, rng.uniform(0.0, 360.0), rng.uniform(5.0, 5000.0))
        length_m, bearing = geodesic_leg(lon, lat, end["lon2"], end["lat2"])
        assert length_m == pytest.approx(end["s12"], abs=1e-6)
        # A millionth of a degree over 5 m is a tenth of a micrometre.
        assert (bearing - end["azi1"] + 180.0) % 360.0 - 180.0 == pytest.approx(0.0, abs=1e-6)
