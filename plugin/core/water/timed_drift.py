"""Timed drifts: what the stream did between two places and times, and what that says of a station's table that day."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..geodesy import check_position, geodesic_leg
from ..quantities import SECONDS_PER_HOUR, SECONDS_PER_MINUTE, knots_from_m_s, m_s_from_knots
from ..words import tr
from .stream import StationStream

FASTEST_M_S = m_s_from_knots(15.0)  # as in the plan: faster is a slip
SHORTEST_S, LONGEST_S = 2.0 * SECONDS_PER_MINUTE, 3.0 * SECONDS_PER_HOUR
FIX_ERROR_M = 7.0  # two positions, each within about 5 m (civil GPS, common practice)
LEAST_RATE_M_S = 0.05  # a table with less stream than this has no rate to be a factor of
LEAST_FACTOR, LARGEST_FACTOR = 0.2, 5.0
LARGEST_MISFIT = 0.75  # share of the drifts' squares that is left over: one drift may set 60 degrees off the table
LONGEST_SHIFT_S = 2.0 * SECONDS_PER_HOUR
SURE_WITHIN_S = 15.0 * SECONDS_PER_MINUTE
LEAST_ERROR_M_S = 0.03
SAMPLES = 60  # moments of a drift at which the table is asked


@dataclass(frozen=True, kw_only=True)
class TimedDrift:
    """A drift from place to place: seconds from the plan's start, degrees. SwimPlanError for one that cannot be."""

    start_s: float
    end_s: float
    lon: float
    lat: float
    end_lon: float
    end_lat: float

    def __post_init__(self) -> None:
        check_position(self.lon, self.lat, tr("The drift's start"))
        check_position(self.end_lon, self.end_lat, tr("The drift's end"))
        if not SHORTEST_S <= self.duration_s <= LONGEST_S:
            raise SwimPlanError(
                asked=tr("A drift lasts {minutes:.1f} minutes").format(minutes=self.duration_s / SECONDS_PER_MINUTE),
                allowed=tr("Drifts of 2 minutes to 3 hours say what the stream does"),
                remedy=tr("Check both times"),
            )
        if self.rate_m_s > FASTEST_M_S:
            raise SwimPlanError(
                asked=tr("A drift makes {rate_kn:.1f} kn").format(rate_kn=knots_from_m_s(self.rate_m_s)),
                allowed=tr("Streams up to 15 kn are planned in"),
                remedy=tr("Check both places and times"),
            )

    @property
    def duration_s(self) -> float:
        """Seconds from start to end."""
        return self.end_s - self.start_s

    @property
    def set_deg(self) -> float:
        """Where it drifted to, true, of the shortest line on WGS84; 0 where it did not move."""
        return geodesic_leg(self.lon, self.lat, self.end_lon, self.end_lat)[1]

    @property
    def rate_m_s(self) -> float:
        """How fast it drifted."""
        return geodesic_leg(self.lon, self.lat, self.end_lon, self.end_lat)[0] / self.duration_s

    @property
    def error_m_s(self) -> float:
        """What two fixes may be off, as a rate."""
        return FIX_ERROR_M / self.duration_s


@dataclass(frozen=True, kw_only=True)
class DayCorrection:
    """What drifts say of a table that day: rates times ``rate_factor``, clock ``shift_s`` later.

    ``shift_known`` is False where the drifts do not tell the shift, which is then nothing; ``misfit_m_s`` is the root
    mean square of what is left over.
    """

    rate_factor: float
    shift_s: float
    shift_known: bool
    misfit_m_s: float


def day_correction(drifts: tuple[TimedDrift, ...], stream: StationStream) -> DayCorrection:
    """The factor and the shift (later positive) with which the station's stream fits the drifts best.

    Least squares on the vectors, the table's mean over each drift beside the drift's own. One drift gives the factor
    alone; several give the shift too if they tell it to a quarter of an hour. SwimPlanError where the table does
    not know the time, has hardly any stream then, or does not look like the drifts at all.
    """
    if not drifts:
        raise SwimPlanError(
            asked=tr("There is no drift to correct by"), remedy=tr("Time one: two places and two times")
        )
    seen = np.array([drift.rate_m_s * np.exp(1j * np.radians(drift.set_deg)) for drift in drifts])
    told = _means(drifts, stream, 0.0)
    if not np.all(np.isfinite(told)):
        raise SwimPlanError(
            asked=tr("The station's table does not know the stream during drift {number}").format(
                number=int(np.argmax(~np.isfinite(told))) + 1
            ),
            allowed=tr("A drift is compared with what the table says for the same time"),
            remedy=tr("Extend the tides or the table to that day"),
        )
    shift_s = _best_shift(drifts, stream, seen) if len(drifts) > 1 else float("nan")
    shift_known = np.isfinite(shift_s)
    told = _means(drifts, stream, shift_s) if shift_known else told
    factor = _factor(seen, told)
    left = np.abs(seen - factor * told)
    _refuse_absurd(seen, told, factor, left)
    return DayCorrection(
        rate_factor=factor,
        shift_s=float(shift_s) if shift_known else 0.0,
        shift_known=bool(shift_known),
        misfit_m_s=float(np.sqrt(np.mean(left**2))),
    )


def _means(drifts: tuple[TimedDrift, ...], stream: StationStream, shifts_s: ArrayLike) -> np.ndarray:
    """The table's mean vectors over each drift as north + 1j east, its clock moved later by the shifts (..., n)."""
    share = (np.arange(SAMPLES) + 0.5) / SAMPLES
    times = np.array([drift.start_s + drift.duration_s * share for drift in drifts])
    sample = stream.at(times - np.asarray(shifts_s, dtype=float)[..., None, None])
    return np.mean(sample.north_m_s + 1j * sample.east_m_s, axis=-1)


def _factor(seen: np.ndarray, told: np.ndarray) -> float:
    square = float(np.sum(np.abs(told) ** 2))
    return float(np.sum((seen * told.conj()).real)) / square if square > 0.0 else float("nan")


def _best_shift(drifts: tuple[TimedDrift, ...], stream: StationStream, seen: np.ndarray) -> float:
    """The shift with the least left over, to a second or so; NaN where the drifts do not tell it."""
    step = SECONDS_PER_MINUTE
    shifts = np.arange(-LONGEST_SHIFT_S, LONGEST_SHIFT_S + step, step)
    costs = np.array([_cost(seen, told) for told in _means(drifts, stream, shifts)])
    if not np.isfinite(costs).any():
        return float("nan")
    best = int(np.nanargmin(costs))
    shift = shifts[best]
    if 0 < best < len(shifts) - 1 and np.all(np.isfinite(costs[best - 1 : best + 2])):
        before, here, after = costs[best - 1 : best + 2]
        bend = before - 2.0 * here + after
        shift += step * 0.5 * (before - after) / bend if bend > 0.0 else 0.0
    return float(shift) if _tells(drifts, stream, seen, shift) else float("nan")


def _cost(seen: np.ndarray, told: np.ndarray) -> float:
    factor = max(_factor(seen, told), 0.0)
    return float(np.sum(np.abs(seen - factor * told) ** 2))


def _tells(drifts: tuple[TimedDrift, ...], stream: StationStream, seen: np.ndarray, shift_s: float) -> bool:
    """Whether a shift's error, from what is left over and the fixes, is below a quarter of an hour."""
    around = 5.0 * SECONDS_PER_MINUTE
    told = _means(drifts, stream, shift_s)
    later, earlier = _means(drifts, stream, [shift_s + around, shift_s - around])
    change = (later - earlier) / (2.0 * around)
    factor = _factor(seen, told)
    if not np.all(np.isfinite(change)) or not factor > 0.0:
        return False
    # What a shift changes beyond what a factor could change as well.
    beyond = change - told * np.sum((change * told.conj()).real) / np.sum(np.abs(told) ** 2)
    lever = factor * float(np.sqrt(np.sum(np.abs(beyond) ** 2)))
    left = float(np.sqrt(np.mean(np.abs(seen - factor * told) ** 2)))
    error = max(left, LEAST_ERROR_M_S, max(drift.error_m_s for drift in drifts))
    inside = abs(shift_s) < LONGEST_SHIFT_S
    return inside and lever * SURE_WITHIN_S >= error


def _refuse_absurd(seen: np.ndarray, told: np.ndarray, factor: float, left: np.ndarray) -> None:
    remedy = tr("Check places and times, or time another drift when the stream runs strongly")
    if np.max(np.abs(told)) < LEAST_RATE_M_S:
        raise SwimPlanError(
            asked=tr("The station's table has hardly any stream during the drifts"),
            allowed=tr("A factor needs a table that runs {rate_kn:.1f} kn or more").format(
                rate_kn=knots_from_m_s(LEAST_RATE_M_S)
            ),
            remedy=remedy,
        )
    if np.sum(left**2) > LARGEST_MISFIT * np.sum(np.abs(seen) ** 2) or not LEAST_FACTOR <= factor <= LARGEST_FACTOR:
        raise SwimPlanError(
            asked=tr("The drifts ran {seen}, the station's table {told}").format(seen=_words(seen), told=_words(told)),
            allowed=tr(
                "A day's correction keeps the table's set within some 60 degrees and its rate within a fifth "
                "and five times"
            ),
            remedy=remedy,
        )


def _words(vectors: np.ndarray) -> str:
    return ", ".join(
        tr("{set_deg:03d} at {rate_kn:.1f} kn").format(
            set_deg=round(float(np.degrees(np.angle(vector)))) % 360, rate_kn=knots_from_m_s(abs(vector))
        )
        for vector in vectors
    )
