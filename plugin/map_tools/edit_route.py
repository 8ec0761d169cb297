"""The tool that edits routes: move, insert and delete vertices, snapping to marks."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from qgis.core import QgsPointXY
from qgis.gui import QgsMapMouseEvent

from ..core.planar import distance_to_segments
from ..words import tr
from .at_hand import GeometryType
from .carry_tool import CarryTool
from .edits import delete_vertex, insert_vertex, move_vertex
from .lost_stops import lost_stops
from .places import SNAP_PX, Place
from .plan_tool import joined
from .readings import depth_lines, position_line, ruler_words, variation_for

FAR_PX = 1e9


@dataclass(frozen=True, kw_only=True)
class Grip:
    """A vertex of a route, or with ``is_new`` the one that would be put in before the vertex of that number."""

    fid: int
    route: str
    vertex: int
    lonlats: tuple[tuple[float, float], ...]
    is_new: bool = False

    @property
    def neighbours(self) -> list[tuple[float, float]]:
        """The vertices before and after it, where there are any."""
        after = self.vertex if self.is_new else self.vertex + 1
        return [*self.lonlats[max(0, self.vertex - 1) : self.vertex], *self.lonlats[after : after + 1]]

    def bent_to(self, lonlat: tuple[float, float]) -> list[tuple[float, float]]:
        """The legs beside it, as they would be with the vertex there."""
        before = self.lonlats[max(0, self.vertex - 1) : self.vertex]
        return [*before, lonlat, *self.neighbours[len(before) :]]


class EditRoute(CarryTool):
    """Drag a vertex, or a leg to put a new one into it; Delete or Backspace takes out the vertex under the cursor."""

    _held: Grip | None = None
    _near: Grip | None = None

    @property
    def is_carrying(self) -> bool:
        """Whether a vertex is held."""
        return self._held is not None

    @property
    def needs(self) -> tuple[str, GeometryType]:
        """The routes."""
        return ("routes", GeometryType.LineGeometry)

    @property
    def hint(self) -> str:
        """What to do next."""
        if self._held is None:
            return tr(
                "Drag a stop, or a leg to put a stop into it. Backspace takes out the stop below the cursor. Esc ends."
            )
        return tr(
            "Click where the stop goes, or type its position. Backspace takes it out, Esc leaves it where it was."
        )

    @property
    def position_words(self) -> str:
        """A typed position puts down the vertex that is held."""
        return tr("Move Stop There") if self._held is not None else ""

    @property
    def can_take_back(self) -> bool:
        """A vertex that is held can be taken out."""
        return self._held is not None

    @property
    def back_words(self) -> str:
        """Taking back takes the stop out of the route."""
        return tr("Take Out Stop")

    def pick(self, event: QgsMapMouseEvent) -> bool:
        """Pick up the vertex or the leg under the cursor."""
        grip = self.grip_at(event.originalMapPoint())
        if grip is not None:
            self.layer()  # refused before anything is dragged
            self._held = grip
            self._try(lambda: self.say(self.look(self.where(event)), event.pos()))
        return self._held is not None

    def put(self, place: Place) -> None:
        """Put the vertex down; what cannot be changed is let go of, as it was."""
        held = self._held
        self.drop()
        change, words = (insert_vertex, tr("Put stop into route")) if held.is_new else (move_vertex, tr("Move stop"))
        change(self.layer(), held.fid, held.vertex, place.lonlat, words)
        self._tell(held.route)

    def take_back(self) -> None:
        """Take out the vertex that is held or under the cursor."""
        grip = self._held or self._near
        if grip is None:
            return
        self.drop()
        if not grip.is_new:
            delete_vertex(self.layer(), grip.fid, grip.vertex, tr("Take stop out of route"))
            self._tell(grip.route)
        else:
            self.tip.hide()

    def _tell(self, route: str) -> None:
        """The route was changed: say at the cursor which stops no longer lie at their mark."""
        self.tip.hide()
        lost = lost_stops(self.plan.layer(*self.needs), self.plan.marks_layer())
        if lost:
            self.say_here(lost)
        self.drawn.emit("routes", route)

    def look(self, place: Place) -> list[str]:
        """What would be picked up; in hand, the legs as they would be."""
        if self._held is None:
            self._near = self.grip_at(self.places.to_map(place.lonlat))
            self._show(self._near, place)
            if self._near is None:
                return []
            what = tr("New stop here") if self._near.is_new else tr("Stop {}").format(self._near.vertex + 1)
            return joined([self._near.route, what])
        self._show(self._held, place)
        variation = variation_for(place.lonlat, self.plan.entry(), self.plan.depart())
        legs = [ruler_words(one, place.lonlat, variation) for one in self._held.neighbours[:1] if one != place.lonlat]
        return [position_line(place), *depth_lines(place, self.plan.chart_around(*place.lonlat)), *legs]

    def drop(self) -> bool:
        """Let go; the route stays as it was."""
        begun = self._held is not None
        self._held = self._near = None
        self.lines.hide("spots", "loose")
        return begun

    def grip_at(self, point: QgsPointXY) -> Grip | None:
        """The nearest vertex within the pixels QGIS snaps in, else the nearest leg; the chosen route goes first."""
        routes = self._routes()
        for find in (self._vertex_near, self._leg_near):
            found = [(apart, number, grip) for number, route in enumerate(routes) for apart, grip in find(route, point)]
            if found:
                return min(found, key=lambda one: (one[1] > 0, one[0]))[2]
        return None

    def _routes(self) -> list[Grip]:
        """Every route as it stands, the chosen one first."""
        routes = []
        for row in self.plan.layer(*self.needs).getFeatures():
            lonlats = tuple((vertex.x(), vertex.y()) for vertex in row.geometry().vertices())
            name = row["name"] if isinstance(row["name"], str) else ""
            routes.append(Grip(fid=row.id(), route=name, vertex=0, lonlats=lonlats))
        chosen = self.plan.route()
        return sorted(routes, key=lambda one: one.route != chosen)

    def _vertex_near(self, route: Grip, point: QgsPointXY) -> list[tuple[float, Grip]]:
        away = np.hypot(*self._pixels(route, point).T)
        vertex = int(np.argmin(away)) if len(away) else 0
        near = len(away) and away[vertex] <= SNAP_PX
        return [(float(away[vertex]), replace(route, vertex=vertex))] if near else []

    def _leg_near(self, route: Grip, point: QgsPointXY) -> list[tuple[float, Grip]]:
        pixels = self._pixels(route, point)
        if len(pixels) < 2:
            return []
        away = np.nan_to_num(
            distance_to_segments(np.zeros((1, 2)), np.hstack([pixels[:-1], pixels[1:]]))[0][0], nan=np.inf
        )
        leg = int(np.argmin(away))
        return [(float(away[leg]), replace(route, vertex=leg + 1, is_new=True))] if away[leg] <= SNAP_PX else []

    def _pixels(self, route: Grip, point: QgsPointXY) -> np.ndarray:
        """The route's vertices (n, 2) in pixels from a point of the map; far away where the map does not reach."""
        unit = self.canvas().mapUnitsPerPixel()
        drawn = (self.places.to_map(lonlat) for lonlat in route.lonlats)
        offsets = [
            ((one.x() - point.x()) / unit, (one.y() - point.y()) / unit) if one is not None else (FAR_PX, FAR_PX)
            for one in drawn
        ]
        return np.array(offsets).reshape(-1, 2)

    def _show(self, grip: Grip | None, place: Place) -> None:
        if grip is None:
            self.lines.hide("spots", "loose")
            return
        held = self._held is not None
        stands = place.lonlat if held or grip.is_new else grip.lonlats[grip.vertex]
        self.lines.show("spots", [stands])
        self.lines.show("loose", grip.bent_to(stands) if held else [])
