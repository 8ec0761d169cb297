"""Rows on their way into a plan, and why an object gave none."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from qgis.core import QgsGeometry


@dataclass(frozen=True, kw_only=True)
class PlanRow:
    """One row for a layer of the plan; ``geometry`` is single, flat and in EPSG:4326, None for a table."""

    layer: str
    geometry: QgsGeometry | None = None
    values: dict[str, Any] = field(default_factory=dict)


@dataclass(frozen=True, kw_only=True)
class Reading:
    """What one object of a source gave: rows, or the reason for none.

    ``notes`` are facts to be counted in the report, such as a width that was supplied; ``hazard`` is what is known of a
    hazard whose depth is not charted.
    """

    rows: tuple[PlanRow, ...] = ()
    reason: str = ""
    notes: tuple[str, ...] = ()
    hazard: str = ""
