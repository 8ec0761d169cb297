"""The water of a plan: the tide at the marks, and the stream everywhere."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import numpy as np

from ..core.chart.areas import Chart
from ..core.clock import PlanClock
from ..core.geodesy import LocalFrame
from ..core.water.field import StreamField
from ..core.water.tide import TideTable
from ..plan_package.store import read_settings
from .plan_tables import tables_of
from .swim_chart import chart_from
from .swim_water import stream_from
from .table import Table
from .tides_in import tide_for_heights, tides_from

AROUND_PLACE_M = 2000.0


@dataclass(frozen=True, kw_only=True)
class PlanWater:
    """The stream over the plan, and the tide whose heights hold at its marks (None where no table does)."""

    stream: StreamField
    tide: TideTable | None


def water_from(
    tables: dict[str, Table],
    chart: Chart,
    frame: LocalFrame,
    clock: PlanClock,
    places_m: np.ndarray,
    port: str,
    warnings: list[str],
) -> PlanWater:
    """The water from the plan's tables. ``places_m`` (n, 2) bound where the stream will be asked for; ``port`` names
    the port for heights, "" for the only one there is."""
    tides = tides_from(tables.get("tides"), clock)
    land = tuple(piece.area for piece in chart.land)
    return PlanWater(
        stream=stream_from(tables, tides, frame, clock, land, places_m, warnings),
        tide=tide_for_heights(tides, port, warnings),
    )


def water_at(
    plan: str | Path, lon: float, lat: float, clock: PlanClock, warnings: list[str]
) -> tuple[StreamField, LocalFrame]:
    """The stream around one place of a plan, and the frame it is given in."""
    settings = read_settings(plan)
    frame = LocalFrame(lon=lon, lat=lat)
    tables = tables_of(plan, {}, warnings)
    chart = chart_from(tables, frame, clock.zone, warnings)
    around = np.array([[-AROUND_PLACE_M, -AROUND_PLACE_M], [AROUND_PLACE_M, AROUND_PLACE_M]])
    # The port for heights has no say in the stream, and its warning would only puzzle.
    water = water_from(tables, chart, frame, clock, around, settings.get("port", ""), [])
    return water.stream, frame
