"""The shore contact's sheet of a swim: the plan with its turn back, and where a float drifts."""

from __future__ import annotations

from collections.abc import Callable

from ..results.shore_sheet import ContactFacts, Landing, ShoreSheet
from .confidence import Asked, how_sure
from .drift import Wind
from .plan_swim import plan_swim
from .request import SwimRequest
from .turn_back.turn_back import turn_back, with_turn_back


def shore_sheet(
    request: SwimRequest,
    facts: ContactFacts,
    wind: Wind | None,
    *,
    members: int,
    progress: Callable[[float], None] | None = None,
    is_cancelled: Callable[[], bool] = bool,
) -> ShoreSheet:
    """Plan the swim, its turn back and the drift of so many members, seeded; StoppedError when stopped."""
    tell = progress or (lambda share: None)
    swim = plan_swim(request, is_cancelled=is_cancelled)
    found = turn_back(request, swim, progress=lambda share: tell(0.5 * share), is_cancelled=is_cancelled)
    sure = how_sure(
        request,
        Asked(members=members, wind=wind),
        progress=lambda share: tell(0.5 + 0.5 * share),
        is_cancelled=is_cancelled,
    )
    return ShoreSheet(
        swim=with_turn_back(swim, found),
        facts=facts,
        exits=tuple(Landing(name=mark.name, lon=mark.lon, lat=mark.lat) for mark in request.exits),
        drift=sure.drift,
        wind=sure.wind,
    )
