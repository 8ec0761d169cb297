"""The north-up sketch of the card: land hatched, legs dashed, the track swum in full, places named, a scale bar.

Channels, ferries and areas with rules are thin lines below all that is swum.

The track of a leg that cannot be swum is dotted and may leave the sketch: nobody means to go where it goes.

The layers are made from the plan alone, in metres round its centre, so that no layer of the user's is needed.
"""

from __future__ import annotations

import math
from functools import partial

import numpy as np
from qgis.core import (
    QgsBasicNumericFormat,
    QgsCoordinateReferenceSystem,
    QgsFeature,
    QgsFillSymbol,
    QgsGeometry,
    QgsLayoutItemMap,
    QgsLayoutItemScaleBar,
    QgsLayoutSize,
    QgsLineSymbol,
    QgsMarkerSymbol,
    QgsPointXY,
    QgsRectangle,
    QgsSimpleLineSymbolLayer,
    QgsSingleSymbolRenderer,
    QgsSymbol,
    QgsUnitTypes,
    QgsVectorLayer,
)
from qgis.PyQt.QtGui import QColor

from ..core.geodesy import LocalFrame
from ..core.results.card import Place, distinct_places, leg_state
from ..core.results.swim_plan import SwimPlan
from ..words import tr
from .block import SMALL_DROP_MM, SMALL_LINE_MM
from .name_places import NameBox, place_names
from .paper import MM, SMALL, Paper, plain, text_format
from .sketch_areas import area_layers, areas_in_sight, draw_key, key_width_mm

HATCH_MM = 2.0
STRIP_MM = 11.0  # below the map, for the scale bar and the north arrow
ROOM_FOR_KEY_MM = 56.0  # height of map, strip and a line of words
LEAST_WIDTH_M = 200.0
NAME_MM = 42.0
# Millimetres of track and legs that a name, and all names, may cover before numbers are better.
NAME_COVERS_MM, NAMES_COVER_MM = 10, 16
ROOM_FOR_HALVES_MM = 36.0  # on a shorter scale bar the numbers would touch
SCALE_STEPS_M = (5, 10, 20, 50, 100, 200, 250, 500, 1000, 2000, 2500, 5000, 10000, 20000)


def draw_sketch(paper: Paper, plan: SwimPlan, x: float, y: float, width: float, height: float) -> QgsLayoutItemMap:
    """Put map, frame, names, scale bar and north arrow into the box; returns the map item."""
    frame = _frame(plan)
    size = (width, height - STRIP_MM)
    extent, names = _arranged(plan, frame, size)
    key = _key(plan, frame, extent, width) if height >= ROOM_FOR_KEY_MM else []
    if key:
        size = (width, size[1] - SMALL_LINE_MM)
        extent, names = _arranged(plan, frame, size)
    layers = _layers(plan, frame, extent, extent.width() / width)
    paper.layout.project().addMapLayers(layers, False)
    chart = QgsLayoutItemMap(paper.layout)
    paper.put(chart, x, y)
    chart.attemptResize(QgsLayoutSize(*size, MM))
    chart.setCrs(_crs(frame))
    chart.setLayers(layers)
    chart.setKeepLayerSet(True)
    chart.setBackgroundColor(QColor("white"))
    chart.setFrameEnabled(True)
    paper.layout.addLayoutItem(chart)
    chart.setExtent(extent)  # an item that never had an extent cannot zoom
    chart.zoomToExtent(extent)
    for words, box in names:
        paper.veil(x + box.left, y + box.top, box.width, box.height)
        paper.text(words, x + box.left + 0.5, y + box.top + box.height - 0.8, SMALL)
    _scale_bar(paper, chart, x, y + size[1], width)
    draw_key(paper, key, x + 1.0, y + size[1] + STRIP_MM + SMALL_DROP_MM)
    return chart


def _key(plan: SwimPlan, frame: LocalFrame, extent: QgsRectangle, width: float) -> list[str]:
    """The kinds of areas in sight, if all of their words fit one line."""
    kinds = list(dict.fromkeys(kind for kind, _ in areas_in_sight(plan, frame, extent)))
    return kinds if key_width_mm(kinds) <= width - 2.0 else []


def _frame(plan: SwimPlan) -> LocalFrame:
    return LocalFrame.around(np.array([(place.lon, place.lat) for place in distinct_places(plan)]))


def _crs(frame: LocalFrame) -> QgsCoordinateReferenceSystem:
    return QgsCoordinateReferenceSystem.fromProj(frame.proj_text)


def _tracks(plan: SwimPlan, state: str) -> list[np.ndarray]:
    """Tracks of the legs of that state (as ``leg_state`` has it) as arrays (n, 2) of degrees."""
    tracked = [leg for leg in plan.legs if len(leg.track) > 1 and leg_state(leg) == state]
    return [np.array([(point.lon, point.lat) for point in leg.track]) for leg in tracked]


def _swum_and_ruled(plan: SwimPlan) -> tuple[list[np.ndarray], list[np.ndarray]]:
    """Tracks that can be swum and straight legs as arrays (n, 2) of degrees: what the sketch must show."""
    tracks = _tracks(plan, "swim")
    legs = [np.array([(leg.start_lon, leg.start_lat), (leg.end_lon, leg.end_lat)]) for leg in plan.legs]
    return tracks, legs


def _extent(plan: SwimPlan, frame: LocalFrame, labels: list[str], width_mm: float, height_mm: float) -> QgsRectangle:
    """All of the swim with room for the names, in the proportions of the map item."""
    tracks, legs = _swum_and_ruled(plan)
    xy = frame.to_xy(np.concatenate(tracks + legs))
    low, high = xy.min(axis=0), xy.max(axis=0)
    middle = (low + high) / 2.0
    # Names stand beside their places: leave them up to 3/10 of the width and a good line on each side.
    beside_mm = min(max(SMALL.width(label) for label in labels) + 5.0, 0.3 * width_mm)
    span = np.maximum(high - low, 1.0) / np.array([1.0 - 2.0 * beside_mm / width_mm, 1.0 - 22.0 / height_mm])
    scale_m_mm = max(span[0] / width_mm, span[1] / height_mm, LEAST_WIDTH_M / width_mm)
    half = np.array([width_mm, height_mm]) * scale_m_mm / 2.0
    middle = middle + _off_the_end_of_land(plan, frame, middle, half, spare=half - span / 2.0)
    return QgsRectangle(*(middle - half), *(middle + half))


def _off_the_end_of_land(
    plan: SwimPlan, frame: LocalFrame, middle: np.ndarray, half: np.ndarray, spare: np.ndarray
) -> np.ndarray:
    """Metres east and north to move the sketch by, within what it has to spare, so that it ends before land does.

    Land of a plan often stops at a straight cut; seen from outside, the cut would read as a shore.
    """
    low, high = middle - half, middle + half
    rings = [frame.to_xy(np.asarray(ring, dtype=float)) for ring in plan.land_rings]
    cut = [ring for ring in rings if ((ring < low) | (ring > high)).any()]  # an islet wholly in sight ends by itself
    if not cut:
        return np.zeros(2)
    land = np.concatenate(cut)
    # How far the sketch looks past the land's low end and its high end; where past both, the swim is off the shore.
    past_low, past_high = land.min(axis=0) - low, high - land.max(axis=0)
    lies_low = (land.min(axis=0) + land.max(axis=0)) / 2.0 < middle
    up = (past_low > 0.0) & ((past_high <= 0.0) | lies_low)
    down = (past_high > 0.0) & ~up
    return np.minimum(np.maximum(spare, 0.0), np.abs(np.where(up, past_low, past_high))) * (up * 1.0 - down * 1.0)


def _layers(plan: SwimPlan, frame: LocalFrame, extent: QgsRectangle, metres_a_mm: float) -> list[QgsVectorLayer]:
    """From the top down: places, tracks, legs, tracks of legs that cannot be swum, channels and areas, land."""
    tracks, legs = _swum_and_ruled(plan)
    drifts = [[QgsPointXY(*xy) for xy in frame.to_xy(line)] for line in _tracks(plan, "stuck")]
    lines = [[QgsPointXY(*xy) for xy in frame.to_xy(line)] for line in tracks]
    rules = [[QgsPointXY(*xy) for xy in frame.to_xy(line)] for line in legs]
    swum = _layer("LineString", frame, [QgsGeometry.fromPolylineXY(line) for line in lines])
    swum.setRenderer(_look(QgsLineSymbol.createSimple({"line_color": "black", "line_width": "0.9"})))
    ruled = _layer("LineString", frame, [QgsGeometry.fromPolylineXY(line) for line in rules])
    dashes = {"line_color": "black", "line_width": "0.25", "customdash": "2;1.5", "use_custom_dash": "1"}
    ruled.setRenderer(_look(QgsLineSymbol.createSimple(dashes)))
    drifted = _layer("LineString", frame, [QgsGeometry.fromPolylineXY(line) for line in drifts])
    dots = {"line_color": "black", "line_width": "0.4", "customdash": "0.4;1.6", "use_custom_dash": "1"}
    drifted.setRenderer(_look(QgsLineSymbol.createSimple(dots)))
    areas = area_layers(plan, frame, extent, metres_a_mm, _layer)
    return [_places(plan, frame), swum, ruled, drifted, *areas, *_land(plan, frame, extent, metres_a_mm)]


def _layer(kind: str, frame: LocalFrame, shapes: list[QgsGeometry]) -> QgsVectorLayer:
    layer = QgsVectorLayer(kind, "sketch", "memory")
    layer.setCrs(_crs(frame))
    features = []
    for shape in shapes:
        feature = QgsFeature()
        feature.setGeometry(shape)
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    layer.updateExtents()
    return layer


def _look(symbol: QgsSymbol) -> QgsSingleSymbolRenderer:
    return QgsSingleSymbolRenderer(symbol)


def _places(plan: SwimPlan, frame: LocalFrame) -> QgsVectorLayer:
    xy = frame.to_xy(np.array([(place.lon, place.lat) for place in _places_shown(plan)]))
    layer = _layer("Point", frame, [QgsGeometry.fromPointXY(QgsPointXY(*point)) for point in xy])
    ring = {"name": "circle", "size": "3.2", "color": "white", "outline_color": "black", "outline_width": "0.7"}
    layer.setRenderer(_look(QgsMarkerSymbol.createSimple(ring)))
    return layer


def _places_shown(plan: SwimPlan) -> list[Place]:
    """Each position once, to a metre, under its first name."""
    shown: dict[tuple[float, float], Place] = {}
    for place in distinct_places(plan):
        shown.setdefault((round(place.lon, 5), round(place.lat, 5)), place)
    return list(shown.values())


def _labels(plan: SwimPlan) -> tuple[list[str], list[str]]:
    """The places' names, and instead of them the numbers of the legs that end there."""
    places = _places_shown(plan)
    ending: dict[tuple[float, float], list[str]] = {}
    for leg in plan.legs:
        ending.setdefault((round(leg.end_lon, 5), round(leg.end_lat, 5)), []).append(str(leg.number))
    numbers = [",".join(ending.get((round(place.lon, 5), round(place.lat, 5)), [tr("start")])) for place in places]
    return [SMALL.elide(plain(place.name), NAME_MM) for place in places], numbers


def _arranged(
    plan: SwimPlan, frame: LocalFrame, size: tuple[float, float]
) -> tuple[QgsRectangle, list[tuple[str, NameBox]]]:
    """Extent and placed words: names if they find room beside the tracks, else the numbers of the legs, as in the rows.

    Dozens of places on a hand's breadth may leave room for neither: then the rows alone name them.
    """
    tracks, legs = _swum_and_ruled(plan)
    places = np.array([(place.lon, place.lat) for place in _places_shown(plan)])
    for labels, most_ink in zip(_labels(plan), (NAME_COVERS_MM, None)):
        extent = _extent(plan, frame, labels, *size)
        scale, corner = size[0] / extent.width(), np.array([extent.xMinimum(), extent.yMaximum()])
        on_map = partial(_on_map, frame=frame, corner=corner, scale=scale)
        lines = np.concatenate([_dense(on_map(line)) for line in tracks + legs])
        widths = [SMALL.width(label) + 1.0 for label in labels]
        boxes = place_names(on_map(places), widths, SMALL.cap_mm + 1.6, size, lines, most_ink=most_ink)
        if boxes is not None and (most_ink is None or sum(box.ink for box in boxes) <= NAMES_COVER_MM):
            return extent, list(zip(labels, boxes))
    return extent, []


def _on_map(lonlat: np.ndarray, *, frame: LocalFrame, corner: np.ndarray, scale: float) -> np.ndarray:
    """Degrees to millimetres from the map's top left corner."""
    return (frame.to_xy(lonlat) - corner) * (scale, -scale)


def _dense(line_mm: np.ndarray) -> np.ndarray:
    """The line as points about a millimetre apart."""
    steps = np.hypot(*np.diff(line_mm, axis=0).T)
    along = np.concatenate([[0.0], np.cumsum(steps)])
    wanted = np.linspace(0.0, along[-1], int(along[-1]) + 2)
    return np.column_stack([np.interp(wanted, along, line_mm[:, 0]), np.interp(wanted, along, line_mm[:, 1])])


def _land(plan: SwimPlan, frame: LocalFrame, extent: QgsRectangle, metres_a_mm: float) -> list[QgsVectorLayer]:
    """The shore, and land under a light hatch; rings that make no area are left out.

    The hatch is of real lines: a pattern of QGIS's becomes a picture in a PDF.
    """
    shapes = [QgsGeometry.fromPolygonXY([[QgsPointXY(*xy) for xy in frame.to_xy(ring)]]) for ring in plan.land_rings]
    whole = [shape.makeValid() for shape in shapes]
    whole = [shape for shape in whole if not shape.isEmpty() and shape.area() > 0.0]
    shores = _layer("Polygon", frame, whole)
    shore = QgsFillSymbol()
    shore.changeSymbolLayer(0, QgsSimpleLineSymbolLayer(QColor("black"), 0.4))
    shores.setRenderer(_look(shore))
    hatch = _hatch(extent, HATCH_MM * metres_a_mm)
    hatched = _layer("MultiLineString", frame, [hatch.intersection(shape) for shape in whole])
    hatched.setRenderer(_look(QgsLineSymbol.createSimple({"line_color": "black", "line_width": "0.15"})))
    return [shores, hatched]


def _hatch(extent: QgsRectangle, apart_m: float) -> QgsGeometry:
    """Parallel lines at 45 degrees over all of the extent."""
    height = extent.height()
    along_m = math.sqrt(2.0) * apart_m
    starts = np.arange(extent.xMinimum() - height, extent.xMaximum(), along_m)
    low, high = extent.yMinimum(), extent.yMaximum()
    return QgsGeometry.fromMultiPolylineXY([[QgsPointXY(x, low), QgsPointXY(x + height, high)] for x in starts])


def _scale_bar(paper: Paper, chart: QgsLayoutItemMap, x: float, y: float, width: float) -> None:
    """A bar of about a third of the width, its length in words beside it, and the north arrow to its right."""
    metres_a_mm = chart.extent().width() / width
    length_m = max((step for step in SCALE_STEPS_M if step <= metres_a_mm * width * 0.4), default=SCALE_STEPS_M[0])
    bar = QgsLayoutItemScaleBar(paper.layout)
    bar.setLinkedMap(chart)
    bar.setStyle("Single Box")
    bar.setUnits(QgsUnitTypes.DistanceUnit.DistanceMeters)
    bar.setMapUnitsPerScaleBarUnit(1.0)
    segments = 2 if length_m / metres_a_mm > ROOM_FOR_HALVES_MM else 1
    bar.setNumberOfSegments(segments)
    bar.setNumberOfSegmentsLeft(0)
    bar.setUnitsPerSegment(length_m / segments)
    bar.setUnitLabel("m")
    bar.setHeight(2.2)
    bar.setLabelBarSpace(0.8)
    bar.setBoxContentSpace(1.0)
    bar.setTextFormat(text_format(SMALL))
    digits = QgsBasicNumericFormat()
    digits.setShowThousandsSeparator(False)
    bar.setNumericFormat(digits)
    paper.layout.addLayoutItem(bar)
    bar.update()
    paper.put(bar, x, y + 0.5)
    right = x + width - 6.0
    paper.arrow(right, y + STRIP_MM / 2.0 + 0.3, 8.0, 0.0)
    paper.text("N", right - 8.5, y + STRIP_MM / 2.0 + 2.3, SMALL)
