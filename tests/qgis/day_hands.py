"""Hands on the picture of the day in the dock: the mouse as a screen gives it, and what is seen afterwards."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path

from desk import desk_with_dock, opened, settle, wait_for
from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QEvent, QPointF, Qt
from qgis.PyQt.QtGui import QImage, QMouseEvent
from qgis.PyQt.QtTest import QTest
from swims import DAY, ZONE
from tideleg.core.clock import zone_named
from tideleg.dock.dock import TidelegDock

LISBON = zone_named(ZONE)
LEFT, NONE = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier


@contextmanager
def dock_on(plan: Path, depart: str = f"{DAY} 10:00") -> Iterator[TidelegDock]:
    """The dock with a plan swum and its day shown."""
    with desk_with_dock() as (_, open_dock):
        opened(open_dock, plan, depart=depart)
        yield shown(open_dock)


def shown(dock: TidelegDock) -> TidelegDock:
    """Wait until the day that is shown is that of what is chosen."""
    settle(dock.session)
    wait_for(lambda: not dock.water.work.is_old and not dock.water.work.is_busy, "the day")
    return dock


def local(clock: str, day: str = DAY) -> datetime:
    return datetime.fromisoformat(f"{day}T{clock}").replace(tzinfo=LISBON)


def place(dock: TidelegDock, moment: datetime, lane: str = "stream") -> QPointF:
    """Where a moment lies on a lane of the picture, in pixels."""
    view = dock.water.view
    axis = view.axis()
    return view.scale * QPointF(axis.x_of(moment), axis.lanes[lane].center().y())


def mouse(dock: TidelegDock, kind: QEvent.Type, at: QPointF, button=Qt.MouseButton.NoButton, held=None) -> None:
    """A mouse event between pixels, as a fine screen gives it: five minutes are little more than one."""
    QgsApplication.sendEvent(dock.water.view, QMouseEvent(kind, at, button, button if held is None else held, NONE))


def drag(dock: TidelegDock, to: datetime, *, release: bool = True) -> None:
    """Take hold of the handle and bring it to a moment in four moves, as a mouse does."""
    view = dock.water.view
    start, end = place(dock, view.departure), place(dock, to)
    mouse(dock, QEvent.Type.MouseButtonPress, start, LEFT)
    for share in (0.25, 0.5, 0.75, 1.0):
        mouse(dock, QEvent.Type.MouseMove, start + (end - start) * share, held=LEFT)
    if release:
        mouse(dock, QEvent.Type.MouseButtonRelease, end, LEFT, Qt.MouseButton.NoButton)


def click(dock: TidelegDock, moment: datetime, lane: str = "stream") -> None:
    """Press and let go at the pixel of a moment."""
    QTest.mouseClick(dock.water.view, LEFT, NONE, place(dock, moment, lane).toPoint())


def hover(dock: TidelegDock, moment: datetime) -> list[str]:
    """What is read with the cursor at a moment."""
    mouse(dock, QEvent.Type.MouseMove, place(dock, moment))
    return [value.text() for value in dock.water.readout.values]


def lightness(image: QImage) -> list[int]:
    """Of every fifth pixel each way."""
    across, down = range(0, image.width(), 5), range(0, image.height(), 5)
    return [image.pixelColor(x, y).lightness() for x in across for y in down]
