"""One heading per leg for very many departures: few nodes where the stream is smooth, the full solver where it is not.

With tau = T s the track is start + v T s e + D(s), D the stream's displacement. The stream is sampled at the points of
a ``SmoothRule`` and integrated as the polynomial through them; T follows by Newton's method from
|mark - start - D(1)| = v T, and e is the direction of that vector. What every second point alone would give measures
the error. What lies between the points may be anything - an eddy, water that is not known -, so every track is looked
at once more, at the full solver's own step where the stream may have edges: where it is not what the polynomial says,
or not known, the row goes to more points, and in the end to ``hold_one_heading``.
"""

from __future__ import annotations

from dataclasses import dataclass, fields

import numpy as np
from numpy.typing import ArrayLike

from ..water.stream import EXTRAPOLATED, UNKNOWN, Stream, for_rows, has_edges
from .one_heading import LONGEST_LEG_S, hold_one_heading
from .smooth_rule import EVEN, SmoothRule, smooth_rule
from .swum import ARRIVED, NEVER_ARRIVES, NOT_REACHED, STREAM_UNKNOWN, TOO_STRONG_ACROSS, Nodes

LEVELS = (6, 12, 24, 48)  # intervals between the points
MOST_ROUNDS = 14
USUAL_ROUNDS, FEW = 4, 0.02
STILL_M = 0.02
WITHIN_S = 0.05  # of the arrival by every second point; all of them are several times nearer
NEAR_LIMIT_M_S = 0.01  # nearer to what cannot be swum the full solver decides
FIRST_HIT_M = 1.0
LOOK_WITHIN_S = 0.3  # of the arrival, by the stream looked at on the way
LOOKS_BY = 8  # tracks are looked at together by so many looks more or less


@dataclass(frozen=True, kw_only=True)
class QuickLegs:
    """Legs for n rows. Arrays (n,), NaN where a leg is not completed.

    ``ending``, ``least_ahead_m_s``, ``most_across_m_s`` and ``extrapolated`` as in ``LegSwum``; ``heading_rad`` of the
    grid; ``t_s`` (n, 25) and ``xy_m`` (n, 25, 2) the tracks at even times.
    """

    depart_s: np.ndarray
    arrive_s: np.ndarray
    ending: np.ndarray
    heading_rad: np.ndarray
    least_ahead_m_s: np.ndarray
    most_across_m_s: np.ndarray
    extrapolated: np.ndarray
    t_s: np.ndarray
    xy_m: np.ndarray

    @classmethod
    def blank(cls, depart_s: np.ndarray) -> QuickLegs:
        """Legs that nobody has swum yet."""
        n = len(depart_s)
        missing = ("arrive_s", "heading_rad", "least_ahead_m_s", "most_across_m_s")
        return cls(
            depart_s=np.array(depart_s, dtype=float),
            ending=np.full(n, NOT_REACHED),
            extrapolated=np.zeros(n, dtype=bool),
            t_s=np.full((n, len(EVEN)), np.nan),
            xy_m=np.full((n, len(EVEN), 2), np.nan),
            **{name: np.full(n, np.nan) for name in missing},
        )

    def put(self, rows: np.ndarray, **values: np.ndarray) -> None:
        """Fill the rows in, while the legs are being solved."""
        for name, value in values.items():
            getattr(self, name)[rows] = value

    def put_track(self, row: int, nodes: Nodes, node_row: int) -> None:
        """Fill in the track of a row that has arrived, from a row of the full solver's nodes."""
        kept = np.isfinite(nodes.t_s[node_row])
        t_s = self.depart_s[row] + EVEN * (self.arrive_s[row] - self.depart_s[row])
        places = [np.interp(t_s, nodes.t_s[node_row, kept], part[node_row, kept]) for part in (nodes.x_m, nodes.y_m)]
        self.t_s[row], self.xy_m[row] = t_s, np.column_stack(places)

    def of(self, rows: np.ndarray) -> QuickLegs:
        """Some of the rows."""
        return QuickLegs(**{one.name: getattr(self, one.name)[rows] for one in fields(self)})

    def swimmable(self, length_m: np.ndarray | float, pace_m_s: np.ndarray | float, least_m_s: float) -> np.ndarray:
        """Whether each row can swim its leg, by the rules of ``swim.swimmable``, shape (n,)."""
        with np.errstate(invalid="ignore"):
            mean = length_m / (self.arrive_s - self.depart_s)
            held = (self.least_ahead_m_s > 0.0) & (self.most_across_m_s < pace_m_s) & (mean >= least_m_s)
        return (self.ending == ARRIVED) & held


def quick_legs(
    stream: Stream,
    start_m: np.ndarray,
    end_m: np.ndarray,
    depart_s: np.ndarray,
    pace_m_s: ArrayLike,
    *,
    step_s: float,
    slowest_m_s: float = 0.0,
    within_s: float = WITHIN_S,
) -> QuickLegs:
    """Legs from places to marks, (n, 2) or one (2,) each, leaving at (n,) seconds; NaN departures stay blank.

    ``stream`` gives vectors of the grid and may be a ``RowStream``; ``pace_m_s`` is one for all, or one a row (n,).
    ``step_s`` is the full solver's, which takes the rows whose arrival by few points is not known ``within_s``; it
    looks no longer than a mean speed of ``slowest_m_s`` over the ground takes. A row whose stream at the start already
    sets across as fast as the swimmer makes way, or pushes back, is given up: it cannot be swum whatever comes. Error
    against ``hold_one_heading``: by default a few tenths of a second.
    """
    found = QuickLegs.blank(depart_s)
    start = np.broadcast_to(np.asarray(start_m, dtype=float), (len(found.depart_s), 2))
    pace = np.broadcast_to(np.asarray(pace_m_s, dtype=float), found.depart_s.shape)
    mark = _complex(end_m - start)
    legs = _Legs(stream=stream, start=_complex(start), mark=mark, depart_s=found.depart_s, pace=pace)
    rows = legs.not_hopeless_at_start(np.flatnonzero(np.isfinite(found.depart_s)), found)
    # Where stations alone make the stream it changes over hundreds of metres: half the looks find all there is.
    look_s = step_s if has_edges(stream) else 2.0 * step_s
    before: _Level | None = None
    for intervals in LEVELS:
        if len(rows):
            before = _Level(legs, rows, smooth_rule(intervals), look_s, within_s, before)
            rows = before.solve(found)
    rows = legs.not_hopeless_under_way(rows, found) if len(rows) else rows
    if len(rows):
        legs.solve_in_full(rows, found, step_s, slowest_m_s)
    return found


def _complex(pairs: np.ndarray) -> np.ndarray:
    """Places or vectors (..., 2) as complex numbers, east + 1j north: a row's are turned and added as one."""
    return pairs[..., 0] + 1j * pairs[..., 1]


@dataclass(frozen=True, kw_only=True)
class _Legs:
    """The legs asked for, complex: starts (n,) and marks from there (n,); departures and paces (n,)."""

    stream: Stream
    start: np.ndarray
    mark: np.ndarray
    depart_s: np.ndarray
    pace: np.ndarray

    def length(self, rows: np.ndarray) -> np.ndarray:
        """Lengths (m,) of the ruler lines."""
        return np.maximum(np.abs(self.mark[rows]), 1e-9)

    def ahead(self, rows: np.ndarray) -> np.ndarray:
        """Unit vectors (m,) along the ruler lines."""
        return self.mark[rows] / self.length(rows)

    def flow(self, rows: np.ndarray, place: np.ndarray, tau: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Stream (m, k), nothing where unknown, and its status (m, k) at places (m, k) after seconds (m, k)."""
        sample = for_rows(self.stream, rows).at(place.real, place.imag, self.depart_s[rows, None] + tau)
        flow = sample.east_m_s + 1j * sample.north_m_s
        flow[sample.status == UNKNOWN] = 0.0
        return flow, sample.status

    def along_across(self, rows: np.ndarray, flow: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """The stream (m, k) along the ruler lines and, without its sign, across them (m, k)."""
        turned = flow * self.ahead(rows).conj()[:, None]
        return turned.real, np.abs(turned.imag)

    def not_hopeless_at_start(self, rows: np.ndarray, found: QuickLegs) -> np.ndarray:
        """The rows whose stream is known at the start and neither sets off the line nor pushes back there."""
        flow, status = self.flow(rows, self.start[rows, None], np.zeros((len(rows), 1)))
        unknown = (status == UNKNOWN)[:, 0]
        found.put(rows[unknown], ending=STREAM_UNKNOWN)
        rows, flow = rows[~unknown], flow[~unknown]
        return self._given_up(rows, *self.along_across(rows, flow), found)

    def not_hopeless_under_way(self, rows: np.ndarray, found: QuickLegs) -> np.ndarray:
        """The rows that, before they can have arrived, don't meet a moment that stops them anywhere on the line."""
        shares, pieces = np.linspace(0.0, 1.0, 5), np.linspace(0.0, 1.0, 7)
        place = self.start[rows, None] + self.mark[rows, None] * shares
        tau = (self.length(rows) / (2.5 * self.pace[rows]))[:, None] * pieces
        shape = (len(rows), len(pieces), len(shares))
        many = np.broadcast_to(place[:, None], shape).reshape(len(rows), -1)
        flow, status = self.flow(rows, many, np.repeat(tau, len(shares), axis=1))
        along, across = (part.reshape(shape) for part in self.along_across(rows, flow))
        known = (status != UNKNOWN).reshape(shape).all(axis=2)
        weakest = np.where(known, along.max(axis=2), np.inf), np.where(known, across.min(axis=2), 0.0)
        return self._given_up(rows, *weakest, found)

    def _given_up(self, rows: np.ndarray, along: np.ndarray, across: np.ndarray, found: QuickLegs) -> np.ndarray:
        """The rows left when those are marked that some moment (m, k) stops."""
        pace = self.pace[rows, None]
        off, back = (across >= pace).any(axis=1), (along <= -pace).any(axis=1)
        gone = off | back
        found.put(
            rows[gone],
            ending=np.where(off, TOO_STRONG_ACROSS, NEVER_ARRIVES)[gone],
            least_ahead_m_s=(along + pace).min(axis=1)[gone],
            most_across_m_s=across.max(axis=1)[gone],
        )
        return rows[~gone]

    def solve_in_full(self, rows: np.ndarray, found: QuickLegs, step_s: float, slowest_m_s: float) -> None:
        """The rows by the full solver."""
        longest_s = 1.01 * float(self.length(rows).max()) / max(slowest_m_s, 1e-3) + 2.0 * step_s
        start, end = self.start[rows], (self.start + self.mark)[rows]
        held = hold_one_heading(
            for_rows(self.stream, rows),
            np.stack([start.real, start.imag], axis=1),
            np.stack([end.real, end.imag], axis=1),
            self.depart_s[rows],
            self.pace[rows],
            step_s=step_s,
            longest_s=min(longest_s, LONGEST_LEG_S),
        )
        nodes = held.nodes
        along, across = self.along_across(rows, nodes.east_m_s + 1j * nodes.north_m_s)
        own, _ = self.along_across(rows, np.sin(nodes.heading_rad) + 1j * np.cos(nodes.heading_rad))
        there = held.ending == ARRIVED
        speed = np.where(np.isfinite(along), self.pace[rows, None] * own + along, np.inf)
        found.put(
            rows,
            arrive_s=held.arrive_s,
            ending=held.ending,
            heading_rad=np.where(there, nodes.heading_rad[:, 0], np.nan),
            least_ahead_m_s=speed.min(axis=1),
            most_across_m_s=np.where(np.isfinite(across), across, 0.0).max(axis=1),
            extrapolated=((nodes.status == EXTRAPOLATED) & np.isfinite(nodes.t_s)).any(axis=1),
        )
        for row, one in zip(rows[there], np.flatnonzero(there)):
            found.put_track(row, nodes, one)


class _Level:
    """Rows solved together on the points of one rule, begun with what the level before has found of them."""

    def __init__(
        self,
        legs: _Legs,
        rows: np.ndarray,
        rule: SmoothRule,
        look_s: float,
        within_s: float,
        before: _Level | None,
    ) -> None:
        self.legs, self.rows, self.rule, self.look_s, self.within_s = legs, rows, rule, look_s, within_s
        self.pace = legs.pace[rows]
        self.still_m = np.maximum(STILL_M, 0.3 * within_s * self.pace)
        self.seconds, self.moved = self._from_the_start() if before is None else self._from_level(before)
        # Of the last round of each row: the stream (n, k), whether it is known (n, k), and the heading (n,).
        self.flow, self.unit = np.zeros(self.moved.shape, dtype=complex), np.zeros(len(rows), dtype=complex)
        self.status = np.zeros(self.moved.shape, dtype=np.int8)

    def _from_the_start(self) -> tuple[np.ndarray, np.ndarray]:
        """Seconds (n,) and displacements (n, k) if the stream of the start held all the way."""
        legs, rows = self.legs, self.rows
        flow, _ = legs.flow(rows, legs.start[rows, None], np.zeros((len(rows), 1)))
        along, across = legs.along_across(rows, flow)
        speed = along[:, 0] + np.sqrt(np.maximum(self.pace**2 - across[:, 0] ** 2, 0.0))
        seconds = legs.length(rows) / np.maximum(speed, 0.2 * self.pace)
        return seconds, flow * seconds[:, None] * self.rule.points

    def _from_level(self, before: _Level) -> tuple[np.ndarray, np.ndarray]:
        """The same from the last round of the level before."""
        here = np.searchsorted(before.rows, self.rows)
        seconds = before.seconds[here]
        return seconds, before.flow[here] @ before.rule.integrals_at(self.rule.points).T * seconds[:, None]

    def solve(self, found: QuickLegs) -> np.ndarray:
        """Rounds until the tracks stand still; the smooth ones are laid down in ``found``, the others returned."""
        left, still = np.arange(len(self.rows)), [np.empty(0, dtype=int)]
        for number in range(MOST_ROUNDS):
            change = self._round(left)
            stands = change < self.still_m[left]
            still.append(left[stands])
            left = left[~stands]
            # A few that will not settle are cheaper with more points than in a crowd's rounds.
            if len(left) <= (FEW * len(self.rows) if number >= USUAL_ROUNDS else 0):
                break
        there = np.concatenate(still)
        good = self._lay_down(there, found) if len(there) else np.zeros(0, dtype=bool)
        return self.rows[np.sort(np.concatenate([left, there[~good]]))]

    def _round(self, left: np.ndarray) -> np.ndarray:
        """One substitution for some rows; how far the track moved (m,)."""
        legs, rows, seconds, moved = self.legs, self.rows[left], self.seconds[left], self.moved[left]
        pace = self.pace[left]
        unit = legs.mark[rows] - moved[:, -1]
        unit = unit / np.maximum(np.abs(unit), 1e-9)
        tau = seconds[:, None] * self.rule.points
        flow, status = legs.flow(rows, legs.start[rows, None] + (pace * unit)[:, None] * tau + moved, tau)
        now = flow @ self.rule.running.T * seconds[:, None]
        aim = legs.mark[rows] - now[:, -1]
        size = np.maximum(np.abs(aim), 1e-9)
        # Newton's step of the gap |mark - D| - v T, the stream at the end moving D on; a slope of nothing is no step.
        slope = -(aim.conj() * flow[:, -1]).real / size - pace
        later = (size - pace * seconds) / -np.minimum(slope, -0.1 * pace)
        later = np.minimum(np.maximum(later, -0.5 * seconds), 0.7 * seconds)
        change = np.maximum(np.abs(now - moved).max(axis=1), np.abs(later) * pace)
        self.moved[left], self.seconds[left] = now, seconds + later
        self.flow[left], self.status[left], self.unit[left] = flow, status, unit
        return change

    def _lay_down(self, which: np.ndarray, found: QuickLegs) -> np.ndarray:
        """Put the rows that are smooth and clear of every limit into ``found``; which they are (m,)."""
        flow, status, unit = self.flow[which], self.status[which], self.unit[which]
        legs, rows, seconds, rule = self.legs, self.rows[which], self.seconds[which], self.rule
        pace = self.pace[which]
        coarse = flow[:, ::2] @ rule.every_second * seconds
        closing = pace + (unit.conj() * flow[:, -1]).real
        off_m = np.abs(coarse - self.moved[which, -1])
        tau = seconds[:, None] * EVEN
        moved = flow @ rule.even_running.T * seconds[:, None]
        gap = np.abs(legs.mark[rows, None] - moved[:, :-1]) - pace[:, None] * tau[:, :-1]
        good = (off_m < self.within_s * closing) & (status != UNKNOWN).all(axis=1) & (gap.min(axis=1) > -FIRST_HIT_M)
        seen = self._looked_at(which, good, closing)
        good &= seen.as_reckoned
        good &= (np.abs(seen.least_ahead) > NEAR_LIMIT_M_S) & (np.abs(seen.most_across - pace) > NEAR_LIMIT_M_S)
        place = legs.start[rows, None] + (pace * unit)[:, None] * tau + moved
        found.put(
            rows[good],
            arrive_s=(found.depart_s[rows] + seconds)[good],
            ending=ARRIVED,
            heading_rad=np.arctan2(unit.real, unit.imag)[good],
            least_ahead_m_s=seen.least_ahead[good],
            most_across_m_s=seen.most_across[good],
            extrapolated=seen.extrapolated[good],
            t_s=(found.depart_s[rows, None] + tau)[good],
            xy_m=np.stack([place.real, place.imag], axis=2)[good],
        )
        return good

    def _looked_at(self, which: np.ndarray, good: np.ndarray, closing: np.ndarray) -> _Seen:
        """What is met at every step of the tracks (m,) that are good so far."""
        seen = _Seen.blank(len(which))
        looks = np.ceil(self.seconds[which] / (LOOKS_BY * self.look_s)).astype(int) * LOOKS_BY + 1
        for count in np.unique(looks[good]):
            here = np.flatnonzero(good & (looks == count))
            self._look(which[here], int(count), LOOK_WITHIN_S * closing[here], seen, here)
        return seen

    def _look(self, which: np.ndarray, count: int, most_m: np.ndarray, seen: _Seen, here: np.ndarray) -> None:
        """Look at some tracks at so many even moments."""
        legs, rows, unit, seconds = self.legs, self.rows[which], self.unit[which], self.seconds[which]
        share = np.linspace(0.0, 1.0, count)
        running, values = self.rule.at_even(count)
        tau = seconds[:, None] * share
        place = legs.start[rows, None] + (self.pace[which] * unit)[:, None] * tau
        flow, status = legs.flow(rows, place + self.flow[which] @ running * seconds[:, None], tau)
        off = np.cumsum(flow - self.flow[which] @ values, axis=1) * (seconds / (count - 1))[:, None]
        known = (status != UNKNOWN).all(axis=1)
        along, across = legs.along_across(rows, flow)
        own = self.pace[which] * (unit * legs.ahead(rows).conj()).real
        seen.as_reckoned[here] = known & (np.abs(off).max(axis=1) < most_m)
        seen.least_ahead[here], seen.most_across[here] = own + along.min(axis=1), across.max(axis=1)
        seen.extrapolated[here] = (status == EXTRAPOLATED).any(axis=1)


@dataclass(frozen=True, kw_only=True)
class _Seen:
    """What looking along tracks (m,) has shown: whether the stream is the one reckoned with, and its extremes."""

    as_reckoned: np.ndarray
    least_ahead: np.ndarray
    most_across: np.ndarray
    extrapolated: np.ndarray

    @classmethod
    def blank(cls, m: int) -> _Seen:
        """Nothing looked at yet."""
        none = np.zeros(m, dtype=bool)
        return cls(as_reckoned=none, least_ahead=np.zeros(m), most_across=np.zeros(m), extrapolated=none.copy())
