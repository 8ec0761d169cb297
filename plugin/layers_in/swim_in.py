"""Everything a swim is planned from: a plan's layers, or others in their place, as one request to the core."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from qgis.core import QgsFeatureSource

from ..core.chart.areas import Chart
from ..core.chart.marks import Mark, Route, doubts_about_stops, marks_at_stops
from ..core.clock import PlanClock, moment_from_text, span_from_texts, zone_named
from ..core.errors import SwimPlanError
from ..core.geodesy import LocalFrame, check_position
from ..core.solve.request import PlanSettings, SwimRequest
from ..core.solve.swim import SwimWay
from ..words import tr
from .marks_in import marks_from
from .plan_tables import tables_of
from .swim_chart import chart_from, depths_from
from .swim_people import settings_from, settings_read, swimmer_from
from .table import Table
from .transits_in import picked_from
from .water_in import water_from

AROUND_ROUTE_M = 2000.0


@dataclass(frozen=True, kw_only=True)
class SwimAsked:
    """What the user asked for besides the layers: texts as typed, ``pace_m_s`` None for the swimmer's own.

    ``until`` is the end of the time that is looked at, empty for the swim alone; then both may be dates.
    """

    route: str = ""
    depart: str
    until: str = ""
    swimmer: str = ""
    pace_m_s: float | None = None
    way: SwimWay = SwimWay()


StopsLaid = Callable[[list[Mark]], tuple[Route, list[Mark]]]
PlacesAsked = Callable[[Mapping[str, Table], LocalFrame], np.ndarray]


def request_from(
    plan: str | Path | None,
    sources: Mapping[str, QgsFeatureSource],
    asked: SwimAsked,
    laid: StopsLaid | None = None,
    places: PlacesAsked | None = None,
) -> SwimRequest:
    """The request for one swim.

    ``sources`` are layers by the plan's layer names; those not given come from the plan. ``laid`` gives a route and its
    stops out of the plan's marks, in the place of the route asked for; ``places`` gives the corners (2, 2) in metres of
    where the stream may be asked for, else around the route. Raises SwimPlanError, and BadInputError naming layer, row,
    field and value.
    """
    warnings: list[str] = []
    stored = settings_read(plan, sources) if plan else {}
    settings = settings_from(stored) if plan else PlanSettings()
    if not plan:
        warnings.append(tr("No plan was given: times are read and shown in UTC, and settings are the defaults."))
    tables = tables_of(plan, sources, warnings)
    marks = marks_from(tables.get("marks"))
    route, stops = laid(marks) if laid else drawn_route(tables, asked, marks, warnings)
    frame = LocalFrame.around(route.lonlat)
    zone = zone_named(settings.zone)
    depart, end = (
        span_from_texts(asked.depart, asked.until, zone)
        if asked.until
        else (moment_from_text(asked.depart, zone), None)
    )
    clock = PlanClock(start=depart, zone_name=settings.zone, end=end)
    chart = chart_from(tables, frame, zone, warnings)
    places_m = places(tables, frame) if places else route_box_m(route, frame)
    water = water_from(tables, chart, frame, clock, places_m, plan, warnings, port=stored.get("port", ""))
    return SwimRequest(
        route=route,
        stops=tuple(stops),
        depart=depart,
        swimmer=swimmer_from(tables.get("swimmers"), asked.swimmer, asked.pace_m_s, warnings),
        way=asked.way,
        frame=frame,
        clock=clock,
        stream=water.stream,
        tide=water.tide,
        chart=chart,
        depths=depths_from(tables, frame),
        settings=settings,
        exits=exits_of(marks),
        transits=picked_from(tables, marks, warnings),
        warnings=tuple(warnings + _missing(chart, tables)),
    )


def _missing(chart: Chart, tables: Mapping[str, Table]) -> list[str]:
    """What an empty chart does not mean."""
    words = {"channels": tr("boat channel"), "closed_areas": tr("closed area"), "land": tr("land")}
    empty = [words[name] for name in words if not getattr(chart, name)]
    return (
        [tr("The plan holds no {what}: that is not to say there is none.").format(what=tr(" and no ").join(empty))]
        if empty
        else []
    )


def exits_of(marks: list[Mark]) -> tuple[Mark, ...]:
    """The marks where a swimmer can land."""
    return tuple(mark for mark in marks if mark.kind == "exit")


def drawn_route(
    tables: Mapping[str, Table], asked: SwimAsked, marks: list[Mark], warnings: list[str]
) -> tuple[Route, list[Mark]]:
    """The route asked for, and its stops; SwimPlanError where it is not there once."""
    route = _route(tables.get("routes"), asked.route)
    stops = marks_at_stops(route, marks)
    warnings += doubts_about_stops(route, stops, marks)
    return route, stops


def _route(table: Table | None, name: str) -> Route:
    rows = list(table.rows()) if table else []
    names = [row.values["name"] for row in rows]
    chosen = [row for row in rows if row.values["name"] == name] if name else rows
    if len(chosen) != 1:
        raise SwimPlanError(
            asked=tr("Asked for the route '{name}'").format(name=name) if name else tr("No route was named"),
            allowed=tr("The routes layer has {names}").format(names=", ".join(map(str, names)) or tr("no rows")),
            remedy=tr("Name one route that stands there once, drawn in one piece"),
        )
    lonlat = chosen[0].rings[0].copy()
    lonlat[:, 0] = (lonlat[:, 0] + 180.0) % 360.0 - 180.0  # a line drawn on beyond the date line
    for number, (lon, lat) in enumerate(lonlat, start=1):
        check_position(
            float(lon),
            float(lat),
            tr("Vertex {number} of route '{name}'").format(number=number, name=chosen[0].values["name"]),
        )
    return Route(name=chosen[0].values["name"], lonlat=lonlat, note=chosen[0].values["note"] or "")


def route_box_m(route: Route, frame: LocalFrame) -> np.ndarray:
    """Corners (2, 2) around the route, in metres of the frame, within which the stream may be asked for."""
    stops = frame.to_xy(route.lonlat)
    return np.array([stops.min(axis=0) - AROUND_ROUTE_M, stops.max(axis=0) + AROUND_ROUTE_M])
