"""The water of the invented bay: tide table and stream tables. INVENTED - NOT FOR NAVIGATION.

Only the speeds of the tidal constituents are real (they are the Moon's and the Sun's, in degrees per mean solar hour,
International Hydrographic Organization standard list); amplitudes, phases and streams are made up.
"""

from __future__ import annotations

import datetime as dt

import numpy as np

UTC = dt.timezone.utc
PORT = "Ostrel Quay"
FIRST_DAY = dt.datetime(2027, 6, 1, tzinfo=UTC)
DAYS = 28

MEAN_LEVEL_M = 2.45
# name: degrees an hour, amplitude in metres, phase in degrees at FIRST_DAY 00:00 UTC
CONSTITUENTS = {
    "M2": (28.9841042, 1.38, 132.0),
    "S2": (30.0, 0.47, 266.0),
    "N2": (28.4397295, 0.17, 95.0),
    "K1": (15.0410686, 0.16, 300.0),
    "O1": (13.9430356, 0.12, 210.0),
}
SPRING_RANGE_M = 3.8
NEAP_RANGE_M = 1.8

HOURS = tuple(range(-6, 7))
HALF_CYCLE_H = 6.2103
INNER = "Bay stream"
OUTER = "Head stream"
EDDY = "Lee eddy"


def height_m(minutes: np.ndarray) -> np.ndarray:
    """Height of tide above chart datum, minutes counted from `FIRST_DAY`."""
    hours = np.asarray(minutes, dtype=float) / 60.0
    height = np.full(hours.shape, MEAN_LEVEL_M)
    for speed, amplitude, phase in CONSTITUENTS.values():
        height += amplitude * np.cos(np.radians(speed * hours - phase))
    return height


def tide_rows() -> list[dict[str, object]]:
    """High and low waters of the 28 days, each to the minute, and one or two beyond either end: no hour is bare."""
    minutes = np.arange(-12 * 60, (DAYS * 24 + 12) * 60 + 1)
    height = height_m(minutes)
    inner = height[1:-1]
    high = (inner > height[:-2]) & (inner >= height[2:])
    low = (inner < height[:-2]) & (inner <= height[2:])
    rows = []
    for position in np.flatnonzero(high | low):
        time = FIRST_DAY + dt.timedelta(minutes=int(minutes[position + 1]))
        kind = "HW" if high[position] else "LW"
        rows.append({"port": PORT, "time": time, "height_m": round(float(inner[position]), 2), "kind": kind})
    return rows


def _rows_of_hours(station: str, set_deg: float, turn_h: float, spring_kn: float, neap_kn: float, width: float) -> list:
    """Hourly rows of a stream that runs to `set_deg` until `turn_h` after high water, then the other way.

    `width` is the share of the main rate that swings through the quarter while the stream turns: near slack the set
    goes round instead of jumping.
    """
    rows = []
    for hour in HOURS:
        angle = np.pi * (hour - turn_h) / HALF_CYCLE_H
        along, across = -np.sin(angle), width * np.cos(angle)
        direction = (set_deg + np.degrees(np.arctan2(across, along))) % 360.0
        size = float(np.hypot(along, across))
        rows.append(
            {
                "station": station,
                "hour": hour,
                "set_deg": float(round(direction) % 360),
                "spring_kn": round(spring_kn * size, 2),
                "neap_kn": round(neap_kn * size, 2),
            }
        )
    return rows


def stream_rate_rows() -> list[dict[str, object]]:
    """Rows of `stream_rates`: the bay turns 1.8 h after high water, the water off the head 3.2 h later still."""
    rows = _rows_of_hours(INNER, 76.0, 1.8, 0.95, 0.42, 0.07)
    rows += _rows_of_hours(OUTER, 80.0, 5.0, 4.0, 2.1, -0.09)
    rows.append({"station": EDDY, "hour": 0, "set_deg": 18.0, "spring_kn": 0.35, "neap_kn": 0.35})
    return rows
