"""The sun against NREL's published example, and rise, set and civil twilight against an almanac's own formulas."""

import math
from datetime import datetime, timedelta, timezone

import pytest
from astral import Observer
from astral import sun as astral_sun
from tideleg.core.clock import PlanClock
from tideleg.core.daylight import daylight_on

UTC = timezone.utc
ALMANAC = {"rise": -0.8333, "civil": -6.0}  # 34' of refraction and 16' of radius; civil twilight by its definition
# The library refracts the sun by its own curve (NOAA's solar calculator): 31' at the horizon, 3' at -6 degrees.
LIBRARY = {"rise": -0.789, "civil": -6.0}

# Reda and Andreas, Solar Position Algorithm, NREL/TP-560-34302, table A5.1: 2003-10-17 12:30:30 at UTC-7, 39.742476 N,
# 105.1786 W, 1830 m, 820 mbar, 11 C: topocentric zenith 50.11162, azimuth 194.34024.
SPA_MOMENT = datetime(2003, 10, 17, 12, 30, 30, tzinfo=timezone(timedelta(hours=-7)))
SPA_PLACE = {"lon": -105.1786, "lat": 39.742476}
SPA_ZENITH, SPA_AZIMUTH = 50.11162, 194.34024


def sun_of_almanac(moment, lon, lat):
    """Altitude without refraction and azimuth of the sun's centre, degrees.

    J. Meeus, Astronomical Algorithms, 2nd ed.: low accuracy sun of ch. 25 (0.01 degree), sidereal time eq. 12.4,
    altitude and azimuth eqs. 13.5 and 13.6; formulas from memory. UT stands for TT: 70 s move the sun 0.0008 degree.
    """
    day = (moment - datetime(2000, 1, 1, 12, tzinfo=UTC)).total_seconds() / 86400.0
    t = day / 36525.0
    mean_longitude = 280.46646 + 36000.76983 * t + 0.0003032 * t * t
    anomaly = math.radians(357.52911 + 35999.05029 * t - 0.0001537 * t * t)
    centre = (
        (1.914602 - 0.004817 * t) * math.sin(anomaly)
        + 0.019993 * math.sin(2 * anomaly)
        + 0.000289 * math.sin(3 * anomaly)
    )
    node = math.radians(125.04 - 1934.136 * t)
    longitude = math.radians(mean_longitude + centre - 0.00569 - 0.00478 * math.sin(node))
    tilt = math.radians(23.4392911 - 0.0130042 * t + 0.00256 * math.cos(node))
    right_ascension = math.atan2(math.cos(tilt) * math.sin(longitude), math.cos(longitude))
    declination = math.asin(math.sin(tilt) * math.sin(longitude))
    sidereal = math.radians(280.46061837 + 360.98564736629 * day + 0.000387933 * t * t)
    hour = sidereal + math.radians(lon) - right_ascension
    phi = math.radians(lat)
    altitude = math.asin(math.sin(phi) * math.sin(declination) + math.cos(phi) * math.cos(declination) * math.cos(hour))
    azimuth = math.atan2(math.sin(hour), math.cos(hour) * math.sin(phi) - math.tan(declination) * math.cos(phi))
    return math.degrees(altitude), (math.degrees(azimuth) + 180.0) % 360.0


def almanac_crossing(low, high, lon, lat, altitude_deg):
    """Moment between two at which the sun crosses an altitude, by bisection."""
    rises = sun_of_almanac(high, lon, lat)[0] > sun_of_almanac(low, lon, lat)[0]
    assert (sun_of_almanac(low, lon, lat)[0] > altitude_deg) != (sun_of_almanac(high, lon, lat)[0] > altitude_deg)
    for _ in range(40):
        middle = low + (high - low) / 2
        above = sun_of_almanac(middle, lon, lat)[0] > altitude_deg
        low, high = (low, middle) if above == rises else (middle, high)
    return low


def test_spa_example_by_the_almanac_formulas_of_this_test():
    """Their 0.01 degree. SPA's zenith holds refraction at 820 mbar and 11 C: 0.0163 degree (Bennett, from memory)."""
    altitude, azimuth = sun_of_almanac(SPA_MOMENT, **SPA_PLACE)
    assert 90.0 - altitude - 0.0163 == pytest.approx(SPA_ZENITH, abs=0.01)
    assert azimuth == pytest.approx(SPA_AZIMUTH, abs=0.02)


def test_spa_example_by_the_library_that_computes_daylight():
    """The library's refraction is that of sea level, 0.019 degree at this height of the sun."""
    observer = Observer(latitude=SPA_PLACE["lat"], longitude=SPA_PLACE["lon"])
    assert astral_sun.zenith(observer, SPA_MOMENT) == pytest.approx(SPA_ZENITH, abs=0.01)
    assert astral_sun.azimuth(observer, SPA_MOMENT) == pytest.approx(SPA_AZIMUTH, abs=0.02)


PLACES = [
    (-28.5, 42.4, "Atlantic/Azores"),
    (179.9, -19.0, "Pacific/Auckland"),
    (-179.9, -19.0, "Pacific/Auckland"),
    (-171.7, -13.8, "Pacific/Apia"),
    (0.0, 0.0, "UTC"),
    (18.0, -34.0, "Africa/Johannesburg"),
    (10.0, 60.0, "Europe/Oslo"),
    (-150.0, 60.0, "Pacific/Kiritimati"),
]


def differences_s(lon, lat, zone, month, altitudes):
    """Seconds between daylight_on and the almanac formulas, and the daylight itself."""
    clock = PlanClock(start=datetime(2027, 1, 1, tzinfo=UTC), zone_name=zone)
    midday = datetime(2027, month, 21, 12, tzinfo=UTC) - timedelta(hours=lon / 15.0)
    daylight = daylight_on(lon, lat, midday, clock)
    night_before, night_after = midday - timedelta(hours=12), midday + timedelta(hours=12)
    expected = {
        "civil_dawn": almanac_crossing(night_before, midday, lon, lat, altitudes["civil"]),
        "sunrise": almanac_crossing(night_before, midday, lon, lat, altitudes["rise"]),
        "sunset": almanac_crossing(midday, night_after, lon, lat, altitudes["rise"]),
        "civil_dusk": almanac_crossing(midday, night_after, lon, lat, altitudes["civil"]),
    }
    assert all(getattr(daylight, name).tzinfo.key == zone for name in expected)
    return {name: abs((getattr(daylight, name) - moment).total_seconds()) for name, moment in expected.items()}


@pytest.mark.parametrize(("lon", "lat", "zone"), PLACES)
@pytest.mark.parametrize("month", [1, 3, 6, 9, 12])
def test_daylight_is_within_15_s_of_independent_formulas_at_the_same_height_of_sun(lon, lat, zone, month):
    assert max(differences_s(lon, lat, zone, month, LIBRARY).values()) <= 15.0


@pytest.mark.parametrize(("lon", "lat", "zone"), PLACES)
@pytest.mark.parametrize("month", [1, 3, 6, 9, 12])
def test_daylight_is_within_half_a_minute_of_the_almanacs_definitions(lon, lat, zone, month):
    """That is up to 45 degrees; at 60 degrees, where the sun creeps along the horizon, two and a half minutes."""
    allowed_s = 30.0 if abs(lat) <= 45.0 else 150.0
    assert max(differences_s(lon, lat, zone, month, ALMANAC).values()) <= allowed_s
