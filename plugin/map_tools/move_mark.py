"""The tool that moves a mark."""

from __future__ import annotations

from qgis.gui import QgsMapMouseEvent

from .at_hand import GeometryType
from .carry_tool import CarryTool
from .edits import move_point
from .mark_lines import mark_lines
from .places import MarkPlace, Place
from .plan_tool import joined
from .words import tr


class MoveMark(CarryTool):
    """Drag a mark, or click it and then its new place. Routes stay where they are drawn."""

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
        self._held = self.places.mark_near(event.originalMapPoint(), self.marks())
        if self._held is not None:
            self.plan.layer(*self.needs)  # refused before anything is dragged
            self.say(self.look(Place(lon=self._held.lon, lat=self._held.lat)), event.pos())
        return self._held is not None

    def put(self, place: Place) -> None:
        """Move the mark; one that cannot be moved is let go of, where it was."""
        held = self._held
        self.drop()
        layer = self.plan.layer(*self.needs)
        lon = (place.lon + 180.0) % 360.0 - 180.0
        move_point(layer, held.fid, (lon, place.lat), tr("Move mark"))
        self.drawn.emit("marks", held.name)

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
