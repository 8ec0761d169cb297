"""The plan's marks and the stops of the chosen route, as the dock's lists show them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

import numpy as np
from qgis.core import QgsFeatureSource

from ..core.chart.marks import Mark, Route, marks_at_stops
from ..core.errors import SwimPlanError
from ..core.results.card import position_text
from ..layers_in.marks_in import marks_from
from ..layers_in.table import Table
from ..plan_package.schema import LAYER_BY_NAME
from ..plan_package.store import open_layer
from ..words import tr
from .session import Session

Place = tuple[float, float]


class PlanMarks:
    """Reads a session's marks and routes, anew only where their rows have changed: it is asked at every planning."""

    def __init__(self, session: Session) -> None:
        self._session = session
        self._marks: tuple[object, list[Mark]] = (None, [])
        self._stops: tuple[tuple, list[Mark]] = ((), [])

    def marks(self) -> list[Mark]:
        """The marks as the layer stands, edits included; from the file where the layer is not in the project.

        SwimPlanError where a row cannot be meant.
        """
        source = self._source("marks")
        if self._marks[0] is not source:
            self._marks = source, marks_from(Table(source, LAYER_BY_NAME["marks"], []))
        return self._marks[1]

    def stops(self) -> list[Mark]:
        """The stops of the chosen route, by the names of the marks there; none without a route that is drawn once.

        SwimPlanError as for the marks.
        """
        marks, source, name = self.marks(), self._source("routes"), self._session.route
        known = self._stops[0]
        if not known or known[0] is not marks or known[1] is not source or known[2] != name:
            self._stops = (marks, source, name), _stops_on(source, name, marks)
        return self._stops[1]

    def _source(self, name: str) -> QgsFeatureSource:
        return self._session.layers.copies().get(name) or open_layer(self._session.path, name)


def _stops_on(routes: QgsFeatureSource, name: str, marks: list[Mark]) -> list[Mark]:
    drawn = [row.geometry() for row in routes.getFeatures() if row.attribute("name") == name]
    if len(drawn) != 1:
        return []
    lonlat = [((place.x() + 180.0) % 360.0 - 180.0, place.y()) for place in drawn[0].vertices()]
    try:
        return marks_at_stops(Route(name=name, lonlat=np.array(lonlat)), marks)
    except SwimPlanError:
        return []


def place_of(mark: Mark) -> Place:
    """Where a mark is: what tells it from others, since names may stand there twice."""
    return mark.lon, mark.lat


def labels_of(marks: Sequence[Mark]) -> dict[Place, str]:
    """A name for each place; marks that share one have their position behind it."""
    shared = Counter(mark.name for mark in marks)
    found = {}
    for mark in marks:
        name = mark.name or tr("(without a name)")
        found[place_of(mark)] = name if shared[mark.name] == 1 else f"{name} ({position_text(*place_of(mark))})"
    return found
