"""Streams from harmonic constants of their east and north parts."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..words import tr
from .stream import KNOWN, UNKNOWN, StreamSample, unknown_sample

if TYPE_CHECKING:
    from .harmonics import TidalSum

MEAN = "Z0"
GRID_STEP_S = 60.0  # linear between minutes: within 0.02 % of an eighth-diurnal constituent's amplitude, less of slower
CONSTANTS = ("u_amplitude_m_s", "u_phase_deg", "v_amplitude_m_s", "v_phase_deg")


@dataclass(frozen=True, kw_only=True)
class HarmonicStream:
    """Constants of one station: amplitudes (n,) in m/s and Greenwich phase lags (n,) in degrees, by constituent.

    ``u`` is towards east, ``v`` towards north. The constituent Z0 is a mean. ``start`` is the plan's start, ``lat_deg``
    the station's latitude for the nodal corrections. A constant that is missing (NaN) leaves the stream unknown.
    """

    station: str
    constituents: tuple[str, ...]
    u_amplitude_m_s: np.ndarray
    u_phase_deg: np.ndarray
    v_amplitude_m_s: np.ndarray
    v_phase_deg: np.ndarray
    start: datetime
    lat_deg: float
    _sums: tuple[TidalSum, TidalSum] | None = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        for name in CONSTANTS:
            array = np.array(getattr(self, name), dtype=float)
            if array.shape != (len(self.constituents),):
                raise SwimPlanError(
                    asked=tr("Station {station} has {count} constituents and {size} {name}").format(
                        station=self.station, count=len(self.constituents), size=array.size, name=name
                    ),
                    allowed=tr("Each constituent has amplitude and phase of both parts"),
                )
            array.setflags(write=False)
            object.__setattr__(self, name, array)
        if self.constituents.count(MEAN) > 1:
            raise SwimPlanError(
                asked=tr("The stream constants of {station} have {mean} twice").format(station=self.station, mean=MEAN),
                remedy=tr("Delete one of them"),
            )
        whole = self.constituents and all(np.isfinite(getattr(self, name)).all() for name in CONSTANTS)
        object.__setattr__(self, "_sums", (self._sum("u"), self._sum("v")) if whole else None)

    def at(self, t_s: ArrayLike) -> StreamSample:
        """Stream at times in seconds from the plan's start (any shape)."""
        shape, flat = np.shape(t_s), np.asarray(t_s, dtype=float).ravel()
        finite = np.isfinite(flat)
        if self._sums is None or not finite.any():
            return unknown_sample(shape)
        asked = flat[finite]
        grid = np.arange(asked.min(), asked.max() + 2.0 * GRID_STEP_S, GRID_STEP_S)
        parts = np.full((2, flat.size), np.nan)
        for part, tidal_sum in zip(parts, self._sums):
            # Far more times than minutes between the first and the last: sum the minutes.
            dense = grid.size < asked.size
            part[finite] = np.interp(asked, grid, tidal_sum.at(grid)) if dense else tidal_sum.at(asked)
        status = np.where(finite, KNOWN, UNKNOWN).astype(np.int8)
        east, north, status = (array.reshape(shape) for array in (*parts, status))
        return StreamSample(east_m_s=east, north_m_s=north, status=status)

    def _sum(self, part: str) -> TidalSum:
        # Its table of constituents is read when a plan has constants, not before.
        from .constituents import standard_names
        from .harmonics import TidalSum

        amplitude, phase_deg = (
            getattr(self, f"{part}_amplitude_m_s"),
            getattr(self, f"{part}_phase_deg"),
        )
        turning = np.array([name != MEAN for name in self.constituents])
        return TidalSum(
            names=standard_names([name for name in self.constituents if name != MEAN]),
            amplitudes=amplitude[turning],
            phases_deg=phase_deg[turning],
            mean=float(np.sum(amplitude[~turning] * np.cos(np.radians(phase_deg[~turning])))),
            start=self.start,
            latitude_deg=self.lat_deg,
        )
