"""What the algorithms that read tables of text into a plan have in common."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputFile,
    QgsProcessingOutputNumber,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFile,
    QgsProcessingParameterFileDestination,
)
from qgis.PyQt.QtCore import QCoreApplication

from .refusals import refusals

# What reads is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..layers_in.chart_reading import Told
    from ..layers_in.plan_append import Added


class TextReading(QgsProcessingAlgorithm):
    """Reads a file or a pasted text into a plan, all or nothing, and can write the plan's tables out again.

    A subclass adds the parameters FILE and TEXT and its own, and says how to read and how to export.
    """

    FILE, TEXT, PLAN, PREVIEW, REPORT, EXPORT = "FILE", "TEXT", "PLAN", "PREVIEW", "REPORT", "EXPORT"
    WRITTEN, ALREADY_THERE = "WRITTEN", "ALREADY_THERE"
    # What an enumeration offers for "not chosen here".
    UNCHOSEN: tuple[str, ...] = ()

    def read(self, parameters: dict[str, Any], context: QgsProcessingContext, told: Told) -> Added | None:
        """Read the file or the text into the plan; None where neither was given."""
        raise NotImplementedError

    def export(self, parameters: dict[str, Any], context: QgsProcessingContext, path: str) -> int:
        """Write the plan's tables to a CSV; how many rows."""
        raise NotImplementedError

    def add_plan_parameters(self, export_words: str) -> None:
        """The parameters and outputs that every reading ends with."""
        tr = self._tr
        self.addParameter(QgsProcessingParameterFile(self.PLAN, tr("Plan"), fileFilter=tr("Plans (*.gpkg)")))
        self.addParameter(QgsProcessingParameterBoolean(self.PREVIEW, tr("Preview, write nothing"), defaultValue=False))
        for name, words, kind in (
            (self.REPORT, tr("Report"), tr("JSON files (*.json)")),
            (self.EXPORT, export_words, tr("CSV files (*.csv)")),
        ):
            self.addParameter(
                QgsProcessingParameterFileDestination(name, words, kind, optional=True, createByDefault=False)
            )
        self.addOutput(QgsProcessingOutputFile(self.PLAN, tr("Plan")))
        self.addOutput(QgsProcessingOutputNumber(self.WRITTEN, tr("Rows written")))
        self.addOutput(QgsProcessingOutputNumber(self.ALREADY_THERE, tr("Rows that were there already")))

    def checkParameterValues(self, parameters: dict[str, Any], context: QgsProcessingContext) -> tuple[bool, str]:
        parameters = self._with_names(parameters)
        accepted, message = super().checkParameterValues(parameters, context)
        if not accepted:
            return accepted, message
        has_file = bool(self.parameterAsFile(parameters, self.FILE, context))
        has_text = bool(self.text(parameters, self.TEXT, context))
        if has_file and has_text:
            return False, self._tr("Give a file (FILE) or a text (TEXT), not both.")
        if not (has_file or has_text or parameters.get(self.EXPORT)):
            return False, self._tr("There is nothing to read: give a file (FILE) or paste a text (TEXT).")
        if parameters.get(self.EXPORT) and self.parameterAsBoolean(parameters, self.PREVIEW, context):
            return False, self._tr("A preview writes nothing: leave out EXPORT or PREVIEW.")
        return True, ""

    def processAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..layers_in.chart_reading import Told
        from .whole_outputs import WholeOutputs

        parameters = self._with_names(parameters)
        files = {name: self.parameterAsFileOutput(parameters, name, context) for name in (self.REPORT, self.EXPORT)}
        plan = self.parameterAsFile(parameters, self.PLAN, context)
        results: dict[str, Any] = {self.PLAN: plan, self.WRITTEN: 0, self.ALREADY_THERE: 0}
        told = Told(
            is_cancelled=feedback.isCanceled,
            progress=feedback.setProgress,
            say=feedback.pushInfo,
            warn=feedback.pushWarning,
        )
        with refusals():
            read_from = [plan, self.parameterAsFile(parameters, self.FILE, context)]
            outputs = WholeOutputs(files.values(), read=read_from)
        with refusals(outputs.undo):
            added = self.read(parameters, context, told)
            if files[self.EXPORT]:
                count = self.export(parameters, context, files[self.EXPORT])
                feedback.pushInfo(self._tr("{} rows exported").format(count))
        if added is not None:
            results[self.WRITTEN] = sum(added.written.values())
            results[self.ALREADY_THERE] = sum(added.already_there.values())
        return {**results, **{name: path for name, path in files.items() if path}}

    def add_choice(self, name: str, words: str, options: tuple[str, ...]) -> None:
        """A choice of texts, the first by default."""
        self.addParameter(
            QgsProcessingParameterEnum(
                name, words, options=list(options), defaultValue=options[0], usesStaticStrings=True
            )
        )

    def _with_names(self, parameters: dict[str, Any]) -> dict[str, Any]:
        """The parameters with the names of choices that were given by their number, counted from 0."""
        named = dict(parameters)
        for definition in self.parameterDefinitions():
            value = parameters.get(definition.name())
            if isinstance(definition, QgsProcessingParameterEnum) and _is_number(value):
                options = definition.options()
                named[definition.name()] = options[int(value)] if int(value) < len(options) else value
        return named

    def text(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> str:
        """A text without blanks around it."""
        return self.parameterAsString(parameters, name, context).strip()

    def choice(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> str:
        """What was chosen, "" for what the table itself is to say."""
        chosen = self.parameterAsEnumString(parameters, name, context)
        return "" if chosen in self.UNCHOSEN else chosen

    def number(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> float | None:
        """A number, None where it was left empty."""
        return self.parameterAsDouble(parameters, name, context) if parameters.get(name) is not None else None

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)


def _is_number(value: object) -> bool:
    """Whether it is a whole number from 0, or its digits; true and false are none."""
    if isinstance(value, str):
        return value.isascii() and value.isdigit()
    return isinstance(value, int) and not isinstance(value, bool) and value >= 0
