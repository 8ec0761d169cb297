"""`tideleg:readstreams`: reads tidal stream tables, from a file or pasted, into a plan."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsPointXY,
    QgsProcessingContext,
    QgsProcessingParameterFile,
    QgsProcessingParameterNumber,
    QgsProcessingParameterPoint,
    QgsProcessingParameterString,
)

from .text_reading import TextReading

# What reads is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.water.stream_asked import StreamAsked
    from ..layers_in.chart_reading import Told
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


class ReadStreams(TextReading):
    """Adds what a text says of streams to the stream tables of a plan, and writes them out again."""

    FORM, STATION, POINT, ZONE = "FORM", "STATION", "POINT", "ZONE"
    UNITS, REFERENCE, PORT, DATE_ORDER = "UNITS", "REFERENCE", "PORT", "DATE_ORDER"
    START, STEP = "START", "STEP"
    UNCHOSEN = (AS_THE_TEXT_SAYS,)

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
            "Zone: that of the table's clock, such as Europe/Lisbon or UTC. Letters such as EST or LST in the text "
            "never decide it, but a zone in which they cannot be true is refused. A clock time that comes twice as "
            "clocks go back, and stands in the table once, is refused by its row.\n"
            "Units: where the headings do not say it, knots or metres a second must be chosen.\n"
            "Start and step: TS_TSV texts carry no times of their own.\n\n"
            "Export writes the plan's streams, after the reading, as a text that can be read again; without a file and "
            "a text nothing but that is done.\n\n"
            "A blank is unknown, never slack. Sets are where the water goes to, true; winds are where they come from. "
            "Rows that the plan holds already are left out, empty fields of its stations are filled, other figures for "
            "the same hour or moment are refused. If anything fails, the plan stays as it was. A "
            "prediction, not an observation; not for navigation."
        )

    def createInstance(self) -> ReadStreams:
        return ReadStreams()

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        tr = self._tr
        tables = tr("Text (*.csv *.txt *.tsv);;All files (*)")
        self.addParameter(QgsProcessingParameterFile(self.FILE, tr("File"), optional=True, fileFilter=tables))
        self.addParameter(QgsProcessingParameterString(self.TEXT, tr("Text"), multiLine=True, optional=True))
        self.add_choice(self.FORM, tr("Form"), FORMS)
        self.addParameter(QgsProcessingParameterString(self.STATION, tr("Station"), optional=True))
        self.addParameter(QgsProcessingParameterPoint(self.POINT, tr("Place of a new station"), optional=True))
        self.addParameter(QgsProcessingParameterString(self.ZONE, tr("Zone of the table"), optional=True))
        self.add_choice(self.UNITS, tr("Units of the rates"), UNITS)
        self.add_choice(self.REFERENCE, tr("Hours are counted from"), REFERENCES)
        self.addParameter(QgsProcessingParameterString(self.PORT, tr("Port of the tides"), optional=True))
        self.add_choice(self.DATE_ORDER, tr("Order of day, month and year"), DATE_ORDERS)
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
        self.add_plan_parameters(tr("Export of the plan's streams"))

    def read(self, parameters: dict[str, Any], context: QgsProcessingContext, told: Told) -> Added | None:
        """Read the file or the text; None where neither was given."""
        from ..layers_in.streams_reading import read_streams_into_plan

        asked = self._streams_asked(parameters, context)
        if asked is None:
            return None
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
            return self.text(parameters, parameter, context)

        def choice(parameter: str) -> str:
            return self.choice(parameters, parameter, context)

        zone = zone_in(text(self.ZONE)) if text(self.ZONE) else None
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
            step_min=self.number(parameters, self.STEP, context),
        )

    def _place(self, parameters: dict[str, Any], context: QgsProcessingContext) -> QgsPointXY | None:
        if not parameters.get(self.POINT):
            return None
        return self.parameterAsPoint(parameters, self.POINT, context, QgsCoordinateReferenceSystem(PLAN_CRS))

    def export(self, parameters: dict[str, Any], context: QgsProcessingContext, path: str) -> int:
        """Write the stations, or the one named; how many lines."""
        from ..layers_in.streams_text import streams_text
        from ..layers_in.whole_text import write_whole_text

        plan = Path(self.parameterAsFile(parameters, self.PLAN, context))
        text = streams_text(plan, self.text(parameters, self.STATION, context))
        write_whole_text(Path(path), text, what=self._tr("file"), parameter="EXPORT")
        return len(text.splitlines())
