"""The depth at each mark at the time it is worked: too deep, too shoal, or not known."""

from __future__ import annotations

import numpy as np

from ...anchor_line import line_in_rock_m, line_on_flat_m
from ...chart.depths import ChartedDepth
from ...chart.marks import Mark
from ...results.flag import Flag
from ...water.tide import TideTable, first_time_height_reaches
from ...words import tr
from ..request import SwimRequest
from .track import clock_words

LOOK_AHEAD_S = 13 * 3600.0  # a whole tide


def charted_depth(request: SwimRequest, number: int) -> ChartedDepth:
    """Charted depth at a stop: the mark's own, else what soundings and contours say; NaN with a reason."""
    stop = request.stops[number]
    if stop.charted_depth_m is not None:
        return ChartedDepth(depth_m=stop.charted_depth_m, basis=tr("the mark"))
    if stop.kind != "mark":
        # At a beach soundings and contours lie to one side only: what they give there is too deep.
        return ChartedDepth(depth_m=float("nan"), basis=tr("it is no mark"))
    return request.depths.depth_at(*request.stops_m[number])


def depth_flags(request: SwimRequest, arrive_s: np.ndarray, leave_s: np.ndarray) -> list[Flag]:
    """Flags for the marks of the route; ``arrive_s`` and ``leave_s`` (n_stops,) may be NaN."""
    flags = []
    for number, stop in enumerate(request.stops):
        depth = charted_depth(request, number).depth_m
        if stop.kind == "mark" and np.isfinite(depth) and np.isfinite(arrive_s[number]):
            flags += _mark_flags(request, number, depth, arrive_s[number], leave_s[number])
    return flags


def _mark_flags(request: SwimRequest, number: int, charted_m: float, arrive_s: float, leave_s: float) -> list[Flag]:
    times = np.linspace(arrive_s, max(leave_s, arrive_s), 25)
    heights = np.full(25, np.nan) if request.tide is None else request.tide.height_m(times)
    stop = request.stops[number]
    if np.any(np.isnan(heights)):
        message = tr(
            "The height of tide at {name} is not known: the depth there is the charted {charted_m:.1f} m "
            "plus an unknown height."
        ).format(name=stop.name, charted_m=charted_m)
        brief = tr("{name}: tide not known").format(name=stop.name)
        return [_at_stop(request, number, arrive_s, leave_s, "tide_unknown", message, brief)]
    depth, limit, flags = charted_m + heights, request.swimmer.depth_limit_m, []
    short, brief = _short_line(request, stop, depth.max())
    if depth.max() > limit:
        message = tr("{name} is {depth:.1f} m deep while you are there, over your {limit:.1f} m.").format(
            name=stop.name, depth=depth.max(), limit=limit
        )
        message += _when(request, request.tide, limit - charted_m, arrive_s, depth[0] > limit)
        message += f" {short}" if short else ""
        brief = tr("{name} {depth:.1f} m: too deep").format(name=stop.name, depth=depth.max())
        flags.append(_at_stop(request, number, arrive_s, leave_s, "deep", message, brief))
    elif short:
        flags.append(_at_stop(request, number, arrive_s, leave_s, "deep", short, brief))
    if depth.min() < request.settings.shallow_depth_m:
        message = tr(
            "{name} has {depth:.1f} m of water while you are there, less than {shallow_depth_m:.1f} m: "
            "swell breaks on it and it may dry."
        ).format(name=stop.name, depth=depth.min(), shallow_depth_m=request.settings.shallow_depth_m)
        brief = tr("{name} {depth:.1f} m: swell breaks").format(name=stop.name, depth=depth.min())
        flags.append(_at_stop(request, number, arrive_s, leave_s, "shallow", message, brief))
    return flags


def _short_line(request: SwimRequest, stop: Mark, depth_m: float) -> tuple[str, str]:
    """That the line carried does not hold a float there, in a sentence and in a few words; empty where it does."""
    if line_in_rock_m(depth_m)[0] <= request.swimmer.line_m:
        return "", ""
    line, rock, flat = request.swimmer.line_m, line_in_rock_m(depth_m)[0], line_on_flat_m(depth_m)[0]
    message = tr(
        "{name} is {depth:.1f} m deep while you are there: an anchor hooked in rock wants {rock:.0f} m of line, "
        "one on flat ground {flat:.0f} m, and you carry {line:g} m."
    ).format(name=stop.name, depth=depth_m, rock=rock, flat=flat, line=line)
    return message, tr("{name}: {line:g} m of line do not hold").format(name=stop.name, line=line)


def _when(request: SwimRequest, tide: TideTable, level_m: float, arrive_s: float, too_deep_now: bool) -> str:
    """From when, or until when, the mark is within reach."""
    turn_s = first_time_height_reaches(tide, level_m, arrive_s, arrive_s + LOOK_AHEAD_S)
    if np.isnan(turn_s):
        ahead = tide.height_m(np.arange(arrive_s, arrive_s + LOOK_AHEAD_S, 600.0))
        known = bool(np.isfinite(ahead).all())
        return (
            tr(" It stays so through the tide.") if known else tr(" The tide table ends before it is seen to change.")
        )
    if too_deep_now:
        return tr(" It is within your limit from {when}.").format(when=clock_words(request, turn_s))
    return tr(" It is within your limit until {when}.").format(when=clock_words(request, turn_s))


def _at_stop(
    request: SwimRequest, number: int, arrive_s: float, leave_s: float, kind: str, message: str, brief: str
) -> Flag:
    stop = request.stops[number]
    return Flag(
        kind=kind,
        severity="warn",
        message=message,
        brief=brief,
        points=((stop.lon, stop.lat),),
        leg=max(number, 1),
        name=stop.name,
        start=request.clock.moment(arrive_s),
        end=request.clock.moment(leave_s),
    )
