"""What a reach or a fastest path is asked of: a place, a time to be home, and how channels are taken."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

import numpy as np

from ...chart.marks import Mark
from ...errors import SwimPlanError
from ...words import tr
from ..request import SwimRequest

TAKE_NO_NOTICE, KEEP_OUT, CROSS_SQUARE = range(3)
MOST_HOURS = 24.0
SAME_PLACE_M = 15.0
MOST_STAY_MIN = 12 * 60.0


@dataclass(frozen=True, kw_only=True)
class ReachRequest:
    """The water within reach of a swim's first stop by ``back_by``, staying ``stay_min`` minutes somewhere.

    ``swim`` holds the entry as its first stop, the departure, the swimmer, the water and the chart; its clock starts
    with the departure. ``marks`` are the places that numbers are wanted for. ``area`` (4,) is the box of the frame that
    the plan's data cover, beyond which nothing is looked at. ``cell_m`` 0 lets the size of the cells be chosen.
    """

    swim: SwimRequest
    back_by: datetime
    stay_min: float
    area: np.ndarray
    marks: tuple[Mark, ...] = ()
    cell_m: float = 0.0
    channels: int = TAKE_NO_NOTICE

    def __post_init__(self) -> None:
        hours = self.horizon_s / 3600.0
        if not 0.0 < hours <= MOST_HOURS:
            raise SwimPlanError(
                asked=tr("Asked to leave at {depart} and be back by {back_by}").format(
                    depart=self.swim.depart.isoformat(), back_by=self.back_by.isoformat()
                ),
                allowed=tr("Being back comes after leaving, by {most_hours:g} hours at the most").format(
                    most_hours=MOST_HOURS
                ),
                remedy=tr("Correct DEPART or BACK_BY"),
            )
        if not 0.0 <= self.stay_min <= MOST_STAY_MIN:
            raise SwimPlanError(
                asked=tr("Asked for a stay of {stay_min:g} min").format(stay_min=self.stay_min),
                allowed=tr("A stay lasts from 0 to {most_stay_min:g} min").format(most_stay_min=MOST_STAY_MIN),
                remedy=tr("Correct STAY"),
            )

    @property
    def entry(self) -> Mark:
        """Where the swim starts."""
        return self.swim.stops[0]

    @property
    def entry_m(self) -> np.ndarray:
        """The entry (2,) in the plan's frame."""
        return self.swim.stops_m[0]

    @property
    def depart_s(self) -> float:
        """The departure in seconds of the plan."""
        return self.swim.clock.seconds(self.swim.depart)

    @property
    def horizon_s(self) -> float:
        """Seconds from the departure to being back."""
        return self.swim.clock.seconds(self.back_by) - self.depart_s

    @property
    def landings(self) -> list[Mark]:
        """Where one may land: the entry, and the plan's exits, each place once."""
        found = [self.entry]
        for mark in self.swim.exits:
            apart = [float(np.hypot(*(self.place_m(mark) - self.place_m(known)))) for known in found]
            if min(apart) > SAME_PLACE_M:
                found.append(mark)
        return found

    def place_m(self, mark: Mark) -> np.ndarray:
        """A mark (2,) in the plan's frame."""
        return self.swim.frame.to_xy(np.array([[mark.lon, mark.lat]]))[0]
