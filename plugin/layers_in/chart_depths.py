"""Charted contours, soundings and the depths over rocks, wrecks and obstructions as depths of a plan.

A plan holds no depth above its datum. What dries is entered as 0 m, which is counted: 0 m warns a swimmer of shallow
water, a missing row would not.
"""

from __future__ import annotations

from ..core.chart.object_classes import AT_OR_ABOVE_DATUM, HAZARDS, HAZARDS_OF_UNKNOWN_DEPTH
from ..core.words import marked, spoken
from ..words import tr
from .chart_areas import POINT_RADIUS_M, restriction_rows
from .chart_cell import CellFacts, ChartObject
from .plan_rows import PlanRow, Reading
from .whole_shapes import Shapes

DRIES = marked("dries: depth taken as 0 m")


def contour_reading(thing: ChartObject, shapes: Shapes, facts: CellFacts) -> Reading:
    """A depth contour for each line, at its VALDCO."""
    depth_m = thing.number_or_none("VALDCO")
    if shapes.kind != "LineString":
        return Reading(
            reason=tr("contour charted as a point") if shapes.kind == "Point" else tr("contour charted as a polygon")
        )
    if depth_m is None:
        return Reading(reason=tr("contour without a depth"))
    return _depths("depth_contours", shapes, depth_m)


def sounding_reading(thing: ChartObject, shapes: Shapes, facts: CellFacts) -> Reading:
    """A sounding at each point."""
    depth_m = thing.number_or_none("DEPTH")
    if shapes.kind != "Point" or depth_m is None:
        return Reading(reason=tr("sounding without a place or a depth"))
    return _depths("soundings", shapes, depth_m)


def hazard_reading(thing: ChartObject, shapes: Shapes, facts: CellFacts) -> Reading:
    """A shoal sounding where the depth is charted or cannot be more than 0, a caution area where it is unknown.

    A hazard with an extent is a caution area in any case, and its least depth a sounding inside it.
    """
    depth_m, notes = thing.number_or_none("VALSOU"), ()
    level = int(thing.number_or_none("WATLEV") or 0)
    if depth_m is None and level in AT_OR_ABOVE_DATUM:
        depth_m = 0.0
        notes = (tr("no depth charted, {level}: taken as 0 m").format(level=spoken(AT_OR_ABOVE_DATUM[level])),)
    unknown = depth_m is None
    words = spoken((HAZARDS_OF_UNKNOWN_DEPTH if unknown else HAZARDS)[thing.object_class])
    sounded = Reading() if unknown else _depths("soundings", shapes, depth_m)
    area = restriction_rows(thing, shapes, facts, words) if _is_area(shapes, unknown) else ()
    if unknown and shapes.kind == "Point":
        notes = (tr("no depth charted: caution circle of {radius:g} m").format(radius=POINT_RADIUS_M),)
    elif unknown:
        notes = (tr("no depth charted: caution area") if area else tr("no depth charted"),)
    rows = sounded.rows + area
    return Reading(
        rows=rows,
        reason="" if rows else tr("line hazard without a depth"),
        notes=notes + sounded.notes,
        hazard=words if unknown else "",
    )


def _is_area(shapes: Shapes, unknown: bool) -> bool:
    return shapes.kind == "Polygon" or (unknown and shapes.kind == "Point")


def _depths(layer: str, shapes: Shapes, depth_m: float) -> Reading:
    """Rows of one depth; for soundings a line or area is given its depth at a point on it."""
    values = {"depth_m": max(depth_m, 0.0)}
    parts = shapes.parts
    if layer == "soundings" and shapes.kind != "Point":
        parts = tuple(part.pointOnSurface() for part in parts)
    rows = tuple(PlanRow(layer=layer, geometry=part, values=values) for part in parts)
    return Reading(rows=rows, notes=(spoken(DRIES),) if depth_m < 0.0 else ())
