"""The current triangle: which heading makes good a track through a set and drift."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike


@dataclass(frozen=True, kw_only=True)
class Triangle:
    """Solution of the triangle: heading true 0-360 and ground speed m/s, NaN where the track cannot be made good."""

    heading_true_deg: np.ndarray
    ground_speed_m_s: np.ndarray


def components(track_true_deg: ArrayLike, set_deg: ArrayLike, drift_m_s: ArrayLike) -> tuple[np.ndarray, np.ndarray]:
    """The stream along the track (ahead positive) and across it (to the right positive), m/s; set is TOWARDS."""
    angle = np.radians(np.asarray(set_deg, dtype=float) - np.asarray(track_true_deg, dtype=float))
    return drift_m_s * np.cos(angle), drift_m_s * np.sin(angle)


def heading_to_make_good(
    track_true_deg: ArrayLike, pace_m_s: ArrayLike, set_deg: ArrayLike, drift_m_s: ArrayLike
) -> Triangle:
    """Heading that makes good the track, and the ground speed; arguments broadcast.

    alpha = asin(-c_across / v), ground speed = c_along + sqrt(v^2 - c_across^2); NaN where the stream across is not
    less than the pace or a missing value came in. The ground speed may be negative: pushed back along the line.
    Source: plane trigonometry, as in Bowditch (NGA Pub. 9), dead reckoning.
    """
    track, pace = np.asarray(track_true_deg, dtype=float), np.asarray(pace_m_s, dtype=float)
    along, across = components(track, set_deg, drift_m_s)
    speed = along_line_speed(pace, along, across)
    with np.errstate(invalid="ignore"):
        alpha = np.degrees(np.arcsin(np.where(np.isnan(speed), np.nan, -across / pace)))
    return Triangle(heading_true_deg=(track + alpha) % 360.0, ground_speed_m_s=speed)


def along_line_speed(pace_m_s: ArrayLike, along_m_s: ArrayLike, across_m_s: ArrayLike) -> np.ndarray:
    """Ground speed of a swimmer who holds the line, m/s; NaN where the stream across is not less than the pace."""
    spare = np.square(pace_m_s) - np.square(across_m_s)
    return np.where(spare > 0.0, along_m_s + np.sqrt(np.maximum(spare, 0.0)), np.nan)


def course_made_good(
    heading_true_deg: ArrayLike, speed_m_s: ArrayLike, set_deg: ArrayLike, drift_m_s: ArrayLike
) -> tuple[np.ndarray, np.ndarray]:
    """Track true 0-360 and ground speed m/s of a heading held in a stream; arguments broadcast."""
    heading, towards = np.radians(np.asarray(heading_true_deg, dtype=float)), np.radians(set_deg)
    east = speed_m_s * np.sin(heading) + drift_m_s * np.sin(towards)
    north = speed_m_s * np.cos(heading) + drift_m_s * np.cos(towards)
    return np.degrees(np.arctan2(east, north)) % 360.0, np.hypot(east, north)


def set_and_drift(
    track_true_deg: ArrayLike, ground_speed_m_s: ArrayLike, heading_true_deg: ArrayLike, speed_m_s: ArrayLike
) -> tuple[np.ndarray, np.ndarray]:
    """Set 0-360 and drift m/s that turned a heading and speed into a track and ground speed."""
    return course_made_good(track_true_deg, ground_speed_m_s, np.asarray(heading_true_deg) + 180.0, speed_m_s)
