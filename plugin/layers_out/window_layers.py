"""Windows of departures and all departures looked at, as tables."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from qgis.core import QgsWkbTypes

from ..core.results.windows import DepartureWindow, WindowsFound
from ..core.solve.request import SwimRequest
from ..core.solve.windows.departures import DeparturesSwum
from ..core.solve.windows.limits import LIMITS
from ..core.solve.windows.words import limit_words
from .plan_layers import OutputLayer, Row, both_times

COPIED = (
    "open_min",
    "best_min",
    "worst_min",
    "swim_min",
    "water_m",
    "departures",
    "spare_dusk_min",
    "spare_hours_min",
    "spare_range_m",
    "spare_ahead_m_s",
    "spare_across_m_s",
    "tide_range_m",
    "hours_from_hw",
)
WINDOW_COLUMNS = (
    ("day", "text"),
    ("day_rank", "whole"),
    ("first", "time"),
    ("last", "time"),
    ("best", "time"),
    ("ends", "time"),
    ("first_local", "text"),
    ("last_local", "text"),
    ("best_local", "text"),
    ("ends_local", "text"),
    *((name, "whole" if name == "departures" else "number") for name in COPIED),
    ("opens_by", "text"),
    ("opens", "text"),
    ("closes_by", "text"),
    ("closes", "text"),
    ("stream_extrapolated", "whole"),
)


def _window_rows(found: WindowsFound) -> Iterator[Row]:
    """The windows in order of time; ``day_rank`` 1 is the day with the longest window."""
    ranks = {day.day: day.rank for day in found.days}
    for window in found.windows:
        yield None, _window_values(window, ranks[window.first.date()])


def _window_values(window: DepartureWindow, rank: int) -> dict[str, object]:
    return {
        "day": window.first.date().isoformat(),
        "day_rank": rank,
        **{name: getattr(window, name) for name in COPIED},
        "opens_by": window.opens.limit,
        "opens": window.opens.words,
        "closes_by": window.closes.limit,
        "closes": window.closes.words,
        "stream_extrapolated": int(window.extrapolated),
        **both_times(first=window.first, last=window.last, best=window.best, ends=window.ends),
    }


DEPARTURE_COLUMNS = (
    ("depart", "time"),
    ("arrive", "time"),
    ("depart_local", "text"),
    ("arrive_local", "text"),
    ("feasible", "whole"),
    ("limit", "text"),
    ("leg", "whole"),
    ("why", "text"),
    ("total_min", "number"),
    ("swim_min", "number"),
    ("water_m", "number"),
    ("spare_dusk_min", "number"),
    ("spare_hours_min", "number"),
    ("spare_ahead_m_s", "number"),
    ("spare_across_m_s", "number"),
)


@dataclass(frozen=True, kw_only=True)
class Departures:
    """What the table of departures is made from."""

    request: SwimRequest
    swum: DeparturesSwum


def _departure_rows(made: Departures) -> Iterator[Row]:
    request, swum = made.request, made.swum
    for row in range(len(swum.depart_s)):
        total_min = swum.total_s[row] / 60.0
        numbers = {
            "total_min": total_min,
            "swim_min": swum.swim_s[row] / 60.0,
            "water_m": swum.swim_s[row] * request.swimmer.pace_m_s,
            "spare_dusk_min": (swum.dusk_s[row] - swum.arrive_s[row, -1]) / 60.0,
            "spare_hours_min": 60.0 * request.swimmer.max_hours - total_min,
            "spare_ahead_m_s": swum.least_ahead_m_s[row],
            "spare_across_m_s": swum.spare_across_m_s[row],
        }
        moment = request.clock.moment
        yield (
            None,
            {
                "feasible": int(swum.feasible[row]),
                "limit": LIMITS[int(swum.limit[row])],
                "leg": int(swum.leg[row]) or None,
                "why": limit_words(request, swum, row),
                **{name: float(value) if np.isfinite(value) else None for name, value in numbers.items()},
                **both_times(depart=moment(swum.depart_s[row]), arrive=moment(swum.arrive_s[row, -1])),
            },
        )


NO_GEOMETRY = QgsWkbTypes.Type.NoGeometry
WINDOWS = OutputLayer(parameter="WINDOWS", wkb_type=NO_GEOMETRY, columns=WINDOW_COLUMNS, rows=_window_rows)
DEPARTURES = OutputLayer(parameter="DEPARTURES", wkb_type=NO_GEOMETRY, columns=DEPARTURE_COLUMNS, rows=_departure_rows)


def window_sentences(found: WindowsFound) -> list[str]:
    """The days by their rank, and the windows, in words."""
    from qgis.PyQt.QtCore import QCoreApplication

    tr = QCoreApplication.translate
    if not found.windows:
        words = ", ".join(f"{limit} {count}" for limit, count in found.limits.items())
        return [tr("Tideleg", "No departure can be swum. Stopped by: {}").format(words)]
    day_words = tr("Tideleg", "{}. {}: longest window {} min, best departure {}, {} min")
    window_words = tr("Tideleg", "{} {}-{}, best {} ({} min). Before: {}. After: {}")
    days = [
        day_words.format(day.rank, day.day, f"{day.longest_min:.0f}", f"{day.best:%H:%M}", f"{day.best_min:.0f}")
        for day in found.days
    ]
    windows = [
        window_words.format(
            window.first.date(),
            f"{window.first:%H:%M}",
            f"{window.last:%H:%M}",
            f"{window.best:%H:%M}",
            f"{window.best_min:.0f}",
            window.opens.words,
            window.closes.words,
        )
        for window in found.windows
    ]
    return days + windows
