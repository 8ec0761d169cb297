"""What the algorithms that compute from a plan have in common: its usual parameters, refusals, and outputs."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessing,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterDefinition,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFile,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterNumber,
    QgsProcessingParameterString,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.errors import SwimPlanError
from ..words import tr
from .refusals import refusals
from .whole_outputs import WholeOutputs, file_of_layer, file_of_sink

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.results.swim_plan import SwimPlan
    from ..core.solve.drift import Wind
    from ..core.solve.request import SwimRequest
    from ..core.solve.swim import SwimWay
    from ..layers_in.swim_in import SwimAsked
    from ..layers_out.plan_layers import OutputLayer

DOUBLE, INTEGER = QgsProcessingParameterNumber.Type.Double, QgsProcessingParameterNumber.Type.Integer


class PlanAlgorithm(QgsProcessingAlgorithm):
    """Gathers from the plan on the main thread, where layers may be read, and computes in the worker.

    A kind of it says in ``gather`` what it reads (SwimPlanError or QgsProcessingException for what it
    refuses), and in ``compute`` what it does.
    """

    def __init__(self) -> None:
        super().__init__()
        self._refusal = ""
        self._read_from: list[str] = []

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        """Read from the plan what will be needed."""
        raise NotImplementedError

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        """Compute, tell, write; the outputs by name."""
        raise NotImplementedError

    def createInstance(self) -> PlanAlgorithm:
        return type(self)()

    def prepareAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> bool:
        try:
            self._read_from = self._files_of_layers(parameters, context)
            self._say_unsaved(parameters, context, feedback)
            self.gather(parameters, context)
        except (SwimPlanError, QgsProcessingException) as error:
            # What is raised here never reaches the caller of processing.run; what processAlgorithm raises does.
            self._refusal = str(error)
        return True

    def processAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        if self._refusal:
            raise QgsProcessingException(self._refusal)
        with refusals():
            return self.compute(parameters, context, feedback)

    def _files_of_layers(self, parameters: dict[str, Any], context: QgsProcessingContext) -> list[str]:
        """The files of the layers that are given."""
        given = [
            self.parameterAsVectorLayer(parameters, one.name(), context)
            for one in self.parameterDefinitions()
            if isinstance(one, QgsProcessingParameterFeatureSource) and parameters.get(one.name())
        ]
        return [file_of_layer(layer) for layer in given if layer is not None]

    def _say_unsaved(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> None:
        """Warn of edits of the plan's layers in the project: the file is read, and they are not in it yet."""
        project, plan = context.project(), self.parameterAsFile(parameters, "PLAN", context)
        if project is None or not plan:
            return
        unsaved = sorted(
            layer.name()
            for layer in project.mapLayers().values()
            if isinstance(layer, QgsVectorLayer)
            and layer.isModified()
            and Path(file_of_layer(layer)).resolve() == Path(plan).resolve()
        )
        if unsaved:
            words = tr(
                "Edits of these layers of the plan are not saved yet, and not counted here: {}. Save them first."
            )
            feedback.pushWarning(words.format(", ".join(unsaved)))

    def add_plan(self) -> None:
        """PLAN, a plan's file."""
        self.addParameter(QgsProcessingParameterFile("PLAN", self._tr("Plan"), extension="gpkg"))

    def add_text(self, name: str, label: str, *, optional: bool = False) -> None:
        """A parameter of text."""
        self.addParameter(QgsProcessingParameterString(name, label, optional=optional))

    def add_number(
        self,
        name: str,
        label: str,
        default: float | None,
        least: float,
        most: float,
        *,
        kind: QgsProcessingParameterNumber.Type = DOUBLE,
        advanced: bool = False,
    ) -> None:
        """A number; one without a default may be left empty."""
        number = QgsProcessingParameterNumber(
            name, label, kind, default, default is None, minValue=least, maxValue=most
        )
        if advanced:
            number.setFlags(number.flags() | QgsProcessingParameterDefinition.Flag.FlagAdvanced)
        self.addParameter(number)

    def add_swimmer(self) -> None:
        """SWIMMER, one or a group, and PACE, which overrides theirs."""
        self.add_text("SWIMMER", self._tr("Name of the swimmer, or names with ;"), optional=True)
        self.add_number("PACE", self._tr("Pace through the water (m/s)"), None, 0.1, 2.5)

    def add_way(self) -> None:
        """HEADING_MODE and HEADING_EVERY."""
        ways = [self._tr("One heading per leg"), self._tr("A new heading every so often"), self._tr("Hold the line")]
        self.addParameter(QgsProcessingParameterEnum("HEADING_MODE", self._tr("Headings"), ways, defaultValue=0))
        self.add_number("HEADING_EVERY", self._tr("New heading every (min)"), 10, 1, 120, kind=INTEGER)

    def way(self, parameters: dict[str, Any], context: QgsProcessingContext) -> SwimWay:
        """How legs are swum."""
        from ..core.solve.swim import SwimWay

        return SwimWay(
            mode=self.parameterAsEnum(parameters, "HEADING_MODE", context),
            heading_every_s=60.0 * self.parameterAsInt(parameters, "HEADING_EVERY", context),
        )

    def add_wind(self) -> None:
        """WIND_FROM and WIND_KN."""
        self.add_number("WIND_FROM", self._tr("Wind from (degrees true)"), None, 0, 360)
        self.add_number("WIND_KN", self._tr("Wind speed (kn)"), None, 0, 100)

    def wind_problem(self, parameters: dict[str, Any]) -> str:
        """What is wrong with the wind given; empty for nothing."""
        if (parameters.get("WIND_KN") is None) == (parameters.get("WIND_FROM") is None):
            return ""
        return self._tr("A wind needs both its speed and where it comes from; leave both empty for none.")

    def wind(self, parameters: dict[str, Any], context: QgsProcessingContext) -> Wind | None:
        """The wind given; None without one."""
        from ..core.solve.drift import Wind

        from_deg, speed_kn = (self.number(parameters, name, context) for name in ("WIND_FROM", "WIND_KN"))
        return None if speed_kn is None else Wind(from_deg=from_deg, speed_kn=speed_kn)

    def add_sink(self, name: str, label: str, kind: QgsProcessing.SourceType, *, by_default: bool = True) -> None:
        """An optional layer of results."""
        self.addParameter(
            QgsProcessingParameterFeatureSink(name, label, kind, optional=True, createByDefault=by_default)
        )

    def add_report(self) -> None:
        """REPORT, a JSON file."""
        self.addParameter(
            QgsProcessingParameterFileDestination("REPORT", self._tr("Report"), "JSON (*.json)", optional=True)
        )

    def plan(self, parameters: dict[str, Any], context: QgsProcessingContext) -> str:
        """The plan's file."""
        return self.parameterAsFile(parameters, "PLAN", context)

    def text(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> str:
        """A parameter of text without blanks around."""
        return self.parameterAsString(parameters, name, context).strip()

    def number(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> float | None:
        """A number, None where it is left empty."""
        return None if parameters.get(name) is None else self.parameterAsDouble(parameters, name, context)

    def swim_asked(
        self, parameters: dict[str, Any], context: QgsProcessingContext, *, depart: str = "DEPART", until: str = ""
    ) -> SwimAsked:
        """The route, departure and swimmer asked for; ``depart`` and ``until`` name the parameters of the times."""
        from ..layers_in.swim_in import SwimAsked

        return SwimAsked(
            route=self.text(parameters, "ROUTE", context),
            depart=self.text(parameters, depart, context),
            until=self.text(parameters, until, context) if until else "",
            swimmer=self.text(parameters, "SWIMMER", context),
            pace_m_s=self.number(parameters, "PACE", context),
        )

    def swum(self, request: SwimRequest, feedback: QgsProcessingFeedback) -> SwimPlan:
        """The swim of a request with its turn back, as planswim gives it."""
        from ..core.solve.plan_swim import plan_swim
        from ..core.solve.turn_back.turn_back import turn_back, with_turn_back

        swim = plan_swim(request, is_cancelled=feedback.isCanceled)
        return with_turn_back(swim, turn_back(request, swim, is_cancelled=feedback.isCanceled))

    def tell(self, feedback: QgsProcessingFeedback, warnings: Iterable[str], sentences: Iterable[str]) -> None:
        """Say what was found."""
        for warning in warnings:
            feedback.pushWarning(warning)
        for sentence in sentences:
            feedback.pushInfo(sentence)

    def file_of(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> str:
        """Where an output's file goes, empty for nowhere."""
        return self.parameterAsFileOutput(parameters, name, context)

    def write(
        self,
        parameters: dict[str, Any],
        context: QgsProcessingContext,
        sinks: list[tuple[OutputLayer, Any]],
        files: Mapping[str, Callable[[], Callable[[Path], None]]],
        *,
        styled: bool = False,
    ) -> dict[str, Any]:
        """Write layers and files that were asked for, all of them or none; ``files`` make a writer by parameter.

        Raises SwimPlanError where an output would take the plan's place or cannot be written.
        """
        from ..cards.whole_files import write_whole
        from .sinks import write_sinks

        paths = {name: self.file_of(parameters, name, context) for name in files}
        paths = {name: path for name, path in paths.items() if path}
        layers_to = [file_of_sink(parameters.get(layer.parameter)) for layer, _ in sinks]
        check_apart(list(paths.values()), [file for file in layers_to if file])
        written = [*paths.values(), *layers_to]
        outputs = WholeOutputs(written, read=[self.plan(parameters, context), *self._read_from])
        try:
            layers = write_sinks(self, sinks, parameters, context, styled=styled)
            write_whole({path: files[name]() for name, path in paths.items()})
        except BaseException:
            outputs.undo()
            raise
        return {**paths, **layers}

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)


def check_apart(files: list[str], layers: list[str]) -> None:
    """SwimPlanError where two outputs would take each other's place; layers may share a GeoPackage."""
    taken = [Path(file).resolve() for file in files]
    twice = next((file for file in taken if taken.count(file) > 1 or file in map(_resolved, layers)), None)
    if twice is not None:
        raise SwimPlanError(
            asked=tr("Asked to write two outputs to {}").format(twice),
            allowed=tr("Each output goes to a file of its own"),
            remedy=tr("Choose another file for one of them"),
        )


def _resolved(path: str) -> Path:
    return Path(path).resolve()
