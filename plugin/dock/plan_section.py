"""The dock's first section: which plan."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from qgis.PyQt.QtWidgets import QFileDialog, QGridLayout, QMenu, QPushButton, QWidget

from ..core.errors import SwimPlanError
from ..words import tr
from .new_plan_form import NewPlanForm
from .recent_plans import forget_plan, recent_plans
from .sample_plan import has_sample, sample_plan
from .section import Section, label
from .session import Session


class PlanSection(Section):
    """New, open, recent, sample; the name of the plan that is open, or why one is refused."""

    page = "dock.md#plan"

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__("Plan", tr("Plan"), parent)
        self._session = session
        self.name = label(strong=True)
        self.problem = label()
        self.new = QPushButton(tr("New…"))
        self.open = QPushButton(tr("Open…"))
        self.recent = QPushButton(tr("Recent"))
        self.sample = QPushButton(tr("Sample"))
        self._say_what_they_do()
        self.menu = QMenu(self.recent)
        self.recent.setMenu(self.menu)
        buttons = QGridLayout()
        for number, button in enumerate((self.new, self.open, self.recent, self.sample)):
            buttons.addWidget(button, *divmod(number, 2))
        self.inside.addWidget(self.name)
        self.inside.addLayout(buttons)
        self.inside.addWidget(self.problem)
        self.new.clicked.connect(self.make_new)
        self.open.clicked.connect(self.choose_file)
        self.sample.clicked.connect(self.open_sample)
        self.menu.aboutToShow.connect(self._list_recent)
        session.plan_changed.connect(self.refresh)
        session.choices_changed.connect(self.refresh)
        self.refresh()

    def _say_what_they_do(self) -> None:
        tips = {
            self.new: tr("Make a new plan: one GeoPackage with all its layers and tables"),
            self.open: tr("Open a plan (.gpkg)"),
            self.recent: tr("Plans opened of late"),
            self.sample: tr("Open the sample bay: invented, not for navigation"),
        }
        for button, tip in tips.items():
            button.setToolTip(tip)
            button.setAccessibleDescription(tip)
            button.setAutoDefault(False)

    def refresh(self) -> None:
        """Show the plan, or what to do without one."""
        path = self._session.path
        self.name.setText(self._session.title)
        self.name.setToolTip(str(path or ""))
        self.name.setVisible(path is not None)
        words = self._session.plan_problem or self._session.file_note
        self.problem.setText(words)
        self.problem.setVisible(bool(words))
        self.hint.setText(
            tr("Open a plan, or make a new one. A plan is one file with the chart, tides, streams, marks and swimmers.")
        )
        self.hint.setVisible(path is None)
        self.recent.setEnabled(bool(recent_plans()))
        self.sample.setVisible(has_sample())

    def open_sample(self) -> None:
        """Open the invented bay."""
        try:
            self._session.open_plan(sample_plan())
        except SwimPlanError as error:
            self.problem.setText(str(error))
            self.problem.show()

    def make_new(self) -> None:
        """Ask for what a new plan needs, make it, and open it."""
        form = NewPlanForm(self.window())
        self.form = form
        form.accepted.connect(lambda: self._open_made(form.made))
        form.open()

    def _open_made(self, made: Path) -> None:
        """Work on the new plan; the layers of the plan before it are folded away, for it lies elsewhere."""
        layers = self._session.layers
        before = layers.group() if layers is not None else None
        if self._session.open_plan(made) and before is not None and before.parent() is not None:
            before.setItemVisibilityChecked(False)
            before.setExpanded(False)

    def choose_file(self) -> None:
        """Ask for a file and open it."""
        known = recent_plans()
        folder = str(known[0].parent) if known else ""
        path, _ = QFileDialog.getOpenFileName(self, tr("Open Plan"), folder, tr("Plans (*.gpkg)"))
        if path:
            self._session.open_plan(path)

    def _list_recent(self) -> None:
        self.menu.clear()
        for path in recent_plans():
            action = self.menu.addAction(path.stem if path.exists() else tr("{} (not found)").format(path.stem))
            action.setToolTip(str(path))
            action.triggered.connect(partial(self._open_recent, path))
        self.menu.setToolTipsVisible(True)

    def _open_recent(self, path: Path, _checked: bool = False) -> None:
        """Open it; a file that is gone is said so and leaves the list."""
        if not self._session.open_plan(path) and not path.exists():
            forget_plan(path)
            self.refresh()

    form: NewPlanForm | None = None
