"""The dock's section on the swim: route, swimmers, departure, pace, and what comes of them in one line."""

from __future__ import annotations

from qgis.PyQt.QtCore import QSignalBlocker, Qt
from qgis.PyQt.QtGui import QValidator
from qgis.PyQt.QtWidgets import (
    QDateTimeEdit,
    QDoubleSpinBox,
    QFormLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSizePolicy,
    QSpinBox,
    QToolButton,
    QWidget,
)

from ..core.solve.swim import NEW_HEADINGS
from ..core.swimmer import LIMITS
from ..words import tr
from .asking import choice_box
from .departure import STEP_MIN, digits_of, zone_words
from .rows import headline
from .section import Section, keep_room, label, side_by_side
from .session import PLANNING, SETTLED, TURNING, Session

PACE_STEP_M_S = 0.05
MOST_NAMES_SHOWN = 4
HEADING_EVERY_MIN = (1, 120)


class PaceBox(QDoubleSpinBox):
    """Asks for a pace; emptied, or 0, it is the swimmers' own, which its lowest step shows."""

    def validate(self, text: str, place: int) -> tuple:
        """What leads to no pace is a way to the swimmers' own, not a mistake."""
        if not self._digits(text).strip("0.,"):
            return QValidator.State.Acceptable, text, place
        return super().validate(text, place)

    def valueFromText(self, text: str) -> float:
        """The pace typed."""
        return super().valueFromText(text) if self._digits(text).strip("0.,") else self.minimum()

    def _digits(self, text: str) -> str:
        return "" if text == self.specialValueText() else text.replace(self.suffix(), "").strip()


class SwimSection(Section):
    """What is chosen goes to the session; what the session holds is shown, so that both never differ."""

    page = "dock.md#swim"

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__("Swim", tr("Swim"), parent)
        self._session = session
        self.route = choice_box()
        self.swimmers = QListWidget()
        self.depart = QDateTimeEdit()
        self.earlier, self.later = QToolButton(), QToolButton()
        self.zone = label()
        self.pace = PaceBox()
        self.way, self.every = choice_box(), QSpinBox()
        self.headline = label(strong=True)
        self.status = label()
        self.stop = QPushButton(tr("Stop"))
        self.again = QPushButton(tr("Plan Again"))
        self.whole = QPushButton(tr("Whole Swim"))
        self._set_up()
        self._lay_out()
        self.route.activated.connect(lambda number: session.choose_route(self.route.itemText(number)))
        self.swimmers.itemChanged.connect(lambda _item: session.choose_swimmers(self._ticked()))
        self.depart.dateTimeChanged.connect(session.choose_digits)
        self.earlier.clicked.connect(lambda: session.step_departure(-1))
        self.later.clicked.connect(lambda: session.step_departure(1))
        self.pace.valueChanged.connect(lambda _value: session.choose_pace(self._pace()))
        self.way.activated.connect(lambda _mode: self._choose_way())
        self.every.valueChanged.connect(lambda _minutes: self._choose_way())
        self.stop.clicked.connect(session.stop)
        self.again.clicked.connect(lambda: session.plan_again("again"))
        session.choices_changed.connect(self.show_choices)
        session.swim_changed.connect(self.show_swim)
        self.show_choices()
        self.show_swim()

    def _set_up(self) -> None:
        self.depart.setTimeSpec(Qt.TimeSpec.UTC)  # its digits are the plan's clock: see digits_of
        self.depart.setDisplayFormat("yyyy-MM-dd  HH:mm")
        self.depart.setCalendarPopup(True)
        self.earlier.setText("\N{MINUS SIGN}" + tr("{} min").format(STEP_MIN))
        self.later.setText("+" + tr("{} min").format(STEP_MIN))
        low, high = LIMITS["pace_m_s"]
        self.pace.setRange(low - PACE_STEP_M_S, high)
        self.pace.setSingleStep(PACE_STEP_M_S)
        self.pace.setSuffix(tr(" m/s"))
        self.pace.setSpecialValueText(tr("The swimmer's own"))
        self.pace.setKeyboardTracking(False)
        # In the order of SwimWay's modes, as in the algorithm.
        self.way.addItems([tr("One heading per leg"), tr("A new heading every so often"), tr("Hold the line")])
        self.every.setRange(*HEADING_EVERY_MIN)
        self.every.setSuffix(tr(" min"))
        self.every.setKeyboardTracking(False)
        about = {
            self.route: (tr("Route"), tr("A route of the plan, by its name")),
            self.swimmers: (tr("Swimmers"), tr("Tick those who swim together: the slowest sets the pace")),
            self.depart: (tr("Departure"), tr("Date and time in the plan's zone")),
            self.earlier: (tr("Ten minutes earlier"), tr("Leave ten minutes earlier")),
            self.later: (tr("Ten minutes later"), tr("Leave ten minutes later")),
            self.pace: (tr("Pace"), tr("Pace through the water, m/s; emptied, or 0, it is the swimmer's own")),
            self.way: (
                tr("Headings"),
                tr("Keep a heading for the leg, take new ones on the way, or follow the ruler line"),
            ),
            self.every: (tr("Minutes between new headings"), tr("Minutes for which a heading is held")),
            self.stop: (tr("Stop planning"), tr("Stop planning")),
            self.again: (tr("Plan again"), tr("Plan the swim as it is chosen here")),
            self.whole: (tr("Whole swim"), tr("Show the whole swim on the map")),
        }
        for widget, (name, tip) in about.items():
            widget.setAccessibleName(name)
            widget.setToolTip(tip)

    def _lay_out(self) -> None:
        form = QFormLayout()
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.DontWrapRows)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        self.swimmers.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        steps = side_by_side(self.earlier, self.later)
        for words, field, buddy in (
            (tr("&Route"), self.route, self.route),
            (tr("S&wimmers"), self.swimmers, self.swimmers),
            (tr("&Departure"), self.depart, self.depart),
            ("", steps, None),
            ("", self.zone, None),
            (tr("&Pace"), self.pace, self.pace),
            (tr("&Headings"), side_by_side(self.way, self.every), self.way),
        ):
            name = QLabel(words)
            if buddy is not None:
                name.setBuddy(buddy)
            form.addRow(name, field)
        self.inside.addLayout(form)
        self.inside.addWidget(side_by_side(self.headline, self.whole))
        self.inside.addWidget(side_by_side(self.status, self.stop, self.again))
        for words in (self.headline, self.status):
            words.setMinimumHeight(2 * self.fontMetrics().lineSpacing() + 4)  # it wraps where it is long
        keep_room(self.headline, self.status, self.stop)

    def show_choices(self) -> None:
        """Show what may be chosen and what is."""
        session = self._session
        self.setEnabled(session.path is not None)
        self.show_hint("" if session.path is not None else tr("Open a plan first."))
        blockers = [
            QSignalBlocker(one) for one in (self.route, self.swimmers, self.depart, self.pace, self.way, self.every)
        ]
        if [self.route.itemText(number) for number in range(self.route.count())] != session.routes:
            self.route.clear()
            self.route.addItems(session.routes)
        self.route.setCurrentText(session.route)
        self._show_swimmers()
        if session.depart is not None:
            self.depart.setDateTime(digits_of(session.depart))
            self.zone.setText(zone_words(session.depart, session.zone_name))
        own = session.own_pace_m_s()
        words = tr("The swimmer's own") if own is None else tr("own, {:.2f} m/s").format(own)
        self.pace.setSpecialValueText(words)
        self.pace.setValue(self.pace.minimum() if session.pace_m_s is None else session.pace_m_s)
        self.way.setCurrentIndex(session.way.mode)
        self.every.setValue(round(session.way.heading_every_s / 60.0))
        self.every.setVisible(session.way.mode == NEW_HEADINGS)
        del blockers

    def _show_swimmers(self) -> None:
        if [self.swimmers.item(row).text() for row in range(self.swimmers.count())] != self._session.swimmers:
            self.swimmers.clear()
            self.swimmers.addItems(self._session.swimmers)
        for row in range(self.swimmers.count()):
            item = self.swimmers.item(row)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            ticked = item.text() in self._session.ticked
            item.setCheckState(Qt.CheckState.Checked if ticked else Qt.CheckState.Unchecked)
        shown = max(1, min(MOST_NAMES_SHOWN, self.swimmers.count()))
        height = max(self.swimmers.sizeHintForRow(0), self.fontMetrics().height())
        self.swimmers.setFixedHeight(shown * height + 2 * self.swimmers.frameWidth() + 2)

    def show_swim(self) -> None:
        """Show what came of it."""
        session = self._session
        swim = session.swim if session.stage != PLANNING else None
        self.headline.setText(headline(swim) if swim is not None else "")
        self.headline.setVisible(swim is not None)
        self.whole.setEnabled(swim is not None)
        stopped = tr("Stopped.") if session.was_stopped else session.problem
        on_its_way = {PLANNING: tr("Planning…"), TURNING: tr("Working out when to turn back…"), SETTLED: stopped}
        self.status.setText(on_its_way[session.stage])
        self.status.setVisible(bool(self.status.text()))
        self.stop.setVisible(session.stage != SETTLED)
        self.again.setVisible(session.stage == SETTLED and bool(session.was_stopped or session.problem))

    def _ticked(self) -> tuple[str, ...]:
        items: list[QListWidgetItem] = [self.swimmers.item(row) for row in range(self.swimmers.count())]
        return tuple(item.text() for item in items if item.checkState() == Qt.CheckState.Checked)

    def _choose_way(self) -> None:
        self._session.choose_way(self.way.currentIndex(), self.every.value())

    def _pace(self) -> float | None:
        return None if self.pace.value() < LIMITS["pace_m_s"][0] else round(self.pace.value(), 2)
