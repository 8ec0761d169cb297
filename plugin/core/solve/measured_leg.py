"""A single leg between any two places, in the water and at the departure of a request."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from ..chart.marks import Mark, Route
from ..magnetism import variation_at
from ..results.swim_plan import Leg
from .flags.track import leg_tracks
from .leg_results import leg_result
from .plan_swim import swum_at_departure
from .request import SwimRequest


def measured_leg(request: SwimRequest, start: Mark, end: Mark) -> Leg:
    """The leg from ``start``, left at the request's departure, to ``end``, as ``plan_swim`` would report it.

    The variation is that of the request's own entry, the one printed on its card. SwimPlanError where both places are
    the same or the variation is not known.
    """
    entry = request.stops[0]
    variation = variation_at(entry.lon, entry.lat, request.depart)
    route = Route(name="", lonlat=np.array([[start.lon, start.lat], [end.lon, end.lat]]))
    alone = replace(request, route=route, stops=(start, end))
    swum = swum_at_departure(alone)
    return leg_result(alone, swum, leg_tracks(alone, swum), 0, variation)
