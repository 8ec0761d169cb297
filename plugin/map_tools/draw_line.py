"""The tool that draws a route, a channel or an area vertex by vertex, snapping to marks."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from qgis.core import QgsGeometry, QgsPointXY
from qgis.gui import QgsMapCanvas

from ..core.errors import SwimPlanError
from ..core.geodesy import geodesic_leg
from ..words import tr
from .at_hand import GeometryType, PlanAtHand
from .places import MarkPlace, Place, marks_of
from .plan_tool import PlanTool
from .readings import depth_lines, distance_words, position_line, ruler_words, variation_for
from .row_adding import RowAdding
from .row_form import RowAsked, free_name, names_in


@dataclass(frozen=True, kw_only=True)
class Drawing:
    """What is drawn: the plan's layer, lines or areas, the word that names are proposed from, and the form's fields.

    ``station`` says that the row is named after a stream station of the plan instead of by a name of its own.
    """

    layer: str
    geometry: GeometryType
    word: str
    title: str
    undo: str
    hint: str
    fields: tuple[str, ...]
    needed: tuple[str, ...] = ()
    unique_names: bool = False
    station: bool = False

    @property
    def least(self) -> int:
        """How many vertices it has at the least."""
        return 3 if self.geometry == GeometryType.PolygonGeometry else 2


def route_drawing() -> Drawing:
    """A route: its vertices are the stops."""
    return Drawing(
        layer="routes",
        geometry=GeometryType.LineGeometry,
        word=tr("Route"),
        title=tr("New Route"),
        undo=tr("Draw route"),
        hint=tr("Click the stops in swimming order, from the entry to the exit."),
        fields=("name", "note"),
        unique_names=True,
    )


def channel_line_drawing() -> Drawing:
    """A channel as its middle line and a width."""
    return Drawing(
        layer="channels",
        geometry=GeometryType.LineGeometry,
        word=tr("Channel"),
        title=tr("New Channel"),
        undo=tr("Draw channel"),
        hint=tr("Click along the middle of the channel; its width is asked for afterwards."),
        fields=("name", "kind", "width_m", "flow_deg", "boat_kn"),
        needed=("width_m",),
    )


def channel_area_drawing() -> Drawing:
    """A channel as an area."""
    return Drawing(
        layer="channels",
        geometry=GeometryType.PolygonGeometry,
        word=tr("Channel"),
        title=tr("New Channel"),
        undo=tr("Draw channel"),
        hint=tr("Click the corners of the channel."),
        fields=("name", "kind", "flow_deg", "boat_kn"),
    )


def closed_area_drawing() -> Drawing:
    """An area under a rule."""
    return Drawing(
        layer="closed_areas",
        geometry=GeometryType.PolygonGeometry,
        word=tr("Closed area"),
        title=tr("New Closed Area"),
        undo=tr("Draw closed area"),
        hint=tr("Click the corners of the area; its rule is asked for afterwards."),
        fields=("name", "rule", "from_time", "to_time", "citation", "checked_on"),
    )


def eddy_area_drawing() -> Drawing:
    """An area in which one station alone rules."""
    return Drawing(
        layer="stream_areas",
        geometry=GeometryType.PolygonGeometry,
        word="",
        title=tr("New Eddy Area"),
        undo=tr("Draw eddy area"),
        hint=tr("Click the corners of the area in which one stream station alone rules."),
        fields=("station", "phase"),
        station=True,
    )


class DrawLine(PlanTool):
    """A left click adds a vertex; a right click or Enter asks for the row's values; cancelled, one draws on."""

    def __init__(self, canvas: QgsMapCanvas, plan: PlanAtHand, drawing: Drawing) -> None:
        super().__init__(canvas, plan)
        self.drawing = drawing
        self.vertices: list[Place] = []
        self.adding = RowAdding(canvas, self._try)

    @property
    def needs(self) -> tuple[str, GeometryType]:
        """The layer it draws into."""
        return (self.drawing.layer, self.drawing.geometry)

    @property
    def hint(self) -> str:
        """What to do next."""
        if not self.vertices:
            return f"{self.drawing.hint} {tr('Esc ends.')}"
        keys = tr("Right click or Enter finishes, Backspace takes the last one back, Esc drops it.")
        return f"{self.drawing.hint} {keys}"

    @property
    def position_words(self) -> str:
        """A typed position is a vertex."""
        return tr("Add Stop There") if self._is_route else tr("Add Vertex There")

    @property
    def back_words(self) -> str:
        """Vertices of a route are stops."""
        return tr("Remove Last Stop") if self._is_route else tr("Remove Last Vertex")

    @property
    def _is_route(self) -> bool:
        return self.drawing.layer == "routes"

    @property
    def can_finish(self) -> bool:
        """With as many vertices as it needs."""
        return len(self.vertices) >= self.drawing.least

    @property
    def can_take_back(self) -> bool:
        """With any vertex."""
        return bool(self.vertices)

    def point(self, place: Place) -> None:
        """Add a vertex; the same place again adds none, as in a double click."""
        if self.adding.form is not None:
            return
        if not self.vertices:
            self.layer()  # refused before anything is drawn
            if self.drawing.station:
                self._stations()
        if not self.vertices or self.vertices[-1].lonlat != place.lonlat:
            self.vertices.append(place)
        self._show()

    def look(self, place: Place) -> list[str]:
        """The leg that a click would add."""
        if self.adding.form is not None:
            return []
        self._show(place)
        lines = [position_line(place)]
        if self._is_route:
            lines += depth_lines(place, self.plan.chart_around(*place.lonlat))
        if self.vertices and self.vertices[-1].lonlat != place.lonlat:
            last = self.vertices[-1]
            variation = variation_for(place.lonlat, self.plan.entry(), self.plan.depart())
            lines.append(ruler_words(last.lonlat, place.lonlat, variation))
        if len(self.vertices) > 1 and self.drawing.geometry == GeometryType.LineGeometry:
            lines.append(tr("In all {}").format(distance_words(_length_m([*self.vertices, place]))))
        return lines

    def finish(self) -> None:
        """Ask for the row's values. SwimPlanError where vertices are lacking."""
        if self.adding.form is not None or not self.vertices:
            return
        if not self.can_finish:
            raise SwimPlanError(
                asked=tr("{} of {} vertices are drawn").format(len(self.vertices), self.drawing.least),
                allowed=tr("An area has three corners or more, a line two vertices or more"),
                remedy=tr("Click the next one, or press Esc to drop it"),
            )
        geometry = self._geometry()
        if not geometry.isSimple() and self.drawing.geometry == GeometryType.PolygonGeometry:
            raise SwimPlanError(
                asked=tr("The edges of the area cross each other"),
                allowed=tr("An area is bounded by a line that does not cross itself"),
                remedy=tr("Take the last corners back with Backspace"),
            )
        layer = self.layer()
        asked = self._of_station(geometry) if self.drawing.station else self._of_its_own(names_in(layer))
        self._show()
        self.tip.hide()
        self.adding.ask(layer, geometry, asked, self._about(), self._added, self.changed.emit)

    def _of_its_own(self, taken: frozenset[str]) -> RowAsked:
        """A row with a name of its own is asked for."""
        return RowAsked(
            layer=self.drawing.layer,
            title=self.drawing.title,
            words=self.drawing.undo,
            fields=self.drawing.fields,
            values={"name": free_name(self.drawing.word, taken)},
            needed=self.drawing.needed,
            taken=taken if self.drawing.unique_names else frozenset(),
        )

    def _of_station(self, geometry: QgsGeometry) -> RowAsked:
        """A row that names a station is asked for; one that lies inside alone is proposed."""
        stations = self._stations()
        inside = [one.name for one in stations if geometry.contains(QgsPointXY(one.lon, one.lat))]
        return RowAsked(
            layer=self.drawing.layer,
            title=self.drawing.title,
            words=self.drawing.undo,
            fields=self.drawing.fields,
            values={"station": inside[0]} if len(inside) == 1 else {},
            named="station",
            choices={"station": sorted({one.name for one in stations})},
        )

    def _stations(self) -> list[MarkPlace]:
        """The plan's stream stations; SwimPlanError where there are none."""
        layer = self.plan.layer("stream_stations", GeometryType.PointGeometry)
        stations = [one for one in marks_of(layer, "station") if one.name]
        if not stations:
            raise SwimPlanError(
                asked=tr("The plan has no stream station"),
                allowed=tr("An eddy area takes its stream from a station"),
                remedy=tr("Place the station first, with Stream Station"),
            )
        return stations

    def take_back(self) -> None:
        """Take the last vertex back."""
        if self.adding.form is None and self.vertices:
            self.vertices.pop()
            self._show()
            self.tip.hide()

    def drop(self) -> bool:
        """Drop the drawing."""
        begun = bool(self.vertices)
        self.vertices.clear()
        self.adding.close()
        self._show()
        return begun

    def _added(self, name: str) -> None:
        self.vertices.clear()
        self._show()
        self.drawn.emit(self.drawing.layer, name)
        self.changed.emit()

    def _show(self, cursor: Place | None = None) -> None:
        """Draw the vertices, and what a click at the cursor would make of them."""
        fixed = [place.lonlat for place in self.vertices]
        ends = fixed[-1:] + ([cursor.lonlat] if cursor is not None else [])
        self.lines.show("fixed", fixed if len(fixed) > 1 else [])
        self.lines.show("loose", ends if fixed and cursor is not None else [])
        self.lines.show("spots", fixed)
        if self.drawing.geometry == GeometryType.PolygonGeometry:
            corners = fixed + ([cursor.lonlat] if cursor is not None and fixed else [])
            self.lines.show("area", corners if len(corners) > 2 else [])

    def _geometry(self) -> QgsGeometry:
        points = [QgsPointXY(*place.lonlat) for place in self.vertices]
        if self.drawing.geometry == GeometryType.PolygonGeometry:
            return QgsGeometry.fromPolygonXY([[*points, points[0]]])
        return QgsGeometry.fromPolylineXY(points)

    def _about(self) -> list[str]:
        """What the form says of the drawing."""
        if self.drawing.geometry == GeometryType.PolygonGeometry:
            return [tr("{} corners").format(len(self.vertices))]
        stops = [place.mark.name for place in self.vertices if place.mark is not None and place.mark.name]
        length = tr("{} vertices, {}").format(len(self.vertices), distance_words(_length_m(self.vertices)))
        return [length, tr("Snapped to: {}").format(", ".join(stops))] if stops else [length]


def _length_m(places: Sequence[Place]) -> float:
    return sum(geodesic_leg(*one.lonlat, *other.lonlat)[0] for one, other in zip(places, places[1:]))
