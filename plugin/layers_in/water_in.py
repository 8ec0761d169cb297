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
from .models_in import models_from
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
    plan: str | Path | None,
    warnings: list[str],
    *,
    port: str,
) -> PlanWater:
    """The water from the plan's tables. ``places_m`` (2, 2) are the corners of where the stream will be asked for;
    models lie beside the file ``plan``, None for none; ``port`` is that of the heights, empty for the only one."""
    tides = tides_from(tables, clock, warnings)
    land = tuple(piece.area for piece in chart.land)
    folder = Path(plan).resolve().parent if plan else None
    models = models_from(tables, frame, clock, folder, places_m, warnings)
    return PlanWater(
        stream=stream_from(tables, tides, frame, clock, land, places_m, warnings, models=models),
        tide=tide_for_heights(tides, port, warnings),
    )


def water_at(
    plan: str | Path, lon: float, lat: float, clock: PlanClock, warnings: list[str]
) -> tuple[StreamField, LocalFrame]:
    """The stream around one place of a plan, and the frame it is given in."""
    frame = LocalFrame(lon=lon, lat=lat)
    port = read_settings(plan).get("port", "")
    tables = tables_of(plan, {}, warnings)
    chart = chart_from(tables, frame, clock.zone, warnings)
    around = np.array([[-AROUND_PLACE_M, -AROUND_PLACE_M], [AROUND_PLACE_M, AROUND_PLACE_M]])
    return water_from(tables, chart, frame, clock, around, plan, warnings, port=port).stream, frame
