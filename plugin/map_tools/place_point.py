"""The tool that places points which have a name, such as stream stations, and moves those that are there."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from qgis.core import QgsGeometry, QgsPointXY, QgsVectorLayer
from qgis.gui import QgsMapCanvas, QgsMapMouseEvent

from ..words import tr
from .at_hand import GeometryType, PlanAtHand
from .carry_tool import CarryTool
from .edits import move_point
from .mark_lines import mark_lines
from .places import MarkPlace, Place, marks_of
from .plan_tool import joined
from .row_adding import RowAdding
from .row_form import RowAsked


@dataclass(frozen=True, kw_only=True)
class Placing:
    """What is placed: the plan's layer and the field that names its rows, the words for it, and the form to fill in."""

    layer: str
    named: str
    hint: str
    position_words: str
    held_position_words: str
    moved: str
    asked: Callable[[PlanAtHand, QgsVectorLayer], RowAsked]


class PlacePoint(CarryTool):
    """A click on a point that is there picks it up; a click elsewhere asks for the values of a new one."""

    snaps_to_marks = False
    _held: MarkPlace | None = None

    def __init__(self, canvas: QgsMapCanvas, plan: PlanAtHand, placing: Placing) -> None:
        super().__init__(canvas, plan)
        self.placing = placing
        self.adding = RowAdding(canvas, self._try)

    @property
    def is_carrying(self) -> bool:
        """Whether a point is held."""
        return self._held is not None

    @property
    def needs(self) -> tuple[str, GeometryType]:
        """The layer of the points."""
        return (self.placing.layer, GeometryType.PointGeometry)

    @property
    def hint(self) -> str:
        """What to do next."""
        if self._held is None:
            return f"{self.placing.hint} {tr('Esc ends.')}"
        return tr("Click where '{}' goes, or type its position. Esc leaves it where it was.").format(self._held.name)

    @property
    def position_words(self) -> str:
        """A typed position places a point, or moves the one that is held."""
        return self.placing.held_position_words if self._held is not None else self.placing.position_words

    def pick(self, event: QgsMapMouseEvent) -> bool:
        """Pick up the point under the cursor; where there is none a new one is placed."""
        if self.adding.form is not None:
            return False
        layer = self.layer()  # refused before anything is dragged or asked
        near = self.places.mark_near(event.originalMapPoint(), marks_of(layer, self.placing.named))
        if near is None:
            self.point(self.where(event))
            return False
        self._held = near
        self.say(self.look(Place(lon=near.lon, lat=near.lat)), event.pos())
        return True

    def point(self, place: Place) -> None:
        """Ask for the values of a point here; one that is held is put here instead."""
        if self._held is not None:
            self.put(place)
            return
        if self.adding.form is not None:
            return
        layer = self.layer()
        asked = self.placing.asked(self.plan, layer)
        geometry = QgsGeometry.fromPointXY(QgsPointXY((place.lon + 180.0) % 360.0 - 180.0, place.lat))
        self.lines.show("spots", [place.lonlat])
        self.tip.hide()
        self.adding.ask(layer, geometry, asked, mark_lines(self.plan, place), self._added, self.drop)

    def put(self, place: Place) -> None:
        """Move the point that is held; one that cannot be moved is let go of, where it was."""
        held = self._held
        self.drop()
        lonlat = ((place.lon + 180.0) % 360.0 - 180.0, place.lat)
        move_point(self.layer(), held.fid, lonlat, self.placing.moved)
        self.drawn.emit(self.placing.layer, held.name)

    def look(self, place: Place) -> list[str]:
        """Position, depth, distance and bearing from the entry; the name of what is held or under the cursor."""
        if self.adding.form is not None:
            return []
        if self._held is not None:
            self.lines.show("spots", [place.lonlat])
            self.lines.show("loose", [(self._held.lon, self._held.lat), place.lonlat])
            return joined([self._held.name, *mark_lines(self.plan, place)])
        near = self._near(place)
        self.lines.show("spots", [(near.lon, near.lat)] if near is not None else [])
        if near is not None:
            return joined([near.name, tr("A click or a drag moves it")])
        return mark_lines(self.plan, place)

    def drop(self) -> bool:
        """Place or move nothing after all."""
        begun = self._held is not None or self.adding.form is not None
        self._held = None
        self.adding.close()
        self.lines.hide("spots", "loose")
        return begun

    def _near(self, place: Place) -> MarkPlace | None:
        layer = self.plan.layer(*self.needs)
        point = self.places.to_map(place.lonlat)
        return self.places.mark_near(point, marks_of(layer, self.placing.named)) if point is not None else None

    def _added(self, name: str) -> None:
        self.lines.hide("spots")
        self.drawn.emit(self.placing.layer, name)
