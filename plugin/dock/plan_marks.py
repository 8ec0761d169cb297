"""The plan's marks and the stops of the chosen route, as the dock's lists show them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

import numpy as np

from ..core.chart.marks import Mark, Route, marks_at_stops
from ..core.errors import SwimPlanError
from ..core.results.card import position_text
from ..layers_in.marks_in import marks_from
from ..layers_in.table import Table
from ..plan_package.schema import LAYER_BY_NAME
from ..plan_package.store import open_layer
from .session import Session
from .words import tr

Place = tuple[float, float]


def plan_marks(session: Session) -> list[Mark]:
    """The marks as the layer stands, edits included; from the file where the layer is not in the project.

    SwimPlanError where a row cannot be meant.
    """
    source = session.layers.copies().get("marks") or open_layer(session.path, "marks")
    return marks_from(Table(source, LAYER_BY_NAME["marks"], []))


def route_stops(session: Session, marks: list[Mark]) -> list[Mark]:
    """The stops of the chosen route, by the names of the marks there; none without a route that is drawn once."""
    source = session.layers.copies().get("routes") or open_layer(session.path, "routes")
    drawn = [row.geometry() for row in source.getFeatures() if row.attribute("name") == session.route]
    if len(drawn) != 1:
        return []
    lonlat = [((place.x() + 180.0) % 360.0 - 180.0, place.y()) for place in drawn[0].vertices()]
    try:
        return marks_at_stops(Route(name=session.route, lonlat=np.array(lonlat)), marks)
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
