"""The turn back of a swim: leaving times of every stop, ways home if late, and the points of no return."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime

import numpy as np

from ...magnetism import Variation, variation_at
from ...results.flag import Flag
from ...results.swim_plan import SwimPlan
from ...results.turn_back import HardStop, LeavingBand, StopTurnBack, TurnBack, WayHome
from ...words import tr
from ..request import SwimRequest
from ..windows.chart_limits import ChartLimits
from .hard_stops import hard_stops_of
from .homeward import Days, Homeward, swim_home
from .landings import Landing, WaysHome, landings_of
from .late_leaving import flag_of_late, late_on_a_bad_day
from .leaving import Leaving
from .no_return import PointsOfNoReturn

MINUTE_S = 60.0
LONGEST_S = 12 * 3600.0
LATE_EVERY_S, LATE_FOR_S = 600.0, 4 * 3600.0
ELSE_WITHIN_S = (
    1800.0  # another exit that opens later than this is no way out for whoever is late; common practice, no source
)
DEPARTURES_EVERY_S, DEPARTURE_ROWS = 900.0, 8


def turn_back(
    request: SwimRequest,
    plan: SwimPlan,
    *,
    progress: Callable[[float], None] | None = None,
    is_cancelled: Callable[[], bool] = bool,
) -> TurnBack:
    """When each stop of a planned swim must be left for the best of all exits, on the day expected and on bad days.

    A minute is safe where some exit is reached with t + k T + fixed before every hard stop (settings reserve_factor,
    reserve_min); on the bad days with a tenth less pace and every source of stream stronger by its doubt and turning
    early, on time or late, whichever takes longest. Common practice, no source. StoppedError when stopped.
    """
    return _Task(request, plan, is_cancelled).found(progress)


def turn_back_alone(
    request: SwimRequest, plan: SwimPlan, *, is_cancelled: Callable[[], bool] = bool
) -> dict[str, TurnBack]:
    """The turn back of each swimmer of a group alone, by name, from the places and times of the group's plan.

    Empty for one who swims alone anyway.
    """
    members = request.swimmer.members
    return {one.name: turn_back(replace(request, swimmer=one), plan, is_cancelled=is_cancelled) for one in members}


def with_turn_back(plan: SwimPlan, found: TurnBack) -> SwimPlan:
    """The plan with the stops' latest leaving times and exits filled in, and the flags and warnings of them."""
    by_number = {stop.number: stop for stop in found.stops}
    stops = []
    for number, stop in enumerate(plan.stops):
        turn = by_number.get(number)
        if turn is not None:
            latest = {"latest_leave": turn.latest_leave, "latest_leave_pessimistic": turn.latest_leave_pessimistic}
            stop = replace(stop, exit=turn.exit, **latest)
        stops.append(stop)
    # First among their like: whoever leaves too late has nothing graver to mind.
    flags, warnings = found.flags + plan.flags, plan.warnings + found.warnings
    return replace(plan, stops=tuple(stops), flags=flags, warnings=warnings, turn_back=found)


class _Task:
    def __init__(self, request: SwimRequest, plan: SwimPlan, is_cancelled: Callable[[], bool]) -> None:
        self.request, self.plan = request, plan
        self.warnings: list[str] = []
        self.flags: list[Flag] = []
        clock = request.clock
        arrive = float("nan") if plan.arrive is None else clock.seconds(plan.arrive)
        self.stops: tuple[HardStop, ...] = hard_stops_of(request, arrive)
        self.last_s = min(clock.seconds(stop.moment) for stop in self.stops)
        self.landings: tuple[Landing, ...] = landings_of(request, self.warnings)
        self.days = Days(request=request, until_s=self.last_s, is_cancelled=is_cancelled)
        depart_s = clock.seconds(request.depart)
        until_s = max(depart_s, self.last_s)
        self.chart = ChartLimits(request, np.array([depart_s, until_s + LONGEST_S]))
        self.ways = WaysHome(request, self.landings, depart_s, until_s, is_cancelled)
        self.variation: Variation = variation_at(request.stops[0].lon, request.stops[0].lat, request.depart)

    def found(self, progress: Callable[[float], None] | None) -> TurnBack:
        """All of it."""
        settings = self.request.settings
        points = PointsOfNoReturn(self.days, self.plan, self.stops, self.ways, self.chart)
        stops, no_return = [], []
        work = [(self._stop, number) for number in range(1, len(self.plan.stops) - 1)]
        work += [(points.of_leg, number) for number in range(len(self.plan.legs) - 1)]
        for done, (look, number) in enumerate(work, start=1):
            found = look(number)
            if look == points.of_leg:
                no_return += found
            else:
                stops.append(found)
            if progress is not None:
                progress(done / len(work))
        self.warnings.append(tr("Turn back: its times are those of the stops between the ends of the route."))
        return TurnBack(
            exits=tuple(landing.name for landing in self.landings),
            reserve_factor=settings.reserve_factor,
            reserve_min=settings.reserve_min,
            hard_stops=self.stops,
            stops=tuple(stop for stop in stops if stop is not None),
            no_return=tuple(no_return),
            flags=tuple(self.flags),
            warnings=tuple(self.warnings),
        )

    def _home(self, place_m: np.ndarray, landing: int, leave_s: np.ndarray) -> Homeward:
        """Swims to a landing, at every minute by the way that is the sooner home."""
        ways = self.ways.to_landing(place_m, landing) or [None]
        homes = [swim_home(self.days, self.chart, way, leave_s) for way in ways]
        return homes[0] if len(homes) == 1 else homes[0].or_by(homes[1])

    def _leaving(self, place_m: np.ndarray, leave_s: np.ndarray) -> Leaving:
        homes = [self._home(place_m, number, leave_s) for number in range(len(self.landings))]
        about = {"request": self.request, "landings": self.landings, "stops": self.stops}
        return Leaving(leave_s=leave_s, homes=tuple(homes), **about)

    def _stop(self, number: int) -> StopTurnBack | None:
        """The turn back of one stop, None where the swim does not get there or does not stop."""
        stop, clock = self.plan.stops[number], self.request.clock
        if stop.arrive is None or stop.leave is None:
            return None
        arrive_s, leave_s = clock.seconds(stop.arrive), clock.seconds(stop.leave)
        first = np.ceil(clock.seconds(stop.arrive) / MINUTE_S + self._to_minute() - 1e-6) - self._to_minute()
        count = int(max(np.floor((min(self.last_s, arrive_s + LONGEST_S) / MINUTE_S) - first), 0.0)) + 1
        minutes = MINUTE_S * (first + np.arange(max(count, 2)))
        leaving = self._leaving(self.request.stops_m[number], minutes)
        arrive, worst = leaving.arrive_s, leaving.worst_s
        bands, bad_bands = leaving.bands(arrive, bad=False), leaving.bands(worst, bad=True)
        latest, latest_bad = (_counts(found, clock.moment(minutes[0]), stop.leave) for found in (bands, bad_bands))
        found = StopTurnBack(
            name=stop.name,
            number=number,
            lon=stop.lon,
            lat=stop.lat,
            arrive=stop.arrive,
            leave=stop.leave,
            bands=bands,
            bands_pessimistic=bad_bands,
            latest_leave=None if latest is None else latest.last,
            latest_leave_pessimistic=None if latest_bad is None else latest_bad.last,
            exit=None if latest is None else latest.exit,
            planned_exit=self.landings[0].name,
            **self._planned_exit(leaving, arrive, worst, leave_s),
            if_late=self._if_late(leaving, arrive, worst, leave_s),
            by_departure=self._by_departure(leaving, arrive, worst),
        )
        self._warn(found)
        return found

    def _to_minute(self) -> float:
        """Minutes of the plan's start after a whole minute."""
        start = self.request.clock.start
        return (start.second + start.microsecond / 1e6) / MINUTE_S

    def _planned_exit(self, leaving: Leaving, arrive: np.ndarray, worst: np.ndarray, leave_s: float) -> dict:
        """Until when the planned exit is safe, from and until when on a bad day, and which other one is safe then."""
        safe = leaving.safe(arrive)
        row = int(np.searchsorted(leaving.leave_s, leave_s - MINUTE_S))
        run, bad_run = (_run(found[0], row) for found in (safe, leaving.safe(worst)))
        other, from_row = self._other_exit(leaving, arrive, safe, 0 if run is None else run[1] + 1)

        def moment(found: int | None) -> datetime | None:
            return None if found is None else self.request.clock.moment(leaving.leave_s[found])

        return {
            "latest_planned_exit": moment(run and run[1]),
            "latest_planned_exit_pessimistic": moment(bad_run and bad_run[1]),
            "pessimistic_not_before": moment(bad_run[0]) if bad_run and bad_run[0] else None,
            "else_exit": None if other is None else self.landings[other].name,
            "else_not_before": moment(from_row),
        }

    def _other_exit(
        self, leaving: Leaving, arrive: np.ndarray, safe: np.ndarray, after: int
    ) -> tuple[int | None, int | None]:
        """The landing that is not the planned one, the quickest of those first safe from row ``after`` on, and from
        which row where that is later; (None, None) where none is within half an hour."""
        soon = safe[1:, after : after + int(ELSE_WITHIN_S / MINUTE_S) + 1]
        if not soon.any():
            return None, None
        wait = int(np.flatnonzero(soon.any(axis=0))[0])
        row = after + wait
        other = int(np.argmin(np.where(safe[1:, row], arrive[1:, row], np.inf))) + 1
        return other, row if wait else None

    def _if_late(self, leaving: Leaving, arrive: np.ndarray, worst: np.ndarray, leave_s: float) -> tuple[WayHome, ...]:
        """Ways by the quickest exit at the planned leaving and every ten minutes after it, the last safe minute among
        them, up to the first minute that is too late for every exit."""
        safe = leaving.safe(arrive)
        best = leaving.quickest(arrive, safe)
        late = np.flatnonzero(leaving.leave_s >= leave_s - 1e-3)
        in_time = late[safe.any(axis=0)[late]]
        last = int(in_time[-1]) if len(in_time) else int(late[0]) if len(late) else 0
        until_s = min(leaving.leave_s[last] + LATE_EVERY_S, leave_s + LATE_FOR_S)
        wanted = np.searchsorted(leaving.leave_s, np.arange(leave_s, until_s + 1e-3, LATE_EVERY_S) - 1e-3)
        rows = [int(row) for row in np.unique([*wanted, *in_time[-1:]]) if row < len(best) and best[row] >= 0]
        return tuple(self._way(leaving, arrive, worst, int(best[row]), row) for row in rows)

    def _by_departure(self, leaving: Leaving, arrive: np.ndarray, worst: np.ndarray) -> tuple[WayHome, ...]:
        """Ways to the planned exit on the full quarters of the hour, up to the first that is not safe."""
        moments = [self.request.clock.moment(t_s) for t_s in leaving.leave_s]
        rows = [row for row, moment in enumerate(moments) if moment.minute % 15 == 0 and np.isfinite(arrive[0, row])]
        ways = [self._way(leaving, arrive, worst, 0, row) for row in rows]
        end = next((n + 1 for n, way in enumerate(ways) if not way.safe), len(ways))
        return tuple(ways[: min(end, DEPARTURE_ROWS)])

    def _way(self, leaving: Leaving, arrive: np.ndarray, worst: np.ndarray, landing: int, row: int) -> WayHome:
        clock, leave_s = self.request.clock, float(leaving.leave_s[row])
        turn = self.request.frame.convergence_at(self.landings[landing].place_m[0])
        true = np.degrees(leaving.homes[landing].heading_rad[0, row]) + turn
        bad_s = float(worst[landing, row])
        return WayHome(
            leave=clock.moment(leave_s),
            exit=self.landings[landing].name,
            headings_mag_deg=tuple(self.variation.magnetic(float(one)) for one in true if np.isfinite(one)),
            minutes=float(arrive[landing, row] - leave_s) / MINUTE_S,
            arrive=clock.moment(float(arrive[landing, row])),
            minutes_pessimistic=(bad_s - leave_s) / MINUTE_S if np.isfinite(bad_s) else None,
            safe=bool(leaving.safe(arrive)[landing, row]),
            safe_pessimistic=bool(leaving.safe(worst)[landing, row]),
        )

    def _warn(self, stop: StopTurnBack) -> None:
        clock = self.request.clock
        flag = flag_of_late(stop, clock)
        if flag is not None:
            self.flags.append(flag)
        elif words := late_on_a_bad_day(stop, clock):
            self.warnings.append(tr("Turn back: {words}").format(words=words))


def _counts(bands: tuple[LeavingBand, ...], arrival: datetime, leave: datetime) -> LeavingBand | None:
    """The band that holds the arrival; where it is in none, the one that holds the planned leaving."""
    arrival_s, leave_s = arrival.timestamp(), leave.timestamp()
    ends = [(band, band.first.timestamp(), band.last.timestamp()) for band in bands]
    held = [band for band, first_s, last_s in ends if first_s <= arrival_s <= last_s]
    held += [band for band, first_s, last_s in ends if first_s <= leave_s <= last_s + MINUTE_S]
    return held[0] if held else None


def _run(safe: np.ndarray, leave_row: int) -> tuple[int, int] | None:
    """First and last row of the run of safe minutes (n,) that begins with the first, else of the planned leaving's."""
    edges = np.diff(np.concatenate([[False], safe, [False]]).astype(int))
    runs = list(zip(np.flatnonzero(edges == 1).tolist(), (np.flatnonzero(edges == -1) - 1).tolist()))
    held = [run for run in runs if run[0] == 0] + [run for run in runs if run[0] <= leave_row <= run[1]]
    return held[0] if held else None
