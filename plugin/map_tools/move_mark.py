"""The tool that moves a mark."""

from __future__ import annotations

from qgis.core import QgsProject
from qgis.gui import QgsMapMouseEvent

from ..core.errors import SwimPlanError
from ..words import tr
from .at_hand import GeometryType
from .carry_tool import CarryTool
from .edits import move_point, move_vertices, vertices_at
from .mark_lines import mark_lines
from .places import MarkPlace, Place
from .plan_tool import joined


class MoveMark(CarryTool):
    """Drag a mark, or click it and then its new place. Routes stay as drawn unless the project edits topologically."""

    snaps_to_marks = False
    _held: MarkPlace | None = None

    @property
    def is_carrying(self) -> bool:
        """Whether a mark is held."""
        return self._held is not None

    @property
    def needs(self) -> tuple[str, GeometryType]:
        """The marks."""
        return ("marks", GeometryType.PointGeometry)

    @property
    def hint(self) -> str:
        """What to do next."""
        if self._held is None:
            return tr("Drag a mark to its new place, or click it. Esc ends.")
        return tr("Click where '{}' goes, or type its position. Esc leaves it where it was.").format(self._held.name)

    @property
    def position_words(self) -> str:
        """A typed position moves the mark that is held."""
        return tr("Move Mark There") if self._held is not None else ""

    def pick(self, event: QgsMapMouseEvent) -> bool:
        """Pick up the mark under the cursor."""
        near = self.places.mark_near(event.originalMapPoint(), self.marks())
        if near is not None:
            self.layer()  # refused before anything is dragged
            self._held = near
            self.say(self.look(Place(lon=self._held.lon, lat=self._held.lat)), event.pos())
        return self._held is not None

    def put(self, place: Place) -> None:
        """Move the mark; one that cannot be moved is let go of, where it was."""
        held = self._held
        self.drop()
        layer = self.layer()
        lon = (place.lon + 180.0) % 360.0 - 180.0
        move_point(layer, held.fid, (lon, place.lat), tr("Move mark"))
        self.aside = self._stops_after((held.lon, held.lat), (lon, place.lat))
        self.drawn.emit("marks", held.name)

    def _stops_after(self, before: tuple[float, float], now: tuple[float, float]) -> str:
        """Stops of routes at the old place come along where the project edits topologically; else words that they stay.

        Undo counts for one layer, so that stops which came along are taken back in the layer of routes.
        """
        try:
            routes = self.plan.layer("routes", GeometryType.LineGeometry)
        except SwimPlanError:
            return ""
        stops = vertices_at(routes, before)
        if not stops:
            return ""
        if QgsProject.instance().topologicalEditing():
            move_vertices(routes, stops, now, tr("Move stops with mark"))
            return tr("Stops of routes that came along: {}.").format(len(stops))
        return tr("Stops of routes that stay at its old place: {}. Move them with Edit Route.").format(len(stops))

    def look(self, place: Place) -> list[str]:
        """The mark's new place; with nothing in hand the name of the mark under the cursor."""
        if self._held is None:
            near = self.places.mark_near(self.places.to_map(place.lonlat), self.marks())
            self.lines.show("spots", [(near.lon, near.lat)] if near is not None else [])
            return joined([near.name]) if near is not None else []
        self.lines.show("spots", [place.lonlat])
        self.lines.show("loose", [(self._held.lon, self._held.lat), place.lonlat])
        return joined([self._held.name, *mark_lines(self.plan, place)])

    def drop(self) -> bool:
        """Let go; the mark stays where it was."""
        begun, self._held = self._held is not None, None
        self.lines.hide("spots", "loose")
        return begun
