"""Fourteen days of departures of a ten-leg route, beside the same departures solved one by one as planswim does."""

from __future__ import annotations

import time
from dataclasses import replace

import numpy as np
from replan import DEPART, request, seconds_of
from tideleg.core.chart.areas import Chart
from tideleg.core.chart.marks import Route, marks_at_stops
from tideleg.core.clock import PlanClock
from tideleg.core.solve.request import SwimRequest
from tideleg.core.solve.swim import swim_route
from tideleg.core.solve.windows.departures import swim_departures
from tideleg.core.water.field import Station, StreamField
from tideleg.core.water.hourly import HourlyStream
from tideleg.core.water.tide import TideTable

DAYS, STEP_S, LEGS = 14, 300.0, 10
LOOPED = 60  # departures of the loop; all 4 032 would take a minute


def fortnight() -> SwimRequest:
    """The route of the replan row with half its legs, its tables over springs and neaps, no polygons."""
    swim = request()
    lonlat = swim.route.lonlat[:: len(swim.route.lonlat) // LEGS][: LEGS + 1]
    route = Route(name="fortnight", lonlat=lonlat)
    tide = _tides()
    stations = tuple(
        Station(name=one.name, x_m=one.x_m, y_m=one.y_m, stream=HourlyStream(one.stream.table, tide))
        for one in swim.stream.stations
    )
    return replace(
        swim,
        route=route,
        stops=tuple(marks_at_stops(route, [])),
        clock=PlanClock(start=DEPART, zone_name="UTC"),
        stream=StreamField(stations=stations),
        tide=tide,
        chart=Chart(),
    )


def _tides() -> TideTable:
    """Sixty waters whose range goes from springs to neaps and back."""
    number = np.arange(-4, 60)
    high = number % 2 == 0
    half_range = 1.6 + 0.6 * np.cos(2.0 * np.pi * number / 57.0)
    heights = 2.4 + np.where(high, 1.0, -1.0) * half_range
    return TideTable(port="bench", times_s=number * 6.21 * 3600.0, heights_m=heights, is_high=high)


def report() -> None:
    """Print the row of the speed table, and the curve of cost against departures."""
    swim = fortnight()
    departs = STEP_S * np.arange(int(DAYS * 86400.0 / STEP_S))
    whole = seconds_of(lambda: swim_departures(swim, departs), 3)
    some = departs[:: len(departs) // LOOPED][:LOOPED]
    start = time.perf_counter()
    alone = [_one_by_one(swim, t_s) for t_s in some]
    each = (time.perf_counter() - start) / len(some)
    together = swim_departures(swim, some).arrive_s[:, -1]
    apart = np.nanmax(np.abs(np.array(alone) - together))
    ratio = each * len(departs) / whole
    print(
        f"windows, {DAYS} days at {STEP_S / 60.0:.0f} min ({len(departs)} departures) x {LEGS} legs, limits included: "
        f"{whole:.2f} s (target 0.5 s); one by one {1000.0 * each:.1f} ms each, {each * len(departs):.0f} s in all, "
        f"ratio {ratio:.0f} (target 100); {np.isfinite(together).mean():.0%} can be swum, answers within {apart:.2f} s"
    )
    curve = []
    for count in (1008, 2016, 4032, 8064, 16128):
        many = DAYS * 86400.0 * np.arange(count) / count
        curve.append(f"{count}: {1e6 * seconds_of(lambda many=many: swim_departures(swim, many), 2) / count:.0f} us")
    print(f"  cost of a departure against their number (even where it is linear): {', '.join(curve)}")


def _one_by_one(swim: SwimRequest, depart_s: float) -> float:
    swum = swim_route(
        swim.stream,
        swim.frame,
        swim.stops_m,
        swim.stays_s,
        np.array([depart_s]),
        swim.swimmer,
        swim.way,
        keep_track=False,
    )
    return float(swum.arrive_s[0, -1])
