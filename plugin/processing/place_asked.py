"""What algorithms that look for ways from a place ask alike: who swims, how channels are taken, the cells."""

from __future__ import annotations

from typing import Any

from qgis.core import QgsCoordinateReferenceSystem, QgsProcessingContext, QgsProcessingParameterEnum
from qgis.PyQt.QtCore import QCoreApplication

from ..core.errors import SwimPlanError
from .plan_algorithm import PlanAlgorithm

LARGEST_CELL_M = 10_000.0


def add_swimmer_and_grid(algorithm: PlanAlgorithm) -> None:
    """Add SWIMMER, PACE, CHANNELS and CELL."""
    tr = QCoreApplication.translate
    algorithm.add_swimmer()
    ways = [tr("Tideleg", "Take no notice"), tr("Tideleg", "Keep out"), tr("Tideleg", "Cross square")]
    algorithm.addParameter(QgsProcessingParameterEnum("CHANNELS", tr("Tideleg", "Boat channels"), ways, defaultValue=0))
    algorithm.add_number("CELL", tr("Tideleg", "Cell (m)"), None, 0.0, LARGEST_CELL_M)


def lonlat_of(
    algorithm: PlanAlgorithm, parameters: dict[str, Any], name: str, context: QgsProcessingContext
) -> tuple[float, float]:
    """A point in degrees; SwimPlanError naming the parameter where none was given."""
    if parameters.get(name) in (None, ""):
        raise SwimPlanError(asked=f"{name} was left empty", allowed="It is a place", remedy="Choose a point on the map")
    place = algorithm.parameterAsPoint(parameters, name, context, QgsCoordinateReferenceSystem("EPSG:4326"))
    return place.x(), place.y()
