"""The small form that asks for what a new plan needs, and makes it with the algorithm for that."""

from __future__ import annotations

from pathlib import Path

from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingFeedback, QgsProject
from qgis.gui import QgsFileWidget
from qgis.PyQt.QtCore import QStandardPaths, Qt, QTimeZone
from qgis.PyQt.QtWidgets import QComboBox, QCompleter, QDialog, QDialogButtonBox, QLineEdit, QVBoxLayout, QWidget

from ..core.clock import zone_named
from ..core.errors import SwimPlanError
from ..plan_package.settings import write_settings
from ..words import tr
from .asking import form_of, name_widgets
from .file_names import plain_name
from .section import label

ALGORITHM = "tideleg:newplan"
WIDTH_CHARACTERS = 70


class NewPlanForm(QDialog):
    """``made`` is the new plan's file once the form is accepted."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("TidelegNewPlan")
        self.setWindowTitle(tr("New Plan"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.made: Path | None = None
        self.name, self.datum, self.port = QLineEdit(), QLineEdit("chart datum"), QLineEdit()
        self.file, self.zone = QgsFileWidget(), zone_box()
        self.problem = label(strong=True)
        self._proposed = ""
        self._set_up()
        self._propose_file()
        self.name.textChanged.connect(self._propose_file)

    def _set_up(self) -> None:
        self.file.setStorageMode(QgsFileWidget.StorageMode.SaveFile)
        self.file.setFilter(tr("Plans (*.gpkg)"))
        self.file.setDialogTitle(tr("Where to Keep the Plan"))
        self.file.setConfirmOverwrite(False)  # a file that is there is refused, never replaced
        self.name.setPlaceholderText(tr("such as Autumn swims"))
        self.port.setPlaceholderText(tr("may stay empty"))
        about = {
            self.name: (tr("Title"), tr("What the plan is called in the dock, in the layers and on the cards")),
            self.file: (tr("File"), tr("Where the plan is kept: one GeoPackage (.gpkg)")),
            self.zone: (tr("Time zone"), tr("The clock of the coast; type a part of its name to find it")),
            self.datum: (tr("Datum"), tr("The level that depths and heights of tide are counted from")),
            self.port: (tr("Tide port"), tr("Whose tides give the heights, where the plan has several ports")),
        }
        name_widgets(about)
        buttons = QDialogButtonBox.StandardButton
        self.buttons = QDialogButtonBox(buttons.Ok | buttons.Cancel)
        self.buttons.button(buttons.Ok).setText(tr("Make Plan"))
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.addLayout(
            form_of(
                (
                    (tr("T&itle"), self.name),
                    (tr("&File"), self.file),
                    (tr("Time &zone"), self.zone),
                    (tr("&Datum"), self.datum),
                    (tr("Tide &port"), self.port),
                )
            )
        )
        column.addWidget(self.problem)
        column.addWidget(self.buttons)
        self.problem.hide()
        self.setMinimumWidth(WIDTH_CHARACTERS * self.fontMetrics().averageCharWidth())

    def _propose_file(self) -> None:
        """The file is named after the title as long as the user has not chosen one."""
        if self.file.filePath() == self._proposed:
            self._proposed = str(free_file(documents(), self.name.text()))
            self.file.setFilePath(self._proposed)

    def accept(self) -> None:
        """Make the plan; what stands in the way is said, and the form stays."""
        try:
            self.made = self._make()
        except SwimPlanError as error:
            self.problem.setText(str(error))
            self.problem.show()
            return
        super().accept()

    def _make(self) -> Path:
        zone_named(self.zone.currentText().strip())
        path = self._path()
        run_algorithm(
            {
                "PLAN": str(path),
                "TITLE": self.name.text(),
                "ZONE": self.zone.currentText().strip(),
                "DATUM": self.datum.text(),
            }
        )
        if self.port.text().strip():
            write_settings(path, {"port": self.port.text().strip()})
        return path

    def _path(self) -> Path:
        """The file to make; SwimPlanError where there is none, or one already."""
        typed = self.file.filePath().strip()
        if not typed:
            raise SwimPlanError(
                asked=tr("No file is named"),
                allowed=tr("A plan is kept in one file of yours"),
                remedy=tr("Name one that ends in .gpkg"),
            )
        path = Path(typed)
        path = path if path.is_absolute() else documents() / path
        path = path if path.suffix.lower() == ".gpkg" else path.with_name(f"{path.name}.gpkg")
        if path.exists():
            raise SwimPlanError(
                asked=tr("{} is there already").format(path),
                allowed=tr("A new plan replaces no file"),
                remedy=tr("Give it another name"),
            )
        return path


class _Heard(QgsProcessingFeedback):
    """Keeps what an algorithm says went wrong."""

    def __init__(self) -> None:
        super().__init__(False)
        self.errors: list[str] = []

    def reportError(self, error: str, fatalError: bool = False) -> None:
        self.errors.append(error)


def run_algorithm(parameters: dict[str, object]) -> None:
    """Run the algorithm that makes plans; SwimPlanError with its words where it refuses."""
    algorithm = QgsApplication.processingRegistry().createAlgorithmById(ALGORITHM)
    context, heard = QgsProcessingContext(), _Heard()
    context.setProject(QgsProject.instance())
    context.setFeedback(heard)
    fine, why = algorithm.checkParameterValues(parameters, context)
    done = algorithm.run(parameters, context, heard)[1] if fine else False
    if not done:
        raise SwimPlanError(asked=" ".join(heard.errors).strip().rstrip(".") or why.rstrip("."))


def documents() -> Path:
    """The folder in which the user keeps documents; the home folder where the system names none."""
    place = QStandardPaths.StandardLocation
    found = QStandardPaths.writableLocation(place.DocumentsLocation)
    return Path(found or QStandardPaths.writableLocation(place.HomeLocation))


def free_file(folder: Path, title: str) -> Path:
    """A file for a plan of this title that is not there yet."""
    name = plain_name(title) or tr("New plan")
    names = (f"{name}.gpkg" if number == 1 else f"{name} {number}.gpkg" for number in range(1, 10_000))
    return next((path for path in (folder / one for one in names) if not path.exists()), folder / f"{name}.gpkg")


def zone_box() -> QComboBox:
    """Asks for a time zone: part of its name finds it; at first the computer's own."""
    box = QComboBox()
    box.setEditable(True)
    box.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
    box.addItems(zone_names())
    box.completer().setCompletionMode(QCompleter.CompletionMode.PopupCompletion)
    box.completer().setFilterMode(Qt.MatchFlag.MatchContains)
    box.completer().setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
    box.setCurrentText(own_zone())
    return box


def zone_names() -> list[str]:
    """The zones of places, and UTC."""
    told = (bytes(one).decode("ascii", errors="ignore") for one in QTimeZone.availableTimeZoneIds())
    return sorted({one for one in told if "/" in one and not one.startswith("Etc/")}) + ["UTC"]


def own_zone() -> str:
    """The computer's own zone, which is most often that of the coast; UTC where it has none that can be named."""
    name = bytes(QTimeZone.systemTimeZoneId()).decode("ascii", errors="ignore")
    try:
        zone_named(name)
    except SwimPlanError:
        return "UTC"
    return name
