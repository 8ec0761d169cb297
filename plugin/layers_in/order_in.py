"""Marks to put in order, an entry and exits: from a plan's marks as one request to the core."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np
from qgis.core import QgsFeatureSource

from ..core.chart.marks import TAKES_NAME_WITHIN_M, Mark, Route
from ..core.errors import SwimPlanError
from ..core.geodesy import geodesic_leg
from ..core.results.card import position_text
from ..core.solve.order.request import MOST_MARKS, OrderRequest
from ..core.solve.windows.find_windows import departures_between
from ..words import tr
from .swim_in import SwimAsked, request_from

MOST_EXITS = 6
LEAST_APART_M = 1.0
SAME_DEG = 1e-9  # a place read from the same row; a tenth of a millimetre
Place = tuple[float, float]


@dataclass(frozen=True, kw_only=True)
class OrderAsked:
    """What the user asked for, texts as typed: ``marks`` names with ; between them, empty for all of kind mark;
    ``entry`` empty for the only one, ``exit`` empty for any; ``swim`` says who swims, and the departures to try, every
    ``step_min``.

    In the place of names there may be the marks' own places (lon, lat), which tell two of one name apart.
    """

    marks: str | tuple[Place, ...] = ""
    entry: str | Place = ""
    exit: str | Place = ""
    step_min: float
    swim: SwimAsked


def order_from(
    plan: str | Path, asked: OrderAsked, sources: Mapping[str, QgsFeatureSource] | None = None
) -> OrderRequest:
    """The request for an order; ``sources`` as for ``request_from``. SwimPlanError where a name is not in the plan, or
    there are none or too many marks."""
    places = _Places(asked)
    swim = request_from(plan, sources or {}, asked.swim, places.laid)
    keep = len(swim.stops) - len(places.exits) + 1
    route = Route(name="order", lonlat=swim.route.lonlat[:keep])
    swim = replace(swim, route=route, stops=swim.stops[:keep], warnings=(*swim.warnings, *places.warnings))
    departures = departures_between(swim, swim.clock.start, swim.clock.end, asked.step_min)
    return OrderRequest(swim=swim, exits=tuple(places.exits), depart_s=departures)


class _Places:
    """Picks the places out of the plan's marks."""

    def __init__(self, asked: OrderAsked) -> None:
        self.asked = asked
        self.exits: list[Mark] = []
        self.warnings: list[str] = []

    def laid(self, marks: list[Mark]) -> tuple[Route, list[Mark]]:
        """A route over the entry, the marks and all the exits, so that the water is known around all of them."""
        entry = self._entry(marks)
        visited = self._visited(marks, entry)
        self.exits = self._exits(marks, entry, visited)
        stops = [entry, *visited, *self.exits]
        _check_apart([entry, *visited], visited)
        _check_apart(visited, self.exits)
        return Route(name="order", lonlat=np.array([[stop.lon, stop.lat] for stop in stops])), stops

    def _entry(self, marks: list[Mark]) -> Mark:
        if self.asked.entry:
            return _named(marks, self.asked.entry, "entry")
        entries = [mark for mark in marks if mark.kind == "entry"]
        if len(entries) != 1:
            raise SwimPlanError(
                asked=tr("No entry was named"),
                allowed=tr("The plan has {names} of kind entry").format(
                    names=", ".join(mark.name for mark in entries) or tr("none")
                ),
                remedy=tr("Name the place to start from"),
            )
        return entries[0]

    def _visited(self, marks: list[Mark], entry: Mark) -> list[Mark]:
        names = self._names()
        visited = [_named(marks, name, "mark") for name in names] or [mark for mark in marks if mark.kind == "mark"]
        visited = [mark for mark in visited if mark is not entry]
        if not 1 <= len(visited) <= MOST_MARKS:
            found = ", ".join(mark.name for mark in visited)
            raise SwimPlanError(
                asked=tr("Asked for the order of {count} marks").format(count=len(visited))
                + (f": {found}" if found else ""),
                allowed=tr("From 1 to {most_marks} marks are put in order").format(most_marks=MOST_MARKS),
                remedy=tr("Name up to {most_marks} marks, with ; between them").format(most_marks=MOST_MARKS),
            )
        if not names:
            self.warnings.append(
                tr("No marks were named: all of kind mark are visited, {count} of them.").format(count=len(visited))
            )
        return visited

    def _names(self) -> list[str | Place]:
        """The marks asked for, each once."""
        asked = self.asked.marks
        names = asked if not isinstance(asked, str) else [name.strip() for name in asked.split(";") if name.strip()]
        return list(dict.fromkeys(names))

    def _exits(self, marks: list[Mark], entry: Mark, visited: list[Mark]) -> list[Mark]:
        if self.asked.exit:
            return [_named(marks, self.asked.exit, "exit")]
        others = [mark for mark in marks if mark.kind == "exit" and _apart_m(mark, entry) > TAKES_NAME_WITHIN_M]
        middle = visited[0]
        others.sort(key=lambda mark: _apart_m(middle, mark))
        if left := others[MOST_EXITS - 1 :]:
            names = ", ".join(mark.name for mark in left)
            self.warnings.append(
                tr("Only the nearest exits and the entry are looked at; left out: {names}.").format(names=names)
            )
        return [entry, *others[: MOST_EXITS - 1]]


def _apart_m(one: Mark, other: Mark) -> float:
    return geodesic_leg(one.lon, one.lat, other.lon, other.lat)[0]


def _check_apart(some: list[Mark], others: list[Mark]) -> None:
    """SwimPlanError where two places are one."""
    for one in some:
        for other in others:
            if one is not other and _apart_m(one, other) < LEAST_APART_M:
                raise SwimPlanError(
                    asked=tr("'{one}' and '{other}' lie at the same place").format(one=one.name, other=other.name),
                    allowed=tr("Places to put in order lie {least_apart_m:g} m apart at the least").format(
                        least_apart_m=LEAST_APART_M
                    ),
                    remedy=tr("Leave one of them out, or move it"),
                )


def _named(marks: list[Mark], name: str | Place, what: str) -> Mark:
    """The mark of that name, or at that place; SwimPlanError where there is none or several."""
    if isinstance(name, str):
        found = [mark for mark in marks if mark.name == name.strip()]
    else:
        found = [mark for mark in marks if max(abs(mark.lon - name[0]), abs(mark.lat - name[1])) < SAME_DEG]
        name = position_text(*name)
    if len(found) != 1:
        raise SwimPlanError(
            asked=tr("Asked for the {what} '{name}'").format(what=what, name=name)
            + (tr(", which stands there {count} times").format(count=len(found)) if found else ""),
            allowed=tr("The marks layer has {names}").format(
                names=", ".join(str(mark.name) for mark in marks) or tr("no rows")
            ),
            remedy=tr("Name one that stands there once"),
        )
    return found[0]
