"""One heading held for a whole leg, solved so that the integrated track hits the mark.

With the swimmer's own way a constant vector, the place after a time tau is start + v tau e + D(tau), where D is the
stream's displacement along the track. The mark is reached at the first tau with |mark - start - D(tau)| = v tau, and
the heading is the direction of that vector. D depends on the track where the stream varies in space, so track and
heading are found together by repeated substitution on evenly spaced nodes (trapezoid rule, second order in the step),
hastened and kept from swinging by Aitken's accelerator for vectors (B. M. Irons and R. C. Tuck, Int. J. Numerical
Methods in Engineering 1 (1969) 275; cited from memory).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..water.stream import UNKNOWN, Stream, for_rows
from .swum import ARRIVED, NEVER_ARRIVES, NO_SINGLE_HEADING, STREAM_UNKNOWN, Nodes, running_integral

LONGEST_LEG_S = 12 * 3600.0  # by then the stream has turned and turned again
CLOSE_M = 0.01
MOST_ROUNDS = 60
# At sharp edges, such as an eddy's, hastened substitution may swing for ever; small even steps then settle the most.
SLOW_ROUNDS, SLOW_WEIGHT = 150, 0.2
# A heading so found must lead within this of the mark when swum, and forgive a degree: that may set one off by a share
# of the leg. Common practice, no source.
NEAR_M, MOST_OFF_BY_A_DEGREE = 5.0, 0.1


@dataclass(frozen=True, kw_only=True)
class Held:
    """One heading for n departures: arrival (n,), NaN where there is none, the ending (n,) and the nodes (n, k)."""

    arrive_s: np.ndarray
    ending: np.ndarray
    nodes: Nodes


def hold_one_heading(
    stream: Stream,
    line_start: np.ndarray,
    end: np.ndarray,
    depart_s: np.ndarray,
    pace_m_s: ArrayLike,
    *,
    step_s: float = 30.0,
    longest_s: float = LONGEST_LEG_S,
) -> Held:
    """Headings for departures (n,) from places (n, 2) to marks (n, 2), or one (2,), each within ``longest_s``.

    ``pace_m_s`` is one pace or one a departure (n,); a ``RowStream`` has one water a departure.

    The search looks a little farther than a steady stream would take, then farther for those still under way. The few
    departures whose search swings are searched for once more, slowly and apart from the others.
    """
    n = len(depart_s)
    arrive, ending = np.full(n, np.nan), np.full(n, NEVER_ARRIVES)
    parts: list[tuple[np.ndarray, Nodes]] = []
    mark, pace = end - line_start, np.broadcast_to(np.asarray(pace_m_s, dtype=float), n)
    window = np.minimum(1.5 * np.hypot(*mark.T) / pace + 2.0 * step_s, longest_s)
    queue = [(np.arange(n), False)]
    while queue:
        rows, slowly = queue.pop()
        if not len(rows):
            continue
        water = for_rows(stream, rows)
        search = _Search(water, line_start[rows], mark[rows], depart_s[rows], pace[rows], window[rows], step_s)
        found, nodes = search.solved(slowly=slowly)
        swings = (found == NO_SINGLE_HEADING) & (not slowly)
        under_way = (found == NEVER_ARRIVES) & (window[rows] < longest_s)
        done = ~(swings | under_way)
        arrive[rows[done]], ending[rows[done]] = search.arrive_s()[done], found[done]
        parts.append((rows[done], Nodes(**{name: getattr(nodes, name)[done] for name in Nodes.names()})))
        window[rows[under_way]] = np.minimum(window[rows[under_way]] * 3.0, longest_s)
        queue += [(rows[swings], True), (rows[under_way], slowly)]
    return Held(arrive_s=np.where(ending == ARRIVED, arrive, np.nan), ending=ending, nodes=_gathered(parts, n))


def _gathered(parts: list[tuple[np.ndarray, Nodes]], n: int) -> Nodes:
    """The parts' rows put back in order, as wide as the widest."""
    width = max((nodes.t_s.shape[1] for _, nodes in parts), default=0)
    whole = Nodes.blank(n, width)
    for rows, nodes in parts:
        for name in Nodes.names():
            getattr(whole, name)[rows, : nodes.t_s.shape[1]] = getattr(nodes, name)
    return whole


class _Search:
    """The repeated substitution for departures that share a number of nodes, each with a window of its own."""

    def __init__(
        self,
        stream: Stream,
        start: np.ndarray,
        mark: np.ndarray,
        depart_s: np.ndarray,
        pace_m_s: np.ndarray,
        window_s: np.ndarray,
        step_s: float,
    ) -> None:
        self.stream, self.start, self.mark, self.pace = stream, start, mark, pace_m_s
        self.depart_s = depart_s
        nodes = max(4, int(np.ceil(np.max(window_s) / step_s)))
        self.step = window_s / nodes
        self.tau = self.step[:, None] * np.arange(nodes + 1)
        self.own_m = pace_m_s[:, None] * self.tau
        distance = np.hypot(*mark.T)
        self.unit = mark / np.where(distance > 0.0, distance, 1.0)[:, None]
        self.end_s = np.full(len(mark), np.nan)
        self.shift = np.zeros(self.tau.shape + (2,))

    def solved(self, *, slowly: bool = False) -> tuple[np.ndarray, Nodes]:
        """Rounds of substitution until every track stands still to a centimetre; then the ending and the nodes."""
        weight = np.full(len(self.mark), SLOW_WEIGHT if slowly else 1.0)
        residual = None
        for _ in range(SLOW_ROUNDS if slowly else MOST_ROUNDS):
            self._sample()
            asked = np.stack([running_integral(part, self.step) for part in self.filled], axis=2) - self.shift
            asked = np.where(self._on_way()[..., None], asked, 0.0)
            if residual is not None and not slowly:
                weight = _aitken(weight, residual, asked)
            residual = asked
            # Behind the mark the water may end, and what is asked there swing for ever: it does not hold up the rest.
            counted = np.where(self._as_far_as_the_mark()[..., None], asked, 0.0)
            self.shift = self.shift + weight[:, None, None] * asked
            end_before, unit_before = self.end_s, self.unit
            self._aim()
            settled = self._still(end_before, unit_before) & (np.max(np.abs(counted), axis=(1, 2)) < CLOSE_M)
            if settled.all():
                break
        if slowly:
            settled &= self._forgives_a_degree()
        return self._ending(settled), self._nodes()

    def _forgives_a_degree(self) -> np.ndarray:
        """Whether the heading found, and a degree to either side of it, lead near the mark, shape (n,).

        Each track is marched node by node (Heun), so that a track that splits at an edge is seen to.
        """
        steps = self.tau.shape[1] - 1
        step = np.nan_to_num(self.end_s) / steps
        near = np.ones(len(self.mark), dtype=bool)
        for turn in np.radians([-1.0, 0.0, 1.0]):
            sine, cosine = np.sin(turn), np.cos(turn)
            own = self.pace[:, None] * self.unit @ np.array([[cosine, sine], [-sine, cosine]])
            place = self.start
            for node in range(steps):
                before = own + self._stream_over(place, node * step)
                after = own + self._stream_over(place + before * step[:, None], (node + 1) * step)
                place = place + (before + after) / 2.0 * step[:, None]
            off = np.hypot(*(self.start + self.mark - place).T)
            near &= off <= (MOST_OFF_BY_A_DEGREE * np.hypot(*self.mark.T) if turn else NEAR_M)
        return near

    def _stream_over(self, place: np.ndarray, tau: np.ndarray) -> np.ndarray:
        sample = self.stream.at(place[:, 0], place[:, 1], self.depart_s + tau)
        return np.nan_to_num(np.stack([sample.east_m_s, sample.north_m_s], axis=1))

    def _on_way(self) -> np.ndarray:
        """The nodes (n, k) up to a little past the arrival: what lies beyond has no say."""
        reach = np.where(np.isnan(self.end_s), np.inf, self.end_s * 1.1 + 3.0 * self.step)
        return self.tau <= reach[:, None]

    def _as_far_as_the_mark(self) -> np.ndarray:
        """The nodes (n, k) up to the one behind the arrival, which has its part in the last step."""
        reach = np.where(np.isnan(self.end_s), np.inf, self.end_s)
        return self.tau < (reach + self.step)[:, None]

    def _still(self, end_before: np.ndarray, unit_before: np.ndarray) -> np.ndarray:
        """Whether arrival and heading moved the track by less than a centimetre, shape (n,)."""
        both_missing = np.isnan(self.end_s) & np.isnan(end_before)
        later = np.where(both_missing, 0.0, np.nan_to_num(np.abs(self.end_s - end_before), nan=np.inf))
        reach = np.where(np.isnan(self.end_s), self.tau[:, -1], self.end_s)
        turned = np.hypot(*(self.unit - unit_before).T) * reach
        return np.maximum(later, turned) * self.pace < CLOSE_M

    def arrive_s(self) -> np.ndarray:
        """Arrival in seconds from the plan's start, NaN where the mark is not reached in the window."""
        return self.depart_s + self.end_s

    def _sample(self) -> None:
        place = self.start[:, None, :] + self.own_m[..., None] * self.unit[:, None, :] + self.shift
        self.place = place
        self.sample = self.stream.at(place[..., 0], place[..., 1], self.depart_s[:, None] + self.tau)
        # Blanks are bridged only to keep the substitution going; a track that ends across one is reported unknown.
        self.filled = [np.nan_to_num(part) for part in (self.sample.east_m_s, self.sample.north_m_s)]

    def _aim(self) -> None:
        """First time at which the distance left equals the swimmer's own way, and the heading that it gives."""
        left = self.mark[:, None, :] - self.shift
        gap = np.hypot(left[..., 0], left[..., 1]) - self.own_m
        reached = gap <= 0.0
        any_reached = reached.any(axis=1)
        node = np.where(any_reached, np.argmax(reached, axis=1), gap.shape[1] - 1)
        step = self._step_before(node)
        extra = step.root(self.mark, self.pace, gap)
        aim = np.where(any_reached[:, None], self.mark - step.shift(extra), left[:, -1])
        size = np.hypot(*aim.T)
        self.unit = np.where(size[:, None] > 1e-9, aim / np.where(size > 1e-9, size, 1.0)[:, None], self.unit)
        self.end_s = np.where(any_reached, step.tau + extra, np.nan)

    def _step_before(self, node: np.ndarray) -> _Step:
        """The step (n,) that ends at a node."""
        rows, before = np.arange(len(node)), np.maximum(node - 1, 0)
        after = np.minimum(before + 1, self.tau.shape[1] - 1)
        east, north = self.filled
        return _Step(
            row=before,
            tau=self.tau[rows, before],
            length=self.step,
            moved=self.shift[rows, before],
            first=np.column_stack([east[rows, before], north[rows, before]]),
            second=np.column_stack([east[rows, after], north[rows, after]]),
        )

    def _ending(self, settled: np.ndarray) -> np.ndarray:
        blank = np.any((self.sample.status == UNKNOWN) & self._as_far_as_the_mark(), axis=1)
        ending = np.where(np.isnan(self.end_s), NEVER_ARRIVES, ARRIVED)
        ending = np.where((ending == ARRIVED) & ~settled, NO_SINGLE_HEADING, ending)
        return np.where(blank, STREAM_UNKNOWN, ending)

    def _nodes(self) -> Nodes:
        """The nodes up to the arrival; the node after it is moved onto the mark itself."""
        last = np.where(np.isnan(self.end_s), self.tau[:, -1], self.end_s)
        after = np.argmax(self.tau >= last[:, None] - 1e-9, axis=1)
        step = self._step_before(after)
        extra = last - step.tau
        past = np.arange(self.tau.shape[1])[None, :] > after[:, None]
        heading = np.arctan2(self.unit[:, 0], self.unit[:, 1])
        stream_end = step.stream(extra)
        place_end = self.start + (self.pace * last)[:, None] * self.unit + step.shift(extra)
        columns = {
            "t_s": (self.depart_s[:, None] + self.tau, self.depart_s + last),
            "x_m": (self.place[..., 0], place_end[:, 0]),
            "y_m": (self.place[..., 1], place_end[:, 1]),
            "east_m_s": (self.sample.east_m_s, stream_end[:, 0]),
            "north_m_s": (self.sample.north_m_s, stream_end[:, 1]),
            "heading_rad": (np.broadcast_to(heading[:, None], self.tau.shape), heading),
        }
        arrays = {name: _ended(values, after, end, past) for name, (values, end) in columns.items()}
        arrays["status"] = np.where(past, UNKNOWN, self.sample.status)
        return Nodes(**arrays)


@dataclass(frozen=True, kw_only=True)
class _Step:
    """One step of each track (n,): its first node and time, its length, the displacement (n, 2) at its start and the
    stream (n, 2) at both ends, linear between them."""

    row: np.ndarray
    tau: np.ndarray
    length: np.ndarray
    moved: np.ndarray
    first: np.ndarray
    second: np.ndarray

    def stream(self, extra: np.ndarray) -> np.ndarray:
        """The stream (n, 2) some seconds into the step."""
        return self.first + (self.second - self.first) * (extra / self.length)[:, None]

    def shift(self, extra: np.ndarray) -> np.ndarray:
        """The displacement (n, 2) some seconds into the step."""
        return self.moved + (self.first + self.stream(extra)) * (extra / 2.0)[:, None]

    def root(self, mark: np.ndarray, pace: np.ndarray, gap: np.ndarray) -> np.ndarray:
        """Seconds into the step at which the gap closes: a chord, then Newton's method, kept inside the step."""
        rows = np.arange(len(self.row))
        start, end = gap[rows, self.row], gap[rows, np.minimum(self.row + 1, gap.shape[1] - 1)]
        extra = start / np.maximum(start - end, 1e-9) * self.length
        for _ in range(3):
            extra = np.minimum(np.maximum(extra, 0.0), self.length)
            left = mark - self.shift(extra)
            size = np.maximum(np.hypot(left[:, 0], left[:, 1]), 1e-12)
            slope = -np.sum(left * self.stream(extra), axis=1) / size - pace
            # A slope of nothing is the stream just keeping pace: the chord's answer stands there.
            extra = extra - (size - pace * (self.tau + extra)) / np.where(np.abs(slope) > 1e-9, slope, -np.inf)
        return np.minimum(np.maximum(extra, 0.0), self.length)


def _aitken(weight: np.ndarray, before: np.ndarray, now: np.ndarray) -> np.ndarray:
    """Weights (n,) for the next substitution from two residuals (n, k, 2) in a row."""
    change = now - before
    square = np.sum(change**2, axis=(1, 2))
    ratio = -np.sum(before * change, axis=(1, 2)) / np.where(square > 0.0, square, 1.0)
    return np.clip(np.where(square > 1e-12, weight * ratio, 1.0), 0.05, 2.0)


def _ended(values: np.ndarray, after: np.ndarray, end: np.ndarray, past: np.ndarray) -> np.ndarray:
    """Rows cut after their last node, which takes the value at the arrival."""
    cut = np.where(past, np.nan, values)
    cut[np.arange(len(after)), after] = end
    return cut
