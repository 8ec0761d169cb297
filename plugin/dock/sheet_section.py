"""The dock's section on the shore contact: what only the swimmers know is typed, and the sheet is written."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from qgis.PyQt.QtCore import QLocale
from qgis.PyQt.QtWidgets import (
    QDoubleSpinBox,
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
)

from ..cards.sheet_files import html_writer, pdf_writer
from ..cards.whole_files import write_whole
from ..core.errors import SwimPlanError
from ..core.results.shore_sheet import ContactFacts, ShoreSheet
from ..core.solve.drift import Wind
from ..layers_in.swim_people import settings_read
from ..words import tr
from .asking import form_of, name_widgets
from .desktop import may_replace, open_on_desktop
from .progress_words import by_percent
from .section import label
from .session import Session
from .take_files import proposed_name
from .work_section import IsCancelled, Tell, WorkSection

FACTS = ("float_colours", "flag", "emergency_numbers")  # fields of the facts, and keys of the plan's settings
MOST_KN = 100.0
HALF = 0.5


class SheetSection(WorkSection):
    """Asks where to write, plans the swim with its drift in the background, and writes two files: pages and HTML."""

    page = "dock.md#shore-contact"
    tells = True

    def __init__(self, session: Session) -> None:
        self.facts = {key: QLineEdit() for key in (*FACTS, "note")}
        self.wind_from, self.wind_kn = QDoubleSpinBox(), QDoubleSpinBox()
        self.note, self.open_pages, self.open_html = (
            label(),
            QPushButton(tr("Open Pages")),
            QPushButton(tr("Open HTML")),
        )
        self._path: Path | None = None
        super().__init__("Sheet", tr("Shore Contact"), session, tr("Write Sheet…"))
        self._set_up()
        self._lay_out()
        for line in self.facts.values():
            line.textEdited.connect(lambda _words: self.grow_old(""))
        for spin in (self.wind_from, self.wind_kn):
            spin.valueChanged.connect(lambda _value: self.grow_old(""))
        self.open_pages.clicked.connect(lambda: self._open(self._path))
        self.open_html.clicked.connect(lambda: self._open(self._html))
        session.plan_changed.connect(self.show_settings)
        session.choices_changed.connect(self.show_settings)
        self.show_settings()

    def _set_up(self) -> None:
        unknown = tr("not known")
        for spin, most, suffix, step in ((self.wind_from, 360.0, "°", 10.0), (self.wind_kn, MOST_KN, tr(" kn"), 1.0)):
            spin.setDecimals(0)
            spin.setRange(-step, most)
            spin.setSingleStep(step)
            spin.setSuffix(suffix)
            spin.setSpecialValueText(unknown)
            spin.setValue(-step)
            spin.setKeyboardTracking(False)
        about = {
            self.facts["float_colours"]: (
                tr("Colours of the float"),
                tr("As seen from a boat, such as orange and white"),
            ),
            self.facts["flag"]: (tr("Flag"), tr("The flag flown and its colours")),
            self.facts["emergency_numbers"]: (
                tr("Emergency numbers"),
                tr("Who the contact rings, with ; between several. None is assumed"),
            ),
            self.facts["note"]: (tr("Note"), tr("Anything else the contact must know")),
            self.wind_from: (tr("Wind from"), tr("Degrees true; the lowest step means that it is not known")),
            self.wind_kn: (tr("Wind speed"), tr("Knots; the lowest step means that it is not known")),
            self.ask: (tr("Write sheet"), tr("Plan the swim with its drift and write pages of A4 and one HTML file")),
            self.stop: (tr("Stop"), tr("Stop; nothing is written")),
        }
        name_widgets(about)
        for button in (self.open_pages, self.open_html):
            button.setAutoDefault(False)

    def _lay_out(self) -> None:
        words = (tr("F&loat"), tr("Fla&g"), tr("Emergency &numbers"), tr("N&ote"))
        form = form_of(zip(words, self.facts.values()))
        wind = QHBoxLayout()
        wind.addWidget(self.wind_from, 1)
        wind.addWidget(self.wind_kn, 1)
        name = QLabel(tr("W&ind from, speed"))
        name.setBuddy(self.wind_from)
        form.addRow(name, wind)
        self.questions.addLayout(form)
        column = self.answer_column()
        column.addWidget(self.note)
        row = QHBoxLayout()
        row.addStretch()
        row.addWidget(self.open_pages)
        row.addWidget(self.open_html)
        column.addLayout(row)

    def show_settings(self) -> None:
        """What the plan's settings hold stands grey where nothing is typed: that is what the sheet will say."""
        stored: dict[str, str] = {}
        if self._session.path is not None:
            try:
                stored = settings_read(self._session.path, self._session.layers.copies())
            except SwimPlanError:
                stored = {}  # the swim's own section says what is wrong with them
        for key in FACTS:
            self.facts[key].setPlaceholderText(stored.get(key, ""))

    def gather(self) -> Callable[[IsCancelled, Tell], ShoreSheet]:
        """Ask where to, and give what plans the swim with its drift."""
        session = self._session
        if not session.routes:
            raise SwimPlanError(asked=tr("The plan has no route"), remedy=tr("Draw one first"))
        facts = {key: line.text().strip() or line.placeholderText() for key, line in self.facts.items()}
        wind = self._wind()
        self._path = self._ask_file()
        if self._path is None:
            raise SwimPlanError(asked=tr("Nothing was written"), remedy=tr("Name a file to write to"))
        path, copies, asked = session.path, session.layers.copies(), session.asked()

        def work(is_cancelled: IsCancelled, tell: Tell) -> ShoreSheet:
            from ..core.solve.shore_sheet import shore_sheet
            from ..layers_in.swim_in import SwimAsked, request_from

            tell(tr("Reading the plan…"))
            request = request_from(path, copies, SwimAsked(**asked))
            progress = by_percent(tell, _stage)
            return shore_sheet(request, ContactFacts(**facts), wind, progress=progress, is_cancelled=is_cancelled)

        return work

    def _wind(self) -> Wind | None:
        has = [spin.value() >= 0.0 for spin in (self.wind_from, self.wind_kn)]
        if has[0] != has[1]:
            raise SwimPlanError(
                asked=tr("Only one half of the wind is given"), remedy=tr("Give both where it comes from and its speed")
            )
        return Wind(from_deg=self.wind_from.value(), speed_kn=self.wind_kn.value()) if all(has) else None

    @property
    def _html(self) -> Path:
        return self._path.with_suffix(".html")

    def _ask_file(self) -> Path | None:
        """Where the pages go, the HTML file beside them; None where the user gives up or keeps what is there."""
        swim = self._session.swim
        name = proposed_name(swim) if swim is not None else self._session.route
        proposed = self._session.path.parent / (name + tr(" shore contact") + ".pdf")
        chosen, _ = QFileDialog.getSaveFileName(self, tr("Write Sheet"), str(proposed), tr("PDF (*.pdf)"))
        if not chosen:
            return None
        pages = Path(chosen) if chosen.lower().endswith(".pdf") else Path(f"{chosen}.pdf")
        # The dialog has asked about the file that was typed, and of no other.
        others = [path for path in (pages, pages.with_suffix(".html")) if path.exists() and path != Path(chosen)]
        return pages if all(may_replace(self, path) for path in others) else None

    def show_answer(self, answer: ShoreSheet) -> None:
        """Write both files, whole or not at all, and say where."""
        try:
            write_whole({self._path: pdf_writer(answer), self._html: html_writer(answer, QLocale().name())})
        except SwimPlanError as error:
            self.note.setText(str(error))
            self._show_buttons(False)
            return
        words = tr("Written: {} and the HTML file beside it.").format(self._path)
        if answer.swim.alarm is None:
            words = tr("This swim has no time of return and so no alarm: the sheet says so. ") + words
        self.note.setText(words)
        self._show_buttons(True)

    def _show_buttons(self, shown: bool) -> None:
        self.open_pages.setVisible(shown)
        self.open_html.setVisible(shown)

    def clear_answer(self) -> None:
        """Nothing was written of this."""
        self.note.setText("")

    def _open(self, path: Path) -> None:
        problem = open_on_desktop(path)
        if problem:
            self.note.setText(problem)


def _stage(share: float) -> str:
    """What is being worked out for a sheet: by its solver the first half is the turn back."""
    return tr("Working out when to turn back") if share < HALF else tr("Working out where a float drifts")
