"""Areas in which to look for a float, if the swimmer stopped at one moment of the swim or at any."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from ..hull import hull_round
from ..results.confidence import DriftArea
from ..words import tr
from .dead_reckoning import MOST_UNKNOWN
from .doubts import Members
from .drift import ACROSS, AFTER_MIN, DOWNWIND, Adrift, Wind, drift
from .member_swims import water_of
from .request import SwimRequest
from .swim import RouteSwum

EVERY_S = 900.0
DRIFT_MEMBERS = 200  # hulls grow little beyond


@dataclass(frozen=True, kw_only=True)
class Start:
    """A moment of the planned swim: where the swimmer is then, in words and in the frame (2,)."""

    t_s: float
    place: str
    xy_m: np.ndarray


def starts_of(request: SwimRequest, swum: RouteSwum, arrive_s: np.ndarray, leave_s: np.ndarray) -> tuple[Start, ...]:
    """Every quarter of an hour of the planned swim and the arrival at each stop, in order, as far as it can be swum."""
    stops_m, reached = request.stops_m, int(np.isfinite(arrive_s).sum())
    found = [
        Start(t_s=float(arrive_s[number]), place=request.stops[number].name, xy_m=stops_m[number])
        for number in range(reached)
    ]
    for t_s in np.arange(arrive_s[0] + EVERY_S, arrive_s[reached - 1], EVERY_S):
        number = int(np.searchsorted(arrive_s[:reached], t_s, side="right")) - 1
        if t_s <= leave_s[number]:
            found.append(Start(t_s=float(t_s), place=request.stops[number].name, xy_m=stops_m[number]))
            continue
        nodes = swum.legs[number].nodes
        kept = np.isfinite(nodes.t_s[0])
        xy_m = np.array([np.interp(t_s, nodes.t_s[0, kept], part[0, kept]) for part in (nodes.x_m, nodes.y_m)])
        found.append(Start(t_s=float(t_s), place=tr("leg {number}").format(number=number + 1), xy_m=xy_m))
    return tuple(sorted(found, key=lambda start: start.t_s))


def drift_areas(
    request: SwimRequest,
    swum: RouteSwum,
    arrive_s: np.ndarray,
    leave_s: np.ndarray,
    members: Members,
    wind: Wind | None,
    warnings: list[str],
    *,
    progress: Callable[[float], None] | None = None,
    is_cancelled: Callable[[], bool] = bool,
) -> tuple[DriftArea, ...]:
    """Areas 30, 60 and 120 min after each start, and after the planned return wherever the swimmer stopped.

    ``arrive_s`` and ``leave_s`` (n_stops,) are the plan's, NaN from where it cannot be swum on; without a planned
    return the latter areas are missing, and said so.
    """
    starts = starts_of(request, swum, arrive_s, leave_s)
    some, home_s, last_s = members.of(slice(DRIFT_MEMBERS)), float(arrive_s[-1]), 60.0 * AFTER_MIN[-1]
    starts_s = np.array([start.t_s for start in starts])
    until_s = np.maximum(starts_s, home_s if np.isfinite(home_s) else -np.inf) + last_s
    adrift = drift(
        water_of(request, some),
        request.frame,
        np.array([start.xy_m for start in starts]),
        starts_s,
        until_s,
        some.aside,
        wind=wind,
        land=[piece.area for piece in request.chart.land],
        progress=progress,
        is_cancelled=is_cancelled,
    )
    areas = [
        _area(request, adrift, [row], start.t_s + 60.0 * after, after, start)
        for row, start in enumerate(starts)
        for after in AFTER_MIN
    ]
    if np.isfinite(home_s):
        every = list(range(len(starts)))
        areas += [_area(request, adrift, every, home_s + 60.0 * after, after, None) for after in AFTER_MIN]
    else:
        warnings.append(tr("There is no planned return, and so no areas of drift after it."))
    unknown = sum(1 for area in areas if not area.ring)
    if unknown:
        warnings.append(
            tr("The drift is not known for {unknown} of {areas} areas: the stream there and then is not known.").format(
                unknown=unknown, areas=len(areas)
            )
        )
    if wind is None:
        warnings.append(wind_words(None))
    return tuple(areas)


def _area(
    request: SwimRequest, adrift: Adrift, rows: list[int], moment_s: float, after_min: float, start: Start | None
) -> DriftArea:
    found = [adrift.at(row, moment_s) for row in rows]
    places, ashore = (np.concatenate(part) for part in zip(*found))
    known = np.isfinite(places[:, 0])
    unknown = float(1.0 - known.mean())
    ring, farthest = np.empty((0, 2)), None
    if unknown <= MOST_UNKNOWN:
        ring = request.frame.to_lonlat(hull_round(places[known]))
        if start is not None:
            farthest = float(np.max(np.hypot(*(places[known] - start.xy_m).T)))
    lon, lat = request.frame.to_lonlat(start.xy_m)[0].tolist() if start is not None else (None, None)
    return DriftArea(
        start=None if start is None else request.clock.moment(start.t_s),
        place=tr("any time of the swim") if start is None else start.place,
        lon=lon,
        lat=lat,
        after_min=after_min,
        moment=request.clock.moment(moment_s),
        ring=tuple((lon, lat) for lon, lat in ring.tolist()),
        farthest_m=farthest,
        ashore_share=float(ashore.mean()),
        unknown_share=unknown,
    )


def wind_words(wind: Wind | None) -> str:
    """What is reckoned of the wind, in words."""
    if wind is None:
        return tr(
            "No wind was given: its push on the float is not counted, which is not to say there is none. "
            "In a wind the float goes {downwind:.2f} % of its speed downwind of these areas."
        ).format(downwind=100.0 * DOWNWIND)
    return tr(
        "Wind from {from_deg:03.0f} true, {speed_kn:g} kn, all the time: the float is pushed "
        "{downwind:.2f} % of its speed downwind and up to {across:.2f} % to either side."
    ).format(from_deg=wind.from_deg, speed_kn=wind.speed_kn, downwind=100.0 * DOWNWIND, across=100.0 * ACROSS)
