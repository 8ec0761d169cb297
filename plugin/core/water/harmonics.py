"""Heights of tide, or anything else that swings with the tide, from harmonic constants."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timezone

import numpy as np
from numpy.typing import ArrayLike

from ..clock import aware
from ..errors import SwimPlanError
from ..quantities import SECONDS_PER_HOUR
from ..words import tr
from .constituents import Basis, standard_names
from .height_curve import SeriesCurve
from .tide import TideTable
from .tide_series import waters_of_series

NOON_1899 = datetime(1899, 12, 31, 12, tzinfo=timezone.utc)
SECONDS_PER_DAY = 24.0 * SECONDS_PER_HOUR
BLOCK = 4096  # times summed at once: the block of times and constituents stays in the processor's cache
SAMPLE_S = 360.0
NEAR_TURN_S = 60.0


@dataclass(frozen=True, kw_only=True)
class TidalSum:
    """Sum of A f cos(V + u - g) over constituents, plus a mean.

    ``names`` (k,), ``amplitudes`` (k,) in the unit of the sum, ``phases_deg`` (k,) Greenwich phase lags
    for times in UTC, ``mean`` in the unit of the sum, ``start`` the aware moment that seconds count from,
    ``latitude_deg`` for the nodal corrections (None: what depends on it is left out). Nodal corrections are taken for
    each day and run straight between days, or all of ``corrected_on``: official yearly tables hold those of one day, as
    a rule the middle of the year, which makes centimetres at the year's ends. Names may be spelt as tables print them.
    SwimPlanError where the arrays do not fit each other, or a name is unknown or stands twice.
    Source: Foreman 1977; agrees with UTide 0.3.1 within 0.1 mm over 144 constituents of up to 1 m.
    """

    names: tuple[str, ...]
    amplitudes: np.ndarray
    phases_deg: np.ndarray
    start: datetime
    mean: float = 0.0
    latitude_deg: float | None = None
    corrected_on: datetime | None = None

    def __post_init__(self) -> None:
        aware(self.start, tr("the start of a tidal sum"))
        if self.corrected_on is not None:
            aware(self.corrected_on, tr("the day of the nodal corrections"))
        object.__setattr__(self, "names", standard_names(self.names))
        for name in ("amplitudes", "phases_deg"):
            array = np.array(getattr(self, name), dtype=float)
            if array.shape != (len(self.names),) or not np.isfinite(array).all():
                raise SwimPlanError(
                    asked=tr("Got {count} constituents and {size} {what}").format(
                        count=len(self.names), size=array.size, what=name.replace("_", " ")
                    ),
                    allowed=tr("Each constituent has one amplitude and one phase, both numbers"),
                    remedy=tr("Fill in what is missing"),
                )
            array.setflags(write=False)
            object.__setattr__(self, name, array)

    def at(self, t_s: ArrayLike) -> np.ndarray:
        """The sum at seconds from the start, any shape."""
        t_s = np.asarray(t_s, dtype=float)
        flat, basis = t_s.ravel(), Basis(names=self.names, latitude_deg=self.latitude_deg)
        start_days = _days(self.start)
        total = np.full(flat.shape, float(self.mean))
        for first in range(0, len(flat) if self.names else 0, BLOCK):
            block = slice(first, first + BLOCK)
            total[block] += self._block(basis, start_days + flat[block] / SECONDS_PER_DAY)
        return total.reshape(t_s.shape)

    def _block(self, basis: Basis, days: np.ndarray) -> np.ndarray:
        size, phase = self._nodal(basis, days)
        turns = basis.cycles(days) + phase - self.phases_deg[:, None] / 360.0
        return self.amplitudes @ (size * np.cos(2.0 * np.pi * turns))

    def _nodal(self, basis: Basis, days: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Factor and phase (cycles) of each constituent at each moment, or at the one day for all."""
        if self.corrected_on is not None:
            return basis.nodal(np.array([_days(self.corrected_on)]))
        known = np.isfinite(days)
        day, which = np.unique(np.floor(np.where(known, days, 0.0)), return_inverse=True)
        ends = np.unique(np.concatenate([day, day + 1.0]))
        here = np.searchsorted(ends, day)[which.ravel()]
        share = days - ends[here]
        factor, phase = (at[:, here] + share * (at[:, here + 1] - at[:, here]) for at in basis.nodal(ends))
        return factor, phase


def _days(moment: datetime) -> float:
    """Days from 1899-12-31 12:00 UTC."""
    return (moment - NOON_1899).total_seconds() / SECONDS_PER_DAY


def table_of_constants(port: str, tide: TidalSum, first_s: float, last_s: float) -> TideTable:
    """The tide of a port given by its constants: heights every six minutes as its curve, turns to the second.

    From ``first_s`` to ``last_s``, seconds from the sum's start; nothing is known outside. SwimPlanError where the
    span has no turn.
    """
    times = np.arange(first_s, last_s + SAMPLE_S, SAMPLE_S)
    curve = SeriesCurve(times_s=times, heights_m=tide.at(times))
    waters = waters_of_series(curve.times_s, curve.heights_m)
    if not len(waters.times_s):
        raise SwimPlanError(
            asked=tr("The constants of {port} make no high or low water").format(port=port),
            allowed=tr("The tide rises and falls by a centimetre or more"),
            remedy=tr("Check the amplitudes and their unit"),
        )
    turns = _to_the_second(tide, waters.times_s)
    return TideTable(port=port, times_s=turns, heights_m=tide.at(turns), is_high=waters.is_high, curve=curve)


def _to_the_second(tide: TidalSum, turns_s: np.ndarray) -> np.ndarray:
    """Turns moved to the top of the parabola through the heights a minute before, at and after them; twice."""
    for _ in range(2):
        before, at, after = tide.at(turns_s + NEAR_TURN_S * np.array([[-1.0], [0.0], [1.0]]))
        bend = before - 2.0 * at + after
        shift = np.where(bend != 0.0, 0.5 * (before - after) / np.where(bend != 0.0, bend, 1.0), 0.0)
        turns_s = turns_s + NEAR_TURN_S * np.clip(shift, -2.0, 2.0)
    return turns_s
