"""The swim the dock works on: plan, choices, outcome. No widgets: views show it, tests drive it."""

from __future__ import annotations

from contextlib import suppress
from datetime import datetime, timedelta, timezone
from pathlib import Path

from qgis.core import QgsProject
from qgis.PyQt.QtCore import QDateTime, QObject, QTimer, pyqtSignal

from ..core.clock import later, zone_named
from ..core.errors import SwimPlanError
from ..core.results.swim_plan import SwimPlan
from ..core.solve.request import SwimRequest
from ..core.solve.swim import SwimWay
from ..layers_in.copied_source import RowsMissingError
from ..layers_in.swim_people import settings_read
from ..plan_package.database import patience
from ..plan_package.project import add_plan_to_project
from ..words import tr
from .departure import STEP_MIN, first_departure, moment_of, tide_moments
from .plan_in_project import PATIENCE_S, PlanInProject, plans_in
from .planner import Planner
from .recent_plans import remember_plan

SETTLE_MS = 5  # what one edit changes at several places is one change
READINGS, READ_AGAIN_MS = 4, 250  # of a file that gives fewer rows than it has
# What is on its way: nothing; the swim, so that what is shown is not what is chosen; only its turn back.
SETTLED, PLANNING, TURNING = "settled", "planning", "turning"


class Session(QObject):
    """``plan_changed``: opened, closed or refused; ``choices_changed``: what may be or is chosen; ``asked_changed``: a
    choice, by its name, or the plan's rows, without one, so that what was computed is of before; ``swim_changed``: the
    swim, why there is none, or whether one is on its way.

    ``request`` is what the shown ``swim`` was planned from; None without one.
    """

    plan_changed = pyqtSignal()
    choices_changed = pyqtSignal()
    asked_changed = pyqtSignal(str)
    swim_changed = pyqtSignal()

    def __init__(self, project: QgsProject, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.project = project
        self.layers: PlanInProject | None = None
        self.title = self.zone_name = self.plan_problem = self.file_note = ""
        self._seen: tuple = ()  # how the plan's file stood when its settings were read
        self.routes: list[str] = []
        self.swimmers: list[str] = []
        self.route = ""
        self.ticked: tuple[str, ...] = ()
        self.depart: datetime | None = None
        self.pace_m_s: float | None = None
        self.way = SwimWay()
        self.request: SwimRequest | None = None
        self.swim: SwimPlan | None = None
        self.problem = self.turn_problem = ""
        self.was_stopped = False
        self.stage = SETTLED
        self._rests = False
        self._times_read = 0
        self._settle = QTimer(self)
        self._settle.setSingleShot(True)
        self._settle.timeout.connect(self._plan_now)
        self._planner = Planner(self)
        self._planner.planned.connect(self._show)
        self._planner.turned.connect(self._show_turned)
        self._planner.refused.connect(self._refuse)
        self._planner.turn_refused.connect(self._refuse_turn_back)
        self._planner.stopped.connect(self._stopped)

    @property
    def path(self) -> Path | None:
        """The plan's file; None without a plan."""
        return self.layers.path if self.layers is not None else None

    @property
    def rests(self) -> bool:
        """Whether nobody looks, so that nothing need be computed."""
        return self._rests

    @property
    def notes(self) -> list[str]:
        """What the plan cannot know of: rows that a filter of the user's hides, another program's work on its file."""
        words = tr("Layer '{}' is filtered: the rows that its filter hides are not in the plan.")
        hidden = [words.format(name) for name in self.layers.filtered()] if self.layers is not None else []
        return [*filter(None, [self.file_note]), *hidden]

    def own_pace_m_s(self) -> float | None:
        """The pace of those who are ticked, the slowest of them; None where the plan does not give it."""
        layer = self.layers.layer("swimmers") if self.layers is not None else None
        rows = layer.getFeatures() if layer is not None and layer.fields().indexOf("pace_m_s") >= 0 else ()
        paces = [row["pace_m_s"] for row in rows if row["name"] in self.ticked]
        known = [float(pace) for pace in paces if isinstance(pace, (int, float))]
        return min(known) if known and len(known) == len(paces) else None

    def asked(self) -> dict[str, object]:
        """The fields of ``SwimAsked`` for the swim that is chosen; a plan must be open."""
        return {
            "route": self.route,
            "depart": self.depart.isoformat(),
            "swimmer": ";".join(self.ticked),
            "pace_m_s": self.pace_m_s,
            "way": self.way,
        }

    def adopt_plan(self) -> bool:
        """Work on the plan whose layers are in the project already, such as one that was saved with it."""
        found = plans_in(self.project) if self.layers is None else []
        return bool(found) and self.open_plan(found[0])

    def open_plan(self, path: str | Path) -> bool:
        """Work on a plan: its layers come into the project where they are not there yet. False where it is refused;
        the plan before it then stays."""
        path = Path(path).resolve()
        layers = None
        try:
            layers = PlanInProject(path, self.project, self)
            with patience(PATIENCE_S):
                settings = settings_read(path, layers.copies())
            if not layers.is_there:
                add_plan_to_project(path, self.project)
            self._begin(layers, settings["title"] or path.stem, settings["zone"])
        except SwimPlanError as error:
            if layers is not None and layers is not self.layers:
                layers.close()
            self.plan_problem = str(error)
            self.plan_changed.emit()
            return False
        remember_plan(path)
        self.plan_changed.emit()
        self.choices_changed.emit()
        self.plan_again()
        return True

    def close_plan(self) -> None:
        """Work on no plan; its layers stay in the project."""
        self._settle.stop()
        self._planner.forget()
        if self.layers is not None:
            self.layers.close()
            self.layers.deleteLater()
        self.layers = self.request = self.swim = self.depart = self.pace_m_s = None
        self.routes, self.swimmers, self.ticked, self.way = [], [], (), SwimWay()
        self.title = self.zone_name = self.route = self.problem = self.turn_problem = self.plan_problem = ""
        self.file_note, self._seen = "", ()
        self.was_stopped, self.stage = False, SETTLED
        for signal in (self.plan_changed, self.choices_changed, self.swim_changed):
            signal.emit()

    def choose_route(self, name: str) -> None:
        """Swim another of the plan's routes."""
        self._choose("route", name)

    def choose_swimmers(self, names: tuple[str, ...]) -> None:
        """Swim as these, together where they are several; the plan's first where nobody is ticked."""
        self._choose("ticked", names)

    def choose_pace(self, pace_m_s: float | None) -> None:
        """Swim at this pace through the water; None for the swimmers' own."""
        self._choose("pace_m_s", pace_m_s)

    def choose_way(self, mode: int, heading_every_min: float) -> None:
        """Hold one heading a leg, take a new one every so many minutes, or hold the line: the modes of ``SwimWay``."""
        self._choose("way", SwimWay(mode=mode, heading_every_s=60.0 * heading_every_min))

    def choose_digits(self, digits: QDateTime) -> bool:
        """Leave when the plan's clock shows these digits. False, with the reason shown, for an hour that the zone skips
        or has twice: then there is no departure until another is chosen."""
        try:
            self._choose("depart", moment_of(digits, zone_named(self.zone_name)))
        except SwimPlanError as error:
            self._settle.stop()
            self._planner.cancel()
            self._refuse(str(error))
            return False
        return True

    def choose_moment(self, moment: datetime) -> None:
        """Leave at an aware moment, also in an hour that comes twice: the moment says which of the two is meant."""
        self._choose("depart", moment.astimezone(zone_named(self.zone_name)))

    def step_departure(self, steps: int) -> None:
        """Leave so many times ten minutes later: minutes that pass, also through a night on which clocks change."""
        if self.depart is not None:
            self._choose("depart", later(self.depart, timedelta(minutes=STEP_MIN * steps)))

    def plan_again(self, changed: str = "") -> None:
        """Plan once things have settled; what is shown until then is old. ``changed`` names the choice behind it."""
        if self.layers is None or self._rests:
            return
        self.asked_changed.emit(changed)
        self.stage = PLANNING
        self._planner.cancel()
        self._settle.start(SETTLE_MS)
        self.swim_changed.emit()

    def stop(self) -> None:
        """Stop planning: what was not computed yet stays away until something changes or is asked for again."""
        if self.stage != SETTLED:
            self._settle.stop()
            self._planner.cancel()
            self._stopped()

    def rest(self, rests: bool) -> None:
        """While nobody looks nothing is planned; afterwards what has changed meanwhile is."""
        self.stop()
        self._rests = rests
        self.plan_again()

    def _choose(self, name: str, value: object) -> None:
        if not _same(getattr(self, name), value) or self.problem:
            setattr(self, name, value)
            self.choices_changed.emit()
            self.plan_again(name)

    def _begin(self, layers: PlanInProject, title: str, zone_name: str) -> None:
        tides = tide_moments(layers.copies().get("tides"))
        if self.layers is not None:
            self.close_plan()
        self.layers, self.title, self.zone_name, self.plan_problem = layers, title, zone_name, ""
        self.depart = first_departure(tides, datetime.now(timezone.utc), zone_named(zone_name))
        layers.changed.connect(self._layer_changed)
        layers.gone.connect(self.close_plan)
        self._read_names()
        self._seen = self._file()

    def _read_names(self) -> None:
        """What may be chosen, as the layers stand; what is chosen and no longer there gives way."""
        copies = self.layers.copies()
        self.routes, self.swimmers = (
            list(dict.fromkeys(copies[name].texts("name"))) if name in copies else [] for name in ("routes", "swimmers")
        )
        if self.route not in self.routes:
            self.route = next(iter(self.routes), "")
        self.ticked = tuple(one for one in self.ticked if one in self.swimmers) or tuple(self.swimmers[:1])

    def _read_settings(self) -> None:
        """The plan's title and zone as they stand now."""
        try:
            with patience(PATIENCE_S):
                settings = settings_read(self.path, self.layers.copies())
        except SwimPlanError:
            return  # planning asks again and says what is wrong
        self.title, self.zone_name = settings["title"] or self.path.stem, settings["zone"]
        self.depart = self.depart.astimezone(zone_named(self.zone_name))

    def _file(self) -> tuple:
        """How the plan's file stood at the last copies."""
        return (self.layers.times_replaced, self.layers.stamp)

    def _follow_file(self) -> None:
        """What was written into the plan's file beside the layers counts: its names, its title and its clock."""
        before, seen = (self.title, self.zone_name), self._seen
        self._seen = self._file()
        if self._seen == seen:
            return
        self._read_settings()
        self._read_names()
        notes = [tr("Another file has taken the plan's place: it was read anew.")] if self._seen[0] != seen[0] else []
        if self.zone_name != before[1]:
            words = tr(
                "The plan's time zone was changed in its file: {} before, {} now. The departure is the same moment."
            )
            notes.append(words.format(before[1], self.zone_name))
        self.file_note = " ".join(notes) or self.file_note
        if notes or before != (self.title, self.zone_name):
            self.plan_changed.emit()
        self.choices_changed.emit()

    def _layer_changed(self, name: str) -> None:
        before = (self.routes, self.route)
        if name in ("routes", "swimmers"):
            with suppress(SwimPlanError):  # planning asks again and says what is wrong
                self._read_names()
        elif name == "settings":
            self._read_settings()
        if name in ("swimmers", "settings") or (self.routes, self.route) != before:
            self.choices_changed.emit()
        self.plan_again()

    def _plan_now(self) -> None:
        try:
            copies = self.layers.copies()
            self._follow_file()
        except RowsMissingError as error:
            self._read_later(str(error))
            return
        except SwimPlanError as error:
            self._refuse(str(error))
            return
        self._times_read = 0
        if not self.routes:
            self._refuse(tr("The plan has no route with a name. Draw one in the layer of routes and name it."))
            return
        self.was_stopped = False
        self._planner.plan(self.path, copies, self.asked())
        self.swim_changed.emit()

    def _read_later(self, words: str) -> None:
        """A file that was taken from under its layers may be read again in a moment; if not, say so."""
        self._times_read += 1
        if self._times_read < READINGS:
            self._settle.start(READ_AGAIN_MS)
        else:
            self._times_read = 0
            self._refuse(words)

    def _show(self, request: SwimRequest, swim: SwimPlan) -> None:
        self.request, self.swim, self.problem, self.turn_problem = request, swim, "", ""
        self.stage = TURNING
        self.swim_changed.emit()

    def _show_turned(self, swim: SwimPlan) -> None:
        self.swim, self.stage = swim, SETTLED
        self.swim_changed.emit()

    def _refuse(self, words: str) -> None:
        self.request = None
        self.swim, self.problem, self.was_stopped, self.stage = None, words, False, SETTLED
        self.swim_changed.emit()

    def _refuse_turn_back(self, words: str) -> None:
        self.turn_problem, self.stage = words, SETTLED
        self.swim_changed.emit()

    def _stopped(self) -> None:
        if self.stage == PLANNING:
            self.request, self.swim, self.problem = None, None, ""
        self.was_stopped, self.stage = True, SETTLED
        self.swim_changed.emit()


def _same(one: object, other: object) -> bool:
    """Whether a choice stays as it is. For Python two moments of one zone are equal where their digits are, though an
    hour that comes twice lie between them."""
    return one == other and getattr(one, "fold", 0) == getattr(other, "fold", 0)
