"""Channels crossed square: where a way comes to one, and where a swimmer who holds square to its traffic leaves it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from ...chart.areas import Channel
from ...planar import PlanarArea, part_of
from ..flags.channels import flow_rad
from ..request import SwimRequest
from ..swim import GridStream

STEP_S, MOST_STEPS = 10.0, 540
PAST_STEPS = 2  # swum on past the far side, so that the next leg does not bow back into it


@dataclass(frozen=True, kw_only=True, eq=False)
class SquareCrossing:
    """A crossing of channels that lie one on the other, begun at cell ``begin`` of a way and over at ``end``;
    ``heading_rad`` of the grid is square to the traffic."""

    areas: tuple[PlanarArea, ...]
    names: tuple[str, ...]
    begin: int
    end: int
    heading_rad: float

    def inside(self, xy_m: np.ndarray) -> np.ndarray:
        """Whether places (n, 2) lie in any of the channels."""
        return np.any([area.contains(xy_m) for area in self.areas], axis=0)

    def far_side(self, stream: GridStream, start_m: np.ndarray, leave_s: np.ndarray, pace_m_s: float) -> np.ndarray:
        """Places (n, 2) just past the far side, for swimmers who leave places (n, 2) at (n,) seconds on the square
        heading; NaN where the stream does not let one across or is not known. Midpoint rule, second order in 10 s."""
        place, now = np.array(start_m, dtype=float), np.array(leave_s, dtype=float)
        own = pace_m_s * np.array([np.sin(self.heading_rad), np.cos(self.heading_rad)])
        been_in, past = np.zeros(len(place), dtype=bool), np.zeros(len(place), dtype=int)
        for _ in range(MOST_STEPS):
            going = np.flatnonzero((past < PAST_STEPS) & np.isfinite(place[:, 0]) & np.isfinite(now))
            if not len(going):
                break
            half = place[going] + (own + _vectors(stream, place[going], now[going])) * (STEP_S / 2.0)
            place[going] += (own + _vectors(stream, half, now[going] + STEP_S / 2.0)) * STEP_S
            now[going] += STEP_S
            inside = self.inside(place[going])
            been_in[going] |= inside
            past[going] = np.where(inside, 0, past[going] + been_in[going])
        place[past < PAST_STEPS] = np.nan
        return place


def _vectors(stream: GridStream, xy_m: np.ndarray, t_s: np.ndarray) -> np.ndarray:
    sample = stream.at(xy_m[:, 0], xy_m[:, 1], t_s)
    return np.stack([sample.east_m_s, sample.north_m_s], axis=1)


def crossings_of(request: SwimRequest, way_m: np.ndarray) -> list[SquareCrossing]:
    """Where a way (k, 2) crosses channels whose traffic has a known direction, in order.

    A channel in which the way starts or ends is left out: it cannot be crossed from side to side.
    """
    found: list[SquareCrossing] = []
    for channel, start, end in sorted(request.chart.stretches("channels", way_m), key=lambda one: one[1]):
        flow = flow_rad(request, channel, part_of(way_m, start, end))
        if np.isfinite(flow) and not at_an_end(channel, way_m):
            one = _crossing(channel, way_m, (int(np.floor(start)), int(np.ceil(end))), flow)
            found[-1:] = _joined(found[-1:], one)
    return found


def at_an_end(channel: Channel, way_m: np.ndarray) -> bool:
    """Whether a way starts or ends in a channel."""
    return bool(channel.area.contains(way_m[[0, -1]]).any())


def _crossing(channel: Channel, way_m: np.ndarray, span: tuple[int, int], flow: float) -> SquareCrossing:
    begin, end = span
    east, north = way_m[end] - way_m[begin]
    # Square to the traffic, to the side that the way leads to.
    side = 1.0 if east * np.cos(flow) - north * np.sin(flow) >= 0.0 else -1.0
    return SquareCrossing(
        areas=(channel.area,), names=(channel.name,), begin=begin, end=end, heading_rad=float(flow + side * np.pi / 2.0)
    )


def _joined(before: Sequence[SquareCrossing], one: SquareCrossing) -> list[SquareCrossing]:
    """A crossing behind the one before it; the two as one, on the longer one's heading, where they overlap."""
    if not before or one.begin > before[0].end:
        return [*before, one]
    first = before[0]
    longer = first if first.end - first.begin >= one.end - one.begin else one
    return [
        SquareCrossing(
            areas=first.areas + one.areas,
            names=first.names + one.names,
            begin=first.begin,
            end=max(first.end, one.end),
            heading_rad=longer.heading_rad,
        )
    ]
