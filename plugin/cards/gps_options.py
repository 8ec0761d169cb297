"""How the swim is written for a GPS: the names it can show, points on the way, and whether the marks are left out."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from ..core.errors import SwimPlanError
from ..words import tr

SHORTEST_NAME, LONGEST_NAME = 6, 10  # letters that small handhelds show; common practice, no source
LEAST_EVERY_M = (
    25.0  # a receiver is good to some 5 m, and a swimmer looks at it now and then; common practice, no source
)


@dataclass(frozen=True, kw_only=True)
class GpsOptions:
    """What a receiver can take.

    ``name_length``: letters a name may have, 6 to 10, None for any; ``upper_case``: capitals alone. With either, names
    are of plain letters, figures, blanks and hyphens. ``every_m``: a waypoint every so many metres on the track, 25 at
    the least, None for none. ``private`` leaves the marks out. SwimPlanError for what is not allowed.
    """

    name_length: int | None = None
    upper_case: bool = False
    every_m: float | None = None
    private: bool = False

    def __post_init__(self) -> None:
        length, every_m = self.name_length, self.every_m
        if length is not None and not SHORTEST_NAME <= length <= LONGEST_NAME:
            raise SwimPlanError(
                asked=tr("Asked for names of {} letters for the GPS").format(length),
                allowed=tr("Names have {} to {} letters, or any number").format(SHORTEST_NAME, LONGEST_NAME),
                remedy=tr("Choose a number in between, or leave it empty"),
            )
        if every_m is not None and not (math.isfinite(every_m) and every_m >= LEAST_EVERY_M):
            raise SwimPlanError(
                asked=tr("Asked for a point on the way every {} m").format(f"{every_m:g}"),
                allowed=tr("They are {} m apart at the least").format(f"{LEAST_EVERY_M:g}"),
                remedy=tr("Choose a greater distance, or leave it empty for none"),
            )

    @property
    def plain_names(self) -> bool:
        """Whether names are of plain letters alone."""
        return self.upper_case or self.name_length is not None


def options_of(settings: Mapping[str, str], *, private: bool = False) -> GpsOptions:
    """What the plan's settings say of the GPS; 0 and empty mean no limit, and none. SwimPlanError as above."""
    return GpsOptions(
        name_length=int(settings.get("gps_name_length") or 0) or None,
        upper_case=bool(int(settings.get("gps_upper_case") or 0)),
        every_m=float(settings.get("gps_every_m") or 0) or None,
        private=private,
    )
