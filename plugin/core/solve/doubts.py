"""How far a plan's numbers may be off, and members drawn from that: one pace, one path and one water each."""

from __future__ import annotations

from dataclasses import dataclass, fields

import numpy as np

from ..errors import SwimPlanError
from ..swimmer import Swimmer
from ..words import tr

SEED = 20270605  # any number does; a fixed one prints the same plan twice
FEWEST, MOST = 10, 20_000
PLUS_MINUS_SD = 2.0  # "+-x" is read as two standard deviations of a normal spread: 95 % of days lie within it
FARTHEST_SD = 3.0  # farther out a draw is made again


@dataclass(frozen=True, kw_only=True)
class Doubts:
    """How far off the plan's numbers may be, each as the +- that holds 95 % of days.

    ``rate_times`` and ``phase_times`` multiply what each stream source says of itself (30 % and 30 min where it says
    nothing: common practice, no source). ``pace`` is a share of the swimmer's pace: the trade's bad day is 10 % slower
    (common practice, no source), taken to either side. ``path`` is added to his path factor or taken off: swum paths
    were 8 to 24 % longer than the line (GPS tracks of sighted swimmers; common practice, no source), 8 % to either side
    of the middle. Spreads are centred on the plan's own numbers. A log's own values stand in for these.
    """

    rate_times: float = 1.0
    phase_times: float = 1.0
    pace: float = 0.10
    path: float = 0.08

    def __post_init__(self) -> None:
        for field in fields(self):
            value, most = getattr(self, field.name), LIMITS[field.name]
            if not 0.0 <= value <= most:
                raise SwimPlanError(
                    asked=tr("Asked for a doubt {name} of {value}").format(name=field.name, value=value),
                    allowed=tr("It lies from 0 to {most:g}").format(most=most),
                    remedy=tr("Correct the doubt"),
                )


LIMITS = {"rate_times": 5.0, "phase_times": 5.0, "pace": 0.3, "path": 0.5}
NO_DOUBTS = Doubts(rate_times=0.0, phase_times=0.0, pace=0.0, path=0.0)


@dataclass(frozen=True, kw_only=True)
class Members:
    """n members. Arrays (n,): the way made good in still water, and the doubts of rate and phase in units of what each
    source is uncertain by; ``aside`` from -1 (left) to 1 (right) is where a float yaws to off the wind."""

    pace_m_s: np.ndarray
    rate_doubts: np.ndarray
    phase_doubts: np.ndarray
    aside: np.ndarray

    def __len__(self) -> int:
        return len(self.pace_m_s)

    def of(self, rows: np.ndarray | slice) -> Members:
        """Some of them."""
        return Members(**{field.name: getattr(self, field.name)[rows] for field in fields(self)})


def draw_members(swimmer: Swimmer, doubts: Doubts, count: int, seed: int = SEED) -> Members:
    """Draw members; the same seed draws the same ones.

    Pace, path, rate and phase are independent of each other, normal, with the +- at two standard deviations and none
    beyond three; a path factor below 1 is drawn again. Raises SwimPlanError for too few or too many.
    """
    if not FEWEST <= count <= MOST:
        raise SwimPlanError(
            asked=tr("Asked for {count} members").format(count=count),
            allowed=tr("There may be {fewest} to {most}").format(fewest=FEWEST, most=MOST),
            remedy=tr("500 give shares to within about 4 %"),
        )
    rng = np.random.default_rng(seed)
    pace = swimmer.pace_m_s * (1.0 + doubts.pace * _spread(rng, count))
    least = (1.0 - swimmer.path_factor) / doubts.path if doubts.path > 0.0 else -np.inf
    path = swimmer.path_factor + doubts.path * _spread(rng, count, least)
    return Members(
        pace_m_s=pace / path,
        rate_doubts=doubts.rate_times * _spread(rng, count),
        phase_doubts=doubts.phase_times * _spread(rng, count),
        aside=rng.uniform(-1.0, 1.0, count),
    )


def _spread(rng: np.random.Generator, count: int, least: float = -np.inf) -> np.ndarray:
    """Normal draws (n,) of which 95 % lie within +-1, not below ``least``, which is not above 0."""
    drawn = rng.normal(size=count)
    while np.any(outside := (np.abs(drawn) > FARTHEST_SD) | (drawn < least * PLUS_MINUS_SD)):
        drawn[outside] = rng.normal(size=int(outside.sum()))
    return drawn / PLUS_MINUS_SD
