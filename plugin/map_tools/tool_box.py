"""All the map tools of one canvas: one is used at a time, and what was used before comes back."""

from __future__ import annotations

from qgis.gui import QgsMapCanvas, QgsMapTool
from qgis.PyQt import sip
from qgis.PyQt.QtCore import QEvent, QObject, pyqtSignal
from qgis.PyQt.QtGui import QKeySequence

from ..core.typed_position import position_from_text
from .at_hand import PlanAtHand
from .draw_line import (
    DrawLine,
    channel_area_drawing,
    channel_line_drawing,
    closed_area_drawing,
    eddy_area_drawing,
    route_drawing,
)
from .edit_route import EditRoute
from .map_look import MapLook
from .measure_leg import MeasureLeg
from .move_mark import MoveMark
from .place_mark import PlaceMark
from .place_point import PlacePoint
from .placings import landmark_placing, station_placing
from .plan_tool import PlanTool

FIRST_LOOK_M = 2200.0  # of the coast, each way, on a map that has shown nothing yet


class ToolBox(QObject):
    """``tools`` by name. ``changed`` says that another tool is used, or that its hint is another; ``refused`` why
    something was not done; ``drawn`` the plan's layer and the name of the row that was drawn or changed; ``stepped``
    that the keys of undo (False) or redo (True) were pressed over the map while a tool of ours is used."""

    changed = pyqtSignal()
    refused = pyqtSignal(str)
    drawn = pyqtSignal(str, str)
    stepped = pyqtSignal(bool)

    def __init__(self, canvas: QgsMapCanvas, plan: PlanAtHand, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._canvas = canvas
        self._before: QgsMapTool | None = None
        self.tools: dict[str, PlanTool] = {
            "place_mark": PlaceMark(canvas, plan),
            "move_mark": MoveMark(canvas, plan),
            "draw_route": DrawLine(canvas, plan, route_drawing()),
            "edit_route": EditRoute(canvas, plan),
            "channel_line": DrawLine(canvas, plan, channel_line_drawing()),
            "channel_area": DrawLine(canvas, plan, channel_area_drawing()),
            "closed_area": DrawLine(canvas, plan, closed_area_drawing()),
            "stream_station": PlacePoint(canvas, plan, station_placing()),
            "eddy_area": DrawLine(canvas, plan, eddy_area_drawing()),
            "landmark": PlacePoint(canvas, plan, landmark_placing()),
            "measure_leg": MeasureLeg(canvas, plan),
        }
        for tool in self.tools.values():
            tool.changed.connect(self.changed)
            tool.refused.connect(self.refused)
            tool.drawn.connect(self.drawn)
            tool.left.connect(self.leave)
        canvas.mapToolSet.connect(self._tool_set)
        canvas.installEventFilter(self)

    @property
    def used(self) -> PlanTool | None:
        """The tool of ours that the canvas uses now."""
        tool = self._canvas.mapTool()
        return tool if tool in self.tools.values() else None

    def use(self, name: str) -> None:
        """Use a tool; the one that was used before ours is remembered."""
        if self.used is None:
            self._before = self._canvas.mapTool()
        self._canvas.setMapTool(self.tools[name])
        self._canvas.setFocus()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Undo and redo over the map are of the layer that was drawn into, whichever layer QGIS has chosen: the keys
        are taken before QGIS's own entries see them."""
        if event.type() in (QEvent.Type.ShortcutOverride, QEvent.Type.KeyPress) and self.used is not None:
            for keys, again in ((QKeySequence.StandardKey.Undo, False), (QKeySequence.StandardKey.Redo, True)):
                if event.matches(keys):
                    event.accept()
                    if event.type() == QEvent.Type.KeyPress:
                        self.stepped.emit(again)
                    return True
        return super().eventFilter(watched, event)

    def leave(self) -> None:
        """Put the tool away; what was used before is used again. Edits stay as they are."""
        if self.used is None:
            return
        before, self._before = self._before, None
        if before is not None and not sip.isdeleted(before):
            self._canvas.setMapTool(before)
        else:
            self._canvas.unsetMapTool(self.used)

    def type_position(self, text: str) -> None:
        """A position was typed: the tool in use takes it, a mark is placed without one. The map moves there where it
        does not show the place. SwimPlanError for what is no position."""
        lonlat = position_from_text(text)
        if self.used is None:
            self.use("place_mark")
        tool = self.used
        point = tool.places.to_map(lonlat)
        if self._canvas.extent().isEmpty():  # a map that has shown nothing has no middle to move
            MapLook(self._canvas).go_to([lonlat], flash=False, least_m=FIRST_LOOK_M)
        elif point is not None and not self._canvas.extent().contains(point):
            self._canvas.setCenter(point)
            self._canvas.refresh()
        tool.type_position(lonlat)

    def release(self) -> None:
        """Before the dock goes: nothing stays on the canvas."""
        self.leave()
        self._canvas.removeEventFilter(self)
        self._canvas.mapToolSet.disconnect(self._tool_set)
        for tool in self.tools.values():
            tool.release()
        self.tools.clear()

    def _tool_set(self, tool: QgsMapTool | None, _before: QgsMapTool | None = None) -> None:
        self.changed.emit()
