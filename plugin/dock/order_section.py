"""The dock's section on the order of marks: the best orders with their departures, one of them on the map."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime, timedelta

from qgis.core import QgsVectorLayerUtils
from qgis.PyQt.QtCore import QSignalBlocker
from qgis.PyQt.QtWidgets import QComboBox, QDateTimeEdit, QHBoxLayout, QPushButton

from ..core.chart.marks import Mark
from ..core.clock import later, zone_named
from ..core.errors import StoppedError, SwimPlanError
from ..core.results.best_order import OrderPlan, OrdersFound
from ..core.solve.order.request import MOST_MARKS
from ..layers_in.order_in import OrderAsked, order_from
from ..layers_in.swim_in import SwimAsked
from ..layers_out.order_layer import route_row
from ..layers_out.order_styles import ORDER_OUTPUTS, ORDER_STYLES, order_titles
from ..map_tools.edits import add_row
from ..map_tools.row_form import names_in
from ..words import tr
from .asked_layers import AskedLayers, Drawing
from .asking import choice_box, form_of, minutes_box, moment_editor, name_widgets
from .departure import digits_of, moment_of
from .mark_ticks import MarkTicks
from .order_rows import order_headers, order_rows, orders_headline
from .plan_marks import PlanMarks, labels_of, place_of
from .progress_words import by_percent
from .row_table import RowTable
from .rows import Row
from .section import label
from .session import PLANNING, Session
from .work_section import IsCancelled, Tell, WorkSection

AROUND_DEPARTURE = timedelta(hours=3)
STEP_MIN = 30
MOST_STEP_MIN = 360


class OrderSection(WorkSection):
    """Asks for the marks, the entry, the exit and the departures to try; the swimmers and their pace are the swim's."""

    page = "dock.md#order-of-marks"
    minds = ("ticked", "pace_m_s")
    tells = True

    def __init__(self, session: Session, go_to: Callable[[Row], None]) -> None:
        self.layers = AskedLayers(session.project, order_drawing())
        self.marks, self.entry, self.exit = MarkTicks(), choice_box(), choice_box()
        self.first, self.last = moment_editor(), moment_editor()
        self.every = minutes_box(1, MOST_STEP_MIN, STEP_MIN)
        self.count, self.headline, self.added = label(), label(strong=True), label()
        self.table = RowTable(order_headers())
        self.add = QPushButton(tr("Add as Route"))
        self._plan = PlanMarks(session)
        self.found: OrdersFound | None = None
        self.shown: OrderPlan | None = None
        self._go_to = go_to
        self._is_typed = False  # the departures to try are the user's own
        self._is_picked = False  # so are the marks and the ends
        self._adds = False
        super().__init__("Order", tr("Order of Marks"), session, tr("Find Best Order"))
        self._set_up()
        self._lay_out()
        self.marks.itemChanged.connect(lambda _item: self._pick())
        for choice in (self.entry, self.exit):
            choice.activated.connect(lambda _number: self._pick())
        for editor in (self.first, self.last):
            editor.dateTimeChanged.connect(lambda _digits: self._type_span())
        self.every.valueChanged.connect(lambda _minutes: self.grow_old(""))
        self.table.row_chosen.connect(self._choose)
        self.add.clicked.connect(self.add_route)
        session.choices_changed.connect(self.show_choices)
        session.swim_changed.connect(self.show_choices)
        self.show_choices()

    def _set_up(self) -> None:
        self.add.setAutoDefault(False)
        name_widgets(
            {
                self.marks: (tr("Marks to visit"), tr("Tick up to {} marks to visit").format(MOST_MARKS)),
                self.entry: (tr("Entry"), tr("Where one sets out")),
                self.exit: (tr("Exit"), tr("Where one lands; the first choice takes whichever is best")),
                self.first: (tr("Leave from"), tr("The first departure to try, date and time in the plan's zone")),
                self.last: (tr("Leave to"), tr("The last departure to try, date and time in the plan's zone")),
                self.every: (tr("Departure every"), tr("Minutes between the departures that are tried")),
                self.ask: (
                    tr("Find best order"),
                    tr("Weigh every order at every departure in the stream as it changes"),
                ),
                self.table: (tr("Orders"), tr("A click draws the order on the map")),
                self.add: (
                    tr("Add as route"),
                    tr("Put the order shown into the layer of routes, unsaved, and plan its swim"),
                ),
            }
        )

    def _lay_out(self) -> None:
        rows = (
            (tr("&Marks"), self.marks),
            ("", self.count),
            (tr("E&ntry"), self.entry),
            (tr("E&xit"), self.exit),
            (tr("Leave &from"), self.first),
            (tr("Leave t&o"), self.last),
            (tr("E&very"), self.every),
        )
        self.questions.addLayout(form_of(rows))
        buttons = QHBoxLayout()
        buttons.addWidget(self.added, 1)
        buttons.addWidget(self.add)
        column = self.answer_column()
        column.addWidget(self.headline)
        column.addWidget(self.table)
        words = tr("One heading a leg. No reserve is kept: look at the route's turn back before you go.")
        column.addWidget(label(words))
        column.addLayout(buttons)

    def show_choices(self) -> None:
        """Show the marks there are, and departures round the swim's while the user has not said which to try."""
        session = self._session
        if session.path is None or session.depart is None:
            return
        if session.stage != PLANNING:
            self._show_marks()
        if not self._is_typed:
            blockers = [QSignalBlocker(one) for one in (self.first, self.last)]
            whole = session.depart.replace(minute=0, second=0, microsecond=0)
            self.first.setDateTime(digits_of(later(whole, -AROUND_DEPARTURE)))
            self.last.setDateTime(digits_of(later(whole, AROUND_DEPARTURE)))
            del blockers

    def _show_marks(self) -> None:
        """The marks as they stand; while the user has ticked none himself, those of the route are."""
        try:
            marks = self._plan.marks()
            route = [(stop.name, stop.kind) for stop in self._plan.stops()]
        except SwimPlanError:
            return  # planning says what is wrong with the layer
        stops = [] if self._is_picked else route
        if (marks, stops) == self._known:
            return
        self._known, self._labels = (marks, stops), labels_of(marks)
        visits = [mark for mark in marks if mark.kind not in ("entry", "exit")]
        of_route = [mark for mark in visits if mark.kind == "mark" and (mark.name, mark.kind) in stops]
        self.marks.show_marks(visits, self._labels, None if self._is_picked else of_route)
        ends = [mark for mark in marks if mark.kind in ("entry", "exit")]
        # The route's own start before the other entries.
        starts = sorted(ends, key=lambda mark: ((mark.name, mark.kind) not in stops[:1], mark.kind != "entry"))
        self._fill(self.entry, starts, keep=self._is_picked)
        self._fill(self.exit, sorted(ends, key=lambda mark: mark.kind != "exit"), tr("The entry, or the best exit"))
        self._count()

    def _fill(self, choice: QComboBox, ends: list[Mark], first: str = "", *, keep: bool = True) -> None:
        chosen = choice.currentText() if keep else ""
        choice.clear()
        if first:
            choice.addItem(first, None)
        for mark in ends:
            choice.addItem(self._labels[place_of(mark)], place_of(mark))
        choice.setCurrentIndex(max(choice.findText(chosen), 0) if choice.count() else -1)

    def _pick(self) -> None:
        self._is_picked = True
        self._count()
        self.grow_old("")

    def _count(self) -> None:
        """How many are ticked, and whether that can be asked."""
        ticked = len(self.marks.ticked())
        if not self.marks.count():
            words = tr("The plan has no marks to visit. Place some in the layer of marks.")
        elif not ticked:
            words = tr("Tick the marks to visit.")
        elif ticked > MOST_MARKS:
            words = tr("{} are ticked: up to {} can be put in order.").format(ticked, MOST_MARKS)
        else:
            words = tr("{} of up to {} ticked").format(ticked, MOST_MARKS)
        self.count.setText(words)
        self.ask.setEnabled(1 <= ticked <= MOST_MARKS)

    def _type_span(self) -> None:
        self._is_typed = True
        self.grow_old("")

    def gather(self) -> Callable[[IsCancelled, Tell], OrdersFound]:
        """What is asked for, and copies of the plan's layers."""
        session = self._session
        if self.entry.currentData() is None:
            raise SwimPlanError(
                asked=tr("There is no entry to set out from"), remedy=tr("Place a mark of the kind entry")
            )
        first, last = (self._moment(editor) for editor in (self.first, self.last))
        asked = OrderAsked(
            marks=self.marks.ticked(),
            entry=self.entry.currentData(),
            exit=self.exit.currentData() or "",
            step_min=float(self.every.value()),
            swim=SwimAsked(
                depart=first.isoformat(),
                until=last.isoformat(),
                swimmer=";".join(session.ticked),
                pace_m_s=session.pace_m_s,
            ),
        )
        path, copies = session.path, session.layers.copies()

        def work(is_cancelled: IsCancelled, tell: Tell) -> OrdersFound:
            from ..core.solve.order.find_order import find_orders

            tell(tr("Reading the plan…"))
            request = order_from(path, asked, copies)
            if is_cancelled():
                raise StoppedError
            return find_orders(request, progress=by_percent(tell, order_stage), is_cancelled=is_cancelled)

        return work

    def _moment(self, editor: QDateTimeEdit) -> datetime:
        return moment_of(editor.dateTime(), zone_named(self._session.zone_name))

    def show_answer(self, answer: OrdersFound) -> None:
        """The orders in the table, the best one on the map."""
        self.found = answer
        self.headline.setText(orders_headline(answer))
        self.table.show_rows(order_rows(answer, self._labels))
        if answer.plans:
            self.table.setCurrentCell(0, 0)
            self._show(answer.plans[0])

    def _choose(self, row: Row) -> None:
        """Draw the order of a row and go there."""
        number = self.table.currentRow()
        if self.found is not None and number < len(self.found.plans):
            self._show(self.found.plans[number])
        self._go_to(row)

    def _show(self, plan: OrderPlan) -> None:
        self.shown = plan
        layers = self._session.layers
        self.layers.show(replace(self.found, plans=(plan,)), layers.group() if layers is not None else None)
        self.add.setEnabled(plan.feasible)
        self.added.setText("" if plan.feasible else tr("An order that cannot be swum is no route."))

    def add_route(self) -> None:
        """Put the order shown into the routes, as an edit that can be undone and is not saved, and plan its swim."""
        session, plan = self._session, self.shown
        layer = session.layers.layer("routes")
        if layer is None:
            self.added.setText(tr("The layer of routes is not in the project: open the plan again."))
            return
        geometry, values = route_row(plan)
        values["name"] = name = unused_name(values["name"], names_in(layer))
        numbers = {layer.fields().indexOf(field): value for field, value in values.items()}
        self._adds = True  # the orders are not of before: nothing that they hang on has changed
        try:
            add_row(layer, QgsVectorLayerUtils.createFeature(layer, geometry, numbers), tr("Add the order as a route"))
        except SwimPlanError as error:
            self.added.setText(str(error))
            return
        finally:
            self._adds = False
        session.choose_route(name)
        session.choose_moment(plan.depart)
        self.added.setText(tr("Added as '{}', not saved yet; the swim above leaves as this order does.").format(name))

    def clear_answer(self) -> None:
        """No orders, nothing drawn."""
        self.found = self.shown = None
        self.layers.remove()
        self.table.show_rows([])
        self.added.setText("")

    def forget(self) -> None:
        """Another plan, or none: its marks, and departures that nobody has typed."""
        super().forget()
        self._is_typed, self._is_picked, self._known, self._labels = False, False, None, {}
        self.marks.show_marks([], {})
        for choice in (self.entry, self.exit):
            choice.clear()
        self._count()

    def grow_old(self, changed: str) -> None:
        """What is drawn stays, named as of before. A route added here makes no order old."""
        if self._adds:
            return
        super().grow_old(changed)
        if not self.answer.isEnabled():
            self.layers.grow_old()


def order_drawing() -> Drawing:
    """An order lies above the chart."""
    return Drawing(
        title=tr("Order of marks (result)"), outputs=ORDER_OUTPUTS, titles=order_titles(), styles=ORDER_STYLES
    )


def order_stage(share: float) -> str:
    """What is being worked out when so much is done: the shares of ``find_orders``."""
    if share < 0.2:
        return tr("Ways between the marks")
    if share < 0.75:
        return tr("Minutes of every leg")
    return tr("Departures that get home") if share < 0.9 else tr("Swimming the orders")


def unused_name(name: str, taken: frozenset[str]) -> str:
    """The name, with a number behind it where a route has it."""
    names = [name, *(f"{name} {number}" for number in range(2, len(taken) + 3))]
    return next(one for one in names if one not in taken)
