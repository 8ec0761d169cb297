"""The reach of an entry: out as early as can be, home as late as can be, and what lies between."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from ...chart.marks import Mark
from ...errors import SwimPlanError
from ...results.reach import MarkReach, Numbers, Reach
from ...water.stream import UNKNOWN
from ...words import tr
from ..flags.closed import BEACH_M
from ..request import SwimRequest
from ..swim import GridStream
from .area import reach_box, reach_grid
from .beside import Shores, comes_to, set_out
from .chart_water import ChartWater, chart_water
from .compass import OneHeading
from .front import Front, run_front
from .front_stream import FrontStream
from .open_water import ReachGrid
from .request import SAME_PLACE_M, ReachRequest

Progress = Callable[[float], None]


def find_reach(
    request: ReachRequest, *, progress: Progress | None = None, is_cancelled: Callable[[], bool] = bool
) -> Reach:
    """The reach of a request. SwimPlanError where the entry is on land, closed or in unknown water; StoppedError when
    stopped. ``progress`` is told shares from 0 to 1."""
    return _Task(request, progress or (lambda share: None), is_cancelled).found()


@dataclass(frozen=True, kw_only=True, eq=False)
class BothWays:
    """The fronts out from the entry and, backward in time, home to the exits that could be used."""

    chart: ChartWater
    out: Front
    home: Front
    landings: list[Mark]

    def minutes(self, horizon_s: float, depart_s: float) -> tuple[np.ndarray, np.ndarray]:
        """Minutes after the departure (rows, columns): the earliest arrival, and the latest leaving, which is no later
        than the next closing of a cell after one can be there."""
        water = self.chart.water
        out_s = water.grid.without_rim(self.out.after_s)
        home_by_s = horizon_s - water.grid.without_rim(self.home.after_s)
        if water.timed:
            home_by_s = np.minimum(home_by_s, water.next_closing_s(depart_s + out_s) - depart_s)
        return out_s / 60.0, home_by_s / 60.0


class _Task:
    def __init__(self, request: ReachRequest, progress: Progress, is_cancelled: Callable[[], bool]) -> None:
        self.request, self.progress, self.is_cancelled = request, progress, is_cancelled
        self.stream = GridStream(stream=request.swim.stream, frame=request.swim.frame)
        self.pace = request.swim.swimmer.made_good_m_s
        self.warnings = list(request.swim.warnings)

    def found(self) -> Reach:
        """All of it."""
        request = self.request
        grid = reach_grid(request, reach_box(request, request.swim.stream))
        both = self._both_ways(grid)
        out_min, home_by_min = both.minutes(request.horizon_s, request.depart_s)
        errors = self._errors(grid, out_min)
        marks = self._marks(both)
        unknown = grid.without_rim(both.out.unknown | both.home.unknown)
        doubtful = grid.without_rim(both.out.extrapolated | both.home.extrapolated)
        self._warn(unknown, doubtful, both)
        swim = request.swim
        self.progress(1.0)
        return Reach(
            entry=request.entry,
            exits=tuple(mark.name for mark in both.landings),
            depart=swim.clock.moment(request.depart_s),
            back_by=swim.clock.moment(request.depart_s + request.horizon_s),
            horizon_min=request.horizon_s / 60.0,
            stay_min=request.stay_min,
            swimmer=swim.swimmer.name,
            pace_made_good_m_s=self.pace,
            zone=swim.clock.zone_name,
            frame=swim.frame,
            low_m=grid.low_m,
            cell_m=grid.cell_m,
            cell_chosen=request.cell_m == 0.0,
            out_min=out_min,
            home_by_min=home_by_min,
            unknown_cells=int(unknown.sum()),
            extrapolated_cells=int(doubtful.sum()),
            error_mean_min=errors[0],
            error_most_min=errors[1],
            marks=marks,
            warnings=tuple(self.warnings),
        )

    def _both_ways(self, grid: ReachGrid) -> BothWays:
        """Both fronts over a grid."""
        request, chart = self.request, chart_water(self.request, grid)
        end_s = request.depart_s + request.horizon_s
        check_entry(request, self.stream, chart)
        out = self._front_out(chart, 0.0, 0.35)
        back = FrontStream(stream=self.stream, origin_s=end_s, backward=True)
        starts, used = [], []
        for mark in request.landings:
            start = set_out(chart.water, back, chart.shores(end_s), request.place_m(mark), self.pace)
            if len(start[0]):
                starts.append(start)
                used.append(mark)
            else:
                self.warnings.append(
                    tr("{name} is no way home here: land, closed or unknown water lies round it.").format(
                        name=mark.name
                    )
                )
        if not used:
            raise _no_way_home(request)
        cells, seconds = (np.concatenate(part) for part in zip(*starts))
        home = self._run(chart, back, cells, seconds, 0.35, 0.35)
        return BothWays(chart=chart, out=out, home=home, landings=used)

    def _front_out(self, chart: ChartWater, done: float, share: float) -> Front:
        request, depart_s = self.request, self.request.depart_s
        ahead = FrontStream(stream=self.stream, origin_s=depart_s)
        cells, seconds = set_out(chart.water, ahead, chart.shores(depart_s), request.entry_m, self.pace)
        if not len(cells):
            raise _no_way_out(request, chart.water.grid)
        return self._run(chart, ahead, cells, seconds, done, share)

    def _errors(self, grid: ReachGrid, out_min: np.ndarray) -> tuple[float | None, float | None]:
        """How far the arrivals lie from those on cells twice as large; None where those find no water to swim in."""
        coarse = ReachGrid.over(grid.box, 2.0 * grid.cell_m)
        try:
            front = self._front_out(chart_water(self.request, coarse), 0.7, 0.1)
        except SwimPlanError:
            return None, None
        return _differences(grid, out_min, coarse, coarse.without_rim(front.after_s) / 60.0)

    def _run(
        self, chart: ChartWater, stream: FrontStream, cells: np.ndarray, seconds: np.ndarray, done: float, share: float
    ) -> Front:
        return run_front(
            chart.water,
            stream,
            self.pace,
            cells,
            seconds,
            self.request.horizon_s,
            progress=lambda part: self.progress(done + share * part),
            is_cancelled=self.is_cancelled,
        )

    def _marks(self, both: BothWays) -> tuple[MarkReach, ...]:
        request, shores = self.request, both.chart.shores()
        compass = OneHeading(request, both.landings, both.chart.water.grid.box, self.is_cancelled)
        found = []
        for number, mark in enumerate(request.marks):
            self.progress(0.86 + 0.14 * number / len(request.marks))
            solver = self._solver_numbers(both, shores, mark)
            found.append(MarkReach(mark=mark, solver=solver, one_heading=compass.numbers(mark)))
        return tuple(found)

    def _solver_numbers(self, both: BothWays, shores: Shores, mark: Mark) -> Numbers:
        place, horizon_s = self.request.place_m(mark), self.request.horizon_s
        out_s, _ = comes_to(both.out, shores, place)
        home_s, cell = comes_to(both.home, shores, place)
        latest_s, landing = horizon_s - home_s, ""
        if cell >= 0:
            start = both.chart.water.grid.xy_of(both.home.way_to(cell)[:1])[0]
            apart = [float(np.hypot(*(self.request.place_m(one) - start))) for one in both.landings]
            landing = both.landings[int(np.argmin(apart))].name
        for one in both.landings:
            if np.hypot(*(self.request.place_m(one) - place)) <= SAME_PLACE_M:
                latest_s, landing = horizon_s, one.name
        return Numbers(
            out_min=out_s / 60.0 if np.isfinite(out_s) else None,
            latest_min=latest_s / 60.0 if np.isfinite(latest_s) else None,
            exit=landing,
            reason=_why_not(out_s, latest_s),
        )

    def _warn(self, unknown: np.ndarray, doubtful: np.ndarray, both: BothWays) -> None:
        grid = both.chart.water.grid
        if unknown.any():
            self.warnings.append(
                tr(
                    "In {count} cells the stream is not known when they would be reached: they count as "
                    "closed, and what lies behind them may be missing."
                ).format(count=int(unknown.sum()))
            )
        if doubtful.any():
            share = 100.0 * doubtful.sum() / max(int(np.isfinite(grid.without_rim(both.out.after_s)).sum()), 1)
            words = tr("({share:.0f} % of those reached) the stream is extrapolated.").format(share=min(share, 100.0))
            self.warnings.append(tr("In {count} cells {words}").format(count=int(doubtful.sum()), words=words))
        rim = np.isfinite(grid.without_rim(both.out.after_s))
        if rim[0].any() or rim[-1].any() or rim[:, 0].any() or rim[:, -1].any():
            self.warnings.append(
                tr("The reach goes on beyond the area looked at, which is cut to what the plan's layers cover.")
            )


def _why_not(out_s: float, latest_s: float) -> str:
    """Why a number of the solver is missing, empty where none is."""
    if np.isfinite(out_s) and np.isfinite(latest_s):
        return ""
    words = tr("not reached") if np.isnan(out_s) else tr("no exit is reached from it")
    return tr("{words} in time over open water whose stream is known").format(words=words)


def check_entry(request: ReachRequest, stream: GridStream, chart: ChartWater) -> None:
    """SwimPlanError where nobody may or can set out from the entry: on land, in closed water, in unknown water."""
    place, swim, name = request.entry_m, request.swim, request.entry.name
    check_not_inland(swim, place, tr("The entry '{name}'").format(name=name))
    for one in chart.closings:
        if one.closed[:2].any() and one.item.area.contains(place[None])[0]:
            raise SwimPlanError(
                asked=tr("The entry '{name}' lies in {area}, which nobody may enter then").format(
                    name=name, area=one.item.name or tr("a closed area")
                ),
                allowed=tr("In force {words}").format(words=one.item.in_force.words() or tr("always")),
                remedy=tr("Choose another entry or another time"),
            )
    if int(stream.at(place[0], place[1], request.depart_s).status) == UNKNOWN:
        raise SwimPlanError(
            asked=tr("No stream is known at the entry '{name}' at {depart}").format(
                name=name, depart=swim.depart.isoformat(timespec="minutes")
            ),
            allowed=tr("Water for which no stream is known is never taken as slack"),
            remedy=tr("Add a stream station, or tides and stream times that cover that hour"),
        )


def check_not_inland(swim: SwimRequest, place_m: np.ndarray, words: str) -> None:
    """SwimPlanError where a place (2,), in words, lies on land farther from the water than a beach is wide."""
    for item in swim.chart.land:
        if item.area.contains(place_m[None])[0] and item.area.distance_m(place_m[None])[0] > BEACH_M:
            raise SwimPlanError(
                asked=tr("{words} lies {metres:.0f} m inside {name}").format(
                    words=words, metres=item.area.distance_m(place_m[None])[0], name=item.name or tr("land")
                ),
                allowed=tr("It lies in the water, or on a beach up to {beach_m:g} m from it").format(beach_m=BEACH_M),
                remedy=tr("Move it to the water's edge"),
            )


def _no_way_out(request: ReachRequest, grid: ReachGrid) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("No open water was found beside the entry '{name}' with cells of {cell_m:g} m").format(
            name=request.entry.name, cell_m=grid.cell_m
        ),
        allowed=tr("Passages narrower than two cells are closed, and so are channels that are kept out of"),
        remedy=tr("Choose a smaller CELL, or take notice of channels in another way"),
    )


def _no_way_home(request: ReachRequest) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("No way home was found to '{name}' or any exit by {back_by}").format(
            name=request.entry.name, back_by=request.back_by.isoformat()
        ),
        allowed=tr("At the time to be back the water at an exit is open and its stream is known"),
        remedy=tr("Give another BACK_BY, or tides and streams that last until then"),
    )


def _differences(
    grid: ReachGrid, fine: np.ndarray, coarse_grid: ReachGrid, coarse: np.ndarray
) -> tuple[float | None, float | None]:
    """Mean and 99th percentile of the difference, minutes, of two grids at the middles of the coarse one's cells; None
    where they share none."""
    place = np.stack(np.meshgrid(coarse_grid.x_m, coarse_grid.y_m), axis=-1)
    at = (place - grid.low_m) / grid.cell_m
    column, row = np.floor(at[..., 0]).astype(int), np.floor(at[..., 1]).astype(int)
    column, row = np.clip(column, 0, fine.shape[1] - 2), np.clip(row, 0, fine.shape[0] - 2)
    part = at - np.stack([column, row], axis=-1)
    south = fine[row, column] * (1.0 - part[..., 0]) + fine[row, column + 1] * part[..., 0]
    north = fine[row + 1, column] * (1.0 - part[..., 0]) + fine[row + 1, column + 1] * part[..., 0]
    apart = np.abs(south * (1.0 - part[..., 1]) + north * part[..., 1] - coarse)
    apart = apart[np.isfinite(apart)]
    return (float(apart.mean()), float(np.percentile(apart, 99.0))) if len(apart) else (None, None)
