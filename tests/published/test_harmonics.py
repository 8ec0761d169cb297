"""Harmonic constants: our sum against UTide, Schureman's nodal factors, and a year of official heights."""

from __future__ import annotations

import gzip
import json
from datetime import datetime, timedelta, timezone
from pathlib import Path
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from tideleg.core.errors import SwimPlanError
from tideleg.core.water.constituents import Basis, constituent_names, standard_name, standard_names
from tideleg.core.water.harmonics import TidalSum, table_of_constants

UTC = timezone.utc
START = datetime(2026, 1, 1, tzinfo=UTC)
DAY_S = 86400.0
# The 37 constituents that NOAA's CO-OPS publishes for each station (list from memory).
USUAL = (
    "M2 S2 N2 K1 M4 O1 M6 MK3 S4 MN4 NU2 S6 MU2 2N2 OO1 LAM2 S1 M1 J1 MM SSA SA MSF MF RHO Q1 T2 R2 2Q1 P1 2SM2 M3 L2 "
    "2MK3 K2 M8 MS4"
).split()
SAN_FRANCISCO_LATITUDE_DEG = 37.8


def utide_sum(names: tuple[str, ...], amplitudes: np.ndarray, phases: np.ndarray, days: np.ndarray, lat: float):
    """The same sum with UTide's own arguments and corrections, at each moment."""
    harmonics = pytest.importorskip("utide.harmonics")
    known = [str(name) for name in harmonics.const.name]
    rows = [known.index(name) for name in names]
    factor, nodal, argument = harmonics.FUV(days, days.mean(), rows, lat, [False] * 4)
    return (amplitudes * factor * np.cos(2.0 * np.pi * (argument + nodal) - np.radians(phases))).sum(axis=1)


@pytest.mark.parametrize("lat", [37.8, -20.0, 1.0])
@pytest.mark.parametrize("year", [1995, 2026, 2040])
def test_sum_agrees_with_utide_on_the_same_constants(lat: float, year: int) -> None:
    """UTide 0.3.1 (Codiga 2011), every constituent that both know, each of up to 1 m."""
    constants = pytest.importorskip("utide._ut_constants").ut_constants.const
    names = tuple(name for name in constituent_names() if name in {str(one) for one in constants.name})
    assert len(names) == 144
    random = np.random.default_rng(year)
    amplitudes, phases = random.uniform(0.05, 1.0, len(names)), random.uniform(0.0, 360.0, len(names))
    start = datetime(year, 3, 1, tzinfo=UTC)
    times = np.arange(0.0, 400.0 * DAY_S, 4999.0)
    ours = TidalSum(names=names, amplitudes=amplitudes, phases_deg=phases, start=start, latitude_deg=lat)
    theirs = utide_sum(names, amplitudes, phases, start.toordinal() + times / DAY_S, lat)
    difference = np.abs(ours.at(times) - theirs).max()
    assert difference < 1e-4, f"{1000.0 * difference:.4f} mm"


def test_speeds_are_the_published_ones() -> None:
    """Schureman, Manual of Harmonic Analysis and Prediction of Tides, 1958, table 2 (digits from memory)."""
    published = {
        "M2": 28.9841042,
        "S2": 30.0,
        "N2": 28.4397295,
        "K2": 30.0821373,
        "K1": 15.0410686,
        "O1": 13.9430356,
        "P1": 14.9589314,
        "Q1": 13.3986609,
        "MF": 1.0980331,
        "MM": 0.5443747,
        "M4": 57.9682084,
        "MS4": 58.9841042,
        "L2": 29.5284789,
        "2MK3": 42.9271398,
    }
    speeds = Basis(names=tuple(published)).speeds_deg_h()
    np.testing.assert_allclose(speeds, list(published.values()), atol=1.01e-7)


def test_nodal_corrections_are_near_schuremans_formulas() -> None:
    """Schureman 1958, formulas 75, 78, 227 and 235, from memory: the same to 0.8 % over 19 years."""
    days = np.arange(36525.0, 36525.0 + 19.0 * 365.25, 30.0)
    node = np.radians(259.183275 - 0.0529539222 * days)
    inclination = np.arccos(0.91370 - 0.03569 * np.cos(node))
    nu = np.arcsin(0.08978 * np.sin(node) / np.sin(inclination))
    wanted = {
        "O1": np.sin(inclination) * np.cos(inclination / 2.0) ** 2 / 0.3800,
        "M2": np.cos(inclination / 2.0) ** 4 / 0.9154,
        "K1": np.sqrt(
            0.8965 * np.sin(2.0 * inclination) ** 2 + 0.6001 * np.sin(2.0 * inclination) * np.cos(nu) + 0.1006
        ),
        "K2": np.sqrt(
            19.0444 * np.sin(inclination) ** 4 + 2.7702 * np.sin(inclination) ** 2 * np.cos(2.0 * nu) + 0.0981
        ),
    }
    factor, _phase = Basis(names=tuple(wanted)).nodal(days)
    for row, (name, published) in zip(factor, wanted.items()):
        assert np.abs(row / published - 1.0).max() < 0.008, name
        assert np.ptp(published) > 0.05, "the check would pass without any correction"


def test_the_usual_37_are_known_under_the_names_that_tables_print() -> None:
    assert len(USUAL) == 37
    assert len(set(standard_names(USUAL))) == 37
    assert standard_name("lambda2") == standard_name("LAM2") == "LDA2"
    assert standard_name("Msf") == "MSF"
    assert standard_name("X9") == ""


def test_an_unknown_constituent_and_one_given_twice_are_refused() -> None:
    with pytest.raises(SwimPlanError, match="'M22'"):
        standard_names(["M2", "M22"])
    with pytest.raises(SwimPlanError, match="'Rho' twice"):
        standard_names(["RHO1", "Rho"])
    with pytest.raises(SwimPlanError, match="amplitude"):
        TidalSum(names=("M2",), amplitudes=[np.nan], phases_deg=[0.0], start=START)
    with pytest.raises(SwimPlanError, match="zone"):
        TidalSum(names=("M2",), amplitudes=[1.0], phases_deg=[0.0], start=datetime(2026, 1, 1))  # noqa: DTZ001


def test_one_constituent_swings_with_its_period_about_the_mean() -> None:
    tide = TidalSum(names=("S2",), amplitudes=[1.0], phases_deg=[90.0], start=START, mean=3.0)
    times = np.array([[3.0, 9.0], [6.0, 12.0]]) * 3600.0
    # S2 of phase 90 deg is high three hours after midnight and noon, in UTC; its nodal factor is within 0.3 % of 1.
    np.testing.assert_allclose(tide.at(times), [[4.0, 2.0], [3.0, 3.0]], atol=0.005)


def test_waters_of_constants_are_tops_and_bottoms_of_the_sum_to_the_second() -> None:
    tide = TidalSum(
        names=("M2", "S2", "K1", "O1", "M4"),
        amplitudes=[0.9, 0.3, 0.4, 0.25, 0.06],
        phases_deg=[12.0, 40.0, 200.0, 170.0, 77.0],
        start=START,
        mean=1.2,
    )
    table = table_of_constants("Port", tide, -16.0 * DAY_S, 16.0 * DAY_S)
    assert len(table.times_s) > 100
    assert np.all(table.is_high[1:] != table.is_high[:-1])
    beside = np.where(table.is_high, 1.0, -1.0) * (tide.at(table.times_s + np.array([[-2.0], [2.0]])) - table.heights_m)
    assert beside.max() < 0.0
    between = np.arange(-15.0 * DAY_S, 15.0 * DAY_S, 1013.0)
    assert np.abs(table.height_m(between) - tide.at(between)).max() < 1e-5
    assert np.isnan(table.height_m([-17.0 * DAY_S, 17.0 * DAY_S])).all()


def test_constants_that_make_no_tide_are_refused() -> None:
    flat = TidalSum(names=("M2",), amplitudes=[0.001], phases_deg=[0.0], start=START)
    with pytest.raises(SwimPlanError, match="no high or low water"):
        table_of_constants("Port", flat, 0.0, DAY_S)


@pytest.fixture(scope="module")
def official(real_data: Path) -> tuple[np.ndarray, np.ndarray]:
    """Seconds from the start of 2026 and heights in metres above MLLW: NOAA 9414290, San Francisco, 6-minute.

    The doubtful hour of 1 November is left out; the zone's rules for the rest.
    """
    path = real_data / "sf-bay" / "predictions6min_9414290_2026.json.gz"
    with gzip.open(path) as file:
        rows = json.load(file)["predictions"]
    clocks = [datetime.fromisoformat(row["t"]) for row in rows]
    heights = np.array([float(row["v"]) for row in rows]) * 0.3048
    certain = np.array([(one.month, one.day, one.hour) != (11, 1, 1) for one in clocks])
    zone = ZoneInfo("America/Los_Angeles")
    times = np.array([(one.replace(tzinfo=zone).astimezone(UTC) - START).total_seconds() for one in clocks])
    return times[certain], heights[certain]


def fitted(official: tuple[np.ndarray, np.ndarray], **options: object) -> tuple[object, datetime]:
    """Constants by UTide from the hourly heights of January to August, and the middle of that time."""
    utide = pytest.importorskip("utide")
    times, heights = official
    used = (times < 243.0 * DAY_S) & (np.round(times / 360.0) % 10 == 0)
    names = [*standard_names([name for name in USUAL if name != "2MK3"]), "MO3"]
    found = utide.solve(
        START.toordinal() + times[used] / DAY_S,
        heights[used],
        lat=SAN_FRANCISCO_LATITUDE_DEG,
        constit=names,
        method="ols",
        conf_int="none",
        trend=False,
        epoch="python",
        verbose=False,
        **options,
    )
    return found, START + timedelta(days=float(found.aux.reftime) - START.toordinal())


def december_residual(official: tuple[np.ndarray, np.ndarray], found: object, corrected_on: datetime | None):
    times, heights = official
    month = (times >= 334.0 * DAY_S) & (times < 365.0 * DAY_S)
    tide = TidalSum(
        names=tuple(found.name),
        amplitudes=found.A,
        phases_deg=found.g,
        mean=found.mean,
        start=START,
        latitude_deg=SAN_FRANCISCO_LATITUDE_DEG,
        corrected_on=corrected_on,
    )
    assert month.sum() > 7000
    return tide.at(times[month]) - heights[month]


def test_december_of_san_francisco_from_constants_of_january_to_august(official) -> None:
    """The official year holds the nodal corrections of one day: so held, our sum gives its December to 0.3 mm.

    Measured: root mean square 0.09 mm, largest 0.21 mm, which is the rounding of heights printed in thousandths of a
    foot.
    """
    found, middle = fitted(official, nodal="linear_time")
    error = december_residual(official, found, middle)
    said = f"root mean square {1000.0 * np.sqrt(np.mean(error**2)):.2f} mm, largest {1000.0 * np.abs(error).max():.2f}"
    assert np.sqrt(np.mean(error**2)) < 0.00015, said
    assert np.abs(error).max() < 0.0005, said


def test_daily_nodal_corrections_differ_from_the_official_year_by_centimetres(official) -> None:
    """Measured: root mean square 1.7 cm, largest 4.2 cm, three months after the last height that was fitted."""
    found, _middle = fitted(official)
    error = december_residual(official, found, None)
    said = f"root mean square {1000.0 * np.sqrt(np.mean(error**2)):.1f} mm, largest {1000.0 * np.abs(error).max():.1f}"
    assert 0.001 < np.sqrt(np.mean(error**2)) < 0.02, said
    assert np.abs(error).max() < 0.05, said
