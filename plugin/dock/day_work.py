"""The day of the chosen departure, computed in the background: another minute of it needs nothing new.

Without a route it is the day at one place of the plan.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import TYPE_CHECKING

from qgis.PyQt.QtCore import QObject, pyqtSignal

from ..core.errors import SwimPlanError
from ..core.results.route_day import RouteDay
from ..words import tr
from .latest_work import LatestWork
from .planner import wait_for_quiet
from .session import PLANNING, SETTLED, Session

if TYPE_CHECKING:
    from ..layers_in.place_in import WaterPlace

STEP_MIN = 5.0
QUIET_S = 0.3  # longer than the planner waits: reading a plan cannot be stopped, and would slow a drag of the route
PATIENCE_S = 4.0  # how long the day waits for a swim whose turn back takes its time
MOST_KEPT = 40  # days looked at before the oldest of them is let go

Found = tuple[RouteDay, "WaterPlace | None"]  # a day and, without a route, where


class DayWork(QObject):
    """``changed`` comes when another day, or the same of after a change, is there, on its way or refused.

    ``day`` is what there is to show, ``is_old`` that something has changed since or another day was chosen, ``problem``
    why there is none. The swim goes first, with its turn back if that comes soon. ``place`` is where the day is that of
    one place, for want of a route; ``lacks_water`` says that the plan has neither route nor tide nor stream.
    """

    changed = pyqtSignal()

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._work = LatestWork(self)
        self._kept: dict[date, Found | str] = {}  # a day, or why there is none
        self._asked: date | None = None
        self._rests = False
        self._has_begun = True  # set in the worker: it waits no longer
        self.day: RouteDay | None = None
        self.is_old = False
        self.problem = ""
        self.place: WaterPlace | None = None
        self.lacks_water = False
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
        self.lacks_water = self._lacks_water()
        if session.path is None or session.depart is None or self.lacks_water:
            self._cancel()
            self._show(None)
            return
        wanted = session.depart.date()
        if wanted in self._kept:
            self._cancel()
            self._show(self._kept[wanted])
        elif session.stage == PLANNING or self._rests or session.rests:
            self._grow_old()
        elif not (self.is_busy and self._asked == wanted) or (session.stage == SETTLED and not self._has_begun):
            self._start(wanted, QUIET_S if session.stage == SETTLED else PATIENCE_S)

    def _lacks_water(self) -> bool:
        """Whether there is nothing to show: no route, and no water at any place either."""
        if self._session.path is None or self._session.routes:
            return False
        from ..layers_in.place_in import has_water

        try:
            return not has_water(self._session.path, self._session.layers.copies())
        except SwimPlanError:
            return False  # the day will say what is wrong

    def _start(self, wanted: date, quiet_s: float) -> None:
        session, day = self._session, wanted.isoformat()
        asked, path = {**session.asked(), "depart": day, "until": day}, session.path
        has_route = bool(session.routes)
        try:
            copies = session.layers.copies()
        except SwimPlanError as error:
            self._keep(wanted, str(error))
            return

        def work(is_cancelled: Callable[[], bool], _tell: Callable[[object], None]) -> Found:
            from ..core.solve.windows.place_days import place_day
            from ..core.solve.windows.route_days import route_day
            from ..layers_in.place_in import NOWHERE, place_request_from
            from ..layers_in.swim_in import SwimAsked, request_from

            wait_for_quiet(is_cancelled, quiet_s)
            self._has_begun = True
            if has_route:
                request = request_from(path, copies, SwimAsked(**asked))
                return route_day(request, STEP_MIN, is_cancelled=is_cancelled), None
            request, place = place_request_from(path, copies, SwimAsked(**asked))
            return place_day(request, has_place=place.kind != NOWHERE), place

        def keep(found: Found | str) -> None:
            self._keep(wanted, found)

        self._asked, self._has_begun = wanted, False
        self._work.start(tr("Tideleg: the day"), work, bool, keep, keep, lambda: keep(tr("Stopped.")))
        self._grow_old()

    def _keep(self, wanted: date, found: Found | str) -> None:
        self._kept[wanted] = found
        while len(self._kept) > MOST_KEPT:
            self._kept.pop(next(iter(self._kept)))
        self.look()

    def _show(self, found: Found | str | None, *, is_old: bool = False) -> None:
        self.problem = found if isinstance(found, str) else ""
        self.day, self.place = found if isinstance(found, tuple) else (None, None)
        self.is_old = is_old
        self.changed.emit()

    def _grow_old(self) -> None:
        """What there is stays, as of before."""
        self._show((self.day, self.place) if self.day is not None else None, is_old=True)

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
