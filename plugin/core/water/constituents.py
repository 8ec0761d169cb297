"""Tidal constituents: their names, astronomical arguments, speeds and nodal corrections."""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

import numpy as np

from ..errors import SwimPlanError
from ..words import tr

DATA = Path(__file__).with_name("constituents.json")
# Other spellings of the same line of the spectrum, as tables of constants print them.
SPELLINGS = {
    "M1": "NO1",
    "RHO": "RHO1",
    "LAM2": "LDA2",
    "LAMBDA2": "LDA2",
    "SIGMA1": "SIG1",
    "ALPHA1": "ALP1",
    "BETA1": "BET1",
    "THETA1": "THE1",
    "UPSILON1": "UPS1",
    "EPSILON2": "EPS2",
    "GAMMA2": "GAM2",
    "MA2": "H1",
    "MB2": "H2",
    "KJ2": "ETA2",
}
# Mean longitudes in degrees as polynomials of days from 1899-12-31 12:00 and of ten thousands of them, in the order
# moon, sun, lunar perigee, lunar node (negative), solar perigee. Explanatory Supplement to the Astronomical Ephemeris,
# 1961, pages 98 and 107.
LONGITUDES = np.array(
    [
        [270.434164, 13.1763965268, -0.0000850, 0.000000039],
        [279.696678, 0.9856473354, 0.00002267, 0.0],
        [334.329556, 0.1114040803, -0.0007739, -0.00000026],
        [-259.183275, 0.0529539222, -0.0001557, -0.000000050],
        [281.220844, 0.0000470684, 0.0000339, 0.000000070],
    ]
)
NEAREST_LATITUDE_DEG = 5.0  # the ratios of diurnal satellites grow without bound towards the equator


@lru_cache(maxsize=1)
def _data() -> dict[str, Any]:
    return json.loads(DATA.read_text(encoding="utf-8"))


def constituent_names() -> tuple[str, ...]:
    """Every name that is known, in rising order of speed within main and shallow-water ones."""
    return (*_data()["main"], *_data()["shallow"])


def standard_name(name: str) -> str:
    """The name under which a constituent is known; "" for one that is not."""
    plain = re.sub(r"[\s_()]", "", name).upper()
    plain = SPELLINGS.get(plain, plain)
    return plain if plain in _data()["main"] or plain in _data()["shallow"] else ""


def astronomical_cycles(days: np.ndarray) -> np.ndarray:
    """Lunar time and mean longitudes of moon, sun, perigee, node (negative) and solar perigee, in cycles, shape (6, n).

    ``days`` (n,) are days in UTC from 1899-12-31 12:00.
    """
    myriads = days / 10000.0
    powers = np.stack([np.ones_like(days), days, myriads**2, myriads**3])
    longitudes = (LONGITUDES @ powers) / 360.0
    # Hours of mean lunar time count from the moon's lower transit, days from noon here: hence the half.
    lunar_time = np.mod(days + 0.5, 1.0) + longitudes[1] - longitudes[0]
    return np.concatenate([lunar_time[None, :], longitudes])


@dataclass(frozen=True, kw_only=True)
class Basis:
    """Arguments and corrections of chosen constituents, by day.

    ``names`` (k,) are standard names; ``latitude_deg`` weighs the satellites that depend on latitude, None leaves them
    out. Each shallow-water compound takes the arguments of its parts, times its whole factors, the nodal phases
    likewise and the nodal amplitudes to their powers (Foreman 1977). SwimPlanError for a name that is not known.
    """

    names: tuple[str, ...]
    latitude_deg: float | None = None

    def __post_init__(self) -> None:
        for name in self.names:
            if name not in _data()["main"] and name not in _data()["shallow"]:
                raise SwimPlanError(
                    asked=tr("Asked for the tidal constituent {name!r}").format(name=name),
                    allowed=tr("Known are {names}").format(names=", ".join(constituent_names())),
                    remedy=tr("Correct its name, or leave it out if its amplitude is small"),
                )

    def parts(self) -> tuple[tuple[str, ...], np.ndarray]:
        """The main constituents that all are made of, (m,), and how many of each, shape (k, m)."""
        made_of = [_data()["shallow"].get(name, {name: 1}) for name in self.names]
        mains = tuple(dict.fromkeys(main for parts in made_of for main in parts))
        return mains, np.array([[parts.get(main, 0) for main in mains] for parts in made_of], dtype=float)

    def cycles(self, days: np.ndarray) -> np.ndarray:
        """Astronomical argument V of each constituent, in cycles, shape (k, n)."""
        mains, shares = self.parts()
        numbers = np.array([_data()["main"][main][0] for main in mains], dtype=float)
        phases = np.array([_data()["main"][main][1] for main in mains], dtype=float)
        combined, constant = shares @ numbers, shares @ phases
        return np.mod(combined @ astronomical_cycles(days) + constant[:, None], 1.0)

    def speeds_deg_h(self) -> np.ndarray:
        """Speed of each constituent in degrees an hour at the start of 2000, shape (k,)."""
        mains, shares = self.parts()
        numbers = np.array([_data()["main"][main][0] for main in mains], dtype=float)
        days = 36524.5
        slopes = np.array([0.0, 1.0, 2.0e-8 * days, 3.0e-12 * days**2])
        rates = LONGITUDES @ slopes
        lunar_day = 360.0 + rates[1] - rates[0]
        return shares @ numbers @ np.concatenate([[lunar_day], rates]) / 24.0

    def nodal(self, days: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Nodal factor f and nodal phase u in cycles, each of shape (k, n); u is continuous in time."""
        mains, shares = self.parts()
        longitudes = astronomical_cycles(days)[3:]
        lines = np.stack([self._line(main, longitudes) for main in mains])
        factor = np.exp(np.abs(shares) @ np.log(np.abs(lines)))
        phase = np.unwrap(np.angle(lines), axis=1) / (2.0 * np.pi)
        return factor, shares @ phase

    def _line(self, main: str, longitudes: np.ndarray) -> np.ndarray:
        """One plus the satellites of a main constituent, as complex numbers, shape (n,)."""
        satellites = np.array(_data()["main"][main][2], dtype=float).reshape(-1, 6)
        steps, phases, ratios, kinds = satellites[:, :3], satellites[:, 3], satellites[:, 4].copy(), satellites[:, 5]
        diurnal, semidiurnal = self._latitude_weights()
        ratios[kinds == 1] *= diurnal
        ratios[kinds == 2] *= semidiurnal
        turns = steps @ longitudes + phases[:, None]
        return 1.0 + ratios @ np.exp(2j * np.pi * turns)

    def _latitude_weights(self) -> tuple[float, float]:
        """What latitude makes of diurnal and semidiurnal satellites of the third-degree potential (Foreman 1977)."""
        if self.latitude_deg is None:
            return 0.0, 0.0
        latitude_deg = self.latitude_deg
        if abs(latitude_deg) < NEAREST_LATITUDE_DEG:
            latitude_deg = np.copysign(NEAREST_LATITUDE_DEG, latitude_deg)
        sine = np.sin(np.radians(latitude_deg))
        return 0.36309 * (1.0 - 5.0 * sine**2) / sine, 2.59808 * sine


def standard_names(names: Sequence[str]) -> tuple[str, ...]:
    """Standard names of a table's constituents; SwimPlanError for one unknown or given twice."""
    found = []
    for name in names:
        standard = standard_name(name)
        if not standard or standard in found:
            raise SwimPlanError(
                asked=tr("Got the tidal constituent {name!r}").format(name=name) + (tr(" twice") if standard else ""),
                allowed=tr("Each of these once: {names}").format(names=", ".join(constituent_names())),
                remedy=tr("Correct its name, or leave it out if its amplitude is small"),
            )
        found.append(standard)
    return tuple(found)
