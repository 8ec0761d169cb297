"""The best order of nine marks and the best of 24 departures, beside swimming orders one by one."""

from __future__ import annotations

import sys
import time
from pathlib import Path

import numpy as np
import replan
from tideleg.core.chart.areas import Chart, Land
from tideleg.core.chart.marks import Mark, Route
from tideleg.core.planar import PlanarArea
from tideleg.core.solve.order.find_order import find_orders
from tideleg.core.solve.order.request import OrderRequest
from tideleg.core.solve.request import SwimRequest
from tideleg.core.solve.swim import swim_route

MARKS, DEPARTURES, ORDERS_TRIED = 9, 24, 40


def request(seed: int = 5, *, coast: bool = True) -> OrderRequest:
    """Nine marks within a kilometre and a half, two exits, two hourly stations and a rough coast of 4 000 vertices."""
    rng = np.random.default_rng(seed)
    swim = replan.request()
    frame = swim.frame
    marks_m = np.column_stack([rng.uniform(-700.0, 700.0, MARKS), rng.uniform(100.0, 1000.0, MARKS)])
    places_m = np.vstack([[0.0, 0.0], marks_m, [[0.0, 0.0], [600.0, 40.0]]])
    lonlat = frame.to_lonlat(places_m)
    kinds = ["entry"] + ["mark"] * MARKS + ["exit"] * 2
    places = [
        Mark(name=f"P{n}", kind=kind, lon=float(lon), lat=float(lat), stay_min=8.0 if kind == "mark" else 0.0)
        for n, (kind, (lon, lat)) in enumerate(zip(kinds, lonlat))
    ]
    last = MARKS + 2
    about = {
        "route": Route(name="bench", lonlat=lonlat[:last]),
        "stops": tuple(places[:last]),
        "chart": Chart(land=(_coast(rng),) if coast else ()),
    }
    departs = 1800.0 * np.arange(DEPARTURES) - 3600.0
    return OrderRequest(swim=SwimRequest(**{**vars(swim), **about}), exits=tuple(places[-2:]), depart_s=departs)


def _coast(rng: np.random.Generator) -> Land:
    """A shore to the south with a head that lies between some of the marks."""
    x_m = np.linspace(-2500.0, 2500.0, 4000)
    y_m = -20.0 + 500.0 * np.exp(-(((x_m + 250.0) / 60.0) ** 2)) + rng.normal(0.0, 3.0, len(x_m))
    ring = np.vstack([np.column_stack([x_m, y_m]), [[2500.0, -2000.0], [-2500.0, -2000.0]]])
    return Land(name="shore", area=PlanarArea(rings=(ring,)))


def one_order_s(order: OrderRequest, rng: np.random.Generator) -> float:
    """Seconds for one order swum at all departures by the full solver."""
    swim, places_m = order.swim, order.places_m
    stays_s = np.full(MARKS + 2, 480.0)
    start = time.perf_counter()
    for _ in range(ORDERS_TRIED):
        numbers = [0, *(rng.permutation(MARKS) + 1), MARKS + 1]
        stops_m, swimmer = places_m[numbers], swim.swimmer
        swim_route(swim.stream, swim.frame, stops_m, stays_s, order.depart_s, swimmer, swim.way, keep_track=False)
    return (time.perf_counter() - start) / ORDERS_TRIED


def report() -> None:
    """Print the row of the speed table."""
    order = request()
    whole = replan.seconds_of(lambda: find_orders(order), 2)
    bare = replan.seconds_of(lambda: find_orders(request(coast=False)), 2)
    found = find_orders(order)
    one = one_order_s(order, np.random.default_rng(1))
    orders = 2 * np.prod(np.arange(1, MARKS + 1))
    gaps: list[float] = []
    last = [time.perf_counter()]

    def asked() -> bool:
        now = time.perf_counter()
        gaps.append(now - last[0])
        last[0] = now
        return False

    find_orders(order, is_cancelled=asked)
    print(
        f"best order, {MARKS} marks, 2 exits, {DEPARTURES} departures: {whole:.2f} s round a coast of 4 000 vertices, "
        f"{bare:.2f} s in open water ({len(found.plans)} orders told, best {found.plans[0].minutes:.0f} min, "
        f"feasible {found.plans[0].feasible}); one order at all departures by the full solver {1000.0 * one:.0f} ms, "
        f"all {orders} of them {orders * one / 3600.0:.1f} h, ratio {orders * one / whole:.0f}; longest time "
        f"between two looks at the stop button {max(gaps):.2f} s"
    )


if __name__ == "__main__":
    sys.path.insert(0, str(Path(__file__).resolve().parent))
    report()
