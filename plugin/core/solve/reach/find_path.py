"""The fastest path between two places, as a route of a few legs on one heading each."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace

import numpy as np

from ...chart.areas import Channel, ClosedArea
from ...chart.marks import Mark, Route
from ...errors import SwimPlanError
from ...results.fastest_path import FastestPath, Straight
from ...words import marked, spoken, tr
from ..plan_swim import plan_swim
from ..request import SwimRequest
from ..swim import GridStream
from ..windows.limits import LIMITS
from .area import reach_box, reach_grid
from .beside import comes_to, set_out
from .chart_water import ChartWater, chart_water
from .find_reach import check_entry, check_not_inland
from .front import Front, run_front
from .front_stream import FrontStream
from .open_water import ReachGrid, spare_cells
from .request import CROSS_SQUARE, KEEP_OUT, ReachRequest
from .square import SquareCrossing, at_an_end, crossings_of
from .way_swims import Corners, WaySwims
from .waypoints import Puller, Waypoints

CANNOT = marked("it cannot be swum")
KEEP_OFF_M = 20.0  # about what a compass swimmer needs off the rocks; common practice, no source
WORDS = {
    "land": marked("land lies in the way"),
    "closed": marked("closed water lies in the way"),
    "unknown": marked("the stream is not known all the way"),
    "stream": marked("the stream is too strong for one heading"),
}
Progress = Callable[[float], None]


def find_path(
    request: ReachRequest, *, progress: Progress | None = None, is_cancelled: Callable[[], bool] = bool
) -> FastestPath:
    """The fastest path from the request's entry to its one mark. SwimPlanError where there is none, or where it cannot
    be swum in a few legs; StoppedError when stopped. ``progress`` is told shares from 0 to 1."""
    return _Task(request, progress or (lambda share: None), is_cancelled).found()


class _Task:
    def __init__(self, request: ReachRequest, progress: Progress, is_cancelled: Callable[[], bool]) -> None:
        self.request, self.progress, self.is_cancelled = request, progress, is_cancelled
        self.swim: SwimRequest = request.swim
        self.end: Mark = request.marks[0]
        self.end_m = request.place_m(self.end)
        self.warnings = list(request.swim.warnings)

    def found(self) -> FastestPath:
        """All of it."""
        request = self.request
        grid = reach_grid(request, reach_box(request, request.swim.stream))
        straight = self._straight(grid)
        for chart in _waters(chart_water(request, grid)):
            front, optimum_s, cell, keep_off = self._best_front(chart)
            tight = _close_in(grid, front.water.dry, -1) if keep_off else None
            points = self._pulled(grid, self._path(front, cell), optimum_s, tight)
            if points.stopped_by != "closed":
                break
        if points.stopped_by:
            raise SwimPlanError(
                asked=tr(
                    "A track that steers all the time takes {minutes:.0f} min, but no way of a few legs on one "
                    "heading each was found: {why}"
                ).format(minutes=optimum_s / 60.0, why=spoken(WORDS.get(points.stopped_by, CANNOT))),
                allowed=tr("Each leg is swum on one heading, clear of land and closed water"),
                remedy=tr("Leave at another hour, or draw the route by hand"),
            )
        self.progress(0.9)
        return self._whole(grid, points, optimum_s, straight)

    def _best_front(self, chart: ChartWater) -> tuple[Front, float, int, bool]:
        """The front that keeps off the shores, or where none of those gets there, one that does not; when it is at the
        end, from which cell, and whether it kept off."""
        stream = GridStream(stream=self.swim.stream, frame=self.swim.frame)
        check_entry(self.request, stream, chart)
        check_not_inland(self.swim, self.end_m, tr("The end '{name}'").format(name=self.end.name))
        ahead = FrontStream(stream=stream, origin_s=self.request.depart_s)
        shores, pace = chart.shores(self.request.depart_s), self.swim.swimmer.made_good_m_s
        cells = int(np.ceil(KEEP_OFF_M / chart.water.grid.cell_m))
        for number, off in enumerate((cells, 0)):
            water = replace(chart.water, dry=_close_in(chart.water.grid, chart.water.dry, off))
            starts, seconds = set_out(water, ahead, shores, self.request.entry_m, pace)
            front = run_front(
                water,
                ahead,
                pace,
                starts,
                seconds,
                self.request.horizon_s,
                progress=lambda part, done=0.3 * number: self.progress(done + 0.3 * part),
                is_cancelled=self.is_cancelled,
            )
            optimum_s, cell = comes_to(front, shores, self.end_m)
            if cell >= 0:
                return front, optimum_s, cell, off > 0
        raise SwimPlanError(
            asked=tr("No way was found from {start} to {end} within {hours:g} h").format(
                start=self.request.entry.name, end=self.end.name, hours=self.request.horizon_s / 3600.0
            ),
            allowed=tr("It leads over open water, of some cells' width, whose stream is known and can be swum against"),
            remedy=tr("Leave at another hour, take notice of channels in another way, or choose a smaller CELL"),
        )

    def _path(self, front: Front, cell: int) -> np.ndarray:
        """The path of the grid (k, 2), from the one place to the other."""
        cells = front.water.grid.xy_of(front.way_to(cell))
        return np.concatenate([self.request.entry_m[None], cells, self.end_m[None]])

    def _swims(self, grid: ReachGrid, kept_out: list[ClosedArea], tight: np.ndarray | None) -> WaySwims:
        return WaySwims(self.swim, kept_out, grid, tight, self.is_cancelled)

    def _straight(self, grid: ReachGrid) -> Straight:
        """The ruler line on one heading."""
        ends = np.array([self.request.entry_m, self.end_m])
        swum = self._swims(grid, [], None).swim_all(Corners(at=(0, 1), crossing=(None, None)), ends[None])
        minutes = (float(swum.arrive_s[0]) - self.request.depart_s) / 60.0
        limit = LIMITS[int(swum.limit[0])]
        return Straight(
            minutes=minutes if np.isfinite(minutes) else None,
            reason=spoken(WORDS[limit]) if limit in WORDS else limit,
            length_m=float(np.hypot(*(ends[1] - ends[0]))),
        )

    def _pulled(self, grid: ReachGrid, path_m: np.ndarray, optimum_s: float, tight: np.ndarray | None) -> Waypoints:
        """The path pulled into corners, channels crossed square where that is asked for and can be."""
        channels = self.swim.chart.channels
        target_s = self.request.depart_s + optimum_s
        if self.request.channels == CROSS_SQUARE:
            crossings = crossings_of(self.swim, path_m)
            others = self._not_square(crossings, path_m)
            apart = [one for one in channels if not (at_an_end(one, path_m) or any(one is other for other in others))]
            swims = self._swims(grid, [_shut(one) for one in apart], tight)
            points = Puller(swims, path_m, target_s, grid.cell_m).pulled(crossings)
            if not points.stopped_by:
                self._name(others, path_m)
                return points
            self.warnings.append(tr("No way was found that crosses every channel square: see the crossings' angles."))
        kept_out = [_shut(one) for one in channels] if self.request.channels == KEEP_OUT else []
        return Puller(self._swims(grid, kept_out, tight), path_m, target_s, grid.cell_m).pulled([])

    def _not_square(self, crossings: list[SquareCrossing], path_m: np.ndarray) -> list[Channel]:
        """The channels on the path that it does not cross square."""
        square = {id(area) for one in crossings for area in one.areas}
        met = {id(one.area): one for one, _, _ in self.swim.chart.stretches("channels", path_m)}
        return [channel for area, channel in met.items() if area not in square]

    def _name(self, channels: list[Channel], path_m: np.ndarray) -> None:
        """Say which channels are not crossed square, and why."""
        for channel in channels:
            why = tr("it starts or ends in it") if at_an_end(channel, path_m) else tr("its direction is not known")
            self.warnings.append(
                tr("The path does not cross {name} square: {why}.").format(
                    name=channel.name or tr("a channel"), why=why
                )
            )

    def _whole(self, grid: ReachGrid, points: Waypoints, optimum_s: float, straight: Straight) -> FastestPath:
        lonlat = self.swim.frame.to_lonlat(points.corners_m)
        lonlat[0] = self.request.entry.lon, self.request.entry.lat
        lonlat[-1] = self.end.lon, self.end.lat
        last = len(lonlat) - 1
        names = [
            self.request.entry.name,
            *(tr("Waypoint {number}").format(number=number) for number in range(1, last)),
            self.end.name,
        ]
        stops = tuple(
            Mark(name=name, kind={0: "entry", last: "exit"}.get(number, "waypoint"), lon=float(lon), lat=float(lat))
            for number, (name, (lon, lat)) in enumerate(zip(names, lonlat))
        )
        route = Route(name=f"{names[0]} - {names[-1]}", lonlat=lonlat)
        plan = plan_swim(replace(self.swim, route=route, stops=stops), is_cancelled=self.is_cancelled)
        self.progress(1.0)
        return FastestPath(
            # Nobody dives at the corners of a path: that their depth is not known is no warning here.
            plan=replace(plan, warnings=tuple(self.warnings)),
            lonlat=lonlat,
            optimum_min=optimum_s / 60.0,
            straight=straight,
            cell_m=grid.cell_m,
            square_legs=tuple(n + 1 for n, one in enumerate(points.corners.crossing[1:]) if one is not None),
        )


def _waters(chart: ChartWater) -> Iterator[ChartWater]:
    """The chart's water; then, since a route does not wait at closed water, with what closes for a while shut for
    good."""
    yield chart
    if chart.water.timed:
        dry = np.logical_or.reduce([chart.water.dry, *(area.mask for area in chart.water.timed)])
        yield replace(chart, water=replace(chart.water, dry=dry, timed=()))


def _shut(channel: Channel) -> ClosedArea:
    return ClosedArea(name=channel.name, rule="no_entry", area=channel.area)


def _close_in(grid: ReachGrid, dry: np.ndarray, cells: int) -> np.ndarray:
    """Dry cells (rows, columns) and those within so many of them; -1 takes the outermost ring of them away again."""
    if cells < 0:
        return ~_close_in(grid, ~dry, -cells)
    if cells == 0:
        return dry
    return grid.without_rim(spare_cells(grid, grid.rimmed(dry, False), cells + 1) < cells) | dry
