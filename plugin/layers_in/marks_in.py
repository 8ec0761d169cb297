"""The marks of a plan as the core's objects."""

from __future__ import annotations

from ..core.chart.marks import Mark
from .table import Table


def marks_from(table: Table | None) -> list[Mark]:
    """The rows of the marks layer, in its order; none where there is no layer."""
    keys = ("name", "kind", "stay_min", "charted_depth_m", "bottom", "note")
    marks = []
    for row in table.rows() if table else ():
        values = {key: row.values[key] for key in keys}
        lon, lat = row.rings[0][0]
        for key in ("bottom", "note"):
            values[key] = values[key] or ""
        values["stay_min"] = values["stay_min"] or 0.0
        marks.append(Mark(lon=float(lon), lat=float(lat), **values))
    return marks
