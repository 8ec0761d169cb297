"""Work in the background of which only the latest counts."""

from __future__ import annotations

import traceback
from collections.abc import Callable
from typing import Any

from qgis.core import Qgis, QgsApplication, QgsMessageLog, QgsTask
from qgis.PyQt.QtCore import QObject, Qt, QThreadPool, pyqtSignal

from ..core.errors import StoppedError, SwimPlanError
from ..words import tr

# Since 3.26 a task that lasts a blink need not show in the task bar.
_QUIET = getattr(QgsTask.Flag, "Hidden", QgsTask.Flag(0)) | getattr(QgsTask.Flag, "Silent", QgsTask.Flag(0))

Work = Callable[[Callable[[], bool], Callable[[Any], None]], Any]


class _Work(QgsTask):
    """One piece of work; ``answer`` is called on the main thread with the work, whether it went well or not.

    ``tell`` is called in the worker with the work and what there is of its result.
    """

    def __init__(self, description: str, work: Work, tell: Callable, answer: Callable) -> None:
        super().__init__(description, QgsTask.Flag.CanCancel | _QUIET)
        self._work, self._tell, self._answer = work, tell, answer
        self.result: Any = None
        self.refusal = ""

    def run(self) -> bool:
        """In QGIS's worker. The map is drawn by the same few workers: as long as this one waits or computes, another
        may take its place, else the map stands still."""
        workers = QThreadPool.globalInstance()
        workers.releaseThread()
        try:
            return self._do()
        finally:
            workers.reserveThread()

    def _do(self) -> bool:
        """No widget, no project, no layer of the user's."""
        try:
            self.result = self._work(self.isCanceled, self._tell_part)
        except StoppedError:
            return False
        except SwimPlanError as error:
            self.refusal = str(error)
        except Exception as error:  # a defect of ours must be told, not lost in a thread
            QgsMessageLog.logMessage(traceback.format_exc(), "Tideleg", Qgis.MessageLevel.Critical)
            self.refusal = tr("Tideleg has a defect here: {}. The log messages say more.").format(error)
        return not self.isCanceled()

    def _tell_part(self, part: Any) -> None:
        """Who has cancelled the work is no longer there to be told."""
        if not self.isCanceled():
            self._tell(self, part)

    def finished(self, ok: bool) -> None:
        """On the main thread."""
        self._answer(self, ok)


class LatestWork(QObject):
    """Runs one piece of work at a time: a newer one cancels those before it, whose answers are no longer heard."""

    _told = pyqtSignal(object, object)  # from the worker, heard on the main thread

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._latest: _Work | None = None
        self._hear: Callable[[Any], None] = bool
        self._running: set[_Work] = set()  # QGIS keeps the C++ side, this the Python side, until each is through
        self._told.connect(self._heard, Qt.ConnectionType.QueuedConnection)

    @property
    def is_busy(self) -> bool:
        """Whether the latest has still to answer."""
        return self._latest is not None

    def start(
        self,
        description: str,
        work: Work,
        told: Callable[[Any], None],
        done: Callable[[Any], None],
        refused: Callable[[str], None],
        stopped: Callable[[], None],
    ) -> None:
        """Do ``work`` and call the others on the main thread: ``told`` with each part of the result that the work tells
        of, then one of the rest.

        ``work`` is given a question whether to stop and what to call with a part of its result. ``stopped`` is called
        where the user cancels the task in QGIS's own task list.
        """
        self.cancel()

        def answer(task: _Work, ok: bool) -> None:
            self._running.discard(task)
            if task is not self._latest:
                return
            self._latest = None
            if not ok:
                stopped()
            elif task.refusal:
                refused(task.refusal)
            else:
                done(task.result)

        self._latest = _Work(description, work, self._told.emit, answer)
        self._hear = told
        self._running.add(self._latest)
        QgsApplication.taskManager().addTask(self._latest)

    def _heard(self, task: _Work, part: Any) -> None:
        if task is self._latest:
            self._hear(part)

    def cancel(self) -> None:
        """Stop what runs; nobody hears of it any more."""
        task, self._latest = self._latest, None
        if task is not None:
            task.cancel()
