"""A move of the mouse with each map tool, until what stands beside the cursor is new; the sample and a real cell."""

from __future__ import annotations

import os
import statistics
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

import desk
import make_bay
from live_bench import CELL, ROOT, cell_plan
from map_hand import Hand
from qgis.PyQt.QtCore import Qt
from tideleg.dock.dock import TidelegDock

MOVES = 60
TARGET_MS = 50.0
STEP_DEG = 0.00011


def report() -> None:
    """Print the rows of the speed table."""
    data = Path(os.environ.get("TIDELEG_REAL_DATA") or ROOT.parent / "shared" / "data")
    with tempfile.TemporaryDirectory() as name, desk.desk_with_dock() as (at, dock):
        folder = Path(name)
        _print("the sample", at, dock, make_bay.make(folder / "bay.gpkg"), "2027-06-26 10:00")
        if (data / CELL).exists():
            _print("a real chart cell", at, dock, cell_plan(folder, data / CELL), "2027-06-05 08:00")
        else:
            print(f"map tools on a real chart cell: not measured, there is no {data / CELL}")


def _print(where: str, at: desk.Desk, dock: TidelegDock, plan: Path, depart: str) -> None:
    desk.opened(dock, plan, depart=depart)
    hand, start = Hand(at, dock), dock.session.request.stops[0]
    hand.show(around_m=1500.0, middle=(start.lon, start.lat))
    told = []
    for name in hand.section.buttons:
        hand.take(name)
        if name not in ("place_mark", "move_mark", "edit_route"):
            hand.click((start.lon, start.lat))
        times = list(_moves_ms(hand, start.lon, start.lat))
        told.append(f"{name} {statistics.median(times):.1f} ({max(times):.1f})")
        hand.key(Qt.Key.Key_Escape)
    dock.drawing.put_away()
    depths = dock.session.request.depths
    print(
        f"map tools, {where} ({len(depths.contours)} pieces of contours, {len(depths.soundings)} soundings): "
        f"ms a move, median (most) of {MOVES}, target {TARGET_MS:.0f}: {', '.join(told)}"
    )


def _moves_ms(hand: Hand, lon: float, lat: float) -> Iterator[float]:
    for number in range(1, MOVES + 1):
        begun = time.perf_counter()
        hand.move((lon + number * STEP_DEG, lat + (number % 7) * STEP_DEG))
        yield 1000.0 * (time.perf_counter() - begun)
