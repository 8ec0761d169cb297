"""Why a departure cannot be swum, in words."""

from __future__ import annotations

import numpy as np

from ...words import tr
from ..request import SwimRequest
from .departures import DeparturesSwum
from .limits import LIMITS


def limit_words(request: SwimRequest, swum: DeparturesSwum, row: int) -> str:
    """Why a departure is stopped: which leg, which limit, what it would take; empty where nothing stops it."""
    limit, leg = LIMITS[int(swum.limit[row])], int(swum.leg[row])
    if not limit:
        return ""
    where = tr("leg {leg} to {name}").format(leg=leg, name=request.stops[leg].name) if leg else tr("the swim")
    item = swum.names[int(swum.item[row])] if swum.item[row] >= 0 else ""
    return _WORDS[limit](request, swum, row, where, item)


def _stream(request: SwimRequest, swum: DeparturesSwum, row: int, where: str, item: str) -> str:
    pace, across, ahead = request.swimmer.made_good_m_s, swum.spare_across_m_s[row], swum.least_ahead_m_s[row]
    if np.isfinite(across) and across <= 0.0:
        return tr("{where}: the stream across it reaches {across:.2f} m/s, you make {pace:.2f} m/s").format(
            where=where, across=pace - across, pace=pace
        )
    if np.isfinite(ahead) and ahead <= 0.0:
        return tr("{where}: the stream pushes you back, {ahead:.2f} m/s at the worst").format(where=where, ahead=-ahead)
    return tr("{where}: too little way is made against the stream").format(where=where)


def _dark(request: SwimRequest, swum: DeparturesSwum, row: int, where: str, item: str) -> str:
    dusk = request.clock.moment(swum.dusk_s[row])
    arrive = swum.arrive_s[row, int(swum.leg[row])]
    if dusk is not None and arrive > swum.dusk_s[row]:
        return tr("{where} would end after civil dusk at {dusk:%H:%M}").format(where=where, dusk=dusk)
    return (
        tr("{where} would begin before civil dawn").format(where=where)
        if dusk is not None
        else tr("{where} would be swum in the dark").format(where=where)
    )


def _hours(request: SwimRequest, swum: DeparturesSwum, row: int, where: str, item: str) -> str:
    hours = swum.total_s[row] / 3600.0
    return tr("the swim takes {hours:.1f} h, over the {max_hours:g} h of {name}").format(
        hours=hours, max_hours=request.swimmer.max_hours, name=request.swimmer.name
    )


_WORDS = {
    "range": lambda request, *_: tr("the route is longer than the {range_km:.1f} km of {name}").format(
        range_km=request.swimmer.range_m / 1000.0, name=request.swimmer.name
    ),
    "land": lambda request, swum, row, where, item: tr("{where} runs over {item}").format(where=where, item=item),
    "closed": lambda request, swum, row, where, item: tr("{where} enters {item}, which nobody may").format(
        where=where, item=item
    ),
    "unknown": lambda request, swum, row, where, item: tr("{where}: the stream is not known").format(where=where),
    "stream": _stream,
    "ferry": lambda request, swum, row, where, item: tr("{where} meets a sailing in {item}").format(
        where=where, item=item
    ),
    "dark": _dark,
    "hours": _hours,
    "depth": lambda request, swum, row, where, item: tr("{item} is too deep or too shoal while you are there").format(
        item=item
    ),
}
