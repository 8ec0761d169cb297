"""Orders of marks to find in invented water, and every order swum one by one."""

from __future__ import annotations

from itertools import permutations

import numpy as np
from invented_requests import Site
from tideleg.core.chart.marks import Mark
from tideleg.core.results.best_order import OrderPlan
from tideleg.core.solve.order.request import OrderRequest
from tideleg.core.solve.swim import swim_route, swimmable
from tideleg.core.solve.swum import Line
from tideleg.core.water.stream import KNOWN, UNKNOWN, StreamSample


def order_request(site: Site, entry_m, marks_m, exits_m=None, *, hours=12.0, step_min=30.0, **about) -> OrderRequest:
    """The marks drawn, in any order, from a drawn entry to one of the drawn exits, the entry where none is drawn."""
    exits_m = [entry_m] if exits_m is None else exits_m
    swim = site.request([entry_m, *marks_m, exits_m[0]], **about)
    exits = tuple(
        Mark(name=f"Beach {number}", kind="exit", lon=float(lon), lat=float(lat))
        for number, (lon, lat) in enumerate(site.lonlat(exits_m))
    )
    return OrderRequest(swim=swim, exits=exits, depart_s=np.arange(0.0, 3600.0 * hours + 1.0, 60.0 * step_min))


def every_order(order: OrderRequest) -> dict[tuple[int, ...], np.ndarray]:
    """Seconds from entry to exit (n,) at each departure by the full solver, NaN where a leg cannot be swum."""
    swim, places = order.swim, order.places_m
    stays = np.array([60.0 * place.stay_min for place in order.places])
    found = {}
    for middle in permutations(range(1, order.first_exit)):
        for last in range(order.first_exit, len(places)):
            numbers = (0, *middle, last)
            stops = places[list(numbers)]
            swum = swim_route(
                swim.stream, swim.frame, stops, stays[list(numbers)], order.depart_s, swim.swimmer, swim.way
            )
            total = swum.arrive_s[:, -1] - order.depart_s
            for leg, start, end in zip(swum.legs, stops, stops[1:]):
                total = np.where(swimmable(leg, Line(start=start, end=end), swim.swimmer), total, np.nan)
            found[numbers] = total
    return found


class Moving:
    """A stream everywhere: ``water(place, t_s)`` of the invented waters, in the plan's grid; unknown where NaN."""

    def __init__(self, water, frame) -> None:
        self.water, self.frame = water, frame

    def at(self, x_m, y_m, t_s) -> StreamSample:
        x, y, t = np.broadcast_arrays(*(np.asarray(value, dtype=float) for value in (x_m, y_m, t_s)))
        flow = self.water(x + 1j * y, t) * np.exp(-1j * np.radians(self.frame.convergence_at(x)))
        status = np.where(np.isnan(flow), UNKNOWN, KNOWN).astype(np.int8)
        return StreamSample(east_m_s=flow.real, north_m_s=flow.imag, status=status)


def numbers_of(order: OrderRequest, plan: OrderPlan) -> tuple[int, ...]:
    """The places of a plan by their numbers."""
    by_name = {place.name: number for number, place in enumerate(order.places)}
    return tuple(by_name[name] for name in plan.names)
