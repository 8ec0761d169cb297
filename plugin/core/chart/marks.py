"""Marks, and the route that joins them stop by stop."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ..errors import SwimPlanError
from ..geodesy import geodesic_leg
from ..words import tr

TAKES_NAME_WITHIN_M = 15.0
KINDS = ("entry", "mark", "exit", "waypoint")


@dataclass(frozen=True, kw_only=True)
class Mark:
    """A place to start from, dive at, pass or land at. ``charted_depth_m`` positive down, None where not known."""

    name: str
    kind: str
    lon: float
    lat: float
    stay_min: float = 0.0
    charted_depth_m: float | None = None
    bottom: str = ""
    note: str = ""


@dataclass(frozen=True, kw_only=True)
class Route:
    """Stops in swimming order: ``lonlat`` (n, 2) in degrees, two at the least and no two the same in a row."""

    name: str
    lonlat: np.ndarray
    note: str = ""

    def __post_init__(self) -> None:
        lonlat = np.array(self.lonlat, dtype=float).reshape(-1, 2)
        if len(lonlat):
            fresh = np.concatenate([[True], np.any(np.diff(lonlat, axis=0) != 0.0, axis=1)])
            lonlat = lonlat[fresh]
        if len(lonlat) < 2:
            raise SwimPlanError(
                asked=tr("Route '{name}' has {count} stop(s)").format(name=self.name, count=len(lonlat)),
                allowed=tr("A route has two or more different vertices"),
                remedy=tr("Draw it from the entry over the marks to the exit"),
            )
        lonlat.setflags(write=False)
        object.__setattr__(self, "lonlat", lonlat)


def marks_at_stops(route: Route, marks: list[Mark]) -> list[Mark]:
    """The route's stops as marks: a vertex within 15 m of a mark takes its name, kind, stay and depth.

    The vertex's own position stands. Vertices with no mark near are waypoints named by their number; the first and
    the last one are then the entry and the exit.
    """
    last = len(route.lonlat) - 1
    return [_stop(number, last, lon, lat, marks) for number, (lon, lat) in enumerate(route.lonlat.tolist())]


def doubts_about_stops(route: Route, stops: list[Mark], marks: list[Mark]) -> list[str]:
    """What a swimmer should look at again: a route that starts or ends at sea, and vertices that just miss a mark."""
    doubts = []
    if stops[0].kind == "mark":
        doubts.append(
            tr("The route starts at {name}, a mark: the way out is not in this plan.").format(name=stops[0].name)
        )
    if stops[-1].kind in ("mark", "waypoint"):
        doubts.append(
            tr("The route ends at {name}, which is no exit: the way home is not in this plan.").format(
                name=stops[-1].name
            )
        )
    doubts += [doubt for stop in dict.fromkeys(stops) if (doubt := _several_at(stop, marks))]
    names = {(mark.name, mark.kind) for mark in marks}
    for number, stop in enumerate(stops):
        if (stop.name, stop.kind) in names:
            continue
        lon, lat = route.lonlat[number].tolist()
        near = [
            (geodesic_leg(lon, lat, mark.lon, mark.lat)[0], mark) for mark in marks if _roughly_near(lon, lat, mark)
        ]
        if near:
            distance, mark = min(near, key=lambda pair: pair[0])
            doubts.append(
                tr("{stop} lies {distance:.0f} m from {mark}: snap it to the mark if that is meant.").format(
                    stop=stop.name, distance=distance, mark=mark.name
                )
            )
    return doubts


def _several_at(stop: Mark, marks: list[Mark]) -> str:
    """That a stop lies at several marks whose stay or depth differ; empty where it does not."""
    near = [mark for mark in marks if _roughly_near(stop.lon, stop.lat, mark)]
    here = [mark for mark in near if geodesic_leg(stop.lon, stop.lat, mark.lon, mark.lat)[0] <= TAKES_NAME_WITHIN_M]
    if len({(mark.stay_min, mark.charted_depth_m) for mark in here}) < 2:
        return ""
    names = ", ".join(mark.name for mark in here)
    words = tr(
        "{count} marks lie at one stop ({names}); the nearest counts: {name}, kind {kind}, stay {stay_min:g} min."
    )
    return words.format(count=len(here), names=names, name=stop.name, kind=stop.kind, stay_min=stop.stay_min)


def _stop(number: int, last: int, lon: float, lat: float, marks: list[Mark]) -> Mark:
    near = [(geodesic_leg(lon, lat, mark.lon, mark.lat)[0], mark) for mark in marks if _roughly_near(lon, lat, mark)]
    distance, mark = min(near, key=lambda pair: pair[0], default=(float("inf"), None))
    if mark is not None and distance <= TAKES_NAME_WITHIN_M:
        return Mark(**{**vars(mark), "lon": lon, "lat": lat})
    name, kind = {0: (tr("Entry"), "entry"), last: (tr("Exit"), "exit")}.get(
        number, (tr("Waypoint {number}").format(number=number), "waypoint")
    )
    return Mark(name=name, kind=kind, lon=lon, lat=lat)


def _roughly_near(lon: float, lat: float, mark: Mark) -> bool:
    """A cheap test before the geodesic one: 0.001 degree of latitude is 110 m."""
    dlon = abs((lon - mark.lon + 180.0) % 360.0 - 180.0)
    return abs(lat - mark.lat) < 0.001 and dlon * np.cos(np.radians(lat)) < 0.001
