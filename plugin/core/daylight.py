"""Sunrise, sunset and civil dusk at a place."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any

from .clock import UTC, PlanClock, aware
from .vendored import ensure_vendored

CIVIL_DEG = 6.0 - 0.055  # astral counts refraction in, 0.055 degree there; civil twilight is the sun's true height


@dataclass(frozen=True, kw_only=True)
class Daylight:
    """Daylight of one local day. A time is None where the sun does not cross that height (high latitudes).

    ``always_light`` says that the sun stays above the civil-twilight height all day: there is no dusk to mind.
    """

    civil_dawn: datetime | None
    sunrise: datetime | None
    sunset: datetime | None
    civil_dusk: datetime | None
    always_light: bool = False

    def is_dark(self, moment: datetime) -> bool:
        """Whether the moment is before civil dawn or after civil dusk."""
        aware(moment)
        if self.always_light:
            return False
        if self.civil_dusk is None or self.civil_dawn is None:
            return True
        return not self.civil_dawn <= moment <= self.civil_dusk


def daylight_on(lon: float, lat: float, moment: datetime, clock: PlanClock) -> Daylight:
    """Daylight of the day, by the sun at the place, that holds the moment; times in the plan's zone.

    The day is the 24 hours around local solar noon nearest the moment, so the zone's name cannot spoil it.
    Source: astral 3.2 (NOAA solar equations), within about 15 s of independent formulas; civil dusk: the sun's
    true centre 6 degrees below the horizon.
    """
    ensure_vendored()
    from astral import Observer
    from astral.sun import elevation, noon

    observer = Observer(latitude=lat, longitude=lon, elevation=0.0)
    noon_of = {day: noon(observer, date=day, tzinfo=UTC) for day in _days_around(moment)}
    midday = min(noon_of.values(), key=lambda candidate: abs(candidate - moment))
    edges = {
        "civil_dawn": _crossing("dawn", observer, midday, clock),
        "sunrise": _crossing("sunrise", observer, midday, clock),
        "sunset": _crossing("sunset", observer, midday, clock),
        "civil_dusk": _crossing("dusk", observer, midday, clock),
    }
    edges |= _mirrored(edges["civil_dawn"], edges["civil_dusk"], midday, clock)
    # Where the sun does not cross that height at all, it stays on the side on which it is on the mean of the day; noon
    # or midnight alone may lie within the formulas' error of it.
    mean_deg = (elevation(observer, midday) + elevation(observer, midday + timedelta(hours=12))) / 2.0
    light_all_day = edges["civil_dusk"] is None and mean_deg > -6.0
    return Daylight(**edges, always_light=light_all_day)


def _mirrored(dawn: datetime | None, dusk: datetime | None, midday: datetime, clock: PlanClock) -> dict:
    """Civil dawn and dusk, the one that is missing taken as far from noon as the other.

    Beside the seasons without dusk, or without day, one of them falls on the neighbouring day: by minutes, so that the
    mirrored time is within about half an hour.
    """
    if dusk is None and dawn is not None:
        dusk = (midday + (midday - dawn)).astimezone(clock.zone)
    elif dawn is None and dusk is not None:
        dawn = (midday - (dusk - midday)).astimezone(clock.zone)
    return {"civil_dawn": dawn, "civil_dusk": dusk}


def _days_around(moment: datetime) -> list[date]:
    day = moment.astimezone(UTC).date()
    return [day + timedelta(days=shift) for shift in (-1, 0, 1)]


def _crossing(kind: str, observer: Any, midday: datetime, clock: PlanClock) -> datetime | None:
    """The crossing of that kind within half a day of midday, in the plan's zone; None where the sun makes none."""
    from astral import sun

    found, asked = [], {"depression": CIVIL_DEG} if kind in ("dawn", "dusk") else {}
    for day in _days_around(midday):
        try:
            moment = getattr(sun, kind)(observer, date=day, tzinfo=UTC, **asked)
        except ValueError:
            continue
        if abs(moment - midday) <= timedelta(hours=12):
            found.append(moment)
    if not found:
        return None
    nearest = min(found, key=lambda moment: abs(moment - midday))
    return nearest.astimezone(clock.zone)
