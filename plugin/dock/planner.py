"""Plans a swim in the background: the request, the swim, then its turn back; the latest request wins.

While things change under the mouse the chart and the water kept from the swim before give a first answer at once; when
they have come to rest the swim is planned from the plan itself, as by the algorithm, and then its turn back.

The copies of the layers are made before on the main thread and are all that the worker reads of the project. Making the
request from them belongs to the worker as well, since seeing which station looks round which corner takes as long as
ten swims; a layer that is not in the project, and the models of currents, it opens from the plan's files for itself.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path
from time import monotonic, sleep
from typing import TYPE_CHECKING

from qgis.PyQt.QtCore import QObject, pyqtSignal

from ..core.errors import StoppedError, SwimPlanError
from ..core.results.swim_plan import SwimPlan
from ..core.solve.request import SwimRequest
from ..layers_in.copied_source import CopiedSource
from ..words import tr
from .latest_work import LatestWork

if TYPE_CHECKING:
    from ..layers_in.kept_request import KeptRequest
    from ..layers_in.swim_in import SwimAsked

QUIET_S = 0.15
LOOK_S = 0.01


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
        self._is_exact = False
        self._kept: KeptRequest | None = None  # replaced whole, in the worker

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

            wanted, kept = SwimAsked(**asked), self._kept
            quick = kept.of(path, copies, wanted) if kept is not None else None
            if quick is not None:
                tell((quick, plan_swim(quick, is_cancelled=is_cancelled), False))
            wait_for_quiet(is_cancelled)
            request = request_from(path, copies, wanted)
            swim = plan_swim(request, is_cancelled=is_cancelled)
            tell((request, swim, True))
            if quick is None:
                self._keep(path, copies, wanted, request)
            return with_turn_back(swim, turn_back(request, swim, is_cancelled=is_cancelled))

        self._is_exact = False
        title = tr("Tideleg: planning the swim")
        self._work.start(title, work, self._tell, self.turned.emit, self._refuse, self.stopped.emit)

    def forget(self) -> None:
        """Stop, and keep nothing of the plan."""
        self.cancel()
        self._kept = None

    def _keep(self, path: Path, copies: Mapping[str, CopiedSource], asked: SwimAsked, swum: SwimRequest) -> None:
        """In the worker: for the next swim; what cannot be had round this one is read anew each time."""
        from ..layers_in.kept_request import kept_from

        try:
            self._kept = kept_from(path, copies, asked, swum)
        except SwimPlanError:
            self._kept = None

    def _tell(self, told: tuple[SwimRequest, SwimPlan, bool]) -> None:
        request, swim, self._is_exact = told
        self.planned.emit(request, swim)

    def _refuse(self, words: str) -> None:
        """What is refused after the exact swim was told of is its turn back; before it the plan itself is refused, and
        water and chart kept of it before count no more."""
        if self._is_exact:
            self.turn_refused.emit(words)
            return
        self._kept = None
        self.refused.emit(words)


def wait_for_quiet(is_cancelled: Callable[[], bool], quiet_s: float = QUIET_S) -> None:
    """In the worker: StoppedError where another request comes meanwhile. Reading a plan cannot be stopped half-way."""
    until = monotonic() + quiet_s
    while monotonic() < until:
        if is_cancelled():
            raise StoppedError
        sleep(LOOK_S)
