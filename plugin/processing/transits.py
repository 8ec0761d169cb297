"""`tideleg:transits`: which landmarks stand in line as seen from a mark, and which pairs of lines fix it best."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

from qgis.core import (
    QgsProcessing,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSource,
)

from ..version import tideleg_version
from .plan_algorithm import PlanAlgorithm

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.results.transits import TransitsFound
    from ..layers_in.transits_asked import TransitsRequest


class TransitsOfMarks(PlanAlgorithm):
    """Suggests transits and, where asked to, puts the best pair of each mark into the plan."""

    def __init__(self) -> None:
        super().__init__()
        self._request: TransitsRequest | None = None

    def name(self) -> str:
        return "transits"

    def displayName(self) -> str:
        return self._tr("Transits of marks")

    def tags(self) -> list[str]:
        return self._tr("transit,landmark,mark,line,bearing,fix,in line,leading").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "A transit is two things ashore seen in line. Two transits that cross near a right angle bring you back to "
            "a mark without any instrument. For each mark the best pairs are listed, with the bearing of each line, "
            "how far it passes from the mark, how far you stray before the two visibly open (5 minutes of arc), and "
            "how far from the mark the pair can be expected to put you.\n\n"
            "Mark: a name; empty for every mark of kind mark.\n"
            "Landmarks: a layer of points with a field of names, in the place of the plan's landmarks.\n"
            "Offset: lines that pass farther from the mark than this are not looked at.\n"
            "Put into the plan: the best pair of each mark goes into the plan's transits, and onto the wet card. A "
            "mark that has transits there keeps them.\n\n"
            "Fronts lie from 100 m away, rears up to 10 km, and lines of a pair cross at 60 degrees or more. Whether a "
            "landmark is hidden by land, trees or houses is not known here: look before you rely on one. Not for "
            "navigation."
        )

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.add_plan()
        self.add_text("MARK", self._tr("Mark (empty for all)"), optional=True)
        self.addParameter(
            QgsProcessingParameterFeatureSource(
                "LANDMARKS",
                self._tr("Landmarks, in place of the plan's"),
                [QgsProcessing.SourceType.TypeVectorPoint],
                optional=True,
            )
        )
        self.add_number("OFFSET", self._tr("Line passes within (m)"), 20, 1, 100)
        self.add_text("DATE", self._tr("Day of the magnetic variation (empty for today)"), optional=True)
        self.addParameter(
            QgsProcessingParameterBoolean("KEEP", self._tr("Put the best pair of each mark into the plan"), False)
        )
        self.add_sink("TRANSITS", self._tr("Transits"), QgsProcessing.SourceType.TypeVectorLine)
        self.add_report()
        self.addOutput(QgsProcessingOutputNumber("PAIRS", self._tr("Pairs found")))
        self.addOutput(QgsProcessingOutputNumber("KEPT", self._tr("Transits put into the plan")))

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.transits_asked import TransitsAsked, transits_request

        asked = TransitsAsked(
            mark=self.text(parameters, "MARK", context),
            day=self.text(parameters, "DATE", context),
            offset_m=self.parameterAsDouble(parameters, "OFFSET", context),
        )
        source = self.parameterAsSource(parameters, "LANDMARKS", context)
        self._request = transits_request(self.plan(parameters, context), source, asked)

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..core.solve.transits_of_marks import transits_of_marks
        from ..layers_out.transits_layer import transit_sentences

        found = transits_of_marks(
            self._request.marks,
            self._request.landmarks,
            self._request.date,
            limits=self._request.limits,
            warnings=self._request.warnings,
            progress=lambda share: feedback.setProgress(100.0 * share),
            is_cancelled=feedback.isCanceled,
        )
        self.tell(feedback, found.warnings, transit_sentences(found))
        results, kept = self._write_and_keep(parameters, context, feedback, found)
        return {"PAIRS": sum(len(one.fixes) for one in found.marks), "KEPT": kept, **results}

    def _write_and_keep(
        self,
        parameters: dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        found: TransitsFound,
    ) -> tuple[dict[str, Any], int]:
        """Outputs and the plan's rows, all or none: the outputs are written when every row is in place."""
        write = partial(self._write_found, parameters, context, found)
        if not self.parameterAsBoolean(parameters, "KEEP", context):
            return write(), 0
        from ..layers_in.plan_append import append_to_plan
        from ..layers_in.transits_kept import rows_to_keep

        rows, told = rows_to_keep(self._request, found)
        for sentence in told:
            feedback.pushWarning(sentence)
        if not rows:
            return write(), 0
        results: dict[str, Any] = {}
        plan = Path(self.plan(parameters, context))
        added = append_to_plan(
            plan, rows, is_cancelled=feedback.isCanceled, before_commit=lambda _added: results.update(write())
        )
        return results, added.written["transits"]

    def _write_found(
        self, parameters: dict[str, Any], context: QgsProcessingContext, found: TransitsFound
    ) -> dict[str, Any]:
        from ..cards.whole_files import json_writer
        from ..core.results.transits import transits_dict
        from ..layers_out.transits_layer import TRANSITS

        report = {"REPORT": lambda: json_writer(transits_dict(found, version=tideleg_version()))}
        return self.write(parameters, context, [(TRANSITS, found)], report, styled=True)
