"""What algorithms that look for ways from a place ask alike: who swims, how channels are taken, the cells."""

from __future__ import annotations

from typing import Any

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingParameterEnum,
    QgsProcessingParameterNumber,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.errors import SwimPlanError


def add_swimmer_and_grid(algorithm: QgsProcessingAlgorithm) -> None:
    """Add SWIMMER, PACE, CHANNELS and CELL."""
    double = QgsProcessingParameterNumber.Type.Double
    tr = QCoreApplication.translate
    algorithm.addParameter(QgsProcessingParameterString("SWIMMER", tr("Tideleg", "Name of the swimmer"), optional=True))
    algorithm.addParameter(
        QgsProcessingParameterNumber(
            "PACE", tr("Tideleg", "Pace through the water (m/s)"), double, None, True, minValue=0.1, maxValue=2.5
        )
    )
    ways = [tr("Tideleg", "Take no notice"), tr("Tideleg", "Keep out"), tr("Tideleg", "Cross square")]
    algorithm.addParameter(QgsProcessingParameterEnum("CHANNELS", tr("Tideleg", "Boat channels"), ways, defaultValue=0))
    algorithm.addParameter(
        QgsProcessingParameterNumber("CELL", tr("Tideleg", "Cell (m)"), double, None, True, minValue=0.0)
    )


def number_or_none(
    algorithm: QgsProcessingAlgorithm, parameters: dict[str, Any], name: str, context: QgsProcessingContext
) -> float | None:
    """A number, None where it was left empty."""
    return algorithm.parameterAsDouble(parameters, name, context) if parameters.get(name) is not None else None


def lonlat_of(
    algorithm: QgsProcessingAlgorithm, parameters: dict[str, Any], name: str, context: QgsProcessingContext
) -> tuple[float, float]:
    """A point in degrees; SwimPlanError naming the parameter where none was given."""
    if parameters.get(name) in (None, ""):
        raise SwimPlanError(asked=f"{name} was left empty", allowed="It is a place", remedy="Choose a point on the map")
    place = algorithm.parameterAsPoint(parameters, name, context, QgsCoordinateReferenceSystem("EPSG:4326"))
    return place.x(), place.y()
