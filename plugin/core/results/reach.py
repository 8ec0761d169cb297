"""The water within reach: how soon each place is reached, and how late it may be left."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

import numpy as np

from ..chart.marks import Mark
from ..clock import later
from ..geodesy import LocalFrame
from ..words import marked, spoken
from .plain_values import iso_time, rounded

STEERS = marked(
    "The times are those of a swimmer who steers anew all the time for the fastest track; on one compass heading a leg "
    "it takes longer: the marks' one-heading numbers say by how much."
)


@dataclass(frozen=True, kw_only=True)
class Numbers:
    """Minutes after the departure at which a mark is reached at the earliest and must be left at the latest, None where
    it cannot be; ``exit`` where one lands then, ``reason`` why a number is missing."""

    out_min: float | None
    latest_min: float | None
    exit: str = ""
    reason: str = ""

    @property
    def stay_min(self) -> float | None:
        """Minutes one could stay, None where one cannot be there and home in time."""
        if self.out_min is None or self.latest_min is None or self.latest_min < self.out_min:
            return None
        return self.latest_min - self.out_min


@dataclass(frozen=True, kw_only=True)
class MarkReach:
    """A mark's numbers, by the solver and on one compass heading a leg."""

    mark: Mark
    solver: Numbers
    one_heading: Numbers


@dataclass(frozen=True, kw_only=True, eq=False)
class Reach:
    """The reach of an entry over a grid of square cells, row 0 south.

    ``low_m`` is the middle of the south-west cell in the frame. ``out_min`` and ``home_by_min`` (rows, columns) are
    minutes after the departure, ``horizon_min`` being that of ``back_by``; NaN where not reached, not home from in
    time, or not known. ``unknown_cells`` are those at which the stream was not known, ``extrapolated_cells`` those at
    which it was extrapolated. ``error_mean_min`` and ``error_most_min`` (for 99 % of the cells) compare with a grid of
    cells twice as large.
    """

    entry: Mark
    exits: tuple[str, ...]
    depart: datetime
    back_by: datetime
    horizon_min: float
    stay_min: float
    swimmer: str
    pace_made_good_m_s: float
    zone: str
    frame: LocalFrame
    low_m: np.ndarray
    cell_m: float
    cell_chosen: bool
    out_min: np.ndarray
    home_by_min: np.ndarray
    unknown_cells: int
    extrapolated_cells: int
    error_mean_min: float | None
    error_most_min: float | None
    marks: tuple[MarkReach, ...]
    warnings: tuple[str, ...]

    @property
    def possible_stay_min(self) -> np.ndarray:
        """Minutes one could stay in each cell, NaN where one cannot be there and home in time."""
        with np.errstate(invalid="ignore"):
            stay = self.home_by_min - self.out_min
            return np.where(stay >= 0.0, stay, np.nan)

    @property
    def stay_area_km2(self) -> float:
        """The water in which one can stay as long as asked and be home in time, square kilometres."""
        with np.errstate(invalid="ignore"):
            return float(np.sum(self.possible_stay_min >= self.stay_min)) * self.cell_m**2 / 1e6

    def moment(self, minutes: float | None) -> datetime | None:
        """The moment so many minutes after the departure; None as it is."""
        return None if minutes is None else later(self.depart, timedelta(minutes=minutes))


def reach_dict(reach: Reach, *, version: str) -> dict[str, object]:
    """The reach as JSON's own kinds of value; None where something is not known or cannot be."""
    rows, columns = reach.out_min.shape
    return {
        "tideleg": version,
        "entry": _place(reach.entry),
        "depart": iso_time(reach.depart, where="depart"),
        "back_by": iso_time(reach.back_by, where="back_by"),
        "stay_min": rounded(reach.stay_min),
        "zone": reach.zone,
        "swimmer": reach.swimmer,
        "made_good_m_s": rounded(reach.pace_made_good_m_s),
        "exits": list(reach.exits),
        "grid": {
            "cell_m": rounded(reach.cell_m),
            "cell_chosen": reach.cell_chosen,
            "rows": rows,
            "columns": columns,
            "crs": reach.frame.proj_text,
        },
        "expected_error": {"mean_min": rounded(reach.error_mean_min), "most_min": rounded(reach.error_most_min)},
        "cells": {
            "reached": int(np.isfinite(reach.out_min).sum()),
            "home_from": int(np.isfinite(reach.home_by_min).sum()),
            "stream_unknown": reach.unknown_cells,
            "stream_extrapolated": reach.extrapolated_cells,
        },
        "stay_area_km2": rounded(reach.stay_area_km2),
        "marks": [_mark(reach, one) for one in reach.marks],
        "method": spoken(STEERS),
        "warnings": list(reach.warnings),
    }


def _place(mark: Mark) -> dict[str, object]:
    return {"name": mark.name, "lon": round(mark.lon, 7), "lat": round(mark.lat, 7)}


def _mark(reach: Reach, one: MarkReach) -> dict[str, object]:
    return {
        **_place(one.mark),
        "kind": one.mark.kind,
        "solver": _numbers(reach, one.solver),
        "one_heading": _numbers(reach, one.one_heading),
    }


def _numbers(reach: Reach, numbers: Numbers) -> dict[str, object]:
    return {
        "out_min": rounded(numbers.out_min),
        "arrive": iso_time(reach.moment(numbers.out_min), where="arrive"),
        "latest_leave_min": rounded(numbers.latest_min),
        "latest_leave": iso_time(reach.moment(numbers.latest_min), where="latest_leave"),
        "stay_min": rounded(numbers.stay_min),
        "exit": numbers.exit or None,
        "reason": numbers.reason or None,
    }
