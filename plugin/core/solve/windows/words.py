"""Why a departure cannot be swum, in words."""

from __future__ import annotations

import numpy as np

from ..request import SwimRequest
from .departures import DeparturesSwum
from .limits import LIMITS


def limit_words(request: SwimRequest, swum: DeparturesSwum, row: int) -> str:
    """Why a departure is stopped: which leg, which limit, what it would take; empty where nothing stops it."""
    limit, leg = LIMITS[int(swum.limit[row])], int(swum.leg[row])
    if not limit:
        return ""
    where = f"leg {leg} to {request.stops[leg].name}" if leg else "the swim"
    item = swum.names[int(swum.item[row])] if swum.item[row] >= 0 else ""
    return _WORDS[limit](request, swum, row, where, item)


def _stream(request: SwimRequest, swum: DeparturesSwum, row: int, where: str, item: str) -> str:
    pace, across, ahead = request.swimmer.made_good_m_s, swum.spare_across_m_s[row], swum.least_ahead_m_s[row]
    if np.isfinite(across) and across <= 0.0:
        return f"{where}: the stream across it reaches {pace - across:.2f} m/s, you make {pace:.2f} m/s"
    if np.isfinite(ahead) and ahead <= 0.0:
        return f"{where}: the stream pushes you back, {-ahead:.2f} m/s at the worst"
    return f"{where}: too little way is made against the stream"


def _dark(request: SwimRequest, swum: DeparturesSwum, row: int, where: str, item: str) -> str:
    dusk = request.clock.moment(swum.dusk_s[row])
    arrive = swum.arrive_s[row, int(swum.leg[row])]
    if dusk is not None and arrive > swum.dusk_s[row]:
        return f"{where} would end after civil dusk at {dusk:%H:%M}"
    return f"{where} would begin before civil dawn" if dusk is not None else f"{where} would be swum in the dark"


def _hours(request: SwimRequest, swum: DeparturesSwum, row: int, where: str, item: str) -> str:
    hours = swum.total_s[row] / 3600.0
    return f"the swim takes {hours:.1f} h, over the {request.swimmer.max_hours:g} h of {request.swimmer.name}"


_WORDS = {
    "range": lambda request, *_: (
        f"the route is longer than the {request.swimmer.range_m / 1000.0:.1f} km of {request.swimmer.name}"
    ),
    "land": lambda request, swum, row, where, item: f"{where} runs over {item}",
    "closed": lambda request, swum, row, where, item: f"{where} enters {item}, which nobody may",
    "unknown": lambda request, swum, row, where, item: f"{where}: the stream is not known",
    "stream": _stream,
    "ferry": lambda request, swum, row, where, item: f"{where} meets a sailing in {item}",
    "dark": _dark,
    "hours": _hours,
    "depth": lambda request, swum, row, where, item: f"{item} is too deep or too shoal while you are there",
}
