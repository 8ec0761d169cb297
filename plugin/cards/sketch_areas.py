"""Channels, ferries and areas with rules on the card's sketch, in thin black lines that hide nothing, and their key."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
from qgis.core import QgsGeometry, QgsLineSymbol, QgsPointXY, QgsRectangle, QgsSingleSymbolRenderer, QgsVectorLayer

from ..core.geodesy import LocalFrame
from ..core.results.swim_plan import ChartShape, SwimPlan
from ..words import tr
from .paper import SMALL, Paper

BAND_MM, CROSSED_MM = 2.0, 1.2  # how wide a border is hatched, and how far apart its lines are
# Longer dashes than those of a straight leg; a ferry's way has dots between them.
DASHES = {"channel": "4;1.5", "ferry": "4;1;0.4;1"}
LINE_MM, HATCH_LINE_MM, EDGE_MM = 0.3, 0.15, 0.3
SWATCH_MM, SWATCH_HIGH_MM, GAP_MM = 9.0, 3.4, 6.0
MakeLayer = Callable[[str, LocalFrame, list[QgsGeometry]], QgsVectorLayer]


def area_layers(
    plan: SwimPlan, frame: LocalFrame, extent: QgsRectangle, metres_a_mm: float, make: MakeLayer
) -> list[QgsVectorLayer]:
    """Borders of channels and ferries dashed, of areas with rules in full and cross-hatched inside.

    Hatches are of real lines: a pattern of QGIS's becomes a picture in a PDF. ``make`` makes a layer of the sketch's.
    """
    seen = areas_in_sight(plan, frame, extent)
    layers = []
    for kind, dashes in DASHES.items():
        borders = [_border(area) for own, area in seen if own == kind]
        look = {"line_color": "black", "line_width": str(LINE_MM), "customdash": dashes, "use_custom_dash": "1"}
        layers.append(_drawn(make("MultiLineString", frame, borders), look))
    ruled = [area for kind, area in seen if kind == "rules"]
    edges = make("MultiLineString", frame, [_border(area) for area in ruled])
    layers.append(_drawn(edges, {"line_color": "black", "line_width": str(EDGE_MM)}))
    hatch = [_crossed(area, extent, metres_a_mm) for area in ruled]
    hatched = make("MultiLineString", frame, [lines for lines in hatch if not lines.isEmpty()])
    layers.append(_drawn(hatched, {"line_color": "black", "line_width": str(HATCH_LINE_MM)}))
    return layers


def areas_in_sight(plan: SwimPlan, frame: LocalFrame, extent: QgsRectangle) -> list[tuple[str, QgsGeometry]]:
    """Kind and area, in metres, of those that the sketch shows some of."""
    sight = QgsGeometry.fromRect(extent)
    areas = ((shape.kind, polygon(shape, frame)) for shape in plan.chart_shapes)
    return [(kind, area) for kind, area in areas if area.intersects(sight)]


def key_width_mm(kinds: list[str]) -> float:
    """Width of the key of these kinds on one line."""
    return sum(SWATCH_MM + 2.0 + SMALL.width(_words(kind)) for kind in kinds) + GAP_MM * (len(kinds) - 1)


def draw_key(paper: Paper, kinds: list[str], x: float, baseline: float) -> None:
    """What the lines mean, each beside a bit of them."""
    for kind in kinds:
        _draw_swatch(paper, kind, x, baseline - SMALL.cap_mm / 2.0 - SWATCH_HIGH_MM / 2.0)
        x += SWATCH_MM + 2.0
        paper.text(_words(kind), x, baseline, SMALL)
        x += SMALL.width(_words(kind)) + GAP_MM


def _words(kind: str) -> str:
    return {"channel": tr("channel"), "ferry": tr("ferry"), "rules": tr("area with rules")}[kind]


def _draw_swatch(paper: Paper, kind: str, x: float, y: float) -> None:
    right, below = x + SWATCH_MM, y + SWATCH_HIGH_MM
    if kind == "rules":
        paper.box(x, y, SWATCH_MM, SWATCH_HIGH_MM, edge_mm=EDGE_MM)
        step = SWATCH_MM / 6.0
        for number in range(5):
            left = x + number * step
            end = min(left + SWATCH_HIGH_MM, right)
            paper.line((left, below), (end, below - (end - left)), thick_mm=HATCH_LINE_MM)
            paper.line((left, y), (end, y + (end - left)), thick_mm=HATCH_LINE_MM)
        return
    lengths = [float(part) for part in DASHES[kind].split(";")]
    for top in (y, below):
        at, number = x, 0
        while at < right - 0.1:
            length = lengths[number % len(lengths)]
            if number % 2 == 0:
                paper.rule(at, top, min(length, right - at), thick_mm=LINE_MM)
            at, number = at + length, number + 1


def polygon(shape: ChartShape, frame: LocalFrame) -> QgsGeometry:
    """The shape in metres; a ring within another takes its inside away."""
    rings = [[QgsPointXY(*xy) for xy in frame.to_xy(np.asarray(ring, dtype=float))] for ring in shape.rings]
    parts = [QgsGeometry.fromPolygonXY([ring]).makeValid() for ring in rings if len(ring) > 2]
    whole = QgsGeometry() if not parts else parts[0]
    for part in parts[1:]:
        whole = whole.symDifference(part)
    return whole


def _border(area: QgsGeometry) -> QgsGeometry:
    return QgsGeometry(area.constGet().boundary())


def _crossed(area: QgsGeometry, extent: QgsRectangle, metres_a_mm: float) -> QgsGeometry:
    """Crossed lines along the inside of the border, as far as the sketch shows."""
    band = area.difference(area.buffer(-BAND_MM * metres_a_mm, 4)).intersection(QgsGeometry.fromRect(extent))
    return crossed_lines(extent, CROSSED_MM * metres_a_mm).intersection(band)


def crossed_lines(extent: QgsRectangle, apart_m: float) -> QgsGeometry:
    """Lines at 45 degrees both ways over all of the extent."""
    height = extent.height()
    starts = np.arange(extent.xMinimum() - height, extent.xMaximum(), math.sqrt(2.0) * apart_m)
    low, high = extent.yMinimum(), extent.yMaximum()
    up = [[QgsPointXY(x, low), QgsPointXY(x + height, high)] for x in starts]
    down = [[QgsPointXY(x, high), QgsPointXY(x + height, low)] for x in starts]
    return QgsGeometry.fromMultiPolylineXY(up + down)


def _drawn(layer: QgsVectorLayer, look: dict[str, str]) -> QgsVectorLayer:
    layer.setRenderer(QgsSingleSymbolRenderer(QgsLineSymbol.createSimple(look)))
    return layer
