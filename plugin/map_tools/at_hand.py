"""What the tools may ask of the plan that is open. The dock answers; every answer comes at once."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Protocol

from qgis.core import QgsVectorLayer, QgsWkbTypes

from ..core.chart.marks import Mark
from ..core.solve.request import SwimRequest

GeometryType = QgsWkbTypes.GeometryType


@dataclass(frozen=True, kw_only=True)
class Surroundings:
    """The chart and the water around a place: a request made there, or in ``words`` why there is none.

    ``is_old`` says that the departure, the swimmers or the plan have changed since: the chart still stands, the
    water does not.
    """

    request: SwimRequest | None = None
    words: str = ""
    is_old: bool = False


class PlanAtHand(Protocol):
    """The plan that is open, as the map tools see it."""

    def layer(self, name: str, geometry: GeometryType) -> QgsVectorLayer:
        """The project's layer to draw into; SwimPlanError where there is none."""
        ...

    def marks_layer(self) -> QgsVectorLayer | None:
        """The layer whose marks are snapped to; None where the user took it out."""
        ...

    def route(self) -> str:
        """The name of the route that is chosen; empty without one."""
        ...

    def entry(self) -> Mark | None:
        """Where the swim starts: distances and bearings of marks count from there."""
        ...

    def depart(self) -> datetime | None:
        """The departure that is chosen."""
        ...

    def ports(self) -> list[str]:
        """The names of the ports whose tides the plan has."""
        ...

    def chart_around(self, lon: float, lat: float) -> Surroundings:
        """The chart around a place; what has to be read first is there at a later call."""
        ...

    def water_around(self, lon: float, lat: float) -> Surroundings:
        """The chart and the water around a place, likewise."""
        ...
