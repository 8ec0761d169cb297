"""Timed drifts: a set and a rate from two places and times, and the day's correction of a station."""

from __future__ import annotations

import numpy as np
import pytest
from pyproj import Geod
from tideleg.core.errors import SwimPlanError
from tideleg.core.water.corrected import CorrectedStream
from tideleg.core.water.events import EventStream
from tideleg.core.water.stream import ConstantStream
from tideleg.core.water.timed_drift import TimedDrift, day_correction

HOUR_S = 3600.0
GEOD = Geod(ellps="WGS84")
LON, LAT = -28.5, 42.4
TABLE = EventStream(
    station="A",
    times_s=3.1 * HOUR_S * np.arange(5),
    rates_m_s=np.array([0.0, 0.8, 0.0, -0.6, 0.0]),
    flood_set_deg=70.0,
    ebb_set_deg=240.0,
)


def drift(start_h: float, minutes: float, towards: float, rate_m_s: float) -> TimedDrift:
    end_lon, end_lat, _ = GEOD.fwd(LON, LAT, towards, rate_m_s * minutes * 60.0)
    start = start_h * HOUR_S
    return TimedDrift(start_s=start, end_s=start + 60.0 * minutes, lon=LON, lat=LAT, end_lon=end_lon, end_lat=end_lat)


def drifted(stream, start_h: float, minutes: float = 20.0, turn_deg: float = 0.0) -> TimedDrift:
    """The drift a float would make in the stream: its mean vector, found apart by a fine sum."""
    times = start_h * HOUR_S + 60.0 * minutes * (np.arange(2000) + 0.5) / 2000
    sample = stream.at(times)
    mean = np.mean(sample.north_m_s + 1j * sample.east_m_s)
    return drift(start_h, minutes, float(np.degrees(np.angle(mean))) + turn_deg, abs(mean))


def test_twenty_minutes_from_here_to_there() -> None:
    """463 m towards 085 in 20 min is 0.75 kn: worked by hand."""
    one = drift(0.0, 20.0, 85.0, 463.0 / 1200.0)
    assert one.set_deg == pytest.approx(85.0, abs=1e-6)
    assert one.rate_m_s / (1852.0 / 3600.0) == pytest.approx(0.75, abs=0.0005)


def test_no_drift_at_all_is_slack_seen() -> None:
    assert drift(0.0, 20.0, 0.0, 0.0).rate_m_s == 0.0


@pytest.mark.parametrize(("minutes", "rate"), [(0.0, 0.5), (-5.0, 0.5), (1.0, 0.5), (200.0, 0.5), (10.0, 8.0)])
def test_a_drift_that_cannot_be_is_refused(minutes: float, rate: float) -> None:
    with pytest.raises(SwimPlanError):
        drift(0.0, minutes, 70.0, rate)


def test_one_drift_gives_the_factor_alone() -> None:
    got = day_correction((drifted(CorrectedStream(stream=TABLE, rate_factor=1.3), 2.0),), TABLE)
    assert got.rate_factor == pytest.approx(1.3, abs=1e-3)
    assert (got.shift_known, got.shift_s) == (False, 0.0)


@pytest.mark.parametrize(("factor", "minutes"), [(1.25, 18.0), (0.7, -25.0), (1.0, 0.0), (1.1, 55.0)])
def test_several_drifts_give_factor_and_shift_later_positive(factor: float, minutes: float) -> None:
    truth = CorrectedStream(stream=TABLE, rate_factor=factor, shift_s=60.0 * minutes)
    got = day_correction(tuple(drifted(truth, start) for start in (1.7, 4.0, 7.5)), TABLE)
    assert got.shift_known
    assert got.rate_factor == pytest.approx(factor, abs=0.005)
    assert got.shift_s / 60.0 == pytest.approx(minutes, abs=0.5)
    assert got.misfit_m_s < 0.005


def test_drifts_at_the_strongest_tell_no_shift() -> None:
    truth = CorrectedStream(stream=TABLE, rate_factor=1.2)
    got = day_correction((drifted(truth, 2.95), drifted(truth, 2.95)), TABLE)
    assert not got.shift_known
    assert got.rate_factor == pytest.approx(1.2, abs=0.01)


def test_a_steady_stream_tells_no_shift() -> None:
    steady = ConstantStream.from_set(70.0, 0.5)
    got = day_correction((drift(0.0, 20.0, 70.0, 0.6), drift(3.0, 20.0, 70.0, 0.6)), steady)
    assert (got.shift_known, got.rate_factor) == (False, pytest.approx(1.2))


def test_fix_errors_spoil_the_fit_only_a_little() -> None:
    truth, rng = CorrectedStream(stream=TABLE, rate_factor=1.2, shift_s=900.0), np.random.default_rng(5)
    drifts = []
    for start in (1.5, 3.8, 5.6, 7.4):
        one = drifted(truth, start)
        noise = rng.normal(0.0, 4.0, 4) / 111_000.0
        drifts.append(
            TimedDrift(
                start_s=one.start_s,
                end_s=one.end_s,
                lon=one.lon + noise[0],
                lat=one.lat + noise[1],
                end_lon=one.end_lon + noise[2],
                end_lat=one.end_lat + noise[3],
            )
        )
    got = day_correction(tuple(drifts), TABLE)
    assert got.rate_factor == pytest.approx(1.2, abs=0.05)
    assert got.shift_s / 60.0 == pytest.approx(15.0, abs=4.0)


def test_a_drift_against_or_across_the_table_is_refused() -> None:
    for turn in (180.0, 90.0):
        with pytest.raises(SwimPlanError, match="The drifts ran"):
            day_correction((drifted(TABLE, 2.5, turn_deg=turn),), TABLE)


def test_a_drift_thirty_degrees_off_is_taken() -> None:
    got = day_correction((drifted(TABLE, 2.5, turn_deg=30.0),), TABLE)
    assert got.rate_factor == pytest.approx(np.cos(np.radians(30.0)), abs=0.002)


def test_a_drift_at_slack_has_no_factor() -> None:
    with pytest.raises(SwimPlanError, match="hardly any stream"):
        day_correction((drift(6.1, 12.0, 70.0, 0.3),), TABLE)


def test_slack_seen_while_the_table_runs_is_refused_as_absurd() -> None:
    with pytest.raises(SwimPlanError, match="a fifth"):
        day_correction((drift(2.9, 20.0, 0.0, 0.0),), TABLE)


def test_a_drift_when_the_table_does_not_know_is_refused() -> None:
    with pytest.raises(SwimPlanError, match="drift 2"):
        day_correction((drifted(TABLE, 2.5), drift(40.0, 20.0, 70.0, 0.5)), TABLE)
