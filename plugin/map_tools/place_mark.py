"""The tool that places a mark: depth, distance and bearing beside the cursor, then a small form."""

from __future__ import annotations

from qgis.core import QgsGeometry, QgsPointXY
from qgis.gui import QgsMapCanvas

from ..words import tr
from .at_hand import GeometryType, PlanAtHand
from .mark_lines import mark_lines
from .places import Place
from .plan_tool import PlanTool
from .row_adding import RowAdding
from .row_form import RowAsked, free_name, names_in

FIELDS = ("name", "kind", "stay_min", "charted_depth_m")


class PlaceMark(PlanTool):
    """A click asks for name, kind, stay and charted depth; the mark is there once the form is filled in."""

    snaps_to_marks = False  # two marks at one place would be one stop with two names

    def __init__(self, canvas: QgsMapCanvas, plan: PlanAtHand) -> None:
        super().__init__(canvas, plan)
        self.adding = RowAdding(canvas, self._try)

    @property
    def needs(self) -> tuple[str, GeometryType]:
        """The marks."""
        return ("marks", GeometryType.PointGeometry)

    @property
    def hint(self) -> str:
        """What to do next."""
        return tr("Click where the mark goes, or type its position. Esc ends.")

    @property
    def position_words(self) -> str:
        """A typed position places a mark."""
        return tr("Place Mark There")

    def look(self, place: Place) -> list[str]:
        """Position, depth, distance and bearing from the entry."""
        return [] if self.adding.form is not None else mark_lines(self.plan, place)

    def point(self, place: Place) -> None:
        """Ask for the mark's values."""
        layer = self.layer()
        lon = (place.lon + 180.0) % 360.0 - 180.0
        taken = names_in(layer)
        first = not any(mark.kind == "entry" for mark in self.marks())
        values: dict[str, object] = {"name": free_name(tr("Entry") if first else tr("Mark"), taken)}
        if first:
            values["kind"] = "entry"
        asked = RowAsked(layer="marks", title=tr("New Mark"), words=tr("Place mark"), fields=FIELDS, values=values)
        geometry = QgsGeometry.fromPointXY(QgsPointXY(lon, place.lat))
        about = mark_lines(self.plan, place)
        self.lines.show("spots", [place.lonlat])
        self.tip.hide()
        self.adding.ask(layer, geometry, asked, about, self._added, self.drop)

    def drop(self) -> bool:
        """Place no mark here after all."""
        begun = self.adding.form is not None
        self.lines.hide("spots")
        if begun:
            self.adding.close()
        return begun

    def _added(self, name: str) -> None:
        self.lines.hide("spots")
        self.drawn.emit("marks", name)
