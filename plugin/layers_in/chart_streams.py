"""Charted stream tables and tide times as stations, rates and tides of a plan."""

from __future__ import annotations

from math import isnan

from qgis.core import QgsGeometry

from ..core.chart.object_classes import STREAM_WORDS_ONLY
from ..core.errors import SwimPlanError
from ..core.water.chart_strings import PANEL_HOURS, StreamPanel, parse_t_hwlw, parse_ts_tsp, parse_ts_tsv, tide_kinds
from ..core.words import spoken
from ..words import tr
from .chart_cell import CellFacts, ChartObject
from .plan_rows import PlanRow, Reading
from .whole_shapes import Shapes


def panel_reading(thing: ChartObject, shapes: Shapes, facts: CellFacts) -> Reading:
    """A stream station with its hourly spring rates (TS_TSP). Hours that the chart leaves blank get no row."""
    try:
        panel = parse_ts_tsp(thing.text("TS_TSP"))
    except SwimPlanError as error:
        return Reading(reason=tr("stream table refused: {error}").format(error=error))
    place = shapes.parts[0] if shapes.kind == "Point" else shapes.parts[0].pointOnSurface()
    station = _station_name(thing, panel, place)
    head = PlanRow(
        layer="stream_stations",
        geometry=place,
        values={
            "station": station,
            "form": "hourly",
            "reference": panel.reference,
            "port": panel.name or panel.station_id,
            "source": tr("{object_class} on {chart}").format(object_class=thing.object_class, chart=facts.citation),
        },
    )
    missing = panel.missing_hours
    notes = (
        tr("spring rates only: neap rates are unknown"),
        *(tr("hour {hour:+d} blank").format(hour=hour) for hour in missing),
    )
    return Reading(rows=(head, *_rates(station, panel)), notes=notes)


def series_reading(thing: ChartObject, shapes: Shapes, facts: CellFacts) -> Reading:
    """Streams at set times (TS_TSV): the chart gives no moments they could be read for without a guess: counted."""
    try:
        count = len(parse_ts_tsv(thing.text("TS_TSV")))
    except SwimPlanError as error:
        return Reading(reason=tr("stream times refused: {error}").format(error=error))
    return Reading(reason=tr("{count} streams at set times, which a plan cannot hold").format(count=count))


def constants_reading(thing: ChartObject, shapes: Shapes, facts: CellFacts) -> Reading:
    """Streams given otherwise than by hours or times: counted with the reason."""
    return Reading(reason=spoken(STREAM_WORDS_ONLY[thing.object_class]))


def tide_reading(thing: ChartObject, shapes: Shapes, facts: CellFacts) -> Reading:
    """High and low waters (T_HWLW) of a named place whose times carry their offset."""
    port = thing.text("OBJNAM")
    if not port:
        return Reading(reason=tr("tide times without a name of their place"))
    try:
        tides = parse_t_hwlw(thing.text("T_HWLW"))
        kinds = tide_kinds(tuple(height_m for _, height_m in tides))
    except SwimPlanError as error:
        return Reading(reason=tr("tide times refused: {error}").format(error=error))
    rows = tuple(
        PlanRow(layer="tides", values={"port": port, "time": moment, "height_m": height_m, "kind": kind})
        for (moment, height_m), kind in zip(tides, kinds)
    )
    return Reading(rows=rows)


def _station_name(thing: ChartObject, panel: StreamPanel, place: QgsGeometry) -> str:
    """The charted name with the place, as many tables of one port bear no name or the port's."""
    point = place.asPoint()
    return f"{thing.text('OBJNAM') or panel.name or panel.station_id} {point.x():.4f} {point.y():.4f}"


def _rates(station: str, panel: StreamPanel) -> tuple[PlanRow, ...]:
    """One row for each hour with a rate; still water, which has no set, is entered with set 0."""
    return tuple(
        PlanRow(
            layer="stream_rates",
            values={
                "station": station,
                "hour": hour,
                "set_deg": 0.0 if isnan(set_deg) else set_deg,
                "spring_kn": rate_kn,
            },
        )
        for hour, (set_deg, rate_kn) in zip(PANEL_HOURS, panel.pairs)
        if not isnan(rate_kn)
    )
