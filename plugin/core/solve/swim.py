"""The swim itself: every leg of a route integrated in the changing stream, for many departures at once."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..geodesy import LocalFrame
from ..swimmer import Swimmer
from ..water.stream import StoppableStream, Stream, StreamSample, for_rows
from ..words import marked, spoken, tr
from .held_line import hold_the_line, renew_heading
from .one_heading import Held, hold_one_heading
from .swum import (
    ARRIVED,
    NEVER_ARRIVES,
    NO_SINGLE_HEADING,
    NOT_REACHED,
    STREAM_UNKNOWN,
    TOO_STRONG_ACROSS,
    LegSwum,
    Line,
    Nodes,
    read_off,
)

ONE_HEADING, NEW_HEADINGS, HOLD_LINE = range(3)


@dataclass(frozen=True, kw_only=True)
class SwimWay:
    """How legs are swum: heading mode 0, 1 or 2, the time between new headings, and the solver's step in seconds."""

    mode: int = ONE_HEADING
    heading_every_s: float = 600.0
    step_s: float = 30.0

    def __post_init__(self) -> None:
        if self.mode not in (ONE_HEADING, NEW_HEADINGS, HOLD_LINE) or not self.heading_every_s >= 30.0:
            raise SwimPlanError(
                asked=tr("Asked for heading mode {mode}, new headings every {heading_every_s:g} s").format(
                    mode=self.mode, heading_every_s=self.heading_every_s
                ),
                allowed=tr("Modes are 0, 1 and 2, and a heading is held half a minute at the least"),
                remedy=tr("Choose another heading mode or a longer time between headings"),
            )


@dataclass(frozen=True, kw_only=True)
class RouteSwum:
    """A route for n departures: its legs, and for every stop the arrival and the leaving time (n, n_stops), seconds."""

    legs: tuple[LegSwum, ...]
    arrive_s: np.ndarray
    leave_s: np.ndarray


@dataclass(frozen=True, kw_only=True)
class GridStream:
    """A stream whose vectors are turned from true north to the north of the plan's grid, place by place."""

    stream: Stream
    frame: LocalFrame

    def at(self, x_m: ArrayLike, y_m: ArrayLike, t_s: ArrayLike) -> StreamSample:
        """Stream in the grid's own east and north."""
        sample = self.stream.at(x_m, y_m, t_s)
        turn = np.radians(self.frame.convergence_at(x_m))
        east = sample.east_m_s * np.cos(turn) - sample.north_m_s * np.sin(turn)
        north = sample.east_m_s * np.sin(turn) + sample.north_m_s * np.cos(turn)
        return StreamSample(east_m_s=east, north_m_s=north, status=sample.status, source=sample.source)

    def of_rows(self, rows: np.ndarray) -> GridStream:
        """The stream of some rows."""
        stream = for_rows(self.stream, rows)
        return self if stream is self.stream else GridStream(stream=stream, frame=self.frame)


def swim_route(
    stream: Stream,
    frame: LocalFrame,
    stops_m: np.ndarray,
    stays_s: np.ndarray,
    depart_s: np.ndarray,
    swimmer: Swimmer,
    way: SwimWay,
    *,
    pace_m_s: np.ndarray | None = None,
    keep_track: bool = True,
    is_cancelled: Callable[[], bool] = bool,
) -> RouteSwum:
    """Swim a route leaving at each of the departures.

    ``stops_m`` (n_stops, 2) in the frame, ``stays_s`` (n_stops,), ``depart_s`` (n,) seconds from the plan's start;
    a departure of NaN stays NaN. ``pace_m_s`` (n,) is the way that each makes good in still water, where it is not the
    swimmer's own for all; ``stream`` may be a ``RowStream`` with a water for each. A leg that is not completed leaves
    the later ones NOT_REACHED for that departure.
    Error: second order in ``way.step_s``; 1 cm or less beside the fine-step answer where the stream is linear in time
    and space over a step.
    """
    grid = GridStream(stream=StoppableStream(stream=stream, is_cancelled=is_cancelled), frame=frame)
    pace = swimmer.made_good_m_s if pace_m_s is None else pace_m_s
    now = np.array(depart_s, dtype=float)
    arrivals, leavings, legs = [now], [now], []
    for number in range(len(stops_m) - 1):
        line = Line(start=stops_m[number], end=stops_m[number + 1])
        leg = swim_leg(grid, line, now, pace, way, keep_track=keep_track)
        legs.append(leg)
        arrivals.append(leg.arrive_s)
        now = leg.arrive_s + stays_s[number + 1]
        leavings.append(now)
    return RouteSwum(legs=tuple(legs), arrive_s=np.stack(arrivals, axis=1), leave_s=np.stack(leavings, axis=1))


def swim_leg(
    stream: Stream, line: Line, depart_s: np.ndarray, pace_m_s: ArrayLike, way: SwimWay, *, keep_track: bool = True
) -> LegSwum:
    """One leg for departures (n,) with one pace or one each (n,); the stream's vectors are those of the line's grid."""
    rows = np.flatnonzero(np.isfinite(depart_s))
    n = len(depart_s)
    pace = np.broadcast_to(np.asarray(pace_m_s, dtype=float), n)
    held = _held(for_rows(stream, rows), line, depart_s[rows], pace[rows], way)
    nodes = held.nodes.spread_to(rows, n) if len(rows) < n else held.nodes
    arrive, ending = np.full(n, np.nan), np.full(n, NOT_REACHED)
    arrive[rows], ending[rows] = np.where(held.ending == ARRIVED, held.arrive_s, np.nan), held.ending
    return read_off(line, pace_m_s, depart_s, arrive, ending, nodes, keep_track)


def _held(stream: Stream, line: Line, depart_s: np.ndarray, pace_m_s: np.ndarray, way: SwimWay) -> Held:
    if not len(depart_s):
        return Held(arrive_s=depart_s, ending=np.full(0, NOT_REACHED), nodes=Nodes.blank(0, 2))
    if way.mode == HOLD_LINE:
        return hold_the_line(stream, line, depart_s, pace_m_s, step_s=way.step_s)
    if way.mode == NEW_HEADINGS:
        return renew_heading(stream, line, depart_s, pace_m_s, way.heading_every_s, step_s=way.step_s)
    start = np.tile(line.start, (len(depart_s), 1))
    return hold_one_heading(stream, start, line.end, depart_s, pace_m_s, step_s=way.step_s)


WHY_NOT = {
    STREAM_UNKNOWN: marked(
        "the stream is not known for the whole of this leg: add a stream station or tides that cover it"
    ),
    TOO_STRONG_ACROSS: marked(
        "the stream across the leg is stronger than the {pace:.2f} m/s you make: you would be set off the line"
    ),
    NEVER_ARRIVES: marked("at {pace:.2f} m/s against this stream you would not arrive within 12 hours"),
    NO_SINGLE_HEADING: marked(
        "no single heading was found: the stream changes too sharply; put a waypoint into the leg, or take a new "
        "heading every so often"
    ),
    NOT_REACHED: marked("an earlier leg is not completed"),
}


def swimmable(leg: LegSwum, line: Line, swimmer: Swimmer, pace_m_s: np.ndarray | None = None) -> np.ndarray:
    """Whether each departure can swim the leg, shape (n,); ``pace_m_s`` (n,) where it is not the swimmer's own.

    It arrives; at every moment it makes way toward the mark and the stream across is less than the way it makes
    through the water; and the mean speed made good is not below the swimmer's minimum.
    """
    pace = swimmer.made_good_m_s if pace_m_s is None else pace_m_s
    with np.errstate(invalid="ignore"):
        mean = line.length_m / (leg.arrive_s - leg.depart_s)
        return (
            (leg.ending == ARRIVED)
            & (leg.least_ahead_m_s > 0.0)
            & (leg.most_across_m_s < pace)
            & (mean >= swimmer.min_ground_speed_m_s)
        )


def why_not(leg: LegSwum, row: int, line: Line, swimmer: Swimmer) -> str:
    """Why a departure cannot swim the leg, in words; empty where it can."""
    pace = swimmer.made_good_m_s
    if int(leg.ending[row]) != ARRIVED:
        return spoken(WHY_NOT[int(leg.ending[row])]).format(pace=pace)
    if leg.most_across_m_s[row] >= pace:
        return tr("the stream across the leg reaches {across:.2f} m/s, and you make {pace:.2f} m/s").format(
            across=leg.most_across_m_s[row], pace=pace
        )
    if leg.least_ahead_m_s[row] <= 0.0:
        return tr("the stream pushes you back: toward the mark you make {ahead:.2f} m/s at the worst").format(
            ahead=leg.least_ahead_m_s[row]
        )
    mean = line.length_m / (leg.arrive_s[row] - leg.depart_s[row])
    if mean < swimmer.min_ground_speed_m_s:
        least = swimmer.min_ground_speed_m_s
        decimals = next((count for count in (2, 3) if f"{mean:.{count}f}" != f"{least:.{count}f}"), 4)
        return tr("you make good {mean:.{decimals}f} m/s, below your minimum of {least:.{decimals}f} m/s").format(
            decimals=decimals, mean=mean, least=least
        )
    return ""
