"""`tideleg:readstreams`: reads tidal stream tables, from a file or pasted, into a plan."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsPointXY,
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
    QgsProcessingParameterPoint,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from .refusals import refusals

# What reads is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.water.stream_asked import StreamAsked
    from ..layers_in.plan_append import Added
    from ..layers_in.streams_reading import StreamsAsked

# The forms of core/water/stream_text.py; a test compares the two.
FORMS = (
    "guess",
    "hourly",
    "coefficients",
    "events",
    "ts_tsp",
    "ts_tsv",
    "series",
    "constants",
    "drift",
    "winds",
    "tide_coefficients",
)
AS_THE_TEXT_SAYS = "as the text says"
UNITS = (AS_THE_TEXT_SAYS, "kn", "m/s", "cm/s")
REFERENCES = (AS_THE_TEXT_SAYS, "HW", "LW")
DATE_ORDERS = (AS_THE_TEXT_SAYS, "dmy", "mdy", "ymd")
PLAN_CRS = "EPSG:4326"


class ReadStreams(QgsProcessingAlgorithm):
    """Adds what a text says of streams to the stream tables of a plan, and writes them out again."""

    FILE, TEXT, FORM, STATION, POINT, ZONE = "FILE", "TEXT", "FORM", "STATION", "POINT", "ZONE"
    UNITS, REFERENCE, PORT, DATE_ORDER = "UNITS", "REFERENCE", "PORT", "DATE_ORDER"
    START, STEP, PLAN, PREVIEW = "START", "STEP", "PLAN", "PREVIEW"
    REPORT, EXPORT = "REPORT", "EXPORT"
    WRITTEN, ALREADY_THERE = "WRITTEN", "ALREADY_THERE"

    def name(self) -> str:
        return "readstreams"

    def displayName(self) -> str:
        return self._tr("Read streams into plan")

    def tags(self) -> list[str]:
        return self._tr("tidal stream,current,slack,flood,ebb,drift,wind,coefficient,table,csv,import,plan").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Reads tidal streams, from a file or pasted, into a plan.\n\n"
            "Forms: hourly tables from high or low water with set and rates at springs and neaps (hourly) or at the "
            "tide coefficients 95 and 45 (coefficients); slacks and maxima (events); sets and rates at moments "
            "(series); harmonic constants of the east and north parts (constants); the texts TS_TSP and TS_TSV of "
            "electronic charts; timed drifts (drift); winds; tide coefficients.\n\n"
            "Headings such as hour, set, spring (kn), neap (kn); time, event, rate; time, lon, lat, end time, end lon, "
            "end lat tell the columns. Preview says what each column is taken for and writes nothing.\n\n"
            "Station: whose rows they are; a new one needs its place. Lines '# station: name', '# lon: ...' in the "
            "text say the same, and let one text hold many stations.\n"
            "Zone: that of the table's clock, such as Europe/Lisbon or UTC. A clock time that comes twice as clocks go "
            "back, and stands in the table once, is refused by its row.\n"
            "Units: where the headings do not say it, knots or metres a second must be chosen.\n"
            "Start and step: TS_TSV texts carry no times of their own.\n\n"
            "Export writes the plan's streams, after the reading, as a text that can be read again; without a file and "
            "a text nothing but that is done.\n\n"
            "A blank is unknown, never slack. Sets are where the water goes to, true; winds are where they come from. "
            "Rows that the plan holds already are left out; other figures for the same hour or moment are refused. If "
            "anything fails, the plan stays as it was. A prediction, not an observation; not for navigation."
        )

    def createInstance(self) -> ReadStreams:
        return ReadStreams()

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        tr = self._tr
        tables = tr("Text (*.csv *.txt *.tsv);;All files (*)")
        self.addParameter(QgsProcessingParameterFile(self.FILE, tr("File"), optional=True, fileFilter=tables))
        self.addParameter(QgsProcessingParameterString(self.TEXT, tr("Text"), multiLine=True, optional=True))
        self._add_choice(self.FORM, tr("Form"), FORMS)
        self.addParameter(QgsProcessingParameterString(self.STATION, tr("Station"), optional=True))
        self.addParameter(QgsProcessingParameterPoint(self.POINT, tr("Place of a new station"), optional=True))
        self.addParameter(QgsProcessingParameterString(self.ZONE, tr("Zone of the table"), optional=True))
        self._add_choice(self.UNITS, tr("Units of the rates"), UNITS)
        self._add_choice(self.REFERENCE, tr("Hours are counted from"), REFERENCES)
        self.addParameter(QgsProcessingParameterString(self.PORT, tr("Port of the tides"), optional=True))
        self._add_choice(self.DATE_ORDER, tr("Order of day, month and year"), DATE_ORDERS)
        self.addParameter(QgsProcessingParameterString(self.START, tr("First moment (TS_TSV)"), optional=True))
        self.addParameter(
            QgsProcessingParameterNumber(
                self.STEP,
                tr("Minutes from pair to pair (TS_TSV)"),
                QgsProcessingParameterNumber.Type.Double,
                optional=True,
                minValue=0.0,
            )
        )
        self.addParameter(QgsProcessingParameterFile(self.PLAN, tr("Plan"), fileFilter=tr("Plans (*.gpkg)")))
        self.addParameter(QgsProcessingParameterBoolean(self.PREVIEW, tr("Preview, write nothing"), defaultValue=False))
        for name, words, kind in (
            (self.REPORT, tr("Report"), tr("JSON files (*.json)")),
            (self.EXPORT, tr("Export of the plan's streams"), tr("CSV files (*.csv)")),
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
        has_text = bool(self.parameterAsString(parameters, self.TEXT, context).strip())
        if has_file and has_text:
            return False, self._tr("Give a file (FILE) or a text (TEXT), not both.")
        if not (has_file or has_text or parameters.get(self.EXPORT)):
            return False, self._tr("There is nothing to read: give a file (FILE) or paste a text (TEXT).")
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
            self._export(parameters, context, files[self.EXPORT])
        if added is not None:
            results[self.WRITTEN] = sum(added.written.values())
            results[self.ALREADY_THERE] = sum(added.already_there.values())
        return {**results, **{name: path for name, path in files.items() if path}}

    def _read(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Added | None:
        """Read the file or the text; None where neither was given."""
        from ..layers_in.chart_reading import Told
        from ..layers_in.streams_reading import read_streams_into_plan

        asked = self._streams_asked(parameters, context)
        if asked is None:
            return None
        told = Told(
            is_cancelled=feedback.isCanceled,
            progress=feedback.setProgress,
            say=feedback.pushInfo,
            warn=feedback.pushWarning,
        )
        return read_streams_into_plan(asked, told)

    def _streams_asked(self, parameters: dict[str, Any], context: QgsProcessingContext) -> StreamsAsked | None:
        from ..layers_in.streams_reading import StreamsAsked, text_of_file

        file = self.parameterAsFile(parameters, self.FILE, context)
        text, warnings = self.parameterAsString(parameters, self.TEXT, context), ()
        if file:
            text, warnings = text_of_file(Path(file))
        elif not text.strip():
            return None
        report = self.parameterAsFileOutput(parameters, self.REPORT, context)
        return StreamsAsked(
            plan=Path(self.parameterAsFile(parameters, self.PLAN, context)),
            text=text,
            asked=self._asked(parameters, context, Path(file).name if file else self._tr("the text")),
            place=self._place(parameters, context),
            preview=self.parameterAsBoolean(parameters, self.PREVIEW, context),
            report=Path(report) if report else None,
            warnings=warnings,
        )

    def _asked(self, parameters: dict[str, Any], context: QgsProcessingContext, name: str) -> StreamAsked:
        from ..core.clock import moment_from_text
        from ..core.text_moments import zone_in
        from ..core.water.stream_asked import StreamAsked

        def text(parameter: str) -> str:
            return self.parameterAsString(parameters, parameter, context).strip()

        def choice(parameter: str) -> str:
            chosen = self.parameterAsEnumString(parameters, parameter, context)
            return "" if chosen == AS_THE_TEXT_SAYS else chosen

        zone = zone_in(text(self.ZONE)) if text(self.ZONE) else None
        step = self.parameterAsDouble(parameters, self.STEP, context) if parameters.get(self.STEP) is not None else None
        return StreamAsked(
            form=choice(self.FORM) or FORMS[0],
            name=name,
            station=text(self.STATION),
            reference=choice(self.REFERENCE),
            port=text(self.PORT),
            unit=choice(self.UNITS),
            zone=zone,
            date_order=choice(self.DATE_ORDER),
            start=moment_from_text(text(self.START), zone) if text(self.START) else None,
            step_min=step,
        )

    def _place(self, parameters: dict[str, Any], context: QgsProcessingContext) -> QgsPointXY | None:
        if not parameters.get(self.POINT):
            return None
        return self.parameterAsPoint(parameters, self.POINT, context, QgsCoordinateReferenceSystem(PLAN_CRS))

    def _export(self, parameters: dict[str, Any], context: QgsProcessingContext, path: str) -> None:
        if not path:
            return
        from ..layers_in.streams_text import streams_text, write_streams_text

        plan = Path(self.parameterAsFile(parameters, self.PLAN, context))
        named = self.parameterAsString(parameters, self.STATION, context).strip()
        write_streams_text(Path(path), streams_text(plan, named))

    def _add_choice(self, name: str, words: str, options: tuple[str, ...]) -> None:
        self.addParameter(
            QgsProcessingParameterEnum(
                name, words, options=list(options), defaultValue=options[0], usesStaticStrings=True
            )
        )

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)
