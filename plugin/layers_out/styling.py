"""How result layers look: by shape and pattern first, so that grey print and colour-blind eyes lose nothing.

Two inks: a dark blue for what is swum, a dark orange for what to mind; their greys differ too.
"""

from __future__ import annotations

from qgis.core import (
    Qgis,
    QgsCategorizedSymbolRenderer,
    QgsFillSymbol,
    QgsGeometryGeneratorSymbolLayer,
    QgsLinePatternFillSymbolLayer,
    QgsLineSymbol,
    QgsMarkerLineSymbolLayer,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsProcessingLayerPostProcessorInterface,
    QgsRendererCategory,
    QgsSimpleMarkerSymbolLayer,
    QgsSingleSymbolRenderer,
    QgsSymbol,
    QgsTextBufferSettings,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
    QgsWkbTypes,
)
from qgis.PyQt.QtGui import QColor

from ..words import tr
from .styles.lettering import plain_letters
from .styles.map_tips import plain, tip
from .transits_layer import style_transits

SWUM = "#12355b"
MIND = "#b34700"
PAPER = "#ffffff"
INK = "#000000"
FEW_WORDS_TO_SCALE = 15_000.0
MOST_WANTED = 10  # of the priorities of labels, 0 to 10


def style_legs(layer: QgsVectorLayer) -> None:
    """Thin dashes with an arrow half-way for a leg that can be swum, crosses for one that cannot."""
    swum = _line(color=INK, width="0.3", customdash="4;2", use_custom_dash="1")
    _mark_along(swum, "triangle", size="3.2", angle="90", placement="centralpoint")
    stuck = _line(color=INK, width="0.3", customdash="1;2", use_custom_dash="1")
    _mark_along(stuck, "cross2", size="2.4", placement="interval", interval="6")
    layer.setRenderer(_categories("feasible", ((1, swum, tr("Can be swum")), (0, stuck, tr("Cannot be swum")))))
    not_swum = quoted(tr("not swimmable"))
    swum_words = "\"card_heading\" || '  ' || ceil(\"minutes\" - 0.001) || ' min'"
    words = f'if("feasible" = 0 or "card_heading" is null, \'{not_swum}\', {swum_words})'
    # Level words beside the leg find room where the leg is shorter than they are; along it they do not.
    beside = QgsPalLayerSettings.Placement.AroundPoint
    put_label(layer, f"\"number\" || ': ' || {words}", beside, priority=MOST_WANTED)
    _label_short_of_the_middle(layer)
    numbers = (
        (tr("Hold"), '"card_heading"'),
        (tr("Minutes"), 'ceil("minutes" - 0.001)'),
        (tr("Metres"), 'round("distance_m")'),
        (tr("Stream to, true"), 'round("stream_set_deg")'),
        (tr("Knots"), 'round("stream_kn", 1)'),
    )
    layer.setMapTipTemplate(tip('"number" || \': \' || "end_name"', *numbers) + "<br>" + plain('"reason"'))
    layer.setDisplayExpression('"number" || \': \' || "end_name"')


def style_track(layer: QgsVectorLayer) -> None:
    """A thick line with a white edge, thin dots where the leg cannot be swum; its times for the temporal controller."""
    swum = _line(color=PAPER, width="1.8", capstyle="round", joinstyle="round")
    core = _line(color=SWUM, width="0.9", capstyle="round", joinstyle="round")  # must outlive the clone
    swum.appendSymbolLayer(core.symbolLayer(0).clone())
    drifted = _line(color=SWUM, width="0.4", customdash="0.6;1.8", use_custom_dash="1", capstyle="round")
    layer.setRenderer(_categories("feasible", ((1, swum, tr("Swum")), (0, drifted, tr("Cannot be swum")))))
    follow_the_clock(layer)
    off = (tr("Off the ruler line, m"), 'round("off_line_m")')
    layer.setMapTipTemplate(tip('"leg" || \': \' || "end_name"', off))


def follow_the_clock(layer: QgsVectorLayer) -> None:
    """Rows belong to the time from ``begin`` to ``end``, the end left out; one without times to every time.

    QGIS compares such times by their digits alone; both are UTC's, so the zone of the machine does not matter.
    """
    times = layer.temporalProperties()
    times.setMode(Qgis.VectorTemporalMode.FeatureDateTimeStartAndEndFromFields)
    times.setStartField("begin")
    times.setEndField("end")
    times.setLimitMode(Qgis.VectorTemporalLimitMode.IncludeBeginExcludeEnd)
    times.setIsActive(True)


def style_flags(layer: QgsVectorLayer) -> None:
    """Stop: a full diamond, its stretch hatched; warn: an open triangle, dashes; note: a small ring, dots."""
    stop = _marker(name="diamond", size="7", color=MIND, outline_color=PAPER, outline_width="0.4")
    _stretch(stop, width="1.6", line_style="solid")
    warn = _marker(name="triangle", size="4.6", color=PAPER, outline_color=MIND, outline_width="0.7")
    _stretch(warn, width="1.2", line_style="dash")
    note = _marker(name="circle", size="2.6", color=PAPER, outline_color=INK, outline_width="0.5")
    _stretch(note, width="0.6", line_style="dot")
    kinds = (("stop", stop, tr("Stop")), ("warn", warn, tr("Warning")), ("note", note, tr("Note")))
    layer.setRenderer(_categories("severity", kinds))
    layer.setMapTipTemplate(tip('"name"') + "<br>" + plain('"message"'))
    layer.setDisplayExpression('"message"')
    around = QgsPalLayerSettings.Placement.AroundPoint
    put_label(layer, _few_words(), around, size_pt=8.0, color=MIND, to_scale=FEW_WORDS_TO_SCALE)


def _few_words() -> str:
    """An expression for what a flag says on the map: a word or two and its clock time; notes say nothing there."""
    words = {
        "channel": tr("Crossing"),
        "closed_area": tr("Closed"),
        "land": tr("Land"),
        "over_range": tr("Over range"),
        "over_time": tr("Over time"),
        "not_swimmable": tr("Not swimmable"),
        "after_dark": tr("Dark"),
        "shallow": tr("Shoal"),
        "deep": tr("Too deep"),
        "stream_unknown": tr("Stream not known"),
        "stream_extrapolated": tr("Stream extrapolated"),
        "tide_unknown": tr("Tide not known"),
    }
    kinds = " ".join(f"WHEN \"kind\" = '{kind}' THEN '{quoted(word)}'" for kind, word in words.items())
    clock = "coalesce(' ' || substr(\"begin_local\", 12, 5), '')"
    return f"if(\"severity\" = 'note', '', CASE {kinds} ELSE '' END || {clock})"


def style_stops(layer: QgsVectorLayer) -> None:
    """Entry: a full square; exit: an open square; mark: a ring with a dot; waypoint: a small cross. With names."""
    entry = _marker(name="square", size="3.4", color=INK, outline_color=PAPER, outline_width="0.4")
    leave = _marker(name="square", size="3.4", color=PAPER, outline_color=INK, outline_width="0.7")
    mark = _marker(name="circle", size="4", color=PAPER, outline_color=INK, outline_width="0.5")
    mark.appendSymbolLayer(QgsSimpleMarkerSymbolLayer.create({"name": "circle", "size": "1.4", "color": INK}))
    waypoint = _marker(name="cross", size="3", color=INK, outline_color=INK, outline_width="0.5")
    kinds = (
        ("entry", entry, tr("Entry")),
        ("exit", leave, tr("Exit")),
        ("mark", mark, tr("Mark")),
        ("waypoint", waypoint, tr("Waypoint")),
        ("", waypoint.clone(), tr("Other")),
    )
    layer.setRenderer(_categories("kind", kinds))
    put_label(layer, '"name"', QgsPalLayerSettings.Placement.AroundPoint)


def style_arrivals(layer: QgsVectorLayer) -> None:
    """A ring with the name and the times by which a tenth, half and nine tenths are there."""
    layer.setRenderer(
        QgsSingleSymbolRenderer(_marker(name="circle", size="3", color=PAPER, outline_color=INK, outline_width="0.5"))
    )
    times = " || ' / ' || ".join(f"coalesce(substr(\"{name}_local\", 12, 5), '-')" for name in ("p10", "p50", "p90"))
    put_label(layer, f"\"name\" || '  ' || {times}", QgsPalLayerSettings.Placement.AroundPoint)


def style_ellipses(layer: QgsVectorLayer) -> None:
    """A thin outline, nothing inside."""
    layer.setRenderer(QgsSingleSymbolRenderer(_outline(color=SWUM, width="0.5", style="solid")))


def style_drift(layer: QgsVectorLayer) -> None:
    """Outlines: solid after half an hour, dashed after one, dotted after two."""
    kinds = ((30, "solid", "0.6"), (60, "dash", "0.5"), (120, "dot", "0.5"))
    words = tr("After {} min")
    layer.setRenderer(
        _categories(
            "after_min",
            tuple(
                (after, _outline(color=MIND, width=width, style=style), words.format(after))
                for after, style, width in kinds
            ),
        )
    )


def style_reach(layer: QgsVectorLayer) -> None:
    """Areas reached: dashed outlines with their minutes; the area with time to stay: slanting lines, a dark edge."""
    reached, stay = _outline(color=SWUM, width="0.35", style="dash"), stay_symbol()
    kinds = (("out", reached, tr("Reached in so many minutes")), ("stay", stay, tr("Time to stay and be home")))
    layer.setRenderer(_categories("kind", kinds))
    put_label(layer, "if(\"kind\" = 'out', \"label\", '')", QgsPalLayerSettings.Placement.Line)


def stay_symbol() -> QgsFillSymbol:
    """Slanting lines and a dark edge: where there is time to stay."""
    stay = _outline(color=SWUM, width="0.9", style="solid")
    slanting = QgsLinePatternFillSymbolLayer()
    slanting.setLineAngle(45.0)
    slanting.setDistance(2.6)
    slanting.setSubSymbol(_line(color=SWUM, width="0.2"))
    stay.insertSymbolLayer(0, slanting)
    return stay


def style_marks_reach(layer: QgsVectorLayer) -> None:
    """A ring with the name, the minutes out and the clock time to leave by."""
    layer.setRenderer(
        QgsSingleSymbolRenderer(_marker(name="circle", size="3", color=PAPER, outline_color=INK, outline_width="0.5"))
    )
    leave = "coalesce(substr(\"latest_leave_local\", 12, 5), '-')"
    words = f"\"name\" || '  ' || coalesce(ceil(\"out_min\"), '-') || ' min, ' || {leave}"
    put_label(layer, words, QgsPalLayerSettings.Placement.AroundPoint)


STYLES = {
    "LEGS": style_legs,
    "TRACK": style_track,
    "FLAGS": style_flags,
    "STOPS": style_stops,
    "ARRIVALS": style_arrivals,
    "ELLIPSES": style_ellipses,
    "DRIFT": style_drift,
    "REACH": style_reach,
    "MARKS_REACH": style_marks_reach,
    "TRANSITS": style_transits,
}


class ResultStyler(QgsProcessingLayerPostProcessorInterface):
    """Styles a result layer when Processing has loaded it. The algorithm keeps the object alive until then."""

    def __init__(self, parameter: str) -> None:
        super().__init__()
        self.parameter = parameter

    def postProcessLayer(self, layer, context, feedback) -> None:  # noqa: ANN001 - QGIS's signature
        """Give the layer its look and have it redrawn."""
        if isinstance(layer, QgsVectorLayer):
            STYLES[self.parameter](layer)
            layer.triggerRepaint()


def _label_short_of_the_middle(layer: QgsVectorLayer) -> None:
    """The way out and the way home by the same line are labelled at places of their own."""
    settings = layer.labeling().settings()
    settings.dist = 3.0  # nearer than that the labels of a way out and home shut each other out
    settings.geometryGenerator = "line_interpolate_point($geometry, 0.4 * length($geometry))"
    settings.geometryGeneratorType = QgsWkbTypes.GeometryType.PointGeometry
    settings.geometryGeneratorEnabled = True
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))


def quoted(words: str) -> str:
    """Words as part of a text in an expression."""
    return words.replace("'", "''")


def _line(**properties: str) -> QgsLineSymbol:
    wanted = {"line_color": properties.pop("color"), "line_width": properties.pop("width")}
    return QgsLineSymbol.createSimple({**wanted, **properties})


def _outline(*, color: str, width: str, style: str) -> QgsFillSymbol:
    return QgsFillSymbol.createSimple(
        {"style": "no", "outline_color": color, "outline_width": width, "outline_style": style}
    )


def _marker(**properties: str) -> QgsMarkerSymbol:
    return QgsMarkerSymbol.createSimple(properties)


def _mark_along(symbol: QgsLineSymbol, name: str, *, size: str, angle: str = "0", **placing: str) -> None:
    along = QgsMarkerLineSymbolLayer.create(placing)
    along.setRotateSymbols(True)
    along.setSubSymbol(_marker(name=name, size=size, angle=angle, color=INK, outline_color=INK, outline_width="0.4"))
    symbol.appendSymbolLayer(along)


def _stretch(symbol: QgsMarkerSymbol, *, width: str, line_style: str) -> None:
    """Under the marker, the stretch that the flag's own WKT describes; nothing where there is none."""
    drawn = QgsGeometryGeneratorSymbolLayer.create({"geometryModifier": 'geom_from_wkt("stretch_wkt")'})
    drawn.setSymbolType(QgsSymbol.SymbolType.Line)
    drawn.setSubSymbol(_line(color=MIND, width=width, line_style=line_style, capstyle="flat"))
    symbol.insertSymbolLayer(0, drawn)


def _categories(field: str, kinds: tuple[tuple[object, QgsSymbol, str], ...]) -> QgsCategorizedSymbolRenderer:
    return QgsCategorizedSymbolRenderer(field, [QgsRendererCategory(*kind) for kind in kinds])


def put_label(
    layer: QgsVectorLayer,
    expression: str,
    placement: QgsPalLayerSettings.Placement,
    *,
    size_pt: float = 9.0,
    color: str = INK,
    priority: int = 5,
    to_scale: float = 0.0,
) -> None:
    """Labels with an edge of paper, which any background lets read; up to a scale's denominator where one is given.

    One that finds no free place is left out: headings over headings are misread.
    """
    edge = QgsTextBufferSettings()
    edge.setEnabled(True)
    edge.setSize(0.9)
    edge.setColor(QColor(PAPER))
    look = plain_letters(size_pt, color)
    look.setBuffer(edge)
    settings = QgsPalLayerSettings()
    settings.fieldName = expression
    settings.isExpression = True
    settings.placement = placement
    settings.dist = 1.5
    settings.priority = priority
    settings.scaleVisibility = bool(to_scale)
    settings.minimumScale = to_scale
    settings.setFormat(look)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)
