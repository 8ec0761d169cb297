"""A route swum by many members onto its marks, each at his own pace in his own water."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from ..water.members import MemberWater
from ..water.stream import StoppableStream
from .doubts import Members
from .request import SwimRequest
from .swim import GridStream, swim_leg, swimmable
from .swum import ARRIVED, Line

CHUNK = 125  # members at once: some 0.1 s, so that stopping is quick
HELD_BACK = -1


@dataclass(frozen=True, kw_only=True)
class MembersSwum:
    """Arrivals (n, n_stops) in seconds, NaN where a member does not get there.

    ``began`` (n, n_legs) says who set out on a leg, ``why`` (n, n_legs) how it ended for those who did: ARRIVED,
    another ending of ``swum``, or HELD_BACK for who arrived in the end but was pushed back, set off or too slow on the
    way.
    """

    arrive_s: np.ndarray
    began: np.ndarray
    why: np.ndarray

    @property
    def failed(self) -> np.ndarray:
        """Who set out on a leg (n, n_legs) and could not complete it."""
        return self.began & (self.why != ARRIVED)


def water_of(request: SwimRequest, members: Members) -> MemberWater:
    """The members' waters; vectors are true ones."""
    return MemberWater(field=request.stream, rate_doubts=members.rate_doubts, phase_doubts=members.phase_doubts)


def swim_members(
    request: SwimRequest,
    members: Members,
    depart_s: float,
    *,
    progress: Callable[[float], None] | None = None,
    is_cancelled: Callable[[], bool] = bool,
) -> MembersSwum:
    """Swim the route once for each member, leaving at one moment and staying as long as planned at each stop.

    The swimmer sees where he is: every leg ends on its mark or not at all, by the rules of ``swim.swimmable``. Raises
    StoppedError when stopped.
    """
    parts = []
    for first in range(0, len(members), CHUNK):
        parts.append(_chunk(request, members.of(slice(first, first + CHUNK)), depart_s, is_cancelled))
        if progress is not None:
            progress(min(first + CHUNK, len(members)) / len(members))
    return MembersSwum(
        **{name: np.concatenate([getattr(part, name) for part in parts]) for name in ("arrive_s", "began", "why")}
    )


def _chunk(request: SwimRequest, members: Members, depart_s: float, is_cancelled: Callable[[], bool]) -> MembersSwum:
    water = StoppableStream(stream=water_of(request, members), is_cancelled=is_cancelled)
    grid = GridStream(stream=water, frame=request.frame)
    stops_m, stays_s = request.stops_m, request.stays_s
    now = np.full(len(members), depart_s)
    arrivals, began, why = [now], [], []
    for number in range(len(stops_m) - 1):
        line = Line(start=stops_m[number], end=stops_m[number + 1])
        leg = swim_leg(grid, line, now, members.pace_m_s, request.way, keep_track=False)
        can = swimmable(leg, line, request.swimmer, members.pace_m_s)
        began.append(np.isfinite(now))
        why.append(np.where((leg.ending == ARRIVED) & ~can, HELD_BACK, leg.ending))
        arrive = np.where(can, leg.arrive_s, np.nan)
        arrivals.append(arrive)
        now = arrive + stays_s[number + 1]
    return MembersSwum(arrive_s=np.stack(arrivals, axis=1), began=np.stack(began, axis=1), why=np.stack(why, axis=1))


def quantile(arrive_s: np.ndarray, share: float) -> float:
    """The moment by which a share of all members (n,) has arrived; infinite where so many never do."""
    ordered = np.sort(np.where(np.isfinite(arrive_s), arrive_s, np.inf))
    return float(ordered[int(np.ceil(share * len(ordered) - 1e-9)) - 1])
