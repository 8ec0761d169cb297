"""The shore contact's sheet of a swim: the plan with its turn back, and where a float drifts."""

from __future__ import annotations

from collections.abc import Callable

from ..results.shore_sheet import ContactFacts, Landing, ShoreSheet
from .confidence import Asked, Planned
from .doubts import draw_members
from .drift import Wind
from .drift_areas import drift_areas, wind_words
from .plan_swim import plan_swim
from .request import SwimRequest
from .turn_back.turn_back import turn_back, with_turn_back


def shore_sheet(
    request: SwimRequest,
    facts: ContactFacts,
    wind: Wind | None,
    *,
    progress: Callable[[float], None] | None = None,
    is_cancelled: Callable[[], bool] = bool,
) -> ShoreSheet:
    """Plan the swim, its turn back and the drift that ``how_sure`` finds; StoppedError when stopped."""
    tell = progress or (lambda share: None)
    swim = plan_swim(request, is_cancelled=is_cancelled)
    found = turn_back(request, swim, progress=lambda share: tell(0.5 * share), is_cancelled=is_cancelled)
    asked, planned = Asked(wind=wind), Planned.of(request, is_cancelled)
    areas = drift_areas(
        request,
        planned.swum,
        planned.arrive_s,
        planned.leave_s,
        draw_members(request.swimmer, asked.doubts, asked.members, asked.seed),
        wind,
        [],  # its warnings stand on the sheet: an area that is not known, a wind that is not given
        progress=lambda share: tell(0.5 + 0.5 * share),
        is_cancelled=is_cancelled,
    )
    return ShoreSheet(
        swim=with_turn_back(swim, found),
        facts=facts,
        exits=tuple(Landing(name=mark.name, lon=mark.lon, lat=mark.lat) for mark in request.exits),
        drift=areas,
        wind=wind_words(wind),
        members=len(request.swimmer.members) or None,
    )
