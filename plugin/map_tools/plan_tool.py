"""What all map tools of the plan have in common: the place under the cursor, the words beside it, keys, tidying up."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from qgis.core import QgsPointLocator, QgsVectorLayer
from qgis.gui import QgsMapCanvas, QgsMapMouseEvent, QgsMapTool, QgsSnapIndicator
from qgis.PyQt.QtCore import QPoint, Qt, pyqtSignal
from qgis.PyQt.QtGui import QKeyEvent

from ..core.errors import SwimPlanError
from ..words import tr
from .at_hand import GeometryType, PlanAtHand
from .cursor_tip import CursorTip
from .drawn_lines import DrawnLines
from .edits import require_editable
from .places import CanvasPlaces, MarkPlace, Place, marks_of

FINISH_KEYS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
READ_WITHIN_PX = 40  # a refusal stays beside the cursor while it rests near by
BACK_KEYS = (Qt.Key.Key_Backspace, Qt.Key.Key_Delete)


class PlanTool(QgsMapTool):
    """A kind of it says in ``hint`` what to do next and overrides what it answers to.

    ``changed``: the hint, or what can be finished or taken back; ``refused``: why something was not done; ``left``: Esc
    with nothing begun; ``drawn``: the plan's layer and the name of a row that was added. Snapping is to the plan's
    marks, then as the project snaps.
    """

    changed = pyqtSignal()
    refused = pyqtSignal(str)
    left = pyqtSignal()
    drawn = pyqtSignal(str, str)
    snaps_to_marks = True
    aside = ""  # what there is to say beside what was drawn

    def __init__(self, canvas: QgsMapCanvas, plan: PlanAtHand) -> None:
        super().__init__(canvas)
        self.setCursor(Qt.CursorShape.CrossCursor)
        self.plan = plan
        self.places = CanvasPlaces(canvas)
        self.tip = CursorTip(canvas)
        self.lines = DrawnLines(canvas, self.places)
        self._indicator = QgsSnapIndicator(canvas)

    # ------------------------------------------------------------ what a kind overrides
    @property
    def hint(self) -> str:
        """What to do next."""
        raise NotImplementedError

    @property
    def position_words(self) -> str:
        """What a typed position does now: the words of the button beside it; empty where it does nothing."""
        return ""

    @property
    def can_finish(self) -> bool:
        """Whether something is begun that can be finished."""
        return False

    @property
    def can_take_back(self) -> bool:
        """Whether a vertex can be taken back."""
        return False

    @property
    def back_words(self) -> str:
        """What taking back does: the words of its button."""
        return tr("Remove Last Vertex")

    @property
    def report(self) -> tuple[str, ...]:
        """Lines that stay in the dock once a tool has measured something."""
        return ()

    @property
    def needs(self) -> tuple[str, GeometryType] | None:
        """The plan's layer that it works on; None for a tool that draws into none."""
        return None

    def point(self, place: Place) -> None:
        """The left button was pressed at a place, or a position was typed."""

    def look(self, place: Place) -> list[str]:
        """The cursor is at a place: draw what follows it, and give the lines to show beside it."""
        return []

    def finish(self) -> None:
        """Right click or Enter."""

    def take_back(self) -> None:
        """Backspace."""

    def drop(self) -> bool:
        """Esc: throw away what is begun. False where nothing is."""
        return False

    # ------------------------------------------------------------ what the canvas tells
    def canvasMoveEvent(self, event: QgsMapMouseEvent) -> None:
        """Show what is under the cursor."""
        self._try(lambda: self._look(event))

    def canvasPressEvent(self, event: QgsMapMouseEvent) -> None:
        """Point with the left button, finish with the right one."""
        if event.button() == Qt.MouseButton.LeftButton:
            if self._try(lambda: self.point(self.where(event))):
                self._try(lambda: self._look(event))
        elif event.button() == Qt.MouseButton.RightButton:
            self._try(self.finish)
        self.changed.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter finishes, Backspace takes back, Esc drops what is begun and, with nothing begun, leaves the tool."""
        if event.key() in FINISH_KEYS:
            self._try(self.finish)
        elif event.key() in BACK_KEYS:
            self._try(self.take_back)
        elif event.key() == Qt.Key.Key_Escape:
            if not self.drop():
                event.accept()
                self.left.emit()
                return
            self.tip.hide()
        else:
            event.ignore()
            return
        event.accept()
        self.changed.emit()

    def finish_now(self) -> None:
        """The dock's button: as Enter."""
        self._try(self.finish)
        self.changed.emit()

    def take_back_now(self) -> None:
        """The dock's button: as Backspace."""
        self._try(self.take_back)
        self.changed.emit()

    def look_again(self) -> None:
        """The swim or the plan around the cursor is another: so is what stands beside the cursor."""
        if self._place is not None and not self.tip.isHidden() and self._refused_at is None:
            self._try(lambda: self.say(self.look(self._place)))

    def type_position(self, lonlat: tuple[float, float]) -> None:
        """A position was typed: as if it had been pointed at, exactly, with no snapping."""
        self._try(lambda: self.point(Place(lon=lonlat[0], lat=lonlat[1])))
        self.changed.emit()

    def activate(self) -> None:
        """Chosen: what stands beside the cursor is of the place below it, so that it goes when the map moves."""
        super().activate()
        self.canvas().extentsChanged.connect(self.tip.hide)
        self._is_used = True

    def deactivate(self) -> None:
        """Another tool is chosen, or the plan goes: nothing of this one stays on the map."""
        if self._is_used:
            self.canvas().extentsChanged.disconnect(self.tip.hide)
            self._is_used = False
        self.clear()
        super().deactivate()

    def clear(self) -> None:
        """Drop what is begun and take everything off the map."""
        self.drop()
        self._place = self._refused_at = None
        self.lines.clear()
        self.tip.hide()
        self._indicator.setMatch(QgsPointLocator.Match())

    def release(self) -> None:
        """Before the plugin goes: the tool and all that it keeps on the canvas go too."""
        self.clear()
        self._indicator = None
        self.tip.deleteLater()
        self.deleteLater()

    # ------------------------------------------------------------ what the kinds use
    def layer(self) -> QgsVectorLayer:
        """The layer that it works on; SwimPlanError where that is not in the project or takes no edits."""
        layer = self.plan.layer(*self.needs)
        require_editable(layer)
        return layer

    def marks(self) -> list[MarkPlace]:
        """The marks as they stand."""
        return marks_of(self.plan.marks_layer())

    def where(self, event: QgsMapMouseEvent) -> Place:
        """The place under the cursor, at a mark's exact place where one is near. SwimPlanError off the globe, and on a
        map that shows nothing: a click there would mean a place off West Africa, at 0 degrees."""
        if self.canvas().extent().isEmpty():
            raise SwimPlanError(
                asked=tr("The map shows no place yet"),
                remedy=tr("Type a position, or add a map of the coast and go there"),
            )
        point = event.originalMapPoint()
        mark = self.places.mark_near(point, self.marks()) if self.snaps_to_marks else None
        if mark is not None:
            self._indicate(mark)
            return Place(lon=mark.lon, lat=mark.lat, mark=mark)
        point = event.snapPoint()
        self._indicator.setMatch(event.mapPointMatch())
        lon, lat = self.places.to_degrees(point)
        return Place(lon=lon, lat=lat)

    def say(self, lines: Sequence[str], pixel: QPoint | None = None) -> None:
        """Show lines beside the cursor, or where it was last."""
        if pixel is not None:
            self._pixel = pixel
        self.tip.show_lines(lines, self._pixel)

    def refuse(self, words: str) -> None:
        """Say at the cursor, until it moves on, and in the dock why something was not done."""
        self.say_here([words])
        self.refused.emit(words)

    def say_here(self, lines: Sequence[str]) -> None:
        """Show lines at the cursor until it moves on."""
        self._refused_at = self._pixel
        self.say(lines)

    def _look(self, event: QgsMapMouseEvent) -> None:
        self._place = self.where(event)
        lines = self.look(self._place)
        if self._refused_at is not None and (event.pos() - self._refused_at).manhattanLength() < READ_WITHIN_PX:
            return
        self._refused_at = None
        self.say(lines, event.pos())

    def _indicate(self, mark: MarkPlace) -> None:
        drawn = self.places.to_map((mark.lon, mark.lat))
        layer = self.plan.marks_layer()
        if drawn is not None:
            self._indicator.setMatch(QgsPointLocator.Match(QgsPointLocator.Type.Vertex, layer, mark.fid, 0.0, drawn, 0))

    def _try(self, work: Callable[[], object]) -> bool:
        """Do it; False where it is refused, which is said."""
        try:
            work()
        except SwimPlanError as error:
            self.refuse(str(error))
            return False
        return True

    _is_used = False
    _place: Place | None = None
    _pixel = QPoint(0, 0)
    _refused_at: QPoint | None = None


def joined(lines: Sequence[str]) -> list[str]:
    """The lines that say something."""
    return [line for line in lines if line]
