"""The stops of a swim as they are reported: times and depths."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import replace

import numpy as np

from ..results.swim_plan import Stop
from ..results.transits import Transit
from ..words import tr
from .flags.depths import charted_depth
from .request import SwimRequest
from .swim import RouteSwum


def stop_results(
    request: SwimRequest, swum: RouteSwum, transits: Mapping[str, tuple[Transit, ...]], warnings: list[str]
) -> tuple[Stop, ...]:
    """The stops of the first departure, entry and exit included; adds what is not known to ``warnings``.

    ``transits`` are those picked, by the name of the stop.
    """
    stops = tuple(
        replace(_stop(request, swum, number, warnings), transits=transits.get(mark.name, ()))
        for number, mark in enumerate(request.stops)
    )
    said = {stop.name for stop in stops if stop.kind == "mark" and stop.charted_depth_m is None}
    reached = [stop for stop in stops if stop.depth_now_m is None and stop.arrive and stop.name not in said]
    for missing, why in ((True, tr("no charted depth")), (False, tr("the height of tide is not known"))):
        names = dict.fromkeys(stop.name for stop in reached if (stop.charted_depth_m is None) == missing)
        if names:
            warnings.append(tr("Depth not known at {names}: {why}.").format(names=", ".join(names), why=why))
    not_reached = dict.fromkeys(stop.name for stop in stops if stop.arrive is None)
    if not_reached:
        warnings.append(
            tr("No times and no depths at {names}: the swim does not get there.").format(names=", ".join(not_reached))
        )
    for stop in (request.stops[0], request.stops[-1]):
        if stop.stay_min:
            warnings.append(
                tr("The stay of {stay_min:g} min at {name} is not counted: the swim starts or ends there.").format(
                    stay_min=stop.stay_min, name=stop.name
                )
            )
    return stops


def _stop(request: SwimRequest, swum: RouteSwum, number: int, warnings: list[str]) -> Stop:
    mark, last = request.stops[number], len(request.stops) - 1
    arrive_s, leave_s = float(swum.arrive_s[0, number]), float(swum.leave_s[0, number])
    charted = charted_depth(request, number)
    if mark.kind == "mark" and np.isnan(charted.depth_m):
        warnings.append(tr("No charted depth at {name}: {basis}.").format(name=mark.name, basis=charted.basis))
    height = float("nan") if request.tide is None else float(request.tide.height_m(arrive_s))
    return Stop(
        name=mark.name,
        kind=mark.kind,
        lon=mark.lon,
        lat=mark.lat,
        arrive=request.clock.moment(arrive_s),
        leave=request.clock.moment(leave_s),
        charted_depth_m=or_none(charted.depth_m),
        depth_now_m=or_none(charted.depth_m + height),
        depth_by_hour=_depth_by_hour(request, charted.depth_m, arrive_s, leave_s) if 0 < number < last else (),
        note=mark.note,
        deepest_m=_deepest_m(request, charted.depth_m, arrive_s, leave_s) if 0 < number < last else None,
        swing_m=swing_radius_m(request.swimmer.line_m, charted.depth_m + height) if 0 < number < last else None,
    )


def swing_radius_m(line_m: float, depth_m: float) -> float | None:
    """How far a float swings round its anchor, sqrt(L^2 - d^2); None where the line is short or the depth unknown."""
    return math.sqrt(line_m**2 - depth_m**2) if depth_m <= line_m else None


def _deepest_m(request: SwimRequest, charted_m: float, arrive_s: float, leave_s: float) -> float | None:
    """The greatest depth of the stay; None where depth, tide or time is not known."""
    if request.tide is None or not np.isfinite(charted_m + arrive_s + leave_s):
        return None
    heights = request.tide.height_m(np.linspace(arrive_s, max(leave_s, arrive_s), 25))
    return or_none(charted_m + float(np.max(heights)))


def _depth_by_hour(request: SwimRequest, charted_m: float, arrive_s: float, leave_s: float) -> tuple:
    """Depth on the full hours around the stay, for the card."""
    if request.tide is None or not np.isfinite(charted_m) or not np.isfinite(arrive_s):
        return ()
    start = request.clock.moment(arrive_s).replace(minute=0, second=0, microsecond=0)
    start_s = request.clock.seconds(start)
    hours = [request.clock.moment(start_s + 3600.0 * n) for n in range(int((leave_s - arrive_s) // 3600.0) + 3)]
    depths = charted_m + request.tide.height_m(request.clock.seconds_of(hours))
    return tuple((hour, float(depth)) for hour, depth in zip(hours, depths) if np.isfinite(depth))


def or_none(value: float) -> float | None:
    """The number, None where it is missing."""
    return float(value) if np.isfinite(value) else None
