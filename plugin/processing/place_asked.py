"""What algorithms that look for ways from a place ask alike: who swims, how channels are taken, the cells."""

from __future__ import annotations

from typing import Any

from qgis.core import QgsCoordinateReferenceSystem, QgsProcessingContext, QgsProcessingParameterEnum

from ..core.errors import SwimPlanError
from ..words import tr
from .plan_algorithm import PlanAlgorithm

LARGEST_CELL_M = 10_000.0


def add_swimmer_and_grid(algorithm: PlanAlgorithm) -> None:
    """Add SWIMMER, PACE, CHANNELS and CELL."""
    algorithm.add_swimmer()
    ways = [tr("Take no notice"), tr("Keep out"), tr("Cross square")]
    algorithm.addParameter(QgsProcessingParameterEnum("CHANNELS", tr("Boat channels"), ways, defaultValue=0))
    algorithm.add_number("CELL", tr("Cell (m)"), None, 0.0, LARGEST_CELL_M)


def lonlat_of(
    algorithm: PlanAlgorithm, parameters: dict[str, Any], name: str, context: QgsProcessingContext
) -> tuple[float, float]:
    """A point in degrees; SwimPlanError naming the parameter where none was given."""
    if parameters.get(name) in (None, ""):
        raise SwimPlanError(
            asked=tr("{} was left empty").format(name),
            allowed=tr("It is a place"),
            remedy=tr("Choose a point on the map"),
        )
    place = algorithm.parameterAsPoint(parameters, name, context, QgsCoordinateReferenceSystem("EPSG:4326"))
    return place.x(), place.y()
