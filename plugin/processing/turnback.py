"""`tideleg:turnback`: when to leave each stop, which exit to take if late, and the points of no return."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from qgis.core import QgsProcessing, QgsProcessingContext, QgsProcessingFeedback

from ..version import tideleg_version
from .plan_algorithm import PlanAlgorithm

# What computes is imported when it is first needed: QGIS must not start slower for it.
if TYPE_CHECKING:
    from ..core.solve.request import SwimRequest

POINT = QgsProcessing.SourceType.TypeVectorPoint


class TurnBackTimes(PlanAlgorithm):
    """Plans the swim and its turn back."""

    def __init__(self) -> None:
        super().__init__()
        self._request: SwimRequest | None = None

    def name(self) -> str:
        return "turnback"

    def displayName(self) -> str:
        return self._tr("Turn back")

    def tags(self) -> list[str]:
        return self._tr("turn back,latest,leave,exit,late,reserve,dusk,no return,group").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Plans a swim and says when each stop must be left: the bands of leaving times from which the best of all "
            "exits is reached before dusk, the swimmer's hours, the plan's `back_by` and the alarm, with the reserve "
            "of the plan's settings kept (reserve_factor times the way home, and reserve_min on top), on the day "
            "expected and on a bad day: a tenth slower, every stream stronger by its doubt and turning early, on time "
            "or late.\n"
            "The alarm is kept without the reserve, as it goes out a fixed time after the planned return.\n\n"
            "Ways home: by the quickest exit at and after the planned leaving, and to the planned exit by the quarter "
            "of an hour, with headings and minutes. Points of no return: the last place on each leg from which turning "
            "back is in time; a leg without one lets you turn anywhere.\n\n"
            "Exits: the route's end, its start, and every mark of the kind exit. Several swimmers, with semicolons "
            "between their names, are a group: their times together, and each one's alone in the report.\n\n"
            "A prediction: minutes late can cost hours where the stream turns. Feasible is not safe; never dive alone."
        )

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.add_plan()
        self.add_text("ROUTE", self._tr("Name of the route"), optional=True)
        self.add_text("DEPART", self._tr("Departure (date and time)"))
        self.add_swimmer()
        self.add_sink("WAYS", self._tr("Ways home"), POINT)
        self.add_sink("BANDS", self._tr("Bands of leaving times"), POINT)
        self.add_sink("NO_RETURN", self._tr("Points of no return"), POINT)
        self.add_report()

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.swim_in import request_from

        self._request = request_from(self.plan(parameters, context), {}, self.swim_asked(parameters, context))

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..cards.whole_files import json_writer
        from ..core.results.turn_back import turn_back_dict
        from ..core.solve.plan_swim import plan_swim
        from ..core.solve.turn_back.turn_back import turn_back, turn_back_alone
        from ..layers_out.turn_back_layers import BANDS, NO_RETURN, WAYS, TurnBackOf, turn_back_sentences

        request, is_cancelled = self._request, feedback.isCanceled
        plan = plan_swim(request, is_cancelled=is_cancelled)
        half = 45.0 if request.swimmer.members else 90.0
        found = turn_back(
            request, plan, progress=lambda share: feedback.setProgress(half * share), is_cancelled=is_cancelled
        )
        alone = turn_back_alone(request, plan, is_cancelled=is_cancelled)
        feedback.setProgress(90)
        step_deg = request.settings.heading_step_deg
        late = (flag.message for flag in found.flags)
        self.tell(feedback, (*late, *plan.warnings, *found.warnings), turn_back_sentences(found, step_deg))
        made = TurnBackOf(found=found, heading_step_deg=step_deg)
        told = turn_back_dict(found, version=tideleg_version(), alone=alone)
        files = {"REPORT": lambda: json_writer(told)}
        return self.write(parameters, context, [(layer, made) for layer in (WAYS, BANDS, NO_RETURN)], files)
