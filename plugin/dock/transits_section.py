"""The dock's section on transits: which landmarks stand in line at a mark, ticked for the card."""

from __future__ import annotations

from collections.abc import Callable

from qgis.PyQt.QtCore import QSignalBlocker, QTimer, pyqtSignal
from qgis.PyQt.QtWidgets import QHBoxLayout, QPushButton

from ..core.chart.marks import Mark
from ..core.errors import SwimPlanError
from ..layers_in.copied_source import CopiedSource
from ..layers_in.transits_at_mark import TransitsAtMark, transits_at_mark
from ..map_tools.at_hand import GeometryType
from ..words import tr
from .asking import choice_box, form_of, name_widgets
from .edit_steps import EditSteps
from .latest_work import LatestWork
from .plan_at_hand import PlanAtHand
from .plan_marks import PlanMarks, labels_of, place_of
from .rows import Row
from .section import Section, label
from .session import Session
from .transit_picks import drop, pick
from .transit_rows import TransitRow, picked_words, transit_rows
from .transit_table import TransitTable

SETTLE_MS = 150  # a route that is dragged asks once, afterwards
LAYERS = ("marks", "landmarks", "transits")


class TransitsSection(Section):
    """Looks for transits whenever mark, landmarks or picks change, unless it is folded or nobody looks.

    ``place_asked``: landmarks are to be drawn; ``read_asked``: they are to be read from a chart.
    """

    page = "dock.md#transits"
    place_asked = pyqtSignal()
    read_asked = pyqtSignal()

    def __init__(self, session: Session, plan: PlanAtHand, go_to: Callable[[Row], None]) -> None:
        super().__init__("Transits", tr("Transits"))
        self._session, self._plan = session, plan
        self._path = session.path
        self._marks = PlanMarks(session)
        self._work = LatestWork(self)
        self._asked: tuple = ()  # what the answer shown, or on its way, is for
        self.seen: TransitsAtMark | None = None
        self.mark, self.table = choice_box(), TransitTable()
        self.why, self.picked, self.problem = label(), label(strong=True), label(strong=True)
        self.caution = label(tr("Whether a landmark is hidden from the water is not known here: look before you go."))
        self.place, self.read = QPushButton(tr("Place Landmarks")), QPushButton(tr("Read from a Chart…"))
        self.steps = EditSteps(session.project, tr("Save Transits"), self)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(SETTLE_MS)
        self._set_up()
        self._lay_out()
        self._connect(go_to)
        self._plan_changed()

    def _set_up(self) -> None:
        name_widgets(
            {
                self.mark: (
                    tr("Mark"),
                    tr("The mark from which the landmarks are seen; stops of the route come first"),
                ),
                self.table: (
                    tr("Transits"),
                    tr("A click shows the two landmarks on the map; the box puts them on the card"),
                ),
                self.place: (tr("Place landmarks"), tr("Take the map tool that places things ashore")),
                self.read: (tr("Read from a chart"), tr("Read towers, chimneys, beacons and lights from a chart cell")),
            }
        )
        for button in (self.place, self.read):
            button.setAutoDefault(False)

    def _lay_out(self) -> None:
        self.inside.addLayout(form_of([(tr("Seen fro&m"), self.mark)]))
        ashore, steps = QHBoxLayout(), QHBoxLayout()
        for row, buttons in (
            (ashore, (self.place, self.read)),
            (steps, (self.steps.undo, self.steps.redo, self.steps.save)),
        ):
            row.addStretch()
            for button in buttons:
                row.addWidget(button)
        for words in (self.why, self.problem):
            self.inside.addWidget(words)
        self.inside.addLayout(ashore)
        self.inside.addWidget(self.table)
        self.inside.addWidget(self.picked)
        self.inside.addWidget(self.caution)
        self.inside.addLayout(steps)

    def _connect(self, go_to: Callable[[Row], None]) -> None:
        session = self._session
        self.mark.activated.connect(lambda _number: self.look())
        self.table.row_chosen.connect(go_to)
        self.table.ticked.connect(self._tick)
        self.place.clicked.connect(lambda: self.place_asked.emit())
        self.read.clicked.connect(lambda: self.read_asked.emit())
        self.steps.said.connect(lambda _words: self._refused(""))
        self.steps.refused.connect(self._refused)
        self.steps.stepped.connect(self.steps.show)
        self._soon.timeout.connect(self.look)
        self.collapsedStateChanged.connect(lambda _folded: self._soon.start())
        session.plan_changed.connect(self._plan_changed)
        session.asked_changed.connect(lambda _name: self._soon.start())
        session.swim_changed.connect(lambda: self._soon.start())

    def _plan_changed(self) -> None:
        if self._session.path != self._path:
            self._path, self._asked, self.seen = self._session.path, (), None
            self._work.cancel()
            self.steps.forget()
            self.mark.clear()
            self._refused("")
        self.setEnabled(self._path is not None)
        self._show()
        self._soon.start()

    def look(self) -> None:
        """Look for the transits of the mark that is chosen, where anything they go by has changed."""
        session = self._session
        if session.layers is None or session.depart is None or session.rests or self.isCollapsed():
            return
        try:
            copies = session.layers.copies()
            self._show_marks()
        except SwimPlanError as error:
            self._forget(str(error))
            return
        self.steps.show()
        mark: Mark | None = self.mark.currentData()
        if mark is None:
            self._forget("")
            return
        origin = self._plan.entry() or mark
        asked = (mark, place_of(origin), session.depart.date(), *(copies.get(name) for name in LAYERS))
        if _same(asked, self._asked):
            self._show()
            return
        self._asked = asked
        path, when = session.path, session.depart
        self._work.start(
            tr("Tideleg: {}").format(self.title()),
            lambda _is_cancelled, _tell: transits_at_mark(path, copies, mark, origin=place_of(origin), when=when),
            bool,
            self._found,
            self._forget,
            lambda: self._forget(tr("Stopped.")),
        )

    def _show_marks(self) -> None:
        """The marks with a name: the stops of the route in its order, then the others. SwimPlanError."""
        marks = [one for one in self._marks.marks() if one.name]
        stops = list(dict.fromkeys(stop.name for stop in self._marks.stops()))
        on_route = [mark for name in stops for mark in marks if mark.name == name]
        ordered = [*on_route, *(mark for mark in marks if mark.name not in stops)]
        labels = labels_of(ordered)
        shown = [(labels[place_of(mark)], mark) for mark in ordered]
        if shown == [(self.mark.itemText(row), self.mark.itemData(row)) for row in range(self.mark.count())]:
            return
        chosen = self.mark.currentText()
        blocker = QSignalBlocker(self.mark)
        self.mark.clear()
        for words, mark in shown:
            self.mark.addItem(words, mark)
        first = next((row for row, mark in enumerate(ordered) if mark.kind == "mark"), 0 if shown else -1)
        again = self.mark.findText(chosen) if chosen else -1
        self.mark.setCurrentIndex(again if again >= 0 else first)
        del blocker

    def _found(self, seen: TransitsAtMark) -> None:
        self.seen = seen
        self._refused("")
        self.table.show_rows(transit_rows(seen))
        self._show()

    def _forget(self, words: str) -> None:
        """There is no answer, and why."""
        self._work.cancel()
        self.seen, self._asked = None, ()
        self.table.show_rows([])
        self._refused(words)
        self._show()

    def _show(self) -> None:
        """What there is, or what to do first."""
        if self._path is None:
            self.show_hint(tr("Open a plan first."))
            return
        no_marks = self.mark.count() == 0 and self.problem.isHidden()
        self.show_hint(tr("Place a mark first: landmarks are seen in line from a mark.") if no_marks else "")
        seen, rows = self.seen, bool(self.table.rows)
        why = "\n".join([seen.found.reason, *seen.warnings]).strip() if seen is not None else ""
        self.why.setText(why)
        self.why.setVisible(bool(why))
        for button in (self.place, self.read):
            button.setVisible(seen is not None and not seen.found.fixes)
        for widget in (self.table, self.picked, self.caution):
            widget.setVisible(rows)
        if seen is not None:
            self.picked.setText(picked_words(seen, self._stop_names()))
        self.steps.show()

    def _stop_names(self) -> list[str]:
        try:
            return [stop.name for stop in self._marks.stops()]
        except SwimPlanError:  # planning says what is wrong with the layer
            return []

    def _tick(self, row: TransitRow, is_on: bool) -> None:
        """Put a transit on the card or take it off, as one step of undo in the layer."""
        try:
            layer = self._plan.layer("transits", GeometryType.LineGeometry)
            if is_on:
                copies = self._session.layers.copies()
                names = [copies[name].texts("name") if name in copies else [] for name in ("marks", "landmarks")]
                pick(layer, row.transit, *names)
            else:
                drop(layer, row.transit)
        except SwimPlanError as error:
            self._refused(str(error))
            self.table.show_rows(transit_rows(self.seen))  # the box as it was
            return
        self._refused("")
        self.steps.drawn(layer)
        self.steps.show()

    def _refused(self, words: str) -> None:
        self.problem.setText(words)
        self.problem.setVisible(bool(words))


def _same(one: tuple, other: tuple) -> bool:
    """Copies of layers count by themselves: the same one has the same rows."""
    alike = (a is b or (not isinstance(a, CopiedSource) and a == b) for a, b in zip(one, other))
    return len(one) == len(other) and all(alike)
