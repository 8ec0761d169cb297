"""A route swum at very many departures, and what each of them runs into."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, fields

import numpy as np

from ...water.stream import StoppableStream
from ..quick_legs import QuickLegs, quick_legs
from ..request import SwimRequest
from ..swim import ONE_HEADING, GridStream, swim_leg, swimmable
from ..swum import STREAM_UNKNOWN, LegSwum, Line
from .chart_limits import ChartLimits
from .limits import Told
from .own_limits import OwnLimits

CHUNK = 4096  # departures at once: what their tracks take of the memory is some tens of megabytes


@dataclass(frozen=True, kw_only=True)
class DeparturesSwum:
    """A route for n departures. Arrays (n,) or (n, n_stops), NaN where the swim does not get there.

    ``limit`` is the number in ``LIMITS`` of what stops the departure, 0 where nothing does, ``leg`` the leg it concerns
    (from 1; 0 for the whole swim), ``item`` the number in ``names`` of the area or stop it concerns, -1 for none.
    ``stream_lets`` says whether every leg can be swum, whatever else stops. ``least_ahead_m_s`` is the least speed
    toward the next mark, ``spare_across_m_s`` the least of what is left of the way made when the stream across is taken
    off, on the leg that has least; ``dusk_s`` is the civil dusk of the departure's day, infinite where it stays light.
    """

    depart_s: np.ndarray
    arrive_s: np.ndarray
    leave_s: np.ndarray
    limit: np.ndarray
    leg: np.ndarray
    item: np.ndarray
    stream_lets: np.ndarray
    extrapolated: np.ndarray
    swim_s: np.ndarray
    least_ahead_m_s: np.ndarray
    spare_across_m_s: np.ndarray
    dusk_s: np.ndarray
    names: tuple[str, ...] = ()

    @property
    def feasible(self) -> np.ndarray:
        """Which departures nothing stops."""
        return self.limit == 0

    @property
    def total_s(self) -> np.ndarray:
        """From the departure to the end of the route, seconds."""
        return self.arrive_s[:, -1] - self.depart_s


def swim_departures(
    request: SwimRequest,
    depart_s: np.ndarray,
    *,
    progress: Callable[[float], None] | None = None,
    is_cancelled: Callable[[], bool] = bool,
) -> DeparturesSwum:
    """Swim the route at departures (n,), rising seconds from the plan's start.

    A departure is feasible where ``plan_swim`` finds no leg that cannot be swum and no flag that says stop, and the
    marks are neither too deep nor too shoal while they are worked. After the first leg that cannot be swum nothing more
    is known of a departure. Raises StoppedError when stopped.
    """
    depart_s = np.asarray(depart_s, dtype=float)
    chart, own = ChartLimits(request, depart_s), OwnLimits(request)
    parts = []
    for first in range(0, len(depart_s), CHUNK):
        chunk = depart_s[first : first + CHUNK]

        def tell(share: float, first: int = first, count: int = len(chunk)) -> None:
            if progress is not None:
                progress((first + share * count) / len(depart_s))

        parts.append(_chunk(request, chunk, chart, own, tell, is_cancelled))
    names = chart.names + own.names
    arrays = {one.name for one in fields(DeparturesSwum)} - {"names"}
    return DeparturesSwum(
        names=names, **{key: np.concatenate([getattr(part, key) for part in parts]) for key in arrays}
    )


def _chunk(
    request: SwimRequest,
    depart_s: np.ndarray,
    chart: ChartLimits,
    own: OwnLimits,
    progress: Callable[[float], None],
    is_cancelled: Callable[[], bool],
) -> DeparturesSwum:
    told = Told(len(depart_s))
    stops_m, stays_s, swimmer = request.stops_m, request.stays_s, request.swimmer
    water = StoppableStream(stream=request.stream, is_cancelled=is_cancelled)
    grid = GridStream(stream=water, frame=request.frame)
    now = depart_s.copy()
    arrivals, leavings, swim_s = [now], [now], np.zeros(len(now))
    least, spare = np.full(len(now), np.inf), np.full(len(now), np.inf)
    extrapolated, lets = np.zeros(len(now), dtype=bool), np.ones(len(now), dtype=bool)
    for number in range(len(stops_m) - 1):
        line = Line(start=stops_m[number], end=stops_m[number + 1])
        leg, can = _leg(request, grid, line, now)
        began = np.isfinite(now)
        stopped = began & ~can
        told.tell(stopped & (leg.ending == STREAM_UNKNOWN), "unknown", number + 1)
        told.tell(stopped & (leg.ending != STREAM_UNKNOWN), "stream", number + 1)
        lets &= can
        least, spare = np.fmin(least, leg.least_ahead_m_s), np.fmin(spare, swimmer.made_good_m_s - leg.most_across_m_s)
        extrapolated |= leg.extrapolated & can
        arrive = np.where(can, leg.arrive_s, np.nan)
        swim_s = swim_s + arrive - now
        now = arrive + stays_s[number + 1]
        chart.check(told, number + 1, leg, can, now, (number == 0, number == len(stops_m) - 2))
        arrivals.append(arrive)
        leavings.append(now)
        progress((number + 1) / (len(stops_m) - 1))
    arrive_s, leave_s = np.stack(arrivals, axis=1), np.stack(leavings, axis=1)
    dusk_s = own.check(told, arrive_s, leave_s, len(chart.names))
    return DeparturesSwum(
        depart_s=depart_s,
        arrive_s=arrive_s,
        leave_s=leave_s,
        limit=told.limit,
        leg=told.leg,
        item=told.item,
        stream_lets=lets,
        extrapolated=extrapolated,
        swim_s=swim_s,
        least_ahead_m_s=least,
        spare_across_m_s=spare,
        dusk_s=dusk_s,
    )


def _leg(request: SwimRequest, grid: GridStream, line: Line, depart_s: np.ndarray) -> tuple[QuickLegs, np.ndarray]:
    """The leg, and which rows can swim it."""
    swimmer = request.swimmer
    if request.way.mode == ONE_HEADING:
        pace, least = swimmer.made_good_m_s, swimmer.min_ground_speed_m_s
        step_s = request.way.step_s
        leg = quick_legs(grid, line.start, line.end, depart_s, pace, step_s=step_s, slowest_m_s=least)
        return leg, leg.swimmable(line.length_m, pace, least)
    full = swim_leg(grid, line, depart_s, swimmer.made_good_m_s, request.way)
    return _as_quick(full), swimmable(full, line, swimmer)


def _as_quick(full: LegSwum) -> QuickLegs:
    """A leg of another heading mode, its track thinned to even times."""
    legs = QuickLegs.blank(full.depart_s)
    rows = np.arange(len(full.depart_s))
    legs.put(
        rows,
        arrive_s=full.arrive_s,
        ending=full.ending,
        least_ahead_m_s=full.least_ahead_m_s,
        most_across_m_s=full.most_across_m_s,
        extrapolated=full.extrapolated,
    )
    for row in np.flatnonzero(np.isfinite(full.arrive_s)):
        legs.put_track(row, full.nodes, row)
    return legs
