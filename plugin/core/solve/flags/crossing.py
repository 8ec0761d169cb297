"""The geometry of one channel crossing."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ...geodesy import LocalFrame
from ...words import tr

LEAST_SET_DOWN_M = 5.0  # less than a GPS shows


@dataclass(frozen=True, kw_only=True)
class Crossing:
    """A stretch of track through a channel.

    ``part_m`` (k, 2) in the frame, ``seconds`` inside, ``heading_rad`` and ``flow_rad`` of the grid (flow either way,
    NaN where unknown), ``stream_m_s`` (2,) the mean stream, ``pace_m_s`` through the water.
    """

    part_m: np.ndarray
    seconds: float
    heading_rad: float
    stream_m_s: np.ndarray
    flow_rad: float
    pace_m_s: float

    @property
    def heading_angle_deg(self) -> float:
        """Angle 0-90 between the heading and the channel's traffic; COLREG 10(c) speaks of the heading."""
        return _acute_deg(self.heading_rad - self.flow_rad)

    @property
    def track_angle_deg(self) -> float:
        """Angle 0-90 between the track and the channel's traffic."""
        east, north = self.part_m[-1] - self.part_m[0]
        return _acute_deg(np.arctan2(east, north) - self.flow_rad)

    @property
    def width_m(self) -> float:
        """Way made across the channel's traffic, metres."""
        return float(abs((self.part_m[-1] - self.part_m[0]) @ self._across))

    @property
    def square_seconds(self) -> float:
        """Time to cross on a heading square to the traffic; NaN where the stream does not let one across."""
        speed = self.pace_m_s + self.stream_m_s @ self._across
        return self.width_m / speed if speed > 0.0 else float("nan")

    @property
    def set_down_m(self) -> float:
        """How far the stream sets along the channel while crossing square, metres, positive with the traffic."""
        return float(self.stream_m_s @ self._with_flow * self.square_seconds)

    def square_words(self, frame: LocalFrame) -> list[str]:
        """What a square crossing takes, in a sentence; none where there is nothing to say."""
        if not (np.isfinite(self.square_seconds) and self.width_m > 1.0):
            return []
        down = abs(self.set_down_m)
        words = tr("Crossing square takes {square_seconds:.1f} min").format(square_seconds=self.square_seconds / 60.0)
        if down < LEAST_SET_DOWN_M:
            return [words + "."]
        towards = self.flow_rad if self.set_down_m > 0.0 else self.flow_rad + np.pi
        true = np.degrees(towards) + frame.convergence_at(self.part_m[0, 0])
        return [
            tr("{words} and sets you down {down:.0f} m towards {true_deg:03.0f}° true: aim that far up-stream.").format(
                words=words, down=down, true_deg=true % 360.0
            )
        ]

    @property
    def _with_flow(self) -> np.ndarray:
        return np.array([np.sin(self.flow_rad), np.cos(self.flow_rad)])

    @property
    def _across(self) -> np.ndarray:
        """Unit vector square to the traffic, to the side the swimmer crosses to."""
        across = np.array([np.cos(self.flow_rad), -np.sin(self.flow_rad)])
        return across if (self.part_m[-1] - self.part_m[0]) @ across >= 0.0 else -across


def _acute_deg(angle_rad: float) -> float:
    return float(np.degrees(np.arccos(np.clip(abs(np.cos(angle_rad)), 0.0, 1.0)))) if np.isfinite(angle_rad) else np.nan
