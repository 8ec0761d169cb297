"""Charted fairways, lanes, tracks and ferry routes as channels of a plan."""

from __future__ import annotations

from qgis.core import QgsFeature, QgsGeometry, QgsSpatialIndex

from ..core.chart.object_classes import CHANNELS, TRACK_BEARING_LINE, TRAFFIC
from ..core.words import spoken
from ..words import tr
from .chart_areas import restriction_rows
from .chart_cell import CellFacts, ChartObject
from .plan_rows import PlanRow, Reading
from .whole_shapes import Shapes

SAME_WATER = 0.95  # share of a dredged area inside a fairway from which it is that fairway's dredged bottom


def channel_reading(thing: ChartObject, shapes: Shapes, facts: CellFacts) -> Reading:
    """A channel for each part of the object, and a closed area too where it carries a restriction."""
    if shapes.kind == "Point":
        return Reading(reason=tr("point, without the extent of a channel"))
    if thing.object_class == "NAVLNE" and thing.number_or_none("CATNAV") != TRACK_BEARING_LINE:
        return Reading(reason=tr("line of bearing that vessels do not run along (CATNAV not 3)"))
    channel = CHANNELS[thing.object_class]
    orient = thing.number_or_none("ORIENT")
    values = {
        "name": thing.text("OBJNAM") or spoken(channel.words),
        "kind": channel.kind,
        "width_m": channel.width_m if shapes.kind == "LineString" else None,
        "flow_deg": None if orient is None else orient % 360.0,
    }
    rows = tuple(PlanRow(layer="channels", geometry=part, values=values) for part in shapes.parts)
    barred = restriction_rows(thing, shapes, facts, spoken(channel.words)) if thing.codes("RESTRN") else ()
    return Reading(rows=rows + barred, notes=_notes(thing, shapes))


def _notes(thing: ChartObject, shapes: Shapes) -> tuple[str, ...]:
    notes = []
    if shapes.kind == "LineString":
        width_m = CHANNELS[thing.object_class].width_m
        notes.append(tr("line given a width of {width_m:g} m (common practice, no source)").format(width_m=width_m))
    traffic = TRAFFIC.get(int(thing.number_or_none("TRAFIC") or 0))
    if traffic:
        notes.append(spoken(traffic))
    return tuple(notes)


class KnownChannels:
    """The channel areas read so far, to tell a dredged area that is a fairway's own bottom."""

    def __init__(self) -> None:
        self._index = QgsSpatialIndex()
        self._areas: list[QgsGeometry] = []

    def add(self, parts: tuple[QgsGeometry, ...]) -> None:
        """Remember the polygons of a channel."""
        for part in parts:
            feature = QgsFeature(len(self._areas))
            feature.setGeometry(part)
            self._index.addFeature(feature)
            self._areas.append(part)

    def cover(self, parts: tuple[QgsGeometry, ...]) -> bool:
        """Whether every part lies in a known channel, but for a sliver."""
        return bool(parts) and all(self._covers(part) for part in parts)

    def _covers(self, part: QgsGeometry) -> bool:
        near = self._index.intersects(part.boundingBox())
        return any(self._areas[at].intersection(part).area() >= SAME_WATER * part.area() for at in near)
