"""Everything a swim is planned from, gathered by the adapters and taken apart by no one else."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from datetime import datetime

import numpy as np

from ..chart.areas import Chart
from ..chart.depths import DepthSurvey
from ..chart.marks import Mark, Route
from ..clock import PlanClock, aware
from ..errors import SwimPlanError
from ..geodesy import LocalFrame
from ..swimmer import Swimmer
from ..water.field import StreamField
from ..water.tide import TideTable
from ..words import tr
from .picked_transits import PickedTransit
from .swim import SwimWay

_CLOCK_TIME = re.compile(r"([01]?\d|2[0-3]):[0-5]\d")


@dataclass(frozen=True, kw_only=True)
class PlanSettings:
    """The plan's own settings; ``square_within_deg`` is how far from a right angle a crossing still counts as square.

    ``ashore_before_sunset_min`` and ``back_by`` (a clock time ``HH:MM`` of the plan's zone, empty for none) are hard
    stops that a turn back keeps its reserve before. The defaults are common practice, no source.
    """

    title: str = ""
    zone: str = "UTC"
    datum: str = "chart datum"
    reserve_factor: float = 1.3
    reserve_min: float = 25.0
    heading_step_deg: float = 5.0
    alarm_after_min: float = 30.0
    square_within_deg: float = 20.0
    shallow_depth_m: float = 1.5
    ashore_before_sunset_min: float = 45.0
    back_by: str = ""

    def __post_init__(self) -> None:
        for key, (low, high) in SETTING_LIMITS.items():
            value = getattr(self, key)
            if not low <= value <= high:
                raise SwimPlanError(
                    asked=tr("The setting {key} is {value:g}").format(key=key, value=value),
                    allowed=tr("It lies from {low:g} to {high:g}").format(low=low, high=high),
                    remedy=tr("Correct the settings table"),
                )
        if self.back_by and not _CLOCK_TIME.fullmatch(self.back_by.strip()):
            raise SwimPlanError(
                asked=tr("The setting back_by is {back_by!r}").format(back_by=self.back_by),
                allowed=tr("It is a clock time such as 17:30, in the plan's zone"),
                remedy=tr("Correct the settings table, or leave it empty"),
            )


SETTING_LIMITS = {
    "reserve_factor": (1.0, 5.0),
    "reserve_min": (0.0, 240.0),
    "heading_step_deg": (0.1, 45.0),
    "alarm_after_min": (0.0, 720.0),
    "square_within_deg": (0.0, 90.0),
    "shallow_depth_m": (0.0, 50.0),
    "ashore_before_sunset_min": (-60.0, 240.0),
}


@dataclass(frozen=True, kw_only=True)
class SwimRequest:
    """A swim to plan: where, when, who, in what water, past what.

    ``exits`` are the plan's other places to land, besides the ends of the route; ``transits`` are those the user picked
    for marks of the plan, on the route or not.
    """

    route: Route
    stops: tuple[Mark, ...]
    depart: datetime
    swimmer: Swimmer
    way: SwimWay
    frame: LocalFrame
    clock: PlanClock
    stream: StreamField
    tide: TideTable | None = None
    chart: Chart = field(default_factory=Chart)
    depths: DepthSurvey = field(default_factory=DepthSurvey)
    settings: PlanSettings = field(default_factory=PlanSettings)
    exits: tuple[Mark, ...] = ()
    transits: tuple[PickedTransit, ...] = ()
    warnings: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        aware(self.depart, tr("the departure"))
        if len(self.stops) != len(self.route.lonlat):
            raise ValueError(f"{len(self.stops)} stops for {len(self.route.lonlat)} vertices")

    @property
    def stops_m(self) -> np.ndarray:
        """The stops (n, 2) in the plan's frame."""
        return self.frame.to_xy(self.route.lonlat)

    @property
    def stays_s(self) -> np.ndarray:
        """How long each stop lasts (n,), seconds; nobody stays at the entry before leaving or at the exit."""
        stays = np.array([60.0 * stop.stay_min for stop in self.stops])
        stays[[0, -1]] = 0.0
        return stays
