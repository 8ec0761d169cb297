"""Charted landmarks, beacons, conspicuous buildings, tanks and fixed lights as landmarks of a plan, each once."""

from __future__ import annotations

from collections.abc import Iterator

from qgis.core import QgsGeometry, QgsWkbTypes

from ..core.chart.landmark_classes import BUILDING, FLOATS, LIGHT, SEEN_BADLY, SEEN_WELL, kind_and_words
from ..words import tr
from .chart_cell import CellFacts, ChartCell, ChartObject
from .plan_rows import PlanRow, Reading
from .whole_shapes import Shapes

DECIMALS = 6  # of a degree, 0.1 m: objects that share a point of the chart share its coordinates
LONGEST_WORDS = 30  # of a chart's note that can stand for a name

Place = tuple[float, float]


def landmark_reading(thing: ChartObject, shapes: Shapes, facts: CellFacts) -> Reading:
    """One landmark for the whole object, wherever the extent cuts it.

    One without a name is called by what it is and the minutes of its position, so that names tell them apart.
    """
    view = thing.number_or_none("CONVIS")
    kind, words = kind_and_words(
        thing.object_class, thing.codes("CATLMK"), thing.codes("CATSIL"), thing.codes("FUNCTN")
    )
    if shapes.kind == "LineString":
        return Reading(reason=tr("line, with no one place to look at"))
    if thing.object_class == BUILDING and view != SEEN_WELL:
        return Reading(reason=tr("building that is not charted as conspicuous"))
    said, inform = thing.text("OBJNAM"), thing.text("INFORM").rstrip(".")
    words = words or (inform if len(inform) <= LONGEST_WORDS else "")
    if not (said or words):
        return Reading(reason=tr("neither a name nor a kind charted"))
    point = place_of(thing)
    height_m = thing.number_or_none("HEIGHT")
    values = {
        "name": said or f"{words} {minutes_text(*_lonlat(point))}",
        "kind": kind or None,
        "height_m": None if height_m is None or height_m < 0.0 else height_m,
        "note": _note(thing, view, "" if inform == words else inform) or None,
    }
    notes = () if said else (tr("without a name: called by kind and position"),)
    return Reading(rows=(PlanRow(layer="landmarks", geometry=point, values=values),), notes=notes)


class KnownLandmarks:
    """Places of the landmarks read so far, and of what floats: to tell a light on them from one of its own."""

    def __init__(self, floats: frozenset[Place] = frozenset()) -> None:
        self._floats = floats
        self._places: set[Place] = set()
        self._areas: list[QgsGeometry] = []

    def why_not(self, thing: ChartObject) -> str:
        """Why an object is no landmark of its own; "" where it is one."""
        point = place_of(thing)
        key = _key(point)
        if thing.object_class == LIGHT and key in self._floats:
            return tr("light on something that floats")
        if key in self._places or any(area.contains(point) for area in self._areas):
            return tr("part of a landmark already read")
        return ""

    def add(self, thing: ChartObject) -> None:
        """Remember a landmark that was read."""
        if thing.geometry.type() == QgsWkbTypes.GeometryType.PolygonGeometry:
            self._areas.append(thing.geometry)
        self._places.add(_key(place_of(thing)))


def floating_places(cell: ChartCell) -> frozenset[Place]:
    """Where buoys, light floats and light vessels lie."""
    return frozenset(_key(place_of(thing)) for thing in _floating(cell) if thing.geometry is not None)


def place_of(thing: ChartObject) -> QgsGeometry:
    """The point an object is looked at: its own, or one on its area."""
    return thing.geometry.pointOnSurface()


def minutes_text(lon: float, lat: float) -> str:
    """The minutes of a position to a thousandth, 1.9 m: ``24.600N 30.120W``."""
    return f"{_minutes(lat)}{'S' if lat < 0.0 else 'N'} {_minutes(lon)}{'W' if lon < 0.0 else 'E'}"


def _minutes(angle_deg: float) -> str:
    thousandths = round(abs(angle_deg) * 60_000.0) % 60_000  # 60.000 cannot appear
    return f"{thousandths // 1000:02d}.{thousandths % 1000:03d}"


def _note(thing: ChartObject, view: float | None, inform: str) -> str:
    seen = {SEEN_WELL: tr("conspicuous"), SEEN_BADLY: tr("not conspicuous")}.get(view, "")
    bare = tr("what carries the light is not charted") if thing.object_class == LIGHT else ""
    return "; ".join(part for part in (seen, bare, inform) if part)


def _floating(cell: ChartCell) -> Iterator[ChartObject]:
    for object_class in FLOATS:
        yield from cell.objects(object_class)


def _lonlat(point: QgsGeometry) -> Place:
    place = point.asPoint()
    return place.x(), place.y()


def _key(point: QgsGeometry) -> Place:
    lon, lat = _lonlat(point)
    return round(lon, DECIMALS), round(lat, DECIMALS)
