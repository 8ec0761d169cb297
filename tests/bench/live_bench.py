"""A vertex moved in the dock, until the new legs stand in the table and on the map; the sample and a real cell."""

from __future__ import annotations

import os
import statistics
import tempfile
import time
from pathlib import Path

import desk
import make_bay
from swims import add_constant_stream, add_route, add_swimmer, new_plan, run
from tideleg.dock.dock import TidelegDock
from tideleg.dock.session import PLANNING
from tideleg.processing.readchart import ReadChart

ROOT = Path(__file__).resolve().parents[2]
MOVES, STEP_DEG = 8, 0.0004
TARGET_MS = 50.0
CELL = Path("chart-us4md81m", "US4MD81M.000")
BEACH, MARK, LANDING = (-76.53235, 38.69852), (-76.52350, 38.68800), (-76.53228, 38.70051)


def cell_plan(folder: Path, cell: Path) -> Path:
    """The whole of a real cell, with a route across it in an invented stream."""
    plan = new_plan(folder / "cell.gpkg", ZONE="America/New_York", DATUM="MLLW")
    read = run(ReadChart().create(), {"CHART": str(cell), "PLAN": str(plan)})
    if not read.ok:
        raise RuntimeError(read.said)
    add_route(plan, "Across", BEACH, MARK, LANDING)
    add_swimmer(plan, 0.65)
    add_constant_stream(plan, 0.15, 190.0, at=MARK)
    return plan


def moved_ms(at: desk.Desk, dock: TidelegDock) -> list[tuple[float, float, float]]:
    """Milliseconds from each move of a vertex to the legs in the table, to those on the map, and to the last word."""
    routes, found = desk.layer_of(dock, "routes"), []
    route = next(row for row in routes.getFeatures() if row["name"] == dock.session.route)
    vertex = route.geometry().vertexAt(1)
    routes.startEditing()
    for number in range(1, MOVES + 1):
        before, start, drawn = dock.session.swim, time.perf_counter(), []
        at.canvas.mapCanvasRefreshed.connect(lambda drawn=drawn: drawn.append(time.perf_counter()))
        routes.moveVertex(vertex.x() + number * STEP_DEG, vertex.y(), route.id(), 1)
        desk.wait_for(lambda before=before: _is_new(dock, before), "the legs")
        dock.legs.table.viewport().repaint()
        legs = time.perf_counter()
        drawn.clear()
        desk.wait_for(lambda drawn=drawn: bool(drawn), "the map")
        desk.settle(dock.session)
        found.append(tuple(1000.0 * (moment - start) for moment in (legs, drawn[0], time.perf_counter())))
        at.canvas.mapCanvasRefreshed.disconnect()
    routes.rollBack()
    return found


def _is_new(dock: TidelegDock, before: object) -> bool:
    return dock.session.stage != PLANNING and dock.session.swim not in (None, before)


def report() -> None:
    """Print the rows of the speed table."""
    data = Path(os.environ.get("TIDELEG_REAL_DATA") or ROOT.parent / "shared" / "data")
    with tempfile.TemporaryDirectory() as name, desk.desk_with_dock() as (at, dock):
        folder = Path(name)
        _print("the sample", at, dock, make_bay.make(folder / "bay.gpkg"), "2027-06-26 10:00")
        if (data / CELL).exists():
            _print("a real chart cell", at, dock, cell_plan(folder, data / CELL), "2027-06-05 08:00")
        else:
            print(f"a vertex moved on a real chart cell: not measured, there is no {data / CELL}")


def _print(where: str, at: desk.Desk, dock: TidelegDock, plan: Path, depart: str) -> None:
    desk.opened(dock, plan, depart=depart)
    legs, drawn, last = (statistics.median(column) for column in zip(*moved_ms(at, dock)))
    rows = sum(copy.featureCount() for copy in dock.session.layers.copies().values())
    print(
        f"a vertex moved in the dock, {where} ({rows} rows): legs in the table after {legs:.0f} ms (target "
        f"{TARGET_MS:.0f}), on the map after {drawn:.0f} ms, planned anew from the plan with its turn back after "
        f"{last:.0f} ms; median of {MOVES}"
    )
