"""What edits of a route that are not saved have taken from it: stops that no longer lie at their mark lose its stay."""

from __future__ import annotations

import math
from dataclasses import dataclass

from qgis.core import QgsFeatureRequest, QgsGeometry, QgsVectorLayer

from ..words import tr
from .places import MarkPlace, marks_of, within_name

Lonlat = tuple[float, float]


@dataclass(frozen=True, kw_only=True)
class _Change:
    """A route before its edits and with them."""

    name: str
    before: tuple[Lonlat, ...]
    now: tuple[Lonlat, ...]


def lost_stops(routes: QgsVectorLayer | None, marks: QgsVectorLayer | None) -> list[str]:
    """One sentence for each stop that was at a mark as the route is stored, and as it is edited is not.

    A mark at which the route still has another stop is lost by none.
    """
    if routes is None or marks is None or routes.editBuffer() is None:
        return []
    changes = _changes(routes)
    found = marks_of(marks) if changes else []
    words = []
    for change in changes:
        kept = {mark.fid for lonlat in change.now if (mark := _mark_at(lonlat, found)) is not None}
        for number, lonlat in enumerate(change.before, start=1):
            mark = _mark_at(lonlat, found)
            if mark is not None and mark.fid not in kept:
                kept.add(mark.fid)
                words.append(_words(change, number, mark, _stay_min(marks, mark.fid)))
    return words


def _words(change: _Change, number: int, mark: MarkPlace, stay_min: float) -> str:
    about = {"route": change.name, "number": number, "mark": mark.name, "stay": f"{stay_min:g}"}
    if len(change.now) < len(change.before):
        said = tr("'{route}' no longer stops at {mark}")
    else:
        said = tr("Stop {number} of '{route}' no longer lies at {mark}")
    stay = tr("its stay of {stay} min is gone") if stay_min > 0.0 else ""
    return f"{': '.join(filter(None, [said, stay]))}.".format(**about)


def _changes(routes: QgsVectorLayer) -> list[_Change]:
    """The stored routes whose line is edited."""
    edited: dict[int, QgsGeometry] = routes.editBuffer().changedGeometries()
    asked = QgsFeatureRequest().setFilterFids(list(edited)).setSubsetOfAttributes(["name"], routes.fields())
    return [
        _Change(
            name=name if isinstance(name := row["name"], str) else "",
            before=_lonlats(row.geometry()),
            now=_lonlats(edited[row.id()]),
        )
        for row in (routes.dataProvider().getFeatures(asked) if edited else ())
    ]


def _lonlats(geometry: QgsGeometry) -> tuple[Lonlat, ...]:
    return tuple((vertex.x(), vertex.y()) for vertex in geometry.vertices())


def _mark_at(lonlat: Lonlat, marks: list[MarkPlace]) -> MarkPlace | None:
    return next((mark for mark in marks if within_name(*lonlat, mark)), None)


def _stay_min(marks: QgsVectorLayer, fid: int) -> float:
    value = marks.getFeature(fid)["stay_min"]
    return float(value) if isinstance(value, (int, float)) and math.isfinite(value) else 0.0
