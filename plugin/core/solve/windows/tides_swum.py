"""Which tides let a route be swum, and the range they have."""

from __future__ import annotations

import numpy as np

from ...quantities import knots_from_m_s
from ...results.windows import RangeNeeded, TideSwum
from ...water.tide import HW
from ..request import SwimRequest
from .departures import DeparturesSwum

LOOK_S = 60.0


def tides_swum(
    request: SwimRequest, swum: DeparturesSwum, step_min: float, weak_kn: float | None
) -> tuple[TideSwum, ...]:
    """Every tide, from half way before a high water to half way behind it, that lies whole in the span."""
    if request.tide is None:
        return ()
    waters, ranges = request.tide.reference_times_s(HW), request.tide.ranges_m(HW)
    middles = (waters[1:] + waters[:-1]) / 2.0
    found = []
    for row in range(1, len(waters) - 1):
        start, end = middles[row - 1], middles[row]
        if start < swum.depart_s[0] - 60.0 * step_min or end > swum.depart_s[-1] + 60.0 * step_min:
            continue
        here = (swum.depart_s >= start) & (swum.depart_s < end)
        weak = None if weak_kn is None else longest_weak_min(request, float(start), float(end), weak_kn)
        found.append(
            TideSwum(
                high_water=request.clock.moment(waters[row]),
                range_m=float(ranges[row]) if np.isfinite(ranges[row]) else None,
                open_min=float(swum.stream_lets[here].sum()) * step_min,
                weak_min=weak,
            )
        )
    return tuple(found)


def longest_weak_min(request: SwimRequest, start_s: float, end_s: float, weak_kn: float) -> float:
    """The longest time, in minutes, that begins in a span and in which the stream at the stop farthest out is known and
    stays at or below a rate."""
    stops = request.stops_m
    far = stops[np.argmax(np.hypot(*(stops - stops[0]).T))]
    # Slack may last over the end of the span: it is followed for as long again.
    times = np.arange(start_s, end_s + (end_s - start_s), LOOK_S)
    rate = knots_from_m_s(request.stream.at(far[0], far[1], times).rate_m_s)
    with np.errstate(invalid="ignore"):
        weak = rate <= weak_kn
    edges = np.diff(np.concatenate([[False], weak, [False]]).astype(int))
    spans = zip(np.flatnonzero(edges == 1), np.flatnonzero(edges == -1) - 1)
    lengths = [_length_s(times, rate, weak_kn, a, b) for a, b in spans if times[a] < end_s]
    return max(lengths, default=0.0) / 60.0


def _length_s(times: np.ndarray, rate: np.ndarray, limit: float, first: int, last: int) -> float:
    """Length of a weak stretch, its ends where the rate, straight between the minutes, passes the limit."""

    def beyond(inner: int, outer: int) -> float:
        if not 0 <= outer < len(rate) or not np.isfinite(rate[outer]):
            return 0.0
        return float((limit - rate[inner]) / (rate[outer] - rate[inner])) * LOOK_S

    return float(times[last] - times[first]) + beyond(first, first - 1) + beyond(last, last + 1)


def range_needed(tides: tuple[TideSwum, ...]) -> RangeNeeded:
    """The range up to which the stream of every tide looked at lets the route be swum at some departure."""
    return _needed(tides, [tide.open_min > 0.0 for tide in tides], None)


def weak_needed(tides: tuple[TideSwum, ...], for_min: float) -> RangeNeeded:
    """The range up to which the weak stream lasts long enough, and where in between it just does."""
    lasts = [tide.weak_min >= for_min for tide in tides]
    return _needed(tides, lasts, for_min)


def _needed(tides: tuple[TideSwum, ...], gives: list[bool], for_min: float | None) -> RangeNeeded:
    known = sorted(
        ((tide.range_m, given, tide.weak_min) for tide, given in zip(tides, gives) if tide.range_m is not None),
        key=lambda one: one[0],
    )
    first_not = next((row for row, (_, given, _) in enumerate(known) if not given), len(known))
    up_to = known[first_not - 1][0] if first_not > 0 else None
    not_at = known[first_not][0] if first_not < len(known) else None
    between = None
    if for_min is not None and up_to is not None and not_at is not None:
        enough, short = known[first_not - 1][2], known[first_not][2]
        between = up_to + (not_at - up_to) * (enough - for_min) / (enough - short) if enough > short else None
    days = dict.fromkeys(tide.high_water.date() for tide, given in zip(tides, gives) if given)
    return RangeNeeded(up_to_m=up_to, not_at_m=not_at, between_m=between, days=tuple(days))
