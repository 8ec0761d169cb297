"""The best pair of each mark as rows for the plan, with the landmarks that the plan does not hold yet."""

from __future__ import annotations

from collections import Counter

from qgis.core import QgsGeometry, QgsPointXY

from ..core.geodesy import geodesic_leg
from ..core.results.report import unwrapped
from ..core.results.transits import MarkTransits, Transit, TransitsFound
from ..words import tr
from .plan_rows import PlanRow
from .transits_asked import TransitsRequest

SAME_PLACE_M = 1.0


def rows_to_keep(request: TransitsRequest, found: TransitsFound) -> tuple[list[PlanRow], list[str]]:
    """Rows for the layers `landmarks` and `transits`, and why a mark gets none.

    A mark that has transits in the plan keeps them as they are; a landmark whose name does not tell which it is, here
    or in the plan, cannot be referred to.
    """
    rows: list[PlanRow] = []
    told: list[str] = []
    for one in found.marks:
        reason = _why_not(request, one)
        if reason:
            told.append(
                tr("No transits of {mark} were put into the plan: {reason}.").format(mark=one.mark, reason=reason)
            )
            continue
        for transit in (one.fixes[0].first, one.fixes[0].second):
            rows += [_landmark(name, place) for name, place in _new(request, transit)]
            line = QgsGeometry.fromPolylineXY([QgsPointXY(*place) for place in unwrapped(transit.lonlat)])
            names = {"mark": transit.mark, "front": transit.front, "rear": transit.rear}
            rows.append(PlanRow(layer="transits", geometry=line, values=names))
    return rows, told


def _why_not(request: TransitsRequest, one: MarkTransits) -> str:
    if one.mark in request.has_rows:
        return tr("it has some already")
    if not one.fixes:
        return tr("no pair was found")
    times, held = Counter(request.landmarks.names), Counter(request.held.names)
    for transit in (one.fixes[0].first, one.fixes[0].second):
        for name, place in _ends(transit):
            if times[name] > 1 or held[name] > 1:
                return tr("{count} landmarks are called {name}; give each a name of its own").format(
                    count=max(times[name], held[name]), name=name
                )
            if held[name] and _away_m(request, name, place) > SAME_PLACE_M:
                return tr("the plan has another landmark called {name}, {metres:.0f} m from this one").format(
                    name=name, metres=_away_m(request, name, place)
                )
    return ""


def _ends(transit: Transit) -> tuple[tuple[str, tuple[float, float]], ...]:
    return (transit.front, transit.lonlat[1]), (transit.rear, transit.lonlat[2])


def _new(request: TransitsRequest, transit: Transit) -> list[tuple[str, tuple[float, float]]]:
    return [(name, place) for name, place in _ends(transit) if name not in request.held.names]


def _away_m(request: TransitsRequest, name: str, place: tuple[float, float]) -> float:
    held = request.held.lonlat[request.held.names.index(name)].tolist()
    return geodesic_leg(*held, *place)[0]


def _landmark(name: str, place: tuple[float, float]) -> PlanRow:
    return PlanRow(layer="landmarks", geometry=QgsGeometry.fromPointXY(QgsPointXY(*place)), values={"name": name})
