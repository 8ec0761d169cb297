"""Variation against the published test values of the World Magnetic Model."""

from datetime import datetime, timedelta, timezone

import pytest
from tideleg.core.errors import NaiveTimeError, OutsideModelError
from tideleg.core.magnetism import Variation, decimal_year, variation_at

UTC = timezone.utc
NEW_YEAR_2025, MIDDLE_OF_2027 = datetime(2025, 1, 1, tzinfo=UTC), datetime(2027, 7, 2, 12, tzinfo=UTC)

# NOAA NCEI and BGS, WMM2025 test values: date, height km, lat, lon, declination in degrees, printed to a hundredth.
TEST_VALUES = [
    (2025.0, 0.0, 80.0, 0.0, 1.28),
    (2025.0, 0.0, 0.0, 120.0, -0.16),
    (2025.0, 0.0, -80.0, 240.0, 68.78),
    (2025.0, 100.0, 80.0, 0.0, 0.85),
    (2025.0, 100.0, 0.0, 120.0, -0.15),
    (2025.0, 100.0, -80.0, 240.0, 68.21),
    (2027.5, 0.0, 80.0, 0.0, 2.59),
    (2027.5, 0.0, 0.0, 120.0, -0.24),
    (2027.5, 0.0, -80.0, 240.0, 68.49),
    (2027.5, 100.0, 80.0, 0.0, 2.16),
    (2027.5, 100.0, 0.0, 120.0, -0.23),
    (2027.5, 100.0, -80.0, 240.0, 67.93),
]


@pytest.mark.parametrize(("year", "height_km", "lat", "lon", "east_deg"), TEST_VALUES)
def test_wmm2025_test_values(year, height_km, lat, lon, east_deg):
    date = {2025.0: NEW_YEAR_2025, 2027.5: MIDDLE_OF_2027}[year]
    assert decimal_year(date) == year
    variation = variation_at(lon if lon <= 180.0 else lon - 360.0, lat, date, height_km=height_km)
    assert variation.east_deg == pytest.approx(east_deg, abs=0.005)
    assert variation.model == "WMM2025"


@pytest.mark.parametrize(
    "date",
    [
        datetime(2024, 12, 31, 23, 59, 59, tzinfo=UTC),
        datetime(2030, 1, 1, tzinfo=UTC),
        datetime(2015, 6, 1, tzinfo=UTC),
    ],
)
def test_dates_outside_the_model_are_refused(date):
    with pytest.raises(OutsideModelError, match="2025-01-01 to 2029-12-31"):
        variation_at(0.0, 50.0, date)


def test_first_and_last_moment_of_the_model():
    first = variation_at(-28.5, 42.4, NEW_YEAR_2025).east_deg
    last = variation_at(-28.5, 42.4, datetime(2029, 12, 31, 23, 59, 59, tzinfo=UTC)).east_deg
    assert 0.1 < abs(last - first) < 3.0, "five years of secular change"


def test_edge_of_the_model_is_a_moment_and_not_a_clock_reading():
    """2030 has begun in a zone nine hours ahead while it is still 2029 in UTC."""
    ahead = timezone(timedelta(hours=9))
    assert variation_at(0.0, 50.0, datetime(2030, 1, 1, 8, tzinfo=ahead)).model == "WMM2025"
    with pytest.raises(OutsideModelError):
        variation_at(0.0, 50.0, datetime(2030, 1, 1, 10, tzinfo=ahead))


def test_naive_date_is_refused():
    with pytest.raises(NaiveTimeError):
        variation_at(0.0, 50.0, datetime(2027, 6, 5, 10))  # noqa: DTZ001


def test_magnetic_is_true_less_east_variation():
    """099 T with 4 W is 103 M; with 4 E it is 095 M."""
    west, east = (Variation(east_deg=deg, date=NEW_YEAR_2025) for deg in (-4.0, 4.0))
    assert west.magnetic(99.0) == 103.0 and east.magnetic(99.0) == 95.0
    assert west.magnetic(358.0) == 2.0 and east.magnetic(1.0) == 357.0
    assert west.true(west.magnetic(12.5)) == 12.5


def test_both_sides_of_the_date_line_have_one_variation():
    left, right = (variation_at(lon, -19.0, MIDDLE_OF_2027).east_deg for lon in (180.0, -180.0))
    assert left == pytest.approx(right, abs=1e-9)
