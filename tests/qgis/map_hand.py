"""A hand on the map: moves, clicks, drags and keys on the real canvas, at places given in degrees."""

from __future__ import annotations

from desk import Desk, wait_for
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsPointXY,
    QgsProject,
    QgsRectangle,
)
from qgis.PyQt.QtCore import QPoint, Qt
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication
from swims import moved
from tideleg.dock.dock import TidelegDock
from tideleg.map_tools.row_form import RowForm

LEFT, RIGHT, NONE = Qt.MouseButton.LeftButton, Qt.MouseButton.RightButton, Qt.KeyboardModifier.NoModifier
Lonlat = tuple[float, float]


class Hand:
    """Works one desk's canvas with its dock."""

    def __init__(self, desk: Desk, dock: TidelegDock) -> None:
        self.canvas, self.dock, self.section = desk.canvas, dock, dock.drawing
        self.canvas.setRenderFlag(False)  # nothing here looks at what is drawn under the tools

    def show(self, crs: str = "EPSG:4326", *, around_m: float = 1500.0, middle: Lonlat | None = None) -> None:
        """Show so many metres around a place in a reference system."""
        middle = middle or moved(500.0, 100.0)
        QgsProject.instance().setCrs(QgsCoordinateReferenceSystem(crs))
        self.canvas.setDestinationCrs(QgsCoordinateReferenceSystem(crs))
        corners = [moved(east, north, *middle) for east in (-around_m, around_m) for north in (-around_m, around_m)]
        box = QgsRectangle()
        for corner in corners:
            box.combineExtentWith(*self._to_map().transform(QgsPointXY(*corner)))
        self.canvas.setExtent(box)

    def pixel(self, place: Lonlat) -> QPoint:
        """The pixel of the canvas that shows a place."""
        point = self.canvas.getCoordinateTransform().transform(self._to_map().transform(QgsPointXY(*place)))
        return QPoint(round(point.x()), round(point.y()))

    def take(self, name: str) -> None:
        """Click a tool's button in the dock."""
        QTest.mouseClick(self.section.buttons[name], LEFT)

    def move(self, place: Lonlat) -> list[str]:
        """Move the mouse to a place and read what stands beside the cursor."""
        pixel = self.pixel(place)
        QTest.mouseMove(self.canvas.viewport(), pixel + QPoint(1, 0))  # Qt tells of no move to where the mouse is
        QTest.mouseMove(self.canvas.viewport(), pixel)
        QApplication.processEvents()
        return self.tip()

    def tip(self) -> list[str]:
        """What stands beside the cursor."""
        used = self.section.tools.used
        return used.tip.text().split("\n") if used is not None and not used.tip.isHidden() else []

    def click(self, place: Lonlat, button: Qt.MouseButton = LEFT) -> None:
        """Move there and click."""
        self.move(place)
        QTest.mouseClick(self.canvas.viewport(), button, NONE, self.pixel(place))

    def drag(self, start: Lonlat, end: Lonlat) -> None:
        """Press, move and let go."""
        self.move(start)
        QTest.mousePress(self.canvas.viewport(), LEFT, NONE, self.pixel(start))
        self.move(end)
        QTest.mouseRelease(self.canvas.viewport(), LEFT, NONE, self.pixel(end))

    def key(self, key: Qt.Key) -> None:
        """Press a key over the canvas."""
        QTest.keyClick(self.canvas, key)

    def form(self) -> RowForm:
        """The form that a drawn row is asked for with."""
        forms = [one for one in self.canvas.window().findChildren(RowForm) if one.isVisible()]
        assert len(forms) == 1, f"{len(forms)} forms are open"
        return forms[0]

    def fill(self, **values: object) -> None:
        """Fill in the form and press OK."""
        form = self.form()
        for name, value in values.items():
            form.wrappers[name].setValues(value, [])
        QTest.mouseClick(form.buttons.button(form.buttons.StandardButton.Ok), LEFT)

    def settled(self) -> None:
        """Wait for the swim of what was drawn."""
        wait_for(lambda: self.dock.session.stage == "settled", "the swim")

    def _to_map(self) -> QgsCoordinateTransform:
        degrees = QgsCoordinateReferenceSystem("EPSG:4326")
        return QgsCoordinateTransform(degrees, self.canvas.mapSettings().destinationCrs(), QgsProject.instance())
