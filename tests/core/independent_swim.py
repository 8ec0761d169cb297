"""A swim integrated another way: fourth order Runge-Kutta in small steps, headings found by shooting.

Written apart from the solvers that it checks: places as complex numbers (east + 1j north), fans of headings narrowed by
bisection of a signed miss. ``water(place, t_s)`` gives the stream as a complex number for arrays of places and times.
"""

from __future__ import annotations

import cmath

import numpy as np
from tideleg.core.water.stream import KNOWN, UNKNOWN, StreamSample


class WaterStream:
    """A formula ``water(place, t_s)`` -> complex stream as the solvers ask for it; NaN is unknown."""

    def __init__(self, water) -> None:
        self.water = water

    def at(self, x_m, y_m, t_s) -> StreamSample:
        x, y, t = np.broadcast_arrays(*(np.asarray(value, dtype=float) for value in (x_m, y_m, t_s)))
        stream = np.asarray(self.water(x + 1j * y, t) + np.zeros(x.shape), dtype=complex)
        status = np.where(np.isnan(stream), UNKNOWN, KNOWN).astype(np.int8)
        return StreamSample(east_m_s=stream.real.copy(), north_m_s=stream.imag.copy(), status=status)


def bearing_vector(heading_deg):
    """Unit vectors of headings clockwise from north, as complex numbers east + 1j north."""
    return 1j * np.exp(-1j * np.radians(heading_deg))


def swim_on_headings(water, start, own, depart_s, seconds, *, steps: int):
    """Places (steps + 1, ...) of swimmers with constant own velocities (complex), each for its own time, by RK4."""
    own, depart_s, seconds = np.broadcast_arrays(np.asarray(own, dtype=complex), depart_s, seconds)
    place, t, h = np.full(own.shape, start, dtype=complex), depart_s.astype(float), seconds / steps
    places = [place]
    for _ in range(steps):
        k1 = own + water(place, t)
        k2 = own + water(place + h / 2 * k1, t + h / 2)
        k3 = own + water(place + h / 2 * k2, t + h / 2)
        k4 = own + water(place + h * k3, t + h)
        place, t = place + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4), t + h
        places.append(place)
    return np.array(places)


def nearest_miss(places, mark, h):
    """For tracks (k, n): signed nearest miss of the mark (left positive), and seconds from the start to it."""
    steps = np.diff(places, axis=0)
    offset = mark - places[:-1]
    share = np.clip((offset * steps.conj()).real / np.maximum(np.abs(steps) ** 2, 1e-12), 0.0, 1.0)
    left = offset - share * steps
    at = np.argmin(np.abs(left), axis=0)
    columns = np.arange(places.shape[1])
    gap, step = left[at, columns], steps[at, columns]
    side = np.sign((step.conj() * gap).imag)
    return np.abs(gap) * np.where(side == 0.0, 1.0, side), (at + share[at, columns]) * h


def shoot(water, start, mark, depart_s, pace, longest_s, *, step_s: float = 5.0, about_deg=None, spread_deg=85.0):
    """The heading (degrees of the grid) that passes over the mark and the seconds it takes, or None.

    Of several headings the one that arrives first. Fans of 41 headings are narrowed five times round each change
    of side of the miss.
    """
    about = about_deg if about_deg is not None else 90.0 - np.degrees(cmath.phase(mark - start))
    fan = about + np.linspace(-spread_deg, spread_deg, 171)
    found = []
    for low, high in _changes_of_side(water, start, mark, depart_s, pace, longest_s, step_s, fan):
        for _ in range(5):
            fan = np.linspace(low, high, 41)
            narrow = _changes_of_side(water, start, mark, depart_s, pace, longest_s, step_s, fan)
            if not narrow:
                break
            low, high = narrow[0]
        else:
            heading = (low + high) / 2.0
            miss, seconds = _fan_miss(water, start, mark, depart_s, pace, longest_s, step_s, np.array([heading]))
            if abs(miss[0]) < 0.1:
                found.append((float(seconds[0]), float(heading) % 360.0))
    return min(found)[::-1] if found else None


def _fan_miss(water, start, mark, depart_s, pace, longest_s, step_s, fan):
    steps = int(np.ceil(longest_s / step_s))
    own = pace * bearing_vector(fan)
    places = swim_on_headings(water, start, own, depart_s, float(longest_s), steps=steps)
    return nearest_miss(places, mark, longest_s / steps)


def _changes_of_side(water, start, mark, depart_s, pace, longest_s, step_s, fan):
    miss, _ = _fan_miss(water, start, mark, depart_s, pace, longest_s, step_s, fan)
    swaps = np.flatnonzero(np.sign(miss[1:]) != np.sign(miss[:-1]))
    # A jump from far left to far right passes behind the start, not over the mark.
    near = [row for row in swaps if abs(miss[row] - miss[row + 1]) < 0.9 * abs(mark - start)]
    return [(fan[row], fan[row + 1]) for row in near]


def hold_line(water, start, mark, depart_s, pace, longest_s, *, step_s: float = 2.0):
    """Seconds to swim the straight line by crabbing, RK4 on the way along it; None where it is not held or reached."""
    ahead = (mark - start) / abs(mark - start)
    goal = abs(mark - start)

    def speed(way, t):
        stream = complex(water(np.array(start + way * ahead), np.array(t))) * ahead.conjugate()
        spare = pace**2 - stream.imag**2
        return stream.real + spare**0.5 if spare > 0.0 else float("nan")

    way, t = 0.0, float(depart_s)
    while t - depart_s < longest_s:
        k1 = speed(way, t)
        k2 = speed(way + step_s / 2 * k1, t + step_s / 2)
        k3 = speed(way + step_s / 2 * k2, t + step_s / 2)
        k4 = speed(way + step_s * k3, t + step_s)
        after = way + step_s / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
        if np.isnan(after):
            return None
        if after >= goal:
            return t - depart_s + step_s * (goal - way) / (after - way)
        way, t = after, t + step_s
    return None
