"""`tideleg:readchart`: reads an electronic chart cell, or an ordinary layer, into a plan."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsProcessing,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeatureSource,
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

from ..core.errors import SwimPlanError
from ..layers_in.chart_cell import ChartCell
from ..layers_in.chart_layers import PLAN_CRS, LayerReader
from ..layers_in.chart_objects import ChartReader, count_to_read, objects_to_read, uncovered_share, unread_classes
from ..layers_in.field_mapping import mapping_from_text
from ..layers_in.gathering import gather_rows
from ..layers_in.plan_append import Added, ReadCancelledError, append_to_plan
from ..layers_in.plan_rows import PlanRow
from ..layers_in.read_report import cell_warnings, read_report, write_report
from ..layers_in.read_tally import ReadTally
from ..plan_package.schema import LAYER_BY_NAME
from ..plan_package.store import read_settings

NOT_FROM_A_CHART = ("settings", "sessions", "catches")
TARGETS = tuple(name for name in LAYER_BY_NAME if name not in NOT_FROM_A_CHART)
READ_SHARE, LAYER_SHARE = 60.0, 70.0  # percent of the progress bar after the cell, and after the layer


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
            "caution areas, land, depth contours, soundings, rocks and wrecks, and tidal stream tables.\n\n"
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
        try:
            return self._read(parameters, context, feedback)
        except SwimPlanError as error:
            raise QgsProcessingException(str(error)) from error
        except ReadCancelledError as error:
            raise QgsProcessingException(self._tr("Stopped: the plan is as it was.")) from error

    def _read(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        """Everything is read before the plan is opened for writing; the report is written before the rows stand."""
        plan = Path(self.parameterAsFile(parameters, self.PLAN, context))
        datum = read_settings(plan)["datum"]
        extent = self._extent(parameters, context)
        chart = self.parameterAsFile(parameters, self.CHART, context)
        cell = ChartCell(chart) if chart else None
        source = self.parameterAsSource(parameters, self.LAYER, context)
        tally = ReadTally()
        rows = self._cell_rows(cell, extent, tally, feedback) if cell else []
        warnings = cell_warnings(cell.facts, datum, uncovered_share(cell, extent), bool(rows)) if cell else []
        if source is not None:
            rows += self._layer_rows(source, parameters, context, extent, tally, feedback)
        report_path = self.parameterAsFileOutput(parameters, self.REPORT, context)

        def report(added: Added) -> None:
            content = read_report(
                plan=plan,
                sources=([chart] if chart else []) + ([source.sourceName()] if source is not None else []),
                facts=cell.facts if cell else None,
                extent=extent,
                tally=tally,
                added=added,
                unread=unread_classes(cell) if cell else {},
                warnings=warnings,
            )
            write_report(Path(report_path), content)

        added = append_to_plan(
            plan,
            rows,
            is_cancelled=feedback.isCanceled,
            progress=_between(feedback, LAYER_SHARE, 100.0),
            before_commit=report if report_path else lambda _added: None,
        )
        self._tell(feedback, tally, warnings, added)
        results = {
            self.PLAN: str(plan),
            self.WRITTEN: sum(added.written.values()),
            self.ALREADY_THERE: sum(added.already_there.values()),
        }
        return {**results, self.REPORT: report_path} if report_path else results

    def _tell(self, feedback: QgsProcessingFeedback, tally: ReadTally, warnings: list[str], added: Added) -> None:
        for sentence in tally.sentences():
            feedback.pushInfo(sentence)
        for warning in warnings:
            feedback.pushWarning(warning)
        written, there = sum(added.written.values()), sum(added.already_there.values())
        feedback.pushInfo(self._tr("{} rows written, {} were there already").format(written, there))

    def _cell_rows(
        self, cell: ChartCell, extent: QgsRectangle | None, tally: ReadTally, feedback: QgsProcessingFeedback
    ) -> list[PlanRow]:
        reader = ChartReader(cell.facts, extent, tally)
        return gather_rows(
            objects_to_read(cell),
            reader.rows_of,
            total=count_to_read(cell),
            is_cancelled=feedback.isCanceled,
            progress=_between(feedback, 0.0, READ_SHARE),
        )

    def _layer_rows(
        self,
        source: QgsProcessingFeatureSource,
        parameters: dict[str, Any],
        context: QgsProcessingContext,
        extent: QgsRectangle | None,
        tally: ReadTally,
        feedback: QgsProcessingFeedback,
    ) -> list[PlanRow]:
        reader = LayerReader(
            source,
            into=LAYER_BY_NAME[self.parameterAsEnumString(parameters, self.INTO, context)],
            mapping=mapping_from_text(self.parameterAsString(parameters, self.FIELDS, context)),
            extent=extent,
            transforms=context.transformContext(),
            tally=tally,
        )
        return gather_rows(
            reader.features(),
            reader.rows_of,
            total=source.featureCount(),
            is_cancelled=feedback.isCanceled,
            progress=_between(feedback, READ_SHARE, LAYER_SHARE),
        )

    def _extent(self, parameters: dict[str, Any], context: QgsProcessingContext) -> QgsRectangle | None:
        """The extent in the plan's system, None for all."""
        if not parameters.get(self.EXTENT):
            return None
        return self.parameterAsExtent(parameters, self.EXTENT, context, QgsCoordinateReferenceSystem(PLAN_CRS))

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)


def _between(feedback: QgsProcessingFeedback, start: float, end: float) -> Callable[[float], None]:
    """A progress callback for shares 0 to 1 that fills the bar from ``start`` to ``end`` percent."""
    return lambda share: feedback.setProgress(start + (end - start) * share)
