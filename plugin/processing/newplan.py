"""`tideleg:newplan`: makes an empty plan."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from qgis.core import (
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.errors import SwimPlanError
from .refusals import refusals

# What makes the plan is imported when it is first needed: QGIS must not start slower for it.


class NewPlan(QgsProcessingAlgorithm):
    """Makes the GeoPackage of a plan with every layer, form and style, and nothing drawn in it."""

    PLAN = "PLAN"
    TITLE = "TITLE"
    ZONE = "ZONE"
    DATUM = "DATUM"
    OVERWRITE = "OVERWRITE"
    OPEN = "OPEN"

    def __init__(self) -> None:
        super().__init__()
        self._made: Path | None = None
        self._open = False

    def name(self) -> str:
        return "newplan"

    def displayName(self) -> str:
        return self._tr("New plan")

    def tags(self) -> list[str]:
        return self._tr("plan,new,create,geopackage,package,swim,marks,route,log").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Makes an empty plan: one GeoPackage with layers for marks, routes, channels, closed areas, land, depths, "
            "tides, tidal streams, ferries, swimmers, settings and the log. Each layer brings its form, with units, "
            "value lists and checks, and its style.\n\n"
            "Time zone: the IANA name of the zone the plan is read and printed in, such as Europe/Lisbon. Tides and "
            "stream events are always typed in UTC.\n"
            "Datum: the name of the level that charted depths and tide heights are counted from. Depths and heights "
            "of one plan must share it.\n"
            "Replace: without it, a file that is already there is left alone.\n\n"
            "A plan holds what its maker puts in. An area that is not drawn is not thereby permitted, and a stream "
            "that is not known is not zero."
        )

    def createInstance(self) -> NewPlan:
        return NewPlan()

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.addParameter(
            QgsProcessingParameterFileDestination(self.PLAN, self._tr("Plan"), self._tr("Plans (*.gpkg)"))
        )
        self.addParameter(QgsProcessingParameterString(self.TITLE, self._tr("Title"), optional=True))
        self.addParameter(
            QgsProcessingParameterString(self.ZONE, self._tr("Time zone (IANA name)"), "UTC", optional=True)
        )
        self.addParameter(
            QgsProcessingParameterString(
                self.DATUM, self._tr("Datum of depths and heights"), "chart datum", optional=True
            )
        )
        self.addParameter(
            QgsProcessingParameterBoolean(self.OVERWRITE, self._tr("Replace the file if it is there"), False)
        )
        self.addParameter(
            QgsProcessingParameterBoolean(self.OPEN, self._tr("Add the plan's layers to the project"), False)
        )

    def checkParameterValues(self, parameters: dict[str, Any], context: QgsProcessingContext) -> tuple[bool, str]:
        from ..core.clock import zone_named
        from ..plan_package.settings import zone_remedy

        try:
            zone_named(self._zone(parameters, context))
        except SwimPlanError as error:
            return False, f"ZONE: {error.asked}. {error.allowed}. {zone_remedy()}."
        return super().checkParameterValues(parameters, context)

    def processAlgorithm(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..plan_package.store import create_plan

        datum = self.parameterAsString(parameters, self.DATUM, context).strip()
        with refusals():
            self._made = create_plan(
                self.parameterAsFileOutput(parameters, self.PLAN, context),
                zone=self._zone(parameters, context),
                datum=datum or "chart datum",
                title=self.parameterAsString(parameters, self.TITLE, context).strip(),
                overwrite=self.parameterAsBoolean(parameters, self.OVERWRITE, context),
            )
        self._open = self.parameterAsBoolean(parameters, self.OPEN, context)
        feedback.pushInfo(self._tr("Made the plan {}").format(self._made))
        return {self.PLAN: str(self._made)}

    def postProcessAlgorithm(self, context: QgsProcessingContext, feedback: QgsProcessingFeedback) -> dict[str, Any]:
        if self._open and self._made is not None and context.project() is not None:
            from ..plan_package.project import add_plan_to_project

            add_plan_to_project(self._made, context.project())
        return {self.PLAN: str(self._made)}

    def _zone(self, parameters: dict[str, Any], context: QgsProcessingContext) -> str:
        return self.parameterAsString(parameters, self.ZONE, context).strip() or "UTC"

    @staticmethod
    def _tr(text: str) -> str:
        return QCoreApplication.translate("Tideleg", text)
