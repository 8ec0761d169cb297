"""How the layers of a swim in time look, and how they follow QGIS's temporal controller.

An arrow points where the water goes and is longer the faster it goes; slack is a small ring; a ring with a question
mark says that nobody knows. The shapes alone tell them apart. A row that stands for a while is drawn only while the map
shows that time: of the many rows that overlap one that holds the time's beginning.
"""

from __future__ import annotations

from qgis.core import (
    QgsFontMarkerSymbolLayer,
    QgsGeometryGeneratorSymbolLayer,
    QgsLineSymbol,
    QgsMarkerLineSymbolLayer,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsProperty,
    QgsRuleBasedRenderer,
    QgsSimpleMarkerSymbolLayer,
    QgsSymbol,
    QgsSymbolLayer,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtGui import QColor

from ..words import tr
from .styles.lettering import GENERIC_FAMILY
from .styles.map_tips import tip
from .styles.plan_symbols import STREAM_GREEN
from .styling import INK, MOST_WANTED, PAPER, SWUM, follow_the_clock, put_label, quoted

# Length of an arrow in mm: so much without a stream, so much more for each knot, and no longer than that.
ARROW_MM, ARROW_MM_PER_KN, LONGEST_MM = 4.5, 4.0, 14.0
LEGEND_MM = "6"  # where there is no rate
ARROWS_TO_SCALE, GRID_TO_SCALE = 45_000.0, 80_000.0  # beyond them arrows would lie on each other
NOW = '("begin" <= @map_start_time AND "end" > @map_start_time)'
AT_ANY_TIME = "@map_start_time IS NULL"
TICKS_MIN = 10
LABEL_AWAY_MM = 3.5
WORDS_TO_SCALE = 30_000.0


def style_swimmer(layer: QgsVectorLayer) -> None:
    """The swimmer now, with clock and tide; while no time is shown small dots every ten minutes."""
    swimmer = QgsMarkerSymbol.createSimple(
        {"name": "circle", "size": "6", "color": PAPER, "outline_color": INK, "outline_width": "0.7"}
    )
    inner = {"name": "circle", "size": "3.2", "color": SWUM, "outline_style": "no"}
    swimmer.appendSymbolLayer(QgsSimpleMarkerSymbolLayer.create(inner))
    dot = QgsMarkerSymbol.createSimple(
        {"name": "circle", "size": "1.5", "color": PAPER, "outline_color": SWUM, "outline_width": "0.4"}
    )
    ticks = f'{AT_ANY_TIME} AND "minute" % {TICKS_MIN} = 0 AND NOT "stay"'
    layer.setRenderer(
        _rules(
            (NOW, swimmer, tr("Swimmer, at the time shown")),
            (ticks, dot, tr("Every {} minutes, while no time is shown").format(TICKS_MIN)),
        )
    )
    words = f"\"clock\" || '\\n' || '{quoted(tr('tide'))} ' || \"tide\""
    put_label(
        layer,
        f"if({NOW}, {words}, '')",
        QgsPalLayerSettings.Placement.OrderedPositionsAroundPoint,
        priority=MOST_WANTED,
    )
    _label_above(layer)
    told = ((tr("Hold"), '"hold"'), (tr("Stream"), '"stream"'), (tr("Tide"), '"tide"'))
    layer.setMapTipTemplate(tip('"clock" || \' \' || "place"', *told))
    layer.setDisplayExpression('"clock" || \' \' || "place"')
    follow_the_clock(layer)


def _label_above(layer: QgsVectorLayer) -> None:
    """Above while there is room, so that it does not jump about when the swim is played; else below or beside."""
    settings = layer.labeling().settings()
    settings.predefinedPositionOrder = [
        getattr(QgsPalLayerSettings.PredefinedPointPosition, place)
        for place in ("TopMiddle", "BottomMiddle", "TopRight", "TopLeft", "BottomRight", "BottomLeft")
    ]
    settings.dist = LABEL_AWAY_MM
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))


def style_stream_along(layer: QgsVectorLayer) -> None:
    """Arrows at the swimmer's times; those of a stay, which lie on each other, only at their time."""
    near = f"coalesce(@map_scale, 0) < {ARROWS_TO_SCALE:.0f}"
    seen = f'(NOT "stay" AND {AT_ANY_TIME} AND ("state" = \'unknown\' OR {near})) OR {NOW} OR "begin" IS NULL'
    layer.setRenderer(_stream_rules(seen, edge_mm=0.9))
    shown = f"if({seen}, if(\"state\" = 'runs', format_number(\"rate_kn\", 1) || ' kn', ''), '')"
    around = QgsPalLayerSettings.Placement.AroundPoint
    put_label(layer, shown, around, size_pt=8.0, color=STREAM_GREEN, priority=2, to_scale=WORDS_TO_SCALE)
    _stream_tip(layer)
    follow_the_clock(layer)


def style_stream_around(layer: QgsVectorLayer) -> None:
    """Lighter arrows round the route, at the time shown only."""
    layer.setRenderer(_stream_rules(NOW, edge_mm=0.0))
    layer.setScaleBasedVisibility(True)
    layer.setMinimumScale(GRID_TO_SCALE)
    layer.setLabelsEnabled(False)
    _stream_tip(layer)
    follow_the_clock(layer)


TIME_STYLES = {
    "SWIMMER": style_swimmer,
    "STREAM_ALONG": style_stream_along,
    "STREAM_AROUND": style_stream_around,
}


def _stream_rules(seen: str, *, edge_mm: float) -> QgsRuleBasedRenderer:
    return _rules(
        (f"\"state\" = 'runs' AND ({seen})", _arrow(edge_mm), tr("Stream goes this way; longer is faster")),
        (f"\"state\" = 'slack' AND ({seen})", _slack(), tr("Slack, below 0.1 kn")),
        (f"\"state\" = 'unknown' AND ({seen})", _unknown(), tr("Stream not known")),
    )


def _rules(*kinds: tuple[str, QgsSymbol, str]) -> QgsRuleBasedRenderer:
    root = QgsRuleBasedRenderer.Rule(None)
    for condition, symbol, words in kinds:
        rule = QgsRuleBasedRenderer.Rule(symbol)
        rule.setFilterExpression(condition)
        rule.setLabel(words)
        root.appendChild(rule)
    return QgsRuleBasedRenderer(root)


def _arrow(edge_mm: float) -> QgsMarkerSymbol:
    """An arrow along the line from the place to where the row points: right on any map, turned or not."""
    whole = QgsMarkerSymbol.createSimple({"name": "circle", "size": "0.1", "color": PAPER, "outline_style": "no"})
    way = QgsGeometryGeneratorSymbolLayer.create(
        {"geometryModifier": 'make_line($geometry, make_point("to_lon", "to_lat"))'}
    )
    way.setSymbolType(QgsSymbol.SymbolType.Line)
    line = QgsLineSymbol.createSimple({"line_style": "no", "line_color": PAPER})
    line.setClipFeaturesToExtent(False)  # else it would start anew at the edge of the map
    if edge_mm:
        line.appendSymbolLayer(_arrow_at_start(PAPER, edge_mm))
    line.appendSymbolLayer(_arrow_at_start(STREAM_GREEN, 0.1 if edge_mm else 0.0))
    way.setSubSymbol(line)
    whole.changeSymbolLayer(0, way)
    return whole


def _arrow_at_start(color: str, edge_mm: float) -> QgsMarkerLineSymbolLayer:
    look = {"name": "arrow", "angle": "90", "size": LEGEND_MM, "color": color, "outline_color": color}
    head = QgsMarkerSymbol.createSimple({**look, "outline_width": str(edge_mm)})
    size = f'min({LONGEST_MM}, {ARROW_MM} + {ARROW_MM_PER_KN} * "rate_kn")'
    from_tail = f"'0,' || to_string(-0.5 * {size})"  # its tail stands on the place
    for what, value in (
        (QgsSymbolLayer.Property.PropertySize, size),
        (QgsSymbolLayer.Property.PropertyOffset, from_tail),
    ):
        head.symbolLayer(0).setDataDefinedProperty(what, QgsProperty.fromExpression(value))
    start = QgsMarkerLineSymbolLayer.create({"placement": "firstvertex"})
    start.setRotateSymbols(True)
    start.setSubSymbol(head)
    return start


def _slack() -> QgsMarkerSymbol:
    return QgsMarkerSymbol.createSimple(
        {"name": "circle", "size": "1.9", "color": PAPER, "outline_color": STREAM_GREEN, "outline_width": "0.5"}
    )


def _unknown() -> QgsMarkerSymbol:
    ring = QgsMarkerSymbol.createSimple(
        {"name": "circle", "size": "4.4", "color": PAPER, "outline_color": INK, "outline_width": "0.4"}
    )
    ring.appendSymbolLayer(QgsFontMarkerSymbolLayer(GENERIC_FAMILY, "?", 3.4, QColor(INK)))
    return ring


def _stream_tip(layer: QgsVectorLayer) -> None:
    layer.setMapTipTemplate(tip('"clock"', (tr("Stream"), '"words"')))
    layer.setDisplayExpression('"clock" || \' \' || "words"')
