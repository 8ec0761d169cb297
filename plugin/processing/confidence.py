"""`tideleg:confidence`: how sure a plan is, where dead reckoning ends, and where a float drifts."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from qgis.core import QgsProcessing, QgsProcessingContext, QgsProcessingFeedback, QgsProcessingOutputNumber

from ..version import tideleg_version
from .plan_algorithm import INTEGER, PlanAlgorithm

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.solve.request import SwimRequest

SEED = 20270605  # as in core.solve.doubts, which is not imported at start-up; a test holds them together


class Confidence(PlanAlgorithm):
    """Swims a plan with many members."""

    def __init__(self) -> None:
        super().__init__()
        self._request: SwimRequest | None = None

    def name(self) -> str:
        return "confidence"

    def displayName(self) -> str:
        return self._tr("How sure is a plan")

    def tags(self) -> list[str]:
        return self._tr("sure,spread,chance,probability,ellipse,dead reckoning,drift,leeway,search,group").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Swims a plan many times, each time at another pace, on a longer or shorter path and in water that is "
            "stronger or weaker and earlier or later than its tables by what each source is uncertain by: when each "
            "stop is reached, how often one is home by the alarm, by dusk and within one's hours, and which leg "
            "fails.\n\n"
            "Ellipses: where 95 of 100 swimmers are who hold the planned headings for the planned minutes from the "
            "last stop and do not correct.\n"
            "Drift: where the float with its person is 30, 60 and 120 minutes after the swimmer stopped, at every "
            "quarter of an hour of the swim and at every stop; and so long after the planned return, wherever it "
            "happened. For the shore contact.\n"
            "Wind: steady; pushes the float 1.93 % of its speed downwind and up to 0.51 % to either side. With none "
            "given the push is left out, which is not to say that there is none.\n"
            "Swimmer: several names with a semicolon between them swim together, the slowest sets the pace.\n\n"
            "The spread is that of the doubts put in, most of them common practice without a source: a wrong table or "
            "a gale is not among them. A prediction, not an observation; feasible is not safe; never dive alone. Not "
            "for the navigation of vessels."
        )

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.add_plan()
        self.add_text("ROUTE", self._tr("Name of the route"), optional=True)
        self.add_text("DEPART", self._tr("Departure (date and time)"))
        self.add_swimmer()
        self.add_wind()
        self.add_number("MEMBERS", self._tr("Members"), 500, 10, 20_000, kind=INTEGER, advanced=True)
        self.add_number("SEED", self._tr("Seed"), SEED, 0, 2**31 - 1, kind=INTEGER, advanced=True)
        point, polygon = QgsProcessing.SourceType.TypeVectorPoint, QgsProcessing.SourceType.TypeVectorPolygon
        self.add_sink("ARRIVALS", self._tr("Arrivals at the stops"), point)
        self.add_sink("ELLIPSES", self._tr("Ellipses of dead reckoning"), polygon)
        self.add_sink("DRIFT", self._tr("Areas of drift"), polygon)
        self.add_report()
        self.addOutput(QgsProcessingOutputNumber("COMPLETED", self._tr("Share of members who complete the swim")))

    def checkParameterValues(self, parameters: dict[str, Any], context: QgsProcessingContext) -> tuple[bool, str]:
        why = self.wind_problem(parameters)
        return (False, why) if why else super().checkParameterValues(parameters, context)

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.swim_in import request_from

        self._request = request_from(self.plan(parameters, context), {}, self.swim_asked(parameters, context))

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..cards.whole_files import json_writer
        from ..core.results.confidence import confidence_dict
        from ..core.solve.confidence import Asked, how_sure
        from ..layers_out.confidence_layers import ARRIVALS, DRIFT, ELLIPSES, confidence_sentences

        asked = Asked(
            members=self.parameterAsInt(parameters, "MEMBERS", context),
            seed=self.parameterAsInt(parameters, "SEED", context),
            wind=self.wind(parameters, context),
        )
        found = how_sure(
            self._request,
            asked,
            progress=lambda share: feedback.setProgress(95.0 * share),
            is_cancelled=feedback.isCanceled,
        )
        self.tell(feedback, found.warnings, confidence_sentences(found))
        sinks = [(layer, found) for layer in (ARRIVALS, ELLIPSES, DRIFT)]
        files = {"REPORT": lambda: json_writer(confidence_dict(found, version=tideleg_version()))}
        return {"COMPLETED": found.completed_share, **self.write(parameters, context, sinks, files, styled=True)}
