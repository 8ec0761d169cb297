"""`tideleg:readtides`: reads tables of tides, from a file or pasted, into a plan."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingParameterFile,
    QgsProcessingParameterNumber,
    QgsProcessingParameterString,
)

from .text_reading import TextReading

# What reads is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..layers_in.chart_reading import Told
    from ..layers_in.plan_append import Added
    from ..layers_in.tides_reading import TidesReadAsked

GUESS, AS_THE_TABLE_SAYS = "guess", "as the table says"
FORMS = (GUESS, "events", "series", "constants", "secondary")
UNITS = (AS_THE_TABLE_SAYS, "m", "ft")
DATE_ORDERS = (AS_THE_TABLE_SAYS, "dmy", "mdy", "ymd")
KEEP = ("curve", "waters")


class ReadTides(TextReading):
    """Adds what a table of tides holds to a plan, or shows how it would be taken; writes tides out as CSV."""

    FORM, PORT, ZONE, UNITS = "FORM", "PORT", "ZONE", "UNITS"
    DATE_ORDER, COLUMNS, DATUM_OFFSET, LATITUDE = "DATE_ORDER", "COLUMNS", "DATUM_OFFSET", "LATITUDE"
    KEEP = "KEEP"
    UNCHOSEN = (GUESS, AS_THE_TABLE_SAYS)

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
            "UTC-8 where it does not. Needed unless the table itself says UTC or an offset; letters such as EST or "
            "LST in it never decide, but a zone in which they cannot be true is refused. Times that daylight saving "
            "skips or gives twice are refused by their row; of a series, an hour that comes twice and stands there "
            "once is left out and counted.\n"
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
        self.add_choice(self.FORM, tr("Form"), FORMS)
        self.addParameter(QgsProcessingParameterString(self.PORT, tr("Port"), optional=True))
        self.addParameter(QgsProcessingParameterString(self.ZONE, tr("Time zone of the table"), optional=True))
        self.add_choice(self.UNITS, tr("Units of the heights"), UNITS)
        self.add_choice(self.DATE_ORDER, tr("Order of day, month and year"), DATE_ORDERS)
        self.addParameter(QgsProcessingParameterString(self.COLUMNS, tr("Columns, from the left"), optional=True))
        self._add_number(self.DATUM_OFFSET, tr("Datum of the table above the plan's (m)"), -30.0, 30.0)
        self._add_number(self.LATITUDE, tr("Latitude of the port, for constants (deg)"), -90.0, 90.0)
        self.add_choice(self.KEEP, tr("Keep of a series"), KEEP)
        self.add_plan_parameters(tr("Export of the port's tides"))

    def read(self, parameters: dict[str, Any], context: QgsProcessingContext, told: Told) -> Added | None:
        """Read the file or the text; None where neither was given."""
        from ..layers_in.tides_reading import read_tides_into_plan

        asked = self._asked(parameters, context)
        if asked is None:
            return None
        return read_tides_into_plan(asked, told)

    def _asked(self, parameters: dict[str, Any], context: QgsProcessingContext) -> TidesReadAsked | None:
        from ..core.water.tide_reading import TidesAsked
        from ..layers_in.tides_reading import TidesReadAsked, text_of_file

        file = self.parameterAsFile(parameters, self.FILE, context)
        pasted = self.text(parameters, self.TEXT, context)
        if not file and not pasted:
            return None
        report = self.parameterAsFileOutput(parameters, self.REPORT, context)
        return TidesReadAsked(
            plan=Path(self.parameterAsFile(parameters, self.PLAN, context)),
            text=text_of_file(Path(file)) if file else self.parameterAsString(parameters, self.TEXT, context),
            asked=TidesAsked(
                form=self.choice(parameters, self.FORM, context),
                zone=self.text(parameters, self.ZONE, context),
                units=self.choice(parameters, self.UNITS, context),
                date_order=self.choice(parameters, self.DATE_ORDER, context),
                columns=self.text(parameters, self.COLUMNS, context),
                name=Path(file).name if file else self._tr("the pasted text"),
            ),
            port=self.text(parameters, self.PORT, context),
            datum_offset_m=self.number(parameters, self.DATUM_OFFSET, context),
            latitude_deg=self.number(parameters, self.LATITUDE, context),
            keep=self.parameterAsEnumString(parameters, self.KEEP, context),
            preview=self.parameterAsBoolean(parameters, self.PREVIEW, context),
            report=Path(report) if report else None,
        )

    def export(self, parameters: dict[str, Any], context: QgsProcessingContext, path: str) -> int:
        """Write the tides of a port in a form; how many rows."""
        from ..layers_in.tides_export import export_tides

        return export_tides(
            Path(self.parameterAsFile(parameters, self.PLAN, context)),
            Path(path),
            self.text(parameters, self.PORT, context),
            self.choice(parameters, self.FORM, context),
        )

    def _add_number(self, name: str, words: str, lowest: float, highest: float) -> None:
        kind = QgsProcessingParameterNumber.Type.Double
        self.addParameter(
            QgsProcessingParameterNumber(name, words, kind, optional=True, minValue=lowest, maxValue=highest)
        )
