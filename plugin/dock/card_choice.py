"""What the wet card is printed on: paper and sides, or a layout of the user's own; kept between sessions."""

from __future__ import annotations

from pathlib import Path

from qgis.core import QgsPrintLayout, QgsProject, QgsSettings
from qgis.PyQt.QtCore import pyqtSignal
from qgis.PyQt.QtWidgets import QFileDialog, QHBoxLayout, QLabel, QMenu, QPushButton, QWidget

from ..cards.card_templates import PAPERS, SIDES, open_template, shipped
from ..cards.wet_card import CardLook
from ..core.errors import SwimPlanError
from ..words import tr
from .asking import choice_box, name_widgets

KEY = "tideleg/card_{}"
USUAL = ("A5", 2)  # the layout to begin with where none was chosen


class CardChoice(QWidget):
    """Paper and sides side by side, and a button for layouts of one's own.

    ``problem`` tells what went wrong with one; ``designer_asked`` is to open a layout that is in the project.
    """

    problem = pyqtSignal(str)
    designer_asked = pyqtSignal(QgsPrintLayout)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.paper, self.sides, self.own = choice_box(), choice_box(), QPushButton(tr("Layout"))
        self.change = self.choose = None
        self._set_up()
        self._lay_out()
        self._show_stored()
        self.paper.currentIndexChanged.connect(self._store)
        self.sides.currentIndexChanged.connect(self._store)

    def look(self) -> CardLook:
        """What was chosen."""
        template = self.paper.currentData()
        if isinstance(template, Path):
            return CardLook(template=template)
        return CardLook(paper=template, sides=self.sides.currentData())

    def choose_layout(self, path: Path) -> None:
        """Take a layout of the user's, if it can be read."""
        try:
            open_template(path)
        except SwimPlanError as error:
            self.problem.emit(str(error))
            return
        self._offer_own(path)
        self.paper.setCurrentIndex(self.paper.count() - 1)
        self._store()

    def open_in_designer(self) -> None:
        """Put the layout chosen among those of the project and open it: saved as a template there, it can be chosen."""
        look = self.look()
        path = look.template or shipped(look.paper or USUAL[0], look.sides or USUAL[1])
        try:
            layout = open_template(path, QgsProject.instance())
        except SwimPlanError as error:
            self.problem.emit(str(error))
            return
        layout.setName(self._free_name(path.stem))
        QgsProject.instance().layoutManager().addLayout(layout)
        self.designer_asked.emit(layout)

    @staticmethod
    def _free_name(stem: str) -> str:
        taken = {layout.name() for layout in QgsProject.instance().layoutManager().layouts()}
        names = [stem, *(f"{stem} {number}" for number in range(2, len(taken) + 3))]
        return next(name for name in names if name not in taken)

    def _set_up(self) -> None:
        for words, paper in ((tr("As needed"), ""), *((paper, paper) for paper in PAPERS)):
            self.paper.addItem(words, paper)
        words = (tr("Any sides"), tr("1 side"), tr("2 sides"), tr("4 sides"))
        for text, sides in zip(words, (0, *SIDES)):
            self.sides.addItem(text, sides)
        menu = QMenu(self.own)
        self.choose = menu.addAction(tr("Choose a Layout of Your Own…"), self._ask)
        self.change = menu.addAction(tr("Open in Layout Designer"), self.open_in_designer)
        self.own.setMenu(menu)
        self.own.setAutoDefault(False)
        tip = tr(
            "Labels say what stands where. Open one of Tideleg's layouts in the designer, change it, save it there as "
            "a template, and choose that file here"
        )
        name_widgets(
            {
                self.paper: (
                    tr("Paper of the card"),
                    tr("As needed: A5, and A4 where that is too small. Letters are never made smaller"),
                ),
                self.sides: (tr("Sides of the card"), tr("At most so many; what is left out is named on the card")),
                self.own: (tr("Layout of your own"), tip),
            }
        )

    def _lay_out(self) -> None:
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        name = QLabel(tr("C&ard on"))
        name.setBuddy(self.paper)
        for widget, stretch in ((name, 0), (self.paper, 2), (self.sides, 2), (self.own, 0)):
            row.addWidget(widget, stretch)
        self.setLayout(row)

    def _show_stored(self) -> None:
        settings = QgsSettings()
        own = str(settings.value(KEY.format("layout"), "") or "")
        if own and Path(own).exists():
            self._offer_own(Path(own))
        for box, name in ((self.paper, "paper"), (self.sides, "sides")):
            stored = str(settings.value(KEY.format(name), "") or "")
            found = [number for number in range(box.count()) if str(box.itemData(number)) == stored]
            box.setCurrentIndex(found[0] if found else 0)
        self._sides_count()

    def _store(self, _index: int = 0) -> None:
        settings = QgsSettings()
        for box, name in ((self.paper, "paper"), (self.sides, "sides")):
            settings.setValue(KEY.format(name), str(box.currentData()))
        own = self.paper.itemData(self.paper.count() - 1)
        settings.setValue(KEY.format("layout"), str(own) if isinstance(own, Path) else "")
        self._sides_count()

    def _sides_count(self) -> None:
        """A layout of one's own has the pages that it has."""
        self.sides.setEnabled(not isinstance(self.paper.currentData(), Path))

    def _offer_own(self, path: Path) -> None:
        last = self.paper.count() - 1
        if isinstance(self.paper.itemData(last), Path):
            self.paper.removeItem(last)
        self.paper.addItem(path.stem, path)

    def _ask(self) -> None:
        chosen, _ = QFileDialog.getOpenFileName(
            self, tr("Layout for the Wet Card"), str(Path.home()), tr("Print layout templates (*.qpt)")
        )
        if chosen:
            self.choose_layout(Path(chosen))
