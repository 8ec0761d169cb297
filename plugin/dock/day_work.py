"""The day of the chosen departure, computed in the background: another minute of it needs nothing new."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from qgis.PyQt.QtCore import QObject, pyqtSignal

from ..core.errors import SwimPlanError
from ..core.results.route_day import RouteDay
from ..words import tr
from .latest_work import LatestWork
from .planner import wait_for_quiet
from .session import PLANNING, SETTLED, Session

STEP_MIN = 5.0
QUIET_S = 0.3  # longer than the planner waits: reading a plan cannot be stopped, and would slow a drag of the route
PATIENCE_S = 4.0  # how long the day waits for a swim whose turn back takes its time
MOST_KEPT = 40  # days looked at before the oldest of them is let go


class DayWork(QObject):
    """``changed`` comes when another day, or the same of after a change, is there, on its way or refused.

    ``day`` is what there is to show, ``is_old`` that something has changed since or another day was chosen, ``problem``
    why there is none. The swim goes first, with its turn back if that comes soon.
    """

    changed = pyqtSignal()

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._work = LatestWork(self)
        self._kept: dict[date, RouteDay | str] = {}  # a day, or why there is none
        self._asked: date | None = None
        self._rests = False
        self._has_begun = True  # set in the worker: it waits no longer
        self.day: RouteDay | None = None
        self.is_old = False
        self.problem = ""
        session.asked_changed.connect(self._asked_changed)
        session.swim_changed.connect(self.look)
        session.plan_changed.connect(self._plan_changed)

    @property
    def is_busy(self) -> bool:
        """Whether a day is being computed."""
        return self._work.is_busy

    def rest(self, rests: bool) -> None:
        """While nobody looks no day is computed."""
        self._rests = rests
        if rests:
            self._cancel()
        self.look()

    def look(self) -> None:
        """Show the day of the chosen departure, or begin to compute it."""
        session = self._session
        if session.path is None or session.depart is None or not session.routes:
            self._cancel()
            self._show(None)
            return
        wanted = session.depart.date()
        if wanted in self._kept:
            self._cancel()
            self._show(self._kept[wanted])
        elif session.stage == PLANNING or self._rests or session.rests:
            self._show(self.day, is_old=True)
        elif not (self.is_busy and self._asked == wanted) or (session.stage == SETTLED and not self._has_begun):
            self._start(wanted, QUIET_S if session.stage == SETTLED else PATIENCE_S)

    def _start(self, wanted: date, quiet_s: float) -> None:
        session, day = self._session, wanted.isoformat()
        asked, path = {**session.asked(), "depart": day, "until": day}, session.path
        try:
            copies = session.layers.copies()
        except SwimPlanError as error:
            self._keep(wanted, str(error))
            return

        def work(is_cancelled: Callable[[], bool], _tell: Callable[[object], None]) -> RouteDay:
            from ..core.solve.windows.route_days import route_day
            from ..layers_in.swim_in import SwimAsked, request_from

            wait_for_quiet(is_cancelled, quiet_s)
            self._has_begun = True
            return route_day(request_from(path, copies, SwimAsked(**asked)), STEP_MIN, is_cancelled=is_cancelled)

        def keep(found: RouteDay | str) -> None:
            self._keep(wanted, found)

        self._asked, self._has_begun = wanted, False
        self._work.start(tr("Tideleg: the day"), work, bool, keep, keep, lambda: keep(tr("Stopped.")))
        self._show(self.day, is_old=True)

    def _keep(self, wanted: date, found: RouteDay | str) -> None:
        self._kept[wanted] = found
        while len(self._kept) > MOST_KEPT:
            self._kept.pop(next(iter(self._kept)))
        self.look()

    def _show(self, found: RouteDay | str | None, *, is_old: bool = False) -> None:
        day, problem = (None, found) if isinstance(found, str) else (found, "")
        self.day, self.problem, self.is_old = day, problem, is_old
        self.changed.emit()

    def _asked_changed(self, changed: str) -> None:
        """All but the departure makes every day old."""
        if changed != "depart":
            self._cancel()
            self._kept.clear()

    def _plan_changed(self) -> None:
        self._cancel()
        self._kept.clear()
        self._show(None)

    def _cancel(self) -> None:
        self._asked = None
        self._work.cancel()
