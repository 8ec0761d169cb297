"""The report of a read, as JSON: what was read, from where, what became of it, and what to beware of."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from qgis.core import QgsRectangle

from ..core.words import spoken
from ..version import tideleg_version
from ..words import tr
from .chart_cell import CellFacts
from .plan_append import Added
from .read_tally import ReadTally
from .whole_text import write_whole_text

DEFAULT_DATUM = "chart datum"
COVERED = 0.001  # share of the extent without chart data that is a rounding of its edge


def read_report(
    *,
    plan: Path,
    sources: list[str],
    facts: CellFacts | None,
    extent: QgsRectangle | None,
    tally: ReadTally,
    added: Added,
    unread: dict[str, int],
    warnings: list[str],
) -> dict[str, Any]:
    """The whole report; ``unread`` counts the objects of the cell of classes that a plan does not use."""
    layers = sorted({*added.written, *added.already_there})
    return {
        "tideleg": tideleg_version(),
        "plan": str(plan),
        "sources": sources,
        "cell": None if facts is None else _cell(facts),
        "extent": None
        if extent is None
        else [extent.xMinimum(), extent.yMinimum(), extent.xMaximum(), extent.yMaximum()],
        **tally.as_dict(),
        "layers": {
            name: {"written": added.written[name], "already_there": added.already_there[name]} for name in layers
        },
        "unread_classes": unread,
        "warnings": warnings,
    }


def cell_warnings(facts: CellFacts, plan_datum: str, uncovered: float, anything: bool) -> list[str]:
    """What a swimmer should know of the cell before trusting what was read from it."""
    words, letters = facts.sounding_datum
    warnings = [
        tr(
            "The chart is for planning ashore, not for navigation; an area that is not charted "
            "is not thereby permitted."
        )
    ]
    if plan_datum.strip().lower() not in (DEFAULT_DATUM, "", words.lower(), spoken(words).lower(), letters.lower()):
        warnings.append(
            tr("Depths of the chart are from {datum}, the plan's tides from {plan_datum}: they do not add up.").format(
                datum=spoken(words), plan_datum=plan_datum
            )
        )
    if facts.horizontal_datum != 2:
        warnings.append(
            tr("The chart's horizontal datum has code {code}; it is taken as WGS 84.").format(
                code=facts.horizontal_datum
            )
        )
    if uncovered > COVERED:
        warnings.append(
            tr("The chart has no data for {percent:.0f} % of the extent: water there is unknown.").format(
                percent=100.0 * uncovered
            )
        )
    if not anything:
        warnings.append(tr("Nothing of the chart that a plan can use lies in the extent."))
    return warnings


def write_report(path: Path, report: dict[str, Any]) -> None:
    """Write the report, whole or not at all; SwimPlanError where it cannot be written."""
    text = json.dumps(report, indent=2, ensure_ascii=False, allow_nan=False) + "\n"
    allowed = tr("It is a file in a folder that is there")
    write_whole_text(path, text, what=tr("report"), allowed=allowed, parameter="REPORT")


def _cell(facts: CellFacts) -> dict[str, str]:
    return {
        "name": facts.name,
        "edition": facts.edition,
        "update": facts.update,
        "dated": facts.dated,
        "sounding_datum": spoken(facts.sounding_datum[0]),
    }
