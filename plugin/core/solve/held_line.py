"""The other two ways to hold a leg: crabbing along the ruler line all the time, and a new heading every so often."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from ..water.stream import UNKNOWN, Stream, StreamSample, for_rows
from .current_triangle import along_line_speed
from .one_heading import CLOSE_M, LONGEST_LEG_S, MOST_ROUNDS, Held, hold_one_heading
from .swum import ARRIVED, NEVER_ARRIVES, STREAM_UNKNOWN, TOO_STRONG_ACROSS, Line, Nodes, running_integral


def hold_the_line(
    stream: Stream, line: Line, depart_s: np.ndarray, pace_m_s: ArrayLike, *, step_s: float = 30.0
) -> Held:
    """Headings that keep n departures on the ruler line: ds/dt = c_along + sqrt(v^2 - c_across^2), second order.

    ``pace_m_s`` is one pace or one a departure (n,); a ``RowStream`` has one water a departure.
    """
    n = len(depart_s)
    pace = np.broadcast_to(np.asarray(pace_m_s, dtype=float), n)
    arrive, ending, parts = np.full(n, np.nan), np.full(n, NEVER_ARRIVES), []
    waiting = np.arange(n)
    window = np.minimum(1.5 * line.length_m / pace + 2.0 * step_s, LONGEST_LEG_S)
    while len(waiting):
        water = for_rows(stream, waiting)
        after, found, nodes = _line_window(water, line, depart_s[waiting], pace[waiting], window[waiting], step_s)
        done = (found != NEVER_ARRIVES) | (window[waiting] >= LONGEST_LEG_S)
        arrive[waiting[done]], ending[waiting[done]] = after[done], found[done]
        part = Nodes(**{name: getattr(nodes, name)[done] for name in Nodes.names()})
        parts.append(part.spread_to(waiting[done], n))
        waiting, window = waiting[~done], np.minimum(window * 3.0, LONGEST_LEG_S)
    return Held(arrive_s=arrive, ending=ending, nodes=_overlaid(parts))


def _line_window(
    stream: Stream, line: Line, depart_s: np.ndarray, pace: np.ndarray, window_s: np.ndarray, step_s: float
) -> tuple[np.ndarray, np.ndarray, Nodes]:
    """Arrival (n,), ending (n,) and nodes within windows (n,), by repeated substitution of the way along the line."""
    count = max(4, int(np.ceil(np.max(window_s) / step_s)))
    step = window_s / count
    tau = step[:, None] * np.arange(count + 1)
    way = pace[:, None] * tau
    unknown = np.zeros(way.shape, dtype=bool)
    for _ in range(MOST_ROUNDS):
        place = line.start + way[..., None] * line.ahead
        sample = stream.at(place[..., 0], place[..., 1], depart_s[:, None] + tau)
        ahead = sample.east_m_s * line.ahead[0] + sample.north_m_s * line.ahead[1]
        right = sample.east_m_s * line.right[0] + sample.north_m_s * line.right[1]
        speed = along_line_speed(pace[:, None], ahead, right)
        unknown_before, unknown = unknown, sample.status == UNKNOWN
        before, way = way, running_integral(np.nan_to_num(speed), step)
        if np.max(np.abs(way - before)) < CLOSE_M:
            break
    # At the rim of unknown water the rounds swing between in and out, and the last one may be out: both count.
    swings = np.max(np.abs(way - before), axis=1) >= CLOSE_M
    unknown |= swings[:, None] & unknown_before
    there = way >= line.length_m
    reached = there.any(axis=1)
    node = np.where(reached, np.argmax(there, axis=1), count)
    last = _time_at(way, speed, step, tau, node, line.length_m)
    past = np.arange(count + 1)[None, :] > node[:, None]
    ending = np.where(reached, ARRIVED, NEVER_ARRIVES)
    ending = np.where(np.any(np.isnan(speed) & ~past, axis=1), TOO_STRONG_ACROSS, ending)
    ending = np.where(np.any(unknown & ~past, axis=1), STREAM_UNKNOWN, ending)
    arrive = np.where(ending == ARRIVED, depart_s + last, np.nan)
    with np.errstate(invalid="ignore"):
        heading = np.arctan2(*line.ahead) + np.arcsin(np.clip(-right / pace[:, None], -1.0, 1.0))
    nodes = _line_nodes(place, depart_s, tau, sample, heading, past)
    rows = np.flatnonzero(ending == ARRIVED)
    nodes.t_s[rows, node[rows]] = arrive[rows]
    nodes.x_m[rows, node[rows]], nodes.y_m[rows, node[rows]] = line.end
    return arrive, ending, nodes


def _line_nodes(
    place: np.ndarray,
    depart_s: np.ndarray,
    tau: np.ndarray,
    sample: StreamSample,
    heading: np.ndarray,
    past: np.ndarray,
) -> Nodes:
    columns = {
        "t_s": depart_s[:, None] + tau,
        "x_m": place[..., 0],
        "y_m": place[..., 1],
        "east_m_s": sample.east_m_s,
        "north_m_s": sample.north_m_s,
        "heading_rad": heading,
    }
    arrays = {name: np.where(past, np.nan, values) for name, values in columns.items()}
    return Nodes(**arrays, status=np.where(past, UNKNOWN, sample.status))


def _time_at(
    way: np.ndarray, speed: np.ndarray, step: np.ndarray, tau: np.ndarray, node: np.ndarray, length_m: float
) -> np.ndarray:
    """Time at which the way reaches the length, the speed linear within the step: a root of a quadratic."""
    rows, before = np.arange(len(node)), np.maximum(node - 1, 0)
    first = np.nan_to_num(speed[rows, before])
    second = np.nan_to_num(speed[rows, node])
    left = length_m - way[rows, before]
    slope = (second - first) / step
    # The root written so that a slope near nothing does no harm; the way left is positive, so is the root.
    root = np.sqrt(np.maximum(first**2 + 2.0 * slope * left, 0.0))
    total = first + root
    return tau[rows, before] + np.where(total > 0.0, 2.0 * left / np.where(total > 0.0, total, 1.0), 0.0)


def renew_heading(
    stream: Stream, line: Line, depart_s: np.ndarray, pace_m_s: ArrayLike, every_s: float, *, step_s: float = 30.0
) -> Held:
    """A new heading every ``every_s``: each brings the swimmer back onto the ruler line when the next one is due.

    The last one is solved onto the mark itself. Pace and stream as in ``hold_the_line``.
    """
    n = len(depart_s)
    pace = np.broadcast_to(np.asarray(pace_m_s, dtype=float), n)
    arrive, ending = np.full(n, np.nan), np.full(n, NEVER_ARRIVES)
    place, now = np.tile(line.start, (n, 1)), depart_s.astype(float)
    waiting, parts = np.arange(n), []
    while len(waiting):
        water = for_rows(stream, waiting)
        last = hold_one_heading(
            water, place[waiting], line.end, now[waiting], pace[waiting], step_s=step_s, longest_s=every_s
        )
        done = last.ending != NEVER_ARRIVES
        arrive[waiting[done]], ending[waiting[done]] = last.arrive_s[done], last.ending[done]
        finished = Nodes(**{name: getattr(last.nodes, name)[done] for name in Nodes.names()})
        parts.append(finished.spread_to(waiting[done], n))
        waiting = waiting[~done]
        waiting = waiting[now[waiting] - depart_s[waiting] < LONGEST_LEG_S]
        if not len(waiting):
            break
        found, nodes, place[waiting] = _back_on_line(
            for_rows(stream, waiting), line, place[waiting], now[waiting], pace[waiting], every_s, step_s
        )
        parts.append(nodes.spread_to(waiting, n))
        now[waiting] += every_s
        ending[waiting] = np.where(found == ARRIVED, NEVER_ARRIVES, found)
        waiting = waiting[found == ARRIVED]
    return Held(arrive_s=arrive, ending=ending, nodes=Nodes.joined(parts))


def _back_on_line(
    stream: Stream, line: Line, start: np.ndarray, depart_s: np.ndarray, pace: np.ndarray, every_s: float, step_s: float
) -> tuple[np.ndarray, Nodes, np.ndarray]:
    """One heading (n,) held for ``every_s`` such that the track ends on the ruler line; ending, nodes and place."""
    count = max(4, int(np.ceil(every_s / step_s)))
    step = np.full(len(depart_s), every_s / count)
    tau = every_s / count * np.arange(count + 1)
    across_at_start = (start - line.start) @ line.right
    shift = np.zeros((len(depart_s), count + 1, 2))
    sine = np.zeros(len(depart_s))
    unknown = np.zeros(shift.shape[:2], dtype=bool)
    for _ in range(MOST_ROUNDS):
        unit = np.sqrt(1.0 - sine**2)[:, None] * line.ahead + sine[:, None] * line.right
        place = start[:, None, :] + tau[:, None] * (pace[:, None] * unit)[:, None, :] + shift
        sample = stream.at(place[..., 0], place[..., 1], depart_s[:, None] + tau)
        parts = (sample.east_m_s, sample.north_m_s)
        unknown_before, unknown = unknown, sample.status == UNKNOWN
        before = shift
        shift = np.stack([running_integral(np.nan_to_num(part), step) for part in parts], axis=2)
        wanted = -(across_at_start + shift[:, -1] @ line.right) / (pace * every_s)
        sine_before, sine = sine, np.clip(wanted, -1.0, 1.0)
        if np.max(np.abs(shift - before)) < CLOSE_M and np.max(np.abs(sine - sine_before) * pace) * every_s < CLOSE_M:
            break
    ending = np.where(np.abs(wanted) < 1.0, ARRIVED, TOO_STRONG_ACROSS)
    swings = np.max(np.abs(shift - before), axis=(1, 2)) >= CLOSE_M
    unknown |= swings[:, None] & unknown_before
    ending = np.where(np.any(unknown, axis=1), STREAM_UNKNOWN, ending)
    heading = np.broadcast_to(np.arctan2(unit[:, 0], unit[:, 1])[:, None], place.shape[:2])
    nodes = _line_nodes(place, depart_s, tau, sample, heading, np.zeros(place.shape[:2], dtype=bool))
    return ending, nodes, place[:, -1]


def _overlaid(parts: list[Nodes]) -> Nodes:
    """Parts of different departures put together; each departure has numbers in one part only."""
    width = max(part.t_s.shape[1] for part in parts)
    whole = Nodes.blank(len(parts[0].t_s), width)
    for part in parts:
        rows = np.isfinite(part.t_s).any(axis=1)
        for name in Nodes.names():
            getattr(whole, name)[rows, : part.t_s.shape[1]] = getattr(part, name)[rows]
    return whole
