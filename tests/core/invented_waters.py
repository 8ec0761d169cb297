"""Streams with a formula, as ``water(place, t_s)`` -> complex (east + 1j north, m/s), of no real place."""

from __future__ import annotations

import numpy as np

HOUR_S = 3600.0


def steady(towards_deg: float, rate_m_s: float):
    """The same everywhere and always."""
    stream = rate_m_s * 1j * np.exp(-1j * np.radians(towards_deg))
    return lambda place, t_s: stream + 0.0 * place


def growing(towards_deg: float, rate_m_s: float, per_hour_m_s: float):
    """Linear in time."""
    unit = 1j * np.exp(-1j * np.radians(towards_deg))
    return lambda place, t_s: unit * (rate_m_s + per_hour_m_s * t_s / HOUR_S) + 0.0 * place


def sheared(towards_deg: float, rate_m_s: float, per_km_m_s: float):
    """Linear across its own set, positive to the right."""
    unit = 1j * np.exp(-1j * np.radians(towards_deg))
    return lambda place, t_s: unit * (rate_m_s - per_km_m_s * (place * unit.conjugate()).imag / 1000.0)


def rotary(rate_m_s: float, period_h: float, *, first_deg: float = 0.0, narrow: float = 0.6):
    """An ellipse turned through once in a period; it has no slack."""

    def water(place, t_s):
        turn = 2.0 * np.pi * t_s / (period_h * HOUR_S) + np.radians(first_deg)
        return rate_m_s * (np.cos(turn) + 1j * narrow * np.sin(turn)) + 0.0 * place

    return water


def eddy(centre: complex, core_m: float, rate_m_s: float, drift: complex = 0.0):
    """A smooth eddy, fastest at 0.7 core radii from its centre, which drifts."""

    def water(place, t_s):
        offset = (place - centre - drift * t_s) / core_m
        return rate_m_s * 2.33 * 1j * offset * np.exp(-(np.abs(offset) ** 2))

    return water


def tide_and_eddy(place, t_s):
    """Varies in space and in time, smoothly, and nowhere faster than 0.35 m/s."""
    tide = 0.2 * np.exp(1j * place.real / 2500.0) * np.cos(2 * np.pi * t_s / (12.4 * HOUR_S) + 0.3)
    return tide + eddy(600.0 + 500.0j, 800.0, 0.15)(place, t_s)


class RandomWater:
    """Many random smooth streams at once: sums of waves, from a seed.

    ``gradient_m`` (n,) and ``change_h`` (n,) are the least quarter-lengths of the waves in space and time: over one of
    them a wave goes from its full rate to nothing. ``most_m_s`` (n,) is the largest rate on a grid of places and times.
    """

    def __init__(self, rng, gradient_m, change_h, most_m_s, *, waves: int = 6) -> None:
        n = len(gradient_m)
        length = np.asarray(gradient_m)[:, None] * rng.uniform(1.0, 3.0, (n, waves))
        self.number = np.pi / 2.0 / length * np.exp(1j * rng.uniform(0.0, 2 * np.pi, (n, waves)))
        period = np.asarray(change_h)[:, None] * HOUR_S * rng.uniform(1.0, 3.0, (n, waves))
        self.pulse = np.pi / 2.0 / period * rng.choice([-1.0, 1.0], (n, waves))
        self.phase = rng.uniform(0.0, 2 * np.pi, (n, waves))
        self.wave = rng.normal(size=(n, waves)) + 1j * rng.normal(size=(n, waves))
        places = (rng.uniform(-4000.0, 4000.0, 1500) + 1j * rng.uniform(-4000.0, 4000.0, 1500))[:, None]
        times = rng.uniform(0.0, 6 * HOUR_S, 1500)[:, None]
        largest = np.max(np.abs(self(np.repeat(places, n, axis=1), np.repeat(times, n, axis=1))), axis=0)
        self.wave *= (np.asarray(most_m_s) / largest)[:, None]

    def __call__(self, place, t_s):
        """The streams (..., n) at places and times (..., n)."""
        return self._of(slice(None), np.asarray(place), np.asarray(t_s))

    def one(self, row: int):
        """One of the streams, for places and times of any shape."""
        return lambda place, t_s: self._of(row, np.asarray(place), np.asarray(t_s))

    def _of(self, rows, place, t_s):
        place, t_s = place[..., None], t_s[..., None]
        angle = (self.number[rows].conj() * place).real + self.pulse[rows] * t_s + self.phase[rows]
        return np.sum(self.wave[rows] * np.cos(angle), axis=-1)
