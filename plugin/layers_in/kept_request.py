"""The chart and the water of a plan kept between two swims, so that a route under the mouse need not wait for them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from pathlib import Path

import numpy as np
from qgis.core import QgsFeatureSource

from ..core.clock import moment_from_text
from ..core.geodesy import LocalFrame
from ..core.solve.request import SwimRequest
from ..plan_package.schema import LAYER_BY_NAME
from .marks_in import marks_from
from .swim_in import SwimAsked, drawn_route, exits_of, request_from, route_box_m
from .swim_people import swimmer_from
from .table import Table

# What a swimmer changes of a plan while trying: all else is kept.
MOVING = ("routes", "marks", "swimmers")
FARTHER_M = 1500.0  # a route may reach so much farther out before chart and water are read anew
AROUND_DEPARTURE = timedelta(hours=6)


@dataclass(frozen=True, kw_only=True)
class KeptRequest:
    """A request wider than the swim it was made for, in place and time, and the layers that it came from.

    The frame is that of the route it was made for, and the view of stations over water is up to a half coarser:
    headings and minutes may differ a little from those of ``request_from``, which has the last word.
    """

    plan: Path
    sources: Mapping[str, QgsFeatureSource]
    request: SwimRequest
    box_m: np.ndarray

    def of(self, plan: Path, sources: Mapping[str, QgsFeatureSource], asked: SwimAsked) -> SwimRequest | None:
        """The request for a swim among what is kept; None where it does not hold there, then, or for these layers.

        ``sources`` are the same objects as long as they hold the same rows. Raises SwimPlanError as ``request_from``.
        """
        if plan != self.plan or not self._are_ours(sources):
            return None
        warnings: list[str] = []
        tables = {name: Table(sources[name], LAYER_BY_NAME[name], warnings) for name in MOVING}
        marks = marks_from(tables["marks"])
        route, stops = drawn_route(tables, asked, marks, warnings)
        depart = moment_from_text(asked.depart, self.request.clock.zone)
        if not (self._covers(route_box_m(route, self.request.frame)) and self._lasts(depart)):
            return None
        return replace(
            self.request,
            route=route,
            stops=tuple(stops),
            depart=depart,
            swimmer=swimmer_from(tables["swimmers"], asked.swimmer, asked.pace_m_s, warnings),
            way=asked.way,
            exits=exits_of(marks),
        )

    def _are_ours(self, sources: Mapping[str, QgsFeatureSource]) -> bool:
        fixed = (self.sources.keys() | sources.keys()) - set(MOVING)
        return all(sources.get(name) is self.sources.get(name) for name in fixed) and sources.keys() >= set(MOVING)

    def _covers(self, box_m: np.ndarray) -> bool:
        return bool(np.all(box_m[0] >= self.box_m[0]) and np.all(box_m[1] <= self.box_m[1]))

    def _lasts(self, depart: datetime) -> bool:
        clock = self.request.clock
        return 0.0 <= clock.seconds(depart) <= clock.end_s


def kept_from(plan: Path, sources: Mapping[str, QgsFeatureSource], asked: SwimAsked, swum: SwimRequest) -> KeptRequest:
    """Keep the chart and the water round a swim, six hours before and after its departure.

    ``swum`` is the request of that swim. Raises SwimPlanError as ``request_from`` does.
    """
    span = {"depart": swum.depart - AROUND_DEPARTURE, "until": swum.depart + AROUND_DEPARTURE}
    wide = replace(asked, **{name: moment.isoformat() for name, moment in span.items()})
    boxes: list[np.ndarray] = []

    def places(_tables: Mapping[str, Table], frame: LocalFrame) -> np.ndarray:
        boxes.append(route_box_m(swum.route, frame) + FARTHER_M * np.array([[-1.0], [1.0]]))
        return boxes[0]

    request = request_from(plan, sources, wide, places=places)
    return KeptRequest(plan=plan, sources=dict(sources), request=request, box_m=boxes[0])
