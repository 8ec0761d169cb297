"""By when to be home where nobody says: the first of the limits that a planned swim has."""

from __future__ import annotations

import math
from datetime import datetime, timedelta

from ..core.clock import elapsed, later
from ..core.solve.request import SwimRequest
from ..core.solve.turn_back.hard_stops import hard_stops_of
from ..words import tr

WITHOUT_A_SWIM = timedelta(hours=3)
NONE = timedelta()


def home_limit(request: SwimRequest | None, depart: datetime) -> tuple[datetime, str]:
    """The moment, in whole minutes, and why it is that: dusk, the swimmer's hours or the plan's time to be back, the
    first of them after the departure; without a planned swim a few hours after the departure."""
    stops = [] if request is None else hard_stops_of(request, math.nan)
    stops = [one for one in stops if elapsed(depart, one.moment) > NONE]
    first = min(stops, key=lambda one: one.moment.timestamp(), default=None)
    if first is None:
        return later(depart, WITHOUT_A_SWIM), tr("three hours after leaving, since no swim is planned")
    why = {
        "dusk": tr("dusk, with the plan's minutes before sunset"),
        "hours": tr("the swimmer's hours in the water"),
        "back_by": tr("the plan's time to be back"),
    }
    return first.moment.replace(second=0, microsecond=0), why[first.name]
