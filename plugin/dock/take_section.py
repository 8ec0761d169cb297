"""The dock's section on what to take along: card, GPX, table and report of the swim shown, written where asked."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import partial
from pathlib import Path

from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import QCheckBox, QFileDialog, QGridLayout, QHBoxLayout, QPushButton, QWidget
from qgis.utils import OverrideCursor

from ..cards.gps_options import GpsOptions, options_of
from ..cards.read_back import DRIVERS, unread_words
from ..core.errors import SwimPlanError
from ..core.results.card import leg_state
from ..core.results.shared import without_marks
from ..core.results.swim_plan import SwimPlan
from ..layers_in.swim_people import settings_read
from ..words import tr
from .card_choice import CardChoice
from .desktop import may_replace, open_on_desktop
from .section import Section, label
from .session import PLANNING, TURNING, Session
from .take_files import TakeFile, file_name, folder_name, take_files, write_all, write_one

REPORT = "report"  # which is all numbers: there is none to share


class TakeSection(Section):
    """A button a file, and one for all of them. Only a swim whose turn back is known is written."""

    page = "dock.md#take-it-along"

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__("Take", tr("Take It Along"), parent)
        self._session = session
        self.warning, self.why_not, self.note = label(strong=True), label(), label()
        self.card = CardChoice()
        self.files = {file.key: file for file in take_files(self.card.look, self._gps)}
        self.buttons = {key: QPushButton(file.button) for key, file in self.files.items()}
        self.everything = QPushButton(tr("Everything…"))
        self.share = QCheckBox(tr("To &share: leave the marks out"))
        self.open_it, self.open_folder = QPushButton(tr("Open")), QPushButton(tr("Open Folder"))
        self._written: Path | None = None
        self._set_up()
        self._lay_out()
        for key, button in self.buttons.items():
            button.clicked.connect(partial(self._take, self.files[key]))
        self.everything.clicked.connect(self._take_all)
        self.open_it.clicked.connect(lambda: self._open(self._written))
        self.open_folder.clicked.connect(lambda: self._open(self._written.parent))
        self.card.problem.connect(self._say)
        self.share.toggled.connect(self.refresh)
        session.swim_changed.connect(self.refresh)
        session.asked_changed.connect(self._outdated)
        session.plan_changed.connect(self._plan_changed)
        self._plan_changed()

    def _set_up(self) -> None:
        tips = {self.buttons[key]: file.tip for key, file in self.files.items()}
        tips[self.everything] = tr("All of these files into a new folder")
        tips[self.share] = tr(
            "No positions, headings or distances of marks in what is written; times and names stay. A report is not "
            "written so"
        )
        tips[self.open_it] = tr("Open what was written with the program that your desktop has for it")
        tips[self.open_folder] = tr("Show the folder it was written to")
        for button, tip in tips.items():
            button.setToolTip(tip)
            button.setAccessibleDescription(tip)
        for button in (*self.buttons.values(), self.everything, self.open_it, self.open_folder):
            button.setAutoDefault(False)

    def _lay_out(self) -> None:
        grid = QGridLayout()
        for number, button in enumerate([*self.buttons.values(), self.everything]):
            grid.addWidget(button, *divmod(number, 2))
        opens = QHBoxLayout()
        opens.addStretch()
        opens.addWidget(self.open_it)
        opens.addWidget(self.open_folder)
        for words in (self.warning, self.why_not):
            self.inside.addWidget(words)
        self.inside.addWidget(self.card)
        self.inside.addLayout(grid)
        self.inside.addWidget(self.share)
        self.inside.addWidget(self.note)
        self.inside.addLayout(opens)

    def _plan_changed(self) -> None:
        """Another plan: nothing of it has been written yet."""
        self._say("")
        self.setEnabled(self._session.path is not None)
        self.show_hint("" if self._session.path is not None else tr("Open a plan first."))
        self.refresh()

    def refresh(self, *_: object) -> None:
        """Whether the swim shown can be written, and what to know before."""
        why_not = self.reason()
        self.why_not.setText(why_not)
        self.why_not.setVisible(bool(why_not))
        swim = self._session.swim if not why_not else None
        self.warning.setText(grave_words(swim) if swim is not None else "")
        self.warning.setVisible(bool(self.warning.text()))
        for button in (*self.buttons.values(), self.everything):
            button.setEnabled(not why_not)
        self.buttons[REPORT].setEnabled(not why_not and not self.share.isChecked())

    def reason(self) -> str:
        """Why nothing can be written now; empty where it can."""
        session = self._session
        if session.stage == PLANNING:
            return tr("The swim is being planned.")
        if session.swim is None:
            return tr("There is no planned swim. The section above says what to do.")
        if session.stage == TURNING:
            return tr("Working out when to turn back…")
        if session.turn_problem:
            return tr("There is no turn back, and no card goes without: {}").format(session.turn_problem)
        if session.swim.turn_back is None:
            return tr("Stopped before it was known when to turn back: plan again.")
        return ""

    def _gps(self) -> GpsOptions:
        """What the plan's settings say of the GPS; SwimPlanError for what cannot be meant."""
        session = self._session
        return options_of(settings_read(session.path, session.layers.copies()), private=self.share.isChecked())

    def _swim(self) -> SwimPlan:
        """The swim shown, with what the dock says beside it, or as others may see it."""
        swim = self._session.swim
        if self.share.isChecked():
            return without_marks(swim)
        return replace(swim, warnings=tuple(dict.fromkeys([*swim.warnings, *self._session.notes])))

    def _take(self, file: TakeFile, _checked: bool = False) -> None:
        """Ask where to and write one file."""
        shown = self._session.swim
        path = self._ask_file(file, self._session.path.parent / file_name(file, self._swim()))
        if path is not None:
            self._write(shown, [file], lambda swim: write_one(file, swim, path) or path)

    def _take_all(self) -> None:
        """Ask where to and write all files into a new folder there."""
        shown = self._session.swim
        words = tr("Folder in Which to Make '{}'").format(folder_name(self._swim()))
        parent = QFileDialog.getExistingDirectory(self, words, str(self._session.path.parent))
        if parent:
            files = [file for key, file in self.files.items() if key != REPORT or not self.share.isChecked()]
            self._write(shown, files, lambda swim: write_all(files, swim, Path(parent)))

    def _write(self, shown: SwimPlan, files: Sequence[TakeFile], write: Callable[[SwimPlan], Path]) -> None:
        """Write the swim that was asked for, unless it has changed while the dialog was open."""
        if self._session.swim is not shown or self.reason():
            self._say(tr("The swim has changed meanwhile: nothing was written."))
            return
        try:
            with OverrideCursor(Qt.CursorShape.WaitCursor):
                written = write(self._swim())
        except SwimPlanError as error:
            self._say(str(error))
            return
        unread = unread_words(file.key.upper() for file in files if file.key.upper() in DRIVERS)
        self._say(" ".join([tr("Written: {}").format(written), *unread]), written)

    def _outdated(self, *_: object) -> None:
        """Another swim is shown, or will be: what was written is not of it, and is not opened from here any more."""
        if self._written is not None:
            self._say("")

    def _ask_file(self, file: TakeFile, proposed: Path) -> Path | None:
        """Where to; None where the user gives up. A file that is there already is asked about."""
        dialog = QFileDialog(self, file.button.rstrip("…"), str(proposed.parent), file.kind)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(file.suffix[1:])
        dialog.selectFile(proposed.name)
        accepted = dialog.exec()
        chosen = dialog.selectedFiles() if accepted else []
        dialog.deleteLater()
        if not chosen:
            return None
        path = Path(chosen[0])
        if path.suffix.lower() == file.suffix:
            return path
        # Named by another ending, such as that of the plan: the dialog has asked about that file, not about this one.
        path = path.with_name(path.name + file.suffix)
        return path if not path.exists() or may_replace(self, path) else None

    def _say(self, words: str, written: Path | None = None) -> None:
        self._written = written
        self.note.setText(words)
        self.note.setVisible(bool(words))
        self.open_it.setVisible(written is not None)
        self.open_folder.setVisible(written is not None and written.is_file())

    def _open(self, path: Path) -> None:
        problem = open_on_desktop(path)
        if problem:
            self.note.setText(problem)


def grave_words(swim: SwimPlan) -> str:
    """What to know before a swim is taken along that should not be swum like this; empty for others."""
    stuck = next((leg.number for leg in swim.legs if leg_state(leg) != "swim"), None)
    if stuck is not None:
        return tr("Leg {} cannot be swum. Card, report and table of legs say so too.").format(stuck)
    stops = sum(flag.severity == "stop" for flag in swim.flags)
    if stops:
        return tr("{} x Stop in What to Mind: not to be swum like this. Card and report say so too.").format(stops)
    return ""
