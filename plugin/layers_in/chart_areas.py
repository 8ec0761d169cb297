"""Charted areas with a restriction or a warning as closed areas of a plan, and land as land."""

from __future__ import annotations

import numpy as np
from qgis.core import QgsGeometry, QgsPointXY

from ..core.chart.object_classes import AREAS
from ..core.chart.restrictions import restriction_of, season_of
from ..core.geodesy import LocalFrame
from ..core.words import spoken
from ..words import tr
from .chart_cell import CellFacts, ChartObject
from .plan_rows import PlanRow, Reading
from .whole_shapes import Shapes

# A warning charted at a point gets an area to warn in: about the position error of a fair survey (zone of confidence B,
# +-50 m: S-57 attribute CATZOC, from memory).
POINT_RADIUS_M = 50.0
_CIRCLE_CORNERS = 32


def area_reading(thing: ChartObject, shapes: Shapes, facts: CellFacts) -> Reading:
    """A closed area for each part, with the strictest rule charted for it."""
    if shapes.kind == "LineString":
        return Reading(reason=tr("line, without the extent of an area"))
    notes = (
        (tr("point drawn as a circle of {radius:g} m").format(radius=POINT_RADIUS_M),) if shapes.kind == "Point" else ()
    )
    return Reading(rows=restriction_rows(thing, shapes, facts, spoken(AREAS[thing.object_class])), notes=notes)


def land_reading(thing: ChartObject, shapes: Shapes, facts: CellFacts) -> Reading:
    """Land for each polygon; an islet charted as a point or line has no shore to plan with."""
    if shapes.kind != "Polygon":
        return Reading(
            reason=tr("land charted as a point, without a shore")
            if shapes.kind == "Point"
            else tr("land charted as a line, without a shore")
        )
    values = {"name": thing.text("OBJNAM") or None}
    return Reading(rows=tuple(PlanRow(layer="land", geometry=part, values=values) for part in shapes.parts))


def restriction_rows(thing: ChartObject, shapes: Shapes, facts: CellFacts, words: str) -> tuple[PlanRow, ...]:
    """Rows of `closed_areas` for an object, ``words`` naming what it is where it has no name of its own."""
    restriction = restriction_of(thing.codes("RESTRN"), thing.codes("CATREA"))
    season = season_of(**{name: thing.text(name.upper()) for name in ("persta", "perend", "datsta", "datend")})
    values = {
        "name": thing.text("OBJNAM") or words,
        "rule": restriction.rule,
        "from_time": season.from_time or None,
        "to_time": season.to_time or None,
        "citation": _citation(thing, facts, restriction.words, season.words),
        "checked_on": facts.dated or None,
    }
    return tuple(
        PlanRow(layer="closed_areas", geometry=_area(part, shapes.kind), values=values) for part in shapes.parts
    )


def _citation(thing: ChartObject, facts: CellFacts, restriction: str, season: str) -> str:
    text_file = thing.text("TXTDSC")
    said = (
        restriction,
        season,
        thing.text("INFORM").rstrip("."),
        tr("see the chart's text {name}").format(name=text_file) if text_file else "",
        tr("{object_class} on {chart}").format(object_class=thing.object_class, chart=facts.citation),
    )
    return "; ".join(part for part in said if part)


def _area(part: QgsGeometry, kind: str) -> QgsGeometry:
    return circle_around(part) if kind == "Point" else part


def circle_around(point: QgsGeometry) -> QgsGeometry:
    """A polygon of ``POINT_RADIUS_M`` around a point in degrees."""
    place = point.asPoint()
    turns = np.linspace(0.0, 2.0 * np.pi, _CIRCLE_CORNERS, endpoint=False)
    around = LocalFrame(lon=place.x(), lat=place.y()).to_lonlat(
        POINT_RADIUS_M * np.column_stack([np.sin(turns), np.cos(turns)])
    )
    return QgsGeometry.fromPolygonXY([[QgsPointXY(*lonlat) for lonlat in around.tolist()]])
