"""Slacks and maxima of a subordinate place, from those of a reference station and the differences of a table."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ..errors import SwimPlanError
from ..words import tr
from .events import EventStream

LARGEST_RATIO = 10.0


@dataclass(frozen=True, kw_only=True)
class StreamDifferences:
    """What is added to a reference station's events: seconds, later positive, and ratios of the rates.

    Source of the practice: NOAA Tidal Current Tables, Table 2 (time differences of the minimum before flood, the flood,
    the minimum before ebb and the ebb; speed ratios of flood and ebb).
    """

    slack_before_flood_s: float
    flood_s: float
    slack_before_ebb_s: float
    ebb_s: float
    flood_ratio: float
    ebb_ratio: float

    def __post_init__(self) -> None:
        for name in ("slack_before_flood_s", "flood_s", "slack_before_ebb_s", "ebb_s"):
            if not np.isfinite(getattr(self, name)):
                raise SwimPlanError(
                    asked=tr("The difference {name} is missing").format(name=name), allowed=tr("All four are needed")
                )
        for name in ("flood_ratio", "ebb_ratio"):
            if not 0.0 <= getattr(self, name) <= LARGEST_RATIO:
                raise SwimPlanError(
                    asked=tr("The speed ratio {name} is {value}").format(name=name, value=getattr(self, name)),
                    allowed=tr("Ratios lie from 0 to {largest_ratio:g}").format(largest_ratio=LARGEST_RATIO),
                )


def subordinate_stream(
    reference: EventStream, differences: StreamDifferences, *, station: str, flood_set_deg: float, ebb_set_deg: float
) -> EventStream:
    """The subordinate place's events. A slack is that before flood or before ebb by the maximum after it.

    The first or last slack goes by the maximum on its other side. An event that cannot be told is left out, so that the
    stream there is unknown. SwimPlanError where the differences put two events in the wrong order.
    """
    kinds = _kinds(reference.rates_m_s)
    later = np.select(
        [kinds == kind for kind in ("slack before flood", "flood", "slack before ebb", "ebb")],
        [
            differences.slack_before_flood_s,
            differences.flood_s,
            differences.slack_before_ebb_s,
            differences.ebb_s,
        ],
        default=np.nan,
    )
    ratio = np.where(kinds == "flood", differences.flood_ratio, differences.ebb_ratio)
    told = np.isfinite(later)
    times_s = (reference.times_s + later)[told]
    if np.any(np.diff(times_s) <= 0.0):
        first = int(np.flatnonzero(np.diff(times_s) <= 0.0)[0])
        raise SwimPlanError(
            asked=tr("The differences of {station} put its {first} after its {next}").format(
                station=station, first=kinds[told][first], next=kinds[told][first + 1]
            ),
            allowed=tr("Slacks and maxima keep their order"),
            remedy=tr("Correct the minutes and their signs, later positive"),
        )
    return EventStream(
        station=station,
        times_s=times_s,
        rates_m_s=np.where(reference.rates_m_s == 0.0, 0.0, reference.rates_m_s * ratio)[told],
        flood_set_deg=flood_set_deg,
        ebb_set_deg=ebb_set_deg,
    )


def _kinds(rates_m_s: np.ndarray) -> np.ndarray:
    """What each event is: flood, ebb, the slack before either, or nothing that can be told (a maximum without rate)."""
    sign = np.where(np.isfinite(rates_m_s), np.sign(rates_m_s), np.nan)
    before = np.concatenate([[np.nan], sign[:-1]])
    after = np.concatenate([sign[1:], [np.nan]])
    # A neighbour that is a slack itself says nothing.
    toward = np.where(np.abs(after) == 1.0, after, np.where(np.abs(before) == 1.0, -before, np.nan))
    slack = np.where(toward > 0.0, "slack before flood", np.where(toward < 0.0, "slack before ebb", ""))
    running = np.where(sign > 0.0, "flood", np.where(sign < 0.0, "ebb", ""))
    return np.where(sign == 0.0, slack, running)
