"""The plan's table of stream models as the core's objects: meshes and rasters of the stream in time."""

from __future__ import annotations

from pathlib import Path

import numpy as np

from ..core.clock import PlanClock
from ..core.errors import BadInputError, SwimPlanError
from ..core.geodesy import LocalFrame
from ..core.water.model_stream import ModelStream
from ..words import tr
from .mesh_in import mesh_stream
from .model_row import ModelRow
from .raster_in import raster_stream
from .table import Table, TableRow

READERS = {"mesh": mesh_stream, "raster": raster_stream}


def models_from(
    tables: dict[str, Table],
    frame: LocalFrame,
    clock: PlanClock,
    plan_folder: str | Path | None,
    box_m: np.ndarray,
    warnings: list[str],
) -> tuple[ModelStream, ...]:
    """The models of the table ``stream_models`` in the table's order, as far as they reach the plan.

    ``plan_folder`` is where relative paths count from, None where there is no plan file. ``box_m`` bounds where the
    stream will be asked for: two corners (2, 2), or (4,) x low, y low, x high, y high. A model that does not reach the
    plan in place or time is left out with a warning. Raises BadInputError naming the row for what cannot be read.
    """
    table = tables.get("stream_models")
    folder = None if plan_folder is None else Path(plan_folder)
    models, taken = [], set()
    for row in table.rows() if table else ():
        asked = ModelRow.of(table, row, folder)
        if asked.name in taken:
            raise asked.refused(
                "model", asked.name, tr("A model's name stands once"), tr("Rename or delete one of them")
            )
        taken.add(asked.name)
        model = _model(asked, row, frame, clock, np.asarray(box_m, dtype=float), warnings)
        if model is not None:
            models.append(model)
    return tuple(models)


def _model(
    asked: ModelRow, row: TableRow, frame: LocalFrame, clock: PlanClock, box_m: np.ndarray, warnings: list[str]
) -> ModelStream | None:
    try:
        stream = READERS[asked.kind](asked, frame, clock, box_m, warnings)
    except BadInputError:
        raise
    except SwimPlanError as error:
        raise asked.refused("path", asked.path.name, f"{error.asked}. {error.allowed}", error.remedy) from error
    if stream is None:
        return None
    return ModelStream(
        name=asked.name,
        stream=stream,
        source=row.values["source"] or "",
        rate_uncertainty=row.values["rate_uncertainty"],
        phase_uncertainty_s=60.0 * row.values["phase_uncertainty_min"],
        rate_factor=row.values["rate_factor"],
        shift_s=60.0 * row.values["shift_min"],
    )
