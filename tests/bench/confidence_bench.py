"""How sure a plan of four legs is from 500 members, beside swimming as many plans one by one."""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import replace

import numpy as np
from replan import request, seconds_of
from tideleg.core.chart.marks import Route, marks_at_stops
from tideleg.core.solve.confidence import Asked, how_sure
from tideleg.core.solve.doubts import Doubts, draw_members
from tideleg.core.solve.drift import Wind
from tideleg.core.solve.member_swims import swim_members, water_of
from tideleg.core.solve.request import SwimRequest
from tideleg.core.solve.swim import swim_route

MEMBERS, ALONE = 500, 25
STOPS_M = np.array([[0.0, 0.0], [700.0, 300.0], [900.0, 900.0], [300.0, 800.0], [0.0, 0.0]])


def four_legs() -> SwimRequest:
    """The swim of the replan row on a shorter route."""
    swim = request()
    route = Route(name="four", lonlat=swim.frame.to_lonlat(STOPS_M))
    return replace(swim, route=route, stops=tuple(marks_at_stops(route, [])))


def longest_wait_s(work: Callable[[Callable[[], bool]], object]) -> float:
    """The longest time between two questions whether to stop, the end of the work being one."""
    asked = [time.perf_counter()]

    def is_cancelled() -> bool:
        asked.append(time.perf_counter())
        return False

    work(is_cancelled)
    return float(np.max(np.diff([*asked, time.perf_counter()])))


def report() -> None:
    """Print the row of the speed table."""
    swim = four_legs()
    members = draw_members(swim.swimmer, Doubts(), MEMBERS)
    together = seconds_of(lambda: swim_members(swim, members, 0.0), 3)
    swum = swim_members(swim, members, 0.0)

    def alone(row: int) -> float:
        one = members.of(slice(row, row + 1))
        ended = swim_route(
            water_of(swim, one),
            swim.frame,
            swim.stops_m,
            swim.stays_s,
            np.zeros(1),
            swim.swimmer,
            swim.way,
            pace_m_s=one.pace_m_s,
            keep_track=False,
        )
        return float(ended.arrive_s[0, -1])

    start = time.perf_counter()
    ends = np.array([alone(row) for row in range(ALONE)])
    each = (time.perf_counter() - start) / ALONE
    apart = float(np.nanmax(np.abs(ends - swum.arrive_s[:ALONE, -1])))
    asked = Asked(wind=Wind(from_deg=240.0, speed_kn=10.0))
    whole = seconds_of(lambda: how_sure(swim, asked), 2)
    wait = longest_wait_s(lambda is_cancelled: how_sure(swim, asked, is_cancelled=is_cancelled))
    areas = len(how_sure(swim, asked).drift)
    print(
        f"how sure, {MEMBERS} members x {len(STOPS_M) - 1} legs: {together:.2f} s (target well under 1 s); one by one "
        f"{each * MEMBERS:.1f} s, ratio {each * MEMBERS / together:.0f}, largest difference {apart:.2f} s; with "
        f"ellipses and {areas} areas of drift against {len(swim.chart.land)} pieces of land {whole:.2f} s, asking at "
        f"least every {1000.0 * wait:.0f} ms whether to stop (target 200)"
    )
