"""Secondary ports: waters of a reference port moved in time and height."""

from __future__ import annotations

from datetime import datetime, timezone

import numpy as np
import pytest
from tideleg.core.errors import SwimPlanError
from tideleg.core.water.harmonics import TidalSum, table_of_constants
from tideleg.core.water.secondary_port import Differences, MeanLevels, SecondaryPort, levels_of
from tideleg.core.water.tide import TideTable

NONE = float("nan")
HOUR_S = 3600.0
START = datetime(2027, 3, 1, tzinfo=timezone.utc)
HIGH = Differences(springs_min=20.0, neaps_min=40.0, springs_m=-0.6, neaps_m=-0.2)
LOW = Differences(springs_min=-10.0, neaps_min=NONE, springs_m=0.1, neaps_m=0.3)
LEVELS = MeanLevels(high_springs_m=5.0, high_neaps_m=4.0, low_neaps_m=2.0, low_springs_m=1.0)


def reference(*heights: float) -> TideTable:
    """High waters first, six hours apart."""
    return TideTable(
        port="Reference",
        times_s=6.0 * HOUR_S * np.arange(len(heights)),
        heights_m=heights,
        is_high=np.arange(len(heights)) % 2 == 0,
    )


@pytest.mark.parametrize(
    ("high_m", "low_m", "minutes", "metres"),
    [
        (5.0, 1.0, (20.0, -10.0), (-0.6, 0.1)),  # springs
        (4.0, 2.0, (40.0, -10.0), (-0.2, 0.3)),  # neaps
        (4.5, 1.5, (30.0, -10.0), (-0.4, 0.2)),  # between
        (5.25, 0.75, (15.0, -10.0), (-0.7, 0.05)),  # beyond springs
        (9.0, 0.0, (10.0, -10.0), (-0.8, 0.0)),  # beyond them by more than half their distance
    ],
)
def test_differences_follow_the_height_of_the_reference_water(high_m, low_m, minutes, metres) -> None:
    port = SecondaryPort(port="Cove", high=HIGH, low=LOW, levels=LEVELS)
    here = reference(high_m, low_m)
    table = port.table(here)
    assert table.port == "Cove"
    assert (table.times_s - here.times_s) / 60.0 == pytest.approx(minutes)
    assert table.heights_m - here.heights_m == pytest.approx(metres)
    assert table.is_high.tolist() == [True, False]


def test_one_difference_holds_for_every_water_and_needs_no_levels() -> None:
    same = Differences(springs_min=12.0, neaps_min=NONE, springs_m=NONE, neaps_m=0.3)
    table = SecondaryPort(port="Cove", high=same, low=same).table(reference(4.0, 1.0, 3.0))
    assert table.times_s == pytest.approx(6.0 * HOUR_S * np.arange(3) + 720.0)
    assert table.heights_m == pytest.approx([4.3, 1.3, 3.3])


def test_levels_come_from_the_table_of_the_reference_port() -> None:
    """Springs are the sum and neaps the difference of M2 and S2, of 1.0 and 0.4 m about 3.0 m."""
    tide = TidalSum(names=("M2", "S2"), amplitudes=[1.0, 0.4], phases_deg=[0.0, 30.0], start=START, mean=3.0)
    table = table_of_constants("Reference", tide, 0.0, 60.0 * 86400.0)
    assert levels_of(table, True) == pytest.approx((4.4, 3.6), abs=0.06)
    assert levels_of(table, False) == pytest.approx((1.6, 2.4), abs=0.06)
    moved = SecondaryPort(port="Cove", high=HIGH, low=LOW).table(table)
    later = (moved.times_s - table.times_s)[table.is_high] / 60.0
    assert later[np.argmax(table.heights_m[table.is_high])] == pytest.approx(20.0, abs=2.0)
    assert later[np.argmin(table.heights_m[table.is_high])] == pytest.approx(40.0, abs=2.0)


def test_too_short_a_table_does_not_tell_springs_from_neaps() -> None:
    with pytest.raises(SwimPlanError, match="15 days"):
        SecondaryPort(port="Cove", high=HIGH, low=LOW).table(reference(5.0, 1.0, 4.8))


def test_springs_like_neaps_are_refused() -> None:
    flat = MeanLevels(high_springs_m=4.0, high_neaps_m=3.98, low_neaps_m=1.0, low_springs_m=1.0)
    with pytest.raises(SwimPlanError, match="0.02 m apart"):
        SecondaryPort(port="Cove", high=HIGH, low=LOW, levels=flat).table(reference(4.0, 1.0))


def test_a_difference_that_is_not_given_is_not_zero() -> None:
    nothing = Differences(springs_min=5.0, neaps_min=5.0, springs_m=NONE, neaps_m=NONE)
    with pytest.raises(SwimPlanError, match="low water in metres.*none is not zero"):
        SecondaryPort(port="Cove", high=HIGH, low=nothing)


def test_a_water_moved_past_its_neighbour_is_refused() -> None:
    far = Differences(springs_min=400.0, neaps_min=400.0, springs_m=0.0, neaps_m=0.0)
    with pytest.raises(SwimPlanError, match="past the low water"):
        SecondaryPort(port="Cove", high=far, low=LOW, levels=LEVELS).table(reference(4.5, 1.5, 4.5))
