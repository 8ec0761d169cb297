"""The dock's section on how far: the reach of an entry as bands on the map, and each mark's times."""

from __future__ import annotations

from collections.abc import Callable

from qgis.PyQt.QtCore import QSignalBlocker
from qgis.PyQt.QtWidgets import QPushButton

from ..core.chart.marks import Mark
from ..core.clock import zone_named
from ..core.errors import StoppedError, SwimPlanError
from ..core.solve.reach.request import MOST_STAY_MIN
from ..layers_in.reach_in import ReachAsked, reach_from
from ..layers_out.reach_band_styles import BAND_STYLES, band_titles
from ..layers_out.reach_bands import BANDS, LINES, STAY, ReachDrawn, bands_of
from ..words import tr
from .asked_layers import AskedLayers, Drawing
from .asking import choice_box, form_of, minutes_box, moment_editor, name_widgets
from .departure import digits_of, moment_of
from .home_by import home_limit
from .plan_marks import Place, PlanMarks, labels_of, place_of
from .progress_words import by_percent
from .reach_rows import grid_words, map_words, reach_headers, reach_headline, reach_rows
from .row_table import RowTable
from .rows import Row
from .section import label, side_by_side
from .session import PLANNING, Session
from .work_section import IsCancelled, Tell, WorkSection

STAY_MIN = 30
STAY_STEP_MIN = 5
MOST_HOURS_S = 24 * 3600.0


class ReachSection(WorkSection):
    """Asks for an entry, a time to be home and a stay; the swimmers, their pace and the departure are the swim's."""

    page = "dock.md#how-far"
    minds = ("ticked", "pace_m_s", "depart")
    tells = True

    def __init__(self, session: Session, go_to: Callable[[Row], None]) -> None:
        self.layers = AskedLayers(session.project, reach_drawing())
        self.entry, self.back_by = choice_box(), moment_editor()
        self.stay = minutes_box(0, int(MOST_STAY_MIN), STAY_MIN, STAY_STEP_MIN)
        self.limit = QPushButton(tr("As Late as Planned"))
        self.leave, self.why = label(), label()
        self.headline, self.on_the_map, self.grid = label(strong=True), label(), label()
        self.table = RowTable(reach_headers())
        self.found: ReachDrawn | None = None
        self._marks = PlanMarks(session)
        self._labels: dict[Place, str] = {}
        self._is_typed = False  # the time to be home is the user's own
        super().__init__("Reach", tr("How Far"), session, tr("Show Reach"))
        self._set_up()
        self._lay_out()
        self.entry.activated.connect(lambda _number: self.grow_old(""))
        self.stay.valueChanged.connect(lambda _minutes: self.grow_old(""))
        self.back_by.dateTimeChanged.connect(lambda _digits: self._type_back_by())
        self.limit.clicked.connect(self._take_limit)
        self.table.row_chosen.connect(go_to)
        session.choices_changed.connect(self.show_choices)
        session.swim_changed.connect(self.show_choices)
        self.show_choices()

    def _set_up(self) -> None:
        self.limit.setAutoDefault(False)
        name_widgets(
            {
                self.entry: (
                    tr("Entry"),
                    tr("Where one sets out: the start of the route, or a mark of the kind entry"),
                ),
                self.back_by: (tr("Back by"), tr("Date and time in the plan's zone by which to be ashore")),
                self.limit: (
                    tr("Back by as planned"),
                    tr("Dusk, the swimmer's hours or the plan's own time to be back"),
                ),
                self.stay: (tr("Stay"), tr("Minutes to stay somewhere out there")),
                self.ask: (
                    tr("Show reach"),
                    tr("Work out where one can be and be home in time, and draw it on the map"),
                ),
                self.table: (tr("Marks within reach"), tr("A click shows the mark on the map")),
            }
        )

    def _lay_out(self) -> None:
        rows = (
            (tr("&Entry"), self.entry),
            (tr("Leave"), self.leave),
            (tr("&Back by"), self.back_by),
            ("", side_by_side(self.why, self.limit)),
            (tr("S&tay"), self.stay),
        )
        self.questions.addLayout(form_of(rows))
        column = self.answer_column()
        for widget in (self.headline, self.on_the_map, self.table, self.grid):
            column.addWidget(widget)

    def show_choices(self) -> None:
        """Show the entries there are, the departure, and by when to be home while the user has not said so."""
        session = self._session
        if session.path is None or session.depart is None:
            return
        self.leave.setText(tr("{}, as the swim above").format(f"{session.depart:%Y-%m-%d  %H:%M}"))
        if session.stage != PLANNING:
            self._show_entries()
        self._show_back_by()

    def _show_entries(self) -> None:
        try:
            marks, start = self._marks.marks(), next(iter(self._marks.stops()), None)
        except SwimPlanError:
            return  # planning says what is wrong with the layer
        self._labels = labels_of(marks)
        found: list[tuple[str, Mark | None]] = []
        if start is not None:
            found.append((tr("Start of the route: {}").format(start.name), None))
        found += [(self._labels[place_of(mark)], mark) for mark in marks if mark.kind == "entry"]
        chosen = self.entry.currentText()
        if found == [(self.entry.itemText(row), self.entry.itemData(row)) for row in range(self.entry.count())]:
            return
        self.entry.clear()
        for words, mark in found:
            self.entry.addItem(words, mark)
        again = self.entry.findText(chosen)
        self.entry.setCurrentIndex(max(again, 0) if found else -1)

    def _show_back_by(self) -> None:
        session = self._session
        if self._is_typed and not self._holds():
            self._is_typed = False
        self.limit.setVisible(self._is_typed)
        if self._is_typed:
            self.why.setText(tr("As typed here"))
            return
        moment, why = home_limit(session.request, session.depart)
        blocker = QSignalBlocker(self.back_by)
        self.back_by.setDateTime(digits_of(moment))
        del blocker
        self.why.setText(why[:1].upper() + why[1:])

    def _holds(self) -> bool:
        """Whether the time typed comes after the departure, by no more than a reach may take."""
        session = self._session
        try:
            moment = moment_of(self.back_by.dateTime(), zone_named(session.zone_name))
        except SwimPlanError:
            return True  # refused when it is asked for
        return 0.0 < moment.timestamp() - session.depart.timestamp() <= MOST_HOURS_S

    def _type_back_by(self) -> None:
        self._is_typed = True
        self.limit.setVisible(True)
        self.why.setText(tr("As typed here"))
        self.grow_old("")

    def _take_limit(self) -> None:
        self._is_typed = False
        self._show_back_by()
        self.grow_old("")

    def gather(self) -> Callable[[IsCancelled, Tell], ReachDrawn]:
        """What is asked for, and copies of the plan's layers."""
        session = self._session
        lon, lat = self._entry_place()
        asked = ReachAsked(
            lon=lon,
            lat=lat,
            depart=session.depart.isoformat(),
            back_by=moment_of(self.back_by.dateTime(), zone_named(session.zone_name)).isoformat(),
            stay_min=float(self.stay.value()),
            swimmer=";".join(session.ticked),
            pace_m_s=session.pace_m_s,
        )
        path, copies = session.path, session.layers.copies()

        def work(is_cancelled: IsCancelled, tell: Tell) -> ReachDrawn:
            from ..core.solve.reach.find_reach import find_reach

            tell(tr("Reading the plan…"))
            request = reach_from(path, asked, copies)
            if is_cancelled():
                raise StoppedError
            return bands_of(
                find_reach(request, progress=by_percent(tell, reach_stage), is_cancelled=is_cancelled), is_cancelled
            )

        return work

    def _entry_place(self) -> Place:
        """Where the entry chosen is, as the layers stand now."""
        mark = self.entry.currentData()
        self.minds = ReachSection.minds if mark is not None else (*ReachSection.minds, "route")
        self._labels = labels_of(self._marks.marks())
        if mark is None:
            mark = next(iter(self._marks.stops()), None)
        if mark is None:
            raise SwimPlanError(
                asked=tr("There is no entry to set out from"),
                remedy=tr("Draw a route, or a mark of the kind entry"),
            )
        return place_of(mark)

    def show_answer(self, answer: ReachDrawn) -> None:
        """The bands on the map, the marks in the table."""
        self.found, layers = answer, self._session.layers
        self.layers.show(answer, layers.group() if layers is not None else None)
        self.headline.setText(reach_headline(answer.reach))
        self.table.show_rows(reach_rows(answer.reach, self._labels))
        self.on_the_map.setText(map_words(answer))
        self.grid.setText(grid_words(answer.reach))

    def clear_answer(self) -> None:
        """No bands, no rows."""
        self.found = None
        self.layers.remove()
        self.table.show_rows([])

    def forget(self) -> None:
        """Another plan, or none: its entries, and a time to be home that nobody has typed."""
        super().forget()
        self._is_typed = False
        self.entry.clear()

    def grow_old(self, changed: str) -> None:
        """The bands stay, to draw a route in; their names say that they are of before."""
        super().grow_old(changed)
        if not self.answer.isEnabled():
            self.layers.grow_old()


def reach_drawing() -> Drawing:
    """The reach lies under the chart's lines and marks, so that both can be read."""
    return Drawing(
        title=tr("How far (result)"),
        outputs=(STAY, LINES, BANDS),
        titles=band_titles(),
        styles=BAND_STYLES,
        below=True,
    )


def reach_stage(share: float) -> str:
    """What is being worked out when so much is done: the shares of ``find_reach``."""
    if share < 0.35:
        return tr("On the way out")
    if share < 0.7:
        return tr("On the way home")
    return tr("Once more on larger cells") if share < 0.86 else tr("To the marks on one heading")
