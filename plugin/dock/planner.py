"""Plans a swim in the background: the request, the swim, then its turn back; the latest request wins.

The copies of the layers are made before on the main thread and are all that the worker reads of the project. Making the
request from them belongs to the worker as well, since seeing which station looks round which corner takes as long as
ten swims; a layer that is not in the project, and the models of currents, it opens from the plan's files for itself.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

from qgis.PyQt.QtCore import QObject, pyqtSignal

from ..core.results.swim_plan import SwimPlan
from ..core.solve.request import SwimRequest
from .copied_source import CopiedSource
from .latest_work import LatestWork
from .words import tr


class Planner(QObject):
    """``planned`` gives the request and the swim, ``turned`` the same swim with its turn back, ``refused`` why there is
    none.

    ``turn_refused`` says why a planned swim has no turn back; ``stopped`` that the user cancelled the task.
    """

    planned = pyqtSignal(object, object)
    turned = pyqtSignal(object)
    refused = pyqtSignal(str)
    turn_refused = pyqtSignal(str)
    stopped = pyqtSignal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = LatestWork(self)
        self._has_told = False

    @property
    def is_busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._work.is_busy

    def cancel(self) -> None:
        """Stop, and answer nothing any more."""
        self._work.cancel()

    def plan(self, path: Path, copies: Mapping[str, CopiedSource], asked: dict[str, object]) -> None:
        """Plan the swim asked for (the fields of ``SwimAsked``), in place of what is being planned."""

        def work(is_cancelled: Callable[[], bool], tell: Callable[[object], None]) -> SwimPlan:
            from ..core.solve.plan_swim import plan_swim
            from ..core.solve.turn_back.turn_back import turn_back, with_turn_back
            from ..layers_in.swim_in import SwimAsked, request_from

            request = request_from(path, copies, SwimAsked(**asked))
            swim = plan_swim(request, is_cancelled=is_cancelled)
            tell((request, swim))
            return with_turn_back(swim, turn_back(request, swim, is_cancelled=is_cancelled))

        self._has_told = False
        title = tr("Tideleg: planning the swim")
        self._work.start(title, work, self._tell, self.turned.emit, self._refuse, self.stopped.emit)

    def _tell(self, told: tuple[SwimRequest, SwimPlan]) -> None:
        self._has_told = True
        self.planned.emit(*told)

    def _refuse(self, words: str) -> None:
        """What is refused after the swim was told of is its turn back."""
        (self.turn_refused if self._has_told else self.refused).emit(words)
