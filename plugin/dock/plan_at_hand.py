"""The session's plan as the map tools ask for it: layers, entry, and the chart and water around a place.

The swim that is planned answers for the places around it; farther off, or where the plan has no route yet, the plan is
read around the place in the background.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from functools import partial

import numpy as np
from qgis.core import QgsVectorLayer
from qgis.PyQt.QtCore import QObject, pyqtSignal

from ..core.chart.marks import Mark, Route
from ..core.errors import SwimPlanError
from ..core.solve.request import SwimRequest
from ..layers_in.swim_in import SwimAsked, request_from, route_box_m
from ..map_tools.at_hand import GeometryType, Surroundings
from ..map_tools.places import marks_of
from ..plan_package.schema import LAYER_BY_NAME
from ..plan_package.words import schema_words
from ..words import tr
from .latest_work import LatestWork
from .plan_in_project import read_by
from .session import PLANNING, Session

# The chart of a request reaches a degree; its frame is true to a centimetre in a kilometre so far from its centre.
CHART_WITHIN_M = 25_000.0
READ_AROUND_M = 6_000.0
STEP_DEG = 0.01
PORT_TABLES = ("tides", "tide_ports", "tide_series", "tide_constants")


class PlanAtHand(QObject):
    """See ``map_tools.at_hand``. ``read`` says that a place asked for before can be asked for again."""

    read = pyqtSignal()

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._work = LatestWork(self)
        self._read: SwimRequest | None = None
        self._why_unread = ""
        session.asked_changed.connect(self._forget)
        session.plan_changed.connect(self._forget)

    def layer(self, name: str, geometry: GeometryType) -> QgsVectorLayer:
        """The project's layer to draw into; SwimPlanError where the user took it out."""
        layers = self._session.layers
        layer = layers.layer(name) if layers is not None else None
        if layer is None or layer.geometryType() != geometry:
            layer = next((one for one in self._all(name) if one.geometryType() == geometry), None)
        if layer is None:
            title = schema_words(LAYER_BY_NAME[name].title)
            raise SwimPlanError(
                asked=tr("The layer '{}' of the plan is not in the project").format(title),
                allowed=tr("What is drawn goes into the project's layer, where you can undo it and save it"),
                remedy=tr("Drag it into the project from the plan's file in the Browser panel"),
            )
        return layer

    def marks_layer(self) -> QgsVectorLayer | None:
        """The layer whose marks are snapped to."""
        return self._session.layers.layer("marks") if self._session.layers is not None else None

    def route(self) -> str:
        """The route that is chosen."""
        return self._session.route

    def entry(self) -> Mark | None:
        """The first stop of the swim that is planned; without one the first mark where a swim can start."""
        if self._session.request is not None:
            return self._session.request.stops[0]
        found = (mark for mark in marks_of(self.marks_layer()) if mark.kind == "entry")
        first = next(found, None)
        return first and Mark(name=first.name, kind=first.kind, lon=first.lon, lat=first.lat)

    def depart(self) -> datetime | None:
        """The departure that is chosen."""
        return self._session.depart

    def ports(self) -> list[str]:
        """The ports of the plan's tables of tides; none where those cannot be read."""
        try:
            copies = self._session.layers.copies() if self._session.layers is not None else {}
        except SwimPlanError:  # planning says what is wrong
            return []
        found = (name for table in PORT_TABLES if table in copies for name in copies[table].texts("port"))
        return sorted(set(found))

    def chart_around(self, lon: float, lat: float) -> Surroundings:
        """The chart around a place."""
        return self._around(lon, lat, lambda request, xy_m: bool(np.hypot(*xy_m) < CHART_WITHIN_M))

    def water_around(self, lon: float, lat: float) -> Surroundings:
        """The chart and the water around a place."""
        return self._around(lon, lat, _has_water)

    def _around(self, lon: float, lat: float, holds: Callable[[SwimRequest, np.ndarray], bool]) -> Surroundings:
        planned = self._session.request
        for request, is_old in ((planned, self._session.stage == PLANNING), (self._read, False)):
            if request is not None and holds(request, request.frame.to_xy(np.array([[lon, lat]]))[0]):
                return Surroundings(request=request, is_old=is_old)
        if self._why_unread:
            return Surroundings(words=self._why_unread)
        if self._session.layers is None or self._session.depart is None:
            return Surroundings(words=tr("no departure is chosen"))
        is_coming = planned is None and self._session.stage == PLANNING and bool(self._session.routes)
        if not self._work.is_busy and not is_coming:
            self._read_around(lon, lat)
        return Surroundings(words=self._why_unread or tr("the plan is being read"))

    def _read_around(self, lon: float, lat: float) -> None:
        """Read the plan around a place, as for a swim that begins there."""
        path, asked = self._session.path, self._session.asked()
        try:
            copies = self._session.layers.copies()
        except SwimPlanError as error:
            self._why_unread = str(error)
            return
        lon = (lon + 180.0) % 360.0 - 180.0

        def work(_is_cancelled: Callable[[], bool], _tell: Callable[[object], None]) -> SwimRequest:
            laid = partial(_laid, lon, lat)
            corners = READ_AROUND_M * np.array([[-1.0, -1.0], [1.0, 1.0]])
            return request_from(path, copies, SwimAsked(**asked), laid, lambda _tables, _frame: corners)

        title = tr("Tideleg: reading the plan around the cursor")
        self._work.start(title, work, bool, self._have_read, self._refused, self._forget)

    def _have_read(self, request: SwimRequest) -> None:
        self._read = request
        self.read.emit()

    def _refused(self, words: str) -> None:
        self._why_unread = words
        self.read.emit()

    def _forget(self, *_: object) -> None:
        """What was read is of before."""
        self._work.cancel()
        self._read, self._why_unread = None, ""

    def _all(self, name: str) -> list[QgsVectorLayer]:
        """The project's layers that read this one of the plan's."""
        layers = list(self._session.project.mapLayers().values())
        wanted = (self._session.path, name)
        return [one for one in layers if (read := read_by(one)) and read[:2] == wanted and one.isValid()]


def _has_water(request: SwimRequest, xy_m: np.ndarray) -> bool:
    """Whether a place lies where the request's stream may be asked for."""
    low, high = route_box_m(request.route, request.frame)
    return bool(np.all(xy_m >= low) and np.all(xy_m <= high))


def _laid(lon: float, lat: float, _marks: list[Mark]) -> tuple[Route, list[Mark]]:
    """A route of one leg at a place, to read the plan around it."""
    ends = [(lon, lat), (lon, lat - STEP_DEG if lat > 0.0 else lat + STEP_DEG)]
    stops = [Mark(name="", kind="waypoint", lon=one, lat=other) for one, other in ends]
    return Route(name="", lonlat=np.array(ends)), stops
