"""One day of a route or a place, midnight to midnight: tide, stream, departures and daylight, ready to be drawn."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

import numpy as np

from ..clock import PlanClock, aware
from ..daylight import Daylight
from ..errors import SwimPlanError
from ..quantities import SECONDS_PER_HOUR
from .windows import DepartureWindow

FEASIBLE = "feasible"
ENDS_DARK = "ends_dark"  # leaves by day and would be home after dusk; "dark" is left in the night
STATES = (FEASIBLE, "stream", "dark", ENDS_DARK, "hours", "range", "land", "closed", "ferry", "depth", "unknown")
LONGEST_SPAN_H = 48.0  # hours are too narrow to read beyond
ALONE_LASTS_S = 300.0  # what a departure stands for where it is the only one


@dataclass(frozen=True, kw_only=True)
class TideMoment:
    """A high or low water: ``kind`` HW or LW; its height above the strip's datum in metres, None where not known."""

    kind: str
    moment: datetime
    height_m: float | None = None

    def __post_init__(self) -> None:
        aware(self.moment, f"the {self.kind}")
        if self.kind not in ("HW", "LW"):
            raise SwimPlanError(asked=f"Got a tide of the kind {self.kind!r}", allowed="The kinds are HW and LW")
        if self.height_m is not None and not np.isfinite(self.height_m):
            raise SwimPlanError(
                asked=f"The {self.kind} of {self.moment.isoformat()} has the height {self.height_m}",
                allowed="A height is a number; one that is not known is None",
            )


@dataclass(frozen=True, kw_only=True, eq=False)
class DayStrip:
    """What a route's day looks like; all ``_s`` are seconds from ``start``, so that clocks may change on the day.

    ``start`` and ``end`` are aware moments, usually a midnight of the zone and the next. ``tide_times_s`` (n,) with
    ``tide_heights_m`` (n,) above ``datum``; ``stream_times_s`` (m,) with the weakest and the strongest rate on the
    route, ``stream_least_kn`` and ``stream_most_kn`` (m,): NaN where not known, both together. ``pace_kn`` is the speed
    the swimmer makes good. ``departures_s`` (k,) with ``states``, one of ``STATES`` each: feasible, or the limit that
    stops it. ``windows`` are those that touch the day. ``daylight`` holds the days by the sun that touch it, in order
    (``core.sun_days``); empty where not known. ``planned`` is a departure the user has chosen and ``planned_home`` the
    end of that swim. ``place`` names where the stream is, where it is that of one place and not of a route. All arrays
    are kept as read-only copies; SwimPlanError says what does not fit.
    """

    route: str
    zone_name: str
    start: datetime
    end: datetime
    datum: str = ""
    tide_times_s: np.ndarray = ()
    tide_heights_m: np.ndarray = ()
    tides: tuple[TideMoment, ...] = ()
    stream_times_s: np.ndarray = ()
    stream_least_kn: np.ndarray = ()
    stream_most_kn: np.ndarray = ()
    pace_kn: float | None = None
    departures_s: np.ndarray = ()
    states: tuple[str, ...] = ()
    windows: tuple[DepartureWindow, ...] = ()
    daylight: tuple[Daylight, ...] = ()
    planned: datetime | None = None
    planned_home: datetime | None = None
    now: datetime | None = None
    place: str = ""

    def __post_init__(self) -> None:
        self._check_span()
        self._keep("tide_times_s", "tide_heights_m")
        self._keep("stream_times_s", "stream_least_kn", "stream_most_kn")
        self._keep("departures_s")
        self._check_rates()
        self._check_departures()
        for name in ("planned", "planned_home", "now"):
            if getattr(self, name) is not None:
                aware(getattr(self, name), name)
        if self.planned_home is not None and (self.planned is None or self.seconds(self.planned_home) < self.planned_s):
            raise self._wrong("is home at a planned time", "A planned swim ends after a planned departure")

    @property
    def clock(self) -> PlanClock:
        """Seconds from the day's start to and from moments in its zone."""
        return PlanClock(start=self.start, zone_name=self.zone_name, end=self.end)

    @property
    def length_s(self) -> float:
        """Seconds from start to end: 23 or 25 hours on a day on which clocks change."""
        return self.seconds(self.end)

    @property
    def planned_s(self) -> float:
        """The planned departure, NaN where there is none."""
        return float("nan") if self.planned is None else self.seconds(self.planned)

    @property
    def greatest_kn(self) -> float:
        """The greatest known rate of the day, the swimmer's own speed among them; 0 where nothing is known."""
        known = self.stream_most_kn[np.isfinite(self.stream_most_kn)]
        return max(float(known.max()) if len(known) else 0.0, self.pace_kn or 0.0)

    def seconds(self, moment: datetime) -> float:
        """Seconds from the start to an aware moment."""
        return self.clock.seconds(moment)

    def moment(self, seconds: float) -> datetime:
        """The moment so many seconds after the start, in the day's zone; SwimPlanError where they are not finite."""
        found = self.clock.moment(seconds)
        if found is None:
            raise self._wrong(f"was asked for the moment after {seconds} s", "Seconds are a finite number")
        return found

    def state_runs(self) -> tuple[tuple[str, float, float], ...]:
        """(state, from, to) in seconds of neighbouring departures of one state, in order and without overlap.

        A feasible run ends with its own first and last departure; what stops the others reaches up to it, or half way
        to another limit. Nothing is said of times farther from a departure than the usual step between them.
        """
        times, states = self.departures_s, self.states
        if not len(times):
            return ()
        step = float(np.median(np.diff(times))) if len(times) > 1 else ALONE_LASTS_S
        apart = [a != b or t - s > 1.5 * step for a, b, s, t in zip(states, states[1:], times, times[1:])]
        starts = [0, *(row + 1 for row, is_apart in enumerate(apart) if is_apart)]
        ends = [*(row - 1 for row in starts[1:]), len(times) - 1]
        return tuple(
            (states[a], self._edge(a, -1, step), self._edge(b, 1, step)) for a, b in zip(starts, ends, strict=True)
        )

    def _edge(self, row: int, way: int, step: float) -> float:
        """Where the run that ends with a departure ends, looking one way."""
        time, beside = float(self.departures_s[row]), row + way
        if self.states[row] == FEASIBLE:
            return time
        if 0 <= beside < len(self.states) and abs(self.departures_s[beside] - time) <= 1.5 * step:
            share = 1.0 if self.states[beside] == FEASIBLE else 0.5
            return time + share * (float(self.departures_s[beside]) - time)
        return min(max(time + way * step / 2.0, 0.0), self.length_s)

    def _check_span(self) -> None:
        self.clock  # noqa: B018  refuses a naive start and a zone that does not exist
        aware(self.end, "the day's end")
        longest = timedelta(hours=LONGEST_SPAN_H).total_seconds()
        if not 0.0 < self.length_s <= longest:
            raise self._wrong(
                f"lasts {self.length_s / SECONDS_PER_HOUR:.4g} h",
                f"It ends after its start, within {LONGEST_SPAN_H:g} h",
            )

    def _keep(self, times: str, *values: str) -> None:
        """Keep read-only copies of times and of what was known at them."""
        for name in (times, *values):
            array = np.array(getattr(self, name), dtype=float)
            array.setflags(write=False)
            object.__setattr__(self, name, array)
            if array.ndim != 1 or len(array) != len(getattr(self, times)):
                raise self._wrong(
                    f"has {name} of the shape {array.shape}", f"It is that of {times}, {getattr(self, times).shape}"
                )
            if np.isinf(array).any():
                raise self._wrong(f"has an infinite value in {name}", "What is not known is NaN")
        if np.isnan(getattr(self, times)).any() or np.any(np.diff(getattr(self, times)) <= 0.0):
            raise self._wrong(f"has {times} that are not known or do not rise", "Times rise, each one once")

    def _check_rates(self) -> None:
        least, most = self.stream_least_kn, self.stream_most_kn
        if np.any(np.isnan(least) != np.isnan(most)):
            raise self._wrong("has a weakest rate without a strongest, or the other way", "Both are NaN, or neither")
        with np.errstate(invalid="ignore"):
            if np.any((least < 0.0) | (least > most)):
                raise self._wrong(
                    "has a weakest rate below 0 or above the strongest", "0 is at most the weakest, it the strongest"
                )
        if self.pace_kn is not None and not 0.0 < self.pace_kn < float("inf"):
            raise self._wrong(f"has a pace of {self.pace_kn} kn", "A pace is above 0; one that is not known is None")

    def _check_departures(self) -> None:
        if len(self.states) != len(self.departures_s):
            raise self._wrong(
                f"has {len(self.states)} states for {len(self.departures_s)} departures", "Each departure has one"
            )
        strange = sorted(set(self.states) - set(STATES))
        if strange:
            raise self._wrong(f"has the state {strange[0]!r}", f"The states are {', '.join(STATES)}")
        for window in self.windows:
            if not self.seconds(window.first) <= self.seconds(window.best) <= self.seconds(window.last):
                raise self._wrong(
                    f"has a window from {window.first.isoformat()} whose best departure is outside it",
                    "The best departure is not before the first nor after the last",
                )

    def _wrong(self, what: str, allowed: str) -> SwimPlanError:
        return SwimPlanError(
            asked=f"The day {self.start:%Y-%m-%d} of route {self.route!r} {what}",
            allowed=allowed,
            remedy="Mend what computed it",
        )
