"""Picks transits into the plan's layer and out of it, each as one step of QGIS's undo; nothing is saved here."""

from __future__ import annotations

from collections import Counter

from qgis.core import QgsVectorLayer, QgsVectorLayerUtils

from ..core.errors import SwimPlanError
from ..core.results.transits import Transit
from ..layers_out.plan_layers import line_over
from ..map_tools.edits import check, one_change
from ..words import tr

FIELDS = ("mark", "front", "rear")


def pick(layer: QgsVectorLayer, transit: Transit, marks: list[str], landmarks: list[str]) -> None:
    """Put a transit into the layer, as a line from the mark over the front to the rear.

    ``marks`` and ``landmarks`` are the names in the plan. SwimPlanError where a name would not tell which is meant, or
    the layer takes no edits.
    """
    _require_once(transit.mark, marks, tr("The name '{}' is that of {} marks"))
    for name in (transit.front, transit.rear):
        _require_once(name, landmarks, tr("The name '{}' is that of {} landmarks"))
    values = dict(zip(FIELDS, (transit.mark, transit.front, transit.rear)))
    given = {layer.fields().indexOf(name): value for name, value in values.items()}
    with one_change(layer, tr("Pick transit")):
        row = QgsVectorLayerUtils.createFeature(layer, line_over(list(transit.lonlat)), given)
        check(layer.addFeature(row), layer)


def drop(layer: QgsVectorLayer, transit: Transit) -> None:
    """Take every row of a transit out of the layer. SwimPlanError where that takes no edits."""
    wanted = (transit.mark, transit.front, transit.rear)
    fids = [row.id() for row in layer.getFeatures() if tuple(row[name] for name in FIELDS) == wanted]
    with one_change(layer, tr("Drop transit")):
        check(bool(fids) and layer.deleteFeatures(fids), layer)


def _require_once(name: str, names: list[str], asked: str) -> None:
    count = Counter(names)[name]
    if count > 1:
        raise SwimPlanError(
            asked=asked.format(name, count),
            allowed=tr("A transit tells mark and landmarks by their names"),
            remedy=tr("Give each a name of its own"),
        )
