"""A chart's land, closed areas and channels laid on a grid."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ...chart.areas import ClosedArea
from .beside import Shores
from .open_water import OpenWater, ReachGrid, TimedArea, covered
from .request import CROSS_SQUARE, KEEP_OUT, ReachRequest

STEP_S = 60.0
HEAVIEST = 12.0


@dataclass(frozen=True, kw_only=True)
class Closing:
    """A closed area nobody may enter, and in which steps of the time asked for it is in force, shape (n_steps,)."""

    item: ClosedArea
    closed: np.ndarray


@dataclass(frozen=True, kw_only=True)
class ChartWater:
    """The open water of a grid, and the shores that straight lines are checked against."""

    water: OpenWater
    closings: tuple[Closing, ...]
    request: ReachRequest

    def shores(self, t_s: float | None = None) -> Shores:
        """Land and what is closed all the time, or about a time of the plan."""
        land = [item.area for item in self.request.swim.chart.land]
        step = None if t_s is None else int((t_s - self.request.depart_s) // STEP_S)
        closed = [
            one.item.area
            for one in self.closings
            if (one.closed.all() if step is None else one.closed[max(step - 1, 0) : step + 2].any())
        ]
        return Shores(land=land, closed=closed)


def chart_water(request: ReachRequest, grid: ReachGrid) -> ChartWater:
    """What stands in the way of a reach: land, closed areas nobody may enter in the hours they are in force, channels
    that are kept out of; channels to be crossed square weigh several times."""
    chart = request.swim.chart
    closings = tuple(_closings(request))
    dry = covered(grid, [item.area for item in chart.land])
    always = [one.item.area for one in closings if one.closed.all()]
    dry |= covered(grid, always)
    channels = [item.area for item in chart.channels]
    weight = None
    if request.channels == KEEP_OUT:
        dry |= covered(grid, channels)
    elif request.channels == CROSS_SQUARE and channels:
        weight = np.where(covered(grid, channels), channel_weight(request), 1.0)
    water = OpenWater(
        grid=grid, dry=dry, timed=_timed(grid, closings), first_s=request.depart_s, step_s=STEP_S, weight=weight
    )
    return ChartWater(water=water, closings=closings, request=request)


def channel_weight(request: ReachRequest) -> float:
    """How many times over time in a channel counts when it is to be crossed square.

    A path of least time bends at the edge of such water as light does (Snell's law): with 1 / sin(a) it crosses within
    the angle a of square whatever its slant outside. Half of the plan's ``square_within_deg`` leaves room for the
    stream.
    """
    angle = np.radians(max(request.swim.settings.square_within_deg, 1.0) / 2.0)
    return float(min(1.0 / np.sin(angle), HEAVIEST))


def _closings(request: ReachRequest) -> list[Closing]:
    clock = request.swim.clock
    count = int(np.ceil(request.horizon_s / STEP_S)) + 1
    moments = [clock.moment(request.depart_s + STEP_S * step) for step in range(count + 1)]
    found = []
    for item in request.swim.chart.closed_areas:
        rule = item.in_force
        if item.rule == "no_entry" and rule.overlaps(moments[0], moments[-1], clock.zone):
            spans = zip(moments[:-1], moments[1:])
            found.append(Closing(item=item, closed=np.array([rule.overlaps(a, b, clock.zone) for a, b in spans])))
    return found


def _timed(grid: ReachGrid, closings: tuple[Closing, ...]) -> tuple[TimedArea, ...]:
    """The areas that are closed for a part of the time, those of the same hours as one."""
    by_hours: dict[bytes, list[Closing]] = {}
    for one in closings:
        if not one.closed.all():
            by_hours.setdefault(one.closed.tobytes(), []).append(one)
    return tuple(
        TimedArea(mask=covered(grid, [one.item.area for one in group]), closed=group[0].closed)
        for group in by_hours.values()
    )
