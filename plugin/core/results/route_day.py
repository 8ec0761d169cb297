"""One day of a route as it is read at the cursor: tide, stream, daylight, and what a departure at that moment meets."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

import numpy as np

from ..errors import SwimPlanError
from ..sun_days import night_spans, sun_down_spans
from .day_strip import FEASIBLE, DayStrip, TideMoment

LIGHT, TWILIGHT, DARK = "light", "twilight", "dark"


@dataclass(frozen=True, kw_only=True)
class WeakestStream:
    """A moment at which the strongest stream on the route is least: slack where the rate is small."""

    moment: datetime
    most_kn: float


@dataclass(frozen=True, kw_only=True)
class DayReading:
    """What is known of one moment of a day; None stands for what is not known.

    ``rises`` says whether the tide does. ``set_deg`` is the mean set on the route, TOWARDS, true; None besides where
    ``sets_differ`` along the route or where there is next to no stream. ``light`` is light, twilight or dark. ``state``
    is that of the departure looked at nearest to the moment, ``why`` the words where it is not feasible, ``home`` when
    its swim ends.
    """

    moment: datetime
    tide_m: float | None
    rises: bool | None
    least_kn: float | None
    most_kn: float | None
    set_deg: float | None
    sets_differ: bool
    light: str | None
    state: str | None
    why: str
    home: datetime | None


@dataclass(frozen=True, kw_only=True, eq=False)
class RouteDay:
    """A day's strip and what stands behind it.

    ``east_kn`` and ``north_kn`` (m,) are the mean stream on the route at ``strip.stream_times_s``, NaN where not known;
    ``sets_differ`` (m,) bool. ``reasons`` and ``homes_s`` (k,) belong to ``strip.departures_s``: why a departure is
    stopped, empty where nothing stops it, and when its swim ends, NaN where it does not. ``tides`` go on past the day's
    end; ``weakest`` are the least streams of the day.
    """

    strip: DayStrip
    east_kn: np.ndarray
    north_kn: np.ndarray
    sets_differ: np.ndarray
    reasons: tuple[str, ...]
    homes_s: np.ndarray
    tides: tuple[TideMoment, ...]
    weakest: tuple[WeakestStream, ...]

    def __post_init__(self) -> None:
        strip = self.strip
        counts = {
            "east_kn": len(strip.stream_times_s),
            "north_kn": len(strip.stream_times_s),
            "sets_differ": len(strip.stream_times_s),
            "reasons": len(strip.departures_s),
            "homes_s": len(strip.departures_s),
        }
        for name, count in counts.items():
            if len(getattr(self, name)) != count:
                raise SwimPlanError(
                    asked=f"Got {len(getattr(self, name))} values of {name}",
                    allowed=f"The day has {count}",
                    remedy="Mend what computed it",
                )

    def read(self, moment: datetime) -> DayReading:
        """What is known of an aware moment of the day."""
        strip = self.strip
        at_s = strip.seconds(moment)
        least, most, east, north = (
            _between(at_s, strip.stream_times_s, values)
            for values in (strip.stream_least_kn, strip.stream_most_kn, self.east_kn, self.north_kn)
        )
        differ = least is not None and bool(self.sets_differ[np.abs(strip.stream_times_s - at_s).argmin()])
        row = self._row(at_s)
        return DayReading(
            moment=moment.astimezone(strip.clock.zone),
            tide_m=_between(at_s, strip.tide_times_s, strip.tide_heights_m),
            rises=self._rises(at_s),
            least_kn=least,
            most_kn=most,
            set_deg=None if differ or east is None else _set_deg(east, north),
            sets_differ=differ,
            light=self._light(at_s),
            state=None if row is None else strip.states[row],
            why="" if row is None else self.reasons[row],
            home=None if row is None else strip.clock.moment(self.homes_s[row]),
        )

    def home_of(self, depart: datetime) -> datetime | None:
        """When the swim of a departure is home; None for one that was not looked at to the minute, or never is."""
        row = self._row(self.strip.seconds(depart))
        if row is None or abs(self.strip.departures_s[row] - self.strip.seconds(depart)) > 1.0:
            return None
        return self.strip.clock.moment(self.homes_s[row])

    def feasible(self) -> tuple[datetime, ...]:
        """The departures that nothing stops."""
        strip = self.strip
        return tuple(strip.moment(at) for at, state in zip(strip.departures_s, strip.states) if state == FEASIBLE)

    def _row(self, at_s: float) -> int | None:
        """The departure looked at nearest to a time, None where none is near."""
        times = self.strip.departures_s
        if not len(times):
            return None
        row = int(np.abs(times - at_s).argmin())
        step = float(np.median(np.diff(times))) if len(times) > 1 else 0.0
        return row if abs(times[row] - at_s) <= max(step, 1.0) else None

    def _rises(self, at_s: float) -> bool | None:
        """Whether the tide rises, by the heights on either side."""
        times = self.strip.tide_times_s
        if not len(times):
            return None
        row = int(np.clip(np.searchsorted(times, at_s, side="right"), 1, len(times) - 1))
        change = self.strip.tide_heights_m[row] - self.strip.tide_heights_m[row - 1]
        return bool(change > 0.0) if np.isfinite(change) and change != 0.0 else None

    def _light(self, at_s: float) -> str | None:
        strip = self.strip
        if not strip.daylight:
            return None
        if any(low <= at_s < high for low, high in night_spans(strip.daylight, strip.clock)):
            return DARK
        down = any(low <= at_s < high for low, high in sun_down_spans(strip.daylight, strip.clock))
        return TWILIGHT if down else LIGHT


LEAST_TOLD_KN = 0.05  # a weaker stream is written as 0.0 and has no set worth telling


def _set_deg(east: float, north: float) -> float | None:
    if np.hypot(east, north) < LEAST_TOLD_KN:
        return None
    return float(np.degrees(np.arctan2(east, north)) % 360.0)


def _between(at_s: float, times_s: np.ndarray, values: np.ndarray) -> float | None:
    """The value between two known ones; None beyond the ends, and where either is not known."""
    if not len(times_s) or not times_s[0] <= at_s <= times_s[-1]:
        return None
    value = float(np.interp(at_s, times_s, values))
    return value if np.isfinite(value) else None
