"""Magnetic variation (declination) from the World Magnetic Model."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from functools import cache
from typing import Any

from .clock import UTC, aware
from .errors import OutsideModelError
from .vendored import ensure_vendored
from .words import tr

MODEL_NAME = "WMM2025"
FIRST_YEAR, END_YEAR = 2025.0, 2030.0  # NOAA NCEI and BGS, The US/UK World Magnetic Model for 2025-2030


@dataclass(frozen=True, kw_only=True)
class Variation:
    """Magnetic variation at a place and date: degrees, east positive; magnetic = true - east variation."""

    east_deg: float
    date: datetime
    model: str = MODEL_NAME

    def magnetic(self, true_deg: float) -> float:
        """Magnetic bearing 0-360 of a true one."""
        return (true_deg - self.east_deg) % 360.0

    def true(self, magnetic_deg: float) -> float:
        """True bearing 0-360 of a magnetic one."""
        return (magnetic_deg + self.east_deg) % 360.0


def variation_at(lon: float, lat: float, date: datetime, *, height_km: float = 0.0) -> Variation:
    """Variation at a place in degrees on an aware date; OutsideModelError outside 2025-2029.

    Source: WMM2025 through pygeomag; the model's own error is about 0.3-0.5 degree, more near the magnetic poles.
    """
    # A year far off would overflow on its way to UTC.
    year = decimal_year(aware(date)) if FIRST_YEAR - 1.0 <= date.year <= END_YEAR + 1.0 else float(date.year)
    if not FIRST_YEAR <= year < END_YEAR:
        raise OutsideModelError(
            asked=tr("Asked for the magnetic variation on {date:%Y-%m-%d}").format(date=date),
            allowed=tr("{model_name} is valid from 2025-01-01 to 2029-12-31").format(model_name=MODEL_NAME),
            remedy=tr("Plan within those years, or install a release of Tideleg with a newer model"),
        )
    result = _model().calculate(glat=lat, glon=lon, alt=height_km, time=year, allow_date_outside_lifespan=False)
    return Variation(east_deg=float(result.d), date=date)


def decimal_year(date: datetime) -> float:
    """The date as a year with its elapsed fraction, in UTC."""
    utc = date.astimezone(UTC)
    start = datetime(utc.year, 1, 1, tzinfo=UTC)
    length = datetime(utc.year + 1, 1, 1, tzinfo=UTC) - start
    return utc.year + (utc - start) / length


@cache
def _model() -> Any:
    ensure_vendored()
    from pygeomag import GeoMag

    return GeoMag(coefficients_file="wmm/WMM_2025.COF")
