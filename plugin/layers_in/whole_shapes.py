"""Geometry as a plan can hold it: of one kind, valid, single, and inside the extent asked for."""

from __future__ import annotations

from dataclasses import dataclass

from qgis.core import QgsGeometry, QgsRectangle, QgsWkbTypes

from ..words import tr

KIND_OF_TYPE = {
    "Point": QgsWkbTypes.GeometryType.PointGeometry,
    "LineString": QgsWkbTypes.GeometryType.LineGeometry,
    "Polygon": QgsWkbTypes.GeometryType.PolygonGeometry,
}
TYPE_OF_KIND = {kind: name for name, kind in KIND_OF_TYPE.items()}


@dataclass(frozen=True, kw_only=True)
class Shapes:
    """The single parts of one geometry, after repair and clipping.

    ``kind`` is Point, LineString or Polygon, "" where the geometry was none of them; ``reason`` says why ``parts`` is
    empty: "" when it is not, "clipped" when all of it lies outside, else the words for the report.
    """

    kind: str
    parts: tuple[QgsGeometry, ...] = ()
    repaired: bool = False
    reason: str = ""


def whole_shapes(geometry: QgsGeometry | None, extent: QgsRectangle | None) -> Shapes:
    """The parts of a geometry that a plan can hold.

    An invalid polygon is repaired; what is left of it in other kinds (a line where it folded flat) is dropped.
    ``extent`` is in the geometry's own system; None keeps all.
    """
    if geometry is None or geometry.isNull() or geometry.isEmpty():
        return Shapes(kind="", reason=tr("no geometry"))
    kind = TYPE_OF_KIND.get(geometry.type(), "") or _common_kind(geometry)
    if not kind:
        return Shapes(kind="", reason=tr("mixed geometry collection"))
    if extent is not None and not geometry.boundingBox().intersects(extent):
        return Shapes(kind=kind, reason="clipped")
    repaired = kind == "Polygon" and not geometry.isGeosValid()
    if repaired:
        geometry = geometry.makeValid()
    whole = _parts(geometry, kind)
    if not whole:
        return Shapes(kind=kind, repaired=repaired, reason=tr("geometry without extent"))
    kept = whole if extent is None else [part for piece in whole for part in _inside(piece, kind, extent)]
    return Shapes(kind=kind, parts=tuple(kept), repaired=repaired, reason="" if kept else "clipped")


def _common_kind(collection: QgsGeometry) -> str:
    """The kind of all parts of a geometry collection, "" where they differ."""
    kinds = {TYPE_OF_KIND.get(part.type(), "") for part in collection.asGeometryCollection() if not part.isEmpty()}
    return kinds.pop() if len(kinds) == 1 else ""


def _inside(geometry: QgsGeometry, kind: str, extent: QgsRectangle) -> list[QgsGeometry]:
    if extent.contains(geometry.boundingBox()):
        return [geometry]
    if kind == "Point" or not geometry.boundingBox().intersects(extent):
        return []
    return _parts(geometry.intersection(QgsGeometry.fromRect(extent)), kind)


def _parts(geometry: QgsGeometry, kind: str) -> list[QgsGeometry]:
    """The single flat parts of one kind that have an extent (points apart)."""
    parts = []
    for part in geometry.asGeometryCollection():
        if part.isEmpty() or part.type() != KIND_OF_TYPE[kind]:
            continue
        part = _single_and_flat(part)
        if kind == "Point" or (part.length() > 0.0 and (kind == "LineString" or part.area() > 0.0)):
            parts.append(part)
    return parts


def _single_and_flat(part: QgsGeometry) -> QgsGeometry:
    """A straight-edged copy without Z and M: curves are cut into chords."""
    if QgsWkbTypes.isCurvedType(part.wkbType()):
        part = QgsGeometry(part.constGet().segmentize())
    if not (QgsWkbTypes.hasZ(part.wkbType()) or QgsWkbTypes.hasM(part.wkbType())):
        return part
    flat = part.constGet().clone()
    flat.dropZValue()
    flat.dropMValue()
    return QgsGeometry(flat)
