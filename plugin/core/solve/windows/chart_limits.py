"""What the chart stops: land, closed water and sailings on the tracks of very many departures."""

from __future__ import annotations

import numpy as np

from ...chart.areas import Channel, ClosedArea, Land
from ...planar import stretches_of_many
from ...words import tr
from ..flags.channels import blocked_times_s
from ..flags.closed import BEACH_M
from ..quick_legs import QuickLegs
from ..request import SwimRequest
from .limits import Told

LONGEST_S = 36 * 3600.0  # after its departure a swim cannot be under way any more


class ChartLimits:
    """The land, the closed areas nobody may enter and the channels with sailings that lie near the route."""

    def __init__(self, request: SwimRequest, depart_s: np.ndarray) -> None:
        self.request = request
        chart = request.chart
        closed = [area for area in chart.closed_areas if area.rule == "no_entry"]
        channels = [channel for channel in chart.channels if channel.sailings]
        self.items: list[Land | ClosedArea | Channel] = [*chart.land, *closed, *channels]
        self.names = tuple(item.name or _unnamed(item) for item in self.items)
        self.boxes = np.array([item.area.bounds for item in self.items]).reshape(-1, 4)
        self.blocked: dict[int, np.ndarray] = {}
        self.span_s = (float(np.min(depart_s)), float(np.max(depart_s)) + LONGEST_S) if len(depart_s) else (0.0, 0.0)

    def check(
        self,
        told: Told,
        number: int,
        legs: QuickLegs,
        can: np.ndarray,
        leave_s: np.ndarray,
        beaches: tuple[bool, bool],
    ) -> None:
        """Tell what leg ``number`` (from 1) of the departures meets.

        ``can`` (n,) are those that swim it, ``leave_s`` (n,) ends the stay behind it, ``beaches`` say whether it starts
        and whether it ends at a beach.
        """
        if not self.items or not can.any():
            return
        tracks = np.where(can[:, None, None], legs.xy_m, np.nan)
        low, high = np.nanmin(tracks, axis=(0, 1)), np.nanmax(tracks, axis=(0, 1))
        near = np.all((self.boxes[:, :2] <= high) & (self.boxes[:, 2:] >= low), axis=1)
        for item in np.flatnonzero(near):
            rows, start, end = stretches_of_many(self.items[item].area, tracks)
            if len(rows):
                met = self._met(int(item), beaches, legs, leave_s, rows, start, end)
                told.tell(np.isin(np.arange(len(can)), rows[met]), self._limit(int(item)), number, int(item))

    def _limit(self, item: int) -> str:
        return {Land: tr("land"), ClosedArea: "closed", Channel: "ferry"}[type(self.items[item])]

    def _met(
        self,
        item: int,
        beaches: tuple[bool, bool],
        legs: QuickLegs,
        leave_s: np.ndarray,
        rows: np.ndarray,
        start: np.ndarray,
        end: np.ndarray,
    ) -> np.ndarray:
        """Which of the stretches (m,) stop their departure."""
        last = legs.t_s.shape[1] - 1.0
        share = np.stack([start, end]) / last
        begins, ends = legs.t_s[rows, 0] + share * (legs.t_s[rows, -1] - legs.t_s[rows, 0])
        ends = np.where((end == last) & (leave_s[rows] > ends), leave_s[rows], ends)
        thing = self.items[item]
        if isinstance(thing, Land):
            return ~_beach(beaches, legs.xy_m[rows], start, end)
        if isinstance(thing, ClosedArea):
            return self._in_force(thing, begins, ends)
        return self._blocked(item, begins, ends)

    def barred_at(self, place_m: np.ndarray, times_s: np.ndarray) -> np.ndarray:
        """Whether nobody may be at a place (2,) at each time (n,): it is closed then, or a sailing is near."""
        barred = np.zeros(len(times_s), dtype=bool)
        for item, thing in enumerate(self.items):
            if not isinstance(thing, Land) and thing.area.contains(place_m[None])[0]:
                closed = isinstance(thing, ClosedArea)
                barred |= self._in_force(thing, times_s, times_s) if closed else self._blocked(item, times_s, times_s)
        return barred

    def _blocked(self, item: int, begins_s: np.ndarray, ends_s: np.ndarray) -> np.ndarray:
        """Which spans (m,) meet a sailing."""
        times = self._blocked_s(item)
        return np.any((times[None, :, 0] < ends_s[:, None]) & (times[None, :, 1] > begins_s[:, None]), axis=1)

    def _in_force(self, closed: ClosedArea, begins_s: np.ndarray, ends_s: np.ndarray) -> np.ndarray:
        rule = closed.in_force
        if rule.start is None and rule.end is None:
            return np.ones(len(begins_s), dtype=bool)
        clock = self.request.clock
        spans = zip(begins_s, ends_s)
        return np.array([rule.overlaps(clock.moment(a), clock.moment(b), clock.zone) for a, b in spans], dtype=bool)

    def _blocked_s(self, item: int) -> np.ndarray:
        """Times (m, 2) not to be in the channel over the whole span."""
        if item not in self.blocked:
            spans = blocked_times_s(self.request, self.items[item], *self.span_s)
            self.blocked[item] = np.array([span[:2] for span in spans]).reshape(-1, 2)
        return self.blocked[item]


def _unnamed(item: Land | ClosedArea | Channel) -> str:
    return {Land: tr("land"), ClosedArea: tr("an unnamed closed area"), Channel: tr("an unnamed channel")}[type(item)]


def _beach(beaches: tuple[bool, bool], tracks: np.ndarray, start: np.ndarray, end: np.ndarray) -> np.ndarray:
    """Whether a stretch is only the beach at an end of the swim, as ``land_flags`` takes it."""
    last = tracks.shape[1] - 1.0
    pieces = np.hypot(*np.moveaxis(np.diff(tracks, axis=1), 2, 0))
    way = np.concatenate([np.zeros((len(tracks), 1)), np.cumsum(pieces, axis=1)], axis=1)
    nodes = np.arange(last + 1.0)
    length = np.array([np.interp(b, nodes, row) - np.interp(a, nodes, row) for a, b, row in zip(start, end, way)])
    at_beach = (beaches[0] & (start == 0.0)) | (beaches[1] & (end == last))
    return at_beach & (length <= BEACH_M)
