"""`tideleg:readchart`: reads an electronic chart cell, or an ordinary layer, into a plan."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsProcessing,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputFile,
    QgsProcessingOutputNumber,
    QgsProcessingParameterEnum,
    QgsProcessingParameterExtent,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFile,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterString,
    QgsRectangle,
)
from qgis.PyQt.QtCore import QCoreApplication

from .refusals import refusals

if TYPE_CHECKING:
    from ..layers_in.plan_append import Added

# What reads is imported when it is first needed: QGIS must not start slower for it.
# The plan's layers in the order of its schema, without the settings and the log; a test compares the two.
TARGETS = (
    "marks",
    "routes",
    "channels",
    "closed_areas",
    "land",
    "depth_contours",
    "soundings",
    "landmarks",
    "transits",
    "tides",
    "tide_ports",
    "tide_series",
    "tide_constants",
    "tide_coefficients",
    "stream_stations",
    "stream_rates",
    "stream_events",
    "stream_series",
    "stream_constants",
    "stream_models",
    "stream_areas",
    "winds",
    "drifts",
    "ferries",
    "swimmers",
)
PLAN_CRS = "EPSG:4326"


class ReadChart(QgsProcessingAlgorithm):
    """Adds what a chart cell or a layer holds to the layers of a plan."""

    CHART, LAYER, INTO, FIELDS = "CHART", "LAYER", "INTO", "FIELDS"
    EXTENT, PLAN, REPORT = "EXTENT", "PLAN", "REPORT"
    WRITTEN, ALREADY_THERE = "WRITTEN", "ALREADY_THERE"

    def name(self) -> str:
        return "readchart"

    def displayName(self) -> str:
        return self._tr("Read chart into plan")

    def tags(self) -> list[str]:
        return self._tr("chart,s-57,cell,enc,soundings,contours,fairway,restricted,import,layer,plan").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Adds what an electronic chart holds to a plan: fairways, lanes, tracks and ferry routes, restricted and "
            "caution areas, land, depth contours, soundings, rocks and wrecks, landmarks, beacons and fixed lights, "
            "and tidal stream tables.\n\n"
            "Chart cell: the base file of an S-57 cell (.000); updates beside it (.001 ...) are applied.\n"
            "Layer: instead or as well, an ordinary layer in any coordinate reference system, read into the one plan "
            "layer chosen below.\n"
            "Fields: for each field of the plan an expression over the layer's fields, parted by semicolons, such as\n"
            'depth_m = "DEPTH" * 0.3048; name = OBJNAM\n'
            "Fields of the same name are taken without being mentioned.\n"
            "Extent: only what lies inside is read; stream tables are read from the whole cell.\n\n"
            "Rows that the plan holds already are left out, so that reading twice changes nothing. The report counts "
            "everything read, clipped away, skipped and repaired. If anything fails, the plan stays as it was.\n\n"
            "A charted restriction becomes the strictest rule its codes allow; the citation names them all. Charts do "
            "not hold every local rule: an area that is not there is not thereby permitted. Not for navigation."
        )

    def createInstance(self) -> ReadChart:
        return ReadChart()

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        tr = self._tr
        self.addParameter(
            QgsProcessingParameterFile(
                self.CHART, tr("Chart cell"), optional=True, fileFilter=tr("S-57 chart cells (*.000)")
            )
        )
        self.addParameter(
            QgsProcessingParameterFeatureSource(
                self.LAYER, tr("Layer"), [QgsProcessing.SourceType.TypeVector], optional=True
            )
        )
        self.addParameter(
            QgsProcessingParameterEnum(
                self.INTO,
                tr("Plan layer that the layer goes into"),
                options=list(TARGETS),
                defaultValue="soundings",
                optional=True,
                usesStaticStrings=True,
            )
        )
        self.addParameter(
            QgsProcessingParameterString(self.FIELDS, tr("Fields of the layer"), multiLine=True, optional=True)
        )
        self.addParameter(QgsProcessingParameterExtent(self.EXTENT, tr("Extent to read"), optional=True))
        self.addParameter(QgsProcessingParameterFile(self.PLAN, tr("Plan"), fileFilter=tr("Plans (*.gpkg)")))
        self.addParameter(
            QgsProcessingParameterFileDestination(
                self.REPORT, tr("Report"), tr("JSON files (*.json)"), optional=True, createByDefault=False
            )
        )
        self.addOutput(QgsProcessingOutputFile(self.PLAN, tr("Plan")))
        self.addOutput(QgsProcessingOutputNumber(self.WRITTEN, tr("Rows written")))
        self.addOutput(QgsProcessingOutputNumber(self.ALREADY_THERE, tr("Rows that were there already")))

    def checkParameterValues(self, parameters: dict[str, Any], context: QgsProcessingContext) -> tuple[bool, str]:
        accepted, message = super().checkParameterValues(parameters, context)
        if not accepted:
            return accepted, message
        if not parameters.get(self.CHART) and not parameters.get(self.LAYER):
            return False, self._tr("There is nothing to read: give a chart cell (CHART), a layer (LAYER), or both.")
        extent = self.parameterAsExtent(parameters, self.EXTENT, context)
        if parameters.get(self.EXTENT) and (extent.isNull() or extent.area() <= 0.0):
            return False, self._tr("The extent to read (EXTENT) is empty: draw one with an area, or leave it out.")
        return True, ""

    def processAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        with refusals():
            added = self._read(parameters, context, feedback)
        report = self.parameterAsFileOutput(parameters, self.REPORT, context)
        results = {
            self.PLAN: self.parameterAsFile(parameters, self.PLAN, context),
            self.WRITTEN: sum(added.written.values()),
            self.ALREADY_THERE: sum(added.already_there.values()),
        }
        return {**results, self.REPORT: report} if report else results

    def _read(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Added:
        from ..layers_in.chart_reading import ReadAsked, Told, read_into_plan

        report = self.parameterAsFileOutput(parameters, self.REPORT, context)
        told = Told(
            is_cancelled=feedback.isCanceled,
            progress=feedback.setProgress,
            say=feedback.pushInfo,
            warn=feedback.pushWarning,
        )
        asked = ReadAsked(
            plan=Path(self.parameterAsFile(parameters, self.PLAN, context)),
            chart=self.parameterAsFile(parameters, self.CHART, context),
            source=self.parameterAsSource(parameters, self.LAYER, context),
            into=self.parameterAsEnumString(parameters, self.INTO, context),
            mapping=self.parameterAsString(parameters, self.FIELDS, context),
            extent=self._extent(parameters, context),
            transforms=context.transformContext(),
            report=Path(report) if report else None,
        )
        return read_into_plan(asked, told)

    def _extent(self, parameters: dict[str, Any], context: QgsProcessingContext) -> QgsRectangle | None:
        """The extent in the plan's system, None for all."""
        if not parameters.get(self.EXTENT):
            return None
        return self.parameterAsExtent(parameters, self.EXTENT, context, QgsCoordinateReferenceSystem(PLAN_CRS))

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)
