"""The transits of one mark of a plan: those that are suggested, and those that are picked."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime
from pathlib import Path

from qgis.core import QgsFeatureSource

from ..core.chart.marks import Mark
from ..core.magnetism import variation_at
from ..core.results.report import wrapped_lon
from ..core.results.transits import MarkTransits, Transit
from ..core.solve.picked_transits import picked_at_stops
from ..core.solve.transits import find_transits
from .marks_in import marks_from
from .plan_tables import tables_of
from .transits_in import landmarks_from, picked_from


@dataclass(frozen=True, kw_only=True)
class TransitsAtMark:
    """``found`` are the suggested ones, ``picked`` those of the plan that can be used, each with its best crossing;
    ``landmarks`` counts what there is ashore, ``warnings`` say what of the plan's picks cannot be used."""

    found: MarkTransits
    picked: tuple[Transit, ...]
    landmarks: int
    warnings: tuple[str, ...] = ()


def transits_at_mark(
    plan: Path,
    sources: Mapping[str, QgsFeatureSource],
    mark: Mark,
    *,
    origin: tuple[float, float],
    when: datetime,
) -> TransitsAtMark:
    """What is seen in line from a mark; ``origin`` (degrees) and ``when`` (aware) are those of the magnetic variation.

    SwimPlanError, and BadInputError naming layer, row, field and value.
    """
    read: list[str] = []
    tables = tables_of(plan, sources, read)
    mark = replace(mark, lon=float(wrapped_lon(mark.lon)))
    variation = variation_at(float(wrapped_lon(origin[0])), origin[1], when)
    landmarks = landmarks_from(tables.get("landmarks"))
    warnings: list[str] = []
    picked = [one for one in picked_from(tables, marks_from(tables.get("marks")), warnings) if one.mark == mark.name]
    warnings.clear()  # of all marks: the swim says them
    seen = picked_at_stops(picked, [mark], variation, warnings)
    return TransitsAtMark(
        found=find_transits(mark.name, mark.lon, mark.lat, landmarks, variation),
        picked=seen.get(mark.name, ()),
        landmarks=len(landmarks.names),
        warnings=tuple(warnings),
    )
