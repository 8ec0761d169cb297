"""Units of speed as model files write them, and values that no stream can have."""

from __future__ import annotations

import re

import numpy as np

from ..core.quantities import m_s_from_knots
from ..words import tr
from .model_row import ModelRow

FASTEST_M_S = 15.0  # twice the fastest tidal streams; beyond it a value is a filler or no stream. Common practice
_SPELLINGS = {
    1.0: ("m/s", "m s-1", "m.s-1", "m s**-1", "m s^-1", "meter/s", "metre/s", "meters/s", "metres/s", "m/sec")
    + ("meter second-1", "meters second-1", "metre second-1", "meter/second", "meters/second", "ms-1", "mps"),
    0.01: ("cm/s", "cm s-1", "cm.s-1", "cm s**-1", "cm s^-1", "centimeter s-1", "centimeters/second", "cm/sec"),
    float(m_s_from_knots(1.0)): ("kn", "kt", "kts", "knot", "knots"),
    1.0 / 3.6: ("km/h", "km h-1"),
    0.3048: ("ft/s", "ft s-1", "feet/second"),
}
_FACTORS = {spelling: factor for factor, spellings in _SPELLINGS.items() for spelling in spellings}


def speed_factor(row: ModelRow, unit: str, warnings: list[str]) -> float:
    """What to multiply by to have m/s. No unit is taken as m/s and said so; BadInputError for one that is no speed."""
    plain = re.sub(r"\s+", " ", unit.strip().strip("[]()").lower())
    if not plain:
        warnings.append(
            tr("Stream model '{name}': the file names no unit; its values were taken as m/s.").format(name=row.name)
        )
        return 1.0
    if plain not in _FACTORS:
        raise row.refused(
            "group",
            unit,
            tr("The stream is in m/s, cm/s, km/h, ft/s or knots"),
            tr("Name the group that holds the stream, or convert the file to m/s"),
        )
    factor = _FACTORS[plain]
    if factor != 1.0:
        warnings.append(
            tr("Stream model '{name}': its values in {unit} were converted to m/s.").format(
                name=row.name, unit=unit.strip()
            )
        )
    return factor


def refuse_wind(row: ModelRow, name: str) -> None:
    """Wind blows from the same files as streams do; taken for a stream it would be deadly."""
    words = name.lower()
    if "wind" in words or words.split(" ")[0] in ("ugrd", "vgrd", "10u", "10v", "u10", "v10"):
        raise row.refused(
            "group", name, tr("A stream model holds the stream; this is wind"), tr("Name the stream's group")
        )


def without_fillers(row: ModelRow, east: np.ndarray, north: np.ndarray, warnings: list[str]) -> None:
    """Make unknown, in place, in components (n_times, ...), what is faster than any stream, and say so."""
    wild = 0
    for u, v in zip(east, north):  # a step at a time: the whole may be large
        with np.errstate(over="ignore", invalid="ignore"):
            here = np.hypot(u, v) > FASTEST_M_S
        u[here] = v[here] = np.nan
        wild += int(here.sum())
    if wild:
        warnings.append(
            tr("Stream model '{name}': {wild} values above {fastest_m_s:g} m/s were taken as unknown.").format(
                name=row.name, wild=wild, fastest_m_s=FASTEST_M_S
            )
        )


def without_still_places(row: ModelRow, east: np.ndarray, north: np.ndarray, warnings: list[str]) -> None:
    """Make unknown, in place, where nothing ever moves: rasters fill land with zeros, and water is never so still."""
    if len(east) < 2:
        return
    still = np.ones(east.shape[1:], dtype=bool)
    for u, v in zip(east, north):
        still &= (u == 0.0) & (v == 0.0)
    if still.any():
        east[:, still] = north[:, still] = np.nan
        warnings.append(
            tr("Stream model '{name}': {still} places with no stream at any time were taken as land, unknown.").format(
                name=row.name, still=int(still.sum())
            )
        )
