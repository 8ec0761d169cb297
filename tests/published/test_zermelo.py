"""Shortest time in a flow: closed forms and published optima, met by the front of the reach solver.

The scale is ours: a unit of length of the published problem is 500 m and the speed through the water 0.5 m/s, so that a
unit of its time is 1000 s.
"""

from __future__ import annotations

import cmath
import math

import numpy as np
import pytest
from reach_waters import front_from, open_water, seconds_at

UNIT_M, PACE_M_S, UNIT_S = 500.0, 0.5, 1000.0
SHEAR_BOX, VORTEX_BOX = (-2.0, -3.0, 7.0, 3.0), (-3.5, -3.5, 3.5, 3.5)
# A. E. Bryson and Y.-C. Ho, Applied Optimal Control, 2.7, example: a linear shear u = -y, V = 1, to the origin; exact
# T = tan(theta_f) - tan(theta_0) with headings of 105 and 240 degrees. J. T. Betts, Practical Methods for Optimal
# Control and Estimation Using Nonlinear Programming, 3rd ed., example 10.148, has the other start.
BRYSON_START, BRYSON_T = 3.6586576 - 1.8637033j, 5.4641016
BETTS_START, BETTS_T = 3.5 - 1.8j, 5.26493205
# Bryson and Ho, p. 77, problem 1: a Gaussian vortex. The time printed there is a local optimum; the global one is of a
# fan of 72 000 headings (shared checks of this project), met again below.
VORTEX_START, VORTEX_END, VORTEX_T, LOCAL_T = -2.0 + 0j, 0.5 - 1.6j, 3.519740, 3.682008


def shear(place, t_s):
    """Linear shear of the published problem, in m/s at places in metres."""
    return PACE_M_S * (-place.imag / UNIT_M + 0j)


def vortex(place, t_s):
    z = place / UNIT_M
    return PACE_M_S * (z.imag - 1j * z.real) * np.exp(-(np.abs(z) ** 2) + 0.25)


def solved(flow, box, start, end, cell, *, backward):
    """The published problem's time by a grid, run from its start or backward in time from its end."""
    water = open_water(np.array(box) * UNIT_M, cell * UNIT_M)
    first, last = (end, start) if backward else (start, end)
    front = front_from(water, flow, first * UNIT_M, PACE_M_S, 8.0 * UNIT_S, backward=backward)
    return seconds_at(front, last * UNIT_M) / UNIT_S


def test_the_exact_form_gives_bryson_and_hos_time() -> None:
    exact = math.tan(math.radians(240.0)) - math.tan(math.radians(105.0))
    assert exact == pytest.approx(BRYSON_T, abs=5e-8)


@pytest.mark.parametrize("backward", [False, True])
@pytest.mark.parametrize(("start", "time"), [(BRYSON_START, BRYSON_T), (BETTS_START, BETTS_T)])
def test_linear_shear(start: complex, time: float, backward: bool) -> None:
    assert solved(shear, SHEAR_BOX, start, 0j, 0.03, backward=backward) == pytest.approx(time, rel=4e-3)


@pytest.mark.parametrize("backward", [False, True])
@pytest.mark.parametrize("cell", [0.08, 0.04, 0.02])
def test_gaussian_vortex_gives_the_global_optimum(cell: float, backward: bool) -> None:
    time = solved(vortex, VORTEX_BOX, VORTEX_START, VORTEX_END, cell, backward=backward)
    assert time == pytest.approx(VORTEX_T, rel=4e-3)
    assert time < LOCAL_T * 0.97


def test_a_fan_of_headings_finds_the_same_vortex_optimum() -> None:
    """Headings turn by Zermelo's equation, dtheta/dt = sin^2 v_x + sin cos (u_x - v_y) - cos^2 u_y; RK4 over a fan."""

    def rates(state):
        x, y, theta = state
        w = np.exp(-x * x - y * y + 0.25)
        u_x, u_y, v_x, v_y = -2 * x * y * w, (1 - 2 * y * y) * w, -(1 - 2 * x * x) * w, 2 * x * y * w
        sine, cosine = np.sin(theta), np.cos(theta)
        turn = sine**2 * v_x + sine * cosine * (u_x - v_y) - cosine**2 * u_y
        return np.stack([cosine + y * w, sine - x * w, turn])

    fan, step = np.linspace(-np.pi, np.pi, 8001), 0.005
    state = np.stack([np.full(fan.shape, -2.0), np.zeros(fan.shape), fan])
    best = np.inf
    for number in range(900):
        k1 = rates(state)
        k2 = rates(state + step / 2 * k1)
        k3 = rates(state + step / 2 * k2)
        k4 = rates(state + step * k3)
        before, state = state[0] + 1j * state[1], state + step / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
        after = state[0] + 1j * state[1]
        # Two neighbours of the fan and their next places make a cell; the end place in it is passed in this step.
        a, b, c = before[:-1], before[1:], after[:-1]
        across, ahead, offset = b - a, c - a, VORTEX_END - before[:-1]
        area = (across.conj() * ahead).imag
        with np.errstate(divide="ignore", invalid="ignore"):
            s, t = (offset.conj() * ahead).imag / area, -(offset.conj() * across).imag / area
        hit = np.flatnonzero((s >= 0.0) & (s <= 1.0) & (t >= 0.0) & (t <= 1.0) & (np.abs(across) < 0.1))
        if len(hit):
            best = step * (number + float(t[hit].min()))
            break
    assert best == pytest.approx(VORTEX_T, abs=2e-3)


@pytest.mark.parametrize("bearing_deg", [0.0, 17.0, 32.0, 45.0, 71.0])
def test_uniform_stream_across(bearing_deg: float) -> None:
    """1 km at 0.8 m/s across 0.3 m/s takes 1348.400 s by the closed form."""
    ahead = cmath.rect(1.0, math.radians(bearing_deg))
    water = open_water((-1500.0, -1500.0, 1500.0, 1500.0), 10.0)
    front = front_from(water, lambda place, t_s: 0.3j * ahead + 0.0 * place, 0j, 0.8, 4000.0)
    assert seconds_at(front, 1000.0 * ahead) == pytest.approx(1348.400, rel=4e-3)


@pytest.mark.parametrize("bearing_deg", [0.0, 9.0, 22.5, 36.0])
def test_out_and_back_along_a_uniform_stream(bearing_deg: float) -> None:
    """1 km out and back along 0.3 m/s takes 2909.091 s by the closed form."""
    ahead = cmath.rect(1.0, math.radians(bearing_deg))
    water = open_water((-1500.0, -1500.0, 1500.0, 1500.0), 10.0)

    def flow(place, t_s):
        return 0.3 * ahead + 0.0 * place

    out = seconds_at(front_from(water, flow, 0j, 0.8, 4000.0), 1000.0 * ahead)
    home = seconds_at(front_from(water, flow, 0j, 0.8, 4000.0, backward=True), 1000.0 * ahead)
    assert out + home == pytest.approx(2909.091, rel=4e-3)
