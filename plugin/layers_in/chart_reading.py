"""Reads a chart cell, an ordinary layer or both into a plan, all or nothing, and reports on every object."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from qgis.core import QgsCoordinateTransformContext, QgsProcessingFeatureSource, QgsRectangle

from ..plan_package.database import table_names
from ..plan_package.schema import LAYER_BY_NAME
from ..plan_package.store import read_settings
from ..words import tr
from .chart_cell import ChartCell
from .chart_landmarks import floating_places
from .chart_layers import LayerReader
from .chart_objects import ChartReader, count_to_read, objects_to_read, uncovered_share, unread_classes
from .field_mapping import mapping_from_text
from .gathering import gather_rows
from .plan_append import Added, append_to_plan
from .plan_rows import PlanRow
from .read_report import cell_warnings, read_report, write_report
from .read_tally import ReadTally

READ_SHARE, LAYER_SHARE = 60.0, 70.0  # percent of the progress bar after the cell, and after the layer


@dataclass(frozen=True, kw_only=True)
class ReadAsked:
    """What to read: a cell's path ("" for none), a layer with the plan layer it goes into and its field mapping, the
    extent in the plan's system (None for all), and where the report goes."""

    plan: Path
    chart: str = ""
    source: QgsProcessingFeatureSource | None = None
    into: str = ""
    mapping: str = ""
    extent: QgsRectangle | None = None
    transforms: QgsCoordinateTransformContext
    report: Path | None = None


@dataclass(frozen=True, kw_only=True)
class Told:
    """How the one who asked is told: whether to stop, how far (percent), sentences and warnings."""

    is_cancelled: Callable[[], bool]
    progress: Callable[[float], None]
    say: Callable[[str], None]
    warn: Callable[[str], None]

    def between(self, start: float, end: float) -> Callable[[float], None]:
        """A callback for shares 0 to 1 that fills the bar from ``start`` to ``end`` percent."""
        return lambda share: self.progress(start + (end - start) * share)


def read_into_plan(asked: ReadAsked, told: Told) -> Added:
    """Read everything before the plan is opened for writing; the report is written before the rows stand.

    SwimPlanError and StoppedError leave the plan as it was.
    """
    datum = read_settings(asked.plan)["datum"]
    cell = ChartCell(asked.chart) if asked.chart else None
    tally = ReadTally()
    rows = _cell_rows(cell, asked, tally, told) if cell else []
    warnings = cell_warnings(cell.facts, datum, uncovered_share(cell, asked.extent), bool(rows)) if cell else []
    rows, left_out = _without_landmarks(rows) if "landmarks" not in table_names(asked.plan) else (rows, [])
    warnings += left_out
    if asked.source is not None:
        rows += _layer_rows(asked, tally, told)

    def report(added: Added) -> None:
        content = read_report(
            plan=asked.plan,
            sources=([asked.chart] if cell else []) + ([asked.source.sourceName()] if asked.source else []),
            facts=cell.facts if cell else None,
            extent=asked.extent,
            tally=tally,
            added=added,
            unread=unread_classes(cell) if cell else {},
            warnings=warnings,
        )
        write_report(asked.report, content)

    added = append_to_plan(
        asked.plan,
        rows,
        is_cancelled=told.is_cancelled,
        progress=told.between(LAYER_SHARE, 100.0),
        before_commit=report if asked.report else lambda _added: None,
    )
    _tell(told, tally, warnings, added)
    return added


def _tell(told: Told, tally: ReadTally, warnings: list[str], added: Added) -> None:
    for sentence in tally.sentences():
        told.say(sentence)
    for warning in warnings:
        told.warn(warning)
    written, there = sum(added.written.values()), sum(added.already_there.values())
    told.say(tr("{written} rows written, {there} were there already").format(written=written, there=there))


def _cell_rows(cell: ChartCell, asked: ReadAsked, tally: ReadTally, told: Told) -> list[PlanRow]:
    reader = ChartReader(cell.facts, asked.extent, tally, floating_places(cell))
    return gather_rows(
        objects_to_read(cell),
        reader.rows_of,
        total=count_to_read(cell),
        is_cancelled=told.is_cancelled,
        progress=told.between(0.0, READ_SHARE),
    )


def _without_landmarks(rows: list[PlanRow]) -> tuple[list[PlanRow], list[str]]:
    """The rows for a plan that was made before it could hold landmarks, and what to say of it."""
    kept = [row for row in rows if row.layer != "landmarks"]
    lost = len(rows) - len(kept)
    if not lost:
        return kept, []
    return kept, [
        tr("The plan has no layer 'landmarks': {lost} landmarks are left out. A new plan has it.").format(lost=lost)
    ]


def _layer_rows(asked: ReadAsked, tally: ReadTally, told: Told) -> list[PlanRow]:
    reader = LayerReader(
        asked.source,
        into=LAYER_BY_NAME[asked.into],
        mapping=mapping_from_text(asked.mapping),
        extent=asked.extent,
        transforms=asked.transforms,
        tally=tally,
    )
    return gather_rows(
        reader.features(),
        reader.rows_of,
        total=asked.source.featureCount(),
        is_cancelled=told.is_cancelled,
        progress=told.between(READ_SHARE, LAYER_SHARE),
    )
