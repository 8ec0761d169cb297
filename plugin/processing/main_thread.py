"""What only QGIS's main thread may do, done from an algorithm's worker while it is still running.

Print layouts live in the main thread. What goes wrong after an algorithm's run no longer makes it fail: QGIS says so
and gives the results all the same. So the worker waits for the main thread instead.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from threading import Event, Lock
from typing import TypeVar

from qgis.PyQt.QtCore import QCoreApplication, QObject, Qt, QThread, pyqtSignal, pyqtSlot

from ..core.errors import StoppedError, SwimPlanError
from ..words import tr

Found = TypeVar("Found")
LOOK_EVERY_S = 0.05
PATIENCE_S = 600.0


def in_main_thread(work: Callable[[], Found], is_cancelled: Callable[[], bool] = bool) -> Found:
    """What ``work`` gives, or raises, called in the main thread.

    StoppedError where the run is stopped before the main thread has come to it: QGIS waits for its tasks when it ends,
    and would wait for ever. SwimPlanError where it does not come to it within ten minutes.
    """
    main = QCoreApplication.instance().thread()
    if QThread.currentThread() == main:
        return work()
    errand = _Errand(work)
    errand.moveToThread(main)
    errand.asked.connect(errand.call, Qt.ConnectionType.QueuedConnection)
    errand.asked.emit()
    try:
        return errand.outcome(is_cancelled)
    finally:
        errand.deleteLater()  # by the main thread, which may still be coming back from it


class _Errand(QObject):
    """A call on its way to the main thread."""

    asked = pyqtSignal()

    def __init__(self, work: Callable[[], object]) -> None:
        super().__init__()
        self._work, self._done, self._lock = work, Event(), Lock()
        self._begun = self._given_up = False
        self._found: object = None
        self._error: BaseException | None = None

    @pyqtSlot()
    def call(self) -> None:
        """Done in the main thread, unless it has been given up."""
        with self._lock:
            if self._given_up:
                return
            self._begun = True
        try:
            self._found = self._work()
        except BaseException as error:  # it is raised in the thread that asked
            self._error = error
        self._done.set()

    def outcome(self, is_cancelled: Callable[[], bool]) -> object:
        """Wait for it; what is begun is waited for to its end."""
        until = time.monotonic() + PATIENCE_S
        while not self._done.wait(LOOK_EVERY_S):
            late = time.monotonic() > until
            with self._lock:
                self._given_up = not self._begun and (late or is_cancelled())
            if self._given_up and late:
                raise SwimPlanError(
                    asked=tr("QGIS was too busy to lay out the card"), remedy=tr("Run it again when QGIS answers")
                )
            if self._given_up:
                raise StoppedError()
        error, self._error, self._work = self._error, None, None
        if error is not None:
            raise error
        return self._found
