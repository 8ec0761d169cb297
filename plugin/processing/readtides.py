"""`tideleg:readtides`: reads tables of tides, from a file or pasted, into a plan."""

from __future__ import annotations

from pathlib import Path
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
    QgsProcessingParameterNumber,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from .refusals import refusals

# What reads is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..layers_in.plan_append import Added
    from ..layers_in.tides_reading import TidesReadAsked

GUESS, AS_THE_TABLE_SAYS = "guess", "as the table says"
FORMS = (GUESS, "events", "series", "constants", "secondary")
UNITS = (AS_THE_TABLE_SAYS, "m", "ft")
DATE_ORDERS = (AS_THE_TABLE_SAYS, "dmy", "mdy", "ymd")
KEEP = ("curve", "waters")


class ReadTides(QgsProcessingAlgorithm):
    """Adds what a table of tides holds to a plan, or shows how it would be taken; writes tides out as CSV."""

    FILE, TEXT, FORM, PORT, ZONE, UNITS = "FILE", "TEXT", "FORM", "PORT", "ZONE", "UNITS"
    DATE_ORDER, COLUMNS, DATUM_OFFSET, LATITUDE = "DATE_ORDER", "COLUMNS", "DATUM_OFFSET", "LATITUDE"
    KEEP, PLAN, PREVIEW, REPORT, EXPORT = "KEEP", "PLAN", "PREVIEW", "REPORT", "EXPORT"
    WRITTEN, ALREADY_THERE = "WRITTEN", "ALREADY_THERE"

    def name(self) -> str:
        return "readtides"

    def displayName(self) -> str:
        return self._tr("Read tides into plan")

    def tags(self) -> list[str]:
        return self._tr("tide,high water,low water,height,harmonic,constants,secondary,port,csv,import,plan").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Reads heights of tide, from a file or pasted, into a plan: high and low waters (events), heights at even "
            "times (series), harmonic constants (constants), or differences of a secondary port (secondary). Text, CSV "
            "and JSON lists of records are read, gzipped too.\n\n"
            "Preview: writes nothing and shows what each column was taken for, the first rows, and what was skipped.\n"
            "Time zone: the table's: an IANA name such as Europe/Lisbon where its clock changes in summer, or UTC or "
            "UTC-8 where it does not. Needed unless the table itself says it. Times that daylight saving skips or "
            "gives twice are refused by their row; of a series, an hour that comes twice and stands there once is left "
            "out and counted.\n"
            "Units, date order: needed where the table leaves a choice; 05/06 is not guessed.\n"
            "Columns: what the columns hold, from the left, where headings and cells leave a choice: moment, date, "
            "time, height, kind, skip, parted by commas.\n"
            "Datum offset: how far the table's datum lies above the plan's, in metres; for constants without a row Z0, "
            "their mean level above the plan's datum.\n"
            "Keep: of a series the plan keeps its curve, or only the high and low waters found on it.\n"
            "Export: writes the port's tides of the plan as CSV; alone, without file and text, nothing is read.\n\n"
            "Rows that the plan holds already are left out; other figures for the same moment are refused. If anything "
            "fails, the plan stays as it was. Predictions are not observations. Not for navigation."
        )

    def createInstance(self) -> ReadTides:
        return ReadTides()

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        tr = self._tr
        tables = tr("Tables (*.csv *.txt *.tsv *.json *.gz);;All files (*)")
        self.addParameter(QgsProcessingParameterFile(self.FILE, tr("File"), optional=True, fileFilter=tables))
        self.addParameter(QgsProcessingParameterString(self.TEXT, tr("Pasted text"), multiLine=True, optional=True))
        self._add_choice(self.FORM, tr("Form"), FORMS)
        self.addParameter(QgsProcessingParameterString(self.PORT, tr("Port"), optional=True))
        self.addParameter(QgsProcessingParameterString(self.ZONE, tr("Time zone of the table"), optional=True))
        self._add_choice(self.UNITS, tr("Units of the heights"), UNITS)
        self._add_choice(self.DATE_ORDER, tr("Order of day, month and year"), DATE_ORDERS)
        self.addParameter(QgsProcessingParameterString(self.COLUMNS, tr("Columns, from the left"), optional=True))
        self._add_number(self.DATUM_OFFSET, tr("Datum of the table above the plan's (m)"), -30.0, 30.0)
        self._add_number(self.LATITUDE, tr("Latitude of the port, for constants (deg)"), -90.0, 90.0)
        self._add_choice(self.KEEP, tr("Keep of a series"), KEEP)
        self.addParameter(QgsProcessingParameterFile(self.PLAN, tr("Plan"), fileFilter=tr("Plans (*.gpkg)")))
        self.addParameter(QgsProcessingParameterBoolean(self.PREVIEW, tr("Preview, write nothing"), False))
        for name, words, kind in (
            (self.REPORT, tr("Report"), tr("JSON files (*.json)")),
            (self.EXPORT, tr("Export of the port's tides"), tr("CSV files (*.csv)")),
        ):
            self.addParameter(
                QgsProcessingParameterFileDestination(name, words, kind, optional=True, createByDefault=False)
            )
        self.addOutput(QgsProcessingOutputFile(self.PLAN, tr("Plan")))
        self.addOutput(QgsProcessingOutputNumber(self.WRITTEN, tr("Rows written")))
        self.addOutput(QgsProcessingOutputNumber(self.ALREADY_THERE, tr("Rows that were there already")))

    def checkParameterValues(self, parameters: dict[str, Any], context: QgsProcessingContext) -> tuple[bool, str]:
        accepted, message = super().checkParameterValues(parameters, context)
        if not accepted:
            return accepted, message
        has_file = bool(self.parameterAsFile(parameters, self.FILE, context))
        has_text = bool(self._text(parameters, self.TEXT, context))
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
        from .whole_outputs import WholeOutputs

        files = {name: self.parameterAsFileOutput(parameters, name, context) for name in (self.REPORT, self.EXPORT)}
        plan = self.parameterAsFile(parameters, self.PLAN, context)
        results: dict[str, Any] = {self.PLAN: plan, self.WRITTEN: 0, self.ALREADY_THERE: 0}
        with refusals():
            read = [plan, self.parameterAsFile(parameters, self.FILE, context)]
            outputs = WholeOutputs(files.values(), read=read)
        with refusals(outputs.undo):
            added = self._read(parameters, context, feedback)
            self._export(parameters, context, feedback, files[self.EXPORT])
        if added is not None:
            results[self.WRITTEN] = sum(added.written.values())
            results[self.ALREADY_THERE] = sum(added.already_there.values())
        return {**results, **{name: path for name, path in files.items() if path}}

    def _read(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Added | None:
        """Read the file or the text; None where neither was given."""
        from ..layers_in.chart_reading import Told
        from ..layers_in.tides_reading import read_tides_into_plan

        asked = self._asked(parameters, context)
        if asked is None:
            return None
        told = Told(
            is_cancelled=feedback.isCanceled,
            progress=feedback.setProgress,
            say=feedback.pushInfo,
            warn=feedback.pushWarning,
        )
        return read_tides_into_plan(asked, told)

    def _asked(self, parameters: dict[str, Any], context: QgsProcessingContext) -> TidesReadAsked | None:
        from ..core.water.tide_reading import TidesAsked
        from ..layers_in.tides_reading import TidesReadAsked, text_of_file

        file = self.parameterAsFile(parameters, self.FILE, context)
        pasted = self._text(parameters, self.TEXT, context)
        if not file and not pasted:
            return None
        report = self.parameterAsFileOutput(parameters, self.REPORT, context)
        return TidesReadAsked(
            plan=Path(self.parameterAsFile(parameters, self.PLAN, context)),
            text=text_of_file(Path(file)) if file else self.parameterAsString(parameters, self.TEXT, context),
            asked=TidesAsked(
                form=self._choice(parameters, self.FORM, context),
                zone=self._text(parameters, self.ZONE, context),
                units=self._choice(parameters, self.UNITS, context),
                date_order=self._choice(parameters, self.DATE_ORDER, context),
                columns=self._text(parameters, self.COLUMNS, context),
                name=Path(file).name if file else self._tr("the pasted text"),
            ),
            port=self._text(parameters, self.PORT, context),
            datum_offset_m=self._number(parameters, self.DATUM_OFFSET, context),
            latitude_deg=self._number(parameters, self.LATITUDE, context),
            keep=self.parameterAsEnumString(parameters, self.KEEP, context),
            preview=self.parameterAsBoolean(parameters, self.PREVIEW, context),
            report=Path(report) if report else None,
        )

    def _export(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback, path: str
    ) -> None:
        if not path:
            return
        from ..layers_in.tides_export import export_tides

        count = export_tides(
            Path(self.parameterAsFile(parameters, self.PLAN, context)),
            Path(path),
            self._text(parameters, self.PORT, context),
            self._choice(parameters, self.FORM, context),
        )
        feedback.pushInfo(self._tr("{} rows exported").format(count))

    def _add_choice(self, name: str, words: str, options: tuple[str, ...]) -> None:
        self.addParameter(
            QgsProcessingParameterEnum(
                name, words, options=list(options), defaultValue=options[0], usesStaticStrings=True
            )
        )

    def _add_number(self, name: str, words: str, lowest: float, highest: float) -> None:
        kind = QgsProcessingParameterNumber.Type.Double
        self.addParameter(
            QgsProcessingParameterNumber(name, words, kind, optional=True, minValue=lowest, maxValue=highest)
        )

    def _text(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> str:
        return self.parameterAsString(parameters, name, context).strip()

    def _choice(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> str:
        """What was chosen, "" for what the table itself is to say."""
        chosen = self.parameterAsEnumString(parameters, name, context)
        return "" if chosen in (GUESS, AS_THE_TABLE_SAYS) else chosen

    def _number(self, parameters: dict[str, Any], name: str, context: QgsProcessingContext) -> float | None:
        return self.parameterAsDouble(parameters, name, context) if parameters.get(name) is not None else None

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)
