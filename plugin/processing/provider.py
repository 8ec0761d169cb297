"""The Processing provider `tideleg`."""

from __future__ import annotations

from importlib import import_module
from pathlib import Path

from qgis.core import Qgis, QgsMessageLog, QgsProcessingAlgorithm, QgsProcessingProvider
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtGui import QIcon

from ..version import tideleg_version

ICON = Path(__file__).resolve().parent.parent / "resources" / "icon.svg"
# Module in this folder, class in it. An algorithm that is not written here does not exist.
ALGORITHMS: tuple[tuple[str, str], ...] = (
    ("newplan", "NewPlan"),
    ("readchart", "ReadChart"),
    ("readtides", "ReadTides"),
    ("readstreams", "ReadStreams"),
    ("planswim", "PlanSwim"),
    ("swimcard", "SwimCard"),
    ("seasoncards", "SeasonCards"),
    ("swimfiles", "SwimFiles"),
    ("departurewindows", "DepartureWindows"),
    ("turnback", "TurnBackTimes"),
    ("bestorder", "BestOrder"),
    ("streamat", "StreamAt"),
    ("confidence", "Confidence"),
    ("reach", "ReachOfEntry"),
    ("fastestpath", "FastestPathBetween"),
    ("transits", "TransitsOfMarks"),
)


class TidelegProvider(QgsProcessingProvider):
    """Offers every algorithm of Tideleg; one that fails to load is reported and the others still come."""

    def id(self) -> str:
        return "tideleg"

    def name(self) -> str:
        return "Tideleg"

    def longName(self) -> str:
        return QCoreApplication.translate("Tideleg", "Tideleg swim planning")

    def versionInfo(self) -> str:
        return tideleg_version()

    def icon(self) -> QIcon:
        return QIcon(str(ICON))

    def svgIconPath(self) -> str:
        return str(ICON)

    def loadAlgorithms(self) -> None:
        for module, class_name in ALGORITHMS:
            try:
                algorithm = load_algorithm(module, class_name)
            except Exception as error:  # one broken file must not take the other algorithms away
                report_failure(module, error)
            else:
                self.addAlgorithm(algorithm)


def load_algorithm(module: str, class_name: str) -> QgsProcessingAlgorithm:
    """Import one algorithm's module and return a new algorithm; any error of the import is passed on."""
    return getattr(import_module(f".{module}", __package__), class_name)()


def report_failure(module: str, error: Exception) -> None:
    """Say in QGIS's message log which algorithm is missing, and why."""
    text = QCoreApplication.translate("Tideleg", "The algorithm {} could not be loaded: {}")
    QgsMessageLog.logMessage(
        text.format(module, f"{type(error).__name__}: {error}"), "Tideleg", Qgis.MessageLevel.Critical
    )
