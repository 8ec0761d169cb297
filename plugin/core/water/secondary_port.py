"""A secondary port: the waters of a reference port, moved in time and height by published differences."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ..errors import SwimPlanError
from ..words import tr
from .tide import TideTable

HALF_LUNATION_S = 14.765294 * 86400.0  # from springs to springs: half a synodic month (29.530588 days)
FEWEST_WATERS = 20
LEAST_SPREAD_M = 0.05  # springs and neaps nearer than this do not tell which of them a water is like
BEYOND = 0.5  # differences are carried on beyond springs and neaps by half their distance at most: no source


@dataclass(frozen=True, kw_only=True)
class Differences:
    """What is added to the reference port's high (or low) waters at springs and at neaps: minutes and metres.

    NaN is not given; where one of springs and neaps is given alone it holds for every water.
    """

    springs_min: float
    neaps_min: float
    springs_m: float
    neaps_m: float

    @property
    def minutes(self) -> tuple[float, float]:
        """Minutes at springs and neaps, each standing in for the other where that is not given."""
        return _pair(self.springs_min, self.neaps_min)

    @property
    def metres(self) -> tuple[float, float]:
        """Metres at springs and neaps, each standing in for the other where that is not given."""
        return _pair(self.springs_m, self.neaps_m)

    @property
    def changes(self) -> bool:
        """Whether springs and neaps differ."""
        return self.minutes[0] != self.minutes[1] or self.metres[0] != self.metres[1]


@dataclass(frozen=True, kw_only=True)
class MeanLevels:
    """Mean heights of the reference port's high and low waters at springs and neaps, metres above datum.

    What is NaN is estimated from the reference port's own table.
    """

    high_springs_m: float = float("nan")
    high_neaps_m: float = float("nan")
    low_neaps_m: float = float("nan")
    low_springs_m: float = float("nan")


@dataclass(frozen=True, kw_only=True)
class SecondaryPort:
    """Differences of a secondary port for high and for low waters.

    Heights: each difference is interpolated between springs and neaps by the height of the reference port's water
    between its mean heights then, as tide tables tell their readers to do. Times are interpolated by the same share;
    tables print their time differences for two hours of the clock, which at one port are springs and neaps.
    Source: instructions of the Admiralty Tide Tables; Bowditch, The American Practical Navigator, chapter on tides, for
    single differences (both from memory). SwimPlanError for a kind of difference that is not given at all.
    """

    port: str
    high: Differences
    low: Differences
    levels: MeanLevels = MeanLevels()

    def __post_init__(self) -> None:
        for water, differences in (("high", self.high), ("low", self.low)):
            for what, pair in (("minutes", differences.minutes), ("metres", differences.metres)):
                if not np.isfinite(pair).all():
                    raise SwimPlanError(
                        asked=tr("The secondary port {port} has no difference of {water} water in {what}").format(
                            port=self.port, water=water, what=what
                        ),
                        allowed=tr(
                            "Differences in time and height are given for high and low waters; none is not zero"
                        ),
                        remedy=tr("Fill in the {water} water difference in {what}, 0 where there is none").format(
                            water=water, what=what
                        ),
                    )

    def table(self, reference: TideTable) -> TideTable:
        """The port's own high and low waters, with the cosine between them.

        SwimPlanError where springs and neaps differ and the reference port's levels can't be told, and where moved
        waters no longer alternate.
        """
        times, heights = reference.times_s.copy(), reference.heights_m.copy()
        for is_high, differences in ((True, self.high), (False, self.low)):
            rows = reference.is_high == is_high
            share = self._springs_share(reference, is_high, differences)
            springs_min, neaps_min = differences.minutes
            springs_m, neaps_m = differences.metres
            times[rows] += 60.0 * (neaps_min + share * (springs_min - neaps_min))
            heights[rows] += neaps_m + share * (springs_m - neaps_m)
        self._check_order(times)
        return TideTable(port=self.port, times_s=times, heights_m=heights, is_high=reference.is_high)

    def _check_order(self, times_s: np.ndarray) -> None:
        """A water moved past the next one would be paired with the wrong tide."""
        if np.any(np.diff(times_s) <= 0.0):
            raise SwimPlanError(
                asked=tr("The time differences of {port} put a high water past the low water beside it").format(
                    port=self.port
                ),
                allowed=tr("Differences of high and low waters are of much the same size"),
                remedy=tr("Check their signs: later is positive"),
            )

    def _springs_share(self, reference: TideTable, is_high: bool, differences: Differences) -> np.ndarray | float:
        """How far each water of one kind is from neaps (0) to springs (1)."""
        if not differences.changes:
            return 0.0
        springs_m, neaps_m = self._levels(reference, is_high)
        if not abs(springs_m - neaps_m) >= LEAST_SPREAD_M:
            raise SwimPlanError(
                asked=tr("Springs and neaps of {port} are {apart_m:.2f} m apart").format(
                    port=reference.port, apart_m=abs(springs_m - neaps_m)
                ),
                allowed=tr(
                    "The differences of {port} are interpolated between them: {least_spread_m} m or more"
                ).format(port=self.port, least_spread_m=LEAST_SPREAD_M),
                remedy=tr("Give the mean levels of the reference port, or one difference for springs and neaps"),
            )
        share = (reference.heights_m[reference.is_high == is_high] - neaps_m) / (springs_m - neaps_m)
        return np.clip(share, -BEYOND, 1.0 + BEYOND)

    def _levels(self, reference: TideTable, is_high: bool) -> tuple[float, float]:
        """Mean height at springs and at neaps: as given, else as the reference port's table shows them."""
        levels = self.levels
        given = (levels.high_springs_m, levels.high_neaps_m) if is_high else (levels.low_springs_m, levels.low_neaps_m)
        return given if np.isfinite(given).all() else levels_of(reference, is_high)


def levels_of(table: TideTable, is_high: bool) -> tuple[float, float]:
    """Mean height of a port's high (low) waters at springs and at neaps, from its table.

    The mean, and the swing with half a lunation, of the heights by least squares. SwimPlanError where the table is
    shorter than that.
    """
    rows = table.is_high == is_high
    times, heights = table.times_s[rows], table.heights_m[rows]
    known = np.isfinite(heights)
    times, heights = times[known], heights[known]
    if len(times) < FEWEST_WATERS or times[-1] - times[0] < HALF_LUNATION_S:
        raise SwimPlanError(
            asked=(
                tr("The table of {port} has {count} high waters")
                if is_high
                else tr("The table of {port} has {count} low waters")
            ).format(port=table.port, count=len(times)),
            allowed=tr("To tell springs from neaps it needs 15 days of them"),
            remedy=tr("Read more days of the reference port's tides, or give its mean levels at springs and neaps"),
        )
    turns = 2.0 * np.pi * times / HALF_LUNATION_S
    columns = np.stack([np.ones_like(turns), np.cos(turns), np.sin(turns)], axis=1)
    mean, cosine, sine = np.linalg.lstsq(columns, heights, rcond=None)[0]
    swing = np.hypot(cosine, sine)
    return (mean + swing, mean - swing) if is_high else (mean - swing, mean + swing)


def _pair(springs: float, neaps: float) -> tuple[float, float]:
    return (neaps if np.isnan(springs) else springs, springs if np.isnan(neaps) else neaps)
