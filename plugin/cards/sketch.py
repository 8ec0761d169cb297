"""The north-up sketch of the card: land hatched, legs dashed, the track swum in full, places named, a scale bar.

The layers are made from the plan alone, in metres round its centre, so that no layer of the user's is needed.
"""

from __future__ import annotations

import numpy as np
from qgis.core import (
    QgsBasicNumericFormat,
    QgsCoordinateReferenceSystem,
    QgsFeature,
    QgsFillSymbol,
    QgsGeometry,
    QgsLabelingEngineSettings,
    QgsLabelObstacleSettings,
    QgsLayoutItemMap,
    QgsLayoutItemScaleBar,
    QgsLayoutPoint,
    QgsLayoutSize,
    QgsLinePatternFillSymbolLayer,
    QgsLineSymbol,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsPointXY,
    QgsRectangle,
    QgsSimpleLineSymbolLayer,
    QgsSingleSymbolRenderer,
    QgsSymbol,
    QgsTextBufferSettings,
    QgsUnitTypes,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtGui import QColor

from ..core.geodesy import LocalFrame
from ..core.results.card import Place, distinct_places
from ..core.results.swim_plan import SwimPlan
from .paper import MM, SMALL, Paper, plain, text_format
from .words import tr

STRIP_MM = 11.0  # below the map, for the scale bar and the north arrow
LEAST_WIDTH_M = 200.0
# With more places than this the sketch carries the numbers of the legs, and the rows carry the names.
MOST_NAMED, MOST_NAMED_NARROW, WIDE_MM = 7, 4, 150.0
NAME_MM = 42.0
ROOM_FOR_HALVES_MM = 36.0  # on a shorter scale bar the numbers would touch
SCALE_STEPS_M = (5, 10, 20, 50, 100, 200, 250, 500, 1000, 2000, 2500, 5000, 10000, 20000)


def draw_sketch(paper: Paper, plan: SwimPlan, x: float, y: float, width: float, height: float) -> QgsLayoutItemMap:
    """Put map, frame, scale bar and north arrow into the box; returns the map item."""
    frame = _frame(plan)
    labels = place_labels(plan, width)
    layers = _layers(plan, frame, labels)
    project = paper.layout.project()
    project.addMapLayers(layers, False)
    engine = project.labelingEngineSettings()
    engine.setFlag(QgsLabelingEngineSettings.Flag.UsePartialCandidates, False)
    project.setLabelingEngineSettings(engine)
    chart = QgsLayoutItemMap(paper.layout)
    chart.attemptMove(QgsLayoutPoint(x, y, MM))
    chart.attemptResize(QgsLayoutSize(width, height - STRIP_MM, MM))
    chart.setCrs(_crs(frame))
    chart.setLayers(layers)
    chart.setKeepLayerSet(True)
    chart.setBackgroundColor(QColor("white"))
    chart.setFrameEnabled(True)
    paper.layout.addLayoutItem(chart)
    extent = _extent(plan, frame, labels, width, height - STRIP_MM)
    chart.setExtent(extent)  # an item that never had an extent cannot zoom
    chart.zoomToExtent(extent)
    _scale_bar(paper, chart, x, y + height - STRIP_MM, width)
    return chart


def _frame(plan: SwimPlan) -> LocalFrame:
    return LocalFrame.around(np.array([(place.lon, place.lat) for place in distinct_places(plan)]))


def _crs(frame: LocalFrame) -> QgsCoordinateReferenceSystem:
    return QgsCoordinateReferenceSystem.fromProj(frame.proj_text)


def _swum_and_ruled(plan: SwimPlan) -> tuple[list[np.ndarray], list[np.ndarray]]:
    """Tracks and straight legs as arrays (n, 2) of degrees."""
    tracks = [np.array([(point.lon, point.lat) for point in leg.track]) for leg in plan.legs if len(leg.track) > 1]
    legs = [np.array([(leg.start_lon, leg.start_lat), (leg.end_lon, leg.end_lat)]) for leg in plan.legs]
    return tracks, legs


def _extent(plan: SwimPlan, frame: LocalFrame, labels: list[str], width_mm: float, height_mm: float) -> QgsRectangle:
    """All of the swim with room for the names, in the proportions of the map item."""
    tracks, legs = _swum_and_ruled(plan)
    xy = frame.to_xy(np.concatenate(tracks + legs))
    low, high = xy.min(axis=0), xy.max(axis=0)
    middle = (low + high) / 2.0
    # Names stand beside their places: leave them up to a quarter of the width and a good line on each side.
    beside_mm = min(max(SMALL.width(label) for label in labels) + 5.0, width_mm / 4.0)
    span = np.maximum(high - low, 1.0) / np.array([1.0 - 2.0 * beside_mm / width_mm, 1.0 - 18.0 / height_mm])
    scale_m_mm = max(span[0] / width_mm, span[1] / height_mm, LEAST_WIDTH_M / width_mm)
    half = np.array([width_mm, height_mm]) * scale_m_mm / 2.0
    return QgsRectangle(*(middle - half), *(middle + half))


def _layers(plan: SwimPlan, frame: LocalFrame, labels: list[str]) -> list[QgsVectorLayer]:
    """From the top down: places, tracks, legs, land."""
    tracks, legs = _swum_and_ruled(plan)
    lines = [[QgsPointXY(*xy) for xy in frame.to_xy(line)] for line in tracks]
    rules = [[QgsPointXY(*xy) for xy in frame.to_xy(line)] for line in legs]
    swum = _layer("LineString", frame, [QgsGeometry.fromPolylineXY(line) for line in lines])
    swum.setRenderer(_look(QgsLineSymbol.createSimple({"line_color": "black", "line_width": "0.9"})))
    ruled = _layer("LineString", frame, [QgsGeometry.fromPolylineXY(line) for line in rules])
    dashes = {"line_color": "black", "line_width": "0.25", "customdash": "2;1.5", "use_custom_dash": "1"}
    ruled.setRenderer(_look(QgsLineSymbol.createSimple(dashes)))
    keep_names_off(swum)
    return [_places(plan, frame, labels), swum, ruled, _land(plan, frame)]


def keep_names_off(layer: QgsVectorLayer) -> None:
    """Names avoid this layer's lines as long as there is another place for them."""
    settings = QgsPalLayerSettings()
    settings.drawLabels = False
    obstacle = QgsLabelObstacleSettings()
    obstacle.setIsObstacle(True)
    obstacle.setFactor(2.0)
    settings.setObstacleSettings(obstacle)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)


def _layer(kind: str, frame: LocalFrame, shapes: list[QgsGeometry], names: list[str] | None = None) -> QgsVectorLayer:
    layer = QgsVectorLayer(f"{kind}?field=name:string", "sketch", "memory")
    layer.setCrs(_crs(frame))
    features = []
    for number, shape in enumerate(shapes):
        feature = QgsFeature(layer.fields())
        feature.setGeometry(shape)
        feature.setAttribute("name", names[number] if names else "")
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    layer.updateExtents()
    return layer


def _look(symbol: QgsSymbol) -> QgsSingleSymbolRenderer:
    return QgsSingleSymbolRenderer(symbol)


def _places(plan: SwimPlan, frame: LocalFrame, labels: list[str]) -> QgsVectorLayer:
    places = _places_shown(plan)
    xy = frame.to_xy(np.array([(place.lon, place.lat) for place in places]))
    shapes = [QgsGeometry.fromPointXY(QgsPointXY(*point)) for point in xy]
    layer = _layer("Point", frame, shapes, labels)
    ring = {"name": "circle", "size": "3.2", "color": "white", "outline_color": "black", "outline_width": "0.7"}
    layer.setRenderer(_look(QgsMarkerSymbol.createSimple(ring)))
    edge = QgsTextBufferSettings()
    edge.setEnabled(True)
    edge.setSize(0.8)
    edge.setColor(QColor("white"))
    look = text_format(SMALL)
    look.setBuffer(edge)
    settings = QgsPalLayerSettings()
    settings.fieldName = "name"
    settings.placement = QgsPalLayerSettings.Placement.AroundPoint
    settings.dist = 2.0
    settings.displayAll = True
    settings.setFormat(look)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)
    return layer


def _places_shown(plan: SwimPlan) -> list[Place]:
    """Each position once, to a metre, under its first name."""
    shown: dict[tuple[float, float], Place] = {}
    for place in distinct_places(plan):
        shown.setdefault((round(place.lon, 5), round(place.lat, 5)), place)
    return list(shown.values())


def place_labels(plan: SwimPlan, width_mm: float) -> list[str]:
    """Names, or the numbers of the legs that end there when there are too many places for names."""
    places = _places_shown(plan)
    if len(places) <= (MOST_NAMED if width_mm >= WIDE_MM else MOST_NAMED_NARROW):
        return [SMALL.elide(plain(place.name), NAME_MM) for place in places]
    ending: dict[tuple[float, float], list[str]] = {}
    for leg in plan.legs:
        ending.setdefault((round(leg.end_lon, 5), round(leg.end_lat, 5)), []).append(str(leg.number))
    start = [tr("start")]
    return [",".join(ending.get((round(place.lon, 5), round(place.lat, 5)), start)) for place in places]


def _land(plan: SwimPlan, frame: LocalFrame) -> QgsVectorLayer:
    """Land under a light hatch; rings that make no area are left out."""
    shapes = [QgsGeometry.fromPolygonXY([[QgsPointXY(*xy) for xy in frame.to_xy(ring)]]) for ring in plan.land_rings]
    whole = [shape.makeValid() for shape in shapes]
    layer = _layer("Polygon", frame, [shape for shape in whole if not shape.isEmpty() and shape.area() > 0.0])
    hatch = QgsLinePatternFillSymbolLayer()
    hatch.setLineAngle(45.0)
    hatch.setDistance(2.0)
    hatch.setSubSymbol(QgsLineSymbol.createSimple({"line_color": "black", "line_width": "0.15"}))
    symbol = QgsFillSymbol()
    symbol.changeSymbolLayer(0, hatch)
    symbol.appendSymbolLayer(QgsSimpleLineSymbolLayer(QColor("black"), 0.4))
    layer.setRenderer(_look(symbol))
    return layer


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
    bar.attemptMove(QgsLayoutPoint(x, y + 0.5, MM))
    right = x + width - 6.0
    paper.arrow(right, y + STRIP_MM / 2.0 + 0.3, 8.0, 0.0)
    paper.text("N", right - 8.5, y + STRIP_MM / 2.0 + 2.3, SMALL)
